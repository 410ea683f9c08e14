/** Sums of money: which currency one is in, and how it is printed, with cents where there are any. */
import { formatQuantity } from '../quantity/index.ts'
import { axes, currencies } from '../quantity/table.ts'
import type { Vector } from '../quantity/types.ts'

const first = axes.length - currencies.length

/** Its unit, `US$`; undefined where the vector is no sum of money in one currency. */
export function currencyOf(vector: Vector): string | undefined {
  const money = vector.slice(first)
  const isMoney = vector.reduce<number>((sum, power) => sum + Math.abs(power), 0) === 1
  return isMoney ? currencies[money.indexOf(1)] : undefined
}

export function moneyText(value: number, currency: string): string {
  const isWhole = Math.abs(value - Math.round(value)) < 0.005
  return formatQuantity(value, currency, { decimals: isWhole ? 0 : 2 })
}

/** What says the price of a part where its builder names nothing else. */
export const receiptKey = 'receipt'
