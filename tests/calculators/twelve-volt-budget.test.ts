/**
 * The 12 V budget: Peukert's law against published digits and its own limits, and what may only
 * grow or shrink.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { twelveVoltBudget } from '../../calculators/auxiliary/twelve-volt-budget.ts'

type Input = Parameters<typeof twelveVoltBudget.compute>[0]

const load = (current: number) =>
  ({ name: 'load', current, power: undefined, duty: 1, critical: 'yes', surge: 1 }) as const

const base: Input = {
  loads: [load(28.6)],
  volts: 13.5,
  converter: 40,
  derate: 1,
  efficiency: 0.9,
  battery: 'lead-acid',
  capacity: 35 * 3600,
  ratedTime: 20 * 3600,
  usable: 0.5,
  peukert: 1.2,
}
const reserve = (input: Partial<Input>) =>
  (twelveVoltBudget.compute({ ...base, ...input }).reserve ?? NaN) / 60

// Common practice: 1.15 to 1.25 makes 18 to 24 minutes of what plain ampere-hours call 36.7.
test('a night drive on 35 Ah', () => {
  expect(reserve({ peukert: 1.15 })).toBeCloseTo(24.1, 1)
  expect(reserve({ peukert: 1.25 })).toBeCloseTo(18.3, 1)
  expect(reserve({ peukert: 1 })).toBeCloseTo(36.7, 1)
})

test('never more than the plain charge, and less the faster', () => {
  const amps = fc.double({ min: 0.1, max: 200, noNaN: true })
  fc.assert(
    fc.property(amps, amps, (a, b) => {
      const [slow, fast] = [Math.min(a, b), Math.max(a, b)]
      expect(reserve({ loads: [load(fast)] })).toBeLessThanOrEqual(reserve({ loads: [load(slow)] }))
      expect(reserve({ loads: [load(a)] })).toBeLessThanOrEqual((0.5 * 35 * 60 * (1 + 1e-9)) / a)
    }),
  )
})

test('battery and loads twice as large last as long', () => {
  expect(reserve({ loads: [load(57.2)], capacity: 70 * 3600 })).toBeCloseTo(reserve({}), 9)
})

test('the order and the grouping of loads do not matter', () => {
  const loads = [
    load(3),
    { ...load(8), surge: 3 },
    { ...load(5), critical: 'no', duty: 0.3 },
  ] as const
  const one = twelveVoltBudget.compute({ ...base, loads })
  const other = twelveVoltBudget.compute({ ...base, loads: [...loads].reverse() })
  expect(other.continuous).toBeCloseTo(one.continuous ?? NaN, 12)
  expect(one.continuous).toBeCloseTo(12.5, 12)
  expect(one.connected).toBeCloseTo(16, 12)
  // All on, and the largest start on top: 8 A × (3 − 1).
  expect(one.peak).toBeCloseTo(32, 12)
  expect(one.critical).toBeCloseTo(11, 12)
})

test('of a current and a power the larger counts', () => {
  const both = { ...load(5), power: 135 }
  expect(twelveVoltBudget.compute({ ...base, loads: [both] }).continuous).toBeCloseTo(10, 12)
})

const say = (value: number | undefined, unit: string) => `${value ?? 'cannot tell'} ${unit}`

test('without a needed load the reserve cannot be told; one of an ampere is one', () => {
  const reserveText = (loads: Input['loads']) => {
    const input = { ...base, loads }
    const findings = twelveVoltBudget.findings(input, twelveVoltBudget.compute(input), say)
    return findings.find(({ check }) => check === 'reserve')?.text
  }
  expect(reserveText([{ ...load(1), critical: 'no' }])).toMatch(/No load is marked/)
  expect(reserveText([load(1)])).not.toMatch(/No load is marked/)
})
