/**
 * A loop as one resistance: the sum of its hoses and parts, and the flow by a second way.
 *
 * Friction factors and pump curves have tests of their own; the whole calculator is held against
 * published cases by its examples.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hoseDrop, type Regime } from '../../calculators/friction.ts'
import { crossing, loopDrop, loopOf, resistance } from '../../calculators/loop.ts'
import { parabola, throughPoints, type PumpCurve } from '../../calculators/pump-curve.ts'

const litreMinute = 1 / 60_000
const liquid = { density: 1058, viscosity: 1.8e-3 }
const thick = { density: 1080, viscosity: 40e-3 }
const roughness = 1.5e-6
const anyHose = fc.record({
  length: fc.double({ min: 0.1, max: 10, noNaN: true }),
  bore: fc.constantFrom(0.01, 0.013, 0.016, 0.019),
  fittings: fc.double({ min: 0, max: 10, noNaN: true }),
  roughness: fc.constantFrom(0, roughness, 5e-5),
})
const hoses = fc.array(anyHose, { minLength: 1, maxLength: 6 })
const part = { drop: 12e3, referenceFlow: 10 * litreMinute }
const kinds = fc.constantFrom<Regime[]>('between', 'laminar', 'turbulent')
const flows = fc.double({ min: 0.2 * litreMinute, max: 40 * litreMinute, noNaN: true })

/** The pump, and how often it was asked. */
function counted(pump: PumpCurve): { readonly pump: PumpCurve; asked: number } {
  const counter = {
    asked: 0,
    pump: {
      ...pump,
      at: (flow: number) => {
        counter.asked++
        return pump.at(flow)
      },
    },
  }
  return counter
}

/** Where the pump gives less than the hoses, one by one, and the part take; by halving. */
function byHalving(pump: PumpCurve, rest: (flow: number) => number): number {
  let low = pump.lowest
  let high = pump.highest
  for (let step = 0; step < 70; step++) {
    const middle = (low + high) / 2
    if (rest(middle) > 0) low = middle
    else high = middle
  }
  return high
}

test('a loop takes what its hoses and parts take one by one', () => {
  fc.assert(
    fc.property(hoses, flows, kinds, (list, flow, as) => {
      const sum = list.reduce((all, hose) => all + (hoseDrop(hose, flow, liquid, as) ?? NaN), 0)
      const parts = 2 * part.drop * (flow / part.referenceFlow) ** 2
      const loop = loopOf(list, [part, part], liquid, as)
      expect(loopDrop(loop, flow) / (sum + parts)).toBeCloseTo(1, 12)
      expect(loopDrop(loop, 0)).toBe(0)
    }),
  )
})

test('the slope is what neighbours give', () => {
  fc.assert(
    fc.property(hoses, flows, (list, flow) => {
      const loop = loopOf(list, [part], liquid)
      const hair = flow * 1e-5
      const kinks = list.map(({ bore }) => (1058 * 4 * flow) / (Math.PI * bore * 1.8e-3))
      fc.pre(kinks.every((re) => Math.abs(re - 2040) > 1 && Math.abs(re - 4000) > 1))
      const rise = (loopDrop(loop, flow + hair) - loopDrop(loop, flow - hair)) / (2 * hair)
      const { square, linear } = resistance(loop, flow)
      expect((2 * square * flow + linear) / rise).toBeCloseTo(1, 6)
    }),
  )
})

