/** `npm run new`: a skeleton beside the last note, as the command makes it. */
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { skeleton, slugOfTitle } from '../../src/writing/skeleton.ts'
import { command } from '../build/command.ts'
import { copyOf, small } from '../build/site.ts'

let content: string
beforeEach(async () => {
  content = await copyOf(small)
})
afterEach(() => rm(content, { recursive: true, force: true }))

const make = (title: string, ...more: string[]): ReturnType<typeof command> =>
  command('new', [title, '--content', content, ...more])
const read = (name: string): Promise<string> => readFile(join(content, 'notes', name), 'utf8')

test('the skeleton stands beside the last note, in its phase, with the day that was given', async () => {
  const { code, out } = await make('Kühlkreis: zweiter Anlauf – ½ Zoll', '--date', '2026-11-25')
  expect(code).toBe(0)
  expect(out).toContain('notes/kuehlkreis-zweiter-anlauf-1-2-zoll.mdx')
  const text = await read('kuehlkreis-zweiter-anlauf-1-2-zoll.mdx')
  expect(text).toContain('title: "Kühlkreis: zweiter Anlauf – ½ Zoll"\ndate: 2026-11-25\n')
  // Of the two notes of the fixture, the pump's circuit is the later by its name.
  expect(text).toMatch(/^phase: twelve-volt /m)
  expect([...text.matchAll(/^## (.*)$/gm)].map(([, heading]) => heading)).toEqual([
    'Goal',
    'Parts',
    'Numbers',
    'What I did',
    'Measured',
    'Safety',
    'Changed',
    'Next',
  ])
})

test.each([
  'Plain words',
  'A: colon, "quotes" and # signs',
  '12',
  'yes',
  "it's <5 A & more",
  'Ærø, Łódź, São Paulo',
])(
  '`check` has no error and no warning in the skeleton of %j, and its title is that',
  async (title) => {
    const made = skeleton(title, '2026-11-25', [])
    if (!made.ok) throw new Error(made.why)
    await writeFile(join(content, 'notes', made.name), made.text)
    const { problems, notes } = await loadLedger(content, undefined, { drafts: true })
    expect(problems).toEqual([])
    expect(notes.map(({ meta }) => meta.title)).toContain(title)
  },
)

test('a skeleton is a draft: nothing of it is published', async () => {
  await make('Later', '--date', '2026-11-25')
  const { published, drafts } = await loadLedger(content)
  expect(published.notes.map(({ slug }) => slug)).not.toContain('later')
  expect(drafts.map(({ slug }) => slug)).toEqual(['later'])
})

test('the same words give the same file', () => {
  const one = skeleton('A title', '2026-11-25', [])
  expect(skeleton('A title', '2026-11-25', [])).toEqual(one)
  expect(one).toMatchObject({ ok: true, name: 'a-title.mdx', phase: 'plan' })
})

test('nothing is written over: the same title, another case, an older name of a note', async () => {
  await make('Later', '--date', '2026-11-25')
  const text = `${await read('later.mdx')}\nwritten since\n`
  await writeFile(join(content, 'notes/later.mdx'), text)
  const again = await make('LATER!', '--date', '2026-11-26')
  expect(again.code).toBe(2)
  expect(again.err).toContain('notes/later.mdx is there already, and stays as it is')
  expect(await read('later.mdx')).toBe(text)
  const meta = { date: '2026-01-01', phase: 'plan', was: ['old-name'] }
  const renamed = skeleton('Old name', '2026-11-25', [{ slug: 'new-name', meta }])
  expect(renamed.ok ? '' : renamed.why).toContain('an older name of notes/new-name.mdx')
})

test('without a day, the machine’s own is read; words without quotes are one title', async () => {
  const { code } = await command('new', ['On', 'the', 'road', '--content', content])
  expect(code).toBe(0)
  const [, date = ''] = /^date: (.*)$/m.exec(await read('on-the-road.mdx')) ?? []
  const days = [0, 1].map((back) => {
    const day = new Date(Date.now() - back * 60_000)
    return [day.getFullYear(), day.getMonth() + 1, day.getDate()]
      .map((part) => String(part).padStart(2, '0'))
      .join('-')
  })
  expect(days).toContain(date)
})

test('an empty content folder gets its first note', async () => {
  const folder = join(content, 'fresh')
  await mkdir(folder)
  const { code } = await command('new', ['Start', '--date', '2026-11-25', '--content', folder])
  expect(code).toBe(0)
  expect(await readdir(join(folder, 'notes'))).toEqual(['start.mdx'])
})

describe('what cannot be done is said in one line', () => {
  test.each<[words: readonly string[], said: RegExp]>([
    [[], /a note needs a title/],
    [['   '], /a note needs a title/],
    [['{braces}'], /no braces/],
    [['A', '--date', '25.11.2026'], /a date is written YYYY-MM-DD/],
    [['A', '--date', '2026-02-30'], /no such day: 2026-02 has 28 days/],
    [['A', '--nosuch'], /cannot make sense of .*allowed: npm run new/],
    [['A', '--content', '/nonesuch'], /there is no folder/],
  ])('%j', async (words, said) => {
    const more = words.includes('--content') ? [] : ['--content', content]
    const { code, err } = await command('new', [...words, ...more])
    expect(code).toBe(2)
    expect(err).toMatch(said)
    expect(err.trim().split('\n')).toHaveLength(1)
  })
})

test.each([
  ['Straße nach Ærø', 'strasse-nach-aeroe'],
  ['São Paulo, it’s far', 'sao-paulo-its-far'],
  ['  --  ', ''],
  ['電動', ''],
  ['½ in & ¾ in', '1-2-in-3-4-in'],
  ['A'.repeat(200), 'a'.repeat(60)],
])('the address of %j is %j', (title, slug) => {
  expect(slugOfTitle(title)).toBe(slug)
})

test('a title without a letter for an address is named by its phase and day', () => {
  expect(skeleton('電動', '2026-11-25', [])).toMatchObject({ name: 'plan-2026-11-25.mdx' })
})
