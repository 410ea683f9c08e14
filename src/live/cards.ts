/**
 * The cards of the page. Those in sight are written anew at once, the others when no key was pressed for
 * a moment: a long page answers as fast as a short one. What the build wrote is kept and put back.
 */
import type { CardContext } from '../card/context.ts'
import { cardEnds, cardPieces, type Mode } from '../card/card.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import type { Makers } from './makers.ts'
import { elementOf, elementsOf, morph } from './places.ts'
import { sightOf, type Sight } from './sight.ts'
import { words } from '../words/words.ts'

interface Card {
  readonly host: HTMLElement
  readonly id: string
  readonly original: Element
  current: Element
  /** What stands in `current`, when the build did not write it. */
  pieces: Piece[]
}

interface Piece {
  readonly html: string
  readonly elements: readonly Element[]
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
    return original === null || id === undefined
      ? []
      : [{ host, id, original, current: original, pieces: [] }]
  })
  const sight = sightOf(new Map(cards.map((card) => [card, card.current])))
  let old: ReadonlySet<string> = new Set()

  return {
    draw(ids, ctx, isBuilders) {
      const wanted = new Set(ids)
      for (const card of cards) {
        if (!wanted.has(card.id)) continue
        const draw = (): void => {
          const block = ctx.block(card.id)
          if (block === undefined || isBuilders(card.id)) restore(card, sight)
          else if (!write(card, block, ctx, makers, sight)) {
            sight.putOff(card, draw)
            void makers.ready().then(() => {
              if (sight.waitingFor(card) === draw) sight.draw(card, draw)
            })
          }
        }
        sight.draw(card, draw)
      }
    },
    markOld(ids) {
      const before = old
      old = ids
      if (before.size === 0 && ids.size === 0) return
      for (const { host, id } of cards) {
        const said = host.querySelector(':scope > .card-old')
        if (!ids.has(id)) said?.remove()
        else if (said === null) {
          const line = document.createElement('p')
          line.className = 'card-old'
          line.textContent = words`An entry is wrong. These are the figures from before it.`
          host.querySelector(':scope > .card')?.before(line)
        }
      }
    },
    settle() {
      sight.settle()
    },
  }
}

function restore(card: Card, sight: Sight<Card>): void {
  if (card.current === card.original) return
  card.current.replaceWith(card.original)
  card.current = card.original
  card.pieces = []
  sight.exchanged(card, card.original)
}

/** False: a part of it is still to be fetched. */
function write(
  card: Card,
  block: PublishedBlock,
  ctx: CardContext,
  makers: Makers,
  sight: Sight<Card>,
): boolean {
  const parts = makers.partsOf(block, card.original, ctx)
  if (parts === undefined) return false
  // In other units the builder's figures are still the builder's.
  const mode: Mode = block === ctx.builder?.block(block.id) ? 'built' : 'yours'
  if (card.current === card.original) {
    const made = elementOf(cardEnds(block, mode).join(''))
    if (made === null) return true
    card.original.replaceWith(made)
    card.current = made
    sight.exchanged(card, made)
  }
  const name = `card card-${mode}`
  if (card.current.className !== name) card.current.className = name
  const pieces = cardPieces(block, ctx, mode, parts)
  card.pieces = pieces.map((html, index) => exchanged(card, index, html))
  return true
}

/** Puts a piece in its place; what is as before stays untouched. */
function exchanged(card: Card, index: number, html: string): Piece {
  const before = card.pieces[index] ?? { html: '', elements: [] }
  if (before.html === html) return before
  const elements = elementsOf(html)
  const alike =
    elements.length === before.elements.length &&
    elements.every((element, at) => element.tagName === before.elements[at]?.tagName)
  if (alike) {
    for (const [at, made] of elements.entries()) {
      const element = before.elements[at]
      if (element !== undefined) morph(element, made)
    }
    return { html, elements: before.elements }
  }
  const next = card.pieces.slice(index + 1).find((piece) => piece.elements.length > 0)?.elements[0]
  for (const element of elements) card.current.insertBefore(element, next ?? null)
  for (const element of before.elements) element.remove()
  return { html, elements }
}
