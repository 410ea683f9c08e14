/**
 * How the cells warm themselves on a drive, and what they may do before they have.
 *
 * In: mass and resistance of the cells, what the box loses to the air, temperatures, the current of
 * the drive. Out: their temperature on the way, when charging is allowed, what current a cold start
 * allows. Warm cells discharge in the frost; they must not be charged, and regenerating is charging.
 */
import * as elementary from '../elementary.ts'
import { cellsInParallel, cellsInSeries } from '../cell-fields.ts'
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { exactly } from '../exactly.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** K absolute, 45 °C; common practice. */
const warmWatch = 318.15
/** K above the charging limit on arrival, and within which a resistance holds; common practice. */
const arrivalMargin = 5
const resistanceSpan = 10
/** Of the current that brings a cell to its lowest voltage; common practice. */
const coldWatch = 0.8
/** K absolute, 150 °C: far past any sheet, the model has nothing to say. */
const beyond = 423.15
const steps = 400

interface Reading {
  readonly temperature: number
  readonly resistance: number
}

/** Resistance by temperature: straight in its logarithm between readings, held at the ends. */
export function resistanceAt(
  readings: readonly Reading[],
  alone: number,
): (temperature: number) => number {
  const sorted = [...readings].sort((a, b) => a.temperature - b.temperature)
  return (temperature) => {
    const next = sorted.findIndex((reading) => reading.temperature >= temperature)
    const above = sorted[next]
    const below = sorted[next - 1]
    if (above === undefined) return sorted.at(-1)?.resistance ?? alone
    if (below === undefined) return above.resistance
    const part = (temperature - below.temperature) / (above.temperature - below.temperature)
    return below.resistance * (above.resistance / below.resistance) ** part
  }
}

interface Box {
  /** J/K, W/K, K */
  readonly capacity: number
  readonly loss: number
  readonly air: number
  readonly heat: (temperature: number) => number
}

/** One step with the heat of its middle; exact while the heat does not change. */
function stepped(box: Box, from: number, time: number): number {
  const on = (heat: number, over: number) => {
    const z = (-over * box.loss) / box.capacity
    const shrink = z === 0 ? 1 : elementary.expm1(z) / z
    return from + ((heat - box.loss * (from - box.air)) * over * shrink) / box.capacity
  }
  return on(box.heat(on(box.heat(from), time / 2)), time)
}

