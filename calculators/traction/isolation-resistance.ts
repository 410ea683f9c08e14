/**
 * Isolation between the traction circuit and the chassis: two-voltmeter method or insulation tester.
 *
 * In: readings, the known resistor, what was connected. Out: the smaller of the two leaks in ohm and
 * in ohm per volt of the highest working voltage. A reading with the contactors open, or below the
 * pack's voltage, proves nothing about the whole circuit: it can condemn, never pass.
 */
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Ω/V of working voltage; UN R100, 5.1.3. */
const directLimit = 100
const combinedLimit = 500
/** Ω; a dry new build; common practice. */
const newBuild = 1e6
/** Ω; UN R100, annex on isolation measurement. */
const leastMeter = 10e6
/** Of a resistor's power and voltage ratings; common practice. */
const resistorShare = 0.5
/** Of the pack voltage, between the reading V2 and what the others make of it; common practice. */
const agreement = 0.05

interface Readings {
  readonly negative: number | undefined
  readonly positive: number | undefined
  readonly withResistor: number | undefined
  readonly resistor: number | undefined
  readonly packVoltage: number | undefined
  readonly meter: number
}

/** The smaller leak and the lower reading it should have given; undefined where readings are missing. */
function twoVoltmeters(read: Readings) {
  const { negative, positive, withResistor, resistor, packVoltage, meter } = read
  if (
    negative === undefined ||
    positive === undefined ||
    withResistor === undefined ||
    resistor === undefined ||
    packVoltage === undefined
  )
    return undefined
  const higher = Math.max(negative, positive)
  const lower = Math.min(negative, positive)
  if (withResistor > higher || higher > (1 + agreement) * packVoltage) return { agrees: false }
  const smaller = resistor * packVoltage * (1 / withResistor - 1 / higher)
  // Conductances, in that of the smaller leak, which may be a dead short. The meter lies across the
  // other leak while the higher voltage is read.
  const across = smaller / meter
  const other = Math.max(0, (packVoltage - higher) / higher - across)
  const expected = (packVoltage * other) / (other + 1 + across)
  return { agrees: Math.abs(expected - lower) <= agreement * packVoltage, smaller, expected }
}

