/**
 * Root finding by Brent's method (R. P. Brent, Algorithms for Minimization Without Derivatives,
 * 1973, chapter 4): inverse quadratic steps where they help, halving where they do not.
 *
 * In: a function and two ends at which it differs in sign. Out: the root, to rounding, or undefined
 * when the ends do not bracket one, the function is not a number there, or it does not settle. Where
 * the function jumps across zero, the place of the jump is returned.
 */

const mostSteps = 200

export function findRoot(
  at: (x: number) => number,
  low: number,
  high: number,
  within = 0,
): number | undefined {
  let a = low
  let b = high
  let fa = at(a)
  let fb = at(b)
  if (!Number.isFinite(fa) || !Number.isFinite(fb)) return undefined
  if (fa === 0) return a
  if (fb === 0) return b
  if (fa > 0 === fb > 0) return undefined
  let c = a
  let fc = fa
  let step = b - a
  let before = step
  for (let count = 0; count < mostSteps; count++) {
    if (fb > 0 === fc > 0) {
      c = a
      fc = fa
      step = before = b - a
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b
      b = c
      c = a
      fa = fb
      fb = fc
      fc = fa
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b) + within / 2
    const half = (c - b) / 2
    if (Math.abs(half) <= tolerance || fb === 0) return b
    if (Math.abs(before) < tolerance || Math.abs(fa) <= Math.abs(fb)) {
      step = before = half
    } else {
      const s = fb / fa
      let p: number
      let q: number
      if (a === c) {
        p = 2 * half * s
        q = 1 - s
      } else {
        const t = fa / fc
        const r = fb / fc
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1))
        q = (t - 1) * (r - 1) * (s - 1)
      }
      if (p > 0) q = -q
      else p = -p
      if (2 * p < Math.min(3 * half * q - Math.abs(tolerance * q), Math.abs(before * q))) {
        before = step
        step = p / q
      } else {
        step = before = half
      }
    }
    a = b
    fa = fb
    b += Math.abs(step) > tolerance ? step : half > 0 ? tolerance : -tolerance
    fb = at(b)
    if (!Number.isFinite(fb)) return undefined
  }
  return undefined
}
