/** The numbers that a sum names. */
import type { Expression } from './published.ts'

/** The one number that a sum is, and nothing besides; undefined for any other. */
export const onlyRef = (expression: Expression | undefined): string | undefined =>
  typeof expression === 'object' && 'ref' in expression ? expression.ref : undefined

/** Each id once, sorted. */
export function refsOf(expression: Expression): string[] {
  if (typeof expression === 'number') return []
  if ('ref' in expression) return [expression.ref]
  if (expression.op === 'negate') return refsOf(expression.of)
  return [...new Set([...refsOf(expression.left), ...refsOf(expression.right)])].sort()
}
