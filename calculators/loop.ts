/**
 * A closed loop as one resistance, and where a pump's curve crosses it. All SI.
 *
 * In: hoses, parts, the liquid, a pump's curve. Out: the pressure at a flow, or the flow itself.
 *
 * Hoses of one bore and roughness share velocity and friction factor: their lengths and losses are added
 * before anything is solved. Fittings, parts and most pumps go with the square of the flow, laminar
 * hoses with the flow itself, turbulent ones with something between: so a step of the search takes the
 * loop for a sum of the two. Where that holds exactly one step is enough, else two or three.
 */
import {
  frictionFactor,
  frictionSlope,
  reynoldsIn,
  velocityIn,
  type Hose,
  type Liquid,
  type Regime,
} from './friction.ts'
import type { PumpCurve } from './pump-curve.ts'
import { findRoot } from './solve.ts'

export interface Part {
  readonly drop: number
  readonly referenceFlow: number
}

/** Hoses of one bore, for one liquid: all that does not change with flow. */
interface Run {
  /** Over bore. */
  readonly roughness: number
  /** Reynolds number for a flow of 1. */
  readonly reynolds: number
  /** Pressure for a square of flow of 1: of friction at a factor of 1, and of the fittings. */
  friction: number
  fittings: number
}

export interface Loop {
  readonly runs: readonly Run[]
  /** What all parts take at a square of flow of 1. */
  readonly parts: number
  readonly as: Regime
}

/** `as`: what a hose that is neither laminar nor turbulent is taken for. */
export function loopOf(
  hoses: readonly Hose[],
  parts: readonly Part[],
  liquid: Liquid,
  as: Regime = 'between',
): Loop {
  const runs: Run[] = []
  for (const { length, bore, fittings, roughness } of hoses) {
    const dynamic = (liquid.density * velocityIn(bore, 1) ** 2) / 2
    const relative = roughness / bore
    const reynolds = reynoldsIn(bore, 1, liquid)
    let run = runs.find((each) => each.reynolds === reynolds && each.roughness === relative)
    if (run === undefined) {
      run = { roughness: relative, reynolds, friction: 0, fittings: 0 }
      runs.push(run)
    }
    run.friction += (length / bore) * dynamic
    run.fittings += fittings * dynamic
  }
  const ofParts = parts.reduce((sum, part) => sum + part.drop / part.referenceFlow ** 2, 0)
  return { runs, parts: ofParts, as }
}

/** The loop at a flow above zero as square·V² + linear·V, with the same pressure and slope there. */
export function resistance(
  { runs, parts, as }: Loop,
  flow: number,
): { readonly square: number; readonly linear: number } {
  let square = parts
  let linear = 0
  for (const run of runs) {
    const reynolds = run.reynolds * flow
    const factor = frictionFactor(reynolds, run.roughness, as) ?? NaN
    const slope = frictionSlope(factor, reynolds, run.roughness, as)
    const friction = factor * run.friction
    square += friction * (1 + slope) + run.fittings
    linear -= friction * slope
  }
  return { square, linear: linear * flow }
}

export function loopDrop(loop: Loop, flow: number): number {
  if (flow === 0) return 0
  const { square, linear } = resistance(loop, flow)
  return (square * flow + linear) * flow
}

/** Each step is about the square of the one before: the next would be less than rounding. */
const closeEnough = 1e-7
/** A flow so near that the pump's curve is straight up to it; a parabola is found exactly. */
const near = 1 - 1e-6
const mostSteps = 12

export type NoCrossing = 'no loop' | 'before' | 'beyond' | 'not settled'

/** The flow at which the pump gives what the loop takes, or why there is none on its curve. */
export function crossing(pump: PumpCurve, loop: Loop): number | NoCrossing {
  if (loop.runs.length === 0 && loop.parts === 0) return 'no loop'
  let low = pump.lowest
  let high = pump.highest
  if (pump.at(low) < loopDrop(loop, low)) return 'before'
  let flow = high
  for (let count = 0; count < mostSteps; count++) {
    const { square, linear } = resistance(loop, flow)
    const drop = (square * flow + linear) * flow
    const pressure = pump.at(flow)
    if (pressure > drop && flow === pump.highest) return 'beyond'
    if (pressure > drop) low = flow
    else high = flow
    // The pump as top − fall·V², with the same pressure and slope here.
    const fall = (pump.at(flow * near) - pressure) / (flow ** 2 * (1 - near ** 2))
    const top = pressure + fall * flow ** 2
    const next = (2 * top) / (linear + Math.sqrt(linear ** 2 + 4 * (square + fall) * top))
    if (Math.abs(next - flow) <= closeEnough * flow) return next
    if (!(next > low && next < high)) break
    flow = next
  }
  // Where a hose turns turbulent the curve may jump, and a pump of points may bend: in smaller steps.
  const spare = (at: number): number => pump.at(at) - loopDrop(loop, at)
  return findRoot(spare, low, high) ?? 'not settled'
}
