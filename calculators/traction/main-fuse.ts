/**
 * The main fuse of the pack, with the cable and the contactor it must work with.
 *
 * In: the pack at its fiercest and at its weakest, the fuse's sheet, the cable, the contactor. Out:
 * the current a short drives at the pack terminals, the least a far short drives, what is in hand.
 * The rating to break is held against the highest voltage over the lowest resistance (new, warm
 * cells): a mean or cold resistance makes a fuse look good that will burst.
 */
import { cellsInParallel, cellsInSeries } from '../cell-fields.ts'
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { exactly } from '../exactly.ts'
import { logLog } from '../log-log.ts'
import { tractionFuseRatings } from '../tables/traction-fuse-ratings.ts'
import { flexiblePerMetre, heated } from '../wire.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** RMS current of the drive over the fuse rating; common practice. */
const loadWatch = 0.7
const loadStop = 0.85
/** Peak over the current that melts the fuse in the peak's time; 50 % published, 80 % common practice. */
const peakWatch = 0.5
const peakStop = 0.8
/** A·√s/mm²; IEC 60364-5-54, copper from its full working temperature. */
const heatFactor = { pvc: 115, crosslinked: 143 } as const
/** s; longer than this a conductor sheds heat and its rating counts. */
const adiabatic = 5
/** Of a conductor at work, for the weakest fault. */
const hotCable = 363.15
const touchVoltage = 60

interface Point {
  readonly current: number
  readonly time: number
}

/** Melting points by rising time; undefined when a longer time is not a smaller current. */
function meltCurve(points: readonly Point[] | undefined): readonly Point[] | undefined {
  if (points === undefined) return undefined
  const sorted = [...points].sort((a, b) => a.time - b.time)
  const falls = sorted.every(({ current, time }, i) => {
    const before = sorted[i - 1]
    return before === undefined || (before.time < time && before.current > current)
  })
  return falls ? sorted : undefined
}
const meltingCurrent = (curve: readonly Point[] | undefined, time: number) =>
  logLog(curve?.map((point) => [point.time, point.current] as const) ?? [], time)
const meltingTime = (curve: readonly Point[] | undefined, current: number) =>
  logLog(curve?.map((point) => [point.current, point.time] as const).reverse() ?? [], current)

const least = (...values: readonly (number | undefined)[]): number | undefined =>
  values.includes(undefined) ? undefined : Math.min(...values.map((value) => value ?? NaN))

