/**
 * Hose derating against the published table for rigid PVC pipe, and every verdict at its threshold.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { hoseSuitability } from '../../calculators/cooling/hose-suitability.ts'

type Input = Parameters<typeof hoseSuitability.compute>[0]

const heater: Input = {
  material: 'epdm',
  ratedPressure: 400_000,
  rating: 'working',
  burstFactor: 4,
  sheetDerate: undefined,
  sheetTemperature: undefined,
  coolantTemperature: 338.15,
  bayTemperature: 333.15,
  capPressure: 50_000,
  pumpPressure: 40_000,
  staticHeight: 0,
  clamp: 'spring',
  bead: 'yes',
  drip: 'none',
}
const work = (change: Partial<Input> = {}) => hoseSuitability.compute({ ...heater, ...change })
const say = (value: number | undefined, unit: string) => `${value ?? 'cannot tell'} ${unit}`
const levels = (change: Partial<Input> = {}) => {
  const input = { ...heater, ...change }
  const findings = hoseSuitability.findings(input, hoseSuitability.compute(input), say)
  return Object.fromEntries(findings.map(({ check, level }) => [check, level]))
}
const pvcAt = (kelvin: number) =>
  work({ material: 'pvc', coolantTemperature: kelvin, bayTemperature: 273.15 }).derate ?? NaN

// Pipe makers' table for schedule 40 and 80, °F: share of the 73 °F rating; 150 °F not recommended.
test.each([
  [60, 1],
  [73, 1],
  [80, 0.88],
  [90, 0.75],
  [100, 0.62],
  [110, 0.5],
  [120, 0.4],
  [130, 0.3],
  [140, 0.22],
  [150, 0],
  [200, 0],
])('PVC at %s °F keeps %s', (fahrenheit, share) => {
  expect(pvcAt((fahrenheit - 32) / 1.8 + 273.15)).toBeCloseTo(share, 9)
})

test('PVC never gains strength with heat', () => {
  const kelvins = fc.double({ min: 240, max: 420, noNaN: true })
  fc.assert(
    fc.property(kelvins, kelvins, (a, b) => {
      expect(pvcAt(Math.max(a, b))).toBeLessThanOrEqual(pvcAt(Math.min(a, b)))
    }),
  )
})

test('the hotter of coolant and bay counts', () => {
  expect(work({ bayTemperature: 380 }).worstTemperature).toBe(380)
  expect(levels({ bayTemperature: 390 }).temperature).toBe('watch')
})

test.each([
  ['pvc', 40, 50],
  ['epdm', 110, 125],
  ['silicone', 150, 175],
] as const)('%s passes to %s °C, stops above %s °C', (material, pass, stop) => {
  const at = (celsius: number) =>
    levels({ material, coolantTemperature: celsius + 273.15 }).temperature
  const colder = { bayTemperature: 273.15 }
  expect(levels({ material, ...colder, coolantTemperature: pass + 273.149 }).temperature).toBe(
    'pass',
  )
  expect(levels({ material, ...colder, coolantTemperature: pass + 273.16 }).temperature).toBe(
    'watch',
  )
  expect(at(stop + 0.01)).toBe('stop')
})

test('its own sheet wins over the table and the usual limit', () => {
  expect(work({ material: 'pvc', sheetDerate: 0.7 }).derate).toBe(0.7)
  expect(levels({ material: 'pvc', sheetDerate: 0.7 }).derating).toBe('pass')
  expect(levels({ material: 'nylon', sheetTemperature: 373.15, sheetDerate: 0.5 })).toMatchObject({
    temperature: 'pass',
    derating: 'pass',
  })
  expect(levels({ sheetTemperature: 330 }).temperature).toBe('stop')
  expect(levels({ material: 'nylon' })).toMatchObject({
    temperature: 'unknown',
    derating: 'unknown',
    pressure: 'unknown',
  })
})

test('rubber above its usual temperature: the rating left is not known', () => {
  expect(levels({ coolantTemperature: 390 })).toMatchObject({
    derating: 'unknown',
    pressure: 'unknown',
  })
})

test('margin at its thresholds: 3 and 2', () => {
  const loop = work().loopPressure ?? NaN
  expect(loop).toBe(90_000)
  expect(levels({ ratedPressure: 3.001 * loop }).pressure).toBe('pass')
  expect(levels({ ratedPressure: 2.999 * loop }).pressure).toBe('watch')
  expect(levels({ ratedPressure: 2.001 * loop }).pressure).toBe('watch')
  expect(levels({ ratedPressure: 1.999 * loop }).pressure).toBe('stop')
})

test('a burst pressure is divided, an unstated one cannot tell', () => {
  expect(work({ rating: 'burst' }).usablePressure).toBe(100_000)
  expect(work({ rating: 'burst', burstFactor: 3 }).usablePressure).toBeCloseTo(400_000 / 3, 9)
  for (const rating of ['unknown', undefined] as const) {
    expect(work({ rating }).margin).toBeUndefined()
    expect(levels({ rating }).pressure).toBe('unknown')
  }
  expect(levels({ ratedPressure: undefined }).pressure).toBe('unknown')
})

test('ten metres of coolant weigh in', () => {
  expect((work({ staticHeight: 10 }).loopPressure ?? NaN) - 90_000).toBeCloseTo(
    1090 * 9.80665 * 10,
    6,
  )
})

test('nothing to hold against: cannot tell, no endless margin', () => {
  const none = { capPressure: 0, pumpPressure: 0 }
  expect(work(none).margin).toBeUndefined()
  expect(levels(none).pressure).toBe('unknown')
})

test('clamp, bead and drips', () => {
  expect(levels({ material: 'silicone', clamp: 'worm' }).joint).toBe('watch')
  expect(levels({ material: 'silicone', clamp: 'lined' }).joint).toBe('pass')
  expect(levels({ bead: 'no' }).joint).toBe('watch')
  expect(levels({ bead: 'no', clamp: 'fitting', material: 'metal' }).joint).toBe('pass')
  expect(levels({ clamp: 'none' }).joint).toBe('stop')
  expect(levels({ drip: 'open' }).drip).toBe('stop')
  expect(levels({ drip: 'shielded' }).drip).toBe('watch')
  expect(levels({ drip: 'unknown' }).drip).toBe('unknown')
})
