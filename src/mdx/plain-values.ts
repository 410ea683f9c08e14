/**
 * Numbers that braces print as if they had been typed: `{4}`, `{2 + 2}`, and `{draw}` of a note with
 * `export const draw = 4`. In: the tree, or what stands in braces. Out: their values; nothing of the
 * ledger is among them.
 */
import type { Root } from 'mdast'
import type { MdxTextExpression } from 'mdast-util-mdx'
import { anyNode, isNode, nodesOf, onlyExpression, type AnyNode } from '../ledger/read/estree.ts'

export type Constants = ReadonlyMap<string, number>

/** The numbers that a note exports under a name. */
export function constantsOf({ children }: Root): Constants {
  const found = new Map<string, number>()
  for (const node of children) {
    if (node.type !== 'mdxjsEsm') continue
    for (const { declaration } of node.data?.estree?.body.map(anyNode) ?? [])
      for (const { id, init } of isNode(declaration) ? nodesOf(declaration.declarations) : []) {
        const value = isNode(init) ? plainValue(init, found) : undefined
        if (isNode(id) && id.type === 'Identifier' && value !== undefined)
          found.set(String(id.name), value)
      }
  }
  return found
}

export function plainResult(node: MdxTextExpression, constants: Constants): string | undefined {
  const expression = onlyExpression(node.data?.estree)
  const result = expression && plainValue(expression, constants)
  return result === undefined ? undefined : String(result)
}

function plainValue(node: AnyNode, constants: Constants): number | undefined {
  if (node.type === 'Literal') return typeof node.value === 'number' ? node.value : undefined
  if (node.type === 'Identifier') return constants.get(String(node.name))
  const { operator, argument, left, right } = node
  if (node.type === 'UnaryExpression') {
    const of = isNode(argument) ? plainValue(argument, constants) : undefined
    return of === undefined || operator === '+' ? of : operator === '-' ? -of : undefined
  }
  if (node.type !== 'BinaryExpression' || !isNode(left) || !isNode(right)) return undefined
  const [a, b] = [plainValue(left, constants), plainValue(right, constants)]
  if (a === undefined || b === undefined) return undefined
  switch (operator) {
    case '+':
      return a + b
    case '-':
      return a - b
    case '*':
      return a * b
    case '/':
      return a / b
    default:
      return undefined
  }
}
