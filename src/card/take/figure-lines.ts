/**
 * The figures of a block as lines of plain text: each with its unit, the other unit system in brackets,
 * its ±, and the builder's figure where a reader's moved it.
 */
import type { NumberOutput, TableOutput, TextOutput } from '../../../calculators/define.ts'
import { usedGiven } from '../../ledger/given.ts'
import { untold } from '../../ledger/untold.ts'
import type { PlainValue, PublishedBlock, PublishedNumber } from '../../ledger/published.ts'
import { formatQuantity } from '../../quantity/index.ts'
import type { CardContext } from '../context.ts'
import { firm } from '../firm.ts'
import { textOf } from '../number.ts'
import { cannotTell, kindWords, lower, rowName } from '../words.ts'
import { entriesOf, type Entry } from './entries.ts'
import { knownBy } from './known-by.ts'
import { originOf } from './origin.ts'
import { wrap } from './wrap.ts'
import { words } from '../../words/words.ts'

/** An input given by name has the ± of what it names. */
function numberText(number: PublishedNumber, ctx: CardContext): string {
  if (number.value === null) return textOf(number)
  const two = number.shownOther !== undefined && ctx.units.length > 1
  const other = two ? ` (${number.shownOther})` : ''
  const within = originOf(number, ctx).plusMinusShown?.replace(/^±?\s*/, ' ±\u00a0') ?? ''
  return `${textOf(number)}${within}${other}`
}

/** `; the builder’s 27.5 kW` */
function beside(is: string, was: string | undefined): string {
  return was === undefined || was === is ? '' : `; ${words`the builder’s ${was}`}`
}

const builderNumber = (id: string, { builder }: CardContext): string | undefined => {
  const before = builder?.number(id)
  return before && textOf(before)
}

function wentIn(entry: Entry, before: Entry | undefined, ctx: CardContext): string {
  const { label, number, word, given } = entry
  if (number === undefined) {
    const how = given.how === 'assumed-default' ? ` (${kindWords.assumed})` : ''
    return `${label}: ${word ?? cannotTell}${how}${beside(word ?? '', before?.word)}`
  }
  const was = before?.number && textOf(before.number)
  return `${label}: ${numberText(number, ctx)} (${knownBy(number, ctx)})${beside(textOf(number), was)}`
}

/** The labels of the whole row say it already. */
const namesItsRow = ({ inList, field, label, word }: Entry): boolean =>
  inList && field.type === 'text' && word !== undefined && label.startsWith(`${word}, `)

export function inputLines(block: PublishedBlock, ctx: CardContext): readonly string[] {
  const { builder } = ctx
  const theirs = builder?.block(block.id)
  const before = new Map(
    builder === undefined || theirs === undefined
      ? []
      : entriesOf(theirs, builder, usedGiven(theirs)).map((entry) => [entry.path, entry]),
  )
  const entries = entriesOf(block, ctx, usedGiven(block))
  const there = new Set(entries.map(({ path }) => path))
  const gone = [...before.values()].filter(({ path }) => !there.has(path))
  return [
    ...entries
      .filter((entry) => !namesItsRow(entry))
      .map((entry) => wentIn(entry, before.get(entry.path), ctx)),
    ...gone.map(
      ({ label, number, word }) =>
        `${label}: ${words`left out`}; ${words`the builder’s ${word ?? (number === undefined ? cannotTell : textOf(number))}`}`,
    ),
  ].map((line) => wrap(firm(line), '- '))
}

/** A result, whether the ledger has it as a number or not. */
function cameOut(
  field: NumberOutput | TextOutput,
  value: number | string | null | undefined,
  id: string,
  absent: string,
  ctx: CardContext,
): string {
  if (field.type === 'text') return typeof value === 'string' ? value : absent
  const number = ctx.number(id)
  if (number !== undefined)
    return `${numberText(number, ctx)}${beside(textOf(number), builderNumber(id, ctx))}`
  const unit = field.units[ctx.units[0] === 'us' ? 1 : 0]
  return typeof value === 'number' ? formatQuantity(value, unit, { figures: 3 }) : absent
}

function tableLines(
  field: TableOutput,
  value: PlainValue | undefined,
  id: string,
  absent: string,
  ctx: CardContext,
): readonly string[] {
  if (typeof value !== 'object' || value === null || value.length === 0)
    return [`${field.label}: ${absent}`]
  const head = Object.keys(field.columns).find((key) => field.columns[key]?.type === 'text')
  return value.map((row, index) => {
    const name = rowName(value, field.columns, index) ?? words`row ${index + 1}`
    const cells = Object.entries(field.columns)
      .filter(([key]) => key !== head)
      .map(
        ([key, column]) =>
          `${lower(column.label)} ${cameOut(column, row[key], `${id}.${index}.${key}`, absent, ctx)}`,
      )
    return `${field.label}, ${[name, ...cells].join(', ')}`
  })
}

export function outputLines(block: PublishedBlock, ctx: CardContext): readonly string[] {
  const fields = ctx.calculator(block.calculator)?.outputs ?? {}
  const absent = untold(block.findings)
  return Object.entries(fields)
    .flatMap(([key, field]) => {
      const { [key]: value } = block.outputs
      const id = `${block.id}.${key}`
      if (field.type === 'table') return tableLines(field, value, id, absent, ctx)
      const one = typeof value === 'object' ? null : value
      return [`${field.label}: ${cameOut(field, one, id, absent, ctx)}`]
    })
    .map((line) => wrap(firm(line), '- '))
}
