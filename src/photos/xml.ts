/**
 * XML into tags and text, strict and small: what is not well formed is refused, so that what is let
 * through means the same to every reader. Comments and instructions are left out. A document type with
 * declarations of its own is refused: it can make a few letters into gigabytes.
 */
import { words } from '../words/words.ts'

export type Token =
  | {
      readonly type: 'open'
      readonly name: string
      /** Values as written, entities and all, without `"`. */
      readonly attributes: readonly (readonly [name: string, value: string])[]
      readonly empty: boolean
    }
  | { readonly type: 'close'; readonly name: string }
  | { readonly type: 'text'; readonly text: string }

export interface Tokens {
  readonly tokens: readonly Token[]
  /** What is wrong with it, for the end of a sentence. */
  readonly broken?: string
}

const name = String.raw`[\p{L}_][\p{L}\p{N}_.:-]*`
const tag = new RegExp(
  String.raw`<(/?)(${name})((?:\s+${name}\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(/?)>`,
  'uy',
)
const pair = new RegExp(String.raw`(${name})\s*=\s*(?:"([^"]*)"|'([^']*)')`, 'gu')
const skipped = /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!DOCTYPE[^>[]*>/y
const section = /<!\[CDATA\[([\s\S]*?)\]\]>/y
const stretch = /[^<]+/y

export function tokensOf(text: string): Tokens {
  const tokens: Token[] = []
  const open: string[] = []
  let at = 0
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at
    const found = pattern.exec(text)
    if (found !== null) at += found[0].length
    return found
  }
  /** Text on both sides of a comment is one text. */
  const write = (more: string): void => {
    const last = tokens.at(-1)
    if (last?.type === 'text') tokens[tokens.length - 1] = { type: 'text', text: last.text + more }
    else tokens.push({ type: 'text', text: more })
  }
  const stop = (why: string): Tokens => ({
    tokens: [],
    broken: words`${why} in line ${text.slice(0, at).split('\n').length}`,
  })
  while (at < text.length) {
    const run = take(stretch)
    if (run !== null) {
      if (/&(?!(?:#\d+|#x[0-9a-f]+|amp|lt|gt|quot|apos);)/i.test(run[0]))
        return stop(words`a stray \`&\` or a name of its own`)
      if (open.length > 0) write(run[0])
      else if (run[0].trim() !== '') return stop(words`words outside the drawing`)
      continue
    }
    if (take(skipped) !== null) continue
    const raw = take(section)
    if (raw !== null) {
      const plain = (raw[1] ?? '')
        .replaceAll('&', '&amp;')
        .replaceAll('<', '&lt;')
        .replaceAll('>', '&gt;')
      write(plain)
      continue
    }
    const found = take(tag)
    if (found === null) return stop(words`a tag that does not end, or a declaration`)
    const [, slash = '', element = '', written = '', end = ''] = found
    if (slash !== '') {
      if (written !== '' || end !== '' || open.pop() !== element)
        return stop(words`</${element}> closes nothing`)
      tokens.push({ type: 'close', name: element })
      continue
    }
    if (open.length === 0 && tokens.length > 0) return stop(words`a second drawing`)
    const attributes = [...written.matchAll(pair)].map(
      ([, key = '', double, single = '']) =>
        [key, double ?? single.replaceAll('"', '&quot;')] as const,
    )
    if (
      attributes.some(([, value]) => /&(?!(?:#\d+|#x[0-9a-f]+|amp|lt|gt|quot|apos);)/i.test(value))
    )
      return stop(words`a stray \`&\` or a name of its own`)
    if (new Set(attributes.map(([key]) => key)).size < attributes.length)
      return stop(words`an attribute that stands twice`)
    tokens.push({ type: 'open', name: element, attributes, empty: end !== '' })
    if (end === '') open.push(element)
  }
  if (open.length > 0) return stop(words`<${open.at(-1) ?? ''}> is not closed`)
  return { tokens }
}
