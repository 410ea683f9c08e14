/**
 * Wire data against ASTM B258 and NBS Handbook 100, IEC 60228, 33 CFR 183.425 and FAA AC 43.13-1B,
 * and what must hold between them whatever the tables say.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  aircraftTable,
  boatEngineTable,
  boatTable,
  flexiblePerMetre,
  gaugeArea,
  heated,
  loomTable,
  nextSize,
  printedAmpacity,
  sizeUnit,
  solidPerMetre,
  standardSizes,
} from '../../calculators/wire.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

/** 0000 is −3, 000 −2, 00 −1. */
const gaugeOf = (name: string) => (/^0+$/.test(name) ? 1 - name.length : Number(name))
const celsius = (degrees: number) => degrees + 273.15
const areas = fc.double({ min: 2e-7, max: 3e-4, noNaN: true })

describe.each(rowsOf('awg.csv'))('$AWG AWG', (row) => {
  const area = gaugeArea(gaugeOf(row.AWG ?? ''))

  test('area and resistance', () => {
    expect(area * 1e6).toBeCloseTo(numberIn(row, 'area_mm2'), 3)
    // The table rounds 1/58 to 0.017241, 22 parts in a million lower.
    const ohms = solidPerMetre(area) * 1e3
    expect(ohms / numberIn(row, 'R20_mohm_per_m')).toBeCloseTo(1, 4)
    expect((ohms * heated(celsius(80))) / numberIn(row, 'R80_mohm_per_m')).toBeCloseTo(1, 4)
  })

  test('NBS Handbook 100 prints the same within 0.1 %', () => {
    const perThousandFeet = solidPerMetre(area) * 304.8
    const printed = numberIn(row, 'NBS_Hb100_ohm_per_1000ft_MEMORY')
    expect(Math.abs(perThousandFeet / printed - 1)).toBeLessThan(1e-3)
  })

  test('is told from a metric size', () => {
    expect(sizeUnit(area)).toBe('AWG')
    expect(standardSizes(area).every((size) => sizeUnit(size) === 'AWG')).toBe(true)
  })
})

test.each(rowsOf('wire_iec60228.csv'))('class 5 limit of $area_mm2 mm²', (row) => {
  const size = numberIn(row, 'area_mm2')
  expect(flexiblePerMetre(size * 1e-6) * 1e3).toBeCloseTo(numberIn(row, 'class5_6_plain'), 6)
  expect(sizeUnit(size * 1e-6)).toBe('mm²')
})

// IEC 60228 prints factors that bring a reading back to 20 °C, made with α = 0.004.
test.each([
  [5, 1.064],
  [10, 1.042],
  [15, 1.02],
  [25, 0.98],
  [30, 0.962],
  [40, 0.926],
  [50, 0.893],
  [60, 0.862],
  [70, 0.833],
  [80, 0.806],
  [90, 0.781],
  [100, 0.758],
])('IEC 60228 temperature factor at %d °C within 0.5 %%', (degrees, factor) => {
  expect(Math.abs(heated(celsius(degrees)) * factor - 1)).toBeLessThan(5e-3)
})

test('AC 43.13-1B: 100 ft at 20 °C is 86.418 ft at 60 °C', () => {
  expect(Math.abs(100 / heated(celsius(60)) / 86.418 - 1)).toBeLessThan(1e-4)
})

describe.each(rowsOf('ampacity_33cfr183.csv'))('33 CFR 183.425, $AWG AWG', (row) => {
  const area = gaugeArea(gaugeOf(row.AWG ?? ''))

  test.each(['60C', '75C', '80C', '90C', '105C', '125C', '200C'] as const)('%s', (insulation) => {
    expect(printedAmpacity(boatTable, insulation, area)).toBe(numberIn(row, insulation))
  })

  // Marine wire charts print 0.85 of the 105 °C column for engine spaces.
  test('in an engine space at 105 °C', () => {
    expect(printedAmpacity(boatEngineTable, '105C', area)).toBeCloseTo(
      0.85 * numberIn(row, '105C'),
      9,
    )
  })
})

test.each(rowsOf('wire_ac4313.csv'))('AC 43.13-1B, table 11-9, $AWG AWG', (row) => {
  const area = gaugeArea(gaugeOf(row.AWG ?? ''))
  expect(printedAmpacity(aircraftTable, '105C', area)).toBe(numberIn(row, 'A_105C'))
  expect(printedAmpacity(aircraftTable, '150C', area)).toBe(numberIn(row, 'A_150C'))
  expect(printedAmpacity(aircraftTable, '200C', area)).toBe(numberIn(row, 'A_200C'))
})

// Two bodies, two bases: what aircraft practice fuses a wire at, marine practice lets it carry.
test.each(rowsOf('fuse_wire_ac4313.csv').filter(({ AWG_copper }) => Number(AWG_copper) <= 18))(
  'AC 43.13-1B fuses $AWG_copper AWG at no more than its engine-space rating',
  (row) => {
    const area = gaugeArea(Number(row.AWG_copper))
    const rating = printedAmpacity(boatEngineTable, '105C', area) ?? 0
    expect(rating).toBeGreaterThanOrEqual(numberIn(row, 'fuse_A'))
  },
)