describe('the crossing', () => {
  const pump = parabola(60e3, 30 * litreMinute)
  const points = throughPoints(
    [60, 58, 55, 40, 39.9, 5, 0].map((kPa, at) => ({
      flow: at * 5 * litreMinute,
      pressure: kPa * 1e3,
    })),
  )
  if (typeof points === 'string') throw new Error(points)

  test('is where halving finds it, whatever is in the loop', () => {
    const pumps = fc.constantFrom(pump, points)
    const liquids = fc.constantFrom(liquid, thick)
    fc.assert(
      fc.property(hoses, pumps, liquids, kinds, (list, curve, of, as) => {
        const found = byHalving(curve, (flow) =>
          list.reduce(
            (rest, hose) => rest - (hoseDrop(hose, flow, of, as) ?? NaN),
            curve.at(flow) - part.drop * (flow / part.referenceFlow) ** 2,
          ),
        )
        const flow = crossing(curve, loopOf(list, [part], of, as))
        expect(typeof flow === 'number' && Math.abs(flow / found - 1)).toBeLessThan(1e-11)
      }),
    )
  })

  // Slips that only cost steps are seen in their number: the pump is asked once, then twice a step.
  test('takes one step where everything goes with the flow or its square', () => {
    const square = counted(pump)
    const flow = crossing(square.pump, loopOf([], [part], liquid))
    const coefficient = 60e3 / 30 ** 2 + 12e3 / 10 ** 2
    expect(Number(flow) / litreMinute).toBeCloseTo(Math.sqrt(60e3 / coefficient), 9)
    expect(square.asked).toBe(5)
    const laminar = counted(pump)
    const hose = { length: 3, bore: 0.019, fittings: 4, roughness }
    expect(crossing(laminar.pump, loopOf([hose], [part], thick))).toBeGreaterThan(0)
    expect(laminar.asked).toBe(5)
  })

  test('takes two or three steps where hoses are turbulent', () => {
    const hose = { length: 5, bore: 0.016, fittings: 8, roughness }
    for (const shutOff of [30e3, 60e3, 120e3]) {
      const turbulent = counted(parabola(shutOff, 30 * litreMinute))
      expect(crossing(turbulent.pump, loopOf([hose], [part], liquid))).toBeGreaterThan(0)
      expect(turbulent.asked).toBeLessThanOrEqual(9)
    }
  })

  test('is the place of the jump where a hose turns turbulent all at once', () => {
    const hose = { length: 30, bore: 0.016, fittings: 0, roughness }
    const turns = ((2040 * Math.PI * 0.016) / 4) * (liquid.viscosity / liquid.density)
    const [before = NaN, after = NaN] = [1 - 1e-9, 1 + 1e-9].map((by) =>
      loopDrop(loopOf([hose], [], liquid, 'turbulent'), turns * by),
    )
    expect(after).toBeGreaterThan(1.3 * before)
    const level = (before + after) / 2
    const flat = throughPoints([0, 30].map((x) => ({ flow: x * litreMinute, pressure: level })))
    if (typeof flat === 'string') throw new Error(flat)
    const flow = crossing(flat, loopOf([hose], [], liquid, 'turbulent'))
    expect(Number(flow) / turns).toBeCloseTo(1, 12)
  })

  test('is refused with its reason', () => {
    const hose = { length: 3, bore: 0.016, fittings: 4, roughness }
    const loop = loopOf([hose], [part], liquid)
    const piece = (from: number, to: number) => {
      const curve = throughPoints(
        [from, to].map((x) => ({ flow: x * litreMinute, pressure: 20e3 })),
      )
      if (typeof curve === 'string') throw new Error(curve)
      return curve
    }
    expect(crossing(pump, loopOf([], [], liquid))).toBe('no loop')
    expect(crossing(pump, loopOf([], [{ ...part, drop: 0 }], liquid))).toBe('no loop')
    expect(crossing(piece(20, 30), loop)).toBe('before')
    expect(crossing(piece(0, 3), loop)).toBe('beyond')
    expect(crossing(pump, loopOf([{ ...hose, roughness: NaN }], [], liquid))).toBe('not settled')
  })

  test('lies on the last point where the pump ends just there', () => {
    const loop = loopOf([], [{ drop: 20e3, referenceFlow: 10 * litreMinute }], liquid)
    const ends = throughPoints([
      { flow: 0, pressure: 30e3 },
      { flow: 10 * litreMinute, pressure: loopDrop(loop, 10 * litreMinute) },
    ])
    if (typeof ends === 'string') throw new Error(ends)
    expect(Number(crossing(ends, loop)) / litreMinute).toBeCloseTo(10, 12)
  })
})
