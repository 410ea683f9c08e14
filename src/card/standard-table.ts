/** A standard table as readers see it: what the standard prints, each column with its unit. */
import type { Column, Table } from '../../calculators/tables/define.ts'
import { formatQuantity } from '../quantity/index.ts'
import { trustWords } from './calculator.ts'
import { attribute, escape } from './html.ts'
import { basisWords } from './findings.ts'
import { firm, sentenceHtml } from './firm.ts'

const headOf = ({ label, unit }: Column): string => (unit === '' ? label : `${label}, ${unit}`)

/** Empty where the standard leaves the cell empty. */
function cellText(cell: number | string | null): string {
  return typeof cell === 'number' ? formatQuantity(cell, '', { exact: true }) : (cell ?? '')
}

function rowHtml(cells: readonly (number | string | null)[], heads: readonly string[]): string {
  const html = cells.map((cell, index) => {
    const text = escape(cellText(cell))
    return index === 0
      ? `<th scope="row">${text}</th>`
      : `<td${attribute('data-label', heads[index])}>${text}</td>`
  })
  return `<tr>${html.join('')}</tr>`
}

export function standardTableHtml(table: Table): string {
  const heads = table.columns.map(headOf)
  // A few columns fit side by side on a phone; more make each row a list.
  const kind = heads.length > 4 ? 'ledger standard' : 'standard'
  return [
    `<table class="${kind}"><caption>${sentenceHtml(table.title)}</caption><thead><tr>`,
    ...heads.map((head) => `<th scope="col">${escape(head)}</th>`),
    `</tr></thead><tbody>${table.rows.map((cells) => rowHtml(cells, heads)).join('')}</tbody></table>`,
  ].join('')
}

/** `FAA AC 43.13-1B, table 9-3. Looked up for this kit.` */
export function tableSourceText({ source, trust }: Table): string {
  return firm(`${basisWords(source)} ${trustWords[trust]}`)
}
