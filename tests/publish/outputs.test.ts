/**
 * What a site has besides its pages: the feed (RFC 4287), the list of pages (sitemaps.org), canonical
 * addresses, the pictures of notes, the names that the search finds; and that `verify` holds them.
 */
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { parseFragment } from 'parse5'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { feedText } from '../../src/site/feed/atom.ts'
import { flipsOf } from '../../src/site/feed/flips.ts'
import { sitemapFiles } from '../../src/site/sitemap.ts'
import { verifySite } from '../../src/site/verify.ts'
import { attributeOf, elementsOf, textIn } from '../build/links.ts'
import { builtSite, copyOf, root, small, temporaryFolder, type Built } from '../build/site.ts'

const content = join(root, 'tests/build/fixtures/published')
const home = 'https://barge.example/a/b/'

let site: Built
beforeAll(async () => {
  site = await builtSite(content)
})
afterAll(() => site.remove())

const text = (name: string): string => site.files.get(name)?.toString('utf8') ?? ''

const unescape = (xml: string): string =>
  xml
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')

/** Well-formed, which is all that a feed's reader asks before it looks for elements. */
function assertWellFormed(xml: string): void {
  const open: string[] = []
  for (const [, close, name = '', alone] of xml.matchAll(/<(\/?)([a-z:]+)[^<>]*?(\/?)>/g))
    if (close === '/') expect(open.pop()).toBe(name)
    else if (alone !== '/') open.push(name)
  expect(open).toEqual([])
  expect(xml.replace(/&(?:amp|lt|gt|quot|#\d+);/g, '')).not.toContain('&')
}

interface Entry {
  readonly id: string
  readonly title: string
  readonly link: string
  readonly updated: string
  readonly html: string
}

const entries = (): Entry[] =>
  [...text('feed.xml').matchAll(/<entry>([^]*?)<\/entry>/g)].map(([, entry = '']) => {
    const of = (name: string): string =>
      unescape(new RegExp(`<${name}[^>]*>([^]*?)</${name}>`).exec(entry)?.[1] ?? '')
    return {
      id: of('id'),
      title: of('title'),
      link: /<link href="([^"]*)"/.exec(entry)?.[1] ?? '',
      updated: of('updated'),
      html: of('content'),
    }
  })

describe('the feed', () => {
  it('is well-formed Atom with whole addresses, stable ids and days for instants', () => {
    const feed = text('feed.xml')
    assertWellFormed(feed)
    expect(feed).toContain('<feed xmlns="http://www.w3.org/2005/Atom"')
    expect(feed).toContain(`<link rel="self" type="application/atom+xml" href="${home}feed.xml"/>`)
    expect(entries().map(({ id, link, updated }) => [id, link, updated])).toEqual([
      [
        'tag:barge.example,2026-02-01:notes/bilge-pump',
        `${home}notes/bilge-pump/`,
        // A later number moved it.
        '2026-03-14T00:00:00Z',
      ],
      [
        'tag:barge.example,2026-03-14:notes/bilge-pump/pumpFuse',
        `${home}notes/bilge-pump/#pumpFuse`,
        '2026-03-14T00:00:00Z',
      ],
      [
        'tag:barge.example,2026-03-14:notes/clamp-meter',
        `${home}notes/clamp-meter/`,
        '2026-03-14T00:00:00Z',
      ],
    ])
  })

  it('has the whole text, results as plain text, the warnings, and nothing that a reader cannot show', () => {
    const [note] = entries()
    const html = note?.html ?? ''
    expect(html).toContain('A 12&nbsp;V battery')
    expect(html).toContain('WARNING Wiring fire. The fuse protects the wire, not the load.')
    expect(html).toMatch(
      /<pre>Fuse and wire of a small motor\n[^]*WHAT COMES OUT\n- Fuse: 7\.5&nbsp;A/,
    )
    expect(html).toContain(
      'A <a href="https://barge.example/a/b/notes/bilge-pump/#pumpFuse">7.5&nbsp;A</a> goes in',
    )
    const elements = elementsOf(html)
    for (const { tagName, attrs } of elements) {
      expect(tagName).not.toMatch(/script|style|svg|button|form|^work-|input/)
      for (const { name, value } of attrs) {
        expect([
          'href',
          'src',
          'alt',
          'width',
          'height',
          'datetime',
          'colspan',
          'rowspan',
        ]).toContain(name)
        if (name === 'href' || name === 'src')
          expect(value).toMatch(/^https:\/\/barge\.example\/a\/b\//)
      }
    }
    expect(parseFragment(html).childNodes.length).toBeGreaterThan(3)
  })

  it('says on which day a verdict became another, and why, with what holds today', () => {
    const flip = entries().find(({ title }) => title.startsWith('Verdict changed'))
    expect(flip?.title).toBe(
      'Verdict changed: Fuse and wire of a small motor, was pass, provisional, now watch',
    )
    const said = elementsOf(flip?.html ?? '')
      .map((one) => textIn(one))
      .join(' ')
    expect(said).toContain('From 14 March 2026 on the verdict')
    expect(said).toContain('measured: 4.0 A in place of 1.5 A')
    expect(said).toContain('Verdict: watch')
    expect(said).toContain('This is arithmetic. Local codes and licensed practice decide')
  })

  it('needs the address of the site', async () => {
    const ledger = await loadLedger(small)
    expect(
      await feedText(ledger.published, {
        base: '/',
        calculators: ledger.calculators,
        page: () => '',
      }),
    ).toBeUndefined()
  })
})

describe('a verdict', () => {
  const flipsWhere = async (change: (note: string) => string) => {
    const copy = await copyOf(content)
    const file = join(copy, 'notes/clamp-meter.mdx')
    await writeFile(file, change(await readFile(file, 'utf8')))
    const { published, calculators } = await loadLedger(copy)
    await rm(copy, { recursive: true })
    return flipsOf(published, calculators).map(({ date, before, after, because }) => [
      date,
      before,
      after,
      ...because.map(({ id }) => id),
    ])
  }

  it('that stays is no entry', async () => {
    expect(await flipsWhere((note) => note.replace('4.0 A', '1.6 A'))).toEqual([])
    expect(await flipsWhere((note) => note.replace(' replaces={draw}', ''))).toEqual([])
  })

  it('counts from the note’s own day: what it was before nobody read', async () => {
    expect(await flipsWhere((note) => note.replace('2026-03-14', '2026-01-14'))).toEqual([])
  })

  it('that goes to and fro has an entry for each day', async () => {
    const more =
      '\nAgain <Reading id="again" value="1.5 A" with="clampMeter" on="2026-04-01" replaces={draw} />.\n'
    expect(await flipsWhere((note) => note + more)).toEqual([
      ['2026-04-01', 'watch', 'provisional', 'clamp-meter/again'],
      ['2026-03-14', 'provisional', 'watch', 'clamp-meter/measured'],
    ])
  })
})

describe('the list of pages', () => {
  it('names every page but what is not found, whole, with the days of notes', () => {
    const map = text('sitemap.xml')
    assertWellFormed(map)
    const places = [...map.matchAll(/<loc>([^<]*)<\/loc>/g)].map(([, loc = '']) => loc)
    const due = [...site.pages.keys()]
      .filter((name) => name !== '404.html')
      .map((name) => `${home}${name.replace(/index\.html$/, '')}`)
    expect(places.toSorted()).toEqual(due.toSorted())
    expect(map).toContain(`<loc>${home}notes/clamp-meter/</loc><lastmod>2026-03-14</lastmod>`)
    expect(text('robots.txt')).toBe(`User-agent: *\nAllow: /\n\nSitemap: ${home}sitemap.xml\n`)
  })

  it('is cut where the protocol wants it', () => {
    const pages = ['b/index.html', 'index.html', 'a/index.html'].map((file) => ({ file }))
    const files = sitemapFiles(pages, 'https://x.example', '/', 2)
    expect([...files.keys()].sort()).toEqual([
      'robots.txt',
      'sitemap-1.xml',
      'sitemap-2.xml',
      'sitemap.xml',
    ])
    expect(files.get('sitemap.xml')).toContain(
      '<sitemap><loc>https://x.example/sitemap-2.xml</loc></sitemap>',
    )
    expect(files.get('sitemap-2.xml')).toContain('<loc>https://x.example/</loc>')
  })
})

describe('the head of a page', () => {
  it('says its own whole address, and which picture stands for a note', () => {
    for (const [name, html] of site.pages) {
      const head = elementsOf(html)
      const canonical = head.filter((one) => attributeOf(one, 'rel') === 'canonical')
      const due = name === '404.html' ? [] : [`${home}${name.replace(/index\.html$/, '')}`]
      expect([name, canonical.map((one) => attributeOf(one, 'href'))]).toEqual([name, due])
      const picture = head.find((one) => attributeOf(one, 'property') === 'og:image')
      const note = /^notes\/([^/]+)\/index\.html$/.exec(name)?.[1]
      expect(picture && attributeOf(picture, 'content')).toBe(
        note === undefined ? undefined : `${home}notes/${note}/social.png`,
      )
    }
  })
})

it('the search knows what builders call their numbers, blocks and parts', () => {
  const read = JSON.parse(text('search/names.json')) as { names: string[][] }
  const named = read.names.map((entry) => entry.at(-1))
  expect(named).toEqual(
    expect.arrayContaining(['draw', 'measured', 'pumpFuse', 'pumpFuse.fuse', 'impeller']),
  )
})

describe('the picture of a note', () => {
  it('is of the usual size, tells nothing but the picture, and is another where the number is', async () => {
    const names = ['bilge-pump', 'clamp-meter'].map((slug) => `notes/${slug}/social.png`)
    const signs = new Set<string>()
    for (const name of names) {
      const bytes = site.files.get(name) ?? Buffer.of()
      const { width, height, format, exif } = await sharp(bytes).metadata()
      expect([name, width, height, format, exif]).toEqual([name, 1200, 630, 'png', undefined])
      expect(bytes.length).toBeLessThan(60_000)
      signs.add(createHash('sha256').update(bytes).digest('hex'))
    }
    expect(signs.size).toBe(2)
  })

  it('is the same where the machine has no font, and nothing was drawn before', async () => {
    const folder = await temporaryFolder()
    const program = `
      import { loadLedger } from ${JSON.stringify(join(root, 'src/ledger/load.ts'))}
      import { drawPictures } from ${JSON.stringify(join(root, 'src/site/social/pictures.ts'))}
      const ledger = await loadLedger(${JSON.stringify(content)})
      await drawPictures(ledger, ${JSON.stringify(folder)}, ${JSON.stringify(join(folder, 'cache'))})
    `
    const none = join(folder, 'none')
    execFileSync(process.execPath, ['--input-type=module', '-e', program], {
      env: { FONTCONFIG_FILE: none, FONTCONFIG_PATH: none, HOME: none, TZ: 'Asia/Tokyo' },
    })
    const name = 'notes/bilge-pump/social.png'
    const bytes = await readFile(join(folder, name))
    expect(bytes.equals(site.files.get(name) ?? Buffer.of())).toBe(true)
    // Words, not empty boxes: what is left of them when the ink is counted, line by line.
    const { data, info } = await sharp(bytes).raw().toBuffer({ resolveWithObject: true })
    const ink = (from: number, to: number): number =>
      data
        .subarray(from * info.width * info.channels, to * info.width * info.channels)
        .filter((value) => value < 100).length
    expect(ink(100, 170)).toBeGreaterThan(5000)
    expect(ink(400, 490)).toBeGreaterThan(5000)
    await rm(folder, { recursive: true })
  })
})

describe('verify', () => {
  it.each([
    ['feed.xml', '- Fuse: 7.5', '- Fuse: 9.5'],
    ['search/names.json', '0.65', '0.45'],
    ['parts/parts.csv', 'Rubber impeller', 'Brass impeller'],
    ['numbers.csv', 'measured', 'guessed'],
  ])('notices a figure of %s that is another', async (file, from, to) => {
    const path = join(site.folder, file)
    const before = await readFile(path, 'utf8')
    expect(before).toContain(from)
    expect(await verifySite(site.folder)).toEqual([])
    await writeFile(path, before.replace(from, to))
    const found = await verifySite(site.folder)
    await writeFile(path, before)
    expect(found.map((one) => one.file)).toEqual([file])
    await rm(path)
    expect(await verifySite(site.folder)).toContainEqual({
      file,
      line: 1,
      text: 'this file of the site is not there',
    })
    await writeFile(path, before)
  })
})

it('without an address there are none of them, which is said in a line', async () => {
  const bare = await builtSite(small)
  expect(bare.said.at(-1)).toBe(
    'no feed, no list of pages and no pictures for links: they need the address of the site (`address` in site.yaml, or SITE_URL)',
  )
  const names = [...bare.files.keys()]
  expect(names.filter((name) => /feed|sitemap|robots|social/.test(name))).toEqual([])
  expect(names).toContain('search/names.json')
  // What stands at a note's former address names its new one.
  const pages = [...bare.pages.values()].filter((html) => !html.includes('http-equiv="refresh"'))
  for (const html of pages) expect(html).not.toMatch(/property="og:|rel="canonical"|feed\.xml/)
  await bare.remove()
})
