/**
 * ISO metric coarse-thread bolts: stress area, proof loads, least breaking loads (ISO 898-1).
 *
 * Areas in mm², loads in N, as printed. Hot-dip galvanised M8 and M10 with thinned threads hold less
 * (ISO 10684, annex A), and stainless bolts are another standard (ISO 3506-1).
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const boltsIso8981: Table = {
  id: 'bolts-iso-898-1',
  title: words`Steel bolts, coarse thread: stress area, proof and breaking load`,
  source:
    'ISO 898-1, mechanical properties of fasteners, tables of proof loads and minimum ultimate tensile loads, coarse pitch',
  trust: 'read',
  columns: [
    { label: words`Thread`, unit: '' },
    { label: words`Pitch`, unit: 'mm' },
    { label: words`Stress area`, unit: 'mm²' },
    { label: words`Proof load 4.6`, unit: 'N' },
    { label: words`Proof load 5.8`, unit: 'N' },
    { label: words`Proof load 8.8`, unit: 'N' },
    { label: words`Proof load 10.9`, unit: 'N' },
    { label: words`Proof load 12.9`, unit: 'N' },
    { label: words`Breaking load 8.8`, unit: 'N' },
    { label: words`Breaking load 10.9`, unit: 'N' },
    { label: words`Breaking load 12.9`, unit: 'N' },
  ],
  rows: [
    ['M3', 0.5, 5.03, 1130, 1910, 2920, 4180, 4880, 4020, 5230, 6140],
    ['M4', 0.7, 8.78, 1980, 3340, 5100, 7290, 8520, 7020, 9130, 10_700],
    ['M5', 0.8, 14.2, 3200, 5400, 8230, 11_800, 13_800, 11_350, 14_800, 17_300],
    ['M6', 1, 20.1, 4520, 7640, 11_600, 16_700, 19_500, 16_100, 20_900, 24_500],
    ['M8', 1.25, 36.6, 8240, 13_900, 21_200, 30_400, 35_500, 29_200, 38_100, 44_600],
    ['M10', 1.5, 58, 13_000, 22_000, 33_700, 48_100, 56_300, 46_400, 60_300, 70_800],
    ['M12', 1.75, 84.3, 19_000, 32_000, 48_900, 70_000, 81_800, 67_400, 87_700, 103_000],
    ['M14', 2, 115, 25_900, 43_700, 66_700, 95_500, 112_000, 92_000, 120_000, 140_000],
    ['M16', 2, 157, 35_300, 59_700, 91_000, 130_000, 152_000, 125_000, 163_000, 192_000],
    ['M20', 2.5, 245, 55_100, 93_100, 147_000, 203_000, 238_000, 203_000, 255_000, 299_000],
  ],
  note: words`At room temperature. Hot-dip galvanised M8 and M10 with undersized threads hold less (ISO 10684, annex A).`,
}
