/**
 * The cells of tables that notes name (`turns.table[1].most`). In: where each was named, and the worked
 * ledger. Out: a problem for each that is not there.
 *
 * How many rows a table of results has is only known when its block is worked, so this comes last.
 */
import type { At } from './note-source.ts'
import type { Problem } from './problems.ts'
import type { Published, PublishedBlock } from './published.ts'
import { problemAt, type Said } from './report.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

/** One place where a note names a cell. */
export interface CellUse extends At {
  readonly file: string
  /** `note/turns` */
  readonly block: string
  readonly table: string
  readonly row: number
  /** The name of the table's column. */
  readonly field: string
}

export function cellProblems(cells: readonly CellUse[], published: Published): Problem[] {
  const numbers = new Set(published.numbers.map(({ id }) => id))
  const blocks = new Map(published.blocks.map((block) => [block.id, block]))
  return cells.flatMap((cell) => {
    const { block, table, row, field, file } = cell
    const found = blocks.get(block)
    if (found === undefined || numbers.has(`${block}.${table}.${row}.${field}`)) return []
    const said = missing(found, cell)
    return said === undefined ? [] : [problemAt(file, cell, said)]
  })
}

/** Undefined where the whole list could not be read, which is told at the list. */
function missing(block: PublishedBlock, { table, row, field }: CellUse): Said | undefined {
  const full = `${block.name}.${table}`
  const rows = rowsIn(block, table)
  if (rows === undefined) return undefined
  if (row < rows)
    return { rule: 'not-given', text: words`\`${full}[${row}]\` was not given \`${field}\`` }
  if (rows > 0)
    return {
      rule: 'no-such-row',
      text: counted(
        rows,
        words`\`${full}\` has ${rows} row, ${rows - 1}`,
        words`\`${full}\` has ${rows} rows, 0 to ${rows - 1}`,
      ),
      hint: words`rows are counted from 0: \`${full}[${rows - 1}].${field}\` is in the last`,
    }
  return {
    rule: 'no-such-row',
    text:
      block.verdict === 'unknown'
        ? words`\`${full}\` has no rows: \`${block.name}\` cannot tell`
        : words`\`${full}\` has no rows`,
  }
}

function rowsIn({ given, outputs }: PublishedBlock, table: string): number | undefined {
  const list = given[table]
  if (list?.type === 'rows') return list.rows.length
  const results = outputs[table]
  return typeof results === 'object' ? results?.length : undefined
}
