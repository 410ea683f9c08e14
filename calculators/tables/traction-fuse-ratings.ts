/**
 * Current ratings that fuses for traction packs are sold in.
 *
 * In: nothing. Out: A, smallest first, and whether the number is one of the preferred ones of
 * IEC 60269-1. Recalled: what a maker really lists, and at which voltage, is on the sheet.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

const preferred = [
  50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250,
] as const
const between = [60, 70, 90, 150, 175, 225, 300, 350, 450, 600, 700, 900] as const

export const tractionFuseRatings: readonly number[] = /* @__PURE__ */ [
  ...preferred,
  ...between,
].sort((a, b) => a - b)

const isPreferred = (rating: number) => preferred.some((listed) => listed === rating)

export const tractionFuses: Table = {
  id: 'traction-fuse-ratings',
  title: words`Ratings of traction fuses`,
  source: 'IEC 60269-1, preferred rated currents, and the sizes makers list between them',
  trust: 'recalled',
  columns: [
    { label: words`Rating`, unit: 'A' },
    { label: words`From`, unit: '' },
  ],
  rows: /* @__PURE__ */ tractionFuseRatings.map((rating) => [
    rating,
    isPreferred(rating) ? 'IEC 60269-1' : words`makers’ lists`,
  ]),
}
