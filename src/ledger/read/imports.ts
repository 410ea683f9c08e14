/**
 * A note's module lines: which names they bind for MDX, and which numbers they bring from other notes.
 * They are read before everything else, since they may stand below their use.
 */
import { posix } from 'node:path'
import type { Root } from 'mdast'
import { defined } from '../defined.ts'
import { noteOwnNames, readName } from '../names.ts'
import { didYouMean } from '../report.ts'
import { report, type ReadContext } from './context.ts'
import { anyNode, isNode, keyText, nodesOf, placeOf, type AnyNode } from './estree.ts'
import { bindings, freeNames } from './free-names.ts'
import { isLedgers, sortNames } from './names.ts'
import { words } from '../../words/words.ts'

const statementsOf = (tree: Root): AnyNode[] =>
  tree.children.flatMap((node) =>
    node.type === 'mdxjsEsm' ? (node.data?.estree?.body.map(anyNode) ?? []) : [],
  )

export function readImports(ctx: ReadContext, tree: Root): void {
  for (const statement of statementsOf(tree)) {
    const from = isNode(statement.source) ? String(statement.source.value) : undefined
    if (statement.type === 'ImportDeclaration' && from?.endsWith('.mdx'))
      readNoteImport(ctx, statement, from)
    else {
      for (const name of bindings(statement)) ctx.bound.add(name)
      if (from !== undefined) checkFile(ctx, statement, from)
    }
  }
}

/** A path that leads to no file would stop the page much later, in other words than these. */
function checkFile(ctx: ReadContext, statement: AnyNode, from: string): void {
  if (!/^\.{0,2}\//.test(from)) return
  const path = posix.normalize(`notes/${from.replace(/\?.*$/, '')}`)
  if (path.startsWith('..') || from.startsWith('/') || ctx.options.files.includes(path)) return
  report(ctx, placeOf(statement), {
    rule: 'unknown-file',
    text: words`there is no file \`${from}\``,
    hint: likelyNote(ctx, `${from}.mdx`),
  })
}

function readNoteImport(ctx: ReadContext, statement: AnyNode, from: string): void {
  const { bound, imports, options } = ctx
  const slug = options.slugOf(from)
  if (slug === undefined)
    ctx.lostNotes.push({
      path: from,
      ...defined({ hint: likelyNote(ctx, from) }),
      ...placeOf(statement),
    })
  for (const specifier of nodesOf(statement.specifiers)) {
    const local = isNode(specifier.local) ? String(specifier.local.name) : ''
    const imported = importedName(specifier)
    if (imported === undefined || imported === 'Content' || noteOwnNames.has(imported))
      bound.add(local)
    else if (slug !== undefined)
      imports.push({ local, imported, from: slug, ...placeOf(specifier) })
    else ctx.lost.add(local)
  }
}

/** Names that an import which is read as prose would have brought, and the words of an `id` that is refused. */
export function loseNames(ctx: ReadContext): void {
  const { raw, textProblems = [] } = ctx.options
  const lines = raw.split(/\r\n?|\n/)
  for (const { rule, line } of textProblems)
    if (rule === 'import-in-paragraph')
      loseAll(ctx, lines[line - 1]?.replace(/["'“”„‘’].*$/, '') ?? '')
  for (const name of ctx.given) if ('why' in readName(name)) loseAll(ctx, name)
}

function loseAll(ctx: ReadContext, text: string): void {
  const names = text.match(/[\p{ID_Start}$_][\p{ID_Continue}$]*/gu) ?? []
  if (names.length > 1) for (const name of names) ctx.lost.add(name)
}

/** The name in the other note, `*` for all of them; undefined for the page itself. */
function importedName({ type, imported }: AnyNode): string | undefined {
  if (type === 'ImportDefaultSpecifier') return undefined
  return type === 'ImportNamespaceSpecifier' ? '*' : keyText(imported)
}

const likelyNote = ({ options }: ReadContext, path: string): string | undefined =>
  didYouMean(path.replace(/^\.\//, ''), options.knownNotes, './')

/** An export cannot use a number, and an import cannot have the name of one. */
export function checkModule(ctx: ReadContext, tree: Root): void {
  for (const statement of statementsOf(tree))
    if (statement.type !== 'ImportDeclaration') checkExport(ctx, statement)
  for (const item of ctx.imports)
    if (ctx.given.has(item.local))
      report(ctx, item, {
        rule: 'doubled-name',
        text: words`\`${item.local}\` is imported and also given to a number here`,
        hint: words`import it under another name: \`{ ${item.local} as other }\``,
      })
}

function checkExport(ctx: ReadContext, statement: AnyNode): void {
  const uses = freeNames(statement)
  for (const use of uses)
    if (isLedgers(ctx, use.name))
      report(ctx, use, {
        rule: 'number-in-export',
        text: words`\`${use.name}\` is a number of the ledger: an export cannot use it`,
      })
  if (uses.some(({ name }) => !isLedgers(ctx, name) && !ctx.bound.has(name)))
    sortNames(ctx, statement, words`export`)
}
