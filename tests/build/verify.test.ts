/**
 * What `verify` finds: one digit altered at a time, anywhere that a result is printed. The places are
 * drawn at random from the whole text of each kind of place, with a fixed seed.
 */
import type { DefaultTreeAdapterTypes } from 'parse5'
import { parse } from 'parse5'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { verifySite, verifyTexts } from '../../src/site/verify.ts'
import { attributeOf, hasClass, type Element } from './links.ts'
import { builtSite, small, type Built } from './site.ts'

let site: Built
beforeAll(async () => {
  site = await builtSite(small)
})
afterAll(() => site.remove())

/** A stretch of a file, from one offset to another. */
interface Stretch {
  readonly file: string
  readonly from: number
  readonly to: number
}

type Node = DefaultTreeAdapterTypes.Node
const isElement = (node: Node): node is Element => 'tagName' in node
const kinds = [
  'prose',
  'figures',
  'findings and working',
  'drawings',
  'stories',
  'table of all numbers',
  'values',
] as const
type PageKind = (typeof kinds)[number]

/** Which kind of place a text is in, by the elements round it. */
function kindOf(file: string, path: readonly Element[]): PageKind | undefined {
  const inside = (is: (element: Element) => boolean): boolean => path.some(is)
  if (inside((one) => attributeOf(one, 'data-card') !== undefined)) {
    if (inside(({ tagName }) => tagName === 'text' || tagName === 'figure' || tagName === 'svg'))
      return 'drawings'
    return inside((one) => hasClass(one, 'findings') || hasClass(one, 'working'))
      ? 'findings and working'
      : 'figures'
  }
  if (inside((one) => hasClass(one, 'stories'))) return 'stories'
  if (file === 'numbers/index.html' && inside((one) => attributeOf(one, 'data-label') === 'Value'))
    return 'table of all numbers'
  return inside(
    (one) =>
      hasClass(one, 'number-link') || hasClass(one, 'number-plain') || one.tagName === 'data',
  )
    ? 'prose'
    : undefined
}

function stretchesOf(pages: ReadonlyMap<string, string>): Map<PageKind, Stretch[]> {
  const found = new Map<PageKind, Stretch[]>(kinds.map((kind) => [kind, []]))
  for (const [file, html] of pages) {
    const walk = (node: Node, path: readonly Element[]): void => {
      if (isElement(node)) {
        const value = node.tagName === 'data' ? node.sourceCodeLocation?.attrs?.value : undefined
        if (value) found.get('values')?.push({ file, from: value.startOffset, to: value.endOffset })
      }
      const here = isElement(node) ? [...path, node] : path
      if (node.nodeName === '#text' && node.sourceCodeLocation) {
        const kind = kindOf(file, path)
        const { startOffset: from, endOffset: to } = node.sourceCodeLocation
        if (kind !== undefined) found.get(kind)?.push({ file, from, to })
      }
      if ('childNodes' in node) for (const child of node.childNodes) walk(child, here)
    }
    walk(parse(html, { sourceCodeLocationInfo: true }), [])
  }
  return found
}

/** The fields of `numbers.json` that hold results, as stretches of its text. */
function fieldsOf(text: string, name: RegExp): Stretch[] {
  const value = String.raw`(?:"(?:[^"\\]|\\.)*"|-?\d[\d.eE+-]*|\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}|\[[^[\]]*\])`
  return [...text.matchAll(new RegExp(`"(?:${name.source})":(${value})`, 'g'))].map((match) => {
    const to = match.index + match[0].length
    return { file: 'numbers.json', from: to - (match[1]?.length ?? 0), to }
  })
}

