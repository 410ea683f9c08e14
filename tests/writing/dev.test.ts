/**
 * Writing mode as it runs: a server of its own on a copy of a small site, whose files are edited.
 * Messages stand in the page where they are about and in the terminal, and go when the fault goes; no
 * edit ends it; a change shows in the notes that rest on it.
 */
import { readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { command } from '../build/command.ts'
import { copyOf, small } from '../build/site.ts'
import { devServer, type DevServer } from './dev-server.ts'

let content: string
let server: DevServer
const page = '/notes/pump-circuit/'
const file = (name: string): string => join(content, name)
const pump = 'notes/pump-circuit.mdx'
let sound: string

beforeAll(async () => {
  content = await copyOf(small)
  sound = await readFile(file(pump), 'utf8')
  server = await devServer(content)
})
afterAll(async () => {
  await server.stop()
  await rm(content, { recursive: true, force: true })
})

const marker = (html: string): boolean => html.includes('class="messages"')
const told = (html: string): string[] =>
  [...html.matchAll(/<div class="message [^>]*>(.*?)<\/div>/g)].map(([, inner = '']) =>
    inner.replace(/<[^>]+>/g, ''),
  )

async function mended(): Promise<void> {
  await writeFile(file(pump), sound)
  const { status, html } = await server.until(
    page,
    (text, code) => code === 200 && !/class="messages?[ "]/.test(text),
  )
  expect(status).toBe(200)
  expect(told(html)).toEqual([])
}

describe('a message', () => {
  test('stands at its place, at the head of the page and in the terminal, and goes when mended', async () => {
    const before = await server.get(page)
    expect(before.status).toBe(200)
    expect(before.html).not.toMatch(/class="messages?[ "]/)

    await writeFile(file(pump), sound.replace('value="1.5 A"', 'value="1.5 foo"'))
    const { html } = await server.until(page, (text) => told(text).length > 0)
    const [message = ''] = told(html)
    expect(message).toMatch(/^error notes\/pump-circuit\.mdx:\d+:\d+ foo is not a unit known here/)
    // Before the paragraph that it is about, which shows the element as it is typed.
    const at = html.indexOf('class="message ')
    const paragraph = html.indexOf('With the loop full')
    expect(at).toBeGreaterThan(0)
    expect(at).toBeLessThan(paragraph)
    expect(html.slice(paragraph, paragraph + 200)).toContain(
      'class="as-typed">&lt;Reading id=&quot;pumpDraw&quot; value=&quot;1.5 foo&quot;',
    )
    const id = /class="message [^>]*id="([^"]*)"/.exec(html)?.[1] ?? ''
    expect(marker(html)).toBe(true)
    expect(html).toContain(`href="#${id}"`)
    expect(server.said()).toMatch(/pump-circuit\.mdx:\d+:\d+ error: `foo` is not a unit known here/)

    // The first page says it too, and leads to the place.
    expect((await server.get('/')).html).toContain(`notes/pump-circuit/#${id}`)
    await mended()
    expect(server.said()).toMatch(/mended: 0 errors/)
  })

  test('is not in a finished site', async () => {
    const layout = await readFile(join(import.meta.dirname, '../../src/layouts/Page.astro'), 'utf8')
    expect(layout).toContain('{writing && <Fragment set:html={panelHtml(')
  })
})

describe('what stands in braces and fails when the page is made', () => {
  const failing = `
export const first = [].map((one) => one.x)[0].size

Half of it: {(1).foo.bar}, and {1 + 1} is two. <b title={(2).at.once}>Bold.</b>
`

  test('is told at its place and in the terminal, the page stands, and it goes when mended', async () => {
    await writeFile(file(pump), sound + failing)
    const { status, html } = await server.until(page, (text) => told(text).length > 1)
    expect(status).toBe(200)
    const lines = sound.split('\n').length
    const [first = '', bar = '', name = ''] = told(html)
    const place = 'error notes/pump-circuit.mdx:'
    expect(first).toContain(`${place}${lines + 1}:22 first fails when the page is made`)
    expect(bar).toContain(
      `${place}${lines + 3}:14 {(1).foo.bar} fails when the page is made: there is nothing here that could have bar`,
    )
    expect(name).toContain(`${place}${lines + 3}:58 {(2).at.once} fails`)
    // Behind the paragraph that it is about, which shows what was typed; the rest stands.
    expect(html).toContain('Half of it: {(1).foo.bar}, and 2 is two.')
    expect(html.indexOf('Half of it')).toBeLessThan(html.lastIndexOf('class="message '))
    expect(html).toContain('data-card="pump-circuit/pumpFuse"')
    const said = (): number => server.said().split('`{(1).foo.bar}` fails').length - 1
    expect(said()).toBe(1)
    // Asked for again it is not told again.
    await server.get(page)
    expect(said()).toBe(1)
    expect(server.said()).not.toMatch(/^\s+at .*:\d+/m)
    await mended()
    expect((await server.get(page)).html).toContain('data-card="pump-circuit/pumpFuse"')
    expect(server.runs()).toBe(true)
  })

  test('lets no site be built, and is told without a stack', async () => {
    const other = await copyOf(small)
    await writeFile(join(other, pump), sound + failing)
    const out = `${other}-dist`
    const { code, out: lines, err } = await command('build', ['--content', other, '--out', out])
    expect([code, err]).toEqual([1, ''])
    expect(lines).toMatch(/pump-circuit\.mdx:\d+:14 error: `\{\(1\)\.foo\.bar\}` fails when/)
    expect(lines.trim().split('\n').at(-1)).toMatch(/^3 errors, \d+ warnings?: nothing was built/)
    expect(lines).not.toMatch(/^\s+at .*:\d+/m)
    await expect(readFile(join(out, 'numbers.json'))).rejects.toThrow('ENOENT')
    await rm(other, { recursive: true })
  })
})

test('an element that fails lets no site be built: its page is named, the stack is in a file', async () => {
  const other = await copyOf(small)
  const bad = '\n\nexport const Bad = (props) => props.wire.size\n\n<Bad />\n'
  await writeFile(join(other, pump), sound + bad)
  const out = `${other}-dist`
  const { code, out: lines, err } = await command('build', ['--content', other, '--out', out])
  expect(code).toBe(1)
  expect(err).toMatch(/^`(?:\/kit)?\/notes\/pump-circuit\/` cannot be made\n$/)
  expect(lines.trim().split('\n').at(-1)).toMatch(
    /`Bad` \(more of it in .*fault\.txt\): nothing was built, and the old site stands/,
  )
  expect(lines).not.toMatch(/^\s+at .*:\d+/m)
  await rm(other, { recursive: true })
})

test('the list of what can be written is there and linked, with its pictures', async () => {
  const { status, html } = await server.get('/writing/')
  expect(status).toBe(200)
  expect(html.includes('href="/kit/writing/">Writing</a>')).toBe(true)
  expect(html.includes('id="Element-Reading"')).toBe(true)
  const picture = /src="\/kit(\/photos\/[^"]+)"/.exec(html)?.[1] ?? ''
  expect((await server.get(picture)).status).toBe(200)
})

