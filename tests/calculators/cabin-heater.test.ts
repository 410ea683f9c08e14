/**
 * Cabin heater: power with voltage, the fuse's two sides, and protection that is not known.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cabinHeater } from '../../calculators/auxiliary/cabin-heater.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof cabinHeater.compute>[0]
const heater: Input = {
  power: 1500,
  ratedVolts: 115,
  highestVolts: 131.4,
  element: 'wire',
  fuse: undefined,
  fuseVolts: 250,
  contactorVolts: 250,
  wireRating: 25,
  cutOut: 'yes',
  lastLine: 'yes',
  interlock: 'yes',
  airFlow: undefined,
  minutes: 3600,
  duty: 1,
  consumption: 1000,
  energy: 1e8,
}
const levels = (change: Partial<Input>) => {
  const input = { ...heater, ...change }
  const found = cabinHeater.findings(input, cabinHeater.compute(input), say)
  return Object.fromEntries(found.map(({ check, level }) => [check, level]))
}

test('the fuse is the next standard one that is loaded to 80 % at most', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 100, max: 6000, noNaN: true }),
      fc.double({ min: 60, max: 400, noNaN: true }),
      (power, volts) => {
        const made = { ...heater, power, ratedVolts: volts, highestVolts: volts }
        const { current = NaN, nextFuse = NaN } = cabinHeater.compute(made)
        expect(current).toBeCloseTo(power / volts, 9)
        expect(current / nextFuse).toBeLessThanOrEqual(0.8 + 1e-9)
      },
    ),
  )
})

test('a wire element’s current goes with the voltage, its power with the square', () => {
  const at = (highestVolts: number) => cabinHeater.compute({ ...heater, highestVolts })
  expect((at(230).current ?? NaN) / (at(115).current ?? NaN)).toBeCloseTo(2, 12)
  expect((at(230).mostPower ?? NaN) / (at(115).mostPower ?? NaN)).toBeCloseTo(4, 12)
})

test('voltage ratings: below the highest stops, missing cannot tell', () => {
  expect(levels({ fuseVolts: 131 }).voltage).toBe('stop')
  expect(levels({ fuseVolts: 131, contactorVolts: undefined }).voltage).toBe('stop')
  expect(levels({ contactorVolts: undefined }).voltage).toBe('unknown')
  expect(levels({}).voltage).toBe('pass')
  expect(cabinHeater.checks.voltage.never).toBe(true)
})

test('a fuse above the wire or below the heater stops', () => {
  expect(levels({ fuse: 32 }).fuse).toBe('stop')
  expect(levels({ fuse: 12 }).fuse).toBe('stop')
  expect(levels({ fuse: 16 }).fuse).toBe('watch')
  expect(levels({ fuse: 20 }).fuse).toBe('pass')
  expect(levels({ wireRating: undefined }).fuse).toBe('unknown')
})

test('protection that nobody looked at never passes', () => {
  expect(levels({ interlock: 'unknown' }).protection).toBe('unknown')
  expect(levels({ interlock: 'no' }).protection).toBe('watch')
  expect(levels({ cutOut: 'no', lastLine: 'no', interlock: 'no' }).protection).toBe('stop')
})

test('high voltage brings its hazards, 12 V those of 12 V', () => {
  const input = { ...heater, highestVolts: 60.1 }
  expect(cabinHeater.moreHazards?.(input, cabinHeater.compute(input))).toContain('high-voltage')
  const low = { ...heater, highestVolts: 14.4 }
  expect(cabinHeater.moreHazards?.(low, cabinHeater.compute(low))).toEqual(['low-voltage-burns'])
})

// IEC 60269-1, preferred ratings (recalled).
const ratings = [
  2, 4, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630,
]
test.each(ratings)('up to four fifths of %s A that fuse is named, above the next', (rating) => {
  const next = (current: number) =>
    cabinHeater.compute({
      ...heater,
      power: current * 400,
      ratedVolts: 400,
      highestVolts: 400,
    }).nextFuse
  expect(next(0.8 * rating)).toBe(rating)
  expect(next(0.8 * rating * 1.001)).toBe(ratings.find((one) => one > rating))
})
