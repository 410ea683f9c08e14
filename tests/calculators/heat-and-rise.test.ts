/** Heat and rise: which heat is used, and what moves the rise. Published cases: its examples. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { heatAndRise } from '../../calculators/cooling/heat-and-rise.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof heatAndRise.compute>[0]

const input: Input = {
  power: 30e3,
  efficiency: 0.9,
  loss: undefined,
  others: undefined,
  duty: 1,
  flow: 8 / 60_000,
  coolant: 'ethylene-glycol',
  concentration: 0.5,
  basis: 'volume',
  temperature: 323.15,
  minimumFlow: undefined,
  peakTime: undefined,
}

function textOf(given: Input, check: string): string {
  const found = heatAndRise.findings(given, heatAndRise.compute(given), say)
  return found.find((each) => each.check === check)?.text ?? ''
}

test('power is what goes in: 30 kW at 90 % lose 3 kW, not 3.33 kW', () => {
  expect(heatAndRise.compute(input).heat).toBeCloseTo(3000, 6)
  expect(heatAndRise.compute({ ...input, power: 6600, efficiency: 0.94 }).heat).toBeCloseTo(396, 6)
})

test('a stated loss wins over the efficiency, and that is said', () => {
  const both = { ...input, loss: 2000 }
  expect(heatAndRise.compute(both).heat).toBe(2000)
  expect(textOf(both, 'efficiency')).toContain(say(2000, 'W'))
  expect(textOf(both, 'efficiency')).toContain(say(3000, 'W'))
})

test('other parts add to either; without a heat of its own nothing is told', () => {
  const others = [
    { name: 'charger', loss: 150 },
    { name: 'DC-DC', loss: 50 },
  ]
  expect(heatAndRise.compute({ ...input, others }).heat).toBeCloseTo(3200, 6)
  expect(heatAndRise.compute({ ...input, others, power: undefined }).heat).toBeUndefined()
})

test('the mean follows duty, the rise does not', () => {
  const resting = heatAndRise.compute({ ...input, duty: 0.25, peakTime: 60 })
  expect(resting.meanHeat).toBeCloseTo(750, 6)
  expect(resting.energy).toBeCloseTo(180_000, 3)
  expect(resting.rise).toBe(heatAndRise.compute(input).rise)
})

test('the rise falls with flow and grows with heat, each in proportion', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
      fc.double({ min: 1.01, max: 5, noNaN: true }),
      fc.constantFrom('ethylene-glycol' as const, 'propylene-glycol' as const, 'water' as const),
      (flow, times, coolant) => {
        const rise = heatAndRise.compute({ ...input, coolant, flow }).rise ?? NaN
        const more = heatAndRise.compute({ ...input, coolant, flow: flow * times }).rise ?? NaN
        const hotter = heatAndRise.compute({ ...input, coolant, flow, power: 30e3 * times })
        expect(more * times).toBeCloseTo(rise, 8)
        expect((hotter.rise ?? NaN) / times).toBeCloseTo(rise, 8)
        expect(more).toBeLessThan(rise)
      },
    ),
  )
})

test('a strength without its basis tells no rise', () => {
  const half = { ...input, basis: undefined }
  expect(heatAndRise.compute(half)).toMatchObject({ rise: undefined, capacityRate: undefined })
  expect(textOf(half, 'concentration')).toContain('by volume or by mass')
})

test.each([
  [5, 'pass'],
  [5.001, 'watch'],
  [10, 'watch'],
  [10.001, 'stop'],
])('a rise of %f K is a %s', (rise, level) => {
  const found = heatAndRise.findings(input, { ...heatAndRise.compute(input), rise }, say)
  expect(found.find(({ check }) => check === 'rise')?.level).toBe(level)
})

test.each([
  ['efficiency', { efficiency: 0.98 }, 'pass', { efficiency: 0.981 }, 'watch'],
  ['concentration', { concentration: 0.25 }, 'pass', { concentration: 0.249 }, 'watch'],
  ['concentration', { concentration: 0.6 }, 'pass', { concentration: 0.601 }, 'stop'],
  ['minimumFlow', { minimumFlow: input.flow }, 'pass', { minimumFlow: input.flow * 1.01 }, 'stop'],
] as const)('%s turns at its limit', (check, before, expected, after, changed) => {
  const level = (given: Input): string | undefined =>
    heatAndRise
      .findings(given, heatAndRise.compute(given), say)
      .find((each) => each.check === check)?.level
  expect(level({ ...input, ...before })).toBe(expected)
  expect(level({ ...input, ...after })).toBe(changed)
})

test('60 % by mass is 57.8 % by volume: not too strong', () => {
  const strong = { ...input, concentration: 0.6, basis: 'mass' } as const
  expect(textOf(strong, 'concentration')).toContain(say(0.578, '%'))
})
