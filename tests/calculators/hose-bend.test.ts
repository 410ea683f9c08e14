/**
 * Bend radii and clamps against the printed tables, and what must hold for any hose.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { hoseBend } from '../../calculators/cooling/hose-bend.ts'
import { hoseBendRadii } from '../../calculators/tables/hose-bend-radii.ts'
import { hoseClamps } from '../../calculators/tables/hose-clamps.ts'
import { toSI } from '../../src/quantity/index.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

type Input = Parameters<typeof hoseBend.compute>[0]
const hose: Input = {
  kind: 'braid',
  outside: 0.0274,
  bore: 0.0159,
  radius: 0.2,
  angle: Math.PI / 2,
  straight: 0.3,
  cut: undefined,
  sheetRadius: undefined,
  spigot: undefined,
}
const work = (change: Partial<Input> = {}) => hoseBend.compute({ ...hose, ...change })
const levels = (change: Partial<Input>) => {
  const input = { ...hose, ...change }
  const found = hoseBend.findings(
    input,
    hoseBend.compute(input),
    (value, unit) => `${value} ${unit}`,
  )
  return Object.fromEntries(found.map(({ check, level }) => [check, level]))
}

test('the table of bend radii is the printed one', () => {
  const printed = rowsOf('hose_bend_milh8794.csv').map((row) => [
    row.dash,
    boreIn(row.hose_ID_in ?? ''),
    numberIn(row, 'hose_OD_in'),
    numberIn(row, 'min_bend_radius_in'),
  ])
  expect(hoseBendRadii.rows).toEqual(printed)
})

test('the table of clamps is the printed one', () => {
  const printed = rowsOf('hose_clamps_saej1508.csv').map((row) => [
    row.size,
    numberIn(row, 'closed_mm'),
    numberIn(row, 'open_mm'),
  ])
  expect(hoseClamps.rows).toEqual(printed)
})

test.each(rowsOf('hose_bend_milh8794.csv'))('size $dash, by its bore of $hose_ID_in in', (row) => {
  const { leastRadius } = work({ bore: toSI(boreIn(row.hose_ID_in ?? ''), 'in') })
  expect((leastRadius ?? NaN) * 1000).toBeCloseTo(numberIn(row, 'min_bend_radius_mm'), 1)
})

test('a bore between two sizes takes the larger; 16 mm is sold as 5/8 in; past the table unknown', () => {
  expect(work({ bore: 0.016 }).leastRadius).toBeCloseTo(toSI(6.5, 'in'), 9)
  expect(work({ bore: 0.018 }).leastRadius).toBeCloseTo(toSI(7.38, 'in'), 9)
  expect(work({ bore: 0.08, outside: 0.1 }).leastRadius).toBeUndefined()
  expect(levels({ bore: 0.08, outside: 0.1 }).bend).toBe('unknown')
})

test('stretched onto its spigot the rubber keeps its cross-section', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.008, max: 0.04, noNaN: true }),
      fc.double({ min: 1.2, max: 2, noNaN: true }),
      fc.double({ min: 1, max: 1.2, noNaN: true }),
      (bore, thick, over) => {
        const outside = bore * thick
        const spigot = bore * over
        const { clamped = NaN } = work({ bore, outside, spigot })
        expect(clamped ** 2 - spigot ** 2).toBeCloseTo(outside ** 2 - bore ** 2, 12)
        expect(clamped).toBeGreaterThanOrEqual(outside * (1 - 1e-12))
      },
    ),
  )
})

test('whatever clamp is named reaches the hose', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.0125, max: 0.11, noNaN: true }), (outside) => {
      const input = { outside, bore: outside * 0.7, spigot: outside * 0.7 }
      const { clamp, clampCloses, clampOpens } = work(input)
      expect(clamp).toBeDefined()
      expect(clampCloses).toBeGreaterThanOrEqual(0)
      expect(clampOpens).toBeGreaterThanOrEqual(0)
      expect(levels(input).clamp).toBe('pass')
    }),
  )
})

test.each([
  [0.05, 'pass'],
  [0.08, 'pass'],
  [0.049, 'watch'],
  [0.081, 'watch'],
  [-0.001, 'stop'],
] as const)('slack of %s: %s', (slack, level) => {
  const way = work().way ?? NaN
  expect(levels({ cut: way * (1 + slack) * (1 + 1e-12) - (slack === 0.08 ? 1e-9 : 0) }).slack).toBe(
    level,
  )
})

test.each([
  [0.6, 0],
  [0.62, 1],
  [1.3, 2],
] as const)('%s m of hose has %s supports', (cut, supports) => {
  expect(work({ cut }).supports).toBe(supports)
})

test('a sheet wins over the table and over five diameters', () => {
  expect(work({ sheetRadius: 0.05 }).leastRadius).toBe(0.05)
  expect(levels({ kind: 'plain', sheetRadius: 0.05, radius: 0.049 }).bend).toBe('stop')
  expect(levels({ kind: 'plain', radius: 0.12 }).bend).toBe('watch')
})

function boreIn(text: string): number {
  return text.split(' ').reduce(
    (sum, part) =>
      sum +
      part
        .split('/')
        .map(Number)
        .reduce((a, b) => a / b),
    0,
  )
}
