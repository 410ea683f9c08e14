/**
 * The pilot law at the values tabled in the manual of a pilot test adapter (IEC 61851-1, SAE J1772),
 * at its borders, and the cable codes at theirs.
 */
import { describe, expect, test } from 'vitest'
import { chargePilot, pilotCurrent } from '../../calculators/traction/charge-pilot.ts'
import { say } from './run-example.ts'

test.each([
  [8, 6],
  [10, 6],
  [11, 6.6],
  [16, 9.6],
  [20, 12],
  [27, 16.2],
  [50, 30],
  [53, 31.8],
  [80, 48],
  [85, 51],
  [86, 55],
  [90, 65],
  [95, 77.5],
  [96, 80],
  [97, 80],
  // Just past each border.
  [9.99, 6],
  [10.05, 6.03],
  [85.05, 52.625],
  [96.05, 80],
])('%d % is %d A', (percent, ampere) => {
  expect(pilotCurrent(percent / 100)).toBeCloseTo(ampere, 9)
})

test.each([
  [0, 'none'],
  [2.99, 'none'],
  [3, 'digital'],
  [5, 'digital'],
  [7, 'digital'],
  [7.01, 'invalid'],
  [7.99, 'invalid'],
  [97.1, 'none'],
  [100, 'none'],
])('%d % is %s', (percent, word) => {
  expect(pilotCurrent(percent / 100)).toBe(word)
})

type Input = Parameters<typeof chargePilot.compute>[0]
const base: Input = {
  duty: 0.9,
  cable: 'loose',
  resistor: 220,
  pilotVoltage: 6,
  phases: 'one',
  volts: 240,
  breaker: 100,
  setting: 10,
}

describe('cable codes', () => {
  // A boundary belongs to the smaller current; outside there is no cable.
  test.each([
    [74.9, 0],
    [75, 70],
    [149, 70],
    [150, 32],
    [330, 20],
    [1000, 13],
    [2200, 13],
    [2201, 0],
  ])('%d Ω is %d A', (resistor, ampere) => {
    expect(chargePilot.compute({ ...base, resistor }).cableCurrent).toBe(ampere)
  })

  test('on three phases 100 Ω is 63 A', () => {
    const input: Input = { ...base, resistor: 100, phases: 'three' }
    expect(chargePilot.compute(input).cableCurrent).toBe(63)
  })
})

test('never more than any of the three, and nothing without pilot or code', () => {
  for (const duty of [0.1, 0.3, 0.6, 0.9])
    for (const resistor of [100, 220, 680, 1500])
      for (const breaker of [16, 32, 63]) {
        const {
          allowed = NaN,
          pilot = NaN,
          cableCurrent = NaN,
          circuit = NaN,
        } = chargePilot.compute({ ...base, duty, resistor, breaker })
        expect(allowed).toBe(Math.min(pilot, cableCurrent, circuit))
      }
  expect(chargePilot.compute({ ...base, duty: undefined }).allowed).toBeUndefined()
  expect(chargePilot.compute({ ...base, resistor: undefined }).allowed).toBeUndefined()
  expect(chargePilot.compute({ ...base, duty: 0 }).allowed).toBe(0)
})

test('a setting above what is known stops, even when the rest is not known', () => {
  const input: Input = { ...base, duty: undefined, resistor: undefined, breaker: 10 }
  const level = (setting: number) => {
    const set = { ...input, setting }
    return chargePilot
      .findings(set, chargePilot.compute(set), say)
      .find(({ check }) => check === 'setting')?.level
  }
  expect(level(9)).toBe('stop')
  expect(level(8)).toBe('unknown')
})
