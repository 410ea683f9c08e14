/**
 * Leaves out of the browser's copy of a calculator what only its page and the tests read: examples,
 * sources, formula, validity, purpose. What computes, judges and explains is untouched.
 */
import type { Plugin } from 'vite'

const onlyForPages = new Set(['examples', 'sources', 'formula', 'validity', 'purpose'])

interface Node {
  readonly type: string
  readonly start: number
  readonly end: number
  readonly [key: string]: unknown
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' &&
  value !== null &&
  'type' in value &&
  'start' in value &&
  'end' in value

export function leanCalculators(): Plugin {
  return {
    name: 'worked-notes:lean-calculators',
    applyToEnvironment: ({ name }) => name === 'client',
    apply: 'build',
    transform: {
      order: 'post',
      filter: { id: /\/calculators\/[a-z]+\/[a-z0-9-]+\.ts$/ },
      handler(code) {
        const cuts = definitionsIn(this.parse(code)).flatMap(pageOnlyValues)
        if (cuts.length === 0) return null
        let lean = code
        for (const { start, end, type } of cuts.sort((a, b) => b.start - a.start))
          lean = `${lean.slice(0, start)}${type === 'ArrayExpression' ? '[]' : "''"}${lean.slice(end)}`
        return { code: lean, map: null }
      },
    },
  }
}

/** The objects handed to `defineCalculator`. */
function definitionsIn(root: unknown): Node[] {
  const found: Node[] = []
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) node.forEach(walk)
    else if (isNode(node)) {
      const { callee } = node
      const list: unknown = node.arguments
      if (
        node.type === 'CallExpression' &&
        isNode(callee) &&
        callee.name === 'defineCalculator' &&
        Array.isArray(list)
      )
        found.push(...list.filter(isNode))
      else Object.values(node).forEach(walk)
    }
  }
  walk(root)
  return found
}

function pageOnlyValues(definition: Node): Node[] {
  const properties: unknown = definition.properties
  if (!Array.isArray(properties)) return []
  return properties.filter(isNode).flatMap(({ key, value }) => {
    const name = isNode(key) ? (key.name ?? key.value) : undefined
    return typeof name === 'string' && onlyForPages.has(name) && isNode(value) ? [value] : []
  })
}
