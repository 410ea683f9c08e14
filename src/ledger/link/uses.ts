/** What each use of a name on a page shows, once the names are known. */
import { defined } from '../defined.ts'
import type { NoteSource, Use } from '../note-source.ts'
import type { LinkContext } from './context.ts'
import { numberFor } from './numbers.ts'
import { resolveSum } from './resolve.ts'
import type { Shown } from './shown.ts'
import { sourceOf } from './sources.ts'

type SumUse = Extract<Use, { readonly type: 'sum' | 'show' }>

export function linkUse(ctx: LinkContext, note: NoteSource, use: Use): Shown | undefined {
  switch (use.type) {
    case 'root': {
      const { name, linked } = use
      return { type: 'number', id: `${note.slug}/${name}`, linked, anchor: name }
    }
    case 'table':
      return { type: 'table', ids: use.names.map((name) => `${note.slug}/${name}`) }
    case 'block':
      return { type: 'block', id: `${note.slug}/${use.name}` }
    case 'part':
      return { type: 'part', id: `${note.slug}/${use.name}`, linked: use.linked }
    case 'nominal':
      return { type: 'nominal', text: use.text }
    case 'quoted': {
      const { text, line } = use
      const source = sourceOf(ctx, note, use.source, use)
      ctx.quotes.push({ note: note.slug, text, source, line })
      return { type: 'quoted', text, source }
    }
    case 'sum':
    case 'show':
      return linkSumUse(ctx, note, use)
  }
}

function linkSumUse(ctx: LinkContext, note: NoteSource, use: SumUse): Shown | undefined {
  const { linked, text } = use
  const expression = resolveSum(ctx, note, use.sum)
  if (expression === undefined) return undefined
  if (use.type === 'sum')
    return { type: 'number', id: numberFor(ctx, note, expression, text, use), linked }
  const { name, unit, digits } = use
  const id =
    name === undefined ? numberFor(ctx, note, expression, text, use) : `${note.slug}/${name}`
  return { type: 'number', id, linked, ...defined({ unit, digits, anchor: name }) }
}
