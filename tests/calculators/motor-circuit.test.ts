/**
 * The fuse of a small motor: always between motor and wire, never too quick for the start, and the
 * smallest that is.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { motorCircuit } from '../../calculators/auxiliary/motor-circuit.ts'
import { bladeRatings, shortestOpening } from '../../calculators/fuses.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof motorCircuit.compute>[0]

const base: Input = {
  running: 1.5,
  starting: 2.6,
  startingTime: 0.5,
  wire: 1e-6,
  insulation: '70C',
  wireRating: undefined,
  derate: 1,
  loading: 0.8,
  style: 'medium',
  volts: 13.5,
  length: undefined,
  wireTemperature: 343.15,
  switching: undefined,
  contactRating: undefined,
  coil: 0.15,
}

const inputs = fc.record({
  running: fc.double({ min: 0.1, max: 40, noNaN: true }),
  surge: fc.double({ min: 1, max: 6, noNaN: true }),
  startingTime: fc.double({ min: 0.05, max: 10, noNaN: true }),
  wire: fc.constantFrom(0.65, 1, 1.5, 2, 2.5, 3).map((size) => size * 1e-6),
  style: fc.constantFrom('mini', 'medium', 'maxi'),
})

test('the fuse lies between motor and wire and rides the start, and no smaller one does better', () => {
  fc.assert(
    fc.property(inputs, ({ surge, ...rest }) => {
      const starting = rest.running * surge
      const input: Input = { ...base, ...rest, starting }
      const { fuse, ampacity = 0 } = motorCircuit.compute(input)
      const fits = bladeRatings[rest.style].filter(
        (size) => size * 0.8 >= rest.running * (1 - 1e-9) && size <= ampacity,
      )
      const rides = (size: number) => shortestOpening(starting / size) >= rest.startingTime
      if (fuse === undefined) {
        expect(fits.filter(rides)).toEqual([])
        return
      }
      expect(fits).toContain(fuse)
      expect(rides(fuse)).toBe(true)
      const easily = (size: number) => shortestOpening(starting / size) >= 2 * rest.startingTime
      expect(fits.filter((size) => size < fuse && easily(size))).toEqual([])
    }),
  )
})

test('without a start current the smallest is named and the start stays open', () => {
  const input: Input = { ...base, starting: undefined }
  const output = motorCircuit.compute(input)
  expect(output.fuse).toBe(2)
  const levels = motorCircuit.findings(input, output, say).map(({ check, level }) => [check, level])
  expect(levels).toContainEqual(['start', 'unknown'])
})

test('the drop grows with current and length, and shrinks with the wire', () => {
  const { drop: one = NaN } = motorCircuit.compute({ ...base, length: 3.5 })
  const { drop: longer = NaN } = motorCircuit.compute({ ...base, length: 7 })
  const { drop: more = NaN } = motorCircuit.compute({ ...base, length: 3.5, running: 3 })
  const { drop: thicker = NaN } = motorCircuit.compute({ ...base, length: 3.5, wire: 1.5e-6 })
  expect(longer / one).toBeCloseTo(2, 9)
  expect(more / one).toBeCloseTo(2, 9)
  // IEC 60228 class 5: 13.3 against 19.5 Ω/km.
  expect(thicker / one).toBeCloseTo(13.3 / 19.5, 9)
})
