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
import { words } from '../words/words.ts'

export function stripText(note: PublishedNote, ctx: CardContext): string {
  const date = dateWords(note.changed ?? note.date)
  return words`${ctx.published.site.vehicle}. ${note.title}. ${date}, edition ${editionOf(ctx.published, note.slug)}.`
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
    lookup.blocksOf(note.slug).length === 0
      ? words`none`
      : tallyHtml(note.slug, ctx, { guesses: false })
  const fields: readonly (readonly [string, string])[] = [
    [words`Vehicle`, escape(published.site.vehicle)],
    [words`Phase`, escape(phase)],
    [words`Note`, escape(note.title)],
    [words`Date`, note.changed ?? note.date],
    [words`Status`, statusWords[note.status]],
    [words`Edition`, editionOf(published, note.slug)],
    [words`Numbers`, numbers.join(', ')],
    [words`Checks`, checks],
  ]
  const html = fields.map(([name, value]) => `<div><dt>${name}</dt><dd>${value}</dd></div>`)
  return `<dl class="title-block">${html.join('')}</dl>`
}
