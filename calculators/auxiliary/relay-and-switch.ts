/**
 * What relay and contactor coils add to an old ignition switch, and whether their spark is caught.
 *
 * In: coils by resistance or current, what the switch carried before, its rating or the drop across
 * it. Out: amperes added and in all, the heaviest coil. A coil with a diode is not symmetrical: the
 * wrong way round the diode is a short circuit, and a positive-earth vehicle turns it round.
 */
import { defineCalculator, type InputValues, type Level } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** A added to an old switch; common practice. */
const addedWatch = 1
const addedStop = 3
/** Of the switch's rating; common practice. */
const ratingPass = 0.8
/** V across the closed switch with everything on; common practice. */
const dropWatch = 0.2
const dropStop = 0.4

const inputs = {
  coils: {
    type: 'list',
    label: words`Coils`,
    row: words`coil`,
    help: words`Every relay and contactor that the switch now feeds.`,
    rows: [1, 60],
    fields: {
      name: { type: 'text', label: words`Coil`, help: words`Such as pump relay.` },
      resistance: {
        type: 'number',
        label: words`Coil resistance`,
        symbol: 'R',
        of: 'resistance',
        units: ['Ω', 'Ω'],
        hard: [0.5, 5000],
        usual: [5, 400],
        help: words`Between 85 and 86, cold. A diode inside: read it both ways, the higher counts.`,
        optional: true,
      },
      current: {
        type: 'number',
        label: words`Coil current`,
        symbol: 'I',
        of: 'current',
        units: ['A', 'A'],
        hard: [0, 30],
        usual: [0.05, 5],
        help: words`Instead of the resistance: a contactor with an economiser draws its pull-in current first.`,
        optional: true,
      },
      count: {
        type: 'number',
        label: words`How many`,
        symbol: 'n',
        of: 'number',
        units: ['', ''],
        hard: [0, 60],
        usual: [1, 10],
        help: words`Of the same kind.`,
        assume: { value: 1, because: words`one of each row` },
      },
      suppression: {
        type: 'choice',
        label: words`Suppression`,
        help: words`What catches the spark when the coil is switched off.`,
        options: {
          resistor: words`resistor, either way round`,
          diode: words`diode, polarity checked`,
          unchecked: words`diode, polarity not checked`,
          reversed: words`diode, wired the wrong way round`,
          none: words`none`,
          unknown: words`not known`,
        },
        assume: { value: 'unknown', because: words`not looked at` },
      },
    },
  },
  volts: {
    type: 'number',
    label: words`Supply voltage`,
    symbol: 'U',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [5, 32],
    usual: [11, 29],
    help: words`With the converter charging.`,
    assume: { value: 14.4, because: words`a 12 V system on charge, the high end` },
  },
  original: {
    type: 'number',
    label: words`Load that stays on the switch`,
    symbol: 'I_0',
    of: 'current',
    units: ['A', 'A'],
    hard: [0, 100],
    usual: [0, 15],
    help: words`Original loads still fed through it: gauges, wipers, indicators.`,
    optional: true,
  },
  rating: {
    type: 'number',
    label: words`Rating of the switch`,
    symbol: 'I_s',
    of: 'current',
    units: ['A', 'A'],
    hard: [0.5, 100],
    usual: [3, 30],
    help: words`For DC, if it is known.`,
    optional: true,
  },
  drop: {
    type: 'number',
    label: words`Drop across the closed switch`,
    symbol: 'ΔU',
    of: 'voltage',
    units: ['mV', 'mV'],
    hard: [0, 5000],
    usual: [10, 500],
    help: words`Measured with everything on, from its feed to its output terminal.`,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>
type Coil = Inputs['coils'][number]

const each = ({ resistance, current }: Coil, volts: number) =>
  current ?? (resistance === undefined ? undefined : volts / resistance)

const isGiven = (value: number | undefined) => value !== undefined

export const relayAndSwitch = defineCalculator({
  id: 'relay-and-switch',
  title: words`Relays on the ignition switch`,
  phase: 'auxiliary',
  purpose: words`What relay and contactor coils add to an old ignition switch, what it then carries, and whether each coil’s spark is caught.`,
  inputs,
  outputs: {
    added: {
      type: 'number',
      label: words`Coils add`,
      symbol: 'ΣI',
      of: 'current',
      units: ['A', 'A'],
    },
    total: {
      type: 'number',
      label: words`The switch carries`,
      symbol: 'I_t',
      of: 'current',
      units: ['A', 'A'],
    },
    ratingShare: {
      type: 'number',
      label: words`Share of its rating`,
      symbol: 'I_t/I_s',
      of: 'fraction',
      units: ['%', '%'],
    },
    contact: {
      type: 'number',
      label: words`Resistance of the switch`,
      symbol: 'R_s',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    heat: {
      type: 'number',
      label: words`Heat in the switch`,
      symbol: 'P_s',
      of: 'power',
      units: ['W', 'W'],
    },
    heaviest: { type: 'text', label: words`Heaviest` },
    table: {
      type: 'table',
      label: words`Coils`,
      columns: {
        name: { type: 'text', label: words`Coil` },
        current: {
          type: 'number',
          label: words`Draws`,
          symbol: 'n I',
          of: 'current',
          units: ['A', 'A'],
        },
        power: {
          type: 'number',
          label: words`Warms by`,
          symbol: 'P',
          of: 'power',
          units: ['W', 'W'],
        },
      },
    },
  },
  formula: [
    String.raw`\sum I = \sum n\,\frac{U}{R}, \qquad I_t = I_0 + \sum I, \qquad R_s = \frac{\Delta U}{I_t}`,
  ],
  validity: [
    words`Cold coils: a warm coil draws up to a fifth less. An economised contactor draws its pull-in current for some tenths of a second and then much less: enter the pull-in current.`,
    words`The drop across the switch is what counts in the end: a worn contact of any rating gets hot.`,
  ],
  checks: {
    added: { title: words`Added to the ignition switch`, basis: 'common practice' },
    switch: {
      title: words`What the switch stands`,
      basis: 'the switch’s own sheet; common practice (80 %; 0.2 and 0.4 V)',
    },
    suppression: { title: words`Sparks of the coils`, basis: 'common practice' },
  },
  hazards: ['wiring-fire', 'loss-of-12-volts', 'low-voltage-burns'],
  sources: [
    {
      title:
        'Relay sheets to ISO 7588 and ISO 280: terminals 30, 85, 86, 87; diode types are polarised',
      trust: 'recalled',
    },
    { title: 'Sheet of a 12 V micro relay, 109 Ω and 1.3 W', trust: 'read' },
  ],
  compute({ coils, volts, original, rating, drop }) {
    const rows = coils.map((coil) => {
      const one = each(coil, volts)
      const current = one === undefined ? undefined : one * coil.count
      return { name: coil.name, current, power: one === undefined ? undefined : one * volts }
    })
    const draws = rows.map(({ current }) => current)
    const added = draws.every(isGiven)
      ? draws.reduce((sum, current) => sum + current, 0)
      : undefined
    const total = added === undefined || original === undefined ? undefined : added + original
    return {
      added,
      total,
      ratingShare: total === undefined || rating === undefined ? undefined : total / rating,
      contact: drop === undefined || !total ? undefined : drop / total,
      heat: drop === undefined || total === undefined ? undefined : drop * total,
      heaviest: rows.reduce((most, row) =>
        (row.current ?? Infinity) > (most.current ?? Infinity) ? row : most,
      ).name,
      table: rows,
    }
  },
  findings(input, { added, total, ratingShare, heaviest = '' }, say) {
    const { coils, volts, drop, rating } = input
    const A = (value: number | undefined) => say(value, 'A', 2)
    const named = (...kinds: readonly Coil['suppression'][]) =>
      coils.filter(({ suppression }) => kinds.includes(suppression)).map(({ name }) => name)
    const bare = coils.filter((coil) => each(coil, volts) === undefined).map(({ name }) => name)
    const addedLevel: Level =
      added === undefined
        ? 'unknown'
        : added <= addedWatch
          ? 'pass'
          : added <= addedStop
            ? 'watch'
            : 'stop'
    const byDrop: Level | undefined =
      drop === undefined
        ? undefined
        : drop <= dropWatch
          ? 'pass'
          : drop <= dropStop
            ? 'watch'
            : 'stop'
    const byRating: Level | undefined =
      ratingShare === undefined
        ? undefined
        : ratingShare <= ratingPass
          ? 'pass'
          : ratingShare <= 1
            ? 'watch'
            : 'stop'
    const order = ['stop', 'watch', 'pass'] as const
    const switchLevel: Level =
      order.find((level) => level === byDrop || level === byRating) ?? 'unknown'
    const reversed = named('reversed')
    const unsure = named('unchecked', 'unknown')
    const none = named('none')
    const sparkLevel: Level =
      reversed.length > 0
        ? 'stop'
        : unsure.length > 0
          ? 'unknown'
          : none.length > 0
            ? 'watch'
            : 'pass'
    return [
      {
        check: 'added',
        level: addedLevel,
        text:
          added === undefined
            ? words`Neither resistance nor current is given for ${bare.join(', ')}: measure one.`
            : addedLevel === 'pass'
              ? words`The coils add ${A(added)}.`
              : words`The coils add ${A(added)}, most of it “${heaviest}”: let the switch work one small relay and that relay feed the others from a fused supply.`,
        threshold: words`at most 1 A (watch), 3 A (stop)`,
      },
      {
        check: 'switch',
        level: switchLevel,
        text:
          switchLevel === 'unknown'
            ? rating !== undefined
              ? words`Its rating is known, what it carries is not: say which load stays on it, or measure the drop across it.`
              : words`Old switches seldom have a known rating: measure the drop across it with everything on.`
            : [
                ...(byRating === undefined
                  ? []
                  : [
                      words`The switch carries ${A(total)}, ${say(ratingShare, '%', 2)} of its rating.`,
                    ]),
                ...(drop === undefined ? [] : [words`${say(drop, 'mV', 2)} are lost across it.`]),
                ...(switchLevel === 'pass'
                  ? []
                  : [words`Take load off it with a relay, or clean or replace it.`]),
              ].join(' '),
        threshold: words`at most 80 % of its rating (watch), all of it (stop); 0.2 V across it (watch), 0.4 V (stop)`,
      },
      {
        check: 'suppression',
        level: sparkLevel,
        text:
          sparkLevel === 'stop'
            ? words`${reversed.join(', ')}: the diode is a short circuit this way round. Swap 85 and 86; in a positive-earth vehicle the other way.`
            : sparkLevel === 'unknown'
              ? words`Not known for ${unsure.join(', ')}: look at the symbol on its side, and where there is a diode which of 85 and 86 is plus.`
              : sparkLevel === 'watch'
                ? words`${none.join(', ')}: nothing catches the spark. It burns the switch’s contacts and upsets electronics; take a type with a resistor, or fit a diode.`
                : words`Every coil has its spark caught, polarity checked.`,
        threshold: words`a resistor or a diode the right way round on every coil (watch); none reversed (stop)`,
      },
    ]
  },
  working({ coils, volts, original, drop }, { added, total, contact }, say) {
    return [
      ...coils.map((coil) =>
        coil.current === undefined
          ? `${coil.name}: n U / R = ${say(coil.count, '', 2)} × ${say(volts, 'V')} / ${say(coil.resistance, 'Ω')} = ${say(coil.resistance === undefined ? undefined : (coil.count * volts) / coil.resistance, 'A')}`
          : `${coil.name}: n I = ${say(coil.count, '', 2)} × ${say(coil.current, 'A')} = ${say(coil.count * coil.current, 'A')}`,
      ),
      `ΣI = ${say(added, 'A')}; I_t = ${say(original, 'A')} + ${say(added, 'A')} = ${say(total, 'A')}`,
      ...(drop === undefined || contact === undefined
        ? []
        : [`R_s = ΔU / I_t = ${say(drop, 'mV')} / ${say(total, 'A')} = ${say(contact, 'mΩ')}`]),
    ]
  },
  examples: [
    {
      // 12 V / 109 Ω = 110.1 mA, 1.321 W.
      name: 'Micro relay at its rated voltage',
      from: 'sheet of a 12 V micro relay to ISO 280: 109 Ω, 1.3 W; hand: 12 V / 109 Ω',
      inputs: {
        coils: [{ name: 'fan relay', resistance: '109 Ω', suppression: 'diode' }],
        volts: '12 V',
        original: '2 A',
        rating: '10 A',
      },
      outputs: { added: '0.110 A', total: '2.11 A', ratingShare: '21.1 %', heaviest: 'fan relay' },
      findings: { added: 'pass', switch: 'pass', suppression: 'pass' },
    },
    {
      // 3 × 14.4 / 90 = 0.48 A; + 1.2 A = 1.68 A; + 5 A = 6.68 A; 300 mV / 6.68 A = 44.9 mΩ; 2.004 W.
      name: 'Three relays and a contactor',
      from: 'hand: 3 × 14.4 V / 90 Ω + 1.2 A; 300 mV / 6.68 A',
      inputs: {
        coils: [
          { name: 'relays', resistance: '90 Ω', count: '3', suppression: 'resistor' },
          { name: 'contactor', current: '1.2 A', suppression: 'none' },
        ],
        original: '5 A',
        drop: '300 mV',
      },
      outputs: {
        added: '1.68 A',
        total: '6.68 A',
        contact: '44.9 mΩ',
        heat: '2.00 W',
        heaviest: 'contactor',
      },
      findings: { added: 'watch', switch: 'watch', suppression: 'watch' },
    },
    {
      name: 'Two contactors pulled in by the switch, one diode reversed',
      from: 'threshold case',
      inputs: {
        coils: [
          { name: 'main', current: '2.2 A', count: '2', suppression: 'reversed' },
          { name: 'pump relay', resistance: '90 Ω' },
        ],
        original: '6 A',
        rating: '8 A',
      },
      outputs: {},
      findings: { added: 'stop', switch: 'stop', suppression: 'stop' },
    },
    {
      name: 'Nothing measured',
      from: 'threshold case',
      inputs: { coils: [{ name: 'pump relay' }] },
      outputs: { added: 'cannot tell' },
      findings: { added: 'unknown', switch: 'unknown', suppression: 'unknown' },
    },
  ],
})
