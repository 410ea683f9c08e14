/**
 * Pictures in a note's text, shown or linked to. In: the node that names one. Out: which file it is, or
 * what is wrong with the naming; what is in the file is seen when all notes are read.
 */
import { posix } from 'node:path'
import type { Program } from 'estree'
import type { Definition, Image, ImageReference, Link, Root, Text } from 'mdast'
import { visitParents } from 'unist-util-visit-parents'
import { report, startOf, type ReadContext } from './context.ts'
import { anyNode, children, placeOf, type AnyNode } from './estree.ts'
import { decodedAddress } from '../decoded.ts'
import { example, findPicture, isPictureAddress } from './pictures.ts'
import { words } from '../../words/words.ts'

/** `pictures`: names of the definitions that pictures refer to. */
export function readPicture(
  ctx: ReadContext,
  node: Link | Image | Definition,
  pictures: ReadonlySet<string>,
): void {
  const shows =
    node.type === 'image' || (node.type === 'definition' && pictures.has(node.identifier))
  // A link to a picture leads to the copy that is made for the site.
  if (!shows && !isPictureAddress(node.url)) return
  const { file, files } = ctx.options
  const at = startOf(node)
  const found = findPicture(node.url, file, files)
  if (node.type === 'image') checkAlternative(ctx, node)
  if ('fault' in found) {
    report(ctx, at, found.fault)
    return
  }
  const { line, column } = at
  ctx.pictures.push({ url: node.url, path: found.path, line, column })
  const [twin] = found.twins
  if (twin !== undefined)
    report(ctx, at, {
      rule: 'case-twins',
      level: 'warning',
      text: words`\`${posix.basename(found.path)}\` and \`${posix.basename(twin)}\` differ in capitals only: on many machines they are one file`,
      hint: words`give one of them another name`,
    })
}

/** What a picture shows, in words: for who cannot see it, and for where it cannot be shown. */
export function checkAlternative(ctx: ReadContext, node: Image | ImageReference): void {
  const alt = (node.alt ?? '').trim()
  if (alt !== '' && !isFileName(alt, node)) return
  const { status } = ctx.options.meta
  report(ctx, startOf(node), {
    rule: 'no-alternative',
    level: status === 'planned' || status === 'doing' ? 'warning' : 'error',
    text:
      alt === ''
        ? words`a picture without words for who cannot see it`
        : words`\`${alt}\` is a file’s name and does not say what the picture shows`,
    hint: words`say what it shows: \`![the pump, its inlet below the tank](./pump.jpg)\``,
  })
}

/** `IMG_2034`, `20260314_101500`, or the file's own name with its ending. */
function isFileName(alt: string, node: Image | ImageReference): boolean {
  const bare = alt.replace(ending, '')
  if (/^(?:img|dsc[nf]?|pxl|p|image|photo)?[-_ ]?\d[\d_-]*$/i.test(bare)) return true
  return bare !== alt && node.type === 'image' && alt === posix.basename(decodedAddress(node.url))
}

const ending = /\.\w{3,4}$/

const withSpaces =
  /!\[([^\]\n]*)\]\(\s*([^()<>"\n]*\S[^\S\n]+[^()<>"\n]*?\.(?:avif|gif|hei[cf]|jpe?g|png|svg|tiff?|webp))\s*\)/gi

/** A picture whose file has spaces in its name is words to Markdown. */
export function checkPictureText(ctx: ReadContext, { position }: Text): void {
  const source = ctx.options.raw.replace(/^\uFEFF/, '')
  const from = position?.start.offset ?? 0
  const typed = source.slice(from, position?.end.offset)
  if (!typed.includes('![')) return
  for (const { 0: all, 1: alt = '', 2: address = '', index } of typed.matchAll(withSpaces)) {
    const before = source.slice(0, from + index).split(/\r\n?|\n/)
    report(
      ctx,
      { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 },
      {
        rule: 'picture-with-spaces',
        text: words`\`${all}\` is read as words: the file’s name has spaces`,
        hint: words`write \`![${alt}](${address.replace(/%(?![0-9a-f]{2})|[\s#?]/gi, encodeURIComponent)})\``,
      },
    )
  }
}

/**
 * A picture named in program text, by an import or in braces, would be put on the site as the camera
 * wrote it: with the place, the owner and the serial number.
 */
export function checkPictureCode(ctx: ReadContext, tree: Root): void {
  visitParents(tree, (node) => {
    const programs: unknown[] = []
    if (node.type === 'mdxjsEsm' || /^mdx(?:Text|Flow)Expression$/.test(node.type))
      programs.push(Reflect.get(node.data ?? {}, 'estree'))
    if ('attributes' in node)
      for (const attribute of node.attributes) {
        const value = attribute.type === 'mdxJsxAttribute' ? attribute.value : attribute
        if (typeof value === 'object') programs.push(value?.data?.estree)
      }
    for (const program of programs)
      if (isProgram(program)) for (const text of textsIn(anyNode(program))) refuseIn(ctx, text)
  })
}

const isProgram = (value: unknown): value is Program =>
  typeof value === 'object' && value !== null && 'body' in value

function textsIn(node: AnyNode): AnyNode[] {
  const own = node.type === 'Literal' || node.type === 'TemplateElement' ? [node] : []
  return [...own, ...children(node).flatMap(([, child]) => textsIn(child))]
}

function refuseIn(ctx: ReadContext, node: AnyNode): void {
  const written = node.value
  const value =
    typeof written === 'object' && written !== null && 'raw' in written ? written.raw : written
  if (typeof value !== 'string' || !isPictureAddress(value)) return
  report(ctx, placeOf(node), {
    rule: 'picture-in-code',
    text: words`\`${value}\` is named in program text: the site would show it as the camera wrote it, with place and owner`,
    hint: words`write ${example}`,
  })
}
