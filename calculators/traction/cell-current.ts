/**
 * What the cells go through under load: current, sag, heat, C-rate.
 *
 * In: the pack, its resistance, what the drive asks for as a current or as a power, the cell's limits.
 * Out: currents, voltage under load, heat, what is in hand. At constant power the sag raises the
 * current, which raises the sag: half the open voltage is the end, and no power lies beyond it.
 */
import { cellsInParallel, cellsInSeries } from '../cell-fields.ts'
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { exactly } from '../exactly.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** Of the open voltage; common practice. */
const sagWatch = 0.08
const sagStop = 0.15
/** Kelvin absolute, 45 °C; common practice. */
const warmWatch = 318.15
/** K between the cell and what its resistance was given for; common practice. */
const colder = 10

/** A that gives this power, on the side of small sag; undefined beyond the most there is. */
export function currentForPower(
  open: number,
  resistance: number,
  power: number,
): number | undefined {
  const left = open ** 2 - 4 * resistance * power
  // Rationalised: no difference of two nearly equal numbers at a small sag.
  return left < 0 ? undefined : (2 * power) / (open + Math.sqrt(left))
}

const notGiven = {
  steady: {
    power: words`The steady power is not given.`,
    current: words`The steady current is not given.`,
  },
  peak: {
    power: words`The peak power is not given.`,
    current: words`The peak current is not given.`,
  },
} as const

