/**
 * Friction and bends in a round hose: Darcy factor, pressure drop, Reynolds number, all SI.
 *
 * The factor is Darcy's (four times Fanning's): 64/Re up to Re 2040, Colebrook's equation, solved and
 * not approximated, from 4000. Between them flow is neither, and nobody can say which of the two it
 * is today: `between` interpolates in Re, `laminar` and `turbulent` give the two ends.
 *
 * Sources: Hagen-Poiseuille; Colebrook (1939) as in Crane TP-410 and any handbook of fluid mechanics.
 * The end of steady laminar flow at 2040: measured in a long smooth pipe (Science 333, 2011).
 */
import * as elementary from './elementary.ts'

export const laminarUpTo = 2040
export const turbulentFrom = 4000

export type Regime = 'between' | 'laminar' | 'turbulent'

/** With a last step this small, one of fourth order has nothing left to find. */
const closeEnough = 5e-4
const mostSteps = 50
/** ln 10/(2√f) where f is about 0.027: in the middle of what hoses have. */
const start = 7

/** Colebrook's factor for Reynolds number and roughness over bore; undefined if it does not settle. */
export function colebrook(reynolds: number, roughness: number): number | undefined {
  // With y = ln 10/(2√f) it reads y + ln(rough + y) = ln scale, almost a straight line. The steps are
  // of fourth order (D. Clamond, Ind. Eng. Chem. Res. 48, 2009) and settle in two for a usual hose.
  const scale = (Math.LN10 / 5.02) * reynolds
  const rough = (roughness / 3.7) * scale
  let y = start
  for (let count = 0; count < mostSteps; count++) {
    const sum = rough + y
    const step = (y + elementary.log(sum / scale)) / (1 + sum)
    y -= (sum * step * (1 + sum + step / 2)) / (1 + sum + step * (1 + step / 3))
    if (!(y > 0)) return undefined
    if (Math.abs(step) <= closeEnough) return (Math.LN10 / 2 / y) ** 2
  }
  return undefined
}

/** Darcy friction factor. `as` decides what the uncertain range is taken for. */
export function frictionFactor(
  reynolds: number,
  roughness: number,
  as: Regime = 'between',
): number | undefined {
  if (!(reynolds > 0)) return undefined
  if (reynolds <= laminarUpTo) return 64 / reynolds
  if (reynolds >= turbulentFrom || as === 'turbulent') return colebrook(reynolds, roughness)
  if (as === 'laminar') return 64 / reynolds
  const high = colebrook(turbulentFrom, roughness)
  const low = 64 / laminarUpTo
  return high === undefined
    ? undefined
    : low + ((high - low) * (reynolds - laminarUpTo)) / (turbulentFrom - laminarUpTo)
}

/** d ln f/d ln Re of the factor that `frictionFactor` gave: −1 when laminar, towards 0 when rough. */
export function frictionSlope(
  factor: number,
  reynolds: number,
  roughness: number,
  as: Regime = 'between',
): number {
  if (reynolds <= laminarUpTo) return -1
  if (reynolds >= turbulentFrom || as === 'turbulent') {
    const rough = (Math.LN10 / 5.02 / 3.7) * reynolds * roughness
    return -2 / (1 + rough + Math.LN10 / 2 / Math.sqrt(factor))
  }
  if (as === 'laminar') return -1
  // A straight line from the laminar end: as steep as from there to here.
  return ((factor - 64 / laminarUpTo) / (reynolds - laminarUpTo)) * (reynolds / factor)
}

export function isUncertain(reynolds: number): boolean {
  return reynolds > laminarUpTo && reynolds < turbulentFrom
}

export interface Hose {
  readonly length: number
  readonly bore: number
  /** Sum of loss coefficients K of what is in it. */
  readonly fittings: number
  readonly roughness: number
}

export interface Liquid {
  readonly density: number
  readonly viscosity: number
}

export function velocityIn(bore: number, flow: number): number {
  return flow / ((Math.PI / 4) * bore ** 2)
}

export function reynoldsIn(bore: number, flow: number, { density, viscosity }: Liquid): number {
  return (density * velocityIn(bore, flow) * bore) / viscosity
}

/** (f·L/d + ΣK)·ρv²/2 in pascal. */
export function hoseDrop(
  hose: Hose,
  flow: number,
  liquid: Liquid,
  as: Regime = 'between',
): number | undefined {
  if (flow === 0) return 0
  const factor = frictionFactor(reynoldsIn(hose.bore, flow, liquid), hose.roughness / hose.bore, as)
  if (factor === undefined) return undefined
  const dynamic = (liquid.density * velocityIn(hose.bore, flow) ** 2) / 2
  return ((factor * hose.length) / hose.bore + hose.fittings) * dynamic
}
