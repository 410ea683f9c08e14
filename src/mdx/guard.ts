/**
 * What an author writes in braces runs when the page is made, and may fail only then. Tree in: a filled
 * note. Tree out: each such expression handed to whoever makes the page, with its place, so that a failure
 * is told there and the rest of the page stands; while writing, behind each paragraph with expressions is
 * a place for its messages.
 *
 * An expression that waits (`await`) is left as it is: within a function it would be another.
 */
import type { Expression, Program } from 'estree'
import type { Root, RootContent } from 'mdast'
import type { MdxJsxFlowElement } from 'mdast-util-mdx'
import { visitParents } from 'unist-util-visit-parents'
import type { At } from '../ledger/note-source.ts'
import { anyNode, children, placeOf, type AnyNode } from '../ledger/read/estree.ts'

export interface Guard {
  /** Name in `globalThis` of the one who runs expressions. */
  readonly key: string
  /** As messages call the note. */
  readonly file: string
}

/** How the page's program calls it. */
export interface Runner {
  /** The value; where it fails, what was typed. */
  run(file: string, line: number, column: number, typed: string, work: () => unknown): unknown
  /** The messages of a stretch of lines, as HTML. */
  told(file: string, from: number, to: number): string
}

/** `tell`: whether messages are to stand in the page. */
export function guardExpressions(tree: Root, source: string, guard: Guard, tell: boolean): void {
  const made = tree.children.flatMap((node): RootContent[] => {
    const guarded = guardNode(node, source, guard)
    const { start, end } = node.position ?? {}
    if (!tell || !guarded || start === undefined || end === undefined) return [node]
    return [node, messagesOf(guard, start.line, end.line)]
  })
  tree.children = made
}

function guardNode(node: RootContent, source: string, guard: Guard): boolean {
  let guarded = false
  const wrap = (expression: Expression, typed: string): Expression => {
    if (!mayFail(anyNode(expression))) return expression
    guarded = true
    return runs(guard, placeOf(anyNode(expression)), typed, expression)
  }
  const wrapOnly = (program: Program | null | undefined, typed: string): void => {
    const [statement] = program?.body ?? []
    if (program?.body.length !== 1 || statement?.type !== 'ExpressionStatement') return
    const { expression } = statement
    // Attributes handed on in braces are read as an object that spreads them.
    const [spread] = expression.type === 'ObjectExpression' ? expression.properties : []
    if (typed.startsWith('{...') && spread?.type === 'SpreadElement')
      spread.argument = wrap(spread.argument, typed)
    else statement.expression = wrap(expression, typed)
  }
  const alone: Root = { type: 'root', children: [node] }
  visitParents(alone, (one) => {
    if (one.type === 'mdxTextExpression' || one.type === 'mdxFlowExpression') {
      const { start, end } = one.position ?? {}
      wrapOnly(one.data?.estree, source.slice(start?.offset ?? 0, end?.offset ?? 0))
    } else if (one.type === 'mdxJsxTextElement' || one.type === 'mdxJsxFlowElement') {
      for (const attribute of one.attributes)
        if (attribute.type === 'mdxJsxExpressionAttribute')
          wrapOnly(attribute.data?.estree, `{${attribute.value}}`)
        else if (typeof attribute.value === 'object' && attribute.value !== null)
          wrapOnly(attribute.value.data?.estree, `{${attribute.value.value}}`)
    } else if (one.type === 'mdxjsEsm')
      for (const statement of one.data?.estree?.body ?? []) {
        const declared = statement.type === 'ExportNamedDeclaration' ? statement.declaration : null
        if (declared?.type !== 'VariableDeclaration') continue
        for (const declarator of declared.declarations)
          if (declarator.init && declarator.id.type === 'Identifier')
            declarator.init = wrap(declarator.init, declarator.id.name)
      }
  })
  return guarded
}

const harmless = /^(?:Literal|Identifier|JSXEmptyExpression|ClassExpression|.*Function.*)$/

const mayFail = (expression: AnyNode): boolean =>
  !harmless.test(expression.type) && !waits(expression)

function waits(node: AnyNode): boolean {
  if (node.type.includes('Function')) return false
  return (
    /^(?:Await|Yield)Expression$/.test(node.type) || children(node).some(([, one]) => waits(one))
  )
}

const literal = (value: string | number): Expression => ({ type: 'Literal', value })

/** `globalThis[key].name` */
const member = ({ key }: Guard, name: keyof Runner): Expression => ({
  type: 'MemberExpression',
  object: {
    type: 'MemberExpression',
    object: { type: 'Identifier', name: 'globalThis' },
    property: literal(key),
    computed: true,
    optional: false,
  },
  property: { type: 'Identifier', name },
  computed: false,
  optional: false,
})

const call = (callee: Expression, args: Expression[]): Expression => ({
  type: 'CallExpression',
  callee,
  arguments: args,
  optional: false,
})

function runs(guard: Guard, { line, column }: At, typed: string, body: Expression): Expression {
  const work: Expression = { type: 'ArrowFunctionExpression', params: [], body, expression: true }
  const place = [literal(guard.file), literal(line), literal(column)]
  return call(member(guard, 'run'), [...place, literal(typed), work])
}

function messagesOf(guard: Guard, from: number, to: number): MdxJsxFlowElement {
  const expression = call(member(guard, 'told'), [literal(guard.file), literal(from), literal(to)])
  const estree: Program = {
    type: 'Program',
    sourceType: 'module',
    body: [{ type: 'ExpressionStatement', expression }],
  }
  return {
    type: 'mdxJsxFlowElement',
    name: 'Show',
    attributes: [
      {
        type: 'mdxJsxAttribute',
        name: 'html',
        value: { type: 'mdxJsxAttributeValueExpression', value: '', data: { estree } },
      },
    ],
    children: [],
  }
}
