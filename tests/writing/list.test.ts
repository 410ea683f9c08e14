/**
 * The list of what can be written: everything of the kit is in it, by itself; its examples are worked;
 * `verify` holds the page to the letter; it is there on request, and then linked.
 */
import { readFile, writeFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { HtmlValidate } from 'html-validate'
import { calculators as registry } from '../../calculators/index.ts'
import { escape } from '../../src/card/html.ts'
import { usageText } from '../../src/card/usage.ts'
import { loadCalculators, loadLedger } from '../../src/ledger/load.ts'
import { elementAttributes, kitElements } from '../../src/ledger/read/kit.ts'
import { dimensions, names } from '../../src/quantity/dimensions.ts'
import { parseQuantity } from '../../src/quantity/index.ts'
import { verifySite } from '../../src/site/verify.ts'
import { exampleFolder, writingListHtml } from '../../src/writing/list.ts'
import { unitRows } from '../../src/writing/units.ts'
import { builtSite, copyOf, small, type Built } from '../build/site.ts'

let html: string
beforeAll(async () => {
  html = await writingListHtml('/kit/')
})

test('the examples are notes without fault', async () => {
  expect((await loadLedger(exampleFolder)).problems).toEqual([])
})

describe('elements', () => {
  const sectionOf = (name: string): string =>
    new RegExp(`<section id="Element-${name}">.*?</section>`, 's').exec(html)?.[0] ?? ''

  test.each(kitElements)(
    '<%s> has its purpose, what it takes, its source and a live example',
    (name) => {
      const section = sectionOf(name)
      const known: Readonly<Record<string, { needs: readonly string[]; may: readonly string[] }>> =
        elementAttributes
      for (const word of [...(known[name]?.needs ?? []), ...(known[name]?.may ?? [])])
        expect(section).toContain(`<code>${word}</code>`)
      expect(section).toMatch(/<\/h3><p>[A-Z]/)
      expect(section).toContain('<pre ')
      expect(section).toContain(`&lt;${name}`)
      const example = /<div class="example">(.*)<\/div>/s.exec(section)?.[1] ?? ''
      expect(example.replace(/<[^>]*>/g, '').trim()).not.toBe('')
      // Nothing of the markup is left in what readers see.
      expect(example).not.toContain(`&lt;${name}`)
    },
  )

  test('an example is worked, not written', () => {
    const section = sectionOf('Show')
    // 2.4 m are 7.874 ft; 2.4 m and 2.8 m are 5.2 m.
    expect(section).toMatch(/>7\.9\s<span class="unit">ft</)
    expect(section).toMatch(/>5\.2\s<span class="unit">m</)
  })
})

test('calculators: each by name, with its purpose and a <Calc> to copy', async () => {
  const all = await loadCalculators(Object.keys(registry))
  expect(all.size).toBeGreaterThan(30)
  for (const calculator of all.values()) {
    expect(html).toContain(
      `href="/kit/calculators/${calculator.id}/">${escape(calculator.title)}</a>`,
    )
    expect(html).toContain(escape(usageText(calculator)))
  }
})

describe('units', () => {
  test('every kind of quantity is there, and what it lists can be typed for it', async () => {
    const rows = unitRows([...(await loadCalculators(Object.keys(registry))).values()])
    expect(rows.map(({ of }) => of)).toEqual(names.filter((of) => of !== 'number'))
    for (const { of, units, also } of rows) {
      expect(units.length, of).toBeGreaterThan(0)
      for (const unit of dimensions[of].units) expect(units, of).toContain(unit)
      for (const unit of of === 'money' ? [] : [...units, ...also]) {
        const number = unit === 'AWG' ? '18' : of === 'temperature' ? '400' : '1'
        expect(parseQuantity(`${number} ${unit}`, of), `${of}: ${unit}`).toMatchObject({ ok: true })
      }
    }
  })

  test('what is said of a typed number is what becomes of it', () => {
    expect(/<code>½ in<\/code><\/th><td[^>]*>read as 0\.5\D*in</.test(html)).toBe(true)
    expect(/<code>1,5 A<\/code><\/th><td[^>]*><code>1,5<\/code> has a comma/.test(html)).toBe(true)
  })
})

test('is HTML as it should be, with ids that stand once', async () => {
  const page = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>x</title></head><body><main>${html}</main></body></html>`
  const report = await new HtmlValidate({
    extends: ['html-validate:standard'],
    rules: {
      'long-title': 'off',
      'no-inline-style': 'error',
      'attribute-boolean-style': 'off',
      'void-style': 'off',
      'no-raw-characters': 'off',
      'prefer-native-element': 'off',
      'no-trailing-whitespace': 'off',
      'svg-focusable': 'off',
      'text-content': 'off',
    },
  }).validateString(page)
  const said = report.results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message }) => `${ruleId}: ${message}`),
  )
  expect([...new Set(said)]).toEqual([])
})

describe('in a site', () => {
  let content: string
  let site: Built
  beforeAll(async () => {
    content = await copyOf(small)
    const settings = join(content, 'site.yaml')
    await writeFile(settings, `${await readFile(settings, 'utf8')}\nwriting: true\n`)
    site = await builtSite(content)
  })
  afterAll(async () => {
    await site.remove()
    await rm(content, { recursive: true, force: true })
  })

  test('it is there on request, linked from every page, with its pictures', () => {
    expect(site.pages.get('index.html')).toContain('href="./writing/">Writing</a>')
    const page = site.pages.get('writing/index.html') ?? ''
    expect(page).toContain('id="Element-Reading"')
    const pictures = [...page.matchAll(/\.\.\/(photos\/[^" ]+)/g)].map(([, name = '']) => name)
    expect(pictures.length).toBeGreaterThan(0)
    for (const name of pictures) expect([...site.files.keys()]).toContain(name)
  })

  test('none of its numbers is among the site’s, nor found by the search', () => {
    expect(site.numbersJson).not.toContain('examples/')
    expect(site.files.get('search/names.json')?.toString()).not.toContain('examples/')
  })

  test('`verify` holds it: another digit in an example, in a unit, in what is to be copied', async () => {
    expect(await verifySite(site.folder)).toEqual([])
    const path = join(site.folder, 'writing/index.html')
    const page = await readFile(path, 'utf8')
    for (const [from, to] of [
      [
        'value="1.5" data-number="examples/pumpDraw"',
        'value="1.6" data-number="examples/pumpDraw"',
      ],
      ['<code>psi gauge</code>', '<code>psi gage</code>'],
      ['use=&quot;motor-circuit&quot;', 'use=&quot;motor-circus&quot;'],
    ] as const) {
      // What stands in text may be written with other quotes.
      const found = page.includes(from)
        ? [from, to]
        : [from.replaceAll('&quot;', '"'), to.replaceAll('&quot;', '"')]
      expect(page).toContain(found[0])
      await writeFile(path, page.replace(found[0] ?? '', found[1] ?? ''))
      expect((await verifySite(site.folder)).map(({ file, text }) => `${file} ${text}`)).toContain(
        'writing/index.html the list of what can be written is not what working it again gives',
      )
    }
    await writeFile(path, page)
  })
})

test('without being asked for it is neither there nor linked', async () => {
  const site = await builtSite(small)
  try {
    expect(site.pages.has('writing/index.html')).toBe(false)
    expect(site.pages.get('index.html')).not.toContain('writing/')
    expect([...site.files.keys()].filter((name) => name.startsWith('photos/'))).toEqual([])
  } finally {
    await site.remove()
  }
})
