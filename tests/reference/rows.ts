/**
 * The rows of a reference table in this folder as records of texts.
 *
 * Lines that begin with # say where the table comes from; the first other line names the columns.
 * Numbers stay texts: an empty cell is not zero.
 */
import { readFileSync } from 'node:fs'

export function referenceRows(name: string): readonly Readonly<Record<string, string>>[] {
  const lines = readFileSync(new URL(`./${name}.csv`, import.meta.url), 'utf8')
    .split(/\r?\n/)
    .filter((line) => line !== '' && !line.startsWith('#'))
  const columns = (lines[0] ?? '').split(',')
  return lines.slice(1).map((line) => {
    const cells = line.split(',')
    return Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? '']))
  })
}

/** A cell as a number; an empty or missing one is NaN, which no comparison lets pass. */
export function numberIn(row: Readonly<Record<string, string>>, column: string): number {
  const cell = row[column] ?? ''
  return cell === '' ? NaN : Number(cell)
}
