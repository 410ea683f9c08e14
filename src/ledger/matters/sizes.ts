/**
 * Made sizes of what is only made in sizes: wire. In: the place and the stretch that passes. Out: the
 * first size on the way through it that passes, in the family (mm² or gauge) of the wire that is there.
 */
import { sizeUnit, standardSizes } from '../../../calculators/wire.ts'
import type { Band } from './band.ts'
import { hardRange, type NumberPlace } from './places.ts'
import type { Test } from './search.ts'

export interface Size {
  /** m² */
  readonly value: number
  readonly unit: string
}

export function sizeIn(place: NumberPlace, band: Band, test: Test): Size | undefined {
  if (place.field.of !== 'wireArea') return undefined
  const family = place.now ?? band.nearest
  const [low, high] = hardRange(place.field)
  const sizes = standardSizes(family).filter((size) => size >= low && size <= high)
  const { nearest, way } = band
  const thicker = sizes.filter((size) => size >= nearest)
  const thinner = sizes.filter((size) => size <= nearest).toReversed()
  const value = (way === -1 ? thinner : thicker).find(test)
  return value === undefined ? undefined : { value, unit: sizeUnit(family) }
}
