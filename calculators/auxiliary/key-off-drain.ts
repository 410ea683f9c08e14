/**
 * What still draws with the key off, and after how many days the 12 V battery is too low.
 *
 * In: the items, the DC-DC converter's way back, the battery, how low it may go. Out: milliampere and
 * days. A converter that is off is not out of circuit: seen from the battery it is a resistance of
 * some ten ohms, for ever.
 */
import { defineCalculator, type InputValues, type Level } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** A; 50 mA: repair-trade notes; 25 mA for a car parked for weeks: common practice. */
const drainWatch = 0.025
const drainStop = 0.05
/** s; common practice. */
const day = 86_400
const daysPass = 21 * day
const daysStop = 7 * day
/** A back into the converter; common practice. */
const backPass = 0.005
const month = 30 * day

const inputs = {
  items: {
    type: 'list',
    label: words`What draws`,
    row: words`item`,
    help: words`Clock, alarm, tracker, battery management, charger on standby: pull fuses one by one to tell them apart.`,
    rows: [1, 60],
    optional: true,
    fields: {
      name: { type: 'text', label: words`Item`, help: words`What it is.` },
      current: {
        type: 'number',
        label: words`Draws`,
        symbol: 'I',
        of: 'current',
        units: ['mA', 'mA'],
        hard: [0, 5000],
        usual: [0.1, 500],
        help: words`When everything has gone to sleep, half an hour after locking.`,
      },
      duty: {
        type: 'number',
        label: words`On for`,
        symbol: 'd',
        of: 'fraction',
        units: ['%', '%'],
        hard: [0, 100],
        usual: [0.1, 100],
        help: words`Share of the parked time.`,
        assume: { value: 100, because: words`on all the time is the worst case` },
      },
    },
  },
  converter: {
    type: 'choice',
    label: words`DC-DC converter when off`,
    help: words`Whether its output still hangs on the battery.`,
    options: {
      isolated: words`taken off by a relay, or none fitted`,
      connected: words`stays on the battery`,
      unknown: words`not looked at`,
    },
  },
  backFeed: {
    type: 'number',
    label: words`Back-feed resistance`,
    symbol: 'R_b',
    of: 'resistance',
    units: ['Ω', 'Ω'],
    hard: [1, 10e6],
    usual: [20, 1e6],
    help: words`Of its output, off: battery voltage over the current into it. Several in parallel: all together.`,
    optional: true,
  },
  battery: {
    type: 'choice',
    label: words`12 V battery`,
    help: words`Decides what it loses by itself.`,
    options: { 'lead-acid': words`lead-acid`, lfp: words`lithium iron phosphate` },
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
  },
  health: {
    type: 'number',
    label: words`Left of that by age`,
    symbol: 'h',
    of: 'fraction',
    units: ['%', '%'],
    hard: [10, 100],
    usual: [50, 100],
    help: words`By a capacity test, if there is one.`,
    assume: { value: 80, because: words`neither new nor worn out` },
  },
  parkedAt: {
    type: 'number',
    label: words`Charged when parked`,
    symbol: 'x_1',
    of: 'fraction',
    units: ['%', '%'],
    hard: [10, 100],
    usual: [70, 100],
    help: words`After a usual drive.`,
    assume: { value: 90, because: words`a converter seldom fills it whole` },
  },
  floor: {
    type: 'number',
    label: words`May go down to`,
    symbol: 'x_2',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 95],
    usual: [20, 70],
    help: words`Where contactors still close and the battery takes no harm.`,
    choice: true,
    assume: { value: 50, because: words`lead-acid ages fast below half` },
  },
  volts: {
    type: 'number',
    label: words`Battery at rest`,
    symbol: 'U',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [5, 32],
    usual: [12, 27],
    help: words`For the current into the converter.`,
    assume: { value: 12.7, because: words`a full lead-acid battery at rest` },
  },
  selfDischarge: {
    type: 'number',
    label: words`Loses by itself in a month`,
    symbol: 's',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 40],
    usual: [1, 20],
    help: words`Of its capacity. Left out: lead-acid 5 %, lithium 3 %.`,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

/** Upper ends of what handbooks print: lead-acid 4 to 6 %, lithium 2 to 3 %. */
const ownLoss = ({ battery, selfDischarge }: Inputs) =>
  selfDischarge ?? (battery === 'lfp' ? 0.03 : 0.05)

const back = ({ converter, backFeed, volts }: Inputs) =>
  converter === 'isolated' ? 0 : backFeed === undefined ? undefined : volts / backFeed

const converterOff = words`DC-DC converter, off`

const rows = (input: Inputs) => [
  ...(input.items ?? []).map(({ name, current, duty }) => ({ name, current: current * duty })),
  ...(input.converter === 'isolated' ? [] : [{ name: converterOff, current: back(input) }]),
]

const amps = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'current', units: ['mA', 'mA'] }) as const

