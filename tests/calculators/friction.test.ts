/** Friction factors and pressure drops against a library's tables and textbook examples. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  colebrook,
  frictionFactor,
  frictionSlope,
  hoseDrop,
  isUncertain,
  laminarUpTo,
  reynoldsIn,
  turbulentFrom,
  velocityIn,
} from '../../calculators/friction.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

const perLitreMinute = 1 / 60_000

function away(value: number | undefined, expected: number): number {
  return value === undefined ? Infinity : Math.abs(value / expected - 1)
}

test('factors of the grid: 64/Re when laminar, Colebrook when turbulent', () => {
  const rows = rowsOf('darcy.csv')
  expect(rows.length).toBeGreaterThan(70)
  for (const row of rows) {
    const reynolds = numberIn(row, 'Re')
    const roughness = numberIn(row, 'rel_roughness')
    const found = frictionFactor(reynolds, roughness)
    if (reynolds <= laminarUpTo) {
      expect(away(found, numberIn(row, 'f_laminar')), `${reynolds}`).toBeLessThan(1e-5)
    } else if (reynolds >= turbulentFrom) {
      expect(away(found, numberIn(row, 'f_Colebrook')), `${reynolds}`).toBeLessThan(1e-5)
    }
    if (reynolds > 2000) {
      const exact = colebrook(reynolds, roughness)
      expect(away(exact, numberIn(row, 'f_Colebrook')), `${reynolds}`).toBeLessThan(1e-5)
    }
  }
})

test('Colebrook is solved, not approximated', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2100, max: 1e7, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      (reynolds, roughness) => {
        const root = Math.sqrt(colebrook(reynolds, roughness) ?? NaN)
        const right = -2 * Math.log10(roughness / 3.7 + 2.51 / (reynolds * root))
        expect(Math.abs(1 / root / right - 1)).toBeLessThan(1e-13)
      },
    ),
  )
})

test('the slope of the factor is what neighbours give', () => {
  const kinds = fc.constantFrom('between' as const, 'laminar' as const, 'turbulent' as const)
  const inside = fc.oneof(
    ...[
      { min: 10, max: 2030 },
      { min: 2050, max: 3990 },
      { min: 4010, max: 1e6 },
    ].map((range) => fc.double({ ...range, noNaN: true })),
  )
  fc.assert(
    fc.property(inside, fc.double({ min: 0, max: 0.05, noNaN: true }), kinds, (re, rough, as) => {
      const at = (reynolds: number): number => frictionFactor(reynolds, rough, as) ?? NaN
      const hair = 1e-4
      const rise = (Math.log(at(re * (1 + hair))) - Math.log(at(re * (1 - hair)))) / (2 * hair)
      expect(frictionSlope(at(re), re, rough, as)).toBeCloseTo(rise, 6)
    }),
  )
})

test('as rough as the bore is wide it still holds, and past its end there is no factor', () => {
  // Fully rough: 1/√f = −2 log₁₀(ε/3.7d), which is below zero from ε/d 3.7 on.
  expect(away(colebrook(1e12, 2), (-2 * Math.log10(2 / 3.7)) ** -2)).toBeLessThan(1e-9)
  expect(colebrook(1e12, 4)).toBeUndefined()
})

test('pressure drop of straight hoses', () => {
  const rows = rowsOf('hose_pressure_drop.csv')
  const judged = rows.filter((row) => row.regime !== 'transitional')
  expect(judged.length).toBeGreaterThan(40)
  for (const row of rows) {
    const bore = numberIn(row, 'D_m')
    const flow = numberIn(row, 'Q_L_min') * perLitreMinute
    const liquid = { density: numberIn(row, 'rho_kg_m3'), viscosity: numberIn(row, 'mu_Pa_s') }
    const hose = { length: 1, bore, fittings: 0, roughness: 1.5e-6 }
    const reynolds = reynoldsIn(bore, flow, liquid)
    expect(away(reynolds, numberIn(row, 'Re'))).toBeLessThan(1e-4)
    expect(away(velocityIn(bore, flow), numberIn(row, 'V_m_s'))).toBeLessThan(1e-5)
    if (row.regime === 'transitional') {
      expect(isUncertain(reynolds), row.case).toBe(true)
    } else {
      expect(isUncertain(reynolds), row.case).toBe(false)
      expect(away(hoseDrop(hose, flow, liquid), numberIn(row, 'dP_Pa_per_m'))).toBeLessThan(1e-4)
    }
  }
})

test('textbook examples', () => {
  // Cengel and Cimbala, Fluid Mechanics, example 8-1: glycerin, laminar, 1291 kPa.
  const glycerin = { density: 1252, viscosity: 0.3073 }
  const wide = { length: 70, bore: 0.04, fittings: 0, roughness: 0 }
  const flow = 3 * (Math.PI / 4) * 0.04 ** 2
  expect(away(hoseDrop(wide, flow, glycerin), 1_291_000)).toBeLessThan(5e-4)
  // The same, 8-3: water, 2 µm; the book reads f off the chart: 96.5 kPa.
  const water = { density: 999, viscosity: 1.138e-3 }
  const steel = { length: 60, bore: 0.05, fittings: 0, roughness: 2e-6 }
  expect(away(hoseDrop(steel, 0.006, water), 96_500)).toBeLessThan(0.005)
  // The same, 8-8: ΣK 2.36, 89 m, 0.26 mm: 27.8 m of head besides the lift of 4 m.
  const cold = { density: 999.7, viscosity: 1.307e-3 }
  const iron = { length: 89, bore: 0.05, fittings: 2.36, roughness: 0.26e-3 }
  expect(away(hoseDrop(iron, 0.006, cold), 27.8 * 999.7 * 9.81)).toBeLessThan(0.005)
  // Crane TP-410 7.9: laminar at Re 1676, f 0.0382.
  expect(frictionFactor(1675.6, 0.0003)).toBeCloseTo(0.0382, 4)
})

test('between laminar and turbulent the factor lies between the two ends, without a jump', () => {
  fc.assert(
    fc.property(
      fc.double({ min: laminarUpTo + 1, max: turbulentFrom - 1, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      (reynolds, roughness) => {
        const low = frictionFactor(reynolds, roughness, 'laminar') ?? NaN
        const high = frictionFactor(reynolds, roughness, 'turbulent') ?? NaN
        const middle = frictionFactor(reynolds, roughness) ?? NaN
        expect(low).toBeLessThanOrEqual(middle)
        expect(middle).toBeLessThanOrEqual(high)
      },
    ),
  )
  for (const edge of [laminarUpTo, turbulentFrom]) {
    const below = frictionFactor(edge - 1e-6, 0.001) ?? NaN
    expect(away(frictionFactor(edge + 1e-6, 0.001), below)).toBeLessThan(1e-6)
  }
})

// Crane TP-410M, example 7.8: 600 barrels an hour of oil, 60 m of 8 in schedule 40 and a globe valve of
// 340 times 0.014; 6382 Pa is printed.
test('oil through a pipe and a globe valve', () => {
  const pipe = { length: 60, bore: 0.202717, fittings: 340 * 0.014, roughness: 4.57e-5 }
  const flow = (600 * 0.158987294928) / 3600
  const oil = { density: 869.2, viscosity: 0.13 }
  expect(away(hoseDrop(pipe, flow, oil), 6382)).toBeLessThan(5e-3)
})

// Crane TP-410M, example 7.14: 1500 L/min of water, 34 m of 4 in, 67 m of 5 in, an elbow each, 22 m up. The
// 8th edition prints 2.6 bar; the 9th prints 26 450 Pa, a tenth of it: a misprint, less than friction alone.
test('water up two sizes of pipe: 2.6 bar, and not the 26 450 Pa of the 9th edition', () => {
  const flow = 1500 * perLitreMinute
  const cold = { density: 999.1, viscosity: 1.138e-3 }
  const roughness = 4.57e-5
  const friction =
    (hoseDrop({ length: 34, bore: 0.10226, fittings: 14 * 0.017, roughness }, flow, cold) ?? NaN) +
    (hoseDrop({ length: 67, bore: 0.1282, fittings: 14 * 0.016, roughness }, flow, cold) ?? NaN)
  expect(friction).toBeGreaterThan(1.5 * 26_450)
  expect(away(friction + cold.density * 9.80665 * 22, 2.6e5)).toBeLessThan(0.02)
})

test('no flow resists nothing, and more flow resists more', () => {
  const hose = { length: 3, bore: 0.016, fittings: 4, roughness: 1.5e-6 }
  const liquid = { density: 1058, viscosity: 1.8e-3 }
  expect(hoseDrop(hose, 0, liquid)).toBe(0)
  let before = 0
  for (let flow = 1e-6; flow < 1e-3; flow *= 1.02) {
    const now = hoseDrop(hose, flow, liquid) ?? NaN
    expect(now).toBeGreaterThan(before)
    before = now
  }
})

test('the two ends of the uncertain range belong to what lies beyond them', () => {
  expect(frictionFactor(2040, 0)).toBe(64 / 2040)
  expect(frictionFactor(2040, 0, 'turbulent')).toBe(64 / 2040)
  expect(frictionFactor(4000, 1e-4, 'laminar')).toBe(colebrook(4000, 1e-4))
  expect(frictionSlope(64 / 2040, 2040, 0, 'turbulent')).toBe(-1)
  expect(frictionSlope(0.04, 4000, 1e-4, 'laminar')).toBe(frictionSlope(0.04, 4000, 1e-4))
  expect(frictionSlope(0.04, 4000, 1e-4)).toBe(frictionSlope(0.04, 4000, 1e-4, 'turbulent'))
  expect([2040, 2041, 3999, 4000].map(isUncertain)).toEqual([false, true, true, false])
  expect(frictionFactor(0.5, 0)).toBe(128)
  expect(frictionFactor(0, 0)).toBeUndefined()
})
