/**
 * What a phone keyboard did to markup, undone: curly quotes round values, no-break spaces in them, signs
 * that nobody sees, `×` and dashes between names, dashes for the rule of a table.
 *
 * In: the text and a fault MDX met. Out: the changes that may mend it, each of one character for one,
 * so that every position stays. Prose is never touched: only places where MDX tried to read a tag,
 * braces or an import are looked at.
 */
import type { Fault } from './forgive.ts'
import { paragraphEnd } from './place.ts'
import { matchingBrace, walkTag } from './tag.ts'

export interface Change {
  readonly at: number
  readonly sign: string
}

export function repairs(text: string, { kind, start }: Fault): readonly Change[] {
  if (kind === 'tag') return repairTag(text, start)
  if (kind === 'module') return straighten(text, start, paragraphEnd(text, start))
  const close = matchingBrace(text, start, paragraphEnd(text, start))
  return close === undefined
    ? []
    : [...straighten(text, start, close), ...operatorsIn(text, start, close)]
}

export function apply(text: string, changes: readonly Change[]): string {
  const signs = text.split('')
  for (const { at, sign } of changes) signs[at] = sign
  return signs.join('')
}

function repairTag(text: string, start: number): readonly Change[] {
  const { end, curly } = walkTag(text, start)
  const quotes = curly.flatMap(([open, close]) => {
    const value = text.slice(open + 1, close)
    const plain = value.includes('"') ? "'" : '"'
    const sign = value.includes(plain) ? undefined : plain
    if (sign === undefined) return []
    return [open, close].filter((at) => text[at] !== sign).map((at) => ({ at, sign }))
  })
  // Values in braces: `list={[{ draw: “5 A” }]}`.
  const inBraces = [...text.slice(start, end).matchAll(/\{/g)].flatMap(({ index }) => {
    const close = matchingBrace(text, start + index, end)
    return close === undefined
      ? []
      : [...straighten(text, start + index, close), ...operatorsIn(text, start + index, close)]
  })
  return [
    ...quotes,
    ...inBraces,
    ...unseenBetween(text, start, Math.max(end, text.indexOf('>', end))),
  ]
}

/** Curly quotes of code. One that stands inside straight quotes is part of a text. */
function straighten(text: string, start: number, end: number): readonly Change[] {
  const code = text.slice(start, end)
  return [...code.matchAll(/"[^"\n]*"|'[^'\n]*'|[“”„‟«»]|[‘’‚‛‹›]/g)]
    .filter(([found]) => found.length === 1)
    .map(({ 0: found, index }) => ({
      at: start + index,
      sign: '“”„‟«»'.includes(found) ? '"' : "'",
    }))
}

const operators: Readonly<Record<string, string>> = {
  '×': '*',
  '·': '*',
  '÷': '/',
  '−': '-',
  '–': '-',
  '—': '-',
}

/** Signs of a sum as they are printed, outside texts in quotes. */
function operatorsIn(text: string, start: number, end: number): readonly Change[] {
  const code = text.slice(start, end)
  return [...code.matchAll(/"[^"\n]*"|'[^'\n]*'|[“”„‟].*?[“”„‟]|[×·÷−–—]/g)].flatMap(
    ({ 0: found, index }) => {
      const sign = operators[found]
      return sign === undefined ? [] : [{ at: start + index, sign }]
    },
  )
}

const tableRule =
  /^[ \t>]*\|?(?:[ \t\u00A0]*:?[-—–―]+:?[ \t\u00A0]*\|)+(?:[ \t\u00A0]*:?[-—–―]+:?[ \t\u00A0]*)?$/

/** `|—|—|` under a row with `|`: a phone makes one dash of the hyphens of a table's rule. */
export function tableRules(text: string, start: number, end: number): readonly Change[] {
  const lines = [...text.slice(start, end).matchAll(/[^\r\n]+/g)]
  return lines.flatMap(({ 0: line, index }, number) => {
    if (!tableRule.test(line) || !(lines[number - 1]?.[0].includes('|') ?? false)) return []
    return [...line.matchAll(/[—–―\u00A0]/g)].map((sign) => ({
      at: start + index + sign.index,
      sign: sign[0] === '\u00A0' ? ' ' : '-',
    }))
  })
}

/** Signs without width between the words of a tag; in a value they are left alone. */
function unseenBetween(text: string, start: number, end: number): readonly Change[] {
  const tag = text.slice(start, end)
  return [...tag.matchAll(/"[^"]*"|'[^']*'|[\u00AD\u200B-\u200F\u2060\uFEFF]/g)]
    .filter(([found]) => found.length === 1)
    .map(({ index }) => ({ at: start + index, sign: ' ' }))
}

const noBreakSpace = /[\u00A0\u2007\u202F]/g

/** No-break spaces in a text between two offsets, as changes to plain ones. */
export function plainSpaces(text: string, start: number, end: number): readonly Change[] {
  return [...text.slice(start, end).matchAll(noBreakSpace)].map(({ index }) => ({
    at: start + index,
    sign: ' ',
  }))
}

/** Soft hyphens, marks of writing direction; joiners stay, which some scripts need. */
const unseen = /[\u00AD\u200B\u200E\u200F\u2060\uFEFF]/g

export function withPlainSpaces(value: string): string {
  return value.replace(noBreakSpace, ' ').replace(unseen, '')
}
