/**
 * Links of the finished site that lead nowhere. In: its pages (addresses from the site's base), the
 * names of all its files, the base path. Out: each such link with its page and where on it.
 *
 * Notes' own links are looked at before, with their place in the note; this finds what notes import or
 * write as HTML, and what the kit itself got wrong.
 */
import { decodedPart } from '../ledger/decoded.ts'
import { attributeText } from './attribute.ts'
import { words } from '../words/words.ts'

export interface DeadLink {
  readonly file: string
  readonly index: number
  readonly text: string
  readonly link: string
}

const anchor = /<a\b[^>]*?\shref="([^"]*)"/g

export function* deadLinks(
  pages: ReadonlyMap<string, string>,
  files: ReadonlySet<string>,
  base: string,
): Generator<DeadLink> {
  const ids = new Map<string, ReadonlySet<string>>()
  const faults = new Map<string, string>()
  const idsOf = (file: string): ReadonlySet<string> => {
    const known = ids.get(file) ?? idsIn(pages.get(file) ?? '')
    ids.set(file, known)
    return known
  }
  for (const [file, html] of pages) {
    if (!file.endsWith('.html')) continue
    for (const { 1: href = '', index } of html.matchAll(anchor)) {
      const to = attributeText(href)
      if (/^(?:[a-z][a-z\d+.-]*:|\/\/)/i.test(to)) continue
      // From the root it leads to the same place from everywhere.
      const known = to.startsWith('/') ? faults.get(to) : undefined
      const fault = known ?? faultOf(to, file)
      if (to.startsWith('/')) faults.set(to, fault)
      if (fault !== '') yield { file, index, text: fault, link: to }
    }
  }

  /** '' where it leads to something. */
  function faultOf(to: string, file: string): string {
    const [path, hash] = within(to, file)
    const target = path === '' || path.endsWith('/') ? `${path}index.html` : path
    const name = decodedPart(target.slice(base.length))
    if (!target.startsWith(base) || !files.has(name))
      return words`a link to \`${to}\` leads nowhere`
    if (hash === '' || !target.endsWith('.html') || idsOf(name).has(decodedPart(hash))) return ''
    return words`a link to \`${to}\`: there is no such place on that page`
  }

  /** Path from the host's root, and what follows `#`. */
  function within(to: string, file: string): readonly [path: string, hash: string] {
    const { pathname, hash } = new URL(to, `https://site.invalid${base}${encodeURI(file)}`)
    return [pathname, hash.slice(1)]
  }
}

const idsIn = (html: string): ReadonlySet<string> =>
  new Set([...html.matchAll(/\sid="([^"]*)"/g)].map(([, id = '']) => attributeText(id)))
