/**
 * A note's text as a Markdown tree: the one reader of notes, for the kit and for Astro.
 *
 * In: the file's bytes or text, and its name for messages. Out: frontmatter, tree, and every problem of
 * the text. Nothing is thrown. All positions are those of the file as an editor shows it (a byte order
 * mark does not count). A broken tag or brace is ordinary text in the tree, so that the rest can be
 * checked; a note with an error must not be published.
 */
import type { Root } from 'mdast'
import remarkGfm from 'remark-gfm'
import remarkMdx from 'remark-mdx'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { visitParents } from 'unist-util-visit-parents'
import type { Problem } from '../ledger/problems.ts'
import { brokenStretch, type Stretch } from './broken.ts'
import { decode } from './decode.ts'
import { explain, problem } from './explain.ts'
import { forgive, type Fault, type Pass } from './forgive.ts'
import { readFrontmatter } from './frontmatter.ts'
import { nestingFault } from './nesting.ts'
import { placesIn, type PlaceAt } from './place.ts'
import { apply, plainSpaces, repairs, tableRules, withPlainSpaces, type Change } from './repair.ts'
import { checkShape } from './shape.ts'
import { words } from '../words/words.ts'

export interface ParsedNote {
  readonly problems: readonly Problem[]
  /** undefined: it could not be read. A note without a head has none: `{}`. */
  readonly frontmatter: Record<string, unknown> | undefined
  /** undefined: the note could not be read at all. */
  readonly tree: Root | undefined
  /** Without frontmatter (blanked by spaces) and repaired; same length and positions as the file. */
  readonly text: string
  /** Markup that could not be read, and is text in the tree. */
  readonly broken: readonly Stretch[]
  /** The same before the repair: what Astro hands its Markdown parser. */
  readonly blanked: string
}

export function parseNote(source: string | Uint8Array, file: string): ParsedNote {
  const decoded = decode(source, file)
  if (decoded.text === undefined) {
    return {
      ...decoded,
      frontmatter: undefined,
      tree: undefined,
      text: '',
      broken: [],
      blanked: '',
    }
  }
  const placeAt = placesIn(decoded.text, file)
  const head = readFrontmatter(decoded.text, placeAt)
  const body = parseBody(head.blanked, placeAt)
  const problems = [...decoded.problems, ...head.problems, ...body.problems]
  return {
    problems: sorted(problems),
    frontmatter: head.entries,
    tree: body.tree,
    text: body.text,
    broken: body.broken,
    blanked: head.blanked,
  }
}

interface Body {
  readonly tree: Root | undefined
  readonly text: string
  readonly broken: readonly Stretch[]
  readonly problems: readonly Problem[]
}

/** Each pass goes on after at least one more fault; a text with more than these is not a note. */
const mostPasses = 60

function parseBody(blanked: string, placeAt: PlaceAt): Body {
  const faults = new Map<number, Fault>()
  const literal = new Set<number>()
  const mended = new Map<number, readonly Change[]>()
  const nesting: Problem[] = []
  const open: Stretch[] = []
  let text = blanked

  for (let count = 0; count < mostPasses; count += 1) {
    const pass: Pass = { text, literal, faults: [], strays: new Set(), open: [], tag: undefined }
    const parsed = parseOnce(pass)

    const overlong = pass.faults.find((fault) => fault.overlong !== undefined)
    if (overlong?.overlong !== undefined) {
      faults.set(overlong.start, overlong)
      text = withoutStretch(text, overlong.start, overlong.overlong.end)
      continue
    }
    const changes = pass.faults.flatMap((fault) => {
      if (mended.has(fault.start)) return []
      const found = repairs(text, fault)
      if (found.length > 0) mended.set(fault.start, found)
      return found
    })
    if (changes.length > 0) {
      text = apply(text, changes)
      continue
    }
    // A repair that did not help is taken back: what is not markup is prose, and stays as typed.
    const vain = pass.faults.flatMap(({ start }) => mended.get(start) ?? [])
    text = apply(
      text,
      vain.map(({ at }) => ({ at, sign: blanked[at] ?? '' })),
    )

    for (const fault of pass.faults) {
      if (!faults.has(fault.start)) faults.set(fault.start, fault)
      literal.add(fault.start)
    }
    if (vain.length > 0 || pass.faults.some(({ block }) => block)) continue
    if (parsed.message) {
      const found = nestingFault(parsed.message, pass, placeAt)
      for (const start of found.signs) {
        literal.add(start)
        open.push(brokenStretch(text, start))
      }
      if (found.problem) nesting.push(found.problem)
      if (found.signs.length === 0) break
      continue
    }
    const rules = rulesOf(parsed.tree, text)
    if (rules.length > 0) {
      text = apply(text, rules)
      continue
    }
    const { problems, isTold, spans } = tell(text, [...faults.values()], pass.strays, placeAt)
    const shape = checkShape(parsed.tree, text, placeAt, isTold)
    return {
      tree: parsed.tree,
      text: apply(text, plainAttributes(parsed.tree, text)),
      broken: [...open, ...spans.map(([start, end]) => brokenStretch(text, start, end))],
      problems: [...problems, ...nesting, ...shape],
    }
  }
  const { problems } = tell(text, [...faults.values()], new Set(), placeAt)
  return { tree: undefined, text, broken: [], problems: [...problems, ...nesting] }
}

