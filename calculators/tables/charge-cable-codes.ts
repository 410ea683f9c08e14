/**
 * What the resistor in a loose charge cable says about its current: IEC 61851-1.
 *
 * In: nothing. Out: Ω between PP and PE, the window in which it still counts, and A. The resistor
 * tells the cable's current, not what the supply gives: that is the pilot's duty.
 */
import type { Table } from './define.ts'

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
  title: 'Resistor codes of charge cables',
  source:
    'IEC 61851-1, current coding of the cable assembly, as quoted in a charge controller’s manual',
  trust: 'read',
  columns: [
    { label: 'Resistor', unit: 'Ω' },
    { label: 'Counts from', unit: 'Ω' },
    { label: 'to', unit: 'Ω' },
    { label: 'Single phase', unit: 'A' },
    { label: 'Three phases', unit: 'A' },
  ],
  rows: chargeCableRows,
  note: 'Below 75 Ω is a fault; above 2200 Ω no cable is seen. On a boundary the calculators take the smaller current.',
}
