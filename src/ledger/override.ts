/**
 * A reader's figures in place of the builder's. In: the published ledger and, by block input, the texts
 * typed. Out: the ledger worked again, everything downstream moved; the builder's own stays untouched.
 *
 * A reader's figure has no source that the kit knows: it counts as assumed, or as chosen where the
 * calculator leaves the choice to the builder.
 */
import type { Calculator, Field, NumberField } from '../../calculators/define.ts'
import { readChoice } from './input.ts'
import type { Given, Published, PublishedBlock, PublishedNumber } from './published.ts'
import { work } from './work.ts'

/** `note/block.field` -> what was typed: a text, or the rows of a list. An empty text leaves the field out. */
export type Overrides = Readonly<
  Record<string, string | readonly Readonly<Record<string, string>>[]>
>

export function override(
  published: Published,
  overrides: Overrides,
  calculators: ReadonlyMap<string, Calculator>,
): Published {
  const numbers = new Map(published.numbers.map((number) => [number.id, number]))
  const blocks = published.blocks.map((block) => {
    const calculator = calculators.get(block.calculator)
    if (calculator === undefined) return block
    const given: Record<string, Given> = { ...block.given }
    for (const [name, field] of Object.entries(calculator.inputs)) {
      const typed = overrides[`${block.id}.${name}`]
      if (typed === undefined) continue
      const before = given[name]
      if (before !== undefined) for (const id of numberIds(before)) numbers.delete(id)
      const made = replaced(block, name, field, typed, numbers)
      if (made === undefined) Reflect.deleteProperty(given, name)
      else given[name] = made
    }
    return { ...block, given }
  })
  return { ...published, numbers: [...numbers.values()], blocks }
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
  if (text === '' && field.assume === undefined) return undefined
  const how = text === '' ? 'assumed-default' : 'literal'
  const kind = how === 'literal' && field.choice === true ? 'chosen' : 'assumed'
  const id = `${block.id}.${path}`
  numbers.set(id, {
    id,
    note: block.note,
    name: `${block.name}.${path}`,
    kind,
    firmness: kind,
    value: null,
    unit: '',
    of: field.of,
    vector: [0, 0, 0, 0, 0, 0, 0],
    flavour: 'amount',
    shown: '',
    display: '',
    figures: null,
    typed: text === '' ? `${field.assume?.value ?? ''} ${field.units[0]}`.trim() : text,
    plusMinus: null,
    rests: [],
    calculator: null,
    block: block.id,
    source: null,
    instrument: null,
    because: text === '' ? (field.assume?.because ?? '') : 'your figure',
    date: '',
    file: block.file,
    line: block.line,
    column: 1,
    now: null,
  })
  return { type: 'number', id, how }
}

function numberIds(given: Given): string[] {
  if (given.type === 'number') return [given.id]
  return given.type === 'rows'
    ? given.rows.flatMap((row) => Object.values(row).flatMap(numberIds))
    : []
}
