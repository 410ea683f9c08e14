/**
 * Names to ids. In: a path as written in a note (`pump.flow`, `cooling.pump.flow`) or a sum of such.
 * Out: the id it means (`note/pump.flow`), or undefined with the reason reported.
 *
 * A name's scope is its note; other notes are reached by import, one name or the whole note.
 */
import type { At, NoteImport, NoteSource, Sum } from '../note-source.ts'
import type { Expression } from '../published.ts'
import { onlyRef } from '../refs.ts'
import { didYouMean } from '../report.ts'
import { ownName, ownNames, report, type LinkContext, type Named } from './context.ts'
import { resolveField } from './fields.ts'
import { resolveFigure } from './part-figures.ts'
import { words } from '../../words/words.ts'

/** What a path leads to: a name of some note, and what of the path is left behind it. */
interface Found {
  readonly owner: NoteSource
  readonly named: Named
  readonly fields: readonly string[]
}

export function reportUnknown(
  ctx: LinkContext,
  note: NoteSource,
  at: At,
  other: NoteSource,
  name: string,
  before?: string,
): void {
  // Why nothing came of it is told where it is given.
  if (other.given.has(name)) return
  report(ctx, note, at, {
    rule: 'unknown-name',
    text: words`the note \`${other.file}\` has no number or block called \`${name}\``,
    hint: didYouMean(name, ownNames(ctx, other), before),
  })
}

/** The id that a path means in a note. */
function resolve(
  ctx: LinkContext,
  note: NoteSource,
  path: readonly string[],
  at: At,
): string | undefined {
  const found = find(ctx, note, path, at)
  if (found === undefined) return undefined
  const { owner, named, fields } = found
  if (named.type === 'part') return resolveFigure(ctx, note, owner, named.part, fields, at)
  if (named.type === 'block') return resolveField(ctx, note, owner, named.block, fields, at)
  if (fields.length === 0) return `${owner.slug}/${named.name}`
  report(ctx, note, at, {
    rule: 'not-a-block',
    text: words`\`${named.name}\` is a number; it has no \`${fields.join('.')}\``,
  })
  return undefined
}

function find(
  ctx: LinkContext,
  note: NoteSource,
  [head = '', ...rest]: readonly string[],
  at: At,
): Found | undefined {
  const own = ownName(ctx, note, head)
  if (own !== undefined) return { owner: note, named: own, fields: rest }
  const item = note.imports.find(({ local }) => local === head)
  // A name that is declared but unreadable has been reported where it stands.
  return item && findImported(ctx, note, item, rest, at)
}

function findImported(
  ctx: LinkContext,
  note: NoteSource,
  item: NoteImport,
  rest: readonly string[],
  at: At,
): Found | undefined {
  const owner = ctx.notes.get(item.from)
  if (owner === undefined) return undefined
  ctx.dependencies.get(note.slug)?.add(owner.slug)
  if (item.imported === '*') return findInNote(ctx, note, item.local, owner, rest, at)
  const named = ownName(ctx, owner, item.imported)
  return named && { owner, named, fields: rest }
}

/** A name of a note that was imported whole, as `head`. */
function findInNote(
  ctx: LinkContext,
  note: NoteSource,
  head: string,
  owner: NoteSource,
  [name, ...fields]: readonly string[],
  at: At,
): Found | undefined {
  if (name === undefined) {
    const names = ownNames(ctx, owner).map((known) => `\`${head}.${known}\``)
    report(ctx, note, at, {
      rule: 'not-a-number',
      text: words`\`${head}\` is a whole note; say which number of it`,
      hint: names.slice(0, 6).join(', '),
    })
    return undefined
  }
  const named = ownName(ctx, owner, name)
  if (named !== undefined) return { owner, named, fields }
  reportUnknown(ctx, note, at, owner, name, `${head}.`)
  return undefined
}

export function resolveSum(ctx: LinkContext, note: NoteSource, sum: Sum): Expression | undefined {
  if (typeof sum === 'number') return sum
  if ('path' in sum) {
    const ref = resolve(ctx, note, sum.path, sum)
    return ref === undefined ? undefined : { ref }
  }
  if (sum.op === 'negate') {
    const inner = resolveSum(ctx, note, sum.of)
    return inner === undefined ? undefined : { op: 'negate', of: inner }
  }
  const left = resolveSum(ctx, note, sum.left)
  const right = resolveSum(ctx, note, sum.right)
  return left === undefined || right === undefined ? undefined : { op: sum.op, left, right }
}

/** The id of the one name that an attribute takes. */
export function resolveName(
  ctx: LinkContext,
  note: NoteSource,
  sum: Sum,
  at: At,
  attribute: string,
): string | undefined {
  const expression = resolveSum(ctx, note, sum)
  if (expression === undefined) return undefined
  const ref = onlyRef(expression)
  if (ref !== undefined) return ref
  report(ctx, note, at, {
    rule: 'not-a-name',
    text: words`\`${attribute}\` takes one name, not a sum`,
  })
  return undefined
}
