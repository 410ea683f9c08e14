/**
 * Puts the worked values into a note's page. Tree in: the ledger's own tree of the note (or, when the
 * page is made again, one read anew by the same reader). Tree out: each number, block and name replaced
 * by its finished HTML, imports of numbers gone, links to notes made addresses of the site.
 *
 * Nothing is computed here: what stands at which offset was settled when the ledger was linked.
 */
import GithubSlugger from 'github-slugger'
import type { ListItem, Nodes, Parents, Root, RootContent, Table } from 'mdast'
import type {
  MdxJsxAttribute,
  MdxJsxFlowElement,
  MdxJsxTextElement,
  MdxjsEsm,
} from 'mdast-util-mdx'
import type { Plugin, Processor } from 'unified'
import { SKIP, visitParents } from 'unist-util-visit-parents'
import type { VFile } from 'vfile'
import type { Shown } from '../ledger/link.ts'
import { headingText, isPhotoElement } from '../ledger/read.ts'
import { anyNode } from '../ledger/read/estree.ts'
import { bindings, freeNames } from '../ledger/read/free-names.ts'
import { kitElements } from '../ledger/read/kit.ts'
import { noteOwnNames } from '../ledger/names.ts'
import { guardExpressions, type Guard } from './guard.ts'
import { parseNote } from './parse.ts'
import { markProblems, type Messages } from './mark.ts'
import { fillPictures, type PicturesOfNote } from './pictures.ts'

/** What a page needs of the ledger, for one note. */
export interface PageOfNote extends PicturesOfNote {
  readonly shown: ReadonlyMap<number, Shown>
  /** Finished HTML of what is shown. */
  html(shown: Shown): string
  /** `notes/<slug>/` below the site's base. */
  noteHref(specifier: string): string | undefined
  /** What stands before and behind an item of a list of tasks. */
  task(offset: number): { readonly before: string; readonly after: string } | undefined
  href(path: string): string
  /** While its author writes: what is wrong with the note, to be told in the page. */
  readonly messages?: Messages
  /** Who runs what stands in braces; where nobody does, it runs by itself. */
  readonly guard?: Guard
  /** The ledger's tree, once; undefined when it is used up or the text is another. */
  takeTree(text: string): Root | undefined
}

export type PageLookup = (path: string) => PageOfNote | undefined

/** Hands Astro the tree that the ledger already has. */
export const remarkLedgerTree: Plugin<[PageLookup], Root> = function (this: Processor, lookup) {
  const own = this.parser
  this.parser = (document: string, file: VFile) => {
    const page = lookup(file.path)
    if (page === undefined) {
      if (own === undefined) throw new Error('there is no Markdown parser before the kit’s own')
      return own(document, file)
    }
    const tree = page.takeTree(document) ?? parseNote(document, file.path).tree
    if (tree === undefined)
      throw new Error(`${file.path} cannot be read; \`npm run check\` says why`)
    return tree
  }
}

export const remarkFill: Plugin<[PageLookup], Root> = (lookup) => (tree, file) => {
  const page = lookup(file.path)
  if (page !== undefined) fillNote(tree, String(file.value), page)
}

/** `source`: the text that the tree was read from. */
export function fillNote(tree: Root, source: string, page: PageOfNote): void {
  const { messages } = page
  if (messages !== undefined)
    markProblems(tree, source, messages, (text, flow) =>
      flow ? flowElement('Show', text) : textElement('Show', text),
    )
  tree.children = tree.children.filter((node) => node.type !== 'mdxjsEsm' || keepsAnything(node))
  addressHeadings(tree)
  fillPictures(tree, page)
  visitParents(tree, (node, ancestors) => {
    if (node.type === 'link' || node.type === 'definition') {
      node.url =
        page.noteHref(node.url) ?? (/^\/(?!\/)/.test(node.url) ? page.href(node.url) : node.url)
      return undefined
    }
    if (node.type === 'listItem') {
      fillTask(node, page)
      return undefined
    }
    const shown = isPlace(node.type) ? page.shown.get(node.position?.start.offset ?? -1) : undefined
    const parent = ancestors.at(-1)
    if (parent === undefined || !('children' in parent)) return undefined
    if (shown === undefined) {
      if (messages === undefined || !(isUnfilled(node) || namesNothing(node, tree, messages)))
        return undefined
      return untold(node, parent, messages.asTyped(typedIn(node, source)))
    }
    const index = parent.children.findIndex((child) => child === node)
    const name = 'name' in node && typeof node.name === 'string' ? node.name : 'Show'
    const flow = node.type === 'mdxFlowExpression' || node.type === 'mdxJsxFlowElement'
    const made = replacement(node, name, shown, page, flow)
    parent.children.splice(index, 1, ...(made as never[]))
    return [SKIP, index + made.length]
  })
  alignByClass(tree)
  if (page.guard !== undefined) guardExpressions(tree, source, page.guard, messages !== undefined)
}

/** An element of the kit without anything to show, which its component would refuse. */
const isUnfilled = (node: Nodes): boolean =>
  'name' in node &&
  kitElements.includes(node.name ?? '') &&
  !isPhotoElement(node.name ?? '') &&
  !node.attributes.some((one) => one.type === 'mdxJsxAttribute' && one.name === 'html')

