/**
 * American wire gauge of solid annealed copper, worked from its definition.
 *
 * In: the rule and the resistivity in `wire.ts`. Out: what the gauge numbers stand for, to the four
 * figures that printed tables give. Stranded wire of one gauge resists 1 to 3 % more.
 */
import { gaugeArea, gauges, solidPerMetre } from '../wire.ts'
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

const printed = (value: number) => Number(value.toPrecision(4))
/** −1 is 2/0, −3 is 4/0. */
const gaugeName = (gauge: number) => (gauge < 1 ? `${1 - gauge}/0` : String(gauge))

export const awg: Table = {
  id: 'awg',
  title: words`American wire gauge, solid copper`,
  source: 'ASTM B258 for the diameters; resistance at 20 °C from 1/58 Ω·mm²/m (IEC 60028)',
  trust: 'read',
  columns: [
    { label: words`Gauge`, unit: 'AWG' },
    { label: words`Diameter`, unit: 'mm' },
    { label: words`Area`, unit: 'mm²' },
    { label: words`Resistance at 20 °C`, unit: 'mΩ/m' },
  ],
  rows: gauges.map((gauge) => {
    const area = gaugeArea(gauge)
    return [
      gaugeName(gauge),
      printed(Math.sqrt((4 * area) / Math.PI) * 1e3),
      printed(area * 1e6),
      printed(solidPerMetre(area) * 1e3),
    ]
  }),
  note: words`Diameter is 0.005 in × 92 to the power (36 − n)/39, n being 0 to −3 for 1/0 to 4/0. Stranded wire resists 1 to 3 % more.`,
}
