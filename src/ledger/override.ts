/**
 * A reader's figures in place of the builder's. In: the ledger and, by block input or declared number,
 * the texts typed. Out: the ledger with them in place, not worked; the builder's own stays untouched.
 *
 * A reader's figure has no source that the kit knows: it counts as assumed, or as chosen where the
 * calculator leaves the choice to the builder.
 */
import type { Calculator, Field, NumberField } from '../../calculators/define.ts'
import { blankNumber } from './blank.ts'
import { givenIds } from './given.ts'
import { asTyped, readChoice } from './input.ts'
import type { Given, Published, PublishedBlock, PublishedNumber } from './published.ts'
import { work } from './work.ts'
import { words } from '../words/words.ts'

/**
 * `note/block.field` or `note/name` -> what was typed: a text, or the rows of a list. An empty text
 * leaves the field out.
 */
export type Overrides = Readonly<
  Record<string, string | readonly Readonly<Record<string, string>>[]>
>

export function override(
  published: Published,
  overrides: Overrides,
  calculators: ReadonlyMap<string, Calculator>,
): Published {
  const numbers = new Map(
    published.numbers.map((number) => [number.id, declared(number, overrides[number.id])]),
  )
  const blocks = published.blocks.map((block) => {
    const calculator = calculators.get(block.calculator)
    return calculator === undefined ? block : overrideBlock(block, overrides, calculator, numbers)
  })
  return { ...published, numbers: [...numbers.values()], blocks }
}

/** A number of the text; in a block's field it is the block that changes. */
export function declared(
  number: PublishedNumber,
  typed: Overrides[string] | undefined,
): PublishedNumber {
  if (typeof typed !== 'string' || typed.trim() === '' || !isDeclared(number)) return number
  const { id, note, name, date, file, line, column, replaces, checks, part } = number
  return {
    ...blankNumber({ note, name, date, file, line, column }),
    id,
    ...yours(number.kind === 'chosen' ? 'chosen' : 'assumed'),
    ...(number.of === undefined ? {} : { of: number.of }),
    typed: typed.trim(),
    ...(part === undefined ? {} : { part }),
    ...(replaces === undefined ? {} : { replaces }),
    ...(checks === undefined ? {} : { checks }),
  }
}

/** Typed by the builder in the text: a reading, a rating, a guess or a choice. */
export const isDeclared = ({ typed, block }: PublishedNumber): boolean =>
  typed !== undefined && block === null

const yours = (kind: 'chosen' | 'assumed') =>
  ({ kind, firmness: kind, because: words`your figure` }) as const

/** The block with what was typed into its fields; `numbers` gets and loses what it was given. */
export function overrideBlock(
  block: PublishedBlock,
  overrides: Overrides,
  calculator: Calculator,
  numbers: Map<string, PublishedNumber>,
): PublishedBlock {
  const given: Record<string, Given> = { ...block.given }
  for (const [name, field] of Object.entries(calculator.inputs)) {
    const typed = overrides[`${block.id}.${name}`]
    if (typed === undefined) continue
    const { [name]: before } = given
    if (before !== undefined) for (const id of givenIds({ before })) numbers.delete(id)
    const made = replaced(block, name, field, typed, numbers)
    if (made === undefined) Reflect.deleteProperty(given, name)
    else given[name] = made
  }
  return { ...block, given }
}

/** The same, worked. */
export function workPublished(
  published: Published,
  overrides: Overrides,
  calculators: ReadonlyMap<string, Calculator>,
): Published {
  return work(override(published, overrides, calculators), calculators).published
}

function replaced(
  block: PublishedBlock,
  path: string,
  field: Field,
  typed: Overrides[string],
  numbers: Map<string, PublishedNumber>,
): Given | undefined {
  if (field.type === 'list') {
    if (typeof typed === 'string') return undefined
    const rows = typed.map((row, index) => {
      const cells: Record<string, Given> = {}
      for (const [name, inner] of Object.entries(field.fields)) {
        const cell = replaced(block, `${path}.${index}.${name}`, inner, row[name] ?? '', numbers)
        if (cell !== undefined) cells[name] = cell
      }
      return cells
    })
    return { type: 'rows', rows }
  }
  if (typeof typed !== 'string') return undefined
  const text = typed.trim()
  if (field.type === 'number') return replacedNumber(block, path, field, text, numbers)
  if (text === '') {
    return field.type === 'choice' && field.assume !== undefined
      ? { type: 'word', value: field.assume.value, how: 'assumed-default' }
      : undefined
  }
  if (field.type === 'text') return { type: 'word', value: text, how: 'literal' }
  const read = readChoice(field, text)
  return { type: 'word', value: read.ok ? String(read.value) : text, how: 'literal' }
}

function replacedNumber(
  block: PublishedBlock,
  path: string,
  field: NumberField,
  text: string,
  numbers: Map<string, PublishedNumber>,
): Given | undefined {
  const { assume } = field
  if (text === '' && assume === undefined) return undefined
  const isDefault = text === '' && assume !== undefined
  const how = isDefault ? 'assumed-default' : 'literal'
  const kind = how === 'literal' && field.choice === true ? 'chosen' : 'assumed'
  const id = `${block.id}.${path}`
  const { note, file, line } = block
  numbers.set(id, {
    ...blankNumber({ note, name: `${block.name}.${path}`, date: '', file, line, column: 1 }),
    ...yours(kind),
    of: field.of,
    typed: isDefault ? asTyped(assume.value, field) : text,
    block: block.id,
    ...(isDefault ? { because: assume.because } : {}),
  })
  return { type: 'number', id, how }
}
