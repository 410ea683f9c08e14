/**
 * Every word that a reader or a builder meets comes from the catalogue. A small site of every kind of page
 * is built, and bad notes are checked, with a catalogue in which every text stands between marks: what
 * stands outside them is the builder's own, a number with its unit, or a fault.
 */
import { appendFile, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { z } from 'zod'
import { hazards } from '../../calculators/hazards.ts'
import { calculators } from '../../calculators/index.ts'
import { tables } from '../../calculators/tables/index.ts'
import { currencies } from '../../src/quantity/table.ts'
import { unitNames } from '../../src/quantity/unit.ts'
import { verifySite } from '../../src/site/verify.ts'
import { command } from '../build/command.ts'
import { copyOf, filesIn, root, workshop } from '../build/site.ts'
import { close, open } from './marked-words.ts'
import { outsideInText, outsideMarks } from './outside-marks.ts'

const marked = { NODE_OPTIONS: `--import ${join(root, 'tests/words/marked.ts')}` }

/** What cites documents stays as it is: sources, what thresholds rest on, the examples from them. */
async function cited(): Promise<readonly string[]> {
  const made = await Promise.all(Object.values(calculators).map((load) => load()))
  const shown = await Promise.all(Object.values(tables).map((load) => load()))
  return stringsIn([
    made.map((one) => [one.sources, one.examples, Object.values(one.checks).map(basisOf)]),
    shown.map((one) => one.source),
    Object.values(hazards).map((one) => one.source),
  ])
}

const basisOf = ({ basis }: { readonly basis: string }): string => basis

const stringsIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(stringsIn)
      : []

/** The builder’s own words, and the examples of what can be written, which are a note as well. */
const notes = [workshop, join(root, 'src/writing/example')]

let folder: string
let files: ReadonlyMap<string, Buffer>
let own: string
let ownWords: ReadonlySet<string>

beforeAll(async () => {
  const content = await copyOf(workshop)
  await appendFile(join(content, 'site.yaml'), 'writing: true\noffline: true\n')
  folder = await mkdtemp(join(tmpdir(), 'words-'))
  const out = join(folder, 'dist')
  const {
    code,
    out: said,
    err,
  } = await command('build', ['--content', content, '--out', out], marked)
  await rm(content, { recursive: true })
  expect(code, said + err).toBe(0)
  files = await filesIn(out)
  const texts = [...(await Promise.all(notes.map(textIn))), ...(await cited())]
  own = plain(texts.join('\n').replace(noWords, ' '))
  ownWords = new Set(lettersIn(texts.join('\n')))
})

afterAll(() => rm(folder, { recursive: true, force: true }))

async function textIn(place: string): Promise<string> {
  const texts = [...(await filesIn(place))].filter(([name]) => /\.(?:mdx|ts|yaml)$/.test(name))
  return texts.map(([, bytes]) => bytes.toString('utf8')).join('\n')
}

/** Without the signs of Markdown, and with one kind of space. */
const plain = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[*`#[\]()"“”:;,.?]/g, ' ')
    .replace(/\s+/g, ' ')} `

const units = [...unitNames, 'gal/min', 'lb·ft', 'lb·in', 'N·m', 'mm²', 'psi', 'AWG']
  .filter((name) => name !== '')
  .toSorted((a, b) => b.length - a.length)
  .map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
/** Numbers with their units, currencies, editions, clauses, addresses. */
const noWords = new RegExp(
  String.raw`https?:\S+|\S*\d\S*(?:[ \u00A0\u202F]+(?:${units.join('|')})(?![\p{L}]))?|\b(?:${currencies.slice(1).join('|')})\b`,
  'gu',
)

const lettersIn = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}+/gu) ?? []

/** A unit by itself, or a formula: symbols are not translated. */
const isSymbolic = (text: string): boolean =>
  text.includes(' = ') || lettersIn(text).every((word) => unitWords.has(word))
const unitWords: ReadonlySet<string> = new Set([...unitNames, 'A²s'].flatMap(lettersIn))

/** Whole, or word by word where punctuation and numbers stand between. */
const isOwn = (text: string): boolean =>
  own.includes(plain(text)) || lettersIn(text).every((word) => ownWords.has(word))

/** What has no right to stand outside the marks. */
const faults = (texts: readonly string[]): readonly string[] =>
  texts
    .map((text) => text.replace(noWords, ' ').trim())
    .filter((text) => /\p{L}/u.test(text) && !isSymbolic(text) && !isOwn(text))

const textOf = (file: string): string => files.get(file)?.toString('utf8') ?? ''

test('every word of every page comes from the catalogue', () => {
  const pages = [...files.keys()].filter((file) => file.endsWith('.html'))
  expect(pages.length).toBeGreaterThan(60)
  const found = pages.flatMap((file) =>
    faults(outsideMarks(textOf(file))).map((text) => `${file}: ${text}`),
  )
  expect(found).toEqual([])
})

test('every page says the language of the catalogue, the feed too', () => {
  const pages = [...files.keys()].filter((file) => file.endsWith('.html'))
  expect(pages.filter((file) => !textOf(file).includes('<html lang="de"'))).toEqual([])
  expect(textOf('feed.xml')).toContain('xml:lang="de"')
})

test('the words of the feed, of the search by name and of kept pages come from it as well', () => {
  const contents = [...textOf('feed.xml').matchAll(/<(title|summary|content)[^>]*>([^<]*)<\/\1>/g)]
  expect(contents.length).toBeGreaterThan(5)
  const decoded = contents.map(([, , text = '']) =>
    text
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&'),
  )
  expect(faults(decoded.flatMap(outsideMarks))).toEqual([])
  const names = z
    .object({ names: z.array(z.array(z.string())) })
    .parse(JSON.parse(textOf('search/names.json')))
  expect(
    faults(
      names.names.flatMap(([label = '', value = '']) => [label, value].flatMap(outsideInText)),
    ),
  ).toEqual([])
  expect(textOf('offline-worker.js')).toContain(`${open}No copy of this page${close}`)
})

