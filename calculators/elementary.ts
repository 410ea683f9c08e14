/**
 * Logarithms, exponentials and angles from additions, multiplications and roots alone, which every
 * engine works to the same last digit. `Math.log`, `Math.sin` and their like differ between engines in
 * that digit, and a result that sits on an edge then differs by more: a reader's browser would show
 * something else than the build. SI floats in and out, radians; angles up to a million turns.
 *
 * After fdlibm, whose notice reads: Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */
const ln2High = 6.9314718036912381649e-1
const ln2Low = 1.90821492927058770002e-10

const bits = new DataView(new ArrayBuffer(8))

/** 2 to a whole power between -1022 and 1023. */
function twoTo(power: number): number {
  bits.setUint32(0, (power + 1023) << 20)
  bits.setUint32(4, 0)
  return bits.getFloat64(0)
}

function scaled(value: number, power: number): number {
  if (power > 1023) return value * twoTo(1023) * twoTo(Math.min(1023, power - 1023))
  return power < -1022
    ? value * twoTo(-969) * twoTo(Math.max(-1022, power + 969))
    : value * twoTo(power)
}

/** A positive number as part × 2^power, the part between √½ and √2. */
function split(value: number): readonly [part: number, power: number] {
  const isTiny = value < 2.2250738585072014e-308
  bits.setFloat64(0, isTiny ? value * 2 ** 54 : value)
  const high = bits.getUint32(0) + (0x3ff00000 - 0x3fe6a09e)
  bits.setUint32(0, (high & 0x000fffff) + 0x3fe6a09e)
  return [bits.getFloat64(0), (high >>> 20) - 0x3ff - (isTiny ? 54 : 0)]
}

/** log(1 + f) + power ln 2 + correction, f small. */
function logOf(f: number, power: number, correction: number): number {
  const half = 0.5 * f * f
  const s = f / (2 + f)
  const z = s * s
  const w = z * z
  const even =
    w * (3.999999999940941908e-1 + w * (2.222219843214978396e-1 + w * 1.531383769920937332e-1))
  const odd =
    z *
    (6.66666666666673513e-1 +
      w * (2.857142874366239149e-1 + w * (1.818357216161805012e-1 + w * 1.479819860511658591e-1)))
  return s * (half + odd + even) + (power * ln2Low + correction) - half + f + power * ln2High
}

export function log(x: number): number {
  if (!(x > 0)) return x === 0 ? -Infinity : NaN
  if (x === Infinity) return x
  const [part, power] = split(x)
  return logOf(part - 1, power, 0)
}

export function log1p(x: number): number {
  if (!(x > -1)) return x === -1 ? -Infinity : NaN
  if (x === Infinity || Math.abs(x) < 1.1e-16) return x
  if (x > -0.2928932188134524 && x < 0.41421356237309503) return logOf(x, 0, 0)
  const sum = 1 + x
  const [part, power] = split(sum)
  const lost = power >= 54 ? 0 : (power >= 2 ? 1 - (sum - x) : x - (sum - 1)) / sum
  return logOf(part - 1, power, lost)
}

export function log10(x: number): number {
  if (!(x > 0) || x === Infinity) return log(x)
  const [part, power] = split(x)
  return (
    power * 3.69423907715893078616e-13 +
    4.34294481903251816668e-1 * log(part) +
    power * 3.01029995663611771306e-1
  )
}

/** x = whole × ln 2 + high - low. */
function withoutTwos(x: number): readonly [whole: number, high: number, low: number] {
  const whole =
    Math.abs(x) <= 0.34657359027997264
      ? 0
      : Math.trunc(1.442695040888963387 * x + (x < 0 ? -0.5 : 0.5))
  return [whole, x - whole * ln2High, whole * ln2Low]
}

export function exp(x: number): number {
  if (Number.isNaN(x)) return x
  if (x > 709.782712893384) return Infinity
  if (x < -745.1332191019412) return 0
  const [whole, high, low] = withoutTwos(x)
  const r = high - low
  const z = r * r
  const c =
    r -
    z *
      (1.66666666666666019037e-1 +
        z *
          (-2.77777777770155933842e-3 +
            z *
              (6.61375632143793436117e-5 +
                z * (-1.6533902205465251539e-6 + z * 4.13813679705723846039e-8))))
  return scaled(1 + ((r * c) / (2 - c) - low + high), whole)
}

