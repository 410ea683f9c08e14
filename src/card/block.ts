/** A work card with all its parts, as the build writes it and `verify` expects it. */
import type { PublishedBlock } from '../ledger/published.ts'
import { askHtml } from './ask-link.ts'
import { cardHtml, type Mode } from './card.ts'
import type { CardContext } from './context.ts'
import { drawingHtml } from './drawing.ts'
import { cardHazardsHtml } from './hazards.ts'

export interface BlockOptions {
  /** Hazards whose panels the card carries itself, because the page does not. */
  readonly panels?: readonly string[]
}

export function blockHtml(
  block: PublishedBlock,
  ctx: CardContext,
  mode: Mode = 'built',
  options: BlockOptions = {},
): string {
  const calculator = ctx.calculator(block.calculator)
  return cardHtml(block, ctx, mode, {
    hazards: cardHazardsHtml(block.hazards, options.panels ?? []),
    drawing: calculator === undefined ? '' : drawingHtml(block, calculator, ctx),
    ask: askHtml(block, ctx),
  })
}
