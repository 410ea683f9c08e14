/**
 * The block between `---` lines at the head of a note.
 *
 * In: the note's text. Out: its entries, and the text with the block blanked by spaces, so that every
 * position below stays. The blanked text is the same that Astro hands its Markdown parser.
 * Entries are read with YAML's core schema: a date stays the text `2026-03-14`.
 */
import { extractFrontmatter, parseFrontmatter } from '@astrojs/markdown-remark'
import { parseDocument, type ErrorCode } from 'yaml'
import { isRecord } from '../ledger/json.ts'
import type { Problem } from '../ledger/problems.ts'
import { paragraphEnd, type PlaceAt } from './place.ts'
import { words } from '../words/words.ts'

export interface Frontmatter {
  readonly problems: readonly Problem[]
  /** undefined: it could not be read. */
  readonly entries: Record<string, unknown> | undefined
  readonly blanked: string
}

export function readFrontmatter(text: string, placeAt: PlaceAt): Frontmatter {
  const raw = extractFrontmatter(text)
  if (raw === undefined) return withoutBlock(text, placeAt)

  const start = text.indexOf(raw)
  const blanked = blank(text, start, raw)
  if (text.slice(start - 3, start) === '+++') {
    const said = words`the head of the note stands between \`+++\` lines`
    return unreadable(blanked, [
      fault(placeAt(start - 3), said, words`write \`---\` lines instead`),
    ])
  }
  const spaces = noBreakSpaces(raw)
  if (spaces.length > 0)
    return unreadable(
      blanked,
      spaces.map(({ at, line }) =>
        fault(
          placeAt(start + at),
          words`a no-break space stands in \`${line}\`, where a plain one is due`,
          words`delete it and type the space anew`,
        ),
      ),
    )
  const document = parseDocument(raw, { prettyErrors: false, logLevel: 'error' })
  if (document.errors.length > 0) {
    const problems = document.errors.map(({ code, pos }) => {
      const at = start + (code === 'MISSING_CHAR' ? (openQuote(raw) ?? pos[0]) : pos[0])
      return fault(placeAt(at), ...said(code, lineAround(text, at)))
    })
    return unreadable(blanked, problems)
  }
  try {
    const entries: unknown = document.toJS()
    if (entries === null) return { problems: [], entries: {}, blanked }
    if (!isRecord(entries)) throw new TypeError('not a list of entries')
    // Astro reads the block a second time, with another parser: what that one refuses is refused here.
    parseFrontmatter(text, { frontmatter: 'empty-with-spaces' })
    return { problems: [], entries, blanked }
  } catch {
    const place = placeAt(start + raw.search(/\S|$/))
    return unreadable(blanked, [
      fault(place, words`the head of the note cannot be read`, entryHint),
    ])
  }
}

const entryHint = words`write one \`name: value\` a line, with quotes round a value that has a colon`

/** Lines whose space behind the colon, or before the name, is one that does not break. */
function noBreakSpaces(raw: string): readonly { readonly at: number; readonly line: string }[] {
  const lines = raw.matchAll(/^([ \t]*(?:- )?[\w-]+:[ \t]*|[ \t]*)[\u00A0\u2007\u202F].*$/gm)
  return [...lines].map(({ 0: line, 1: before = '', index }) => ({
    at: index + before.length,
    line: line.replace(/[\u00A0\u2007\u202F]/g, ' ').trim(),
  }))
}

/** A phone makes one dash of three hyphens. */
function dashLine(text: string, from: number): { at: number; typed: string } | undefined {
  const head = text.slice(from, paragraphEnd(text, from))
  const found = /^[ \t]*(?!---[ \t]*$)([-–—―]+)[ \t]*$/m.exec(head)
  const typed = found?.[1]
  return found && typed !== undefined
    ? { at: from + found.index + found[0].indexOf(typed), typed }
    : undefined
}

const dashFault = (placeAt: PlaceAt, { at, typed }: { at: number; typed: string }): Problem =>
  fault(
    placeAt(at),
    words`\`${typed}\` was read where the three hyphens of the head are due`,
    words`write \`---\` alone on a line before its first entry, and again after its last`,
  )

function withoutBlock(text: string, placeAt: PlaceAt): Frontmatter {
  const [opening, sign] = /^\s*(---|[-–—―]+)[ \t]*(?:\r\n?|\n)[ \t]*[\w-]+[ \t]*:/.exec(text) ?? []
  if (opening === undefined) return { problems: [], entries: {}, blanked: text }
  const place = placeAt(text.indexOf('---'))
  const dash = dashLine(text, sign === '---' ? text.indexOf('---') + 3 : 0)
  if (dash !== undefined) return unreadable(text, [dashFault(placeAt, dash)])
  const said = words`the head of the note begins with \`---\` and never ends`
  return unreadable(text, [fault(place, said, words`write a line \`---\` after its last entry`)])
}

function unreadable(blanked: string, problems: readonly Problem[]): Frontmatter {
  return { problems, entries: undefined, blanked }
}

/** The same as Astro's `empty-with-spaces`, which is out of reach when the block has a fault. */
function blank(text: string, start: number, raw: string): string {
  const spaces = `   ${raw.replace(/[^\r\n]/g, ' ')}   `
  return text.slice(0, start - 3) + spaces + text.slice(start - 3 + spaces.length)
}

function fault(place: ReturnType<PlaceAt>, text: string, hint: string): Problem {
  return { rule: 'unreadable-frontmatter', level: 'error', ...place, text, hint }
}

/** The parser notices an open quote only at the end of the block: where it began. */
function openQuote(raw: string): number | undefined {
  const entry = /^[\w-]+:[ \t]*(?:"[^"\r\n]*|'[^'\r\n]*)$/m.exec(raw)
  return entry ? entry.index + entry[0].search(/["']/) : undefined
}

function lineAround(text: string, offset: number): string {
  const before =
    text
      .slice(0, offset)
      .split(/[\r\n]/)
      .at(-1) ?? ''
  const after = text.slice(offset).split(/[\r\n]/)[0] ?? ''
  return (before + after).trim()
}

/** What is wrong and what to write, by the fault the parser found. */
function said(code: ErrorCode, line: string): [text: string, hint: string] {
  const entry = /^([\w-]+):\s*(.+)$/.exec(line)
  const quoted = entry
    ? words`write \`${entry[1] ?? ''}: "${(entry[2] ?? '').replaceAll('"', "'")}"\``
    : entryHint
  const told: Partial<Record<ErrorCode, [text: string, hint: string]>> = {
    DUPLICATE_KEY: [words`\`${line}\` gives an entry a second time`, words`keep one of the two`],
    TAB_AS_INDENT: [words`a line of the head begins with a tab`, words`use spaces`],
    BLOCK_AS_IMPLICIT_KEY: [words`\`${line}\` has a second colon`, quoted],
    BAD_SCALAR_START: [words`\`${line}\` begins its value with a sign of the format`, quoted],
    BAD_INDENT: [
      words`\`${line}\` is indented otherwise than its neighbours`,
      words`line the entries up`,
    ],
    MISSING_CHAR: [
      words`a quote, bracket or colon is missing at \`${line}\``,
      words`close what is open`,
    ],
    MULTILINE_IMPLICIT_KEY: [words`\`${line}\` is no entry`, words`write \`name: value\``],
  }
  return told[code] ?? [words`\`${line}\` cannot be read`, entryHint]
}
