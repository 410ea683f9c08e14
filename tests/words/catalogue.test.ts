/** The catalogue: what is in it, how a text comes out of it, and what a translation is told. */
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import {
  collectWords,
  englishCatalogue,
  wordsInPage,
  wordsInScript,
} from '../../src/words/collect.ts'
import { translationFaults } from '../../src/words/compare.ts'
import { texts } from '../../src/words/en.ts'
import { command } from '../build/command.ts'
import { root } from '../build/site.ts'
import { oneOf } from '../../src/words/lists.ts'
import { words } from '../../src/words/words.ts'

test('en.ts is what `npm run words` collects from the source', async () => {
  const path = join(root, 'src/words/en.ts')
  const made = await englishCatalogue(await collectWords(root), path)
  expect(await readFile(path, 'utf8')).toBe(made)
})

test('a text is found in a script, nested ones and those with values too', () => {
  const source = 'const a = words`Put ${words`it`} back, \\`${x}\\``\nother`not this`'
  expect(wordsInScript(source)).toEqual(['Put {0} back, `{1}`', 'it'])
})

test('a text is found in the markup of a page', () => {
  const page =
    '---\nconst a = words`head`\n---\n<p title={words`a title`}>{x && words`${n} of ${m}`}</p>\n'
  expect(wordsInPage(page)).toEqual(['head', 'a title', '{0} of {1}'])
})

test('digits in braces, which would be taken for a value, are refused', () => {
  expect(() => wordsInScript('words`the first {0}`')).toThrow('stand for values')
})

test('a text that the catalogue does not have is the English one, with its values', () => {
  expect(words`this is in no ${'catalogue'}, ${2} times \`{n}\``).toBe(
    'this is in no catalogue, 2 times `{n}`',
  )
})

test('one of several', () => {
  expect([oneOf(['A']), oneOf(['A', 'mA']), oneOf(['A', 'mA', 'kA'])]).toEqual([
    'A',
    'A or mA',
    'A, mA or kA',
  ])
})

test('a translation is told what it lacks, in words', () => {
  const english = { 'Put back': 'Put back', '{0} of {1}': '{0} of {1}', All: 'All' }
  expect(translationFaults({ ...english, All: 'Alle' }, english)).toEqual([])
  expect(
    translationFaults(
      { 'Put in': 'Hinein', '{0} of {1}': 'von {1}, {2}', All: 'A & <b>' },
      english,
    ),
  ).toEqual([
    'missing, and shown in English:',
    '  "Put back"',
    'no longer used:',
    '  "Put in"',
    'to be mended:',
    '  "{0} of {1}": `{0}` is left out',
    '  "{0} of {1}": `{2}` stands for no value of this text',
    '  "All": `<` cannot stand in this text',
    '  "All": `>` cannot stand in this text',
    '  "All": `&` cannot stand in this text',
  ])
})

test('`npm run words` with a file compares it with the English texts', async () => {
  const { length } = Object.keys(texts)
  const whole = await command('words', ['src/words/en.ts'])
  expect([whole.code, whole.out]).toEqual([0, `${length} of ${length} texts are there\n`])
  const none = await command('words', ['src/words/compare.ts'])
  expect(none.code).toBe(2)
  expect(none.err).toContain('a translation is a copy of src/words/en.ts')
})
