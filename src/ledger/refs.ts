/** The numbers that a sum names: each id once, sorted. */
import type { Expression } from './published.ts'

export function refsOf(expression: Expression): string[] {
  if (typeof expression === 'number') return []
  if ('ref' in expression) return [expression.ref]
  if (expression.op === 'negate') return refsOf(expression.of)
  return [...new Set([...refsOf(expression.left), ...refsOf(expression.right)])].sort()
}
