/**
 * Where a file of calculators can be wrong by a little: every numeric constant a hundredth larger (a
 * count or a place in a list: one more; nothing: one), every + a − and every − a +, and < for <= where
 * typed or counted values are compared; two values that were worked out are never equal to the last bit,
 * so that there the change cannot be seen. In: a path and its text. Out: changes, each one splice.
 *
 * Only what decides a result or a level is looked at: `compute`, `findings`, `moreHazards`, and what they
 * reach in the same file. Left out, because a test of numbers cannot see it or other tests hold it:
 * examples, ranges and defaults of fields (the contract test), plots, workings and texts.
 */
import ts from 'typescript'
import { sparedBecause } from './spared.ts'

export const kinds = ['number', 'sign', 'bound'] as const
export type Kind = (typeof kinds)[number]

export interface Change {
  readonly line: number
  readonly column: number
  readonly kind: Kind
  readonly from: string
  readonly to: string
  /** Offsets in the text. */
  readonly start: number
  readonly end: number
  /** The whole line, for the list of survivors. */
  readonly context: string
  /** Why it does not count. */
  readonly spared?: string
}

const leftOut = new Set([
  'assume',
  'because',
  'checks',
  'examples',
  'formula',
  'hard',
  'hazards',
  'help',
  'inputs',
  'label',
  'note',
  'outputs',
  'plot',
  'purpose',
  'source',
  'sources',
  'text',
  'threshold',
  'title',
  'units',
  'usual',
  'validity',
  'working',
])

const decides = new Set(['compute', 'findings', 'moreHazards'])
const takesPlaces = new Set(['at', 'slice', 'toSpliced', 'with'])
const swapped = new Map<ts.SyntaxKind, readonly [kind: Kind, from: string, to: string]>([
  [ts.SyntaxKind.PlusToken, ['sign', '+', '-']],
  [ts.SyntaxKind.MinusToken, ['sign', '-', '+']],
  [ts.SyntaxKind.PlusEqualsToken, ['sign', '+=', '-=']],
  [ts.SyntaxKind.MinusEqualsToken, ['sign', '-=', '+=']],
  [ts.SyntaxKind.LessThanToken, ['bound', '<', '<=']],
  [ts.SyntaxKind.LessThanEqualsToken, ['bound', '<=', '<']],
  [ts.SyntaxKind.GreaterThanToken, ['bound', '>', '>=']],
  [ts.SyntaxKind.GreaterThanEqualsToken, ['bound', '>=', '>']],
])

const nameOf = (node: ts.Node): string | undefined =>
  (ts.isPropertyAssignment(node) || ts.isMethodDeclaration(node)) &&
  (ts.isIdentifier(node.name) || ts.isStringLiteral(node.name))
    ? node.name.text
    : undefined

const isSay = (node: ts.Node): boolean =>
  ts.isCallExpression(node) && ts.isIdentifier(node.expression) && node.expression.text === 'say'

