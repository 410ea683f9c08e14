/**
 * Water and glycol-water: density, specific heat, viscosity, freezing point, strength by volume and
 * by mass. All SI: kelvin, fractions 0 to 1.
 *
 * The strength's basis picks the source: by mass the IIR 2010 fits, by volume the fits to the ASHRAE
 * 2001 tables (below 10 %, where those stop, the IIR fits at the converted mass fraction). The two
 * sources differ by up to 12 % in viscosity, 4 % in specific heat and 2.5 K in freezing point, so a
 * result names its source. Outside a fit's range, frozen or above 100 °C: undefined.
 */
import * as elementary from './elementary.ts'
import { fits, type Fit } from './glycol-fits.ts'
import { words } from '../src/words/words.ts'

export type Glycol = 'ethylene-glycol' | 'propylene-glycol'
export type Basis = 'volume' | 'mass'

export interface Coolant {
  readonly kind: Glycol | 'water'
  /** Not used for water. */
  readonly strength: number
  readonly basis: Basis
}

export interface Properties {
  readonly density: number
  readonly specificHeat: number
  readonly viscosity: number
}

const iceMelts = 273.15
export const hottestKnown = 373.15
export const strongestKnown = 0.6
const weakestByVolume = 0.1
/** The ASHRAE tables stop here: −35 °C. */
export const coldestByVolume = iceMelts - 35

/** Mass against volume fraction, ASHRAE Handbook Fundamentals 2001; beyond 0.6 a straight line to 1. */
const byMassSteps = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 1]
const byVolumeSteps = {
  'ethylene-glycol': [0, 0.089, 0.181, 0.277, 0.375, 0.476, 0.578, 1],
  'propylene-glycol': [0, 0.096, 0.194, 0.294, 0.396, 0.499, 0.6, 1],
}

function between(x: number, from: readonly number[], to: readonly number[]): number {
  const start = Math.max(
    from.slice(0, -1).findLastIndex((step) => step < x),
    0,
  )
  const [x0 = 0, x1 = 1] = from.slice(start)
  const [y0 = 0, y1 = 1] = to.slice(start)
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0)
}

export function volumeFraction({ kind, strength, basis }: Coolant): number {
  if (kind === 'water') return 0
  return basis === 'volume' ? strength : between(strength, byMassSteps, byVolumeSteps[kind])
}

export function massFraction({ kind, strength, basis }: Coolant): number {
  if (kind === 'water') return 0
  return basis === 'mass' ? strength : between(strength, byVolumeSteps[kind], byMassSteps)
}

/** Where the properties stand in a fit, and where their rows begin. */
const places = { density: 2, specificHeat: 20, viscosity: 38, freezing: 56 }
const rowsAt = [0, 6, 11, 15]

function polynomial(
  fit: Fit,
  property: keyof typeof places,
  fraction: number,
  temperature?: number,
): number {
  const [t0 = 0, x0 = 0] = fit
  let sum = 0
  let row = 0
  for (let at = temperature === undefined ? 5 : 17; at >= 0; at--) {
    row = row * (fraction - x0) + (fit[places[property] + at] ?? 0)
    if (!rowsAt.includes(at)) continue
    sum = sum * ((temperature ?? t0) - t0) + row
    row = 0
  }
  return sum
}

/** In kelvin; undefined above 60 %. Below 10 % by volume a straight line from water's. */
export function freezingPoint({ kind, strength, basis }: Coolant): number | undefined {
  if (kind === 'water' || strength === 0) return iceMelts
  if (!(strength > 0 && strength <= strongestKnown)) return undefined
  const at = (x: number): number => polynomial(fits[kind][basis], 'freezing', x)
  if (basis === 'mass') return Math.min(iceMelts, at(strength))
  return strength >= weakestByVolume
    ? elementary.exp(at(strength))
    : iceMelts + ((elementary.exp(at(weakestByVolume)) - iceMelts) * strength) / weakestByVolume
}

/** The fit that holds for a strength. */
const fitBy = ({ strength, basis }: Coolant): Basis => (strength < weakestByVolume ? 'mass' : basis)

export function propertiesOf(coolant: Coolant, temperature: number): Properties | undefined {
  const { kind, strength } = coolant
  const by = fitBy(coolant)
  const freezing = freezingPoint(coolant)
  if (freezing === undefined || temperature < freezing || temperature > hottestKnown) {
    return undefined
  }
  if (kind === 'water' || strength === 0) return water(temperature)
  if (by === 'volume' && temperature < coldestByVolume) return undefined
  const fraction = by === 'volume' ? strength : massFraction(coolant)
  const of = (property: keyof typeof places): number =>
    polynomial(fits[kind][by], property, fraction, temperature)
  return {
    density: of('density'),
    specificHeat: of('specificHeat'),
    viscosity: elementary.exp(of('viscosity')),
  }
}

/**
 * Liquid water at the air's pressure. Density: Kell 1975. Viscosity: IAPWS SR6-08. Specific heat: a
 * quartic through IAPWS-IF97 values. Held within 0.05 % of IAPWS-95 from 0 to 100 °C.
 */
function water(temperature: number): Properties {
  const t = temperature - iceMelts
  const r = temperature / 300
  const polynomialIn = (coefficients: readonly number[]): number =>
    coefficients.reduceRight((sum, coefficient) => sum * t + coefficient, 0)
  return {
    density:
      polynomialIn([
        999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12,
      ]) /
      (1 + 16.87985e-3 * t),
    specificHeat: polynomialIn([4217.84874, -2.77708951, 6.59076128e-2, -6.43263943e-4, 2.6063e-6]),
    viscosity:
      (280.68 * r ** -1.9 + 511.45 * r ** -7.7 + 61.131 * r ** -19.6 + 0.45903 * r ** -40) * 1e-6,
  }
}

/** Which published values a coolant's properties come from, for the working. */
export function propertySource(coolant: Coolant): string {
  const { kind, strength } = coolant
  if (kind === 'water' || strength === 0) return words`water, IAPWS`
  const byVolume = fitBy(coolant) === 'volume'
  if (kind === 'ethylene-glycol')
    return byVolume
      ? words`ethylene glycol by volume, ASHRAE 2001`
      : words`ethylene glycol by mass, IIR 2010`
  return byVolume
    ? words`propylene glycol by volume, ASHRAE 2001`
    : words`propylene glycol by mass, IIR 2010`
}
