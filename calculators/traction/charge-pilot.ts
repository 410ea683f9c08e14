/**
 * What a charging station and its cable allow: the control pilot's duty and the cable's resistor.
 *
 * In: duty, resistor, pilot voltage, breaker, what the charger is set to. Out: A allowed, by whom, and
 * what is in hand. The station does not limit anything by itself: a charger that draws more than the
 * pilot says trips a breaker at best.
 */
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { chargeCableRows } from '../tables/charge-cable-codes.ts'
import { words } from '../../src/words/words.ts'

/** Of the breaker, for hours; NEC 210.20(A), 625.41. */
const continuousShare = 0.8
/** Of a code resistor's nominal value; common practice. */
const codeSpread = 0.1
/** V at the vehicle end; IEC 61851-1 and SAE J1772, whose own limits lie within the ±1 V (recalled). */
const states = [
  ['A', 12, words`A: no vehicle seen`],
  ['B', 9, words`B: connected, not asking`],
  ['C', 6, words`C: asking for current`],
  ['D', 3, words`D: asking, ventilation needed`],
] as const
const stateSpread = 1
const stateOf = (peak: number | undefined) =>
  states.find(([, volts]) => Math.abs((peak ?? NaN) - volts) <= stateSpread)

type Pilot = 'none' | 'digital' | 'invalid' | number

/** A for a duty from 0 to 1; IEC 61851-1 and SAE J1772. */
export function pilotCurrent(duty: number): Pilot {
  const percent = Math.round(duty * 1e8) / 1e6
  if (percent < 3) return 'none'
  if (percent <= 7) return 'digital'
  if (percent < 8) return 'invalid'
  if (percent < 10) return 6
  if (percent <= 85) return 0.6 * percent
  if (percent <= 96) return 2.5 * (percent - 64)
  return percent <= 97 ? 80 : 'none'
}

/** The row of a measured resistor; on a boundary the smaller current. */
const codeOf = (resistance: number) =>
  chargeCableRows.findLast(([, from, to]) => resistance >= from && resistance <= to)

