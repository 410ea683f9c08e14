/**
 * What becomes of words`…` in what is bundled: plain text of the language, the same that the look-up
 * gives. The catalogue is one of this test, in which values stand in another order.
 */
import { join } from 'node:path'
import { runInNewContext } from 'node:vm'
import { expect, test, vi } from 'vitest'
import { parseSync } from 'vite'
import { plainCode } from '../../src/site/words.ts'
import { words } from '../../src/words/words.ts'
import { root } from '../build/site.ts'

vi.mock('#words', () => ({
  language: 'xx',
  texts: {
    'Put back': 'Zurück `damit` ${hier}\\',
    '{0} of {1}': 'von {1} sind {0}',
    'twice {0}': '{0} und {0}',
    'never {0}': 'nie',
    '{0} lines': '{0} Zeilen',
  },
}))

/** A module of another room. */
const here = join(root, 'src/card/one.ts')

const head = `import { words } from '../words/words.ts'\n`

const parsed = (source: string): unknown => parseSync('source.js', source).program

const plain = (source: string): string =>
  plainCode(head + source, parsed(head + source), here).slice(head.length)

const said = (source: string, values: object = {}): unknown =>
  runInNewContext(plain(source), values)

test('a text becomes a string, with the signs of the language', () => {
  expect(plain('words`Put back`')).not.toContain('words')
  expect(said('words`Put back`')).toBe(words`Put back`)
  expect(words`Put back`).toBe('Zurück `damit` ${hier}\\')
})

test('values keep their place where the order is that of the English text', () => {
  expect(plain('words`${n} lines`')).toBe('`${n} Zeilen`')
})

test('values in another order are still worked in the order in which they are written', () => {
  let calls = ''
  const call = (name: string): string => {
    calls += name
    return name
  }
  expect(said('words`${call("a")} of ${call("b")}`', { call })).toBe('von b sind a')
  expect(calls).toBe('ab')
  expect(said('words`twice ${call("c")}`', { call })).toBe('c und c')
  expect(said('words`never ${call("d")}`', { call })).toBe('nie')
  expect(calls).toBe('abcd')
  expect([words`${1} of ${2}`, words`twice ${'c'}`, words`never ${'d'}`]).toEqual([
    'von 2 sind 1',
    'c und c',
    'nie',
  ])
})

test('a text within a text, and within any template, becomes plain as well', () => {
  expect(said('`<p>${words`${words`Put back`} of ${words`twice ${3}`}`}</p>`')).toBe(
    '<p>von 3 und 3 sind Zurück `damit` ${hier}\\</p>',
  )
})

test('what the catalogue does not have stays English', () => {
  expect(plain('words`Unknown to ${x}, \\`so\\` what`')).toBe('`Unknown to ${x}, \\`so\\` what`')
})

test('only the words that are imported are touched', () => {
  const own = 'const words = String.raw\nwords`Put back`'
  expect(plainCode(own, parsed(own), here)).toBe(own)
  const other = "import { words } from './words.ts'\nwords`Put back`"
  expect(plainCode(other, parsed(other), here)).toBe(other)
  const renamed =
    "import { words as say } from '../words/words.ts'\nsay`${1} lines`; words`Put back`"
  expect(plainCode(renamed, parsed(renamed), here)).toContain('`${1} Zeilen`; words`Put back`')
})
