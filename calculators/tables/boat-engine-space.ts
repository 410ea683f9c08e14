/**
 * What is left of the boat table's amperage in an engine space: 33 CFR 183.425, note 1 of table 5.
 *
 * In: nothing. Out: a factor by insulation class. Only the one at 105 °C was read; 200 °C insulation
 * keeps its whole rating.
 */
import type { Table } from './define.ts'
import { words } from '../../src/words/words.ts'

export const engineSpaceFactors = {
  '60C': 0.58,
  '75C': 0.75,
  '80C': 0.78,
  '90C': 0.82,
  '105C': 0.85,
  '125C': 0.89,
} as const

export const boatEngineSpace: Table = {
  id: 'boat-engine-space',
  title: words`Amperage left in an engine space at 50 °C`,
  source: '33 CFR 183.425, table 5, note 1',
  trust: 'recalled',
  columns: [
    { label: words`Insulation`, unit: '°C' },
    { label: words`Factor`, unit: '' },
  ],
  rows: /* @__PURE__ */ Object.entries(engineSpaceFactors).map(([name, factor]) => [
    parseInt(name, 10),
    factor,
  ]),
  note: words`0.85 at 105 °C was read in a wire chart that quotes the rule; the other factors are recalled. All six are within 0.01 of √((T − 50)/(T − 30)), what a conductor’s heating leaves at 50 instead of 30 °C.`,
}
