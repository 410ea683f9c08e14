/**
 * Pre-charge against the differential equation stepped by Runge-Kutta, and how its results scale.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { preCharge } from '../../calculators/traction/pre-charge.ts'

type Input = Parameters<typeof preCharge.compute>[0]

const base: Input = {
  voltage: 131.4,
  capacitance: 0.015,
  resistor: 47,
  closing: 'measured',
  closeAt: 0.95,
  closeAfter: undefined,
  timeout: 5,
  tries: 3,
  resistorEnergy: 300,
  resistorPower: 50,
  load: undefined,
  loopResistance: 0.013,
  contactorMake: 700,
  dischargeResistor: 1000,
  permanent: 'no',
}

/** Volts on the capacitor and joules in the resistor after a time: C dv/dt = (U − v)/R − v/R_load. */
function stepped({ voltage, capacitance, resistor, load }: Input, time: number) {
  const steps = 20_000
  const h = time / steps
  const slope = (v: number) =>
    ((voltage - v) / resistor - (load === undefined ? 0 : v / load)) / capacitance
  const power = (v: number) => (voltage - v) ** 2 / resistor
  let [v, heat] = [0, 0]
  for (let i = 0; i < steps; i++) {
    const k1 = slope(v)
    const k2 = slope(v + (h / 2) * k1)
    const k3 = slope(v + (h / 2) * k2)
    const k4 = slope(v + h * k3)
    const next = v + (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
    const middle = v + (h / 2) * k2
    heat += (h / 6) * (power(v) + 4 * power(middle) + power(next))
    v = next
  }
  return { v, heat }
}

test.each([undefined, 2000, 500, 60])('with a load of %s Ω, as stepped', (load) => {
  for (const closeAfter of [0.1, 0.7, 3, 8]) {
    const input: Input = { ...base, load, closing: 'timed', closeAfter }
    const { reached, resistorHeat, energy } = preCharge.compute(input)
    const { v, heat } = stepped(input, closeAfter)
    expect((reached ?? 0) * base.voltage).toBeCloseTo(v, 6)
    // At least one whole charge is always counted.
    expect((resistorHeat ?? 0) / Math.max(heat, energy ?? 0)).toBeCloseTo(1, 6)
  }
})

test('measured closing comes when the stepped voltage is there', () => {
  for (const load of [undefined, 2000]) {
    const { closes = NaN } = preCharge.compute({ ...base, load })
    expect(stepped({ ...base, load }, closes).v / base.voltage).toBeCloseTo(0.95, 8)
  }
})

// J. Bird, Electrical Circuit Theory and Technology, 17.6: 0.1 µF from 200 V to 2 V over 4 kΩ, 1.84 ms.
test('a discharge scales with R C and the logarithm of the voltage', () => {
  const slow = preCharge.compute({
    ...base,
    voltage: 6000,
    dischargeResistor: 4000,
    capacitance: 1e-7,
  })
  expect((slow.discharge ?? 0) * 1e3).toBeCloseTo(1.84, 2)
})

const factors = fc.double({ min: 0.1, max: 10, noNaN: true })

test('times scale with R and C, energies with C and the square of the voltage', () => {
  fc.assert(
    fc.property(factors, factors, factors, (r, c, u) => {
      const one = preCharge.compute(base)
      const other = preCharge.compute({
        ...base,
        resistor: base.resistor * r,
        capacitance: base.capacitance * c,
        voltage: base.voltage * u,
      })
      expect((other.closes ?? 0) / (one.closes ?? 1)).toBeCloseTo(r * c, 8)
      expect((other.energy ?? 0) / (one.energy ?? 1)).toBeCloseTo(c * u ** 2, 8)
      expect((other.peakPower ?? 0) / (one.peakPower ?? 1)).toBeCloseTo(u ** 2 / r, 8)
      expect((other.inrush ?? 0) / (one.inrush ?? 1)).toBeCloseTo(u, 8)
    }),
  )
})

test('a pack at or below 60 V needs no time, and 50 mF hold 90 J at 60 V', () => {
  expect(preCharge.compute({ ...base, voltage: 48 }).discharge).toBe(0)
  expect(preCharge.compute({ ...base, capacitance: 0.05 }).energyLeft).toBeCloseTo(90, 9)
})
