/**
 * Changes that no answer can show, with the reason. In: the place of a change in the syntax tree. Out:
 * the reason to leave it out of the count, or undefined. The list is short on purpose: what is not here
 * has to be noticed.
 */
import ts from 'typescript'

/** Constants by which a search ends, and hairs for rounding. */
const searches = /^(mostSteps|closeEnough)$/
const isHair = (node: ts.Node): boolean =>
  ts.isNumericLiteral(node) && /^1e-(6|9|1\d)$/.test(node.getText())

const holds = (node: ts.Node, fits: (one: ts.Node) => boolean): boolean =>
  fits(node) || (!ts.isSourceFile(node) && holds(node.parent, fits))

/** `output.rise ?? 0`, or `{ rise = 0 }` of what findings are handed. */
function isStandIn(node: ts.Node): boolean {
  const { parent } = node
  if (
    ts.isBinaryExpression(parent) &&
    parent.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken
  )
    return parent.right === node && /^output\b/.test(parent.left.getText())
  if (!ts.isBindingElement(parent) || parent.initializer !== node) return false
  const holder = parent.parent.parent
  if (ts.isVariableDeclaration(holder)) return holder.initializer?.getText() === 'output'
  return (
    ts.isParameter(holder) &&
    holder.parent.parameters[1] === holder &&
    holder.parent.name?.getText() === 'findings'
  )
}

/** `row[0] ?? 0`, `[x = 0] = list`: the type checker cannot know that the place is there. */
function isPlace(node: ts.Node): boolean {
  const { parent } = node
  if (ts.isBindingElement(parent)) return ts.isArrayBindingPattern(parent.parent)
  return isFallback(node) && /\]$|\.at\(-?\d+\)$|\?\.(\w+)$/.test(leftOf(node))
}

const isFallback = ({ parent }: ts.Node): boolean =>
  ts.isBinaryExpression(parent) && parent.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken

const leftOf = ({ parent }: ts.Node): string =>
  ts.isBinaryExpression(parent) ? parent.left.getText() : ''

/** `x < 1e-9`, `gap * hair >= least`: nothing typed lies just at the hair. */
const isBoundByHair = (node: ts.Node): boolean => {
  const { parent } = node
  return (
    ts.isBinaryExpression(parent) &&
    /^[<>]=?$/.test(parent.operatorToken.getText()) &&
    (isHair(parent.right) || (node === parent.operatorToken && /\bhair\b/.test(parent.getText())))
  )
}

const isSorting = (node: ts.Node): boolean =>
  ts.isCallExpression(node) && /\.(toSorted|sort)$/.test(node.expression.getText())

/** Lines of which only the way to the answer depends, not the answer. */
const onTheWay: readonly (readonly [file: RegExp, line: RegExp, why: string])[] = [
  [/friction\.ts$/, /^const start = 7/, 'where the search starts'],
  [/friction\.ts$/, /^y -= \(sum \* step/, 'the step’s higher orders: the root is the same'],
  [
    /(friction|loop)\.ts$/,
    /^for \(let count = 0; count < mostSteps/,
    'how often a search may step',
  ],
  [/solve\.ts$/, /^for \(let count = 0; count < mostSteps/, 'how often a search may step'],
  [/solve\.ts$/, /^(let step =|step = before =) b - a/, 'the sign of a step before the first'],
  [
    /solve\.ts$/,
    /^const tolerance = /,
    'how closely a root is bracketed, some units in the last place',
  ],
  [
    /crossflow\.ts$/,
    /^for \(let n = 1; n < 5 \*/,
    'how many terms a sum may have; it ends long before',
  ],
  [
    /hill-start\.ts$/,
    /^(let low = 0|for \(let step = 0; step < 60)/,
    'a halving that ends at the same',
  ],
  [
    /coast-down\.ts$/,
    /^(const rounds = 6|for \(let round = 0)/,
    'rounds of a fit that has settled',
  ],
  [
    /coast-down\.ts$/,
    /^: \[\(v1 - v0\) \/ step, /,
    'the slopes that the rounds start from; where they settle is the same',
  ],
  [
    /coast-down\.ts$/,
    /^let (square|way) = 0$/,
    'where a run’s integrals start, which falls out with the mean of its column',
  ],
  [
    /radiator-and-fan\.ts$/,
    /^const blamed = findRoot\(miss, 1e-3,/,
    'where a search begins: no air is slower',
  ],
  [
    /panel-hole\.ts$/,
    /^most: /,
    'the largest drill of a set in whole steps: a hundredth more is less than a step',
  ],
  [
    /cell-heating\.ts$/,
    /^const steps = 400/,
    'how finely time is cut; one in a hundred finer is the same',
  ],
]

export function sparedBecause(node: ts.Node, path: string, line: string): string | undefined {
  const way = onTheWay.find(([file, text]) => file.test(path) && text.test(line))
  if (way) return way[2]
  if (holds(node, (one) => ts.isVariableDeclaration(one) && searches.test(one.name.getText())))
    return 'how often and how closely a number is searched for; the number found is the same'
  if (isHair(node) || isBoundByHair(node))
    return 'a hair for rounding: a hundredth of it, or being just at it, is nothing'
  if (isStandIn(node)) return 'stands in for a result that is always there at this place'
  if (ts.isNumericLiteral(node) && (isPlace(node) || (isFallback(node) && holds(node, isSorting))))
    return 'stands in for a place of a list that is always there; the type checker asks for it'
  return undefined
}
