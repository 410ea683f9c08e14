/**
 * A number as text with a unit that reads back to the very same value. What its author typed is kept
 * where that does it; else the fewest digits that do, in the unit the page prints it in, then in others.
 * A value that no text in any of these units hits exactly (a conversion rounds) is as near as floats
 * come. Undefined for a number that cannot be told.
 */
import type { NumberField } from '../../../calculators/define.ts'
import type { PublishedNumber } from '../../ledger/published.ts'
import { dimensions, fromSI, parseQuantity } from '../../quantity/index.ts'
import type { CardContext } from '../context.ts'
import { originOf } from './origin.ts'

export function literalOf(
  number: PublishedNumber,
  field: NumberField,
  ctx: CardContext,
): string | undefined {
  const { value } = number
  if (value === null) return undefined
  const typed = originOf(number, ctx).typed?.replace(/\s+/g, ' ').trim()
  if (typed !== undefined && reads(typed, field) === value && !needsRemark(typed, field))
    return typed
  const units = new Set([
    number.display,
    ...field.units,
    dimensions[field.of].si.replace(/^1$/, ''),
  ])
  let nearest: string | undefined
  let least = Infinity
  for (const unit of units) {
    for (const text of textsIn(value, unit)) {
      const read = reads(text, field)
      if (read === value) return text
      const miss = read === undefined ? Infinity : Math.abs(read - value)
      if (miss < least) [nearest, least] = [text, miss]
    }
  }
  return nearest
}

function reads(text: string, { of }: NumberField): number | undefined {
  const read = parseQuantity(text, of)
  return read.ok ? read.value : undefined
}

/** Read in the only way it could be meant, which would be said again at every check. */
function needsRemark(text: string, { of }: NumberField): boolean {
  const read = parseQuantity(text, of)
  return !read.ok || read.remark !== undefined
}

/** More and more digits, then the floats next to the last. */
function* textsIn(value: number, unit: string): Generator<string> {
  if (unit === 'AWG') return
  const write = (number: number): string => (unit === '' ? String(number) : `${number} ${unit}`)
  const number = fromSI(value, unit)
  for (let digits = 1; digits <= 17; digits += 1) yield write(Number(number.toPrecision(digits)))
  const step = Math.max(Math.abs(number) * Number.EPSILON, Number.MIN_VALUE)
  for (const count of [-0.5, 0.5, -1, 1, -2, 2]) yield write(number + count * step)
}
