/**
 * The part of the ledger that one page's figures stand on, so that a reader who tries other figures
 * fetches that part only, and the calculators of that part. In: the ledger, a note, and the ids that
 * its page shows. Out: the same ledger with those numbers and blocks and everything below them.
 */
import { givenIds, lookupOf } from '../card/index.ts'
import type { Published } from '../ledger/published.ts'

export function partOf(published: Published, slug: string, shown: readonly string[]): Published {
  const lookup = lookupOf(published)
  const seen = new Set<string>()
  const blocks = new Set<string>()
  const queue = [...shown, ...lookup.blocksOf(slug).map(({ id }) => id)]
  queue.push(...lookup.numbersOf(slug).map(({ id }) => id))
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    if (seen.has(id)) continue
    seen.add(id)
    const number = lookup.numbers.get(id)
    queue.push(...(number?.rests ?? []), ...lookup.replacing(id).map((one) => one.id))
    if (number?.checks !== undefined) queue.push(number.checks)
    if (number?.replaces !== undefined) queue.push(number.replaces)
    const block = lookup.blocks.get(number?.block ?? id)
    if (block === undefined || blocks.has(block.id)) continue
    blocks.add(block.id)
    queue.push(...givenIds(block.given))
  }
  const numbers = published.numbers.filter(
    ({ id, block }) => seen.has(id) || (block !== null && blocks.has(block)),
  )
  const notes = new Set([slug, ...numbers.map(({ note }) => note)])
  return {
    ...published,
    notes: published.notes.filter((note) => notes.has(note.slug)),
    numbers,
    blocks: published.blocks.filter(({ id }) => blocks.has(id)),
  }
}
