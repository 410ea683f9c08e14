/** A whole site, built as the command builds it: its pages, its addresses, its markup, its hazards. */
import { HtmlValidate, StaticConfigLoader } from 'html-validate'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { calculators } from '../../calculators/index.ts'
import { tables } from '../../calculators/tables/index.ts'
import { hazards, type Hazard } from '../../calculators/hazards.ts'
import type { PublishedBlock } from '../../src/ledger/published.ts'
import { redirectsOf, sheetName } from '../../src/card/index.ts'
import { readRecord } from '../../src/ledger/record.ts'
import { addressesOf, attributeOf, brokenAddresses, elementsOf, hasClass, textIn } from './links.ts'
import { builtSite, demo, root, small, workshop, type Built } from './site.ts'

const metric = `${root}/tests/build/fixtures/metric-van`
const tractor = `${root}/tests/build/fixtures/island-tractor`

const plain = (text: string): string => text.replace(/[\s\u00a0\u202f]+/g, ' ').trim()

function hazard(id: string): Hazard {
  const found = Object.entries(hazards).find(([key]) => key === id)?.[1]
  if (found === undefined) throw new Error(`no hazard ${id}`)
  return found
}

describe.each([
  ['the demo', demo, '/'],
  ['a site below a sub-path', small, '/kit/'],
  ['a site in one unit system', metric, '/vans/metric/'],
  ['a site of metric notes that rest on one another', tractor, '/'],
  ['a site with a page of every kind', workshop, '/van/'],
])('%s', (_, content, base) => {
  let site: Built
  beforeAll(async () => {
    site = await builtSite(content)
  })
  afterAll(() => site.remove())
  const published = () => {
    const read = readRecord(site.numbersJson)
    if (read === undefined) throw new Error('numbers.json cannot be read')
    return read
  }
  const everyPage = (check: (name: string, html: string) => readonly string[]): string[] =>
    [...site.pages].flatMap(([name, html]) => check(name, html).map((wrong) => `${name}: ${wrong}`))

  it('has a page for the start, every note, wall sheet, block, calculator and table, all numbers, and what is not found', () => {
    expect([...site.pages.keys()].sort()).toEqual(
      [
        '404.html',
        'index.html',
        'numbers/index.html',
        'open/index.html',
        'parts/index.html',
        'sources/index.html',
        'calculators/index.html',
        ...published().notes.map(({ slug }) => `notes/${slug}/index.html`),
        ...published().notes.map(({ slug }) => `notes/${slug}/${sheetName}/index.html`),
        ...published().blocks.map(({ note, name }) => `notes/${note}/${name}/index.html`),
        ...redirectsOf(published(), base).keys(),
        ...Object.keys(calculators).map((id) => `calculators/${id}/index.html`),
        'tables/index.html',
        ...Object.keys(tables).map((id) => `tables/${id}/index.html`),
      ].sort(),
    )
  })

  it('has no address that leads nowhere', () => {
    expect(brokenAddresses(site.pages, new Set(site.files.keys()), base)).toEqual([])
  })

  it('asks no other host for anything', () => {
    expect(
      everyPage((__, html) =>
        elementsOf(html)
          .flatMap(addressesOf)
          .filter(({ to, fetched }) => fetched && /^(?:[a-z]+:)?\/\//i.test(to))
          .map(({ to }) => to),
      ),
    ).toEqual([])
    const styles = [...site.files].filter(([name]) => name.endsWith('.css'))
    expect(styles.length).toBeGreaterThan(0)
    for (const [name, bytes] of styles)
      expect([
        name,
        bytes.toString('utf8').match(/@import|url\(\s*['"]?(?!data:)[a-z]*:?\/\//gi),
      ]).toEqual([name, null])
  })

  it('shows as many unit systems as its settings say', () => {
    const isBoth = published().site.units.length > 1
    const both = everyPage((name, html) =>
      /^(?:notes|numbers)\//.test(name) && html.includes('class="other"') ? ['both'] : [],
    )
    expect(both.length > 0).toBe(isBoth)
  })

  it('writes the line over a note without a space before its signs', () => {
    const wrong = everyPage((_, html) =>
      [...html.matchAll(/<p class="over">(.*?)<\/p>/gs)].flatMap(([, line = '']) => {
        const text = plain(line.replace(/<[^>]*>/g, ''))
        return / [;,.]/.test(text) ? [text] : []
      }),
    )
    expect(wrong).toEqual([])
  })

  it('is sound HTML on every page', async () => {
    const validator = new HtmlValidate(
      new StaticConfigLoader({
        extends: ['html-validate:recommended', 'html-validate:a11y'],
        rules: {
          // Written by the tools, in their own manner.
          'doctype-style': 'off',
          'void-style': 'off',
          'no-trailing-whitespace': 'off',
          'attr-quotes': 'off',
          // Names of numbers are ids, and are written as their author wrote them.
          'valid-id': ['error', { relaxed: true }],
          // A title may be as long as its builder likes.
          'long-title': 'off',
        },
      }),
    )
    const wrong: string[] = []
    for (const [name, html] of site.pages) {
      const { results } = await validator.validateString(html, name)
      for (const { messages } of results)
        for (const { ruleId, message, line, column } of messages)
          wrong.push(`${name}:${line}:${column} ${ruleId}: ${message}`)
    }
    expect(wrong).toEqual([])
  })

  it('has paragraphs that are closed where they are written to close', () => {
    // A block element inside a paragraph ends it: its `</p>` then makes an empty one.
    expect(
      everyPage((__, html) =>
        elementsOf(html)
          .filter(
            ({ tagName, sourceCodeLocation }) =>
              tagName === 'p' && !(sourceCodeLocation?.startTag && sourceCodeLocation.endTag),
          )
          .map(({ sourceCodeLocation }) => `line ${sourceCodeLocation?.startLine ?? '?'}`),
      ),
    ).toEqual([])
  })

  it('has no style attribute and no script in its markup', () => {
    expect(
      everyPage((__, html) =>
        elementsOf(html).flatMap(({ tagName, attrs }) =>
          attrs
            .filter(({ name }) => name === 'style' || name.startsWith('on'))
            .map(({ name }) => `<${tagName} ${name}>`),
        ),
      ),
    ).toEqual([])
  })

  it('warns of each hazard once a page, before the first block that needs it, in all its words', () => {
    const wrong = published().notes.flatMap(({ slug }) => {
      const elements = elementsOf(site.pages.get(`notes/${slug}/index.html`) ?? '')
      const panels = Map.groupBy(
        elements.filter((one) => hasClass(one, 'hazard')),
        (panel) => attributeOf(panel, 'id') ?? '',
      )
      const check = (block: PublishedBlock, id: string): string[] => {
        const card = elements.findIndex((one) => attributeOf(one, 'data-card') === block.id)
        const [panel, ...more] = panels.get(`Hazard-${id}`) ?? []
        if (panel === undefined || more.length > 0) return [`${id} does not stand once`]
        if (card < 0 || elements.indexOf(panel) > card) return [`${id} does not stand before`]
        const { signal, what, consequence, avoid } = hazard(id)
        const said = textIn(panel)
        return [signal, what, consequence, avoid].filter((words) => !said.includes(plain(words)))
      }
      return published()
        .blocks.filter(({ note }) => note === slug)
        .flatMap((block) =>
          block.hazards.flatMap((id) => check(block, id).map((one) => `${block.id}: ${one}`)),
        )
    })
    expect(wrong).toEqual([])
  })

  it('says with the hazards that this is arithmetic and who decides', () => {
    for (const { slug } of published().notes) {
      const html = site.pages.get(`notes/${slug}/index.html`) ?? ''
      if (html.includes('class="hazard '))
        expect(html).toMatch(/This is arithmetic\. Local codes and licensed practice decide/)
    }
  })

  it('shows every number where its note says, by its id', () => {
    const wrong = published().notes.flatMap(({ slug }) => {
      const elements = elementsOf(site.pages.get(`notes/${slug}/index.html`) ?? '')
      const ids = new Set(elements.flatMap((one) => attributeOf(one, 'id') ?? []))
      const shown = new Set(elements.flatMap((one) => attributeOf(one, 'data-number') ?? []))
      return published()
        .numbers.filter(({ note }) => note === slug)
        .flatMap(({ id, name, block, expression, kind, part }) => {
          // A part's figures stand where the part does.
          const place = part === undefined ? name : name.replace(/\..*/, '')
          const anchored =
            block === null && expression === undefined && kind !== 'worked' && !name.includes('-')
          return [
            ...(shown.has(id) ? [] : [`${id} is not shown`]),
            ...(anchored && !ids.has(place) ? [`${id} has no place`] : []),
          ]
        })
    })
    expect(wrong).toEqual([])
  })

  it('has a numbers.json of the described shape, sorted, without a clock', () => {
    const kind = z.enum(['reading', 'rated', 'assumed', 'chosen', 'worked'])
    const level = z.enum(['pass', 'watch', 'stop', 'unknown'])
    const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/)
    const shape = z.looseObject({
      format: z.literal(1),
      notes: z.array(z.looseObject({ slug: z.string(), title: z.string(), date })),
      numbers: z.array(
        z.looseObject({
          id: z.string(),
          note: z.string(),
          name: z.string(),
          kind,
          value: z.number().nullable(),
          unit: z.string(),
          shown: z.string().min(1),
          plusMinus: z.number().nullable(),
          rests: z.array(z.string()),
          calculator: z.string().nullable(),
          source: z.looseObject({ title: z.string() }).nullable(),
          file: z.string().regex(/^notes\/[a-z0-9-]+\.mdx$/),
          line: z.int().min(1),
          now: z.number().nullable(),
        }),
      ),
      blocks: z.array(
        z.looseObject({
          id: z.string(),
          note: z.string(),
          calculator: z.string(),
          inputs: z.record(z.string(), z.unknown()),
          outputs: z.record(z.string(), z.unknown()),
          verdict: level,
          provisional: z.boolean(),
          findings: z.array(
            z.looseObject({
              level,
              text: z.string().min(1),
              threshold: z.string(),
              basis: z.string(),
            }),
          ),
          hazards: z.array(z.string()),
        }),
      ),
    })
    const { numbers, blocks } = shape.parse(JSON.parse(site.numbersJson))
    for (const list of [numbers, blocks]) {
      const ids = list.map(({ id }) => id)
      expect(ids).toEqual([...ids].sort())
      expect(new Set(ids).size).toBe(ids.length)
    }
    const known = new Set(numbers.map(({ id }) => id))
    expect(numbers.flatMap(({ rests }) => rests).filter((id) => !known.has(id))).toEqual([])
    expect(site.numbersJson).not.toMatch(/\d{2}:\d{2}:\d{2}/)
  })

  it('holds nothing of the machine it was built on', () => {
    for (const [name, bytes] of site.files)
      if (/\.(html|json|js|css|xml)$/.test(name))
        expect([
          name,
          /\/work\/|\/tmp\/|\/home\/|\/root\/|node_modules|file:\/\//.exec(
            bytes.toString('utf8'),
          )?.[0],
        ]).toEqual([name, undefined])
  })
})