export const isolationResistance = defineCalculator({
  id: 'isolation-resistance',
  title: words`Isolation resistance`,
  phase: 'traction',
  purpose: words`Works out the resistance between the traction circuit and the chassis, by two voltmeter readings and a known resistor or by an insulation tester, and holds it against the limit per volt.`,
  inputs: {
    maximumVoltage: {
      type: 'number',
      label: words`Highest working voltage`,
      symbol: 'U_max',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [20, 1000],
      usual: [60, 900],
      help: words`Pack fully charged, on regeneration.`,
    },
    bus: {
      type: 'choice',
      label: words`Circuit`,
      help: words`With an AC motor on an inverter the two are joined.`,
      options: {
        dc: words`direct current only`,
        combined: words`direct and alternating current joined`,
      },
    },
    contactors: {
      type: 'choice',
      label: words`Contactors during the test`,
      help: words`Open contactors leave most of the circuit out.`,
      options: { closed: words`closed`, open: words`open` },
      optional: true,
    },
    condition: {
      type: 'choice',
      label: words`Condition`,
      help: words`A dry reading says nothing of a wet road.`,
      options: {
        'new-dry': words`new build, dry`,
        'used-dry': words`in use, dry`,
        wet: words`wet, or after rain`,
      },
      optional: true,
    },
    packVoltage: {
      type: 'number',
      label: words`Pack voltage at the test`,
      symbol: 'U_b',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [20, 1000],
      usual: [60, 900],
      help: words`Between the two poles, just before the other readings.`,
      optional: true,
    },
    negative: {
      type: 'number',
      label: words`Negative pole to chassis`,
      symbol: 'U_1',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.001, 1000],
      usual: [1, 900],
      help: words`If the meter shows nothing, enter its smallest step.`,
      optional: true,
    },
    positive: {
      type: 'number',
      label: words`Positive pole to chassis`,
      symbol: 'U_2',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.001, 1000],
      usual: [1, 900],
      help: words`If the meter shows nothing, enter its smallest step.`,
      optional: true,
    },
    withResistor: {
      type: 'number',
      label: words`Higher reading again, with the resistor across it`,
      symbol: 'U′',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [0.001, 1000],
      usual: [0.1, 500],
      help: words`The known resistor between chassis and the pole that read higher.`,
      optional: true,
    },
    resistor: {
      type: 'number',
      label: words`Known resistor`,
      symbol: 'R_0',
      of: 'resistance',
      units: ['kΩ', 'kΩ'],
      hard: [0.1, 2000],
      usual: [5, 500],
      help: words`From 100 to 500 Ω for each volt of the pack.`,
      choice: true,
      optional: true,
    },
    resistorPower: {
      type: 'number',
      label: words`Resistor power rating`,
      symbol: 'P_0',
      of: 'power',
      units: ['W', 'W'],
      hard: [0.05, 1000],
      usual: [0.25, 50],
      help: words`From its sheet.`,
      optional: true,
    },
    resistorVoltage: {
      type: 'number',
      label: words`Resistor voltage rating`,
      symbol: 'U_0',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [10, 10000],
      usual: [200, 2000],
      help: words`From its sheet; a small film resistor is often for 250 V only.`,
      optional: true,
    },
    meter: {
      type: 'number',
      label: words`Voltmeter resistance`,
      symbol: 'R_m',
      of: 'resistance',
      units: ['MΩ', 'MΩ'],
      hard: [0.01, 100000],
      usual: [1, 1000],
      help: words`From its manual.`,
      assume: { value: 10, because: words`usual for a digital multimeter` },
    },
    testerReading: {
      type: 'number',
      label: words`Insulation tester reading`,
      symbol: 'R_t',
      of: 'resistance',
      units: ['MΩ', 'MΩ'],
      hard: [0.0001, 1000000],
      usual: [0.01, 10000],
      help: words`The lower of the two poles against chassis.`,
      optional: true,
    },
    testerVoltage: {
      type: 'number',
      label: words`Insulation tester voltage`,
      symbol: 'U_t',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [10, 10000],
      usual: [250, 1000],
      help: words`Not below the highest pack voltage.`,
      optional: true,
    },
  },
  outputs: {
    resistance: {
      type: 'number',
      label: words`Isolation resistance`,
      symbol: 'R_i',
      of: 'resistance',
      units: ['kΩ', 'kΩ'],
    },
    perVolt: {
      type: 'number',
      label: words`Per volt`,
      symbol: 'R_i/U_max',
      of: 'resistancePerVolt',
      units: ['Ω/V', 'Ω/V'],
    },
    leakage: {
      type: 'number',
      label: words`Leak at the highest voltage`,
      symbol: 'I_leak',
      of: 'current',
      units: ['mA', 'mA'],
    },
    resistorHeat: {
      type: 'number',
      label: words`Most the known resistor may take`,
      symbol: 'P',
      of: 'power',
      units: ['W', 'W'],
    },
    method: { type: 'text', label: words`Method` },
  },
  formula: [
    "R_i = R_0\\,U_b\\left(\\frac{1}{U'} - \\frac{1}{U}\\right)",
    '\\text{per volt} = R_i/U_\\text{max}',
    'I_\\text{leak} = U_\\text{max}/R_i',
  ],
  validity: [
    words`The method gives the smaller of the leaks of the two poles; the meter’s own resistance cancels when the same meter reads both times.`,
    words`With readings by both methods the lower result counts.`,
    words`A rule of 29 mA allows only 34 Ω for each volt, whatever the voltage: keeping it does not make up for the limit per volt.`,
    words`Wait until the readings stand still: filter capacitors to chassis charge slowly.`,
  ],
  checks: {
    isolation: {
      title: words`Isolation per volt`,
      basis: 'published: UN R100, 5.1.3',
      never: true,
    },
    coverage: {
      title: words`Whole circuit connected`,
      basis: 'published: UN R100 (02 series), annex 4A',
    },
    readings: { title: words`Readings agree`, basis: 'common practice' },
    resistor: {
      title: words`Known resistor`,
      basis: 'published: UN R100 (02 series), annex 4A; common practice',
    },
    meter: { title: words`Voltmeter`, basis: 'published: UN R100 (02 series), annex 4A' },
    tester: { title: words`Insulation tester voltage`, basis: 'common practice' },
    newBuild: { title: words`Level of a new build`, basis: 'common practice' },
  },
  hazards: [
    'high-voltage',
    'stored-energy',
    'insulation-tester',
    'leak-onto-high-voltage',
    'arc-and-short',
  ],
  sources: [
    {
      title: 'UN Regulation No. 100',
      at: '5.1.3 and the annex on measuring isolation: 4A in the 02 series, 5A in the 03 series',
      trust: 'read',
    },
    { title: 'FMVSS 305, electrical isolation test', trust: 'recalled' },
  ],
  compute(input) {
    const volts = twoVoltmeters(input)
    const found = volts?.agrees ? volts.smaller : undefined
    const worst = Math.max(input.maximumVoltage, input.packVoltage ?? input.maximumVoltage)
    const resistance =
      found === undefined
        ? input.testerReading
        : input.testerReading === undefined
          ? found
          : Math.min(found, input.testerReading)
    return {
      resistance,
      perVolt: resistance === undefined ? undefined : resistance / worst,
      // A dead short has no leak to speak of: the pack feeds it until something burns.
      leakage: resistance ? worst / resistance : undefined,
      resistorHeat: input.resistor === undefined ? undefined : worst ** 2 / input.resistor,
      method:
        resistance === undefined
          ? undefined
          : resistance === found
            ? words`two voltmeter readings and a known resistor`
            : words`insulation tester`,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const volts = twoVoltmeters(input)
    const tester = input.testerReading !== undefined
    const worst = Math.max(input.maximumVoltage, input.packVoltage ?? input.maximumVoltage)
    const found = volts?.agrees ? volts.smaller : undefined
    const byTester = output.resistance !== undefined && output.resistance !== found
    const lowTester = byTester && (input.testerVoltage === undefined || input.testerVoltage < worst)

    const isolation = (): Said => {
      const { perVolt } = output
      const limit = input.bus === 'combined' ? combinedLimit : directLimit
      if (volts?.agrees === false && volts.smaller !== undefined && volts.smaller < limit * worst)
        return {
          level: 'stop',
          text: words`The readings do not agree, but they give only ${say(volts.smaller, 'kΩ')}, ${say(volts.smaller / worst, 'Ω/V')}: do not power the circuit. Measure again.`,
        }
      if (perVolt === undefined)
        return {
          level: 'unknown',
          text: words`There is no isolation reading that can be used: take the three voltmeter readings, or use an insulation tester.`,
        }
      const fact = words`Isolation is ${say(output.resistance, 'kΩ')}, ${say(perVolt, 'Ω/V')}`
      if (perVolt < limit)
        return {
          level: 'stop',
          text: words`${fact}, below the ${say(limit, 'Ω/V')} for this circuit: do not power it. Part the circuit and find the leak.`,
        }
      if (input.contactors !== 'closed')
        return {
          level: 'unknown',
          text: words`${fact}, but not the whole circuit is known to have been connected: measure with the contactors closed.`,
        }
      if (lowTester)
        return {
          level: 'unknown',
          text: words`${fact}, but the test voltage is not known to reach the pack’s ${say(worst, 'V')}: measure at a higher one.`,
        }
      return perVolt < combinedLimit
        ? {
            level: 'watch',
            text: words`${fact}: enough for a direct-current circuit, too little once it is joined to alternating current. Find what leaks.`,
          }
        : { level: 'pass', text: `${fact}.` }
    }
    const coverage = (): Said =>
      input.contactors === 'closed'
        ? {
            level: 'pass',
            text: words`The contactors were closed, so the whole circuit was measured.`,
          }
        : {
            level: 'unknown',
            text:
              input.contactors === 'open'
                ? words`The contactors were open: what lies beyond them was not measured. Repeat with them closed.`
                : words`It is not said whether the contactors were closed.`,
          }
    const readings = (): Said => {
      if (volts === undefined)
        return tester
          ? {
              level: 'pass',
              text: words`The voltmeter method was not used; the tester reading stands alone.`,
            }
          : {
              level: 'unknown',
              text: words`The voltmeter method needs the pack voltage, both poles to chassis, the resistor and the reading with it.`,
            }
      if (volts.agrees)
        return {
          level: 'pass',
          text: words`The lower pole should read ${say(volts.expected, 'V')} by the other readings, and does within ${say(agreement * (input.packVoltage ?? 0), 'V', 2)}.`,
        }
      return {
        level: 'unknown',
        text:
          volts.expected === undefined
            ? words`The readings contradict each other: with the resistor the voltage must fall, and each pole must read less than the pack. Measure again.`
            : words`By the other readings the lower pole should read ${say(volts.expected, 'V')}; it reads ${say(
                Math.min(input.negative ?? 0, input.positive ?? 0),
                'V',
              )}. Wait until they stand still and measure again.`,
      }
    }
    const resistor = (): Said => {
      if (input.resistor === undefined)
        return tester
          ? { level: 'pass', text: words`No resistor was used.` }
          : { level: 'unknown', text: words`The known resistor is not given.` }
      const perVolt = input.resistor / worst
      const heat = output.resistorHeat ?? 0
      if (perVolt < directLimit * (1 - 1e-9))
        return {
          level: 'stop',
          text: words`The resistor is only ${say(perVolt, 'Ω/V', 2)} and may take ${say(heat, 'W')}: it makes the fault it looks for. Use at least ${say(directLimit * worst, 'kΩ')}.`,
        }
      if (input.resistorPower === undefined || input.resistorVoltage === undefined)
        return {
          level: 'unknown',
          text: words`If the other pole leaks hard the resistor takes ${say(heat, 'W')} at ${say(worst, 'V')}: look up its power and voltage ratings.`,
        }
      const share = Math.max(heat / input.resistorPower, worst / input.resistorVoltage)
      const fact = words`The resistor may take ${say(heat, 'W')} of its ${say(input.resistorPower, 'W', 2)} and ${say(worst, 'V')} of its ${say(input.resistorVoltage, 'V')}`
      if (share > 1) return { level: 'stop', text: words`${fact}: use one rated for it.` }
      return heat > resistorShare * input.resistorPower
        ? { level: 'watch', text: words`${fact}: it gets hot; connect it only while you read.` }
        : { level: 'pass', text: `${fact}.` }
    }
    const meter = (): Said => {
      if (volts === undefined && tester)
        return { level: 'pass', text: words`No voltmeter reading is used.` }
      return input.meter >= leastMeter
        ? { level: 'pass', text: words`The meter has ${say(input.meter, 'MΩ', 2)}.` }
        : {
            level: 'watch',
            text: words`The meter has only ${say(input.meter, 'MΩ', 2)}: it cancels only if the same meter reads each time. Use a digital one.`,
          }
    }
    const testerSaid = (): Said => {
      if (!tester)
        return volts === undefined
          ? { level: 'unknown', text: words`Neither method has a reading.` }
          : {
              level: 'pass',
              text: words`No tester was used; the voltmeter method works at the pack’s own voltage.`,
            }
      if (input.testerVoltage === undefined)
        return { level: 'unknown', text: words`The tester’s voltage is not given.` }
      return input.testerVoltage >= worst
        ? {
            level: 'pass',
            text: words`The tester’s ${say(input.testerVoltage, 'V')} is not below the pack.`,
          }
        : {
            level: 'unknown',
            text: words`The tester’s ${say(input.testerVoltage, 'V')} is below the pack’s ${say(worst, 'V')}: insulation may hold there and fail in use.`,
          }
    }
    const fresh = (): Said => {
      if (output.resistance === undefined)
        return { level: 'unknown', text: words`There is no reading to judge.` }
      const fact = words`It reads ${say(output.resistance, 'MΩ')}`
      if (input.condition === undefined)
        return {
          level: 'unknown',
          text: words`${fact}; it is not said whether dry or wet, new or in use.`,
        }
      if (input.condition === 'new-dry' && output.resistance < newBuild)
        return {
          level: 'watch',
          text: words`${fact}: a new dry build has more than 1 MΩ. Something already leaks; find it now.`,
        }
      return {
        level: 'pass',
        text:
          input.condition === 'wet'
            ? words`${fact} wet; compare with the dry reading.`
            : words`${fact} dry; repeat it after rain.`,
      }
    }
    return [
      {
        check: 'isolation',
        ...isolation(),
        threshold:
          input.bus === 'combined'
            ? words`at least 500 Ω/V, direct and alternating current joined (stop)`
            : words`at least 500 Ω/V (watch), 100 Ω/V, direct current only (stop)`,
      },
      { check: 'coverage', ...coverage(), threshold: words`contactors closed (else cannot tell)` },
      {
        check: 'readings',
        ...readings(),
        threshold: words`lower pole within 5 % of the pack voltage of what the others give (else cannot tell)`,
      },
      {
        check: 'resistor',
        ...resistor(),
        threshold: words`at least 100 Ω/V (stop), at most half its power (watch), all of its power and voltage (stop)`,
      },
      { check: 'meter', ...meter(), threshold: words`at least 10 MΩ (watch)` },
      {
        check: 'tester',
        ...testerSaid(),
        threshold: words`not below the highest pack voltage (else cannot tell)`,
      },
      {
        check: 'newBuild',
        ...fresh(),
        threshold: words`more than 1 MΩ on a new dry build (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const worst = Math.max(input.maximumVoltage, input.packVoltage ?? input.maximumVoltage)
    const lines: string[] = []
    const volts = twoVoltmeters(input)
    if (volts?.smaller !== undefined)
      lines.push(
        `R_i = R_0 U_b (1/U′ − 1/U) = ${say(input.resistor, 'kΩ')} × ${say(input.packVoltage, 'V')} × (1/${say(input.withResistor, 'V')} − 1/${say(
          Math.max(input.negative ?? 0, input.positive ?? 0),
          'V',
        )}) = ${say(volts.smaller, 'kΩ')}`,
      )
    if (input.testerReading !== undefined) lines.push(`R_t = ${say(input.testerReading, 'MΩ')}`)
    if (output.resistance !== undefined)
      lines.push(
        `R_i / U_max = ${say(output.resistance, 'kΩ')} / ${say(worst, 'V')} = ${say(output.perVolt, 'Ω/V')}`,
        `I = U_max / R_i = ${say(output.leakage, 'mA')}`,
      )
    return lines.length > 0 ? lines : [words`No reading to work with.`]
  },
  examples: [
    {
      name: '400 V, leaks of 500 kΩ and 1 MΩ, ideal meter',
      from: 'UN R100 method on a circuit solved by hand: 1 MΩ ∥ 40 kΩ = 38.46 kΩ, 400 V × 38.46/538.46 = 28.5714 V',
      inputs: {
        maximumVoltage: '400 V',
        bus: 'combined',
        contactors: 'closed',
        condition: 'used-dry',
        packVoltage: '400 V',
        negative: '266.667 V',
        positive: '133.333 V',
        withResistor: '28.5714 V',
        resistor: '40 kΩ',
        resistorPower: '10 W',
        resistorVoltage: '500 V',
        meter: '100000 MΩ',
      },
      outputs: { resistance: '500.00 kΩ', perVolt: '1250.0 Ω/V', leakage: '0.800 mA' },
      tolerance: 1e-5,
      why: 'The readings are given to six figures.',
      findings: {
        isolation: 'pass',
        coverage: 'pass',
        readings: 'pass',
        resistor: 'pass',
        meter: 'pass',
        tester: 'pass',
        newBuild: 'pass',
      },
    },
    {
      name: '350 V, the positive pole reads higher',
      from: 'UN R100 method on a circuit solved by hand: leaks of 1 MΩ (positive) and 300 kΩ (negative), 35 kΩ on the positive',
      inputs: {
        maximumVoltage: '350 V',
        bus: 'dc',
        contactors: 'closed',
        packVoltage: '350 V',
        negative: '80.7692 V',
        positive: '269.231 V',
        withResistor: '35.4559 V',
        resistor: '35 kΩ',
        meter: '100000 MΩ',
      },
      outputs: { resistance: '300.00 kΩ', perVolt: '857.14 Ω/V' },
      tolerance: 1e-5,
      why: 'The readings are given to six figures.',
      findings: { isolation: 'pass', resistor: 'unknown', newBuild: 'unknown' },
    },
    {
      name: 'the 10 MΩ of the meter cancels',
      from: 'the 400 V circuit above read with a 10 MΩ meter, solved by hand: 258.065 V, 129.032 V, 28.4698 V',
      inputs: {
        maximumVoltage: '400 V',
        bus: 'combined',
        contactors: 'closed',
        packVoltage: '400 V',
        negative: '258.065 V',
        positive: '129.032 V',
        withResistor: '28.46975 V',
        resistor: '40 kΩ',
      },
      outputs: { resistance: '500.00 kΩ' },
      tolerance: 1e-4,
      why: 'The readings are given to six figures.',
      findings: { readings: 'pass', meter: 'pass' },
    },
    {
      name: 'a new pickup, dry',
      from: 'hand: 50 kΩ × 131.3 V × (1/6.4 V − 1/71.2 V) = 933.6 kΩ; / 131.3 V = 7110 Ω/V',
      inputs: {
        maximumVoltage: '131.3 V',
        bus: 'combined',
        contactors: 'closed',
        condition: 'new-dry',
        packVoltage: '131.3 V',
        negative: '71.2 V',
        positive: '53.5 V',
        withResistor: '6.4 V',
        resistor: '50 kΩ',
        resistorPower: '0.5 W',
        resistorVoltage: '350 V',
      },
      outputs: { resistance: '934 kΩ', perVolt: '7110 Ω/V' },
      findings: { isolation: 'pass', resistor: 'watch', newBuild: 'watch' },
    },
    {
      name: 'threshold case: low tester, contactors open',
      from: 'threshold case',
      inputs: {
        maximumVoltage: '400 V',
        bus: 'combined',
        contactors: 'open',
        condition: 'wet',
        testerReading: '2 MΩ',
        testerVoltage: '250 V',
      },
      outputs: { perVolt: '5000 Ω/V' },
      findings: {
        isolation: 'unknown',
        coverage: 'unknown',
        readings: 'pass',
        tester: 'unknown',
        newBuild: 'pass',
      },
    },
    {
      name: 'threshold case: 1 kΩ on 900 V, readings that cannot be, old meter',
      from: 'hand: 900 V² / 1 kΩ = 810 W',
      inputs: {
        maximumVoltage: '900 V',
        bus: 'dc',
        packVoltage: '900 V',
        negative: '400 V',
        positive: '300 V',
        withResistor: '450 V',
        resistor: '1 kΩ',
        meter: '1 MΩ',
      },
      outputs: { resistorHeat: '810 W' },
      findings: { isolation: 'unknown', readings: 'unknown', resistor: 'stop', meter: 'watch' },
    },
    {
      name: 'threshold case: 300 Ω/V is a stop where direct and alternating current are joined',
      from: 'hand: 30 kΩ / 100 V = 300 Ω/V, below the 500 Ω/V of UN R100',
      inputs: {
        maximumVoltage: '100 V',
        bus: 'combined',
        contactors: 'closed',
        testerReading: '0.030 MΩ',
        testerVoltage: '500 V',
      },
      outputs: { perVolt: '300 Ω/V' },
      findings: { isolation: 'stop', tester: 'pass' },
    },
    {
      name: 'threshold case: the same is a watch on direct current alone',
      from: 'hand: 30 kΩ / 100 V = 300 Ω/V, above the 100 Ω/V of UN R100',
      inputs: {
        maximumVoltage: '100 V',
        bus: 'dc',
        contactors: 'closed',
        testerReading: '0.030 MΩ',
        testerVoltage: '500 V',
      },
      outputs: { perVolt: '300 Ω/V' },
      findings: { isolation: 'watch' },
    },
  ],
})
