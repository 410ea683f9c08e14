/**
 * What FAA guidance lets bundled copper wire carry: AC 43.13-1B, table 11-9.
 *
 * In: nothing. Out: A by gauge and class, the most the wire may resist, its area. It is for bundles
 * that are hardly loaded, in a hot place, high up: far below what one wire in free air carries.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const aircraftClasses = ['105C', '150C', '200C'] as const
type Row = readonly [
  gauge: string,
  at105: number,
  at150: number,
  at200: number,
  ohmPer1000ft: number,
  circularMils: number,
]

export const aircraftAmpacityRows: readonly Row[] = [
  ['24', 2.5, 4, 5, 28.4, 475],
  ['22', 3, 5, 6, 16.2, 755],
  ['20', 4, 7, 9, 9.88, 1216],
  ['18', 6, 9, 12, 6.23, 1900],
  ['16', 7, 11, 14, 4.81, 2426],
  ['14', 10, 14, 18, 3.06, 3831],
  ['12', 13, 19, 25, 2.02, 5874],
  ['10', 17, 26, 32, 1.26, 9354],
  ['8', 38, 57, 71, 0.7, 16983],
  ['6', 50, 76, 97, 0.44, 26818],
  ['4', 68, 103, 133, 0.28, 42615],
  ['2', 95, 141, 179, 0.18, 66500],
  ['1', 113, 166, 210, 0.15, 81700],
  ['1/0', 128, 192, 243, 0.12, 104500],
  ['2/0', 147, 222, 285, 0.09, 133000],
  ['3/0', 172, 262, 335, 0.07, 166500],
  ['4/0', 204, 310, 395, 0.06, 210900],
]

export const aircraftAmpacity: Table = {
  id: 'aircraft-ampacity',
  title: words`Current capacity and resistance of copper wire in bundles`,
  source:
    'FAA AC 43.13-1B change 1 (2001), table 11-9: 70 °C around it, 33 wires (24 to 10) or 9 wires (8 and thicker), 20 % loaded, 60 000 ft',
  trust: 'read',
  columns: [
    { label: words`Gauge`, unit: 'AWG' },
    { label: words`105 °C wire`, unit: 'A' },
    { label: words`150 °C wire`, unit: 'A' },
    { label: words`200 °C wire`, unit: 'A' },
    { label: words`Resistance at 20 °C, tin-plated, per 1000 ft`, unit: 'Ω' },
    { label: words`Area in circular mils`, unit: '' },
  ],
  rows: aircraftAmpacityRows,
}
