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

export const laminarUpTo = 2040
export const turbulentFrom = 4000

export type Regime = 'between' | 'laminar' | 'turbulent'

const closeEnough = 1e-12
const mostSteps = 50

/** Colebrook's factor for Reynolds number and roughness over bore; undefined if it does not settle. */
export function colebrook(reynolds: number, roughness: number): number | undefined {
  // Newton on x = 1/√f; Haaland's explicit formula is within 1.5 % and starts it.
  let x = -1.8 * Math.log10((roughness / 3.7) ** 1.11 + 6.9 / reynolds)
  const slope = 2.51 / reynolds
  for (let count = 0; count < mostSteps; count++) {
    const inner = roughness / 3.7 + slope * x
    const next = x - (x + 2 * Math.log10(inner)) / (1 + (2 * slope) / (Math.LN10 * inner))
    if (!(next > 0)) return undefined
    if (Math.abs(next - x) <= closeEnough * next) return 1 / next ** 2
    x = next
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
