/** What a finished site shows otherwise than its numbers give. In: two texts of one file. Out: where they part. */
import { words } from '../words/words.ts'

export interface Discrepancy {
  /** Within the site: `notes/cooling/index.html`. */
  readonly file: string
  readonly line: number
  readonly text: string
  /** Address of a link that leads nowhere, where it is that. */
  readonly link?: string
}

export const lineIn = (html: string, index: number): number =>
  html.slice(0, Math.max(0, index)).split('\n').length

/** Line by line. */
export function* compareTexts(
  file: string,
  read: string,
  expected: string,
): Generator<Discrepancy> {
  if (read === expected) return
  const is = read.split('\n')
  const due = expected.split('\n')
  for (let index = 0; index < Math.max(is.length, due.length); index++) {
    if (is[index] === due[index]) continue
    const id = /"id":"((?:[^"\\]|\\.)*)"/.exec(is[index] ?? due[index] ?? '')?.[1]
    yield {
      file,
      line: index + 1,
      text: difference(
        id === undefined ? words`this line` : `\`${id}\``,
        is[index] ?? '',
        due[index] ?? '',
      ),
    }
  }
}

/** The first stretch where two lines part. */
function difference(what: string, is: string, due: string): string {
  let start = 0
  while (start < is.length && is[start] === due[start]) start++
  const from = Math.max(0, start - 24)
  const [read, given] = [is, due].map((line) => `…${line.slice(from, start + 24)}…`)
  return words`${what} is not what working it again gives: it reads ${read ?? ''}, working gives ${given ?? ''}`
}
