/** The page that each block has to itself: what stands on it, what it hands to a reader, where it leads. */
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hazards, standingWords } from '../../calculators/hazards.ts'
import { blockPath } from '../../src/card/take/index.ts'
import { contextOf, editionOf, verdictName, verdictWords } from '../../src/card/index.ts'
import { readPageFigures } from '../../src/card/page-figures.ts'
import { loadCalculators } from '../../src/ledger/load.ts'
import type { Published, PublishedBlock } from '../../src/ledger/published.ts'
import { readRecord } from '../../src/ledger/record.ts'
import { ledgerOf } from '../../src/ledger/roots.ts'
import { work } from '../../src/ledger/work.ts'
import { verifySite, verifyTexts } from '../../src/site/verify.ts'
import { addressesOf, attributeOf, brokenAddresses, elementsOf, hasClass, textIn } from './links.ts'
import { builtSite, copyOf, small, type Built } from './site.ts'

let site: Built
let published: Published
beforeAll(async () => {
  // A block with a name that an address has to write otherwise.
  const content = await copyOf(small)
  const note = join(content, 'notes/loop.mdx')
  const text = (await readFile(note, 'utf8')).replaceAll('"rise"', '"wärme"')
  await writeFile(note, text.replaceAll('rise.rise', 'wärme.rise'))
  site = await builtSite(content)
  const read = readRecord(site.numbersJson)
  if (read === undefined) throw new Error('numbers.json cannot be read')
  published = read
})
afterAll(() => site.remove())

const pageOf = ({ note, name }: PublishedBlock): string =>
  site.pages.get(`notes/${note}/${name}/index.html`) ?? ''
const plain = (text: string): string => text.replace(/[\s\u00a0\u202f]+/g, ' ').trim()
const eachBlock = (check: (block: PublishedBlock, html: string) => unknown): void => {
  expect(published.blocks.length).toBe(4)
  for (const block of published.blocks) check(block, pageOf(block))
}

describe('the page of a block', () => {
  it('lies at its permanent address, and no link on it leads nowhere', () => {
    const ctx = contextOf(published, { base: '/kit/', calculators: new Map() })
    expect(published.blocks.map(({ name }) => name)).toContain('wärme')
    eachBlock((block) => {
      const path = decodeURIComponent(blockPath(block, ctx)).replace('/kit/', '')
      expect([...site.pages.keys()]).toContain(`${path}index.html`)
    })
    expect(brokenAddresses(site.pages, new Set(site.files.keys()), '/kit/')).toEqual([])
  })

  it('says title, note, date, edition and today’s verdict', () => {
    eachBlock((block, html) => {
      const elements = elementsOf(html)
      const note = published.notes.find(({ slug }) => slug === block.note)
      expect(elements.filter(({ tagName }) => tagName === 'h1').map(textIn)).toEqual([block.title])
      const over = elements.find((one) => hasClass(one, 'over'))
      expect(over && textIn(over)).toContain(plain(note?.title ?? ''))
      expect(over && textIn(over)).toContain(`edition ${editionOf(published, block.note)}`)
      const cards = elements.filter((one) => attributeOf(one, 'data-card') !== undefined)
      expect(cards.map((one) => attributeOf(one, 'data-card'))).toEqual([block.id])
      const verdict = elements.find((one) => hasClass(one, 'card-verdict'))
      expect(verdict && textIn(verdict)).toBe(verdictWords[verdictName(block)])
    })
  })

  it('warns of its hazards before its card, and says who decides', () => {
    eachBlock((block, html) => {
      expect(block.hazards.length).toBeGreaterThan(0)
      const card = html.indexOf('data-card=')
      for (const [id, { avoid }] of Object.entries(hazards)) {
        const panel = html.indexOf(`id="Hazard-${id}"`)
        expect([id, panel >= 0 && panel < card]).toEqual([id, block.hazards.includes(id)])
        if (panel >= 0) expect(plain(html)).toContain(plain(avoid.split('.')[0] ?? ''))
      }
      const standing = html.indexOf(standingWords)
      expect(standing).toBeGreaterThan(0)
      expect(standing).toBeLessThan(card)
    })
  })

  it('tells where what went in comes from, down to the sheet, and the calculator’s sources', () => {
    const block = published.blocks.find(({ name }) => name === 'pump')
    const html = block === undefined ? '' : plain(pageOf(block))
    for (const words of ['round the battery box', 'read off a curve by eye', 'the spigots'])
      expect(html).toContain(words)
    expect(html).toMatch(/Sources of the calculator.*(?:Looked up for this kit|Recalled)/)
  })

  it('leads back to its place in the note, and the card there leads to it, not to itself', () => {
    const linksOf = (html: string, file: string): string[] =>
      elementsOf(html)
        .flatMap(addressesOf)
        .map(({ to }) => new URL(to, `https://site.example/kit/${file}`))
        .map(({ pathname, hash }) => decodeURIComponent(pathname + hash))
    eachBlock((block, html) => {
      const own = `notes/${block.note}/${block.name}/`
      const note = `notes/${block.note}/`
      expect(linksOf(html, own)).toContain(`/kit/${note}#${block.name}`)
      expect(linksOf(html, own)).not.toContain(`/kit/${own}`)
      const onNote = site.pages.get(`${note}index.html`) ?? ''
      expect(linksOf(onNote, note)).toContain(`/kit/${own}`)
    })
  })

  it('hands out just what its block rests on, which works to the same results', async () => {
    const ids = published.blocks.map(({ calculator }) => calculator)
    const calculators = await loadCalculators(ids)
    eachBlock((block, html) => {
      const file = `notes/${block.note}/${block.name}/figures.json`
      const figures = readPageFigures(site.files.get(file)?.toString('utf8') ?? '')
      expect(html).toContain(` data-figures="${figures?.edition ?? 'none'}"`)
      if (figures === undefined) return
      expect([figures.page, figures.block]).toEqual([block.note, block.id])
      const worked = work(ledgerOf(figures.roots), calculators).published
      const again = worked.blocks.find(({ id }) => id === block.id)
      for (const key of ['inputs', 'outputs', 'verdict', 'findings', 'working', 'hazards'] as const)
        expect(again?.[key]).toEqual(block[key])
      const whole = new Set(published.numbers.map(({ id }) => id))
      expect(worked.numbers.filter(({ id }) => !whole.has(id))).toEqual([])
      expect(worked.numbers.length).toBeLessThan(whole.size)
    })
  })
})

