/**
 * The most that road-vehicle cable may resist, as ISO 6722-1 is recalled to print it.
 *
 * In: nothing. Out: mΩ/m at 20 °C by nominal area. Not confirmed in a copy of the standard, so no
 * calculator works with it; it shows that such cable resists about 5 % less than IEC 60228 class 5.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const vehicleWire: Table = {
  id: 'vehicle-wire',
  title: words`Road-vehicle cable: the most it may resist`,
  source: 'ISO 6722-1, copper conductors at 20 °C',
  trust: 'recalled',
  columns: [
    { label: words`Nominal area`, unit: 'mm²' },
    { label: words`Resistance`, unit: 'mΩ/m' },
  ],
  rows: [
    [0.5, 37.1],
    [0.75, 24.7],
    [1, 18.5],
    [1.5, 12.7],
    [2.5, 7.6],
    [4, 4.71],
    [6, 3.14],
    [10, 1.82],
    [16, 1.16],
    [25, 0.743],
    [35, 0.527],
    [50, 0.368],
    [70, 0.259],
    [95, 0.196],
    [120, 0.153],
  ],
  note: words`From memory, and not used by any calculator: they work with IEC 60228 class 5, which allows a little more.`,
}
