/**
 * A solved value as it can be said: rounded to three figures in a unit, towards the side that passes,
 * and tried again there. A wire of 3.831 mm² is not "3.83 mm²" when 3.83 mm² is too thin.
 */
import { dimensions, fromSI, toSI } from '../../quantity/index.ts'
import { hardRange, isWhole, type NumberPlace } from './places.ts'
import type { Test, Way } from './search.ts'

export interface Rounded {
  /** SI. */
  readonly value: number
  /** With so many figures it prints as it is. */
  readonly figures: number
}

const fewest = 3
const most = 6
/** A rounding error of the conversion is no step. */
const slack = 1e-9

export function roundedIn(
  place: NumberPlace,
  value: number,
  unit: string,
  inward: Way,
  test: Test,
): Rounded {
  if (isWhole(place)) return { value, figures: Math.max(fewest, String(value).length) }
  const [low, high] = hardRange(place.field)
  for (let figures = fewest; figures < most; figures += 1)
    for (const further of [0, 1]) {
      const tried = toward(place, value, unit, inward, figures, further)
      if (tried >= low && tried <= high && test(tried)) return { value: tried, figures }
    }
  return { value, figures: most }
}

function toward(
  { field }: NumberPlace,
  value: number,
  unit: string,
  inward: Way,
  figures: number,
  further: number,
): number {
  const here = fromSI(value, unit)
  // A thicker wire has a smaller gauge.
  const up = unit === 'AWG' ? inward < 0 : inward > 0
  const places = figures - 1 - Number(Math.abs(here).toExponential(12).split('e')[1])
  const decimals =
    unit === 'AWG'
      ? 0
      : dimensions[field.of].flavour === 'temperature'
        ? Math.min(Math.max(places, 0), 1)
        : places
  const scaled = here * 10 ** decimals
  const whole = up ? Math.ceil(scaled - slack) + further : Math.floor(scaled + slack) - further
  return toSI(decimals > 0 ? whole / 10 ** decimals : whole * 10 ** -decimals, unit)
}