/** A name of the ledger that it has nothing for, or one whose module line is gone for a fault. */
function namesNothing(node: Nodes, tree: Root, { isBound }: Messages): boolean {
  if (node.type !== 'mdxTextExpression' && node.type !== 'mdxFlowExpression') return false
  const program = node.data?.estree
  if (!program) return false
  const lines = tree.children.flatMap((one) =>
    one.type === 'mdxjsEsm' ? (one.data?.estree?.body.map(anyNode) ?? []) : [],
  )
  const here = new Set(lines.flatMap((one) => [...bindings(one)]))
  return freeNames(anyNode(program)).some(
    ({ name }) => !isBound(name) || !(noteOwnNames.has(name) || here.has(name)),
  )
}

const typedIn = ({ position }: Nodes, source: string): string =>
  source.slice(position?.start.offset ?? 0, position?.end.offset ?? 0)

function untold(node: Nodes, parent: Parents, text: string): [typeof SKIP, number] {
  const index = parent.children.findIndex((child) => child === node)
  const flow = node.type === 'mdxJsxFlowElement'
  const made = flow ? flowElement('Show', text) : textElement('Show', text)
  parent.children.splice(index, 1, ...([made] as never[]))
  return [SKIP, index + 1]
}

/** The kit's own box in place of a control that nobody can use. */
function fillTask(item: ListItem, page: PageOfNote): void {
  const task =
    typeof item.checked === 'boolean' ? page.task(item.position?.start.offset ?? -1) : undefined
  const line = item.children.find((child) => child.type === 'paragraph')
  if (task === undefined || line === undefined) return
  item.checked = null
  item.data = Object.assign({}, item.data, { hProperties: { className: 'task' } })
  line.children.unshift(textElement('Show', task.before))
  if (task.after !== '') line.children.push(textElement('Show', task.after))
}

/** Columns are aligned by class: the site's content policy allows no style attributes. */
function alignByClass(tree: Root): void {
  visitParents(tree, 'table', (table) => {
    const { align } = table
    table.align = null
    for (const row of table.children)
      row.children.forEach((cell, index) => {
        const side = align?.[index]
        if (side === 'right' || side === 'center')
          cell.data = Object.assign({}, cell.data, { hProperties: { className: `align-${side}` } })
      })
  })
}

const isPlace = (type: string): boolean =>
  type === 'mdxTextExpression' ||
  type === 'mdxFlowExpression' ||
  type === 'mdxJsxTextElement' ||
  type === 'mdxJsxFlowElement'

function replacement(
  node: Nodes,
  name: string,
  shown: Shown,
  page: PageOfNote,
  flow: boolean,
): RootContent[] {
  if (shown.type === 'block') return [flowElement(name, page.html(shown))]
  if (shown.type === 'table') return filledTable(node, name, shown.ids, page)
  const element = textElement(name, page.html(shown))
  return flow ? [{ type: 'paragraph', children: [element] }] : [element]
}

const html = (text: string): MdxJsxAttribute => ({
  type: 'mdxJsxAttribute',
  name: 'html',
  value: text,
})

const textElement = (name: string, text: string): MdxJsxTextElement => ({
  type: 'mdxJsxTextElement',
  name,
  attributes: [html(text)],
  children: [],
})

const flowElement = (name: string, text: string): MdxJsxFlowElement => ({
  type: 'mdxJsxFlowElement',
  name,
  attributes: [html(text)],
  children: [],
})

/** The table of a list of numbers, each value filled in; its column of names gives way to `what`. */
function filledTable(
  node: Nodes,
  name: string,
  ids: readonly string[],
  page: PageOfNote,
): RootContent[] {
  const table = childTable(node)
  if (table === undefined) return []
  const [head, ...rows] = table.children
  if (head === undefined) return []
  const texts = head.children.map((cell) =>
    cell.children
      .map((child) => ('value' in child ? child.value : ''))
      .join('')
      .trim(),
  )
  const value = texts.indexOf('value')
  const names = texts.includes('what') ? texts.indexOf('name') : -1
  rows.forEach((row, index) => {
    const id = ids[index]
    const cell = row.children[value]
    if (id !== undefined && cell !== undefined)
      cell.children = [
        textElement(
          name,
          page.html({ type: 'number', id, linked: true, anchor: id.slice(id.indexOf('/') + 1) }),
        ),
      ]
  })
  if (names >= 0) {
    for (const row of table.children) row.children.splice(names, 1)
    table.align?.splice(names, 1)
  }
  return [table]
}

function childTable(node: Nodes): Table | undefined {
  if (!('children' in node)) return undefined
  for (const child of node.children) if (child.type === 'table') return child
  return undefined
}

/** Drops imported numbers from an import; false when nothing of it is left. */
function keepsAnything(node: MdxjsEsm): boolean {
  const program = node.data?.estree
  if (!program) return true
  program.body = program.body.filter((statement) => {
    if (statement.type !== 'ImportDeclaration' || !String(statement.source.value).endsWith('.mdx'))
      return true
    statement.specifiers = statement.specifiers.filter(
      (specifier) =>
        specifier.type === 'ImportDefaultSpecifier' ||
        (specifier.type === 'ImportSpecifier' &&
          specifier.imported.type === 'Identifier' &&
          noteOwnNames.has(specifier.imported.name)),
    )
    return statement.specifiers.length > 0
  })
  return program.body.length > 0
}

/** A heading is addressed by its source text, never by the values in it. */
function addressHeadings(tree: Root): void {
  const slugger = new GithubSlugger()
  visitParents(tree, 'heading', (heading) => {
    heading.data = Object.assign({}, heading.data, {
      hProperties: { id: slugger.slug(headingText(heading)) },
    })
  })
}
