/** The notes on the first page: one entry each with how its figures came out, counts, open guesses. */
import type { PublishedNote } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { numberHtml } from './number.ts'
import { guessesIn, openWords, tallyHtml, usualWords } from './tally.ts'
import { dateWords, draftWords, labelOf, statusHeads } from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

export function noteItemHtml(note: PublishedNote, ctx: CardContext): string {
  const changed =
    note.changed === undefined ? '' : `; ${words`last changed ${dateWords(note.changed)}`}`
  return [
    `<li><p class="title"><a href="${escape(ctx.href(`/notes/${note.slug}/`))}">${escape(note.title)}</a></p>`,
    `<p class="over">${note.draft === true ? `<strong class="draft">${draftWords}</strong> ` : ''}${statusHeads[note.status]}, ${dateWords(note.date)}${changed}</p>`,
    note.summary === undefined ? '' : `<p>${sentenceHtml(note.summary)}</p>`,
    `${tallyHtml(note.slug, ctx)}</li>`,
  ].join('')
}

function allGuesses(ctx: CardContext) {
  const each = ctx.published.notes.map(({ slug }) => guessesIn(slug, ctx))
  return {
    // Those that say how to settle them first.
    open: each
      .flatMap(({ open }) => open)
      .toSorted((a, b) => Number(a.settle === undefined) - Number(b.settle === undefined)),
    usual: each.reduce((sum, { usual }) => sum + usual, 0),
  }
}

/** `7 notes, 26 calculations, 12 open guesses.` */
export function countsHtml(ctx: CardContext): string {
  const { notes, blocks } = ctx.published
  const guesses = allGuesses(ctx)
  const parts = [
    counted(notes.length, words`${notes.length} note`, words`${notes.length} notes`),
    counted(
      blocks.length,
      words`${blocks.length} calculation`,
      words`${blocks.length} calculations`,
    ),
    openWords(guesses),
    usualWords(guesses),
  ].filter((text) => text !== '')
  return `<p class="data">${parts.join(', ')}.</p>`
}

const mostGuesses = 12

/** The builder's open guesses, with how to settle them; '' when there are none. */
export function guessListHtml(ctx: CardContext): string {
  const { open } = allGuesses(ctx)
  if (open.length === 0) return ''
  const items = open.slice(0, mostGuesses).map((guess) => {
    const note = `<a href="${escape(ctx.href(`/notes/${guess.note}/`))}">${escape(ctx.note(guess.note)?.title ?? guess.note)}</a>`
    const settle =
      guess.settle === undefined
        ? ''
        : `<span>. ${words`To settle it: ${sentenceHtml(guess.settle)}`}</span>`
    return `<li>${note}: ${escape(labelOf(guess, ctx))} ${numberHtml(guess, ctx, { brackets: false })}${settle}</li>`
  })
  const all = `<a href="${escape(ctx.href('/numbers/'))}?how=assumed">${words`All ${open.length} open guesses`}</a>`
  const more =
    open.length <= mostGuesses ? '' : `<p>${words`${all}, among all that is assumed`}</p>`
  return `<ul class="guess-list">${items.join('')}</ul>${more}`
}
