/**
 * Straight lines on double-logarithmic paper between the points of a printed table.
 *
 * In: points in rising x, all above zero, and an x. Out: the y on the line, exact at the points;
 * undefined outside the table, where nothing is known.
 */
import * as elementary from './elementary.ts'

export function logLog(
  points: readonly (readonly [x: number, y: number])[],
  x: number,
): number | undefined {
  const next = points.findIndex(([listed]) => listed >= x)
  const above = points[next]
  if (!above || above[0] === x) return above?.[1]
  const below = points[next - 1]
  if (!below) return undefined
  const slope = elementary.log(above[1] / below[1]) / elementary.log(above[0] / below[0])
  return below[1] * (x / below[0]) ** slope
}
