/**
 * Clearance holes (ISO 273) and tap drills for metric coarse threads.
 *
 * In mm. Fine is for parts that must sit in place, medium for general work, coarse for parts that do
 * not quite meet. Tap drill: diameter less pitch, rounded to a drill that is sold.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const clearanceHoles: Table = {
  id: 'clearance-holes',
  title: words`Clearance holes and tap drills`,
  source:
    'ISO 273 (1979), fine, medium and coarse series; tap drills from two agreeing workshop charts',
  trust: 'read',
  columns: [
    { label: words`Thread`, unit: '' },
    { label: words`Pitch`, unit: 'mm' },
    { label: words`Fine`, unit: 'mm' },
    { label: words`Medium`, unit: 'mm' },
    { label: words`Coarse`, unit: 'mm' },
    { label: words`Tap drill`, unit: 'mm' },
  ],
  rows: [
    ['M3', 0.5, 3.2, 3.4, 3.6, 2.5],
    ['M4', 0.7, 4.3, 4.5, 4.8, 3.3],
    ['M5', 0.8, 5.3, 5.5, 5.8, 4.2],
    ['M6', 1, 6.4, 6.6, 7, 5],
    ['M8', 1.25, 8.4, 9, 10, 6.8],
    ['M10', 1.5, 10.5, 11, 12, 8.5],
    ['M12', 1.75, 13, 13.5, 14.5, 10.2],
    ['M14', 2, 15, 15.5, 16.5, 12],
    ['M16', 2, 17, 17.5, 18.5, 14],
  ],
}
