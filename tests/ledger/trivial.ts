/**
 * Calculators whose arithmetic is done in the head, so that only the ledger is under test.
 *
 * `lamp`: power = volts × amps, at most 60 W (watch from 50 W), and never above 100 V. `cut`: the
 * lengths of a list of pieces, added. `deep`: one with every kind of result.
 */
import { defineCalculator, type Calculator } from '../../calculators/define.ts'

const lamp = defineCalculator({
  id: 'lamp',
  title: 'Power of a lamp',
  phase: 'auxiliary',
  purpose: 'Volts times amperes.',
  inputs: {
    volts: {
      type: 'number',
      label: 'Voltage',
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 500],
      usual: [5, 30],
      help: 'At the lamp.',
      assume: { value: 12, because: 'a 12 V system at rest' },
    },
    amps: {
      type: 'number',
      label: 'Current',
      symbol: 'I',
      of: 'current',
      units: ['A', 'A'],
      hard: [0, 100],
      usual: [0.1, 50],
      help: 'What the lamp draws.',
    },
    wire: {
      type: 'number',
      label: 'Wire',
      symbol: 'A',
      of: 'wireArea',
      units: ['mm²', 'AWG'],
      hard: [0.2, 50],
      usual: [0.5, 16],
      help: 'Behind the fuse.',
      choice: true,
      optional: true,
    },
    place: {
      type: 'choice',
      label: 'Place',
      help: 'Where it is fitted.',
      options: { front: 'at the front', rear: 'at the rear' },
      optional: true,
    },
    casing: {
      type: 'choice',
      label: 'Casing',
      help: 'What it is made of.',
      options: { plastic: 'of plastic', metal: 'of metal' },
      assume: { value: 'metal', because: 'most are' },
    },
    maker: { type: 'text', label: 'Mark', help: 'What is stamped on it.', optional: true },
  },
  outputs: {
    power: { type: 'number', label: 'Power', symbol: 'P', of: 'power', units: ['W', 'W'] },
    fuse: {
      type: 'number',
      label: 'Fuse',
      symbol: 'I_f',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    remark: { type: 'text', label: 'Remark' },
  },
  formula: ['P = U I'],
  validity: ['Direct current.'],
  checks: {
    power: { title: 'Power', basis: 'common practice' },
    volts: { title: 'Voltage', basis: 'common practice', never: true },
  },
  hazards: ['wiring-fire'],
  sources: [{ title: 'Ohm and Joule', trust: 'recalled' }],
  compute({ volts, amps }) {
    return {
      power: volts * amps,
      fuse: [5, 10, 20].find((size) => size >= amps),
      remark: volts > 100 ? 'high' : 'low',
    }
  },
  findings({ volts }, { power = 0 }, say) {
    const level = power > 60 ? 'stop' : power > 50 ? 'watch' : 'pass'
    return [
      {
        check: 'power',
        level,
        text: `It takes ${say(power, 'W')}.`,
        threshold: 'above 50 W (watch), above 60 W (stop)',
      },
      {
        check: 'volts',
        level: volts > 100 ? 'stop' : 'pass',
        text: `It stands at ${say(volts, 'V')}.`,
        threshold: 'above 100 V (stop)',
      },
    ]
  },
  working: ({ volts, amps }, { power }, say) => [
    `P = U I = ${say(volts, 'V')} × ${say(amps, 'A')} = ${say(power, 'W')}`,
  ],
  moreHazards: ({ volts, casing }) =>
    volts > (casing === 'metal' ? 60 : 100) ? ['high-voltage'] : [],
  examples: [],
})

