/**
 * Worm-drive hose clamps: what diameter each size closes and opens to. Millimetres.
 *
 * The diameter is that of the hose where it sits on the spigot, not before it is pushed on.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const hoseClamps = {
  id: 'hose-clamps',
  title: words`Worm-drive hose clamps`,
  source: 'SAE J1508, type F, as reproduced in a public size table',
  trust: 'read',
  columns: [
    { label: words`Size`, unit: '' },
    { label: words`Closes to`, unit: 'mm' },
    { label: words`Opens to`, unit: 'mm' },
  ],
  rows: [
    ['06', 11.2, 19.8],
    ['08', 12.7, 23.1],
    ['10', 14.2, 26.9],
    ['12', 17.5, 31.7],
    ['16', 20.6, 38.1],
    ['20', 20.6, 44.4],
    ['24', 26.9, 50.8],
    ['28', 33.3, 57.1],
    ['32', 39.6, 63.5],
    ['36', 45.9, 69.8],
    ['40', 52.3, 76.2],
    ['44', 58.6, 82.5],
    ['48', 65, 88.9],
    ['52', 71.4, 95.2],
    ['56', 77.7, 101.6],
    ['60', 84.1, 107.9],
    ['64', 90.4, 114.3],
  ],
  note: words`Band about 14 mm wide. Metric clamps (DIN 3017) have other ranges, stamped on them.`,
} as const satisfies Table
