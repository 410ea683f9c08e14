/**
 * The page of sources: what each gave, with the day it was read and the figures that are quoted from it,
 * and every link that leads off the site. In: the published ledger. Out: HTML.
 */
import type {
  PublishedLink,
  PublishedNumber,
  PublishedQuote,
  PublishedSource,
} from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { numberHtml } from './number.ts'
import { dateWords, labelOf } from './words.ts'
import { words } from '../words/words.ts'

interface Gave {
  readonly source: PublishedSource
  readonly numbers: readonly PublishedNumber[]
  readonly quotes: readonly PublishedQuote[]
}

/** By title; what a note wrote out as a title is a source like any other. */
function sourcesOf({ published }: CardContext): Gave[] {
  const roots = published.numbers.filter(
    ({ source, expression }) => source !== null && expression === undefined,
  )
  const quotes = published.quotes ?? []
  const all = [
    ...roots.flatMap(({ source }) => source ?? []),
    ...quotes.map(({ source }) => source),
  ]
  const byKey = new Map(all.map((source) => [source.key, source]))
  return [...byKey.values()]
    .map((source) => ({
      source,
      numbers: roots.filter((number) => number.source?.key === source.key),
      quotes: quotes.filter((quote) => quote.source.key === source.key),
    }))
    .toSorted((a, b) => (a.source.title < b.source.title ? -1 : 1))
}

const noteLink = (slug: string, ctx: CardContext): string =>
  `<a href="${escape(ctx.href(`/notes/${slug}/`))}">${escape(ctx.note(slug)?.title ?? slug)}</a>`

export function sourceTableHtml(ctx: CardContext): string {
  const rows = sourcesOf(ctx).map((gave) => rowHtml(gave, ctx))
  if (rows.length === 0) return `<p>${words`No figure of these notes names a source yet.`}</p>`
  return `<table class="ledger sources-read"><thead><tr><th scope="col">${words`Source`}</th><th scope="col">${words`Read`}</th><th scope="col">${words`What it says`}</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
}

function rowHtml({ source, numbers, quotes }: Gave, ctx: CardContext): string {
  const { title, edition, read, url } = source
  const name = url === undefined ? escape(title) : `<a href="${escape(url)}">${escape(title)}</a>`
  const values = numbers.map((number) => {
    const at = number.source?.at === undefined ? '' : ` (${sentenceHtml(number.source.at)})`
    return `<li>${escape(labelOf(number, ctx))} ${numberHtml(number, ctx, { brackets: false })}${at}</li>`
  })
  const quoted = quotes.map(
    ({ text, note }) =>
      `<li>${words`“${sentenceHtml(text)}”, mentioned in ${noteLink(note, ctx)}, nothing rests on it`}</li>`,
  )
  return [
    `<tr><th scope="row">${name}${edition === undefined ? '' : `, ${escape(edition)}`}</th>`,
    `<td data-label="${words`Read`}">${read === undefined ? words`no day given` : dateWords(read)}</td>`,
    `<td data-label="${words`What it says`}"><ul class="story-list">${[...values, ...quoted].join('')}</ul></td></tr>`,
  ].join('')
}

/** Links off the site, those of the sources left out; '' where there are none. */
export function outsideLinksHtml(ctx: CardContext): string {
  const known = new Set(sourcesOf(ctx).flatMap(({ source }) => source.url ?? []))
  const byUrl = Map.groupBy(
    (ctx.published.links ?? []).filter(({ url }) => !known.has(url)),
    ({ url }) => url,
  )
  const items = [...byUrl]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([url, links]) => {
      const [link] = links
      const text = link === undefined || link.text === '' ? url : link.text
      return `<li><a href="${escape(url)}">${sentenceHtml(text)}</a> (${escape(hostOf(url))}), ${placesHtml(links, ctx)}</li>`
    })
  return items.length === 0 ? '' : `<ul class="link-list">${items.join('')}</ul>`
}

function placesHtml(links: readonly PublishedLink[], ctx: CardContext): string {
  return [...new Set(links.map(({ note }) => note))]
    .map((slug) => {
      const note = ctx.note(slug)
      const link = noteLink(slug, ctx)
      return note === undefined
        ? words`linked from ${link}`
        : words`linked from ${link} on ${dateWords(note.changed ?? note.date)}`
    })
    .join(', ')
}

const hostOf = (url: string): string => /^(?:https?:)?\/\/([^/?#]+)/i.exec(url)?.[1] ?? url
