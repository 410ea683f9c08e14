/**
 * The cells of a pack against each other: voltage at rest, on charge, on discharge, and capacity.
 *
 * In: readings cell by cell. Out: spreads, the weakest and the highest cell, health. A pack is as
 * large as its smallest cell. Iron phosphate is so flat in the middle that cells half a charge apart
 * read alike at rest: compare them nearly full or nearly empty.
 */
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** V; common practice. */
const restWatch = 0.01
const restStop = 0.03
const loadWatch = 0.05
const loadStop = 0.1
/** Of rated capacity; common practice, 80 % is where sheets end a cell's life. */
const healthWatch = 0.8
const healthStop = 0.7
/** V; the flat middle of iron phosphate at rest; common practice. */
const flat = [3.25, 3.34] as const
const hair = 1e-9

interface Cell {
  readonly name: string
  readonly rest: number
  readonly charge: number | undefined
  readonly discharge: number | undefined
  readonly capacity: number | undefined
}
type Reading = 'charge' | 'discharge' | 'capacity'

/** Undefined unless every cell was read: one that was not may be the worst. */
function given(cells: readonly Cell[], of: Reading): readonly number[] | undefined {
  const values = cells.flatMap((cell) => cell[of] ?? [])
  return values.length < cells.length ? undefined : values
}

/** Highest less lowest. */
function spreadOf(cells: readonly Cell[], of: Reading): number | undefined {
  const values = given(cells, of)
  return values && Math.max(...values) - Math.min(...values)
}

/** A sum of readings ends in the noise of its doubles, in volts. */
const noise = 1e-12

