/**
 * What numbers stand on, walked through the published ledger. Circles cannot be, but a reader's page
 * must not hang on a broken file: each number is visited once.
 */
import { givenIds, usedGiven } from '../ledger/given.ts'
import type { PublishedBlock, PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'

/**
 * The numbers at the bottom of it all (nothing rests below them), in the order they are met. Where a later
 * number took one's place, the later one is what holds.
 */
export function rootsOf(ids: readonly string[], ctx: CardContext): PublishedNumber[] {
  const seen = new Set<string>()
  const roots: PublishedNumber[] = []
  const walk = (id: string) => {
    if (seen.has(id)) return
    seen.add(id)
    const later = ctx.replacedBy(id)
    const number = ctx.number(id)
    if (later !== undefined) walk(later.id)
    else if (number === undefined) return
    else if (number.rests.length === 0) roots.push(number)
    else number.rests.forEach(walk)
  }
  ids.forEach(walk)
  return roots
}

export function guessesOf(block: PublishedBlock, ctx: CardContext): PublishedNumber[] {
  return rootsOf(givenIds(usedGiven(block)), ctx).filter((number) => number.kind === 'assumed')
}
