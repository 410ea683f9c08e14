/**
 * Suction head: what must hold for any loop, and the loss of the hose by hand.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pumpInlet } from '../../calculators/cooling/pump-inlet.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof pumpInlet.compute>[0]
const loop: Input = {
  coolant: 'water',
  concentration: undefined,
  basis: undefined,
  temperature: 333.15,
  altitude: 0,
  cap: 0,
  height: 0.3,
  loss: 3000,
  flow: undefined,
  bore: undefined,
  length: undefined,
  fittings: 2,
  required: 3,
}
const head = (change: Partial<Input>) => pumpInlet.compute({ ...loop, ...change }).available ?? NaN
const from = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('hotter, higher up, lossier leaves less; a higher tank and a cap leave more', () => {
  fc.assert(
    fc.property(from(280, 365), from(0, 3000), from(-0.5, 1.5), (temperature, altitude, height) => {
      const at = { temperature, altitude, height }
      expect(head({ ...at, temperature: temperature + 2 })).toBeLessThan(head(at))
      expect(head({ ...at, altitude: altitude + 100 })).toBeLessThan(head(at))
      expect(head({ ...at, loss: 4000 })).toBeLessThan(head(at))
      expect(head({ ...at, height: height + 0.1 })).toBeCloseTo(head(at) + 0.1, 9)
      expect(head({ ...at, cap: 50e3 })).toBeGreaterThan(head(at) + 5)
    }),
  )
})

test('with the cap open the cap counts for nothing', () => {
  const closed = pumpInlet.compute({ ...loop, cap: 90e3 })
  expect(closed.open).toBeCloseTo(head({ cap: 0 }), 9)
  expect(closed.gauge).toBe(pumpInlet.compute(loop).gauge)
})

test('a given loss wins; the hose’s is the formula’s', () => {
  const hose = { loss: undefined, flow: 12 / 60_000, bore: 0.02, length: 0.0001 }
  // v = 2e-4 / (π/4 × 4e-4) = 0.636620 m/s; K ρv²/2 = 2 × 983.2 × 0.405285 / 2 = 398.5 Pa.
  expect(pumpInlet.compute({ ...loop, ...hose }).suctionLoss).toBeCloseTo(398.5, 0)
  expect(pumpInlet.compute({ ...loop, ...hose, loss: 3000 }).suctionLoss).toBe(3000)
  expect(pumpInlet.compute({ ...loop, loss: undefined }).available).toBeUndefined()
})

test.each([
  [1.6, 'pass'],
  [1.4, 'watch'],
  [-0.1, 'stop'],
] as const)('%s m in hand: %s', (inHand, level) => {
  const input = { ...loop, required: head({}) - inHand }
  const [first] = pumpInlet.findings(input, pumpInlet.compute(input), say)
  expect(first?.level).toBe(level)
})
