/** Pump curves: a textbook's crossing, the affinity laws, monotone joining, and refusals. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { atSpeed, parabola, throughPoints } from '../../calculators/pump-curve.ts'
import { findRoot } from '../../calculators/solve.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

const schaschke = [
  { flow: 0, pressure: 40 },
  { flow: 2, pressure: 39.5 },
  { flow: 4, pressure: 38 },
  { flow: 6, pressure: 35 },
  { flow: 8, pressure: 30 },
  { flow: 10, pressure: 20 },
]

test('Schaschke 9.10: the pump meets the system 10 + 5.42e5 Q²', () => {
  const curve = throughPoints(schaschke)
  if (typeof curve === 'string') throw new Error(curve)
  const flow = findRoot((x) => curve.at(x) - 10 - 0.542 * x ** 2, 0, 10) ?? NaN
  // The book's graph; and the same by the monotone cubic of scipy 1.10.1 (pchip).
  expect(flow).toBeCloseTo(6.6, 1)
  expect(curve.at(flow)).toBeCloseTo(33.8, 0)
  expect(flow).toBeCloseTo(6.619, 3)
  expect(curve.at(flow)).toBeCloseTo(33.747, 2)
})

test('affinity laws on a closed form: 30 L/min and 6 m against 2e7 Q²', () => {
  const system = (flow: number): number => 2e7 * (flow / 60_000) ** 2
  const pump = parabola(6, 30)
  const flow = findRoot((x) => pump.at(x) - system(x), 0, pump.highest) ?? NaN
  expect(flow).toBeCloseTo(22.1565, 4)
  expect(pump.at(flow)).toBeCloseTo(2.72727, 5)
  const slower = atSpeed(pump, 0.8)
  const less = findRoot((x) => slower.at(x) - system(x), 0, slower.highest) ?? NaN
  expect(less).toBeCloseTo(17.7252, 4)
  expect(slower.at(less)).toBeCloseTo(1.74545, 5)
})

test('goes through its points, in any order, and never above or below its neighbours', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 0, max: 40 })), {
        minLength: 2,
        maxLength: 12,
      }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (steps, place) => {
        let flow = 0
        let pressure = 1000
        const points = steps.map(([width, fall]) => {
          flow += width
          pressure -= fall
          return { flow, pressure }
        })
        const curve = throughPoints([...points].reverse())
        if (typeof curve === 'string') throw new Error(curve)
        for (const [index, point] of points.entries()) {
          expect(curve.at(point.flow)).toBeCloseTo(point.pressure, 6)
          const next = points[index + 1]
          if (next === undefined) continue
          const between = curve.at(point.flow + place * (next.flow - point.flow))
          expect(between).toBeLessThanOrEqual(point.pressure + 1e-9)
          expect(between).toBeGreaterThanOrEqual(next.pressure - 1e-9)
        }
      },
    ),
  )
})

test('says why points are no curve', () => {
  const [first, second] = schaschke
  if (first === undefined || second === undefined) throw new Error('no points')
  expect(throughPoints([])).toBe('too few')
  expect(throughPoints([first])).toBe('too few')
  expect(throughPoints([first, second, { flow: 2, pressure: 1 }])).toBe('flow twice')
  expect(throughPoints([first, { flow: 1, pressure: 41 }])).toBe('rises')
})

test.each(rowsOf('pump_curve_pchip.csv'))('$case at $flow as by the library', (row) => {
  const pressures = (row.pressures ?? '').split(' ').map(Number)
  const points = (row.flows ?? '')
    .split(' ')
    .map((flow, at) => ({ flow: Number(flow), pressure: pressures[at] ?? NaN }))
  const curve = throughPoints(points)
  if (typeof curve === 'string') throw new Error(curve)
  expect(curve.at(numberIn(row, 'flow'))).toBeCloseTo(numberIn(row, 'pressure'), 9)
})

test('beyond its last point it goes on with the last piece, which nothing asks for', () => {
  const curve = throughPoints([
    { flow: 0, pressure: 30 },
    { flow: 4, pressure: 20 },
    { flow: 6, pressure: 10 },
  ])
  if (typeof curve === 'string') throw new Error(curve)
  expect(curve.at(6 + 1e-9)).toBeCloseTo(10, 6)
})
