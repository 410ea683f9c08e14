/**
 * How a calculator is written into a note: a `<Calc>` to copy, with all that it needs. In: a
 * calculator. Out: MDX whose values are those of its first outside case; what that case leaves out and
 * the calculator needs is there with a usual value, so that what is copied works as it stands.
 */
import type { Calculator, Example, ListField } from '../../calculators/define.ts'
import { asTyped, mayBeLeftOut, type SingleField } from '../ledger/input.ts'
import { attributeText, stringText } from './take/mdx-text.ts'
import { words } from '../words/words.ts'

type Row = Readonly<Record<string, string>>

export function usageText(calculator: Calculator): string {
  const { id, inputs, examples } = calculator
  const typed: Example['inputs'] = examples[0]?.inputs ?? {}
  const attributes = [attributeText('id', nameOf(id)), attributeText('use', id)]
  const tables: string[] = []
  for (const [name, field] of Object.entries(inputs)) {
    const given = typed[name]
    if (field.type !== 'list') {
      const text = typeof given === 'string' ? given : neededText(field)
      if (text !== undefined) attributes.push(attributeText(name, text))
      continue
    }
    const rows = typeof given === 'object' ? given : neededRows(field)
    if (rows.length === 0) continue
    if (isOnlyOne(calculator, field, rows)) tables.push(tableText(field, rows))
    else attributes.push(listText(name, rows))
  }
  const start = `<Calc\n  ${attributes.join('\n  ')}\n`
  return tables.length === 0 ? `${start}/>` : `${start}>\n\n${tables.join('\n\n')}\n\n</Calc>`
}

/** `pump-and-loop` -> `pumpAndLoop` */
const nameOf = (id: string): string =>
  id.replace(/-+(.)/g, (_, letter: string) => letter.toUpperCase())

/** A value for what has to be given; undefined for what may be left out. */
function neededText(field: SingleField): string | undefined {
  if (mayBeLeftOut(field)) return undefined
  if (field.type === 'number') return asTyped(field.usual[0], field)
  return field.type === 'choice' ? Object.keys(field.options)[0] : words`a name`
}

function neededRows(field: ListField): readonly Row[] {
  const [least] = field.optional === true ? [0] : field.rows
  const row = Object.fromEntries(
    Object.entries(field.fields).flatMap(([name, inner]) => {
      const text = neededText(inner)
      return text === undefined ? [] : [[name, text]]
    }),
  )
  return Array.from({ length: least }, () => row)
}

const columnsOf = ({ fields }: ListField, rows: readonly Row[]): string[] =>
  Object.keys(fields).filter((name) => rows.some((row) => row[name] !== undefined))

/** A table finds its list by its columns, so they have to fit one only. */
function isOnlyOne({ inputs }: Calculator, list: ListField, rows: readonly Row[]): boolean {
  const columns = columnsOf(list, rows)
  const fitting = Object.values(inputs).filter(
    (field) => field.type === 'list' && columns.every((name) => name in field.fields),
  )
  return fitting.length === 1
}

function tableText(list: ListField, rows: readonly Row[]): string {
  const columns = columnsOf(list, rows)
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`
  return [
    line(columns),
    line(columns.map(() => '---')),
    ...rows.map((row) => line(columns.map((name) => row[name] ?? ''))),
  ].join('\n')
}

function listText(name: string, rows: readonly Row[]): string {
  const lines = rows.map((row) => {
    const cells = Object.entries(row).map(([field, text]) => `${field}: ${stringText(text)}`)
    return `    { ${cells.join(', ')} },`
  })
  return `${name}={[\n${lines.join('\n')}\n  ]}`
}
