/**
 * Bolted joints of the pack, measured by the millivolts across them and by touch of a thermometer.
 *
 * In: for each joint the drop, the current at that moment, its temperature. Out: milliohms, each held
 * against the median of all, heat at the peak. All joints of the list must be alike: a fuse or a shunt
 * among them spoils the median. Heat goes with the square: a joint that is warm at 100 A burns at 400.
 */
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Ω; common practice. */
const ohmWatch = 1e-4
const ohmStop = 3e-4
/** Over the median of like joints; common practice, ANSI/NETA looks into 1.5 times the lowest. */
const spreadWatch = 1.3
const spreadStop = 2
/** K over the median of like joints; 5 K common practice, 15 K ANSI/NETA MTS table 100.18. */
const hotWatch = 5
const hotStop = 15
/** V across the middle joint, below which a common meter cannot tell; common practice. */
const readable = 1e-3
/** Joints that make a median worth something. */
const enough = 3
const hair = 1 + 1e-9

function median(values: readonly number[]): number | undefined {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length / 2
  const [low, high] = [sorted[Math.ceil(middle) - 1], sorted[Math.floor(middle)]]
  return low === undefined || high === undefined ? undefined : (low + high) / 2
}

export const jointCheck = defineCalculator({
  id: 'joint-check',
  title: words`Joint resistance and hot spots`,
  phase: 'traction',
  purpose: words`Turns millivolts across bolted joints into milliohms, finds the one that is unlike the rest, and says how hot it gets at the peak.`,
  inputs: {
    joints: {
      type: 'list',
      label: words`Joints`,
      row: words`joint`,
      help: words`Alike: the same lug, bolt and terminal.`,
      rows: [1, 200],
      fields: {
        name: { type: 'text', label: words`Joint`, help: words`Between which cells.` },
        drop: {
          type: 'number',
          label: words`Drop`,
          symbol: 'ΔU',
          of: 'voltage',
          units: ['mV', 'mV'],
          hard: [0, 500],
          usual: [0.5, 100],
          help: words`Terminal to lug, not bolt to bolt, with the current flowing.`,
        },
        current: {
          type: 'number',
          label: words`At`,
          symbol: 'I',
          of: 'current',
          units: ['A', 'A'],
          hard: [1, 2000],
          usual: [10, 600],
          help: words`Through this joint at that moment.`,
        },
        temperature: {
          type: 'number',
          label: words`Temperature`,
          symbol: 'T',
          of: 'temperature',
          units: ['°C', '°F'],
          hard: [-40, 200],
          usual: [0, 90],
          help: words`After ten minutes of that current.`,
          optional: true,
        },
      },
    },
    air: {
      type: 'number',
      label: words`Air in the box`,
      symbol: 'T_air',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 80],
      usual: [0, 45],
      help: words`For the rise at the peak.`,
      optional: true,
    },
    peak: {
      type: 'number',
      label: words`Peak current`,
      symbol: 'I_peak',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 10000],
      usual: [50, 1500],
      help: words`The most the drive takes.`,
    },
  },
  outputs: {
    worst: { type: 'text', label: words`Worst joint` },
    highest: {
      type: 'number',
      label: words`Its resistance`,
      symbol: 'R_max',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    middle: {
      type: 'number',
      label: words`Median of all`,
      symbol: 'R_med',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    ratio: {
      type: 'number',
      label: words`Worst over median`,
      symbol: 'R_max/R_med',
      of: 'number',
      units: ['', ''],
    },
    heat: {
      type: 'number',
      label: words`Its heat at the peak`,
      symbol: 'Q_peak',
      of: 'power',
      units: ['W', 'W'],
    },
    hottest: { type: 'text', label: words`Hottest joint` },
    hotter: {
      type: 'number',
      label: words`Over the median of all`,
      symbol: 'ΔT_like',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    rise: {
      type: 'number',
      label: words`Its rise over the air, held at the peak`,
      symbol: 'ΔT_peak',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    total: {
      type: 'number',
      label: words`All joints together`,
      symbol: 'ΣR',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    list: {
      type: 'table',
      label: words`Joints`,
      columns: {
        name: { type: 'text', label: words`Joint` },
        resistance: {
          type: 'number',
          label: words`Resistance`,
          symbol: 'R',
          of: 'resistance',
          units: ['mΩ', 'mΩ'],
        },
        over: {
          type: 'number',
          label: words`Over median`,
          symbol: 'R/R_med',
          of: 'number',
          units: ['', ''],
        },
        heatAtPeak: {
          type: 'number',
          label: words`Heat at the peak`,
          symbol: 'Q',
          of: 'power',
          units: ['W', 'W'],
        },
        hotter: {
          type: 'number',
          label: words`Over median temperature`,
          symbol: 'ΔT',
          of: 'temperatureDifference',
          units: ['K', 'Δ°F'],
        },
      },
    },
  },
  formula: [
    'R = \\Delta U/I \\quad Q_\\text{peak} = I_\\text{peak}^2\\,R',
    '\\Delta T_\\text{peak} = (T - T_\\text{air})\\,(I_\\text{peak}/I)^2',
  ],
  validity: [
    words`The rise at the peak is that of a peak held until nothing warms further: a short one stays below.`,
    words`The limits are for a bolted joint of a traction cell; small screw terminals have their own.`,
    words`A shiny lug reads cold under an infrared thermometer: put tape or matt paint on it.`,
  ],
  checks: {
    resistance: { title: words`Resistance`, basis: 'common practice' },
    spread: { title: words`Unlike the rest`, basis: 'common practice' },
    hot: {
      title: words`Hotter than the rest`,
      basis: 'published: ANSI/NETA MTS, table 100.18, for 15 K; common practice for 5 K',
    },
    readable: { title: words`Enough current to read`, basis: 'common practice' },
  },
  hazards: ['arc-and-short', 'high-voltage', 'wiring-fire'],
  sources: [
    {
      title: 'ANSI/NETA MTS, thermographic survey, suggested actions',
      at: 'table 100.18: between like parts 4 to 15 K repair as time permits, above 15 K at once',
      trust: 'read',
    },
    {
      title:
        'ANSI/NETA testing specifications, bolted connections, as quoted in a tester maker’s note',
      at: 'look into values more than 50 % above the lowest of like connections',
      trust: 'read',
    },
  ],
  compute(input) {
    const ohms = input.joints.map(({ drop, current }) => drop / current)
    const middle = median(ohms)
    const temperatures = input.joints.flatMap(({ temperature }) => temperature ?? [])
    const usual = temperatures.length < enough ? undefined : median(temperatures)
    const highest = Math.max(...ohms)
    const worst = input.joints[ohms.indexOf(highest)]
    const top = Math.max(...temperatures)
    const hottest = input.joints.find(({ temperature }) => temperature === top)
    const ratioOf = (ohm: number) =>
      middle === undefined || middle === 0 || ohms.length < enough ? undefined : ohm / middle
    return {
      worst: worst?.name,
      highest,
      middle,
      ratio: ratioOf(highest),
      heat: input.peak ** 2 * highest,
      hottest: hottest?.name,
      hotter: hottest === undefined || usual === undefined ? undefined : top - usual,
      rise:
        hottest === undefined || input.air === undefined
          ? undefined
          : Math.max(0, top - input.air) * Math.max(1, input.peak / hottest.current) ** 2,
      total: ohms.reduce((sum, ohm) => sum + ohm, 0),
      list: input.joints.map(({ name, temperature }, i) => {
        const resistance = ohms[i] ?? 0
        return {
          name,
          resistance,
          over: ratioOf(resistance),
          heatAtPeak: input.peak ** 2 * resistance,
          hotter:
            temperature === undefined || usual === undefined ? undefined : temperature - usual,
        }
      }),
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const { highest = Infinity } = output
    const cure = words`take it apart, clean, put it together to the sheet’s torque, and measure again`
    const name = `“${output.worst ?? ''}”`
    const resistance = (): Said => {
      const fact = words`${name} has ${say(highest, 'mΩ')} and makes ${say(output.heat, 'W')} at the peak`
      if (highest <= ohmWatch * hair) return { level: 'pass', text: `${fact}.` }
      return highest <= ohmStop * hair
        ? { level: 'watch', text: `${fact}: ${cure}.` }
        : { level: 'stop', text: words`${fact}: do not drive; ${cure}.` }
    }
    const spread = (): Said => {
      if (output.ratio === undefined)
        return {
          level: 'unknown',
          text: words`There is no median to hold the joints against: measure three or more alike, with more current.`,
        }
      const fact = words`${name} has ${say(output.ratio, '', 3)} times the median of ${say(output.middle, 'mΩ')}`
      if (output.ratio <= spreadWatch * hair) return { level: 'pass', text: `${fact}.` }
      return output.ratio <= spreadStop * hair
        ? { level: 'watch', text: `${fact}: ${cure}.` }
        : { level: 'stop', text: words`${fact}: something is wrong with it; ${cure}.` }
    }
    const hot = (): Said => {
      if (output.hotter === undefined)
        return {
          level: 'unknown',
          text: words`Fewer than three joints have a temperature: take them after ten minutes of current.`,
        }
      const hottest = `“${output.hottest ?? ''}”`
      const fact =
        output.rise === undefined
          ? words`${hottest} is ${say(output.hotter, 'K')} over the median of all`
          : words`${hottest} is ${say(output.hotter, 'K')} over the median of all; held at the peak it would be ${say(output.rise, 'K')} over the air`
      if (output.hotter <= hotWatch * hair) return { level: 'pass', text: `${fact}.` }
      return output.hotter <= hotStop * hair
        ? { level: 'watch', text: `${fact}: ${cure}.` }
        : { level: 'stop', text: words`${fact}: do not drive; ${cure}.` }
    }
    const enoughCurrent = (): Said => {
      const drop = median(input.joints.map((joint) => joint.drop)) ?? NaN
      const fact = words`The middle joint dropped ${say(drop, 'mV')}`
      return drop >= readable / hair
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'watch',
            text: words`${fact}: too little for a common meter. Measure with more current.`,
          }
    }
    return [
      {
        check: 'resistance',
        ...resistance(),
        threshold: words`at most 0.1 mΩ (watch), 0.3 mΩ (stop)`,
      },
      {
        check: 'spread',
        ...spread(),
        threshold: words`at most 1.3 times the median (watch), twice (stop)`,
      },
      {
        check: 'hot',
        ...hot(),
        threshold: words`at most ${say(hotWatch, 'K', 1)} over the median (watch), ${say(hotStop, 'K', 2)} (stop)`,
      },
      {
        check: 'readable',
        ...enoughCurrent(),
        threshold: words`at least 1 mV in the middle (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const worst = input.joints.find(({ name }) => name === output.worst)
    return [
      `R = ΔU / I: ${say(worst?.drop, 'mV')} / ${say(worst?.current, 'A')} = ${say(output.highest, 'mΩ')} (“${output.worst ?? ''}”)`,
      words`median ${say(output.middle, 'mΩ')}; worst over median ${say(output.ratio, '')}`,
      `Q_peak = I_peak² R = (${say(input.peak, 'A')})² × ${say(output.highest, 'mΩ')} = ${say(output.heat, 'W')}`,
    ]
  },
  plot(_input, output) {
    return {
      title: words`Joints`,
      x: {
        label: words`Joint, in the order of the list`,
        of: 'number',
        units: ['', ''],
        fromZero: true,
      },
      y: { label: words`Resistance`, of: 'resistance', units: ['mΩ', 'mΩ'], fromZero: true },
      series: [
        {
          name: words`joints`,
          line: 'none',
          points: output.list.map(({ resistance }, i) => [i + 1, resistance] as const),
        },
      ],
      marks: [
        { x: 0, y: ohmWatch, label: '0.1 mΩ', kind: 'limit-y' },
        ...(output.middle === undefined
          ? []
          : [
              {
                x: 0,
                y: output.middle * spreadWatch,
                label: words`1.3 times the median`,
                kind: 'limit-y',
              } as const,
            ]),
      ],
      caption: words`Good joints lie in one row; the one that stands out is loose or dirty.`,
    }
  },
  examples: [
    {
      name: 'five joints at 100 A, one loose',
      from: 'hand: 5 mV / 100 A = 0.05 mΩ, the third of 4, 5, 5, 6, 12 mV; 12 / 5 = 2.4; (450 A)² × 0.12 mΩ = 24.3 W; 41 − 26 = 15 K; (41 − 20) K × 4.5² = 425 K; 32 mV / 100 A = 0.32 mΩ',
      inputs: {
        joints: [
          { name: '1–2', drop: '5 mV', current: '100 A', temperature: '26 °C' },
          { name: '2–3', drop: '4 mV', current: '100 A', temperature: '25 °C' },
          { name: '3–4', drop: '12 mV', current: '100 A', temperature: '41 °C' },
          { name: '4–5', drop: '6 mV', current: '100 A', temperature: '26 °C' },
          { name: '5–6', drop: '5 mV', current: '100 A', temperature: '26 °C' },
        ],
        air: '20 °C',
        peak: '450 A',
      },
      outputs: {
        worst: '3–4',
        highest: '0.12 mΩ',
        middle: '0.05 mΩ',
        ratio: '2.4',
        heat: '24.3 W',
        hottest: '3–4',
        hotter: '15 K',
        rise: '425 K',
        total: '0.32 mΩ',
      },
      findings: { resistance: 'watch', spread: 'stop', hot: 'watch', readable: 'pass' },
    },
    {
      name: 'four good joints at different currents',
      from: 'hand: 6 mV / 120 A = 0.05 mΩ, 10 / 200 = 0.05, 9 / 150 = 0.06, 4 / 100 = 0.04; median 0.05 mΩ; 0.06 / 0.05 = 1.2; (200 A)² × 0.06 mΩ = 2.4 W',
      inputs: {
        joints: [
          { name: 'a', drop: '6 mV', current: '120 A', temperature: '31 °C' },
          { name: 'b', drop: '10 mV', current: '200 A', temperature: '32 °C' },
          { name: 'c', drop: '9 mV', current: '150 A', temperature: '33 °C' },
          { name: 'd', drop: '4 mV', current: '100 A', temperature: '30 °C' },
        ],
        peak: '200 A',
      },
      outputs: { worst: 'c', middle: '0.05 mΩ', ratio: '1.2', heat: '2.4 W', hotter: '1.5 K' },
      findings: { resistance: 'pass', spread: 'pass', hot: 'pass', readable: 'pass' },
    },
    {
      name: 'ANSI/NETA table 100.18: more than 15 K between like parts is a major discrepancy',
      from: 'ANSI/NETA MTS, table 100.18, temperature difference between like components above 15 °C',
      inputs: {
        joints: [
          { name: 'a', drop: '20 mV', current: '50 A', temperature: '30 °C' },
          { name: 'b', drop: '8 mV', current: '50 A', temperature: '30 °C' },
          { name: 'c', drop: '14 mV', current: '50 A', temperature: '46 °C' },
        ],
        peak: '200 A',
      },
      outputs: { hotter: '16 K' },
      findings: { resistance: 'stop', spread: 'watch', hot: 'stop' },
    },
    {
      name: 'threshold case: two joints, hardly any current',
      from: 'threshold case',
      inputs: {
        joints: [
          { name: 'a', drop: '0.4 mV', current: '5 A' },
          { name: 'b', drop: '0.3 mV', current: '5 A' },
        ],
        peak: '300 A',
      },
      outputs: {},
      findings: { spread: 'unknown', hot: 'unknown', readable: 'watch' },
    },
  ],
})
