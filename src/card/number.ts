/**
 * One number in a line of text: its mark, its value in `<data>`, a link to its story. Phrasing
 * content only, since it stands inside paragraphs, table cells and headings. The text of `<data>` is
 * what `verify` works again: `data-unit` and `data-digits` say what differs from the usual display.
 */
import { formatQuantity } from '../quantity/index.ts'
import type { PublishedNumber } from '../ledger/published.ts'
import { onlyRef } from '../ledger/refs.ts'
import type { CardContext } from './context.ts'
import { attribute, escape, idOf } from './html.ts'
import { markHtml } from './mark.ts'
import { cannotTell } from './words.ts'
import { words } from '../words/words.ts'

export interface NumberOptions {
  /** Another unit than the number's own. */
  readonly unit?: string | undefined
  /** Significant figures. */
  readonly digits?: number | undefined
  /** Not inside links and headings. */
  readonly linked?: boolean
  /** The other unit system in brackets; off where it has a column of its own. */
  readonly brackets?: boolean
  /** This is where the number is defined: its name becomes the HTML id. */
  readonly anchor?: boolean
}

/** The part of an id after the note's slug: `cooling/pump.flow` -> `pump.flow`. */
export function nameOf(id: string): string {
  return id.slice(id.indexOf('/') + 1)
}

/** As a note names it: `turns.table.0.most` -> `turns.table[0].most`. */
export function typedName(name: string): string {
  return name.replace(/\.(\d+)(?=\.|$)/g, '[$1]')
}

export function slugOf(id: string): string {
  return id.slice(0, Math.max(0, id.indexOf('/')))
}

/**
 * HTML id of the number's row in the table at the end of its note. The capital and the dash keep it
 * apart from the ids of headings (no capitals) and of names (no dash).
 */
export function storyId(id: string): string {
  return `Story-${idOf(nameOf(id))}`
}

export function isTableResult(number: PublishedNumber): boolean {
  return number.calculator !== null && number.name.split('.').length > 2
}

/** What an input was taken from whole: its story is that number's. */
export function givenByName(number: PublishedNumber): string | undefined {
  return number.block !== null && number.calculator === null
    ? onlyRef(number.expression)
    : undefined
}

/**
 * Where a number's story is told. A result's is its card, where it is worked; an input's that was given
 * by name is the story of that name; any other has a row in the table at the end of its note.
 */
export function storyHref(id: string, ctx: CardContext): string {
  const number = ctx.number(id)
  const name = number && givenByName(number)
  if (name !== undefined) return storyHref(name, ctx)
  const block = number?.calculator === null ? null : number?.block
  return block === null || block === undefined
    ? rowHref(id, ctx)
    : `${pageHref(block, ctx)}#${nameOf(block)}`
}

/** The row of a number or a block in the table at the end of its note. */
export const rowHref = (id: string, ctx: CardContext): string =>
  `${pageHref(id, ctx)}#${storyId(id)}`

function pageHref(id: string, ctx: CardContext): string {
  const slug = slugOf(id)
  return slug === ctx.page ? '' : ctx.href(`/notes/${slug}/`)
}

/** What is of no note has no story to lead to. */
export const hasStory = (id: string, ctx: CardContext): boolean =>
  ctx.note(slugOf(id)) !== undefined

/** The number's value, or another of the same kind, in a unit, with the figures it deserves. */
export function textIn(
  number: PublishedNumber,
  unit: string,
  digits?: number,
  value: number | null = number.value,
): string {
  if (value === null) return cannotTell
  const figures =
    digits ??
    (unit === number.display ? number.figures : Math.max(2, number.figures ?? 4)) ??
    undefined
  return formatQuantity(value, unit, figures === undefined ? { exact: true } : { figures })
}

export function textOf(number: PublishedNumber, options: NumberOptions = {}): string {
  const { unit, digits } = options
  if (number.value === null) return number.calculator === null ? cannotTell : number.shown
  if (unit === undefined && digits === undefined) return number.shown
  return textIn(number, unit ?? number.display, digits)
}

/** Today's value, when a later number took its place and the difference shows. */
export function nowText(number: PublishedNumber, options: NumberOptions = {}): string | undefined {
  if (number.now === number.value) return undefined
  const text = textIn(number, options.unit ?? number.display, options.digits, number.now)
  return text === textOf(number, options) ? undefined : text
}

/** The same in the second unit system, when the site has two and it differs. */
function bracketed(number: PublishedNumber, options: NumberOptions, ctx: CardContext): string {
  if (options.brackets === false || options.unit !== undefined || ctx.units.length < 2) return ''
  if (number.shownOther === undefined || number.value === null) return ''
  const other = number.displayOther
  const text =
    options.digits === undefined || other === undefined
      ? number.shownOther
      : textIn(number, other, options.digits)
  return `<span class="other"> (${escape(text)})</span>`
}

/** `8.75 L/min` with the unit lighter; any text without a unit as it is. */
export function quantityHtml(text: string): string {
  const space = text.lastIndexOf('\u00a0')
  if (space < 0) return escape(text)
  return `${escape(text.slice(0, space + 1))}<span class="unit">${escape(text.slice(space + 1))}</span>`
}

export function dataHtml(number: PublishedNumber, options: NumberOptions = {}): string {
  const { unit, digits } = options
  return [
    `<data class="number" value="${number.value ?? ''}"`,
    attribute('data-number', number.id),
    attribute('data-unit', unit),
    attribute('data-digits', digits?.toString()),
    `>${quantityHtml(textOf(number, options))}</data>`,
  ].join('')
}

/** `your figures; the builder’s 8.75 L/min`, where a reader's figures moved the number. */
function yoursHtml(number: PublishedNumber, ctx: CardContext, options: NumberOptions): string {
  const before = ctx.builder?.number(number.id)
  if (before === undefined || before.value === number.value) return ''
  const text = textOf(before, options)
  return `<span class="yours"> ${words`your figures; the builder’s ${escape(text)}`}</span>`
}

export function numberHtml(
  number: PublishedNumber,
  ctx: CardContext,
  options: NumberOptions = {},
): string {
  const linked = options.linked !== false && hasStory(number.id, ctx)
  const now = linked ? nowText(number, options) : undefined
  const inner = [
    markHtml(number),
    dataHtml(number, options),
    bracketed(number, options, ctx),
    now === undefined ? '' : `<span class="now"> ${words`now ${escape(now)}`}</span>`,
    yoursHtml(number, ctx, options),
  ].join('')
  const id = options.anchor === true ? attribute('id', nameOf(number.id)) : ''
  return linked
    ? `<a class="number-link"${id} href="${escape(storyHref(number.id, ctx))}">${inner}</a>`
    : `<span class="number-plain"${id}>${inner}</span>`
}
