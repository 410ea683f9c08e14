/**
 * The results of a block as numbers of the ledger: `note/block.flow`, and for a cell of a table
 * `note/block.legs.0.drop`. They rest on what the block was given and have its figures, at least two.
 */
import type { Calculator, NumberOutput, OutputValue } from '../../../calculators/define.ts'
import { dimensions } from '../../quantity/index.ts'
import { unitIn, unitsIn } from '../in-currency.ts'
import { vectorIn } from '../money.ts'
import type { Firmness, PublishedBlock } from '../published.ts'
import { showWorked } from '../show.ts'
import type { Evaluated, WorkContext } from './context.ts'

/** What all results of a block come from. */
interface Origin {
  readonly rests: readonly string[]
  readonly firmness: Firmness
  readonly roots: readonly Evaluated[]
  /** What stands for a result that is not there. */
  readonly untold: string
  /** Of its sums of money, where it is not the calculator's own. */
  readonly currency: string | undefined
}

/** The same for all results, found once. */
interface Common extends Omit<Origin, 'roots'> {
  readonly figures: number
}

export function addResults(
  ctx: WorkContext,
  block: PublishedBlock,
  calculator: Calculator,
  outputs: Readonly<Record<string, OutputValue>>,
  { rests, firmness, roots, untold, currency }: Origin,
): void {
  const common = { rests, firmness, untold, currency, figures: leastFigures(roots) }
  ctx.done.resultsOf.set(block.id, [])
  for (const [name, value] of Object.entries(outputs)) {
    const output = calculator.outputs[name]
    if (output?.type === 'number') addResult(ctx, block, name, output, value, common)
    if (output?.type !== 'table' || typeof value !== 'object') continue
    for (const [index, row] of value.entries())
      for (const [column, cell] of Object.entries(output.columns))
        if (cell.type === 'number')
          addResult(ctx, block, `${name}.${index}.${column}`, cell, row[column], common)
  }
}

function addResult(
  ctx: WorkContext,
  block: PublishedBlock,
  path: string,
  output: NumberOutput,
  computed: OutputValue,
  common: Common,
): void {
  const { rests, firmness, untold, currency } = common
  const name = `${block.name}.${path}`
  const id = `${block.note}/${name}`
  const value = typeof computed === 'number' ? computed : null
  const due = dimensions[output.of]
  const isForeign = currency !== undefined && unitIn(due.si, currency) !== due.si
  const named = isForeign ? {} : { of: output.of }
  const vector = isForeign ? vectorIn(due.vector, currency) : due.vector
  const { flavour } = due
  const units = unitsIn(output.units, currency)
  const exact = output.exact === true
  const figures = exact ? null : Math.max(common.figures, output.least ?? 0)
  const quantity = value === null ? null : { value, vector, flavour, ...named }
  const { units: systems } = ctx.published.site
  ctx.done.numbers.set(id, {
    quantity,
    firmness,
    figures,
    given: exact,
    unit: units[systems[0] === 'us' ? 1 : 0],
  })
  ctx.done.resultsOf.get(block.id)?.push(id)
  ctx.done.results.set(id, {
    id,
    note: block.note,
    name,
    kind: 'worked',
    firmness,
    value,
    unit: unitIn(due.si, currency),
    ...named,
    vector,
    flavour,
    ...showWorked(quantity, units, systems, { figures }, exact),
    ...(value === null ? { shown: untold } : {}),
    figures,
    ...(exact ? { exact } : {}),
    plusMinus: null,
    rests,
    calculator: block.calculator,
    block: block.id,
    source: null,
    instrument: null,
    date: ctx.dates.get(block.note) ?? '',
    file: block.file,
    line: block.line,
    column: 1,
    now: value,
  })
}

/** As few as the coarsest of what was measured or read; three when nothing limits them. */
function leastFigures(roots: readonly Evaluated[]): number {
  const counted = roots.flatMap(({ given, figures }) =>
    given || figures === null ? [] : [figures],
  )
  return counted.length === 0 ? 3 : Math.max(2, Math.min(...counted))
}
