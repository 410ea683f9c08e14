/**
 * Units that stand for each other in the two systems: the same quantity, there and back, and as many
 * of one as GNU Units 2.22 and handbooks have of the other.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { counterpart, counterparts, fromSI, toSI, unitOf } from '../../src/quantity/index.ts'
import { isUnit, readUnit } from '../../src/quantity/unit.ts'

const pairs = (['us', 'metric'] as const).flatMap((system) =>
  [...counterparts[system]].map(([from, to]) => ({ from, to, system })),
)

/** SI value of one of a unit, by GNU Units; it has no gauge and absolute marks. */
const gnu = new Map(
  readFileSync(join(import.meta.dirname, '../reference/gnu-units.csv'), 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('1 '))
    .map((line): [string, number] => {
      const [quantity = '', , value] = line.split(',')
      return [quantity.slice(2), Number(value)]
    }),
)
const gnuOf = (unit: string): number | undefined =>
  gnu.get(unit) ?? gnu.get(unit.replace(/ (?:gauge|abs)$/, ''))

describe.each(pairs)('$from, $system first: $to', ({ from, to }) => {
  const [a, b] = [readUnit(from), readUnit(to)]

  test('both are as the kit writes them, of the same dimension, sort and use', () => {
    if (!isUnit(a) || !isUnit(b)) throw new Error('not a unit')
    expect([a.name, b.name]).toEqual([from, to])
    expect(unitOf(to)?.vector).toEqual(unitOf(from)?.vector)
    expect([b.flavour, b.energetic]).toEqual([a.flavour, a.energetic])
  })

  test('there and back', () => {
    // Wire sizes run from 0000 to 40.
    for (const number of from === 'AWG' ? [1, 12, 37] : [1, 37.5, 4000]) {
      const there = fromSI(toSI(number, from), to)
      expect(Math.abs(fromSI(toSI(there, to), from) / number - 1)).toBeLessThan(1e-11)
    }
  })

  const [inSI, otherInSI] = [gnuOf(from), gnuOf(to)]
  test.runIf(inSI !== undefined && otherInSI !== undefined && from !== 'AWG')(
    'as GNU Units has it',
    () => {
      const ratio = (inSI ?? 0) / (otherInSI ?? 0)
      const here = (toSI(2, from) - toSI(1, from)) / (toSI(2, to) - toSI(1, to))
      expect(Math.abs(here / ratio - 1)).toBeLessThan(1e-12)
    },
  )
})

test('no unit has a counterpart in its own system', () => {
  for (const unit of counterparts.us.values()) expect(counterpart(unit, 'us'), unit).toBeUndefined()
  for (const unit of counterparts.metric.values())
    expect(counterpart(unit, 'metric'), unit).toBeUndefined()
})

test('every US unit that is written instead has a way back', () => {
  for (const unit of counterparts.us.values()) expect(counterpart(unit, 'metric')).toBeDefined()
})

// NIST Special Publication 811, 2008 edition, appendix B.8, and B.9 for temperatures.
test.each([
  [25.4, 'mm', 1, 'in'],
  [6.894757, 'kPa', 1, 'psi'],
  [100, 'kPa gauge', 14.50377, 'psi gauge'],
  [3.785412, 'L/min', 1, 'gal/min'],
  [1.355818, 'N·m', 1, 'lb·ft'],
  [4.448222, 'N', 1, 'lbf'],
  [1.609344, 'km/h', 1, 'mph'],
  [16.01846, 'kg/m³', 1, 'lb/ft³'],
  [28.34952, 'g', 1, 'oz'],
  [100, '°C', 212, '°F'],
  [-40, '°C', -40, '°F'],
  [5, 'K', 9, 'Δ°F'],
  [1, 'm³/s', 2118.88, 'ft³/min'],
])('%d %s = %d %s', (number, unit, expected, us) => {
  expect(counterpart(unit, 'us')).toBe(us)
  const here = fromSI(toSI(number, unit), us)
  expect(Math.abs(here - expected)).toBeLessThan(2e-6 * Math.abs(expected))
})

test.each(['A', 'kW', 'W', 'Wh', 'kJ', 'W/K', 'mm²', '%', 'rpm', 'min', '', 'V', 'MΩ'])(
  '`%s` stays in either',
  (unit) => {
    expect([counterpart(unit, 'us'), counterpart(unit, 'metric')]).toEqual([undefined, undefined])
  },
)