test('thinner than the table, or a class it lacks, is not known', () => {
  expect(printedAmpacity(loomTable, '70C', 0.5e-6)).toBeUndefined()
  expect(printedAmpacity(loomTable, '105C', 1e-6)).toBeUndefined()
  expect(printedAmpacity(boatTable, '105C', gaugeArea(20))).toBeUndefined()
})

test.each([loomTable, boatTable, boatEngineTable, aircraftTable])(
  'a thicker wire never carries less',
  (table) => {
    fc.assert(
      fc.property(areas, areas, fc.constantFrom(...table.classes), (a, b, insulation) => {
        const thin = printedAmpacity(table, insulation, Math.min(a, b)) ?? 0
        const thick = printedAmpacity(table, insulation, Math.max(a, b)) ?? 0
        expect(thick).toBeGreaterThanOrEqual(thin)
      }),
    )
  },
)

test('a thicker cable never resists more, and flexible never less than solid', () => {
  fc.assert(
    fc.property(areas, areas, (a, b) => {
      const [thin, thick] = [Math.min(a, b), Math.max(a, b)]
      expect(flexiblePerMetre(thick)).toBeLessThanOrEqual(flexiblePerMetre(thin))
      expect(flexiblePerMetre(a)).toBeGreaterThan(solidPerMetre(a))
      expect(flexiblePerMetre(a)).toBeLessThan(1.17 * solidPerMetre(a))
    }),
  )
})

test('the next size up is the next one of its own family', () => {
  expect(nextSize(6e-6)).toBeCloseTo(10e-6, 12)
  expect(nextSize(gaugeArea(10))).toBeCloseTo(gaugeArea(8), 12)
  expect(nextSize(gaugeArea(1))).toBeCloseTo(gaugeArea(0), 12)
  expect(nextSize(240e-6)).toBeUndefined()
  expect(nextSize(gaugeArea(-3))).toBeUndefined()
})

test.each([
  [0.2, 0.35],
  [0.35, 0.5],
  [50, 70],
  [95, 120],
  [120, 150],
  [150, 185],
  [185, 240],
])('after %s mm² one buys %s mm²', (size, next) => {
  expect((nextSize(size * 1e-6) ?? NaN) * 1e6).toBeCloseTo(next, 9)
})

test('the largest has no next; a wire is of a family within a thousandth', () => {
  expect(nextSize(240e-6)).toBeUndefined()
  expect(sizeUnit(2.5e-6 * 1.0009)).toBe('mm²')
  const gauge = gaugeArea(10)
  expect([0.9991, 1.0009].map((part) => sizeUnit(gauge * part))).toEqual(['AWG', 'AWG'])
  expect([0.998, 1.002].map((part) => sizeUnit(gauge * part))).toEqual(['mm²', 'mm²'])
  // 17 AWG is 1.04 mm²: no metric size, and no gauge one buys, but a gauge.
  expect(sizeUnit(gaugeArea(17))).toBe('AWG')
})

test('outside the printed sizes the resistance goes with the area', () => {
  // IEC 60228, class 5: 39.0 Ω/km at 0.5 mm², 0.129 Ω/km at 150 mm².
  expect(flexiblePerMetre(0.25e-6) * 1000).toBeCloseTo(78, 6)
  expect(flexiblePerMetre(300e-6) * 1000).toBeCloseTo(0.0645, 6)
})

test('a wire is of a family to the thousandth, and the next size is more than that above it', () => {
  const gauge = gaugeArea(10)
  expect([0.0995, 0.1005].map((percent) => sizeUnit(gauge / (1 + percent / 100)))).toEqual([
    'AWG',
    'mm²',
  ])
  expect((nextSize(1e-6 / 1.0005) ?? NaN) * 1e6).toBeCloseTo(1.5, 9)
  expect((nextSize(1e-6 / 1.005) ?? NaN) * 1e6).toBeCloseTo(1, 9)
})

test('ASTM B258 gauges end at 40 here', () => {
  expect(sizeUnit(gaugeArea(40))).toBe('AWG')
  expect(sizeUnit(gaugeArea(41))).toBe('mm²')
})

// 33 CFR 183.425, table 5, at 105 °C: 4/0 carries 445 A, 3/0 385 A, 2/0 330 A.
test.each([
  [-3, 445, 385],
  [-2, 385, 330],
])('a wire a thousandth thinner than gauge %s is the next thinner one', (gauge, own, thinner) => {
  const area = gaugeArea(gauge)
  expect(printedAmpacity(boatTable, '105C', area)).toBe(own)
  expect(printedAmpacity(boatTable, '105C', area * 0.999)).toBe(thinner)
  expect(printedAmpacity(boatTable, '105C', area * 1.001)).toBe(own)
})
