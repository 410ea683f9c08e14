/**
 * How a number is printed: its unit in either system and the figures it deserves.
 *
 * Digits follow the least precise of what it is worked from, two at least; what the builder chose
 * (a bore, a length to cut) is as exact as it is made and does not count.
 */
import type { Say } from '../../calculators/define.ts'
import { displayUnit, formatQuantity } from '../quantity/index.ts'
import type { Quantity } from '../quantity/types.ts'
import type { PublishedNumber, UnitSystem } from './published.ts'

export interface Precision {
  /** Significant figures; null for an exact value. */
  readonly figures: number | null
  /** Chosen or counted: does not limit what is worked from it. */
  readonly given: boolean
  /** The unit its author used. */
  readonly unit?: string
}

type ShownAs = Pick<PublishedNumber, 'shown' | 'display' | 'shownOther' | 'displayOther'>

export const say: Say = (value, unit, figures = 3) =>
  value === undefined ? 'cannot tell' : formatQuantity(value, unit, { figures })

/** Places after the point that a value with so many figures has, as a power of ten. */
const lastPlace = (value: number, figures: number): number =>
  value === 0 ? -figures : Math.floor(Math.log10(Math.abs(value))) - figures + 1

/** The figures of `left op right`. */
export function figuresOf(
  op: '+' | '-' | '*' | '/',
  value: number,
  left: { quantity: Quantity; precision: Precision },
  right: { quantity: Quantity; precision: Precision },
): Precision {
  const sides = [left, right]
  const unit = op === '+' || op === '-' ? left.precision.unit ?? right.precision.unit : undefined
  const named = unit === undefined ? {} : { unit }
  const given = sides.every(({ precision }) => precision.given)
  const counted = sides.filter(({ precision }) => precision.figures !== null)
  if (counted.length === 0) return { figures: null, given, ...named }
  if (op === '+' || op === '-') {
    const place = Math.max(...counted.map(({ quantity, precision }) => lastPlace(quantity.value, precision.figures ?? 3)))
    const figures = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) - place + 1
    return { figures: Math.max(2, figures), given, ...named }
  }
  const limiting = counted.filter(({ precision }) => !precision.given)
  const from = limiting.length > 0 ? limiting : counted
  return { figures: Math.max(2, Math.min(...from.map(({ precision }) => precision.figures ?? 3))), given, ...named }
}

/** A number that was given: as it was typed, and in the other system's usual unit. */
export function showRoot(quantity: Quantity | null, typed: string, precision: Precision): ShownAs {
  const unit = precision.unit ?? ''
  if (quantity === null) return { shown: typed, display: unit }
  const figures = precision.figures
  const shown =
    figures === null && /[/¼½¾⅓⅔⅛⅜⅝⅞]/u.test(typed)
      ? typed.replace(/\s+(?=\S+$)/u, '\u00a0')
      : formatQuantity(quantity.value, unit, figures === null ? { exact: true } : { figures })
  const other = counterpart(quantity, unit)
  if (other === undefined) return { shown, display: unit }
  const shownOther = formatQuantity(quantity.value, other, { figures: Math.max(2, figures ?? 3) })
  return { shown, display: unit, shownOther, displayOther: other }
}

/** The usual unit of the system that `unit` does not belong to. */
function counterpart(quantity: Quantity, unit: string): string | undefined {
  const metric = displayUnit(quantity, 'metric')
  const us = displayUnit(quantity, 'us')
  if (metric === us) return undefined
  return isCustomary(unit) ? metric : us
}

const customary =
  /(^|[^\p{L}])(in|ft|yd|mi|mil|lb|lbf|oz|psi|gal|impgal|qt|gpm|cfm|mph|hp|BTU|AWG|kcmil|inHg|inH2O|ftH2O|°F|Δ°F)($|[^\p{L}])/u
const isCustomary = (unit: string): boolean => customary.test(unit)

/** A number that was worked: in the site's first system, and in the other. */
export function showWorked(
  quantity: Quantity | null,
  units: readonly [metric: string, us: string],
  systems: readonly UnitSystem[],
  figures: number | null,
  exact: boolean,
): ShownAs {
  const first = systems[0] === 'us' ? units[1] : units[0]
  const second = systems[0] === 'us' ? units[0] : units[1]
  if (quantity === null) return { shown: 'cannot tell', display: first }
  const options = exact ? { exact: true } : { figures: figures ?? 3 }
  const shown = formatQuantity(quantity.value, first, options)
  if (first === second) return { shown, display: first }
  return {
    shown,
    display: first,
    // An exact size is exact in its own unit only.
    shownOther: formatQuantity(quantity.value, second, exact ? { figures: 3 } : options),
    displayOther: second,
  }
}
