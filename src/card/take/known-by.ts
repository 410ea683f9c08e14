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
import { words } from '../../words/words.ts'

export function knownBy(number: PublishedNumber, ctx: CardContext): string {
  const origin = originOf(number, ctx)
  if (ctx.builder !== undefined && isOwn(origin, ctx.builder.number(origin.id)))
    return words`the reader’s own figure`
  const note = origin.note === number.note ? undefined : ctx.note(origin.note)
  const where = note === undefined ? '' : `, ${words`in “${note.title}”`}`
  return `${wordsOf(origin, ctx)}${where}`
}

function wordsOf(number: PublishedNumber, ctx: CardContext): string {
  const { kind, instrument, source, at, because, date, expression } = number
  const how = howWords(number)
  const list = (...parts: readonly (string | undefined)[]): string =>
    parts.filter((part) => part !== undefined && part !== '').join(', ')
  switch (kind) {
    case 'reading': {
      const measured =
        instrument === null
          ? words`measured ${dateWords(date)}`
          : words`measured ${dateWords(date)} with ${instrument.title}`
      return list(measured, at)
    }
    case 'rated':
      return source === null
        ? how
        : list(`${how}: ${source.title}`, source.edition, source.at ?? at)
    case 'assumed':
    case 'chosen':
      if (because === undefined || because.startsWith(kindWords[kind])) return because ?? how
      return `${how}: ${because}`
    case 'worked': {
      if (expression !== undefined) return `${how}: ${expressionText(expression, ctx)}`
      const block = number.block === null ? undefined : ctx.block(number.block)
      return block === undefined ? how : words`${how} by “${block.title}”`
    }
  }
}
