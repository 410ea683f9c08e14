/**
 * Between a number in a unit and the SI value.
 *
 * The unit is one of the kit's; an unknown one is a mistake in the program, not in a note, and throws.
 * AWG numbers follow ASTM B258: d = 0.127 mm × 92^((36 − n) / 39); 1/0 is 0, 2/0 is −1, 4/0 is −3.
 */
import { nameOf } from './dimensions.ts'
import type { Flavour, Of, Vector } from './types.ts'
import { isUnit, readUnit, type Unit } from './unit.ts'

export function knownUnit(name: string): Unit {
  const unit = readUnit(name)
  if (!isUnit(unit)) throw new Error(`\`${name}\` is not a unit of this kit`)
  return unit
}

export function toSI(number: number, unit: string): number {
  const { name, factor, offset } = knownUnit(unit)
  if (name === 'AWG') return (Math.PI / 4) * (0.127e-3 * 92 ** ((36 - number) / 39)) ** 2
  const parts = Math.round(1 / factor)
  // 10 µm is 10 / 1e6, not 10 × 1e-6: the first is the nearest float, the second one beside it.
  const divide = parts > 1 && Math.abs(factor * parts - 1) < 1e-14
  return divide ? (number + offset) / parts : (number + offset) * factor
}

export function fromSI(value: number, unit: string): number {
  const { name, factor, offset } = knownUnit(unit)
  if (name === 'AWG')
    return 36 - (39 * Math.log(Math.sqrt((4 * value) / Math.PI) / 0.127e-3)) / Math.log(92)
  return value / factor - offset
}

export interface UnitKind {
  readonly vector: Vector
  readonly flavour: Flavour
  readonly of?: Of
}

export function unitOf(unit: string): UnitKind | undefined {
  const read = readUnit(unit)
  if (!isUnit(read)) return undefined
  const of = nameOf(read)
  return { vector: read.vector, flavour: read.flavour, ...(of && { of }) }
}
