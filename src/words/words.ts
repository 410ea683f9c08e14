/**
 * Every word that a builder or a reader meets, in the language of the catalogue: words`Put back`,
 * words`${marks} marks with text`. In: the English text, where it is used. Out: what the catalogue has
 * for it, or the English itself where it has nothing.
 *
 * The text with `{0}`, `{1}` for its values is its key. What is bundled is rewritten by
 * `src/site/words.ts` to plain text, by the same `piecesOf`: nothing of this file gets to a reader.
 */
import { texts } from '#words'

/** A text taken apart: strings as they are, and numbers for the values that stand between. */
export type Pieces = readonly (string | number)[]

/** How a text stands in the catalogue. */
export const keyOf = (strings: readonly string[]): string =>
  strings.reduce((key, text, index) => `${key}{${index - 1}}${text}`)

export const placeholder = /\{(\d+)\}/

export function piecesOf(strings: readonly string[]): Pieces {
  const key = keyOf(strings)
  return (Object.hasOwn(texts, key) ? (texts[key] ?? key) : key)
    .split(placeholder)
    .map((text, index) => (index % 2 === 0 ? text : Number(text)))
}

const known = new WeakMap<readonly string[], Pieces>()

export function words(
  strings: TemplateStringsArray,
  ...values: readonly (string | number)[]
): string {
  let pieces = known.get(strings)
  if (pieces === undefined) {
    pieces = piecesOf(strings)
    known.set(strings, pieces)
  }
  return pieces.map((piece) => (typeof piece === 'string' ? piece : (values[piece] ?? ''))).join('')
}
