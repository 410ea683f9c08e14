/**
 * Runs one of a calculator's outside examples: the text inputs through the same reading as an
 * author's, the answers held against the digits that were printed. The tests and the calculator's
 * page both call this, so the page cannot claim more than the tests know.
 */
import type {
  Calculator,
  Example,
  ExampleValue,
  Field,
  InputValue,
  Level,
  NumberOutput,
  OutputValue,
  TextOutput,
} from '../../calculators/define.ts'
import type { Of } from '../quantity/types.ts'
import { formatQuantity, fromSI, parseQuantity, toSI } from '../quantity/index.ts'
import { mayBeLeftOut, readField, readRows, slipWords, type SingleField } from './input.ts'
import { say } from './say.ts'
import { words } from '../words/words.ts'

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

/** An example keeps to the letter what an author may write more freely. */
function checkLetter(where: string, field: Field, typed: ExampleValue): void {
  if (field.type === 'choice' && typeof typed === 'string' && !Object.hasOwn(field.options, typed))
    throw new Error(`${where}: \`${typed}\` is no option`)
  if (field.type !== 'list' || typeof typed === 'string') return
  for (const row of typed)
    for (const [column, cell] of Object.entries(row)) {
      const inner = field.fields[column]
      if (inner === undefined) throw new Error(`${where}: a ${field.row} has no \`${column}\``)
      checkLetter(where, inner, cell)
    }
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
    if (typed !== undefined) checkLetter(where, field, typed)
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
export function halfUnit(text: string): number {
  const [, decimals = '', size = '0'] =
    /^[^\d.]*[\d,\s\u202F]*(?:\.(\d*))?(?:e([+-]?\d+))?/i.exec(text.trim()) ?? []
  const power = /[×x]\s*10\^?([-−+⁻⁰¹²³⁴-⁹\d]+)/
    .exec(text)?.[1]
    ?.normalize('NFKC')
    .replace('−', '-')
  return 0.5 * 10 ** (Number(power ?? size) - decimals.length)
}

export interface Printed {
  /** In `unit`, as printed. */
  readonly number: number
  readonly unit: string
  /** Half a unit of the last printed digit; a hair for fractions and standard sizes. */
  readonly half: number
}

/** An outside answer with the digits it was printed with; throws when it cannot be read. */
export function printed(text: string, of: Of): Printed {
  const read = parseQuantity(text, of)
  if (!read.ok) throw new Error(slipWords(read))
  const number = fromSI(read.value, read.unit)
  const isDigits = read.unit !== 'AWG' && !/[/½¼¾⅐-⅞]\d*/.test(read.typed.split(' ')[0] ?? '')
  return {
    number,
    unit: read.unit,
    half: isDigits ? halfUnit(read.typed) : 1e-9 * Math.abs(number),
  }
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
  text: string,
): ExampleRow {
  const where = `${calculator.id}, example “${example.name}”`
  const at = found(calculator, outputs, path)
  if (at === undefined) throw new Error(`${where}: no output \`${path}\``)
  const { field, value } = at
  const untold = text === 'cannot tell'
  const base = { output: path, label: field.label, printed: untold ? words`cannot tell` : text }
  if (field.type === 'text' || typeof value !== 'number') {
    const same = (typeof value === 'string' ? value : 'cannot tell') === text
    return {
      ...base,
      computed: typeof value === 'string' ? value : words`cannot tell`,
      difference: same ? 0 : Infinity,
      allowed: 0,
      within: same,
    }
  }
  const { number: answer, unit, half } = printedAt(where, text, field)
  const size = Math.abs(answer)
  const relative = size > 0
  const allowed = example.tolerance ?? (relative ? half / size : half)
  const difference = (fromSI(value, unit) - answer) / (relative ? size : 1)
  return {
    ...base,
    computed: formatQuantity(value, unit, { figures: 5 }),
    difference,
    allowed,
    within: Math.abs(difference) <= allowed * (1 + 1e-9),
  }
}

function printedAt(where: string, text: string, field: NumberOutput): Printed {
  try {
    return printed(text, field.of)
  } catch (error) {
    throw new Error(`${where}: ${error instanceof Error ? error.message : String(error)}`, {
      cause: error,
    })
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