export const mainFuse = defineCalculator({
  id: 'main-fuse',
  title: words`Main fuse, cable and contactor`,
  phase: 'traction',
  purpose: words`Works out what a short circuit drives at the pack terminals and at the far end of the cable, and holds fuse, cable and contactor against it and against the drive.`,
  inputs: {
    voltage: {
      type: 'number',
      label: words`Highest pack voltage`,
      symbol: 'U_max',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [2, 1000],
      usual: [24, 900],
      help: words`Fully charged, regenerating.`,
    },
    lowVoltage: {
      type: 'number',
      label: words`Lowest pack voltage`,
      symbol: 'U_min',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 1000],
      usual: [18, 800],
      help: words`Nearly empty.`,
      optional: true,
    },
    series: cellsInSeries,
    parallel: cellsInParallel,
    cellResistance: {
      type: 'number',
      label: words`Lowest cell resistance`,
      symbol: 'r_min',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0.01, 500],
      usual: [0.1, 5],
      help: words`New and warm.`,
    },
    coldResistance: {
      type: 'number',
      label: words`Highest cell resistance`,
      symbol: 'r_max',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0.01, 5000],
      usual: [0.2, 20],
      help: words`Old and cold.`,
      optional: true,
    },
    links: {
      type: 'number',
      label: words`Links and joints in the pack`,
      symbol: 'R_links',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0, 500],
      usual: [0, 20],
      help: words`Up to the terminals.`,
      assume: { value: 0, because: words`gives the higher current` },
    },
    cable: {
      type: 'number',
      label: words`Traction cable`,
      symbol: 'A',
      of: 'wireArea',
      units: ['mm²', 'AWG'],
      hard: [1, 300],
      usual: [16, 150],
      help: words`The thinnest behind the fuse.`,
      choice: true,
      optional: true,
    },
    length: {
      type: 'number',
      label: words`Cable length, out and back`,
      symbol: 'L',
      of: 'length',
      units: ['m', 'ft'],
      hard: [0, 60],
      usual: [1, 20],
      help: words`Of the longest loop.`,
      optional: true,
    },
    rest: {
      type: 'number',
      label: words`Fuse, contactors and joints outside`,
      symbol: 'R_rest',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0, 100],
      usual: [0.2, 5],
      help: words`For a far short.`,
      assume: { value: 1, because: words`fuse, two contactors, lugs` },
    },
    inductance: {
      type: 'number',
      label: words`Loop inductance`,
      symbol: 'L_loop',
      of: 'inductance',
      units: ['µH', 'µH'],
      hard: [0.05, 100000],
      usual: [1, 50],
      help: words`About 1 µH a metre, cables side by side.`,
      optional: true,
    },
    insulation: {
      type: 'choice',
      label: words`Cable insulation`,
      help: words`Sets how hot a short may make it.`,
      options: { pvc: words`PVC, 70 °C`, crosslinked: words`cross-linked, 90 °C or more` },
      choice: true,
      assume: { value: 'pvc', because: words`the lower of the two` },
    },
    cableRating: {
      type: 'number',
      label: words`Cable carries`,
      symbol: 'I_cable',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 2000],
      usual: [50, 500],
      help: words`Continuous, as laid, from its sheet.`,
      optional: true,
    },
    partRating: {
      type: 'number',
      label: words`Weakest other part carries`,
      symbol: 'I_part',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 2000],
      usual: [50, 600],
      help: words`Continuous: contactor, plug, links.`,
      optional: true,
    },
    running: {
      type: 'number',
      label: words`RMS current of the drive`,
      symbol: 'I_rms',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 2000],
      usual: [20, 600],
      help: words`Over the hardest half hour.`,
    },
    peak: {
      type: 'number',
      label: words`Peak current`,
      symbol: 'I_peak',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 5000],
      usual: [50, 1500],
      help: words`The controller’s battery current limit.`,
    },
    peakTime: {
      type: 'number',
      label: words`Peak lasts`,
      symbol: 't_peak',
      of: 'time',
      units: ['s', 's'],
      hard: [0.01, 3600],
      usual: [1, 120],
      help: words`The longest in use.`,
      assume: { value: 30, because: words`one long overtaking or hill` },
    },
    fuse: {
      type: 'number',
      label: words`Fuse rating`,
      symbol: 'I_fuse',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 2000],
      usual: [30, 800],
      help: words`On its body.`,
      choice: true,
    },
    fuseVoltage: {
      type: 'number',
      label: words`Fuse voltage, DC`,
      symbol: 'U_fuse',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 2000],
      usual: [58, 1000],
      help: words`The DC figure.`,
      optional: true,
    },
    current: {
      type: 'choice',
      label: words`Fuse and contactor rated for`,
      help: words`AC figures do not count.`,
      options: {
        dc: words`DC, both of them`,
        ac: words`AC only, one or both`,
        unknown: words`not known yet`,
      },
      choice: true,
      optional: true,
    },
    interrupt: {
      type: 'number',
      label: words`Fuse breaks up to`,
      symbol: 'I_1',
      of: 'current',
      units: ['kA', 'kA'],
      hard: [0.1, 300],
      usual: [1, 100],
      help: words`Interrupting rating at its DC voltage.`,
      optional: true,
    },
    minimumBreaking: {
      type: 'number',
      label: words`Fuse breaks from`,
      symbol: 'I_3',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 20000],
      usual: [100, 5000],
      help: words`Minimum breaking current; below it the fuse arcs on.`,
      optional: true,
    },
    fuseConstant: {
      type: 'number',
      label: words`Fuse tested at L/R`,
      symbol: 'τ_fuse',
      of: 'time',
      units: ['ms', 'ms'],
      hard: [0.1, 100],
      usual: [1, 25],
      help: words`Beside the DC voltage on its sheet.`,
      optional: true,
    },
    clearing: {
      type: 'number',
      label: words`Fuse clearing integral`,
      symbol: 'I²t',
      of: 'meltingIntegral',
      units: ['A²s', 'A²s'],
      hard: [10, 1e9],
      usual: [5000, 5e6],
      help: words`Total, melting and arcing, at pack voltage.`,
      optional: true,
    },
    meltAtPeak: {
      type: 'number',
      label: words`Fuse melts, in the peak’s time, at`,
      symbol: 'I_melt,peak',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 20000],
      usual: [100, 5000],
      help: words`Off its curve; or give the curve.`,
      optional: true,
    },
    curve: {
      type: 'list',
      label: words`Melting curve`,
      row: words`point`,
      help: words`Points off the sheet.`,
      rows: [2, 30],
      fields: {
        current: {
          type: 'number',
          label: words`Current`,
          symbol: 'I',
          of: 'current',
          units: ['A', 'A'],
          hard: [1, 200000],
          usual: [50, 20000],
          help: words`Read off it.`,
        },
        time: {
          type: 'number',
          label: words`Time`,
          symbol: 't',
          of: 'time',
          units: ['s', 's'],
          hard: [0.0001, 100000],
          usual: [0.001, 1000],
          help: words`Read off it.`,
        },
      },
      optional: true,
    },
    place: {
      type: 'choice',
      label: words`Fuse sits`,
      help: words`Along the cable.`,
      options: {
        terminal: words`at the pack terminal`,
        middle: words`in the middle of the pack`,
        far: words`at the controller`,
      },
      choice: true,
      optional: true,
    },
    contactorVoltage: {
      type: 'number',
      label: words`Contactor voltage, DC`,
      symbol: 'U_contactor',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 2000],
      usual: [48, 1000],
      help: words`At which it breaks.`,
      optional: true,
    },
    contactorBreak: {
      type: 'number',
      label: words`Contactor breaks`,
      symbol: 'I_break',
      of: 'current',
      units: ['A', 'A'],
      hard: [1, 20000],
      usual: [100, 3000],
      help: words`At pack voltage; not what it carries.`,
      optional: true,
    },
    polarised: {
      type: 'choice',
      label: words`Contactor polarity`,
      help: words`Some break in one direction only.`,
      options: {
        no: words`breaks both ways`,
        yes: words`polarised, current one way only`,
        regenerates: words`polarised, and the drive regenerates`,
        allowed: words`polarised, regenerating allowed by its maker`,
      },
      choice: true,
      optional: true,
    },
  },
  outputs: {
    prospective: {
      type: 'number',
      label: words`Short circuit at the pack terminals`,
      symbol: 'I_sc',
      of: 'current',
      units: ['kA', 'kA'],
    },
    packResistance: {
      type: 'number',
      label: words`Lowest pack resistance`,
      symbol: 'R_pack',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    interruptInHand: {
      type: 'number',
      label: words`Breaking rating in hand`,
      symbol: 'ΔI_1',
      of: 'current',
      units: ['kA', 'kA'],
    },
    weakest: {
      type: 'number',
      label: words`Least far short circuit`,
      symbol: 'I_sc,min',
      of: 'current',
      units: ['A', 'A'],
    },
    weakestTime: {
      type: 'number',
      label: words`Fuse melts on it in`,
      symbol: 't_min',
      of: 'time',
      units: ['s', 's'],
    },
    clears: { type: 'text', label: words`Who clears the least short` },
    timeConstant: {
      type: 'number',
      label: words`Longest L/R`,
      symbol: 'τ',
      of: 'time',
      units: ['ms', 'ms'],
    },
    coldConstant: {
      type: 'number',
      label: words`L/R at the least short`,
      symbol: 'τ_min',
      of: 'time',
      units: ['ms', 'ms'],
    },
    loading: {
      type: 'number',
      label: words`RMS current of fuse rating`,
      symbol: 'I_rms/I_fuse',
      of: 'fraction',
      units: ['%', '%'],
    },
    runningInHand: {
      type: 'number',
      label: words`RMS current in hand`,
      symbol: 'ΔI',
      of: 'current',
      units: ['A', 'A'],
    },
    melt: {
      type: 'number',
      label: words`Melts in the peak’s time at`,
      symbol: 'I_melt',
      of: 'current',
      units: ['A', 'A'],
    },
    peakShare: {
      type: 'number',
      label: words`Peak of melting current`,
      symbol: 'I_peak/I_melt',
      of: 'fraction',
      units: ['%', '%'],
    },
    smallest: {
      type: 'number',
      label: words`Smallest fuse for the drive`,
      symbol: 'I_fuse,min',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    largest: {
      type: 'number',
      label: words`Largest fuse for cable and parts`,
      symbol: 'I_fuse,max',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    letThrough: {
      type: 'number',
      label: words`Most the fuse lets through`,
      symbol: 'Q_fuse',
      of: 'meltingIntegral',
      units: ['A²s', 'A²s'],
    },
    cableStands: {
      type: 'number',
      label: words`Cable stands`,
      symbol: 'k²A²',
      of: 'meltingIntegral',
      units: ['A²s', 'A²s'],
    },
  },
  formula: [
    'I_\\text{sc} = \\frac{U_\\text{max}}{N_s r_\\text{min}/N_p + R_\\text{links}}',
    "I_\\text{sc,min} = \\frac{U_\\text{min}}{N_s r_\\text{max}/N_p + R_\\text{links} + L\\,R'(90\\,°\\text{C}) + R_\\text{rest}}",
    '\\tau = L_\\text{loop}/R \\quad I^2 t \\le k^2 A^2',
  ],
  validity: [
    words`Cells are taken as a voltage behind a plain resistance; real cells give somewhat more in the first milliseconds and less after.`,
    words`A capacitor bank in the controller adds to a short between pack and controller and is not counted.`,
    words`Strings in parallel with a fuse each: give one string for its fuse, all of them for the main one.`,
    words`The heat a cable stands holds for shorts up to 5 s; slower ones are covered by the fuse being no larger than the cable’s rating.`,
    words`The longest L/R is taken with the lowest pack resistance and the cable cold, the other at the least short.`,
  ],
  checks: {
    voltage: {
      title: words`Fuse voltage`,
      basis: 'published: Formula SAE rules, EV.6.6.2 a',
      never: true,
    },
    direct: {
      title: words`Rated for DC`,
      basis: 'published: Formula SAE rules, EV.6.6.2 a',
      never: true,
    },
    interrupt: {
      title: words`Short circuit at the terminals`,
      basis: 'published: Formula SAE rules, EV.6.6.2 c',
      never: true,
    },
    contactorVoltage: {
      title: words`Contactor voltage`,
      basis: 'the contactor’s own sheet',
      never: true,
    },
    protects: {
      title: words`Fuse protects cable and parts`,
      basis: 'published: Formula SAE rules, EV.6.6.2 b',
    },
    loading: { title: words`Drive on the fuse`, basis: 'common practice' },
    peak: {
      title: words`Peaks on the fuse`,
      basis: 'published: battery engineering note, 50 % of the melting curve; 80 % common practice',
    },
    weakest: { title: words`Least short circuit`, basis: 'the fuse’s own sheet' },
    constant: { title: words`Inductance of the loop`, basis: 'the fuse’s own sheet' },
    cable: {
      title: words`Cable through the short`,
      basis: 'published: IEC 60364-4-43, table 43A, k values',
    },
    contactor: { title: words`Contactor breaks what the fuse leaves`, basis: 'common practice' },
    polarity: { title: words`Contactor polarity`, basis: 'the contactor’s own sheet' },
    place: { title: words`Place of the fuse`, basis: 'common practice' },
  },
  hazards: ['arc-and-short', 'wiring-fire', 'cell-fire'],
  sources: [
    {
      title: 'Formula SAE rules, overcurrent protection',
      at: 'EV.6.6.2 a to c',
      trust: 'read',
    },
    {
      title: 'Battery engineering note on selecting vehicle fuses',
      at: 'working currents within 50 % of the melting curve; minimum breaking current',
      trust: 'read',
    },
    {
      title: 'IEC 60364-4-43 and 60364-5-54, k of copper conductors',
      at: 'tables 43A and A.54.4: 115 with PVC, 143 with cross-linked insulation',
      trust: 'read',
    },
    { title: 'IEC 60228, conductors of insulated cables', at: 'class 5', trust: 'read' },
    { title: 'IEC 60269-1, preferred rated currents of fuses', trust: 'recalled' },
  ],
  compute(input) {
    const strings = input.series / input.parallel
    const packResistance = strings * input.cellResistance + input.links
    const prospective = input.voltage / packResistance
    const perMetre = input.cable === undefined ? undefined : flexiblePerMetre(input.cable)
    const run =
      perMetre === undefined || input.length === undefined ? undefined : perMetre * input.length
    const lowLoop = run === undefined ? undefined : packResistance + run
    const highLoop =
      run === undefined || input.coldResistance === undefined
        ? undefined
        : strings * Math.max(input.coldResistance, input.cellResistance) +
          input.links +
          run * heated(hotCable) +
          input.rest
    const weakest =
      highLoop === undefined || input.lowVoltage === undefined
        ? undefined
        : Math.min(input.lowVoltage, input.voltage) / highLoop
    const curve = meltCurve(input.curve)
    const weakestTime = weakest === undefined ? undefined : meltingTime(curve, weakest)
    const melt = input.meltAtPeak ?? meltingCurrent(curve, input.peakTime)
    const slow =
      weakest === undefined || weakestTime === undefined || weakestTime > adiabatic
        ? -Infinity
        : weakest ** 2 * weakestTime
    const carries = least(input.cableRating, input.partRating)
    const constant = (loop: number | undefined) =>
      loop === undefined || input.inductance === undefined ? undefined : input.inductance / loop
    return {
      prospective,
      packResistance,
      interruptInHand: input.interrupt === undefined ? undefined : input.interrupt - prospective,
      weakest,
      weakestTime,
      clears:
        weakest === undefined || input.minimumBreaking === undefined
          ? undefined
          : weakest >= input.minimumBreaking
            ? words`the fuse`
            : (input.contactorBreak ?? -Infinity) >= input.minimumBreaking
              ? words`the contactor, if it is told to open`
              : words`nobody for certain`,
      timeConstant: constant(lowLoop),
      coldConstant: constant(highLoop),
      loading: input.running / input.fuse,
      runningInHand: loadWatch * input.fuse - input.running,
      melt,
      peakShare: melt === undefined ? undefined : input.peak / melt,
      smallest: tractionFuseRatings.find(
        (rating) => rating * loadWatch >= input.running * (1 - 1e-9),
      ),
      largest:
        carries === undefined
          ? undefined
          : tractionFuseRatings.findLast((rating) => rating <= carries * (1 + 1e-9)),
      letThrough: input.clearing === undefined ? undefined : Math.max(input.clearing, slow),
      cableStands:
        input.cable === undefined
          ? undefined
          : (heatFactor[input.insulation] * input.cable * 1e6) ** 2,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const { prospective = Infinity, loading: share = Infinity } = output
    const volts = (value: number | undefined) => say(value, 'V', 4)
    const rating = exactly(say, input.fuse, 'A')

    const voltage = (rated: number | undefined, unknown: string, fact: string): Said => {
      if (rated === undefined) return { level: 'unknown', text: unknown }
      return rated >= input.voltage
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'stop', text: words`${fact}: it arcs on. Fit one for more.` }
    }
    const enough = words`at least ${volts(input.voltage)} DC (stop)`
    const window = wrongWay(
      say,
      'V',
      [words`lowest pack voltage`, input.lowVoltage],
      [words`highest`, input.voltage],
    )
    const cells = wrongWay(
      say,
      'mΩ',
      [words`lowest cell resistance`, input.cellResistance],
      [words`highest`, input.coldResistance],
    )
    const currents = wrongWay(
      say,
      'A',
      [words`RMS current of the drive`, input.running],
      [words`peak current`, input.peak],
    )
    const breaking = wrongWay(
      say,
      'kA',
      [words`current the fuse breaks from`, input.minimumBreaking],
      [words`current it breaks up to`, input.interrupt],
    )
    const direct = (): Said =>
      input.current === 'dc'
        ? { level: 'pass', text: words`Fuse and contactor have DC ratings.` }
        : input.current === 'ac'
          ? {
              level: 'stop',
              text: words`A part rated for AC only cannot put out a DC arc: change it.`,
            }
          : { level: 'unknown', text: words`Whether both have DC ratings is not known.` }
    const interrupt = (): Said => {
      const fact = words`A short at the terminals drives ${say(prospective, 'kA')}`
      if (input.interrupt === undefined)
        return { level: 'unknown', text: words`${fact}; what the fuse can break is not known.` }
      return input.interrupt > prospective
        ? { level: 'pass', text: words`${fact}; the fuse breaks ${say(input.interrupt, 'kA')}.` }
        : {
            level: 'stop',
            text: words`${fact}, and the fuse breaks only ${say(input.interrupt, 'kA')}: it bursts. Fit one that breaks more.`,
          }
    }
    const protects = (): Said => {
      const known = [input.cableRating, input.partRating].filter((value) => value !== undefined)
      const carries = Math.min(...known)
      if (known.some((value) => value * (1 + 1e-9) < input.fuse))
        return {
          level: 'stop',
          text: words`The ${rating} fuse is larger than the ${say(carries, 'A')} that cable or parts carry: ${
            output.largest === undefined
              ? words`take a smaller fuse or thicker cable.`
              : words`at most ${exactly(say, output.largest, 'A')}, or thicker cable.`
          }`,
        }
      return known.length < 2
        ? { level: 'unknown', text: words`What cable and parts carry is not all known.` }
        : {
            level: 'pass',
            text: words`The ${rating} fuse is no larger than the ${say(carries, 'A')} that cable and parts carry.`,
          }
    }
    const loading = (): Said => {
      const fact = words`The drive takes ${say(share, '%', 2)} of the fuse`
      if (share <= loadWatch) return { level: 'pass', text: `${fact}.` }
      const instead =
        output.smallest === undefined
          ? words`take a larger one.`
          : words`${exactly(say, output.smallest, 'A')} would do, with cable for it.`
      return share <= loadStop
        ? { level: 'watch', text: words`${fact} and ages it: ${instead}` }
        : { level: 'stop', text: words`${fact}: it opens on the road. ${instead}` }
    }
    const peak = (): Said => {
      const [current, time] = [say(input.peak, 'A'), say(input.peakTime, 's', 2)]
      if (output.peakShare === undefined)
        return {
          level: 'unknown',
          text: words`Read off the fuse’s curve what melts it in the time of the peak of ${current} for ${time}.`,
        }
      const fact = words`On the peak of ${current} for ${time} the fuse is at ${say(output.peakShare, '%', 2)} of what melts it`
      if (output.peakShare <= peakWatch) return { level: 'pass', text: `${fact}.` }
      return output.peakShare <= peakStop
        ? { level: 'watch', text: words`${fact}: repeated, that wears it out.` }
        : {
            level: 'stop',
            text: words`${fact}: it may open. Lower the limit or take a slower fuse.`,
          }
    }
    const weakest = (): Said => {
      if (output.weakest === undefined)
        return {
          level: 'unknown',
          text: words`Not known: give lowest voltage, highest cell resistance, cable, length.`,
        }
      const fact = words`An empty, cold pack drives only ${say(output.weakest, 'A')} at the far end`
      if (input.minimumBreaking === undefined)
        return {
          level: 'unknown',
          text: words`${fact}; what the fuse breaks from is not known.`,
        }
      const from = say(input.minimumBreaking, 'A')
      if (output.weakest >= input.minimumBreaking)
        return { level: 'pass', text: words`${fact}; the fuse breaks from ${from}.` }
      return (input.contactorBreak ?? -Infinity) >= input.minimumBreaking
        ? {
            level: 'watch',
            text: words`${fact}, less than the ${from} the fuse needs: a current limit must open the contactor.`,
          }
        : {
            level: 'stop',
            text: words`${fact}, less than the ${from} the fuse needs, and no contactor is known to break that.`,
          }
    }
    const constant = (): Said => {
      const longest = output.timeConstant
      if (longest === undefined || input.fuseConstant === undefined)
        return {
          level: 'unknown',
          text: words`Not known: give inductance, cable, length and the fuse’s L/R.`,
        }
      const fact = words`L/R is ${say(longest, 'ms', 2)}, the fuse was tested at ${say(input.fuseConstant, 'ms', 2)}`
      return longest <= input.fuseConstant
        ? { level: 'pass', text: `${fact}.` }
        : { level: 'stop', text: words`${fact}: lay both cables together, or ask its maker.` }
    }
    const cable = (): Said => {
      const [through, stands] = [output.letThrough, output.cableStands]
      const fact = words`The fuse lets ${say(through, 'A²s')} through, the cable stands ${say(stands, 'A²s')}`
      if (through !== undefined && stands !== undefined && through > stands)
        return { level: 'stop', text: words`${fact}: take thicker cable or a faster fuse.` }
      return through === undefined || stands === undefined || output.weakestTime === undefined
        ? {
            level: 'unknown',
            text: words`Not known: give clearing integral, curve out to the least short, and cable.`,
          }
        : { level: 'pass', text: `${fact}.` }
    }
    const contactor = (): Said => {
      const breaks = input.contactorBreak
      if (breaks === undefined)
        return { level: 'unknown', text: words`What the contactor breaks is not known.` }
      const fact = words`The contactor breaks ${say(breaks, 'A')}`
      if (breaks < input.peak)
        return {
          level: 'stop',
          text: words`${fact}, less than the peak of ${say(input.peak, 'A')}: it welds or burns. Fit a larger one.`,
        }
      if (input.minimumBreaking === undefined)
        return {
          level: 'unknown',
          text: words`${fact}; the fuse’s minimum is not known.`,
        }
      return breaks >= input.minimumBreaking
        ? {
            level: 'pass',
            text: words`${fact}, and the fuse takes over from ${say(input.minimumBreaking, 'A')}.`,
          }
        : {
            level: 'watch',
            text: words`${fact}, but the fuse only breaks from ${say(input.minimumBreaking, 'A')}: between the two nobody does.`,
          }
    }
    const polarity = (): Said => {
      if (input.polarised === undefined)
        return { level: 'unknown', text: words`It is not said whether the contactor is polarised.` }
      return input.polarised === 'regenerates'
        ? {
            level: 'watch',
            text: words`A polarised contactor may not open while regenerating: ask its maker or change it.`,
          }
        : { level: 'pass', text: words`The contactor breaks whichever way the current goes.` }
    }
    const place = (): Said =>
      input.place === undefined
        ? { level: 'unknown', text: words`It is not said where the fuse sits.` }
        : input.place === 'far'
          ? {
              level: 'stop',
              text: words`The cable before the fuse is unprotected: put it at the pack.`,
            }
          : { level: 'pass', text: words`The fuse sits at its source.` }
    return [
      {
        check: 'voltage',
        ...heeding(
          voltage(
            input.fuseVoltage,
            words`The fuse’s DC voltage is not known.`,
            words`The fuse is for ${volts(input.fuseVoltage)} DC, the pack reaches ${volts(input.voltage)}`,
          ),
          window,
        ),
        threshold: enough,
      },
      { check: 'direct', ...direct(), threshold: words`DC ratings on both (stop)` },
      {
        check: 'interrupt',
        ...heeding(interrupt(), cells),
        threshold: words`more than ${say(prospective, 'kA')} (stop)`,
      },
      {
        check: 'contactorVoltage',
        ...voltage(
          input.contactorVoltage,
          words`The contactor’s DC voltage is not known.`,
          words`The contactor is for ${volts(input.contactorVoltage)} DC, the pack reaches ${volts(input.voltage)}`,
        ),
        threshold: enough,
      },
      {
        check: 'protects',
        ...protects(),
        threshold: words`fuse at most what cable and every part carry (stop)`,
      },
      { check: 'loading', ...loading(), threshold: words`at most 70 % (watch), 85 % (stop)` },
      {
        check: 'peak',
        ...heeding(peak(), currents),
        threshold: words`at most 50 % (watch), 80 % (stop)`,
      },
      {
        check: 'weakest',
        ...heeding(weakest(), window, cells, breaking),
        threshold: words`at least the fuse’s minimum (stop; watch with a contactor)`,
      },
      {
        check: 'constant',
        ...constant(),
        threshold: words`at most what the fuse was tested at (stop)`,
      },
      { check: 'cable', ...cable(), threshold: words`at most k²A² of the cable (stop)` },
      {
        check: 'contactor',
        ...contactor(),
        threshold: words`at least the fuse’s minimum (watch), the peak (stop)`,
      },
      {
        check: 'polarity',
        ...polarity(),
        threshold: words`both ways if the drive regenerates (watch)`,
      },
      { check: 'place', ...place(), threshold: words`at the source (stop)` },
    ]
  },
  working(input, output, say) {
    const lines = [
      `R_pack = N_s r / N_p + R_links = ${exactly(say, input.series)} × ${say(input.cellResistance, 'mΩ')} / ${exactly(say, input.parallel)} + ${say(input.links, 'mΩ')} = ${say(output.packResistance, 'mΩ')}`,
      `I_sc = U_max / R_pack = ${say(input.voltage, 'V', 4)} / ${say(output.packResistance, 'mΩ')} = ${say(output.prospective, 'kA')}`,
      `I_rms / I_fuse = ${say(input.running, 'A')} / ${exactly(say, input.fuse, 'A')} = ${say(output.loading, '%')}`,
    ]
    if (output.weakest !== undefined)
      lines.push(
        `I_sc,min = U_min / R_max = ${say(input.lowVoltage, 'V', 4)} / ${say((input.lowVoltage ?? 0) / output.weakest, 'mΩ')} = ${say(output.weakest, 'A')}`,
      )
    if (output.peakShare !== undefined)
      lines.push(
        `I_peak / I_melt = ${say(input.peak, 'A')} / ${say(output.melt, 'A')} = ${say(output.peakShare, '%')}`,
      )
    if (output.timeConstant !== undefined)
      lines.push(
        `τ = L_loop / R = ${say(input.inductance, 'µH')} / R = ${say(output.timeConstant, 'ms')}`,
      )
    if (output.cableStands !== undefined)
      lines.push(
        `k²A² = (${say(heatFactor[input.insulation], '', 3)} × ${say((input.cable ?? 0) * 1e6, '', 3)})² = ${say(output.cableStands, 'A²s')}`,
      )
    return lines
  },
  moreHazards: (input) => [input.voltage > touchVoltage ? 'high-voltage' : 'low-voltage-burns'],
  plot(input, output) {
    const curve = meltCurve(input.curve) ?? []
    const cable = output.cableStands
    return {
      title: words`Fuse, cable and drive`,
      x: { label: words`Current`, of: 'current', units: ['A', 'A'], scale: 'log' },
      y: { label: words`Time`, of: 'time', units: ['s', 's'], scale: 'log' },
      series: [
        {
          name: words`fuse melts`,
          line: 'solid',
          points: curve.map(({ current, time }) => [current, time] as const),
        },
        {
          name: words`cable burns`,
          line: 'dashed',
          points:
            cable === undefined
              ? []
              : [adiabatic, 1e-3].map((time) => [Math.sqrt(cable / time), time] as const),
        },
      ],
      marks: [
        { x: input.peak, y: input.peakTime, label: words`peak`, kind: 'point' },
        ...(output.prospective === undefined
          ? []
          : [
              {
                x: output.prospective,
                y: 1,
                label: words`short at the terminals`,
                kind: 'limit-x',
              } as const,
            ]),
        ...(output.weakest === undefined
          ? []
          : [{ x: output.weakest, y: 1, label: words`least short`, kind: 'limit-x' } as const]),
      ],
      caption: words`The peak belongs well left of the fuse’s curve, the cable’s line right of it.`,
    }
  },
  examples: [
    {
      name: 'a pickup: 36 warm cells, a fuse for 10 kA',
      from: 'hand: 36 × 0.25 mΩ + 36 × 0.05 mΩ = 10.8 mΩ; 131.4 V / 10.8 mΩ = 12 167 A; 190 / 350 = 54.3 %; 0.7 × 350 − 190 = 55 A',
      inputs: {
        voltage: '131.4 V',
        series: '36',
        cellResistance: '0.25 mΩ',
        links: '1.8 mΩ',
        running: '190 A',
        peak: '450 A',
        fuse: '350 A',
        fuseVoltage: '250 V',
        current: 'dc',
        interrupt: '10 kA',
        meltAtPeak: '850 A',
        place: 'terminal',
      },
      outputs: {
        prospective: '12.167 kA',
        packResistance: '10.8 mΩ',
        loading: '54.3 %',
        runningInHand: '55 A',
        peakShare: '52.9 %',
        smallest: '300 A',
      },
      findings: {
        voltage: 'pass',
        direct: 'pass',
        interrupt: 'stop',
        contactorVoltage: 'unknown',
        protects: 'unknown',
        loading: 'pass',
        peak: 'watch',
        weakest: 'unknown',
        constant: 'unknown',
        cable: 'unknown',
        contactor: 'unknown',
        polarity: 'unknown',
        place: 'pass',
      },
    },
    {
      name: 'a 12.8 V battery behind 8.4 mΩ',
      from: 'hand: 12.8 V / (5 mΩ + 3.4 mΩ) = 1523.8 A, more than a blade fuse’s 1 kA',
      inputs: {
        voltage: '12.8 V',
        series: '1',
        cellResistance: '5 mΩ',
        links: '3.4 mΩ',
        running: '10 A',
        peak: '12 A',
        fuse: '15 A',
        fuseVoltage: '32 V',
        interrupt: '1 kA',
        place: 'terminal',
      },
      outputs: { prospective: '1523.8 A' },
      findings: { voltage: 'pass', interrupt: 'stop', direct: 'unknown' },
    },
    {
      name: '400 V behind 0.12 Ω and 10 µH',
      from: 'hand: 400 V / 0.12 Ω = 3333.3 A; 10 µH / 0.12 Ω = 83.33 µs',
      inputs: {
        voltage: '400 V',
        series: '100',
        cellResistance: '1.2 mΩ',
        cable: '35 mm²',
        length: '0 m',
        inductance: '10 µH',
        fuseConstant: '2 ms',
        running: '80 A',
        peak: '250 A',
        fuse: '125 A',
      },
      outputs: { prospective: '3333.3 A', timeConstant: '0.08333 ms' },
      findings: { constant: 'pass', place: 'unknown' },
    },
    {
      name: 'IEC 60364-5-54: 5 kA for 0.1 s asks for 13.749 mm² with PVC',
      from: 'IEC 60364-5-54, k = 115: 5000 A × √0.1 s / 115 = 13.749 mm², so that area stands 2.500 × 10⁶ A²s',
      inputs: {
        voltage: '96 V',
        series: '30',
        cellResistance: '0.3 mΩ',
        cable: '13.749 mm²',
        running: '50 A',
        peak: '150 A',
        fuse: '100 A',
      },
      outputs: { cableStands: '2500000 A²s' },
      tolerance: 1e-4,
      why: 'the printed area has five figures',
    },
    {
      name: 'a pickup, everything from the sheets',
      from: 'hand: 100.8 V / (36 × 0.8 mΩ + 1.8 mΩ + 7 m × 0.272 mΩ/m × 1.2751 + 0.6 mΩ) = 100.8 V / 33.628 mΩ = 2997.5 A; (143 × 70)² = 100 200 100 A²s; 8 µH / (10.8 + 1.904) mΩ = 0.6297 ms',
      inputs: {
        voltage: '131.4 V',
        lowVoltage: '100.8 V',
        series: '36',
        cellResistance: '0.25 mΩ',
        coldResistance: '0.8 mΩ',
        links: '1.8 mΩ',
        cable: '70 mm²',
        length: '7 m',
        rest: '0.6 mΩ',
        inductance: '8 µH',
        insulation: 'crosslinked',
        cableRating: '360 A',
        partRating: '350 A',
        running: '190 A',
        peak: '450 A',
        fuse: '350 A',
        fuseVoltage: '250 V',
        current: 'dc',
        interrupt: '20 kA',
        minimumBreaking: '1400 A',
        fuseConstant: '10 ms',
        clearing: '400000 A²s',
        curve: [
          { current: '700 A', time: '1000 s' },
          { current: '950 A', time: '30 s' },
          { current: '1500 A', time: '1 s' },
          { current: '3000 A', time: '0.05 s' },
          { current: '13000 A', time: '0.001 s' },
        ],
        place: 'terminal',
        contactorVoltage: '320 V',
        contactorBreak: '1500 A',
        polarised: 'no',
      },
      outputs: {
        weakest: '2997.5 A',
        cableStands: '100200100 A²s',
        timeConstant: '0.6297 ms',
        melt: '950 A',
        clears: words`the fuse`,
        largest: '350 A',
      },
      findings: {
        voltage: 'pass',
        direct: 'pass',
        interrupt: 'pass',
        contactorVoltage: 'pass',
        protects: 'pass',
        loading: 'pass',
        peak: 'pass',
        weakest: 'pass',
        constant: 'pass',
        cable: 'pass',
        contactor: 'pass',
        polarity: 'pass',
        place: 'pass',
      },
    },
    {
      name: 'threshold case: everything one size wrong',
      from: 'threshold case',
      inputs: {
        voltage: '320 V',
        lowVoltage: '240 V',
        series: '88',
        cellResistance: '0.6 mΩ',
        coldResistance: '3 mΩ',
        cable: '6 mm²',
        length: '12 m',
        inductance: '900 µH',
        cableRating: '60 A',
        partRating: '150 A',
        running: '150 A',
        peak: '600 A',
        fuse: '160 A',
        fuseVoltage: '250 V',
        current: 'ac',
        interrupt: '5 kA',
        minimumBreaking: '1200 A',
        fuseConstant: '2 ms',
        clearing: '900000 A²s',
        curve: [
          { current: '300 A', time: '1000 s' },
          { current: '620 A', time: '30 s' },
          { current: '700 A', time: '1 s' },
        ],
        place: 'far',
        contactorVoltage: '150 V',
        contactorBreak: '500 A',
        polarised: 'regenerates',
      },
      outputs: { clears: words`nobody for certain` },
      findings: {
        voltage: 'stop',
        direct: 'stop',
        interrupt: 'stop',
        contactorVoltage: 'stop',
        protects: 'stop',
        loading: 'stop',
        peak: 'stop',
        weakest: 'stop',
        constant: 'stop',
        cable: 'stop',
        contactor: 'stop',
        polarity: 'watch',
        place: 'stop',
      },
    },
    {
      name: 'threshold case: a weak short left to the contactor',
      from: 'threshold case',
      inputs: {
        voltage: '131.4 V',
        lowVoltage: '90 V',
        series: '36',
        cellResistance: '0.25 mΩ',
        coldResistance: '2 mΩ',
        cable: '50 mm²',
        length: '7 m',
        running: '260 A',
        peak: '450 A',
        fuse: '350 A',
        minimumBreaking: '1400 A',
        contactorBreak: '1500 A',
        polarised: 'allowed',
      },
      outputs: { clears: words`the contactor, if it is told to open` },
      findings: { weakest: 'watch', loading: 'watch', contactor: 'pass', peak: 'unknown' },
    },
    {
      name: 'threshold case: a gap between contactor and fuse',
      from: 'threshold case',
      inputs: {
        voltage: '131.4 V',
        series: '36',
        cellResistance: '0.25 mΩ',
        running: '190 A',
        peak: '450 A',
        fuse: '350 A',
        minimumBreaking: '1400 A',
        contactorBreak: '900 A',
      },
      outputs: {},
      findings: { contactor: 'watch' },
    },
  ],
})
