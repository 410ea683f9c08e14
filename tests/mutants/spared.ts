/**
 * Changes that no answer can show, each kind with its reason. In: a path and a change. Out: whether it
 * is left out of the count. The list is short on purpose: what is not here has to be noticed.
 */
import type { Change } from './find.ts'

const reasons: readonly { readonly in: RegExp; readonly why: string }[] = [
  {
    in: /^(export )?const (mostSteps|closeEnough)\b/,
    why: 'how often and how closely a number is searched for; the number found is the same',
  },
]

export const isSpared = (_path: string, { context }: Change): boolean =>
  reasons.some(({ in: pattern }) => pattern.test(context))
