/**
 * The syntax trees of what stands in braces and of module lines, as any node: looked at, never run.
 * Lines begin at 1 and columns at 0 in these trees; places of the ledger begin both at 1.
 */
import type { Node as EstreeNode } from 'estree'
import type { At } from '../note-source.ts'

/** Any node of the tree, JSX included. */
export interface AnyNode {
  readonly type: string
  readonly loc?: { start: { line: number; column: number } } | null | undefined
  readonly [key: string]: unknown
}

export function isNode(value: unknown): value is AnyNode {
  return (
    typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'
  )
}

export const anyNode = (node: EstreeNode): AnyNode => ({ ...node })

export const nodesOf = (value: unknown): AnyNode[] =>
  Array.isArray(value) ? value.filter(isNode) : []

export function placeOf(node: AnyNode): At {
  return { line: node.loc?.start.line ?? 1, column: (node.loc?.start.column ?? 0) + 1 }
}

/** The nodes right below `node`, each with the key it stands at. */
export function children(node: AnyNode): (readonly [key: string, child: AnyNode])[] {
  return Object.entries(node).flatMap(([key, value]) => {
    if (key === 'loc' || key === 'range' || key === 'comments') return []
    const found = isNode(value) ? [value] : nodesOf(value)
    return found.map((child) => [key, child] as const)
  })
}

/** A key as it is written: `name` or `'name'`. */
export const keyText = (key: unknown): string => (isNode(key) ? String(key.name ?? key.value) : '')

/** The single expression of a program, when it is one. */
export function onlyExpression(program: EstreeNode | null | undefined): AnyNode | undefined {
  const body: unknown = program ? anyNode(program).body : undefined
  if (!Array.isArray(body) || body.length !== 1) return undefined
  const [statement] = nodesOf(body)
  if (statement?.type !== 'ExpressionStatement') return undefined
  return isNode(statement.expression) ? statement.expression : undefined
}
