/**
 * Vapour pressure of water over the range of a coolant loop.
 *
 * Worked with the function the calculators use, so the two cannot part; tests hold it against values
 * of another formulation (IAPWS-IF97).
 */
import { vapourPressure as boilsAt } from '../vapour.ts'
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

const temperatures = [1, 10, 20, 30, 40, 50, 60, 70, 80, 85, 90, 95, 100, 105, 110, 115, 120]

export const vapourPressure: Table = {
  id: 'vapour-pressure',
  title: words`Vapour pressure of water`,
  source: 'IAPWS SR1-86 (1992), equation of Wagner and Pruss',
  trust: 'read',
  columns: [
    { label: words`Temperature`, unit: '°C' },
    { label: words`Boils at`, unit: 'kPa abs' },
  ],
  rows: temperatures.map((celsius) => [
    celsius,
    Number((boilsAt(celsius + 273.15) / 1000).toPrecision(5)),
  ]),
  note: words`Agrees with IAPWS-IF97 to 0.05 %. Glycol and water boil at a lower pressure than water alone.`,
}
