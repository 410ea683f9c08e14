/**
 * `<Photo>`, one picture with numbered marks, and `<BeforeAfter>`, two pictures of one place. In: the
 * element. Out: every fault in what it holds; the page takes the same parts from here.
 *
 * A picture's caption is what stands behind it. A mark is an item of a list that begins with its place,
 * per cent from the left and from the top: `40 % 25 %: the filler neck`.
 */
import type { Image, ImageReference, List, ListItem, Nodes, PhrasingContent, Text } from 'mdast'
import { toString } from 'mdast-util-to-string'
import { attributesOf, type Element } from './attributes.ts'
import { report, startOf, type ReadContext } from './context.ts'
import { words } from '../../words/words.ts'
import { allOf } from '../../words/lists.ts'
import { example } from './pictures.ts'

export interface PictureGroup {
  readonly picture: Image | ImageReference
  readonly caption: readonly PhrasingContent[]
}

export interface PhotoParts {
  readonly groups: readonly PictureGroup[]
  readonly lists: readonly List[]
  /** What such an element does not hold. */
  readonly other: readonly Nodes[]
}

export function photoParts({ children }: Element): PhotoParts {
  const groups: { picture: Image | ImageReference; caption: PhrasingContent[] }[] = []
  const lists: List[] = []
  const other: Nodes[] = []
  const add = (node: PhrasingContent): void => {
    if (node.type === 'image' || node.type === 'imageReference')
      groups.push({ picture: node, caption: [] })
    else if (groups.length > 0) groups.at(-1)?.caption.push(node)
    else if (!isBlank(node)) other.push(node)
  }
  for (const child of children) {
    if (child.type === 'list') lists.push(child)
    else if (child.type === 'paragraph') {
      add({ type: 'text', value: ' ' })
      child.children.forEach(add)
    } else if (isPhrasing(child)) add(child)
    else other.push(child)
  }
  return { groups: groups.map((one) => ({ ...one, caption: trimmed(one.caption) })), lists, other }
}

const isBlank = (node: Nodes): boolean =>
  node.type === 'break' || (node.type === 'text' && node.value.trim() === '')

const isPhrasing = (node: Nodes): node is PhrasingContent =>
  /^(?:text|emphasis|strong|delete|inlineCode|link|linkReference|image|imageReference|break|mdxText.*|mdxJsxText.*)$/.test(
    node.type,
  )

function trimmed(inline: readonly PhrasingContent[]): PhrasingContent[] {
  const first = inline.findIndex((one) => !isBlank(one))
  const last = inline.findLastIndex((one) => !isBlank(one))
  return (first < 0 ? [] : inline.slice(first, last + 1)).map((one, index, kept) => {
    if (one.type !== 'text') return one
    const from = index === 0 ? one.value.trimStart() : one.value
    return { ...one, value: index === kept.length - 1 ? from.trimEnd() : from }
  })
}

export interface MarkStart {
  /** Per cent from the left and from the top. */
  readonly x: number
  readonly y: number
  /** The words of the item that hold the place, and how many of their signs. */
  readonly words: Text
  readonly length: number
}

const place =
  /^\s*([-−]?\d+(?:[.,]\d+)?)\s*%\s*(?:[,;/·]\s*)?([-−]?\d+(?:[.,]\d+)?)\s*%\s*[:–—-]?\s*/u

/** Where a mark stands; undefined when the item does not begin with a place. */
export function markStart(item: ListItem): MarkStart | undefined {
  const [paragraph] = item.children
  const inline = paragraph?.type === 'paragraph' ? paragraph.children[0] : undefined
  if (inline?.type !== 'text') return undefined
  const found = place.exec(inline.value)
  if (found === null) return undefined
  const [all, x = '', y = ''] = found
  const number = (text: string): number => Number(text.replace('−', '-'))
  return { x: number(x), y: number(y), words: inline, length: all.length }
}

export function checkPhoto(ctx: ReadContext, element: Element): void {
  const name = element.name ?? ''
  for (const attribute of attributesOf(ctx, element))
    report(ctx, attribute, {
      rule: 'unknown-attribute',
      text: words`<${name}> has no \`${attribute.name}\``,
      hint: words`its pictures, captions and marks stand between the tags`,
    })
  const said = (text: string, hint: string): void =>
    report(ctx, startOf(element), { rule: 'photo-content', text, hint })
  if (element.type === 'mdxJsxTextElement') {
    said(
      words`<${name}> in a line of words`,
      words`give it lines of its own, with an empty line before and after`,
    )
    return
  }
  const { groups, lists, other } = photoParts(element)
  const [odd] = other
  if (odd !== undefined)
    report(ctx, startOf(odd), {
      rule: 'photo-content',
      text:
        name === 'Photo'
          ? words`${'<Photo>'} holds something that is no picture, caption or mark`
          : words`${`<${name}>`} holds something that is no picture, caption`,
      hint: words`a caption stands behind its picture; put everything else outside`,
    })
  if (name === 'Photo') checkMarked(ctx, groups.length, lists, said)
  else if (groups.length !== 2 || lists.length > 0)
    said(
      lists.length > 0
        ? words`<BeforeAfter> holds a list`
        : words`<BeforeAfter> holds ${count(groups.length)}: two are due, first before, then after`,
      lists.length > 0
        ? words`marks go with <Photo>`
        : allOf(['`![before: …](./a.jpg)`', '`![after: …](./b.jpg)`']),
    )
}

function count(pictures: number): string {
  if (pictures === 0) return words`no picture`
  return pictures === 1 ? words`one picture` : words`${pictures} pictures`
}

function checkMarked(
  ctx: ReadContext,
  pictures: number,
  lists: readonly List[],
  said: (text: string, hint: string) => void,
): void {
  if (pictures !== 1)
    said(
      words`<Photo> holds ${count(pictures)}: one is due`,
      pictures === 2 ? words`<BeforeAfter> takes two` : example,
    )
  if (lists.length > 1) said(words`<Photo> holds two lists`, words`put all marks into one`)
  for (const item of lists.flatMap(({ children }) => children)) checkMark(ctx, item)
}

const allowed = words`per cent from the left, then from the top: \`40 % 25 %: the filler neck\``

function checkMark(ctx: ReadContext, item: ListItem): void {
  const at = startOf(item.children[0] ?? item)
  const mark = markStart(item)
  if (mark === undefined) {
    report(ctx, at, {
      rule: 'mark-without-place',
      text: words`a mark does not begin with its place`,
      allowed,
    })
    return
  }
  const { x, y, words: inline, length } = mark
  const typed = inline.value.slice(0, length).trim()
  if (typed.includes(',') && /\d,\d/.test(typed))
    report(ctx, at, {
      rule: 'decimal-comma',
      text: words`\`${typed}\` has a comma where numbers here have a point`,
      hint: words`did you mean \`${typed.replace(/(\d),(?=\d)/g, '$1.')}\`?`,
    })
  else if (!(x >= 0 && x <= 100 && y >= 0 && y <= 100))
    report(ctx, at, {
      rule: 'mark-off-picture',
      text: words`\`${typed}\` is not on the picture`,
      allowed: words`from 0 % to 100 %`,
    })
  const after = toString(item).slice(length).trim()
  if (
    after === '' &&
    item.children.length < 2 &&
    (item.children[0]?.type !== 'paragraph' || item.children[0].children.length < 2)
  )
    report(ctx, at, {
      rule: 'mark-without-words',
      text: words`the mark at \`${typed}\` says nothing`,
      allowed,
    })
}