export const cellSpread = defineCalculator({
  id: 'cell-spread',
  title: words`Cell spread and capacity`,
  phase: 'traction',
  purpose: words`Compares the cells of a pack at rest, on charge and on discharge, and finds the weakest and what capacity is left.`,
  inputs: {
    cells: {
      type: 'list',
      label: words`Cells`,
      row: words`cell`,
      help: words`Read within minutes of each other with one meter.`,
      rows: [2, 300],
      fields: {
        name: { type: 'text', label: words`Cell`, help: words`Its number in the pack.` },
        rest: {
          type: 'number',
          label: words`At rest`,
          symbol: 'u_rest',
          of: 'voltage',
          units: ['V', 'V'],
          hard: [0, 5],
          usual: [2, 4.3],
          help: words`An hour or more after the last current.`,
        },
        charge: {
          type: 'number',
          label: words`On charge`,
          symbol: 'u_charge',
          of: 'voltage',
          units: ['V', 'V'],
          hard: [0, 5],
          usual: [2, 4.35],
          help: words`Near the end of a charge.`,
          optional: true,
        },
        discharge: {
          type: 'number',
          label: words`On discharge`,
          symbol: 'u_discharge',
          of: 'voltage',
          units: ['V', 'V'],
          hard: [0, 5],
          usual: [1.5, 4.2],
          help: words`Under a steady load, all at the same moment.`,
          optional: true,
        },
        capacity: {
          type: 'number',
          label: words`Capacity`,
          symbol: 'q',
          of: 'charge',
          units: ['Ah', 'Ah'],
          hard: [0, 2000],
          usual: [2, 400],
          help: words`Measured, full to empty.`,
          optional: true,
        },
      },
    },
    rated: {
      type: 'number',
      label: words`Rated capacity`,
      symbol: 'q_rated',
      of: 'charge',
      units: ['Ah', 'Ah'],
      hard: [0.5, 2000],
      usual: [2, 400],
      help: words`From the cell’s sheet, new.`,
      optional: true,
    },
    lowest: {
      type: 'number',
      label: words`Lowest allowed`,
      symbol: 'u_min',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.5, 4],
      usual: [1.5, 3.2],
      help: words`From the cell’s sheet.`,
    },
    highest: {
      type: 'number',
      label: words`Highest allowed`,
      symbol: 'u_max',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 5],
      usual: [2.4, 4.35],
      help: words`From the cell’s sheet.`,
    },
    chemistry: {
      type: 'choice',
      label: words`Chemistry`,
      help: words`Decides how much a voltage at rest tells.`,
      options: { lfp: words`lithium iron phosphate`, other: words`another` },
      choice: true,
    },
  },
  outputs: {
    restSpread: {
      type: 'number',
      label: words`Spread at rest`,
      symbol: 'Δu_rest',
      of: 'voltage',
      units: ['mV', 'mV'],
    },
    chargeSpread: {
      type: 'number',
      label: words`Spread on charge`,
      symbol: 'Δu_charge',
      of: 'voltage',
      units: ['mV', 'mV'],
    },
    dischargeSpread: {
      type: 'number',
      label: words`Spread on discharge`,
      symbol: 'Δu_discharge',
      of: 'voltage',
      units: ['mV', 'mV'],
    },
    weakest: { type: 'text', label: words`Weakest cell` },
    fullest: { type: 'text', label: words`Highest cell` },
    packCapacity: {
      type: 'number',
      label: words`Capacity of the smallest cell`,
      symbol: 'q_min',
      of: 'charge',
      units: ['Ah', 'Ah'],
    },
    health: {
      type: 'number',
      label: words`Of rated`,
      symbol: 'q_min/q_rated',
      of: 'fraction',
      units: ['%', '%'],
    },
    list: {
      type: 'table',
      label: words`Cells`,
      columns: {
        name: { type: 'text', label: words`Cell` },
        off: {
          type: 'number',
          label: words`Off the mean at rest`,
          symbol: 'δ',
          of: 'voltage',
          units: ['mV', 'mV'],
        },
        health: {
          type: 'number',
          label: words`Capacity of rated`,
          symbol: 'q/q_rated',
          of: 'fraction',
          units: ['%', '%'],
        },
      },
    },
  },
  formula: ['\\Delta u = u_\\text{highest} - u_\\text{lowest}', 'q_\\text{min}/q_\\text{rated}'],
  validity: [
    words`Spreads hold for cells at one temperature, read within minutes of each other.`,
    words`On charge and discharge the spread grows with the current: compare like with like, year by year.`,
    words`Cells in parallel count as one.`,
  ],
  checks: {
    limits: { title: words`Within the sheet`, basis: 'the cell’s own sheet' },
    rest: { title: words`Spread at rest`, basis: 'common practice' },
    flat: { title: words`A reading that tells`, basis: 'common practice' },
    load: { title: words`Spread under current`, basis: 'common practice' },
    capacity: { title: words`Capacity left`, basis: 'common practice' },
  },
  hazards: ['high-voltage', 'arc-and-short', 'cell-fire'],
  sources: [
    { title: 'Common practice of pack builders and battery trade', trust: 'recalled' },
    {
      title: 'Cell sheets of iron phosphate prismatic cells',
      at: 'end of life at 80 % of rated capacity',
      trust: 'recalled',
    },
  ],
  compute(input) {
    const { cells, rated } = input
    const rests = cells.map(({ rest }) => rest)
    const mean = rests.reduce((sum, rest) => sum + rest, 0) / rests.length
    const capacities = given(cells, 'capacity')
    const packCapacity = capacities && Math.min(...capacities)
    const lowest = (of: Reading) => {
      const values = given(cells, of)
      return values && cells[values.indexOf(Math.min(...values))]
    }
    const tops = given(cells, 'charge') ?? rests
    return {
      restSpread: Math.max(...rests) - Math.min(...rests),
      chargeSpread: spreadOf(cells, 'charge'),
      dischargeSpread: spreadOf(cells, 'discharge'),
      weakest: (
        lowest('capacity') ??
        lowest('discharge') ??
        cells[rests.indexOf(Math.min(...rests))]
      )?.name,
      fullest: cells[tops.indexOf(Math.max(...tops))]?.name,
      packCapacity,
      health: packCapacity === undefined || rated === undefined ? undefined : packCapacity / rated,
      list: cells.map(({ name, rest, capacity }) => ({
        name,
        off: Math.abs(rest - mean) < noise ? 0 : rest - mean,
        health: capacity === undefined || rated === undefined ? undefined : capacity / rated,
      })),
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const { restSpread = Infinity } = output
    const weakest = `“${output.weakest ?? ''}”`
    const window = wrongWay(
      say,
      'V',
      [words`lowest voltage allowed`, input.lowest],
      [words`highest`, input.highest],
    )
    const limits = (): Said => {
      const outside = input.cells.find((cell) =>
        [cell.rest, cell.charge, cell.discharge].some(
          (volts) =>
            volts !== undefined && (volts < input.lowest - hair || volts > input.highest + hair),
        ),
      )
      return outside === undefined
        ? {
            level: 'pass',
            text: words`Every reading lies between ${say(input.lowest, 'V')} and ${say(input.highest, 'V')}.`,
          }
        : {
            level: 'stop',
            text: words`“${outside.name}” is outside ${say(input.lowest, 'V')} to ${say(input.highest, 'V')}: take the pack out of use and look at that cell; one that was run flat must not be charged again.`,
          }
    }
    const rest = (): Said => {
      const fact = words`At rest the cells lie within ${say(restSpread, 'mV')}`
      if (restSpread <= restWatch + hair) return { level: 'pass', text: `${fact}.` }
      return restSpread <= restStop + hair
        ? { level: 'watch', text: words`${fact}: balance them, and read again in a month.` }
        : {
            level: 'stop',
            text: words`${fact}: balance them before the next drive; if it comes back, a cell or a joint is bad.`,
          }
    }
    const telling = (): Said => {
      const dull = input.cells.filter(({ rest }) => rest >= flat[0] && rest <= flat[1]).length
      return input.chemistry === 'lfp' && dull * 2 > input.cells.length
        ? {
            level: 'watch',
            text: words`Most cells are in the flat middle of iron phosphate, where they read alike whatever they hold: read them nearly full or nearly empty.`,
          }
        : { level: 'pass', text: words`At these voltages a difference shows.` }
    }
    const load = (): Said => {
      const spreads = [output.chargeSpread, output.dischargeSpread].flatMap((one) => one ?? [])
      const worst = Math.max(0, ...spreads)
      const fact = words`Under current the cells lie within ${say(worst, 'mV')}`
      if (worst > loadStop + hair)
        return {
          level: 'stop',
          text: words`${fact}: find the weak cell or joint; ${weakest} first.`,
        }
      if (spreads.length < 2)
        return {
          level: 'unknown',
          text: words`Not every cell is read both on charge and on discharge.`,
        }
      return worst <= loadWatch + hair
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'watch', text: words`${fact}: look at ${weakest} and its joints.` }
    }
    const capacity = (): Said => {
      if (output.health === undefined)
        return {
          level: 'unknown',
          text: words`Measured capacities, or the rated one, are missing.`,
        }
      const fact = words`${weakest} holds ${say(output.packCapacity, 'Ah')}, ${say(output.health, '%')} of rated; the pack holds no more`
      if (output.health >= healthWatch - hair) return { level: 'pass', text: `${fact}.` }
      return output.health >= healthStop - hair
        ? { level: 'watch', text: words`${fact}: plan for another cell.` }
        : { level: 'stop', text: words`${fact}: replace it.` }
    }
    return [
      {
        check: 'limits',
        ...heeding(limits(), window),
        threshold: words`${say(input.lowest, 'V')} to ${say(input.highest, 'V')} (stop)`,
      },
      { check: 'rest', ...rest(), threshold: words`at most 10 mV (watch), 30 mV (stop)` },
      {
        check: 'flat',
        ...telling(),
        threshold: words`iron phosphate: most cells outside 3.25 to 3.34 V (watch)`,
      },
      { check: 'load', ...load(), threshold: words`at most 50 mV (watch), 100 mV (stop)` },
      {
        check: 'capacity',
        ...capacity(),
        threshold: words`at least 80 % of rated (watch), 70 % (stop)`,
      },
    ]
  },
  working(input, output, say) {
    const rests = input.cells.map(({ rest }) => rest)
    return [
      `Δu_rest = ${say(Math.max(...rests), 'V', 4)} − ${say(Math.min(...rests), 'V', 4)} = ${say(output.restSpread, 'mV')}`,
      words`on charge ${say(output.chargeSpread, 'mV')}, on discharge ${say(output.dischargeSpread, 'mV')}`,
      `q_min / q_rated = ${say(output.packCapacity, 'Ah')} / ${say(input.rated, 'Ah')} = ${say(output.health, '%')}`,
    ]
  },
  plot(_input, output) {
    return {
      title: words`Cells at rest`,
      x: {
        label: words`Cell, in the order of the list`,
        of: 'number',
        units: ['', ''],
        fromZero: true,
      },
      y: { label: words`Off the mean`, of: 'voltage', units: ['mV', 'mV'] },
      series: [
        {
          name: words`cells`,
          line: 'none',
          points: output.list.map(({ off }, i) => [i + 1, off] as const),
        },
      ],
      marks: [
        { x: 0, y: restWatch / 2, label: '+5 mV', kind: 'limit-y' },
        { x: 0, y: -restWatch / 2, label: '−5 mV', kind: 'limit-y' },
      ],
      caption: words`A cell that lies alone is the one to look at.`,
    }
  },
  examples: [
    {
      name: 'four cells nearly full, in order',
      from: 'hand: 3.412 − 3.405 V = 7 mV; 3.56 − 3.53 V = 30 mV; 3.24 − 3.20 V = 40 mV; 268 / 280 = 95.7 %',
      inputs: {
        cells: [
          {
            name: '1',
            rest: '3.410 V',
            charge: '3.55 V',
            discharge: '3.23 V',
            capacity: '275 Ah',
          },
          {
            name: '2',
            rest: '3.405 V',
            charge: '3.53 V',
            discharge: '3.20 V',
            capacity: '268 Ah',
          },
          {
            name: '3',
            rest: '3.412 V',
            charge: '3.56 V',
            discharge: '3.24 V',
            capacity: '279 Ah',
          },
          {
            name: '4',
            rest: '3.409 V',
            charge: '3.54 V',
            discharge: '3.22 V',
            capacity: '277 Ah',
          },
        ],
        rated: '280 Ah',
        lowest: '2.5 V',
        highest: '3.65 V',
        chemistry: 'lfp',
      },
      outputs: {
        restSpread: '7 mV',
        chargeSpread: '30 mV',
        dischargeSpread: '40 mV',
        weakest: '2',
        fullest: '3',
        packCapacity: '268 Ah',
        health: '95.7 %',
      },
      findings: { limits: 'pass', rest: 'pass', flat: 'pass', load: 'pass', capacity: 'pass' },
    },
    {
      name: 'an old pair, one weak',
      from: 'hand: 3.95 − 3.93 V = 20 mV; 4.15 − 4.08 V = 70 mV; 3.62 − 3.54 V = 80 mV; 37 / 50 = 74 %',
      inputs: {
        cells: [
          { name: 'a', rest: '3.95 V', charge: '4.08 V', discharge: '3.62 V', capacity: '43 Ah' },
          { name: 'b', rest: '3.93 V', charge: '4.15 V', discharge: '3.54 V', capacity: '37 Ah' },
        ],
        rated: '50 Ah',
        lowest: '3.0 V',
        highest: '4.2 V',
        chemistry: 'other',
      },
      outputs: {
        restSpread: '20 mV',
        chargeSpread: '70 mV',
        dischargeSpread: '80 mV',
        weakest: 'b',
        fullest: 'b',
        health: '74 %',
      },
      findings: { limits: 'pass', rest: 'watch', load: 'watch', capacity: 'watch' },
    },
    {
      name: 'threshold case: one cell run flat',
      from: 'threshold case',
      inputs: {
        cells: [
          { name: '1', rest: '3.30 V', discharge: '3.2 V', capacity: '100 Ah' },
          { name: '2', rest: '3.29 V', discharge: '2.3 V', capacity: '60 Ah' },
          { name: '3', rest: '3.33 V', discharge: '3.2 V', capacity: '99 Ah' },
        ],
        rated: '100 Ah',
        lowest: '2.5 V',
        highest: '3.65 V',
        chemistry: 'lfp',
      },
      outputs: { weakest: '2' },
      findings: { limits: 'stop', rest: 'stop', flat: 'watch', load: 'stop', capacity: 'stop' },
    },
    {
      name: 'threshold case: only rest voltages',
      from: 'threshold case',
      inputs: {
        cells: [
          { name: '1', rest: '3.40 V' },
          { name: '2', rest: '3.40 V' },
        ],
        lowest: '2.5 V',
        highest: '3.65 V',
        chemistry: 'lfp',
      },
      outputs: { health: 'cannot tell' },
      findings: { load: 'unknown', capacity: 'unknown' },
    },
  ],
})
