/** Sums of money in each currency: a dimension of its own, never changed into another. */
import { describe, expect, test } from 'vitest'
import { combine, formatQuantity, parseQuantity } from '../../src/quantity/index.ts'
import type { ParsedQuantity } from '../../src/quantity/index.ts'

function read(text: string): ParsedQuantity {
  const quantity = parseQuantity(text)
  if (!quantity.ok) throw new Error(quantity.text)
  return quantity
}

describe('a price', () => {
  test.each([
    ['€ 45', 'EUR', 45],
    ['€45.50', 'EUR', 45.5],
    ['45 €', 'EUR', 45],
    ['EUR 45', 'EUR', 45],
    ['£12', 'GBP', 12],
    ['12 GBP', 'GBP', 12],
    ['CA$ 30', 'CAD', 30],
    ['C$30', 'CAD', 30],
    ['A$30', 'AUD', 30],
    ['AU$ 30', 'AUD', 30],
    ['NZ$30', 'NZD', 30],
    ['120 CHF', 'CHF', 120],
    ['SEK 899', 'SEK', 899],
    ['899 NOK', 'NOK', 899],
    ['899 DKK', 'DKK', 899],
    ['$30', 'US$', 30],
    ['US$ 30', 'US$', 30],
  ])('`%s` is in %s', (text, unit, value) => {
    expect([read(text).unit, read(text).value]).toEqual([unit, value])
  })

  test('is never added to one in another currency', () => {
    expect(combine('+', read('€5'), read('$5'))).toEqual({
      ok: false,
      rule: 'wrong-dimension',
      text: 'a sum of money cannot be added to a value in EUR',
    })
  })

  test('is read in its own currency where a sum of money is due', () => {
    for (const [text, of, unit] of [
      ['€ 5', 'money', 'EUR'],
      ['12 £/kWh', 'moneyPerEnergy', 'GBP/kWh'],
    ] as const) {
      const due = parseQuantity(text, of)
      expect(due).toEqual(read(text))
      expect(due).toMatchObject({ unit })
    }
    expect(parseQuantity('5 €/kWh', 'money')).toMatchObject({ rule: 'wrong-dimension' })
  })

  test('is multiplied by how many, and by how much of a length', () => {
    expect(combine('*', read('2'), read('€5'))).toMatchObject({ value: 10 })
    const cost = combine('*', read('4 m'), read('€2.50/m'))
    if ('rule' in cost) throw new Error(cost.text)
    expect(cost.value).toBe(10)
    expect(cost.vector).toEqual(read('€1').vector)
  })

  test('is printed with its currency behind it', () => {
    expect(formatQuantity(45.5, 'EUR', { decimals: 2 })).toBe('45.50\u00a0EUR')
  })
})