/** Texts and types, which no number of a result comes from. */
const isSkipped = (node: ts.Node): boolean =>
  ts.isTypeNode(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isImportDeclaration(node) ||
  ts.isTemplateExpression(node) ||
  isSay(node) ||
  leftOut.has(nameOf(node) ?? '')

function visit(
  node: ts.Node,
  seen: (node: ts.Node) => void,
  skipped: ReadonlySet<ts.Node> = new Set(),
): void {
  if (isSkipped(node) || skipped.has(node)) return
  seen(node)
  node.forEachChild((child) => visit(child, seen, skipped))
}

/** Names within functions that only texts use: words, lists of words, what to do instead. */
function onlyForTexts(file: ts.SourceFile): ReadonlySet<ts.Node> {
  const found = new Set<ts.Node>()
  for (let before = -1; before < found.size;) {
    before = found.size
    const used = new Map<string, number>()
    visit(
      file,
      (node) => {
        if (ts.isIdentifier(node) && !isNameOf(node))
          used.set(node.text, (used.get(node.text) ?? 0) + 1)
      },
      found,
    )
    visit(
      file,
      (node) => {
        if (
          ts.isVariableDeclaration(node) &&
          ts.isIdentifier(node.name) &&
          node.parent.parent.parent !== file &&
          !used.has(node.name.text)
        )
          found.add(node)
      },
      found,
    )
  }
  return found
}

/** What declares a name, or names a property, does not use it. */
const isNameOf = (node: ts.Identifier): boolean =>
  (ts.isVariableDeclaration(node.parent) && node.parent.name === node) ||
  (ts.isPropertyAccessExpression(node.parent) && node.parent.name === node) ||
  (ts.isPropertyAssignment(node.parent) && node.parent.name === node)

function definitionIn(file: ts.SourceFile): ts.ObjectLiteralExpression | undefined {
  let found: ts.ObjectLiteralExpression | undefined
  const look = (node: ts.Node): void => {
    if (
      ts.isCallExpression(node) &&
      ts.isIdentifier(node.expression) &&
      node.expression.text === 'defineCalculator' &&
      node.arguments[0] !== undefined &&
      ts.isObjectLiteralExpression(node.arguments[0])
    )
      [found] = [node.arguments[0]]
    else node.forEachChild(look)
  }
  look(file)
  return found
}

/** Name -> its declaration at the top of the file. */
function declared(file: ts.SourceFile): Map<string, ts.Node> {
  const names = new Map<string, ts.Node>()
  for (const statement of file.statements) {
    if (ts.isFunctionDeclaration(statement) && statement.name)
      names.set(statement.name.text, statement)
    if (ts.isVariableStatement(statement))
      for (const declaration of statement.declarationList.declarations)
        if (ts.isIdentifier(declaration.name)) names.set(declaration.name.text, declaration)
  }
  return names
}

const isExported = (statement: ts.Statement): boolean =>
  ts.canHaveModifiers(statement) &&
  (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)

/** What decides a result: of a calculator its functions, of a shared file all that it exports. */
function roots(file: ts.SourceFile): readonly ts.Node[] {
  const definition = definitionIn(file)
  return definition
    ? definition.properties.filter((property) => decides.has(nameOf(property) ?? ''))
    : file.statements.filter(isExported)
}

function reached(file: ts.SourceFile): readonly ts.Node[] {
  const names = declared(file)
  const queue = [...roots(file)]
  const found = new Set<ts.Node>(queue)
  for (let node = queue.pop(); node; node = queue.pop())
    visit(node, (inner) => {
      const next = ts.isIdentifier(inner) ? names.get(inner.text) : undefined
      const outer = next && [...found].some((whole) => isInside(next, whole))
      if (next === undefined || outer === true || found.has(next)) return
      found.add(next)
      queue.push(next)
    })
  return [...found]
}

const isInside = (node: ts.Node, whole: ts.Node): boolean =>
  node !== whole && node.pos >= whole.pos && node.end <= whole.end

/** A place in a list or a count, which a hundredth more would not change. */
function isWhole(literal: ts.NumericLiteral): boolean {
  const { parent } = literal
  if (ts.isElementAccessExpression(parent)) return parent.argumentExpression === literal
  const holder = ts.isPrefixUnaryExpression(parent) ? parent.parent : parent
  if (ts.isCallExpression(holder) && ts.isPropertyAccessExpression(holder.expression))
    return takesPlaces.has(holder.expression.name.text)
  // `{ length: 44 }`
  if (ts.isPropertyAssignment(holder)) return holder.name.getText() === 'length'
  return (
    ts.isBinaryExpression(holder) &&
    /\.(length|size)$/.test(holder.left.getText()) &&
    holder.right === literal
  )
}

/**
 * The factor a constant is changed by: a hundredth more. Most of a fit's coefficients are of high order
 * and move no property by its fifth digit then; there it is a tenth, like a slip in their second digit.
 */
const stepIn = (path: string): number => (path.endsWith('glycol-fits.ts') ? 1.1 : 1.01)

function larger(literal: ts.NumericLiteral, step: number): string {
  const number = Number(literal.text)
  if (number === 0) return '1'
  return String(isWhole(literal) ? number + 1 : Number((number * step).toPrecision(12)))
}

const isText = (node: ts.Node): boolean =>
  ts.isStringLiteralLike(node) ||
  ts.isTemplateExpression(node) ||
  (ts.isBinaryExpression(node) && (isText(node.left) || isText(node.right)))

export function changesIn(path: string, text: string): readonly Change[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
  const lines = text.split('\n')
  const changes = new Map<number, Change>()
  const add = (node: ts.Node, kind: Kind, from: string, to: string): void => {
    const start = node.getStart()
    const { line, character } = file.getLineAndCharacterOfPosition(start)
    const context = (lines[line] ?? '').trim()
    const spared = sparedBecause(node, path, context)
    changes.set(start, {
      line: line + 1,
      column: character + 1,
      kind,
      from,
      to,
      start,
      end: node.end,
      context,
      ...(spared !== undefined && { spared }),
    })
  }
  const known = typedNames(file)
  const forTexts = onlyForTexts(file)
  const look = (node: ts.Node): void => {
    if (ts.isNumericLiteral(node) && !isNameOfProperty(node))
      add(node, 'number', node.getText(), larger(node, stepIn(path)))
    if (!ts.isBinaryExpression(node) || isText(node)) return
    const swap = swapped.get(node.operatorToken.kind)
    if (swap && (swap[0] !== 'bound' || isTyped(node, known))) add(node.operatorToken, ...swap)
  }
  for (const root of reached(file)) visit(root, look, forTexts)
  return [...changes.values()].sort((a, b) => a.start - b.start)
}

/** Constants of the file, and what is taken out of `input` or handed to a function by name. */
function typedNames(file: ts.SourceFile): ReadonlySet<string> {
  const names = new Set(['input', 'Infinity', 'Number', 'Math', 'abs', 'length', 'size'])
  for (const statement of file.statements)
    if (ts.isVariableStatement(statement))
      for (const { name, initializer } of statement.declarationList.declarations)
        if (ts.isIdentifier(name) && initializer && !ts.isArrowFunction(initializer))
          names.add(name.text)
  const look = (node: ts.Node): void => {
    const fromInput =
      (ts.isVariableDeclaration(node) && node.initializer?.getText() === 'input') ||
      (ts.isParameter(node) && isFirstOf(node))
    if (fromInput && ts.isObjectBindingPattern(node.name))
      for (const { name } of node.name.elements) names.add(name.getText())
    if (ts.isParameter(node) && ts.isIdentifier(node.name) && isNamed(node.parent))
      names.add(node.name.text)
    node.forEachChild(look)
  }
  look(file)
  names.delete('output')
  return names
}

const isFirstOf = (parameter: ts.ParameterDeclaration): boolean =>
  parameter.parent.parameters[0] === parameter && decides.has(nameOf(parameter.parent) ?? '')

const isNamed = (node: ts.Node): boolean =>
  ts.isFunctionDeclaration(node) && node.parent.kind === ts.SyntaxKind.SourceFile

/** A comparison in which nothing was worked out before. */
function isTyped(comparison: ts.BinaryExpression, names: ReadonlySet<string>): boolean {
  let typed = true
  const look = (node: ts.Node): void => {
    if (ts.isCallExpression(node)) typed &&= /^Math\.(abs|max|min)$/.test(node.expression.getText())
    if (ts.isPropertyAccessExpression(node)) {
      if (!/^(length|size)$/.test(node.name.text)) look(node.expression)
      return
    }
    if (ts.isIdentifier(node)) typed &&= names.has(node.text)
    node.forEachChild(look)
  }
  look(comparison.left)
  look(comparison.right)
  return typed
}

/** `2` in `{ 2: 'two' }`. */
const isNameOfProperty = (node: ts.Node): boolean =>
  ts.isPropertyAssignment(node.parent) && node.parent.name === node

export const changed = (text: string, { start, end, to }: Change): string =>
  text.slice(0, start) + to + text.slice(end)
