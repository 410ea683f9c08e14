/**
 * Names in a syntax tree: those that a statement binds, and those that an expression uses without
 * declaring them. The language's own (`Date`, `Math`, `import.meta`) are names like any others: a note
 * that asks a clock or a machine would be another one tomorrow, or elsewhere.
 */
import type { At } from '../note-source.ts'
import { children, keyText, nodesOf, isNode, placeOf, type AnyNode } from './estree.ts'

export interface NameUse extends At {
  readonly name: string
}

/** Not a name that anything can be called by: MDX and JavaScript write it for nothing. */
const nothing: ReadonlySet<string> = new Set(['undefined'])

const isFunction = ({ type }: AnyNode): boolean => type.includes('Function')

/** The names that a target binds: `{ a, b: [c = 1], ...d }`. */
function targetNames(target: unknown): string[] {
  if (!isNode(target)) return []
  if (target.type === 'Identifier') return [String(target.name)]
  if (target.type === 'AssignmentPattern') return targetNames(target.left)
  if (target.type === 'RestElement') return targetNames(target.argument)
  if (target.type === 'Property') return targetNames(target.value)
  return children(target).flatMap(([, child]) => targetNames(child))
}

function declaredBy(node: AnyNode): string[] {
  if (/^(?:VariableDeclarator|(?:Function|Class)Declaration)$/.test(node.type))
    return targetNames(node.id)
  if (node.type === 'CatchClause') return targetNames(node.param)
  return /^Import.*Specifier$/.test(node.type) ? targetNames(node.local) : []
}

/** The names that `node` declares for what stands in it; those of inner functions stay in these. */
const declaredIn = (node: AnyNode): string[] =>
  children(node).flatMap(([, child]) =>
    isFunction(child) ? declaredBy(child) : [...declaredBy(child), ...declaredIn(child)],
  )

/** The names that a statement binds for the note: imports and exported declarations. */
export const bindings = (statement: AnyNode): ReadonlySet<string> =>
  new Set(declaredIn({ type: 'Program', body: [statement] }))

/** Every name that `node` uses and that is not declared round its use. */
export function freeNames(node: AnyNode): NameUse[] {
  const found: NameUse[] = []
  collect(node, undefined, '', [nothing, bindings(node)], found)
  return found
}

function collect(
  node: AnyNode,
  parent: AnyNode | undefined,
  key: string,
  scopes: readonly ReadonlySet<string>[],
  found: NameUse[],
): void {
  if (node.type === 'MetaProperty' || node.type === 'ImportExpression') {
    const name = node.type === 'ImportExpression' ? 'import()' : keyText(node.meta)
    if (name !== 'new')
      found.push({ name: name === 'import' ? 'import.meta' : name, ...placeOf(node) })
    return
  }
  if (node.type === 'Identifier' || node.type === 'JSXIdentifier') {
    const name = String(node.name)
    const isUse = node.type === 'Identifier' ? usesName(parent, key) : usesTag(name, parent, key)
    if (isUse && !scopes.some((scope) => scope.has(name))) found.push({ name, ...placeOf(node) })
    return
  }
  const within = isFunction(node) || node.type === 'ClassExpression'
  const inner = within ? [...scopes, ownScope(node)] : scopes
  for (const [childKey, child] of children(node)) collect(child, node, childKey, inner, found)
}

const ownScope = (node: AnyNode): ReadonlySet<string> =>
  new Set([
    ...targetNames(node.id),
    ...nodesOf(node.params).flatMap(targetNames),
    ...declaredIn(node),
  ])

/** Not the name of a field, of a key, or of what is imported. */
function usesName(parent: AnyNode | undefined, key: string): boolean {
  if (parent === undefined) return true
  if (parent.type.endsWith('Specifier')) return false
  if (parent.computed === true) return true
  if (parent.type === 'MemberExpression') return key !== 'property'
  return key !== 'key' || !/^(?:Property|MethodDefinition|PropertyDefinition)$/.test(parent.type)
}

function usesTag(name: string, parent: AnyNode | undefined, key: string): boolean {
  if (parent?.type === 'JSXMemberExpression') return key === 'object'
  return parent?.type === 'JSXOpeningElement' && key === 'name' && /^\p{Lu}/u.test(name)
}
