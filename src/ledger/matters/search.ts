/**
 * The points at which an input is tried, and the place between two of them where a test turns. In and
 * out: SI values within the field's hard range. Spaced by ratio where the range spans more than a
 * hundredfold, else evenly; a count is only tried at whole numbers.
 */
import type { NumberField } from '../../../calculators/define.ts'
import { hardRange, isWhole, usualRange, type NumberPlace } from './places.ts'

export type Test = (value: number) => boolean
export type Way = 1 | -1

const wide = 100
/** The share of the points that lies within the usual range. */
const usualShare = 2 / 3
const fineness = 1e-9
const mostHalvings = 80

export function logarithmic(field: NumberField): boolean {
  const [low, high] = hardRange(field)
  return low > 0 && high / low > wide
}

/** Where to begin when there is no present value. */
export function middleOf(field: NumberField): number {
  const [low, high] = usualRange(field)
  const middle = logarithmic(field) ? Math.sqrt(low * high) : (low + high) / 2
  return field.of === 'number' && Number.isInteger(low) ? Math.round(middle) : middle
}

/** From a value to the end of the hard range, the usual range first; the value itself is left out. */
export function outward(place: NumberPlace, from: number, way: Way, count: number): number[] {
  const end = (range: readonly [number, number]): number => range[way === 1 ? 1 : 0]
  const hard = end(hardRange(place.field))
  const usual = end(usualRange(place.field))
  const inUsual = way * (usual - from) > 0
  const first = inUsual ? spread(place, from, usual, Math.ceil(count * usualShare)) : []
  const rest = count - first.length
  const points = [...first, ...spread(place, inUsual ? usual : from, hard, rest)]
  return isWhole(place)
    ? [...new Set(points.map(Math.round))].filter((one) => one !== from)
    : points
}

function spread({ field }: NumberPlace, from: number, to: number, count: number): number[] {
  if (from === to) return []
  const byRatio = logarithmic(field) && from > 0
  return Array.from({ length: count }, (_, index) => {
    const part = (index + 1) / count
    if (part === 1) return to
    return byRatio ? from * (to / from) ** part : from + (to - from) * part
  })
}

/** The value at which the test just passes, between one that passes and one that does not. */
export function bisected(place: NumberPlace, test: Test, passes: number, fails: number): number {
  const whole = isWhole(place)
  let [good, bad] = [passes, fails]
  for (let turn = 0; turn < mostHalvings; turn += 1) {
    const gap = Math.abs(good - bad)
    if (gap <= (whole ? 1 : fineness * Math.max(Math.abs(good), Math.abs(bad)))) break
    const middle = whole ? Math.floor((good + bad) / 2) : (good + bad) / 2
    if (test(middle)) good = middle
    else bad = middle
  }
  return good
}
