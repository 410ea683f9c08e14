/**
 * Outside air against the US Standard Atmosphere 1976 (a library's table) and dry-air densities.
 */
import { expect, test } from 'vitest'
import { airDensity, gravity, standardPressure } from '../../calculators/air.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

test.each(rowsOf('atmosphere_1976.csv'))('at $Z_m m', (row) => {
  const altitude = numberIn(row, 'Z_m')
  expect(standardPressure(altitude) / numberIn(row, 'P_Pa')).toBeCloseTo(1, 5)
  const density = airDensity(numberIn(row, 'T_K'), altitude)
  expect(density / numberIn(row, 'rho_kg_m3')).toBeCloseTo(1, 4)
})

// P / (R T) with R = 287.05287 J/(kg·K) at 101 325 Pa.
test.each([
  [20, 1.204106],
  [35, 1.145493],
  [-10, 1.341379],
])('dry air at %s °C', (celsius, density) => {
  expect(airDensity(celsius + 273.15, 0)).toBeCloseTo(density, 6)
})

// CGPM 1901.
test('standard gravity', () => {
  expect(gravity).toBe(9.80665)
})
