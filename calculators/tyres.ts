/**
 * Tyre sizes as written on the sidewall, and the free diameter they stand for.
 *
 * In: a text such as `155/80 R 13`, `185 R 14` or `31x10.50 R 15`. Out: metres. The size tells the
 * free tyre; under load it rolls about 3 % shorter, so the radius that counts is the measured one.
 * Cross-ply sizes in inches (`6.00-16`) tell no height and are refused.
 */

/** A radial size without a height-to-width ratio: the old full profile (recalled: ETRTO, 80 to 82 %). */
const fullProfile = 0.82
const inch = 0.0254
/** Whole inches; road wheels are of 8 to 24. */
const smallestRim = 8 * inch
const beyondRims = 25 * inch

export interface TyreSize {
  readonly width: number
  /** Sidewall height over width; undefined where the size names the diameter itself. */
  readonly aspect: number | undefined
  readonly rim: number
  readonly diameter: number
  /** The ratio was not written and the full profile was taken. */
  readonly guessed: boolean
}

export function readTyre(text: string): TyreSize | undefined {
  const size = text.normalize('NFKC').trim().toUpperCase().replace(/[×*]/g, 'X')
  const metric =
    /^(?:P|LT)?\s*(\d{3})(?:\s*\/\s*(\d{2,3}))?\s*[A-Z]{0,3}\s*-?\s*(\d{2})(?!\d)/.exec(size)
  if (metric) {
    const [, wide = '', ratio, rim = ''] = metric
    const width = Number(wide) / 1000
    const aspect = ratio === undefined ? fullProfile : Number(ratio) / 100
    const wheel = Number(rim) * inch
    const plausible =
      width >= 0.1 &&
      width <= 0.4 &&
      aspect >= 0.25 &&
      aspect <= 1.05 &&
      wheel >= smallestRim &&
      wheel < beyondRims
    return plausible
      ? {
          width,
          aspect,
          rim: wheel,
          diameter: wheel + 2 * width * aspect,
          guessed: ratio === undefined,
        }
      : undefined
  }
  const flotation =
    /^(\d{2}(?:\.\d+)?)\s*X\s*(\d{1,2}(?:\.\d+)?)\s*-?\s*L?T?\s*R?\s*-?\s*(\d{2})(?!\d)/.exec(size)
  if (flotation) {
    const [diameter = 0, width = 0, rim = 0] = flotation.slice(1).map((part) => Number(part) * inch)
    return diameter > rim && rim >= smallestRim
      ? { width, aspect: undefined, rim, diameter, guessed: false }
      : undefined
  }
  return undefined
}
