/**
 * What the conversion costs: by phase, spent and still to come, per kWh and per kilometre of range.
 *
 * In: items with phase and status, all in one currency, what is set aside, energy and range. Out: sums.
 * Written in US$, which is taken for whichever currency the items are in. Money set
 * aside is held against what is still to be paid, because what is paid cannot surprise any more.
 */
import * as elementary from '../elementary.ts'
import { defineCalculator, type Finding, type InputValues, type Say } from '../define.ts'
import { eitherWay } from '../either-way.ts'
import { words } from '../../src/words/words.ts'

/** Set aside over still to pay; common practice. */
const asideWatch = 0.15
const asideStop = 0.05
const hair = 1 + 1e-9

const phases = {
  survey: words`survey and planning`,
  motor: words`motor and controller`,
  stripping: words`strip-out`,
  adapter: words`adapter and mounts`,
  pack: words`battery pack and boxes`,
  traction: words`high-voltage parts`,
  cooling: words`cooling`,
  auxiliary: words`12 V side`,
  charging: words`charging`,
  chassis: words`brakes, springs, tyres`,
  cabin: words`cabin and instruments`,
  tools: words`tools and safety gear`,
  approval: words`tests, approval, insurance`,
  sundries: words`sundries`,
} as const

const money = (label: string, symbol: string, help: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'money',
    units: ['US$', 'US$'],
    hard: [0, 1_000_000],
    usual: [1, 50_000],
    help,
  }) as const

const inputs = {
  items: {
    type: 'list',
    label: words`Items`,
    row: words`item`,
    help: words`All in one currency; for a sum in another enter it at the day’s rate and write rate and date in the name.`,
    rows: [1, 200],
    fields: {
      name: { type: 'text', label: words`Item`, help: words`What it is, new or used.` },
      phase: {
        type: 'choice',
        label: words`Phase`,
        help: words`Where it belongs.`,
        options: phases,
      },
      status: {
        type: 'choice',
        label: words`Status`,
        help: words`Ordered means you cannot get out of it any more.`,
        options: {
          planned: words`planned`,
          ordered: words`ordered, not paid`,
          paid: words`paid`,
          owned: words`already owned, not counted`,
          sold: words`sold, money in`,
        },
      },
      cost: money(words`Cost`, 'c', words`For one, with delivery and duty.`),
      count: {
        type: 'number',
        label: words`How many`,
        symbol: 'n',
        of: 'number',
        units: ['', ''],
        hard: [0, 10_000],
        usual: [1, 400],
        help: words`Cells, metres, pieces.`,
        assume: { value: 1, because: words`one` },
      },
    },
  },
  setAside: {
    ...money(words`Set aside`, 'C', words`For what was forgotten, broken or came out dearer.`),
    optional: true,
  },
  share: {
    type: 'number',
    label: words`Set aside as a share`,
    symbol: 'c_R',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 200],
    usual: [5, 50],
    help: words`Of what is still to pay, where no sum is set aside.`,
    optional: true,
    setting: { name: 'contingency', unless: 'setAside' },
  },
  budget: { ...money(words`Budget`, 'B', words`All you mean to spend.`), optional: true },
  energy: {
    type: 'number',
    label: words`Usable energy`,
    symbol: 'E',
    of: 'energy',
    units: ['kWh', 'kWh'],
    hard: [0.5, 500],
    usual: [5, 100],
    help: words`Of the pack.`,
    optional: true,
  },
  range: {
    type: 'number',
    label: words`Range`,
    symbol: 'r',
    of: 'length',
    units: ['km', 'mi'],
    hard: [1, 2000],
    usual: [30, 400],
    help: words`Measured if you can.`,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>
type Status = Inputs['items'][number]['status']
/** As a sum, else as a share of what is still to pay; nothing where neither is said. */
const asideOf = (input: Inputs, toCome: number): number =>
  input.setAside ?? (input.share ?? 0) * toCome

type PhaseName = keyof typeof phases

function sum(input: Inputs, status: Status, phase?: PhaseName): number {
  return input.items
    .filter((item) => item.status === status && (phase === undefined || item.phase === phase))
    .reduce((total, { cost, count }) => total + cost * count, 0)
}

const dollars = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'money', units: ['US$', 'US$'] }) as const

