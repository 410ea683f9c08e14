/** Least squares against a library's line, known ±, and what cannot be fitted. */
import { expect, test } from 'vitest'
import { leastSquares } from '../../calculators/least-squares.ts'

test('a line through eleven pairs, with its ±', () => {
  // Worked by numpy 1.24.2, linalg.lstsq and the inverse of AᵀA.
  const x = [0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2]
  const y = [0.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2]
  const fit = leastSquares(
    x.map((one) => [1, one]),
    y,
  )
  const [start = NaN, slope = NaN] = fit?.coefficients ?? []
  const [startOff = NaN, slopeOff = NaN] = fit?.deviations ?? []
  expect(start).toBeCloseTo(-0.2139538711112, 8)
  expect(slope).toBeCloseTo(1.003076301426, 10)
  expect(startOff).toBeCloseTo(0.3534554149493, 8)
  expect(slopeOff).toBeCloseTo(0.000625283582073, 10)
  expect(fit?.residual).toBeCloseTo(4.295803190402, 7)
  expect(fit?.total).toBeCloseTo(3534366.47, 4)
})

test('one figure through two readings has its mean, and half their difference as ±', () => {
  const fit = leastSquares([[0.01], [0.01]], [3, 5])
  expect(fit?.coefficients[0]).toBeCloseTo(400, 9)
  expect(fit?.deviations[0]).toBeCloseTo(100, 9)
  expect(fit?.residual).toBeCloseTo(2, 9)
  expect(fit?.total).toBe(34)
})

test('a reading more than figures is the least there must be; more are asked where some are taken', () => {
  const rows = [
    [1, 0],
    [1, 1],
    [1, 2],
  ]
  expect(leastSquares(rows, [1, 2, 3])?.coefficients).toHaveLength(2)
  expect(leastSquares(rows.slice(1), [2, 3])).toBeUndefined()
  expect(leastSquares(rows, [1, 2, 3], 1)).toBeUndefined()
  expect(leastSquares([], [])).toBeUndefined()
  expect(leastSquares([[], []], [1, 2])).toBeUndefined()
})

test('columns that are nothing, or the same twice, are no fit', () => {
  expect(leastSquares([[0], [0], [0]], [1, 2, 3])).toBeUndefined()
  const twice = [1, 2, 3, 4].map((one) => [one, 2 * one])
  expect(leastSquares(twice, [1, 2, 3, 4])).toBeUndefined()
})
