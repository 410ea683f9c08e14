/**
 * A drawing (SVG) made fit for the site. In: its text. Out: the drawing written anew and its size, or
 * why it is refused.
 *
 * Only elements that draw are let through; script, handlers, and whatever would fetch or hold another
 * file refuse the drawing. Comments, notes of the drawing program and its own attributes are left out:
 * they name people and folders. Where a folder of somebody's machine is named in what stays, the drawing
 * is refused. A page shows a drawing as a picture and never as part of itself.
 */
import { tokensOf, type Token } from './xml.ts'
import type { PictureFault } from './facts.ts'
import { words } from '../words/words.ts'

export interface Drawing {
  readonly svg: string
  readonly width: number
  readonly height: number
}

const drawn = new Set(
  `svg g defs symbol use title path rect circle ellipse line polyline polygon text tspan textPath
  marker pattern mask clipPath linearGradient radialGradient stop filter style switch
  feBlend feColorMatrix feComponentTransfer feComposite feConvolveMatrix feDiffuseLighting
  feDisplacementMap feDistantLight feDropShadow feFlood feFuncA feFuncB feFuncG feFuncR feGaussianBlur
  feMerge feMergeNode feMorphology feOffset fePointLight feSpecularLighting feSpotLight feTile
  feTurbulence`.split(/\s+/),
)
const running = new Set(
  `script foreignObject animate animateMotion animateTransform set discard handler listener iframe
  object embed audio video`
    .split(/\s+/)
    .map((name) => name.toLowerCase()),
)
const fetching = new Set(['image', 'feimage', 'a', 'link', 'font-face-uri', 'cursor', 'tref'])

export function readDrawing(text: string, name: string): Drawing | PictureFault {
  const { tokens, broken } = tokensOf(text.replace(/^\uFEFF/, ''))
  if (broken !== undefined) return brokenDrawing(name, broken)
  const out: string[] = []
  const open: { readonly name: string; readonly dropped: boolean }[] = []
  let root: Token | undefined
  for (const token of tokens) {
    const dropping = open.some(({ dropped }) => dropped)
    if (token.type === 'close') {
      open.pop()
      if (!dropping) out.push(`</${token.name}>`)
      continue
    }
    if (token.type === 'text') {
      if (dropping) continue
      const inside = open.at(-1)?.name
      const text = inside === 'style' ? withoutComments(token.text) : token.text
      const fault =
        (inside === 'style' || inside === 'title' ? folderFault(text, name) : undefined) ??
        (inside === 'style' ? styleFault(text, name) : undefined)
      if (fault !== undefined) return fault
      out.push(text)
      continue
    }
    const fault =
      open.at(-1)?.name === 'style'
        ? brokenDrawing(name, words`<${token.name}> stands in <style>`)
        : elementFault(token, name)
    if (fault !== undefined) return fault
    root ??= token
    const dropped = !drawn.has(token.name)
    if (!token.empty) open.push({ name: token.name, dropped })
    if (!dropping && !dropped) out.push(opening(token))
  }
  if (root?.type !== 'open' || root.name !== 'svg')
    return { rule: 'drawing-broken', text: words`\`${name}\` is not a drawing: it has no <svg>` }
  const size = sizeOf(root.attributes)
  if (size === undefined)
    return {
      rule: 'drawing-without-size',
      text: words`\`${name}\` does not say how large it is: its <svg> has no \`viewBox\``,
      hint: '`viewBox="0 0 400 240"`',
    }
  return { svg: `${out.join('').trim()}\n`, ...size }
}

type Opening = Extract<Token, { readonly type: 'open' }>

/** Attributes of the drawing language; a program's own have a prefix. */
const isKept = ([key]: readonly [string, string]): boolean =>
  key.includes(':')
    ? /^(?:xlink:href|xml:(?:space|lang)|xmlns:xlink)$/.test(key)
    : !key.toLowerCase().startsWith('data-')

const withoutComments = (style: string): string => style.replace(/\/\*[^]*?(?:\*\/|$)/g, ' ')

function opening({ name, attributes, empty }: Opening): string {
  const written = attributes.filter(isKept).map(([key, value]) => ` ${key}="${value}"`)
  return `<${name}${written.join('')}${empty ? '/' : ''}>`
}

