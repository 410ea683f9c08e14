/**
 * Cell warming against the closed form of one lumped capacity, and against Runge-Kutta where the
 * resistance falls as the cells warm.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cellHeating, resistanceAt } from '../../calculators/traction/cell-heating.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof cellHeating.compute>[0]

const zero = 273.15
const readings = [
  { temperature: zero - 20, resistance: 1.3e-3 },
  { temperature: zero - 10, resistance: 0.8e-3 },
  { temperature: zero, resistance: 0.5e-3 },
  { temperature: zero + 25, resistance: 0.25e-3 },
]
const base: Input = {
  series: 36,
  parallel: 1,
  cellMass: 5.4,
  specificHeat: 1000,
  loss: 6,
  air: zero - 10,
  start: zero - 10,
  current: 120,
  time: 3600,
  resistance: 0.25e-3,
  resistanceFor: zero + 25,
  readings,
  chargeFrom: zero,
  dischargeFrom: zero - 20,
  hottest: zero + 55,
  regenerates: 'held',
  cellVoltage: 3.2,
  cellMinimum: 2,
  peak: 450,
}

describe.each(rowsOf('lumped_transient.csv'))('$C_J_K J/K, $UA_W_K W/K, $q_W W', (row) => {
  const time = numberIn(row, 't_s')
  test(`after ${time} s`, () => {
    const { end } = cellHeating.compute({
      ...base,
      readings: undefined,
      series: 1,
      cellMass: numberIn(row, 'C_J_K') / 1000,
      loss: numberIn(row, 'UA_W_K'),
      air: zero + numberIn(row, 'T_amb_C'),
      start: zero + numberIn(row, 'T0_C'),
      current: 1000,
      resistance: numberIn(row, 'q_W') / 1e6,
      time: Math.max(time, 1e-9),
    })
    expect(Math.abs((end ?? NaN) - zero - numberIn(row, 'T_C'))).toBeLessThan(1e-4)
  })
})

/** Runge-Kutta, ten times finer. */
function stepped(input: Input): number {
  const steps = 4000
  const h = input.time / steps
  const resistance = resistanceAt(input.readings ?? [], input.resistance)
  const cells = input.series * input.parallel
  const capacity = cells * input.cellMass * input.specificHeat
  const slope = (T: number) =>
    (cells * (input.current / input.parallel) ** 2 * resistance(T) - input.loss * (T - input.air)) /
    capacity
  let T = input.start
  for (let i = 0; i < steps; i++) {
    const k1 = slope(T)
    const k2 = slope(T + (h / 2) * k1)
    const k3 = slope(T + (h / 2) * k2)
    const k4 = slope(T + h * k3)
    T += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
  }
  return T
}

test.each([
  { current: 120 },
  { current: 300 },
  { current: 300, parallel: 2 },
  { loss: 0 },
  { air: zero - 25, start: zero + 5 },
  { readings: undefined },
])('as stepped: %o', (change) => {
  const input = { ...base, ...change }
  expect(Math.abs((cellHeating.compute(input).end ?? NaN) - stepped(input))).toBeLessThan(1e-3)
})

test('charging is allowed when the stepped temperature is there', () => {
  const { chargeAfter = NaN } = cellHeating.compute({ ...base, current: 300 })
  expect(stepped({ ...base, current: 300, time: chargeAfter })).toBeCloseTo(zero, 2)
  expect(cellHeating.compute({ ...base, start: zero + 3 }).chargeAfter).toBe(0)
})

test('resistance meets the readings, falls between them and holds outside', () => {
  const at = resistanceAt([...readings].reverse(), 1)
  for (const { temperature, resistance } of readings)
    expect(at(temperature)).toBeCloseTo(resistance, 12)
  expect(at(zero - 5)).toBeCloseTo(Math.sqrt(0.8 * 0.5) * 1e-3, 12)
  expect(at(zero - 40)).toBe(1.3e-3)
  expect(at(zero + 60)).toBe(0.25e-3)
  expect(resistanceAt([], 7)(zero)).toBe(7)
})

test('what is unknown cold is not promised', () => {
  expect(cellHeating.compute({ ...base, start: zero - 30 }).cold).toBeUndefined()
  expect(cellHeating.compute({ ...base, readings: undefined }).cold).toBeUndefined()
})

const factor = fc.double({ min: 1, max: 4, noNaN: true })

test('more current never ends colder, a better-insulated box never colder in the cold', () => {
  fc.assert(
    fc.property(factor, factor, (more, tighter) => {
      const one = cellHeating.compute(base).end ?? NaN
      const other = cellHeating.compute({
        ...base,
        current: base.current * more,
        loss: base.loss / tighter,
      }).end
      expect(other ?? Infinity).toBeGreaterThanOrEqual(one - 1e-9)
    }),
  )
})
// 1 kJ/K and 1 kW from 20 °C: a kelvin a second. 150 °C: common practice.
test('past 150 °C the model has nothing to say', () => {
  const lump = {
    series: 1,
    cellMass: 1,
    loss: 0,
    start: zero + 20,
    current: 1000,
    resistance: 1e-3,
  }
  const after = (time: number) =>
    cellHeating.compute({ ...base, ...lump, readings: undefined, time }).end
  expect(after(129.9)).toBeCloseTo(zero + 149.9, 6)
  expect(after(130.1)).toBeUndefined()
})

test('pulling away with four fifths of what the cold cells give is still a pass', () => {
  const output = cellHeating.compute(base)
  const level = (share: number) =>
    cellHeating
      .findings({ ...base, peak: share * (output.cold ?? NaN) }, output, say)
      .find(({ check }) => check === 'cold')?.level
  expect(level(0.8)).toBe('pass')
  expect(level(0.800001)).toBe('watch')
})
