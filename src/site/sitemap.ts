/**
 * The list of pages for search engines (sitemaps.org, protocol 0.9) and the file that names it. In: the
 * pages of the site, by path, with their days. Out: the files' texts; none where the site has no address.
 */
import { escape } from '../card/html.ts'

export interface SitePage {
  /** `notes/cooling/index.html` */
  readonly file: string
  /** YYYY-MM-DD */
  readonly day?: string | undefined
}

/** As many as the protocol allows in one file. */
const most = 50_000

export function sitemapFiles(
  pages: readonly SitePage[],
  address: string,
  base: string,
  perFile = most,
): ReadonlyMap<string, string> {
  const home = new URL(base, address)
  const entries = pages
    .toSorted((a, b) => (a.file < b.file ? -1 : 1))
    .map(({ file, day }) => {
      const loc = escape(new URL(file.replace(/(^|\/)index\.html$/, '$1'), home).href)
      return `<url><loc>${loc}</loc>${day === undefined ? '' : `<lastmod>${day}</lastmod>`}</url>`
    })
  const chunks: string[][] = []
  for (let at = 0; at < entries.length; at += perFile) chunks.push(entries.slice(at, at + perFile))
  const files = new Map([['robots.txt', robotsText(new URL('sitemap.xml', home).href)]])
  if (chunks.length <= 1)
    return files.set('sitemap.xml', xml('urlset', (chunks[0] ?? []).join('\n')))
  const parts = chunks.map((list, index) => {
    files.set(`sitemap-${index + 1}.xml`, xml('urlset', list.join('\n')))
    return `<sitemap><loc>${escape(new URL(`sitemap-${index + 1}.xml`, home).href)}</loc></sitemap>`
  })
  return files.set('sitemap.xml', xml('sitemapindex', parts.join('\n')))
}

const xml = (name: string, inner: string): string =>
  `<?xml version="1.0" encoding="utf-8"?>\n<${name} xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${inner}\n</${name}>\n`

/** RFC 9309. It counts at the root of a host only. */
const robotsText = (sitemap: string): string => `User-agent: *\nAllow: /\n\nSitemap: ${sitemap}\n`
