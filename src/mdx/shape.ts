/**
 * Lines that MDX reads in another way than they look, and braces it accepts that mean a slip.
 *
 * In: the tree and its text. Out: problems. Told are an `import` that is read as prose, an element or a
 * name alone on a line of a wrapped paragraph (MDX ends the paragraph there), empty braces, a name in
 * quotes, a decimal comma in braces (JavaScript takes `1,5` for 5), a tag that begins with a space, and a
 * task whose box is none.
 */
import type { Node, Program } from 'estree'
import type { Root, RootContent } from 'mdast'
import { visitParents } from 'unist-util-visit-parents'
import type { Problem } from '../ledger/problems.ts'
import { kitElements } from '../ledger/read/kit.ts'
import { decimalComma, decimalPoint, problem, short } from './explain.ts'
import { looksLikeModule } from './module-line.ts'
import { lineFrom, type PlaceAt } from './place.ts'
import { words } from '../words/words.ts'

export function checkShape(
  tree: Root,
  text: string,
  placeAt: PlaceAt,
  isTold: (offset: number) => boolean,
): readonly Problem[] {
  const problems: Problem[] = []
  visitParents(tree, (node) => {
    if (node.type === 'paragraph') {
      problems.push(...proseImports(node, text, placeAt, isTold))
      problems.push(...boxes(node, text, placeAt))
    }
    if (node.type === 'listItem') problems.push(...emptyTasks(node, text, placeAt))
    if (node.type === 'table') problems.push(...looseCells(node, text, placeAt))
    if (node.type === 'text') problems.push(...spacedTags(span(node), text, placeAt))
    if ('children' in node) problems.push(...brokenParagraphs(node.children, text, placeAt))
    if (node.type === 'mdxTextExpression' || node.type === 'mdxFlowExpression') {
      problems.push(...inBraces(node, text, placeAt))
    }
    if (node.type === 'mdxJsxTextElement' || node.type === 'mdxJsxFlowElement') {
      for (const attribute of node.attributes) {
        const value = attribute.type === 'mdxJsxAttribute' ? attribute.value : attribute
        if (value === null || value === undefined || typeof value === 'string') continue
        problems.push(...commas(value.data?.estree, text, placeAt))
      }
    }
  })
  return problems
}

type Child = RootContent
type Table = Extract<Child, { type: 'table' }>
type Item = Extract<Child, { type: 'listItem' }>
type Paragraph = Extract<Child, { type: 'paragraph' }>
type Braces = Extract<Child, { type: 'mdxTextExpression' | 'mdxFlowExpression' }>

/** A phone's capital at the beginning of a line, or a path without quotes. */
const almostImport = /^(?:Import\s*[{*\p{L}].*?\sfrom\s|import\s.*?\sfrom\s+\.{1,2}\/)/u

const spacedTag = new RegExp(String.raw`<[\s\u00A0]+(/?(?:${kitElements.join('|')}))\b`, 'g')

function spacedTags(
  { start, end }: ReturnType<typeof span>,
  text: string,
  placeAt: PlaceAt,
): readonly Problem[] {
  return [...text.slice(start, end).matchAll(spacedTag)].map(({ 1: name = '', index }) =>
    problem(
      {
        rule: 'space-in-tag',
        at: start + index,
        text: words`a space between \`<\` and \`${name}\`: this is read as words`,
        hint: words`write \`<${name}\``,
      },
      placeAt,
    ),
  )
}

/** `-[ ] hose`, `- [] hose`: they look like tasks, and nobody would find them in the lists. */
function boxes(node: Paragraph, text: string, placeAt: PlaceAt): readonly Problem[] {
  const { start, end } = span(node)
  const typed = text.slice(start, end)
  const first = /[-*+][ \t]+$/.test(text.slice(Math.max(0, start - 8), start))
    ? /^\[\](?=\s)/.exec(typed)
    : null
  const lines = typed.matchAll(/(?<=^|[\r\n][ \t>]*)(?:[-–—•]\[[ xX]?\]|[-*+] \[\])(?=\s)/g)
  return [...(first === null ? [] : [first]), ...lines].map(({ 0: box, index }) =>
    problem(
      {
        rule: 'no-task',
        at: start + index,
        text: words`\`${box}\` is read as words, not as the box of a task`,
        hint: words`write \`- [ ] words\`, or \`- [x] words\` where it is done`,
      },
      placeAt,
    ),
  )
}

/** `- [ ]` with nothing behind it is a bracket in a list. */
function emptyTasks(node: Item, text: string, placeAt: PlaceAt): readonly Problem[] {
  const { start, end } = span(node)
  const box = /^(?:[-*+]|\d+[.)])[ \t]+(\[[ xX]?\])\s*$/.exec(text.slice(start, end))?.[1]
  if (box === undefined) return []
  const said = words`a task with nothing behind its box \`${box}\``
  const hint = words`write what is to be done behind it, or take the line out`
  return [problem({ rule: 'empty-task', at: start, text: said, hint }, placeAt)]
}