const cut = defineCalculator({
  id: 'cut',
  title: 'Lengths to cut',
  phase: 'workshop',
  purpose: 'Adds the pieces.',
  inputs: {
    pieces: {
      type: 'list',
      label: 'Pieces',
      row: 'piece',
      help: 'Each length of hose.',
      rows: [1, 20],
      fields: {
        name: { type: 'text', label: 'Name', help: 'What you call it.', optional: true },
        length: {
          type: 'number',
          label: 'Length',
          symbol: 'L',
          of: 'length',
          units: ['m', 'ft'],
          hard: [0.01, 20],
          usual: [0.1, 6],
          help: 'Along the piece.',
          choice: true,
        },
      },
    },
  },
  outputs: {
    total: { type: 'number', label: 'Total', symbol: 'ΣL', of: 'length', units: ['m', 'ft'] },
    each: {
      type: 'table',
      label: 'Each piece',
      columns: {
        name: { type: 'text', label: 'Name' },
        share: { type: 'number', label: 'Share', symbol: 's', of: 'fraction', units: ['%', '%'] },
      },
    },
  },
  formula: ['\\sum L'],
  validity: ['Cuts are free.'],
  checks: { roll: { title: 'One roll', basis: 'common practice' } },
  hazards: [],
  sources: [{ title: 'Adding', trust: 'recalled' }],
  compute({ pieces }) {
    const total = pieces.reduce((sum, { length }) => sum + length, 0)
    return { total, each: pieces.map(({ name, length }) => ({ name, share: length / total })) }
  },
  findings: (_, { total = 0 }, say) => [
    {
      check: 'roll',
      level: total > 10 ? 'watch' : 'pass',
      text: `${say(total, 'm')} in all.`,
      threshold: 'at most 10 m (watch)',
    },
  ],
  working: (_, { total }, say) => [`ΣL = ${say(total, 'm')}`],
  examples: [],
})

const cool = defineCalculator({
  id: 'cool',
  title: 'Heat carried away',
  phase: 'cooling',
  purpose: 'Conductance times difference.',
  inputs: {
    conductance: {
      type: 'number',
      label: 'Conductance',
      symbol: 'K',
      of: 'thermalConductance',
      units: ['W/K', 'BTU/(h·Δ°F)'],
      hard: [0.1, 1000],
      usual: [1, 100],
      help: 'Of the radiator.',
    },
    inlet: {
      type: 'number',
      label: 'Inlet',
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 120],
      usual: [0, 100],
      help: 'Coolant in.',
    },
    rise: {
      type: 'number',
      label: 'Rise',
      symbol: 'ΔT',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
      hard: [0, 100],
      usual: [1, 30],
      help: 'Above the air.',
    },
    cap: {
      type: 'number',
      label: 'Cap pressure',
      symbol: 'p',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
      hard: [0, 400],
      usual: [0, 200],
      help: 'Printed on the cap.',
      optional: true,
    },
  },
  outputs: {
    heat: { type: 'number', label: 'Heat', symbol: 'Q', of: 'power', units: ['W', 'W'] },
    outlet: {
      type: 'number',
      label: 'Outlet',
      symbol: 'T_o',
      of: 'temperature',
      units: ['°C', '°F'],
    },
  },
  formula: ['Q = K \\Delta T'],
  validity: ['Steady.'],
  checks: { heat: { title: 'Heat', basis: 'model' } },
  hazards: ['hot-coolant'],
  sources: [{ title: 'Newton’s law of cooling', trust: 'recalled' }],
  compute: ({ conductance, inlet, rise }) => ({ heat: conductance * rise, outlet: inlet - rise }),
  findings: (_, { heat = 0 }, say) => [
    {
      check: 'heat',
      level: heat < 1000 ? 'pass' : 'watch',
      text: `It carries ${say(heat, 'W')}.`,
      threshold: 'at least 1 kW',
    },
  ],
  working: ({ conductance, rise }, { heat }, say) => [
    `Q = K ΔT = ${say(conductance, 'W/K')} × ${say(rise, 'K')} = ${say(heat, 'W')}`,
  ],
  examples: [],
})

export const trivial: Readonly<Record<string, () => Promise<Calculator>>> = {
  cool: () => Promise.resolve(cool),
  cut: () => Promise.resolve(cut),
  lamp: () => Promise.resolve(lamp),
}
