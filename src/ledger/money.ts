/** Sums of money: which currency one is in, and how it is printed, with cents where there are any. */
import { currencyAt, formatQuantity, unitOf } from '../quantity/index.ts'
import { axes, currencies } from '../quantity/table.ts'
import type { Vector } from '../quantity/types.ts'
import { add } from '../quantity/vector.ts'

const first = axes.length - currencies.length

/** Its unit, `US$`; undefined where the vector is no sum of money in one currency. */
export function currencyOf(vector: Vector): string | undefined {
  const money = vector.slice(first)
  const isMoney = vector.reduce<number>((sum, power) => sum + Math.abs(power), 0) === 1
  return isMoney ? currencies[money.indexOf(1)] : undefined
}

/** The currency in a sum or a price per something; undefined where there is none, or more than one. */
export function currencyIn(vector: Vector): string | undefined {
  return currencies[currencyAt(vector) ?? -1]
}

/** The same in another currency than the first. */
export function vectorIn(vector: Vector, currency: string): Vector {
  const unit = unitOf(currency)
  const dollars = unitOf(currencies[0])
  const power = vector[first] ?? 0
  if (unit === undefined || dollars === undefined) return vector
  return add(add(vector, dollars.vector, -power), unit.vector, power)
}

export function moneyText(value: number, currency: string): string {
  const isWhole = Math.abs(value - Math.round(value)) < 0.005
  return formatQuantity(value, currency, { decimals: isWhole ? 0 : 2 })
}

/** What says the price of a part where its builder names nothing else. */
export const receiptKey = 'receipt'
