/**
 * What the 12 V side draws, what the DC-DC converter has to give, and how long the battery lasts
 * without it.
 *
 * In: a list of loads with duty, the converter, the battery. Out: mean and peak current, share of
 * the converter, minutes of reserve. Plain ampere-hours flatter a lead-acid battery: at the current
 * of a night drive it gives little more than half of them (Peukert).
 */
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Of the converter's rating; common practice. */
const sharePass = 0.8
/** s of driving after the converter fails; common practice. */
const reservePass = 30 * 60
const reserveStop = 15 * 60

interface Load {
  readonly name: string
  readonly current: number | undefined
  readonly power: number | undefined
  readonly duty: number
  readonly critical: 'yes' | 'no'
  readonly surge: number
}

/** What one load draws while it is on, A; the larger where both are given, undefined where none is. */
function draw({ current, power }: Load, volts: number): number | undefined {
  if (current === undefined && power === undefined) return undefined
  return Math.max(current ?? 0, (power ?? 0) / volts)
}

interface Budget {
  readonly loads: readonly Load[]
  readonly volts: number
}

/** Sums over the loads, A; undefined when one has no draw. */
function sums({ loads, volts }: Budget) {
  let [connected, mean, critical, surge] = [0, 0, 0, 0]
  for (const load of loads) {
    const amps = draw(load, volts)
    if (amps === undefined) return undefined
    connected += amps
    mean += amps * load.duty
    if (load.critical === 'yes') critical += amps * load.duty
    surge = Math.max(surge, amps * (load.surge - 1))
  }
  return { connected, mean, critical, peak: connected + surge }
}

interface Battery {
  readonly battery: 'lead-acid' | 'lfp' | 'none'
  readonly capacity: number | undefined
  readonly ratedTime: number
  readonly usable: number
  readonly peukert: number
}

/** s at this current: t = H (C / (I H))^n, never more than the plain charge; undefined without a battery. */
function lasts(from: Battery, amps: number): number | undefined {
  const { battery, capacity, ratedTime, usable, peukert } = from
  if (battery === 'none' || capacity === undefined || amps <= 0) return undefined
  const plain = capacity / amps
  const rate = battery === 'lfp' ? 1 : Math.min(1, (plain / ratedTime) ** (peukert - 1))
  return usable * plain * rate
}