export const cellHeating = defineCalculator({
  id: 'cell-heating',
  title: words`Cell warming and cold start`,
  phase: 'traction',
  purpose: words`Follows the temperature of the cells over a drive, and says from when they may be charged and what current they give cold.`,
  inputs: {
    series: cellsInSeries,
    parallel: cellsInParallel,
    cellMass: {
      type: 'number',
      label: words`Cell mass`,
      symbol: 'm',
      of: 'mass',
      units: ['kg', 'lb'],
      hard: [0.02, 100],
      usual: [0.04, 20],
      help: words`One cell.`,
    },
    specificHeat: {
      type: 'number',
      label: words`Specific heat of a cell`,
      symbol: 'c',
      of: 'specificHeat',
      units: ['kJ/(kg·K)', 'BTU/(lb·Δ°F)'],
      hard: [0.5, 2],
      usual: [0.8, 1.15],
      help: words`Lithium cells are measured at 0.8 to 1.13 kJ/(kg·K).`,
      assume: { value: 1, because: words`the middle of what is published` },
    },
    loss: {
      type: 'number',
      label: words`Box loses to the air`,
      symbol: 'UA',
      of: 'thermalConductance',
      units: ['W/K', 'BTU/(h·Δ°F)'],
      hard: [0, 200],
      usual: [1, 30],
      help: words`About 5 to 8 W/K a square metre for bare steel, 1 W/K with 30 mm of foam.`,
      assume: { value: 6, because: words`a bare box of about a square metre (model)` },
    },
    air: {
      type: 'number',
      label: words`Air round the box`,
      symbol: 'T_air',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-50, 60],
      usual: [-30, 40],
      help: words`Outside air for a box under the bed.`,
    },
    start: {
      type: 'number',
      label: words`Cells at the start`,
      symbol: 'T_0',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-50, 70],
      usual: [-30, 40],
      help: words`After a night outside, that of the air.`,
    },
    current: {
      type: 'number',
      label: words`RMS current of the drive`,
      symbol: 'I_rms',
      of: 'current',
      units: ['A', 'A'],
      hard: [0, 5000],
      usual: [10, 400],
      help: words`Root mean square of the pack current: more than its mean.`,
    },
    time: {
      type: 'number',
      label: words`Drive lasts`,
      symbol: 't',
      of: 'time',
      units: ['min', 'min'],
      hard: [0.1, 1440],
      usual: [5, 240],
      help: words`Without a stop.`,
    },
    resistance: {
      type: 'number',
      label: words`Cell resistance`,
      symbol: 'r',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0.01, 500],
      usual: [0.1, 20],
      help: words`DC; used when there are no readings by temperature.`,
    },
    resistanceFor: {
      type: 'number',
      label: words`Resistance is for`,
      symbol: 'T_r',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-50, 70],
      usual: [-20, 45],
      help: words`The cell temperature it was read at.`,
      assume: { value: 25, because: words`sheets give it at room temperature` },
    },
    readings: {
      type: 'list',
      label: words`Resistance by temperature`,
      row: words`reading`,
      help: words`From the sheet or your own test; instead of the single figure.`,
      rows: [2, 20],
      fields: {
        temperature: {
          type: 'number',
          label: words`Cell temperature`,
          symbol: 'T',
          of: 'temperature',
          units: ['°C', '°F'],
          hard: [-50, 90],
          usual: [-30, 60],
          help: words`Soaked through.`,
        },
        resistance: {
          type: 'number',
          label: words`Cell resistance`,
          symbol: 'r_T',
          of: 'resistance',
          units: ['mΩ', 'mΩ'],
          hard: [0.01, 5000],
          usual: [0.1, 50],
          help: words`DC, at that temperature.`,
        },
      },
      optional: true,
    },
    chargeFrom: {
      type: 'number',
      label: words`Charging allowed from`,
      symbol: 'T_charge',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-30, 20],
      usual: [-20, 10],
      help: words`From the cell’s sheet.`,
      assume: { value: 0, because: words`the limit of common iron phosphate sheets` },
    },
    dischargeFrom: {
      type: 'number',
      label: words`Discharging allowed from`,
      symbol: 'T_discharge',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-50, 10],
      usual: [-40, 0],
      help: words`From the cell’s sheet.`,
      assume: { value: -20, because: words`the limit of common iron phosphate sheets` },
    },
    hottest: {
      type: 'number',
      label: words`Hottest allowed`,
      symbol: 'T_max',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [30, 90],
      usual: [45, 60],
      help: words`From the cell’s sheet.`,
      assume: { value: 55, because: words`sheets end at 55 to 60 °C` },
    },
    regenerates: {
      type: 'choice',
      label: words`Regenerating`,
      help: words`It charges the cells.`,
      options: {
        no: words`none`,
        held: words`held back while the cells are cold`,
        yes: words`from the start`,
      },
      choice: true,
      optional: true,
    },
    cellVoltage: {
      type: 'number',
      label: words`Cell voltage at rest`,
      symbol: 'u',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.5, 5],
      usual: [2, 4.3],
      help: words`At the start.`,
      optional: true,
    },
    cellMinimum: {
      type: 'number',
      label: words`Lowest cell voltage`,
      symbol: 'u_min',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.1, 4],
      usual: [1.5, 3.2],
      help: words`Under load, cold, from its sheet.`,
      optional: true,
    },
    peak: {
      type: 'number',
      label: words`Peak current pulling away`,
      symbol: 'I_peak',
      of: 'current',
      units: ['A', 'A'],
      hard: [0, 10000],
      usual: [20, 1500],
      help: words`The controller’s battery limit.`,
      optional: true,
    },
  },
  outputs: {
    capacity: {
      type: 'number',
      label: words`Heat capacity of the cells`,
      symbol: 'C',
      of: 'heatCapacity',
      units: ['kJ/K', 'BTU/Δ°F'],
    },
    startHeat: {
      type: 'number',
      label: words`Heat at the start`,
      symbol: 'Q_0',
      of: 'power',
      units: ['W', 'W'],
    },
    end: {
      type: 'number',
      label: words`Cells on arrival`,
      symbol: 'T_end',
      of: 'temperature',
      units: ['°C', '°F'],
    },
    highest: {
      type: 'number',
      label: words`Hottest on the way`,
      symbol: 'T_high',
      of: 'temperature',
      units: ['°C', '°F'],
    },
    coldest: {
      type: 'number',
      label: words`Coldest on the way`,
      symbol: 'T_low',
      of: 'temperature',
      units: ['°C', '°F'],
    },
    rise: {
      type: 'number',
      label: words`Rise`,
      symbol: 'ΔT',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    constant: {
      type: 'number',
      label: words`Time constant of the box`,
      symbol: 'τ',
      of: 'time',
      units: ['h', 'h'],
    },
    chargeAfter: {
      type: 'number',
      label: words`Charging allowed after`,
      symbol: 't_charge',
      of: 'time',
      units: ['min', 'min'],
    },
    cold: {
      type: 'number',
      label: words`Most current at the start`,
      symbol: 'I_cold',
      of: 'current',
      units: ['A', 'A'],
    },
  },
  formula: [
    'C\\,\\frac{\\mathrm{d}T}{\\mathrm{d}t} = N_s N_p \\left(\\frac{I}{N_p}\\right)^2 r(T) - UA\\,(T - T_\\text{air})',
    'T = T_\\text{air} + \\frac{Q}{UA} + \\left(T_0 - T_\\text{air} - \\frac{Q}{UA}\\right) e^{-t/\\tau} \\quad \\tau = \\frac{C}{UA}',
    'I_\\text{cold} = N_p\\,\\frac{u - u_\\text{min}}{r(T_0)}',
  ],
  validity: [
    words`All cells are one lump at one temperature. The middle of a tight block is warmer, a cell at the wall colder: charging goes by the coldest, cutting back by the hottest.`,
    words`Heat is I²r alone; heat of reaction and of the links is left out. Between readings the resistance follows a straight line in its logarithm, outside them it is held.`,
    words`Without readings one resistance stands for the whole drive: cold cells then warm faster than is said here.`,
  ],
  checks: {
    discharge: { title: words`Discharging at the start`, basis: 'the cell’s own sheet' },
    regeneration: { title: words`Regenerating while cold`, basis: 'the cell’s own sheet' },
    arrival: { title: words`Charging on arrival`, basis: 'the cell’s own sheet' },
    hot: {
      title: words`Hottest on the way`,
      basis: 'common practice for 45 °C; the cell’s own sheet',
    },
    cold: { title: words`Pulling away cold`, basis: 'the cell’s own sheet; 80 % common practice' },
    resistance: { title: words`Resistance over the drive`, basis: 'common practice' },
  },
  hazards: ['cell-fire', 'loss-of-drive'],
  sources: [
    { title: 'Textbook lumped capacity', trust: 'recalled' },
    {
      title: 'Battery engineering note on the specific heat of lithium-ion cells',
      at: '830 (nickel cobalt aluminium), 1040 (nickel manganese cobalt), 1130 J/(kg·K) (iron phosphate)',
      trust: 'read',
    },
    {
      title: 'Sheets and operation manuals of iron phosphate cells',
      at: 'no charging below 0 °C or above 60 °C; a tenth of the capacity an hour from 0 to 5 °C',
      trust: 'read',
    },
  ],
  compute(input) {
    const { box, path } = drive(input)
    const tops = path.map(([, temperature]) => temperature)
    const highest = Math.max(...tops)
    const real = highest <= beyond
    const end = real ? tops.at(-1) : undefined
    const ready = path.findIndex(([, temperature]) => temperature >= input.chargeFrom)
    const [time, warm] = path[ready] ?? []
    const [before, colder] = path[ready - 1] ?? []
    const known = covers(input, input.start)
    return {
      capacity: box.capacity,
      startHeat: box.heat(input.start),
      end,
      highest: real ? highest : undefined,
      coldest: Math.min(...tops),
      rise: end === undefined ? undefined : end - input.start,
      constant: box.loss > 0 ? box.capacity / box.loss : undefined,
      chargeAfter:
        !real || time === undefined || warm === undefined
          ? undefined
          : before === undefined || colder === undefined
            ? time
            : before + ((time - before) * (input.chargeFrom - colder)) / (warm - colder),
      cold:
        known && input.cellVoltage !== undefined && input.cellMinimum !== undefined
          ? (Math.max(0, input.cellVoltage - input.cellMinimum) /
              resistanceAt(input.readings ?? [], input.resistance)(input.start)) *
            input.parallel
          : undefined,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const degrees = (value: number | undefined) => say(value, '°C')
    const limit = degrees(input.chargeFrom)
    const absurd: Said = {
      level: 'stop',
      text: words`On paper the cells pass ${degrees(beyond)}: this current is far too high for them.`,
    }
    // Charging is the narrower of the two on every sheet.
    const limits = wrongWay(
      say,
      '°C',
      [words`lowest temperature for discharging`, input.dischargeFrom],
      [words`lowest for charging`, input.chargeFrom],
    )
    const window = wrongWay(
      say,
      'V',
      [words`lowest cell voltage`, input.cellMinimum],
      [words`cell voltage at rest`, input.cellVoltage],
    )
    const discharge = (): Said => {
      const fact = words`The cells start at ${degrees(input.start)}; they may be discharged from ${degrees(input.dischargeFrom)}`
      return input.start >= input.dischargeFrom
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'stop', text: words`${fact}: warm them first.` }
    }
    const regeneration = (): Said => {
      if ((output.coldest ?? -Infinity) >= input.chargeFrom)
        return {
          level: 'pass',
          text: words`The cells are never below ${limit}: charging is allowed.`,
        }
      if (input.regenerates === undefined)
        return {
          level: 'unknown',
          text: words`The cells are at ${degrees(output.coldest)} on the way, below ${limit}; whether the drive regenerates then is not said.`,
        }
      return input.regenerates === 'yes'
        ? {
            level: 'stop',
            text: words`Regenerating charges cells at ${degrees(output.coldest)}, below ${limit}: they plate lithium, unseen and for ever. Hold it back until they are warm.`,
          }
        : { level: 'pass', text: words`Nothing charges the cells while they are below ${limit}.` }
    }
    const arrival = (): Said => {
      if (output.end === undefined) return absurd
      const fact = words`On arrival the cells are at ${degrees(output.end)}; they may be charged from ${limit}`
      if (output.end < input.chargeFrom)
        return {
          level: 'stop',
          text: words`${fact}: do not plug in before they are warmed. The charger must refuse by itself.`,
        }
      return output.end >= input.chargeFrom + arrivalMargin
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'watch',
            text: words`${fact}: the coldest cell may be below. Plug in at once, at a low current.`,
          }
    }
    const hot = (): Said => {
      if (output.highest === undefined) return absurd
      const fact = words`The cells reach ${degrees(output.highest)}`
      if (output.highest > input.hottest)
        return {
          level: 'stop',
          text: words`${fact}, above the ${degrees(input.hottest)} of their sheet: ask less or cool them.`,
        }
      return output.highest <= warmWatch
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'watch', text: words`${fact}: they age fast, and the middle ones are hotter.` }
    }
    const cold = (): Said => {
      if (output.cold === undefined || input.peak === undefined)
        return {
          level: 'unknown',
          text: covers(input, input.start)
            ? words`What current the cells give cold is not known: give voltage at rest, lowest voltage and peak.`
            : words`No resistance is known near ${degrees(input.start)}: measure it cold.`,
        }
      const fact = words`At ${degrees(input.start)} the cells give ${say(output.cold, 'A')} before one is too low; pulling away takes ${say(input.peak, 'A')}`
      if (input.peak <= coldWatch * output.cold * (1 + 1e-9))
        return { level: 'pass', text: `${fact}.` }
      return input.peak <= output.cold
        ? { level: 'watch', text: words`${fact}: go gently at first.` }
        : {
            level: 'stop',
            text: words`${fact}: the management opens the contactor. Lower the limit while cold.`,
          }
    }
    const resistance = (): Said => {
      const ends = [input.start, output.end ?? input.start]
      if (ends.every((temperature) => covers(input, temperature)))
        return { level: 'pass', text: words`The resistance is known over the whole drive.` }
      return {
        level: 'watch',
        text: words`The resistance is not known from ${degrees(Math.min(...ends))} to ${degrees(Math.max(...ends))}: it is held at the nearest reading. Give it by temperature.`,
      }
    }
    return [
      {
        check: 'discharge',
        ...heeding(discharge(), limits),
        threshold: words`at least ${degrees(input.dischargeFrom)} (stop)`,
      },
      { check: 'regeneration', ...regeneration(), threshold: words`none below ${limit} (stop)` },
      {
        check: 'arrival',
        ...arrival(),
        threshold: words`at least ${say(arrivalMargin, 'K', 1)} above ${limit} (watch), at least ${limit} (stop)`,
      },
      {
        check: 'hot',
        ...hot(),
        threshold: words`at most ${say(warmWatch, '°C', 2)} (watch), ${degrees(input.hottest)} (stop)`,
      },
      {
        check: 'cold',
        ...heeding(cold(), window),
        threshold: words`at most 80 % (watch), 100 % (stop) of what the cells give cold`,
      },
      {
        check: 'resistance',
        ...resistance(),
        threshold: words`a reading within ${say(resistanceSpan, 'K', 2)} of start and arrival, or readings round them (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const heat = say(output.startHeat, 'W')
    return [
      `C = N_s N_p m c = ${exactly(say, input.series)} × ${exactly(say, input.parallel)} × ${say(input.cellMass, 'kg')} × ${say(input.specificHeat, 'kJ/(kg·K)')} = ${say(output.capacity, 'kJ/K')}`,
      `Q_0 = N_s N_p (I / N_p)² r = ${heat}`,
      input.readings === undefined && output.constant !== undefined
        ? words`T_end = T_air + Q / UA + (T_0 − T_air − Q / UA) e^(−t/τ) with Q / UA = ${say((output.startHeat ?? 0) / input.loss, 'K')}, τ = ${say(output.constant, 'h')}, t = ${say(input.time, 'min')}: ${say(output.end, '°C')}`
        : words`C dT/dt = Q(T) − UA (T − T_air) followed for ${say(input.time, 'min')} in ${steps} steps: ${say(output.end, '°C')}`,
      ...(output.cold === undefined
        ? []
        : [
            `I_cold = N_p (u − u_min) / r(T_0) = ${exactly(say, input.parallel)} × (${say(input.cellVoltage, 'V')} − ${say(input.cellMinimum, 'V')}) / r = ${say(output.cold, 'A')}`,
          ]),
    ]
  },
  plot(input) {
    const { path } = drive(input)
    return {
      title: words`Cells over the drive`,
      x: { label: words`Time`, of: 'time', units: ['min', 'min'], fromZero: true },
      y: { label: words`Cell temperature`, of: 'temperature', units: ['°C', '°F'] },
      series: [
        {
          name: words`cells`,
          line: 'solid',
          points: path
            .filter((_, i) => i % 10 === 0)
            .map(([time, temperature]) => [time, Math.min(temperature, beyond)] as const),
        },
      ],
      marks: [
        { x: 0, y: input.chargeFrom, label: words`charging from here`, kind: 'limit-y' },
        { x: 0, y: input.hottest, label: words`hottest allowed`, kind: 'limit-y' },
        { x: 0, y: input.air, label: words`air`, kind: 'limit-y' },
      ],
      caption: words`Below the lower line nothing may charge the cells.`,
    }
  },
  examples: [
    {
      name: '9 kJ/K, 120 W/K, 3 kW for a minute',
      from: 'textbook lumped capacity, by hand: 25 °C + 3000 W / 120 W/K × (1 − e^(−60 s / 75 s)) = 38.7668 °C',
      inputs: {
        series: '3',
        cellMass: '3 kg',
        specificHeat: '1 kJ/(kg·K)',
        loss: '120 W/K',
        air: '25 °C',
        start: '25 °C',
        current: '1000 A',
        resistance: '1 mΩ',
        time: '1 min',
        regenerates: 'yes',
      },
      outputs: { capacity: '9.0 kJ/K', startHeat: '3000 W', end: '38.7668 °C' },
      findings: {
        discharge: 'pass',
        regeneration: 'pass',
        arrival: 'pass',
        hot: 'pass',
        cold: 'unknown',
        resistance: 'watch',
      },
    },
    {
      name: '25 kJ/K cooling towards 45 °C for half an hour',
      from: 'textbook lumped capacity, by hand: 20 °C + 1500 W / 60 W/K + (50 − 45) K × e^(−1800 s / 416.667 s) = 45.0665 °C',
      inputs: {
        series: '5',
        cellMass: '5 kg',
        specificHeat: '1 kJ/(kg·K)',
        loss: '60 W/K',
        air: '20 °C',
        start: '50 °C',
        current: '100 A',
        resistance: '30 mΩ',
        resistanceFor: '45 °C',
        time: '30 min',
      },
      outputs: { end: '45.0665 °C', highest: '50.00 °C' },
      findings: { hot: 'watch', resistance: 'pass' },
    },
    {
      name: 'a pickup at −10 °C',
      from: 'hand: 36 × 5.4 kg × 1 kJ/(kg·K) = 194.4 kJ/K; 36 × (120 A)² × 0.8 mΩ = 414.7 W; (3.2 − 2.0) V / 0.8 mΩ = 1500 A',
      inputs: {
        series: '36',
        cellMass: '5.4 kg',
        air: '-10 °C',
        start: '-10 °C',
        current: '120 A',
        resistance: '0.25 mΩ',
        readings: [
          { temperature: '-20 °C', resistance: '1.3 mΩ' },
          { temperature: '-10 °C', resistance: '0.8 mΩ' },
          { temperature: '0 °C', resistance: '0.5 mΩ' },
          { temperature: '25 °C', resistance: '0.25 mΩ' },
        ],
        time: '60 min',
        regenerates: 'yes',
        cellVoltage: '3.2 V',
        cellMinimum: '2.0 V',
        peak: '450 A',
      },
      outputs: { capacity: '194.4 kJ/K', startHeat: '414.7 W', cold: '1500 A' },
      findings: {
        discharge: 'pass',
        regeneration: 'stop',
        arrival: 'stop',
        hot: 'pass',
        cold: 'pass',
        resistance: 'pass',
      },
    },
    {
      name: 'threshold case: too cold to start, asked too much',
      from: 'threshold case',
      inputs: {
        series: '16',
        cellMass: '2 kg',
        air: '-25 °C',
        start: '-25 °C',
        current: '200 A',
        resistance: '6 mΩ',
        resistanceFor: '-20 °C',
        time: '20 min',
        regenerates: 'held',
        cellVoltage: '3.2 V',
        cellMinimum: '2.5 V',
        peak: '200 A',
      },
      outputs: {},
      findings: { discharge: 'stop', cold: 'stop', regeneration: 'pass' },
    },
    {
      name: 'threshold case: a small pack in summer',
      from: 'threshold case',
      inputs: {
        series: '16',
        cellMass: '1 kg',
        air: '35 °C',
        start: '35 °C',
        current: '200 A',
        resistance: '2 mΩ',
        time: '60 min',
        cellVoltage: '3.2 V',
        cellMinimum: '2.8 V',
        peak: '190 A',
      },
      outputs: {},
      findings: { hot: 'stop', cold: 'watch' },
    },
    {
      name: 'threshold case: just warm enough to charge',
      from: 'threshold case',
      inputs: {
        series: '16',
        cellMass: '5 kg',
        air: '2 °C',
        start: '2 °C',
        current: '20 A',
        resistance: '0.5 mΩ',
        time: '30 min',
      },
      outputs: {},
      findings: { arrival: 'watch' },
    },
  ],
})

type Input = Parameters<typeof cellHeating.compute>[0]

/** Time and temperature along the drive, start and end with it. */
function drive(input: Input): {
  readonly box: Box
  readonly path: readonly (readonly [time: number, temperature: number])[]
} {
  const cells = input.series * input.parallel
  const resistance = resistanceAt(input.readings ?? [], input.resistance)
  const box: Box = {
    capacity: cells * input.cellMass * input.specificHeat,
    loss: input.loss,
    air: input.air,
    heat: (temperature) => cells * (input.current / input.parallel) ** 2 * resistance(temperature),
  }
  const step = input.time / steps
  const path: (readonly [number, number])[] = [[0, input.start]]
  let temperature = input.start
  for (let i = 1; i <= steps; i++) {
    temperature = stepped(box, temperature, step)
    path.push([i * step, temperature])
  }
  return { box, path }
}

/** Whether the resistance at this temperature is known. */
function covers(input: Input, temperature: number): boolean {
  const known = input.readings?.map((reading) => reading.temperature) ?? [input.resistanceFor]
  const span = input.readings === undefined ? resistanceSpan : resistanceSpan / 2
  return temperature >= Math.min(...known) - span && temperature <= Math.max(...known) + span
}
