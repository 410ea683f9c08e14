/**
 * The number that another only repeats: an input given by name leads to where the name stands, or to
 * the later number that took its place. Anything else is its own origin.
 */
import type { PublishedNumber } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'
import { onlyRef } from '../../ledger/refs.ts'

export function originOf(number: PublishedNumber, ctx: CardContext): PublishedNumber {
  const seen = new Set<string>()
  let origin = number
  for (;;) {
    const ref = onlyRef(origin.expression)
    if (ref === undefined || seen.has(ref)) return origin
    seen.add(ref)
    const next = [ctx.replacedBy(ref), ctx.number(ref)].find((one) => one?.value === number.value)
    if (next === undefined) return origin
    origin = next
  }
}
