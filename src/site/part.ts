/**
 * The part of the ledger that one page's figures stand on, so that a reader who tries other figures
 * fetches that part only, and the calculators of that part. In: the ledger, a note, and the ids that
 * its page shows. Out: the same ledger with those numbers and blocks and everything below them.
 */
import { lookupOf } from '../card/index.ts'
import { givenIds } from '../ledger/given.ts'
import { byId } from '../ledger/order.ts'
import type { Published, PublishedNumber } from '../ledger/published.ts'

export function partOf(published: Published, slug: string, shown: readonly string[]): Published {
  const lookup = lookupOf(published)
  const own = [...lookup.blocksOf(slug), ...lookup.numbersOf(slug)].map(({ id }) => id)
  return partBelow(published, slug, [...shown, ...own])
}

/** The same for these numbers and blocks alone. */
export function partBelow(published: Published, slug: string, ids: readonly string[]): Published {
  const lookup = lookupOf(published)
  const seen = new Set<string>()
  const blocks = new Set<string>()
  const queue = [...ids]
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    if (seen.has(id)) continue
    seen.add(id)
    const number = lookup.number(id)
    queue.push(...(number?.rests ?? []), ...lookup.replacing(id).map((one) => one.id))
    if (number?.checks !== undefined) queue.push(number.checks)
    if (number?.replaces !== undefined) queue.push(number.replaces)
    const block = lookup.block(number?.block ?? id)
    if (block === undefined || blocks.has(block.id)) continue
    blocks.add(block.id)
    queue.push(...givenIds(block.given))
  }
  const numbers = new Map<string, PublishedNumber>()
  const keep = (number: PublishedNumber | undefined): void => {
    if (number !== undefined) numbers.set(number.id, number)
  }
  for (const id of seen) keep(lookup.number(id))
  for (const id of blocks) lookup.numbersIn(id).forEach(keep)
  const kept = [...numbers.values()]
  const notes = new Set([slug, ...kept.map(({ note }) => note)])
  return {
    format: published.format,
    site: published.site,
    notes: published.notes.filter((note) => notes.has(note.slug)),
    numbers: kept.sort(byId),
    blocks: [...blocks].flatMap((id) => lookup.block(id) ?? []).sort(byId),
  }
}
