/**
 * The tables that stand in a block: each is the one list of the calculator that all its columns fit,
 * headed by the fields' names or labels; where several fit, the list is given as an attribute. Out: the
 * block's inputs with those lists among them.
 */
import type { Calculator, ListField } from '../../../calculators/define.ts'
import type { At, BlockSource, NoteSource, RawInput, RawTable } from '../note-source.ts'
import { didYouMean, type Said } from '../report.ts'
import { report, type LinkContext } from './context.ts'
import { words } from '../../words/words.ts'
import { allOf } from '../../words/lists.ts'

type Raw = Readonly<Record<string, RawInput>>

export function withTables(
  ctx: LinkContext,
  note: NoteSource,
  block: BlockSource,
  calculator: Calculator,
): Raw {
  const raw: Record<string, RawInput> = { ...block.given }
  if (block.unreadTable === true)
    for (const [name] of listsOf(calculator)) raw[name] ??= unread(block)
  for (const table of block.tables) {
    const [fitting, ...more] = listsFor(calculator, table)
    if (fitting === undefined) {
      report(ctx, note, table, {
        rule: 'bad-table',
        text: words`the table’s columns (${table.headings.join(', ')}) fit no list of \`${block.use}\``,
        allowed: listWords(calculator) || words`\`${block.use}\` takes no list of parts`,
        hint: likelyHeading(calculator, table),
      })
      for (const [name] of listsOf(calculator)) raw[name] ??= unread(table)
      continue
    }
    if (more.length > 0) {
      report(ctx, note, table, sayWhichList(table, [fitting, ...more]))
      continue
    }
    const [name, list] = fitting
    const given = raw[name]
    const made = rowsOf(table, list)
    if (given === undefined) raw[name] = made
    else if (given.type === 'rows' && given.parts !== undefined && given.rows.length === 0)
      raw[name] = { ...made, parts: given.parts }
    else
      report(ctx, note, table, {
        rule: 'doubled-list',
        text: words`\`${name}\` is given twice, as an attribute and as a table`,
      })
  }
  return raw
}

/** Whichever list it is meant to be is there, if not read. */
const unread = ({ line, column }: At): RawInput => ({ type: 'unread', line, column })

/** Where there is one list, the column that it does not have. */
function likelyHeading(calculator: Calculator, { headings }: RawTable): string | undefined {
  const [[, list] = [], ...more] = listsOf(calculator)
  if (list === undefined || more.length > 0) return undefined
  const strange = headings.find((heading) => fieldNamed(list, heading) === undefined)
  return strange === undefined ? undefined : didYouMean(strange, Object.keys(list.fields))
}

const listsOf = ({ inputs }: Calculator): [string, ListField][] =>
  Object.entries(inputs).flatMap(([name, field]) => (field.type === 'list' ? [[name, field]] : []))

const listWords = (calculator: Calculator): string =>
  listsOf(calculator)
    .map(([name, { fields }]) => `${name}: ${Object.keys(fields).join(', ')}`)
    .join('; ')

const listsFor = (calculator: Calculator, { headings }: RawTable): [string, ListField][] =>
  listsOf(calculator).filter(([, list]) =>
    headings.every((heading) => fieldNamed(list, heading) !== undefined),
  )

/** Several lists have these fields: only as an attribute does a list say which one it is. */
function sayWhichList(table: RawTable, fitting: readonly [string, ListField][]): Said {
  const [[first, list] = ['', undefined]] = fitting
  const names = fitting.map(([name]) => `\`${name}\``)
  const cells = Object.entries(table.rows[0] ?? {}).flatMap(([heading, raw]) => {
    const field = list && fieldNamed(list, heading)
    if (field === undefined || (raw.type !== 'text' && raw.type !== 'sum')) return []
    return `${field}: ${raw.type === 'text' ? JSON.stringify(raw.text) : raw.source}`
  })
  return {
    rule: 'which-list',
    text: words`the table’s columns (${table.headings.join(', ')}) fit ${allOf(names)}`,
    hint: words`say which list it is: \`${first}={[{ ${cells.join(', ')} }]}\`, one pair of braces for each row`,
  }
}

const fold = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s_-]+/g, '')

function fieldNamed({ fields }: ListField, heading: string): string | undefined {
  return Object.entries(fields).find(
    ([name, { label }]) => fold(name) === fold(heading) || fold(label) === fold(heading),
  )?.[0]
}

type RawRows = Extract<RawInput, { readonly type: 'rows' }>

function rowsOf({ rows, line, column }: RawTable, list: ListField): RawRows {
  const byField = (row: Raw): Raw =>
    Object.fromEntries(
      Object.entries(row).map(([heading, raw]) => [fieldNamed(list, heading) ?? heading, raw]),
    )
  return { type: 'rows', rows: rows.map(byField), line, column }
}
