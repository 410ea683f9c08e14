/**
 * The bytes of a note as text.
 *
 * In: bytes, or text that was already read. Out: the text without a byte order mark, and a problem at
 * the first byte that is not UTF-8. Text after a bad byte is still read, so that the other
 * problems of the note can be told as well; a UTF-16 file is given up.
 */
import type { Problem } from '../ledger/problems.ts'
import { placesIn } from './place.ts'
import { words } from '../words/words.ts'

export interface Decoded {
  readonly text: string | undefined
  readonly problems: readonly Problem[]
}

export function decode(source: string | Uint8Array, file: string): Decoded {
  if (typeof source === 'string') return { text: withoutMark(source), problems: [] }
  if (looksLikeUtf16(source)) {
    const text = words`the file is saved as UTF-16`
    return { text: undefined, problems: [notUtf8(text, { file, line: 1, column: 1 })] }
  }
  try {
    const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
    return { text: withoutMark(strict.decode(source)), problems: [] }
  } catch {
    return decodeBroken(source, file)
  }
}

function decodeBroken(source: Uint8Array, file: string): Decoded {
  const bad = firstBadByte(source)
  const before = withoutMark(loosely(source.subarray(0, bad)))
  const byte = source[bad] ?? 0
  const likely = new TextDecoder('windows-1252').decode(Uint8Array.of(byte))
  const text = words`a byte here is not UTF-8 text (perhaps \`${likely}\` saved in an older encoding)`
  return {
    text: withoutMark(loosely(source)),
    problems: [notUtf8(text, placesIn(before, file)(before.length))],
  }
}

function notUtf8(text: string, place: { file: string; line: number; column: number }): Problem {
  return {
    rule: 'not-utf8',
    level: 'error',
    ...place,
    text,
    allowed: words`text saved as UTF-8`,
    hint: words`open the file in an editor and save it with the encoding UTF-8`,
  }
}

/** A mark in front of the text would move every column of the first line. */
function withoutMark(text: string): string {
  return text.replace(/^\uFEFF+/, '')
}

function loosely(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)
}

function looksLikeUtf16([first, second]: Uint8Array): boolean {
  return (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)
}

/** The length of the longest readable beginning. */
function firstBadByte(source: Uint8Array): number {
  let good = 0
  let bad = source.length
  while (good < bad) {
    const middle = Math.ceil((good + bad) / 2)
    if (isReadable(source.subarray(0, middle))) good = middle
    else bad = middle - 1
  }
  return good
}

/** `stream`: a character that is cut off at the end is not a fault of what stands before it. */
function isReadable(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true })
    return true
  } catch {
    return false
  }
}
