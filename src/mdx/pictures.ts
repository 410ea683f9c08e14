/**
 * Puts the finished pictures into a note's page. Tree in: the note's, with its pictures as written.
 * Tree out: each picture as the HTML of its copies, `<Photo>` and `<BeforeAfter>` as figures with their
 * captions and marks, links to pictures leading to the copy. No file of the builder's is left in it.
 */
import type { BlockContent, Definition, Image, ImageReference, List, Nodes, Root } from 'mdast'
import type { MdxJsxAttribute, MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx'
import { SKIP, visitParents } from 'unist-util-visit-parents'
import {
  markPlaceWords,
  noPictureHtml,
  pairWords,
  type Mark,
  type PictureOptions,
} from '../card/picture.ts'
import { isPhotoElement, markStart, photoParts, type PictureGroup } from '../ledger/read.ts'

/** What a page needs to know of its pictures. */
export interface PicturesOfNote {
  /** Finished HTML of a picture by its address as typed, with the marks that stand on it. */
  pictureHtml(
    url: string,
    options: Omit<PictureOptions, 'base'>,
    marks: readonly Mark[],
  ): string | undefined
  /** Below the site's base, with a `/` in front: the copy that a link leads to. */
  pictureHref(url: string): string | undefined
}

export function fillPictures(tree: Root, page: PicturesOfNote): void {
  const definitions = new Map<string, Definition>()
  visitParents(tree, 'definition', (node) => {
    if (!definitions.has(node.identifier)) definitions.set(node.identifier, node)
  })
  let shown = 0
  const element: MakePicture = (node, { half, marks = [], title = true }) => {
    const named = node.type === 'image' ? node : definitions.get(node.identifier)
    const html = page.pictureHtml(
      named?.url ?? '',
      {
        words: node.alt ?? '',
        title: title ? (named?.title ?? undefined) : undefined,
        first: shown === 0,
        half: half === true,
      },
      marks,
    )
    shown += 1
    return {
      type: 'mdxJsxTextElement',
      name: 'Photo',
      attributes: [attribute('html', html ?? noPictureHtml(node.alt ?? ''))],
      children: [],
    }
  }
  const titleOf = (node: Image | ImageReference): string =>
    (node.type === 'image' ? node : definitions.get(node.identifier))?.title ?? ''

  visitParents(tree, (node, ancestors) => {
    if (node.type === 'link') node.url = page.pictureHref(node.url) ?? node.url
    const parent = ancestors.at(-1)
    if (parent === undefined) return undefined
    /** `again`: what stands in the new element is looked at as well. */
    const replace = (made: Nodes, again = 0): [typeof SKIP, number] => {
      const index = parent.children.findIndex((child) => child === node)
      parent.children.splice(index, 1, ...([made] as never[]))
      return [SKIP, index + 1 - again]
    }
    const put = (made: MdxJsxFlowElement): [typeof SKIP, number] => replace(made, 1)
    if (node.type === 'mdxJsxFlowElement' && isPhotoElement(node.name ?? ''))
      return node.name === 'Photo'
        ? put(photo(node, element, titleOf))
        : put(pair(node, element, titleOf))
    if (node.type === 'paragraph') {
      const [only, ...more] = node.children
      if (more.length === 0 && isPicture(only) && titleOf(only) !== '')
        return put(
          figure('photo', [
            element(only, { title: false }),
            caption([{ type: 'text', value: titleOf(only) }]),
          ]),
        )
      return undefined
    }
    return isPicture(node) ? replace(element(node, {})) : undefined
  })
  for (const node of definitions.values()) node.url = page.pictureHref(node.url) ?? node.url
}

type MakePicture = (
  node: Image | ImageReference,
  options: {
    readonly half?: boolean
    readonly marks?: readonly Mark[]
    /** Off where the title is the caption. */
    readonly title?: boolean
  },
) => MdxJsxTextElement

const isPicture = (node: Nodes | undefined): node is Image | ImageReference =>
  node?.type === 'image' || node?.type === 'imageReference'

const attribute = (name: string, value: string): MdxJsxAttribute => ({
  type: 'mdxJsxAttribute',
  name,
  value,
})

type Child = MdxJsxFlowElement['children'][number]
type Inline = MdxJsxTextElement['children'][number]

const flow = (
  name: string,
  className: string | undefined,
  children: readonly (Child | Inline)[],
): MdxJsxFlowElement => ({
  type: 'mdxJsxFlowElement',
  name,
  attributes: className === undefined ? [] : [attribute('class', className)],
  children: [...children] as Child[],
})

const figure = (className: string, children: readonly (Child | Inline)[]): MdxJsxFlowElement =>
  flow('figure', className, children)

const caption = (children: readonly (Child | Inline)[]): MdxJsxFlowElement =>
  flow('figcaption', undefined, children)

const span = (className: string, text: string): MdxJsxTextElement => ({
  type: 'mdxJsxTextElement',
  name: 'span',
  attributes: [attribute('class', className)],
  children: [{ type: 'text', value: text }],
})

/** The words behind a picture, else its title. */
function wordsOf(
  { picture, caption: words }: PictureGroup,
  titleOf: (node: Image | ImageReference) => string,
): Inline[] {
  if (words.length > 0) return [...words]
  const title = titleOf(picture)
  return title === '' ? [] : [{ type: 'text', value: title }]
}

function photo(
  node: MdxJsxFlowElement,
  element: MakePicture,
  titleOf: (node: Image | ImageReference) => string,
): MdxJsxFlowElement {
  const { groups, lists } = photoParts(node)
  const [group] = groups
  if (group === undefined) return figure('photo', node.children)
  const marks = lists.flatMap(({ children }) => children).flatMap((item) => markStart(item) ?? [])
  const words = wordsOf(group, titleOf)
  const under: Child[] = [
    ...(words.length > 0 ? [{ type: 'paragraph', children: words } as const] : []),
    ...lists.map(markList),
  ]
  const frame = flow('div', 'photo-frame', [element(group.picture, { marks, title: false })])
  return figure('photo', under.length > 0 ? [frame, caption(under)] : [frame])
}

/** The list beside a picture: each place in words, then what stands there. */
function markList(list: List): List {
  for (const item of list.children) {
    item.checked = null
    const mark = markStart(item)
    const [paragraph] = item.children
    if (mark === undefined || paragraph?.type !== 'paragraph') continue
    const { words, length } = mark
    words.value = words.value.slice(length)
    paragraph.children.unshift(span('mark-place hidden-words', `${markPlaceWords(mark)}: `))
  }
  return {
    ...list,
    ordered: true,
    start: 1,
    spread: false,
    data: Object.assign({}, list.data, { hProperties: { className: 'mark-list' } }),
  }
}

function pair(
  node: MdxJsxFlowElement,
  element: MakePicture,
  titleOf: (node: Image | ImageReference) => string,
): MdxJsxFlowElement {
  const sides = photoParts(node).groups.map((group, index) => {
    const words = wordsOf(group, titleOf)
    const side = index === 0 ? pairWords.before : pairWords.after
    const text: Inline[] = [
      {
        type: 'strong',
        children: [{ type: 'text', value: words.length > 0 ? `${side}:` : side }],
      },
      ...(words.length > 0 ? [{ type: 'text', value: ' ' } as const] : []),
      ...words,
    ]
    const under: BlockContent = { type: 'paragraph', children: text }
    return figure('photo', [element(group.picture, { half: true, title: false }), caption([under])])
  })
  return figure('before-after', sides)
}
