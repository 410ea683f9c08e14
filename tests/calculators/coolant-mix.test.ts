/** The mix: after doing what it says, the loop is full and as strong as wanted. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { coolantMix } from '../../calculators/cooling/coolant-mix.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof coolantMix.compute>[0]

const litre = 1e-3
const empty: Input = {
  volume: 4 * litre,
  coolant: 'ethylene-glycol',
  wanted: 0.5,
  target: undefined,
  coldest: undefined,
  strength: 0.95,
  amount: undefined,
  existing: undefined,
  existingBasis: undefined,
  family: undefined,
  existingFamily: undefined,
  waterQuality: undefined,
  temperature: 323.15,
}

function levelOf(input: Input, check: string): string {
  const found = coolantMix.findings(input, coolantMix.compute(input), say)
  return found.find((each) => each.check === check)?.level ?? ''
}

test('the glycol and the litres come out right, from any filling', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.6, noNaN: true }),
      fc.double({ min: 0.3, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (wanted, strength, existing, full) => {
        const volume = 5 * litre
        const amount = full * volume
        const filled = { wanted, strength, existing, existingBasis: 'volume', amount } as const
        const input: Input = { ...empty, ...filled, volume }
        const { drain, concentrate, water } = coolantMix.compute(input)
        if (drain === undefined || concentrate === undefined || water === undefined) {
          // Only a concentrate no stronger than the mix wanted can fail.
          expect(strength).toBeLessThanOrEqual(wanted)
          expect(levelOf(input, 'amounts')).toBe('stop')
          return
        }
        for (const part of [drain, concentrate, water]) expect(part).toBeGreaterThanOrEqual(0)
        expect(drain).toBeLessThanOrEqual(amount * (1 + 1e-9))
        const left = amount - drain
        expect((left + concentrate + water) / volume).toBeCloseTo(1, 9)
        expect((left * existing + concentrate * strength) / volume).toBeCloseTo(wanted, 9)
      },
    ),
  )
})

test('nothing is drained that need not be', () => {
  const half = { ...empty, amount: 2 * litre, existing: 0.3, existingBasis: 'volume' } as const
  expect(coolantMix.compute(half).drain).toBe(0)
  const asItShould = { ...half, amount: 4 * litre, existing: 0.5 } as const
  expect(coolantMix.compute(asItShould)).toMatchObject({ drain: 0, concentrate: 0, water: 0 })
})

test('adding without draining brings what is there to strength', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 0.6, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (wanted, existing) => {
        const amount = 3 * litre
        const filled = { wanted, existing, amount, existingBasis: 'volume' } as const
        const { addOnly = NaN, addWhat } = coolantMix.compute({ ...empty, ...filled })
        const glycol = amount * existing + (addWhat === 'concentrate' ? addOnly * 0.95 : 0)
        expect(glycol / (amount + addOnly)).toBeCloseTo(wanted, 9)
      },
    ),
  )
})

test('a hydrometer by volume and a table by mass are not mixed up', () => {
  const filled = { ...empty, amount: 4 * litre, existing: 0.4 }
  const byVolume = coolantMix.compute({ ...filled, existingBasis: 'volume' })
  const byMass = coolantMix.compute({ ...filled, existingBasis: 'mass' })
  // 40 % by mass is 37.5 % by volume, so more must go.
  expect(byMass.drain).toBeGreaterThan(byVolume.drain ?? NaN)
  expect(byMass.drain).toBeCloseTo((4 * litre * (0.5 - 0.375)) / (0.95 - 0.375), 9)
  expect(coolantMix.compute({ ...filled, existingBasis: undefined }).drain).toBeUndefined()
  expect(levelOf({ ...filled, existingBasis: undefined }, 'amounts')).toBe('unknown')
})

test('more in the loop than it holds, and a frost no mix stands', () => {
  const filled = { ...empty, amount: 5 * litre, existing: 0.4, existingBasis: 'volume' } as const
  expect(levelOf(filled, 'amounts')).toBe('stop')
  expect(levelOf({ ...empty, wanted: undefined, target: 210 }, 'amounts')).toBe('unknown')
  expect(levelOf({ ...empty, wanted: undefined }, 'amounts')).toBe('unknown')
})

test('families: unknown is never a pass, another glycol is a stop, an empty loop is neither', () => {
  const filled = { ...empty, amount: 4 * litre, existing: 0.4, existingBasis: 'volume' } as const
  const hybrid = { ...filled, family: 'hybrid' } as const
  expect(levelOf(empty, 'families')).toBe('pass')
  expect(levelOf(filled, 'families')).toBe('unknown')
  expect(levelOf({ ...hybrid, existingFamily: 'unknown' }, 'families')).toBe('unknown')
  expect(levelOf({ ...hybrid, existingFamily: 'hybrid' }, 'families')).toBe('pass')
  expect(levelOf({ ...hybrid, existingFamily: 'inorganic' }, 'families')).toBe('stop')
  expect(levelOf({ ...hybrid, existingFamily: 'other-glycol' }, 'families')).toBe('stop')
  expect(levelOf({ ...hybrid, existingFamily: 'other-glycol', amount: 0 }, 'families')).toBe('pass')
})

test.each([
  [0.249, 'stop'],
  [0.251, 'watch'],
  [0.39, 'watch'],
  [0.4, 'pass'],
  [0.5, 'pass'],
  [0.51, 'watch'],
  [0.6, 'watch'],
  [0.601, 'stop'],
])('a strength of %f is a %s', (wanted, level) => {
  expect(levelOf({ ...empty, wanted }, 'strength')).toBe(level)
})

test.each([
  [5.01, 'pass'],
  [4.99, 'watch'],
  [0.01, 'watch'],
  [-0.01, 'stop'],
])('frost %f K above the freezing point is a %s', (margin, level) => {
  const { freezing } = coolantMix.compute(empty)
  expect(levelOf({ ...empty, coldest: (freezing ?? NaN) + margin }, 'freeze')).toBe(level)
})

test('where all of it has to come out, no two families meet', () => {
  const thinned = { ...empty, wanted: undefined, target: 273.15, amount: 2 * litre, existing: 0.3 }
  const input = {
    ...thinned,
    existingBasis: 'volume',
    family: 'hybrid',
    existingFamily: 'inorganic',
  } as const
  expect(coolantMix.compute(input).drain).toBeCloseTo(2 * litre, 12)
  expect(levelOf(input, 'families')).toBe('pass')
  expect(levelOf({ ...input, target: 270 }, 'families')).toBe('stop')
})
