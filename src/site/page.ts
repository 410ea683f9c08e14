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
  numberHtml,
  type CardContext,
} from '../card/index.ts'
import type { Shown } from '../ledger/link.ts'
import type { Ledger } from '../ledger/load.ts'
import type { PageLookup, PageOfNote } from '../mdx/fill.ts'

export function pageLookup(current: () => Ledger): PageLookup {
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
    const page: PageOfNote = {
      shown: ledger.shown.get(note.slug) ?? new Map<number, Shown>(),
      html: (shown) => htmlOf(shown, ctx, warned),
      href: (to) => ctx.href(to),
      noteHref: (url) => noteHref(url, ledger, ctx),
      takeTree: (text) => {
        const kept = ledger.trees.get(path)
        ledger.trees.delete(path)
        return kept?.blanked === text ? kept.tree : undefined
      },
    }
    return page
  }
}

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
    case 'nominal':
      return `<span class="nominal">${escape(shown.text)}</span>`
    case 'quoted': {
      const { title, edition } = shown.source
      const where = edition === undefined ? title : `${title}, ${edition}`
      return `<span class="quoted">${escape(shown.text)} <cite>(quoted from ${escape(where)})</cite></span>`
    }
    case 'table':
      throw new Error('a table is filled cell by cell')
  }
}

/** The address of a link to another note's file. */
function noteHref(url: string, ledger: Ledger, ctx: CardContext): string | undefined {
  const [path = '', hash] = url.split('#')
  if (!path.endsWith('.mdx') || /^[a-z]+:/i.test(path)) return undefined
  const slug = basename(path, '.mdx')
  if (!ledger.notes.some((note) => note.slug === slug)) return undefined
  return `${ctx.href(`/notes/${slug}/`)}${hash === undefined ? '' : `#${hash}`}`
}
