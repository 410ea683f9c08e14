/**
 * The named quantities of the trade: vector, flavour, SI unit, usual display units, and words.
 *
 * Several share a vector (torque and energy, force and Wh/km, area and wire size): `fits` tells
 * them apart by the unit they were written in. The order matters: of two that fit, the first is it.
 */
import type { Flavour, Of, Vector } from './types.ts'
import { isUnit, readUnit, type Unit } from './unit.ts'
import { sameVector } from './vector.ts'
import { words } from '../words/words.ts'

export interface Dimension {
  readonly vector: Vector
  readonly flavour: Flavour
  /** Symbol of the coherent SI unit. */
  readonly si: string
  readonly units: readonly [metric: string, us: string]
  /** For messages: `a flow`. */
  readonly words: string
}

function dimension(text: string, si: string, metric: string, us = metric): Dimension {
  const unit = readUnit(si)
  const shown = readUnit(metric)
  if (!isUnit(unit) || !isUnit(shown)) throw new Error(`a unit of ${text} is not in the table`)
  return { vector: unit.vector, flavour: shown.flavour, si, units: [metric, us], words: text }
}

export const dimensions: Readonly<Record<Of, Dimension>> = {
  number: dimension(words`a plain number`, '1', ''),
  fraction: dimension(words`a fraction`, '1', '%'),
  angle: dimension(words`an angle`, 'rad', '°'),
  length: dimension(words`a length`, 'm', 'm', 'ft'),
  area: dimension(words`an area`, 'm²', 'm²', 'ft²'),
  wireArea: dimension(words`a wire size`, 'm²', 'mm²', 'AWG'),
  volume: dimension(words`a volume`, 'm³', 'L', 'gal'),
  time: dimension(words`a time`, 's', 's'),
  frequency: dimension(words`a frequency`, 'Hz', 'Hz'),
  speed: dimension(words`a speed`, 'm/s', 'km/h', 'mph'),
  acceleration: dimension(words`an acceleration`, 'm/s²', 'm/s²', 'ft/s²'),
  angularSpeed: dimension(words`a speed of rotation`, 'rad/s', 'rpm'),
  mass: dimension(words`a mass`, 'kg', 'kg', 'lb'),
  force: dimension(words`a force`, 'N', 'N', 'lbf'),
  torque: dimension(words`a torque`, 'N·m', 'N·m', 'lb·ft'),
  springRate: dimension(words`a spring rate`, 'N/m', 'N/mm', 'lbf/in'),
  momentOfInertia: dimension(words`a moment of inertia`, 'kg·m²', 'kg·m²', 'lb·ft²'),
  pressure: dimension(words`a pressure difference`, 'Pa', 'kPa', 'psi'),
  gaugePressure: dimension(words`a gauge pressure`, 'Pa', 'kPa gauge', 'psi gauge'),
  absolutePressure: dimension(words`an absolute pressure`, 'Pa', 'kPa abs', 'psi abs'),
  temperature: dimension(words`a temperature`, 'K', '°C', '°F'),
  temperatureDifference: dimension(words`a temperature difference`, 'K', 'K', 'Δ°F'),
  power: dimension(words`a power`, 'W', 'kW', 'hp'),
  energy: dimension(words`an energy`, 'J', 'kWh'),
  consumption: dimension(words`an energy per distance`, 'J/m', 'Wh/km', 'Wh/mi'),
  specificEnergy: dimension(words`an energy per mass`, 'J/kg', 'Wh/kg', 'Wh/lb'),
  density: dimension(words`a density`, 'kg/m³', 'kg/m³', 'lb/ft³'),
  concentration: dimension(words`a concentration`, 'kg/m³', 'mg/L'),
  viscosity: dimension(words`a viscosity`, 'Pa·s', 'mPa·s', 'cP'),
  kinematicViscosity: dimension(words`a kinematic viscosity`, 'm²/s', 'mm²/s', 'cSt'),
  flow: dimension(words`a flow`, 'm³/s', 'L/min', 'gal/min'),
  massFlow: dimension(words`a mass flow`, 'kg/s', 'kg/min', 'lb/min'),
  specificHeat: dimension(words`a specific heat`, 'J/(kg·K)', 'kJ/(kg·K)', 'BTU/(lb·Δ°F)'),
  heatCapacity: dimension(words`a heat capacity`, 'J/K', 'kJ/K', 'BTU/Δ°F'),
  thermalConductance: dimension(words`a thermal conductance`, 'W/K', 'W/K', 'BTU/(h·Δ°F)'),
  thermalResistance: dimension(words`a thermal resistance`, 'K/W', 'K/W'),
  thermalConductivity: dimension(
    words`a thermal conductivity`,
    'W/(m·K)',
    'W/(m·K)',
    'BTU/(h·ft·Δ°F)',
  ),
  heatTransfer: dimension(
    words`a heat transfer coefficient`,
    'W/(m²·K)',
    'W/(m²·K)',
    'BTU/(h·ft²·Δ°F)',
  ),
  voltage: dimension(words`a voltage`, 'V', 'V'),
  current: dimension(words`a current`, 'A', 'A'),
  charge: dimension(words`a charge`, 'C', 'Ah'),
  resistance: dimension(words`a resistance`, 'Ω', 'Ω'),
  resistancePerLength: dimension(words`a resistance per length`, 'Ω/m', 'mΩ/m', 'mΩ/ft'),
  resistancePerVolt: dimension(words`a resistance per volt`, 'Ω/V', 'Ω/V'),
  capacitance: dimension(words`a capacitance`, 'F', 'µF'),
  inductance: dimension(words`an inductance`, 'H', 'µH'),
  meltingIntegral: dimension(words`a melting integral`, 'A²s', 'A²s'),
  money: dimension(words`a sum of money`, 'US$', 'US$'),
  moneyPerEnergy: dimension(words`a price per energy`, 'US$/J', 'US$/kWh'),
  moneyPerLength: dimension(words`a cost per distance`, 'US$/m', 'US$/km', 'US$/mi'),
}

export const names = Object.keys(dimensions).filter((name): name is Of => name in dimensions)

/** Made of energy, or of force alone, where the vector cannot tell. */
const energetic: Partial<Record<Of, boolean>> = {
  torque: false,
  force: false,
  energy: true,
  consumption: true,
}

/** Whether a value written in this unit can be meant. Kelvin is a temperature and a difference. */
export function fits(of: Of, unit: Unit): boolean {
  const { vector, flavour } = dimensions[of]
  if (of === 'concentration' && unit.name === 'ppm') return true
  return (
    sameVector(vector, unit.vector) &&
    (flavour === unit.flavour || (of === 'temperature' && unit.name === 'K')) &&
    (energetic[of] ?? unit.energetic) === unit.energetic &&
    (of !== 'number' || unit.name === '')
  )
}

/** The quantity that a unit alone speaks of. */
export function nameOf(unit: Unit): Of | undefined {
  if (unit.name === 'AWG' || unit.name === 'kcmil') return 'wireArea'
  if (/^[µm]g\/m?L$/.test(unit.name)) return 'concentration'
  return names.find((of) => (of !== 'temperature' || unit.name !== 'K' ? fits(of, unit) : false))
}

/** Whether energy or force is meant, or undefined where the vector says it all. */
export const isEnergetic = (of: Of): boolean | undefined => energetic[of]
