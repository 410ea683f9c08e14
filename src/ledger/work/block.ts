/**
 * Works one block: its inputs as `compute` sees them, its results, its verdict. An input that is not
 * known leaves the whole block unable to tell, which is a verdict and not a fault.
 */
import type { Calculator, Field, InputValue, OutputValue } from '../../../calculators/define.ts'
import { acceptProblems, isProvisional, publishFindings, verdictOf, weakest } from '../judge.ts'
import type { Firmness, Given, PlainValue, PublishedBlock } from '../published.ts'
import { cannotTell, compute, type Missing } from './compute.ts'
import type { Evaluated, WorkContext } from './context.ts'
import { untold } from '../untold.ts'
import { currencyOfBlock } from './currency.ts'
import { addResults } from './results.ts'

export function evaluateBlock(ctx: WorkContext, block: PublishedBlock): void {
  const calculator = ctx.calculators.get(block.calculator)
  if (calculator === undefined) return
  const all = readInputs(ctx, block, calculator)
  const inputs = Object.fromEntries(all.map(({ name, value }) => [name, value]))
  const { currency, mixed } = currencyOfBlock(ctx, block)
  const missing = [...all.flatMap((one) => one.missing), ...mixed]
  const { seen, unread } = watched(inputs, leftToUsual(block))
  const computed =
    missing.length > 0
      ? cannotTell(calculator, missing)
      : compute(ctx, block, calculator, seen, currency)
  const unused = missing.length > 0 ? [] : unread()
  const used = all.filter(({ name }) => !unused.includes(name))
  const roots = used.flatMap((one) => one.roots)
  const firmnesses: Firmness[] = [
    ...roots.map(({ firmness }) => firmness),
    ...used.filter(({ name }) => isAssumedWord(block.given[name])).map(() => 'assumed' as const),
  ]
  const findings = publishFindings(calculator, computed.findings)
  addResults(ctx, block, calculator, computed.outputs, {
    untold: untold(findings),
    rests: [...new Set(used.flatMap(({ rests }) => rests))].sort(),
    firmness: weakest(firmnesses),
    roots,
    currency,
  })
  const verdict = verdictOf(findings)
  const done: PublishedBlock = {
    ...withoutWorked(block),
    ...(currency === undefined ? {} : { currency }),
    ...(unused.length === 0 ? {} : { unused }),
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

/** What an earlier working left there. */
function withoutWorked(block: PublishedBlock): PublishedBlock {
  if (block.unused === undefined && block.currency === undefined) return block
  const rest = { ...block }
  Reflect.deleteProperty(rest, 'unused')
  Reflect.deleteProperty(rest, 'currency')
  return rest
}

/** The inputs that a calculator sees, and which of these names it never looked at. */
function watched(inputs: Readonly<Record<string, InputValue>>, names: readonly string[]) {
  const read = new Set<string>()
  const seen = { ...inputs }
  for (const name of names)
    Object.defineProperty(seen, name, {
      enumerable: true,
      get: () => {
        read.add(name)
        return inputs[name]
      },
    })
  return { seen, unread: () => names.filter((name) => !read.has(name)) }
}

const leftToUsual = ({ given }: PublishedBlock): string[] =>
  Object.entries(given).flatMap(([name, one]) =>
    one.type !== 'rows' && one.how === 'assumed-default' ? [name] : [],
  )

/** What one field of a block gets, and what that rests on. */
interface Read {
  readonly name: string
  readonly value: InputValue
  readonly roots: Evaluated[]
  readonly rests: string[]
  /** The fields that are needed and cannot be told. */
  readonly missing: Missing[]
}

type Found = Pick<Read, 'roots' | 'rests' | 'missing'>

const readInputs = (ctx: WorkContext, block: PublishedBlock, calculator: Calculator): Read[] =>
  Object.entries(calculator.inputs).map(([name, field]) => {
    const found: Found = { roots: [], rests: [], missing: [] }
    return { name, value: readInput(ctx, field, block.given[name], found), ...found }
  })

function readInput(
  ctx: WorkContext,
  field: Field,
  given: Given | undefined,
  found: Found,
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

const isAssumedWord = (given: Given | undefined): boolean =>
  given?.type === 'word' && given.how === 'assumed-default'

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
