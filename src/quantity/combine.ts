/**
 * Sums, differences, products and quotients of quantities, with what they are of.
 *
 * Points on a scale (temperatures, gauge and absolute pressures) take differences and give them; they
 * are never multiplied. The radian goes when a product is no longer a rotation: torque × angular speed
 * is a power. Figures and kinds are not the business here.
 */
import { dimensions, isEnergetic, names } from './dimensions.ts'
import { displayUnit } from './display.ts'
import type { Of, Quantity, Slip, Vector } from './types.ts'
import { add, none, sameVector } from './vector.ts'
import { words } from '../words/words.ts'

const slip = (rule: string, text: string, hint?: string): Slip => ({
  ok: false,
  rule,
  text,
  ...(hint !== undefined && { hint }),
})

const what = (q: Quantity): string =>
  q.of
    ? dimensions[q.of].words
    : words`a value in ${displayUnit(q, 'metric') || words`plain numbers`}`

const isPoint = (q: Quantity): boolean => q.flavour !== 'amount'

export function combine(op: '+' | '-' | '*' | '/', a: Quantity, b: Quantity): Quantity | Slip {
  const result = op === '+' || op === '-' ? sum(op, a, b) : product(op, a, b)
  if ('value' in result && !Number.isFinite(result.value))
    return slip('not-finite', words`the result of \`${op}\` is too large to be a number`)
  return result
}

export function negate(a: Quantity): Quantity | Slip {
  if (isPoint(a)) return slip('point-negated', words`${what(a)} cannot be turned into its negative`)
  return { ...a, value: -a.value || 0 }
}

function sum(op: '+' | '-', a: Quantity, b: Quantity): Quantity | Slip {
  const refused =
    op === '+'
      ? words`${what(b)} cannot be added to ${what(a)}`
      : words`${what(b)} cannot be taken from ${what(a)}`
  const value = op === '+' ? a.value + b.value : a.value - b.value
  if (!sameVector(a.vector, b.vector) || !sameMeaning(a, b)) return slip('wrong-dimension', refused)
  if (!isPoint(a) && !isPoint(b)) return named(value, a.vector, commonName(a, b))
  if (!isPoint(b)) return { ...a, value }
  if (!isPoint(a)) return op === '+' ? { ...b, value } : slip('point-from-difference', refused)
  if (a.flavour !== b.flavour)
    return slip(
      'points-mixed',
      refused,
      words`the pressure of the air lies between gauge and absolute`,
    )
  const isTemperature = a.flavour === 'temperature'
  if (op === '-')
    return named(value, a.vector, isTemperature ? 'temperatureDifference' : 'pressure')
  const hint = isTemperature
    ? words`one of the two must be a difference, as \`6 K\` or \`11 Δ°F\``
    : words`one of the two must be a pressure difference, as \`30 kPa\``
  return slip('points-added', refused, hint)
}

function product(op: '*' | '/', a: Quantity, b: Quantity): Quantity | Slip {
  const point = isPoint(a) ? a : b
  if (isPoint(point)) {
    return slip(
      'point-multiplied',
      op === '*'
        ? words`${what(point)} is a point on a scale and cannot be multiplied`
        : words`${what(point)} is a point on a scale and cannot be divided`,
      point.flavour === 'temperature'
        ? words`take the difference of two temperatures first`
        : words`take the difference of two pressures first`,
    )
  }
  if (op === '/' && b.value === 0)
    return slip('division-by-zero', words`${what(a)} is divided by zero`)
  const value = op === '*' ? a.value * b.value : a.value / b.value
  const vector = withoutAngle(add(a.vector, b.vector, op === '*' ? 1 : -1))
  return named(value, vector, productName(op, vector, a, b))
}

const named = (value: number, vector: Vector, of: Of | undefined): Quantity => ({
  value,
  vector,
  flavour: 'amount',
  ...(of && { of }),
})

/** A torque is not an energy, though both are N·m. */
function sameMeaning(a: Quantity, b: Quantity): boolean {
  if (!a.of || !b.of) return true
  const [one, other] = [isEnergetic(a.of), isEnergetic(b.of)]
  return one === undefined || other === undefined || one === other
}

/** Of two names the wider one: area before wire size, number before fraction. */
const commonName = (a: Quantity, b: Quantity): Of | undefined =>
  a.of && b.of ? names.find((of) => of === a.of || of === b.of) : (a.of ?? b.of)

function productName(op: '*' | '/', vector: Vector, a: Quantity, b: Quantity): Of | undefined {
  const isPlain = (q: Quantity): boolean => sameVector(q.vector, none)
  if (isPlain(b)) return isPlain(a) && op === '/' ? 'number' : commonFactor(a, b)
  if (isPlain(a) && op === '*') return b.of
  const all = names.filter(
    (of) => dimensions[of].flavour === 'amount' && sameVector(dimensions[of].vector, vector),
  )
  const [first] = all
  if (first === undefined || isEnergetic(first) === undefined) return first
  const ofEnergy = [a.of, b.of].some((of) => of !== undefined && energyBorn.has(of))
  // Power by speed of rotation is the torque.
  if (ofEnergy && op === '/' && b.vector[5] !== 0) return first
  if (ofEnergy) return all.find(isEnergetic)
  return first === 'force' ? first : undefined
}

const energyBorn: ReadonlySet<Of> = new Set([
  'energy',
  'power',
  'consumption',
  'voltage',
  'charge',
  'specificEnergy',
  'heatCapacity',
  'specificHeat',
  'capacitance',
])

/** A plain number leaves the other's name; two shares of a whole make a share. */
const commonFactor = (a: Quantity, b: Quantity): Of | undefined =>
  a.of === 'fraction' && b.of !== 'fraction' ? 'number' : a.of

/** The radian stays in an angle, a rotation and turns per distance; elsewhere it is dropped. */
function withoutAngle(vector: Vector): Vector {
  const [m, kg, s, A, K, rad, ...money] = vector
  const other = [kg, A, K, ...money].some((power) => power !== 0)
  const rotation = rad === 1 && !other && (m === 0 || (m === -1 && s === 0))
  return rotation ? vector : [m, kg, s, A, K, 0, ...money]
}
