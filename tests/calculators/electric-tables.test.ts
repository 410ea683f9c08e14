/**
 * The electric tables as readers see them against the reference copies beside the tests, and that the
 * calculators' helpers give what the tables print.
 */
import { describe, expect, test } from 'vitest'
import { longestOpening, shortestOpening } from '../../calculators/fuses.ts'
import { tables } from '../../calculators/tables/index.ts'
import type { Table } from '../../calculators/tables/define.ts'
import {
  aircraftTable,
  boatEngineTable,
  boatTable,
  flexiblePerMetre,
  gaugeArea,
  loomTable,
  printedAmpacity,
} from '../../calculators/wire.ts'
import { parseQuantity } from '../../src/quantity/index.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

const electric = [
  'aircraft-ampacity',
  'aircraft-fuses',
  'awg',
  'blade-fuse-ratings',
  'blade-fuse-times',
  'boat-ampacity',
  'boat-engine-space',
  'breaker-ratings',
  'charge-cable-codes',
  'flexible-copper',
  'loom-wire',
  'traction-fuse-ratings',
  'vehicle-wire',
] as const

async function tableOf(id: string): Promise<Table> {
  const table = await tables[id]?.()
  if (table === undefined) throw new Error(`no table ${id}`)
  return table
}
/** `0000` of the reference files is `4/0` in the tables. */
const shown = (gauge: string | undefined) =>
  gauge?.startsWith('0') ? `${gauge.length}/0` : (gauge ?? '')
const rowNamed = (table: Table, name: string | number) =>
  table.rows.find(([first]) => first === name)?.slice(1)
const gaugeNumber = (name: string) => (name.endsWith('/0') ? 1 - parseInt(name) : Number(name))

test('the registry is sorted', () => {
  expect(Object.keys(tables)).toEqual(Object.keys(tables).sort())
})

describe.each(electric)('%s', (id) => {
  test('is whole: a cell for every column, units that the kit reads, rows that differ', async () => {
    const table = await tableOf(id)
    expect(table.id).toBe(id)
    expect(table.title && table.source).not.toBe('')
    expect(table.rows.length).toBeGreaterThan(2)
    for (const row of table.rows) expect(row.length).toBe(table.columns.length)
    const units = table.columns.map(({ unit }) => unit).filter((unit) => unit !== '')
    expect(units.filter((unit) => !parseQuantity(`1 ${unit}`).ok)).toEqual([])
    expect(new Set(table.rows.map((row) => JSON.stringify(row))).size).toBe(table.rows.length)
    const numbers = table.rows.flat().filter((cell) => typeof cell === 'number')
    expect(numbers.filter((cell) => !(Number.isFinite(cell) && cell > 0))).toEqual([])
  })
})

test.each(rowsOf('awg.csv'))('ASTM B258, $AWG AWG', async (row) => {
  const [diameter, area, resistance] = rowNamed(await tableOf('awg'), shown(row.AWG)) ?? []
  // Gauge 3 is not made as cable and not in the table.
  if (row.AWG === '3') return
  expect(Number(diameter) / numberIn(row, 'd_mm')).toBeCloseTo(1, 3)
  expect(Number(area) / numberIn(row, 'area_mm2')).toBeCloseTo(1, 3)
  expect(Number(resistance) / numberIn(row, 'R20_mohm_per_m')).toBeCloseTo(1, 3)
})

test.each(rowsOf('wire_iec60228.csv'))('IEC 60228, $area_mm2 mm²', async (row) => {
  const area = numberIn(row, 'area_mm2')
  const cells = rowNamed(await tableOf('flexible-copper'), area) ?? []
  const printed = ['class1_2_plain', 'class5_6_plain', 'class5_6_tinned'].map((name) =>
    row[name] === '' ? null : numberIn(row, name),
  )
  expect(cells).toEqual(printed)
  expect(flexiblePerMetre(area * 1e-6)).toBeCloseTo(Number(cells[1]) / 1000, 9)
})

test.each(rowsOf('ampacity_33cfr183.csv'))('33 CFR 183.425, $AWG AWG', async (row) => {
  const name = shown(row.AWG)
  const cells = rowNamed(await tableOf('boat-ampacity'), name) ?? []
  const area = gaugeArea(gaugeNumber(name))
  expect(cells).toEqual(boatTable.classes.map((kind) => numberIn(row, kind)))
  expect(boatTable.classes.map((kind) => printedAmpacity(boatTable, kind, area))).toEqual(cells)
})

