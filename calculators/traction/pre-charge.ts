/**
 * Pre-charge of a controller's capacitors through a resistor, and their discharge.
 *
 * In: pack voltage, capacitance, resistors, how the contactor is told to close. Out: times, energy,
 * the step that is left at closing and the current it drives. Anything that draws from the capacitor
 * while it charges holds its voltage down: with 60 Ω behind 47 Ω it stays at 56 % for ever.
 */
import * as elementary from '../elementary.ts'
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Share of the pack voltage at closing; common practice. */
const closePass = 0.95
const closeStop = 0.9
/** s; common practice. */
const quick = 0.2
const slow = 5
/** Times the energy of one charge; common practice. */
const energyPass = 2
/** Of the resistor's continuous rating and the contactor's make rating; common practice. */
const averagePass = 0.5
const makePass = 0.8
/** V; FMVSS 305 and UN R100. */
const touchVoltage = 60
/** s to that voltage; common practice. */
const dischargePass = 60
const dischargeStop = 300

interface Circuit {
  readonly voltage: number
  readonly capacitance: number
  readonly resistor: number
  readonly load: number | undefined
}

/** Where the voltage ends and how fast it gets there, whatever draws beside the capacitor. */
function charging({ voltage, capacitance, resistor, load }: Circuit) {
  const share = load === undefined ? 1 : load / (load + resistor)
  const tau = resistor * share * capacitance
  const final = voltage * share
  return {
    tau,
    final,
    at: (time: number) => final * -elementary.expm1(-time / tau),
    /** s to this share of the pack voltage; undefined when it is never reached. */
    until: (wanted: number) =>
      wanted >= share ? undefined : -tau * elementary.log1p(-wanted / share),
    /** J turned to heat in the resistor up to a time. */
    heat: (time: number) => {
      const rest = voltage - final
      const gone = -elementary.expm1(-time / tau)
      const squared = -elementary.expm1((-2 * time) / tau) / 2
      return (
        (rest ** 2 * time + 2 * rest * final * tau * gone + final ** 2 * tau * squared) / resistor
      )
    },
  }
}

