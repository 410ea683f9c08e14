/**
 * The main fuse against the circuit equation stepped by Runge-Kutta, and the order that must hold
 * between its findings whatever the numbers.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mainFuse } from '../../calculators/traction/main-fuse.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof mainFuse.compute>[0]

const base: Input = {
  voltage: 400,
  lowVoltage: 300,
  series: 100,
  parallel: 1,
  cellResistance: 1.2e-3,
  coldResistance: 3e-3,
  links: 0,
  cable: 35e-6,
  length: 0,
  rest: 0,
  inductance: 10e-6,
  insulation: 'pvc',
  cableRating: 150,
  partRating: 150,
  running: 80,
  peak: 250,
  peakTime: 10,
  fuse: 125,
  fuseVoltage: 500,
  current: 'dc',
  interrupt: 20e3,
  minimumBreaking: 600,
  fuseConstant: 2e-3,
  clearing: 20e3,
  meltAtPeak: undefined,
  curve: [
    { current: 8000, time: 0.0005 },
    { current: 250, time: 1000 },
    { current: 600, time: 10 },
    { current: 1000, time: 0.5 },
    { current: 2000, time: 0.02 },
  ],
  place: 'terminal',
  contactorVoltage: 450,
  contactorBreak: 1000,
  polarised: 'no',
}
const levelOf = (input: Input, check: string) =>
  mainFuse.findings(input, mainFuse.compute(input), say).find((finding) => finding.check === check)
    ?.level

// L di/dt = U − R i. 400 V, 0.12 Ω, 10 µH: 2329.35 A after 100 µs, by hand.
test('current, resistance and L/R are those of the stepped circuit', () => {
  const { prospective = 0, timeConstant = 0, packResistance = 0 } = mainFuse.compute(base)
  const steps = 1000
  const h = 100e-6 / steps
  const slope = (i: number) => (400 - packResistance * i) / 10e-6
  let current = 0
  for (let n = 0; n < steps; n++) {
    const k1 = slope(current)
    const k2 = slope(current + (h / 2) * k1)
    const k3 = slope(current + (h / 2) * k2)
    const k4 = slope(current + h * k3)
    current += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
  }
  expect(current).toBeCloseTo(2329.35, 2)
  expect(prospective * -Math.expm1(-100e-6 / timeConstant)).toBeCloseTo(current, 6)
})

test('points of the curve are met, in whatever order they are typed', () => {
  const { melt, peakShare } = mainFuse.compute(base)
  expect(melt).toBeCloseTo(600, 9)
  expect(peakShare).toBeCloseTo(250 / 600, 9)
  const between = mainFuse.compute({ ...base, peakTime: 1 }).melt ?? 0
  expect(between).toBeGreaterThan(600)
  expect(between).toBeLessThan(1000)
  expect(mainFuse.compute({ ...base, curve: [...(base.curve ?? [])].reverse() }).melt).toBeCloseTo(
    600,
    9,
  )
})

test('a curve that does not fall, or does not reach, is not believed', () => {
  const rising = [
    { current: 100, time: 1 },
    { current: 200, time: 10 },
  ]
  expect(mainFuse.compute({ ...base, curve: rising }).melt).toBeUndefined()
  expect(levelOf({ ...base, curve: rising }, 'peak')).toBe('unknown')
  expect(mainFuse.compute({ ...base, peakTime: 3000 }).melt).toBeUndefined()
})

// The mean resistance makes a fuse look good that will burst: 131.4 V over 13.22 mΩ is 9.94 kA.
test('a fuse that passes at the mean resistance stops at the lowest', () => {
  const pickup = { ...base, voltage: 131.4, series: 36, interrupt: 10e3, fuseVoltage: 250 }
  expect(levelOf({ ...pickup, cellResistance: 0.25e-3, links: 4.22e-3 }, 'interrupt')).toBe('pass')
  expect(levelOf({ ...pickup, cellResistance: 0.25e-3, links: 1.8e-3 }, 'interrupt')).toBe('stop')
})

describe('nobody may accept', () => {
  test.each(['voltage', 'direct', 'interrupt', 'contactorVoltage'] as const)('%s', (check) => {
    expect(mainFuse.checks[check].never).toBe(true)
  })
  test.each(['protects', 'loading', 'cable', 'place'] as const)('%s is the builder’s', (check) => {
    expect('never' in mainFuse.checks[check]).toBe(false)
  })
})

describe('what is not known never passes', () => {
  test.each([
    ['fuseVoltage', 'voltage'],
    ['current', 'direct'],
    ['interrupt', 'interrupt'],
    ['contactorVoltage', 'contactorVoltage'],
    ['cableRating', 'protects'],
    ['partRating', 'protects'],
    ['minimumBreaking', 'weakest'],
    ['minimumBreaking', 'contactor'],
    ['coldResistance', 'weakest'],
    ['inductance', 'constant'],
    ['clearing', 'cable'],
    ['curve', 'cable'],
    ['curve', 'peak'],
    ['contactorBreak', 'contactor'],
    ['polarised', 'polarity'],
    ['place', 'place'],
  ] as const)('without %s: %s', (field, check) => {
    expect(levelOf(base, check)).toBe('pass')
    expect(levelOf({ ...base, [field]: undefined }, check)).toBe('unknown')
  })
})

const factor = fc.double({ min: 1, max: 10, noNaN: true })

test('more cells side by side, less resistance or more voltage never lower the short circuit', () => {
  fc.assert(
    fc.property(factor, factor, factor, (more, less, higher) => {
      const one = mainFuse.compute(base).prospective ?? NaN
      const grown = mainFuse.compute({
        ...base,
        parallel: more,
        cellResistance: base.cellResistance / less,
        voltage: base.voltage * higher,
      }).prospective
      expect((grown ?? NaN) / one).toBeCloseTo(more * less * higher, 6)
    }),
  )
})

test('the least short is never above the one at the terminals', () => {
  const length = fc.double({ min: 0, max: 60, noNaN: true })
  fc.assert(
    fc.property(length, factor, (metres, colder) => {
      const { weakest = NaN, prospective = NaN } = mainFuse.compute({
        ...base,
        length: metres,
        coldResistance: base.cellResistance / colder,
      })
      expect(weakest).toBeLessThanOrEqual(prospective)
    }),
  )
})

test('a least short that lasts up to 5 s heats the cable unaided, a longer one sheds it', () => {
  const at = (lowVoltage: number) => mainFuse.compute({ ...base, lowVoltage, clearing: 10 })
  let [low, high] = [1, 400]
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (at(middle).letThrough === 10) low = middle
    else high = middle
  }
  const { weakest = NaN, weakestTime = NaN, letThrough = NaN } = at(high)
  expect(weakestTime).toBeCloseTo(5, 6)
  expect(letThrough / (weakest ** 2 * weakestTime)).toBeCloseTo(1, 12)
  expect(at(low).weakestTime).toBeGreaterThan(5)
})
