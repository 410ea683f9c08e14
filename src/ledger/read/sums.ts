/**
 * A sum as data. In: the syntax tree of what stands in braces. Out: the sum with its names not resolved
 * yet, or every fault in it.
 *
 * Nothing is ever run: `+ - * /` over names and numbers is all there is.
 */
import type { Sum } from '../note-source.ts'
import { report, type ReadContext } from './context.ts'
import { isNode, nodesOf, placeOf, type AnyNode } from './estree.ts'
import { words } from '../../words/words.ts'

/** The parts of a sum that is being read, and where it was seen that it is none. */
interface Reading {
  readonly ctx: ReadContext
  /** Faults reported here, or told where the text is parsed. */
  readonly refused: AnyNode[]
}

export function readSum(ctx: ReadContext, node: AnyNode): Sum | undefined {
  const reading: Reading = { ctx, refused: [] }
  const sum = readPart(reading, node)
  return reading.refused.length > 0 ? undefined : sum
}

/** Reports a fault; the 0 keeps the rest readable, so that all its faults are found. */
function refuse(
  { ctx, refused }: Reading,
  node: AnyNode,
  text: string,
  hint?: string,
  rule = 'not-a-sum',
): Sum {
  refused.push(node)
  const allowed = words`\`+ - * /\` over names and plain numbers`
  report(ctx, placeOf(node), { rule, text, allowed, hint })
  return 0
}

function readPart(reading: Reading, node: AnyNode): Sum {
  switch (node.type) {
    case 'Literal':
      return readLiteral(reading, node)
    case 'Identifier':
    case 'MemberExpression': {
      const path = pathOf(node)
      return path === undefined
        ? refuse(reading, node, words`a name is followed by something that is not a field of it`)
        : { path, ...placeOf(node) }
    }
    case 'UnaryExpression':
      return readUnary(reading, node)
    case 'BinaryExpression':
      return readBinary(reading, node)
    case 'SequenceExpression':
      return readSequence(reading, node)
    case 'CallExpression':
      return refuse(
        reading,
        node,
        words`a call: functions are not run in a note`,
        words`use a calculator: ${'<Calc use="…" />'}`,
      )
    default:
      return refuse(reading, node, words`something that is not a sum of names and numbers`)
  }
}

function readLiteral(reading: Reading, node: AnyNode): Sum {
  const raw = `\`${String(node.raw)}\``
  if (typeof node.value !== 'number')
    return refuse(
      reading,
      node,
      words`a text in a sum: ${raw}`,
      words`give the quantity a name with <Chosen> or <Assumed> and use the name`,
    )
  if (Number.isFinite(node.value)) return node.value
  return refuse(
    reading,
    node,
    words`${raw} is too large to be a number here`,
    undefined,
    'not-finite',
  )
}

/** `pump.hoses[0].length` -> `pump`, `hoses`, `0`, `length`. */
function pathOf(node: AnyNode): string[] | undefined {
  if (node.type === 'Identifier') return [String(node.name).normalize('NFKC')]
  const { object, property } = node
  if (node.type !== 'MemberExpression' || !isNode(object) || !isNode(property)) return undefined
  const before = pathOf(object)
  if (before === undefined) return undefined
  if (node.computed !== true) return [...before, String(property.name).normalize('NFKC')]
  return property.type === 'Literal' && Number.isInteger(property.value)
    ? [...before, String(property.value)]
    : undefined
}

function readUnary(reading: Reading, node: AnyNode): Sum {
  const { operator, argument } = node
  if ((operator !== '-' && operator !== '+') || !isNode(argument))
    return refuse(reading, node, words`\`${String(operator)}\` is not arithmetic on numbers`)
  const of = readPart(reading, argument)
  return operator === '+' ? of : { op: 'negate', of }
}

function readBinary(reading: Reading, node: AnyNode): Sum {
  const { operator: op, left, right } = node
  if (!isNode(left) || !isNode(right)) return refuse(reading, node, words`an unfinished sum`)
  if (op === '+' || op === '-' || op === '*' || op === '/')
    return { op, left: readPart(reading, left), right: readPart(reading, right) }
  if (op === '**' || op === '^') {
    const hint = words`multiply the name with itself: \`{a * a}\``
    return refuse(reading, node, words`\`${op}\` is not worked out between names`, hint)
  }
  return refuse(
    reading,
    node,
    op === '|'
      ? words`\`|\` means nothing between numbers`
      : words`\`${String(op)}\` is not worked out between names`,
  )
}

function readSequence(reading: Reading, node: AnyNode): Sum {
  if (!hasDecimalComma(node)) return refuse(reading, node, words`a comma between names`)
  // A decimal comma is told where the text is parsed.
  reading.refused.push(node)
  return 0
}

/** Whether a number is followed by a comma and, without a space, by another: `1,5`. */
function hasDecimalComma(sequence: AnyNode): boolean {
  const parts = nodesOf(sequence.expressions)
  return parts.some((part, index) => {
    const after = parts[index + 1]
    return (
      after !== undefined && part.type === 'Literal' && Number(after.start) === Number(part.end) + 1
    )
  })
}
