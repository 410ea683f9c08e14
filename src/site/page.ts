/**
 * Pages of notes out of the ledger: which HTML stands at which place. In: the ledger. Out: a look-up by
 * a note's path, for the plugins that fill the page.
 */
import { basename } from 'node:path'
import {
  blockHtml,
  contextOf,
  escape,
  hazardsHtml,
  lookupOf,
  numberHtml,
  partHtml,
  storyHref,
  taskBoxHtml,
  taskEndHtml,
  tasksOf,
  marksHtml,
  pictureHtml,
  type CardContext,
} from '../card/index.ts'
import type { Shown } from '../ledger/link.ts'
import type { Ledger } from '../ledger/load.ts'
import { numberName } from '../ledger/links.ts'
import type { NoteSource } from '../ledger/note-source.ts'
import type { PageLookup, PageOfNote } from '../mdx/fill.ts'
import type { Messages } from '../mdx/mark.ts'
import { asTypedHtml, atPlaceHtml } from '../writing/messages.ts'
import { largestName, picturesFolder, type PictureFacts } from '../photos/facts.ts'
import { words } from '../words/words.ts'

/**
 * `writing`: what is wrong is told in the page, and nothing is refused for it. `runner`: who runs what
 * stands in braces.
 */
export function pageLookup(current: () => Ledger, writing = false, runner?: string): PageLookup {
  return (path) => {
    const ledger = current()
    const note = ledger.notes.find((one) => one.path === path)
    if (note === undefined) return undefined
    const ctx = contextOf(ledger.published, {
      base: ledger.site?.base ?? '/',
      page: note.slug,
      calculators: ledger.calculators,
    })
    const warned = new Set<string>()
    const paths = new Map(note.pictures.map((one) => [one.url, one.path]))
    const pictureOf = (url: string): PictureFacts | undefined =>
      ledger.pictures.get(paths.get(url) ?? '')
    const page: PageOfNote = {
      shown: ledger.shown.get(note.slug) ?? new Map<number, Shown>(),
      html: (shown) => (writing && isLost(shown, ctx) ? lostHtml : htmlOf(shown, ctx, warned)),
      ...(writing ? { messages: messagesOf(ledger, note) } : {}),
      ...(runner === undefined ? {} : { guard: { key: runner, file: note.file } }),
      href: (to) => ctx.href(to),
      noteHref: (url) => noteHref(url, ledger, ctx),
      task: (offset) => {
        const index = note.tasks.findIndex((one) => one.offset === offset)
        const task = tasksOf(note.slug, ctx)[index]
        if (task === undefined) return undefined
        const said = note.tasks[index]?.ends?.how === 'closed'
        return { before: taskBoxHtml(task, true), after: said ? '' : taskEndHtml(task, ctx) }
      },
      pictureHtml: (url, options, marks) => {
        const facts = pictureOf(url)
        if (facts === undefined) return writing ? asTypedHtml(url) : undefined
        const html = pictureHtml(facts, { ...options, base: ctx.href('/') })
        return marks.length === 0 ? html : `${html}${marksHtml(marks)}`
      },
      pictureHref: (url) => {
        const facts = pictureOf(url)
        return facts === undefined ? undefined : `/${picturesFolder}/${largestName(facts)}`
      },
      takeTree: (text) => {
        const kept = ledger.trees.get(path)
        ledger.trees.delete(path)
        return kept?.blanked === text ? kept.tree : undefined
      },
    }
    return page
  }
}

const messagesOf = ({ problems }: Ledger, { file, bound }: NoteSource): Messages => ({
  problems: problems.filter((problem) => problem.file === file),
  isBound: (name) => bound.has(name),
  atPlace: atPlaceHtml,
  asTyped: asTypedHtml,
})

/** What an error elsewhere left without a place in the ledger. */
function isLost(shown: Shown, ctx: CardContext): boolean {
  if (shown.type === 'number') return ctx.number(shown.id) === undefined
  if (shown.type === 'part') return lookupOf(ctx.published).part(shown.id) === undefined
  if (shown.type !== 'block') return false
  const block = ctx.block(shown.id)
  return block === undefined || ctx.calculator(block.calculator) === undefined
}

const lostHtml = asTypedHtml(words`cannot be shown yet`)

/** Finished HTML; a block brings the panels of the hazards that its page has not yet shown. */
export function htmlOf(shown: Shown, ctx: CardContext, warned: Set<string>): string {
  switch (shown.type) {
    case 'number': {
      const number = ctx.number(shown.id)
      if (number === undefined) throw new Error(`the ledger has no number ${shown.id}`)
      const { unit, digits, linked, anchor } = shown
      return numberHtml(number, ctx, { unit, digits, linked, anchor: anchor !== undefined })
    }
    case 'block': {
      const block = ctx.block(shown.id)
      if (block === undefined) throw new Error(`the ledger has no block ${shown.id}`)
      const fresh = block.hazards.filter((id) => !warned.has(id))
      for (const id of fresh) warned.add(id)
      return `${hazardsHtml(fresh)}<work-card id="${escape(block.name)}" data-block="${escape(block.id)}">${blockHtml(block, ctx)}</work-card>`
    }
    case 'part': {
      const part = lookupOf(ctx.published).part(shown.id)
      if (part === undefined) throw new Error(`the ledger has no part ${shown.id}`)
      return partHtml(part, ctx, shown.linked)
    }
    case 'nominal':
      return `<span class="nominal">${escape(shown.text)}</span>`
    case 'quoted': {
      const { title, edition } = shown.source
      const where = edition === undefined ? title : `${title}, ${edition}`
      return `<span class="quoted">${escape(shown.text)} <cite>${words`(quoted from ${escape(where)})`}</cite></span>`
    }
    case 'table':
      throw new Error('a table is filled cell by cell')
  }
}

/** The address of a link to another note's file, or to a figure of a block of this one. */
function noteHref(url: string, ledger: Ledger, ctx: CardContext): string | undefined {
  const [path = '', hash] = url.split('#')
  const here = path === '' ? ctx.page : undefined
  if (here === undefined && (!path.endsWith('.mdx') || /^[a-z]+:/i.test(path))) return undefined
  const slug = here ?? basename(decodeURI(path), '.mdx')
  const note = ledger.notes.find((one) => one.slug === slug)
  if (note === undefined) return undefined
  const figure = hash === undefined ? undefined : figureIn(note, decodeURIComponent(hash))
  if (figure !== undefined && ctx.number(figure) !== undefined) return storyHref(figure, ctx)
  if (here !== undefined) return undefined
  return `${ctx.href(`/notes/${slug}/`)}${hash === undefined ? '' : `#${hash}`}`
}

/** `pump.flow` has no place on a page but its story; what stands on the page itself is no figure here. */
function figureIn({ slug, headings }: NoteSource, hash: string): string | undefined {
  return hash.includes('.') && !headings.has(hash) ? `${slug}/${numberName(hash)}` : undefined
}
