/**
 * Drafts leak nowhere: `draft: true` leaves a note out of every file of the site, whatever is in it, and
 * what is published cannot rest on it. While writing they are there, and say what they are.
 */
import { spawn } from 'node:child_process'
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { createServer, type AddressInfo } from 'node:net'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { command } from '../build/command.ts'
import { builtSite, copyOf, root, temporaryFolder, type Built } from '../build/site.ts'

const content = join(root, 'tests/build/fixtures/published')
const marker = /zzdraftmarker/i

const site = 'title: T\nvehicle: V\nunits: metric\ninstruments:\n  tape: { title: tape }\n'
const head = (title: string, more = ''): string =>
  `---\ntitle: ${title}\ndate: 2026-01-01\nphase: plan\nstatus: done\n${more}---\n`

async function ledgerOf(notes: Readonly<Record<string, string>>, drafts = false) {
  const folder = await temporaryFolder()
  await mkdir(join(folder, 'notes'))
  await writeFile(join(folder, 'site.yaml'), site)
  for (const [name, text] of Object.entries(notes))
    await writeFile(join(folder, 'notes', `${name}.mdx`), text)
  const ledger = await loadLedger(folder, undefined, { drafts })
  await rm(folder, { recursive: true })
  return ledger
}

const draft = `${head('Secret', 'draft: true\n')}\nIt is <Reading id="deep" value="2 m" with="tape" /> and\n<Reading id="wide" value="1 m" with="tape" />.\n`

describe('a finished site', () => {
  let built: Built
  beforeAll(async () => {
    built = await builtSite(content)
  })
  afterAll(() => built.remove())

  it('has no word of a draft in any file, by name or within, packed or not', () => {
    const wrong: string[] = []
    let known = 0
    for (const [name, bytes] of built.files) {
      const texts = [name, bytes.toString('utf8'), bytes.toString('latin1')]
      if (bytes[0] === 0x1f && bytes[1] === 0x8b) texts.push(gunzipSync(bytes).toString('utf8'))
      if (bytes[0] === 0x1f && texts.at(-1)?.includes('leaflet') === true) known += 1
      if (texts.some((text) => marker.test(text))) wrong.push(name)
    }
    expect(wrong).toEqual([])
    // The search keeps its words packed: a word that is published is found in there.
    expect(known).toBeGreaterThan(0)
    expect(built.said).toContain('left out: 1 draft')
  })

  it('neither counts it nor lets its numbers take the place of others', () => {
    expect(built.numbersJson).toContain('"value":4,')
    expect(built.numbersJson).not.toContain('77.7')
    expect(built.pages.get('index.html')).toContain('2 notes')
    const last = built.pages.get('notes/clamp-meter/index.html') ?? ''
    expect(last).toContain('note 2 of 2')
    expect(last).not.toContain('rel="next"')
  })

  it('has files for everything else of its notes', () => {
    const names = [...built.files.keys()]
    for (const due of [
      'feed.xml',
      'sitemap.xml',
      'search/names.json',
      'notes/bilge-pump/social.png',
      'numbers.csv',
    ])
      expect(names).toContain(due)
  })
})

describe('what is published', () => {
  it('cannot rest on a draft’s number: an error with both places', async () => {
    const { problems, published } = await ledgerOf({
      secret: draft,
      open: `${head('Open')}\nimport { wide as w } from './secret.mdx'\n\nSo {w}.\n`,
    })
    expect(published.notes.map(({ slug }) => slug)).toEqual(['open'])
    expect(problems).toEqual([
      {
        rule: 'rests-on-draft',
        level: 'error',
        text: '`wide` stands in `notes/secret.mdx`, which is a draft: what is published cannot rest on it',
        hint: 'publish the draft as well (take out `draft: true`), or make this note a draft too',
        file: 'notes/open.mdx',
        line: 8,
        column: 10,
        also: [{ file: 'notes/secret.mdx', line: 10, column: 1 }],
      },
    ])
  })

  it.each([
    ['the whole note by name', `import * as secret from './secret.mdx'\n\nSo {secret.wide}.`, 8],
    ['the page itself', `import Secret from './secret.mdx'\n\n<Secret />`, 8],
    ['another way to the file', `import { wide } from '../notes/secret.mdx'\n\nSo {wide}.`, 8],
    ['its source text', `import text from './secret.mdx?raw'\n\n{text}`, 8],
    ['an export of it', `export { wide } from './secret.mdx'`, 8],
  ])('cannot take %s either', async (_, text, line) => {
    const { problems } = await ledgerOf({ secret: draft, open: `${head('Open')}\n${text}\n` })
    const [problem] = problems.filter(({ rule }) => rule === 'rests-on-draft')
    expect(problem).toMatchObject({ file: 'notes/open.mdx', line, level: 'error' })
    expect(problem?.also?.[0]?.file).toBe('notes/secret.mdx')
  })

  it('cannot link to one', async () => {
    const { problems } = await ledgerOf({
      secret: draft,
      open: `${head('Open')}\nSee [this](./secret.mdx#deep) and [that][x].\n\n[x]: ./secret.mdx\n`,
    })
    expect(problems.map(({ rule, line, also }) => [rule, line, also?.[0]?.file])).toEqual([
      ['link-to-draft', 8, 'notes/secret.mdx'],
      ['link-to-draft', 10, 'notes/secret.mdx'],
    ])
  })
})

