/**
 * Which strength of a mix freezes at a temperature: the freezing points of `coolant.ts` turned round.
 *
 * In: the glycol and kelvin. Out: a fraction by volume, 0 to 0.6. A slush point is not a burst point:
 * a mix begins to freeze here, it bursts nothing yet.
 */
import { freezingPoint, strongestKnown, type Glycol } from './coolant.ts'
import { findRoot } from './solve.ts'

/** Strength by volume that freezes at a temperature; undefined when none up to 60 % does. */
export function strengthFreezingAt(kind: Glycol, temperature: number): number | undefined {
  return findRoot(
    (strength) => (freezingPoint({ kind, strength, basis: 'volume' }) ?? NaN) - temperature,
    0,
    strongestKnown,
  )
}
