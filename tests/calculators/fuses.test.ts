/**
 * Blade fuses: ratings and times against the recalled table of ISO 8820-3, and the order that must
 * hold whatever its numbers are. The table was not at hand, so these tests show only that it is used
 * as written and never optimistically between its points.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bladeRatings,
  longestOpening,
  ratingsBetween,
  shortestOpening,
} from '../../calculators/fuses.ts'
import { rowsOf } from '../reference/csv.ts'

const styles = ['mini', 'medium', 'maxi'] as const
const multiples = fc.double({ min: 1, max: 8, noNaN: true })

test.each(
  rowsOf('fuse_times.csv')
    .map(({ current = '', t_min_s = '' }) => ({
      multiple: parseFloat(current) / 100,
      seconds: parseFloat(t_min_s.replace('(', '')),
    }))
    .filter(({ multiple }) => multiple > 1.1),
)('at $multiple of its rating not before $seconds s', ({ multiple, seconds }) => {
  expect(shortestOpening(multiple)).toBe(seconds)
})

test('up to 110 % it carries for ever, beyond 600 % nothing is promised', () => {
  expect(shortestOpening(1.1)).toBe(Infinity)
  expect(shortestOpening(6.01)).toBe(0)
})

test('never later at a higher current, and never later than the latest', () => {
  fc.assert(
    fc.property(multiples, multiples, fc.constantFrom(...styles), (a, b, style) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)]
      expect(shortestOpening(high)).toBeLessThanOrEqual(shortestOpening(low))
      expect(shortestOpening(a)).toBeLessThanOrEqual(longestOpening(style, a) ?? Infinity)
    }),
  )
})

// A single heated element: T ∝ I² (1 − e^(−t/τ)), opening at the temperature 110 % ends at.
test('between 110 and 135 % it is one heated element that opens at 0.75 s at 135 %', () => {
  const opensAt = 1.1 ** 2
  const tau = -0.75 / Math.log1p(-opensAt / 1.35 ** 2)
  for (const multiple of [1.101, 1.15, 1.2, 1.25, 1.3, 1.34]) {
    const reached = multiple ** 2 * -Math.expm1(-shortestOpening(multiple) / tau)
    expect(reached).toBeCloseTo(opensAt, 9)
  }
})

describe('the next rating up', () => {
  // Boundaries: 12 A / 0.8 is 15 A exactly and must not jump to 20 A.
  test.each([
    [10, 0.75, 1, 15],
    [12, 0.8, 1, 15],
    [12, 0.75, 0.92, 20],
    [6, 0.8, 1, 7.5],
    [22, 0.75, 0.9, 35],
  ])('%d A at %d and %d for heat', (amps, share, heat, rating) => {
    expect(ratingsBetween('medium', amps / (share * heat), Infinity)[0]).toBe(rating)
  })

  test('a mini has none above 30 A', () => {
    expect(ratingsBetween('mini', 22 / (0.75 * 0.9), Infinity)).toEqual([])
  })

  test.each(styles)('%s ratings rise', (style) => {
    const ratings = bladeRatings[style]
    expect([...ratings].sort((a, b) => a - b)).toEqual(ratings)
  })
})

test('a rating equal to what is asked for counts at both ends', () => {
  expect(ratingsBetween('medium', 15, 20)).toEqual([15, 20])
  expect(ratingsBetween('medium', 14.9, 20.1)).toEqual([15, 20])
  expect(ratingsBetween('medium', 15.01, 19.99)).toEqual([])
  // Twelve over four fifths is not fifteen to the last bit.
  expect(ratingsBetween('medium', 12 / 0.8, 3 * (5 + 1e-15))).toEqual([15])
  expect(shortestOpening(1.1)).toBe(Infinity)
})
