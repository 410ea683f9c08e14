/**
 * What the US boat rules let copper conductors carry: 33 CFR 183.425, table 5.
 *
 * In: nothing. Out: A by gauge and insulation class at 30 °C, and the factor for an engine space. The
 * table is for circuits under 50 V; a number without its table is worth nothing.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const boatClasses = ['60C', '75C', '80C', '90C', '105C', '125C', '200C'] as const
type Amps = readonly [number, number, number, number, number, number, number]

export const boatAmpacityRows: readonly (readonly [gauge: string, ...Amps])[] = [
  ['18', 10, 10, 15, 20, 20, 25, 25],
  ['16', 15, 15, 20, 25, 25, 30, 35],
  ['14', 20, 20, 25, 30, 35, 40, 45],
  ['12', 25, 25, 35, 40, 45, 50, 55],
  ['10', 40, 40, 50, 55, 60, 70, 70],
  ['8', 55, 65, 70, 70, 80, 90, 100],
  ['6', 80, 95, 100, 100, 120, 125, 135],
  ['4', 105, 125, 130, 135, 160, 170, 180],
  ['3', 120, 145, 150, 155, 180, 195, 210],
  ['2', 140, 170, 175, 180, 210, 225, 240],
  ['1', 165, 195, 210, 210, 245, 265, 280],
  ['1/0', 195, 230, 245, 245, 285, 305, 325],
  ['2/0', 225, 265, 285, 285, 330, 355, 370],
  ['3/0', 260, 310, 330, 330, 385, 410, 430],
  ['4/0', 300, 360, 385, 385, 445, 475, 510],
]

export const boatAmpacity: Table = {
  id: 'boat-ampacity',
  title: words`Allowable amperage of conductors in boats, under 50 V`,
  source: '33 CFR 183.425, table 5, copper, 30 °C around it',
  trust: 'read',
  columns: [
    { label: words`Gauge`, unit: 'AWG' },
    { label: words`60 °C insulation`, unit: 'A' },
    { label: '75 °C', unit: 'A' },
    { label: '80 °C', unit: 'A' },
    { label: '90 °C', unit: 'A' },
    { label: '105 °C', unit: 'A' },
    { label: '125 °C', unit: 'A' },
    { label: '200 °C', unit: 'A' },
  ],
  rows: boatAmpacityRows,
  note: words`In an engine space (50 °C) the value is multiplied by the factor of note 1.`,
}
