/**
 * An electric cabin heater: current, fuse, what protects it, and what it takes from the range.
 *
 * In: power at its rated voltage, the pack's highest voltage, protection, the drive. Out: amperes,
 * fuse, kilometres lost. A wire element draws more than rated on a full pack: power goes with the
 * square of the voltage. A limit that resets itself can weld shut; it is not the last line.
 */
import { defineCalculator, type InputValues, type Level, type Say } from '../define.ts'
import { bladeRatings } from '../fuses.ts'
import { words } from '../../src/words/words.ts'

/** Continuous share of a fuse's rating; common practice. */
const fuseLoading = 0.8
/** Standard ratings in A above what blade fuses are made for, IEC 60269-1 (recalled). */
const cartridges = [
  2, 4, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630,
]
/** V DC; blade fuses are made for no more. */
const bladeVolts = 32
const blades = [...new Set<number>([...bladeRatings.medium, ...bladeRatings.maxi])]
/** Of the range; common practice. */
const rangeWatch = 0.2
/** V DC: a high voltage source above this, FMVSS 305. */
const highVoltage = 60

const fitted = { yes: words`fitted`, no: words`not fitted`, unknown: words`not known` } as const

const inputs = {
  power: {
    type: 'number',
    label: words`Heater power`,
    symbol: 'P_r',
    of: 'power',
    units: ['kW', 'kW'],
    hard: [0.05, 15],
    usual: [0.5, 6],
    help: words`On its plate.`,
    choice: true,
  },
  ratedVolts: {
    type: 'number',
    label: words`at`,
    symbol: 'U_r',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [6, 1000],
    usual: [12, 450],
    help: words`The voltage on its plate.`,
  },
  highestVolts: {
    type: 'number',
    label: words`Highest voltage of its supply`,
    symbol: 'U',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [6, 1000],
    usual: [12, 450],
    help: words`The full pack, or the 12 V side on charge.`,
  },
  element: {
    type: 'choice',
    label: words`Element`,
    help: words`A PTC element limits itself; wire does not.`,
    options: { wire: words`resistance wire`, ptc: words`PTC, ceramic` },
    choice: true,
  },
  fuse: {
    type: 'number',
    label: words`Fuse fitted`,
    symbol: 'I_f',
    of: 'current',
    units: ['A', 'A'],
    hard: [0.5, 800],
    usual: [2, 250],
    help: words`Its own, not the main fuse.`,
    choice: true,
    optional: true,
  },
  fuseVolts: {
    type: 'number',
    label: words`Fuse is made for`,
    symbol: 'U_f',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [6, 1500],
    usual: [32, 1000],
    help: words`Its DC voltage; an AC figure does not count.`,
    optional: true,
  },
  contactorVolts: {
    type: 'number',
    label: words`Contactor breaks`,
    symbol: 'U_c',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [6, 1500],
    usual: [12, 1000],
    help: words`Its DC voltage at this current.`,
    optional: true,
  },
  wireRating: {
    type: 'number',
    label: words`Wire carries`,
    symbol: 'I_w',
    of: 'current',
    units: ['A', 'A'],
    hard: [0.5, 1000],
    usual: [5, 250],
    help: words`From its table, with derating.`,
    optional: true,
  },
  cutOut: {
    type: 'choice',
    label: words`Thermal cut-out that resets itself`,
    help: words`Opens when the element runs hot, closes again when cool.`,
    options: fitted,
    assume: { value: 'unknown', because: words`not looked at` },
  },
  lastLine: {
    type: 'choice',
    label: words`Thermal fuse or hand-reset limit`,
    help: words`Opens for good, apart from the cut-out.`,
    options: fitted,
    assume: { value: 'unknown', because: words`not looked at` },
  },
  interlock: {
    type: 'choice',
    label: words`Interlock with the blower`,
    help: words`No heat without air: by the blower’s current or an air switch, not by its knob.`,
    options: fitted,
    assume: { value: 'unknown', because: words`not looked at` },
  },
  airFlow: {
    type: 'number',
    label: words`Air of the blower`,
    symbol: 'V̇',
    of: 'flow',
    units: ['m³/h', 'cfm'],
    hard: [5, 2000],
    usual: [30, 500],
    help: words`Through the heater, at its lowest speed.`,
    optional: true,
  },
  minutes: {
    type: 'number',
    label: words`Heated drive`,
    symbol: 't',
    of: 'time',
    units: ['min', 'min'],
    hard: [0, 1440],
    usual: [5, 180],
    help: words`How long it is on in a winter trip.`,
  },
  duty: {
    type: 'number',
    label: words`On for`,
    symbol: 'd',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 100],
    usual: [20, 100],
    help: words`Share of that time, by thermostat.`,
    assume: { value: 100, because: words`an old body loses what it gets` },
  },
  consumption: {
    type: 'number',
    label: words`Consumption of the drive`,
    symbol: 'e',
    of: 'consumption',
    units: ['Wh/km', 'Wh/mi'],
    hard: [30, 3000],
    usual: [90, 700],
    help: words`Without the heater.`,
    optional: true,
  },
  energy: {
    type: 'number',
    label: words`Usable energy of the pack`,
    symbol: 'E',
    of: 'energy',
    units: ['kWh', 'kWh'],
    hard: [0.5, 500],
    usual: [5, 100],
    help: words`In the cold.`,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

/** Power at the highest voltage; a PTC element is taken at its rating. */
const most = ({ power, ratedVolts, highestVolts, element }: Inputs) =>
  element === 'wire' ? power * (highestVolts / ratedVolts) ** 2 : power

/** Largest current: wire at the highest voltage; PTC where the voltage is least of the two. */
const current = (input: Inputs) =>
  input.element === 'wire'
    ? most(input) / input.highestVolts
    : input.power / Math.min(input.ratedVolts, input.highestVolts)

/** As it is stamped: no figure more. */
const stamped = (say: Say, rating: number | undefined) =>
  say(rating, 'A', String(rating ?? '').replace('.', '').length || 1)

/** Air near 20 °C, J/(m³·K): 1.2 kg/m³ × 1006 J/(kg·K). */
const airHeat = 1207

export const cabinHeater = defineCalculator({
  id: 'cabin-heater',
  title: words`Cabin heater and demist`,
  phase: 'auxiliary',
  purpose: words`Current and fuse of an electric cabin heater at the highest voltage, whether its protection is complete, and what it takes from the range.`,
  inputs,
  outputs: {
    current: {
      type: 'number',
      label: words`Draws at most`,
      symbol: 'I',
      of: 'current',
      units: ['A', 'A'],
    },
    mostPower: {
      type: 'number',
      label: words`Heat at most`,
      symbol: 'P',
      of: 'power',
      units: ['kW', 'kW'],
    },
    nextFuse: {
      type: 'number',
      label: words`Fuse`,
      symbol: 'I_n',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    fuseInHand: {
      type: 'number',
      label: words`Current in hand below it`,
      symbol: '0.8 I_n − I',
      of: 'current',
      units: ['A', 'A'],
    },
    airRise: {
      type: 'number',
      label: words`Air gets warmer by`,
      symbol: 'ΔT',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    used: { type: 'number', label: words`Takes`, symbol: 'W', of: 'energy', units: ['kWh', 'kWh'] },
    distance: {
      type: 'number',
      label: words`Costs in distance`,
      symbol: 's',
      of: 'length',
      units: ['km', 'mi'],
    },
    rangeShare: {
      type: 'number',
      label: words`Of the range`,
      symbol: 'W/E',
      of: 'fraction',
      units: ['%', '%'],
    },
  },
  formula: [
    String.raw`P = P_r\left(\frac{U}{U_r}\right)^2 \text{ (wire)}, \qquad I = \frac{P}{U}, \qquad I_n \ge \frac{I}{0.8}`,
    String.raw`W = P_r\,d\,t, \qquad s = \frac{W}{e}, \qquad \Delta T = \frac{P}{1207\,\text{J/(m³·K)}\;\dot V}`,
  ],
  validity: [
    words`Wire is taken as a fixed resistance. A PTC element is taken at its rated power; cold it draws up to twice that for seconds, which its sheet tells and a slow fuse rides.`,
    words`Up to 32 V the ratings are those of blade fuses, above those of cartridge fuses.`,
    words`The energy is that of the rated power; on a falling pack voltage a wire element takes less.`,
    words`Air of 1.2 kg/m³; all heat goes into it.`,
  ],
  checks: {
    voltage: {
      title: words`Fuse and contactor voltage`,
      basis: 'the parts’ own sheets: DC rating not below the highest voltage',
      never: true,
    },
    fuse: { title: words`Fuse between heater and wire`, basis: 'common practice' },
    protection: {
      title: words`Overheating`,
      basis:
        'common practice; published: IEC 60364-4-42, 424.1.1 (forced-air heating: two independent temperature limits)',
    },
    range: { title: words`Range`, basis: 'common practice' },
  },
  hazards: ['wiring-fire', 'range-promise'],
  sources: [
    {
      title: 'IEC 60364-4-42, forced air heating systems',
      at: '424.1.1, as in a national rule: thermostat and thermal cut-out, independent, the cut-out without automatic reset',
      trust: 'read',
    },
    {
      title: 'HVAC trade notes: an automatic-reset limit that cycles can weld shut',
      trust: 'read',
    },
    { title: 'IEC 60269-1, standard fuse ratings', trust: 'recalled' },
  ],
  compute(input) {
    const draws = current(input)
    const ratings = input.highestVolts > bladeVolts ? cartridges : blades
    const next = ratings.find((rating) => rating * fuseLoading >= draws * (1 - 1e-9))
    const used = input.power * input.duty * input.minutes
    return {
      current: draws,
      mostPower: most(input),
      nextFuse: next,
      fuseInHand: next === undefined ? undefined : next * fuseLoading - draws,
      airRise: input.airFlow === undefined ? undefined : most(input) / (airHeat * input.airFlow),
      used,
      distance: input.consumption === undefined ? undefined : used / input.consumption,
      rangeShare: input.energy === undefined ? undefined : used / input.energy,
    }
  },
  findings(input, { current: draws = 0, nextFuse, used, distance, rangeShare }, say) {
    const { highestVolts, fuseVolts, contactorVolts, fuse, wireRating } = input
    const { cutOut, lastLine, interlock } = input
    const A = (value: number | undefined) => say(value, 'A')
    const lowFuse = fuseVolts !== undefined && fuseVolts < highestVolts
    const lowContactor = contactorVolts !== undefined && contactorVolts < highestVolts
    const voltageLevel: Level =
      lowFuse || lowContactor
        ? 'stop'
        : fuseVolts === undefined || contactorVolts === undefined
          ? 'unknown'
          : 'pass'
    const need = draws / fuseLoading
    const chosen = fuse ?? nextFuse
    const large =
      chosen !== undefined && wireRating !== undefined && chosen > wireRating * (1 + 1e-9)
    const small = fuse !== undefined && fuse < draws
    const fuseLevel: Level =
      large || small
        ? 'stop'
        : chosen === undefined || wireRating === undefined
          ? 'unknown'
          : fuse !== undefined && fuse < need * (1 - 1e-9)
            ? 'watch'
            : 'pass'
    const parts = [
      { fit: cutOut, name: words`thermal cut-out` },
      { fit: lastLine, name: words`thermal fuse` },
      { fit: interlock, name: words`blower interlock` },
    ]
    const missing = parts.filter(({ fit }) => fit === 'no').map(({ name }) => name)
    const unknown = parts.filter(({ fit }) => fit === 'unknown').map(({ name }) => name)
    const protectionLevel: Level =
      missing.length === parts.length
        ? 'stop'
        : unknown.length > 0
          ? 'unknown'
          : missing.length > 0
            ? 'watch'
            : 'pass'
    const rangeLevel: Level =
      rangeShare === undefined ? 'unknown' : rangeShare > rangeWatch ? 'watch' : 'pass'
    const takes =
      distance === undefined
        ? words`The trip’s heating takes ${say(used, 'kWh')}, ${say(rangeShare, '%', 2)} of the pack`
        : words`The trip’s heating takes ${say(used, 'kWh')}, ${say(rangeShare, '%', 2)} of the pack or ${say(distance, 'km', 2)}`
    return [
      {
        check: 'voltage',
        level: voltageLevel,
        text:
          voltageLevel === 'stop'
            ? lowFuse && lowContactor
              ? words`The fuse and the contactor is made for less than ${say(highestVolts, 'V')} DC: it arcs and burns instead of opening. Fit one that breaks it.`
              : lowFuse
                ? words`The fuse is made for less than ${say(highestVolts, 'V')} DC: it arcs and burns instead of opening. Fit one that breaks it.`
                : words`The contactor is made for less than ${say(highestVolts, 'V')} DC: it arcs and burns instead of opening. Fit one that breaks it.`
            : voltageLevel === 'unknown'
              ? words`The DC voltages that fuse and contactor break are not both given: read them off the parts.`
              : words`Fuse and contactor break ${say(highestVolts, 'V')} DC.`,
        threshold: words`at least ${say(highestVolts, 'V')} DC each (stop)`,
      },
      {
        check: 'fuse',
        level: fuseLevel,
        text: small
          ? words`The heater draws ${A(draws)}, more than the fuse of ${stamped(say, fuse)}: it blows in the cold. The next standard is ${stamped(say, nextFuse)}.`
          : large
            ? words`A fuse of ${stamped(say, chosen)} does not protect a wire that carries ${A(wireRating)}: thicker wire.`
            : fuseLevel === 'unknown'
              ? nextFuse === undefined && fuse === undefined
                ? words`${A(draws)} is beyond the list of ratings: split the heater.`
                : words`It takes a fuse of ${stamped(say, nextFuse)} of its own; whether the wire stands that is not known.`
              : fuseLevel === 'watch'
                ? words`The fuse of ${stamped(say, fuse)} is loaded above 80 % and tires: ${stamped(say, nextFuse)} on a wire that carries as much.`
                : words`The heater draws ${A(draws)}; a fuse of ${stamped(say, chosen)} carries that and protects the wire.`,
        threshold: words`from ${A(need)} (watch), ${A(draws)} (stop) up to what the wire carries (stop)`,
      },
      {
        check: 'protection',
        level: protectionLevel,
        text:
          protectionLevel === 'pass'
            ? words`Cut-out, thermal fuse and blower interlock are fitted: prove each with the blower stopped.`
            : protectionLevel === 'unknown'
              ? words`Not known: ${unknown.join(', ')}. Open it and look.`
              : protectionLevel === 'stop'
                ? words`Nothing stops it when the blower does: it glows. Fit a cut-out, a thermal fuse apart from it, and an interlock.`
                : words`Not fitted: ${missing.join(', ')}. ${lastLine === 'no' ? words`A cut-out that resets itself can weld shut.` : words`One failure is then enough to overheat it.`}`,
        threshold: words`cut-out, thermal fuse and blower interlock (watch), at least one (stop)`,
      },
      {
        check: 'range',
        level: rangeLevel,
        text:
          rangeShare === undefined
            ? words`The usable energy of the pack is not given.`
            : rangeLevel === 'watch'
              ? words`${takes}: warm it while plugged in, heat seat and screen instead.`
              : `${takes}.`,
        threshold: words`at most 20 % of the usable energy (watch)`,
      },
    ]
  },
  working(input, { current: draws, mostPower, nextFuse, used, distance, rangeShare }, say) {
    const { power, ratedVolts, highestVolts, element, duty, minutes, consumption, energy } = input
    return [
      element === 'wire'
        ? `P = P_r (U/U_r)² = ${say(power, 'kW')} × (${say(highestVolts, 'V')} / ${say(ratedVolts, 'V')})² = ${say(mostPower, 'kW')}; I = P / U = ${say(draws, 'A')}`
        : `I = P_r / U = ${say(power, 'kW')} / ${say(Math.min(ratedVolts, highestVolts), 'V')} = ${say(draws, 'A')}`,
      words`I / 0.8 = ${say((draws ?? 0) / fuseLoading, 'A')}, next standard ${stamped(say, nextFuse)}`,
      `W = P_r d t = ${say(power, 'kW')} × ${say(duty, '%')} × ${say(minutes, 'min')} = ${say(used, 'kWh')}`,
      ...(consumption === undefined
        ? []
        : [
            `s = W / e = ${say(used, 'kWh')} / ${say(consumption, 'Wh/km')} = ${say(distance, 'km')}`,
          ]),
      ...(energy === undefined
        ? []
        : [`W / E = ${say(used, 'kWh')} / ${say(energy, 'kWh')} = ${say(rangeShare, '%')}`]),
    ]
  },
  moreHazards: ({ highestVolts }) =>
    highestVolts > highVoltage ? ['high-voltage', 'arc-and-short'] : ['low-voltage-burns'],
  examples: [
    {
      // 1.5 kW × (131.4/115)² = 1.9583 kW; / 131.4 V = 14.904 A; / 0.8 = 18.63 A.
      name: 'A household element on a pickup’s pack',
      from: 'hand: 1.5 kW × (131.4 / 115)² / 131.4 V; 1.5 kWh / 286 Wh/km',
      inputs: {
        power: '1.5 kW',
        ratedVolts: '115 V',
        highestVolts: '131.4 V',
        element: 'wire',
        fuseVolts: '250 V',
        contactorVolts: '150 V',
        wireRating: '25 A',
        cutOut: 'yes',
        lastLine: 'yes',
        interlock: 'yes',
        airFlow: '150 m³/h',
        minutes: '60 min',
        consumption: '286 Wh/km',
        energy: '27.42 kWh',
      },
      outputs: {
        mostPower: '1.958 kW',
        current: '14.90 A',
        nextFuse: '20 A',
        used: '1.50 kWh',
        distance: '5.24 km',
        rangeShare: '5.47 %',
        airRise: '38.9 K',
      },
      findings: { voltage: 'pass', fuse: 'pass', protection: 'pass', range: 'pass' },
    },
    {
      // 5000 W / 350 V = 14.286 A; / 0.8 = 17.857 A -> 20 A. 5 kW × 1.5 h × 0.8 = 6 kWh of 24.
      name: 'PTC of 5 kW at 350 V',
      from: 'hand: 5 kW / 350 V; 5 kW × 80 % × 90 min / 24 kWh',
      inputs: {
        power: '5 kW',
        ratedVolts: '350 V',
        highestVolts: '403 V',
        element: 'ptc',
        fuse: '16 A',
        fuseVolts: '500 V',
        wireRating: '20 A',
        cutOut: 'yes',
        lastLine: 'no',
        interlock: 'yes',
        minutes: '90 min',
        duty: '80 %',
        energy: '24 kWh',
      },
      outputs: { current: '14.29 A', nextFuse: '20 A', used: '6 kWh', rangeShare: '25 %' },
      findings: { voltage: 'unknown', fuse: 'watch', protection: 'watch', range: 'watch' },
    },
    {
      name: 'Everything wrong',
      from: 'threshold case',
      inputs: {
        power: '3 kW',
        ratedVolts: '120 V',
        highestVolts: '160 V',
        element: 'wire',
        fuse: '30 A',
        fuseVolts: '32 V',
        wireRating: '40 A',
        cutOut: 'no',
        lastLine: 'no',
        interlock: 'no',
        minutes: '30 min',
      },
      outputs: {},
      findings: { voltage: 'stop', fuse: 'stop', protection: 'stop', range: 'unknown' },
    },
    {
      name: 'Thin wire, nothing looked at',
      from: 'threshold case',
      inputs: {
        power: '0.3 kW',
        ratedVolts: '12 V',
        highestVolts: '14.4 V',
        element: 'wire',
        wireRating: '25 A',
        minutes: '20 min',
      },
      outputs: {},
      findings: { voltage: 'unknown', fuse: 'stop', protection: 'unknown' },
    },
  ],
})
