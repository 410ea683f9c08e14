/**
 * The part of the ledger that a page's figures stand on, so that a reader fetches the calculators of
 * that part only. In: the whole ledger and the ids that the page shows. Out: the same ledger without
 * the blocks, and their results, on which none of it rests; and the way back into the whole.
 */
import { givenIds } from '../card/rests.ts'
import type { Published, PublishedBlock, PublishedNumber } from '../ledger/published.ts'

export function subsetFor(published: Published, ids: readonly string[]): Published {
  const numbers = new Map(published.numbers.map((number) => [number.id, number]))
  const blocks = new Map(published.blocks.map((block) => [block.id, block]))
  const later = Map.groupBy(
    published.numbers.filter(({ replaces }) => replaces !== undefined),
    ({ replaces }) => replaces ?? '',
  )
  const kept = new Set<string>()
  const seen = new Set<string>()
  const queue = [...ids]
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    if (seen.has(id)) continue
    seen.add(id)
    const number = numbers.get(id)
    queue.push(...(number?.rests ?? []), ...(later.get(id) ?? []).map((one) => one.id))
    if (number?.checks !== undefined) queue.push(number.checks)
    const block = blocks.get(number?.block ?? id)
    if (block === undefined || kept.has(block.id)) continue
    kept.add(block.id)
    queue.push(...givenIds(block.given))
  }
  return {
    ...published,
    numbers: published.numbers.filter(
      ({ calculator, block }) => calculator === null || (block !== null && kept.has(block)),
    ),
    blocks: published.blocks.filter(({ id }) => kept.has(id)),
  }
}

/** `whole` with the blocks of `part`, and their numbers, in place of its own. */
export function merged(whole: Published, part: Published): Published {
  const inPart = new Set(part.blocks.map(({ id }) => id))
  const numbers = new Map<string, PublishedNumber>()
  for (const number of whole.numbers) {
    if (number.block === null || !inPart.has(number.block)) numbers.set(number.id, number)
  }
  for (const number of part.numbers) numbers.set(number.id, number)
  const worked = new Map(part.blocks.map((block) => [block.id, block]))
  return {
    ...whole,
    numbers: [...numbers.values()],
    blocks: whole.blocks.map((block) => worked.get(block.id) ?? block),
  }
}

/** Ids whose value is not what it was, or that were not there. */
export function movedIds(before: Published, after: Published): ReadonlySet<string> {
  const old = new Map(before.numbers.map(({ id, value }) => [id, value]))
  return new Set(
    after.numbers
      .filter(({ id, value }) => !old.has(id) || old.get(id) !== value)
      .map(({ id }) => id),
  )
}

/** What makes a block look different: its inputs, results or verdict. */
export function sameBlock(a: PublishedBlock, b: PublishedBlock): boolean {
  const parts = ({ inputs, outputs, verdict, provisional, findings }: PublishedBlock) =>
    JSON.stringify([inputs, outputs, verdict, provisional, findings])
  return parts(a) === parts(b)
}
