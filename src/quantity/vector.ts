/**
 * Exponents of the base units, added and compared. A product of units adds their vectors, a quotient
 * takes one from the other.
 */
import type { Flavour, Vector } from './types.ts'

export const none: Vector = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]

/** `a` + `times` × `b`, exponent by exponent: the vector of a product. */
export const add = (a: Vector, b: Vector, times = 1): Vector => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
  a[3] + times * b[3],
  a[4] + times * b[4],
  a[5] + times * b[5],
  a[6] + times * b[6],
  a[7] + times * b[7],
  a[8] + times * b[8],
  a[9] + times * b[9],
  a[10] + times * b[10],
  a[11] + times * b[11],
  a[12] + times * b[12],
  a[13] + times * b[13],
  a[14] + times * b[14],
  a[15] + times * b[15],
]

/** Exponents of metre to radian; behind them each currency has its own. */
const ofNature = 6

/** The same with whatever currency it has as the first of them: sums in different ones can be told alike. */
export function inFirstCurrency(vector: Vector): Vector {
  const [m, kg, s, A, K, rad, ...money] = vector
  if (money.slice(1).every((power) => power === 0)) return vector
  const all = money.reduce((sum, power) => sum + power, 0)
  return [m, kg, s, A, K, rad, all, 0, 0, 0, 0, 0, 0, 0, 0, 0]
}

/** Which currency it has, by its place among them: -1 none, undefined where there is more than one. */
export function currencyAt(vector: Vector): number | undefined {
  const money = vector.slice(ofNature)
  const there = money.flatMap((power, at) => (power === 0 ? [] : [at]))
  return there.length > 1 ? undefined : (there[0] ?? -1)
}

export const sameVector = (a: Vector, b: Vector): boolean =>
  a === b || a.every((power, i) => power === b[i])

interface Kind {
  readonly vector: Vector
  readonly flavour: Flavour
}

/** Whether one may stand where the other is due: a temperature is no temperature difference. */
export const sameKind = (a: Kind, b: Kind): boolean =>
  a.flavour === b.flavour && sameVector(a.vector, b.vector)
