/**
 * Follows every address of a site. In: its files and base path. Out: each link, picture, script or
 * style that leads nowhere, each anchor that is not on its page, each id that a page has twice.
 */
import { posix } from 'node:path'
import { parse, type DefaultTreeAdapterTypes } from 'parse5'

export type Element = DefaultTreeAdapterTypes.Element
type Node = DefaultTreeAdapterTypes.Node

export function elementsOf(html: string): Element[] {
  const found: Element[] = []
  const walk = (node: Node): void => {
    if ('tagName' in node) found.push(node)
    if ('childNodes' in node) node.childNodes.forEach(walk)
  }
  walk(parse(html, { sourceCodeLocationInfo: true }))
  return found
}

export function attributeOf(element: Element, name: string): string | undefined {
  return element.attrs.find((attribute) => attribute.name === name)?.value
}

export function hasClass(element: Element, name: string): boolean {
  return (attributeOf(element, 'class') ?? '').split(' ').includes(name)
}

/** The text in an element, every run of spaces one plain space. */
export function textIn(node: Node): string {
  const pieces = (one: Node): string => {
    if ('value' in one) return one.value
    return 'childNodes' in one ? one.childNodes.map(pieces).join('') : ''
  }
  return pieces(node)
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .trim()
}

const addressed = ['href', 'src', 'poster', 'action'] as const

/** Addresses of an element; `fetched` are those that a browser asks for by itself. */
export function addressesOf(
  element: Element,
): { readonly to: string; readonly fetched: boolean }[] {
  const single = addressed.flatMap((name) => attributeOf(element, name) ?? [])
  const several = (attributeOf(element, 'srcset') ?? '')
    .split(',')
    .map((one) => one.trim().split(/\s+/)[0] ?? '')
  return [...single, ...several.filter((to) => to !== '')].map((to) => ({
    to,
    fetched:
      element.tagName !== 'a' &&
      !/^(?:canonical|alternate)$/.test(attributeOf(element, 'rel') ?? ''),
  }))
}

export function brokenAddresses(
  pages: ReadonlyMap<string, string>,
  files: ReadonlySet<string>,
  base: string,
): string[] {
  const ids = new Map(
    [...pages].map(([name, html]) => [
      name,
      elementsOf(html).flatMap((one) => attributeOf(one, 'id') ?? []),
    ]),
  )
  const wrong: string[] = []
  for (const [name, html] of pages) {
    const own = ids.get(name) ?? []
    for (const id of own)
      if (own.indexOf(id) !== own.lastIndexOf(id))
        wrong.push(`${name}: the id ${id} is there twice`)
    for (const { to } of elementsOf(html).flatMap(addressesOf)) {
      if (/^(?:[a-z]+:|\/\/)/i.test(to)) continue
      const { pathname, hash } = new URL(
        to,
        `https://site.example${base}${name.replace(/index\.html$/, '')}`,
      )
      const within = pathname.startsWith(base) ? decodeURI(pathname.slice(base.length)) : undefined
      const file =
        within === undefined
          ? undefined
          : within === '' || within.endsWith('/')
            ? posix.join(within, 'index.html')
            : within
      if (file === undefined || !files.has(file)) wrong.push(`${name}: ${to} leads nowhere`)
      else if (hash !== '' && !(ids.get(file) ?? []).includes(decodeURIComponent(hash.slice(1))))
        wrong.push(`${name}: ${to} has no such place`)
    }
  }
  return [...new Set(wrong)]
}
