/**
 * Works one block: its inputs as `compute` sees them, its results, its verdict. An input that is not
 * known leaves the whole block unable to tell, which is a verdict and not a fault.
 */
import type { Calculator, Field, InputValue, OutputValue } from '../../../calculators/define.ts'
import { acceptProblems, isProvisional, publishFindings, verdictOf, weakest } from '../judge.ts'
import type { Firmness, Given, PlainValue, PublishedBlock } from '../published.ts'
import { cannotTell, compute, type Missing } from './compute.ts'
import type { Evaluated, WorkContext } from './context.ts'
import { addResults } from './results.ts'

export function evaluateBlock(ctx: WorkContext, block: PublishedBlock): void {
  const calculator = ctx.calculators.get(block.calculator)
  if (calculator === undefined) return
  const { inputs, roots, rests, missing } = readInputs(ctx, block, calculator)
  const firmnesses: Firmness[] = [
    ...roots.map(({ firmness }) => firmness),
    ...assumedWords(block).map(() => 'assumed' as const),
  ]
  const computed =
    missing.length > 0 ? cannotTell(calculator, missing) : compute(ctx, block, calculator, inputs)
  addResults(ctx, block, calculator, computed.outputs, {
    rests: [...new Set(rests)].sort(),
    firmness: weakest(firmnesses),
    roots,
  })
  const findings = publishFindings(calculator, computed.findings)
  const verdict = verdictOf(findings)
  const done: PublishedBlock = {
    ...block,
    inputs: plainRecord(inputs),
    outputs: plainRecord(computed.outputs),
    findings,
    working: computed.working,
    hazards: computed.hazards,
    verdict,
    provisional: isProvisional(verdict, firmnesses),
  }
  ctx.done.blocks.set(block.id, done)
  ctx.problems.push(...acceptProblems(done, calculator))
}

/** What a block gets, and what that rests on. */
interface Inputs {
  readonly inputs: Readonly<Record<string, InputValue>>
  readonly roots: Evaluated[]
  readonly rests: string[]
  /** The fields that are needed and cannot be told. */
  readonly missing: Missing[]
}

function readInputs(ctx: WorkContext, block: PublishedBlock, calculator: Calculator): Inputs {
  const found: Omit<Inputs, 'inputs'> = { roots: [], rests: [], missing: [] }
  const inputs = Object.fromEntries(
    Object.entries(calculator.inputs).map(([name, field]) => [
      name,
      readInput(ctx, field, block.given[name], found),
    ]),
  )
  return { ...found, inputs }
}

function readInput(
  ctx: WorkContext,
  field: Field,
  given: Given | undefined,
  found: Omit<Inputs, 'inputs'>,
): InputValue {
  if (given === undefined) {
    if (!('optional' in field)) found.missing.push({ label: field.label })
    return undefined
  }
  if (given.type === 'word') return given.value
  if (given.type === 'number') {
    found.rests.push(given.id)
    const value = ctx.ownValue(given.id)
    found.roots.push(value)
    if (value.quantity === null) found.missing.push({ label: field.label, why: value.why })
    return value.quantity?.value
  }
  if (field.type !== 'list') return undefined
  return given.rows.map((row) =>
    Object.fromEntries(
      Object.entries(field.fields).map(([name, inner]) => {
        const value = readInput(ctx, inner, row[name], found)
        return [name, typeof value === 'object' ? undefined : value]
      }),
    ),
  )
}

const assumedWords = ({ given }: PublishedBlock): Given[] =>
  Object.values(given).filter((one) => one.type === 'word' && one.how === 'assumed-default')

/** As published: what is not known is absent, in a row too. */
function plainRecord(values: Readonly<Record<string, OutputValue>>): Record<string, PlainValue> {
  const made: Record<string, PlainValue> = {}
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) continue
    made[name] = typeof value === 'object' ? value.map(plainRow) : value
  }
  return made
}

function plainRow(
  row: Readonly<Record<string, number | string | undefined>>,
): Record<string, number | string> {
  return Object.fromEntries(
    Object.entries(row).flatMap(([key, cell]) => (cell === undefined ? [] : [[key, cell]])),
  )
}
