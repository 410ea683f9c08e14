/**
 * Which figures of a block are a reader's own: those typed into it, and the declared numbers below it
 * that were typed over. In: a block of the reader's ledger. Out: label, the reader's text, the
 * builder's text; nothing where the ledger is the builder's. What only moved is not listed.
 */
import type { PublishedBlock, PublishedNumber } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'
import { textOf } from '../number.ts'
import { rootsOf } from '../rests.ts'
import { labelOf } from '../words.ts'
import { entriesOf, type Entry } from './entries.ts'
import { words } from '../../words/words.ts'

export interface ChangedFigure {
  readonly label: string
  readonly yours: string
  readonly builders: string
}

const leftOut = words`left out`

/** Typed by the reader, and not by the builder: also where both come to the same value. */
export function isOwn(number: PublishedNumber, builder: PublishedNumber | undefined): boolean {
  return number.calculator === null && number.typed !== undefined && number.typed !== builder?.typed
}

export function changedFigures(block: PublishedBlock, ctx: CardContext): readonly ChangedFigure[] {
  const { builder } = ctx
  const before = builder?.block(block.id)
  if (builder === undefined || before === undefined) return []
  const was = new Map(entriesOf(before, builder).map((entry) => [entry.path, entry]))
  const is = entriesOf(block, ctx)
  const there = new Set(is.map(({ path }) => path))
  const typedHere = is
    .filter((entry) => differs(entry, was.get(entry.path)))
    .map((entry) => changed(entry.label, textIn(entry), textIn(was.get(entry.path))))
  const gone = [...was.values()]
    .filter(({ path }) => !there.has(path))
    .map((entry) => changed(entry.label, leftOut, textIn(entry)))
  const inputs = new Set(is.map(({ number }) => number?.id))
  const below = rootsOf(
    is.flatMap(({ number }) => number?.id ?? []),
    ctx,
  )
    .filter((root) => !inputs.has(root.id) && isOwn(root, builder.number(root.id)))
    .map((root) => changed(labelOf(root, ctx), textOf(root), numberText(builder.number(root.id))))
  return [...typedHere, ...gone, ...below]
}

const changed = (label: string, yours: string, builders: string): ChangedFigure => ({
  label,
  yours,
  builders,
})

function differs(entry: Entry, before: Entry | undefined): boolean {
  if (entry.number === undefined) return entry.word !== before?.word
  return isOwn(entry.number, before?.number)
}

const numberText = (number: PublishedNumber | undefined): string =>
  number === undefined ? leftOut : textOf(number)

const textIn = (entry: Entry | undefined): string => entry?.word ?? numberText(entry?.number)
