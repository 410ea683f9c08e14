/**
 * What of a page is made of results: cards, tables of numbers, counts, outside cases. In: the page's
 * path within the site and the ledger. Out: each stretch as its own function writes it, which must
 * stand in the page to the letter. Numbers in lines of text are not here: `verify` finds them itself.
 */
import type { Calculator } from '../../calculators/define.ts'
import type { Table } from '../../calculators/tables/define.ts'
import {
  blockHtml,
  blockPage,
  calculatorItemHtml,
  costHtml,
  countsHtml,
  doneListHtml,
  escape,
  guessListHtml,
  lookupOf,
  noteItemHtml,
  numberCountHtml,
  numberTableHtml,
  openCountHtml,
  openSummaryHtml,
  openTablesHtml,
  outsideHtml,
  partCountHtml,
  partTablesHtml,
  sheetName,
  sheetOf,
  sourceTableHtml,
  standardTableHtml,
  storiesHtml,
  stripText,
  tallyHtml,
  taskBoxHtml,
  titleBlockHtml,
  usesHtml,
  type CardContext,
} from '../card/index.ts'
import { aloneFiguresHtml, aloneFiguresId } from '../live/alone-data.ts'
import type { PublishedNote } from '../ledger/published.ts'
import { phaseWords } from '../ledger/site-file.ts'
import { words } from '../words/words.ts'

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
  /** The list of what can be written, with the examples' own numbers; where the site has it. */
  readonly writing?: string | undefined
}

export function printedOn(
  file: string,
  ctx: CardContext,
  { calculators, tables, writing }: Kit,
): readonly Printed[] {
  if (ctx.page !== undefined) return onNote(ctx.page, ctx)
  if (ctx.alone !== undefined) return onBlock(ctx.alone, ctx)
  const calculator = calculators.get(/^calculators\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? '')
  if (calculator !== undefined) return onCalculator(calculator, ctx)
  const table = tables.get(/^tables\/([^/]+)\/index\.html$/.exec(file)?.[1] ?? '')
  if (table !== undefined)
    return [{ what: words`the table`, html: standardTableHtml(table), near: '<table' }]
  if (file === 'calculators/index.html')
    return [...calculators.values()].map((one) => ({
      what: words`the entry of \`${one.id}\``,
      html: calculatorItemHtml(one, ctx),
      near: escape(one.title),
    }))
  const sheet = sheetOn(file, ctx)
  if (sheet !== undefined) return sheet
  if (file === 'writing/index.html')
    return [{ what: words`the list of what can be written`, html: writing ?? '', near: '<main' }]
  if (file === 'numbers/index.html') return onNumbers(ctx)
  if (file === 'parts/index.html') return onParts(ctx)
  if (file === 'open/index.html') return onOpen(ctx)
  if (file === 'sources/index.html')
    return [{ what: words`the table of sources`, html: sourceTableHtml(ctx), near: '<main' }]
  return file === 'index.html' ? onHome(ctx) : []
}

function onNote(slug: string, ctx: CardContext): readonly Printed[] {
  const note = ctx.note(slug)
  if (note === undefined) return []
  const lookup = lookupOf(ctx.published)
  const cards = lookup.blocksOf(slug).map((block) => ({
    what: words`the card \`${block.id}\``,
    html: blockHtml(block, ctx),
    near: `data-card="${block.id}"`,
  }))
  const tasks = lookup.tasksOf(slug).map((task) => ({
    what: words`the task \`${task.id}\``,
    html: taskBoxHtml(task, true),
    near: `id="${task.id.slice(slug.length + 1)}"`,
  }))
  const tally = {
    what: words`the count of verdicts`,
    html: tallyHtml(slug, ctx),
    near: 'data-tally',
  }
  return [
    ...(cards.length === 0 ? [] : [tally]),
    ...cards,
    ...tasks,
    {
      what: words`the table of the numbers’ stories`,
      html: storiesHtml(lookup.numbersOf(slug), ctx),
      near: 'id="Story-',
    },
    {
      what: words`the title block`,
      html: titleBlockHtml(note, phaseWords(note.phase), ctx),
      near: 'class="title-block"',
    },
    stripOf(note, ctx),
  ]
}

