/**
 * Which fuse or breaker FAA guidance puts on a wire: AC 43.13-1B, table 11-3.
 *
 * In: nothing. Out: A by gauge, for bundled copper wire in a hot place. It gives the largest device
 * for a wire, not the one a load needs.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const aircraftFuses: Table = {
  id: 'aircraft-fuses',
  title: words`DC wire and circuit protector chart`,
  source: 'FAA AC 43.13-1B (1998), table 11-3, copper wire in bundles',
  trust: 'read',
  columns: [
    { label: words`Gauge`, unit: 'AWG' },
    { label: words`Circuit breaker`, unit: 'A' },
    { label: words`Fuse`, unit: 'A' },
  ],
  rows: [
    ['22', 5, 5],
    ['20', 7.5, 5],
    ['18', 10, 10],
    ['16', 15, 10],
    ['14', 20, 15],
    ['12', 30, 20],
    ['10', 40, 30],
    ['8', 50, 50],
    ['6', 80, 70],
    ['4', 100, 70],
    ['2', 125, 100],
    ['1', null, 150],
    ['1/0', null, 150],
  ],
}