export function expm1(x: number): number {
  if (Number.isNaN(x) || Math.abs(x) < 5.6e-17) return x
  if (x > 709.782712893384) return Infinity
  if (x < -38.816242111356935) return -1
  const [whole, high, low] = withoutTwos(x)
  const r = high - low
  const lost = high - r - low
  const half = 0.5 * r
  const z = r * half
  const p =
    1 +
    z *
      (-3.33333333333331316428e-2 +
        z *
          (1.58730158725481460165e-3 +
            z *
              (-7.93650757867487942473e-5 +
                z * (4.00821782732936239552e-6 + z * -2.01099218183624371326e-7))))
  const t = 3 - p * half
  const quotient = z * ((p - t) / (6 - r * t))
  if (whole === 0) return r - (r * quotient - z)
  const e = r * (quotient - lost) - lost - z
  if (whole === -1) return 0.5 * (r - e) - 0.5
  if (whole === 1) return r < -0.25 ? -2 * (e - (r + 0.5)) : 1 + 2 * (r - e)
  if (whole < 0 || whole > 56) return scaled(r - e + 1, whole) - 1
  const inverse = twoTo(-whole)
  return scaled(whole < 20 ? r - e + (1 - inverse) : r - (e + inverse) + 1, whole)
}

/** The angle less its quarter turns, with what that loses. */
function withoutQuarters(x: number): readonly [quarter: number, angle: number, lost: number] {
  const turns = Math.round(x * 6.36619772367581382433e-1)
  const first = x - turns * 1.57079632673412561417
  const step = turns * 6.0771005063039659766e-11
  const second = first - step
  const rest = turns * 2.02226624879595063154e-21 - (first - second - step)
  const angle = second - rest
  return [turns & 3, angle, second - angle - rest]
}

function sineOf(x: number, lost: number): number {
  const z = x * x
  const w = z * z
  const r =
    8.33333333332248946124e-3 +
    z * (-1.98412698298579493134e-4 + z * 2.75573137070700676789e-6) +
    z * w * (-2.50507602534068634195e-8 + z * 1.58969099521155010221e-10)
  const cube = z * x
  return x - (z * (0.5 * lost - cube * r) - lost - cube * -1.66666666666666324348e-1)
}

function cosineOf(x: number, lost: number): number {
  const z = x * x
  const w = z * z
  const r =
    z *
      (4.16666666666666019037e-2 +
        z * (-1.38888888888741095749e-3 + z * 2.48015872894767294178e-5)) +
    w *
      w *
      (-2.75573143513906633035e-7 +
        z * (2.0875723212981748279e-9 + z * -1.13596475577881948265e-11))
  const half = 0.5 * z
  const most = 1 - half
  return most + (1 - most - half + (z * r - x * lost))
}

/** The sine of an angle and so many quarter turns. */
function turned(x: number, quarters: number): number {
  if (!Number.isFinite(x)) return NaN
  const [quarter, angle, lost] = withoutQuarters(x)
  const at = (quarter + quarters) & 3
  const size = at % 2 === 0 ? sineOf(angle, lost) : cosineOf(angle, lost)
  return at < 2 ? size : -size
}

export const sin = (x: number): number => (x === 0 ? x : turned(x, 0))
export const cos = (x: number): number => turned(x, 1)
export const tan = (x: number): number => sin(x) / cos(x)

const nearBy = [
  [0.6875, 4.63647609000806093515e-1, 2.26987774529616870924e-17],
  [1.1875, 7.85398163397448278999e-1, 3.06161699786838301793e-17],
  [2.4375, 9.82793723247329054082e-1, 1.39033110312309984516e-17],
  [Infinity, 1.570796326794896558, 6.12323399573676603587e-17],
] as const

export function atan(x: number): number {
  const size = Math.abs(x)
  if (Number.isNaN(x) || x === 0) return x
  if (size < 0.4375) return x - x * atanTail(x)
  const at = nearBy.findIndex(([below]) => size < below)
  const [, high, low] = nearBy[at < 0 ? 3 : at] ?? nearBy[3]
  const part =
    at === 0
      ? (2 * size - 1) / (2 + size)
      : at === 1
        ? (size - 1) / (size + 1)
        : at === 2
          ? (size - 1.5) / (1 + 1.5 * size)
          : -1 / size
  const angle = high - (part * atanTail(part) - low - part)
  return x < 0 ? -angle : angle
}

function atanTail(x: number): number {
  const z = x * x
  const w = z * z
  const odd =
    z *
    (3.33333333333329318027e-1 +
      w *
        (1.42857142725034663711e-1 +
          w *
            (9.09088713343650656196e-2 +
              w *
                (6.66107313738753120669e-2 +
                  w * (4.97687799461593236017e-2 + w * 1.62858201153657823623e-2)))))
  const even =
    w *
    (-1.99999999998764832476e-1 +
      w *
        (-1.1111110405462355788e-1 +
          w *
            (-7.69187620504482999495e-2 +
              w * (-5.83357013379057348645e-2 + w * -3.6531572744216915527e-2))))
  return odd + even
}

export const asin = (x: number): number => atan(x / Math.sqrt((1 - x) * (1 + x)))
