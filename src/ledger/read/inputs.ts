/**
 * What a block is given in one attribute or cell: a text, a sum, or a list of parts. What cannot be
 * read is `unread`, so that it is not called missing as well.
 */
import type { At, PartsWord, RawInput } from '../note-source.ts'
import type { Attribute } from './attributes.ts'
import { lineAndColumn, report, type ReadContext } from './context.ts'
import { isNode, keyText, nodesOf, placeOf, type AnyNode } from './estree.ts'
import { sortNames } from './names.ts'
import { readSum } from './sums.ts'
import { words } from '../../words/words.ts'

export function readInput(ctx: ReadContext, attribute: Attribute): RawInput {
  const { value } = attribute
  const at = lineAndColumn(attribute)
  if (value.type === 'text') return { type: 'text', text: value.text, ...at }
  if (value.type === 'none') return { type: 'text', text: 'yes', ...at }
  return readBraces(ctx, value.node, value.source, at)
}

export function readBraces(ctx: ReadContext, node: AnyNode, source: string, at: At): RawInput {
  const text = plainText(node)
  if (text !== undefined) return { type: 'text', text, ...at }
  const parts = partsWord(node)
  if (parts !== undefined) return { type: 'rows', rows: [], parts, ...at }
  if (node.type === 'ArrayExpression') return readList(ctx, node, at)
  if (node.type === 'ObjectExpression')
    return { type: 'rows', rows: readRows(ctx, [node], at), ...at }
  const sum = sortNames(ctx, node, words`value`) === 'bad' ? undefined : readSum(ctx, node)
  return sum === undefined ? { type: 'unread', ...at } : { type: 'sum', sum, source, ...at }
}

/** Quotes, backquotes without anything in braces, `true` and `false`. */
function plainText({ type, value, expressions, quasis }: AnyNode): string | undefined {
  if (type === 'Literal' && typeof value === 'string') return value
  if (type === 'Literal' && typeof value === 'boolean') return value ? 'yes' : 'no'
  if (type !== 'TemplateLiteral' || nodesOf(expressions).length > 0) return undefined
  const only: unknown = nodesOf(quasis)[0]?.value
  return typeof only === 'object' && only !== null && 'cooked' in only
    ? String(only.cooked)
    : undefined
}

/** `[…, { name: "…" }]`, and parts of the notes among them: `[...parts, { name: "driver" }]`. */
function readList(ctx: ReadContext, { elements }: AnyNode, at: At): RawInput {
  const items = nodesOf(elements)
  const spread = items.flatMap((item) => partsIn(item) ?? [])
  const rows = readRows(
    ctx,
    items.filter((item) => partsIn(item) === undefined),
    at,
  )
  const [parts, second] = spread
  if (second !== undefined)
    report(ctx, second, {
      rule: 'bad-list',
      text: words`parts stand twice in one list`,
      hint: words`\`parts.all\` holds every part, \`parts\` what is fitted`,
    })
  return { type: 'rows', rows, ...(parts && { parts }), ...at }
}

const partsIn = ({ type, argument }: AnyNode): PartsWord | undefined =>
  type === 'SpreadElement' && isNode(argument) ? partsWord(argument) : undefined

/** `parts` and `parts.out` as they are written; undefined for anything else. */
function partsWord(node: AnyNode): PartsWord | undefined {
  const { type, object, property, computed } = node
  const isParts = (one: unknown): boolean =>
    isNode(one) && one.type === 'Identifier' && one.name === 'parts'
  if (isParts(node)) return { which: 'fitted', ...placeOf(node) }
  if (type !== 'MemberExpression' || computed === true || !isParts(object)) return undefined
  const which = keyText(property)
  return which === 'out' || which === 'planned' || which === 'all'
    ? { which, ...placeOf(node) }
    : undefined
}

function readRows(ctx: ReadContext, items: unknown, at: At): Record<string, RawInput>[] {
  const rows: Record<string, RawInput>[] = []
  for (const item of Array.isArray(items) ? items : [])
    if (isNode(item) && item.type === 'ObjectExpression') rows.push(readRow(ctx, item))
    else
      report(ctx, isNode(item) ? placeOf(item) : at, {
        rule: 'bad-list',
        text: words`a list of parts is written \`[{ name: "…", length: "2 m" }, …]\``,
      })
  return rows
}

function readRow(ctx: ReadContext, { properties }: AnyNode): Record<string, RawInput> {
  const row: Record<string, RawInput> = {}
  for (const property of nodesOf(properties)) {
    const { type, computed, key, value } = property
    if (type === 'Property' && computed !== true && isNode(value))
      row[keyText(key)] = readBraces(ctx, value, keyText(key), placeOf(value))
    else
      report(ctx, placeOf(property), {
        rule: 'bad-list',
        text: words`a part is written \`{ name: "…", length: "2 m" }\`, each field with its value`,
      })
  }
  return row
}
