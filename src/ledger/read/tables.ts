/**
 * What stands between an element's tags: tables, which are read row by row, each cell by its heading.
 * Other text there is a fault, which is for the element to say.
 */
import type { Table, TableCell } from 'mdast'
import { toString } from 'mdast-util-to-string'
import type { RawInput, RawTable } from '../note-source.ts'
import type { Element } from './attributes.ts'
import type { Said } from '../report.ts'
import { report, startOf, type ReadContext, type Start } from './context.ts'
import { onlyExpression } from './estree.ts'
import { readBraces } from './inputs.ts'
import { words } from '../../words/words.ts'

export const tablesIn = ({ children }: Element): Table[] =>
  children.filter((child) => child.type === 'table')

export const hasOtherContent = ({ children }: Element): boolean =>
  children.some((child) => {
    if (child.type === 'table') return false
    if (child.type === 'text') return child.value.trim() !== ''
    return child.type !== 'paragraph' || child.children.length > 0
  })

/** Lines with strokes that are no table, since the line of dashes under the headings is missing. */
export function brokenTable({ children }: Element): BrokenTable | undefined {
  for (const child of children) {
    if (child.type !== 'paragraph') continue
    const [head = '', second = ''] = toString(child).trim().split('\n')
    if (!/^\|.*\|\s*$/.test(head)) continue
    const columns = head.split('|').length - 2
    // A line of other dashes is told as such.
    return { ...startOf(child), columns, isTold: /^[\s|:\p{Pd}]+$/u.test(second) }
  }
  return undefined
}

interface BrokenTable extends Start {
  readonly columns: number
  readonly isTold: boolean
}

/** Tells what is between the tags and is no table; out: whether a table was meant. */
export function reportOtherContent(ctx: ReadContext, element: Element, said: Said): boolean {
  if (!hasOtherContent(element)) return false
  const broken = brokenTable(element)
  if (broken === undefined) report(ctx, startOf(element), said)
  else if (!broken.isTold)
    report(ctx, broken, {
      rule: 'no-table-line',
      text: words`this table has no line of dashes under its headings, and is read as words`,
      hint: words`write \`${`|${' --- |'.repeat(broken.columns)}`}\` below the headings`,
    })
  return broken !== undefined
}

export function readTable(ctx: ReadContext, table: Table): RawTable {
  const [head, ...body] = table.children
  const headings = (head?.children ?? []).map((cell) => toString(cell).normalize('NFKC').trim())
  const rows = body.map((line) => {
    const row: Record<string, RawInput> = {}
    for (const [index, cell] of line.children.entries()) {
      const heading = headings[index]
      const read = heading === undefined ? undefined : readCell(ctx, cell)
      if (heading !== undefined && read !== undefined) row[heading] = read
    }
    return row
  })
  return { headings, rows, ...startOf(table) }
}

/** Undefined: an empty cell. */
function readCell(ctx: ReadContext, cell: TableCell): RawInput | undefined {
  const at = startOf(cell)
  const [only, ...more] = cell.children
  if (only?.type === 'mdxTextExpression' && more.length === 0 && only.data?.estree) {
    const node = onlyExpression(only.data.estree)
    return node === undefined
      ? { type: 'unread', ...at }
      : readBraces(ctx, node, only.value.trim(), startOf(only))
  }
  const text = toString(cell).trim()
  return text === '' ? undefined : { type: 'text', text, ...at }
}
