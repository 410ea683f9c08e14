/**
 * One number as typed into a field. In: a calculator's field and a text. Out: its value in SI, or the
 * reason it will not do, in the same words for the build and for a reader's form.
 */
import type { NumberField } from '../../calculators/define.ts'
import { formatQuantity, fromSI, parseQuantity, toSI } from '../quantity/index.ts'
import type { ParsedQuantity, Slip } from '../quantity/types.ts'
import { unitsIn } from './in-currency.ts'
import { currencyIn } from './money.ts'
import { words } from '../words/words.ts'

export type ReadNumber =
  { readonly ok: true; readonly quantity: ParsedQuantity; readonly unusual?: string } | Slip

export function readNumber(field: NumberField, text: string): ReadNumber {
  const quantity = parseQuantity(text, field.of)
  if (!quantity.ok)
    return quantity.allowed === undefined ? { ...quantity, allowed: unitsAllowed(field) } : quantity
  const own = { ...field, units: unitsIn(field.units, currencyIn(quantity.vector)) }
  const refused = rangeSlip(own, quantity.value, quantity)
  if (refused !== undefined) return refused
  const unusual = unusualRemark(own, quantity.value, quantity.unit)
  return unusual === undefined ? { ok: true, quantity } : { ok: true, quantity, unusual }
}

export const unitsAllowed = ({ units: [metric, us] }: NumberField): string =>
  metric === ''
    ? words`a plain number`
    : metric === us
      ? words`a value in ${metric}`
      : words`a value in ${metric} or ${us}`

/** A bound as printed, in the unit the value was typed in when that is one of the field's. */
function bound(field: NumberField, limit: number, unit: string): string {
  return formatQuantity(toSI(limit, field.units[0]), unit, {
    figures: 4,
    exact: unit === field.units[0],
  })
}

const spoken = (field: NumberField, unit: string | undefined): string =>
  unit !== undefined && unit !== 'AWG' && field.units.includes(unit) ? unit : field.units[0]

/** Why a value in SI is refused, or undefined. The bounds themselves are allowed. */
export function rangeSlip(
  field: NumberField,
  value: number,
  typed?: ParsedQuantity,
): Slip | undefined {
  const [least, most] = field.hard
  const here = fromSI(value, field.units[0])
  // A unit conversion may leave a bound a rounding error outside.
  const slack = 1e-9 * Math.max(Math.abs(least), Math.abs(most))
  if (here >= least - slack && here <= most + slack) return undefined
  const unit = spoken(field, typed?.unit)
  const read = typed?.typed ?? formatQuantity(value, unit, { figures: 4 })
  const hint = typed === undefined ? undefined : likelyUnit(field, typed)
  return {
    ok: false,
    rule: 'out-of-range',
    text:
      here < least
        ? words`\`${read}\` is below what “${field.label}” can be`
        : words`\`${read}\` is above what “${field.label}” can be`,
    allowed: words`${bound(field, least, unit)} to ${bound(field, most, unit)}`,
    ...(hint === undefined ? {} : { hint }),
  }
}

/** Words for a value that is allowed and yet rare, or undefined. */
export function unusualRemark(
  field: NumberField,
  value: number,
  typedUnit?: string,
): string | undefined {
  const [least, most] = field.usual
  const here = fromSI(value, field.units[0])
  const slack = 1e-9 * Math.max(Math.abs(least), Math.abs(most))
  if (here >= least - slack && here <= most + slack) return undefined
  const unit = spoken(field, typedUnit)
  return words`unusual for “${field.label}”: it is mostly ${bound(field, least, unit)} to ${bound(field, most, unit)}`
}

/** The number as typed, in another unit of the field in which it would be usual. */
function likelyUnit(field: NumberField, typed: ParsedQuantity): string | undefined {
  const number = fromSI(typed.value, typed.unit)
  const [least, most] = field.usual
  for (const [unit, factor] of [
    [field.units[1], 1],
    [field.units[0], 1],
    [field.units[0], 1000],
    [field.units[0], 0.001],
  ] as const) {
    if (factor === 1 && unit === typed.unit) continue
    const value = fromSI(toSI(number * factor, unit), field.units[0])
    if (value >= least && value <= most)
      return words`did you mean ${formatQuantity(toSI(number * factor, unit), unit, { exact: true })}?`
  }
  return undefined
}
