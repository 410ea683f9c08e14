/**
 * A small published ledger, made by hand: two notes, one calculator with every kind of field, five
 * blocks with every verdict. Its arithmetic is trivial on purpose; only its rendering is under test.
 */
import { defineCalculator, type Calculator } from '../../calculators/define.ts'
import { contextOf, type CardContext } from '../../src/card/index.ts'
import type {
  Published,
  PublishedBlock,
  PublishedNumber,
  PublishedNote,
} from '../../src/ledger/published.ts'
import { dimensions, formatQuantity } from '../../src/quantity/index.ts'

const definition = defineCalculator({
  id: 'loop-flow',
  title: 'Flow in the loop',
  phase: 'cooling',
  purpose: 'Where the pump’s curve meets the loop.',
  inputs: {
    heat: {
      type: 'number',
      label: 'Heat into the coolant',
      symbol: 'Q',
      of: 'power',
      units: ['W', 'W'],
      hard: [1, 50000],
      usual: [100, 10000],
      help: 'What the controller sheds.',
    },
    inlet: {
      type: 'number',
      label: 'Temperature at the inlet',
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 110],
      usual: [20, 65],
      help: 'Coolant into the controller.',
    },
    bore: {
      type: 'number',
      label: 'Bore',
      symbol: 'd',
      of: 'length',
      units: ['mm', 'in'],
      hard: [4, 60],
      usual: [10, 25],
      help: 'Inside of the hose.',
      choice: true,
    },
    coolant: {
      type: 'choice',
      label: 'Coolant',
      help: 'What the loop is filled with.',
      options: { water: 'water', 'glycol-50': 'half water, half glycol' },
      assume: { value: 'glycol-50', because: 'the usual fill' },
    },
    hoses: {
      type: 'list',
      label: 'Hoses',
      row: 'hose',
      help: 'Every length of hose.',
      rows: [0, 20],
      fields: {
        name: { type: 'text', label: 'Name', help: 'What you call it.' },
        length: {
          type: 'number',
          label: 'Length',
          symbol: 'L',
          of: 'length',
          units: ['m', 'ft'],
          hard: [0.05, 20],
          usual: [0.2, 6],
          help: 'Along the hose.',
        },
      },
    },
  },
  outputs: {
    flow: {
      type: 'number',
      label: 'Flow',
      symbol: 'V',
      of: 'flow',
      units: ['L/min', 'gal/min'],
    },
    rise: {
      type: 'number',
      label: 'Rise over the controller',
      symbol: 'ΔT',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    limit: { type: 'text', label: 'What sets the flow' },
    losses: {
      type: 'table',
      label: 'Where the pressure goes',
      columns: {
        name: { type: 'text', label: 'Part' },
        drop: {
          type: 'number',
          label: 'Pressure drop',
          symbol: 'Δp',
          of: 'pressure',
          units: ['kPa', 'psi'],
        },
      },
    },
  },
  formula: ['\\Delta T = \\frac{Q}{\\rho c V}'],
  validity: ['For turbulent flow.'],
  checks: {
    rise: { title: 'Coolant rise', basis: 'common practice' },
    inlet: { title: 'Inlet limit', basis: 'the part’s own sheet' },
  },
  hazards: ['coolant-poison'],
  sources: [{ title: 'A textbook', trust: 'recalled' }],
  compute: ({ heat, bore, hoses }) => ({
    flow: (8.75 / 60000) * (bore / 0.019),
    rise: (heat / 550) * (0.019 / bore),
    limit: 'the radiator',
    losses: hoses.map(({ name, length }) => ({ name, drop: 5000 * length })),
  }),
  findings: (_, { rise }) => [
    {
      check: 'rise',
      level: rise === undefined ? 'unknown' : rise > 10 ? 'stop' : rise > 5 ? 'watch' : 'pass',
      text: 'That is how the coolant warms.',
      threshold: 'at most 5 K (watch), 10 K (stop)',
    },
    { check: 'inlet', level: 'pass', text: 'Cool enough.', threshold: 'at most 65 °C' },
  ],
  working: () => ['ΔT = Q ÷ (ρ c V) = 2.0 K'],
  plot: ({ heat }) => ({
    title: 'Pump and loop',
    x: { label: 'Flow', of: 'flow', units: ['L/min', 'gal/min'], fromZero: true },
    y: { label: 'Pressure', of: 'pressure', units: ['kPa', 'psi'], fromZero: true },
    series: [
      {
        name: 'pump at 13.5 V',
        line: 'solid',
        points: Array.from({ length: 21 }, (_, i): [number, number] => [
          (i * 0.8) / 60000,
          42000 * (1 - (i / 20) ** 2),
        ]),
      },
      {
        name: 'loop, warm',
        line: 'dashed',
        points: Array.from({ length: 21 }, (_, i): [number, number] => [
          (i * 0.6) / 60000,
          250 * (i * 0.6) ** 1.8,
        ]),
      },
    ],
    marks: [
      { x: 8.75 / 60000, y: 28500, label: 'works here', kind: 'point' },
      { x: 0, y: 35000 + heat * 0, label: 'most the cap allows', kind: 'limit-y' },
    ],
    caption: 'Where the lines cross is the flow.',
  }),
  examples: [{ name: 'round numbers', from: 'A textbook', inputs: {}, outputs: {} }],
})