/** Whole dollars from 100 up, three figures below. */
const whole = (say: Say) => (value: number | undefined) =>
  say(value, 'US$', Math.max(3, Math.floor(elementary.log10(Math.abs(value ?? 0) || 1)) + 1))

const phaseNames = Object.keys(phases) as readonly PhaseName[]

export const costRollup = defineCalculator({
  id: 'cost-rollup',
  title: words`Cost by phase`,
  phase: 'project',
  purpose: words`Adds up what is paid, ordered and planned by phase, and says whether enough is set aside.`,
  inputs,
  outputs: {
    total: dollars(words`All together, less what was sold`, 'T'),
    paid: dollars(words`Paid`, 'P'),
    ordered: dollars(words`Ordered, not paid`, 'O'),
    planned: dollars(words`Planned`, 'L'),
    sold: dollars(words`Money in`, 'S'),
    toCome: dollars(words`Still to pay`, 'R'),
    asideShare: {
      type: 'number',
      label: words`Set aside, of what is still to pay`,
      symbol: 'C/R',
      of: 'fraction',
      units: ['%', '%'],
    },
    left: dollars(words`Left of the budget, with all set aside spent`, 'B − T − C'),
    perEnergy: {
      type: 'number',
      label: words`For each usable kWh`,
      symbol: 'T/E',
      of: 'moneyPerEnergy',
      units: ['US$/kWh', 'US$/kWh'],
    },
    perRange: {
      type: 'number',
      label: words`For each unit of range`,
      symbol: 'T/r',
      of: 'moneyPerLength',
      units: ['US$/km', 'US$/mi'],
    },
    dearest: { type: 'text', label: words`Dearest phase` },
    byPhase: {
      type: 'table',
      label: words`By phase`,
      columns: {
        name: { type: 'text', label: words`Phase` },
        phasePaid: dollars(words`Paid`, 'P'),
        phaseOrdered: dollars(words`Ordered`, 'O'),
        phasePlanned: dollars(words`Planned`, 'L'),
        phaseSold: dollars(words`Money in`, 'S'),
        phaseTotal: dollars(words`Together`, 'T'),
        share: {
          type: 'number',
          label: words`Of all spending`,
          symbol: '%',
          of: 'fraction',
          units: ['%', '%'],
        },
      },
    },
  },
  formula: [String.raw`T = P + O + L - S, \qquad R = O + L`, String.raw`C/R \ge 15\,\%`],
  validity: [
    words`In money of the day each item was bought or priced: old prices are not brought up to date.`,
    words`What was already owned, and your hours, are not counted.`,
    words`Keep receipts private: they carry names and addresses.`,
  ],
  checks: {
    aside: { title: words`Enough set aside`, basis: 'common practice' },
    budget: { title: words`Within the budget`, basis: 'your own budget' },
  },
  hazards: [],
  sources: [{ title: 'Sums of the items entered', trust: 'model' }],
  compute(input) {
    const paid = sum(input, 'paid')
    const ordered = sum(input, 'ordered')
    const planned = sum(input, 'planned')
    const sold = sum(input, 'sold')
    const spending = paid + ordered + planned
    const total = spending - sold
    const toCome = ordered + planned
    const aside = asideOf(input, toCome)
    const byPhase = phaseNames
      .filter((phase) => input.items.some((item) => item.phase === phase))
      .map((phase) => {
        const of = (status: Status) => sum(input, status, phase)
        const spent = of('paid') + of('ordered') + of('planned')
        return {
          name: phases[phase],
          phasePaid: of('paid'),
          phaseOrdered: of('ordered'),
          phasePlanned: of('planned'),
          phaseSold: of('sold'),
          phaseTotal: spent - of('sold'),
          share: spending === 0 ? undefined : spent / spending,
        }
      })
    const most = Math.max(...byPhase.flatMap(({ share }) => share ?? []))
    return {
      total,
      paid,
      ordered,
      planned,
      sold,
      toCome,
      asideShare: toCome === 0 ? undefined : aside / toCome,
      left: input.budget === undefined ? undefined : input.budget - total - aside,
      perEnergy: input.energy === undefined ? undefined : total / input.energy,
      perRange: input.range === undefined ? undefined : total / input.range,
      dearest: byPhase.find(({ share }) => share === most)?.name,
      byPhase,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const us = whole(say)
    const setAside = asideOf(input, output.toCome ?? 0)
    const aside = (): Said => {
      const { asideShare, toCome } = output
      if (asideShare === undefined)
        return { level: 'pass', text: words`Nothing is left to pay on this list.` }
      const fact = words`${us(setAside)} is set aside for ${us(toCome)} still to pay, ${say(asideShare, '%')}`
      if (asideShare * hair >= asideWatch) return { level: 'pass', text: `${fact}.` }
      const more = us(asideWatch * (toCome ?? 0) - setAside)
      return {
        level: asideShare * hair >= asideStop ? 'watch' : 'stop',
        text: words`${fact}: put ${more} more aside, or plan less. Brakes, tyres, tests and tools are what lists forget.`,
      }
    }
    const budget = (): Said => {
      const { left } = output
      if (left === undefined || input.budget === undefined)
        return { level: 'unknown', text: words`No budget is given.` }
      if (left >= -1e-9 * input.budget)
        return { level: 'pass', text: words`${us(left)} of ${us(input.budget)} would be left.` }
      const over = us(Math.abs(left))
      return (output.total ?? 0) <= input.budget * hair
        ? {
            level: 'watch',
            text: words`With all that is set aside spent you would be ${over} over ${us(input.budget)}.`,
          }
        : {
            level: 'watch',
            text: words`The list alone is over ${us(input.budget)}; with what is set aside by ${over}. Decide now what to leave out.`,
          }
    }
    return [
      {
        check: 'aside',
        ...aside(),
        threshold: words`at least 15 % of what is still to pay (watch), 5 % (stop)`,
      },
      {
        check: 'budget',
        ...budget(),
        threshold: words`list and what is set aside at most the budget (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const us = whole(say)
    return [
      `T = P + O + L − S = ${us(output.paid)} + ${us(output.ordered)} + ${us(output.planned)} − ${us(output.sold)} = ${us(output.total)}`,
      `R = O + L = ${us(output.toCome)}; C/R = ${us(asideOf(input, output.toCome ?? 0))} / ${us(output.toCome)} = ${say(output.asideShare, '%')}`,
      `T/E = ${say(output.perEnergy, 'US$/kWh')}; T/r = ${eitherWay(say(output.perRange, 'US$/km'), say(output.perRange, 'US$/mi'))}`,
    ]
  },
  plot(_input, output) {
    return {
      title: words`By phase`,
      x: {
        label: words`Phase, in the order of the table`,
        of: 'number',
        units: ['', ''],
        fromZero: true,
      },
      y: { label: words`Together`, of: 'money', units: ['US$', 'US$'], fromZero: true },
      series: [
        {
          name: words`phases`,
          line: 'none',
          points: output.byPhase.map(({ phaseTotal }, i) => [i + 1, phaseTotal] as const),
        },
      ],
      marks: output.byPhase.map(({ name, phaseTotal }, i) => ({
        x: i + 1,
        y: phaseTotal ?? 0,
        label: name ?? '',
        kind: 'point' as const,
      })),
      caption: words`Where the money goes: the highest point is where saving is worth the trouble.`,
    }
  },
  examples: [
    {
      // 4900 + 36 × 78 = 7708; + 420 + 980 = 9108; planned 1150 + 850 = 2000; − 350 sold.
      // 9108 + 2000 − 350 = 10758; 10758 / 27.42 kWh = 392.3; 10758 / 112 km = 96.05; 300 / 2000 = 15 %.
      name: 'Half a list, some paid, an engine sold',
      from: 'hand: 4900 + 36 × 78 + 420 + 980 + 1150 + 850 − 350 = 10 758; / 27.42 kWh = 392.3; / 112 km = 96.05',
      inputs: {
        items: [
          { name: 'motor and controller', phase: 'motor', status: 'paid', cost: 'US$4900' },
          { name: 'cells', phase: 'pack', status: 'paid', cost: 'US$78', count: '36' },
          { name: 'management', phase: 'pack', status: 'paid', cost: 'US$420' },
          { name: 'contactors and cable', phase: 'traction', status: 'ordered', cost: 'US$980' },
          { name: 'charger', phase: 'charging', status: 'planned', cost: 'US$1150' },
          { name: 'adapter', phase: 'adapter', status: 'planned', cost: 'US$850' },
          { name: 'engine', phase: 'stripping', status: 'sold', cost: 'US$350' },
          { name: 'hoist', phase: 'tools', status: 'owned', cost: 'US$200' },
        ],
        setAside: 'US$447',
        budget: 'US$12000',
        energy: '27.42 kWh',
        range: '112 km',
      },
      outputs: {
        total: 'US$10758',
        paid: 'US$8128',
        ordered: 'US$980',
        planned: 'US$2000',
        toCome: 'US$2980',
        asideShare: '15.0 %',
        left: 'US$795',
        perEnergy: '392.3 US$/kWh',
        perRange: '96.05 US$/km',
        dearest: words`motor and controller`,
      },
      findings: { aside: 'pass', budget: 'pass' },
    },
    {
      // 13393 planned; 500 / 13393 = 3.73 %; 13000 − 13393 − 500 = −893; / 60 mi = 223.22.
      name: 'All planned, little set aside',
      from: 'hand: 500 / 13 393 = 3.73 %; 13 000 − 13 393 − 500 = −893; 13 393 / 60 mi = 223.2',
      inputs: {
        items: [{ name: 'all of it', phase: 'sundries', status: 'planned', cost: 'US$13393' }],
        setAside: 'US$500',
        budget: 'US$13000',
        range: '60 mi',
      },
      outputs: {
        total: 'US$13393',
        asideShare: '3.73 %',
        left: '-893 US$',
        perRange: '223.2 US$/mi',
      },
      findings: { aside: 'stop', budget: 'watch' },
    },
    {
      name: 'threshold case: all paid, no budget',
      from: 'threshold case',
      inputs: { items: [{ name: 'pump', phase: 'cooling', status: 'paid', cost: 'US$65' }] },
      outputs: { toCome: 'US$0' },
      findings: { aside: 'pass', budget: 'unknown' },
    },
    {
      name: 'threshold case: a tenth set aside',
      from: 'threshold case',
      inputs: {
        items: [{ name: 'pump', phase: 'cooling', status: 'ordered', cost: 'US$100' }],
        setAside: 'US$10',
        budget: 'US$105',
      },
      outputs: { asideShare: '10 %' },
      findings: { aside: 'watch', budget: 'watch' },
    },
    {
      name: 'a share set aside',
      from: 'hand: 15 % of 2980 is 447; 12 000 − 10 758 − 447 = 795, as with the sum above',
      inputs: {
        items: [
          { name: 'what is paid', phase: 'pack', status: 'paid', cost: 'US$8128' },
          { name: 'what is to come', phase: 'traction', status: 'planned', cost: 'US$2980' },
          { name: 'engine', phase: 'stripping', status: 'sold', cost: 'US$350' },
        ],
        share: '15 %',
        budget: 'US$12000',
      },
      outputs: { asideShare: '15.0 %', left: 'US$795' },
      findings: { aside: 'pass', budget: 'pass' },
    },
  ],
})
