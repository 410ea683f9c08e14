/**
 * A problem from what is said and where. In: the note's file, a place in it, and the words. Out: the
 * problem, an error unless it is said to be a warning; what is undefined is left out.
 */
import { nearestName } from '../quantity/nearest.ts'
import { defined } from './defined.ts'
import type { Place, Problem } from './problems.ts'
import { words } from '../words/words.ts'

export interface Said {
  readonly rule: string
  readonly text: string
  readonly level?: Problem['level']
  readonly allowed?: string | undefined
  readonly hint?: string | undefined
  readonly also?: readonly Place[] | undefined
}

export function problemAt(
  file: string,
  { line, column }: Omit<Place, 'file'>,
  { rule, text, level = 'error', ...more }: Said,
): Problem {
  const { allowed, hint, also } = more
  return { rule, level, text, file, line, column, ...defined({ allowed, hint, also }) }
}

/** The name that was probably meant: near in writing, or the one that begins so. */
export function likelyName(read: string, known: readonly string[]): string | undefined {
  const near = nearestName(read, known)
  if (near !== undefined) return near
  const begun = read.length < 3 ? [] : known.filter((name) => name.startsWith(read))
  return begun.length === 1 ? begun[0] : undefined
}

/** The hint at a slip of the pen, with what stands before and after the name that was probably meant. */
export function didYouMean(
  read: string,
  known: readonly string[],
  before = '',
  after = '',
): string | undefined {
  const near = likelyName(read, known)
  return near === undefined ? undefined : words`did you mean \`${before}${near}${after}\`?`
}
