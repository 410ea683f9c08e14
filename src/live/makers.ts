/**
 * The makers of those parts of a card that not every page needs: drawings, hazard panels, the link by
 * which to ask. Fetched where a card needs them; until the panels are there, no card is written that
 * would have to do without.
 */
import type { askHtml } from '../card/ask-link.ts'
import type { CardContext } from '../card/context.ts'
import type { CardParts } from '../card/card.ts'
import type { drawingHtml } from '../card/drawing.ts'
import type { cardHazardsHtml } from '../card/hazards.ts'
import type { PublishedBlock } from '../ledger/published.ts'

export interface Makers {
  /** undefined: a part is still to be fetched; `ready` then settles when it is there. */
  partsOf(block: PublishedBlock, original: Element, ctx: CardContext): CardParts | undefined
  ready(): Promise<void>
}

export async function makersFor(draws: boolean, asks: boolean): Promise<Makers> {
  const [drawing, ask] = await Promise.all([
    draws ? import('../card/drawing.ts') : undefined,
    asks ? import('../card/ask-link.ts') : undefined,
  ])
  return makers(drawing?.drawingHtml, ask?.askHtml)
}

function makers(drawing: typeof drawingHtml | undefined, ask: typeof askHtml | undefined): Makers {
  let hazards: typeof cardHazardsHtml | undefined
  return {
    async ready() {
      hazards ??= (await import('../card/hazards.ts')).cardHazardsHtml
    },
    partsOf(block, original, ctx) {
      const calculator = ctx.calculator(block.calculator)
      const before = ctx.builder?.block(block.id)?.hazards ?? []
      // Where the hazards are the builder's, their panels stand on the page already.
      const alike = before.join(' ') === block.hazards.join(' ')
      if (!alike && hazards === undefined) return undefined
      const line = original.querySelector(':scope > .hazard-line')?.outerHTML ?? ''
      const panels = block.hazards.filter((hazard) => missingPanel(hazard))
      return {
        hazards: alike ? line : (hazards?.(block.hazards, panels) ?? ''),
        drawing: calculator === undefined ? '' : (drawing?.(block, calculator, ctx) ?? ''),
        ask: ask?.(block, ctx) ?? '',
      }
    },
  }
}

/** A panel that the build did not write on this page. */
function missingPanel(hazard: string): boolean {
  const id = CSS.escape(`Hazard-${hazard}`)
  return document.querySelector(`main .hazard#${id}:not(.card *)`) === null
}
