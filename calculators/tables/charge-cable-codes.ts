/**
 * What the resistor in a loose charge cable says about its current: IEC 61851-1.
 *
 * In: nothing. Out: Ω between PP and PE, the window in which it still counts, and A. The resistor
 * tells the cable's current, not what the supply gives: that is the pilot's duty.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

type Row = readonly [nominal: number, least: number, most: number, single: number, three: number]

/** Largest current first. */
export const chargeCableRows: readonly Row[] = [
  [100, 75, 150, 70, 63],
  [220, 150, 330, 32, 32],
  [680, 330, 1000, 20, 20],
  [1500, 1000, 2200, 13, 13],
]

export const chargeCableCodes: Table = {
  id: 'charge-cable-codes',
  title: words`Resistor codes of charge cables`,
  source:
    'IEC 61851-1, current coding of the cable assembly, as quoted in a charge controller’s manual',
  trust: 'read',
  columns: [
    { label: words`Resistor`, unit: 'Ω' },
    { label: words`Counts from`, unit: 'Ω' },
    { label: words`to`, unit: 'Ω' },
    { label: words`Single phase`, unit: 'A' },
    { label: words`Three phases`, unit: 'A' },
  ],
  rows: chargeCableRows,
  note: words`Below 75 Ω is a fault; above 2200 Ω no cable is seen. On a boundary the calculators take the smaller current.`,
}
