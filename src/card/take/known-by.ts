/**
 * How a number is known, in words for plain text: measured with what, from which sheet and where in it,
 * a guess and why, chosen and why, worked out from what. A reader's own figure says so and nothing more.
 */
import type { PublishedNumber } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'
import { expressionText } from '../origin.ts'
import { dateWords, howWords, kindWords } from '../words.ts'
import { isOwn } from './changed.ts'
import { originOf } from './origin.ts'

export function knownBy(number: PublishedNumber, ctx: CardContext): string {
  const origin = originOf(number, ctx)
  if (ctx.builder !== undefined && isOwn(origin, ctx.builder.number(origin.id)))
    return 'the reader’s own figure'
  const note = origin.note === number.note ? undefined : ctx.note(origin.note)
  const where = note === undefined ? '' : `, in “${note.title}”`
  return `${wordsOf(origin, ctx)}${where}`
}

function wordsOf(number: PublishedNumber, ctx: CardContext): string {
  const { kind, instrument, source, at, because, date, expression } = number
  const words = howWords(number)
  const list = (...parts: readonly (string | undefined)[]): string =>
    parts.filter((part) => part !== undefined && part !== '').join(', ')
  switch (kind) {
    case 'reading': {
      const withWhat = instrument === null ? '' : ` with ${instrument.title}`
      return list(`${words} ${dateWords(date)}${withWhat}`, at)
    }
    case 'rated':
      return source === null
        ? words
        : list(`${words}: ${source.title}`, source.edition, source.at ?? at)
    case 'assumed':
    case 'chosen':
      if (because === undefined || because.startsWith(kindWords[kind])) return because ?? words
      return `${words}: ${because}`
    case 'worked': {
      if (expression !== undefined) return `${words}: ${expressionText(expression, ctx)}`
      const block = number.block === null ? undefined : ctx.block(number.block)
      return block === undefined ? words : `${words} by “${block.title}”`
    }
  }
}
