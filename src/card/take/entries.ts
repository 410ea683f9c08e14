/**
 * What went into a block, one entry a number or word, rows of lists among them, in the order of the
 * calculator's fields. A field that was left out has no entry.
 */
import type { Field } from '../../../calculators/define.ts'
import type { SingleField } from '../../ledger/input.ts'
import type { Given, PublishedBlock, PublishedNumber } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'
import { lower, rowName } from '../words.ts'

type Single = Exclude<Given, { readonly type: 'rows' }>

export interface Entry {
  /** Within the block: `bore`, `hoses.0.length`. */
  readonly path: string
  /** `Bore`; in a list `supply, length`. */
  readonly label: string
  /** In a row of a list. */
  readonly inList: boolean
  readonly field: SingleField
  readonly given: Single
  /** Of a number. */
  readonly number: PublishedNumber | undefined
  /** Of a word, as the page prints it. */
  readonly word: string | undefined
}

export function entriesOf(
  block: PublishedBlock,
  ctx: CardContext,
  given: PublishedBlock['given'] = block.given,
): readonly Entry[] {
  const fields = ctx.calculator(block.calculator)?.inputs ?? {}
  return Object.entries(fields).flatMap(([key, field]) =>
    entriesIn(block, ctx, key, field, given[key]),
  )
}

function entriesIn(
  block: PublishedBlock,
  ctx: CardContext,
  key: string,
  field: Field,
  given: Given | undefined,
): readonly Entry[] {
  if (field.type !== 'list')
    return given === undefined || given.type === 'rows'
      ? []
      : [{ path: key, label: field.label, inList: false, field, given, ...read(field, given, ctx) }]
  if (given?.type !== 'rows') return []
  return given.rows.flatMap((row, index) =>
    Object.entries(field.fields).flatMap(([column, cell]) => {
      const { [column]: one } = row
      if (one === undefined || one.type === 'rows') return []
      const name = rowName(block.inputs[key], field.fields, index) ?? `${field.row} ${index + 1}`
      return {
        path: `${key}.${index}.${column}`,
        label: `${name}, ${lower(cell.label)}`,
        inList: true,
        field: cell,
        given: one,
        ...read(cell, one, ctx),
      }
    }),
  )
}

function read(field: SingleField, given: Single, ctx: CardContext): Pick<Entry, 'number' | 'word'> {
  if (given.type === 'number') return { number: ctx.number(given.id), word: undefined }
  const chosen = field.type === 'choice' ? field.options[given.value] : undefined
  return { number: undefined, word: chosen ?? given.value }
}
