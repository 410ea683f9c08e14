/** What moves a result and what would pass, as a reader sees it: words, bars, units. */
import { HtmlValidate } from 'html-validate/node'
import { describe, expect, it } from 'vitest'
import type { Calculator } from '../../calculators/define.ts'
import { mattersHtml } from '../../src/card/matters.ts'
import { differenceText, distanceWords, valueText } from '../../src/card/matters-words.ts'
import { contextOf, type CardContext } from '../../src/card/index.ts'
import { exampleInputs } from '../../src/ledger/example.ts'
import { blankNumber } from '../../src/ledger/blank.ts'
import { resultsOf, whatMatters, whatWouldPass } from '../../src/ledger/matters.ts'
import type { PublishedNumber, UnitSystem } from '../../src/ledger/published.ts'
import { sayFor } from '../../src/ledger/say.ts'
import { all } from '../calculators/all.ts'
import { blockOf, run, type Inputs } from '../ledger/matters-block.ts'
import { trivial } from '../ledger/trivial.ts'

const metric = { units: ['metric'] } as const
const us = { units: ['us'] } as const

interface Asked {
  readonly result?: string
  readonly check?: string
  readonly units?: readonly UnitSystem[]
  readonly numbers?: Readonly<Record<string, Partial<PublishedNumber>>>
  readonly more?: readonly PublishedNumber[]
}

function htmlOf(calculator: Calculator, inputs: Inputs, asked: Asked = {}): string {
  const { units = ['metric', 'us'], numbers = {}, more = [] } = asked
  const { block, lookup, published } = blockOf(calculator, inputs, numbers, more)
  const ctx: CardContext = contextOf(
    { ...published, site: { ...published.site, units } },
    { base: '/', calculators: new Map([[calculator.id, calculator]]) },
  )
  const result = asked.result ?? resultsOf(block, calculator)[0]?.path ?? ''
  const options = { say: sayFor(units), ...(asked.check && { check: asked.check }) }
  return mattersHtml(
    block,
    whatMatters(block, lookup, calculator, result),
    whatWouldPass(block, lookup, calculator, options),
    ctx,
  )
}

const text = (html: string): string =>
  html
    .replace(/<svg.*?<\/svg>/gs, ' ')
    .replace(/<\/?(?:b|strong)[^>]*>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/[ \u00a0]+/g, ' ')

const named = (id: string): Calculator => {
  const found = all.find((one) => one.id === id)
  if (found === undefined) throw new Error(`no calculator ${id}`)
  return found
}
const simple = async (id: string): Promise<Calculator> => {
  const found = await trivial[id]?.()
  if (found === undefined) throw new Error(`no calculator ${id}`)
  return found
}

describe('words for a difference', () => {
  const temperature = { of: 'temperature', units: ['°C', '°F'] } as const
  const gauge = { of: 'gaugePressure', units: ['kPa gauge', 'psi gauge'] } as const
  it.each([
    [5, temperature, metric, '5.00\u00a0K'],
    [-5, temperature, us, '9.00\u00a0Δ°F'],
    [20_000, gauge, metric, '20.0\u00a0kPa'],
    [6894.757, gauge, us, '1.00\u00a0psi'],
    [0.013, { of: 'fraction', units: ['%', '%'] }, metric, '1.30\u00a0percentage points'],
    [1e-6, { of: 'wireArea', units: ['mm²', 'AWG'] }, metric, '1.00\u00a0mm²'],
    // 1 kcmil is 0.506707 mm² (NIST SP 811).
    [0.506707e-6, { of: 'wireArea', units: ['mm²', 'AWG'] }, us, '1.00\u00a0kcmil'],
    [0.0254, { of: 'length', units: ['mm', 'in'] }, us, '1.00\u00a0in'],
    [2, { of: 'number', units: ['', ''] }, metric, '2'],
  ] as const)('%s of a %o', (value, field, ctx, words) => {
    expect(differenceText(value, field, ctx)).toBe(words)
  })
  it('writes a value as a value', () => {
    expect(valueText(338.15, temperature, metric)).toBe('65.0\u00a0°C')
    expect(valueText(338.15, temperature, us)).toBe('149\u00a0°F')
    expect(valueText(undefined, temperature, us)).toBe('cannot tell')
  })
  it('gives a distance as a share only where that means something', async () => {
    const { inputs } = await simple('cool')
    const place = (key: string) => {
      const field = inputs[key]
      if (field?.type !== 'number') throw new Error(key)
      return { field, path: key, label: field.label, given: undefined, now: 1 }
    }
    expect(distanceWords(place('conductance'), 10, 15, metric)).toBe('50\u00a0% more than now')
    expect(distanceWords(place('inlet'), 300, 288, metric)).toBe('12.0\u00a0K less than now')
    expect(distanceWords(place('cap'), 50_000, 90_000, metric)).toBe('40.0\u00a0kPa more than now')
  })
})

