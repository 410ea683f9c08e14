/** The wall sheet of each note: what stands on it, where it lies, and that `verify` holds it. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hazards, standingWords } from '../../calculators/hazards.ts'
import { editionOf, sheetName, verdictName, verdictWords } from '../../src/card/index.ts'
import type { Published } from '../../src/ledger/published.ts'
import { readRecord } from '../../src/ledger/record.ts'
import { verifyTexts } from '../../src/site/verify.ts'
import { attributeOf, elementsOf, hasClass, textIn, type Element } from './links.ts'
import { builtSite, workshop, type Built } from './site.ts'

let site: Built
let published: Published
beforeAll(async () => {
  site = await builtSite(workshop)
  const read = readRecord(site.numbersJson)
  if (read === undefined) throw new Error('numbers.json cannot be read')
  published = read
})
afterAll(() => site.remove())

const file = (slug: string): string => `notes/${slug}/${sheetName}/index.html`
const sheet = (slug: string): string => site.pages.get(file(slug)) ?? ''
const rows = (slug: string): readonly Element[] =>
  elementsOf(sheet(slug)).filter(({ tagName }) => tagName === 'tr')
const texts = (slug: string): readonly string[] => rows(slug).map(textIn)

describe('a wall sheet', () => {
  it('lies where no block can, also beside a block of the name `sheet`', () => {
    expect(published.blocks.map(({ name }) => name)).toContain('sheet')
    for (const { slug } of published.notes)
      expect(
        elementsOf(sheet(slug))
          .filter(({ tagName }) => tagName === 'h1')
          .map(textIn),
      ).toEqual([`Wall sheet: ${published.notes.find((one) => one.slug === slug)?.title ?? ''}`])
    expect(sheet('pump')).not.toContain('data-card=')
    expect(site.pages.get('notes/pump/sheet/index.html')).toContain('data-card="pump/sheet"')
  })

  it('is linked from its note, whose print says the address in full', () => {
    const note = elementsOf(site.pages.get('notes/pump/index.html') ?? '')
    const line = note.find((one) => hasClass(one, 'to-sheet'))
    expect(line && textIn(line)).toContain(`https://bench.example/van/notes/pump/${sheetName}/`)
    const link = note.find((one) => attributeOf(one, 'href') === `../../notes/pump/${sheetName}/`)
    expect(link && textIn(link)).toBe('Wall sheet of this note')
  })

  it('moves with a note that was renamed', () => {
    expect(site.pages.get(file('the-pump'))).toContain('http-equiv="refresh"')
    expect(site.pages.get(file('the-pump'))).toContain(`notes/pump/${sheetName}/`)
  })

  it('says vehicle, date and edition, at its head and in the strip of every sheet of paper', () => {
    for (const { slug } of published.notes) {
      const edition = editionOf(published, slug)
      for (const name of ['sheet-edition', 'strip']) {
        const found = elementsOf(sheet(slug)).find((one) => hasClass(one, name))
        expect([slug, name, found && textIn(found).includes(`edition ${edition}`)]).toEqual([
          slug,
          name,
          true,
        ])
      }
    }
  })

  it('begins with the hazards of all its blocks, and always says who decides', () => {
    const html = sheet('pump')
    const used = new Set(published.blocks.flatMap((block) => block.hazards))
    expect(used.size).toBeGreaterThan(1)
    for (const id of Object.keys(hazards)) {
      const at = html.indexOf(`id="Hazard-${id}"`)
      expect([id, at >= 0 && at < html.indexOf('<table')]).toEqual([id, used.has(id)])
    }
    for (const { slug } of published.notes)
      expect(sheet(slug).indexOf(standingWords)).toBeGreaterThan(0)
  })

  it('has the headings in order, each with a box, and what stands below it', () => {
    const steps = rows('pump').filter((row) => hasClass(row, 'step'))
    const fuse = plain(published.numbers.find(({ id }) => id === 'pump/sheet.fuse')?.shown ?? '')
    expect(steps.map(textIn)).toEqual([
      'What it draws',
      `A fuse of ${fuse}`,
      'The bolts',
      'Left over',
    ])
    for (const step of steps)
      expect(elementsIn(step).filter((one) => hasClass(one, 'tick')).length).toBe(1)
    expect(steps.map((step) => hasClass(step, 'step-within'))).toEqual([false, false, true, false])
    const all = texts('pump')
    const [spacer, draws, due] = ['Spacer', 'Draw', 'Due'].map((start) =>
      all.findIndex((text) => text.startsWith(start)),
    )
    expect(spacer).toBeLessThan(all.indexOf('What it draws'))
    expect(draws).toBeGreaterThan(all.indexOf('What it draws'))
    expect(due).toBeGreaterThan(all.indexOf('The bolts'))
  })

  it('has figures in both systems, the fuse, and each torque with a box for its mark', () => {
    const figure = (start: string): Element | undefined =>
      rows('pump').find((row) => textIn(row).startsWith(start))
    expect(textIn(figure('Spacer') ?? missing())).toMatch(/3 mm \(.* in\)/)
    expect(textIn(figure('Due') ?? missing())).toMatch(/24 N·m \(.* lb·ft\)\s*marked$/)
    const boxed = rows('pump').filter((row) => textIn(row).endsWith('marked'))
    expect(boxed.map(textIn).map((text) => /^[A-Z][a-z]+/.exec(text)?.[0])).toEqual([
      'Due',
      'Torque',
    ])
    const torques = published.numbers.filter(
      (one) => one.note === 'pump' && one.of === 'torque' && one.calculator !== null,
    )
    expect(torques.length).toBeGreaterThan(0)
    for (const { id, value } of torques)
      if (value !== null)
        expect([id, sheet('pump').includes(`data-number="${id}"`)]).toEqual([id, true])
    expect(sheet('pump')).toContain('data-number="pump/sheet.fuse"')
  })

  it('has a place to write beside every figure', () => {
    const figures = rows('pump').filter((row) => row.parentNode && sheetRow(row))
    expect(figures.length).toBeGreaterThan(5)
    for (const row of figures)
      expect(cellsOf(row).map(({ tagName }) => tagName)).toEqual(['th', 'td', 'td'])
  })

  it('shows today’s value where a later note has another, and what it was', () => {
    const row = texts('pump').find((text) => text.startsWith('Draw'))
    expect(row).toMatch(/^Draw was 1\.5 A\s*4\.0 A ± 0\.1 A/)
    expect(sheet('pump')).not.toContain('data-number="pump/draw"')
    expect(sheet('pump')).toContain('data-number="meter/measured"')
  })

  it('says each verdict in words, with what decided it', () => {
    for (const block of published.blocks) {
      const row = texts('pump').find((text) => text.includes(block.title))
      expect(row).toContain(verdictWords[verdictName(block)])
      const order = ['stop', 'unknown', 'watch', 'pass']
      const [worst] = block.findings.toSorted(
        (a, b) => order.indexOf(a.level) - order.indexOf(b.level),
      )
      expect(row).toContain(
        worst?.level === 'pass'
          ? `${block.findings.length} check`
          : plain(worst?.text ?? '').slice(0, 40),
      )
    }
  })

  it('has the tasks with their boxes, and lines for names and days', () => {
    const list = elementsOf(sheet('pump')).filter((one) => hasClass(one, 'mark-task'))
    expect(list.map((one) => attributeOf(one, 'aria-label'))).toEqual([
      'to do',
      'done',
      'open question',
    ])
    const lines = elementsOf(sheet('pump')).find((one) => hasClass(one, 'sheet-sign'))
    expect(lines && textIn(lines)).toBe('Done byOnChecked byOn')
  })

  it('of a note without a figure is still a sheet', () => {
    expect(texts('plan')).toEqual(['WhatFigureMeasured'])
    expect(sheet('plan')).toContain('sheet-sign')
  })

  it('is held by verify: a figure, a verdict, a hazard, a step, a task, and that it is there', async () => {
    const found = async (change: (html: string) => string): Promise<readonly string[]> => {
      const changed = change(sheet('pump'))
      expect(changed).not.toBe(sheet('pump'))
      const pages = new Map(texted(site)).set(file('pump'), changed)
      const wrong = await verifyTexts(site.numbersJson, pages)
      return wrong.map((one) => `${one.file}: ${one.text}`)
    }
    const at = file('pump')
    const steps = `${at}: the table of steps is not what working it again gives`
    const figure = (html: string): string => html.replace(/(data-number="pump\/due">)24/, '$125')
    expect(await found(figure)).toContain(steps)
    expect(
      await found((html) => html.replace('class="verdict verdict-', 'class="verdict x-')),
    ).toContain(steps)
    expect(await found((html) => html.replace('Left over', 'Left alone'))).toContain(steps)
    expect(await found((html) => html.replace('Paint the bracket', 'Paint nothing'))).toContain(
      `${at}: the list of tasks is not what working it again gives`,
    )
    expect(await found((html) => html.replace('class="hazard ', 'class="other '))).toContain(
      `${at}: what is said of hazards is not what working it again gives`,
    )
    const pages = new Map(texted(site))
    pages.delete(at)
    const lost = await verifyTexts(site.numbersJson, pages)
    expect(lost.map(({ text }) => text)).toContain('the note `pump` has no wall sheet')
    expect(await verifyTexts(site.numbersJson, texted(site))).toEqual([])
  })
})

const plain = (text: string): string => text.replace(/[\s\u00a0\u202f]+/g, ' ').trim()

function missing(): never {
  throw new Error('the row is not there')
}

/** A row of a figure: no step, no verdict, no heads. */
const sheetRow = (row: Element): boolean =>
  !hasClass(row, 'step') && !hasClass(row, 'checked') && !textIn(row).startsWith('What')

const cellsOf = (row: Element): readonly Element[] =>
  row.childNodes.flatMap((node) => ('tagName' in node ? [node] : []))

function elementsIn(element: Element): readonly Element[] {
  return cellsOf(element).flatMap((one) => [one, ...elementsIn(one)])
}

/** What `verify` reads of a site. */
const texted = ({ files }: Built): ReadonlyMap<string, string> =>
  new Map(
    [...files]
      .filter(([name]) =>
        /\.html$|^notes\/[^/]+\/numbers\.json$|^feed\.xml$|^search\/names\.json$/.test(name),
      )
      .map(([name, bytes]) => [name, bytes.toString('utf8')]),
  )
