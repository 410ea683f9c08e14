/** A program's tree as the bundler's parser gives it. In: a node. Out: the nodes below it that are looked for. */
export interface Node {
  readonly type: string
  readonly start: number
  readonly end: number
  readonly [key: string]: unknown
}

export const isNode = (value: unknown): value is Node =>
  typeof value === 'object' &&
  value !== null &&
  'type' in value &&
  'start' in value &&
  'end' in value

/** The outermost nodes that `isWanted`, in the order of the text. */
export function nodesIn(root: unknown, isWanted: (node: Node) => boolean): Node[] {
  const found: Node[] = []
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) node.forEach(walk)
    else if (isNode(node)) {
      if (isWanted(node)) found.push(node)
      else Object.values(node).forEach(walk)
    }
  }
  walk(root)
  return found.sort((a, b) => a.start - b.start)
}

export const listIn = (value: unknown): readonly Node[] =>
  Array.isArray(value) ? value.filter(isNode) : []
