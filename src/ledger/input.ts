/**
 * Inputs as typed, of any kind of field: numbers, words of a choice, names, and rows of a list.
 * In: the field and its text. Out: what `compute` is to see, or a slip in a builder's words.
 */
import type { ChoiceField, ListField, NumberField, TextField } from '../../calculators/define.ts'
import type { ParsedQuantity, Slip } from '../quantity/types.ts'
import { defined } from './defined.ts'
import { readNumber } from './range.ts'
import { didYouMean } from './report.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

export type SingleField = NumberField | ChoiceField | TextField

export interface Entry {
  readonly ok: true
  readonly value: number | string
  /** For numbers: the quantity as read. */
  readonly quantity?: ParsedQuantity
  /** Allowed, and yet rare. */
  readonly unusual?: string
}

export const mayBeLeftOut = (field: SingleField | ListField): boolean =>
  field.optional === true || 'assume' in field

/** A value of a field as its author would type it. */
export const asTyped = (value: number, { units: [unit] }: NumberField): string =>
  unit === '' ? String(value) : `${value} ${unit}`

/** The key of a choice that a text means: the key itself, or its words. */
export function readChoice(field: ChoiceField, text: string): Entry | Slip {
  const keys = Object.keys(field.options)
  const wanted = text.normalize('NFKC').trim()
  const folded = wanted.toLowerCase().replace(/\s+/g, '-')
  const key =
    keys.find((option) => option === wanted) ??
    keys.find((option) => option.toLowerCase() === folded) ??
    keys.find((option) => field.options[option]?.toLowerCase() === wanted.toLowerCase())
  if (key !== undefined) return { ok: true, value: key }
  return {
    ok: false,
    rule: 'unknown-choice',
    text: words`“${field.label}” cannot be \`${text}\``,
    allowed: keys.join(', '),
    ...defined({ hint: didYouMean(wanted, keys) }),
  }
}

/** A name; one that has to be given must not be empty. */
export function readText(field: TextField, text: string): Entry | Slip {
  const value = text.trim()
  return value !== '' || field.optional === true
    ? { ok: true, value }
    : {
        ok: false,
        rule: 'no-name',
        text: words`“${field.label}” is empty: \`${text}\` was read`,
        allowed: words`any words`,
        hint: field.help,
      }
}

export function readField(field: SingleField, text: string): Entry | Slip {
  if (field.type === 'text') return readText(field, text)
  if (field.type === 'choice') return readChoice(field, text)
  const read = readNumber(field, text)
  if (!read.ok) return read
  const { quantity, unusual } = read
  return {
    ok: true,
    value: quantity.value,
    quantity,
    ...(unusual === undefined ? {} : { unusual }),
  }
}

export interface RowsRead {
  readonly ok: true
  readonly rows: readonly Readonly<Record<string, Entry>>[]
}

/** A list's rows; an empty cell of a field that may be left out is absent. */
export function readRows(
  field: ListField,
  rows: readonly Readonly<Record<string, string>>[],
): RowsRead | Slip {
  const [least, most] = field.rows
  if (rows.length < least || rows.length > most)
    return {
      ok: false,
      rule: 'list-length',
      text: counted(
        rows.length,
        words`“${field.label}” has ${rows.length} row`,
        words`“${field.label}” has ${rows.length} rows`,
      ),
      allowed: words`${least} to ${most} rows, one for each ${field.row}`,
    }
  const made: Record<string, Entry>[] = []
  for (const [index, row] of rows.entries()) {
    const cells: Record<string, Entry> = {}
    for (const [name, inner] of Object.entries(field.fields)) {
      const text = row[name]?.trim() ?? ''
      if (text === '' && mayBeLeftOut(inner)) continue
      const read = readField(inner, text)
      if (!read.ok)
        return { ...read, text: `${field.row} ${index + 1}, ${inner.label}: ${read.text}` }
      cells[name] = read
    }
    made.push(cells)
  }
  return { ok: true, rows: made }
}

/** A slip as one line. */
export const slipWords = ({ text, allowed, hint }: Slip): string =>
  [text, allowed === undefined ? undefined : words`allowed: ${allowed}`, hint]
    .filter((part) => part !== undefined)
    .join('; ')
