/**
 * What of a page is made of results: cards, tables of numbers, counts, outside cases. In: the page's
 * path within the site and the ledger. Out: each stretch as its own function writes it, which must
 * stand in the page to the letter. Numbers in lines of text are not here: `verify` finds them itself.
 */
import type { Calculator } from '../../calculators/define.ts'
import type { Table } from '../../calculators/tables/define.ts'
import {
  blockHtml,
  calculatorItemHtml,
  countsHtml,
  escape,
  guessListHtml,
  lookupOf,
  noteItemHtml,
  numberCountHtml,
  numberTableHtml,
  outsideHtml,
  standardTableHtml,
  storiesHtml,
  stripText,
  titleBlockHtml,
  usesHtml,
  type CardContext,
} from '../card/index.ts'
import { phaseWords } from '../ledger/site-file.ts'

export interface Printed {
  /** In a builder's words, for the start of a sentence. */
  readonly what: string
  readonly html: string
  /** A text by which its place is found when it is wrong. */
  readonly near: string
}

/** Everything of the kit that has a page. */
export interface Kit {
  readonly calculators: ReadonlyMap<string, Calculator>
  readonly tables: ReadonlyMap<string, Table>
}

export function printedOn(
  file: string,
  ctx: CardContext,
  { calculators, tables }: Kit,
): readonly Printed[] {
  if (ctx.page !== undefined) return onNote(ctx.page, ctx)
  const calculator = calculators.get(/^calculators\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? '')
  if (calculator !== undefined) return onCalculator(calculator, ctx)
  const table = tables.get(/^tables\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? '')
  if (table !== undefined)
    return [{ what: 'the table', html: standardTableHtml(table), near: '<table' }]
  if (file === 'calculators/index.html')
    return [...calculators.values()].map((one) => ({
      what: `the entry of \`${one.id}\``,
      html: calculatorItemHtml(one, ctx),
      near: escape(one.title),
    }))
  if (file === 'numbers/index.html') return onNumbers(ctx)
  return file === 'index.html' ? onHome(ctx) : []
}

function onNote(slug: string, ctx: CardContext): readonly Printed[] {
  const note = ctx.note(slug)
  if (note === undefined) return []
  const lookup = lookupOf(ctx.published)
  const cards = lookup.blocksOf(slug).map((block) => ({
    what: `the card \`${block.id}\``,
    html: blockHtml(block, ctx),
    near: `data-card="${block.id}"`,
  }))
  return [
    ...cards,
    {
      what: 'the table of the numbers’ stories',
      html: storiesHtml(lookup.numbersOf(slug), ctx),
      near: 'id="Story-',
    },
    {
      what: 'the title block',
      html: titleBlockHtml(note, phaseWords(note.phase), ctx),
      near: 'class="title-block"',
    },
    {
      what: 'the strip at the foot',
      html: `<p class="strip">${escape(stripText(note, ctx))}</p>`,
      near: 'class="strip"',
    },
  ]
}

function onCalculator(calculator: Calculator, ctx: CardContext): readonly Printed[] {
  return [
    {
      what: 'the list of outside cases',
      html: outsideHtml(calculator),
      near: 'class="outside-cases"',
    },
    { what: 'the list of uses', html: usesHtml(calculator, ctx), near: 'class="uses"' },
  ]
}

function onNumbers(ctx: CardContext): readonly Printed[] {
  return [
    { what: 'the count of numbers', html: numberCountHtml(ctx), near: '<main' },
    { what: 'the table of all numbers', html: numberTableHtml(ctx), near: 'id="All-numbers"' },
  ]
}

function onHome(ctx: CardContext): readonly Printed[] {
  const notes = ctx.published.notes.map((note) => ({
    what: `the entry of the note \`${note.slug}\``,
    html: noteItemHtml(note, ctx),
    near: escape(note.title),
  }))
  return [
    { what: 'the count of notes', html: countsHtml(ctx), near: '<main' },
    ...notes,
    { what: 'the list of guesses', html: guessListHtml(ctx), near: 'id="Open-guesses"' },
  ]
}
