/**
 * The reference tables beside this file as rows of named columns.
 *
 * In: a file name. Out: one record a row, texts. Lines that start with # are the table's origin and
 * are skipped; a cell in double quotes may hold commas. Read a number with `numberIn`, which refuses
 * an empty or unreadable cell instead of giving zero.
 */
import { readFileSync } from 'node:fs'

export type Row = Readonly<Record<string, string>>

export function rowsOf(file: string): readonly Row[] {
  const text = readFileSync(new URL(file, import.meta.url), 'utf8')
  const [header = [], ...rows] = text
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map((line) =>
      [...line.matchAll(/("[^"]*"|[^,]*)(?:,|$)/g)].map(([, cell = '']) =>
        cell.replaceAll('"', '').trim(),
      ),
    )
  return rows.map((cells) =>
    Object.fromEntries(header.filter((name) => name !== '').map((name, at) => [name, cells[at] ?? ''])),
  )
}

export function numberIn(row: Row, column: string): number {
  const cell = row[column]
  const value = cell === undefined || cell === '' ? NaN : Number(cell)
  if (!Number.isFinite(value)) throw new Error(`no number in column ${column}: ${JSON.stringify(row)}`)
  return value
}