describe('verify', () => {
  const page = 'notes/loop/pump/index.html'
  const handed = 'notes/loop/pump/figures.json'
  const found = async (change: (text: string) => string, of = page) => {
    const text = site.files.get(of)?.toString('utf8') ?? ''
    expect(change(text)).not.toBe(text)
    const pages = new Map([...site.pages, [of, change(text)]])
    return (await verifyTexts(site.numbersJson, pages)).map(({ file, text }) => `${file}: ${text}`)
  }

  it('finds nothing on them as they were built', async () => {
    expect(await verifyTexts(site.numbersJson, site.pages)).toEqual([])
  })
  it('names the number that is handed out with another digit', async () => {
    expect(
      await found((text) => text.replace('"typed":"2.4 m"', '"typed":"2.5 m"'), handed),
    ).toEqual([
      `${handed}: in the figures for the reader’s browser \`loop/supply\` is not what the record has`,
    ])
  })
  it('finds a number and a block that are not handed out, and figures that are gone', async () => {
    expect(
      await found(
        (text) => text.replace(/\{"note":"loop","name":"bore".*?\},(?=\{"note")/, ''),
        handed,
      ),
    ).toEqual([
      `${handed}: in the figures for the reader’s browser \`loop/bore\` is not what the record has`,
    ])
    expect(
      await found(
        (text) => text.replace(/"blocks":\[\{.*?\}\](?=\},"sources")/, '"blocks":[]'),
        handed,
      ),
    ).toEqual([
      `${handed}: in the figures for the reader’s browser \`loop/pump\` is not what the record has`,
    ])
    expect(await found((text) => text.slice(0, -3), handed)).toEqual([
      `${handed}: this is not what the kit hands to a reader’s browser`,
    ])
  })
  it('finds a file of figures that is gone, one of no page, and another edition', async () => {
    const folder = await copyOf(site.folder)
    await mkdir(join(folder, 'notes/loop/figures'))
    await rename(join(folder, handed), join(folder, 'notes/loop/figures/figures.json'))
    const said = (await verifySite(folder)).map(({ file, text }) => `${file}: ${text}`)
    expect(said).toEqual([
      `${handed}: the figures for the reader’s browser are not there`,
      'notes/loop/figures/figures.json: there is no page here to have figures',
    ])
    expect(
      await found((html) => html.replace(/ data-figures="[^"]*"/, ' data-figures="000000"')),
    ).toEqual([`${page}: the page says another edition than its figures have`])
    expect(await found((html) => html.replace(/ data-figures="[^"]*"/, ''))).toEqual([
      `${page}: the page says another edition than its figures have`,
    ])
  })
  it('finds a source of a calculator altered, the block’s title, and its way back', async () => {
    expect((await found((text) => text.replace('"trust":"', '"trust":"not '), handed)).length).toBe(
      1,
    )
    expect((await found((html) => html.replace('<h1>', '<h1>Not '))).length).toBe(1)
    expect(
      (await found((html) => html.replace('Back to its place', 'Back to no place'))).length,
    ).toBe(1)
  })
  it('finds that the page of a block is gone', async () => {
    const pages = new Map([...site.pages].filter(([file]) => file !== page))
    expect(await verifyTexts(site.numbersJson, pages)).toEqual([
      { file: page, line: 1, text: 'the block `loop/pump` has no page of its own' },
    ])
  })
})
