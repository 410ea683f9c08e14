/**
 * Messages put into a note's page where they are about, for its author while writing. Tree in: the
 * note's, as read. Tree out: a message before each paragraph, list or element that it is about, and
 * whatever has an error in it as it is typed, since it cannot be shown as it is meant.
 */
import type { Nodes, Parents, Root, RootContent } from 'mdast'
import { SKIP, visitParents } from 'unist-util-visit-parents'
import type { Problem } from '../ledger/problems.ts'
import { isPhotoElement, kitElements } from '../ledger/read/kit.ts'

export interface Messages {
  readonly problems: readonly Problem[]
  readonly atPlace: (problem: Problem) => string
  readonly asTyped: (text: string) => string
  /** Whether MDX knows a name without the ledger. */
  readonly isBound: (name: string) => boolean
}

type MakeElement = (html: string, flow: boolean) => RootContent

export function markProblems(
  tree: Root,
  source: string,
  { problems, atPlace, asTyped }: Messages,
  element: MakeElement,
): void {
  const errors = problems.filter(({ level }) => level === 'error')
  const lead = tree.children.map((node) => problems.filter((one) => coversLine(node, one)))
  for (const [index, node] of [...tree.children.entries()].toReversed()) {
    const own = lead[index] ?? []
    if (own.length === 0) continue
    const isBad = node.type === 'mdxjsEsm' && own.some(({ level }) => level === 'error')
    const marks = own.map((problem) => element(atPlace(problem), true))
    tree.children.splice(index, isBad ? 1 : 0, ...marks)
  }
  visitParents(tree, (node, ancestors) => {
    const parent = ancestors.at(-1)
    if (parent === undefined || !isPlace(node) || !errors.some((one) => covers(node, one)))
      return undefined
    // The number inside HTML is at fault, not the HTML.
    if (!isWhole(node) && holdsPlace(node, errors)) return undefined
    const { start, end } = node.position ?? {}
    const text = source.slice(start?.offset ?? 0, end?.offset ?? 0)
    const flow = node.type === 'mdxJsxFlowElement' || node.type === 'mdxFlowExpression'
    const made = element(asTyped(text), flow)
    return replaced(parent, node, made)
  })
}

function replaced(parent: Parents, node: Nodes, made: RootContent): [typeof SKIP, number] {
  const index = parent.children.findIndex((child) => child === node)
  parent.children.splice(index, 1, ...([made] as never[]))
  return [SKIP, index + 1]
}

const isPlace = ({ type }: Nodes): boolean =>
  type.startsWith('mdxJsx') ||
  type === 'mdxTextExpression' ||
  type === 'mdxFlowExpression' ||
  type === 'image' ||
  type === 'imageReference'

/** What stands or falls with all that is in it. */
const isWhole = (node: Nodes): boolean =>
  !('name' in node) ||
  (kitElements.includes(node.name ?? '') && !isPhotoElement(node.name ?? '')) ||
  (isPhotoElement(node.name ?? '') && !('children' in node && node.children.length > 0))

function holdsPlace(node: Nodes, errors: readonly Problem[]): boolean {
  let holds = false
  if ('children' in node)
    for (const child of node.children)
      visitParents(child, (inner) => {
        if (isPlace(inner) && errors.some((one) => covers(inner, one))) holds = true
      })
  return holds
}

const coversLine = ({ position }: Nodes, { line }: Problem): boolean =>
  position !== undefined && line >= position.start.line && line <= position.end.line

function covers({ position }: Nodes, { line, column }: Problem): boolean {
  if (position === undefined) return false
  const { start, end } = position
  const after = line > start.line || (line === start.line && column >= start.column)
  const before = line < end.line || (line === end.line && column < end.column)
  return after && before
}
