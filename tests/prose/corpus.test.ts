/**
 * The check on unsourced numbers, held against sentences with known answers (corpus.tsv).
 *
 * Rates are counted for each part: no torque, current, voltage or pressure missed; other quantities
 * missed at most 5 %; at most 2 % false reports a sentence. The part `held` was never tuned on.
 */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { findUnsourced } from '../../src/mdx/prose.ts'
import { parseNote } from '../../src/mdx/parse.ts'

interface Sentence {
  readonly part: string
  readonly text: string
  readonly danger: readonly string[]
  readonly other: readonly string[]
  readonly nominal: readonly string[]
}

const sentences = readFileSync(new URL('corpus.tsv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .map((line): Sentence => {
    const [part = '', text = '', spans = ''] = line.split('\t')
    const list = spans.split(' | ').filter((span) => span !== '')
    return {
      part,
      text,
      danger: list.filter((span) => span.startsWith('!')).map((span) => plain(span.slice(1))),
      nominal: list.filter((span) => span.startsWith('~')).map((span) => plain(span.slice(1))),
      other: list.filter((span) => !/^[!~]/.test(span)).map(plain),
    }
  })

function plain(span: string): string {
  return span.replaceAll('**', '').replaceAll('&nbsp;', '\u00a0')
}

interface Answer {
  readonly danger: readonly string[]
  readonly other: readonly string[]
  readonly nominal: readonly string[]
}

function answer(text: string): Answer {
  const note = parseNote(text, 'note.mdx')
  if (!note.tree) throw new Error(`not read: ${text}`)
  const options = { nominals: ['12 V', 'half-inch'], file: 'note.mdx', status: 'draft' } as const
  const found = findUnsourced(note.tree, { ...options, text: note.text })
  const typed = (rule: string) =>
    found.problems
      .filter((problem) => problem.rule === rule)
      .flatMap((problem) => [...problem.text.matchAll(/`([^`]+)`/g)].map(([, span = '']) => span))
  return {
    danger: typed('unsourced-danger'),
    other: typed('unsourced-number'),
    nominal: found.nominals.map((nominal) => nominal.text),
  }
}

/** Expected spans without a found one that holds them, each found one used once. */
function unmatched(wanted: readonly string[], found: readonly string[]): readonly string[] {
  const left = [...found]
  return wanted.filter((span) => {
    const index = left.findIndex((one) => one.includes(span))
    if (index >= 0) left.splice(index, 1)
    return index < 0
  })
}

function extra(wanted: readonly string[], found: readonly string[]): readonly string[] {
  const left = [...wanted]
  return found.filter((span) => {
    const index = left.findIndex((one) => span.includes(one))
    if (index >= 0) left.splice(index, 1)
    return index < 0
  })
}

test('the corpus is as large as it says', () => {
  expect(sentences.length).toBeGreaterThanOrEqual(220)
  expect(sentences.filter(({ part }) => part === 'held').length).toBeGreaterThanOrEqual(90)
  expect(new Set(sentences.map(({ text }) => text)).size).toBe(sentences.length)
})

describe.each(['tune', 'held'])('part %s', (part) => {
  const asked = sentences
    .filter((sentence) => sentence.part === part)
    .map((sentence) => ({ ...sentence, found: answer(sentence.text) }))

  test('no torque, current, voltage or pressure is missed', () => {
    const missed = asked.flatMap(({ text, danger, found }) =>
      unmatched(danger, found.danger).map((span) => `${span} in: ${text}`),
    )
    expect(missed).toEqual([])
  })

  test('of other quantities at most 5 % are missed', () => {
    const missed = asked.flatMap(({ other, found }) => unmatched(other, found.other))
    const all = asked.flatMap(({ other }) => other).length
    expect(missed.length / all, missed.join(', ')).toBeLessThanOrEqual(0.05)
  })

  test('at most 2 % of the sentences have a false report', () => {
    const wrong = asked.flatMap(({ text, danger, other, found }) =>
      [...extra(danger, found.danger), ...extra(other, found.other)].map(
        (span) => `${span} in: ${text}`,
      ),
    )
    expect(wrong.length / asked.length, wrong.join('\n')).toBeLessThanOrEqual(0.02)
  })

  test('names of sizes are listed', () => {
    const missed = asked.flatMap(({ nominal, found }) => unmatched(nominal, found.nominal))
    const all = asked.flatMap(({ nominal }) => nominal).length
    expect(missed.length / all, missed.join(', ')).toBeLessThanOrEqual(0.05)
  })
})
