/**
 * What numbers stand on, walked through the published ledger. Circles cannot be, but a reader's page
 * must not hang on a broken file: each number is visited once.
 */
import { givenIds, usedGiven } from '../ledger/given.ts'
import type { PublishedBlock, PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { inForce } from './in-force.ts'

/** The numbers at the bottom of it all (nothing rests below them), in the order they are met. */
export function rootsOf(ids: readonly string[], ctx: CardContext): PublishedNumber[] {
  const seen = new Set<string>()
  const roots: PublishedNumber[] = []
  const walk = (id: string) => {
    // Where a later number took its place, the later one's is what holds.
    const number = inForce(id, ctx)
    if (number === undefined || seen.has(number.id)) return
    seen.add(number.id)
    if (number.rests.length === 0) roots.push(number)
    else number.rests.forEach(walk)
  }
  ids.forEach(walk)
  return roots
}

export function guessesOf(block: PublishedBlock, ctx: CardContext): PublishedNumber[] {
  return rootsOf(givenIds(usedGiven(block)), ctx).filter((number) => number.kind === 'assumed')
}
