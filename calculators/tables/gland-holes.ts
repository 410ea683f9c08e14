/**
 * Holes for metric cable glands (EN 50262) and the cables they usually take.
 *
 * In mm. The hole may be 0.2 mm larger and 0.4 mm smaller than printed. Which cable a gland grips is
 * not in the standard: the maker's sheet decides, the range here is only a guide.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const glandHoles: Table = {
  id: 'gland-holes',
  title: words`Holes for metric cable glands`,
  source:
    'EN 50262, table 1, mounting holes (+0.2/−0.4 mm), as printed in a maker’s planning guide; cable ranges: common practice',
  trust: 'read',
  columns: [
    { label: words`Gland`, unit: '' },
    { label: words`Hole`, unit: 'mm' },
    { label: words`Thinnest cable, usually`, unit: 'mm' },
    { label: words`Thickest cable, usually`, unit: 'mm' },
  ],
  rows: [
    ['M12', 12.5, 3, 6],
    ['M16', 16.5, 5, 10],
    ['M20', 20.5, 7, 13],
    ['M25', 25.5, 10, 17],
    ['M32', 32.5, 14, 21],
    ['M40', 40.5, 19, 28],
    ['M50', 50.5, 27, 35],
    ['M63', 63.5, 34, 45],
  ],
}