export const twelveVoltBudget = defineCalculator({
  id: 'twelve-volt-budget',
  title: words`12 V budget and reserve`,
  phase: 'auxiliary',
  purpose: words`Adds up the 12 V loads of the worst drive, holds them against the DC-DC converter, and works out how long the battery keeps the important ones going without it.`,
  inputs: {
    loads: {
      type: 'list',
      label: words`Loads`,
      row: words`load`,
      help: words`Everything that is on in a night drive in the rain: lamps, blower, pump, fan, contactor coils, controller.`,
      rows: [1, 60],
      fields: {
        name: { type: 'text', label: words`Load`, help: words`What it is.` },
        current: {
          type: 'number',
          label: words`Current`,
          symbol: 'I',
          of: 'current',
          units: ['A', 'A'],
          hard: [0, 500],
          usual: [0.01, 60],
          help: words`While it is on; measured if you can.`,
          optional: true,
        },
        power: {
          type: 'number',
          label: words`Power`,
          symbol: 'P',
          of: 'power',
          units: ['W', 'W'],
          hard: [0, 6000],
          usual: [0.1, 800],
          help: words`Instead of the current; of two the larger counts.`,
          optional: true,
        },
        duty: {
          type: 'number',
          label: words`On for`,
          symbol: 'd',
          of: 'fraction',
          units: ['%', '%'],
          hard: [0, 100],
          usual: [1, 100],
          help: words`Share of the drive.`,
          assume: { value: 100, because: words`on all the time is the worst case` },
        },
        critical: {
          type: 'choice',
          label: words`Needed to get home`,
          help: words`Lamps, wipers, contactor, controller, brakes.`,
          options: { yes: words`yes`, no: words`no, can be switched off` },
          assume: { value: 'yes', because: words`a load that is not marked is counted` },
        },
        surge: {
          type: 'number',
          label: words`Start multiple`,
          symbol: 's',
          of: 'number',
          units: ['', ''],
          hard: [1, 15],
          usual: [1, 6],
          help: words`Start current over running current, for motors.`,
          assume: { value: 1, because: words`no start surge is given` },
        },
      },
    },
    volts: {
      type: 'number',
      label: words`Supply voltage`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [5, 60],
      usual: [12, 29],
      help: words`With the converter running.`,
      assume: { value: 13.5, because: words`a 12 V system on charge` },
    },
    converter: {
      type: 'number',
      label: words`Converter rating`,
      symbol: 'I_conv',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 1000],
      usual: [10, 200],
      help: words`Continuous output, from its sheet.`,
      choice: true,
      optional: true,
    },
    derate: {
      type: 'number',
      label: words`Converter derating`,
      symbol: 'k',
      of: 'fraction',
      units: ['%', '%'],
      hard: [10, 100],
      usual: [50, 100],
      help: words`What its sheet leaves at the temperature where it sits.`,
      assume: { value: 100, because: words`its sheet gives the full rating at this temperature` },
    },
    efficiency: {
      type: 'number',
      label: words`Converter efficiency`,
      symbol: 'η',
      of: 'fraction',
      units: ['%', '%'],
      hard: [50, 99.5],
      usual: [80, 96],
      help: words`For what it takes from the traction pack.`,
      assume: { value: 90, because: words`typical of isolated converters` },
    },
    battery: {
      type: 'choice',
      label: words`12 V battery`,
      help: words`Without one a failed converter opens the contactor and puts the lamps out.`,
      options: {
        'lead-acid': words`lead-acid`,
        lfp: words`lithium iron phosphate`,
        none: words`none`,
      },
      choice: true,
    },
    capacity: {
      type: 'number',
      label: words`Battery capacity`,
      symbol: 'C',
      of: 'charge',
      units: ['Ah', 'Ah'],
      hard: [1, 500],
      usual: [5, 120],
      help: words`Printed on it.`,
      choice: true,
      optional: true,
    },
    ratedTime: {
      type: 'number',
      label: words`Rated over`,
      symbol: 'H',
      of: 'time',
      units: ['h', 'h'],
      hard: [0.5, 100],
      usual: [5, 20],
      help: words`The discharge time the capacity is printed for.`,
      assume: { value: 20, because: words`vehicle batteries are rated over 20 hours` },
    },
    usable: {
      type: 'number',
      label: words`Usable share`,
      symbol: 'u',
      of: 'fraction',
      units: ['%', '%'],
      hard: [10, 100],
      usual: [30, 90],
      help: words`Age, cold, state of charge and low voltage take the rest.`,
      assume: {
        value: 50,
        because: words`common practice for a lead-acid battery that is neither new nor full`,
      },
    },
    peukert: {
      type: 'number',
      label: words`Peukert exponent`,
      symbol: 'n',
      of: 'number',
      units: ['', ''],
      hard: [1, 1.6],
      usual: [1.1, 1.3],
      help: words`Of a lead-acid battery; lithium is taken as 1.`,
      assume: { value: 1.2, because: words`flooded lead-acid batteries lie between 1.15 and 1.25` },
    },
  },
  outputs: {
    continuous: {
      type: 'number',
      label: words`Mean current`,
      symbol: 'I_mean',
      of: 'current',
      units: ['A', 'A'],
    },
    meanPower: {
      type: 'number',
      label: words`Mean power`,
      symbol: 'P_mean',
      of: 'power',
      units: ['W', 'W'],
    },
    connected: {
      type: 'number',
      label: words`All on at once`,
      symbol: 'ΣI',
      of: 'current',
      units: ['A', 'A'],
    },
    peak: {
      type: 'number',
      label: words`Peak current`,
      symbol: 'I_peak',
      of: 'current',
      units: ['A', 'A'],
    },
    converterShare: {
      type: 'number',
      label: words`Share of the converter`,
      symbol: 'I_mean/I_conv',
      of: 'fraction',
      units: ['%', '%'],
    },
    tractionPower: {
      type: 'number',
      label: words`Taken from the traction pack`,
      symbol: 'P_pack',
      of: 'power',
      units: ['W', 'W'],
    },
    critical: {
      type: 'number',
      label: words`Needed to get home`,
      symbol: 'I_crit',
      of: 'current',
      units: ['A', 'A'],
    },
    reserve: {
      type: 'number',
      label: words`Reserve with the needed loads`,
      symbol: 't_crit',
      of: 'time',
      units: ['min', 'min'],
    },
    reserveAll: {
      type: 'number',
      label: words`Reserve with all loads`,
      symbol: 't_all',
      of: 'time',
      units: ['min', 'min'],
    },
    lines: {
      type: 'table',
      label: words`Loads`,
      columns: {
        name: { type: 'text', label: words`Load` },
        draw: { type: 'number', label: words`On`, symbol: 'I', of: 'current', units: ['A', 'A'] },
        mean: {
          type: 'number',
          label: words`Mean`,
          symbol: 'I d',
          of: 'current',
          units: ['A', 'A'],
        },
      },
    },
  },
  formula: [
    'I_\\text{mean} = \\sum I\\,d \\quad I = P/U',
    'P_\\text{pack} = U\\,I_\\text{mean}/\\eta',
    't = u\\,H\\left(\\frac{C}{I\\,H}\\right)^n',
  ],
  validity: [
    words`Currents are taken at the supply voltage; on battery alone lamps draw less and electronics a little more.`,
    words`Peukert’s law holds for lead-acid batteries near room temperature; below freezing expect half.`,
    words`Below the rated current the plain charge counts: a battery never gives more than is printed.`,
    words`The peak has every load on and the one largest start on top.`,
  ],
  checks: {
    loads: { title: words`Every load has a draw`, basis: 'common practice' },
    converter: { title: words`Converter`, basis: 'common practice' },
    peak: { title: words`Peak`, basis: 'common practice' },
    battery: { title: words`A 12 V battery is fitted`, basis: 'common practice' },
    reserve: { title: words`Reserve without the converter`, basis: 'common practice' },
  },
  hazards: ['loss-of-12-volts', 'wiring-fire', 'low-voltage-burns'],
  sources: [
    { title: 'Peukert’s law for lead-acid batteries', trust: 'recalled' },
    {
      title: 'Common practice of vehicle electricians: 80 % of a converter, 30 minutes of reserve',
      trust: 'recalled',
    },
  ],
  compute(input) {
    const total = sums(input)
    const converter = input.converter === undefined ? undefined : input.converter * input.derate
    const meanPower = total && total.mean * input.volts
    return {
      continuous: total?.mean,
      meanPower,
      connected: total?.connected,
      peak: total?.peak,
      converterShare: total && converter !== undefined ? total.mean / converter : undefined,
      tractionPower: meanPower === undefined ? undefined : meanPower / input.efficiency,
      critical: total?.critical,
      reserve: total && lasts(input, total.critical),
      reserveAll: total && lasts(input, total.mean),
      lines: input.loads.map((load) => {
        const amps = draw(load, input.volts)
        return {
          name: load.name,
          draw: amps,
          mean: amps === undefined ? undefined : amps * load.duty,
        }
      }),
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const bare = input.loads.filter((load) => draw(load, input.volts) === undefined)
    const loads = (): Said =>
      bare.length === 0
        ? {
            level: 'pass',
            text: words`Every load has a current or a power.`,
          }
        : {
            level: 'unknown',
            text: words`No current or power is given for ${bare.map((load) => load.name).join(', ')}: measure it.`,
          }
    const converter = (): Said => {
      if (output.converterShare === undefined)
        return { level: 'unknown', text: words`The converter’s rating or a load is missing.` }
      const fact = words`The loads take ${say(output.continuous, 'A')}, ${say(output.converterShare, '%', 3)} of the converter`
      if (output.converterShare <= sharePass) return { level: 'pass', text: `${fact}.` }
      return output.converterShare <= 1
        ? { level: 'watch', text: words`${fact}: nothing is left for a hot day or the next load.` }
        : {
            level: 'stop',
            text: words`${fact}: the battery runs flat while driving. Fit a larger one or shed loads.`,
          }
    }
    const peak = (): Said => {
      if (output.peak === undefined || input.converter === undefined)
        return { level: 'unknown', text: words`The converter’s rating or a load is missing.` }
      const limit = input.converter * input.derate
      const fact = words`The peak is ${say(output.peak, 'A')}, the converter gives ${say(limit, 'A')}`
      if (output.peak <= limit) return { level: 'pass', text: `${fact}.` }
      return input.battery === 'none'
        ? {
            level: 'stop',
            text: words`${fact} and there is no battery to help: the voltage collapses.`,
          }
        : { level: 'watch', text: words`${fact}: the battery has to help for that time.` }
    }
    const battery = (): Said =>
      input.battery === 'none'
        ? {
            level: 'stop',
            text: words`There is no 12 V battery: a failed converter opens the contactor and puts the lamps out at once. Fit one.`,
          }
        : input.capacity === undefined
          ? { level: 'unknown', text: words`The battery’s capacity is not given.` }
          : { level: 'pass', text: words`A ${say(input.capacity, 'Ah', 2)} battery is fitted.` }
    const reserve = (): Said => {
      if (input.battery === 'none')
        return { level: 'stop', text: words`Without a battery there is no reserve at all.` }
      if (output.critical === 0)
        return {
          level: 'unknown',
          text: words`No load is marked as needed to get home: mark lamps, wipers and contactor.`,
        }
      if (output.reserve === undefined)
        return {
          level: 'unknown',
          text: words`The reserve is not known: a load or the battery’s capacity is missing.`,
        }
      const fact = words`With the converter dead the needed loads last ${say(output.reserve, 'min', 2)}, all of them ${say(output.reserveAll, 'min', 2)}`
      if (output.reserve >= reservePass) return { level: 'pass', text: `${fact}.` }
      return output.reserve >= reserveStop
        ? {
            level: 'watch',
            text: words`${fact}: fit a larger battery or a warning that comes early.`,
          }
        : { level: 'stop', text: words`${fact}: fit a larger battery.` }
    }
    return [
      {
        check: 'loads',
        ...loads(),
        threshold: words`a current or a power for each (else cannot tell)`,
      },
      {
        check: 'converter',
        ...converter(),
        threshold: words`at most 80 % of the converter (watch), 100 % (stop)`,
      },
      {
        check: 'peak',
        ...peak(),
        threshold: words`at most the converter’s rating (watch; stop without a battery)`,
      },
      { check: 'battery', ...battery(), threshold: words`fitted (stop)` },
      { check: 'reserve', ...reserve(), threshold: words`at least 30 min (watch), 15 min (stop)` },
    ]
  },
  working(input, output, say) {
    const lines = [
      `I_mean = Σ I d = ${say(output.continuous, 'A')}`,
      `P_pack = U I_mean / η = ${say(input.volts, 'V')} × ${say(output.continuous, 'A')} / ${say(input.efficiency, '%', 3)} = ${say(output.tractionPower, 'W')}`,
    ]
    if (output.converterShare !== undefined)
      lines.push(
        words`share = ${say(output.continuous, 'A')} / (${say(input.converter, 'A')} × ${say(input.derate, '%', 3)}) = ${say(output.converterShare, '%', 3)}`,
      )
    if (output.reserve !== undefined)
      lines.push(
        input.battery === 'lfp'
          ? `t = u C / I = ${say(input.usable, '%', 2)} × ${say(input.capacity, 'Ah')} / ${say(output.critical, 'A')} = ${say(output.reserve, 'min')}`
          : `t = u H (C / (I H))^n = ${say(input.usable, '%', 2)} × ${say(input.ratedTime, 'h')} × (${say(input.capacity, 'Ah')} / (${say(output.critical, 'A')} × ${say(input.ratedTime, 'h')}))^${say(input.peukert, '')} = ${say(output.reserve, 'min')}`,
      )
    return lines
  },
  moreHazards: (input) => (input.battery === 'lead-acid' ? ['battery-gas'] : []),
  examples: [
    {
      name: 'nine loads in watts',
      from: 'hand: 110 + 20 + 42×0.1 + 42×0.25 + 60×0.5 + 120 + 30 + 25 + 180×0.1 = 367.7 W; / 13.5 V = 27.237 A; / 0.90 = 408.56 W; all on 629 W / 13.5 V = 46.593 A',
      inputs: {
        loads: [
          { name: 'low beam', power: '110 W' },
          { name: 'tail lamps', power: '20 W' },
          { name: 'indicators', power: '42 W', duty: '10 %' },
          { name: 'stop lamps', power: '42 W', duty: '25 %' },
          { name: 'wipers', power: '60 W', duty: '50 %' },
          { name: 'blower', power: '120 W', critical: 'no' },
          { name: 'pump', power: '30 W' },
          { name: 'controller', power: '25 W' },
          { name: 'horn', power: '180 W', duty: '10 %' },
        ],
        converter: '40 A',
        battery: 'lead-acid',
        capacity: '60 Ah',
      },
      outputs: {
        continuous: '27.237 A',
        meanPower: '367.7 W',
        connected: '46.593 A',
        tractionPower: '408.56 W',
      },
      findings: {
        loads: 'pass',
        converter: 'pass',
        peak: 'watch',
        battery: 'pass',
        reserve: 'pass',
      },
    },
    {
      name: 'four 55 W lamps at 13.2 V',
      from: 'hand: 220 W / 13.2 V = 16.667 A',
      inputs: {
        loads: [{ name: 'lamps', power: '220 W' }],
        volts: '13.2 V',
        converter: '18 A',
        battery: 'none',
      },
      outputs: { continuous: '16.667 A' },
      findings: { converter: 'watch', peak: 'pass', battery: 'stop', reserve: 'stop' },
    },
    {
      name: '100 Ah over 20 h at 20 A, exponent 1.2',
      from: 'Peukert’s law by hand: 20 h × (100 / (20 × 20))^1.2 = 3.78929 h = 227.357 min',
      inputs: {
        loads: [{ name: 'test load', current: '20 A' }],
        battery: 'lead-acid',
        capacity: '100 Ah',
        usable: '100 %',
      },
      outputs: { reserve: '227.357 min' },
      findings: { converter: 'unknown', peak: 'unknown', reserve: 'pass' },
    },
    {
      name: 'at the rated current the printed charge comes out',
      from: 'Peukert’s law: 100 Ah over 20 h at 5 A lasts 20 h = 1200 min, whatever the exponent',
      inputs: {
        loads: [{ name: 'test load', current: '5 A' }],
        battery: 'lead-acid',
        capacity: '100 Ah',
        usable: '100 %',
      },
      outputs: { reserve: '1200.0 min' },
    },
    {
      name: 'a night drive on 35 Ah',
      from: 'hand: 50 % × 20 h × (35 / (28.6 × 20))^1.2 = 0.350 h = 21.0 min; plain 36.7 min would flatter it; 28.6 A / 40 A = 71.5 %',
      inputs: {
        loads: [{ name: 'lamps, wipers, pump, coils', current: '28.6 A' }],
        converter: '40 A',
        battery: 'lead-acid',
        capacity: '35 Ah',
      },
      outputs: { reserve: '21.0 min', converterShare: '71.5 %' },
      findings: { converter: 'pass', reserve: 'watch' },
    },
    {
      name: 'the same with a lithium battery',
      from: 'hand: 50 % × 35 Ah / 28.6 A = 36.7 min',
      inputs: {
        loads: [{ name: 'lamps, wipers, pump, coils', current: '28.6 A' }],
        converter: '25 A',
        battery: 'lfp',
        capacity: '35 Ah',
      },
      outputs: { reserve: '36.7 min' },
      findings: { converter: 'stop', peak: 'watch', reserve: 'pass' },
    },
    {
      name: 'threshold case: a load without a draw',
      from: 'threshold case',
      inputs: {
        loads: [{ name: 'heater' }, { name: 'pump', current: '1.5 A' }],
        converter: '40 A',
        battery: 'lead-acid',
      },
      outputs: {},
      findings: { loads: 'unknown', converter: 'unknown', battery: 'unknown', reserve: 'unknown' },
    },
  ],
})
