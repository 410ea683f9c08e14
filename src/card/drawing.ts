/** The drawing of a card: its calculator's plot of what went in and what came out. */
import type { InputValue, OutputValue, Calculator } from '../../calculators/define.ts'
import { plotIn } from '../ledger/in-currency.ts'
import type { PlainValue, PublishedBlock } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { idOf } from './html.ts'
import { plotHtml } from './plot-table.ts'

/** JSON knows no undefined: `null` in the ledger is what `compute` calls undefined. */
function thawed(value: PlainValue): InputValue & OutputValue {
  if (value === null) return undefined
  if (typeof value !== 'object') return value
  return value.map((row) =>
    Object.fromEntries(Object.entries(row).map(([key, one]) => [key, one ?? undefined])),
  )
}

function values(record: Readonly<Record<string, PlainValue>>) {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, thawed(value)]))
}

/** '' where there is nothing to draw. */
export function drawingHtml(
  block: PublishedBlock,
  calculator: Calculator,
  ctx: CardContext,
): string {
  const plotOf = ({ inputs, outputs, currency }: PublishedBlock) => {
    const drawn = calculator.plot?.(values(inputs), values(outputs))
    return drawn && plotIn(drawn, currency)
  }
  const plot = plotOf(block)
  if (plot === undefined) return ''
  const before = ctx.builder?.block(block.id)
  return plotHtml(plot, {
    units: ctx.units,
    id: `Plot-${idOf(block.name)}`,
    builder: before === undefined || before === block ? undefined : plotOf(before),
  })
}