export const calculator: Calculator = definition
export const calculators = new Map([[calculator.id, calculator]])

const notes: readonly PublishedNote[] = [
  {
    slug: 'hill-climb',
    title: 'Up the slow hill',
    date: '2026-02-01',
    phase: 'target',
    status: 'done',
    file: 'content/notes/hill-climb.mdx',
    restsOn: [],
  },
  {
    slug: 'keeping-cool',
    title: 'Keeping the controller cool',
    date: '2026-03-14',
    changed: '2026-04-02',
    phase: 'cooling',
    status: 'redone',
    summary: 'Whether the loop copes on the slow track.',
    file: 'content/notes/keeping-cool.mdx',
    restsOn: ['hill-climb'],
  },
]

type Draft = Partial<PublishedNumber> &
  Pick<PublishedNumber, 'id' | 'kind' | 'of'> & {
    readonly display: string
    readonly displayOther?: string
  }

let line = 10

function number(draft: Draft, value: number | null): PublishedNumber {
  line += 1
  const slash = draft.id.indexOf('/')
  const { vector, flavour, si } = dimensions[draft.of ?? 'number']
  const figures = draft.figures === undefined ? 3 : draft.figures
  const write = (unit: string) =>
    value === null
      ? 'cannot tell'
      : formatQuantity(value, unit, figures === null ? { exact: true } : { figures })
  return {
    note: draft.id.slice(0, slash),
    name: draft.id.slice(slash + 1),
    firmness: draft.kind === 'worked' ? 'assumed' : draft.kind,
    value,
    unit: si,
    vector,
    flavour,
    shown: write(draft.display),
    ...(draft.displayOther === undefined ? {} : { shownOther: write(draft.displayOther) }),
    figures,
    plusMinus: null,
    rests: [],
    calculator: null,
    block: null,
    source: null,
    instrument: null,
    date: '2026-03-14',
    file: `content/notes/${draft.id.slice(0, slash)}.mdx`,
    line,
    column: 4,
    now: value,
    ...draft,
  }
}

const verdicts = [
  { name: 'pump', verdict: 'pass', provisional: true, accepted: null },
  { name: 'passes', verdict: 'pass', provisional: false, accepted: null },
  { name: 'warm', verdict: 'watch', provisional: false, accepted: null },
  { name: 'hot', verdict: 'stop', provisional: false, accepted: null },
  {
    name: 'taken',
    verdict: 'stop',
    provisional: false,
    accepted: 'only driven in winter <until> the fan comes',
  },
  { name: 'unsure', verdict: 'unknown', provisional: true, accepted: null },
] as const

