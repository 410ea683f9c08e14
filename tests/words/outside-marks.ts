/**
 * What a reader sees of a page that stands between no marks. In: the HTML of a page that was made with
 * the marked catalogue. Out: each stretch of letters outside the marks, in the order of the page.
 *
 * A text may go round elements (words`Written by ${link}.`), so marks are counted along the page; a text
 * in an attribute stands by itself.
 */
import { parse, type DefaultTreeAdapterTypes } from 'parse5'
import { close, open } from './marked-words.ts'

type Node = DefaultTreeAdapterTypes.Node

/** Their text is for nobody, is typed as it stands, or is a unit or a symbol, which are no words. */
const silent = new Set(['script', 'style', 'code', 'math', 'data', 'i'])
const spoken = new Set(['alt', 'aria-label', 'data-label', 'placeholder', 'title'])

const mark = new RegExp(`([${open}${close}])`, 'u')

/** `depth`: how many marks are open before the text; also the stretches, and how many are open behind it. */
function stretches(
  text: string,
  depth = 0,
): { readonly outside: string[]; readonly depth: number } {
  const outside: string[] = []
  let now = depth
  for (const part of text.split(mark)) {
    if (part === open) now += 1
    else if (part === close) now -= 1
    else if (now === 0 && /\p{L}/u.test(part)) outside.push(part.replace(/\s+/g, ' ').trim())
  }
  return { outside, depth: now }
}

export const outsideInText = (text: string): readonly string[] => stretches(text).outside

export function outsideMarks(html: string): readonly string[] {
  const found: string[] = []
  let depth = 0
  const take = (text: string, from: number): number => {
    const { outside, depth: behind } = stretches(text, from)
    found.push(...outside)
    return behind
  }
  const walk = (node: Node): void => {
    if ('value' in node) depth = take(node.value, depth)
    if ('tagName' in node && silent.has(node.tagName)) return
    if ('attrs' in node) {
      const described = node.attrs.some(
        ({ name, value }) => /^(?:name|property)$/.test(name) && /description|:alt$/.test(value),
      )
      for (const { name, value } of node.attrs)
        if (spoken.has(name) || (name === 'content' && described)) take(value, 0)
    }
    if ('childNodes' in node) node.childNodes.forEach(walk)
  }
  // What stands in `<noscript>` is read as well.
  walk(parse(html, { scriptingEnabled: false }))
  return found
}
