/**
 * Free diameters of common tyre sizes, from the size itself.
 *
 * Millimetres and revolutions per kilometre, rounded as such lists are. The free tyre: on the road it
 * turns about 3 % more often than its free circumference tells.
 */
import { readTyre } from '../tyres.ts'
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

const sizes = [
  '135/80 R 13',
  '145/80 R 13',
  '155/80 R 13',
  '165/80 R 13',
  '165/70 R 13',
  '175/70 R 13',
  '175/80 R 14',
  '185/80 R 14',
  '185/65 R 14',
  '165/80 R 15',
  '185/70 R 15',
  '185/65 R 15',
  '195/65 R 15',
  '205/70 R 15',
  '235/75 R 15',
  '175/80 R 16',
  '205/55 R 16',
  '215/65 R 16',
  '225/75 R 16',
  '31x10.50 R 15',
]

export const tyreSizes: Table = {
  id: 'tyre-sizes',
  title: words`Tyre sizes: free diameter and revolutions`,
  source: 'Geometry of the size designation: diameter = rim × 25.4 mm + 2 × width × ratio',
  trust: 'model',
  columns: [
    { label: words`Size`, unit: '' },
    { label: words`Free diameter`, unit: 'mm' },
    { label: words`Free circumference`, unit: 'mm' },
    { label: words`Revolutions per km, free`, unit: '' },
    { label: words`Revolutions per km, rolling at 97 %`, unit: '' },
  ],
  rows: sizes.map((size) => {
    const diameter = (readTyre(size)?.diameter ?? NaN) * 1000
    const round = Math.PI * diameter
    return [
      size,
      Number(diameter.toFixed(1)),
      Math.round(round),
      Math.round(1e6 / round),
      Math.round(1e6 / (0.97 * round)),
    ]
  }),
  note: words`A worn tyre is up to 16 mm smaller. A tyre under load rolls at 96 to 97 % of its free circumference (recalled).`,
}
