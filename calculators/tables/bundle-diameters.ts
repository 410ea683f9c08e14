/**
 * How thick a round bundle of equal wires is, in diameters of one wire.
 *
 * Smallest circle round n equal circles: proved best for 2 to 11, 12 and 13 best known. 19, 37 and 61
 * are full rings round one wire, as wires lie by themselves (19 could be squeezed into 4.86).
 */
import * as elementary from '../elementary.ts'
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

const ring = (n: number) => 1 + 1 / elementary.sin(Math.PI / n)

/** Bundle over wire; for a count between two rows the next one up is a bound. */
export const bundleRows: readonly (readonly [count: number, ratio: number])[] = [
  [1, 1],
  [2, 2],
  [3, 1 + 2 / Math.sqrt(3)],
  [4, 1 + Math.SQRT2],
  [5, ring(5)],
  [7, 3],
  [8, ring(7)],
  [9, ring(8)],
  [10, 3.813026],
  [11, ring(9)],
  [12, 4.029602],
  [13, 2 + Math.sqrt(5)],
  [19, 5],
  [37, 7],
  [61, 9],
]

export const bundleDiameters: Table = {
  id: 'bundle-diameters',
  title: words`Bundles of equal wires`,
  source:
    'Packing of equal circles in a circle (Graham 1968, Pirl 1969, Melissen 1994); 19, 37 and 61: full rings',
  trust: 'read',
  columns: [
    { label: words`Wires, up to`, unit: '' },
    { label: words`Bundle over one wire`, unit: '' },
  ],
  rows: bundleRows.map(([count, ratio]) => [count, Number(ratio.toFixed(4))]),
}