function blockNumbers(name: string): PublishedNumber[] {
  const block = `keeping-cool/${name}`
  const base = { block } as const
  const worked = { ...base, kind: 'worked', calculator: 'loop-flow' } as const
  const ins = ['heat', 'inlet', 'bore', 'hoses.0.length'].map((key) => `${block}.${key}`)
  return [
    number(
      {
        ...base,
        id: `${block}.heat`,
        kind: 'worked',
        of: 'power',
        display: 'W',
        expression: { ref: 'hill-climb/hillHeat' },
        rests: ['hill-climb/hillHeat'],
      },
      1100,
    ),
    number(
      {
        ...base,
        id: `${block}.inlet`,
        kind: 'worked',
        firmness: 'rated',
        of: 'temperature',
        display: '°C',
        displayOther: '°F',
        expression: { ref: 'keeping-cool/inletLimit' },
        rests: ['keeping-cool/inletLimit'],
      },
      338.15,
    ),
    number(
      {
        ...base,
        id: `${block}.bore`,
        kind: 'chosen',
        of: 'length',
        display: 'mm',
        displayOther: 'in',
        typed: '19 mm',
        figures: 2,
      },
      0.019,
    ),
    number(
      {
        ...base,
        id: `${block}.hoses.0.length`,
        kind: 'assumed',
        of: 'length',
        display: 'm',
        displayOther: 'ft',
        typed: '2.4 m',
        figures: 2,
      },
      2.4,
    ),
    number(
      {
        ...worked,
        id: `${block}.flow`,
        of: 'flow',
        display: 'L/min',
        displayOther: 'gal/min',
        rests: ins,
      },
      name === 'unsure' ? null : 8.75 / 60000,
    ),
    number(
      {
        ...worked,
        id: `${block}.rise`,
        of: 'temperatureDifference',
        display: 'K',
        displayOther: 'Δ°F',
        rests: ins,
        figures: 2,
      },
      2,
    ),
    number(
      {
        ...worked,
        id: `${block}.losses.0.drop`,
        of: 'pressure',
        display: 'kPa',
        displayOther: 'psi',
        rests: ins,
      },
      12000,
    ),
  ]
}

const blocks: readonly PublishedBlock[] = verdicts.map(
  ({ name, verdict, provisional, accepted }) => ({
    id: `keeping-cool/${name}`,
    note: 'keeping-cool',
    name,
    title: name === 'pump' ? 'Pump & loop, both hoses' : `The loop when ${name}`,
    calculator: 'loop-flow',
    given: {
      heat: { type: 'number', id: `keeping-cool/${name}.heat`, how: 'reference' },
      inlet: { type: 'number', id: `keeping-cool/${name}.inlet`, how: 'reference' },
      bore: { type: 'number', id: `keeping-cool/${name}.bore`, how: 'literal' },
      coolant: { type: 'word', value: 'glycol-50', how: 'assumed-default' },
      hoses: {
        type: 'rows',
        rows: [
          {
            name: { type: 'word', value: 'supply <front>', how: 'literal' },
            length: { type: 'number', id: `keeping-cool/${name}.hoses.0.length`, how: 'literal' },
          },
        ],
      },
    },
    inputs: {
      heat: 1100,
      inlet: 338.15,
      bore: 0.019,
      coolant: 'glycol-50',
      hoses: [{ name: 'supply <front>', length: 2.4 }],
    },
    outputs: {
      flow: verdict === 'unknown' ? null : 8.75 / 60000,
      rise: 2,
      limit: 'the radiator',
      losses: [
        { name: 'supply <front>', drop: 12000 },
        { name: 'radiator', drop: null },
      ],
    },
    verdict,
    provisional,
    accepted,
    findings: [
      {
        check: 'rise',
        level: verdict,
        text: 'The coolant warms by 2.0 K through the controller.',
        threshold: 'at most 5 K (watch), 10 K (stop)',
        basis: 'common practice',
      },
      {
        check: 'inlet',
        level: 'pass',
        text: 'The inlet stays 10.7 K below the limit of 65 °C.',
        threshold: 'at most 65 °C',
        basis: 'the part’s own sheet',
      },
    ],
    working: ['ΔT = Q ÷ (ρ c V) = 1100 W ÷ (1040 kg/m³ × 3.6 kJ/(kg·K) × 8.75 L/min) = 2.0 K'],
    hazards: ['coolant-poison', 'high-voltage', 'dry-pump'],
    file: 'content/notes/keeping-cool.mdx',
    line: 40,
  }),
)

