/**
 * The days on which a block's verdict became another, because a later number took the place of an older
 * one. In: the worked ledger. Out: each such change with its day, newest first.
 *
 * The ledger is worked anew as of every day on which a number was replaced, but only the part of it that
 * rests on what was replaced. A block counts from its note's day on: what it was before nobody read.
 */
import type { Calculator } from '../../../calculators/define.ts'
import { lookupOf, verdictName, type VerdictName } from '../../card/index.ts'
import { givenIds } from '../../ledger/given.ts'
import type { Published, PublishedBlock, PublishedNumber } from '../../ledger/published.ts'
import { work } from '../../ledger/work.ts'
import { partBelow } from '../part.ts'

export interface Flip {
  readonly date: string
  /** As it is today. */
  readonly block: PublishedBlock
  readonly before: VerdictName
  readonly after: VerdictName
  /** The numbers of that day that took the place of others. */
  readonly because: readonly PublishedNumber[]
}

export function flipsOf(
  published: Published,
  calculators: ReadonlyMap<string, Calculator>,
): readonly Flip[] {
  const later = published.numbers.filter(({ replaces }) => replaces !== undefined)
  if (later.length === 0) return []
  const touched = restingOn(published, new Set(later.map(({ replaces = '' }) => replaces)))
  if (touched.length === 0) return []
  const part = partBelow(
    published,
    '',
    touched.map(({ id }) => id),
  )
  const asOf = (day: string): ReadonlyMap<string, VerdictName> =>
    new Map(
      work(part, calculators, { asOf: day }).published.blocks.map((one) => [
        one.id,
        verdictName(one),
      ]),
    )
  const lookup = lookupOf(published)
  const found: Flip[] = []
  let before = asOf('')
  for (const date of [...new Set(later.map((number) => number.date))].sort()) {
    const after = asOf(date)
    for (const block of touched) {
      const [was, is] = [before.get(block.id), after.get(block.id)]
      const born = lookup.note(block.note)?.date ?? ''
      if (was === undefined || is === undefined || was === is || born >= date) continue
      const below = partBelow(published, '', [block.id]).numbers
      const because = below.filter((one) => one.replaces !== undefined && one.date === date)
      found.push({ date, block, before: was, after: is, because })
    }
    before = after
  }
  return found.sort((a, b) =>
    a.date === b.date ? (a.block.id < b.block.id ? -1 : 1) : a.date < b.date ? 1 : -1,
  )
}

/** Blocks that rest on one of these numbers, however far down. */
function restingOn(published: Published, ids: ReadonlySet<string>): readonly PublishedBlock[] {
  const lookup = lookupOf(published)
  const known = new Map<string, boolean>()
  const rests = (id: string): boolean => {
    const before = known.get(id)
    if (before !== undefined) return before
    known.set(id, ids.has(id))
    const number = lookup.number(id)
    const block = lookup.block(number?.block ?? id)
    const below = [...(number?.rests ?? []), ...(block === undefined ? [] : givenIds(block.given))]
    const found = ids.has(id) || below.some(rests)
    known.set(id, found)
    return found
  }
  return published.blocks.filter(({ id }) => rests(id))
}
