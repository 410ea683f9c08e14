/**
 * Where a number comes from, in words: how it was measured, which sheet, why, what it was worked from,
 * what took its place. Phrasing content, for the table at a note's end and wherever a story is told.
 */
import type { Expression, PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { firm, sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { dataHtml, nameOf, nowText, storyHref, textOf } from './number.ts'
import { movedBy } from './rests.ts'
import { dateWords, isSum, labelOf } from './words.ts'

const signs = { '+': '+', '-': '−', '*': '×', '/': '÷' } as const
const strength = { '+': 1, '-': 1, '*': 2, '/': 2 } as const

/** `2.4 m + 2.8 m`: a sum with its numbers put in, brackets only where they are needed. */
export function expressionText(expression: Expression, ctx: CardContext): string {
  const write = (one: Expression, outer: number): string => {
    if (typeof one === 'number') return String(one).replace('-', '−')
    if ('ref' in one) {
      const number = ctx.number(one.ref)
      return number === undefined ? nameOf(one.ref) : textOf(number)
    }
    if (one.op === 'negate') return `−${write(one.of, 3)}`
    const own = strength[one.op]
    const firmer = one.op === '-' || one.op === '/' ? own + 1 : own
    const text = `${write(one.left, own)} ${signs[one.op]} ${write(one.right, firmer)}`
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

function sentence(text: string): string {
  const first = text.charAt(0).toUpperCase() + text.slice(1)
  return sentenceHtml(/[.!?]$/.test(first) ? first : `${first}.`)
}

function sourceHtml(number: PublishedNumber): string {
  const { source } = number
  if (source === null) return ''
  const title =
    source.url === undefined
      ? escape(source.title)
      : `<a href="${escape(source.url)}">${escape(source.title)}</a>`
  const rest = [source.edition, source.at].filter((text) => text !== undefined).map(escape)
  const read = source.read === undefined ? '' : ` Read ${dateWords(source.read)}.`
  return `${[title, ...rest].join(', ')}.${escape(read)}`
}

function measuredHtml(number: PublishedNumber): string {
  const { instrument } = number
  if (instrument === null && number.kind !== 'reading') return ''
  const measured = `Measured ${escape(dateWords(number.date))}.`
  if (instrument === null) return measured
  const { title, plusMinus } = instrument
  return `${measured} ${sentence(`instrument: ${title}${plusMinus === undefined ? '' : ` (${withinText(plusMinus)})`}`)}`
}

/** The number that an input was given by name. */
export function referenceOf(number: PublishedNumber): string | undefined {
  const { expression } = number
  return typeof expression === 'object' && 'ref' in expression ? expression.ref : undefined
}

function workedHtml(number: PublishedNumber, ctx: CardContext): string {
  const parts: string[] = []
  const { expression } = number
  if (expression !== undefined && referenceOf(number) === undefined) {
    parts.push(`${escape(expressionText(expression, ctx))} = ${escape(textOf(number))}.`)
  }
  const block = number.block === null ? undefined : ctx.block(number.block)
  const calculator = number.calculator === null ? undefined : ctx.calculator(number.calculator)
  if (block !== undefined && number.kind === 'worked' && calculator !== undefined) {
    const href = escape(ctx.href(`/calculators/${calculator.id}/`))
    parts.push(`Worked out by <a href="${href}">${escape(calculator.title)}</a> from what went in.`)
  }
  return parts.join(' ')
}

/** How a reading differs from what was predicted. */
function comparedHtml(number: PublishedNumber, ctx: CardContext): string {
  const predicted = number.checks === undefined ? undefined : ctx.number(number.checks)
  if (predicted === undefined || number.value === null || predicted.value === null) return ''
  const link = storyLink(predicted.id, ctx)
  const point = number.flavour !== 'amount' || predicted.value === 0
  if (point) return `Compared with the prediction, ${link}.`
  const share = ((number.value - predicted.value) / Math.abs(predicted.value)) * 100
  const size = Math.abs(share).toFixed(Math.abs(share) < 10 ? 1 : 0)
  const words =
    Number(size) === 0 ? 'the same as' : `${size}\u00a0% ${share > 0 ? 'above' : 'below'}`
  return `Compared with the prediction: ${words} ${link}.`
}

function laterHtml(number: PublishedNumber, ctx: CardContext): string {
  const now = nowText(number)
  const by = movedBy(number, ctx)
  if (now === undefined && by.length === 0) return ''
  const because = by.map((later) => {
    const why = later.because === undefined ? '' : ` because ${escape(later.because)}`
    return `changed ${escape(dateWords(later.date))} in ${noteLink(later.note, ctx)}${why}: ${storyLink(later.id, ctx)}`
  })
  return `<span class="now">Now ${escape(now ?? textOf(number))}</span>${because.length === 0 ? '' : `, ${because.join('; ')}`}.`
}

/** Everything about where a number comes from, as phrasing content. */
export function originHtml(number: PublishedNumber, ctx: CardContext): string {
  // What was given by name has its story where the name stands.
  if (referenceOf(number) !== undefined)
    return ['Given by name.', laterHtml(number, ctx)].join(' ').trim()
  const parts = [
    measuredHtml(number),
    sourceHtml(number),
    number.at === undefined || number.at === number.source?.at ? '' : sentence(number.at),
    number.because === undefined ? '' : sentence(`because ${number.because}`),
    number.settle === undefined ? '' : sentence(`to settle it: ${number.settle}`),
    workedHtml(number, ctx),
    number.replaces === undefined
      ? ''
      : `Takes the place of ${storyLink(number.replaces, ctx)} from ${escape(dateWords(number.date))}.`,
    comparedHtml(number, ctx),
    laterHtml(number, ctx),
  ]
  return parts.filter((html) => html !== '').join(' ')
}

/** Where a number stands on its note's page: its own id, or its block's card. */
export function placeHref(number: PublishedNumber, ctx: CardContext): string | undefined {
  const block = number.block === null ? undefined : ctx.block(number.block)
  const name = block === undefined ? number.name : block.name
  if (isSum(number)) return undefined
  return `${number.note === ctx.page ? '' : ctx.href(`/notes/${number.note}/`)}#${name}`
}

export function valueHtml(number: PublishedNumber, ctx: CardContext): string {
  const within = number.plusMinusShown === undefined ? '' : ` ${withinText(number.plusMinusShown)}`
  const other = number.shownOther === undefined ? '' : ` (${number.shownOther})`
  const before = ctx.builder?.number(number.id)
  const yours =
    before === undefined || before.value === number.value
      ? ''
      : ` <span class="yours">your figures; the builder’s ${escape(textOf(before))}</span>`
  return `${dataHtml(number)}${escape(within)}${escape(number.value === null ? '' : other)}${yours}`
}
