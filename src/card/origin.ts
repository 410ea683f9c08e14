/**
 * Where a number comes from, in words: how it was measured, which sheet, why, what it was worked from,
 * what took its place. Phrasing content, for the table at a note's end and wherever a story is told.
 */
import type { Expression, PublishedNumber } from '../ledger/published.ts'
import { onlyRef } from '../ledger/refs.ts'
import { fromSI, toSI } from '../quantity/index.ts'
import { receiptKey } from '../ledger/money.ts'
import type { CardContext } from './context.ts'
import { firm, sentenceHtml } from './firm.ts'
import { attribute, escape } from './html.ts'
import { inForce } from './in-force.ts'
import { dataHtml, nameOf, nowText, storyHref, textIn, textOf } from './number.ts'
import { capital, dateWords, isSum, labelOf } from './words.ts'
import { words } from '../words/words.ts'

const signs = { '+': '+', '-': '−', '*': '×', '/': '÷' } as const
const strength = { '+': 1, '-': 1, '*': 2, '/': 2 } as const

/** A sign after a sign is read as a slip. */
const signed = (text: string): string => (text.startsWith('−') ? `(${text})` : text)

/**
 * `2.4 m + 2.8 m`: a sum with its numbers put in, brackets only where they are needed. Where a later
 * number took one's place, the later one's is what was worked with.
 */
export function expressionText(expression: Expression, ctx: CardContext): string {
  const write = (one: Expression, outer: number): string => {
    if (typeof one === 'number') return String(one).replace('-', '−')
    if ('ref' in one) {
      const number = inForce(one.ref, ctx)
      return number === undefined ? nameOf(one.ref) : textOf(number)
    }
    if (one.op === 'negate') return `−${signed(write(one.of, 3))}`
    const own = strength[one.op]
    const firmer = one.op === '-' || one.op === '/' ? own + 1 : own
    const text = `${write(one.left, own)} ${signs[one.op]} ${signed(write(one.right, firmer))}`
    return own < outer ? `(${text})` : text
  }
  return write(expression, 0)
}

/** Link to another number's story: `pump draw 1.5 A`. */
export function storyLink(id: string, ctx: CardContext): string {
  const number = ctx.number(id)
  if (number === undefined) return escape(nameOf(id))
  const text = `${labelOf(number, ctx)} ${textOf(number)}`
  return `<a href="${escape(storyHref(id, ctx))}">${escape(text)}</a>`
}

function noteLink(slug: string, ctx: CardContext): string {
  const note = ctx.note(slug)
  return note === undefined
    ? escape(slug)
    : `<a href="${escape(ctx.href(`/notes/${slug}/`))}">${escape(note.title)}</a>`
}

/** `± 0.1 A`, all of it on one line. */
function withinText(plusMinus: string): string {
  return firm(plusMinus.replace(/^±?\s*/, '±\u00a0'))
}

const sentence = (text: string): string => ended(capital(text))

/** With a full stop, where it has no end of its own. */
const ended = (text: string): string => sentenceHtml(/[.!?]$/.test(text) ? text : `${text}.`)

function sourceHtml(number: PublishedNumber): string {
  const { source } = number
  if (source === null) return ''
  const title =
    source.url === undefined
      ? escape(source.title)
      : `<a href="${escape(source.url)}">${escape(source.title)}</a>`
  const rest = [source.edition, source.at].filter((text) => text !== undefined).map(escape)
  const read = source.read === undefined ? '' : ` ${words`Read ${dateWords(source.read)}.`}`
  return `${[title, ...rest].join(', ')}.${escape(read)}`
}

function measuredHtml(number: PublishedNumber): string {
  const { instrument } = number
  if (instrument === null && number.kind !== 'reading') return ''
  if (instrument?.key === receiptKey)
    return sentence(`${instrument.title}, ${dateWords(number.date)}`)
  const measured = words`Measured ${escape(dateWords(number.date))}.`
  if (instrument === null) return measured
  const { title, plusMinus } = instrument
  const within = plusMinus === undefined ? '' : ` (${withinText(plusMinus)})`
  return `${measured} ${words`Instrument: ${ended(title + within)}`}`
}

function workedHtml(number: PublishedNumber, ctx: CardContext): string {
  const parts: string[] = []
  const { expression } = number
  if (expression !== undefined && onlyRef(number.expression) === undefined) {
    parts.push(`${escape(expressionText(expression, ctx))} = ${escape(textOf(number))}.`)
  }
  const block = number.block === null ? undefined : ctx.block(number.block)
  const calculator = number.calculator === null ? undefined : ctx.calculator(number.calculator)
  if (block !== undefined && number.kind === 'worked' && calculator !== undefined) {
    const href = escape(ctx.href(`/calculators/${calculator.id}/`))
    const link = `<a href="${href}">${escape(calculator.title)}</a>`
    parts.push(words`Worked out by ${link} from what went in.`)
  }
  return parts.join(' ')
}