type Parsed =
  | { readonly tree: Root; readonly message?: never }
  | { readonly message: Error; readonly tree?: never }

function parseOnce(pass: Pass): Parsed {
  const reader = unified().use(remarkParse).use(remarkGfm).use(remarkMdx).use(forgive, pass)
  try {
    return { tree: reader.parse(pass.text) }
  } catch (error) {
    if (!(error instanceof Error)) throw error
    return { message: error }
  }
}

/** The text with a stretch blanked, lines and positions kept. */
function withoutStretch(text: string, start: number, end: number): string {
  return text.slice(0, start) + text.slice(start, end).replace(/[^\r\n]/g, ' ') + text.slice(end)
}

interface Told {
  readonly problems: readonly Problem[]
  /** Whether the sign at an offset is part of a fault that was told. */
  readonly isTold: (offset: number) => boolean
  readonly spans: readonly (readonly [start: number, end: number])[]
}

/** Each fault once: what lies inside another one's stretch is part of it. */
function tell(
  text: string,
  faults: readonly Fault[],
  strays: ReadonlySet<number>,
  placeAt: PlaceAt,
): Told {
  const problems: Problem[] = []
  const spans: (readonly [number, number])[] = []
  const isTold = (offset: number) => spans.some(([start, end]) => offset >= start && offset < end)
  for (const fault of faults.toSorted((a, b) => a.start - b.start)) {
    if (isTold(fault.start)) continue
    const { problem: said, end } = explain(text, fault, placeAt)
    if (!said) continue
    problems.push(said)
    spans.push([fault.start, end])
  }
  for (const at of strays) {
    if (isTold(at)) continue
    const hint = words`write \`\\}\` for a brace as text, or open the braces, as in \`{pumpDraw}\``
    problems.push(
      problem({ rule: 'brace-alone', at, text: words`\`}\` closes no braces`, hint }, placeAt),
    )
  }
  return { problems, isTold, spans }
}

function rulesOf(tree: Root, text: string): readonly Change[] {
  const changes: Change[] = []
  visitParents(tree, 'paragraph', ({ position }) => {
    const { start, end } = position ?? {}
    changes.push(...tableRules(text, start?.offset ?? 0, end?.offset ?? 0))
  })
  return changes
}

/** Spaces in values, in the tree and, by what is returned, in the text. */
function plainAttributes(tree: Root, text: string): readonly Change[] {
  const changes: Change[] = []
  visitParents(tree, (node) => {
    if (node.type !== 'mdxJsxTextElement' && node.type !== 'mdxJsxFlowElement') return
    for (const attribute of node.attributes) {
      if (attribute.type !== 'mdxJsxAttribute' || typeof attribute.value !== 'string') continue
      attribute.value = withPlainSpaces(attribute.value)
      const { start, end } = attribute.position ?? {}
      changes.push(...plainSpaces(text, start?.offset ?? 0, end?.offset ?? 0))
    }
  })
  return changes
}

function sorted(problems: readonly Problem[]): readonly Problem[] {
  return problems.toSorted((a, b) => a.line - b.line || a.column - b.column)
}