export const published: Published = {
  format: 1,
  site: {
    title: 'Fence Line',
    description: 'An old pickup goes electric.',
    vehicle: '1966 pickup (invented)',
    notice: 'This scenario is invented.',
    units: ['metric', 'us'],
  },
  notes,
  numbers: [
    number(
      {
        id: 'hill-climb/share',
        kind: 'assumed',
        of: 'fraction',
        display: '%',
        typed: '4 %',
        figures: 1,
        because: 'nobody prints it',
        settle: 'measure coolant in and out on a steady climb',
      },
      0.04,
    ),
    number(
      { id: 'hill-climb/power', kind: 'rated', of: 'power', display: 'kW', typed: '27.5 kW' },
      27500,
    ),
    number(
      {
        id: 'hill-climb/hillHeat',
        kind: 'worked',
        of: 'power',
        display: 'W',
        figures: 2,
        rests: ['hill-climb/power', 'hill-climb/share'],
        expression: {
          op: '*',
          left: { ref: 'hill-climb/power' },
          right: { ref: 'hill-climb/share' },
        },
      },
      1100,
    ),
    number(
      {
        id: 'keeping-cool/inletLimit',
        kind: 'rated',
        of: 'temperature',
        display: '°C',
        displayOther: '°F',
        typed: '65 °C',
        figures: 2,
        source: {
          key: 'controllerSheet',
          title: 'Controller data sheet',
          edition: 'rev. C',
          at: 'p. 7',
        },
      },
      338.15,
    ),
    number(
      {
        id: 'keeping-cool/pumpDraw',
        kind: 'reading',
        of: 'current',
        display: 'A',
        typed: '1.5 A',
        figures: 2,
        plusMinus: 0.1,
        plusMinusShown: '± 0.1 A',
        instrument: { key: 'clampMeter', title: 'clamp meter', plusMinus: '0.1 A' },
        at: '14.0 V, warm',
      },
      1.5,
    ),
    number(
      {
        id: 'keeping-cool/supply',
        kind: 'chosen',
        of: 'length',
        display: 'm',
        displayOther: 'ft',
        figures: 2,
        typed: '2.4 m',
        because: 'round the battery box',
      },
      2.4,
    ),
    number(
      {
        id: 'keeping-cool/back',
        kind: 'chosen',
        of: 'length',
        display: 'm',
        displayOther: 'ft',
        figures: 2,
        typed: '2.8 m',
        because: 'over the rail',
      },
      2.8,
    ),
    number(
      {
        id: 'keeping-cool/supply + back',
        kind: 'worked',
        firmness: 'chosen',
        of: 'length',
        display: 'm',
        displayOther: 'ft',
        figures: 2,
        rests: ['keeping-cool/supply', 'keeping-cool/back'],
        expression: {
          op: '+',
          left: { ref: 'keeping-cool/supply' },
          right: { ref: 'keeping-cool/back' },
        },
      },
      5.2,
    ),
    number(
      {
        id: 'keeping-cool/bucket',
        kind: 'reading',
        of: 'flow',
        display: 'L/min',
        displayOther: 'gal/min',
        figures: 2,
        typed: '8.1 L/min',
        checks: 'keeping-cool/pump.flow',
        at: 'into a bucket, 60 s',
      },
      8.1 / 60000,
    ),
    ...verdicts.flatMap(({ name }) => blockNumbers(name)),
  ],
  blocks,
}

export function context(options: Partial<Parameters<typeof contextOf>[1]> = {}): CardContext {
  return contextOf(published, { base: '/', page: 'keeping-cool', calculators, ...options })
}

/** A number of the fixture; a wrong id fails the test at once. */
export function numberNamed(id: string, ctx: CardContext = context()): PublishedNumber {
  const found = ctx.number(id)
  if (found === undefined) throw new Error(`the fixture has no ${id}`)
  return found
}

export function blockNamed(name: string, ctx: CardContext = context()): PublishedBlock {
  const found = ctx.block(`keeping-cool/${name}`)
  if (found === undefined) throw new Error(`the fixture has no block ${name}`)
  return found
}
