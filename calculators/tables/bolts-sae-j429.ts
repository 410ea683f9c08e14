/**
 * Inch bolts, coarse thread (UNC): stress area, proof loads of grades 2, 5 and 8 (SAE J429).
 *
 * Areas in square inches, loads in pounds-force, as printed. Marks on the head: none is grade 2,
 * three lines 5, six lines 8.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const boltsSaeJ429: Table = {
  id: 'bolts-sae-j429',
  title: words`Inch bolts, coarse thread: stress area and proof load`,
  source:
    'SAE J429, proof loads of hexagon cap screws, UNC, as printed in a fastener supplier’s data sheet',
  trust: 'read',
  columns: [
    { label: words`Thread`, unit: '' },
    { label: words`Diameter`, unit: 'in' },
    { label: words`Threads per inch`, unit: '' },
    { label: words`Stress area`, unit: 'in²' },
    { label: words`Proof load grade 2`, unit: 'lbf' },
    { label: words`Proof load grade 5`, unit: 'lbf' },
    { label: words`Proof load grade 8`, unit: 'lbf' },
  ],
  rows: [
    ['1/4-20', 0.25, 20, 0.0318, 1750, 2700, 3800],
    ['5/16-18', 0.3125, 18, 0.0524, 2900, 4450, 6300],
    ['3/8-16', 0.375, 16, 0.0775, 4250, 6600, 9300],
    ['7/16-14', 0.4375, 14, 0.1063, 5850, 9050, 12_800],
    ['1/2-13', 0.5, 13, 0.1419, 7800, 12_100, 17_000],
    ['5/8-11', 0.625, 11, 0.226, 12_400, 19_200, 27_100],
    ['3/4-10', 0.75, 10, 0.334, 18_400, 28_400, 40_100],
  ],
  note: words`The three loads of 1/2-13 were hard to read in the copy seen; they are proof stress times area, rounded as the others are.`,
}
