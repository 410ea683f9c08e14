/**
 * Which names are whose: the ledger's, which stand for numbers, or MDX's own, which are bound by an
 * import or an export. One pair of braces never mixes the two. A name of neither is a fault.
 */
import type { Root, Table } from 'mdast'
import { toString } from 'mdast-util-to-string'
import { visitParents } from 'unist-util-visit-parents'
import { defined } from '../defined.ts'
import { readName } from '../names.ts'
import { didYouMean } from '../report.ts'
import type { Element } from './attributes.ts'
import { report, type ReadContext } from './context.ts'
import type { AnyNode } from './estree.ts'
import { freeNames, type NameUse } from './free-names.ts'
import { isRoot, kitElements } from './kit.ts'
import { words } from '../../words/words.ts'

/** The names that the note's elements give: by `id`, and by the first column of a table in one. */
export function givenNames(tree: Root, lost: readonly string[] = []): Set<string> {
  const names = new Set(lost)
  visitParents(tree, (node) => {
    if (node.type !== 'mdxJsxFlowElement' && node.type !== 'mdxJsxTextElement') return
    for (const name of [...ids(node), ...tabled(node)]) names.add(name.normalize('NFKC').trim())
  })
  return names
}

const ids = ({ name, attributes }: Element): string[] =>
  kitElements.includes(name ?? '')
    ? attributes.flatMap((one) =>
        one.type === 'mdxJsxAttribute' && one.name === 'id' && typeof one.value === 'string'
          ? [one.value]
          : [],
      )
    : []

const tabled = ({ name, children }: Element): string[] =>
  isRoot(name ?? '')
    ? children.flatMap((child) => (child.type === 'table' ? namesInTable(child) : []))
    : []

function namesInTable({ children: [head, ...rows] }: Table): string[] {
  const column = head?.children.findIndex((cell) => toString(cell).trim() === 'name') ?? -1
  return rows.flatMap(({ children }) => {
    const cell = children[column]
    return cell === undefined ? [] : [toString(cell)]
  })
}

export const isLedgers = ({ given, imports }: ReadContext, name: string): boolean =>
  given.has(name.normalize('NFKC')) || imports.some(({ local }) => local === name)

/** The ledger's, MDX's own, or (reported) neither. `where`: what the names stand in. */
export function sortNames(
  ctx: ReadContext,
  node: AnyNode,
  where: string,
): 'ledger' | 'mdx' | 'bad' {
  const free = freeNames(node)
  const unknown = free.filter(({ name }) => !isLedgers(ctx, name) && !ctx.bound.has(name))
  if (unknown.length > 0) {
    reportUnknown(ctx, unknown)
    return 'bad'
  }
  const first = free.find(({ name }) => isLedgers(ctx, name))
  if (first === undefined) return 'mdx'
  const other = free.find(({ name }) => !isLedgers(ctx, name))
  if (other === undefined) return 'ledger'
  report(ctx, first, {
    rule: 'mixed-names',
    text: words`\`${first.name}\` is a number of the ledger and \`${other.name}\` is not: one ${where} never mixes the two`,
  })
  return 'bad'
}

function reportUnknown(ctx: ReadContext, names: readonly NameUse[]): void {
  const given = [...ctx.given].filter((name) => !('why' in readName(name)))
  const known = [...given, ...ctx.imports.map(({ local }) => local), ...ctx.bound]
  for (const { name, line, column } of names) {
    if (ctx.lost.has(name)) continue
    const sure = name === 'parts' ? partsHint : (refusedFor(ctx, name) ?? languageHint(name, known))
    const hint = sure ?? didYouMean(name, known)
    const isSure = sure === undefined ? {} : { sure: true as const }
    ctx.unknown.push({ name, line, column, ...defined({ hint }), ...isSure })
  }
}

/** Of the language behind the braces. */
const languageNames: ReadonlySet<string> = new Set(
  `Math Date JSON Object Array Number String Boolean BigInt Symbol RegExp Error Map Set WeakMap WeakSet
  Promise Proxy Reflect Intl Temporal console NaN Infinity globalThis global window document process
  performance crypto navigator fetch require eval Function parseInt parseFloat isNaN isFinite setTimeout
  encodeURIComponent decodeURIComponent encodeURI decodeURI structuredClone Buffer URL URLSearchParams
  import.meta import()`.split(/\s+/),
)

/** Not for `{Date}` where a number is called `date`. */
function languageHint(name: string, known: readonly string[]): string | undefined {
  const isSlip = known.some((other) => other.toLowerCase() === name.toLowerCase())
  return languageNames.has(name) && !isSlip
    ? words`a note has no clock and no functions: sums are written with names, \`{supply + back}\`; what is worked out otherwise belongs in a block, ${'`<Calc use="…" />`'}, what is shown otherwise in ${'`<Show value={…} />`'}`
    : undefined
}

const partsHint = words`the parts of the notes are rows of a list of a <Calc>: \`added={parts}\`, or \`parts.out\`, \`parts.planned\`, \`parts.all\``

/** Used as it was told where the name itself was refused: only that place is left to mend. */
function refusedFor({ given }: ReadContext, use: string): string | undefined {
  const refused = [...given].find((name) => {
    const read = readName(name)
    return 'why' in read && read.hint === use
  })
  return refused === undefined
    ? undefined
    : words`write this name also where it says \`${refused}\`, which is refused`
}
