/**
 * What stands in braces. In: the syntax tree that MDX made of it. Out: the names it uses, and, where
 * they are the ledger's, the sum as data.
 *
 * Nothing is ever run: `+ - * /` over names and numbers is all there is.
 */
import type { Node as EstreeNode } from 'estree'

/** A sum whose names are not resolved yet. */
export type Sum =
  | number
  | { readonly path: readonly string[]; readonly line: number; readonly column: number }
  | { readonly op: '+' | '-' | '*' | '/'; readonly left: Sum; readonly right: Sum }
  | { readonly op: 'negate'; readonly of: Sum }

export interface Fault {
  readonly rule: string
  readonly text: string
  readonly allowed?: string
  readonly hint?: string
  readonly line: number
  readonly column: number
}

export interface NameUse {
  readonly name: string
  readonly line: number
  readonly column: number
}

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

export function placeOf(node: AnyNode): { line: number; column: number } {
  return { line: node.loc?.start.line ?? 1, column: (node.loc?.start.column ?? 0) + 1 }
}

const languageGlobals = new Set(
  `Math Date JSON Object Array Number String Boolean BigInt Symbol RegExp Error Map Set WeakMap WeakSet
  Promise Intl console undefined NaN Infinity globalThis parseInt parseFloat isNaN isFinite
  encodeURIComponent decodeURIComponent encodeURI decodeURI structuredClone URL URLSearchParams`.split(
    /\s+/,
  ),
)

function children(node: AnyNode): AnyNode[] {
  const found: AnyNode[] = []
  for (const [key, value] of Object.entries(node)) {
    if (key === 'loc' || key === 'range' || key === 'comments') continue
    if (Array.isArray(value)) found.push(...value.filter(isNode))
    else if (isNode(value)) found.push(value)
  }
  return found
}

const isFunction = (node: AnyNode): boolean => node.type.includes('Function')

/** The names that a target binds: `{ a, b: [c = 1], ...d }`. */
function targetNames(target: unknown): string[] {
  if (!isNode(target)) return []
  if (target.type === 'Identifier') return [String(target.name)]
  if (target.type === 'AssignmentPattern') return targetNames(target.left)
  if (target.type === 'RestElement') return targetNames(target.argument)
  if (target.type === 'Property') return targetNames(target.value)
  return children(target).flatMap(targetNames)
}

/** The names that `node` declares for what stands in it; those of inner functions stay in these. */
function declaredIn(node: AnyNode): string[] {
  return children(node).flatMap((child) => {
    const own =
      child.type === 'VariableDeclarator' ||
      child.type === 'FunctionDeclaration' ||
      child.type === 'ClassDeclaration'
        ? targetNames(child.id)
        : child.type === 'CatchClause'
          ? targetNames(child.param)
          : /^Import.*Specifier$/.test(child.type)
            ? targetNames(child.local)
            : []
    return isFunction(child) ? own : [...own, ...declaredIn(child)]
  })
}

/** The names that a statement binds for the note: imports and exported declarations. */
export function bindings(statement: AnyNode): Set<string> {
  return new Set(declaredIn({ type: 'Program', body: [statement] }))
}

/** Every name that `node` uses and that is not declared round its use, the language's own left out. */
export function freeNames(node: AnyNode): NameUse[] {
  const found: NameUse[] = []
  const scopes: ReadonlySet<string>[] = [
    languageGlobals,
    new Set(declaredIn({ type: 'Program', body: [node] })),
  ]
  const use = (target: AnyNode): void => {
    const name = String(target.name)
    if (!scopes.some((scope) => scope.has(name))) found.push({ name, ...placeOf(target) })
  }
  const walk = (target: AnyNode, parent?: AnyNode, key?: string): void => {
    if (target.type === 'MetaProperty') return
    if (target.type === 'Identifier') {
      const isMember =
        parent?.type === 'MemberExpression' && key === 'property' && parent.computed !== true
      const isKey =
        (parent?.type === 'Property' ||
          parent?.type === 'MethodDefinition' ||
          parent?.type === 'PropertyDefinition') &&
        key === 'key' &&
        parent.computed !== true
      const isSpecifier = parent?.type.endsWith('Specifier') === true
      if (!isMember && !isKey && !isSpecifier) use(target)
      return
    }
    if (target.type === 'JSXIdentifier') {
      const isTag = parent?.type === 'JSXOpeningElement' && key === 'name'
      const isObject = parent?.type === 'JSXMemberExpression' && key === 'object'
      if ((isTag && /^\p{Lu}/u.test(String(target.name))) || isObject) use(target)
      return
    }
    const inner = isFunction(target) || target.type === 'ClassExpression'
    if (inner) {
      const params: unknown = target.params
      const given = Array.isArray(params) ? params.flatMap(targetNames) : []
      scopes.push(new Set([...targetNames(target.id), ...given, ...declaredIn(target)]))
    }
    for (const [childKey, value] of Object.entries(target)) {
      if (childKey === 'loc' || childKey === 'range' || childKey === 'comments') continue
      if (Array.isArray(value))
        for (const item of value.filter(isNode)) walk(item, target, childKey)
      else if (isNode(value)) walk(value, target, childKey)
    }
    if (inner) scopes.pop()
  }
  walk(node)
  return found
}

