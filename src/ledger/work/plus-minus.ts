/**
 * The ± of a number in SI: an amount of its own kind, or a share of it (`2 %`). It is a difference:
 * `± 1 °C` is one kelvin.
 */
import { parseQuantity, sameVector } from '../../quantity/index.ts'
import type { PublishedNumber } from '../published.ts'
import { report, reportSlip, type WorkContext } from './context.ts'
import { words } from '../../words/words.ts'

export function plusMinusOf(ctx: WorkContext, number: PublishedNumber): number | null {
  if (number.plusMinusShown === undefined) return null
  const read = parseQuantity(number.plusMinusShown)
  if (!read.ok) {
    reportSlip(ctx, number, words`the ±`, read)
    return null
  }
  const value = ctx.ownValue(number.id).quantity
  if (read.unit === '%') return value === null ? null : Math.abs(value.value) * read.value
  if (value !== null && !sameVector(value.vector, read.vector)) {
    report(ctx, number, {
      rule: 'wrong-dimension',
      text: words`the ± \`${number.plusMinusShown}\` is not of the same kind as the value \`${number.typed ?? ''}\``,
    })
    return null
  }
  return read.flavour === 'temperature' ? toDifference(read.unit, read.typed) : read.value
}

function toDifference(unit: string, typed: string): number | null {
  const read = parseQuantity(`${typed.replace(unit, '').trim()} Δ${unit}`)
  return read.ok ? read.value : null
}
