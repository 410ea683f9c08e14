/**
 * Was the prediction right, can the instrument tell, and what does the reading say of the part?
 *
 * In: predicted and measured in one unit, ± of both; for working back, the readings of a radiator, a
 * loop or a pack. Out: error with its ±, the parameter with its ±. A reading that agrees within its ±
 * proves little when the ± is wide.
 */
import { defineCalculator, type Finding, type InputValues } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Of the prediction; common practice. */
const errorWatch = 0.1
const errorStop = 0.25
/** ± of what is worked back; common practice. */
const fineWatch = 0.1
const fineStop = 0.25
const hair = 1 + 1e-9

const plain = (label: string, symbol: string, help: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'number',
    units: ['', ''],
    hard: [-1e6, 1e6],
    usual: [0.001, 100_000],
    help,
  }) as const

const share = (label: string, symbol: string, help: string, value: number, because: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 100],
    usual: [0, 20],
    help,
    assume: { value, because },
  }) as const

const inputs = {
  predicted: plain(
    words`Predicted`,
    'p',
    words`In any unit; in a note write 1 here and the measured one as a ratio, {bucket / loop.flow}.`,
  ),
  measured: plain(words`Measured`, 'm', words`In the same unit as the prediction.`),
  instrument: share(
    words`Instrument, ±`,
    'u_m',
    words`Of the reading: its accuracy and how well you read it.`,
    5,
    words`a common workshop meter, read once`,
  ),
  prediction: share(
    words`Prediction, ±`,
    'u_p',
    words`Of the prediction, from what went into it.`,
    0,
    words`not known`,
  ),
  back: {
    type: 'choice',
    label: words`Work back`,
    help: words`Which part’s figure the reading corrects.`,
    options: {
      nothing: words`nothing`,
      radiator: words`conductance of a radiator, from heat and temperatures`,
      loop: words`resistance of a coolant loop, from a bucket`,
      pack: words`resistance of a pack, from sag`,
    },
    assume: { value: 'nothing', because: words`only the comparison is asked for` },
  },
  heat: {
    type: 'number',
    label: words`Heat`,
    symbol: 'Q',
    of: 'power',
    units: ['W', 'W'],
    hard: [1, 200_000],
    usual: [100, 20_000],
    help: words`Into the coolant while you measured.`,
    optional: true,
  },
  heatSpread: share(
    words`Heat, ±`,
    'u_Q',
    words`Losses are seldom known better.`,
    10,
    words`heat from losses`,
  ),
  coolant: {
    type: 'number',
    label: words`Coolant into the radiator`,
    symbol: 'T_in',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-40, 150],
    usual: [20, 90],
    help: words`When it had stopped changing.`,
    optional: true,
  },
  air: {
    type: 'number',
    label: words`Air`,
    symbol: 'T_amb',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-50, 70],
    usual: [-10, 45],
    help: words`In front of the radiator, in the shade.`,
    optional: true,
  },
  thermometer: {
    type: 'number',
    label: words`Each temperature, ±`,
    symbol: 'u_T',
    of: 'temperatureDifference',
    units: ['K', 'Δ°F'],
    hard: [0, 20],
    usual: [0.1, 3],
    help: words`Of the thermometer.`,
    assume: { value: 0.5, because: words`a digital probe` },
  },
  bucket: {
    type: 'number',
    label: words`Bucket`,
    symbol: 'V',
    of: 'volume',
    units: ['L', 'gal'],
    hard: [0.1, 200],
    usual: [2, 20],
    help: words`Volume caught from the return.`,
    optional: true,
  },
  bucketSpread: share(
    words`Volume, ±`,
    'u_V',
    words`A marked bucket; weigh it for better.`,
    2,
    words`a marked bucket`,
  ),
  seconds: {
    type: 'number',
    label: words`In`,
    symbol: 't',
    of: 'time',
    units: ['s', 's'],
    hard: [1, 3600],
    usual: [10, 300],
    help: words`Stopwatch.`,
    optional: true,
  },
  watch: {
    type: 'number',
    label: words`Stopwatch, ±`,
    symbol: 'u_t',
    of: 'time',
    units: ['s', 's'],
    hard: [0, 60],
    usual: [0.2, 2],
    help: words`Start and stop by hand.`,
    assume: { value: 1, because: words`by hand` },
  },
  lift: {
    type: 'number',
    label: words`Pressure across the loop`,
    symbol: 'Δp',
    of: 'pressure',
    units: ['kPa', 'psi'],
    hard: [0.1, 500],
    usual: [5, 100],
    help: words`A gauge across the pump, or its curve at that flow.`,
    optional: true,
  },
  liftSpread: share(
    words`Pressure, ±`,
    'u_Δp',
    words`A curve from a sheet is seldom better.`,
    10,
    words`from a curve`,
  ),
  sag: {
    type: 'number',
    label: words`Sag`,
    symbol: 'ΔU',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [0.001, 500],
    usual: [0.1, 60],
    help: words`Voltage lost when the current steps up, read within seconds.`,
    optional: true,
  },
  voltmeter: {
    type: 'number',
    label: words`Sag, ±`,
    symbol: 'u_U',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [0, 20],
    usual: [0.01, 1],
    help: words`Two readings: 1.4 times the meter’s last digit or accuracy.`,
    assume: { value: 0.2, because: words`two readings of a 0.1 V display` },
  },
  step: {
    type: 'number',
    label: words`Step of current`,
    symbol: 'ΔI',
    of: 'current',
    units: ['A', 'A'],
    hard: [0.01, 5000],
    usual: [10, 600],
    help: words`Current after less current before.`,
    optional: true,
  },
  ammeter: share(
    words`Current, ±`,
    'u_I',
    words`A clamp meter on DC drifts: zero it.`,
    3,
    words`a clamp meter`,
  ),
} as const