export const preCharge = defineCalculator({
  id: 'pre-charge',
  title: words`Pre-charge and discharge`,
  phase: 'traction',
  purpose: words`Works out how long the capacitors take to charge through the resistor, what the resistor must stand, what the contactor meets when it closes, and how long the terminals stay live afterwards.`,
  inputs: {
    voltage: {
      type: 'number',
      label: words`Highest pack voltage`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [12, 1000],
      usual: [24, 900],
      help: words`Fully charged.`,
    },
    capacitance: {
      type: 'number',
      label: words`Capacitance`,
      symbol: 'C',
      of: 'capacitance',
      units: ['mF', 'mF'],
      hard: [0.0001, 1000],
      usual: [0.1, 50],
      help: words`Of the controller and everything else on its terminals.`,
    },
    resistor: {
      type: 'number',
      label: words`Pre-charge resistor`,
      symbol: 'R',
      of: 'resistance',
      units: ['Ω', 'Ω'],
      hard: [0.5, 1000000],
      usual: [5, 5000],
      help: words`From the controller’s sheet, or chosen.`,
      choice: true,
    },
    closing: {
      type: 'choice',
      label: words`The contactor closes`,
      help: words`On a reading of the voltage, or after a set time whatever the voltage is.`,
      options: { measured: words`on a voltage reading`, timed: words`after a set time` },
      choice: true,
    },
    closeAt: {
      type: 'number',
      label: words`Closes at this share of the pack voltage`,
      symbol: 'a',
      of: 'fraction',
      units: ['%', '%'],
      hard: [50, 99.9],
      usual: [80, 99],
      help: words`Only for closing on a reading.`,
      choice: true,
      assume: { value: 95, because: words`common practice` },
    },
    closeAfter: {
      type: 'number',
      label: words`Closes after`,
      symbol: 't_c',
      of: 'time',
      units: ['s', 's'],
      hard: [0.001, 3600],
      usual: [0.2, 10],
      help: words`Only for closing after a set time.`,
      choice: true,
      optional: true,
    },
    timeout: {
      type: 'number',
      label: words`Gives up after`,
      symbol: 't_max',
      of: 'time',
      units: ['s', 's'],
      hard: [0.001, 3600],
      usual: [0.5, 20],
      help: words`When the voltage has not come up; from the controller’s settings.`,
      optional: true,
    },
    tries: {
      type: 'number',
      label: words`Tries a minute`,
      symbol: 'n',
      of: 'number',
      units: ['', ''],
      hard: [0, 60],
      usual: [1, 6],
      help: words`An impatient driver turning the key.`,
      assume: { value: 3, because: words`somebody trying again and again` },
    },
    resistorEnergy: {
      type: 'number',
      label: words`Resistor pulse energy`,
      symbol: 'E_R',
      of: 'energy',
      units: ['J', 'J'],
      hard: [0.01, 1000000],
      usual: [10, 5000],
      help: words`For one pulse of this length, from its sheet.`,
      optional: true,
    },
    resistorPower: {
      type: 'number',
      label: words`Resistor continuous power`,
      symbol: 'P_R',
      of: 'power',
      units: ['W', 'W'],
      hard: [0.1, 10000],
      usual: [5, 300],
      help: words`On the heat sink it really has.`,
      optional: true,
    },
    load: {
      type: 'number',
      label: words`Load beside the capacitor`,
      symbol: 'R_load',
      of: 'resistance',
      units: ['Ω', 'Ω'],
      hard: [0.5, 10000000],
      usual: [20, 1000000],
      help: words`A converter, heater or bleed resistor that draws while it charges; leave out if nothing does.`,
      optional: true,
    },
    loopResistance: {
      type: 'number',
      label: words`Pack, cable and contactor loop`,
      symbol: 'R_loop',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0.5, 10000],
      usual: [3, 300],
      help: words`What limits the current when the contactor closes.`,
      optional: true,
    },
    contactorMake: {
      type: 'number',
      label: words`Contactor make rating`,
      symbol: 'I_make',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 50000],
      usual: [50, 3000],
      help: words`The current it may close onto, from its sheet; not the one it carries.`,
      optional: true,
    },
    dischargeResistor: {
      type: 'number',
      label: words`Discharge resistor`,
      symbol: 'R_d',
      of: 'resistance',
      units: ['kΩ', 'kΩ'],
      hard: [0.001, 10000],
      usual: [0.1, 200],
      help: words`What empties the capacitors after switching off.`,
      optional: true,
    },
    permanent: {
      type: 'choice',
      label: words`Resistor stays across the open contactor`,
      help: words`Without a relay of its own it keeps the controller live for ever.`,
      options: { no: words`no, its own relay opens it`, yes: words`yes, always connected` },
      choice: true,
      optional: true,
    },
  },
  outputs: {
    tau: {
      type: 'number',
      label: words`Time constant`,
      symbol: 'τ',
      of: 'time',
      units: ['s', 's'],
    },
    t95: { type: 'number', label: words`To 95 %`, symbol: 't_95', of: 'time', units: ['s', 's'] },
    t99: { type: 'number', label: words`To 99 %`, symbol: 't_99', of: 'time', units: ['s', 's'] },
    closes: {
      type: 'number',
      label: words`Contactor closes after`,
      symbol: 't',
      of: 'time',
      units: ['s', 's'],
    },
    reached: {
      type: 'number',
      label: words`Voltage reached then`,
      symbol: 'a_c',
      of: 'fraction',
      units: ['%', '%'],
    },
    final: {
      type: 'number',
      label: words`Voltage it would settle at`,
      symbol: 'U_∞',
      of: 'voltage',
      units: ['V', 'V'],
    },
    step: {
      type: 'number',
      label: words`Step at closing`,
      symbol: 'ΔU',
      of: 'voltage',
      units: ['V', 'V'],
    },
    inrush: {
      type: 'number',
      label: words`Current at closing`,
      symbol: 'I',
      of: 'current',
      units: ['A', 'A'],
    },
    energy: {
      type: 'number',
      label: words`Energy in the capacitors`,
      symbol: 'E',
      of: 'energy',
      units: ['J', 'J'],
    },
    resistorHeat: {
      type: 'number',
      label: words`Heat in the resistor, one charge`,
      symbol: 'Q_R',
      of: 'energy',
      units: ['J', 'J'],
    },
    peakCurrent: {
      type: 'number',
      label: words`Peak current`,
      symbol: 'I_0',
      of: 'current',
      units: ['A', 'A'],
    },
    peakPower: {
      type: 'number',
      label: words`Peak power in the resistor`,
      symbol: 'P_0',
      of: 'power',
      units: ['W', 'W'],
    },
    averagePower: {
      type: 'number',
      label: words`Average power`,
      symbol: 'P_avg',
      of: 'power',
      units: ['W', 'W'],
    },
    discharge: {
      type: 'number',
      label: words`Discharge to 60 V`,
      symbol: 't_60',
      of: 'time',
      units: ['s', 's'],
    },
    energyLeft: {
      type: 'number',
      label: words`Energy left at 60 V`,
      symbol: 'E_60',
      of: 'energy',
      units: ['J', 'J'],
    },
  },
  formula: [
    '\\tau = R\\,C \\quad t = -\\tau\\,\\ln(1 - a)',
    'E = \\tfrac{1}{2} C U^2 \\quad P_0 = U^2/R',
    'U_\\infty = U\\,\\frac{R_\\text{load}}{R + R_\\text{load}}',
    'I = \\Delta U/R_\\text{loop} \\quad t_{60} = R_d\\,C\\,\\ln(U/60\\,\\text{V})',
  ],
  validity: [
    words`The pack holds its voltage, the capacitance is constant and the load is a plain resistance; a converter draws more as its voltage falls.`,
    words`The current at closing leaves out inductance, so it is on the high side.`,
    words`A shorted controller keeps the peak power on the resistor until the time-out; a fuse must part it.`,
    words`Discharge counts the discharge resistor alone. A turning permanent-magnet motor charges the capacitors again.`,
  ],
  checks: {
    reach: { title: words`Voltage comes up`, basis: 'common practice' },
    closing: { title: words`Voltage at closing`, basis: 'common practice' },
    sensing: { title: words`How closing is decided`, basis: 'common practice' },
    time: { title: words`Time to close`, basis: 'common practice' },
    timeout: { title: words`Time-out`, basis: 'common practice' },
    inrush: { title: words`Current at closing`, basis: 'the contactor’s own sheet' },
    energy: { title: words`Resistor pulse`, basis: 'common practice' },
    average: { title: words`Resistor under repeated tries`, basis: 'common practice' },
    discharge: {
      title: words`Discharge to 60 V`,
      basis: 'common practice; published: FMVSS 305, S4, 60 V line',
    },
    permanent: { title: words`Resistor parted when off`, basis: 'common practice', never: true },
  },
  hazards: ['stored-energy', 'arc-and-short'],
  sources: [
    { title: 'FMVSS 305, definition of a high voltage source', at: '60 V DC', trust: 'read' },
    { title: 'Textbook charge of a capacitor through a resistor', trust: 'recalled' },
  ],
  compute(input) {
    const circuit = charging(input)
    const energy = (input.capacitance * input.voltage ** 2) / 2
    const closes = input.closing === 'timed' ? input.closeAfter : circuit.until(input.closeAt)
    const reached = closes === undefined ? undefined : circuit.at(closes) / input.voltage
    const step = reached === undefined ? undefined : input.voltage * (1 - reached)
    // A charge cut short heats less, a load beside the capacitor more: the larger of the two counts.
    const lasting = closes ?? input.timeout
    const resistorHeat =
      lasting === undefined && input.load !== undefined
        ? undefined
        : Math.max(energy, lasting === undefined ? energy : circuit.heat(lasting))
    return {
      tau: circuit.tau,
      t95: circuit.until(0.95),
      t99: circuit.until(0.99),
      closes,
      reached,
      final: circuit.final,
      step,
      inrush:
        step === undefined || input.loopResistance === undefined
          ? undefined
          : step / input.loopResistance,
      energy,
      resistorHeat,
      peakCurrent: input.voltage / input.resistor,
      peakPower: input.voltage ** 2 / input.resistor,
      averagePower: resistorHeat === undefined ? undefined : (input.tries / 60) * resistorHeat,
      discharge:
        input.dischargeResistor === undefined
          ? undefined
          : input.dischargeResistor *
            input.capacitance *
            Math.max(0, elementary.log(input.voltage / touchVoltage)),
      energyLeft: (input.capacitance * Math.min(input.voltage, touchVoltage) ** 2) / 2,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const circuit = charging(input)
    const share = circuit.final / input.voltage
    const timed = input.closing === 'timed'
    const wanted = timed ? closePass : input.closeAt

    const reach = (): Said => {
      const fact =
        input.load === undefined
          ? words`Nothing else is said to draw, so the capacitors come up to ${say(circuit.final, 'V')}`
          : words`With ${say(input.load, 'Ω')} beside the capacitors the voltage stays at ${say(circuit.final, 'V')}, ${say(share, '%', 2)} of the pack`
      return share > wanted
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'stop',
            text: words`${fact}, for ever: switch that load on after closing, or use a smaller resistor.`,
          }
    }
    const closing = (): Said => {
      if (output.reached === undefined || output.step === undefined)
        return timed
          ? { level: 'unknown', text: words`The set time is not given.` }
          : {
              level: 'stop',
              text: words`The voltage never reaches the ${say(input.closeAt, '%', 3)} the contactor waits for.`,
            }
      const fact = words`It closes at ${say(output.reached, '%', 3)} with ${say(output.step, 'V')} left across the contacts`
      const margin = 1e-9
      if (output.reached >= closePass - margin) return { level: 'pass', text: `${fact}.` }
      return output.reached >= closeStop - margin
        ? { level: 'watch', text: words`${fact}: wait longer.` }
        : { level: 'stop', text: words`${fact}: the contacts will weld. Wait longer.` }
    }
    const sensing = (): Said =>
      timed
        ? {
            level: 'watch',
            text: words`The contactor closes on a clock, whatever the voltage is: with a load or a short behind it, it closes onto full voltage. Read the voltage first.`,
          }
        : { level: 'pass', text: words`The contactor closes only when the voltage has been read.` }
    const time = (): Said => {
      const { closes } = output
      if (closes === undefined)
        return timed
          ? { level: 'unknown', text: words`The set time is not given.` }
          : { level: 'stop', text: words`It never closes.` }
      const fact = words`It takes ${say(closes, 's')} to close`
      if (closes < quick)
        return {
          level: 'watch',
          text: words`${fact}: the resistor takes a hard pulse and a relay may not follow. Use a larger one.`,
        }
      return closes <= slow
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'watch',
            text: words`${fact}: drivers will try again too soon. Use a smaller resistor.`,
          }
    }
    const timeout = (): Said => {
      if (timed)
        return output.closes === undefined
          ? { level: 'unknown', text: words`The set time is not given.` }
          : {
              level: 'pass',
              text: words`The clock ends the charge after ${say(output.closes, 's')}.`,
            }
      if (input.timeout === undefined)
        return {
          level: 'unknown',
          text: words`The time-out is not given: without one a fault keeps the resistor hot.`,
        }
      const fact = words`It gives up after ${say(input.timeout, 's')}`
      if (output.closes === undefined)
        return { level: 'stop', text: words`${fact}; the voltage has not come up by then.` }
      return output.closes <= input.timeout
        ? {
            level: 'pass',
            text: words`${fact}, later than the ${say(output.closes, 's')} it needs.`,
          }
        : {
            level: 'stop',
            text: words`${fact}, before the ${say(output.closes, 's')} it needs: it never closes.`,
          }
    }
    const inrush = (): Said => {
      if (output.step === undefined)
        return { level: 'unknown', text: words`What is left at closing is not known.` }
      if (output.inrush === undefined || input.contactorMake === undefined)
        return {
          level: 'unknown',
          text: words`The ${say(output.step, 'V')} that is left drives a current that cannot be judged: give the loop’s resistance and the contactor’s make rating.`,
        }
      const fact = words`Closing drives up to ${say(output.inrush, 'A')}; the contactor may close onto ${say(input.contactorMake, 'A')}`
      if (output.inrush > input.contactorMake)
        return { level: 'stop', text: words`${fact}: close nearer to full voltage.` }
      return output.inrush <= makePass * input.contactorMake
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'watch', text: words`${fact}: close a little later.` }
    }
    const pulse = (): Said => {
      const heat = output.resistorHeat
      if (heat === undefined)
        return {
          level: 'unknown',
          text: words`It never closes, and no time-out ends the heating: give the time-out.`,
        }
      if (input.resistorEnergy === undefined)
        return {
          level: 'unknown',
          text: words`One charge puts ${say(heat, 'J')} into the resistor: look up its pulse energy.`,
        }
      const ratio = input.resistorEnergy / heat
      const fact = words`One charge puts ${say(heat, 'J')} into the resistor, which stands ${say(input.resistorEnergy, 'J')}`
      if (ratio >= energyPass) return { level: 'pass', text: `${fact}.` }
      return ratio >= 1
        ? { level: 'watch', text: words`${fact}: take a wirewound one of twice the energy.` }
        : { level: 'stop', text: words`${fact}: it will burn out.` }
    }
    const average = (): Said => {
      const mean = output.averagePower
      if (input.resistorPower === undefined || mean === undefined)
        return { level: 'unknown', text: words`The resistor’s continuous power is not given.` }
      const tries = say(
        input.tries,
        '',
        Number.isInteger(input.tries) ? 1 + Number(input.tries > 9) : 2,
      )
      const fact = words`${tries} tries a minute put ${say(mean, 'W')} on a resistor for ${say(input.resistorPower, 'W')}`
      if (mean > input.resistorPower)
        return { level: 'stop', text: words`${fact}: limit the tries or take a larger one.` }
      return mean <= averagePass * input.resistorPower
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'watch', text: words`${fact}: it gets hot; limit the tries.` }
    }
    const discharge = (): Said => {
      const left = words`${say(output.energyLeft, 'J')} are left then`
      if (input.voltage <= touchVoltage)
        return {
          level: 'pass',
          text: words`The pack does not exceed 60 V; the capacitors hold ${say(output.energy, 'J')}, enough to burn.`,
        }
      if (output.discharge === undefined)
        return {
          level: 'unknown',
          text: words`No discharge resistor is given: the terminals stay live for an unknown time. Measure.`,
        }
      const fact = words`It takes ${say(output.discharge, 's')} to 60 V; ${left}`
      if (output.discharge <= dischargePass)
        return { level: 'pass', text: words`${fact}. Measure before touching.` }
      return output.discharge <= dischargeStop
        ? { level: 'watch', text: words`${fact}: put the waiting time on a label.` }
        : { level: 'stop', text: words`${fact}: fit a smaller discharge resistor.` }
    }
    const permanent = (): Said =>
      input.permanent === undefined
        ? {
            level: 'unknown',
            text: words`It is not said whether the resistor is parted when the vehicle is off.`,
          }
        : input.permanent === 'no'
          ? { level: 'pass', text: words`The resistor has its own relay and is parted when off.` }
          : {
              level: 'stop',
              text: words`The resistor bridges the open contactor: the controller is live whenever the pack is. Give it a relay of its own.`,
            }
    return [
      {
        check: 'reach',
        ...reach(),
        threshold: words`must come above ${say(wanted, '%', 3)} of the pack (stop)`,
      },
      {
        check: 'closing',
        ...closing(),
        threshold: words`at least 95 % of the pack (watch), 90 % (stop)`,
      },
      {
        check: 'sensing',
        ...sensing(),
        threshold: words`closing on a voltage reading (watch on a clock)`,
      },
      { check: 'time', ...time(), threshold: words`0.2 to 5 s (watch)` },
      { check: 'timeout', ...timeout(), threshold: words`longer than the time to close (stop)` },
      {
        check: 'inrush',
        ...inrush(),
        threshold: words`at most 80 % of the make rating (watch), 100 % (stop)`,
      },
      {
        check: 'energy',
        ...pulse(),
        threshold: words`rated for twice the energy of a charge (watch), once (stop)`,
      },
      {
        check: 'average',
        ...average(),
        threshold: words`at most half the continuous power (watch), all of it (stop)`,
      },
      {
        check: 'discharge',
        ...discharge(),
        threshold: words`to 60 V within 60 s (watch), 300 s (stop)`,
      },
      {
        check: 'permanent',
        ...permanent(),
        threshold: words`none across the open contactor (stop)`,
      },
    ]
  },
  working(input, output, say) {
    const lines =
      input.load === undefined
        ? [
            `τ = R C = ${say(input.resistor, 'Ω')} × ${say(input.capacitance, 'mF')} = ${say(output.tau, 's')}`,
          ]
        : [
            `U∞ = U R_load / (R + R_load) = ${say(input.voltage, 'V')} × ${say(input.load, 'Ω')} / ${say(
              input.load + input.resistor,
              'Ω',
            )} = ${say(output.final, 'V')}`,
            `τ = C R R_load / (R + R_load) = ${say(output.tau, 's')}`,
          ]
    if (input.closing === 'measured')
      lines.push(
        words`t = −τ ln(1 − a U/U∞) = ${say(output.closes, 's')} at a = ${say(input.closeAt, '%', 3)}`,
      )
    lines.push(
      `E = ½ C U² = ½ × ${say(input.capacitance, 'mF')} × (${say(input.voltage, 'V')})² = ${say(output.energy, 'J')}`,
      `P_0 = U² / R = ${say(output.peakPower, 'W')}`,
    )
    if (output.inrush !== undefined)
      lines.push(
        `I = ΔU / R_loop = ${say(output.step, 'V')} / ${say(input.loopResistance, 'mΩ')} = ${say(output.inrush, 'A')}`,
      )
    if (output.discharge !== undefined)
      lines.push(
        `t_60 = R_d C ln(U / 60 V) = ${say(input.dischargeResistor, 'kΩ')} × ${say(input.capacitance, 'mF')} × ln(${say(
          input.voltage,
          'V',
        )} / 60 V) = ${say(output.discharge, 's')}`,
      )
    return lines
  },
  moreHazards: (input) => [input.voltage > touchVoltage ? 'high-voltage' : 'low-voltage-burns'],
  plot(input, output) {
    const circuit = charging(input)
    const end = Math.max(5 * circuit.tau, 1.2 * (output.closes ?? 0))
    const wanted = input.closeAt * input.voltage
    return {
      title: words`Voltage of the capacitors`,
      x: { label: words`Time`, of: 'time', units: ['s', 's'], fromZero: true },
      y: { label: words`Voltage`, of: 'voltage', units: ['V', 'V'], fromZero: true },
      series: [
        {
          name: words`capacitors`,
          line: 'solid',
          points: Array.from({ length: 41 }, (_, i) => {
            const time = (end * i) / 40
            return [time, circuit.at(time)] as const
          }),
        },
      ],
      marks: [
        { x: 0, y: input.voltage, label: words`pack`, kind: 'limit-y' },
        ...(input.closing === 'measured'
          ? [{ x: 0, y: wanted, label: words`closing threshold`, kind: 'limit-y' } as const]
          : []),
        ...(output.closes === undefined
          ? []
          : [
              {
                x: output.closes,
                y: circuit.at(output.closes),
                label: words`closes`,
                kind: 'point',
              } as const,
            ]),
      ],
      caption: words`What is missing to the pack line when the contactor closes drives the current of that instant.`,
    }
  },
  examples: [
    {
      name: '0.5 mF on 400 V through 100 Ω',
      from: 'hand: τ = 100 Ω × 0.5 mF = 0.05 s; ln 20 × τ = 0.149787 s, ln 100 × τ = 0.230259 s; ½ × 0.5 mF × 400² = 40 J; 400² / 100 = 1600 W; 100 kΩ: 50 s × ln(400/60) = 94.856 s, 0.9 J left',
      inputs: {
        voltage: '400 V',
        capacitance: '0.5 mF',
        resistor: '100 Ω',
        closing: 'measured',
        dischargeResistor: '100 kΩ',
        permanent: 'no',
        timeout: '1 s',
        resistorEnergy: '60 J',
        resistorPower: '3 W',
      },
      outputs: {
        tau: '0.0500 s',
        t95: '0.149787 s',
        t99: '0.230259 s',
        energy: '40.0 J',
        peakCurrent: '4.00 A',
        peakPower: '1600 W',
        discharge: '94.856 s',
        energyLeft: '0.900 J',
      },
      findings: {
        reach: 'pass',
        closing: 'pass',
        sensing: 'pass',
        time: 'watch',
        timeout: 'pass',
        inrush: 'unknown',
        energy: 'watch',
        average: 'watch',
        discharge: 'watch',
        permanent: 'pass',
      },
    },
    {
      name: 'Bird 17.5: 16 µF through 50 kΩ',
      from: 'J. Bird, Electrical Circuit Theory and Technology, example 17.5: τ 0.8 s, 28.7 V left of 100 V after 1 s',
      inputs: {
        voltage: '100 V',
        capacitance: '0.016 mF',
        resistor: '50000 Ω',
        closing: 'timed',
        closeAfter: '1 s',
      },
      outputs: { tau: '0.80 s', step: '28.7 V', peakCurrent: '0.0020 A' },
      findings: { closing: 'stop', sensing: 'watch', permanent: 'unknown', discharge: 'unknown' },
    },
    {
      name: 'a pickup: 15 mF on 131.4 V through 47 Ω',
      from: 'hand: τ = 0.705 s; × ln 20 = 2.112 s; × ln 100 = 3.247 s; ½ × 15 mF × 131.4² = 129.5 J; 131.4² / 47 = 367 W; 5 % of 131.4 V over 13 mΩ = 505 A; 15 s × ln(131.4/60) = 11.76 s; ½ × 15 mF × 60² = 27 J',
      inputs: {
        voltage: '131.4 V',
        capacitance: '15 mF',
        resistor: '47 Ω',
        closing: 'measured',
        timeout: '5 s',
        loopResistance: '13 mΩ',
        contactorMake: '650 A',
        resistorEnergy: '300 J',
        resistorPower: '50 W',
        dischargeResistor: '1 kΩ',
        permanent: 'no',
      },
      outputs: {
        tau: '0.705 s',
        t95: '2.112 s',
        t99: '3.247 s',
        energy: '129.5 J',
        peakPower: '367 W',
        inrush: '505 A',
        discharge: '11.76 s',
        energyLeft: '27.0 J',
      },
      findings: {
        closing: 'pass',
        time: 'pass',
        inrush: 'pass',
        energy: 'pass',
        average: 'pass',
        discharge: 'pass',
        permanent: 'pass',
      },
    },
    {
      name: '60 Ω behind 47 Ω stays at 56 %',
      from: 'hand: 60 / (60 + 47) = 0.5607; × 131.4 V = 73.7 V',
      inputs: {
        voltage: '131.4 V',
        capacitance: '15 mF',
        resistor: '47 Ω',
        closing: 'measured',
        load: '60 Ω',
        timeout: '5 s',
        permanent: 'yes',
      },
      outputs: { final: '73.7 V' },
      findings: {
        reach: 'stop',
        closing: 'stop',
        time: 'stop',
        timeout: 'stop',
        permanent: 'stop',
      },
    },
  ],
})
