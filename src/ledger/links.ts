/**
 * Where the links of all notes lead. In: the notes as read, the worked ledger, and what else the site
 * has pages for. Out: a problem for each link that leads nowhere, and those that lead off the site.
 *
 * A link to a number leads to its name, and to a result of a block (`#pump.flow`) by its story.
 */
import { nearestName } from '../quantity/nearest.ts'
import { decodedPart } from './decoded.ts'
import type { LinkSource, NoteSource } from './note-source.ts'
import type { Problem } from './problems.ts'
import { sitePageFault, type Families } from './page-links.ts'
import type { Published, PublishedLink } from './published.ts'
import { didYouMean, problemAt, type Said } from './report.ts'
import { words } from '../words/words.ts'

export interface Site extends Families {
  /** File names of all notes, drafts too. */
  readonly names: readonly string[]
  readonly slugOf: (specifier: string) => string | undefined
}

/** Each note's anchors: slug -> where a link may lead on its page. */
type Places = ReadonlyMap<string, ReadonlySet<string>>

export function linkProblems(
  notes: readonly NoteSource[],
  published: Published,
  site: Site,
): Problem[] {
  const places = placesOf(notes, published)
  const pages = pagesOf(notes)
  const renamed = new Map(
    notes.flatMap(({ slug, meta }) => (meta.was ?? []).map((was) => [was, slug] as const)),
  )
  return [
    ...renameProblems(notes),
    ...notes.flatMap((note) =>
      note.links.flatMap((link) => {
        const said = faultOf(note, link, { places, pages, renamed, site })
        return said === undefined ? [] : [problemAt(note.file, link, said)]
      }),
    ),
  ]
}

const isOutside = (url: string): boolean => /^(?:[a-z][a-z\d+.-]*:|\/\/)/i.test(url)

/** Links off the site, in the order of the notes; mail addresses and telephone numbers are none. */
export function outsideLinks(notes: readonly NoteSource[]): PublishedLink[] {
  return notes.flatMap(({ slug, links }) =>
    links.flatMap(({ url, text, line }) =>
      /^(?:https?:)?\/\//i.test(url) ? [{ note: slug, text, url, line }] : [],
    ),
  )
}

function placesOf(notes: readonly NoteSource[], { numbers }: Published): Places {
  const numbersOf = Map.groupBy(numbers, ({ note }) => note)
  return new Map(
    notes.map(({ slug, headings, roots, sums, blocks, parts, tasks }) => [
      slug,
      new Set([
        ...headings.keys(),
        ...[...roots, ...sums, ...blocks, ...parts].map(({ name }) => name),
        ...tasks.map((_, index) => `Task-${index + 1}`),
        ...(numbersOf.get(slug) ?? []).map(({ name }) => name),
      ]),
    ]),
  )
}

/** `hoses[0].length` is the number `hoses.0.length`. */
export const numberName = (hash: string): string => hash.replace(/\[(\d+)\]/g, '.$1')

/** Each note's pages below its own. */
const pagesOf = (notes: readonly NoteSource[]): ReadonlyMap<string, readonly string[]> =>
  new Map(
    notes.map(({ slug, blocks }) => [slug, ['wall-sheet', ...blocks.map(({ name }) => name)]]),
  )

interface Known {
  readonly pages: ReadonlyMap<string, readonly string[]>
  readonly places: Places
  readonly renamed: ReadonlyMap<string, string>
  readonly site: Site
}

const schemes = ['https:', 'http:', 'mailto:', 'tel:']

function faultOf(note: NoteSource, { url }: LinkSource, known: Known): Said | undefined {
  if (url === '')
    return {
      rule: 'dead-link',
      text: words`a link without an address`,
      hint: '`[words](./other-note.mdx)`',
    }
  if (isOutside(url)) return schemeFault(url)
  const [path, hash] = split(url)
  if (path === '') return hash === undefined ? undefined : placeFault(note.slug, hash, known, true)
  if (path.startsWith('/')) return pageFault(path, hash, known)
  return path.endsWith('.mdx') ? noteFault(path, hash, known) : fileFault(path, known)
}

