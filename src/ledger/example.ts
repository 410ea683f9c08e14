/**
 * Runs one of a calculator's outside examples: the text inputs through the same reading as an
 * author's, the answers held against the digits that were printed. The tests and the calculator's
 * page both call this, so the page cannot claim more than the tests know.
 */
import type {
  Calculator,
  Example,
  InputValue,
  Level,
  NumberOutput,
  OutputValue,
  TextOutput,
} from '../../calculators/define.ts'
import { formatQuantity, fromSI, parseQuantity, toSI } from '../quantity/index.ts'
import { mayBeLeftOut, readField, readRows, slipWords, type SingleField } from './input.ts'
import { say } from './show.ts'

export interface ExampleRow {
  /** Id of the output: `flow`, or `legs.0.drop` for a cell of a table. */
  readonly output: string
  readonly label: string
  /** As the source prints it. */
  readonly printed: string
  /** The same quantity as this kit computes it, in the printed unit. */
  readonly computed: string
  /** (computed − printed) / printed, in the printed unit; absolute where the printed value is 0. */
  readonly difference: number
  /** Greatest difference allowed, in the same measure. */
  readonly allowed: number
  readonly within: boolean
}

export interface ExampleFinding {
  readonly check: string
  readonly expected: Level
  readonly found: Level | undefined
}

export interface ExampleResult {
  readonly rows: readonly ExampleRow[]
  readonly findings: readonly ExampleFinding[]
  /** Every row within its tolerance and every finding as expected. */
  readonly holds: boolean
}

/** The value that stands in when an input is left out. */
function leftOut(field: SingleField): number | string | undefined {
  if (field.type === 'number' && field.assume !== undefined) {
    return toSI(field.assume.value, field.units[0])
  }
  return field.type === 'choice' ? field.assume?.value : undefined
}

/** The example's inputs as `compute` wants them; throws when the example itself is wrong. */
export function exampleInputs(
  calculator: Calculator,
  example: Example,
): Readonly<Record<string, InputValue>> {
  const where = `${calculator.id}, example “${example.name}”`
  for (const key of Object.keys(example.inputs)) {
    if (calculator.inputs[key] === undefined) throw new Error(`${where}: no input \`${key}\``)
  }
  const inputs: Record<string, InputValue> = {}
  for (const [key, field] of Object.entries(calculator.inputs)) {
    const typed = example.inputs[key]
    if (field.type === 'list') {
      if (typed === undefined && field.optional === true) continue
      if (typeof typed === 'string') throw new Error(`${where}: \`${key}\` is a list`)
      const read = readRows(field, typed ?? [])
      if (!read.ok) throw new Error(`${where}: ${slipWords(read)}`)
      inputs[key] = read.rows.map((row) =>
        Object.fromEntries(
          Object.entries(field.fields).map(([column, cell]) => {
            const entry = row[column]
            return [column, entry === undefined ? leftOut(cell) : entry.value]
          }),
        ),
      )
      continue
    }
    if (typed === undefined) {
      if (!mayBeLeftOut(field)) throw new Error(`${where}: \`${key}\` is missing`)
      inputs[key] = leftOut(field)
      continue
    }
    if (typeof typed !== 'string') throw new Error(`${where}: \`${key}\` is not a list`)
    const entry = readField(field, typed)
    if (!entry.ok) throw new Error(`${where}: ${slipWords(entry)}`)
    inputs[key] = entry.value
  }
  return inputs
}

/** Half a unit of the last digit of `12.30`, in the printed unit. */
export function halfUnit(printed: string): number {
  const digits = /^[-−+]?([\d\s\u202f]*)(?:\.(\d+))?(?:\s*(?:[eE]|[×x]\s*10\^?)([-−+]?\d+))?/.exec(
    printed.trim(),
  )
  const decimals = digits?.[2]?.length ?? 0
  const power = Number((digits?.[3] ?? '0').replace('−', '-'))
  return 0.5 * 10 ** (power - decimals)
}

function found(
  calculator: Calculator,
  outputs: Readonly<Record<string, OutputValue>>,
  path: string,
): { readonly field: NumberOutput | TextOutput; readonly value: unknown } | undefined {
  const [key = '', row, column = ''] = path.split('.')
  const field = calculator.outputs[key]
  if (field === undefined) return undefined
  if (field.type !== 'table') return { field, value: outputs[key] }
  const inner = field.columns[column]
  const table = outputs[key]
  if (inner === undefined || typeof table !== 'object') return undefined
  const cells = table[Number(row)]
  return { field: inner, value: cells?.[column] }
}

function rowOf(
  calculator: Calculator,
  example: Example,
  outputs: Readonly<Record<string, OutputValue>>,
  path: string,
  printed: string,
): ExampleRow {
  const where = `${calculator.id}, example “${example.name}”`
  const at = found(calculator, outputs, path)
  if (at === undefined) throw new Error(`${where}: no output \`${path}\``)
  const { field, value } = at
  const base = { output: path, label: field.label, printed }
  if (field.type === 'text' || typeof value !== 'number') {
    const same = (typeof value === 'string' ? value : 'cannot tell') === printed
    return {
      ...base,
      computed: typeof value === 'string' ? value : 'cannot tell',
      difference: same ? 0 : Infinity,
      allowed: 0,
      within: same,
    }
  }
  const quantity = parseQuantity(printed, field.of)
  if (!quantity.ok) throw new Error(`${where}: ${slipWords(quantity)}`)
  const printedUnit = quantity.unit === '' ? field.units[0] : quantity.unit
  const answer = fromSI(quantity.value, printedUnit)
  const size = Math.abs(answer)
  const relative = size > 0
  const allowed = example.tolerance ?? (relative ? halfUnit(printed) / size : halfUnit(printed))
  const difference = (fromSI(value, printedUnit) - answer) / (relative ? size : 1)
  return {
    ...base,
    computed: formatQuantity(value, printedUnit, { figures: 5 }),
    difference,
    allowed,
    within: Math.abs(difference) <= allowed * (1 + 1e-9),
  }
}

export function runExample(calculator: Calculator, example: Example): ExampleResult {
  const inputs = exampleInputs(calculator, example)
  const outputs = calculator.compute(inputs)
  const rows = Object.entries(example.outputs).flatMap(([path, printed]) =>
    printed === undefined ? [] : [rowOf(calculator, example, outputs, path, printed)],
  )
  const judged = calculator.findings(inputs, outputs, say)
  const findings = Object.entries(example.findings ?? {}).flatMap(([check, expected]) =>
    expected === undefined
      ? []
      : [{ check, expected, found: judged.find((finding) => finding.check === check)?.level }],
  )
  return {
    rows,
    findings,
    holds:
      rows.every(({ within }) => within) &&
      findings.every((finding) => finding.expected === finding.found),
  }
}