export const cellCurrent = defineCalculator({
  id: 'cell-current',
  title: words`Cell current, sag and heat`,
  phase: 'traction',
  purpose: words`Works out current, voltage under load and heat of the cells, from a current or a power, and holds them against the cell’s sheet.`,
  inputs: {
    series: cellsInSeries,
    parallel: cellsInParallel,
    capacity: {
      type: 'number',
      label: words`Cell capacity`,
      symbol: 'q',
      of: 'charge',
      units: ['Ah', 'Ah'],
      hard: [0.5, 2000],
      usual: [2, 400],
      help: words`Rated.`,
    },
    cellVoltage: {
      type: 'number',
      label: words`Cell voltage at rest`,
      symbol: 'u',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.5, 5],
      usual: [2, 4.3],
      help: words`At the charge you ask about; nearly empty is the hard case.`,
    },
    cellMinimum: {
      type: 'number',
      label: words`Lowest cell voltage`,
      symbol: 'u_min',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.1, 4],
      usual: [1.5, 3.2],
      help: words`Under load, from its sheet.`,
    },
    resistance: {
      type: 'number',
      label: words`Cell resistance`,
      symbol: 'r',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0.01, 500],
      usual: [0.1, 20],
      help: words`DC, over ten seconds or so: an AC reading at 1 kHz is about half of it.`,
    },
    resistanceAt: {
      type: 'number',
      label: words`Resistance is for`,
      symbol: 'T_r',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 70],
      usual: [-20, 45],
      help: words`The cell temperature it was read at.`,
      assume: { value: 25, because: words`sheets give it at room temperature` },
    },
    temperature: {
      type: 'number',
      label: words`Cell temperature`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 90],
      usual: [-20, 55],
      help: words`Of the hottest cell while driving, or of a cold start.`,
    },
    hottest: {
      type: 'number',
      label: words`Hottest allowed`,
      symbol: 'T_max',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [30, 90],
      usual: [45, 60],
      help: words`When discharging, from its sheet.`,
      assume: { value: 55, because: words`sheets end at 55 to 60 °C` },
    },
    rest: {
      type: 'number',
      label: words`Links, cable, contactors and fuse`,
      symbol: 'R_rest',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0, 500],
      usual: [0, 30],
      help: words`Everything else up to the controller.`,
      assume: { value: 0, because: words`only the cells are asked about` },
    },
    asked: {
      type: 'choice',
      label: words`The drive asks for`,
      help: words`A controller limits battery current; a hill asks for power.`,
      options: { current: words`a current`, power: words`a power` },
      choice: true,
    },
    steadyCurrent: {
      type: 'number',
      label: words`Steady current`,
      symbol: 'I_steady',
      of: 'current',
      units: ['A', 'A'],
      hard: [0, 5000],
      usual: [5, 600],
      help: words`For minutes and longer.`,
      optional: true,
    },
    peakCurrent: {
      type: 'number',
      label: words`Peak current`,
      symbol: 'I_peak',
      of: 'current',
      units: ['A', 'A'],
      hard: [0, 10000],
      usual: [20, 1500],
      help: words`The controller’s battery limit.`,
      optional: true,
    },
    steadyPower: {
      type: 'number',
      label: words`Steady power`,
      symbol: 'P_steady',
      of: 'power',
      units: ['kW', 'hp'],
      hard: [0, 1000],
      usual: [1, 100],
      help: words`At the controller’s terminals, for minutes and longer.`,
      optional: true,
    },
    peakPower: {
      type: 'number',
      label: words`Peak power`,
      symbol: 'P_peak',
      of: 'power',
      units: ['kW', 'hp'],
      hard: [0, 2000],
      usual: [5, 300],
      help: words`At the controller’s terminals.`,
      optional: true,
    },
    peakTime: {
      type: 'number',
      label: words`Peak lasts`,
      symbol: 't_peak',
      of: 'time',
      units: ['s', 's'],
      hard: [0.1, 3600],
      usual: [1, 120],
      help: words`The longest in use.`,
      assume: { value: 30, because: words`one long overtaking or hill` },
    },
    steadyRate: {
      type: 'number',
      label: words`Cell’s steady limit, in capacities an hour`,
      symbol: 'C_steady',
      of: 'number',
      units: ['', ''],
      hard: [0.05, 100],
      usual: [0.3, 10],
      help: words`The C-rate on its sheet: 1 empties it in an hour.`,
    },
    pulseRate: {
      type: 'number',
      label: words`Cell’s pulse limit, in capacities an hour`,
      symbol: 'C_pulse',
      of: 'number',
      units: ['', ''],
      hard: [0.05, 200],
      usual: [0.5, 20],
      help: words`The pulse C-rate on its sheet.`,
      optional: true,
    },
    pulseTime: {
      type: 'number',
      label: words`Pulse allowed for`,
      symbol: 't_pulse',
      of: 'time',
      units: ['s', 's'],
      hard: [0.1, 3600],
      usual: [5, 60],
      help: words`Beside the pulse limit on the sheet.`,
      optional: true,
    },
  },
  outputs: {
    open: {
      type: 'number',
      label: words`Pack voltage at rest`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
    },
    packResistance: {
      type: 'number',
      label: words`Resistance`,
      symbol: 'R',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    steady: {
      type: 'number',
      label: words`Steady current drawn`,
      symbol: 'I_1',
      of: 'current',
      units: ['A', 'A'],
    },
    steadyC: {
      type: 'number',
      label: words`Steady, capacities an hour`,
      symbol: 'C_1',
      of: 'number',
      units: ['', ''],
    },
    peak: {
      type: 'number',
      label: words`Peak current drawn`,
      symbol: 'I_2',
      of: 'current',
      units: ['A', 'A'],
    },
    peakC: {
      type: 'number',
      label: words`Peak, capacities an hour`,
      symbol: 'C_2',
      of: 'number',
      units: ['', ''],
    },
    sag: {
      type: 'number',
      label: words`Sag at peak`,
      symbol: 'ΔU',
      of: 'voltage',
      units: ['V', 'V'],
    },
    sagShare: {
      type: 'number',
      label: words`Sag of voltage at rest`,
      symbol: 'ΔU/U',
      of: 'fraction',
      units: ['%', '%'],
    },
    loaded: {
      type: 'number',
      label: words`Voltage at peak`,
      symbol: 'U_2',
      of: 'voltage',
      units: ['V', 'V'],
    },
    cellLoaded: {
      type: 'number',
      label: words`Cell voltage at peak`,
      symbol: 'u_2',
      of: 'voltage',
      units: ['V', 'V'],
    },
    steadyHeat: {
      type: 'number',
      label: words`Heat, steady`,
      symbol: 'Q_1',
      of: 'power',
      units: ['W', 'W'],
    },
    peakHeat: {
      type: 'number',
      label: words`Heat at peak`,
      symbol: 'Q_2',
      of: 'power',
      units: ['W', 'W'],
    },
    peakOutput: {
      type: 'number',
      label: words`Power at peak`,
      symbol: 'P_2',
      of: 'power',
      units: ['kW', 'hp'],
    },
    largestPower: {
      type: 'number',
      label: words`Largest power there is`,
      symbol: 'P_max',
      of: 'power',
      units: ['kW', 'hp'],
    },
    steadyMost: {
      type: 'number',
      label: words`Steady current the cells allow`,
      symbol: 'I_allowed',
      of: 'current',
      units: ['A', 'A'],
    },
    sagMost: {
      type: 'number',
      label: words`Current that brings a cell to its lowest voltage`,
      symbol: 'I_low',
      of: 'current',
      units: ['A', 'A'],
    },
  },
  formula: [
    'U = N_s u \\quad R = N_s r/N_p + R_\\text{rest}',
    'I = \\frac{U - \\sqrt{U^2 - 4 R P}}{2 R}',
    '\\Delta U = I R \\quad Q = I^2 R \\quad C = I/(N_p q) \\quad P_\\text{max} = U^2/4R',
  ],
  validity: [
    words`One resistance stands for all: it grows with the length of a pulse, with cold and age and near empty.`,
    words`Cells in parallel are taken to share alike; an unlike one carries more.`,
    words`Discharge only. Charging and regenerating have lower limits, and below the sheet’s temperature none.`,
  ],
  checks: {
    steady: { title: words`Steady current`, basis: 'the cell’s own sheet' },
    peak: { title: words`Peak current`, basis: 'the cell’s own sheet' },
    sag: { title: words`Sag at peak`, basis: 'common practice' },
    lowest: { title: words`Cell voltage at peak`, basis: 'the cell’s own sheet' },
    temperature: {
      title: words`Cell temperature`,
      basis: 'common practice for 45 °C; the cell’s own sheet above',
    },
    resistance: { title: words`Resistance at this temperature`, basis: 'common practice' },
  },
  hazards: ['cell-fire', 'arc-and-short', 'loss-of-drive'],
  sources: [
    { title: 'Textbook source with internal resistance', trust: 'recalled' },
    {
      title: 'Cell sheets of iron phosphate prismatic cells',
      at: 'discharge to 60 °C',
      trust: 'read',
    },
  ],
  compute(input) {
    const open = input.series * input.cellVoltage
    const cells = (input.series * input.resistance) / input.parallel
    const packResistance = cells + input.rest
    const byPower = (power: number | undefined) =>
      power === undefined ? undefined : currentForPower(open, packResistance, power)
    const steady = input.asked === 'power' ? byPower(input.steadyPower) : input.steadyCurrent
    const peak = input.asked === 'power' ? byPower(input.peakPower) : input.peakCurrent
    const charge = input.parallel * input.capacity
    const rate = (current: number | undefined) =>
      current === undefined ? undefined : (current / charge) * 3600
    const heat = (current: number | undefined) =>
      current === undefined ? undefined : current ** 2 * packResistance
    const sag = peak === undefined ? undefined : peak * packResistance
    // Past the short-circuit current the model has nothing to say.
    const loaded = sag === undefined || sag >= open ? undefined : open - sag
    return {
      open,
      packResistance,
      steady,
      steadyC: rate(steady),
      peak,
      peakC: rate(peak),
      sag,
      sagShare: sag === undefined ? undefined : sag / open,
      loaded,
      cellLoaded:
        loaded === undefined || peak === undefined
          ? undefined
          : input.cellVoltage - (peak / input.parallel) * input.resistance,
      steadyHeat: heat(steady),
      peakHeat: heat(peak),
      peakOutput: loaded === undefined || peak === undefined ? undefined : loaded * peak,
      largestPower: open ** 2 / (4 * packResistance),
      steadyMost: (input.steadyRate * charge) / 3600,
      sagMost:
        (Math.max(0, input.cellVoltage - input.cellMinimum) / input.resistance) * input.parallel,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const hair = 1 + 1e-9
    const missing = (which: 'steady' | 'peak'): Said => {
      const power = which === 'steady' ? input.steadyPower : input.peakPower
      return input.asked === 'power' && power !== undefined
        ? {
            level: 'stop',
            text: words`The cells cannot give ${say(power, 'kW')}: the most there is, at half voltage, is ${say(output.largestPower, 'kW')}.`,
          }
        : { level: 'unknown', text: notGiven[which][input.asked] }
    }
    const c = (value: number | undefined) => `${say(value, '')} C`
    const order =
      input.asked === 'power'
        ? wrongWay(
            say,
            'kW',
            [words`steady power`, input.steadyPower],
            [words`peak power`, input.peakPower],
          )
        : wrongWay(
            say,
            'A',
            [words`steady current`, input.steadyCurrent],
            [words`peak current`, input.peakCurrent],
          )
    const rates = wrongWay(
      say,
      '',
      [words`steady limit in capacities an hour`, input.steadyRate],
      [words`pulse limit`, input.pulseRate],
    )
    const window = wrongWay(
      say,
      'V',
      [words`lowest cell voltage`, input.cellMinimum],
      [words`cell voltage at rest`, input.cellVoltage],
    )
    const steady = (): Said => {
      if (output.steady === undefined || output.steadyC === undefined) return missing('steady')
      const fact = words`Steady, the cells give ${say(output.steady, 'A')}, ${c(output.steadyC)}; they may give ${say(output.steadyMost, 'A')}`
      return output.steadyC <= input.steadyRate * hair
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'stop',
            text: words`${fact}: lower the limit or take ${exactly(say, Math.ceil((input.parallel * output.steadyC) / input.steadyRate - 1e-9))} in parallel.`,
          }
    }
    const peak = (): Said => {
      if (output.peak === undefined || output.peakC === undefined) return missing('peak')
      const fact = words`The peak of ${say(output.peak, 'A')} is ${c(output.peakC)}`
      if (output.peakC <= input.steadyRate * hair)
        return { level: 'pass', text: words`${fact}, within the steady limit.` }
      if (input.pulseRate === undefined || input.pulseTime === undefined)
        return {
          level: 'unknown',
          text: words`${fact}, above the steady limit; what pulse the cell allows, and for how long, is not given.`,
        }
      const allowed = words`${c(input.pulseRate)} for ${say(input.pulseTime, 's', 2)}`
      return output.peakC <= input.pulseRate * hair && input.peakTime <= input.pulseTime * hair
        ? {
            level: 'watch',
            text: words`${fact} for ${say(input.peakTime, 's', 2)}, within the pulse of ${allowed}: let the cells rest between.`,
          }
        : {
            level: 'stop',
            text: words`${fact} for ${say(input.peakTime, 's', 2)}, beyond the pulse of ${allowed}: lower the limit.`,
          }
    }
    const sag = (): Said => {
      if (output.sag === undefined || output.sagShare === undefined) return missing('peak')
      const fact = words`At peak the voltage sags by ${say(output.sag, 'V')}, ${say(output.sagShare, '%', 2)}`
      if (output.sagShare <= sagWatch * hair) return { level: 'pass', text: `${fact}.` }
      return output.sagShare <= sagStop * hair
        ? { level: 'watch', text: words`${fact}: power and range suffer.` }
        : { level: 'stop', text: words`${fact}: too small a pack for this peak.` }
    }
    const lowest = (): Said => {
      if (output.peak === undefined) return missing('peak')
      const fact = words`A cell is at its lowest voltage, ${say(input.cellMinimum, 'V')}, with ${say(output.sagMost, 'A')}; the peak is ${say(output.peak, 'A')}`
      return output.peak <= (output.sagMost ?? 0) * hair
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'stop', text: words`${fact}: the management opens the contactor on the road.` }
    }
    const temperature = (): Said => {
      const fact = words`The cell is at ${say(input.temperature, '°C')}`
      if (input.temperature > input.hottest)
        return {
          level: 'stop',
          text: words`${fact}, above the ${say(input.hottest, '°C')} of its sheet: cut back until it is cooler.`,
        }
      return input.temperature <= warmWatch
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'watch', text: words`${fact}: it ages fast. Cool it or ask less.` }
    }
    const resistance = (): Said =>
      input.temperature >= input.resistanceAt - colder
        ? { level: 'pass', text: words`The resistance was read near this temperature or colder.` }
        : {
            level: 'watch',
            text: words`The resistance is for ${say(input.resistanceAt, '°C')}, the cell is at ${say(input.temperature, '°C')}: cold cells have several times as much. Use the figure for the cold.`,
          }
    return [
      {
        check: 'steady',
        ...heeding(steady(), order),
        threshold: words`at most ${c(input.steadyRate)} (stop)`,
      },
      {
        check: 'peak',
        ...heeding(peak(), order, rates),
        threshold: words`at most ${c(input.steadyRate)} (watch), the sheet’s pulse and its time (stop)`,
      },
      {
        check: 'sag',
        ...heeding(sag(), order),
        threshold: words`at most 8 % (watch), 15 % (stop)`,
      },
      {
        check: 'lowest',
        ...heeding(lowest(), window),
        threshold: words`at least ${say(input.cellMinimum, 'V')} a cell (stop)`,
      },
      {
        check: 'temperature',
        ...temperature(),
        threshold: words`at most ${say(warmWatch, '°C', 2)} (watch), ${say(input.hottest, '°C')} (stop)`,
      },
      {
        check: 'resistance',
        ...resistance(),
        threshold: words`read no more than ${say(colder, 'K', 2)} above the cell’s temperature (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const lines = [
      `U = N_s u = ${exactly(say, input.series)} × ${say(input.cellVoltage, 'V')} = ${say(output.open, 'V', 4)}`,
      `R = N_s r / N_p + R_rest = ${exactly(say, input.series)} × ${say(input.resistance, 'mΩ')} / ${exactly(say, input.parallel)} + ${say(input.rest, 'mΩ')} = ${say(output.packResistance, 'mΩ')}`,
    ]
    const power = input.peakPower
    if (input.asked === 'power' && power !== undefined)
      lines.push(
        words`I = (U − √(U² − 4 R P)) / 2R with P = ${say(power, 'kW')}: ${say(output.peak, 'A')}; P_max = U² / 4R = ${say(output.largestPower, 'kW')}`,
      )
    if (output.peak !== undefined)
      lines.push(
        `ΔU = I R = ${say(output.peak, 'A')} × ${say(output.packResistance, 'mΩ')} = ${say(output.sag, 'V')}`,
        `Q = I² R = ${say(output.peakHeat, 'W')}`,
        words`C = I / (N_p q) = ${say(output.peak, 'A')} / ${say(input.parallel * input.capacity, 'Ah')} = ${say(output.peakC, '')} an hour`,
      )
    return lines
  },
  moreHazards: (_input, output) => [
    (output.open ?? Infinity) > 60 ? 'high-voltage' : 'low-voltage-burns',
  ],
  plot(_input, output) {
    const { open = 0, packResistance = 1, sagMost = 0, steadyMost = 0 } = output
    const end = Math.min(
      open / packResistance,
      1.3 * Math.max(output.peak ?? 0, sagMost, steadyMost),
    )
    return {
      title: words`Voltage under load`,
      x: { label: words`Current`, of: 'current', units: ['A', 'A'], fromZero: true },
      y: { label: words`Pack voltage`, of: 'voltage', units: ['V', 'V'] },
      series: [
        {
          name: words`at the controller`,
          line: 'solid',
          points: [0, end].map((current) => [current, open - current * packResistance] as const),
        },
      ],
      marks: [
        {
          x: steadyMost,
          y: open,
          label: words`steady limit of the cells`,
          kind: 'limit-x',
        },
        { x: sagMost, y: open, label: words`lowest cell voltage`, kind: 'limit-x' },
        ...(output.peak === undefined || output.loaded === undefined
          ? []
          : [{ x: output.peak, y: output.loaded, label: words`peak`, kind: 'point' } as const]),
      ],
      caption: words`The peak must lie left of the lowest cell voltage.`,
    }
  },
  examples: [
    {
      name: '96s3p at 200 A',
      from: 'hand: 96 × 1.5 mΩ / 3 = 48 mΩ; 350.4 V − 200 A × 48 mΩ = 340.8 V; 200² × 48 mΩ = 1920 W; 200 / 150 = 1.333 C',
      inputs: {
        series: '96',
        parallel: '3',
        capacity: '50 Ah',
        cellVoltage: '3.65 V',
        cellMinimum: '3.0 V',
        resistance: '1.5 mΩ',
        temperature: '25 °C',
        asked: 'current',
        steadyCurrent: '100 A',
        peakCurrent: '200 A',
        steadyRate: '1',
        pulseRate: '2',
        pulseTime: '30 s',
      },
      outputs: {
        open: '350.4 V',
        packResistance: '48 mΩ',
        loaded: '340.8 V',
        peakHeat: '1920 W',
        peakC: '1.333',
      },
      findings: {
        steady: 'pass',
        peak: 'watch',
        sag: 'pass',
        lowest: 'pass',
        temperature: 'pass',
        resistance: 'pass',
      },
    },
    {
      name: '96s3p at 60 kW',
      from: 'hand: (350.4 V − √(350.4² − 4 × 0.048 × 60 000) V) / 0.096 Ω = 175.450 A; 341.978 V; 1477.56 W; 350.4² / 0.192 = 639.48 kW',
      inputs: {
        series: '96',
        parallel: '3',
        capacity: '50 Ah',
        cellVoltage: '3.65 V',
        cellMinimum: '3.0 V',
        resistance: '1.5 mΩ',
        temperature: '47 °C',
        asked: 'power',
        steadyPower: '60 kW',
        peakPower: '60 kW',
        steadyRate: '2',
      },
      outputs: {
        peak: '175.450 A',
        loaded: '341.978 V',
        peakHeat: '1477.56 W',
        largestPower: '639.48 kW',
        peakOutput: '60.000 kW',
      },
      findings: { steady: 'pass', peak: 'pass', temperature: 'watch' },
    },
    {
      name: 'J. Bird 4.3: 25 V open, 24 V at 10 A',
      from: 'J. Bird, Electrical Circuit Theory and Technology, example 4.3: internal resistance 0.1 Ω, 24 V at 10 A',
      inputs: {
        series: '10',
        capacity: '20 Ah',
        cellVoltage: '2.5 V',
        cellMinimum: '2.0 V',
        resistance: '10 mΩ',
        temperature: '20 °C',
        asked: 'current',
        peakCurrent: '10 A',
        steadyRate: '1',
      },
      outputs: { loaded: '24 V', packResistance: '100 mΩ', sag: '1 V' },
      findings: { steady: 'unknown', peak: 'pass' },
    },
    {
      name: 'a pickup at 450 A',
      from: 'hand: 36 × 0.25 mΩ + 4.22 mΩ = 13.22 mΩ; × 450 A = 5.949 V, 5.2 % of 115.2 V; 450 A × 109.25 V = 49.2 kW; 450 / 280 = 1.607 C',
      inputs: {
        series: '36',
        capacity: '280 Ah',
        cellVoltage: '3.2 V',
        cellMinimum: '2.5 V',
        resistance: '0.25 mΩ',
        rest: '4.22 mΩ',
        temperature: '20 °C',
        asked: 'current',
        steadyCurrent: '190 A',
        peakCurrent: '450 A',
        steadyRate: '1',
        pulseRate: '2',
        pulseTime: '30 s',
      },
      outputs: {
        packResistance: '13.22 mΩ',
        sag: '5.949 V',
        sagShare: '5.2 %',
        peakOutput: '49.2 kW',
        peakC: '1.607',
      },
      findings: { steady: 'pass', peak: 'watch', sag: 'pass', lowest: 'pass' },
    },
    {
      name: 'threshold case: a small cold pack',
      from: 'threshold case',
      inputs: {
        series: '36',
        capacity: '50 Ah',
        cellVoltage: '3.2 V',
        cellMinimum: '2.8 V',
        resistance: '2.5 mΩ',
        temperature: '-5 °C',
        asked: 'current',
        steadyCurrent: '80 A',
        peakCurrent: '250 A',
        steadyRate: '1',
        pulseRate: '3',
        pulseTime: '10 s',
      },
      outputs: {},
      findings: { steady: 'stop', peak: 'stop', sag: 'stop', lowest: 'stop', resistance: 'watch' },
    },
    {
      name: 'threshold case: more power than there is, too hot',
      from: 'hand: 115.2 V² / (4 × 36 mΩ) = 92.16 kW',
      inputs: {
        series: '36',
        capacity: '50 Ah',
        cellVoltage: '3.2 V',
        cellMinimum: '2.8 V',
        resistance: '1 mΩ',
        temperature: '58 °C',
        asked: 'power',
        peakPower: '100 kW',
        steadyRate: '1',
      },
      outputs: { largestPower: '92.16 kW' },
      findings: { peak: 'stop', sag: 'stop', lowest: 'stop', temperature: 'stop' },
    },
  ],
})
