/**
 * A field of a block: `pump.flow`, `pump.hoses[0].length`. In: the block and what stands behind its
 * name. Out: the id of that number, or undefined with what is wrong reported.
 *
 * Whether a row is there is not asked: how many a table of results has is known when it is worked, and
 * checked then (`cells.ts`).
 */
import type { Calculator, Field, Output } from '../../../calculators/define.ts'
import type { At, BlockSource, NoteSource } from '../note-source.ts'
import { didYouMean, type Said } from '../report.ts'
import { report, type LinkContext } from './context.ts'
import { words } from '../../words/words.ts'

export function resolveField(
  ctx: LinkContext,
  note: NoteSource,
  owner: NoteSource,
  block: BlockSource,
  fields: readonly string[],
  at: At,
): string | undefined {
  const calculator = ctx.calculators.get(block.use)
  if (calculator === undefined) return undefined
  const fault = faultOf(block, calculator, fields)
  if (fault !== undefined) {
    report(ctx, note, at, fault)
    return undefined
  }
  const id = `${owner.slug}/${block.name}`
  const [table = '', row, field] = fields
  if (row !== undefined && field !== undefined)
    ctx.cells.push({ ...placeOf(note, at), block: id, table, row: Number(row), field })
  return `${id}.${fields.join('.')}`
}

const placeOf = ({ file }: NoteSource, { line, column }: At) => ({ file, line, column })

/** Why there is no such number, or undefined when there is one. */
function faultOf(
  block: BlockSource,
  calculator: Calculator,
  [name, ...rest]: readonly string[],
): Said | undefined {
  const rule = 'not-a-number'
  const known = numbersOf(calculator)
  const allowed = known.map((field) => `\`${block.name}.${field}\``).join(', ')
  if (name === undefined)
    return { rule, text: words`\`${block.name}\` is a block; say which number of it`, allowed }
  const full = `${block.name}.${name}`
  const output = calculator.outputs[name]
  const input = calculator.inputs[name]
  if (output?.type === 'number' && rest.length === 0) return undefined
  if (input?.type === 'number' && rest.length === 0) {
    if (block.given[name] !== undefined || input.assume !== undefined) return undefined
    return { rule: 'not-given', text: words`\`${block.name}\` was not given \`${name}\`` }
  }
  const columns = columnsOf(output, input)
  if (columns !== undefined)
    return isCell(columns, rest) ? undefined : { rule, ...sayWhichCell(full, columns, rest) }
  if (output !== undefined || input !== undefined)
    return { rule, text: words`\`${full}\` is a word, not a number`, allowed }
  return {
    rule: 'unknown-field',
    text: words`the calculator \`${block.use}\` has no \`${name}\``,
    allowed,
    hint: didYouMean(name, known, `${block.name}.`),
  }
}

const numbersOf = ({ outputs, inputs }: Calculator): string[] =>
  [...Object.entries(outputs), ...Object.entries(inputs)]
    .filter(([, { type }]) => type === 'number')
    .map(([name]) => name)

type Columns = Readonly<Record<string, { readonly type: string }>>

function columnsOf(output: Output | undefined, input: Field | undefined): Columns | undefined {
  if (output?.type === 'table') return output.columns
  return input?.type === 'list' ? input.fields : undefined
}

function isCell(columns: Columns, [row, column, ...more]: readonly string[]): boolean {
  if (row === undefined || column === undefined || more.length > 0) return false
  return /^\d+$/.test(row) && columns[column]?.type === 'number'
}

function sayWhichCell(
  full: string,
  columns: Columns,
  [row, column]: readonly string[],
): Pick<Said, 'text' | 'allowed' | 'hint'> {
  const numbers = Object.keys(columns).filter((name) => columns[name]?.type === 'number')
  if (row === undefined || column === undefined || !/^\d+$/.test(row))
    return {
      text: words`\`${full}\` is a table; say which row and column of it`,
      hint: words`such as \`${full}[0].${numbers[0] ?? ''}\``,
    }
  const isWord = columns[column] !== undefined
  return {
    text: isWord
      ? words`\`${full}\` has words in a column \`${column}\``
      : words`\`${full}\` has no numbers in a column \`${column}\``,
    allowed: numbers.map((name) => `\`${full}[${row}].${name}\``).join(', '),
    hint: didYouMean(column, numbers, `${full}[${row}].`),
  }
}
