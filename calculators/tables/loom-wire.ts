/**
 * Conventional PVC cable of a vehicle loom: what the towing-electrics trade lets it carry.
 *
 * In: nothing. Out: continuous A and mΩ/m by area. These are loom ratings: the same copper in hotter
 * insulation is rated higher and drops just as much.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

type Row = readonly [area: number, ampere: number, resistance: number | null]

export const loomWireRows: readonly Row[] = [
  [0.65, 5.75, null],
  [1, 8.75, 18.9],
  [1.5, 12.75, 12.5],
  [2, 17.5, 9.4],
  [2.5, 21.75, 7.5],
  [3, 25.5, 6],
]

export const loomWire: Table = {
  id: 'loom-wire',
  title: words`PVC loom cable, continuous`,
  source: 'Cable table of the towing-electrics trade, conventional PVC of 0.65 to 3 mm²',
  trust: 'read',
  columns: [
    { label: words`Area`, unit: 'mm²' },
    { label: words`Carries`, unit: 'A' },
    { label: words`Resistance`, unit: 'mΩ/m' },
  ],
  rows: loomWireRows,
  note: words`A “6 mm” cable of this trade is named by its outside: 3 mm is 0.85 mm², 4 mm 1.85 mm², 5 mm 2.9 mm², 6 mm 4.6 mm².`,
}