function elementFault(
  { name: element, attributes }: Opening,
  name: string,
): PictureFault | undefined {
  const local = element.slice(element.indexOf(':') + 1).toLowerCase()
  if (running.has(local)) return scripted(name, `<${element}>`)
  if (fetching.has(local)) return elsewhere(name, `<${element}>`)
  for (const [key, raw] of attributes) {
    const value = plain(raw)
    const attribute = key.slice(key.indexOf(':') + 1).toLowerCase()
    if (attribute.startsWith('on')) return scripted(name, `\`${key}\``)
    // eslint-disable-next-line no-control-regex -- browsers pass over these signs in an address
    if (/^[\u0000-\u0020]*(?:java|vb)script:/i.test(value)) return scripted(name, `\`${key}\``)
    if (/^(?:href|src)$/.test(attribute) && !value.trim().startsWith('#'))
      return elsewhere(name, `\`${key}="${short(value)}"\``)
    const fault = isKept([key, raw])
      ? (folderFault(value, name) ?? styleFault(value, name))
      : undefined
    if (fault !== undefined) return fault
  }
  return undefined
}

/** Styles, and attributes like `fill`, may name another file in `url(…)`. */
function styleFault(text: string, name: string): PictureFault | undefined {
  const style = plain(text)
  // Any letter may be written with one before it, so that `u\rl(` is `url(`.
  if (style.includes('\\')) return elsewhere(name, words`\`\\\` in a style or an attribute`)
  if (/expression\s*\(|-moz-binding|behaviou?r\s*:/i.test(style))
    return scripted(name, words`its style`)
  for (const [, address = ''] of style.matchAll(/url\(\s*['"]?\s*([^'")]*)/gi))
    if (!address.startsWith('#')) return elsewhere(name, `\`url(${short(address)})\``)
  if (/@import|image-set\s*\(|\b(?:image|src)\s*\(|@font-face/i.test(style))
    return elsewhere(name, words`its style`)
  return undefined
}

const folder =
  /file:\/\/|(?:^|[^\w.])(?:\/(?:home|media|mnt|root|Users|Volumes)\/|[A-Za-z]:[\\/](?!\/))/

/** In an id, a title: what a drawing shows in words is its author's to see. */
function folderFault(text: string, name: string): PictureFault | undefined {
  const found = folder.exec(plain(text))
  if (found === null) return undefined
  return {
    rule: 'drawing-names-a-folder',
    text: words`\`${name}\` names a folder of the machine it was drawn on: \`${short(plain(text).trim())}\``,
    hint: words`take it out and save as plain SVG, or save the drawing as PNG`,
  }
}

function brokenDrawing(name: string, why: string): PictureFault {
  return {
    rule: 'drawing-broken',
    text: words`\`${name}\` is not a whole drawing: ${why}`,
    hint: words`open it in the program it was drawn with and save it once more`,
  }
}

function scripted(name: string, what: string): PictureFault {
  return {
    rule: 'drawing-with-script',
    text: words`\`${name}\` holds ${what}: a drawing on the site runs nothing`,
    hint: words`save it as plain SVG, or as PNG`,
  }
}

function elsewhere(name: string, what: string): PictureFault {
  return {
    rule: 'drawing-refers-elsewhere',
    text: words`\`${name}\` holds ${what}: a drawing on the site asks for no other file and holds none`,
    hint: words`take it out and save as plain SVG, or save the drawing as PNG`,
  }
}

const short = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text)

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

/** What an attribute says once its entities are read. */
function plain(text: string): string {
  return text.replace(
    /&(?:#(\d+)|#x([0-9a-f]+)|(\w+));/gi,
    (all, ten?: string, hex?: string, word?: string) => {
      if (word !== undefined) return named[word] ?? all
      const code = ten === undefined ? Number.parseInt(hex ?? '', 16) : Number(ten)
      return code <= 0x10ffff ? String.fromCodePoint(code) : all
    },
  )
}

function sizeOf(
  attributes: readonly (readonly [string, string])[],
): { readonly width: number; readonly height: number } | undefined {
  const given = new Map(attributes)
  const length = (key: string): number | undefined => {
    const found = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*(px|pt|mm|cm|in)?\s*$/.exec(given.get(key) ?? '')
    return found === null ? undefined : Number(found[1]) * (pixels[found[2] ?? 'px'] ?? 1)
  }
  const [, , wide, high] = (given.get('viewBox') ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number)
  const ratio = wide !== undefined && high !== undefined && wide > 0 && high > 0 ? wide / high : 0
  const width = length('width') ?? (ratio > 0 ? (length('height') ?? high ?? 0) * ratio : 0)
  const height = length('height') ?? (ratio > 0 ? width / ratio : 0)
  if (!(width > 0 && height > 0)) return undefined
  return { width: Math.max(1, Math.round(width)), height: Math.max(1, Math.round(height)) }
}

const pixels: Readonly<Record<string, number>> = {
  px: 1,
  pt: 96 / 72,
  mm: 96 / 25.4,
  cm: 96 / 2.54,
  in: 96,
}
