/**
 * The small mark in front of a number: shape says how it came (circle = given, diamond = decided or
 * worked), fill says how firm it is. Drawn with attributes only, so that it survives a strict
 * content policy and black paper, and once for each page: a page has hundreds of them. Its words are for
 * those who do not see it.
 *
 *   reading: full circle      rated: half circle        assumed: empty circle
 *   chosen: empty diamond     worked: diamond, filled like its weakest root (measured: full,
 *   sheet: half, chosen: a diamond inside, guess: a circle inside)
 */
import type { Firmness, Kind } from '../ledger/published.ts'
import { howWords } from './words.ts'

const circle = '<circle cx="6" cy="6" r="4.5"/>'
const diamond = '<path d="M6 .8 11.2 6 6 11.2.8 6z"/>'

type MarkName = Exclude<Kind, 'worked'> | `worked-${Firmness}`

const drawings: Readonly<Record<MarkName, string>> = {
  reading: '<circle cx="6" cy="6" r="4.5" fill="currentColor"/>',
  rated: `${circle}<path d="M6 1.5a4.5 4.5 0 0 0 0 9z" fill="currentColor"/>`,
  assumed: circle,
  chosen: diamond,
  'worked-reading': '<path d="M6 .8 11.2 6 6 11.2.8 6z" fill="currentColor"/>',
  'worked-rated': `${diamond}<path d="M6 .8v10.4L.8 6z" fill="currentColor"/>`,
  'worked-chosen': `${diamond}<path d="M6 4 8 6 6 8 4 6z" fill="currentColor"/>`,
  'worked-assumed': `${diamond}<circle cx="6" cy="6" r="1.7"/>`,
}

export interface Marked {
  readonly kind: Kind
  readonly firmness: Firmness
}

const markId = (name: string): string => `Mark-${name}`

/** The drawings, for the head of a page: its marks refer to them. */
export function markSymbolsHtml(): string {
  const symbols = Object.entries(drawings).map(
    ([name, drawing]) =>
      `<symbol id="${markId(name)}" viewBox="0 0 12 12" fill="none" stroke="currentColor" stroke-width="1.4">${drawing}</symbol>`,
  )
  return `<svg class="mark-symbols" width="0" height="0" aria-hidden="true">${symbols.join('')}</svg>`
}

/** `spoken: false` where the word stands beside it anyway. */
export function markHtml(number: Marked, options: { readonly spoken?: boolean } = {}): string {
  const drawing: MarkName = number.kind === 'worked' ? `worked-${number.firmness}` : number.kind
  const name =
    options.spoken === false ? 'aria-hidden="true"' : `role="img" aria-label="${howWords(number)}"`
  return `<svg class="mark" width="12" height="12" ${name}><use href="#${markId(drawing)}"/></svg>`
}
