/** Roots that are known elsewhere, and the cases in which there is none to give. */
import { expect, test } from 'vitest'
import { findRoot } from '../../calculators/solve.ts'

test('finds roots printed in textbooks of numerical methods', () => {
  // Dottie number; Wallis' cubic (1685).
  expect(findRoot((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 14)
  expect(findRoot((x) => x ** 3 - 2 * x - 5, 2, 3)).toBeCloseTo(2.0945514815423265, 14)
})

test('takes the ends in either order, and an end that is the root', () => {
  expect(findRoot((x) => x - 0.25, 1, 0)).toBe(0.25)
  expect(findRoot((x) => x, 0, 1)).toBe(0)
  expect(findRoot((x) => x - 1, 0, 1)).toBe(1)
})

test('settles on steep, flat and broken functions', () => {
  expect(findRoot((x) => Math.expm1(60 * (x - 0.3)), 0, 1)).toBeCloseTo(0.3, 12)
  expect(findRoot((x) => (x - 0.3) ** 9, -1, 1.7)).toBeCloseTo(0.3, 1)
  expect(findRoot((x) => (x < 0.4 ? -1 : 5), 0, 1)).toBeCloseTo(0.4, 12)
})

test('gives nothing rather than a guess', () => {
  expect(findRoot((x) => x ** 2 + 1, -1, 1)).toBeUndefined()
  expect(findRoot(() => NaN, 0, 1)).toBeUndefined()
  expect(findRoot((x) => (x > 0.1 && x < 0.9 ? NaN : x - 0.5), 0, 1)).toBeUndefined()
  expect(findRoot((x) => 1 / x, 0, 1)).toBeUndefined()
})
