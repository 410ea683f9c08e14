/**
 * The feed (Atom, RFC 4287): the latest notes in full, and an entry for each day on which a block's
 * verdict became another. In: the worked ledger, its calculators, the pages as rendered. Out: its text.
 *
 * Ids are tags (RFC 4151) of the host, the day and the note's first name, so that they stay when the site
 * moves to another path, or the note gets another name. Days are those of the notes; there is no clock in
 * it. It can be written again from a finished site, which is how `verify` holds it.
 */
import type { Calculator } from '../../../calculators/define.ts'
import { standingWords } from '../../../calculators/hazard-names.ts'
import {
  contextOf,
  dateWords,
  labelOf,
  textOf,
  verdictWords,
  type CardContext,
} from '../../card/index.ts'
import { plainText } from '../../card/take/plain.ts'
import { escape } from '../../card/html.ts'
import type { Published, PublishedBlock, PublishedNote } from '../../ledger/published.ts'
import { partOf } from '../part.ts'
import { noteContent } from './content.ts'
import { flipsOf, type Flip } from './flips.ts'
import { words } from '../../words/words.ts'
import { language } from '#words'

/** Readers that come by seldom still find what is new; the file stays small. */
const mostEntries = 30

export interface FeedOptions {
  /** `/` at both ends. */
  readonly base: string
  readonly calculators: ReadonlyMap<string, Calculator>
  /** The rendered page of a note, with addresses from the root. */
  readonly page: (slug: string) => string | undefined | Promise<string | undefined>
}

interface Entry {
  readonly id: string
  readonly title: string
  readonly link: string
  readonly published: string
  readonly updated: string
  readonly summary?: string
  readonly content: () => Promise<string>
}

/** Undefined where nobody knows yet what the site's address will be. */
export async function feedText(
  published: Published,
  options: FeedOptions,
): Promise<string | undefined> {
  const { site } = published
  if (site.address === undefined) return undefined
  const home = new URL(options.base, site.address)
  const ctx = contextOf(published, { base: options.base, calculators: options.calculators })
  const entries = [
    ...published.notes.map((note) => noteEntry(note, home, ctx, options)),
    ...flipsOf(published, options.calculators).map((flip) => flipEntry(flip, home, ctx)),
  ]
    .sort((a, b) =>
      a.updated === b.updated ? (a.id < b.id ? -1 : 1) : a.updated < b.updated ? 1 : -1,
    )
    .slice(0, mostEntries)
  const [latest] = entries
  const written: string[] = []
  for (const entry of entries) written.push(await entryText(entry))
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${xml(language)}">`,
    `<id>${xml(home.href)}</id>`,
    `<title>${xml(site.title)}</title>`,
    ...(site.description === '' ? [] : [`<subtitle>${xml(site.description)}</subtitle>`]),
    `<link href="${xml(home.href)}"/>`,
    `<link rel="self" type="application/atom+xml" href="${xml(new URL('feed.xml', home).href)}"/>`,
    `<updated>${instant(latest?.updated ?? '1970-01-01')}</updated>`,
    `<author><name>${xml(site.author ?? site.title)}</name></author>`,
    ...written,
    '</feed>\n',
  ].join('\n')
}

function noteEntry(note: PublishedNote, home: URL, ctx: CardContext, options: FeedOptions): Entry {
  const link = new URL(`notes/${note.slug}/`, home).href
  return {
    id: tag(home, note.date, `notes/${firstName(note)}`),
    title: note.title,
    link,
    published: note.date,
    updated: lastMoved(note, ctx.published),
    ...(note.summary === undefined ? {} : { summary: note.summary }),
    content: async () => {
      const page = await options.page(note.slug)
      return `${noticeHtml(ctx)}${noteContent(page ?? '', link, (id) => {
        const block = ctx.block(id)
        return block === undefined ? '' : textOfBlock(block, ctx)
      })}`
    },
  }
}

function flipEntry(flip: Flip, home: URL, ctx: CardContext): Entry {
  const { block, date, before, after, because } = flip
  const link = new URL(`notes/${block.note}/#${block.name}`, home).href
  const [was, is] = [verdictWords[before], verdictWords[after]]
  const linkHtml = `<a href="${escape(link)}">${escape(block.title)}</a>`
  const note = ctx.note(block.note)
  const noteTitle = escape(note?.title ?? block.note)
  const causes = because.map((number) => {
    const old = ctx.number(number.replaces ?? '')
    const now = textOf(number)
    const said = old === undefined ? now : words`${now} in place of ${old.shown}`
    return `<li>${escape(labelOf(number, ctx))}: ${escape(said)}</li>`
  })
  return {
    id: tag(home, date, `notes/${note === undefined ? block.note : firstName(note)}/${block.name}`),
    title: words`Verdict changed: ${block.title}, was ${was}, now ${is}`,
    link,
    published: date,
    updated: date,
    content: () =>
      Promise.resolve(
        [
          noticeHtml(ctx),
          `<p>${words`From ${escape(dateWords(date))} on the verdict of ${linkHtml}, in “${noteTitle}”, is ${escape(is)}; it was ${escape(was)}. What is new:`}</p>`,
          `<ul>${causes.join('')}</ul>`,
          `<p>${words`The block as it stands now:`}</p><pre>${escape(textOfBlock(block, ctx))}</pre>`,
        ].join(''),
      ),
  }
}

const firstName = ({ slug, was = [] }: PublishedNote): string => was[0] ?? slug

/** The day of the last change: its author's, or that of a number that took another's place below it. */
function lastMoved({ slug, date, changed = date }: PublishedNote, published: Published): string {
  if (!published.numbers.some(({ replaces }) => replaces !== undefined)) return changed
  const later = partOf(published, slug, []).numbers.filter((one) => one.replaces !== undefined)
  return later.reduce((last, number) => (number.date > last ? number.date : last), changed)
}

const noticeHtml = ({ published: { site } }: CardContext): string =>
  [site.notice, standingWords]
    .flatMap((text) => (text === undefined ? [] : [`<p>${escape(text)}</p>`]))
    .join('')

const textOfBlock = (block: PublishedBlock, ctx: CardContext): string =>
  plainText(block, ctx, { who: 'builder' }, ctx.calculator(block.calculator)?.sources ?? [])

async function entryText({
  id,
  title,
  link,
  published,
  updated,
  summary,
  content,
}: Entry): Promise<string> {
  return [
    '<entry>',
    `<id>${id}</id>`,
    `<title>${xml(title)}</title>`,
    `<link href="${xml(link)}"/>`,
    `<published>${instant(published)}</published>`,
    `<updated>${instant(updated)}</updated>`,
    ...(summary === undefined ? [] : [`<summary>${xml(summary)}</summary>`]),
    `<content type="html">${xml(await content())}</content>`,
    '</entry>',
  ].join('\n')
}

const instant = (day: string): string => `${day}T00:00:00Z`

const tag = ({ hostname }: URL, day: string, name: string): string =>
  `tag:${hostname},${day}:${name}`

/** Escaped, without the signs that XML 1.0 has no place for. */
const xml = (text: string): string => escape(Array.from(text).filter(hasPlace).join(''))

function hasPlace(sign: string): boolean {
  const code = sign.codePointAt(0) ?? 0
  const surrogate = code >= 0xd800 && code <= 0xdfff
  return code < 32 ? '\t\n\r'.includes(sign) : !surrogate && code !== 0xfffe && code !== 0xffff
}
