/**
 * Circuit breaker ratings: North American and IEC.
 *
 * In: nothing. Out: A, smallest first. A breaker of 20 A carries 16 A for hours.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const breakerRatings = {
  us: [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125],
  iec: [6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125],
} as const

const { us, iec } = breakerRatings

export const breakers: Table = {
  id: 'breaker-ratings',
  title: words`Ratings of circuit breakers`,
  source: 'NEC 240.6(A), to 125 A; IEC 60898-1, preferred values',
  trust: 'read',
  columns: [
    { label: words`North America`, unit: 'A' },
    { label: 'IEC', unit: 'A' },
  ],
  rows: /* @__PURE__ */ us.map((rating, i) => [rating, iec[i] ?? null]),
}
