/** Roots that are known elsewhere, and the cases in which there is none to give. */
import { expect, test } from 'vitest'
import { findRoot } from '../../calculators/solve.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

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

const functions: Readonly<Record<string, (x: number) => number>> = {
  'x^3 - 2x - 5': (x) => x ** 3 - 2 * x - 5,
  'cos x - x': (x) => Math.cos(x) - x,
  'e^-x - x': (x) => Math.exp(-x) - x,
  'ln x - 1': (x) => Math.log(x) - 1,
  'x e^x - 3': (x) => x * Math.exp(x) - 3,
  'x^5 - x - 1': (x) => x ** 5 - x - 1,
  'tan^-1(x) - 1': (x) => Math.atan(x) - 1,
  '1/(x+1) - x^2': (x) => 1 / (x + 1) - x * x,
  'sqrt x - cos x': (x) => Math.sqrt(x) - Math.cos(x),
  '60 (1 - x^2/900) - x^1.75/3': (x) => 60 * (1 - (x * x) / 900) - x ** 1.75 / 3,
}

// A slip in the steps still ends at the root, only later: so the steps are counted.
test.each(rowsOf('roots_brent.csv'))('$function as fast as the library, within a step', (row) => {
  let calls = 0
  const root = findRoot(
    (x) => {
      calls++
      return functions[row.function ?? '']?.(x) ?? NaN
    },
    numberIn(row, 'low'),
    numberIn(row, 'high'),
  )
  expect((root ?? NaN) / numberIn(row, 'root')).toBeCloseTo(1, 14)
  expect(calls).toBeLessThanOrEqual(numberIn(row, 'calls') + 1)
})

test('stops once the root is known as closely as asked', () => {
  const count = (within: number): number => {
    let calls = 0
    findRoot((x) => (calls++, Math.exp(x) - 2), 0, 4, within)
    return calls
  }
  expect(count(0.1)).toBeLessThan(count(1e-12))
})
