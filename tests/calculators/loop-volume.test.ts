/**
 * Expansion against density tables, and fill and air space at their limits.
 */
import { expect, test } from 'vitest'
import { loopVolume } from '../../calculators/cooling/loop-volume.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof loopVolume.compute>[0]
const zero = 273.15
const loop: Input = {
  hoses: undefined,
  parts: [{ name: 'all', volume: 0.01 }],
  coolant: 'ethylene-glycol',
  concentration: 0.5,
  basis: 'volume',
  coldTemperature: 20 + zero,
  hotTemperature: 80 + zero,
  filled: undefined,
  airSpace: undefined,
}
const levels = (change: Partial<Input>) => {
  const input = { ...loop, ...change }
  const found = loopVolume.findings(input, loopVolume.compute(input), say)
  return Object.fromEntries(found.map(({ check, level }) => [check, level]))
}

test.each(rowsOf('coolant_expansion.csv'))('$fluid $vol_percent, $T1_C to $T2_C °C', (row) => {
  const { expansion, expansionShare } = loopVolume.compute({
    ...loop,
    coolant:
      row.fluid === 'water' ? 'water' : row.fluid === 'EG' ? 'ethylene-glycol' : 'propylene-glycol',
    concentration: Number(row.vol_percent) / 100,
    coldTemperature: numberIn(row, 'T1_C') + zero,
    hotTemperature: numberIn(row, 'T2_C') + zero,
  })
  expect(Math.abs((expansionShare ?? NaN) * 100 - numberIn(row, 'expansion_percent'))).toBeLessThan(
    0.05,
  )
  expect(Math.abs((expansion ?? NaN) * 1000 - numberIn(row, 'litres_per_10_L'))).toBeLessThan(0.005)
})

test.each([
  [0.0097001, 'pass'],
  [0.0096999, 'watch'],
  [0.0092001, 'watch'],
  [0.0091999, 'stop'],
  [0.0105001, 'watch'],
] as const)('%s m³ of 0.01 filled: %s', (filled, level) => {
  expect(levels({ filled }).fill).toBe(level)
})

test.each([
  [1.501, 'pass'],
  [1.499, 'watch'],
  [0.999, 'stop'],
] as const)('air space %s times the expansion: %s', (times, level) => {
  const { expansion = NaN } = loopVolume.compute(loop)
  expect(levels({ airSpace: times * expansion }).air).toBe(level)
})

test('colder when hot than when cold expands nothing rather than less than nothing', () => {
  const swapped = loopVolume.compute({ ...loop, coldTemperature: 330, hotTemperature: 290 })
  expect(swapped.expansion).toBe(0)
})
