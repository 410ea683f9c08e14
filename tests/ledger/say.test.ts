/** What calculators write in their sentences, in a site's first system of units. */
import { describe, expect, test } from 'vitest'
import { say, sayFor } from '../../src/ledger/say.ts'
import { toSI } from '../../src/quantity/index.ts'
import { blockOf, settings, soundLedger } from './ledger-of.ts'
import { trivial } from './trivial.ts'

const us = sayFor(['us', 'metric'])
const metric = sayFor(['metric', 'us'])
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ')

describe('US units first', () => {
  // Converted by NIST SP 811, appendix B.8.
  test.each([
    [10, 'L/min', undefined, '2.64 gal/min'],
    [150, 'kPa gauge', undefined, '21.8 psi gauge'],
    [65, '°C', undefined, '149 °F'],
    [5, 'K', 1, '9 Δ°F'],
    [10, 'K', 2, '18 Δ°F'],
    [1, 'bar', 1, '14.5 psi'],
    [50, 'mm', 1, '1.97 in'],
    [0, 'mm', 1, '0 in'],
    [-20, 'kPa gauge', 1, '−2.9 psi gauge'],
    [1000, 'm', 4, '3281 ft'],
    [1000, 'kg', 4, '2205 lb'],
    [80, 'km/h', 2, '49.7 mph'],
    [20, 'kN', undefined, '4500 lbf'],
    [12, 'kW', undefined, '12.0 kW'],
    [12, 'V', 2, '12 V'],
    [2.5, 'mm²', 2, '2.5 mm²'],
    [18, 'lb·ft', undefined, '18.0 lb·ft'],
  ])('%d %s to %s figures: %s', (number, unit, figures, text) => {
    expect(plain(us(toSI(number, unit), unit, figures))).toBe(text)
  })

  test('what is unknown is said so', () => {
    expect(us(undefined, 'L/min')).toBe(say(undefined, 'L/min'))
  })

  test('it is worked from the value, not from the rounded text', () => {
    // 1.004 mm is 1.00 mm and 0.0395 in; 1.00 mm would be 0.0394 in.
    expect(plain(us(1.004e-3, 'mm'))).toBe('0.0395 in')
  })
})

describe('metric units first', () => {
  test.each([
    [1, 'in', undefined, '25.4 mm'],
    [100, 'psi', undefined, '689 kPa'],
    [212, '°F', undefined, '100 °C'],
    [9, 'Δ°F', 1, '5 K'],
    [300, 'Wh/mi', undefined, '186 Wh/km'],
    [10, 'L/min', undefined, '10.0 L/min'],
    [5, 'K', 1, '5 K'],
  ])('%d %s to %s figures: %s', (number, unit, figures, text) => {
    expect(plain(metric(toSI(number, unit), unit, figures))).toBe(text)
  })
})

test('only the first system of a site counts', () => {
  expect(sayFor(['us'])(1, 'm')).toBe(us(1, 'm'))
  expect(sayFor(['metric'])(1, 'm')).toBe(metric(1, 'm'))
})

describe('a block', () => {
  const body = '<Calc id="c" use="cut" pieces={[{ length: "1 m" }, { length: "2 m" }]} />'
  const written = async (units: string) => {
    const ledger = await soundLedger({ n: body }, trivial, `${settings}units: [${units}]\n`)
    const { findings, working } = blockOf(ledger, 'n/c')
    return [findings[0]?.text ?? '', ...working].map(plain)
  }

  // 3 m by the international foot, 0.3048 m.
  test.each([
    ['us, metric', '9.84 ft'],
    ['us', '9.84 ft'],
    ['metric, us', '3.00 m'],
    ['metric', '3.00 m'],
  ])('of a site with units: %s', async (units, total) => {
    expect(await written(units)).toEqual([`${total} in all.`, `ΣL = ${total}`])
  })
})
