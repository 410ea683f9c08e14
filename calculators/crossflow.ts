/**
 * Single-pass cross-flow heat exchanger, both fluids unmixed (a finned radiator): effectiveness from
 * the number of transfer units, and back.
 *
 * NTU = UA / Cmin, ratio = Cmin / Cmax, effectiveness = Q / (Cmin · inlet difference); all without
 * unit. The exact double series (Mason 1955) is summed, not the usual NTU^0.22 fit, which is up to
 * 0.011 off. `undefined` where it does not hold: the effectiveness belongs to Cmin, never to the air
 * as such.
 */
import * as elementary from './elementary.ts'
import { findRoot } from './solve.ts'

/** Above this the factor e^−NTU leaves the number range; no radiator comes near it. */
export const mostTransferUnits = 500
const enough = 1e-13

/** Effectiveness, exact to 1e-9; `undefined` outside 0 ≤ NTU ≤ 500, 0 ≤ ratio ≤ 1. */
export function crossflowEffectiveness(ntu: number, ratio: number): number | undefined {
  if (!(ntu >= 0 && ntu <= mostTransferUnits && ratio >= 0 && ratio <= 1)) return undefined
  if (ntu === 0) return 0
  // Below this the ratio changes nothing in nine digits, and the sum would divide nothing by nothing.
  if (ratio < 1e-9) return -elementary.expm1(-ntu)
  const small = ratio * ntu
  // Each tail is 1 − e^−a Σ aᵐ/m!, shortened by one Poisson term a step.
  let termOf = elementary.exp(-ntu)
  let termOfSmall = elementary.exp(-small)
  let tail = -elementary.expm1(-ntu)
  let tailOfSmall = -elementary.expm1(-small)
  let sum = 0
  for (let n = 1; n < 5 * mostTransferUnits; n += 1) {
    const step = tail * tailOfSmall
    sum += step
    if (step < enough * sum) break
    termOf *= ntu / n
    termOfSmall *= small / n
    tail = Math.max(tail - termOf, 0)
    tailOfSmall = Math.max(tailOfSmall - termOfSmall, 0)
  }
  return Math.min(sum / small, 1)
}

/** The number of transfer units that gives this effectiveness; `undefined` when none up to 500 does. */
export function crossflowTransferUnits(effectiveness: number, ratio: number): number | undefined {
  const miss = (ntu: number) => (crossflowEffectiveness(ntu, ratio) ?? NaN) - effectiveness
  return findRoot(miss, 0, mostTransferUnits)
}
