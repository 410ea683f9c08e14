/**
 * The number that stands for a note on its picture: the one its frontmatter names, else the first result
 * of its first block, else its first number. In: a note of the ledger. Out: what the picture says of it,
 * with today's value; undefined where the note has no number.
 */
import {
  contextOf,
  firm,
  howWords,
  labelOf,
  lookupOf,
  textOf,
  verdictName,
  verdictWords,
  type CardContext,
} from '../../card/index.ts'
import type { Calculator } from '../../../calculators/define.ts'
import type { Published, PublishedNumber } from '../../ledger/published.ts'
import { words } from '../../words/words.ts'

export interface Headline {
  /** `Flow of the loop` */
  readonly label: string
  /** `8.75 L/min` */
  readonly value: string
  /** `worked out, rests on a guess`, and the block’s verdict. */
  readonly how: string
  /** YYYY-MM-DD: since when it is what it is. */
  readonly date: string
}

export function headlineOf(
  published: Published,
  slug: string,
  calculators: ReadonlyMap<string, Calculator>,
): Headline | undefined {
  const ctx = contextOf(published, { base: '/', calculators })
  const named = headlineNumber(slug, ctx)
  if (named === undefined) return undefined
  // What a later number replaced is never shown as if it held.
  const number = ctx.replacedBy(named.id) ?? named
  const block = number.block === null ? undefined : ctx.block(number.block)
  const label = labelOf(number, ctx)
  return {
    label: block === undefined ? label : `${block.title}: ${label}`,
    value: firm(textOf(number)),
    how:
      block === undefined
        ? howWords(number)
        : words`${howWords(number)}; verdict: ${verdictWords[verdictName(block)]}`,
    date: since(number, ctx),
  }
}

/** When it was typed; of a result, when the last number below it took the place of another. */
function since(number: PublishedNumber, ctx: CardContext): string {
  if (number.typed !== undefined) return number.date
  const note = ctx.note(number.note)
  const seen = new Set<string>()
  let last = note?.changed ?? number.date
  const look = (id: string): void => {
    if (seen.has(id)) return
    seen.add(id)
    const found = ctx.number(id)
    if (found?.replaces !== undefined && found.date > last) last = found.date
    for (const below of found?.rests ?? []) look(below)
    const later = ctx.replacedBy(id)
    if (later !== undefined) look(later.id)
  }
  look(number.id)
  return last
}

function headlineNumber(slug: string, ctx: CardContext): PublishedNumber | undefined {
  const lookup = lookupOf(ctx.published)
  const { headline = '' } = ctx.note(slug) ?? {}
  const named = ctx.number(headline)
  if (named !== undefined) return named
  const known = ({ value }: PublishedNumber): boolean => value !== null
  for (const block of lookup.blocksOf(slug)) {
    const fields = Object.keys(ctx.calculator(block.calculator)?.outputs ?? {})
    const results = fields.flatMap((key) => ctx.number(`${block.id}.${key}`) ?? [])
    const first = results.find(known)
    if (first !== undefined) return first
  }
  const own = lookup.numbersOf(slug).toSorted((a, b) => a.line - b.line || a.column - b.column)
  return own.find(known)
}
