/** What the builder gave to a block, as the texts of a form. */
import type { ChoiceField, Fields, NumberField, TextField } from '../../calculators/define.ts'
import type { Given, PublishedBlock, PublishedNumber } from '../ledger/published.ts'

export type Single = NumberField | ChoiceField | TextField
export type Row = Readonly<Record<string, string>>
/** The texts of a form: a field's, or those of a list's rows. */
export type Texts = Readonly<Record<string, string | readonly Row[]>>

type Lookup = (id: string) => PublishedNumber | undefined

function textOf(given: Given | undefined, lookup: Lookup): string {
  if (given?.type === 'word') return given.value
  if (given?.type !== 'number') return ''
  const number = lookup(given.id)
  if (number === undefined || number.value === null) return ''
  // As it would be typed, so that a field left alone is no figure of the reader's.
  return (number.typed ?? number.shown).replace(/[\u00a0\u202f\u2212]/g, (sign) =>
    sign === '\u00a0' ? ' ' : sign === '\u2212' ? '-' : '',
  )
}

/** What the builder gave, as text. */
export function textsOf(block: PublishedBlock, fields: Fields, lookup: Lookup): Texts {
  return Object.fromEntries(
    Object.entries(fields).map(([key, field]): [string, Texts[string]] => {
      const given = block.given[key]
      if (field.type !== 'list') return [key, textOf(given, lookup)]
      const rows = given?.type === 'rows' ? given.rows : []
      return [key, rows.map((row) => rowTexts(Object.keys(field.fields), row, lookup))]
    }),
  )
}

function rowTexts(
  columns: readonly string[],
  row: Readonly<Record<string, Given>>,
  lookup: Lookup,
): Row {
  return Object.fromEntries(columns.map((column) => [column, textOf(row[column], lookup)]))
}