function schemeFault(url: string): Said | undefined {
  const scheme = /^[a-z][a-z\d+.-]*:/i.exec(url)?.[0].toLowerCase()
  if (scheme === undefined || schemes.includes(scheme)) return undefined
  return {
    rule: 'dead-link',
    text: words`a link to \`${url}\`: a page cannot lead there`,
    allowed: schemes.join(', '),
  }
}

function split(url: string): readonly [path: string, hash: string | undefined] {
  const at = url.indexOf('#')
  return at < 0 ? [url, undefined] : [url.slice(0, at), decodedPart(url.slice(at + 1))]
}

function noteFault(path: string, hash: string | undefined, known: Known): Said | undefined {
  const { site, renamed } = known
  const slug = site.slugOf(decodedPart(path))
  if (slug !== undefined) return hash === undefined ? undefined : placeFault(slug, hash, known)
  const now = renamed.get(path.replace(/^\.\//, '').replace(/\.mdx$/, ''))
  return {
    rule: 'unknown-note',
    text: words`a link to \`${path}\`: there is no such note`,
    hint:
      now === undefined
        ? didYouMean(path.replace(/^\.\//, ''), site.names, './')
        : words`it has another name now: \`./${now}.mdx\``,
  }
}

/** Of a draft nothing is known here: that it is one is told elsewhere. */
function placeFault(slug: string, hash: string, known: Known, here = false): Said | undefined {
  const places = known.places.get(slug)
  if (places === undefined || hash === '' || places.has(numberName(hash))) return undefined
  const where = here ? words`this note` : words`the note \`${slug}\``
  const all = [...places]
  const near = all.find((one) => one.toLowerCase() === hash.toLowerCase()) ?? nearestName(hash, all)
  return {
    rule: 'unknown-place',
    text: words`a link to \`#${hash}\`: ${where} has no heading, number or block there`,
    hint:
      near === undefined
        ? words`a heading is addressed in small letters with dashes: \`#what-i-did\`; a number by its name`
        : words`did you mean \`#${near}\`?`,
  }
}

function pageFault(path: string, hash: string | undefined, known: Known): Said | undefined {
  const said = sitePageFault(path, known.site, known)
  if (said !== undefined || hash === undefined) return said
  const slug = /^\/notes\/([^/]+)\/$/.exec(path)?.[1]
  return slug === undefined ? undefined : placeFault(slug, hash, known)
}

function fileFault(path: string, { site }: Known): Said {
  const name = path.replace(/^(?:\.\.?\/)+|\/$/g, '')
  const note = site.names.find((one) => one === `${name.replace(/^notes\//, '')}.mdx`)
  return {
    rule: 'dead-link',
    text: words`a link to \`${path}\`: nothing is put on the site there`,
    hint:
      note === undefined
        ? words`a note is \`./its-name.mdx\`, a page of the site begins with a slash, such as \`/numbers/\``
        : words`write \`./${note}\``,
  }
}

/** Old names that cannot lead anywhere. */
function renameProblems(notes: readonly NoteSource[]): Problem[] {
  const slugs = new Map(notes.map((note) => [note.slug, note]))
  const claimed = new Map<string, NoteSource>()
  return notes.flatMap((note) =>
    (note.meta.was ?? []).flatMap((was) => {
      const before = claimed.get(was)
      claimed.set(was, note)
      const owner = slugs.get(was) ?? before
      if (owner === undefined) return []
      const said =
        owner === note && before === undefined
          ? { rule: 'was-itself', text: words`\`was: ${was}\` is what the note is called now` }
          : {
              rule: 'was-taken',
              text:
                slugs.get(was) === undefined
                  ? words`\`was: ${was}\` is said by two notes: its address can lead to one only`
                  : words`\`was: ${was}\`: there is a note of that name, and its address is its own`,
              hint: words`take it out of this note`,
              also: [{ file: owner.file, line: wasLine(owner), column: 1 }],
            }
      return [problemAt(note.file, { line: wasLine(note), column: 1 }, said)]
    }),
  )
}

const wasLine = ({ raw }: NoteSource): number =>
  Math.max(1, raw.split('\n').findIndex((line) => line.startsWith('was:')) + 1)
