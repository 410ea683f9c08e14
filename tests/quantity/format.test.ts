/**
 * Numbers and quantities as text: figures, grouping, signs, sizes, and the same text in any locale.
 */
import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { formatNumber, formatQuantity, quantityParts, toSI } from '../../src/quantity/index.ts'

describe('formatNumber', () => {
  test.each([
    [8.7512, 3, '8.75'],
    [8, 3, '8.00'],
    [0, 3, '0'],
    [-0, 3, '0'],
    [0.000123456, 3, '1.23 × 10⁻⁴'.replace('1.23 × 10⁻⁴', '0.000123')],
    [0.0000123456, 3, '1.23 × 10⁻⁵'],
    [1.2e-7, 2, '1.2 × 10⁻⁷'],
    [-1.2e-7, 2, '−1.2 × 10⁻⁷'],
    [1234.5, 3, '1230'],
    [1234.5, 5, '1234.5'],
    [9999, 4, '9999'],
    [9999.6, 4, '10\u202F000'],
    [12345.6, 3, '12\u202F300'],
    [1234567, 7, '1\u202F234\u202F567'],
    [999999999, 3, '1.00 × 10⁹'],
    [-8.7512, 3, '−8.75'],
    [0.999, 2, '1.0'],
    [2.5, 1, '3'],
    [600, 2, '600'],
    [5, 0, '5'],
    [1 / 3, 15, '0.333333333333333'],
  ])('%s with %s figures: %s', (value, figures, text) => {
    expect(formatNumber(value, figures)).toBe(text)
  })

  test('refuses what is no number', () => {
    for (const value of [Number.NaN, Infinity, -Infinity])
      expect(() => formatNumber(value, 3)).toThrow('only a finite number can be printed')
  })
})

describe('formatQuantity', () => {
  test.each([
    [1.4583e-4, 'L/min', {}, '8.75 L/min'],
    [1.4583e-4, 'gal/min', { figures: 2 }, '2.3 gal/min'],
    [0.45, '%', {}, '45.0 %'],
    [0.45, '%', { decimals: 0 }, '45 %'],
    [0.45, '', { figures: 2 }, '0.45'],
    [0.45, '1', { figures: 2 }, '0.45'],
    [Math.PI / 15, '°', { figures: 2 }, '12 °'],
    [338.15, '°C', {}, '65.0 °C'],
    [338.15, '°C', { figures: 2 }, '65 °C'],
    [338.15, '°C', { figures: 1 }, '65 °C'],
    [338.15, '°C', { figures: 6 }, '65.0 °C'],
    [338.15, '°C', { decimals: 2 }, '65.00 °C'],
    [373.15, '°F', { figures: 4 }, '212.0 °F'],
    [273.15, '°C', {}, '0.0 °C'],
    [233.15, '°F', {}, '−40.0 °F'],
    [338.15, 'K', {}, '338 K'],
    [6, 'K', { figures: 2 }, '6.0 K'],
    [5, 'Δ°F', { figures: 2 }, '9.0 Δ°F'],
    [206842.71879505, 'psi gauge', { figures: 2 }, '30 psi gauge'],
    [0.0127, 'in', { exact: true }, '0.5 in'],
    [0.1 + 0.2, 'm', { exact: true }, '0.3 m'],
    [toSI(1.1, 'mm'), 'mm', { exact: true }, '1.1 mm'],
    [12345.5, 'W', { exact: true }, '12\u202F345.5 W'],
    [12345.5, 'W', { exact: true, decimals: 0 }, '12\u202F346 W'],
    [1e-9, 'F', { exact: true }, '1 × 10⁻⁹ F'],
    [-0.00001, 'm', { decimals: 2 }, '0.00 m'],
    [toSI(18, 'AWG'), 'AWG', {}, '18 AWG'],
    [toSI(-1, 'AWG'), 'AWG', {}, '2/0 AWG'],
    [toSI(0, 'AWG'), 'AWG', { exact: true }, '1/0 AWG'],
    [toSI(-3, 'AWG'), 'AWG', {}, '4/0 AWG'],
    [1e-6, 'AWG', {}, '≈ 17 AWG'],
    [50e-6, 'AWG', {}, '≈ 1/0 AWG'],
    [120e-6, 'AWG', {}, '237 kcmil'],
  ] as const)('%s in `%s` %j: %s', (value, unit, options, text) => {
    expect(formatQuantity(value, unit, options)).toBe(
      text.replace(/ (?!\d+ AWG|1\/0|10[⁻⁰-⁹]|× )/, '\u00A0'),
    )
  })

  test('is the number and the unit, joined by a no-break space', () => {
    expect(quantityParts(2, 'lb·ft')).toEqual({ number: '1.48', unit: 'lb·ft' })
    expect(formatQuantity(2, 'lb·ft')).toBe('1.48\u00A0lb·ft')
    expect(quantityParts(2, '')).toEqual({ number: '2.00', unit: '' })
  })

  test('refuses a unit that the kit does not know: a mistake in the program', () => {
    expect(() => formatQuantity(1, 'furlong')).toThrow('`furlong` is not a unit of this kit')
    expect(() => toSI(1, 'furlong')).toThrow('`furlong` is not a unit of this kit')
  })
})

test('the text is the same whatever the language, time zone and locale of the machine', () => {
  const program = `
    import { formatQuantity } from ${JSON.stringify(join(import.meta.dirname, '../../src/quantity/index.ts'))}
    const shown = [[1234567.5, 'W'], [-0.00012, 'm'], [338.15, '°F'], [1.2e-7, 'F']]
    process.stdout.write(shown.map(([value, unit]) => formatQuantity(value, unit, { figures: 5 })).join('|'))`
  const run = (locale: string, zone: string): string =>
    execFileSync(process.execPath, ['--input-type=module', '--eval', program], {
      encoding: 'utf8',
      env: { ...process.env, LANG: locale, LC_ALL: locale, LANGUAGE: locale, TZ: zone },
    })
  const here = '1\u202F234\u202F600\u00A0W|−0.00012000\u00A0m|149.0\u00A0°F|1.2000 × 10⁻⁷\u00A0F'
  expect(run('de_DE.UTF-8', 'Asia/Kathmandu')).toBe(
    here.replace('1\u202F234\u202F600', '1\u202F234\u202F600'),
  )
  expect(run('C', 'UTC')).toBe(here)
  expect(run('hi_IN.UTF-8', 'America/St_Johns')).toBe(here)
})
