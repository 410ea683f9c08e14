/**
 * The standard atmosphere at the heights where roads are.
 *
 * Worked with the same function the calculators use, so the two cannot part; tests hold it against a
 * printed table. Temperature is the standard's, colder than most days one drives on.
 */
import { airDensity, standardPressure, standardTemperature } from '../air.ts'
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

const heights = [-250, 0, 250, 500, 750, 1000, 1250, 1500, 2000, 2500, 3000, 3500, 4000, 5000]

export const standardAtmosphere: Table = {
  id: 'standard-atmosphere',
  title: words`Standard atmosphere: temperature, pressure and density at an altitude`,
  source: 'US Standard Atmosphere 1976, geometric altitude below 11 km',
  trust: 'recalled',
  columns: [
    { label: words`Altitude`, unit: 'm' },
    { label: words`Temperature`, unit: '°C' },
    { label: words`Pressure`, unit: 'kPa abs' },
    { label: words`Density`, unit: 'kg/m³' },
    { label: words`Share of sea level’s density`, unit: '%' },
  ],
  rows: heights.map((height) => {
    const temperature = standardTemperature(height)
    const density = airDensity(temperature, height)
    return [
      height,
      Number((temperature - 273.15).toFixed(2)),
      Number((standardPressure(height) / 1000).toFixed(2)),
      Number(density.toFixed(4)),
      Number(((100 * density) / airDensity(standardTemperature(0), 0)).toFixed(1)),
    ]
  }),
  note: words`Dry air. The computed values agree with a library’s table of the same standard to 0.01 %.`,
}
