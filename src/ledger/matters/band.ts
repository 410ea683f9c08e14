/**
 * The stretch of an input's range over which a test holds, nearest to the present value. In: the place,
 * a test of one value in SI, how many points to try each way. Out: where the stretch begins and ends,
 * solved, not read off the points: each end is a value that passed, with one that did not beside it.
 *
 * Tried outward from the present value, the usual range first. A stretch narrower than the distance of
 * two points can be missed, one that is found is never wrong.
 */
import { bisected, logarithmic, middleOf, outward, type Test, type Way } from './search.ts'
import { usualRange, type NumberPlace } from './places.ts'
import { roundedIn, type Rounded } from './rounded.ts'

export type { Rounded } from './rounded.ts'

/** An end of the stretch: it passes, and so do the values rounded inwards from it. */
export interface Edge {
  readonly value: number
  /** As it is said in the field's metric and its US unit. */
  readonly rounded: readonly [metric: Rounded, us: Rounded]
}

export interface Band {
  /** Lowest that passes; undefined: down to the end of the hard range. */
  readonly from: Edge | undefined
  /** Highest that passes; undefined: up to the end of the hard range. */
  readonly to: Edge | undefined
  /** What passes nearest to the present value. */
  readonly nearest: number
  /** From the present value to the stretch; 0 where there is no present value. */
  readonly way: Way | 0
  /** The nearest that passes lies outside the usual range. */
  readonly unusual: boolean
}

export function bandOf(place: NumberPlace, test: Test, points: number): Band | undefined {
  const start = place.now ?? middleOf(place.field)
  const edge = (value: number, inward: Way): Edge => edgeOf(place, value, inward, test)
  const [usualLow, usualHigh] = usualRange(place.field)
  const isUnusual = (value: number): boolean => value < usualLow || value > usualHigh
  const last = (way: Way, from: number): number | undefined =>
    endOf(place, test, from, outward(place, start, way, points).filter(beyond(from, way)))
  if (place.now === undefined && test(start)) {
    const [low, high] = [last(-1, start), last(1, start)]
    return {
      from: low === undefined ? undefined : edge(low, 1),
      to: high === undefined ? undefined : edge(high, -1),
      nearest: start,
      way: 0,
      unusual: false,
    }
  }
  const found = ([1, -1] as const).flatMap((way): Band[] => {
    const tried = outward(place, start, way, points)
    const at = tried.findIndex(test)
    const hit = tried[at]
    if (hit === undefined) return []
    const near = bisected(place, test, hit, tried[at - 1] ?? start)
    const far = last(way, hit)
    const end = far === undefined ? undefined : edge(far, way === 1 ? -1 : 1)
    return [
      {
        from: way === 1 ? edge(near, 1) : end,
        to: way === 1 ? end : edge(near, -1),
        nearest: near,
        way: place.now === undefined ? 0 : way,
        unusual: isUnusual(near),
      },
    ]
  })
  const distance = ({ nearest }: Band): number =>
    logarithmic(place.field) && start > 0
      ? Math.abs(Math.log(nearest / start))
      : Math.abs(nearest - start)
  return found.toSorted(
    (a, b) => Number(a.unusual) - Number(b.unusual) || distance(a) - distance(b),
  )[0]
}

const beyond =
  (from: number, way: Way) =>
  (value: number): boolean =>
    way * (value - from) > 0

/** The last value that passes on the way through `points`; undefined: all of them do. */
function endOf(
  place: NumberPlace,
  test: Test,
  from: number,
  points: readonly number[],
): number | undefined {
  const at = points.findIndex((value) => !test(value))
  const fails = points[at]
  return fails === undefined ? undefined : bisected(place, test, points[at - 1] ?? from, fails)
}

function edgeOf(place: NumberPlace, value: number, inward: Way, test: Test): Edge {
  const [metric, us] = place.field.units
  const first = roundedIn(place, value, metric, inward, test)
  return {
    value,
    rounded: [first, metric === us ? first : roundedIn(place, value, us, inward, test)],
  }
}
