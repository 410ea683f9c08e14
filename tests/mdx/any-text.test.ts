/**
 * Whatever is typed: a note is read or its problems are told; nothing is thrown.
 *
 * Texts are drawn from the signs that MDX trips over, mixed with prose and with real markup.
 */
import fc from 'fast-check'
import type { Nodes } from 'mdast'
import { expect, test } from 'vitest'
import { visitParents } from 'unist-util-visit-parents'
import { parseNote, type ParsedNote } from '../../src/mdx/parse.ts'

const pieces = fc.constantFrom(
  ...'<>{}/=()[]*_`|#!:"\'\\&-+~,.;\n\t'.split(''),
  ...[
    '\n\n',
    ' ',
    '“',
    '”',
    '’',
    '\u00a0',
    '\r\n',
    '\r',
    '> ',
    '- ',
    '1. ',
    '```\n',
    '| a | b |\n|---|---|\n',
  ],
  ...[
    '---\n',
    'title: x',
    'import ',
    'export ',
    ' from ',
    '"./a.mdx"',
    'pump',
    '5 A',
    '1,5',
    '<!-- ',
    '-->',
  ],
  ...[
    '<Reading ',
    'id="x"',
    'value=',
    '/>',
    '</Reading>',
    '<b>',
    '</b>',
    '{name}',
    '{a + b}',
    '{/* c */}',
  ],
  ...['\u0000', '\ufeff', '𝄞', 'é', '\u2028', '[^1]', 'https://x.example/a', '&amp;', '&#60;'],
)
const text = fc.oneof(
  fc.array(pieces, { maxLength: 40 }).map((list) => list.join('')),
  fc.string({ unit: 'binary', maxLength: 60 }),
)

function linesOf(source: string): readonly string[] {
  return source.replace(/^\uFEFF+/, '').split(/\r\n?|\n/)
}

function checkPlaces(source: string, { problems }: ParsedNote): void {
  const lines = linesOf(source)
  for (const { line, column, text: said } of problems) {
    expect(line, said).toBeGreaterThanOrEqual(1)
    expect(line, said).toBeLessThanOrEqual(lines.length)
    expect(column, said).toBeGreaterThanOrEqual(1)
    expect(column, said).toBeLessThanOrEqual((lines[line - 1]?.length ?? 0) + 1)
  }
}

function nodesOf(note: ParsedNote): readonly Nodes[] {
  const nodes: Nodes[] = []
  if (note.tree) visitParents(note.tree, (node) => void nodes.push(node))
  return nodes
}

test('any text is read, or has a problem with a place inside it', () => {
  fc.assert(
    fc.property(text, (source) => {
      const note = parseNote(source, 'note.mdx')
      checkPlaces(source, note)
      expect(note.tree !== undefined || note.problems.length > 0).toBe(true)
      expect(note.frontmatter !== undefined || note.problems.length > 0).toBe(true)
    }),
    { numRuns: 1500, seed: 7 },
  )
})

test('any bytes are read, or have a problem with a place', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
      const note = parseNote(bytes, 'note.mdx')
      expect(note.tree !== undefined || note.problems.length > 0).toBe(true)
    }),
    { numRuns: 300, seed: 7 },
  )
})

test('the repair changes no place, no line and no prose', () => {
  fc.assert(
    fc.property(text, (source) => {
      const note = parseNote(source, 'note.mdx')
      expect(note.text).toHaveLength(note.blanked.length)
      expect(note.blanked).toHaveLength(source.replace(/^\uFEFF+/, '').length)
      for (const [at, sign] of note.blanked.split('').entries()) {
        const repaired = note.text[at] ?? ''
        if (repaired !== sign) expect(`"' */-`).toContain(repaired)
      }
      for (const node of nodesOf(note)) {
        // A text split by an automatic link has no place of its own.
        if (node.type !== 'text' || !node.position) continue
        const { start, end } = node.position
        const typed = note.blanked.slice(start.offset ?? 0, end.offset ?? 0)
        if (!/[\\&\n\r\t\0]/.test(typed)) expect(node.value.trim()).toBe(typed.trim())
      }
    }),
    { numRuns: 1500, seed: 11 },
  )
})

test('no message has the words of a parser', () => {
  fc.assert(
    fc.property(text, (source) => {
      for (const { text: said, hint } of parseNote(source, 'note.mdx').problems) {
        expect(`${said} ${hint ?? ''}`).not.toMatch(/acorn|micromark|mdast|token|estree|U\+\w{4}/i)
      }
    }),
    { numRuns: 500, seed: 3 },
  )
})
