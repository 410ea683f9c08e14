/**
 * The ratings blade fuses come in, by style.
 *
 * In: nothing. Out: A, smallest first. Recalled from ISO 8820-3: a maker's list may have more.
 */
import type { Table } from './define.ts'

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
  title: 'Ratings of blade fuses',
  source: 'ISO 8820-3, road vehicles, fuse-links with tabs (blade type), types F, C and E',
  trust: 'recalled',
  columns: [
    { label: 'Mini (F)', unit: 'A' },
    { label: 'Medium (C)', unit: 'A' },
    { label: 'Maxi (E)', unit: 'A' },
  ],
  rows: /* @__PURE__ */ all().map((rating) => [
    has(mini, rating),
    has(medium, rating),
    has(maxi, rating),
  ]),
  note: 'For 32 V DC and a fault of about 1000 A: never on a traction pack.',
}
