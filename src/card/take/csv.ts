/**
 * Numbers as a table for a spreadsheet: RFC 4180, lines end with CR LF, every row as wide as the head.
 * Values are SI, as many digits as they have, and stay numbers; a text that a spreadsheet would run as
 * a formula gets an apostrophe in front. After the numbers come the warnings and the standing words.
 *
 * `builder` is the ledger as published, where `published` holds a reader's figures. With `calculators`
 * a number within a block is called by its field's label.
 */
import type { Calculator } from '../../../calculators/define.ts'
import { standingWords } from '../../../calculators/hazard-names.ts'
import type { Published, PublishedNumber } from '../../ledger/published.ts'
import { contextOf } from '../context.ts'
import { lookupOf } from '../lookup.ts'
import { kindWords, labelOf } from '../words.ts'
import { isOwn } from './changed.ts'
import { hazardLine } from './hazard-line.ts'
import { warningsOf } from './warnings.ts'
import { words } from '../../words/words.ts'

const head = [
  'id',
  'note',
  'name',
  'label',
  'kind',
  'value',
  'unit',
  'shown',
  'plusMinus',
  'source',
  'instrument',
  'date',
  'rests',
  'whose',
  'builder',
  'hazards',
] as const

type Row = Readonly<Partial<Record<(typeof head)[number], Cell>>>

/** Lets a spreadsheet see that the file is UTF-8; only at the beginning of a file. */
export const byteOrderMark = '\uFEFF'

export function csvText(
  published: Published,
  builder?: Published,
  calculators: ReadonlyMap<string, Calculator> = new Map(),
): string {
  const ctx = contextOf(published, { base: '/', calculators })
  const before = builder && lookupOf(builder)
  const hazards = new Map(published.blocks.map((block) => [block.id, block.hazards]))
  const rows = published.numbers.map((number): Row => {
    const was = before?.number(number.id)
    const moved = was !== undefined && was.value !== number.value
    return {
      ...number,
      label: labelOf(number, ctx),
      kind: kindWords[number.kind],
      source: sourceText(number),
      instrument: number.instrument?.title ?? null,
      rests: number.rests.join('; '),
      whose: before === undefined ? whoseWords.builder : whoseWords[whoseOf(number, was)],
      builder: moved ? was.value : null,
      hazards: hazardLine(hazards.get(number.block ?? '') ?? []),
    }
  })
  const warnings = warningsOf(published.blocks.flatMap((block) => block.hazards))
  return tableText(head, [...rows, ...[...warnings, standingWords].map((id): Row => ({ id }))])
}

const whoseWords = {
  builder: words`the builder’s`,
  own: words`a reader’s own`,
  moved: words`moved by a reader’s figures`,
} as const

function whoseOf(
  number: PublishedNumber,
  was: PublishedNumber | undefined,
): keyof typeof whoseWords {
  if (isOwn(number, was)) return 'own'
  return was?.value === number.value ? 'builder' : 'moved'
}

function sourceText({ source }: PublishedNumber): string | null {
  if (source === null) return null
  return [source.title, source.edition, source.at].filter((part) => part !== undefined).join(', ')
}

type Cell = string | number | null | undefined

/** A table as a spreadsheet reads it, its head first. */
export function tableText<Column extends string>(
  head: readonly Column[],
  rows: readonly Readonly<Partial<Record<Column, Cell>>>[],
): string {
  const lines = rows.map((row) => head.map((name) => cellText(row[name])).join(','))
  return [head.join(','), ...lines].map((line) => `${line}\r\n`).join('')
}

function cellText(value: Cell): string {
  if (value === null || value === undefined) return ''
  if (typeof value === 'number') return String(value)
  const text = value.toWellFormed()
  const harmless = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless
}