/** Cells beyond the last heading are on no page and in no list. */
function looseCells(
  { children: [head, ...rows] }: Table,
  text: string,
  placeAt: PlaceAt,
): readonly Problem[] {
  const columns = head?.children.length ?? 0
  return rows.flatMap(({ children }) => {
    const cell = children[columns]
    if (cell === undefined) return []
    const { start, end } = span(cell)
    const lead = /^[|\s]*/.exec(text.slice(start, end))?.[0].length ?? 0
    const typed = short(text.slice(start, end).replace(/^[|\s]+|[|\s]+$/g, ''))
    return problem(
      {
        rule: 'cell-too-many',
        at: start + lead,
        text: words`\`${typed}\` stands in no column: the head of the table has ${columns}`,
        hint: words`give the column a heading, or take the cell out; a \`|\` inside a cell is written \`\\|\``,
      },
      placeAt,
    )
  })
}

function proseImports(
  node: Paragraph,
  text: string,
  placeAt: PlaceAt,
  isTold: (offset: number) => boolean,
): readonly Problem[] {
  const { start, end } = span(node)
  const code = node.children.filter(({ type }) => type === 'inlineCode').map(span)
  const lines = [...text.slice(start, end).matchAll(/(?:^|\r\n?|\n)[ \t>]*/g)]
  return lines.flatMap(({ 0: lead, index }) => {
    const at = start + index + lead.length
    const line = lineFrom(text, at)
    if (!(looksLikeModule(line) || almostImport.test(line)) || isTold(at)) return []
    if (code.some((one) => at > one.start && at < one.end)) return []
    return problem(
      {
        rule: 'import-in-paragraph',
        at,
        text: words`\`${short(line)}\` is read as prose`,
        hint: almostImport.test(line)
          ? words`write \`import { pumpDraw } from './other-note.mdx'\`: a small \`i\`, the path in quotes`
          : words`put it at the very beginning of a line of its own, with an empty line before and after`,
      },
      placeAt,
    )
  })
}

/** Elements that stand for a number or a word in a sentence. */
const inSentence = new Set(['Reading', 'Rated', 'Assumed', 'Chosen', 'Show', 'Nominal', 'Quoted'])

function brokenParagraphs(
  children: readonly Child[],
  text: string,
  placeAt: PlaceAt,
): readonly Problem[] {
  const told = new Set<number>()
  return children.flatMap((node, index) => {
    if (!belongsInSentence(node)) return []
    const before = children[index - 1]
    const after = children[index + 1]
    const joined = before?.type === 'paragraph' && follows(before, node)
    const goesOn = after?.type === 'paragraph' && follows(node, after)
    const line = node.position?.start.line ?? 0
    if ((!joined && !goesOn) || told.has(line)) return []
    told.add(line)
    const { start, end } = span(node)
    return problem(
      {
        rule: 'alone-on-line',
        at: start,
        text: words`\`${short(text.slice(start, end))}\` alone on its line ends the paragraph`,
        hint: words`put it on the same line as a word of its sentence, or leave an empty line before and after`,
      },
      placeAt,
    )
  })
}

function belongsInSentence(node: Child): boolean {
  if (node.type === 'mdxFlowExpression') return true
  if (node.type !== 'mdxJsxFlowElement' || !inSentence.has(node.name ?? '')) return false
  return node.children.every(({ type }) => type === 'paragraph')
}

function follows(before: Child, after: Child): boolean {
  return (after.position?.start.line ?? 0) === (before.position?.end.line ?? -1) + 1
}

function inBraces(node: Braces, text: string, placeAt: PlaceAt): readonly Problem[] {
  const { start } = span(node)
  const quoted = /^\s*(["'`])([\p{ID_Start}$_][\p{ID_Continue}$.]*)\1\s*$/u.exec(node.value)?.[2]
  if (quoted !== undefined) {
    const said = words`quotes in \`{${short(node.value)}}\`: that is a word and no name`
    const hint = words`write \`{${quoted}}\` for the number of that name, or the word without braces`
    return [problem({ rule: 'name-in-quotes', at: start, text: said, hint }, placeAt)]
  }
  if (node.value.trim() !== '') return commas(node.data?.estree, text, placeAt)
  const hint = words`write a name in them, as in \`{pumpDraw}\`, or \`\\{\\}\` for braces as text`
  return [problem({ rule: 'empty-braces', at: start, text: words`\`{}\` is empty`, hint }, placeAt)]
}

/** `1,5` and `0,5 * length`: two digits on either side of a comma, in a list of two values. */
function commas(
  program: Program | null | undefined,
  text: string,
  placeAt: PlaceAt,
): readonly Problem[] {
  const problems: Problem[] = []
  if (program) {
    walk(program, (node) => {
      if (node.type !== 'SequenceExpression') return
      const [start, end] = range(node)
      const typed = text.slice(start, end)
      const comma = /(?<![\w.])\d+,\d+/.exec(typed)
      if (!comma) return
      const said = { text: decimalComma(typed), hint: decimalPoint(typed) }
      problems.push(problem({ rule: 'decimal-comma', at: start + comma.index, ...said }, placeAt))
    })
  }
  return problems
}

function walk(node: Node, seen: (node: Node) => void): void {
  seen(node)
  for (const value of Object.values(node)) {
    for (const one of Array.isArray(value) ? value : [value]) {
      if (isNode(one)) walk(one, seen)
    }
  }
}

function isNode(value: unknown): value is Node {
  return (
    typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'
  )
}

/** The parser adds `start` and `end`, which the type of the tree does not name. */
function range(node: Node): readonly [number, number] {
  return node.range ?? [0, 0]
}

function span(node: Child): { readonly start: number; readonly end: number } {
  return { start: node.position?.start.offset ?? 0, end: node.position?.end.offset ?? 0 }
}
