/**
 * Outside air: pressure at an altitude (US Standard Atmosphere 1976, below 11 km), density, heat.
 *
 * Altitude m (geometric), temperature K, pressure Pa, density kg/m³. The temperature is the day's,
 * not the standard atmosphere's: only the pressure comes from the altitude. Dry air: at 35 °C and
 * 80 % humidity the true density is 1.7 % lower.
 */
import { vapourPressure } from './vapour.ts'

/** Standard acceleration of free fall, m/s², exact by convention (ISO 80000-3). */
export const gravity = 9.80665

/** Specific gas constant of dry air, J/(kg·K), US Standard Atmosphere 1976. */
const gasConstant = 287.05287

/** Specific heat of air at constant pressure near 30 °C, J/(kg·K). */
export const airSpecificHeat = 1006

const earthRadius = 6_356_766
const seaLevel = { pressure: 101_325, temperature: 288.15, lapse: 0.0065 } as const

/** The standard's own temperature at a geometric altitude from −1 to 11 km. */
export function standardTemperature(altitude: number): number {
  const geopotential = (earthRadius * altitude) / (earthRadius + altitude)
  return seaLevel.temperature - seaLevel.lapse * geopotential
}

/** Absolute pressure at a geometric altitude from −1 to 11 km. */
export function standardPressure(altitude: number): number {
  const ratio = standardTemperature(altitude) / seaLevel.temperature
  return seaLevel.pressure * ratio ** (gravity / (gasConstant * seaLevel.lapse))
}

/** Altitude at which the standard atmosphere has this density (below 11 km). */
export function densityAltitude(density: number): number {
  const exponent = gravity / (gasConstant * seaLevel.lapse) - 1
  const standard = seaLevel.pressure / (gasConstant * seaLevel.temperature)
  const geopotential =
    (seaLevel.temperature / seaLevel.lapse) * (1 - (density / standard) ** (1 / exponent))
  return (earthRadius * geopotential) / (earthRadius - geopotential)
}

/** Specific gas constant of water vapour, J/(kg·K). */
const vapourConstant = 461.523

/**
 * Density of air of this temperature, pressure and relative humidity (0 to 1). Below freezing the
 * vapour of supercooled water is taken: it weighs a quarter of a per cent at most.
 */
export function moistDensity(temperature: number, pressure: number, humidity: number): number {
  const vapour = Math.min(humidity * vapourPressure(temperature), pressure)
  return (pressure - vapour) / (gasConstant * temperature) + vapour / (vapourConstant * temperature)
}

/** Density of dry air at a temperature and a geometric altitude. */
export function airDensity(temperature: number, altitude: number): number {
  return standardPressure(altitude) / (gasConstant * temperature)
}
