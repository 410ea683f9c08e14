/** `A, mA or kA`, `A, mA and kA`: several texts as one, in the catalogue's language. */
import { words } from './words.ts'

export const oneOf = (texts: readonly string[]): string =>
  joined(texts, (before, last) => words`${before} or ${last}`)

export const allOf = (texts: readonly string[]): string =>
  joined(texts, (before, last) => words`${before} and ${last}`)

function joined(texts: readonly string[], ends: (before: string, last: string) => string): string {
  const [last = ''] = texts.slice(-1)
  return texts.length < 2 ? last : ends(texts.slice(0, -1).join(', '), last)
}
