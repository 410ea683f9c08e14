/**
 * The pressure test's correction and its limits.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { leakTest } from '../../calculators/cooling/leak-test.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof leakTest.compute>[0]
const held: Input = {
  start: 100e3,
  end: 100e3,
  duration: 900,
  startTemperature: 293.15,
  endTemperature: 293.15,
  division: 500,
  weakest: 200e3,
  cap: 110e3,
  altitude: 0,
}
const findings = (change: Partial<Input>) => {
  const input = { ...held, ...change }
  return leakTest.findings(input, leakTest.compute(input), say)
}
const levels = (change: Partial<Input>) =>
  Object.fromEntries(findings(change).map(({ check, level }) => [check, level]))

test('a tight loop that cools and warms again comes back to where it was', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 270, max: 310, noNaN: true }),
      fc.double({ min: 20e3, max: 150e3, noNaN: true }),
      (endTemperature, start) => {
        const cold = leakTest.compute({ ...held, start, endTemperature }).expected ?? NaN
        const back = leakTest.compute({
          ...held,
          start: cold,
          startTemperature: endTemperature,
          endTemperature: held.startTemperature,
        })
        expect(back.expected).toBeCloseTo(start, 6)
      },
    ),
  )
})

test('twice the time at twice the drop is the same leak', () => {
  const once = leakTest.compute({ ...held, end: 97e3 })
  const twice = leakTest.compute({ ...held, end: 94e3, duration: 1800 })
  expect(twice.lost).toBeCloseTo(once.lost ?? NaN, 12)
})

test.each([
  [98_001, 'pass'],
  [97_999, 'watch'],
  [95_001, 'watch'],
  [94_999, 'stop'],
] as const)('100 kPa down to %s Pa in 15 minutes: %s', (end, level) => {
  expect(levels({ end }).loss).toBe(level)
})

test('the lowest of ratings and cap decides; nobody may go above', () => {
  expect(levels({ start: 111e3, end: 111e3 }).rating).toBe('stop')
  expect(levels({ weakest: 90e3 }).rating).toBe('stop')
  expect(levels({ weakest: undefined }).rating).toBe('unknown')
  expect(levels({ weakest: undefined, cap: 90e3 }).rating).toBe('stop')
  expect(leakTest.checks.rating.never).toBe(true)
})

test('a pressure that rose more than the gauge’s division tells nothing', () => {
  expect(levels({ end: 104e3 }).loss).toBe('unknown')
  expect(levels({ end: 100.4e3 }).loss).toBe('pass')
})

test('a drop that shows is a leak even on a coarse gauge', () => {
  expect(levels({ end: 80e3, division: 5000 }).loss).toBe('stop')
  expect(levels({ end: 99e3, division: 5000 }).loss).toBe('unknown')
})
