/**
 * How a number is printed: its unit in either system and the figures it deserves.
 *
 * Digits follow the least precise of what it is worked from, two at least; what the builder chose
 * (a bore, a length to cut) is as exact as it is made and does not count.
 */
import {
  counterpart as usualCounterpart,
  displayUnit,
  formatQuantity,
  fromSI,
  toSI,
} from '../quantity/index.ts'
import type { ParsedQuantity, Quantity } from '../quantity/types.ts'
import type { PublishedNumber, UnitSystem } from './published.ts'
import { words } from '../words/words.ts'

export interface Precision {
  /** Significant figures; null for an exact value. */
  readonly figures: number | null
  /** Chosen or counted: does not limit what is worked from it. */
  readonly given: boolean
  /** The unit its author used. */
  readonly unit?: string
  /** One of the last digit typed, in SI. */
  readonly resolution?: number
}

export type ShownAs = Pick<PublishedNumber, 'shown' | 'display' | 'shownOther' | 'displayOther'>

/** One of the last digit that a value with so many figures has. */
const lastDigit = (value: number, figures: number): number =>
  value === 0 ? 10 ** -figures : 10 ** (Math.floor(Math.log10(Math.abs(value))) - figures + 1)

const sizeOf = (unit: string): number => Math.abs(toSI(1, unit) - toSI(0, unit))

/** What one of the last digit typed is worth. */
export function resolutionOf({ value, unit, figures }: ParsedQuantity): { resolution?: number } {
  if (!Number.isFinite(figures) || unit === 'AWG') return {}
  return { resolution: lastDigit(fromSI(value, unit), figures) * sizeOf(unit) }
}

/** The figures of a result, `left op right`: sums keep the coarsest last digit, products the fewest figures. */
export function figuresOf(
  op: '+' | '-' | '*' | '/',
  { value, flavour }: Quantity,
  left: { quantity: Quantity; precision: Precision },
  right: { quantity: Quantity; precision: Precision },
): Precision {
  const sides = [left, right]
  const given = sides.every(({ precision }) => precision.given)
  const counted = sides.filter(({ precision }) => precision.figures !== null)
  if (op === '+' || op === '-') {
    // The difference of two temperatures is not one: their unit does not fit it.
    const alike = sides.filter(({ quantity }) => quantity.flavour === flavour)
    const unit = alike.find(({ precision }) => precision.unit !== undefined)?.precision.unit
    const named = unit === undefined ? {} : { unit }
    if (counted.length === 0) return { figures: null, given, ...named }
    const resolution = Math.max(
      ...counted.map(
        ({ quantity, precision }) =>
          precision.resolution ?? lastDigit(quantity.value, precision.figures ?? 3),
      ),
    )
    return {
      figures: Math.max(2, figuresDownTo(value, resolution, unit)),
      given,
      resolution,
      ...named,
    }
  }
  if (counted.length === 0) return { figures: null, given }
  const limiting = counted.filter(({ precision }) => !precision.given)
  const from = limiting.length > 0 ? limiting : counted
  return {
    figures: Math.max(2, Math.min(...from.map(({ precision }) => precision.figures ?? 3))),
    given,
  }
}

/** How many figures a value has down to a last digit, as printed in `unit`. */
function figuresDownTo(value: number, resolution: number, unit: string | undefined): number {
  const here = unit === undefined ? value : fromSI(value, unit)
  const last = unit === undefined ? resolution : resolution / sizeOf(unit)
  if (here === 0) return 1
  return Math.floor(Math.log10(Math.abs(here))) - Math.floor(Math.log10(last) + 1e-9) + 1
}

/** A number that was given: as it was typed, and in the other system's usual unit. */
export function showRoot(
  quantity: Quantity | null,
  typed: string,
  precision: Precision,
  units?: readonly [metric: string, us: string],
): ShownAs {
  const unit = precision.unit ?? ''
  if (quantity === null) return { shown: typed, display: unit }
  const figures = precision.figures
  const shown =
    figures === null && /[/¼½¾⅓⅔⅛⅜⅝⅞]/u.test(typed)
      ? typed.replace(/\s+(?=\S+$)/u, '\u00a0')
      : formatQuantity(quantity.value, unit, figures === null ? { exact: true } : { figures })
  const other = counterpart(quantity, unit, units)
  if (other === undefined) return { shown, display: unit }
  const shownOther = formatQuantity(quantity.value, other, { figures: converted(figures) })
  return { shown, display: unit, shownOther, displayOther: other }
}

/** In another unit than it was typed in, one figure would say another size: `6 in` is no `200 mm`. */
const converted = (figures: number | null): number => Math.max(2, figures ?? 3)

/** The figures of a number in the unit that it is shown in. */
export const figuresShown = (
  figures: number | null,
  typedIn: string | undefined,
  display: string,
): number | null => (figures === null || typedIn === display ? figures : converted(figures))

/** The field's unit, or the usual one, of the system that `unit` does not belong to. */
function counterpart(
  quantity: Quantity,
  unit: string,
  units?: readonly [metric: string, us: string],
): string | undefined {
  const [metric, us] = units ?? [displayUnit(quantity, 'metric'), displayUnit(quantity, 'us')]
  const system = isCustomary(unit) ? 'metric' : 'us'
  // Nothing has no size to choose a unit by, and a rate keeps the size of its own: $/ft is no $/km.
  const kept =
    units === undefined && (quantity.value === 0 || unit.includes('/'))
      ? usualCounterpart(unit, system)
      : undefined
  const other = kept ?? (system === 'metric' ? metric : us)
  return metric === us || other === unit ? undefined : other
}

const customary =
  /(^|[^\p{L}])(in|ft|yd|mi|mil|lb|lbf|oz|psi|gal|impgal|qt|gpm|cfm|mph|hp|BTU|AWG|kcmil|inHg|inH2O|ftH2O|°F|Δ°F)($|[^\p{L}])/u
const isCustomary = (unit: string): boolean => customary.test(unit)

/** As typed, or in the other unit where that is of the system asked for first. */
export function shownIn(given: ShownAs, [first]: readonly UnitSystem[]): ShownAs {
  const { shown, display, shownOther, displayOther } = given
  if (shownOther === undefined || displayOther === undefined) return given
  const fits = isCustomary(display) === (first === 'us')
  return fits
    ? given
    : { shown: shownOther, display: displayOther, shownOther: shown, displayOther: display }
}

/** A number that was worked: in the site's first system, and in the other. */
export function showWorked(
  quantity: Quantity | null,
  units: readonly [metric: string, us: string],
  systems: readonly UnitSystem[],
  { figures, unit: typedIn }: { readonly figures: number | null; readonly unit?: string },
  exact: boolean,
): ShownAs {
  const first = systems[0] === 'us' ? units[1] : units[0]
  const second = systems[0] === 'us' ? units[0] : units[1]
  if (quantity === null) return { shown: words`cannot tell`, display: first }
  const options = (unit: string) =>
    exact ? { exact: true } : { figures: figuresShown(figures, typedIn, unit) ?? 3 }
  const shown = formatQuantity(quantity.value, first, options(first))
  if (first === second) return { shown, display: first }
  return {
    shown,
    display: first,
    // An exact size is exact in its own unit only.
    shownOther: formatQuantity(quantity.value, second, exact ? { figures: 3 } : options(second)),
    displayOther: second,
  }
}
