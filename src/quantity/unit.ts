/**
 * Reads a unit text: `mΩ/ft`, `W/(m²·K)`, `psi gauge`, `kWh/100 km`, `AWG`.
 *
 * In: a unit as typed or as the kit writes it. Out: its name as the kit writes it, its factor to the
 * SI, its vector, and whether its values are points on a scale; or what is wrong with it. `°C` and
 * `°F` are points when they stand alone and differences inside a compound unit (`J/(kg·°C)`).
 */
import { axes, definitions, prefixed } from './table.ts'
import { tidyUnit } from './tidy.ts'
import type { Flavour, Vector } from './types.ts'
import { product, readParts, written, type UnitFault } from './unit-parts.ts'
import { sameVector } from './vector.ts'

export interface Unit {
  /** As the kit writes it. */
  readonly name: string
  readonly factor: number
  /** SI value = (number + offset) × factor. */
  readonly offset: number
  readonly vector: Vector
  readonly flavour: Flavour
  /** Made with a unit of energy, power or voltage: tells `J` from `N·m` and `Wh/km` from `N`. */
  readonly energetic: boolean
}

const seen = new Map<string, Unit | UnitFault>()

export function readUnit(text: string): Unit | UnitFault {
  let unit = seen.get(text)
  if (!unit) seen.set(text, (unit = read(tidyUnit(text))))
  return unit
}

export const isUnit = (read: Unit | UnitFault): read is Unit => 'name' in read

/** Every unit and prefixed unit by the name the kit writes. */
export const unitNames: readonly string[] = [
  ...axes,
  ...definitions.keys(),
  ...[...prefixed].flatMap(([name, list]) => list.split('').map((prefix) => prefix + name)),
  '°C',
  '°F',
  'AWG',
]

const pressure: Vector = [-1, 1, -2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]
const points = /^(\S+?)(?: ?\((g|a|gauge|abs)\)| (gauge|g|absolute|abs|a)|(?<=psi|bar|kPa)(g|a))$/i
const difference = /^°?([CFK]) ?diff(?:erence)?$|^(?:Δ|delta) ?°?([CFK])$/i

function read(text: string): Unit | UnitFault {
  if (/^AWG$/i.test(text)) return altered(readProduct('m^2'), { name: 'AWG' })
  const flavour = 'temperature'
  if (text === '°C') return altered(readProduct('K'), { name: text, offset: 273.15, flavour })
  if (text === '°F') return altered(readProduct('Δ°F'), { name: text, offset: 459.67, flavour })
  const apart = difference.exec(text)
  const letter = (apart?.[1] ?? apart?.[2])?.toUpperCase()
  if (letter) return readProduct(letter === 'K' ? 'K' : `Δ°${letter}`)
  const point = points.exec(text)
  const under = point && readProduct(point[1] ?? '')
  if (!under || !isUnit(under) || !sameVector(under.vector, pressure)) return readProduct(text)
  const isGauge = /^g/i.test(point[2] ?? point[3] ?? point[4] ?? '')
  return isGauge
    ? { ...under, name: `${under.name} gauge`, flavour: 'gauge' }
    : { ...under, name: `${under.name} abs`, flavour: 'absolute' }
}

const altered = (read: Unit | UnitFault, change: Partial<Unit>): Unit | UnitFault =>
  isUnit(read) ? { ...read, ...change } : read

function readProduct(text: string): Unit | UnitFault {
  const parts = readParts(text)
  if (!(parts instanceof Array)) return parts
  if (parts.length === 0 && text !== '' && text !== '1') return { unknown: text }
  const name = written(parts)
  // The trade writes torque as lb·ft and means the force; mass × length is nothing it uses.
  if (/^(?:lb·(?:ft|in)|(?:ft|in)·lb)$/.test(name))
    return altered(readProduct(name.replace('lb', 'lbf')), { name })
  const energetic = parts.some((part) => /(?:J|W|Wh|BTU|V|VA|hp|PS)$/.test(part.name))
  return { ...product(parts), name, offset: 0, flavour: 'amount', energetic }
}
