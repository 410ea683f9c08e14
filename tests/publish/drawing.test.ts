/**
 * The lines of a note's picture: broken by the font's own widths, cut where they do not fit, without the
 * signs that the font does not have.
 */
import { readFile, rm, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import fc from 'fast-check'
import { beforeAll, expect, it } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { drawing, lines, lostSigns, width } from '../../src/site/social/drawing.ts'
import { readFont, type FontWidths } from '../../src/site/social/font.ts'
import { drawPictures } from '../../src/site/social/pictures.ts'
import { copyOf, root } from '../build/site.ts'

let font: FontWidths
beforeAll(async () => {
  const path = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')
  font = readFont(await readFile(path))
})

it('knows the advances of the font', () => {
  // Of 2048 units, recalled from the family’s published metrics: space 651, A 1401, m 1995.
  expect(font.widthOf(' ')).toBeCloseTo(651 / 2048, 10)
  expect(font.widthOf('A')).toBeCloseTo(1401 / 2048, 10)
  expect(font.widthOf('m')).toBeCloseTo(1995 / 2048, 10)
  expect(['Δ', 'Ω', '½', '²', '°', 'µ'].filter((sign) => !font.has(sign))).toEqual([])
  expect(font.has('漢')).toBe(false)
})

it('every line fits, none is lost but behind a dot-dot-dot, for any text', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 200 }),
      fc.integer({ min: 1, max: 5 }),
      (text, most) => {
        const made = lines(text, font, 56, most)
        expect(made.length).toBeLessThanOrEqual(most)
        for (const line of made) expect(font.widthOf(line) * 56).toBeLessThanOrEqual(width - 144)
        const known = Array.from(text.replace(/\s+/g, ''))
          .filter((sign) => font.has(sign))
          .join('')
        const said = made.join('').replace(/\s+/g, '')
        if (!said.endsWith('…') || known.endsWith('…')) expect(said).toBe(known)
      },
    ),
  )
})

it('knows which signs of a title it cannot show', async () => {
  expect(lostSigns('Pump 泵 pump 泵 🚐\ufe0f, Ω µ ½ é ß Ж', font)).toEqual(['泵', '🚐'])
  const content = await copyOf(join(root, 'tests/build/fixtures/published'))
  const note = join(content, 'notes/clamp-meter.mdx')
  const text = await readFile(note, 'utf8')
  await writeFile(note, text.replace('What the meter said', 'What the 泵 meter said 🚐'))
  const problems = await drawPictures(
    await loadLedger(content),
    join(content, 'x'),
    join(content, 'y'),
  )
  expect(problems).toEqual([
    {
      rule: 'title-not-in-font',
      level: 'warning',
      file: 'notes/clamp-meter.mdx',
      line: 2,
      column: 1,
      text: 'the picture for links leaves `泵` and `🚐` of the title out: its font does not have them',
      hint: 'the page shows the whole title; the font has Latin, Greek and Cyrillic letters and most signs',
    },
  ])
  await rm(content, { recursive: true })
})

it('writes no sign of a text as markup', () => {
  const svg = drawing(
    {
      site: '<script>',
      title: 'a & b "c" ' + 'long '.repeat(60),
      vehicle: '</svg>',
      date: '1 May 2026',
      notice: undefined,
      headline: { label: '<b>', value: '1 < 2', how: '&', date: '2026-05-01' },
    },
    { plain: font, bold: font },
  )
  expect(svg).not.toMatch(/<script|<b>|1 < 2/)
  expect(svg.match(/<\/svg>/g)).toHaveLength(1)
  expect(svg).toContain('…')
})
