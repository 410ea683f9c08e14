/**
 * A pressure held for a while: how much of the drop is cooling of the trapped air, how much is a leak.
 *
 * In: gauge pressures and temperatures at the start and the end, the time, the weakest rating. Out:
 * the pressure to expect and what is lost beyond it. Gas laws want absolute pressure: a gauge reading
 * put into them makes the correction several times too small.
 */
import { standardPressure } from '../air.ts'
import { defineCalculator, type Level } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** s; common practice. */
const fullTest = 15 * 60
/** Share of the starting gauge pressure lost in a full test; common practice. */
const lossWatch = 0.02
const lossStop = 0.05
/** Pa gauge; common practice for a vehicle's coolant loop. */
const usualMost = 100e3
/** K between start and end; common practice. */
const steadyWithin = 5

export const leakTest = defineCalculator({
  id: 'leak-test',
  title: words`Leak test by pressure`,
  phase: 'cooling',
  purpose: words`Tells a leak from cooling air when a coolant loop is pumped up and watched, and holds the test pressure against the weakest part.`,
  inputs: {
    start: {
      type: 'number',
      label: words`Pressure at the start`,
      symbol: 'p_1',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
      hard: [5, 400],
      usual: [30, 150],
      help: words`Read after a minute, when the pumped air has cooled.`,
    },
    end: {
      type: 'number',
      label: words`Pressure at the end`,
      symbol: 'p_2',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
      hard: [0, 500],
      usual: [0, 150],
      help: words`On the same gauge.`,
    },
    duration: {
      type: 'number',
      label: words`Held for`,
      symbol: 't',
      of: 'time',
      units: ['min', 'min'],
      hard: [1, 1440],
      usual: [5, 120],
      help: words`Between the two readings.`,
    },
    startTemperature: {
      type: 'number',
      label: words`Temperature at the start`,
      symbol: 'T_1',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-30, 80],
      usual: [0, 45],
      help: words`Of the tank with the trapped air, by touch probe.`,
    },
    endTemperature: {
      type: 'number',
      label: words`Temperature at the end`,
      symbol: 'T_2',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-30, 80],
      usual: [0, 45],
      help: words`At the same place.`,
    },
    division: {
      type: 'number',
      label: words`Smallest change the gauge shows`,
      symbol: 'δ',
      of: 'pressure',
      units: ['kPa', 'psi'],
      hard: [0.01, 50],
      usual: [0.1, 7],
      help: words`Half a division of its scale.`,
      assume: { value: 1, because: words`half a division of a hand pump’s gauge` },
    },
    weakest: {
      type: 'number',
      label: words`Weakest part is rated for`,
      symbol: 'p_w',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
      hard: [1, 2000],
      usual: [50, 300],
      help: words`The least of cold plate, pump, radiator, tank and hose, from their sheets.`,
      optional: true,
    },
    cap: {
      type: 'number',
      label: words`Cap opens at`,
      symbol: 'p_c',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
      hard: [0, 300],
      usual: [30, 150],
      help: words`Stamped on it; leave out for an open tank.`,
      optional: true,
    },
    altitude: {
      type: 'number',
      label: words`Altitude`,
      symbol: 'h',
      of: 'length',
      units: ['m', 'ft'],
      hard: [-400, 5000],
      usual: [0, 2500],
      help: words`Of the workshop.`,
      assume: {
        value: 0,
        because: words`at sea level; 1000 m change the correction by a twentieth`,
      },
    },
  },
  outputs: {
    expected: {
      type: 'number',
      label: words`To expect without a leak`,
      symbol: 'p_e',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
    },
    thermal: {
      type: 'number',
      label: words`Drop from cooling`,
      symbol: 'Δp_T',
      of: 'pressure',
      units: ['kPa', 'psi'],
    },
    residual: {
      type: 'number',
      label: words`Drop that is left`,
      symbol: 'Δp',
      of: 'pressure',
      units: ['kPa', 'psi'],
    },
    lost: {
      type: 'number',
      label: words`Lost in 15 minutes`,
      symbol: 'ℓ',
      of: 'fraction',
      units: ['%', '%'],
    },
    limit: {
      type: 'number',
      label: words`Highest pressure to test at`,
      symbol: 'p_max',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
    },
  },
  formula: [
    String.raw`p_e = (p_1 + p_\text{air})\frac{T_2}{T_1} - p_\text{air}, \qquad \Delta p = p_e - p_2`,
    String.raw`\ell = \frac{\Delta p}{p_1}\cdot\frac{15\,\text{min}}{t}`,
  ],
  validity: [
    words`For air trapped above the coolant at the temperature that was measured; its volume is taken as fixed. Hoses that give and coolant that shrinks lower the pressure further and look like a leak.`,
    words`The loss is scaled to 15 minutes in proportion to time.`,
    words`A pressure test finds what leaks cold. It is repeated hot, and dry paper under every joint shows where.`,
  ],
  checks: {
    rating: {
      title: words`Test pressure and ratings`,
      basis: 'the parts’ own sheets and the cap; common practice (100 kPa)',
      never: true,
    },
    loss: { title: words`Loss beyond cooling`, basis: 'common practice' },
    duration: { title: words`Long enough`, basis: 'common practice' },
    steady: { title: words`Temperature steady`, basis: 'common practice' },
  },
  hazards: ['hot-coolant', 'coolant-poison', 'leak-onto-high-voltage'],
  sources: [
    {
      title: 'Amontons’ law: pressure of a fixed volume of gas goes with its kelvin',
      trust: 'read',
    },
    {
      title: 'Workshop manuals: 104 kPa (15 psi); more than 2 psi in 2 minutes is a leak',
      trust: 'read',
    },
    { title: 'US Standard Atmosphere 1976', trust: 'read' },
  ],
  compute({ start, end, duration, startTemperature, endTemperature, weakest, cap, altitude }) {
    const air = standardPressure(altitude)
    const expected = ((start + air) * endTemperature) / startTemperature - air
    return {
      expected,
      thermal: start - expected,
      residual: expected - end,
      lost: ((expected - end) / start) * (fullTest / duration),
      limit: weakest === undefined ? undefined : Math.min(weakest, cap ?? Infinity, usualMost),
    }
  },
  findings(input, { expected, residual = 0, lost = 0, limit }, say) {
    const { start, end, duration, weakest, cap, division } = input
    const kPa = (value: number | undefined) => say(value, 'kPa gauge')
    const rated = Math.min(weakest ?? Infinity, cap ?? Infinity)
    const ratingLevel: Level =
      start > rated
        ? 'stop'
        : weakest === undefined
          ? 'unknown'
          : start > usualMost
            ? 'watch'
            : 'pass'
    // What the gauge cannot show within this time, as a loss.
    const blind = (division / start) * (fullTest / duration)
    const graded: Level = lost <= lossWatch ? 'pass' : lost <= lossStop ? 'watch' : 'stop'
    const rose = lost < -lossWatch && residual < -division
    const lossLevel: Level = rose
      ? 'unknown'
      : graded === 'pass' && blind > lossWatch
        ? 'unknown'
        : graded
    const apart = Math.abs(input.endTemperature - input.startTemperature)
    const percent = say(Math.abs(lost), '%', 2)
    return [
      {
        check: 'rating',
        level: ratingLevel,
        text: {
          stop: words`${kPa(start)} is above what the weakest part or the cap is made for, ${kPa(rated === Infinity ? undefined : rated)}: let it down and test lower.`,
          unknown: words`The weakest part’s rating is not given: look it up before pumping.`,
          watch: words`${kPa(start)} is within the ratings and more than a coolant loop is commonly tested at.`,
          pass: words`${kPa(start)} is within every rating.`,
        }[ratingLevel],
        threshold:
          limit === undefined
            ? words`at most the weakest rating and the cap (stop), and ${kPa(usualMost)} (watch)`
            : words`at most the weakest rating and the cap (stop), and ${kPa(usualMost)} (watch): here ${kPa(limit)}`,
      },
      {
        check: 'loss',
        level: lossLevel,
        text: rose
          ? words`The pressure is ${kPa(end)} and should be ${kPa(expected)}: it rose, so the trapped air was not at the temperature measured. Repeat it in the shade.`
          : lossLevel === 'unknown'
            ? words`The gauge shows no less than ${say(division, 'kPa', 2)}, which is more than the limit in this time: hold it longer or use a finer gauge.`
            : lossLevel === 'pass'
              ? words`It reads ${kPa(end)}; ${kPa(expected)} is to be expected from the temperature.`
              : words`It reads ${kPa(end)} where ${kPa(expected)} is to be expected: ${percent} in 15 minutes goes somewhere. Look for it with paper and soap at every joint, tighten, repeat.`,
        threshold: words`at most 2 % of the starting pressure in 15 minutes (watch), 5 % (stop)`,
      },
      {
        check: 'duration',
        level: duration >= fullTest ? 'pass' : 'watch',
        text:
          duration >= fullTest
            ? words`It was held for ${say(duration, 'min')}.`
            : words`It was held for ${say(duration, 'min')}: a slow leak needs 15 minutes to show.`,
        threshold: words`at least 15 minutes`,
      },
      {
        check: 'steady',
        level: apart <= steadyWithin ? 'pass' : 'watch',
        text:
          apart <= steadyWithin
            ? words`The temperature changed by ${say(apart, 'K', 2)}.`
            : words`The temperature changed by ${say(apart, 'K', 2)}: the correction is larger than the leak looked for. Wait until it is steady.`,
        threshold: words`at most ${say(steadyWithin, 'K', 1)} between the readings`,
      },
    ]
  },
  working(input, { expected, residual, lost }, say) {
    const air = standardPressure(input.altitude)
    return [
      `p_e = (${say(input.start, 'kPa gauge', 4)} + ${say(air, 'kPa abs', 4)}) × ${say(input.endTemperature, 'K', 5)} / ${say(input.startTemperature, 'K', 5)} − ${say(air, 'kPa abs', 4)} = ${say(expected, 'kPa gauge', 4)}`,
      `Δp = ${say(expected, 'kPa gauge', 4)} − ${say(input.end, 'kPa gauge', 4)} = ${say(residual, 'kPa')}`,
      `ℓ = ${say(residual, 'kPa')} / ${say(input.start, 'kPa')} × 15 min / ${say(input.duration, 'min')} = ${say(lost, '%', 2)}`,
    ]
  },
  examples: [
    {
      name: 'A spray can left in the sun',
      from: 'OpenStax, Chemistry 2e, example 9.5: 24 °C and 360 kPa, at 50 °C 390 kPa, both absolute; here less 101.325',
      inputs: {
        start: '258.675 kPa gauge',
        end: '288.675 kPa gauge',
        duration: '15 min',
        startTemperature: '24 °C',
        endTemperature: '50 °C',
      },
      outputs: { expected: '288.675 kPa gauge' },
      tolerance: 0.0175,
      why: 'the book rounds 391.5 to two figures, 390 ± 5',
      findings: { rating: 'unknown', steady: 'watch' },
    },
    {
      // (100 + 101.325) × 293.15 / 298.15 − 101.325 = 96.6237; 100 − 96.6237 = 3.3763.
      name: 'Five kelvin cooler, no leak',
      from: 'hand: 201.325 kPa × 293.15 / 298.15 − 101.325 kPa',
      inputs: {
        start: '100 kPa gauge',
        end: '96.0 kPa gauge',
        duration: '15 min',
        startTemperature: '25 °C',
        endTemperature: '20 °C',
        weakest: '150 kPa gauge',
        cap: '110 kPa gauge',
      },
      outputs: {
        expected: '96.624 kPa gauge',
        thermal: '3.376 kPa',
        residual: '0.624 kPa',
        lost: '0.62 %',
        limit: '100 kPa gauge',
      },
      findings: { rating: 'pass', loss: 'pass', duration: 'pass', steady: 'pass' },
    },
    {
      // 2/15 of the pressure in 2 min, 7.5 times that in 15 min: 100 %.
      name: 'A workshop manual’s limit: 2 psi of 15 in 2 minutes',
      from: 'hand: 2 / 15 × 15 min / 2 min',
      inputs: {
        start: '15 psi gauge',
        end: '13 psi gauge',
        duration: '2 min',
        startTemperature: '20 °C',
        endTemperature: '20 °C',
        weakest: '14 psi gauge',
      },
      outputs: { residual: '2.00 psi', lost: '100.0 %' },
      findings: { rating: 'stop', loss: 'stop', duration: 'watch' },
    },
    {
      name: 'A slow leak under high pressure',
      from: 'threshold case',
      inputs: {
        start: '120 kPa gauge',
        end: '112 kPa gauge',
        duration: '30 min',
        startTemperature: '20 °C',
        endTemperature: '20 °C',
        weakest: '300 kPa gauge',
      },
      outputs: {},
      findings: { rating: 'watch', loss: 'watch' },
    },
    {
      name: 'A gauge too coarse for the time',
      from: 'threshold case',
      inputs: {
        start: '50 kPa gauge',
        end: '50 kPa gauge',
        duration: '5 min',
        startTemperature: '20 °C',
        endTemperature: '20 °C',
        division: '2 kPa',
        weakest: '100 kPa gauge',
      },
      outputs: {},
      findings: { loss: 'unknown' },
    },
  ],
})
