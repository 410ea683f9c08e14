/**
 * Entries of numbers, nothing worked yet: those that were given, those that are summed, and the sums
 * in prose, which have an entry by their text (`note/supply + back`).
 */
import { blankNumber } from '../blank.ts'
import { defined } from '../defined.ts'
import type { At, NamedSum, NoteSource, RootSource } from '../note-source.ts'
import type { Expression, PublishedNumber } from '../published.ts'
import { onlyRef, refsOf } from '../refs.ts'
import type { LinkContext } from './context.ts'
import { resolveName, resolveSum } from './resolve.ts'
import { instrumentOf, sourceOf } from './sources.ts'

/** `±0.1 A` and `+/- 0.1 A` say twice what the place says. */
const plusMinusSign = /^\s*(?:±|\+\s*\/?\s*[-−–])\s*/

export function addNumber(
  ctx: LinkContext,
  note: NoteSource,
  name: string,
  { line, column }: At,
  known: Partial<PublishedNumber>,
): string {
  const place = { file: note.file, line, column }
  const blank = blankNumber({ note: note.slug, name, date: note.meta.date, ...place })
  ctx.numbers.set(blank.id, { ...blank, ...known })
  return blank.id
}

export function linkRoot(ctx: LinkContext, note: NoteSource, root: RootSource): void {
  const { kind, at, because, settle } = root
  const replaces =
    root.replaces === undefined
      ? undefined
      : resolveName(ctx, note, root.replaces, root, 'replaces')
  const checks =
    root.checks === undefined ? undefined : resolveName(ctx, note, root.checks, root, 'checks')
  const instrument =
    root.instrument === undefined
      ? null
      : instrumentOf(ctx, note, root.instrument, root.whoAt ?? root)
  const page = kind === 'rated' ? at : undefined
  const source =
    root.source === undefined ? null : sourceOf(ctx, note, root.source, root.whoAt ?? root, page)
  addNumber(ctx, note, root.name, root.valueAt, {
    kind,
    firmness: kind,
    typed: root.value,
    instrument,
    source,
    date: root.on ?? note.meta.date,
    ...defined({
      at: kind === 'rated' ? undefined : at,
      because,
      settle,
      plusMinusShown: (root.plusMinus ?? instrument?.plusMinus)?.replace(plusMinusSign, ''),
      replaces,
      checks,
    }),
  })
}

export function linkSum(ctx: LinkContext, note: NoteSource, named: NamedSum): void {
  const expression = resolveSum(ctx, note, named.sum)
  if (expression !== undefined) addNumber(ctx, note, named.name, named, summed(expression))
}

/** What is known of a number that is worked from others. */
export const summed = (expression: Expression) =>
  ({ kind: 'worked', expression, rests: refsOf(expression) }) as const

/** The id of the number an expression is: the one it names, or a sum with an entry of its own. */
export function numberFor(
  ctx: LinkContext,
  note: NoteSource,
  expression: Expression,
  text: string,
  at: At,
): string {
  const ref = onlyRef(expression)
  if (ref !== undefined) return ref
  const name = text.replace(/\s+/g, ' ')
  const id = `${note.slug}/${name}`
  return ctx.numbers.has(id) ? id : addNumber(ctx, note, name, at, summed(expression))
}
