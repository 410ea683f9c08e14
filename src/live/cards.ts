/**
 * The cards of the page. Those in sight are written anew at once, the others when no key was pressed for
 * a moment: a long page answers as fast as a short one. What the build wrote is kept and put back.
 */
import type { CardContext } from '../card/context.ts'
import { cardHtml } from '../card/card.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import type { Makers } from './makers.ts'
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

export function cardsOf(root: ParentNode, makers: Makers): Cards {
  const cards = [...root.querySelectorAll<HTMLElement>('work-card')].flatMap((host): Card[] => {
    const original = host.querySelector(':scope > .card')
    const id = host.dataset.block
    return original === null || id === undefined ? [] : [{ host, id, original, current: original }]
  })
  const waiting = new Map<Card, () => void>()
  const drawWaiting = (): void => {
    const draws = [...waiting.values()]
    waiting.clear()
    for (const draw of draws) draw()
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
          else if (!write(card, block, ctx, makers)) {
            waiting.set(card, draw)
            void makers.ready().then(() => {
              if (waiting.get(card) !== draw) return
              waiting.delete(card)
              draw()
            })
          }
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

/** False: a part of it is still to be fetched. */
function write(card: Card, block: PublishedBlock, ctx: CardContext, makers: Makers): boolean {
  const parts = makers.partsOf(block, card.original, ctx)
  const made = parts && elementOf(cardHtml(block, ctx, 'yours', parts))
  if (made === undefined) return false
  if (made === null) return true
  if (card.current === card.original) {
    card.current = made
    card.original.replaceWith(made)
  } else morph(card.current, made)
  return true
}
