/**
 * Least bend radius of single-wire-braid rubber hose, by size. Inches, as printed.
 *
 * The dash number is the outside diameter, in sixteenths of an inch, of the tube that flows alike; the
 * hose's own bore is smaller. The table does not hold for plain coolant hose, which kinks sooner.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const hoseBendRadii = {
  id: 'hose-bend-radii',
  title: words`Least bend radius of wire-braided rubber hose`,
  source: 'FAA AC 43.13-1B, table 9-3 (MIL-H-8794)',
  trust: 'read',
  columns: [
    { label: words`Size`, unit: '' },
    { label: words`Bore`, unit: 'in' },
    { label: words`Outside diameter`, unit: 'in' },
    { label: words`Least bend radius`, unit: 'in' },
  ],
  rows: [
    ['-3', 0.125, 0.45, 3],
    ['-4', 0.1875, 0.52, 3],
    ['-5', 0.25, 0.58, 3.38],
    ['-6', 0.3125, 0.67, 4],
    ['-8', 0.40625, 0.77, 4.63],
    ['-10', 0.5, 0.92, 5.5],
    ['-12', 0.625, 1.08, 6.5],
    ['-16', 0.875, 1.23, 7.38],
    ['-20', 1.125, 1.5, 9],
    ['-24', 1.375, 1.75, 11],
    ['-32', 1.8125, 2.22, 13.25],
    ['-40', 2.375, 2.88, 24],
    ['-48', 3, 3.56, 33],
  ],
  note: words`Approved there for hydraulic, coolant, fuel and oil lines.`,
} as const satisfies Table
