/**
 * Nut factor K of T = K F d: how much of a torque goes into friction.
 *
 * K used here, and the range that a fastener supplier prints for the finish. The ranges are wide
 * because they are: the same torque on the same bolt gives twice the clamp, or half.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

const surfaces = {
  dry: words`dry`,
  zinc: words`zinc`,
  oiled: words`oiled`,
  phosphate: words`phosphate`,
  grease: words`grease`,
  stainless: words`stainless`,
} as const

type Row = readonly [surface: keyof typeof surfaces, used: number, lowest: number, highest: number]

export const nutFactorRows: readonly Row[] = [
  ['dry', 0.2, 0.18, 0.27],
  ['zinc', 0.2, 0.17, 0.35],
  ['oiled', 0.15, 0.1, 0.26],
  ['phosphate', 0.17, 0.15, 0.22],
  ['grease', 0.13, 0.1, 0.16],
  ['stainless', 0.3, 0.3, 0.5],
]

export const nutFactors: Table = {
  id: 'nut-factors',
  title: words`Nut factor K by surface`,
  source:
    'Ranges: nut factors by finish, a fastener supplier’s engineering data; K used and all of grease: common practice',
  trust: 'read',
  columns: [
    { label: words`Surface`, unit: '' },
    { label: words`K used`, unit: '' },
    { label: words`Lowest`, unit: '' },
    { label: words`Highest`, unit: '' },
  ],
  rows: /* @__PURE__ */ nutFactorRows.map(([surface, ...factors]) => [
    surfaces[surface],
    ...factors,
  ]),
}
