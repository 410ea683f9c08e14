/**
 * What stands between an element's tags: tables, which are read row by row, each cell by its heading.
 * Other text there is a fault, which is for the element to say.
 */
import type { Table, TableCell } from 'mdast'
import { toString } from 'mdast-util-to-string'
import type { RawInput, RawTable } from '../note-source.ts'
import type { Element } from './attributes.ts'
import { startOf, type ReadContext } from './context.ts'
import { onlyExpression } from './estree.ts'
import { readBraces } from './inputs.ts'

export const tablesIn = ({ children }: Element): Table[] =>
  children.filter((child) => child.type === 'table')

export const hasOtherContent = ({ children }: Element): boolean =>
  children.some((child) => {
    if (child.type === 'table') return false
    if (child.type === 'text') return child.value.trim() !== ''
    return child.type !== 'paragraph' || child.children.length > 0
  })

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