test('33 CFR 183.425, note 1, is what the engine-space rating is multiplied by', async () => {
  for (const [degrees, factor] of (await tableOf('boat-engine-space')).rows) {
    const kind = boatTable.classes.find((name) => name === `${degrees ?? ''}C`)
    if (kind === undefined) throw new Error(`no class ${degrees ?? ''}`)
    const area = gaugeArea(10)
    const open = printedAmpacity(boatTable, kind, area) ?? NaN
    expect(printedAmpacity(boatEngineTable, kind, area)).toBeCloseTo(open * Number(factor), 9)
  }
})

test.each(rowsOf('wire_ac4313.csv'))('AC 43.13-1B, table 11-9, $AWG AWG', async (row) => {
  const name = shown(row.AWG)
  const cells = rowNamed(await tableOf('aircraft-ampacity'), name) ?? []
  const columns = ['A_105C', 'A_150C', 'A_200C', 'ohm_per_1000ft_max', 'circ_mils']
  expect(cells).toEqual(columns.map((column) => numberIn(row, column)))
  const area = gaugeArea(gaugeNumber(name))
  expect(aircraftTable.classes.map((kind) => printedAmpacity(aircraftTable, kind, area))).toEqual(
    cells.slice(0, 3),
  )
})

test.each(rowsOf('fuse_wire_ac4313.csv'))(
  'AC 43.13-1B, table 11-3, $AWG_copper AWG',
  async (row) => {
    const name = row.AWG_copper === '0' ? '1/0' : (row.AWG_copper ?? '')
    expect(rowNamed(await tableOf('aircraft-fuses'), name)).toEqual([
      row.circuit_breaker_A === '' ? null : numberIn(row, 'circuit_breaker_A'),
      numberIn(row, 'fuse_A'),
    ])
  },
)

test('loom cable: the rating is the table’s, the copper resists 2 to 12 % more than solid', async () => {
  for (const [area, ampere, resistance] of (await tableOf('loom-wire')).rows) {
    expect(printedAmpacity(loomTable, '70C', Number(area) * 1e-6)).toBe(ampere)
    if (resistance === null) continue
    const over = Number(resistance) / (1000 / 58 / Number(area))
    expect(over).toBeGreaterThan(1.02)
    expect(over).toBeLessThan(1.12)
  }
})

const columnOf = ({ rows }: Table, at: number) =>
  rows.map((row) => row[at]).filter((cell) => cell !== null)

// NEC 240.6(A), to 125 A; the preferred values of IEC 60898-1.
test('circuit breakers come in the listed ratings', async () => {
  const breakers = await tableOf('breaker-ratings')
  expect(columnOf(breakers, 0)).toEqual([
    15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125,
  ])
  expect(columnOf(breakers, 1)).toEqual([6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125])
})

// A farm paper’s colour chart and two more lists agree on these; some have maxi 25, 35, 100 and 120 A too.
test('blade fuses come in the ratings of trade lists', async () => {
  const blades = await tableOf('blade-fuse-ratings')
  expect(columnOf(blades, 0)).toEqual([2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30])
  expect(columnOf(blades, 1)).toEqual([1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40])
  expect(columnOf(blades, 2)).toEqual([20, 30, 40, 50, 60, 70, 80])
})

// A conductor’s heating goes with the square of its current: 50 instead of 30 °C leaves √((T − 50)/(T − 30)).
test('recalled factors of engine spaces are those of the heat they leave room for', async () => {
  const { rows } = await tableOf('boat-engine-space')
  expect(rows.length).toBe(6)
  for (const [insulation, factor] of rows) {
    const t = Number(insulation)
    expect(Math.abs(Number(factor) - Math.sqrt((t - 50) / (t - 30)))).toBeLessThan(0.01)
  }
})

test('blade fuses open when the table says', async () => {
  for (const [percent, soonest, mini, medium, maxi] of (await tableOf('blade-fuse-times')).rows) {
    const multiple = Number(percent) / 100
    if (multiple === 1.1) {
      expect(shortestOpening(multiple)).toBe(Infinity)
      continue
    }
    expect(shortestOpening(multiple)).toBe(soonest)
    expect(longestOpening('mini', multiple)).toBe(mini)
    expect(longestOpening('medium', multiple)).toBe(medium)
    if (maxi !== null) expect(longestOpening('maxi', multiple)).toBe(maxi)
  }
})

// ISO 6722-1 as recalled lies between solid copper and IEC 60228 class 5.
test('vehicle cable resists less than class 5 and more than solid copper', async () => {
  for (const [area, resistance] of (await tableOf('vehicle-wire')).rows) {
    const class5 = flexiblePerMetre(Number(area) * 1e-6) * 1000
    expect(Number(resistance)).toBeLessThan(class5)
    expect(Number(resistance)).toBeGreaterThan(1000 / 58 / Number(area))
  }
})
