/**
 * The most that flexible and stranded copper conductors may resist, as IEC 60228 prints it.
 *
 * In: nothing. Out: Ω/km at 20 °C by nominal area. The area is a name: a cable meets the standard by
 * its resistance, so the copper in it may be less than the number says.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

type Row = readonly [area: number, stranded: number, flexible: number, tinned: number | null]

export const flexibleCopperRows: readonly Row[] = [
  [0.5, 36, 39, 40.1],
  [0.75, 24.5, 26, 26.7],
  [1, 18.1, 19.5, 20],
  [1.5, 12.1, 13.3, 13.7],
  [2.5, 7.41, 7.98, 8.21],
  [4, 4.61, 4.95, 5.09],
  [6, 3.08, 3.3, 3.39],
  [10, 1.83, 1.91, 1.95],
  [16, 1.15, 1.21, 1.24],
  [25, 0.727, 0.78, 0.795],
  [35, 0.524, 0.554, 0.565],
  [50, 0.387, 0.386, 0.393],
  [70, 0.268, 0.272, 0.277],
  [95, 0.193, 0.206, 0.21],
  [120, 0.153, 0.161, 0.164],
  [150, 0.124, 0.129, 0.132],
]

export const flexibleCopper: Table = {
  id: 'flexible-copper',
  title: words`Copper conductors: the most they may resist`,
  source: 'IEC 60228, classes 1 and 2 plain, class 5 plain and tinned, at 20 °C',
  trust: 'read',
  columns: [
    { label: words`Nominal area`, unit: 'mm²' },
    { label: words`Class 1 and 2, plain`, unit: 'Ω/km' },
    { label: words`Class 5, plain`, unit: 'Ω/km' },
    { label: words`Class 5, tinned`, unit: 'Ω/km' },
  ],
  rows: flexibleCopperRows,
  note: words`Read in four copies that agree. The calculators use class 5, plain, for flexible cable.`,
}
