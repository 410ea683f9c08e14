/**
 * Every unit of the kit against two outside implementations: GNU Units 2.22 (its answers are kept in
 * tests/reference/gnu-units.csv, made by the script beside it) and mathjs.
 *
 * A unit without a row, or one that mathjs does not know and the list here does not name, fails.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { unit as mathUnit } from 'mathjs'
import { describe, expect, test } from 'vitest'
import { dimensions, parseQuantity, toSI, unitNames, unitOf } from '../../src/quantity/index.ts'
import type { Vector } from '../../src/quantity/index.ts'

interface Row {
  readonly quantity: string
  readonly value: number
  readonly base: string
}

const rows: readonly Row[] = readFileSync(
  join(import.meta.dirname, '../reference/gnu-units.csv'),
  'utf8',
)
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [quantity = '', , value, base = ''] = line.split(',')
    return { quantity, value: Number(value), base }
  })

/** The outside programs give these by a day's rate of exchange, of which the kit keeps none. */
const otherCurrencies = 'EUR GBP CAD AUD NZD CHF SEK NOK DKK'.split(' ')

const every = [
  ...new Set([
    ...unitNames.filter((name) => name !== '°C' && name !== '°F' && name !== 'AWG'),
    ...Object.values(dimensions)
      .flatMap(({ units, si }) => [...units, si])
      .filter((name) => name !== '' && name !== '1' && name !== '°C' && name !== '°F')
      .filter((name) => name !== 'AWG'),
  ]),
]

describe('GNU Units', () => {
  test.each(rows)('$quantity = $value $base', ({ quantity, value, base }) => {
    const unit = quantity.replace(/^\S+ /, '')
    const of = /^[°]?[CF]$/.test(unit) ? ofLetter(unit) : undefined
    const read = parseQuantity(quantity, of)
    if (!read.ok) throw new Error(read.text)
    expect(relative(read.value, value)).toBeLessThan(1e-13)
    expect(read.vector).toEqual(vectorOf(base))
    expect(read.unit).toBe(unit)
  })

  test('has a row for every unit of the kit', () => {
    const known = new Set(rows.map(({ quantity }) => quantity))
    expect(
      every.filter((unit) => !known.has(`1 ${unit}`) && !otherCurrencies.includes(unit)),
    ).toEqual([])
  })

  test('has rows of temperatures and of wire sizes', () => {
    for (const unit of ['°C', '°F', 'AWG'])
      expect(rows.filter(({ quantity }) => quantity.endsWith(` ${unit}`)).length).toBeGreaterThan(4)
  })
})

/** How mathjs writes the units that it writes otherwise. */
const inMathjs: Readonly<Record<string, string>> = {
  '°': 'deg',
  h: 'hour',
  d: 'day',
  min: 'minute',
  mi: 'mile',
  lb: 'lbm',
  t: 'tonne',
  gal: 'gallon',
  qt: 'quart',
  rev: 'cycle',
}

/** mathjs reads `PS` as a petasiemens; its water and mercury columns know millimetres only. */
const unknownToMathjs =
  'US$ kcmil rpm mph mH2O inH2O ftH2O inHg PS impgal cfm P St % ppm mP cP cSt AWG'.split(' ')

/** mathjs keeps these with fewer digits. */
const fewDigits: Readonly<Record<string, number>> = {
  psi: 1e-10,
  hp: 1e-10,
  torr: 3e-6,
  mmHg: 3e-6,
}

const points = ['°C', '°F']
const differences = ['Δ°C', 'Δ°F']

describe('mathjs', () => {
  const known = unitNames.filter(
    (name) => ![...unknownToMathjs, ...otherCurrencies, ...points].includes(name),
  )

  test.each(known.filter((name) => !differences.includes(name)))('1 %s', (name) => {
    const typed = inMathjs[name] ?? name.replace('µ', 'u').replace('Ω', 'ohm')
    const vector = unitOf(name)?.vector ?? []
    const base = ['m', 'kg', 's', 'A', 'K', 'rad'].map((axis, i) => `${axis}^${vector[i] ?? 0}`)
    const outside = mathUnit(1, typed).toNumber(base.join(' '))
    expect(relative(toSI(1, name), outside)).toBeLessThan(fewDigits[name] ?? 1e-12)
  })

  test.each(differences)('1 W per %s', (name) => {
    const outside = mathUnit(1, `W/${name.replace('Δ°', 'deg')}`).toNumber('W/K')
    expect(relative(1 / toSI(1, name), outside)).toBeLessThan(1e-12)
  })

  test.each(points)('-40, 0, 65, 212 %s', (name) => {
    for (const degrees of [-40, 0, 65, 212])
      expect(toSI(degrees, name)).toBeCloseTo(
        mathUnit(degrees, name.replace('°', 'deg')).toNumber('K'),
        10,
      )
  })

  test('knows none of the units that are left out here', () => {
    for (const name of unknownToMathjs.filter((name) => name !== 'PS'))
      expect(() => mathUnit(1, name), name).toThrow()
  })
})

function ofLetter(unit: string): 'temperature' | 'charge' | 'capacitance' {
  return unit.startsWith('°') ? 'temperature' : unit === 'C' ? 'charge' : 'capacitance'
}

/** No row has any. */
const noOtherMoney = [0, 0, 0, 0, 0, 0, 0, 0, 0] as const

const relative = (a: number, b: number): number => Math.abs(a - b) / Math.abs(b)

/** `kg m^2 / A s^3` as exponents. */
function vectorOf(base: string): Vector {
  const power = (name: string): number => {
    const [above = '', below = ''] = ` ${base} `.split('/')
    const inside = (side: string): number => {
      const found = new RegExp(`(?:^| )${name.replace('$', '\\$')}(?:\\^(\\d+))?(?= |$)`).exec(side)
      return found ? Number(found[1] ?? 1) : 0
    }
    return inside(above) - inside(below)
  }
  return [
    power('m'),
    power('kg'),
    power('s'),
    power('A'),
    power('K'),
    power('radian'),
    power('US$'),
    ...noOtherMoney,
  ]
}