describe('what moves it most', () => {
  const cool: Inputs = { conductance: 20, inlet: 333.15, rise: 10, cap: 50_000 }
  it('says both ends and a small change, in the first unit system', async () => {
    // Outlet = inlet − rise.
    const said = text(htmlOf(await simple('cool'), cool, { result: 'outlet' }))
    expect(said).toContain('Outlet is 50.0 °C now')
    expect(said).toContain(
      'Inlet, now 60.0 °C. Over its usual range, 0.0 °C to 100 °C, it goes from −10.0 °C to 90.0 °C. 5 K more raises it by 5.00 K, 5 K less lowers it by as much.',
    )
    expect(said).toContain('10 % more lowers it by 1.00 K, 10 % less raises it by as much.')
    expect(said).toContain('Does not move it over its range: Conductance; Cap pressure.')
    const american = text(htmlOf(await simple('cool'), cool, { result: 'outlet', units: ['us'] }))
    expect(american).toContain('Inlet, now 140 °F. Over its usual range, 32.0 °F to 212 °F')
    expect(american).toContain('9 Δ°F more raises it by 9.00 Δ°F')
  })
  it('names the ±, and a value outside its usual range', async () => {
    const calculator = await simple('cool')
    const numbers = { rise: { plusMinus: 0.5 } }
    const said = text(htmlOf(calculator, { ...cool, inlet: 383.15 }, { numbers }))
    // 20 W/K × 9.5 to 10.5 K.
    expect(said).toContain('Over its ± 0.5 K, 9.50 K to 10.5 K, it goes from 190 W to 210 W.')
    const outlet = text(htmlOf(calculator, { ...cool, inlet: 383.15 }, { result: 'outlet' }))
    expect(outlet).toContain('0.0 °C to 100 °C (it is outside that now)')
  })
  it('draws a bar for each in attributes alone, with its numbers as text', async () => {
    const html = htmlOf(await simple('cool'), cool)
    const svg = /<svg.*?<\/svg>/s.exec(html)?.[0] ?? ''
    expect(svg.match(/<rect /g)).toHaveLength(2)
    expect(svg).not.toContain('style')
    // Heat is K ΔT: 10 W to 1 kW with the conductance, 20 to 600 W with the rise.
    expect(svg).toContain('>10.0\u00a0W at 1.00\u00a0W/K<')
    expect(svg).toContain('>1000\u00a0W at 100\u00a0W/K<')
    const [first, second] = [...svg.matchAll(/<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/g)]
    const width = Number(first?.[2])
    const narrow = Number(second?.[2])
    expect(width).toBeCloseTo(356, 0)
    expect(narrow / width).toBeCloseTo(580 / 990, 2)
  })
  it('escapes what a builder wrote', async () => {
    const cut = await simple('cut')
    const html = htmlOf(cut, { pieces: [{ name: 'a <b> & c', length: 1 }, { length: 2 }] })
    expect(html).toContain('a &lt;b&gt; &amp; c, length')
  })
})

describe('what would pass', () => {
  it('says the value, the made size, the distance and what is left in hand', () => {
    // By hand 3.8314 mm², 28 % more than 3 mm²; a tenth more leaves 3 % / 1.1.
    const said = text(htmlOf(named('cable-drop'), run, { check: 'drop' }))
    expect(said).toContain(
      'Cable, now 3.00 mm²: 3.84 mm² or thicker, 28 % more than now. The first made size is 4 mm². At 4.21 mm², 10 % further on: pass. The cable loses 0.327 V, 2.7 % of the supply.',
    )
    const american = text(htmlOf(named('cable-drop'), run, { check: 'drop', units: ['us'] }))
    expect(american).toContain('11 AWG or thicker')
  })
  it('names a choice by its words', () => {
    const cable = { ...run, volts: 96, returnPath: 'chassis' }
    expect(text(htmlOf(named('cable-drop'), cable, { check: 'body' }))).toContain(
      'Return, now the body: a second cable of the same size.',
    )
  })
  it('says when no choice can do it, and what is not offered', async () => {
    const sheet = {
      ...blankNumber({ note: 'note', name: 'tapeLength', date: '', file: '', line: 1, column: 1 }),
      kind: 'reading',
      value: 12,
    } as const
    const numbers = {
      'pieces.0.length': { kind: 'worked', expression: { ref: sheet.id } },
    } as const
    const cut = await simple('cut')
    const pieces = [
      { name: 'long', length: 12 },
      { name: 'short', length: 1 },
    ]
    const said = text(htmlOf(cut, { pieces }, { numbers, more: [sheet] }))
    expect(said).toContain('No choice on this card, changed alone, was found to make it pass')
    expect(said).toContain('Not offered, since no choice: long, length (tape length, measured).')
    const none = text(htmlOf(await simple('lamp'), { volts: 12, amps: 5, casing: 'metal' }))
    expect(none).toContain('No choice on this card')
    const cool = text(htmlOf(await simple('cool'), { conductance: 200, inlet: 333, rise: 10 }))
    expect(cool).toContain('Nothing on this card is the builder’s choice')
  })
  it('says when there is nothing to do', async () => {
    const said = text(htmlOf(await simple('cut'), { pieces: [{ length: 1 }] }))
    expect(said).toContain('It passes as it is: there is nothing to change.')
  })
})

it('every calculator’s examples give sound HTML without a style, and promise nothing', async () => {
  const pages = all.flatMap((calculator) =>
    calculator.examples.map((example, at) =>
      htmlOf(calculator, exampleInputs(calculator, example), {
        units: at % 2 === 0 ? ['metric', 'us'] : ['us', 'metric'],
      }),
    ),
  )
  const page = pages.join('\n')
  expect(page.match(/NaN|undefined|Infinity|\[object|style=|\bsafe\b/gi)).toBeNull()
  const validate = new HtmlValidate({
    extends: ['html-validate:recommended'],
    rules: { 'long-title': 'off', 'no-trailing-whitespace': 'off' },
  })
  const { results } = await validate.validateString(page)
  const said = results.flatMap(({ messages }) => messages.map((m) => `${m.ruleId}: ${m.message}`))
  expect([...new Set(said)]).toEqual([])
})
