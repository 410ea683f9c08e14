/**
 * The elementary functions of the calculators, held against those of the engine that runs this, which
 * are within a digit or two of the true value, and against constants of ISO 80000-2 and DLMF tables.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import * as elementary from '../../calculators/elementary.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** In units of the last digit of the larger one. */
const apart = (a: number, b: number): number =>
  Object.is(a, b) ? 0 : Math.abs(a - b) / (Math.max(Math.abs(a), Math.abs(b)) * Number.EPSILON)

describe.each([
  ['exp', elementary.exp, Math.exp, [between(-700, 700), between(-1, 1)], 2],
  [
    'expm1',
    elementary.expm1,
    Math.expm1,
    [between(-40, 700), between(-1, 1), between(-1e-8, 1e-8)],
    2,
  ],
  ['log', elementary.log, Math.log, [between(5e-324, 1e300), between(0.5, 2)], 2],
  ['log1p', elementary.log1p, Math.log1p, [between(-0.999, 1e6), between(-0.5, 0.5)], 2],
  ['log10', elementary.log10, Math.log10, [between(1e-300, 1e300), between(0.01, 1e6)], 3],
  ['sin', elementary.sin, Math.sin, [between(-1.5, 1.5), between(-100, 100)], 2],
  ['cos', elementary.cos, Math.cos, [between(-1.5, 1.5), between(-100, 100)], 2],
  ['tan', elementary.tan, Math.tan, [between(-1.5, 1.5)], 4],
  ['atan', elementary.atan, Math.atan, [between(-3, 3), between(-1e9, 1e9)], 2],
  ['asin', elementary.asin, Math.asin, [between(-0.999, 0.999)], 6],
] as const)('%s', (_name, own, engine, ranges, most) => {
  it.each(ranges.map((range) => [range]))('is the engine’s but for the last digits', (range) => {
    fc.assert(
      fc.property(range, (x) => {
        // Near a zero of the function the sizes are of no account.
        if (Math.abs(engine(x)) > 1e-300) expect(apart(own(x), engine(x))).toBeLessThanOrEqual(most)
      }),
      { numRuns: 2000 },
    )
  })
})

it('gives known constants', () => {
  expect(elementary.exp(1)).toBeCloseTo(2.718281828459045, 15)
  expect(elementary.log(2)).toBeCloseTo(0.6931471805599453, 16)
  expect(elementary.log10(2)).toBeCloseTo(0.3010299956639812, 16)
  expect(4 * elementary.atan(1)).toBeCloseTo(3.141592653589793, 15)
  expect(elementary.sin(Math.PI / 6)).toBeCloseTo(0.5, 15)
  expect(elementary.asin(1)).toBeCloseTo(Math.PI / 2, 15)
})

it('says what cannot be, and what has no end, as the engine does', () => {
  for (const x of [NaN, Infinity, -Infinity, 0, -0, -1, 710, -746, 5e-324, -745]) {
    for (const name of ['exp', 'expm1', 'log', 'log1p', 'log10', 'atan', 'sin', 'asin'] as const) {
      const [own, engine] = [elementary[name](x), Math[name](x)]
      expect([name, x, Object.is(own, engine) || apart(own, engine) < 4]).toEqual([name, x, true])
    }
  }
})
