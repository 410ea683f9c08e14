/**
 * The cards of the page. Those in sight are written anew at once, the others when no key was pressed for
 * a moment: a long page answers as fast as a short one. What the build wrote is kept and put back.
 */
import type { CardContext } from '../card/context.ts'
import { cardHtml, type CardParts } from '../card/card.ts'
import { drawingHtml } from '../card/drawing.ts'
import { cardHazardsHtml } from '../card/hazards.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import { afterQuiet } from './quiet.ts'
import { elementOf, morph } from './places.ts'

interface Card {
  readonly host: HTMLElement
  readonly id: string
  readonly original: Element
  current: Element
}

export interface Cards {
  /** Writes these anew, or as the build wrote them where `isBuilders` says so. */
  draw(ids: Iterable<string>, ctx: CardContext, isBuilders: (id: string) => boolean): void
  /** Says above these that what they show is from before an entry that is wrong. */
  markOld(ids: ReadonlySet<string>): void
  /** Writes at once what was put off: before printing, and for tests. */
  settle(): void
}

export function cardsOf(root: ParentNode): Cards {
  const cards = [...root.querySelectorAll<HTMLElement>('work-card')].flatMap((host): Card[] => {
    const original = host.querySelector(':scope > .card')
    const id = host.dataset.block
    return original === null || id === undefined ? [] : [{ host, id, original, current: original }]
  })
  const waiting = new Map<Card, () => void>()
  const drawWaiting = (): void => {
    for (const draw of waiting.values()) draw()
    waiting.clear()
  }
  const quiet = afterQuiet(drawWaiting)

  return {
    draw(ids, ctx, isBuilders) {
      const wanted = new Set(ids)
      const these = cards.filter(({ id }) => wanted.has(id))
      const seen = new Set(these.filter(inSight))
      for (const card of these) {
        const draw = (): void => {
          const block = ctx.block(card.id)
          if (block === undefined || isBuilders(card.id)) restore(card)
          else write(card, block, ctx)
        }
        waiting.delete(card)
        if (seen.has(card)) draw()
        else {
          waiting.set(card, draw)
          quiet()
        }
      }
    },
    markOld(ids) {
      for (const { host, id } of cards) {
        const said = host.querySelector(':scope > .card-old')
        if (!ids.has(id)) said?.remove()
        else if (said === null) {
          const line = document.createElement('p')
          line.className = 'card-old'
          line.textContent = 'An entry is wrong. These are the figures from before it.'
          host.querySelector(':scope > .card')?.before(line)
        }
      }
    },
    settle: drawWaiting,
  }
}

/** On the screen or less than half a screen away. */
function inSight({ host }: Card): boolean {
  const { top, bottom } = host.getBoundingClientRect()
  return bottom > -innerHeight / 2 && top < innerHeight * 1.5
}

function restore(card: Card): void {
  if (card.current === card.original) return
  card.current.replaceWith(card.original)
  card.current = card.original
}

function write(card: Card, block: PublishedBlock, ctx: CardContext): void {
  const made = elementOf(cardHtml(block, ctx, 'yours', partsOf(block, card, ctx)))
  if (made === null) return
  if (card.current === card.original) {
    card.current = made
    card.original.replaceWith(made)
  } else morph(card.current, made)
}

function partsOf(block: PublishedBlock, card: Card, ctx: CardContext): CardParts {
  const calculator = ctx.calculator(block.calculator)
  const before = ctx.builder?.block(block.id)?.hazards ?? []
  const alike = before.join(' ') === block.hazards.join(' ')
  const panels = block.hazards.filter((hazard) => missingPanel(hazard))
  return {
    // Where the hazards are the builder's, their panels stand on the page already.
    hazards: alike
      ? (card.original.querySelector(':scope > .hazard-line')?.outerHTML ?? '')
      : cardHazardsHtml(block.hazards, panels),
    drawing: calculator === undefined ? '' : drawingHtml(block, calculator, ctx),
  }
}

/** A panel that the build did not write on this page. */
function missingPanel(hazard: string): boolean {
  const id = CSS.escape(`Hazard-${hazard}`)
  return document.querySelector(`main .hazard#${id}:not(.card *)`) === null
}