/** The single expression of a program, when it is one. */
export function onlyExpression(program: AnyNode): AnyNode | undefined {
  const body = program.body
  if (!Array.isArray(body) || body.length !== 1) return undefined
  const [statement] = body as readonly unknown[]
  if (!isNode(statement) || statement.type !== 'ExpressionStatement') return undefined
  return isNode(statement.expression) ? statement.expression : undefined
}

const onlyThese = '`+ - * /` over names and plain numbers'

/** Whether a number is followed by a comma and, without a space, by another: `1,5`. */
function hasDecimalComma(sequence: AnyNode): boolean {
  const parts: unknown = sequence.expressions
  const list = Array.isArray(parts) ? parts.filter(isNode) : []
  return list.some((part, index) => {
    const after = list[index + 1]
    return (
      after !== undefined && part.type === 'Literal' && Number(after.start) === Number(part.end) + 1
    )
  })
}

/** The sum that `node` says, or every fault in it; none is listed that was told before. */
export function readSum(node: AnyNode): { sum: Sum } | { faults: Fault[] } {
  const faults: Fault[] = []
  const told: AnyNode[] = []
  const fault = (target: AnyNode, rule: string, text: string, hint?: string): Sum => {
    faults.push({
      rule,
      text,
      allowed: onlyThese,
      ...(hint === undefined ? {} : { hint }),
      ...placeOf(target),
    })
    return 0
  }
  const path = (target: AnyNode): string[] | undefined => {
    if (target.type === 'Identifier') return [String(target.name).normalize('NFKC')]
    if (target.type !== 'MemberExpression' || !isNode(target.object) || !isNode(target.property))
      return undefined
    const before = path(target.object)
    const property = target.property
    if (before === undefined) return undefined
    if (target.computed !== true) return [...before, String(property.name).normalize('NFKC')]
    return property.type === 'Literal' && Number.isInteger(property.value)
      ? [...before, String(property.value)]
      : undefined
  }
  const read = (target: AnyNode): Sum => {
    switch (target.type) {
      case 'Literal':
        if (typeof target.value === 'number')
          return Number.isFinite(target.value)
            ? target.value
            : fault(
                target,
                'not-finite',
                `\`${String(target.raw)}\` is too large to be a number here`,
              )
        return fault(
          target,
          'not-a-sum',
          `a text in a sum: \`${String(target.raw)}\``,
          'give the quantity a name with <Chosen> or <Assumed> and use the name',
        )
      case 'Identifier':
      case 'MemberExpression': {
        const names = path(target)
        return names === undefined
          ? fault(target, 'not-a-sum', 'a name is followed by something that is not a field of it')
          : { path: names, ...placeOf(target) }
      }
      case 'UnaryExpression':
        if ((target.operator === '-' || target.operator === '+') && isNode(target.argument)) {
          const inner = read(target.argument)
          return target.operator === '+' ? inner : { op: 'negate', of: inner }
        }
        return fault(
          target,
          'not-a-sum',
          `\`${String(target.operator)}\` is not arithmetic on numbers`,
        )
      case 'BinaryExpression': {
        const operator = String(target.operator)
        if (!isNode(target.left) || !isNode(target.right))
          return fault(target, 'not-a-sum', 'an unfinished sum')
        if (operator === '+' || operator === '-' || operator === '*' || operator === '/')
          return { op: operator, left: read(target.left), right: read(target.right) }
        return fault(
          target,
          'not-a-sum',
          operator === '**'
            ? '`**` is not worked out between names'
            : operator === '|'
              ? '`|` means nothing between numbers'
              : `\`${operator}\` is not worked out between names`,
          operator === '**' ? 'multiply the name with itself: `{a * a}`' : undefined,
        )
      }
      case 'SequenceExpression':
        // A decimal comma is told where the text is parsed.
        if (hasDecimalComma(target)) told.push(target)
        else fault(target, 'not-a-sum', 'a comma between names')
        return 0
      case 'CallExpression':
        return fault(
          target,
          'not-a-sum',
          'a call: functions are not run in a note',
          'use a calculator: <Calc use="…" />',
        )
      default:
        return fault(target, 'not-a-sum', 'something that is not a sum of names and numbers')
    }
  }
  const sum = read(node)
  return told.length + faults.length > 0 ? { faults } : { sum }
}

/** The paths in a sum, in order. */
export function pathsOf(
  sum: Sum,
): readonly { path: readonly string[]; line: number; column: number }[] {
  if (typeof sum === 'number') return []
  if ('path' in sum) return [sum]
  return sum.op === 'negate' ? pathsOf(sum.of) : [...pathsOf(sum.left), ...pathsOf(sum.right)]
}
