/**
 * How soon and how late a blade fuse opens, by multiple of its rating.
 *
 * In: nothing. Out: s at 23 °C. A start is held against the shortest time, a fault against the
 * longest: two fuses of one rating may differ a thousandfold at 135 %.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

type Row = readonly [
  percent: number,
  shortest: number,
  mini: number | null,
  medium: number | null,
  maxi: number | null,
]

/** The first row is carried, not opened. */
export const bladeTimeRows: readonly [Row, ...Row[]] = [
  [110, 360_000, null, null, null],
  [135, 0.75, 600, 1800, 1800],
  [160, 0.25, 50, 50, null],
  [200, 0.15, 5, 5, 60],
  [350, 0.04, 0.5, 0.5, 7],
  [600, 0.02, 0.1, 0.1, 1],
]

export const bladeFuseTimes: Table = {
  id: 'blade-fuse-times',
  title: words`Opening times of blade fuses`,
  source: 'ISO 8820-3, operating times at 23 °C',
  trust: 'recalled',
  columns: [
    { label: words`Of its rating`, unit: '%' },
    { label: words`Not before`, unit: 's' },
    { label: words`Mini open by`, unit: 's' },
    { label: words`Medium open by`, unit: 's' },
    { label: words`Maxi open by`, unit: 's' },
  ],
  rows: bladeTimeRows,
  note: words`At 110 % it carries for 100 h or more. The longest times and the 0.02 s at 600 % are the least sure; a maxi is slower than “not before”.`,
}
