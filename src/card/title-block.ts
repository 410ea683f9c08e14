/**
 * The title block at the end of a note, as on a drawing, and the strip at the foot of its sheets: both
 * carry the edition, by which a stale print is seen.
 */
import type { PublishedNote } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { editionOf } from './edition.ts'
import { escape } from './html.ts'
import { lookupOf } from './lookup.ts'
import { guessesIn, openWords, tallyHtml, usualWords } from './tally.ts'
import { dateWords, statusWords } from './words.ts'

export function stripText(note: PublishedNote, ctx: CardContext): string {
  const date = dateWords(note.changed ?? note.date)
  return `${ctx.published.site.vehicle}. ${note.title}. ${date}, edition ${editionOf(ctx.published, note.slug)}.`
}

export function titleBlockHtml(note: PublishedNote, phase: string, ctx: CardContext): string {
  const { published } = ctx
  const lookup = lookupOf(published)
  const guesses = guessesIn(note.slug, ctx)
  const numbers = [
    String(lookup.numbersOf(note.slug).length),
    openWords(guesses),
    usualWords(guesses),
  ].filter((text) => text !== '')
  const checks =
    lookup.blocksOf(note.slug).length === 0 ? 'none' : tallyHtml(note.slug, ctx, { guesses: false })
  const fields: readonly (readonly [string, string])[] = [
    ['Vehicle', escape(published.site.vehicle)],
    ['Phase', escape(phase)],
    ['Note', escape(note.title)],
    ['Date', note.changed ?? note.date],
    ['Status', statusWords[note.status]],
    ['Edition', editionOf(published, note.slug)],
    ['Numbers', numbers.join(', ')],
    ['Checks', checks],
  ]
  const html = fields.map(([name, value]) => `<div><dt>${name}</dt><dd>${value}</dd></div>`)
  return `<dl class="title-block">${html.join('')}</dl>`
}
