/**
 * The places of a block where one value can be changed alone: its single inputs and the cells of its
 * lists. In: the block and its calculator. Out: each place with its field, its value in SI and where
 * that came from, and the inputs with one place changed.
 */
import type {
  Calculator,
  ChoiceField,
  Field,
  Fields,
  InputValue,
  ListField,
  NumberField,
  TextField,
} from '../../../calculators/define.ts'
import { toSI } from '../../quantity/index.ts'
import type { Given, PlainValue, PublishedBlock } from '../published.ts'

export type Inputs = Readonly<Record<string, InputValue>>
type Cell = number | string | undefined
type Row = Readonly<Record<string, Cell>>

interface Somewhere {
  /** `wire`, `hoses.0.length`. */
  readonly path: string
  /** `Wire`, `supply, length`. */
  readonly label: string
  readonly given: Given | undefined
}
export interface NumberPlace extends Somewhere {
  readonly field: NumberField
  /** SI; undefined where it was left out. */
  readonly now: number | undefined
}
export interface ChoicePlace extends Somewhere {
  readonly field: ChoiceField
  readonly now: string | undefined
}
export type Place = NumberPlace | ChoicePlace

export const isNumber = (place: Place): place is NumberPlace => place.field.type === 'number'

/** What `compute` saw, what was left out as undefined. */
export function inputsOf(block: PublishedBlock, { inputs }: Calculator): Inputs {
  return Object.fromEntries(
    Object.entries(inputs).map(([key, field]) => [key, inputOf(field, block.inputs[key])]),
  )
}

function inputOf(field: Field, value: PlainValue | undefined): InputValue {
  if (value === null || value === undefined) return undefined
  if (field.type !== 'list') return typeof value === 'object' ? undefined : value
  if (typeof value !== 'object') return undefined
  return value.map((row) =>
    Object.fromEntries(
      Object.keys(field.fields).map((column) => [column, row[column] ?? undefined]),
    ),
  )
}

/** Labels of what `compute` needs and does not have: the block then has no results to move. */
export function missingIn(block: PublishedBlock, { inputs }: Calculator): readonly string[] {
  const missing = (fields: Fields, given: Readonly<Record<string, Given>>, row: Values): string[] =>
    Object.entries(fields).flatMap(([key, field]) => {
      const one = given[key]
      const value = row[key]
      if (one === undefined) return field.optional === true ? [] : [field.label]
      if (field.type !== 'list' || one.type !== 'rows')
        return value === null || value === undefined ? [field.label] : []
      const rows = typeof value === 'object' && value !== null ? value : []
      return one.rows.flatMap((cells, index) => missing(field.fields, cells, rows[index] ?? {}))
    })
  return [...new Set(missing(inputs, block.given, block.inputs))]
}
type Values = Readonly<Record<string, PlainValue>>

export function placesOf(block: PublishedBlock, calculator: Calculator): readonly Place[] {
  const inputs = inputsOf(block, calculator)
  return Object.entries(calculator.inputs).flatMap(([key, field]) => {
    const given = block.given[key]
    const value = inputs[key]
    if (field.type !== 'list') return placeOf(field, key, field.label, given, value)
    if (typeof value !== 'object') return []
    const rows = given?.type === 'rows' ? given.rows : []
    return value.flatMap((row, index) =>
      Object.entries(field.fields).flatMap(([column, cell]) =>
        placeOf(
          cell,
          `${key}.${index}.${column}`,
          `${rowName(field, row, index)}, ${within(cell.label)}`,
          rows[index]?.[column],
          row[column],
        ),
      ),
    )
  })
}

function placeOf(
  field: NumberField | ChoiceField | TextField,
  path: string,
  label: string,
  given: Given | undefined,
  value: InputValue,
): Place[] {
  if (field.type === 'number')
    return [{ path, label, given, field, now: typeof value === 'number' ? value : undefined }]
  if (field.type === 'choice')
    return [{ path, label, given, field, now: typeof value === 'string' ? value : undefined }]
  return []
}

/** What a row is called: its first text, else its number. */
function rowName({ row, fields }: ListField, cells: Row, index: number): string {
  const key = Object.keys(fields).find((column) => fields[column]?.type === 'text')
  const name = key === undefined ? undefined : cells[key]
  return typeof name === 'string' && name.trim() !== '' ? name : `${row} ${index + 1}`
}

/** A label within a sentence; an abbreviation keeps its capitals. */
const within = (label: string): string =>
  /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label

/** The inputs with another value in one place. */
export function withValue(inputs: Inputs, { path }: Place, value: number | string): Inputs {
  const [key = '', index, column = ''] = path.split('.')
  if (index === undefined) return { ...inputs, [key]: value }
  const rows = inputs[key]
  if (typeof rows !== 'object') return inputs
  return {
    ...inputs,
    [key]: rows.map((row, at) => (at === Number(index) ? { ...row, [column]: value } : row)),
  }
}

export type Range = readonly [low: number, high: number]

const inSI = ([low, high]: Range, { units: [unit] }: NumberField): Range => [
  toSI(low, unit),
  toSI(high, unit),
]

export const hardRange = (field: NumberField): Range => inSI(field.hard, field)

/** Never wider than the hard range. */
export function usualRange(field: NumberField): Range {
  const [low, high] = inSI(field.usual, field)
  return [clip(low, field), clip(high, field)]
}

export function clip(value: number, field: NumberField): number {
  const [low, high] = hardRange(field)
  return Math.min(Math.max(value, low), high)
}

/** A plain number that can only be counted: cells, elbows, turns. */
export function isWhole({ field, now }: NumberPlace): boolean {
  const bounds = [...field.hard, ...field.usual]
  const wide = field.hard[1] - field.hard[0] >= leastCounted
  return field.of === 'number' && wide && [...bounds, now ?? 0].every(Number.isInteger)
}
/** A plain number of a smaller range is mostly a ratio or a coefficient. */
const leastCounted = 30