test('a site in another language holds against its own numbers', async () => {
  const { code, out } = await command('verify', ['--out', join(folder, 'dist')], marked)
  expect([code, out]).toEqual([
    0,
    `${open}verified: everything shown is what its numbers give${close}\n`,
  ])
  // In English it is another site.
  expect(await verifySite(join(folder, 'dist'))).not.toEqual([])
})

test('a reader’s scripts carry the words that they use, and no catalogue', () => {
  const scripts = [...files.keys()].filter((file) => /^_astro\/.*\.js$/.test(file))
  expect(scripts.length).toBeGreaterThan(20)
  const carry = (text: string): readonly string[] =>
    scripts.filter((file) => textOf(file).includes(text))
  expect(carry('built and verified')).toEqual([])
})

const badNotes: Readonly<Record<string, string>> = {
  'a tag without an end': 'It draws <Reading id="a" value="1 A" with="meter"',
  'a quote that stays open': 'It draws <Reading id="a" value="1 A with=meter />.',
  'braces that stay open': 'It draws {draw and no more.',
  'a list in braces that cannot be read':
    '<Calc id="x" use="loop-heights" parts={[{ a: 1, b }, /]} />',
  'an html comment': 'Before <!-- a comment --> after.',
  'an address in brackets': 'See <https://example.org>.',
  'a decimal comma': 'It is {1,5} long.',
  'a tag that closes nothing': 'So </Reading> it is.',
  'an import within a paragraph': "Words\nimport { draw } from './pump.mdx'",
  'a box that is none': '-[ ] tighten it',
  'a name that nobody has': 'It is {draw} and {sheet.fuse}.',
  'a unit that is none': 'It is <Chosen id="a" value="3 blobs" because="so" />.',
  'a unit of something else':
    '<Calc id="x" use="motor-circuit" running="3 m" starting="9 A" wire="1.0 mm²" length="3.5 A" />',
  'a calculator that is not there': '<Calc id="x" use="no-such-thing" />',
  'an input that is not there': '<Calc id="x" use="motor-circuit" colour="red" />',
  'a choice that is none':
    '<Calc id="x" use="motor-circuit" switching="by hand" running="3 A" starting="900 kA" wire="1.0 mm²" length="3.5 m" />',
  'a sum of different things':
    '<Chosen id="a" value="3 m" because="so" /> <Chosen id="b" value="3 A" because="so" /> {a + b} {a - 20 °C} {a ** 2}',
  'an attribute that is none':
    '<Reading id="a" value="1 A" with="meter" by="me" /> <Rated id="b" value="2 A" />',
  'a link that leads nowhere':
    '[there](./not-there.mdx) and ![](./not-there.jpg) and [that](/nowhere/)',
  'a part that says too little': '<Part what="Pump" price="3 m" status="lost" />',
  'a task that is nobody’s':
    '- [ ] tighten, closed in [itself](./n0.mdx)\n- [x] turn, opened in [that](./n1.mdx)',
  'a circle': '<Chosen id="a" value={b} because="so" />, <Show id="b" value={a} />',
  'an element that is none': '<Readings id="a" value="1 A" /> and <Show id="class" value={a} />',
  'a photo with other things': '<Photo>\n\nNothing\n\n</Photo>',
  'a number without a source': 'The fuse is 10 A and the bolt takes 20 N·m.',
}

test('what `check` says of bad notes comes from the catalogue', async () => {
  const content = join(folder, 'bad')
  await mkdir(join(content, 'notes'), { recursive: true })
  await writeFile(join(content, 'site.yaml'), await readFile(join(workshop, 'site.yaml')))
  const head = 'date: 2026-03-14\nphase: twelve-volt\nstatus: done'
  for (const [index, text] of Object.values(badNotes).entries())
    await writeFile(
      join(content, 'notes', `n${index}.mdx`),
      `---\ntitle: N${index}\n${head}\n---\n\n${text}\n`,
    )
  await writeFile(join(content, 'notes/head.mdx'), `---\ntitle: one: two\n${head}\n`)
  const args = ['--content', content, '--format', 'json']
  const { out } = await command('check', args, marked)
  const { problems } = problemList.parse(JSON.parse(out))
  const told = new Set(problems.map(({ file }) => file))
  expect(told.size).toBe((await readdir(join(content, 'notes'))).length)
  const texts = problems.flatMap(({ text, allowed = '', hint = '' }) => [
    text,
    allowed.replace(names, ''),
    hint,
  ])
  expect(faults(texts.map(withoutQuoted).flatMap(outsideInText))).toEqual([])
  const lines = (await command('check', ['--content', content], marked)).out.trim().split('\n')
  const summary = lines.at(-1) ?? ''
  expect(faults(outsideInText(summary))).toEqual([])
  expect(summary).toContain(open)
})

const problemList = z.object({
  problems: z.array(
    z.object({
      file: z.string(),
      text: z.string(),
      allowed: z.string().optional(),
      hint: z.string().optional(),
    }),
  ),
})

/** What may be typed: attributes of an element, choices. */
const names = /^[\w-]+(?:, [\w-]+)*$/u

/** What was typed stands in backquotes. */
const withoutQuoted = (text: string): string => text.replace(/^<.*$/gm, '').replace(/`[^`]*`/g, ' ')
