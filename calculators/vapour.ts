/**
 * Vapour pressure of water: at which absolute pressure it boils.
 *
 * In: kelvin, 273.16 to 647. Out: Pa. Equation of Wagner and Pruss as released by IAPWS (SR1-86, 1992).
 * Glycol lowers it (Raoult: 50 % by volume to about three quarters), so water is the careful end.
 */
import * as elementary from './elementary.ts'

const critical = { temperature: 647.096, pressure: 22.064e6 }
const terms = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
] as const

export function vapourPressure(temperature: number): number {
  const below = 1 - temperature / critical.temperature
  const sum = terms.reduce((total, [factor, power]) => total + factor * below ** power, 0)
  return critical.pressure * elementary.exp((critical.temperature / temperature) * sum)
}
