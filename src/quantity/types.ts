/**
 * The shapes that the rest of the kit knows of a quantity.
 *
 * Inside the kit every value is a float in the coherent SI unit of its dimension (m, kg, s, A, K,
 * rad; a temperature is kelvin above absolute zero, a gauge pressure is pascal above the air's).
 * What is measured, and not only its unit, is told by `Of`: a temperature is not a difference.
 */

/**
 * Exponents of metre, kilogram, second, ampere, kelvin, radian, and of money: each currency is a
 * dimension of its own, since no rate of exchange is kept here.
 */
export type Vector = readonly [
  m: number,
  kg: number,
  s: number,
  A: number,
  K: number,
  rad: number,
  USD: number,
  EUR: number,
  GBP: number,
  CAD: number,
  AUD: number,
  NZD: number,
  CHF: number,
  SEK: number,
  NOK: number,
  DKK: number,
]

/** What sort of thing a value is, beyond its vector: points on a scale do not add like amounts. */
export type Flavour = 'amount' | 'temperature' | 'gauge' | 'absolute'

/** The named quantities of the trade. `dimensions.ts` gives each its vector and units. */
export type Of =
  | 'number'
  | 'fraction'
  | 'angle'
  | 'length'
  | 'area'
  | 'wireArea'
  | 'volume'
  | 'time'
  | 'frequency'
  | 'speed'
  | 'acceleration'
  | 'angularSpeed'
  | 'mass'
  | 'force'
  | 'torque'
  | 'springRate'
  | 'momentOfInertia'
  | 'pressure'
  | 'gaugePressure'
  | 'absolutePressure'
  | 'temperature'
  | 'temperatureDifference'
  | 'power'
  | 'energy'
  | 'consumption'
  | 'specificEnergy'
  | 'density'
  | 'concentration'
  | 'viscosity'
  | 'kinematicViscosity'
  | 'flow'
  | 'massFlow'
  | 'specificHeat'
  | 'heatCapacity'
  | 'thermalConductance'
  | 'thermalResistance'
  | 'thermalConductivity'
  | 'heatTransfer'
  | 'voltage'
  | 'current'
  | 'charge'
  | 'resistance'
  | 'resistancePerLength'
  | 'resistancePerVolt'
  | 'capacitance'
  | 'inductance'
  | 'meltingIntegral'
  | 'money'
  | 'moneyPerEnergy'
  | 'moneyPerLength'

/** A value with what it is. `of` is there when the dimension has a name of the trade. */
export interface Quantity {
  /** In coherent SI units. */
  readonly value: number
  readonly vector: Vector
  readonly flavour: Flavour
  readonly of?: Of
}

/** Text that was understood. */
export interface ParsedQuantity extends Quantity {
  readonly ok: true
  /** The unit as the kit writes it (`L/min`, `mm²`, `°C`, `18 AWG` has unit `AWG`); '' for a plain number. */
  readonly unit: string
  /** What was typed, trimmed. */
  readonly typed: string
  /** Significant figures typed; Infinity for fractions, AWG sizes and whole counts without a unit. */
  readonly figures: number
  /** Something that was read in the only way it could be meant and that is worth saying (`65 C` read as °C). */
  readonly remark?: string
}

/** Text that was not understood, in a builder's words. */
export interface Slip {
  readonly ok: false
  /** Fault first, permanent: `no-unit`, `unknown-unit`, `wrong-dimension`, `decimal-comma`, … */
  readonly rule: string
  /** What was read and why it will not do: one sentence, no full stop. */
  readonly text: string
  /** What is allowed here, when that can be said. */
  readonly allowed?: string
  /** The likely slip: `did you mean 5 °C?`. */
  readonly hint?: string
}
