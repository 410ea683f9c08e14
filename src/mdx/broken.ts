/**
 * How far markup reaches that could not be read. In: the text, where it begins, and as far as it could
 * be followed. Out: the stretch, whose numbers are no prose: the tag may well say where they come from.
 */
import { paragraphEnd } from './place.ts'

export interface Stretch {
  readonly start: number
  readonly end: number
}

const id = /\bid\s*=\s*["'“”„«‘’]?([\p{ID_Start}$_][\p{ID_Continue}$]*)/gu

/** Names that such tags would have given: whoever uses one of them has made no mistake. */
export const lostNames = (text: string, broken: readonly Stretch[]): string[] =>
  broken.flatMap(({ start, end }) =>
    text[start] === '<'
      ? [...text.slice(start, end).matchAll(id)].map(([, name = '']) => name)
      : [],
  )

/** To the end of the tag, where it looks like one; else to the end of the paragraph. */
export function brokenStretch(text: string, start: number, end = start + 1): Stretch {
  if (!/^<\/?\p{Lu}/u.test(text.slice(start, start + 4)) || text[end - 1] === '>')
    return { start, end }
  const stop = paragraphEnd(text, end)
  const close = text.slice(end, stop).indexOf('>')
  return { start, end: close < 0 ? stop : end + close + 1 }
}
