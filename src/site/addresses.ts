/**
 * Addresses of a page, from the root (`/kit/notes/x/`) or relative to the page (`../../notes/x/`). Pages
 * are rendered with the first and published with the second, so that the same output works below any
 * path. In: a page, its path within the site, the base path. Out: the page with the other kind.
 *
 * What is not found is served at any depth: `404.html` keeps addresses from the root.
 */
const tag = /<!--[^]*?-->|<[a-zA-Z][^"'>]*(?:(?:"[^"]*"|'[^']*')[^"'>]*)*>/g
/** Their content is no markup. */
const raw = /^<(script|style|textarea|title)\b/i
const addressed = /(\s(?:href|src|poster|action|data-base|(src|imagesrc)set)=")([^"]*)"/g
const refresh = /(\scontent="\s*\d+\s*;\s*url=)([^"]*)"/gi

const keepsRooted = (file: string): boolean => file === '404.html'

/** From a page's own folder to the site's root: `./`, `../../`. */
function upFrom(file: string): string {
  const depth = file.split('/').length - 1
  return depth === 0 ? './' : '../'.repeat(depth)
}

export function relativePage(html: string, file: string, base: string): string {
  if (keepsRooted(file)) return html
  const up = upFrom(file)
  return withAddresses(html, (address) =>
    address.startsWith(base) && !address.startsWith('//')
      ? up + address.slice(base.length)
      : address,
  )
}

export function rootedPage(html: string, file: string, base: string): string {
  if (keepsRooted(file)) return html
  const up = upFrom(file)
  return withAddresses(html, (address) =>
    address.startsWith(up) ? base + address.slice(up.length) : address,
  )
}

/** A style sheet's pictures and fonts. */
export function relativeStyle(css: string, file: string, base: string): string {
  return css.replace(/(url\(\s*['"]?)(\/[^'")]*)/g, (all, open: string, address: string) =>
    address.startsWith(base) && !address.startsWith('//')
      ? open + upFrom(file) + address.slice(base.length)
      : all,
  )
}

function withAddresses(html: string, change: (address: string) => string): string {
  const parts: string[] = []
  let copied = 0
  tag.lastIndex = 0
  for (let found = tag.exec(html); found !== null; found = tag.exec(html)) {
    const [text] = found
    if (text.startsWith('<!--')) continue
    const changed = changedTag(text, change)
    if (changed !== text) {
      parts.push(html.slice(copied, found.index), changed)
      copied = found.index + text.length
    }
    const name = raw.exec(text)?.[1]
    if (name === undefined) continue
    const end = html.indexOf(`</${name}`, tag.lastIndex)
    tag.lastIndex = end < 0 ? html.length : end
  }
  parts.push(html.slice(copied))
  return parts.join('')
}

function changedTag(text: string, change: (address: string) => string): string {
  if (!text.includes('="')) return text
  const made = text.replace(
    addressed,
    (__, before: string, isList: string | undefined, value: string) =>
      `${before}${isList === undefined ? change(value) : changedList(value, change)}"`,
  )
  if (!/^<meta\b/i.test(made)) return made
  return made.replace(refresh, (__, before: string, to: string) => `${before}${change(to)}"`)
}

/** Of a `srcset`. */
function changedList(list: string, change: (address: string) => string): string {
  const entries = list.split(/,\s+/).map((entry) => {
    const [address = '', ...size] = entry.trim().split(/\s+/)
    return [change(address), ...size].join(' ')
  })
  return entries.join(', ')
}
