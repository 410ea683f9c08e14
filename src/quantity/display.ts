/**
 * The unit a quantity is shown in when nobody chose one.
 *
 * A named quantity has its usual unit, metric or US, of a size that suits the value (`850 W`,
 * `30 kW`). Any other gets an SI unit text composed from its vector, with a derived unit where that is
 * shorter: `W/K`, `kg·m²`.
 */
import { fromSI } from './convert.ts'
import { dimensions } from './dimensions.ts'
import { axes, currencies } from './table.ts'
import type { Of, Quantity, Vector } from './types.ts'
import { isUnit, readUnit } from './unit.ts'
import { add } from './vector.ts'

export function displayUnit(q: Quantity, system: 'metric' | 'us'): string {
  const us = system === 'us' ? 1 : 0
  if (q.of) return ofSize(q.value, ladders[q.of]?.[us]) ?? dimensions[q.of].units[us]
  if (q.flavour === 'temperature') return us ? '°F' : '°C'
  const suffix = q.flavour === 'gauge' ? ' gauge' : q.flavour === 'absolute' ? ' abs' : ''
  return composed(q.vector) + suffix
}

const both = (units: string): readonly [string, string] => [units, units]

/** Units of rising size; the greatest that leaves a number of at least one is taken. */
const ladders: Partial<Record<Of, readonly [metric: string, us: string]>> = {
  length: ['mm m km', 'in ft mi'],
  area: ['mm² cm² m²', 'in² ft²'],
  volume: ['mL L', 'gal'],
  time: both('ms s min h'),
  mass: ['g kg', 'oz lb'],
  force: ['N kN', 'lbf'],
  pressure: ['Pa kPa MPa', 'psi'],
  power: both('W kW'),
  energy: both('J Wh kWh'),
  current: both('mA A'),
  charge: both('mAh Ah'),
  resistance: both('mΩ Ω kΩ MΩ'),
  capacitance: both('nF µF mF F'),
  inductance: both('nH µH mH H'),
}

function ofSize(value: number, ladder: string | undefined): string | undefined {
  const units = ladder?.split(' ') ?? []
  if (value === 0) return undefined
  // A hair below one still prints as one.
  return units.findLast((unit) => Math.abs(fromSI(value, unit)) > 0.9999999) ?? units[0]
}

const derived = ['', 'N', 'Pa', 'J', 'W', 'V', 'Ω', 'C', 'F', 'H']
/** Order in a product: `kg·m²`, as printed in tables. */
const order = [...currencies, 'kg', 'A', 'm', 's', 'K', 'rad']

function composed(vector: Vector): string {
  let best = ''
  let least = Infinity
  for (const name of derived) {
    const unit = readUnit(name)
    if (!isUnit(unit)) continue
    for (const times of name ? [1, -1] : [0]) {
      const rest = add(vector, unit.vector, -times)
      const cost = rest.reduce<number>((sum, power) => sum + Math.abs(power), Math.abs(times))
      if (cost >= least) continue
      least = cost
      const powers = order.map(
        (axis) => [axis, rest[axes.findIndex((a) => a === axis)] ?? 0] as const,
      )
      best = [[name, times] as const, ...powers]
        .filter(([, power]) => power !== 0)
        .map(([symbol, power]) => `${symbol}^${power}`)
        .join('·')
    }
  }
  const unit = readUnit(best)
  return isUnit(unit) ? unit.name : best
}
