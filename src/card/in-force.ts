/** Which number stands for another today, where later ones took its place. */
import type { PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'

export function inForce(id: string, ctx: CardContext): PublishedNumber | undefined {
  const seen = new Set<string>()
  let now = ctx.number(id)
  while (now !== undefined && !seen.has(now.id)) {
    seen.add(now.id)
    now = ctx.replacedBy(now.id) ?? now
  }
  return now
}
