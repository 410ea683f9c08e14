/** What stands round the cards: counts, guesses, standard tables, and spaces that do not break. */
import { describe, expect, it } from 'vitest'
import type { Table } from '../../calculators/tables/define.ts'
import {
  contextOf,
  firm,
  guessesIn,
  standardTableHtml,
  stripText,
  tallyHtml,
  titleBlockHtml,
} from '../../src/card/index.ts'
import type { Published, PublishedNumber } from '../../src/ledger/published.ts'
import { calculators, context, published } from './fixture.ts'

const plain = (html: string) =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

describe('firm', () => {
  it.each([
    ['at most 5 K (watch), 10 K (stop)', 'at most 5~K (watch), 10~K (stop)'],
    ['0.8 W/(m²·K) on 4 m², 60 V.', '0.8~W/(m²·K) on 4~m², 60~V.'],
    ['65 °C, 3 %, ½ in and 18 AWG', '65~°C, 3~%, ½~in and 18~AWG'],
    ['3 hoses of 2 kinds, 4 × 5', '3 hoses of 2 kinds, 4 × 5'],
  ])('%s', (text, due) => {
    expect(firm(text).replaceAll('\u00a0', '~')).toBe(due)
  })
})

describe('guesses', () => {
  const ctx = context()
  const own = guessesIn('keeping-cool', ctx)

  it('are the builder’s: elements and literals, not what a calculator filled in', () => {
    const names = own.open.map(({ name }) => name)
    expect(names).toContain('pump.hoses.0.length')
    expect(names).not.toContain('supply')
    expect(own.open.every(({ kind }) => kind === 'assumed')).toBe(true)
  })

  it('are settled by a later number that takes their place', () => {
    const [guess] = own.open
    if (guess === undefined) throw new Error('no guess')
    const later: PublishedNumber = {
      ...guess,
      id: 'keeping-cool/later',
      name: 'later',
      kind: 'reading',
      block: null,
      replaces: guess.id,
    }
    const settled: Published = { ...published, numbers: [...published.numbers, later] }
    const after = guessesIn('keeping-cool', contextOf(settled, { base: '/', calculators }))
    expect(after.open.map(({ id }) => id)).not.toContain(guess.id)
    expect(after.open).toHaveLength(own.open.length - 1)
  })

  it('that a calculator filled in are counted apart', () => {
    const blocks = published.blocks.map((block) =>
      block.name === 'pump'
        ? {
            ...block,
            given: {
              ...block.given,
              bore: { type: 'number', id: `${block.id}.bore`, how: 'assumed-default' } as const,
            },
          }
        : block,
    )
    const ledger = contextOf({ ...published, blocks }, { base: '/', calculators })
    expect(guessesIn('keeping-cool', ledger).usual).toBe(1)
    expect(plain(tallyHtml('keeping-cool', ledger))).toContain('1 input left at its usual value')
  })
})

describe('the title block', () => {
  it('carries the edition that the strip of each sheet carries', () => {
    const ctx = context()
    const note = ctx.note('keeping-cool')
    if (note === undefined) throw new Error('no note')
    const [, edition = ''] = /edition ([0-9a-f]{6})\./.exec(stripText(note, ctx)) ?? []
    expect(plain(titleBlockHtml(note, 'Cooling loop', ctx))).toContain(`Edition ${edition}`)
    expect(edition).not.toBe('')
  })
})

describe('a standard table', () => {
  const table: Table = {
    id: 'some',
    title: 'Some table',
    source: 'A standard',
    trust: 'read',
    columns: [
      { label: 'Gauge', unit: 'AWG' },
      { label: 'Carries', unit: 'A' },
    ],
    rows: [
      ['1/0', 12_500],
      ['2', -0.5],
      ['4', null],
    ],
  }
  it('has its units in the heads and its cells as printed', () => {
    const html = standardTableHtml(table)
    expect(html).toContain('<th scope="col">Carries, A</th>')
    expect(html).toContain('<th scope="row">1/0</th><td data-label="Carries, A">12\u202f500</td>')
    expect(html).toContain('<td data-label="Carries, A">−0.5</td>')
    expect(html).toContain('<th scope="row">4</th><td data-label="Carries, A"></td>')
  })
  it('escapes what it prints', () => {
    expect(standardTableHtml({ ...table, rows: [['<b>', 1]] })).toContain('&lt;b&gt;')
  })
})