/** How a reading differs from what was predicted. */
function comparedHtml(number: PublishedNumber, ctx: CardContext): string {
  const predicted = number.checks === undefined ? undefined : ctx.number(number.checks)
  if (predicted === undefined || number.value === null || predicted.value === null) return ''
  const link = storyLink(predicted.id, ctx)
  const point = number.flavour !== 'amount' || predicted.value === 0
  if (point) return words`Compared with the prediction, ${link}.`
  const worked = shareOf(number.value, predicted.value)
  // Who works it again from the figures on the page must not find another share.
  const printed = shareOf(printedValue(number), printedValue(predicted))
  const figures = predicted.figures === null ? undefined : predicted.figures + 2
  const exact =
    worked === printed
      ? ''
      : ` (${words`${escape(textIn(predicted, predicted.display, figures))} before rounding`})`
  const its = link + exact
  const size = `${worked.replace('-', '')}\u00a0%`
  if (Number(worked) === 0) return words`Compared with the prediction: the same as ${its}.`
  return worked.startsWith('-')
    ? words`Compared with the prediction: ${size} below ${its}.`
    : words`Compared with the prediction: ${size} above ${its}.`
}

/** In per cent: `0.0`, `4.2`, `-17`. */
function shareOf(value: number, predicted: number): string {
  const share = ((value - predicted) / Math.abs(predicted)) * 100
  const text = share.toFixed(Math.abs(share) < 10 ? 1 : 0)
  return Number(text) === 0 ? '0' : text
}

/** The value that its text on the page says. */
function printedValue({ value, figures, display }: PublishedNumber): number {
  const here = fromSI(value ?? 0, display)
  return toSI(figures === null ? here : Number(here.toPrecision(figures)), display)
}

/** `changed 5 April 2026 in The pack because …: box weighed 96 kg` */
function changedHtml(later: PublishedNumber, ctx: CardContext): string {
  const [date, note, story] = placeOf(later, ctx)
  return later.because === undefined
    ? words`changed ${date} in ${note}: ${story}`
    : words`changed ${date} in ${note} because ${escape(later.because)}: ${story}`
}

function replacedHtml(later: PublishedNumber, ctx: CardContext): string {
  const [date, note, story] = placeOf(later, ctx)
  return later.because === undefined
    ? words`Replaced ${date} in ${note}: ${story}.`
    : words`Replaced ${date} in ${note} because ${escape(later.because)}: ${story}.`
}

const placeOf = (
  { id, date, note }: PublishedNumber,
  ctx: CardContext,
): readonly [date: string, note: string, story: string] => [
  escape(dateWords(date)),
  noteLink(note, ctx),
  storyLink(id, ctx),
]

/** What later numbers made of it: its own replacement, or those that moved what it is worked from. */
export function laterHtml(number: PublishedNumber, ctx: CardContext): string {
  const later = ctx.replacedBy(number.id)
  if (later !== undefined) {
    const now = nowText(number)
    return now === undefined
      ? replacedHtml(later, ctx)
      : `<span class="now">${words`Now ${escape(now)}`}</span>, ${changedHtml(later, ctx)}.`
  }
  const moved = ctx.movedSince(number)
  if (moved === undefined || moved.by.length === 0) return ''
  const { was: value, figures } = moved
  const was = textIn(number, number.display, figures ?? undefined, value)
  const alike = [was, textIn(number, number.display, undefined, value)].includes(textOf(number))
  if (alike) return ''
  const changes = moved.by.map((one) => changedHtml(one, ctx))
  return `<span class="now">${words`Was ${escape(was)} when this was written`}</span>, ${changes.join('; ')}.`
}

/** Everything about where a number comes from, as phrasing content. */
export function originHtml(number: PublishedNumber, ctx: CardContext): string {
  // What was given by name has its story where the name stands.
  if (onlyRef(number.expression) !== undefined)
    return [words`Given by name.`, laterHtml(number, ctx)].join(' ').trim()
  const parts = [
    measuredHtml(number),
    sourceHtml(number),
    number.at === undefined || number.at === number.source?.at ? '' : sentence(number.at),
    number.because === undefined ? '' : words`Because ${ended(number.because)}`,
    number.settle === undefined ? '' : words`To settle it: ${ended(number.settle)}`,
    workedHtml(number, ctx),
    number.replaces === undefined
      ? ''
      : words`From ${escape(dateWords(number.date))} it takes the place of ${storyLink(number.replaces, ctx)}.`,
    comparedHtml(number, ctx),
    laterHtml(number, ctx),
  ]
  return parts.filter((html) => html !== '').join(' ')
}

/** Where a number stands on its note's page: its own id, or its block's card. */
export function placeHref(number: PublishedNumber, ctx: CardContext): string | undefined {
  const block = number.block === null ? undefined : ctx.block(number.block)
  // A part's figures have no place on the page but the part's.
  const own = number.part === undefined ? number.name : number.name.replace(/\..*/, '')
  const name = block === undefined ? own : block.name
  if (isSum(number)) return undefined
  return `${number.note === ctx.page ? '' : ctx.href(`/notes/${number.note}/`)}#${name}`
}

export function valueHtml(number: PublishedNumber, ctx: CardContext): string {
  const size = attribute('data-within', number.plusMinus?.toString())
  const within =
    number.plusMinusShown === undefined
      ? ''
      : `<span class="within"${size}> ${escape(withinText(number.plusMinusShown))}</span>`
  const other =
    number.shownOther === undefined || number.value === null || ctx.units.length < 2
      ? ''
      : `<span class="other"> (${escape(number.shownOther)})</span>`
  const before = ctx.builder?.number(number.id)
  const yours =
    before === undefined || before.value === number.value
      ? ''
      : ` <span class="yours">${words`your figures; the builder’s ${escape(textOf(before))}`}</span>`
  return `${dataHtml(number)}${within}${other}${yours}`
}
