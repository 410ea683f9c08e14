/**
 * The ratings blade fuses come in, by style.
 *
 * In: nothing. Out: A, smallest first, as trade lists give them; ISO 8820-3 was not at hand. Maxi fuses
 * of 25, 35, 100 and 120 A are in some lists and not in others, and are left out.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const bladeRatings = {
  mini: [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
  medium: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
  maxi: [20, 30, 40, 50, 60, 70, 80],
} as const

const { mini, medium, maxi } = bladeRatings
const has = (ratings: readonly number[], rating: number) =>
  ratings.includes(rating) ? rating : null
const all = (): readonly number[] => [...new Set<number>([...medium, ...mini, ...maxi])]

export const bladeFuseRatings: Table = {
  id: 'blade-fuse-ratings',
  title: words`Ratings of blade fuses`,
  source: 'Trade lists of blade fuses: mini, medium and maxi (types F, C and E of ISO 8820-3)',
  trust: 'read',
  columns: [
    { label: words`Mini (F)`, unit: 'A' },
    { label: words`Medium (C)`, unit: 'A' },
    { label: words`Maxi (E)`, unit: 'A' },
  ],
  rows: /* @__PURE__ */ all().map((rating) => [
    has(mini, rating),
    has(medium, rating),
    has(maxi, rating),
  ]),
  note: words`For 32 V DC and a fault of about 1000 A: never on a traction pack.`,
}
