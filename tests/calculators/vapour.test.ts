/**
 * Vapour pressure against another formulation (IAPWS-IF97, computed by a library), and the printed
 * table against the function.
 */
import { expect, test } from 'vitest'
import { vapourPressure as table } from '../../calculators/tables/vapour-pressure.ts'
import { vapourPressure } from '../../calculators/vapour.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

test.each(rowsOf('water_iapws.csv'))('$T_C °C', (row) => {
  const kilopascal = vapourPressure(numberIn(row, 'T_C') + 273.15) / 1000
  expect(Math.abs(kilopascal / numberIn(row, 'p_sat_kPa') - 1)).toBeLessThan(5e-4)
})

// Verification values of IAPWS R7-97, table 35 (recalled): another formulation, so 0.05 %.
test.each([
  [300, 3536.58941],
  [500, 2638897.76],
  [600, 12344314.6],
])('%s K', (temperature, pascal) => {
  expect(Math.abs(vapourPressure(temperature) / pascal - 1)).toBeLessThan(5e-4)
})

test('water boils at 100 °C under one atmosphere, nearly', () => {
  expect(vapourPressure(373.124)).toBeGreaterThan(101_325 * 0.9995)
  expect(vapourPressure(373.124)).toBeLessThan(101_325 * 1.0005)
})

test('the printed table rises and is the function’s', () => {
  const values = table.rows.map(([, pressure]) => Number(pressure))
  expect(values.every((value, i) => i === 0 || value > (values[i - 1] ?? NaN))).toBe(true)
  for (const [celsius, pressure] of table.rows)
    expect(vapourPressure(Number(celsius) + 273.15) / 1000).toBeCloseTo(Number(pressure), 2)
})