/** Numbers from 0 up to 1, the same each time (mulberry32). */
function randomFrom(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

interface Alteration {
  readonly file: string
  readonly at: number
  readonly digit: string
}

/** `many` alterations of a digit each, drawn from all digits of the stretches alike. */
function drawn(
  stretches: readonly Stretch[],
  textOf: (file: string) => string,
  many: number,
  seed: number,
): Alteration[] {
  const digits = stretches.flatMap(({ file, from, to }) =>
    [...textOf(file).slice(from, to).matchAll(/\d/g)].map(({ 0: digit, index }) => ({
      file,
      at: from + index,
      digit,
    })),
  )
  const random = randomFrom(seed)
  return Array.from({ length: digits.length === 0 ? 0 : many }, () => {
    const { file, at, digit } = digits[Math.floor(random() * digits.length)] ?? {
      file: '',
      at: 0,
      digit: '0',
    }
    return { file, at, digit: String((Number(digit) + 1 + Math.floor(random() * 9)) % 10) }
  })
}

const around = (text: string, at: number): string =>
  text.slice(Math.max(0, at - 60), at + 20).replace(/\s+/g, ' ')

/** What a page is held against besides `numbers.json`: what its note shows, and what that hands out. */
function pageWith(file: string, altered: string): ReadonlyMap<string, string> {
  const [, note = ''] = /^notes\/([^/]+)\//.exec(file) ?? []
  const needed = new Set([file, 'index.html', `notes/${note}/index.html`])
  return new Map([...[...site.pages].filter(([name]) => needed.has(name)), [file, altered]])
}

/** The alterations that `verify` does not find, each with its place. */
async function missed(
  alterations: readonly Alteration[],
  textOf: (file: string) => string,
): Promise<string[]> {
  const lost: string[] = []
  for (const { file, at, digit } of alterations) {
    const text = textOf(file)
    const altered = text.slice(0, at) + digit + text.slice(at + 1)
    const found =
      file === 'numbers.json'
        ? await verifyTexts(altered, site.pages)
        : (await verifyTexts(site.numbersJson, pageWith(file, altered))).filter(
            (one) => one.file === file,
          )
    if (found.length === 0) lost.push(`${file}: …${around(text, at)}… with ${digit}`)
  }
  return lost
}

const textOf = (file: string): string => site.files.get(file)?.toString('utf8') ?? ''

describe('verify', () => {
  it('finds nothing in a site as it was built', async () => {
    expect(await verifySite(site.folder)).toEqual([])
    // Nor in a page of it looked at with few others.
    for (const [file, html] of site.pages) {
      const found = await verifyTexts(site.numbersJson, pageWith(file, html))
      expect(found.filter((one) => one.file === file)).toEqual([])
    }
  })

  it.each(kinds.map((kind, seed) => [kind, seed + 1] as const))(
    'finds any digit altered in a page: %s',
    async (kind, seed) => {
      const stretches = stretchesOf(site.pages).get(kind) ?? []
      const alterations = drawn(stretches, textOf, 55, seed)
      expect(alterations).toHaveLength(55)
      expect(await missed(alterations, textOf)).toEqual([])
    },
  )

  it('finds any digit altered in the figures for a reader’s browser', async () => {
    const stretches = [...site.files.keys()]
      .filter((file) => file.endsWith('/figures.json'))
      .map((file): Stretch => ({ file, from: 0, to: textOf(file).length }))
    const alterations = drawn(stretches, textOf, 55, kinds.length + 1)
    expect(new Set(alterations.map(({ file }) => file)).size).toBeGreaterThan(3)
    expect(await missed(alterations, textOf)).toEqual([])
  })

  it.each([
    ['values', /value|now/, 40],
    ['± and figures', /plusMinus|figures/, 10],
    ['what is shown', /shown|shownOther|plusMinusShown/, 25],
    ['inputs', /inputs|typed/, 15],
    ['results', /outputs/, 15],
    ['findings', /findings|text|threshold/, 15],
    ['working', /working/, 15],
  ] as const)('finds any digit altered in numbers.json: %s', async (_, name, many) => {
    const alterations = drawn(fieldsOf(site.numbersJson, name), textOf, many, many)
    expect(alterations).toHaveLength(many)
    expect(await missed(alterations, textOf)).toEqual([])
  })

  it.each([
    ['a verdict', 'notes/pump-circuit/index.html', 'STOP, accepted by the builder', 'pass'],
    [
      'a verdict in a list',
      'calculators/motor-circuit/index.html',
      'STOP, accepted by the builder',
      'pass',
    ],
    [
      'a finding',
      'notes/pump-circuit/index.html',
      '<strong class="verdict verdict-stop">stop</strong>',
      '<strong class="verdict verdict-pass">pass</strong>',
    ],
    [
      'a unit',
      'notes/loop/index.html',
      '<span class="unit">m</span>',
      '<span class="unit">mm</span>',
    ],
    ['a kind', 'notes/loop/index.html', 'aria-label="from a sheet"', 'aria-label="measured"'],
    [
      'a source',
      'notes/loop/index.html',
      'Controller sheet (invented), rev B, p. 7',
      'Controller sheet (invented), rev C, p. 7',
    ],
    [
      'a number of another name',
      'notes/loop/index.html',
      'data-number="loop/supply"',
      'data-number="loop/nothing"',
    ],
    [
      'a card taken out',
      'notes/pump-circuit/index.html',
      'data-card="pump-circuit/fanFuse"',
      'data-card="pump-circuit/other"',
    ],
    [
      'a hazard taken out',
      'notes/pump-circuit/index.html',
      'id="Hazard-wiring-fire"',
      'id="other"',
    ],
    [
      'a hazard’s words',
      'notes/pump-circuit/index.html',
      'A wire behind too large a fuse burns',
      'A wire behind too large a fuse glows',
    ],
  ])('finds %s altered', async (_, file, from, to) => {
    const html = textOf(file)
    expect(html).toContain(from)
    const found = await verifyTexts(
      site.numbersJson,
      new Map([...site.pages, [file, html.replace(from, to)]]),
    )
    expect(found.map((one) => one.file)).toContain(file)
  })

  it('finds a page of a note that is gone, and a numbers.json that is none', async () => {
    const pages = new Map(site.pages)
    pages.delete('notes/loop/index.html')
    expect(await verifyTexts(site.numbersJson, pages)).toEqual([
      { file: 'notes/loop/index.html', line: 1, text: 'the note `loop` has no page' },
    ])
    expect(await verifyTexts('{}', site.pages)).toEqual([
      { file: 'numbers.json', line: 1, text: 'numbers.json is not what the kit writes (format 1)' },
    ])
  })

  it('finds a number or a block taken out of numbers.json', async () => {
    for (const id of ['loop/supply', 'pump-circuit/pumpFuse.fuse', 'pump-circuit/fanFuse']) {
      const lines = site.numbersJson.split('\n').filter((line) => !line.startsWith(`{"id":"${id}"`))
      expect((await verifyTexts(lines.join('\n'), site.pages)).length).toBeGreaterThan(0)
    }
  })
})
