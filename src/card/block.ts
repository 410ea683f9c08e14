/** A work card with all its parts, as the build writes it and `verify` expects it. */
import type { Calculator } from '../../calculators/define.ts'
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
    drawing: calculator === undefined ? '' : drawnOnce(block, calculator, ctx),
    ask: askHtml(block, ctx),
  })
}

const drawings = new WeakMap<PublishedBlock, Map<string, string>>()

/** A card stands on its note's page and on its own; its drawing is the dearest part of it. */
function drawnOnce(block: PublishedBlock, calculator: Calculator, ctx: CardContext): string {
  if (ctx.builder !== undefined) return drawingHtml(block, calculator, ctx)
  const known = drawings.get(block) ?? new Map<string, string>()
  drawings.set(block, known)
  const units = ctx.units.join(' ')
  const drawing = known.get(units) ?? drawingHtml(block, calculator, ctx)
  known.set(units, drawing)
  return drawing
}
