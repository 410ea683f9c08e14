/**
 * A calculator run the way a note runs it: texts with units in, SI numbers through `compute`.
 *
 * In: a calculator and an example. Out: what `compute` sees and gives, findings, working. Defaults are
 * filled in; what is optional and left out is undefined. A text that cannot be read, or lies outside a
 * field's hard range, throws with the field's name: then the example is wrong, not the calculator.
 */
import type {
  Calculator,
  Example,
  ExampleValue,
  Field,
  Fields,
  Finding,
  InputValue,
  NumberField,
  OutputValue,
  Say,
} from '../../calculators/define.ts'
import { formatQuantity, fromSI, parseQuantity, toSI } from '../../src/quantity/index.ts'
import type { Of } from '../../src/quantity/index.ts'

export interface Run {
  readonly input: Readonly<Record<string, InputValue>>
  readonly output: Readonly<Record<string, OutputValue>>
  readonly findings: readonly Finding[]
  readonly working: readonly string[]
}

export const say: Say = (value, unit, figures) =>
  value === undefined
    ? 'cannot tell'
    : formatQuantity(value, unit, figures === undefined ? {} : { figures })

export function runExample(calculator: Calculator, example: Example): Run {
  const unknown = Object.keys(example.inputs).filter((name) => !(name in calculator.inputs))
  if (unknown.length > 0) throw new Error(`no such input: ${unknown.join(', ')}`)
  return run(calculator, readInputs(calculator.inputs, example.inputs))
}

export function run(calculator: Calculator, input: Run['input']): Run {
  const output = calculator.compute(input)
  const findings = calculator.findings(input, output, say)
  return { input, output, findings, working: calculator.working(input, output, say) }
}

function readInputs(
  fields: Fields,
  texts: Readonly<Record<string, ExampleValue | undefined>>,
): Record<string, InputValue> {
  return Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [name, readInput(name, field, texts[name])]),
  )
}

function readInput(name: string, field: Field, given: ExampleValue | undefined): InputValue {
  if (given === undefined) return withoutInput(name, field)
  if (field.type === 'list') {
    if (typeof given === 'string') throw new Error(`${name}: a list of rows is due`)
    const [least, most] = field.rows
    if (given.length < least || given.length > most)
      throw new Error(`${name}: too few or many rows`)
    return given.map((row, i) => {
      const strange = Object.keys(row).filter((column) => !(column in field.fields))
      if (strange.length > 0) throw new Error(`${name} ${i + 1}: no such field: ${strange.join()}`)
      return Object.fromEntries(
        Object.entries(field.fields).map(([column, of]) => {
          const value = readInput(`${name} ${i + 1}, ${column}`, of, row[column])
          if (typeof value === 'object') throw new Error(`${name}: a list inside a list`)
          return [column, value]
        }),
      )
    })
  }
  if (typeof given !== 'string') throw new Error(`${name}: a text is due`)
  if (field.type === 'text') return given
  if (field.type === 'number') return readNumberField(name, field, given)
  if (!Object.hasOwn(field.options, given)) throw new Error(`${name}: \`${given}\` is no option`)
  return given
}

function withoutInput(name: string, field: Field): InputValue {
  if (field.type === 'number' && field.assume) return toSI(field.assume.value, field.units[0])
  if (field.type === 'choice' && field.assume) return field.assume.value
  if (field.optional) return undefined
  throw new Error(`${name}: nothing given and no default`)
}

function readNumberField(name: string, field: NumberField, text: string): number {
  const value = readPrinted(text, field.of)
  if (!inHardRange(field, value)) throw new Error(`${name}: \`${text}\` is outside the hard range`)
  return value
}

/** With a hair at both ends, since a limit in °F or inches is seldom a whole float. */
export function inHardRange(
  { hard: [low, high], units: [unit] }: NumberField,
  value: number,
): boolean {
  const number = fromSI(value, unit)
  const hair = 1e-9 * Math.max(Math.abs(low), Math.abs(high))
  return number >= low - hair && number <= high + hair
}

function readPrinted(text: string, of: Of): number {
  const read = parseQuantity(text, of)
  if (!read.ok) throw new Error(`\`${text}\`: ${read.text}${read.hint ? ` (${read.hint})` : ''}`)
  return read.value
}

export interface Printed {
  /** In `unit`, as printed. */
  readonly number: number
  readonly unit: string
  /** Half a unit of the last printed digit; a hair for fractions and standard sizes. */
  readonly half: number
}

/** An outside answer with the digits it was printed with. */
export function printed(text: string, of: Of): Printed {
  const read = parseQuantity(text, of)
  if (!read.ok) throw new Error(`\`${text}\`: ${read.text}${read.hint ? ` (${read.hint})` : ''}`)
  const number = fromSI(read.value, read.unit)
  const [, decimals = '', size = ''] =
    /^[^\d.]*[\d,\u202F]*(?:\.(\d*))?(?:e([+-]?\d+))?/i.exec(read.typed) ?? []
  const power = /× ?10([⁻⁰¹²³⁴-⁹]+)/.exec(read.typed)?.[1]?.normalize('NFKC').replace('−', '-')
  const half = 0.5 * 10 ** (Number(power ?? size) - decimals.length)
  const isDigits = read.unit !== 'AWG' && !/[/½¼¾⅐-⅞]\d*/.test(read.typed.split(' ')[0] ?? '')
  return { number, unit: read.unit, half: isDigits ? half : 1e-9 * Math.abs(number) }
}