test('an older name of a note leads on, and so does one that it is given while writing', async () => {
  const { status, html } = await server.get('/notes/old-loop/')
  expect(status).toBe(200)
  expect(html).toContain('url=/kit/notes/loop/')
  expect((await server.get('/notes/older-pump/wall-sheet/?x')).status).toBe(404)
  await writeFile(file(pump), sound.replace('status:', 'was: [older-pump]\nstatus:'))
  const sheet = await server.until('/notes/older-pump/wall-sheet/?x', (_, code) => code === 200)
  expect(sheet.html).toContain('url=/kit/notes/pump-circuit/wall-sheet/')
  await mended()
})

test('a change in one note shows in the note that rests on it', async () => {
  const loop = await readFile(file('notes/loop.mdx'), 'utf8')
  const drop = (html: string): string =>
    /data-number="pump-circuit\/pumpFuse\.drop"[^>]*>([^<]*)/.exec(html)?.[1] ?? ''
  const imported = sound
    .replace('running={pumpDraw}', 'running={draw}')
    .replace('import { hillLoss }', 'import { hillLoss, draw }')
  await writeFile(
    file('notes/loop.mdx'),
    `${loop}\n\nIt drew <Reading id="draw" value="1.5 A" with="clampMeter" />.\n`,
  )
  await writeFile(file(pump), imported)
  const one = drop(
    (await server.until(page, (html) => drop(html) !== '' && told(html).length === 0)).html,
  )
  await writeFile(
    file('notes/loop.mdx'),
    `${loop}\n\nIt drew <Reading id="draw" value="3.0 A" with="clampMeter" />.\n`,
  )
  const two = drop(
    (await server.until(page, (html) => drop(html) !== one && drop(html) !== '')).html,
  )
  expect(Number.parseFloat(two) / Number.parseFloat(one)).toBeCloseTo(2, 1)
  await writeFile(file('notes/loop.mdx'), loop)
  await mended()
})

