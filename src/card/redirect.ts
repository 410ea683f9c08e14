/**
 * Pages that stood under another name before: each leads on to where it is now, without script and also
 * for readers whose browser does not follow. In: the published ledger and where the site lives. Out:
 * path within the site -> the whole page.
 *
 * Its wall sheet and the page that each block has to itself move with a note. Where script runs, what the
 * old address had behind it (`?…`, `#…`) goes along; the meta element cannot do that, so it is for the rest.
 */
import type { Published } from '../ledger/published.ts'
import { escape } from './html.ts'
import { sheetName } from './sheet.ts'
import { words } from '../words/words.ts'
import { language } from '#words'

/** A policy lists it by its hash: whoever changes one changes the other, and a test holds them together. */
const script =
  "const{href}=document.querySelector('a');location.replace(href+location.search+location.hash)"
const scriptHash = 'sha256-KwGXt4Xz0UtCwiqCyy7M6gnDFHjncMlRl9jTfNeS/y0='

export function redirectsOf(published: Published, base: string): ReadonlyMap<string, string> {
  const root = base.replace(/\/*$/, '/')
  const pages = new Map<string, string>()
  for (const { slug, title, was = [] } of published.notes)
    for (const old of was) {
      const blocks = published.blocks.filter(({ note }) => note === slug)
      pages.set(`notes/${old}/index.html`, pageHtml(published, `${root}notes/${slug}/`, title))
      pages.set(
        `notes/${old}/${sheetName}/index.html`,
        pageHtml(published, `${root}notes/${slug}/${sheetName}/`, words`Wall sheet: ${title}`),
      )
      for (const block of blocks)
        pages.set(
          `notes/${old}/${block.name}/index.html`,
          pageHtml(published, `${root}notes/${slug}/${block.name}/`, `${block.title}, ${title}`),
        )
    }
  return pages
}

function pageHtml({ site }: Published, to: string, title: string): string {
  const whole = site.address === undefined ? to : new URL(to, site.address).href
  const href = escape(to)
  const link = `<a href="${href}">${escape(title)}</a>`
  return [
    '<!doctype html>',
    `<html lang="${language}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="content-security-policy" content="default-src 'none'; script-src '${scriptHash}'; base-uri 'none'; form-action 'none'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<noscript><meta http-equiv="refresh" content="0; url=${href}"></noscript>`,
    '<meta name="robots" content="noindex">',
    `<link rel="canonical" href="${escape(whole)}">`,
    `<title>${escape(title)}</title>`,
    '</head>',
    '<body>',
    `<main><h1>${words`This note has another name now`}</h1><p>${words`It is at ${link}.`}</p></main>`,
    `<script>${script}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n')
}
