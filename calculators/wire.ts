/**
 * Copper wire: gauges, resistance, and what current printed tables allow it.
 *
 * In: areas in m², temperatures in K, insulation classes as words. Out: ohm per metre and ampere.
 * A rating is only worth something with the conditions of its table: the same 2/0 cable is printed
 * as 195 A in one place and 390 A in another. Between two printed sizes the thinner one counts.
 */
import { logLog } from './log-log.ts'
import { aircraftAmpacityRows, aircraftClasses } from './tables/aircraft-ampacity.ts'
import { boatAmpacityRows, boatClasses } from './tables/boat-ampacity.ts'
import { engineSpaceFactors } from './tables/boat-engine-space.ts'
import { flexibleCopperRows } from './tables/flexible-copper.ts'
import { loomWireRows } from './tables/loom-wire.ts'
import { words } from '../src/words/words.ts'

/** Annealed copper at 20 °C, 1/58 Ω·mm²/m (IEC 60028). */
export const copper = 1e-6 / 58
/** Per kelvin from 20 °C (IEC 60028). */
const copperRise = 0.00393
const twentyCelsius = 293.15

/** ASTM B258: 0.005 in × 92^((36 − n)/39); n is 0, −1, −2, −3 for 1/0 to 4/0. */
export function gaugeArea(gauge: number): number {
  const diameter = 0.000127 * 92 ** ((36 - gauge) / 39)
  return (Math.PI / 4) * diameter ** 2
}

/** How much more a copper wire resists at this temperature than at 20 °C. */
export function heated(temperature: number): number {
  return 1 + copperRise * (temperature - twentyCelsius)
}

/** Solid copper of the full area, Ω/m at 20 °C. */
export function solidPerMetre(area: number): number {
  return copper / area
}

/** IEC 60228, class 5, plain copper: the most it may resist, mm² and Ω/km at 20 °C. */
const classFive: readonly (readonly [area: number, ohmPerKm: number])[] =
  /* @__PURE__ */ flexibleCopperRows.map(([area, , flexible]) => [area, flexible])

/**
 * Flexible cable, Ω/m at 20 °C: the class 5 limit at the printed sizes, log-log between them, and
 * outside them as much above solid copper as at the nearest size.
 */
export function flexiblePerMetre(area: number): number {
  const size = area * 1e6
  const areas = classFive.map(([listedArea]) => listedArea)
  const listed = Math.min(Math.max(size, Math.min(...areas)), Math.max(...areas))
  return ((logLog(classFive, listed) ?? NaN) / 1000) * (listed / size)
}

const metricSizes = /* @__PURE__ */ [
  0.35, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240,
].map((size) => size * 1e-6)
/** Made sizes; 0, −1, −2, −3 are 1/0 to 4/0. */
export const gauges: readonly number[] = [
  24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3,
]

/** The gauges that have an area, made or not: 4/0 to 40. */
const gaugeAreas = /* @__PURE__ */ Array.from({ length: 44 }, (_, at) => gaugeArea(at - 3))
const isOneOf = (sizes: readonly number[], area: number): boolean =>
  sizes.some((size) => Math.abs(size / area - 1) < 1e-3)
const isGauge = (area: number): boolean => !isOneOf(metricSizes, area) && isOneOf(gaugeAreas, area)

/** The unit of the family the given wire belongs to. */
export const sizeUnit = (area: number): 'AWG' | 'mm²' => (isGauge(area) ? 'AWG' : 'mm²')

/** The sizes one can buy of that family, thinnest first. */
export const standardSizes = (area: number): readonly number[] =>
  isGauge(area) ? gauges.map(gaugeArea) : metricSizes

/** The next standard size up, or undefined beyond the largest. */
export function nextSize(area: number): number | undefined {
  return standardSizes(area).find((size) => size > area * 1.001)
}

export type InsulationClass =
  '60C' | '70C' | '75C' | '80C' | '90C' | '105C' | '125C' | '150C' | '200C'

export interface AmpacityTable {
  readonly classes: readonly InsulationClass[]
  /** Area in m², then one rating in A for each class. */
  readonly rows: readonly (readonly number[])[]
  readonly factor?: Readonly<Partial<Record<InsulationClass, number>>>
}

/** `4/0` is −3. */
const gaugeNumber = (name: string) =>
  name.endsWith('/0') ? 1 - Number(name.slice(0, -2)) : Number(name)
const byGauge = (
  rows: readonly (readonly [gauge: string, ...amps: number[]])[],
): AmpacityTable['rows'] => rows.map(([gauge, ...amps]) => [gaugeArea(gaugeNumber(gauge)), ...amps])

export const loomTable: AmpacityTable = {
  classes: ['70C'],
  rows: /* @__PURE__ */ loomWireRows.map(([area, ampere]) => [Number(`${area}e-6`), ampere]),
}

const boatRows = /* @__PURE__ */ byGauge(boatAmpacityRows)
export const boatTable: AmpacityTable = { classes: boatClasses, rows: boatRows }

export const boatEngineTable: AmpacityTable = {
  classes: boatClasses,
  rows: boatRows,
  // Note 1 of the table; 0.85 at 105 °C was read, the others are recalled.
  factor: engineSpaceFactors,
}

export const aircraftTable: AmpacityTable = {
  classes: aircraftClasses,
  rows: /* @__PURE__ */ byGauge(aircraftAmpacityRows),
}

/** What each table was printed for. */
export const tableConditions = {
  loom: words`conventional PVC cable of 0.65 to 3 mm², continuous (cable table of the towing-electrics trade)`,
  boat: words`30 °C around it, circuits under 50 V (33 CFR 183.425, table 5)`,
  'boat-engine': words`an engine space at 50 °C, circuits under 50 V (33 CFR 183.425, table 5, note 1)`,
  aircraft: words`bundles at 70 °C around them (FAA AC 43.13-1B, table 11-9)`,
} as const

/** A listed wire is matched although its area was converted on the way. */
const slack = 1 + 1e-6

/** Rating in A of the thickest listed wire that is not thicker; undefined when the table has none. */
export function printedAmpacity(
  { classes, rows, factor }: AmpacityTable,
  insulation: InsulationClass,
  area: number,
): number | undefined {
  const column = classes.indexOf(insulation)
  if (column < 0) return undefined
  const row = rows.findLast(([listed = Infinity]) => listed <= area * slack)
  const amps = row?.[column + 1]
  return amps === undefined ? undefined : amps * (factor?.[insulation] ?? 1)
}