const edits: readonly (readonly [name: string, edit: (text: string) => string | Buffer])[] = [
  ['a brace that is open', (text) => `${text}\n\nx {oops y\n`],
  ['a tag that is open', (text) => `${text}\n\n<Calc id="zz" use="motor-circuit"\n`],
  [
    'a name of nothing',
    (text) => `${text}\n\nx {nosuch} y\n\n## {nosuch}\n\n| {nosuch} |\n|--|\n| {nosuch} |\n`,
  ],
  ['an element of nothing', (text) => `${text}\n\n<Nosuch a="b" />\n`],
  [
    'an import of nothing',
    (text) =>
      text.replace(
        "import { hillLoss } from './loop.mdx'",
        "import { hillLoss } from './gone.mdx'\nimport B from './gone.js'",
      ),
  ],
  ['a calculator of nothing', (text) => text.replace('use="motor-circuit"', 'use="nonesuch"')],
  [
    'a picture of nothing',
    (text) =>
      `${text}\n\n![x](./gone.jpg)\n\n<Photo>\n\n![x](./gone.jpg)\n\n- 40 % 900 %: no\n\n</Photo>\n`,
  ],
  ['a photo without a picture', (text) => `${text}\n\n<Photo>\n\nhi\n\n</Photo>\n`],
  ['a part without words', (text) => `${text}\n\n<Part id="x" />\n`],
  ['an export of nothing', (text) => `${text}\n\nexport const a = nosuch.x\n\n{a}\n`],
  ['a circle', (text) => `${text}\n\n<Show id="aa" value={bb} /> <Show id="bb" value={aa} />\n`],
  ['everything twice', (text) => text + text.slice(text.indexOf('---\n', 4) + 4)],
  [
    'a table of nothing',
    (text) => `${text}\n\n<Reading with="x">\n\n| nam | val |\n|--|--|\n| a | b |\n\n</Reading>\n`,
  ],
  ['a head that breaks off', (text) => text.replace('---\n', '---\nfoo: [\n')],
  ['no head', (text) => text.replace(/^---[^]*?---\n/, '')],
  ['no such phase', (text) => text.replace(/phase: .*/, 'phase: nowhere')],
  ['nothing at all', () => ''],
  ['another encoding', (text) => Buffer.from(`${text}\nK\u00fchl\u00ff`, 'latin1')],
]

test.each(edits)('a bad edit ends nothing: %s', async (_name, edit) => {
  await writeFile(file(pump), edit(sound))
  const { status, html } = await server.until(page, marker)
  // A note whose head cannot be read has no page; what is wrong is told where it would be.
  expect([200, 404]).toContain(status)
  expect(/pump-circuit\.mdx:\d+:\d+/.test(html)).toBe(true)
  expect((await server.get('/')).status).toBe(200)
  expect((await server.get('/notes/loop/')).status).toBe(200)
  expect(server.runs()).toBe(true)
  expect(server.said()).not.toMatch(/^\s+at .*:\d+:\d+/m)
  await mended()
})

test('settings that cannot be read, and a note that is gone, end nothing', async () => {
  const settings = await readFile(file('site.yaml'), 'utf8')
  for (const text of ['a: [', '', 'title: x\n']) {
    await writeFile(file('site.yaml'), text)
    const { html } = await server.until('/', (seen) => seen.includes('site.yaml:'))
    expect(marker(html)).toBe(true)
    expect((await server.get(page)).status).toBe(200)
  }
  await writeFile(file('site.yaml'), settings)
  await rm(file(pump))
  expect((await server.until(page, (_, status) => status === 404)).status).toBe(404)
  expect((await server.get('/notes/loop/')).status).toBe(200)
  await mended()
})
