/**
 * Walks over one tag as it was typed, sound or broken.
 *
 * In: the text and the offset of a `<`. Out: where the tag ends as far as it can be followed, its
 * attributes, and its first fault. It stops at the end of the paragraph, but for what stands in
 * quotes or braces that are closed. It is used to repair and to explain tags that MDX refuses, never
 * to find tags: only MDX knows what is code.
 */
import { paragraphEnd } from './place.ts'

export interface TagFault {
  readonly kind: 'open' | 'quote' | 'bare' | 'braces' | 'curly' | 'sign'
  readonly at: number
  /** The attribute it belongs to. */
  readonly attribute: string
}

export interface WalkedTag {
  readonly name: string
  /** One past the last character that surely belongs to the tag. */
  readonly end: number
  readonly fault: TagFault | undefined
  /** Curly quotes round values: offsets of the pair. */
  readonly curly: readonly (readonly [open: number, close: number])[]
  /** The first value that ends in the beginning of another: `"4 A with="` lacks its closing quote. */
  readonly swallowing: TagFault | undefined
}

const double = '“”„‟″＂«»'
const single = '‘’‚‛′＇‹›'
const nameSign = /[\p{ID_Continue}$.:-]/u
/** What may follow a value's closing quote: the end of the tag or another attribute. */
const afterValue = String.raw`(?=\s*\/?>|\s+[\p{ID_Start}$_][\p{ID_Continue}$:.-]*\s*=|\s*$)`

const nextBegins = /^["'][^]*\s[\p{ID_Start}$_][\p{ID_Continue}$:.-]*\s*=\s*["']$/u

export function walkTag(text: string, start: number): WalkedTag {
  let limit = paragraphEnd(text, start)
  const curly: (readonly [number, number])[] = []
  let swallowing: TagFault | undefined
  let at = start + (text[start + 1] === '/' ? 2 : 1)
  const name = while_(text, at, nameSign)
  at += name.length

  const done = (end: number, kind?: TagFault['kind'], place = end, attribute = ''): WalkedTag => ({
    name,
    end,
    fault: kind && { kind, at: place, attribute },
    curly,
    swallowing,
  })

  for (;;) {
    at = skipSpace(text, at)
    const sign = text[at]
    if (at >= limit || sign === undefined || sign === '<') return done(Math.min(at, limit), 'open')
    if (sign === '>') return done(at + 1)
    if (sign === '/' && text[at + 1] === '>') return done(at + 2)
    if (sign === '{') {
      const close = matchingBrace(text, at, text.length)
      if (close === undefined) return done(at + 1, 'braces', at)
      at = close + 1
      limit = paragraphEnd(text, at)
      continue
    }
    const attribute = while_(text, at, nameSign)
    if (attribute === '') return done(at, 'sign')
    at = skipSpace(text, at + attribute.length)
    if (text[at] !== '=') continue
    at = skipSpace(text, at + 1)
    const value = walkValue(text, at, limit)
    if (value.curly) curly.push(value.curly)
    if (value.fault) return done(value.end, value.fault, at, attribute)
    if (swallowing === undefined && nextBegins.test(text.slice(at, value.end)))
      swallowing = { kind: 'quote', at, attribute }
    at = value.end
    if (at > limit) limit = paragraphEnd(text, at)
  }
}

interface Value {
  readonly end: number
  readonly fault?: TagFault['kind']
  readonly curly?: readonly [number, number]
}

function walkValue(text: string, at: number, limit: number): Value {
  const sign = text[at] ?? ''
  if (sign === '{') {
    const close = matchingBrace(text, at, text.length)
    return close === undefined ? { end: at + 1, fault: 'braces' } : { end: close + 1 }
  }
  if (sign === '"' || sign === "'") {
    const close = text.indexOf(sign, at + 1)
    // A quote closed by a curly one: the straight one that follows belongs to the next value.
    const other = closingQuote(text, at, limit, sign === '"' ? double : single)
    if (other !== undefined && (close < 0 || other < close))
      return { end: other + 1, curly: [at, other] }
    return close < 0 || close > limit ? { end: at + 1, fault: 'quote' } : { end: close + 1 }
  }
  const family = double.includes(sign) ? double : single
  if (sign !== '' && family.includes(sign)) {
    const close = closingQuote(text, at, limit, family + (family === double ? '"' : "'"))
    return close === undefined
      ? { end: at + 1, fault: 'curly' }
      : { end: close + 1, curly: [at, close] }
  }
  return {
    end: at + (/^[^\s>]*?(?=\/?>|\s|$)/.exec(text.slice(at, limit))?.[0].length ?? 0),
    fault: 'bare',
  }
}

function closingQuote(text: string, at: number, limit: number, signs: string): number | undefined {
  const found = new RegExp(`[${signs}]${afterValue}`, 'u').exec(text.slice(at + 1, limit))
  return found ? at + 1 + found.index : undefined
}

/** Offset of the `}` that closes the `{` at `open`; what stands in quotes does not count. */
export function matchingBrace(text: string, open: number, limit: number): number | undefined {
  let depth = 0
  let quote = ''
  for (let at = open; at < limit; at += 1) {
    const sign = text[at] ?? ''
    if (quote) {
      if (sign === '\\') at += 1
      else if (sign === quote || /[\r\n]/.test(sign)) quote = ''
    } else if (sign === '"' || sign === "'" || sign === '`') quote = sign
    else if (sign === '{') depth += 1
    else if (sign === '}') {
      depth -= 1
      if (depth === 0) return at
    }
  }
  return undefined
}

function skipSpace(text: string, at: number): number {
  return at + (/^\s*/.exec(text.slice(at, at + 400))?.[0].length ?? 0)
}

function while_(text: string, at: number, sign: RegExp): string {
  let end = at
  for (const one of text.slice(at, at + 200)) {
    if (!sign.test(one)) break
    end += one.length
  }
  return text.slice(at, end)
}