export const keyOffDrain = defineCalculator({
  id: 'key-off-drain',
  title: words`Key-off drain and days parked`,
  phase: 'auxiliary',
  purpose: words`Adds up what draws with the key off, back through the DC-DC converter too, and says how many days the car can stand.`,
  inputs,
  outputs: {
    drain: amps(words`Drain`, 'ΣI'),
    back: amps(words`Back into the converter`, 'I_b'),
    own: amps(words`The battery’s own loss`, 'I_s'),
    days: {
      type: 'number',
      label: words`Can stand for`,
      symbol: 't',
      of: 'time',
      units: ['d', 'd'],
    },
    usable: {
      type: 'number',
      label: words`Charge to use up`,
      symbol: 'ΔC',
      of: 'charge',
      units: ['Ah', 'Ah'],
    },
    largest: { type: 'text', label: words`Largest` },
    allowed: amps(words`Drain that gives 21 days`, 'I_21'),
    table: {
      type: 'table',
      label: words`What draws`,
      columns: {
        name: { type: 'text', label: words`Item` },
        current: amps(words`Mean`, 'I d'),
        share: {
          type: 'number',
          label: words`Share`,
          symbol: 'a',
          of: 'fraction',
          units: ['%', '%'],
        },
      },
    },
  },
  formula: [
    String.raw`\sum I = \sum I\,d + \frac{U}{R_b}, \qquad t = \frac{h\,C\,(x_1 - x_2)}{\sum I + I_s}, \qquad I_s = \frac{s\,h\,C}{30\,\text{d}}`,
  ],
  validity: [
    words`Small currents: the whole capacity counts, no Peukert. In the cold the battery holds its charge and gives less current for the contactor.`,
    words`The converter is taken as a resistance at the battery’s rest voltage; read it there.`,
  ],
  checks: {
    drain: {
      title: words`Drain`,
      basis:
        'published: repair-trade notes, 50 mA; common practice (25 mA for a car parked for weeks)',
    },
    back: { title: words`Back into the converter`, basis: 'common practice' },
    days: { title: words`Days`, basis: 'common practice' },
  },
  hazards: ['loss-of-12-volts', 'high-voltage', 'low-voltage-burns'],
  sources: [
    {
      title: 'Repair-trade notes on parasitic drain: 50 mA at most, 20 mA for older cars',
      trust: 'read',
    },
    {
      title: 'Handbook figures of self-discharge: lead-acid 4 to 6 %, lithium 2 to 3 % a month',
      trust: 'read',
    },
  ],
  compute(input) {
    const list = rows(input)
    const into = back(input)
    const items = (input.items ?? []).reduce((sum, { current, duty }) => sum + current * duty, 0)
    const drain = into === undefined ? undefined : items + into
    const held = input.capacity * input.health
    const usable = Math.max(0, held * (input.parkedAt - input.floor))
    const own = (ownLoss(input) * held) / month
    const all = drain === undefined ? undefined : drain + own
    return {
      drain,
      back: into,
      own,
      days: all === undefined || all === 0 ? undefined : usable / all,
      usable,
      largest:
        drain === undefined
          ? undefined
          : list.toSorted((a, b) => (b.current ?? 0) - (a.current ?? 0))[0]?.name,
      allowed: Math.max(0, usable / daysPass - own),
      table: list.map((row) => ({
        ...row,
        share: row.current === undefined || !drain ? undefined : row.current / drain,
      })),
    }
  },
  findings(input, { drain, back: into, days, allowed, largest = words`nothing`, usable = 0 }, say) {
    const mA = (value: number | undefined) => say(value, 'mA', 2)
    const listed = input.items !== undefined
    const drainLevel: Level =
      drain !== undefined && drain > drainStop
        ? 'stop'
        : drain === undefined || !listed
          ? 'unknown'
          : drain > drainWatch
            ? 'watch'
            : 'pass'
    const backLevel: Level =
      into === undefined
        ? 'unknown'
        : into > drainStop
          ? 'stop'
          : into > backPass
            ? 'watch'
            : 'pass'
    const daysLevel: Level =
      usable === 0 || (days !== undefined && days < daysStop)
        ? 'stop'
        : days === undefined || !listed
          ? 'unknown'
          : days < daysPass
            ? 'watch'
            : 'pass'
    const noBack = words`What flows back into the DC-DC converter is not known: off and disconnected on the traction side, read the current from the battery into its output.`
    const noList = words`What else draws is not listed: measure the whole drain at the battery’s negative lead.`
    return [
      {
        check: 'drain',
        level: drainLevel,
        text:
          drainLevel === 'unknown'
            ? drain === undefined
              ? noBack
              : noList
            : drainLevel === 'pass'
              ? words`${mA(drain)} are drawn with the key off.`
              : words`${mA(drain)} are drawn with the key off, most by “${largest}”: put it behind a relay or a switch.`,
        threshold: words`at most 25 mA (watch), 50 mA (stop)`,
      },
      {
        check: 'back',
        level: backLevel,
        text:
          into === undefined
            ? noBack
            : backLevel === 'pass'
              ? input.converter === 'isolated'
                ? words`The converter is off the battery.`
                : words`${mA(into)} flow back into the converter.`
              : words`${mA(into)} flow back into the converter, always: take its output off with a relay that opens with the key.`,
        threshold: words`at most 5 mA (watch), 50 mA (stop)`,
      },
      {
        check: 'days',
        level: daysLevel,
        text:
          usable === 0
            ? words`It is parked as low as it may go, or lower: charge it first.`
            : daysLevel === 'unknown'
              ? days === undefined && drain === undefined
                ? noBack
                : noList
              : daysLevel === 'pass'
                ? words`It can stand for ${say(days, 'd', 2)}.`
                : words`It can stand for ${say(days, 'd', 2)}; for three weeks the drain may be ${mA(allowed)}. Fit a maintainer or an isolator. Never work a contactor by hand in the high-voltage box to get home.`,
        threshold: words`at least 21 days (watch), 7 days (stop)`,
      },
    ]
  },
  working(input, { drain, back: into, own, usable, days }, say) {
    const { capacity, health, parkedAt, floor, converter, backFeed, volts } = input
    return [
      ...(converter === 'isolated'
        ? []
        : [`I_b = U / R_b = ${say(volts, 'V')} / ${say(backFeed, 'Ω')} = ${say(into, 'mA')}`]),
      `ΣI = ${rows(input)
        .map(({ current }) => say(current, 'mA'))
        .join(' + ')}${rows(input).length === 0 ? '0' : ''} = ${say(drain, 'mA')}`,
      `I_s = ${say(ownLoss(input), '%')} × ${say(capacity * health, 'Ah')} / 30 d = ${say(own, 'mA')}`,
      `ΔC = ${say(capacity, 'Ah')} × ${say(health, '%')} × (${say(parkedAt, '%')} − ${say(floor, '%')}) = ${say(usable, 'Ah')}`,
      `t = ${say(usable, 'Ah')} / (${say(drain, 'mA')} + ${say(own, 'mA')}) = ${say(days, 'd')}`,
    ]
  },
  examples: [
    {
      // 2 × 12 V / 60 Ω = 400 mA; 22 Ah / 0.4 A = 55 h = 2.29 d.
      name: 'Two converters of 60 Ω on a 22 Ah battery',
      from: 'builder’s log: two converters, 60 Ω each when off, 400 mA together, flatten 22 Ah in two days; hand: 22 Ah / 0.4 A = 55 h',
      inputs: {
        items: [{ name: 'clock', current: '0 mA' }],
        converter: 'connected',
        backFeed: '30 Ω',
        battery: 'lead-acid',
        capacity: '22 Ah',
        health: '100 %',
        parkedAt: '100 %',
        floor: '0 %',
        volts: '12 V',
        selfDischarge: '0 %',
      },
      outputs: {
        back: '400 mA',
        drain: '400 mA',
        days: '55 h',
        largest: words`DC-DC converter, off`,
      },
      findings: { drain: 'stop', back: 'stop', days: 'stop' },
    },
    {
      // 12 + 200 × 0.02 = 16 mA. 60 Ah × 0.8 × 0.4 = 19.2 Ah. Own: 0.05 × 48 Ah / 720 h = 3.333 mA.
      // 19.2 Ah / 19.333 mA = 993.1 h = 41.38 d.
      name: 'Alarm, and a tracker that wakes now and then',
      from: 'hand: 60 Ah × 80 % × 40 % / (16 mA + 3.333 mA)',
      inputs: {
        items: [
          { name: 'alarm', current: '12 mA' },
          { name: 'tracker', current: '200 mA', duty: '2 %' },
        ],
        converter: 'isolated',
        battery: 'lead-acid',
        capacity: '60 Ah',
      },
      outputs: { drain: '16.0 mA', own: '3.333 mA', usable: '19.2 Ah', days: '41.4 d' },
      findings: { drain: 'pass', back: 'pass', days: 'pass' },
    },
    {
      name: 'A small battery, a converter that leaks a little',
      from: 'threshold case',
      inputs: {
        items: [{ name: 'battery management', current: '22 mA' }],
        converter: 'connected',
        backFeed: '1 kΩ',
        battery: 'lfp',
        capacity: '40 Ah',
      },
      outputs: {},
      findings: { drain: 'watch', back: 'watch', days: 'watch' },
    },
    {
      name: 'Nothing measured',
      from: 'threshold case',
      inputs: { converter: 'unknown', battery: 'lead-acid', capacity: '40 Ah' },
      outputs: { drain: 'cannot tell', days: 'cannot tell' },
      findings: { drain: 'unknown', back: 'unknown', days: 'unknown' },
    },
  ],
})
