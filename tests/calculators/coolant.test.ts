/**
 * Water and glycol against published tables and fits.
 *
 * The tables in `tests/reference/` say where they come from. Same polynomial: 1e-5; the handbook's own
 * table: what its fit is known to miss; water: 0.05 %.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { coolantOf, coolantState } from '../../calculators/coolant-fields.ts'
import {
  freezingPoint,
  massFraction,
  propertiesOf,
  propertySource,
  volumeFraction,
  type Coolant,
  type Glycol,
} from '../../calculators/coolant.ts'
import { strengthFreezingAt } from '../../calculators/coolant-strength.ts'
import { fits } from '../../calculators/glycol-fits.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

const zero = 273.15
const glycols = { EG: 'ethylene-glycol', PG: 'propylene-glycol' } as const
const water: Coolant = { kind: 'water', strength: 0, basis: 'volume' }

function glycolOf(name: string | undefined): Glycol {
  return name?.includes('EG') === true ? glycols.EG : glycols.PG
}

function away(value: number | undefined, expected: number): number {
  return value === undefined ? Infinity : Math.abs(value / expected - 1)
}

test('evaluates the published polynomials, each with its own basis', () => {
  const rows = rowsOf('glycol.csv')
  expect(rows.length).toBeGreaterThan(150)
  for (const row of rows) {
    const basis = row.fraction_basis === 'mass' ? 'mass' : 'volume'
    const coolant = { kind: glycolOf(row.dataset), strength: numberIn(row, 'x'), basis } as const
    const found = propertiesOf(coolant, numberIn(row, 'T_C') + zero)
    const named = JSON.stringify(row)
    expect(away(found?.density, numberIn(row, 'density_kg_m3')), named).toBeLessThan(1e-5)
    expect(away(found?.specificHeat, numberIn(row, 'cp_J_kgK')), named).toBeLessThan(1e-5)
    expect(away(found?.viscosity, numberIn(row, 'viscosity_mPa_s') / 1e3), named).toBeLessThan(1e-5)
    const freezes = (freezingPoint(coolant) ?? NaN) - zero
    expect(Math.abs(freezes - numberIn(row, 'T_freeze_C')), named).toBeLessThan(1e-4)
  }
})

test('stands by the handbook tables of the ASHRAE 2001 edition', () => {
  const rows = rowsOf('ashrae_glycol_table.csv')
  expect(rows.length).toBeGreaterThan(50)
  for (const row of rows) {
    const strength = numberIn(row, 'vol_percent') / 100
    const coolant = { kind: glycolOf(row.fluid), strength, basis: 'volume' } as const
    const found = propertiesOf(coolant, numberIn(row, 'T_C') + zero)
    const named = JSON.stringify(row)
    expect(away(found?.density, numberIn(row, 'density_kg_m3')), named).toBeLessThan(2e-5)
    expect(away(found?.specificHeat, numberIn(row, 'cp_J_kgK')), named).toBeLessThan(2e-4)
    expect(away(found?.viscosity, numberIn(row, 'viscosity_mPa_s') / 1e3), named).toBeLessThan(0.05)
  }
})

// EG 10 % by volume, 20 to 40 °C in the table: 1013.34, 1011.69, 1009.62, 1008.02, 1006.01. The four beside
// it put 1009.92 in the middle (third-order interpolation), and fall by 1.6 to 2.0 a step, not by 2.07 then 1.60.
test('the handbook table’s 1009.62 kg/m³ at 10 % and 30 °C is a misprint for 1009.9', () => {
  const coolant = { kind: glycols.EG, strength: 0.1, basis: 'volume' } as const
  const densityAt = (degrees: number) => propertiesOf(coolant, degrees + zero)?.density
  const beside = [
    [20, 1013.34],
    [25, 1011.69],
    [35, 1008.02],
    [40, 1006.01],
  ] as const
  for (const [degrees, printed] of beside)
    expect(Math.abs((densityAt(degrees) ?? NaN) - printed)).toBeLessThan(0.05)
  const between = (4 * (1011.69 + 1008.02) - 1013.34 - 1006.01) / 6
  expect(between).toBeCloseTo(1009.915, 3)
  expect(Math.abs((densityAt(30) ?? NaN) - between)).toBeLessThan(0.05)
  expect(Math.abs((densityAt(30) ?? NaN) - 1009.62)).toBeGreaterThan(0.2)
})

test('freezing points and volume against mass follow the handbook table', () => {
  for (const row of rowsOf('ashrae_glycol_freeze.csv')) {
    const kind = glycolOf(row.fluid)
    const volume = numberIn(row, 'vol_percent') / 100
    const mass = numberIn(row, 'mass_percent') / 100
    const named = JSON.stringify(row)
    const freezing = freezingPoint({ kind, strength: volume, basis: 'volume' }) ?? NaN
    expect(Math.abs(freezing - zero - numberIn(row, 'T_freeze_C')), named).toBeLessThan(0.4)
    const asVolume = volumeFraction({ kind, strength: mass, basis: 'mass' })
    const asMass = massFraction({ kind, strength: volume, basis: 'volume' })
    expect(Math.abs(asVolume - volume), named).toBeLessThan(0.002)
    expect(Math.abs(asMass - mass), named).toBeLessThan(0.002)
  }
})

test('the two sources agree at one composition as far as they are known to', () => {
  for (const kind of [glycols.EG, glycols.PG]) {
    for (const strength of [0.2, 0.3, 0.4, 0.5]) {
      const byVolume = { kind, strength, basis: 'volume' } as const
      const byMass = { kind, strength: massFraction(byVolume), basis: 'mass' } as const
      for (const temperature of [280, 300, 320, 340, 360]) {
        const a = propertiesOf(byVolume, temperature)
        const b = propertiesOf(byMass, temperature)
        expect(away(a?.density, b?.density ?? NaN)).toBeLessThan(0.011)
        expect(away(a?.specificHeat, b?.specificHeat ?? NaN)).toBeLessThan(0.042)
        expect(away(a?.viscosity, b?.viscosity ?? NaN)).toBeLessThan(0.15)
      }
    }
  }
})

test('water is that of IAPWS within 0.05 %', () => {
  const rows = rowsOf('water_iapws.csv').filter((row) => numberIn(row, 'T_C') <= 100)
  expect(rows.length).toBeGreaterThan(8)
  for (const row of rows) {
    const found = propertiesOf(water, numberIn(row, 'T_C') + zero)
    const named = JSON.stringify(row)
    expect(away(found?.density, numberIn(row, 'rho_kg_m3_at_0.3MPa')), named).toBeLessThan(5e-4)
    expect(away(found?.specificHeat, numberIn(row, 'cp_J_kgK')), named).toBeLessThan(5e-4)
    expect(away(found?.viscosity, numberIn(row, 'mu_mPa_s') / 1e3), named).toBeLessThan(5e-4)
  }
  // IAPWS-97 at 60 °C and 0.1 MPa; not among the rows above.
  const at60 = propertiesOf(water, 60 + zero)
  expect(away(at60?.density, 983.3)).toBeLessThan(5e-4)
  expect(away(at60?.specificHeat, 4182.3)).toBeLessThan(5e-4)
})

test('expands as the tables say', () => {
  for (const row of rowsOf('coolant_expansion.csv')) {
    const coolant =
      row.fluid === 'water'
        ? water
        : ({
            kind: glycolOf(row.fluid),
            strength: numberIn(row, 'vol_percent') / 100,
            basis: 'volume',
          } as const)
    const cold = propertiesOf(coolant, numberIn(row, 'T1_C') + zero)
    const hot = propertiesOf(coolant, numberIn(row, 'T2_C') + zero)
    const percent = ((cold?.density ?? NaN) / (hot?.density ?? NaN) - 1) * 100
    expect(Math.abs(percent - numberIn(row, 'expansion_percent')), row.fluid).toBeLessThan(0.05)
  }
})

describe('outside what is published', () => {
  test.each([
    ['above 60 %', 0.61, 320],
    ['above 100 °C', 0.5, 373.5],
    ['frozen', 0.3, 255],
    ['below the tables, not yet frozen', 0.6, 235],
    ['no fraction', -0.1, 320],
    ['not a number', NaN, 320],
  ])('%s there is no property', (_, strength, temperature) => {
    const coolant = { kind: 'ethylene-glycol', strength, basis: 'volume' } as const
    expect(propertiesOf(coolant, temperature)).toBeUndefined()
  })

  test('water below 0 °C is frozen', () => {
    expect(propertiesOf(water, 272)).toBeUndefined()
    expect(coolantState(water, 272)).toBe('frozen')
    expect(coolantState(water, 280)).toBe('liquid')
    expect(coolantState(undefined, 280)).toBe('not given')
    expect(coolantState({ ...water, kind: 'ethylene-glycol', strength: 0.7 }, 280)).toBe('outside')
  })

  test('a strength without its basis is no coolant', () => {
    expect(coolantOf('ethylene-glycol', 0.5, undefined)).toBeUndefined()
    expect(coolantOf('ethylene-glycol', undefined, 'mass')).toBeUndefined()
    expect(coolantOf('water', undefined, undefined)).toEqual(water)
  })
})

test('a volume fraction never reaches a mass fit where a volume fit exists', () => {
  const half = { kind: 'ethylene-glycol', strength: 0.5 } as const
  expect(propertySource({ ...half, basis: 'volume' })).toContain('volume')
  expect(propertySource({ ...half, basis: 'mass' })).toContain('mass')
  const volume = propertiesOf({ ...half, basis: 'volume' }, 293.15)
  const mass = propertiesOf({ ...half, basis: 'mass' }, 293.15)
  expect(volume?.density).toBeCloseTo(1073.35, 1)
  expect(mass?.density).toBeCloseTo(1064.93, 1)
})

test('the strength for a freezing point freezes there', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(glycols.EG, glycols.PG),
      fc.double({ min: -50, max: -0.01, noNaN: true }),
      (kind, celsius) => {
        const strength = strengthFreezingAt(kind, celsius + zero)
        if (strength === undefined) return false
        const back = freezingPoint({ kind, strength, basis: 'volume' }) ?? NaN
        return Math.abs(back - zero - celsius) < 1e-6
      },
    ),
  )
  expect(strengthFreezingAt(glycols.EG, 200)).toBeUndefined()
})

test('more glycol: freezes lower, thicker, carries less; warmer: thinner and lighter', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(glycols.EG, glycols.PG),
      fc.constantFrom('volume' as const, 'mass' as const),
      fc.double({ min: 0.12, max: 0.58, noNaN: true }),
      fc.double({ min: 5, max: 95, noNaN: true }),
      (kind, basis, strength, celsius) => {
        const thin = { kind, strength, basis }
        const thick = { kind, strength: strength + 0.02, basis }
        const at = propertiesOf(thin, celsius + zero)
        const stronger = propertiesOf(thick, celsius + zero)
        const warmer = propertiesOf(thin, celsius + 2 + zero)
        expect(freezingPoint(thick)).toBeLessThan(freezingPoint(thin) ?? NaN)
        expect(stronger?.viscosity).toBeGreaterThan(at?.viscosity ?? NaN)
        expect(stronger?.specificHeat).toBeLessThan(at?.specificHeat ?? NaN)
        expect(warmer?.viscosity).toBeLessThan(at?.viscosity ?? NaN)
        expect(warmer?.density).toBeLessThan(at?.density ?? NaN)
      },
    ),
  )
})

// Most high-order coefficients move no property by its fifth digit; a slip in one would hide there.
test('every coefficient is the published one', () => {
  const starts: Readonly<Record<string, number>> = {
    density: 2,
    specificHeat: 20,
    viscosity: 38,
    freezing: 56,
  }
  const rowAt = [0, 6, 11, 15]
  const rows = rowsOf('glycol_coefficients.csv')
  expect(rows.length).toBeGreaterThan(150)
  for (const row of rows) {
    const fit = fits[glycolOf(row.dataset)][row.dataset?.startsWith('A') ? 'volume' : 'mass']
    const place = (starts[row.property ?? ''] ?? NaN) + (rowAt[numberIn(row, 'i')] ?? NaN)
    const found = fit[place + numberIn(row, 'j')]
    expect(away(found, numberIn(row, 'value')), JSON.stringify(row)).toBeLessThan(2e-5)
  }
})

test('no glycol is water, all glycol is all glycol, and the first step of the table is met', () => {
  for (const kind of [glycols.EG, glycols.PG]) {
    const all = { kind, strength: 1 }
    expect(volumeFraction({ ...all, basis: 'mass' })).toBe(1)
    expect(massFraction({ ...all, basis: 'volume' })).toBe(1)
    expect(massFraction({ ...all, strength: 0.8, basis: 'volume' })).toBeLessThan(0.85)
    const none = { kind, strength: 0, basis: 'volume' } as const
    expect(propertiesOf(none, 300)).toEqual(propertiesOf(water, 300))
    expect(propertySource(none)).toBe('water, IAPWS')
    // A tenth by volume is where the fit by volume begins.
    expect(propertySource({ kind, strength: 0.1, basis: 'volume' })).toContain('by volume')
    expect(propertySource({ kind, strength: 0.0999, basis: 'volume' })).toContain('by mass')
  }
  expect(volumeFraction(water)).toBe(0)
  expect(massFraction(water)).toBe(0)
  // ASHRAE 2001: 10 % of ethylene glycol by mass is 8.9 % by volume, of propylene glycol 9.6 %.
  expect(volumeFraction({ kind: glycols.EG, strength: 0.1, basis: 'mass' })).toBeCloseTo(0.089, 6)
  expect(volumeFraction({ kind: glycols.PG, strength: 0.1, basis: 'mass' })).toBeCloseTo(0.096, 6)
})

// Kell 1975 as Jones and Harris quote it (J. Res. NIST 97, 335, eq. 1), worked apart. They print
// 16.897850e-3 in the denominator; with that water would weigh 957.7 kg/m³ at 100 °C: a misprint for 16.879850e-3.
test('water has the density of Kell’s formula in seven digits', () => {
  expect(away(propertiesOf(water, zero + 100)?.density, 958.3636571)).toBeLessThan(1e-8)
  expect(away(propertiesOf(water, zero + 50)?.density, 988.0362916)).toBeLessThan(1e-8)
})

// iapws 1.5.2, _Liquid(T)['mu'], which is IAPWS SR6-08 at 0.1 MPa.
test.each([
  [273.16, 1.791158326932368e-3],
  [298.15, 8.89996773678783e-4],
  [373.12, 2.816697517197e-4],
])('water at %s K has the viscosity of IAPWS SR6-08', (temperature, viscosity) => {
  expect(away(propertiesOf(water, temperature)?.viscosity, viscosity)).toBeLessThan(1e-7)
})

// The table's first step and the straight line beyond its last, by hand.
test.each([
  [glycols.EG, 0.05, 0.0445],
  [glycols.PG, 0.05, 0.048],
  [glycols.EG, 0.8, 0.789],
  [glycols.PG, 0.8, 0.8],
  [glycols.EG, 0.35, 0.326],
] as const)('%s: %s by mass is %s by volume', (kind, mass, volume) => {
  expect(volumeFraction({ kind, strength: mass, basis: 'mass' })).toBeCloseTo(volume, 9)
  expect(massFraction({ kind, strength: volume, basis: 'volume' })).toBeCloseTo(mass, 9)
})
