/**
 * Leaves out of the browser's copy of a calculator what only its page and the tests read: examples,
 * sources, formula, validity, purpose. What computes, judges and explains is untouched.
 */
import type { Plugin } from 'vite'
import { isNode, listIn, nodesIn, type Node } from './tree.ts'

const onlyForPages = new Set(['examples', 'sources', 'formula', 'validity', 'purpose'])

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
const definitionsIn = (root: unknown): Node[] =>
  nodesIn(
    root,
    ({ type, callee }) =>
      type === 'CallExpression' && isNode(callee) && callee.name === 'defineCalculator',
  ).flatMap((call) => listIn(call.arguments))

const pageOnlyValues = (definition: Node): Node[] =>
  listIn(definition.properties).flatMap(({ key, value }) => {
    const name = isNode(key) ? (key.name ?? key.value) : undefined
    return typeof name === 'string' && onlyForPages.has(name) && isNode(value) ? [value] : []
  })
