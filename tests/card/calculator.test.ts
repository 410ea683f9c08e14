/** What a calculator's own page says: formulas that render, outside cases that hold, ranges. */
import { describe, expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { differenceWords, rangeText } from '../../src/card/calculator.ts'
import { formulaHtml } from '../../src/card/formula.ts'
import { exampleInputs, halfUnit, runExample } from '../../src/ledger/example.ts'
import { usageText } from '../../src/card/usage.ts'
import { ledgerOf, line } from '../ledger/ledger-of.ts'
import { calculator } from './fixture.ts'

describe.each(Object.entries(calculators))('%s', (_, load) => {
  it('has formulas that can be shown, without style attributes', async () => {
    for (const tex of (await load()).formula) {
      const html = formulaHtml(tex)
      expect(html).toMatch(/^<math/)
      expect(html).not.toMatch(/\sstyle=/)
    }
  })
  it('meets its outside cases on its page', async () => {
    const loaded = await load()
    const missed = loaded.examples.flatMap((example) => {
      const { rows, findings, holds } = runExample(loaded, example)
      return holds
        ? []
        : [{ name: example.name, rows: rows.filter(({ within }) => !within), findings }]
    })
    expect(missed).toEqual([])
  })
})

it('shows how each is written, and what is copied from there is whole', async () => {
  const uses = await Promise.all(
    Object.entries(calculators).map(async ([id, load]) => [id, usageText(await load())] as const),
  )
  const { problems, published } = await ledgerOf(Object.fromEntries(uses), calculators)
  const verdicts = ['stop', 'stop-nobody-may-accept', 'unusual']
  expect(problems.filter(({ rule }) => !verdicts.includes(rule)).map(line)).toEqual([])
  expect(published.blocks.map(({ calculator }) => calculator)).toEqual(
    uses.map(([id]) => id).sort(),
  )
})

describe('formulaHtml', () => {
  it('throws at a mistake in the TeX', () => {
    expect(() => formulaHtml('\\frac{1}{')).toThrow()
  })
})

describe('halfUnit', () => {
  it.each([
    ['12.30 L/min', 0.005],
    ['12 L/min', 0.5],
    ['1.2e-4', 0.5e-5],
    ['1.2 × 10^-4 m³/s', 0.5e-5],
    ['−0.4 K', 0.05],
  ])('%s', (printed, half) => {
    expect(halfUnit(printed)).toBeCloseTo(half, 12)
  })
})

describe('runExample', () => {
  const example = {
    name: 'by hand',
    from: 'hand',
    inputs: { heat: '1100 W', inlet: '60 °C', bore: '19 mm' },
    outputs: { rise: '2.0 K', flow: '8.75 L/min' },
  }
  it('sees a difference of more than half the last digit', () => {
    expect(
      runExample(calculator, { ...example, inputs: { ...example.inputs, hoses: [] } }).holds,
    ).toBe(true)
    const wrong = {
      ...example,
      inputs: { ...example.inputs, hoses: [] },
      outputs: { rise: '2.1 K' },
    }
    expect(runExample(calculator, wrong).holds).toBe(false)
  })
  it('sees a finding that is not as expected', () => {
    const wrong = {
      ...example,
      inputs: { ...example.inputs, hoses: [] },
      findings: { rise: 'stop' as const },
    }
    expect(runExample(calculator, wrong).holds).toBe(false)
  })
  it('refuses an example that is wrong in itself', () => {
    expect(() => exampleInputs(calculator, { ...example, inputs: { heat: '3 kg' } })).toThrow(
      /by hand/,
    )
    expect(() => exampleInputs(calculator, { ...example, inputs: { heatt: '3 W' } })).toThrow(
      'heatt',
    )
  })
  it('compares a cell of a table', () => {
    const withHose = { ...example.inputs, hoses: [{ name: 'a', length: '2 m' }] }
    const { rows } = runExample(calculator, {
      ...example,
      inputs: withHose,
      outputs: { 'losses.0.drop': '10 kPa' },
    })
    expect(rows.map(({ within }) => within)).toEqual([true])
  })
})

describe('words', () => {
  it('writes ranges in both unit systems', () => {
    const { bore } = calculator.inputs
    if (bore?.type !== 'number') throw new Error('no bore')
    expect(rangeText(bore, bore.hard)).toBe(
      '4\u00a0mm to 60\u00a0mm (0.157\u00a0in to 2.36\u00a0in)',
    )
  })
  it('writes differences as percentages', () => {
    expect(differenceWords(0.00034)).toBe('0.034\u00a0%')
    expect(differenceWords(0)).toBe('none')
    expect(differenceWords(Infinity)).toBe('another word')
  })
})
