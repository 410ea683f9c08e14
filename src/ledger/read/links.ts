/**
 * Links, and the addresses that they and pictures may refer to: braces in either work nothing out.
 * Where links lead is seen when all notes are read (`../links.ts`); pictures are in `picture-uses.ts`.
 */
import type { Definition, Image, Link, Root } from 'mdast'
import { toString } from 'mdast-util-to-string'
import { visitParents } from 'unist-util-visit-parents'
import { lineAndColumn, report, startOf, type ReadContext } from './context.ts'
import { decodedAddress } from '../decoded.ts'
import { isPictureAddress } from './pictures.ts'
import { words } from '../../words/words.ts'

/** Names of the definitions that pictures refer to: `![pump][here]`. */
export function pictureReferences(tree: Root): ReadonlySet<string> {
  const names = new Set<string>()
  visitParents(tree, 'imageReference', ({ identifier }) => {
    names.add(identifier)
  })
  return names
}

export function readLink(
  ctx: ReadContext,
  node: Link | Image | Definition,
  pictures: ReadonlySet<string>,
): void {
  if (node.type === 'image') return
  if (node.type === 'definition' && pictures.has(node.identifier)) return
  if (isPictureAddress(node.url)) return
  const text = node.type === 'link' ? toString(node) : (node.label ?? node.identifier)
  ctx.links.push({ url: node.url, text, ...lineAndColumn(startOf(node)) })
}

export function checkBraces(ctx: ReadContext, node: Link | Image | Definition): void {
  const alternative = node.type === 'image' ? alternativeText(ctx, node) : ''
  for (const [what, text] of [
    [words`alternative text`, alternative],
    [words`title`, node.title ?? ''],
    [words`address`, decodedAddress(node.url)],
  ] as const)
    if (/\{[^}]*\}/.test(text))
      report(ctx, startOf(node), {
        rule: 'braces-in-link',
        text: words`braces in the ${what} of a link or picture: nothing is worked out there`,
      })
}

/** As typed: the parser takes braces out and leaves what stood in them. */
function alternativeText({ options }: ReadContext, { position }: Image): string {
  const source = options.raw
    .replace(/^\uFEFF/, '')
    .slice(position?.start.offset, position?.end.offset)
  return /^!\[((?:\\.|[^\]\\])*)/.exec(source)?.[1]?.replace(/\\./g, '') ?? ''
}