const stripOf = (note: PublishedNote, ctx: CardContext): Printed => ({
  what: words`the strip at the foot`,
  html: `<p class="strip">${escape(stripText(note, ctx))}</p>`,
  near: 'class="strip"',
})

/** The page that a block has to itself. */
function onBlock(id: string, ctx: CardContext): readonly Printed[] {
  const block = ctx.block(id)
  const note = block && ctx.note(block.note)
  if (block === undefined || note === undefined) return []
  const { head, hazards, card, origins, sources, back } = blockPage(block, ctx)
  return [
    { what: words`the head of the page`, html: head, near: '<main' },
    { what: words`what is said of hazards`, html: hazards, near: '<h1' },
    { what: words`the card \`${id}\``, html: card, near: `data-card="${id}"` },
    { what: words`the table of what it rests on`, html: origins, near: 'class="ledger origins"' },
    { what: words`the list of sources`, html: sources, near: 'class="sources"' },
    { what: words`the way back to the note`, html: back, near: 'class="back"' },
    stripOf(note, ctx),
  ]
}

/** The wall sheet of a note. */
function sheetOn(file: string, ctx: CardContext): readonly Printed[] | undefined {
  const [, slug = '', name] = /^notes\/([^/]+)\/([^/]+)\/index\.html$/.exec(file) ?? []
  const note = name === sheetName ? ctx.note(slug) : undefined
  if (note === undefined) return undefined
  const { head, hazards, steps, tasks, sign } = sheetOf(note, ctx)
  return [
    { what: words`the head of the page`, html: head, near: '<main' },
    { what: words`what is said of hazards`, html: hazards, near: '<h1' },
    { what: words`the table of steps`, html: steps, near: 'class="sheet-steps"' },
    { what: words`the list of tasks`, html: tasks, near: 'class="task-list"' },
    { what: words`the lines to sign`, html: sign, near: 'class="sheet-sign"' },
    stripOf(note, ctx),
  ]
}

function onCalculator(calculator: Calculator, ctx: CardContext): readonly Printed[] {
  return [
    {
      what: words`the list of outside cases`,
      html: outsideHtml(calculator),
      near: 'class="outside-cases"',
    },
    { what: words`the list of uses`, html: usesHtml(calculator, ctx), near: 'class="uses"' },
    {
      what: words`what its form starts from`,
      html: aloneFiguresHtml(calculator, ctx),
      near: `id="${aloneFiguresId}"`,
    },
  ]
}

function onNumbers(ctx: CardContext): readonly Printed[] {
  return [
    { what: words`the count of numbers`, html: numberCountHtml(ctx), near: '<main' },
    { what: words`the table of all numbers`, html: numberTableHtml(ctx), near: 'id="All-numbers"' },
  ]
}

function onParts(ctx: CardContext): readonly Printed[] {
  return [
    { what: words`the count of parts`, html: partCountHtml(ctx), near: '<main' },
    { what: words`the tables of parts`, html: partTablesHtml(ctx), near: 'class="ledger parts"' },
    { what: words`what it costs`, html: costHtml(ctx), near: 'class="ledger costs"' },
  ]
}

function onOpen(ctx: CardContext): readonly Printed[] {
  return [
    { what: words`the count of what is open`, html: openCountHtml(ctx), near: '<main' },
    { what: words`the tables of tasks`, html: openTablesHtml(ctx), near: 'class="ledger tasks"' },
    { what: words`the list of what is done`, html: doneListHtml(ctx), near: 'id="Done"' },
  ]
}

function onHome(ctx: CardContext): readonly Printed[] {
  const notes = ctx.published.notes.map((note) => ({
    what: words`the entry of the note \`${note.slug}\``,
    html: noteItemHtml(note, ctx),
    near: escape(note.title),
  }))
  return [
    { what: words`the count of notes`, html: countsHtml(ctx), near: '<main' },
    ...notes,
    { what: words`what is open`, html: openSummaryHtml(ctx), near: 'id="Open-tasks"' },
    { what: words`the list of guesses`, html: guessListHtml(ctx), near: 'id="Open-guesses"' },
  ]
}