type Inputs = InputValues<typeof inputs>

/** Independent relative ±: root of the sum of squares. */
const together = (...parts: readonly number[]) => Math.sqrt(parts.reduce((s, u) => s + u * u, 0))

interface Worked {
  readonly value: number
  /** Of the value. */
  readonly spread: number
}

/** `Δp / flow²` in kPa/(L/min)², W/K, Ω; undefined without its readings. */
function workedBack(input: Inputs): Worked | undefined {
  switch (input.back) {
    case 'nothing':
      return undefined
    case 'radiator': {
      const { heat, coolant, air } = input
      if (heat === undefined || coolant === undefined || air === undefined) return undefined
      const over = coolant - air
      if (over <= 0) return undefined
      return {
        value: heat / over,
        spread: together(input.heatSpread, (Math.SQRT2 * input.thermometer) / over),
      }
    }
    case 'loop': {
      const flow = flowOf(input)
      if (flow === undefined || input.lift === undefined) return undefined
      return {
        value: input.lift / 1000 / (flow * 60_000) ** 2,
        spread: together(input.liftSpread, 2 * flowSpread(input)),
      }
    }
    case 'pack': {
      const { sag, step } = input
      if (sag === undefined || step === undefined) return undefined
      return { value: sag / step, spread: together(input.voltmeter / sag, input.ammeter) }
    }
  }
}

const flowOf = ({ bucket, seconds }: Inputs): number | undefined =>
  bucket === undefined || seconds === undefined ? undefined : bucket / seconds

const flowSpread = ({ bucketSpread, watch, seconds }: Inputs): number =>
  together(bucketSpread, watch / (seconds ?? Infinity))

const rerun = {
  nothing: undefined,
  radiator: words`Radiator and fan, heat-soak: enter it as the measured conductance`,
  loop: words`Pump and loop, heat and rise, radiator: enter the measured flow`,
  pack: words`Cell current and sag, main fuse, cell heating`,
} as const