describe('a draft', () => {
  it('may rest on what is published, and on other drafts', async () => {
    const notes = {
      open: `${head('Open')}\nIt is <Reading id="high" value="3 m" with="tape" />.\n`,
      one: `${head('One', 'draft: true\n')}\nimport { high } from './open.mdx'\n\n{high}\n`,
      two: draft,
      three: `${head('Three', 'draft: true\n')}\nimport { deep } from './two.mdx'\n\n{deep}\n`,
    }
    expect((await ledgerOf(notes)).problems).toEqual([])
    const { problems, published } = await ledgerOf(notes, true)
    expect(problems).toEqual([])
    expect(published.notes.map(({ slug, draft: marked }) => [slug, marked])).toEqual([
      ['one', true],
      ['open', undefined],
      ['three', true],
      ['two', true],
    ])
  })

  it('that is half written keeps no one from publishing the rest', async () => {
    const notes = {
      open: `${head('Open')}\nNothing yet.\n`,
      half: `---\ndraft: true\ntitel: slip\n---\n<Reading id="a"\n`,
    }
    expect((await ledgerOf(notes)).problems).toEqual([])
    expect((await ledgerOf(notes, true)).problems.length).toBeGreaterThan(0)
  })

  it('is one only by `true`: anything else is told, and stops the build', async () => {
    for (const word of ['"true"', 'yes', '1', 'maybe']) {
      const { problems } = await ledgerOf({ open: `${head('Open', `draft: ${word}\n`)}\nText.\n` })
      expect([word, problems.map(({ rule, level, line }) => [rule, level, line])]).toEqual([
        word,
        [['bad-frontmatter', 'error', 6]],
      ])
    }
    expect(
      (await ledgerOf({ open: `${head('Open', 'draft: false\n')}\nText.\n` })).problems,
    ).toEqual([])
  })

  it('alone makes no site: that is said', async () => {
    const { problems } = await ledgerOf({ secret: draft })
    expect(problems.map(({ rule, level }) => [rule, level])).toEqual([['only-drafts', 'warning']])
  })

  it('is checked as well, and left out of the count', async () => {
    const copy = await copyOf(content)
    const file = join(copy, 'notes/zzdraftmarker-note.mdx')
    await writeFile(file, (await readFile(file, 'utf8')).replace('77.7 A', '77.7 flurbs'))
    const { code, out } = await command('check', ['--content', copy])
    expect(code).toBe(1)
    expect(out).toMatch(/notes\/zzdraftmarker-note\.mdx:13:\d+ error: `flurbs` is not a unit/)
    expect(out).toMatch(/^2 notes, .*\(1 draft checked and left out\): 1 error, \d+ warnings?$/m)
    await rm(copy, { recursive: true })
  })
})

it('while writing, drafts are among the notes and say what they are', async () => {
  const port = await freePort()
  const child = spawn(
    process.execPath,
    [join(root, 'src/cli/dev.ts'), '--content', content, '--port', String(port)],
    {
      cwd: root,
      stdio: ['ignore', 'pipe', 'ignore'],
      env: { PATH: process.env.PATH, HOME: process.env.HOME },
    },
  )
  try {
    let said = ''
    child.stdout.on('data', (more: Buffer) => (said += more.toString()))
    await expect.poll(() => said, { timeout: 40_000 }).toContain('writing mode at')
    const page = async (path: string): Promise<string> =>
      (await fetch(`http://localhost:${port}/a/b/${path}`)).text()
    expect(await page('')).toMatch(
      /Zzdraftmarker thoughts[^]*?<strong class="draft">Draft, not published\.<\/strong>/,
    )
    expect(await page('notes/zzdraftmarker-note/')).toMatch(
      /<strong class="draft">Draft, not published\.<\/strong>/,
    )
    expect(await page('notes/clamp-meter/')).not.toContain('class="draft"')
  } finally {
    child.kill()
  }
})

async function freePort(): Promise<number> {
  const server = createServer()
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const { port } = server.address() as AddressInfo
  await new Promise((closed) => server.close(closed))
  return port
}
