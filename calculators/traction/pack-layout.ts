/**
 * A pack of cells in series and parallel, and the voltage windows of the parts that hang on it.
 *
 * In: the cell's sheet, how many, the parts with their lowest and highest voltage. Out: the pack's
 * voltages, energy and mass, what is in hand for each part, how many cells would fit. The highest
 * voltage counts, fully charged and regenerating on a hill, not the one the pack is named by.
 */
import { cellsInParallel, cellsInSeries } from '../cell-fields.ts'
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { exactly } from '../exactly.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** Of a part's highest voltage; common practice. */
const headroom = 0.97
/** V DC; above is high voltage in FMVSS 305 and UN R100. */
const touchVoltage = 60
const hair = 1e-9

const whole = (value: number) => Math.abs(value - Math.round(value)) < 1e-6

export const packLayout = defineCalculator({
  id: 'pack-layout',
  title: words`Pack layout and voltage window`,
  phase: 'traction',
  purpose: words`Works out voltages, energy and mass of a pack and holds its window against every part on the traction bus.`,
  inputs: {
    series: { ...cellsInSeries, help: words`They add their voltages.` },
    parallel: { ...cellsInParallel, help: words`They add their ampere-hours.` },
    cellMinimum: {
      type: 'number',
      label: words`Cell voltage, lowest used`,
      symbol: 'u_min',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.5, 4],
      usual: [1.5, 3.3],
      help: words`Where you stop discharging; not below the sheet’s limit.`,
      choice: true,
    },
    cellNominal: {
      type: 'number',
      label: words`Cell voltage, nominal`,
      symbol: 'u_nom',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 4.5],
      usual: [2, 3.8],
      help: words`From its sheet: about 3.2 V for iron phosphate, 3.65 V for nickel manganese cobalt.`,
    },
    cellMaximum: {
      type: 'number',
      label: words`Cell voltage, full`,
      symbol: 'u_max',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 5],
      usual: [2.4, 4.35],
      help: words`Where the charger stops, from its sheet.`,
    },
    capacity: {
      type: 'number',
      label: words`Cell capacity`,
      symbol: 'q',
      of: 'charge',
      units: ['Ah', 'Ah'],
      hard: [0.5, 2000],
      usual: [2, 400],
      help: words`Rated, new.`,
    },
    cellMass: {
      type: 'number',
      label: words`Cell mass`,
      symbol: 'm',
      of: 'mass',
      units: ['kg', 'lb'],
      hard: [0.01, 100],
      usual: [0.04, 20],
      help: words`One cell, without links and box.`,
    },
    usable: {
      type: 'number',
      label: words`Usable share`,
      symbol: 'k',
      of: 'fraction',
      units: ['%', '%'],
      hard: [30, 100],
      usual: [70, 95],
      help: words`What you plan to draw.`,
      choice: true,
      assume: { value: 80, because: words`common practice` },
    },
    wanted: {
      type: 'number',
      label: words`Usable energy wanted`,
      symbol: 'E_want',
      of: 'energy',
      units: ['kWh', 'kWh'],
      hard: [0.1, 1000],
      usual: [2, 150],
      help: words`From range and consumption; tells how many cells in parallel it takes.`,
      optional: true,
    },
    parts: {
      type: 'list',
      label: words`Parts on the traction bus`,
      row: words`part`,
      help: words`Controller, charger, DC-DC converter, heater, contactors.`,
      rows: [1, 30],
      fields: {
        name: { type: 'text', label: words`Part`, help: words`What it is.` },
        least: {
          type: 'number',
          label: words`Works from`,
          symbol: 'U_low',
          of: 'voltage',
          units: ['V', 'V'],
          hard: [0, 1500],
          usual: [10, 600],
          help: words`Where it cuts out; leave it out if it has no lower limit.`,
          optional: true,
        },
        most: {
          type: 'number',
          label: words`Highest voltage`,
          symbol: 'U_high',
          of: 'voltage',
          units: ['V', 'V'],
          hard: [1, 2000],
          usual: [24, 1000],
          help: words`The most it may ever see, from its sheet.`,
        },
      },
    },
  },
  outputs: {
    lowest: {
      type: 'number',
      label: words`Lowest voltage`,
      symbol: 'U_min',
      of: 'voltage',
      units: ['V', 'V'],
    },
    nominal: {
      type: 'number',
      label: words`Nominal voltage`,
      symbol: 'U_nom',
      of: 'voltage',
      units: ['V', 'V'],
    },
    highest: {
      type: 'number',
      label: words`Highest voltage`,
      symbol: 'U_max',
      of: 'voltage',
      units: ['V', 'V'],
    },
    packCapacity: {
      type: 'number',
      label: words`Capacity`,
      symbol: 'Q',
      of: 'charge',
      units: ['Ah', 'Ah'],
    },
    energy: {
      type: 'number',
      label: words`Energy`,
      symbol: 'E',
      of: 'energy',
      units: ['kWh', 'kWh'],
    },
    usableEnergy: {
      type: 'number',
      label: words`Usable energy`,
      symbol: 'E_use',
      of: 'energy',
      units: ['kWh', 'kWh'],
    },
    cells: {
      type: 'number',
      label: words`Cells`,
      symbol: 'N',
      of: 'number',
      units: ['', ''],
      exact: true,
    },
    mass: {
      type: 'number',
      label: words`Mass of cells`,
      symbol: 'M',
      of: 'mass',
      units: ['kg', 'lb'],
    },
    density: {
      type: 'number',
      label: words`Energy by mass`,
      symbol: 'E/M',
      of: 'specificEnergy',
      units: ['Wh/kg', 'Wh/lb'],
    },
    share: {
      type: 'number',
      label: words`Highest voltage of the tightest part`,
      symbol: 'U_max/U_high',
      of: 'fraction',
      units: ['%', '%'],
    },
    inHand: {
      type: 'number',
      label: words`In hand there`,
      symbol: 'ΔU',
      of: 'voltage',
      units: ['V', 'V'],
    },
    tightest: { type: 'text', label: words`Tightest part` },
    mostSeries: {
      type: 'number',
      label: words`Most cells in series for these parts`,
      symbol: 'N_s,max',
      of: 'number',
      units: ['', ''],
      exact: true,
    },
    parallelNeeded: {
      type: 'number',
      label: words`Cells in parallel for the energy wanted`,
      symbol: 'N_p,want',
      of: 'number',
      units: ['', ''],
      exact: true,
    },
    windows: {
      type: 'table',
      label: words`Parts`,
      columns: {
        name: { type: 'text', label: words`Part` },
        used: {
          type: 'number',
          label: words`Highest, used`,
          symbol: 'U_max/U_high',
          of: 'fraction',
          units: ['%', '%'],
        },
        above: {
          type: 'number',
          label: words`In hand above`,
          symbol: 'ΔU_high',
          of: 'voltage',
          units: ['V', 'V'],
        },
        below: {
          type: 'number',
          label: words`In hand below`,
          symbol: 'ΔU_low',
          of: 'voltage',
          units: ['V', 'V'],
        },
      },
    },
  },
  formula: [
    'U = N_s\\,u \\quad Q = N_p\\,q \\quad E = U_\\text{nom}\\,Q',
    'N_s \\le 0.97\\,U_\\text{high}/u_\\text{max}',
  ],
  validity: [
    words`The lowest voltage is at rest: under load it is lower by the sag.`,
    words`Energy is nominal voltage times rated capacity; cold, age and high current take from it.`,
    words`Mass is that of the cells alone; box, links and management come on top.`,
  ],
  checks: {
    cell: { title: words`Cell voltages and counts`, basis: 'the cell’s own sheet' },
    highest: { title: words`Highest voltage`, basis: 'common practice' },
    lowest: { title: words`Lowest voltage`, basis: 'common practice' },
    line: {
      title: 'High-voltage line',
      basis: 'published: FMVSS 305, S4, definition of a high voltage source',
    },
  },
  hazards: ['cell-fire', 'arc-and-short'],
  sources: [
    { title: 'FMVSS 305, definition of a high voltage source', at: '60 V DC', trust: 'read' },
    { title: 'Textbook cells in series and parallel', trust: 'recalled' },
  ],
  compute(input) {
    const highest = input.series * input.cellMaximum
    const lowest = input.series * input.cellMinimum
    const nominal = input.series * input.cellNominal
    const packCapacity = input.parallel * input.capacity
    const energy = nominal * packCapacity
    const mass = input.series * input.parallel * input.cellMass
    const tightest = input.parts.reduce<(typeof input.parts)[number] | undefined>(
      (tight, part) => (tight === undefined || part.most < tight.most ? part : tight),
      undefined,
    )
    return {
      lowest,
      nominal,
      highest,
      packCapacity,
      energy,
      usableEnergy: energy * input.usable,
      cells: input.series * input.parallel,
      mass,
      density: energy / mass,
      share: tightest === undefined ? undefined : highest / tightest.most,
      inHand: tightest === undefined ? undefined : tightest.most - highest,
      tightest: tightest?.name,
      mostSeries:
        tightest === undefined
          ? undefined
          : Math.floor(((headroom * tightest.most) / input.cellMaximum) * (1 + hair)),
      parallelNeeded:
        input.wanted === undefined
          ? undefined
          : Math.ceil((input.wanted / (input.usable * nominal * input.capacity)) * (1 - hair)),
      windows: input.parts.map(({ name, least, most }) => ({
        name,
        used: highest / most,
        above: most - highest,
        below: least === undefined ? undefined : lowest - least,
      })),
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const { highest = Infinity, nominal = Infinity } = output
    const volts = (value: number | undefined) => say(value, 'V', 4)
    const cell = (): Said => {
      if (!whole(input.series) || !whole(input.parallel))
        return { level: 'stop', text: words`Cells come whole: correct the counts.` }
      return input.cellMinimum < input.cellNominal && input.cellNominal < input.cellMaximum
        ? { level: 'pass', text: words`Lowest, nominal and full voltage of the cell are in order.` }
        : {
            level: 'stop',
            text: words`Lowest, nominal and full voltage of the cell are not in rising order: read its sheet again.`,
          }
    }
    const windows = input.parts
      .map(({ name, least, most }) =>
        wrongWay(
          say,
          'V',
          [words`voltage “${name}” works from`, least],
          [words`highest voltage it may see`, most],
        ),
      )
      .find((said) => said !== undefined)
    const top = (): Said => {
      const { share, tightest } = output
      if (share === undefined || tightest === undefined)
        return { level: 'unknown', text: words`No part is listed.` }
      const fact = words`Full, the pack is at ${volts(output.highest)}, ${say(share, '%')} of what “${tightest}” may see`
      const instead = words`at most ${exactly(say, output.mostSeries)} cells in series keep it below 97 %`
      if (share <= headroom * (1 + hair)) return { level: 'pass', text: `${fact}.` }
      return share <= 1 + hair
        ? { level: 'watch', text: words`${fact}, regenerating on a hill more: ${instead}.` }
        : { level: 'stop', text: words`${fact}: it fails or trips. Here ${instead}.` }
    }
    const bottom = (): Said => {
      const short = output.windows.filter(({ below }) => below !== undefined && below < -hair)
      const worst = short.toSorted((a, b) => (a.below ?? 0) - (b.below ?? 0))[0]
      if (worst !== undefined)
        return {
          level: 'watch',
          text: words`“${worst.name ?? ''}” cuts out ${say(-(worst.below ?? 0), 'V')} above the ${volts(output.lowest)} of an empty pack: the last of the energy cannot be used.`,
        }
      return output.windows.every(({ below }) => below === undefined)
        ? { level: 'unknown', text: words`No part has its lower limit given.` }
        : {
            level: 'pass',
            text: words`Every part with a lower limit works down to ${volts(output.lowest)}.`,
          }
    }
    const line = (): Said =>
      highest <= touchVoltage
        ? {
            level: 'pass',
            text: words`At ${volts(output.highest)} the pack stays within the 60 V line; it still burns and arcs.`,
          }
        : nominal <= touchVoltage
          ? {
              level: 'watch',
              text: words`Named ${volts(output.nominal)}, the pack is high voltage when charged: ${volts(output.highest)}. Build it as such.`,
            }
          : {
              level: 'pass',
              text: words`At ${volts(output.highest)} the pack is high voltage, and all rules for that apply.`,
            }
    return [
      { check: 'cell', ...cell(), threshold: words`whole cells, lowest < nominal < full (stop)` },
      {
        check: 'highest',
        ...heeding(top(), windows),
        threshold: words`at most 97 % (watch), 100 % (stop) of each part`,
      },
      {
        check: 'lowest',
        ...heeding(bottom(), windows),
        threshold: words`the empty pack at or above each part’s lower limit (watch)`,
      },
      {
        check: 'line',
        ...line(),
        threshold: words`not hidden by the nominal voltage: 60 V (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const series = exactly(say, input.series)
    return [
      `U_max = N_s u_max = ${series} × ${say(input.cellMaximum, 'V')} = ${say(output.highest, 'V', 4)}`,
      `U_nom = ${series} × ${say(input.cellNominal, 'V')} = ${say(output.nominal, 'V', 4)}; U_min = ${series} × ${say(input.cellMinimum, 'V')} = ${say(output.lowest, 'V', 4)}`,
      words`E = U_nom N_p q = ${say(output.nominal, 'V', 4)} × ${exactly(say, input.parallel)} × ${say(input.capacity, 'Ah')} = ${say(output.energy, 'kWh', 4)}; usable ${say(output.usableEnergy, 'kWh', 4)}`,
      ...(output.share === undefined
        ? []
        : [
            `U_max / U_high = ${say(output.highest, 'V', 4)} / ${say((output.highest ?? 0) / output.share, 'V', 4)} = ${say(output.share, '%')}`,
          ]),
    ]
  },
  moreHazards: (_input, output) => [
    (output.highest ?? Infinity) > touchVoltage ? 'high-voltage' : 'low-voltage-burns',
  ],
  examples: [
    {
      name: '96 in series, 3 in parallel, 50 Ah',
      from: 'hand: 96 × 3.65 V = 350.4 V; 3 × 50 Ah = 150 Ah; 350.4 V × 150 Ah = 52.56 kWh; 288 cells',
      inputs: {
        series: '96',
        parallel: '3',
        cellMinimum: '3.0 V',
        cellNominal: '3.65 V',
        cellMaximum: '4.2 V',
        capacity: '50 Ah',
        cellMass: '0.9 kg',
        parts: [{ name: 'controller', least: '250 V', most: '450 V' }],
      },
      outputs: {
        nominal: '350.4 V',
        packCapacity: '150 Ah',
        energy: '52.56 kWh',
        cells: '288',
        mass: '259.2 kg',
        highest: '403.2 V',
        mostSeries: '103',
      },
      findings: { cell: 'pass', highest: 'pass', lowest: 'pass', line: 'pass' },
    },
    {
      name: 'J. Bird 4.4: ten cells of 1.5 V',
      from: 'J. Bird, Electrical Circuit Theory and Technology, example 4.4: ten cells of 1.5 V in series give 15 V',
      inputs: {
        series: '10',
        cellMinimum: '1 V',
        cellNominal: '1.5 V',
        cellMaximum: '1.6 V',
        capacity: '1 Ah',
        cellMass: '0.1 kg',
        parts: [{ name: 'lamp', most: '16.2 V' }],
      },
      outputs: { nominal: '15 V' },
      findings: { highest: 'watch', lowest: 'unknown', line: 'pass' },
    },
    {
      name: 'a pickup: 36 iron phosphate cells of 280 Ah',
      from: 'hand: 36 × 3.65 V = 131.4 V, × 3.2 V = 115.2 V, × 2.8 V = 100.8 V; 115.2 V × 280 Ah = 32.256 kWh, 85 % of it 27.42 kWh; 36 × 5.4 kg = 194.4 kg; 131.4 / 140 = 93.9 %; 0.97 × 140 / 3.65 = 37.2',
      inputs: {
        series: '36',
        cellMinimum: '2.8 V',
        cellNominal: '3.2 V',
        cellMaximum: '3.65 V',
        capacity: '280 Ah',
        cellMass: '5.4 kg',
        usable: '85 %',
        wanted: '30 kWh',
        parts: [
          { name: 'controller', least: '62 V', most: '140 V' },
          { name: 'DC-DC converter', least: '90 V', most: '150 V' },
        ],
      },
      outputs: {
        lowest: '100.8 V',
        highest: '131.4 V',
        nominal: '115.2 V',
        energy: '32.256 kWh',
        usableEnergy: '27.42 kWh',
        mass: '194.4 kg',
        density: '165.9 Wh/kg',
        share: '93.9 %',
        inHand: '8.6 V',
        tightest: 'controller',
        mostSeries: '37',
        parallelNeeded: '2',
      },
      findings: { cell: 'pass', highest: 'pass', lowest: 'pass', line: 'pass' },
    },
    {
      name: 'threshold case: a “57.6 V” pack on small parts',
      from: 'threshold case',
      inputs: {
        series: '18',
        cellMinimum: '2.5 V',
        cellNominal: '3.2 V',
        cellMaximum: '3.65 V',
        capacity: '100 Ah',
        cellMass: '2 kg',
        parts: [{ name: 'controller', least: '50 V', most: '63 V' }],
      },
      outputs: {},
      findings: { highest: 'stop', lowest: 'watch', line: 'watch' },
    },
    {
      name: 'threshold case: half a cell, voltages mixed up',
      from: 'threshold case',
      inputs: {
        series: '7.5',
        cellMinimum: '3.3 V',
        cellNominal: '3.2 V',
        cellMaximum: '3.65 V',
        capacity: '100 Ah',
        cellMass: '2 kg',
        parts: [{ name: 'controller', least: '20 V', most: '63 V' }],
      },
      outputs: {},
      findings: { cell: 'stop' },
    },
  ],
})
