/**
 * A pump's curve: pressure against flow, from two figures or from points, and at another speed.
 *
 * In: SI flow and pressure. Out: a curve with the range of flow in which it is known, or the reason
 * why there is none. Points are joined by a monotone cubic (F. N. Fritsch and J. Butland, 1984), which
 * never swings above or below its points; nothing is extended past the first or the last point.
 */

export interface PumpCurve {
  readonly lowest: number
  readonly highest: number
  /** Pressure at a flow between lowest and highest. */
  at(flow: number): number
}

export interface CurvePoint {
  readonly flow: number
  readonly pressure: number
}

/** p₀(1 − (V̇/V̇max)²): shut-off pressure and free flow are all that is known. */
export function parabola(shutOff: number, freeFlow: number): PumpCurve {
  return {
    lowest: 0,
    highest: freeFlow,
    at: (flow) => shutOff * (1 - (flow / freeFlow) ** 2),
  }
}

/** Reason instead of a curve: too few points, a flow given twice, a pressure that rises with flow. */
export function throughPoints(
  given: readonly CurvePoint[],
): PumpCurve | 'too few' | 'flow twice' | 'rises' {
  const points = [...given].sort((a, b) => a.flow - b.flow)
  const [first] = points
  const last = points.at(-1)
  if (first === undefined || last === undefined || points.length < 2) return 'too few'
  const pieces = points.slice(1).map((end, index) => {
    const start = points[index] ?? first
    const width = end.flow - start.flow
    return { start, end, width, slope: (end.pressure - start.pressure) / width }
  })
  if (pieces.some(({ width }) => width === 0)) return 'flow twice'
  if (pieces.some(({ slope }) => slope > 0)) return 'rises'
  const tangents = slopesAt(pieces)
  return {
    lowest: first.flow,
    highest: last.flow,
    at: (flow) => {
      const found = pieces.findIndex(({ end }) => flow <= end.flow)
      const index = found < 0 ? pieces.length - 1 : found
      const piece = pieces[index]
      if (piece === undefined) return last.pressure
      const { start, width, slope } = piece
      const t = (flow - start.flow) / width
      const [left = 0, right = 0] = tangents.slice(index)
      const bend = left + right - 2 * slope
      return start.pressure + width * t * (left + t * (slope - left + (t - 1) * bend))
    },
  }
}

interface Piece {
  readonly width: number
  readonly slope: number
}

/** Inside: weighted harmonic mean of the two slopes, 0 beside a flat piece. At the ends: one-sided. */
function slopesAt(pieces: readonly Piece[]): readonly number[] {
  const inside = pieces.slice(1).map((right, index) => {
    const left = pieces[index] ?? right
    if (left.slope * right.slope <= 0) return 0
    const first = 2 * right.width + left.width
    const second = right.width + 2 * left.width
    return (first + second) / (first / left.slope + second / right.slope)
  })
  const end = (near: Piece | undefined, next: Piece | undefined): number => {
    if (near === undefined) return 0
    if (next === undefined) return near.slope
    const sum = near.width + next.width
    const slope = ((near.width + sum) * near.slope - near.width * next.slope) / sum
    // No slope is above zero here, so that it cannot overshoot either.
    return slope * near.slope <= 0 ? 0 : slope
  }
  return [end(pieces[0], pieces[1]), ...inside, end(pieces.at(-1), pieces.at(-2))]
}

/** The affinity laws: flow with the speed, pressure with its square. */
export function atSpeed(curve: PumpCurve, ratio: number): PumpCurve {
  return {
    lowest: curve.lowest * ratio,
    highest: curve.highest * ratio,
    at: (flow) => curve.at(flow / ratio) * ratio ** 2,
  }
}