export const chargePilot = defineCalculator({
  id: 'charge-pilot',
  title: words`Charge pilot and cable code`,
  phase: 'traction',
  purpose: words`Reads the duty of the control pilot and the resistor of the cable, and holds the charger’s setting against the least of pilot, cable and breaker.`,
  inputs: {
    duty: {
      type: 'number',
      label: words`Pilot duty`,
      symbol: 'D',
      of: 'fraction',
      units: ['%', '%'],
      hard: [0, 100],
      usual: [10, 96],
      help: words`Share of the time the 1 kHz pilot is positive.`,
      optional: true,
    },
    cable: {
      type: 'choice',
      label: words`Cable`,
      help: words`A loose cable carries a code; the code of a fixed one is not for the vehicle.`,
      options: { loose: words`loose, plugged in at both ends`, fixed: words`fixed to the station` },
      choice: true,
    },
    resistor: {
      type: 'number',
      label: words`Proximity to earth`,
      symbol: 'R_PP',
      of: 'resistance',
      units: ['Ω', 'Ω'],
      hard: [0, 1000000],
      usual: [50, 3000],
      help: words`PP to PE of the loose cable, unplugged.`,
      optional: true,
    },
    pilotVoltage: {
      type: 'number',
      label: words`Pilot, positive peak`,
      symbol: 'U_CP',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [-15, 15],
      usual: [2, 12],
      help: words`CP to PE on a scope or pilot tester; a plain meter reads its mean.`,
      optional: true,
    },
    phases: {
      type: 'choice',
      label: words`Phases`,
      help: words`Of the supply.`,
      options: { one: words`one`, three: words`three` },
      choice: true,
      assume: { value: 'one', because: words`most chargers of conversions` },
    },
    volts: {
      type: 'number',
      label: words`Supply voltage`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [90, 520],
      usual: [110, 415],
      help: words`Between live conductors: 120, 230, 240, or 400 V for three phases.`,
      assume: { value: 230, because: words`common single-phase supply` },
    },
    breaker: {
      type: 'number',
      label: words`Breaker`,
      symbol: 'I_breaker',
      of: 'current',
      units: ['A', 'A'],
      hard: [3, 200],
      usual: [10, 100],
      help: words`Of the station’s circuit.`,
    },
    setting: {
      type: 'number',
      label: words`Charger is set to`,
      symbol: 'I_set',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.5, 100],
      usual: [5, 48],
      help: words`What it draws from each phase.`,
      choice: true,
    },
  },
  outputs: {
    pilot: {
      type: 'number',
      label: words`Pilot allows`,
      symbol: 'I_pilot',
      of: 'current',
      units: ['A', 'A'],
    },
    cableCurrent: {
      type: 'number',
      label: words`Cable allows`,
      symbol: 'I_cable',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    circuit: {
      type: 'number',
      label: words`Breaker allows for hours`,
      symbol: 'I_hours',
      of: 'current',
      units: ['A', 'A'],
    },
    allowed: {
      type: 'number',
      label: words`Charger may draw`,
      symbol: 'I_may',
      of: 'current',
      units: ['A', 'A'],
    },
    limit: { type: 'text', label: words`Limited by` },
    inHand: {
      type: 'number',
      label: words`In hand`,
      symbol: 'ΔI',
      of: 'current',
      units: ['A', 'A'],
    },
    power: {
      type: 'number',
      label: words`Power then`,
      symbol: 'P',
      of: 'power',
      units: ['kW', 'kW'],
    },
    state: { type: 'text', label: words`Vehicle state` },
  },
  formula: [
    'I_\\text{pilot} = 0.6\\,D \\;(10 \\le D \\le 85) \\quad 2.5\\,(D - 64) \\;(85 < D \\le 96)',
    'I_\\text{may} = \\min(I_\\text{pilot},\\, I_\\text{cable},\\, 0.8\\,I_\\text{breaker})',
  ],
  validity: [
    words`D in per cent. From 3 to 7 % the station speaks digitally and its current is not in the duty.`,
    words`Below 3 % and above 97 % nothing may be drawn; from 7 to 8 % the signal is not defined.`,
    words`The proximity of the North American inlet tells that the plug is latched, not a current: take its cable as fixed.`,
  ],
  checks: {
    duty: {
      title: words`Pilot duty`,
      basis: 'published: IEC 61851-1 (2017), annex A, duty and available current',
    },
    code: {
      title: words`Cable code`,
      basis:
        'published: IEC 61851-1 (2017), annex B, current coding of the cable; 10 % common practice',
    },
    state: {
      title: words`Vehicle state`,
      basis: 'published: IEC 61851-1 (2017), annex A, 12, 9, 6 and 3 V; ±1 V recalled',
    },
    setting: {
      title: words`Charger setting`,
      basis: 'published: IEC 61851-1 (2017), annexes A and B; NEC 625.41 (2017) for the breaker',
    },
  },
  hazards: ['earth-and-residual-current', 'wiring-fire', 'high-voltage'],
  sources: [
    {
      title: 'IEC 61851-1 and SAE J1772, as quoted in the manual of a pilot test adapter',
      at: 'duty and maximum current, table of 8 to 97 %',
      trust: 'read',
    },
    {
      title: 'IEC 61851-1, current coding, as quoted in the manual of a charge controller',
      at: 'resistor, window, A',
      trust: 'read',
    },
    {
      title:
        'IEC 61851-1 and SAE J1772, states of the pilot, as quoted in a design guide for chargers',
      at: '12, 9, 6 and 3 V',
      trust: 'read',
    },
    { title: 'IEC 61851-1, ±1 V about each pilot voltage', trust: 'recalled' },
  ],
  compute(input) {
    const read = input.duty === undefined ? undefined : pilotCurrent(input.duty)
    const pilot =
      typeof read === 'number' ? read : read === 'none' || read === 'invalid' ? 0 : undefined
    const code = input.resistor === undefined ? undefined : codeOf(input.resistor)
    const [, , , single, three] = code ?? []
    const cableCurrent =
      input.cable === 'fixed' || input.resistor === undefined
        ? undefined
        : ((input.phases === 'one' ? single : three) ?? 0)
    const circuit = continuousShare * input.breaker
    const known = pilot !== undefined && (input.cable === 'fixed' || cableCurrent !== undefined)
    const allowed = known ? Math.min(pilot, cableCurrent ?? Infinity, circuit) : undefined
    return {
      pilot,
      cableCurrent,
      circuit,
      allowed,
      limit:
        allowed === undefined
          ? undefined
          : allowed === pilot
            ? words`the pilot`
            : allowed === cableCurrent
              ? words`the cable`
              : words`the breaker`,
      inHand: allowed === undefined ? undefined : allowed - input.setting,
      power:
        allowed === undefined
          ? undefined
          : allowed * input.volts * (input.phases === 'three' ? Math.sqrt(3) : 1),
      state: stateOf(input.pilotVoltage)?.[2],
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const duty = (): Said => {
      if (input.duty === undefined)
        return { level: 'unknown', text: words`The duty of the pilot is not read.` }
      const percent = say(input.duty, '%')
      const read = pilotCurrent(input.duty)
      if (typeof read === 'number')
        return { level: 'pass', text: words`A duty of ${percent} allows ${say(read, 'A')}.` }
      return read === 'digital'
        ? {
            level: 'stop',
            text: words`A duty of ${percent} asks for digital communication: a charger without it must draw nothing.`,
          }
        : {
            level: 'stop',
            text: words`A duty of ${percent} allows no charging: the station is not ready or faulty.`,
          }
    }
    const code = (): Said => {
      if (input.cable === 'fixed')
        return { level: 'pass', text: words`The cable is fixed: the pilot speaks for it.` }
      const measured = input.resistor
      if (measured === undefined)
        return { level: 'unknown', text: words`The cable’s resistor is not measured.` }
      const found = codeOf(measured)
      if (found === undefined)
        return {
          level: 'stop',
          text:
            measured < 75
              ? words`${say(measured, 'Ω')} is below every code: a short between PP and PE.`
              : words`${say(measured, 'Ω')} is above every code: no cable, or a broken contact.`,
        }
      const fact = words`${say(measured, 'Ω')} is read as ${say(found[0], 'Ω')}, ${say(output.cableCurrent, 'A', 2)}`
      return Math.abs(measured / found[0] - 1) <= codeSpread * (1 + 1e-9)
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'watch',
            text: words`${fact}, but is more than a tenth off: clean the contacts, or find out what is in that plug.`,
          }
    }
    const state = (): Said => {
      if (input.pilotVoltage === undefined)
        return { level: 'unknown', text: words`The pilot’s voltage is not read.` }
      const peak = say(input.pilotVoltage, 'V')
      const found = stateOf(input.pilotVoltage)
      if (found === undefined)
        return {
          level: 'stop',
          text: words`The pilot’s peak of ${peak} is no state of the standard: look for a short to earth, a bad diode or a wrong resistor.`,
        }
      const [letter, , name] = found
      return letter === 'B' || letter === 'C'
        ? { level: 'pass', text: words`The pilot’s peak of ${peak} is state ${name}.` }
        : {
            level: 'watch',
            text: words`The pilot’s peak of ${peak} is state ${name}; most stations give no current then.`,
          }
    }
    const setting = (): Said => {
      const set = say(input.setting, 'A')
      const bounds = [output.pilot, output.cableCurrent, output.circuit].filter(
        (bound) => bound !== undefined,
      )
      const least = Math.min(...bounds)
      if (input.setting > least * (1 + 1e-9))
        return {
          level: 'stop',
          text: words`The charger is set to ${set} and may draw ${say(least, 'A')}: set it down.`,
        }
      return output.allowed === undefined
        ? {
            level: 'unknown',
            text: words`Whether ${set} is allowed is not known: read pilot and cable.`,
          }
        : {
            level: 'pass',
            text: words`The charger is set to ${set} and may draw ${say(output.allowed, 'A')}.`,
          }
    }
    return [
      { check: 'duty', ...duty(), threshold: words`8 to 97 % (stop)` },
      {
        check: 'code',
        ...code(),
        threshold: words`75 to 2200 Ω (stop), within 10 % of 100, 220, 680 or 1500 Ω (watch)`,
      },
      {
        check: 'state',
        ...state(),
        threshold: words`within 1 V of 9 or 6 V (watch at 12 and 3 V, else stop)`,
      },
      {
        check: 'setting',
        ...setting(),
        threshold: words`at most pilot, cable and 80 % of the breaker (stop)`,
      },
    ]
  },
  working(input, output, say) {
    const percent = (input.duty ?? 0) * 100
    const law =
      input.duty === undefined
        ? words`no duty read`
        : percent >= 10 && percent <= 85
          ? `I_pilot = 0.6 × ${say(percent, '')} = ${say(output.pilot, 'A')}`
          : percent > 85 && percent <= 96
            ? `I_pilot = 2.5 × (${say(percent, '')} − 64) = ${say(output.pilot, 'A')}`
            : words`duty ${say(input.duty, '%')}: ${say(output.pilot, 'A')}`
    return [
      law,
      `0.8 I_breaker = 0.8 × ${say(input.breaker, 'A')} = ${say(output.circuit, 'A')}`,
      words`least of pilot ${say(output.pilot, 'A')}, cable ${input.cable === 'fixed' ? words`fixed` : say(output.cableCurrent, 'A', 2)}, breaker ${say(output.circuit, 'A')}: ${say(output.allowed, 'A')}`,
    ]
  },
  plot(input, output) {
    const currents = (from: number, to: number, law: (percent: number) => number) =>
      [from, to].map((percent) => [percent / 100, law(percent)] as const)
    return {
      title: words`Pilot duty and current`,
      x: { label: words`Duty`, of: 'fraction', units: ['%', '%'], fromZero: true },
      y: { label: words`Current`, of: 'current', units: ['A', 'A'], fromZero: true },
      series: [
        {
          name: words`available`,
          line: 'solid',
          points: [
            ...currents(8, 10, () => 6),
            ...currents(10, 85, (percent) => 0.6 * percent),
            ...currents(85, 96, (percent) => 2.5 * (percent - 64)),
            ...currents(96, 97, () => 80),
          ],
        },
      ],
      marks: [
        { x: 0, y: input.setting, label: words`charger`, kind: 'limit-y' },
        {
          x: 0,
          y: continuousShare * input.breaker,
          label: words`breaker, for hours`,
          kind: 'limit-y',
        },
        ...(input.duty === undefined || output.pilot === undefined
          ? []
          : [{ x: input.duty, y: output.pilot, label: words`read`, kind: 'point' } as const]),
      ],
      caption: words`The charger’s line must lie below the point that was read.`,
    }
  },
  examples: [
    {
      name: '53 % and 220 Ω',
      from: 'IEC 61851-1 as tabled in the manual of a pilot test adapter: 53 % is 31.8 A; 220 Ω is 32 A; hand: 0.8 × 40 A = 32 A',
      inputs: {
        duty: '53 %',
        cable: 'loose',
        resistor: '221 Ω',
        pilotVoltage: '6.1 V',
        volts: '240 V',
        breaker: '40 A',
        setting: '30 A',
      },
      outputs: {
        pilot: '31.8 A',
        cableCurrent: '32 A',
        circuit: '32 A',
        allowed: '31.8 A',
        limit: words`the pilot`,
        state: words`C: asking for current`,
      },
      findings: { duty: 'pass', code: 'pass', state: 'pass', setting: 'pass' },
    },
    {
      name: '90 % of the duty is 65 A',
      from: 'IEC 61851-1 as tabled in the manual of a pilot test adapter: 90 % is 65.0 A; a 100 Ω cable carries 63 A on three phases',
      inputs: {
        duty: '90 %',
        cable: 'loose',
        resistor: '100 Ω',
        pilotVoltage: '12 V',
        phases: 'three',
        volts: '400 V',
        breaker: '80 A',
        setting: '64 A',
      },
      outputs: { pilot: '65.0 A', cableCurrent: '63 A', allowed: '63 A', limit: words`the cable` },
      findings: { setting: 'stop', state: 'watch' },
    },
    {
      name: '96 % is 80 A, the breaker counts',
      from: 'IEC 61851-1 as tabled in the manual of a pilot test adapter: 96 % is 80.0 A; NEC: a 50 A breaker carries 40 A for hours',
      inputs: {
        duty: '96 %',
        cable: 'fixed',
        pilotVoltage: '9.0 V',
        breaker: '50 A',
        setting: '40 A',
      },
      outputs: { pilot: '80.0 A', circuit: '40 A', allowed: '40 A', limit: words`the breaker` },
      findings: { code: 'pass', state: 'pass', setting: 'pass' },
    },
    {
      name: '8 % is 6 A',
      from: 'IEC 61851-1 as tabled in the manual of a pilot test adapter: from 8 % to below 10 %, 6 A',
      inputs: { duty: '8 %', cable: 'loose', resistor: '1500 Ω', breaker: '16 A', setting: '6 A' },
      outputs: { pilot: '6.0 A', cableCurrent: '13 A' },
      findings: { duty: 'pass', state: 'unknown', setting: 'pass' },
    },
    {
      name: 'threshold case: digital pilot, corroded 680 Ω',
      from: 'threshold case',
      inputs: {
        duty: '5 %',
        cable: 'loose',
        resistor: '790 Ω',
        pilotVoltage: '7.5 V',
        breaker: '32 A',
        setting: '16 A',
      },
      outputs: { cableCurrent: '20 A', allowed: 'cannot tell' },
      findings: { duty: 'stop', code: 'watch', state: 'stop', setting: 'unknown' },
    },
    {
      name: 'threshold case: no code, no duty',
      from: 'threshold case',
      inputs: { cable: 'loose', resistor: '40 Ω', breaker: '32 A', setting: '10 A' },
      outputs: {},
      findings: { duty: 'unknown', code: 'stop', setting: 'stop' },
    },
  ],
})
