/**
 * Several given numbers in one table: a row each, with the columns `name` and `value`, and where wanted
 * `±`, `at` and `what`. Kind, source and reason stand once, in the element round the table.
 */
import { defined } from '../defined.ts'
import type { RawInput, RawTable, RootSource } from '../note-source.ts'
import { lineAndColumn, report, type ReadContext, type Start } from './context.ts'
import { declare } from './declare.ts'
import { words } from '../../words/words.ts'

export type SharedByRoots = Omit<
  RootSource,
  'name' | 'value' | 'plusMinus' | 'replaces' | 'checks' | 'line' | 'column' | 'valueAt'
>

type TextCell = Extract<RawInput, { readonly type: 'text' }>

const knownColumns = ['name', 'value', 'plusMinus', 'at', 'what']

export function readRootTable(
  ctx: ReadContext,
  table: RawTable,
  element: string,
  shared: SharedByRoots,
  at: Start,
): void {
  const columns = table.headings.map((heading) => (heading === '±' ? 'plusMinus' : heading))
  const isKnown = columns.every((column) => knownColumns.includes(column))
  if (!isKnown || !columns.includes('name') || !columns.includes('value')) {
    report(ctx, table, {
      rule: 'bad-table',
      text: words`the table in <${element}> has the columns ${columns.map((column) => `\`${column}\``).join(', ')}`,
      allowed: words`\`name\` and \`value\`, and where wanted \`±\`, \`at\`, \`what\``,
    })
    return
  }
  const names = table.rows.flatMap((row) => readRow(ctx, table, row, element, shared))
  ctx.uses.push({ type: 'table', names, ...at })
}

/** The name of the row's number; none where the row is not whole. */
function readRow(
  ctx: ReadContext,
  table: RawTable,
  row: Readonly<Record<string, RawInput>>,
  element: string,
  shared: SharedByRoots,
): string[] {
  const nameCell = textCell(row.name)
  const valueCell = textCell(row.value)
  if (nameCell === undefined || valueCell === undefined) {
    const text = words`a row of the table lacks its name or its value`
    report(ctx, nameCell ?? valueCell ?? table, { rule: 'bad-table', text })
    return []
  }
  const at = lineAndColumn(nameCell)
  const id = { name: 'id', value: { type: 'text', text: nameCell.text }, ...at } as const
  const name = declare(ctx, id, element, at)
  ctx.roots.push({
    name,
    value: valueCell.text,
    ...shared,
    ...defined({
      plusMinus: textCell(row.plusMinus ?? row['±'])?.text,
      at: textCell(row.at)?.text ?? shared.at,
    }),
    ...at,
    valueAt: lineAndColumn(valueCell),
  })
  return [name]
}

const textCell = (cell: RawInput | undefined): TextCell | undefined =>
  cell?.type === 'text' ? cell : undefined
