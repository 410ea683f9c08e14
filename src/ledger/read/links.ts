/**
 * Links, pictures, and the addresses that both may refer to: a linked note must be there, a picture
 * must be one that can be published, and braces in either work nothing out.
 */
import type { Definition, Image, Link, Root } from 'mdast'
import { visitParents } from 'unist-util-visit-parents'
import { report, startOf, type ReadContext } from './context.ts'
import { likelyNote } from './imports.ts'
import { decoded, pictureFault } from './pictures.ts'

/** Names of the definitions that pictures refer to: `![pump][here]`. */
export function pictureReferences(tree: Root): ReadonlySet<string> {
  const names = new Set<string>()
  visitParents(tree, 'imageReference', ({ identifier }) => {
    names.add(identifier)
  })
  return names
}

export function checkLink(
  ctx: ReadContext,
  node: Link | Image | Definition,
  pictures: ReadonlySet<string>,
): void {
  const isPicture =
    node.type === 'image' || (node.type === 'definition' && pictures.has(node.identifier))
  if (isPicture) checkPicture(ctx, node)
  if (node.type !== 'image') checkNote(ctx, node)
  checkBraces(ctx, node)
}

function checkPicture(ctx: ReadContext, node: Image | Definition): void {
  const { file, files } = ctx.options
  const fault = pictureFault(node.url, file, files)
  if (fault !== undefined) report(ctx, startOf(node), fault)
}

function checkNote(ctx: ReadContext, node: Link | Definition): void {
  const [target = ''] = node.url.split('#')
  if (!target.endsWith('.mdx') || /^[a-z]+:/i.test(target)) return
  if (ctx.options.slugOf(target) !== undefined) return
  report(ctx, startOf(node), {
    rule: 'unknown-note',
    text: `a link to \`${target}\`: there is no such note`,
    hint: likelyNote(ctx, target),
  })
}

function checkBraces(ctx: ReadContext, node: Link | Image | Definition): void {
  const alternative = node.type === 'image' ? alternativeText(ctx, node) : ''
  for (const [what, text] of [
    ['alternative text', alternative],
    ['title', node.title ?? ''],
    ['address', decoded(node.url)],
  ] as const)
    if (/\{[^}]*\}/.test(text))
      report(ctx, startOf(node), {
        rule: 'braces-in-link',
        text: `braces in the ${what} of a link or picture: nothing is worked out there`,
      })
}

/** As typed: the parser takes braces out and leaves what stood in them. */
function alternativeText({ options }: ReadContext, { position }: Image): string {
  const source = options.raw
    .replace(/^\uFEFF/, '')
    .slice(position?.start.offset, position?.end.offset)
  return /^!\[((?:\\.|[^\]\\])*)/.exec(source)?.[1]?.replace(/\\./g, '') ?? ''
}
