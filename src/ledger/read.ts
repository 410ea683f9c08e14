/**
 * Reads one note: from its syntax tree to its numbers, blocks and uses of names.
 *
 * Nothing is resolved and nothing computed here. Every problem is collected with its place; the tree
 * is not changed, and nothing of it is kept but places and texts, since the page changes it later.
 */
import GithubSlugger from 'github-slugger'
import type { Root } from 'mdast'
import type { MdxFlowExpression, MdxTextExpression } from 'mdast-util-mdx'
import { visitParents } from 'unist-util-visit-parents'
import type { NoteSource } from './note-source.ts'
import { checkTwice, type Element } from './read/attributes.ts'
import { readCalc } from './read/calc.ts'
import { startOf, startRead, type ReadContext, type ReadOptions } from './read/context.ts'
import { onlyExpression, type AnyNode } from './read/estree.ts'
import { freeNames } from './read/free-names.ts'
import { checkHeadings, readHeading } from './read/headings.ts'
import { checkModule, loseNames, readImports } from './read/imports.ts'
import { isPhotoElement, isRoot } from './read/kit.ts'
import { checkBraces, pictureReferences, readLink } from './read/links.ts'
import { givenNames, sortNames } from './read/names.ts'
import { checkOther } from './read/others.ts'
import { readPart } from './read/part.ts'
import { checkPhoto } from './read/photo.ts'
import {
  checkAlternative,
  checkPictureCode,
  checkPictureText,
  readPicture,
} from './read/picture-uses.ts'
import { readRoot } from './read/roots.ts'
import { readShow } from './read/show.ts'
import { readSum } from './read/sums.ts'
import { readTask } from './read/tasks.ts'
import { readNominal, readQuoted } from './read/words.ts'
import { words } from '../words/words.ts'

export { headingText } from './read/headings.ts'
export { isPhotoElement } from './read/kit.ts'
export { markStart, photoParts, type PictureGroup } from './read/photo.ts'

export function readNote(tree: Root, options: ReadOptions): NoteSource {
  const ctx = startRead(options, givenNames(tree, options.lost))
  readImports(ctx, tree)
  loseNames(ctx)
  checkModule(ctx, tree)
  checkPictureCode(ctx, tree)
  readBody(ctx, tree)
  checkHeadings(ctx)
  const { slug, file, path, raw, meta } = options
  const { imports, roots, sums, blocks, parts, tasks, steps, links, uses, pictures } = ctx
  const { given, bound, headings, unknown, lostNotes, problems } = ctx
  return {
    slug,
    file,
    path,
    raw,
    meta,
    imports,
    roots,
    sums,
    blocks,
    parts,
    tasks,
    steps,
    links,
    uses,
    pictures,
    given,
    bound,
    unknown,
    lostNotes,
    headings,
    problems,
  }
}

function readBody(ctx: ReadContext, tree: Root): void {
  const slugger = new GithubSlugger()
  const pictures = pictureReferences(tree)
  visitParents(tree, (node, ancestors) => {
    const linked = !ancestors.some(({ type }) => type === 'link' || type === 'heading')
    switch (node.type) {
      case 'heading':
        readHeading(ctx, node, slugger)
        return undefined
      case 'link':
      case 'image':
      case 'definition':
        readPicture(ctx, node, pictures)
        checkBraces(ctx, node)
        readLink(ctx, node, pictures)
        return undefined
      case 'imageReference':
        checkAlternative(ctx, node)
        return undefined
      case 'text':
        checkPictureText(ctx, node)
        return undefined
      case 'listItem':
        readTask(ctx, node)
        return undefined
      case 'mdxTextExpression':
      case 'mdxFlowExpression':
        readExpression(ctx, node, linked)
        return undefined
      case 'mdxJsxFlowElement':
      case 'mdxJsxTextElement':
        return readElement(ctx, node, linked)
      default:
        return undefined
    }
  })
}

function readExpression(
  ctx: ReadContext,
  node: MdxTextExpression | MdxFlowExpression,
  linked: boolean,
): void {
  const expression = onlyExpression(node.data?.estree)
  if (expression === undefined) return
  const whose = sortNames(ctx, expression, words`expression`)
  if (whose === 'bad' || (whose === 'mdx' && !isWorkedWithoutNames(expression))) return
  const sum = readSum(ctx, expression)
  if (sum !== undefined && whose === 'ledger')
    ctx.uses.push({ type: 'sum', sum, text: node.value.trim(), linked, ...startOf(node) })
}

/** `{1 + 2}` or `{1 > 2 ? 3 : 4}`: it has to be a sum as well; that of plain numbers is prose. */
const isWorkedWithoutNames = (expression: AnyNode): boolean =>
  /^(?:Unary|Binary|Logical|Conditional|Sequence)Expression$/.test(expression.type) &&
  freeNames(expression).length === 0

/** What stands in one of the kit's elements is read with it, and not looked at again; but photos. */
function readElement(ctx: ReadContext, element: Element, linked: boolean): 'skip' | undefined {
  const name = element.name ?? ''
  checkTwice(ctx, element)
  if (isRoot(name)) readRoot(ctx, element, name, linked)
  else if (name === 'Calc') readCalc(ctx, element)
  else if (name === 'Part') readPart(ctx, element, linked)
  else if (name === 'Show') readShow(ctx, element, linked)
  else if (name === 'Nominal') readNominal(ctx, element)
  else if (name === 'Quoted') readQuoted(ctx, element)
  else {
    if (isPhotoElement(name)) checkPhoto(ctx, element)
    else checkOther(ctx, element)
    return undefined
  }
  return 'skip'
}
