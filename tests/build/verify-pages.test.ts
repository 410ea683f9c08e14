/**
 * What `verify` finds on the pages round the notes: counts, editions, outside cases, standard tables,
 * lists of uses, and the numbers that a page hands to its readers. One digit altered at a time.
 */
import { rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { verifySite, verifyTexts } from '../../src/site/verify.ts'
import { builtSite, copyOf, small, type Built } from './site.ts'

let site: Built
const pages = new Map<string, string>()
beforeAll(async () => {
  site = await builtSite(small)
  for (const [name, html] of site.pages) pages.set(name, html)
  for (const [name, bytes] of site.files)
    if (/^notes\/.*\.json$/.test(name)) pages.set(name, bytes.toString('utf8'))
})
afterAll(() => site.remove())

/** The first stretch that `pattern` finds, from its beginning to its end. */
function stretchOf(file: string, pattern: RegExp): readonly [from: number, to: number] {
  const found = pattern.exec(pages.get(file) ?? '')
  if (found === null) throw new Error(`${file} has no ${pattern.source}`)
  return [found.index, found.index + found[0].length]
}

/** Every digit of the text of a stretch (tags and attributes left out), at most `most` of them. */
function digitsIn(file: string, [from, to]: readonly [number, number], most: number): number[] {
  const text = pages.get(file) ?? ''
  const shown = text.slice(from, to).replace(/<[^>]*>/g, (tag) => ' '.repeat(tag.length))
  const all = [...shown.matchAll(/\d/g)].map(({ index }) => from + index)
  const every = Math.ceil(all.length / most)
  return all.filter((_, index) => index % every === 0)
}

/** A file with what it is held against: the first page, and the page of its note. */
function few(file: string, altered: string): ReadonlyMap<string, string> {
  const [, note = ''] = /^notes\/([^/]+)\//.exec(file) ?? []
  const needed = new Set(['index.html', `notes/${note}/index.html`])
  return new Map([...[...pages].filter(([name]) => needed.has(name)), [file, altered]])
}

describe('verify', () => {
  it.each([
    ['counts of the first page', 'index.html', /<p class="data">.*?<\/p>/],
    ['tallies of the first page', 'index.html', /<div class="tally">.*?<\/div>/],
    ['guesses to settle', 'index.html', /<ul class="guess-list">.*?<\/ul>/],
    ['a title block', 'notes/loop/index.html', /<dl class="title-block">.*?<\/dl>/],
    ['the strip of a sheet', 'notes/loop/index.html', /edition [0-9a-f]+\./],
    [
      'outside cases',
      'calculators/pump-and-loop/index.html',
      /<div class="outside-cases">.*<\/div>/,
    ],
    ['the list of calculators', 'calculators/index.html', /<p class="tally">.*?<\/p>/],
    ['the count of numbers', 'numbers/index.html', /<p>\d+ numbers? .*?<\/p>/],
    ['the count of parts', 'parts/index.html', /<p>\d+ parts?, .*?<\/p>/],
    ['the list of parts', 'parts/index.html', /<table class="ledger parts">.*?<\/table>/],
    ['what the parts cost', 'parts/index.html', /<table class="ledger costs">.*<\/table>.*?<\/p>/],
    ['the count of what is open', 'open/index.html', /<p>\d+ tasks? .*?<\/p>/],
    ['the table of tasks', 'open/index.html', /<table class="ledger tasks">.*?<\/table>/],
    [
      'the table of sources',
      'sources/index.html',
      /<table class="ledger sources-read">.*?<\/table>/,
    ],
    ['a standard table', 'tables/boat-ampacity/index.html', /<tbody>.*?<\/tbody>/],
    ['the head of a block’s page', 'notes/loop/pump/index.html', /<p class="over">.*?<\/h1>/],
    [
      'what a block rests on',
      'notes/loop/pump/index.html',
      /<table class="ledger origins">.*?<\/table>/,
    ],
    ['the card on its page', 'notes/loop/pump/index.html', /<article class="card.*?<\/article>/],
    ['what a block’s page hands out', 'notes/loop/pump/figures.json', /"roots":.*/],
    ['what a note’s page hands out', 'notes/loop/figures.json', /"roots":.*/],
    [
      'what a calculator’s form starts from',
      'calculators/pump-and-loop/index.html',
      /(?<=id="Calculator-figures">).*?(?=<\/script>)/,
    ],
    ['the numbers handed to a page', 'notes/loop/numbers.json', /"numbers": \[[^]*\]/],
  ])('finds a digit altered in %s', async (_, file, pattern) => {
    const text = pages.get(file) ?? ''
    const places = digitsIn(file, stretchOf(file, pattern), 12)
    expect(places.length).toBeGreaterThan(0)
    const whole = await verifyTexts(site.numbersJson, few(file, text))
    expect(whole.filter((one) => one.file === file)).toEqual([])
    const lost: string[] = []
    for (const at of places) {
      const digit = String((Number(text[at]) + 1) % 10)
      const altered = text.slice(0, at) + digit + text.slice(at + 1)
      const found = await verifyTexts(site.numbersJson, few(file, altered))
      if (!found.some((one) => one.file === file)) lost.push(text.slice(at - 40, at + 20))
    }
    expect(lost).toEqual([])
  })

  it('finds that the numbers handed to a page are gone', async () => {
    const folder = await copyOf(site.folder)
    await rm(join(folder, 'notes/loop/numbers.json'))
    expect(await verifySite(folder)).toEqual([
      {
        file: 'notes/loop/numbers.json',
        line: 1,
        text: 'the numbers of this page are not there',
      },
    ])
    await rm(folder, { recursive: true })
  })

  it('finds that an older name leads elsewhere, or nowhere', async () => {
    const file = 'notes/old-loop/index.html'
    const text = 'the page of an older name does not lead to the new one'
    const html = pages.get(file) ?? ''
    expect(html).toContain('../../notes/loop/')
    const altered = html.replaceAll('notes/loop/', 'notes/pump-circuit/')
    const gone = new Map([...pages].filter(([name]) => name !== file))
    for (const all of [new Map([...pages, [file, altered]]), gone])
      expect(await verifyTexts(site.numbersJson, all)).toEqual([{ file, line: 1, text }])
  })

  it('finds a link that leads nowhere, whoever wrote it', async () => {
    const folder = await copyOf(site.folder)
    const file = 'notes/loop/index.html'
    const html = pages.get(file) ?? ''
    const links = '<a href="../no-such-note/">x</a><a href="#no-such-place">y</a>'
    await writeFile(join(folder, file), html.replace('<h1>', `${links}<h1>`))
    const found = (await verifySite(folder)).filter((one) => one.file === file)
    expect(found.map(({ text }) => text)).toEqual([
      'a link to `../no-such-note/` leads nowhere',
      'a link to `#no-such-place`: there is no such place on that page',
    ])
    await rm(folder, { recursive: true })
  })

  it('finds nothing in the pages as they were built', async () => {
    expect(await verifyTexts(site.numbersJson, pages)).toEqual([])
  })
})

it('every page carries a content policy that lets nothing in from elsewhere', () => {
  for (const [name, html] of site.pages) {
    const policy =
      /<meta http-equiv="content-security-policy" content="([^"]*)"/.exec(html)?.[1] ?? ''
    expect([name, policy]).toEqual([name, expect.stringContaining("default-src 'none'")])
    expect([name, policy.match(/https?:|unsafe|\*/g)]).toEqual([name, null])
  }
})
