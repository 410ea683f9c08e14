/**
 * Bolt loads against a second copy of the table of ISO 898-1 and the stress area's own formula.
 */
import { expect, test } from 'vitest'
import { boltThreads, nominalDiameter, proofLoad, stressArea } from '../../calculators/bolts.ts'
import { boltsIso8981 } from '../../calculators/tables/bolts-iso-898-1.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

test.each(rowsOf('bolts_iso898.csv'))('$thread', (row) => {
  const thread = row.thread ?? ''
  expect((stressArea(thread) ?? NaN) * 1e6).toBeCloseTo(numberIn(row, 'As_nom_mm2'), 9)
  for (const property of ['8.8', '10.9', '12.9'] as const)
    expect(proofLoad(thread, property)).toBe(numberIn(row, `proof_${property}_N`))
  const printed = boltsIso8981.rows.find(([name]) => name === thread)
  expect(printed?.slice(8)).toEqual(
    ['8.8', '10.9', '12.9'].map((property) => numberIn(row, `Fult_${property}_N`)),
  )
})

// Stress area π/4 (d − 0.9382 P)²; the standard rounds to three figures.
test.each(boltsIso8981.rows)('stress area of %s', (thread, pitch, area) => {
  const diameter = nominalDiameter(String(thread)) * 1000
  const formula = (Math.PI / 4) * (diameter - 0.9382 * Number(pitch)) ** 2
  expect(Math.abs(Number(area) / formula - 1)).toBeLessThan(0.005)
})

// Proof stress of the class times the area: 225, 380, 580 (600 above M16), 830 and 970 MPa.
test('proof loads are proof stress times area', () => {
  for (const thread of boltThreads) {
    const area = (stressArea(thread) ?? NaN) * 1e6
    const middle = nominalDiameter(thread) > 0.016 ? 600 : 580
    const stresses = { '4.6': 225, '5.8': 380, '8.8': middle, '10.9': 830, '12.9': 970 } as const
    for (const property of ['4.6', '5.8', '8.8', '10.9', '12.9'] as const)
      expect(
        Math.abs((proofLoad(thread, property) ?? NaN) / (stresses[property] * area) - 1),
        `${thread} ${property}`,
      ).toBeLessThan(0.006)
  }
})

test('a thread that is not in the table has no load', () => {
  expect(proofLoad('M7', '8.8')).toBeUndefined()
  expect(stressArea('M7')).toBeUndefined()
})