export const predictionCheck = defineCalculator({
  id: 'prediction-check',
  title: words`Prediction and measurement`,
  phase: 'project',
  purpose: words`How far a prediction was off, whether the instrument can tell, and what the reading makes of the part’s figure.`,
  inputs,
  outputs: {
    error: {
      type: 'number',
      label: words`Measured over or under the prediction`,
      symbol: 'ε',
      of: 'fraction',
      units: ['%', '%'],
    },
    spread: {
      type: 'number',
      label: words`± of that`,
      symbol: 'u_ε',
      of: 'fraction',
      units: ['%', '%'],
    },
    conductance: {
      type: 'number',
      label: words`Radiator conductance`,
      symbol: 'K',
      of: 'thermalConductance',
      units: ['W/K', 'BTU/(h·Δ°F)'],
    },
    conductanceSpread: {
      type: 'number',
      label: words`Radiator conductance, ±`,
      symbol: 'u_K',
      of: 'thermalConductance',
      units: ['W/K', 'BTU/(h·Δ°F)'],
    },
    flow: {
      type: 'number',
      label: words`Flow by the bucket`,
      symbol: 'q',
      of: 'flow',
      units: ['L/min', 'gal/min'],
    },
    flowSpread: {
      type: 'number',
      label: words`Flow by the bucket, ±`,
      symbol: 'u_q',
      of: 'flow',
      units: ['L/min', 'gal/min'],
    },
    loop: {
      type: 'number',
      label: words`Loop resistance, kPa for each (L/min)²`,
      symbol: 'k',
      of: 'number',
      units: ['', ''],
    },
    loopSpread: {
      type: 'number',
      label: words`Loop resistance, ±`,
      symbol: 'u_k',
      of: 'number',
      units: ['', ''],
    },
    resistance: {
      type: 'number',
      label: words`Pack resistance`,
      symbol: 'R',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    resistanceSpread: {
      type: 'number',
      label: words`Pack resistance, ±`,
      symbol: 'u_R',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    rerun: { type: 'text', label: words`Work again` },
  },
  formula: [
    String.raw`\varepsilon = m/p - 1, \qquad u_\varepsilon = \frac{m}{p}\sqrt{u_m^2 + u_p^2}`,
    String.raw`K = \frac{Q}{T_{in} - T_{amb}}, \qquad k = \frac{\Delta p}{(V/t)^2}, \qquad R = \frac{\Delta U}{\Delta I}`,
  ],
  validity: [
    words`All ± are of the same kind (all limits, or all standard uncertainties) and independent of each other: they add as squares.`,
    words`Predicted and measured under the same conditions: load, speed, air, state of charge.`,
    words`Radiator: everything steady, thermostat and fan as they were. Loop: turbulent flow, so the pressure goes with the square.`,
    words`Pack: within seconds of the step; after minutes the sag holds more than resistance.`,
    words`Two thermometers are taken as independent; one thermometer used twice is better than shown.`,
  ],
  checks: {
    error: { title: words`Prediction`, basis: 'common practice' },
    back: { title: words`What is worked back`, basis: 'common practice' },
  },
  hazards: ['moving-vehicle'],
  sources: [
    {
      title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
      edition: '2008',
      at: '5.1.2, independent inputs',
      trust: 'read',
    },
  ],
  compute(input) {
    const { predicted, measured } = input
    const ratio = predicted === 0 ? undefined : measured / predicted
    const back = workedBack(input)
    const only = (kind: Inputs['back'], value: number | undefined) =>
      input.back === kind ? value : undefined
    const spread = back && back.value * back.spread
    const flow = input.back === 'loop' ? flowOf(input) : undefined
    return {
      error: ratio === undefined ? undefined : ratio - 1,
      spread:
        ratio === undefined
          ? undefined
          : Math.abs(ratio) * together(input.instrument, input.prediction),
      conductance: only('radiator', back?.value),
      conductanceSpread: only('radiator', spread),
      flow,
      flowSpread: flow === undefined ? undefined : flow * flowSpread(input),
      loop: only('loop', back?.value),
      loopSpread: only('loop', spread),
      resistance: only('pack', back?.value),
      resistanceSpread: only('pack', spread),
      rerun: back === undefined ? undefined : rerun[input.back],
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const error = (): Said => {
      const { error: off, spread = 0 } = output
      if (off === undefined)
        return {
          level: 'unknown',
          text: words`A prediction of nothing cannot be compared: enter it.`,
        }
      const away = Math.abs(off)
      const fact =
        off < 0
          ? words`Measured is ${say(away, '%')} under the prediction, ± ${say(spread, '%')}`
          : words`Measured is ${say(away, '%')} over the prediction, ± ${say(spread, '%')}`
      if (spread > away && away + spread > errorWatch * hair)
        return {
          level: 'unknown',
          text: words`${fact}: the ± is larger than the difference, so this instrument cannot tell. Read again with a better one, or more often.`,
        }
      if (away <= errorWatch * hair) return { level: 'pass', text: `${fact}.` }
      return away <= errorStop * hair
        ? {
            level: 'watch',
            text: words`${fact}: put the reading in the prediction’s place and work again what rests on it.`,
          }
        : {
            level: 'stop',
            text: words`${fact}: model or instrument is wrong. Read again another way before you build on either.`,
          }
    }
    const back = (): Said => {
      const worked = workedBack(input)
      if (input.back === 'nothing') return { level: 'pass', text: words`Nothing is worked back.` }
      if (worked === undefined)
        return {
          level: 'unknown',
          text:
            input.back === 'radiator'
              ? words`Enter heat, coolant and air; the coolant must be warmer than the air.`
              : input.back === 'loop'
                ? words`Enter bucket, seconds and the pressure across the loop.`
                : words`Enter sag and step of current.`,
        }
      const value =
        input.back === 'radiator'
          ? words`The radiator gives off ${say(worked.value, 'W/K')} ± ${say(worked.value * worked.spread, 'W/K', 2)}`
          : input.back === 'loop'
            ? words`The loop takes ${say(worked.value, '')} ± ${say(worked.value * worked.spread, '', 2)} kPa for each (L/min)²`
            : words`The pack has ${say(worked.value, 'mΩ')} ± ${say(worked.value * worked.spread, 'mΩ', 2)}`
      if (worked.spread <= fineWatch * hair)
        return { level: 'pass', text: words`${value}. Work again: ${rerun[input.back]}.` }
      return worked.spread <= fineStop * hair
        ? {
            level: 'watch',
            text: words`${value}: ± ${say(worked.spread, '%', 2)}. Try both ends in what rests on it. ${rerun[input.back]}.`,
          }
        : {
            level: 'unknown',
            text: words`${value}: ± ${say(worked.spread, '%', 2)} tells too little. Measure at more load, longer, or with a better instrument.`,
          }
    }
    return [
      {
        check: 'error',
        ...error(),
        threshold: words`within 10 % (watch), 25 % (stop), and wider than its ±`,
      },
      { check: 'back', ...back(), threshold: words`known to ± 10 % (watch), ± 25 % (cannot tell)` },
    ]
  },
  working(input, output, say) {
    const first = [
      `ε = m/p − 1 = ${say(input.measured, '')} / ${say(input.predicted, '')} − 1 = ${say(output.error, '%')}`,
      `u_ε = m/p √(u_m² + u_p²) = ± ${say(output.spread, '%', 2)}`,
    ]
    switch (input.back) {
      case 'nothing':
        return first
      case 'radiator':
        return [
          ...first,
          `K = Q / (T_in − T_amb) = ${say(input.heat, 'W')} / (${say(input.coolant, '°C')} − ${say(input.air, '°C')}) = ${say(output.conductance, 'W/K')}`,
          `u_K = K √(u_Q² + 2 u_T² / (T_in − T_amb)²) = ${say(output.conductanceSpread, 'W/K', 2)}`,
        ]
      case 'loop':
        return [
          ...first,
          `q = V / t = ${say(input.bucket, 'L')} / ${say(input.seconds, 's')} = ${say(output.flow, 'L/min')}`,
          `k = Δp / q² = ${say(input.lift, 'kPa')} / (${say(output.flow, 'L/min')})² = ${say(output.loop, '')}; u_k = k √(u_Δp² + 4 (u_V² + u_t²/t²)) = ${say(output.loopSpread, '', 2)}`,
        ]
      case 'pack':
        return [
          ...first,
          `R = ΔU / ΔI = ${say(input.sag, 'V')} / ${say(input.step, 'A')} = ${say(output.resistance, 'mΩ')}`,
          `u_R = R √(u_U²/ΔU² + u_I²) = ${say(output.resistanceSpread, 'mΩ', 2)}`,
        ]
    }
  },
  // A pack’s readings are taken far from the coolant; what is only compared may be anything.
  moreHazards: ({ back }) => (back === 'pack' ? [] : ['hot-coolant']),
  examples: [
    {
      // 8.108 / 8.75 − 1 = −7.34 %; u = 0.92663 × 3 % = 2.78 %.
      name: 'Bucket: 10 L in 74 s where 8.75 L/min was predicted',
      from: 'hand: 10 L / 74 s = 8.108 L/min; 8.108 / 8.75 − 1 = −7.34 %; 28 kPa / 8.108² = 0.4259; √(2² + (100/74)²) % = 2.416 %',
      inputs: {
        predicted: '8.75',
        measured: '8.108',
        instrument: '3 %',
        back: 'loop',
        bucket: '10 L',
        bucketSpread: '2 %',
        seconds: '74 s',
        lift: '28 kPa',
        liftSpread: '5 %',
      },
      outputs: {
        error: '-7.34 %',
        spread: '2.78 %',
        flow: '8.108 L/min',
        flowSpread: '0.196 L/min',
        loop: '0.4259',
      },
      findings: { error: 'pass', back: 'pass' },
    },
    {
      name: 'GUM-style: 5000 ± 150 W over 5 ± 0.3 K',
      // √(0.03² + 0.06²) = 0.06708; 5000 / 5 = 1000 W/K ± 67.08. The two thermometers give 0.3 K together: 0.3/√2 each.
      from: 'JCGM 100, 5.1.2, on K = Q/ΔT: u/K = √(3 %² + 6 %²) = 6.708 %',
      inputs: {
        predicted: '1200',
        measured: '1000',
        instrument: '7 %',
        back: 'radiator',
        heat: '5000 W',
        heatSpread: '3 %',
        coolant: '40 °C',
        air: '35 °C',
        thermometer: '0.212132 K',
      },
      outputs: { conductance: '1000 W/K', conductanceSpread: '67.08 W/K', error: '-16.67 %' },
      findings: { error: 'watch', back: 'pass' },
    },
    {
      name: 'Cell of 25 V open and 24 V at 10 A',
      from: 'Bird, electrical circuit theory, example 4.3, p. 36: 0.1 Ω',
      inputs: {
        predicted: '70',
        measured: '100',
        back: 'pack',
        sag: '1 V',
        step: '10 A',
      },
      outputs: { resistance: '0.1 Ω', error: '42.9 %' },
      findings: { error: 'stop', back: 'watch' },
    },
    {
      name: 'threshold case: the ± is wider than the difference',
      from: 'threshold case',
      inputs: {
        predicted: '10',
        measured: '10.5',
        instrument: '8 %',
        back: 'pack',
        sag: '0.5 V',
        step: '5 A',
      },
      outputs: {},
      findings: { error: 'unknown', back: 'unknown' },
    },
    {
      name: 'threshold case: coolant colder than the air',
      from: 'threshold case',
      inputs: {
        predicted: '1',
        measured: '1.02',
        instrument: '1 %',
        back: 'radiator',
        heat: '500 W',
        coolant: '20 °C',
        air: '25 °C',
      },
      outputs: { conductance: 'cannot tell' },
      findings: { error: 'pass', back: 'unknown' },
    },
  ],
})
