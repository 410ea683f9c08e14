/**
 * From an offset in a note's text to the line and column that an editor shows.
 *
 * In: the text, once. Out: a function from offset to `Place`. Lines end at LF, CR LF or a lone CR,
 * as in Markdown. Columns count UTF-16 units, as editors and the Markdown parser do; an offset
 * outside the text is moved to its nearest end.
 */
import type { Place } from '../ledger/problems.ts'

export type PlaceAt = (offset: number) => Place

export function placesIn(text: string, file: string): PlaceAt {
  const starts = [0, ...Array.from(text.matchAll(/\r\n?|\n/g), (end) => end.index + end[0].length)]
  return (offset) => {
    const at = Math.min(Math.max(offset, 0), text.length)
    let low = 0
    let high = starts.length - 1
    while (low < high) {
      const middle = Math.ceil((low + high) / 2)
      if ((starts[middle] ?? 0) <= at) low = middle
      else high = middle - 1
    }
    return { file, line: low + 1, column: at - (starts[low] ?? 0) + 1 }
  }
}

/** Where the paragraph that holds `offset` ends: the next blank line, or the end of the text. */
export function paragraphEnd(text: string, offset: number): number {
  const blank = /(?:\r\n?|\n)[ \t]*(?:\r|\n)/g
  blank.lastIndex = offset
  return blank.exec(text)?.index ?? text.length
}

/** The line that holds `offset`, without its end. */
export function lineFrom(text: string, offset: number): string {
  const end = text.slice(offset).search(/[\r\n]/)
  return end < 0 ? text.slice(offset) : text.slice(offset, offset + end)
}
