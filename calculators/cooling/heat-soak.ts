/**
 * One lump of metal over a drive: how hot a controller or motor gets, stage after stage, and when it
 * reaches its limit.
 *
 * In: mass and specific heat, the temperature at the start, stages with heat, surroundings and the
 * conductance to them. Each stage has a closed form, so nothing is stepped. One lump means one
 * temperature: a chip or a winding is hotter than the lump, and Bi ≥ 0.1 means the lump is not one.
 */
import * as elementary from '../elementary.ts'
import { defineCalculator, type InputValues, type Level } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** K below the limit; common practice. */
const limitMargin = 10
/** Lumped analysis holds below this; heat transfer textbooks. */
const biotMost = 0.1
const plotSteps = 16

const inputs = {
  mass: {
    type: 'number',
    label: words`Mass that warms up`,
    symbol: 'm',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [0.05, 1000],
    usual: [1, 150],
    help: words`The part with its plate or housing, without the coolant.`,
  },
  specificHeat: {
    type: 'number',
    label: words`Specific heat`,
    symbol: 'c',
    of: 'specificHeat',
    units: ['kJ/(kg·K)', 'BTU/(lb·Δ°F)'],
    hard: [0.1, 5],
    usual: [0.38, 1],
    help: words`Aluminium 0.9, iron 0.46, copper 0.39.`,
    assume: {
      value: 0.45,
      because: words`mostly iron: the careful end, aluminium takes up twice that`,
    },
  },
  start: {
    type: 'number',
    label: words`Temperature at the start`,
    symbol: 'T_0',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-40, 200],
    usual: [-20, 70],
    help: words`Hottest it may be when setting off: think of the second trip of the day.`,
  },
  limit: {
    type: 'number',
    label: words`Limit`,
    symbol: 'T_max',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [30, 250],
    usual: [60, 150],
    help: words`Where it cuts back, at the place its sheet measures.`,
  },
  stages: {
    type: 'list',
    label: words`Drive`,
    row: words`stage`,
    help: words`In the order driven: lane, hill, crawl, parked and charging.`,
    rows: [1, 60],
    fields: {
      name: { type: 'text', label: words`Stage`, help: words`Such as slow hill.` },
      duration: {
        type: 'number',
        label: words`Lasts`,
        symbol: 't',
        of: 'time',
        units: ['min', 'min'],
        hard: [0.05, 2880],
        usual: [0.5, 240],
        help: words`How long.`,
      },
      heat: {
        type: 'number',
        label: words`Heat`,
        symbol: 'q',
        of: 'power',
        units: ['W', 'BTU/h'],
        hard: [0, 100_000],
        usual: [0, 15_000],
        help: words`What the part loses in this stage.`,
      },
      around: {
        type: 'number',
        label: words`Coolant or air`,
        symbol: 'T_a',
        of: 'temperature',
        units: ['°C', '°F'],
        hard: [-40, 200],
        usual: [-20, 70],
        help: words`What it gives its heat to: coolant at its inlet, or air.`,
      },
      conductance: {
        type: 'number',
        label: words`Conductance`,
        symbol: 'K',
        of: 'thermalConductance',
        units: ['W/K', 'BTU/(h·Δ°F)'],
        hard: [0, 5000],
        usual: [0.5, 500],
        help: words`Heat over temperature difference, from its sheet (one over K/W) or a steady reading; a stopped pump leaves a few W/K.`,
      },
    },
  },
  conductivity: {
    type: 'number',
    label: words`Conductivity of the metal`,
    symbol: 'λ',
    of: 'thermalConductivity',
    units: ['W/(m·K)', 'BTU/(h·ft·Δ°F)'],
    hard: [0.1, 420],
    usual: [15, 400],
    help: words`Aluminium 100 to 200, iron 50, copper 390.`,
    assume: { value: 50, because: words`iron: the careful end` },
  },
  area: {
    type: 'number',
    label: words`Cooled surface`,
    symbol: 'A',
    of: 'area',
    units: ['cm²', 'in²'],
    hard: [0.1, 100_000],
    usual: [50, 20_000],
    help: words`Of the face on the plate, or of the finned surface.`,
    optional: true,
  },
  depth: {
    type: 'number',
    label: words`Depth of metal`,
    symbol: 'L_c',
    of: 'length',
    units: ['mm', 'in'],
    hard: [0.05, 1000],
    usual: [2, 100],
    help: words`From the source of heat to the cooled surface; for a solid body volume over surface.`,
    assume: { value: 20, because: words`a base plate and the housing on it` },
  },
} as const

type Inputs = InputValues<typeof inputs>
type Row = Inputs['stages'][number]

interface Stage {
  readonly row: Row
  readonly begins: number
  readonly from: number
  readonly to: number
  /** s from the beginning of the drive. */
  readonly crosses: number | undefined
}

/** (1 − e^−x) / x and −ln(1 − x) / x, both 1 at nothing: no conductance is a straight line. */
const fading = (x: number) => (x === 0 ? 1 : -elementary.expm1(-x) / x)
const stretched = (x: number) => (x === 0 ? 1 : -elementary.log1p(-x) / x)

const net = ({ heat, conductance, around }: Row, from: number) =>
  heat - conductance * (from - around)

function after(row: Row, capacity: number, from: number, time: number): number {
  return from + (net(row, from) * time * fading((row.conductance * time) / capacity)) / capacity
}

/** s until the limit, within the stage; where it settles below the limit there is no logarithm, so no time. */
function reaches(row: Row, capacity: number, from: number, limit: number): number | undefined {
  if (from >= limit) return 0
  const rate = net(row, from)
  const share = (row.conductance * (limit - from)) / rate
  if (!(rate > 0)) return undefined
  const time = ((limit - from) * capacity * stretched(share)) / rate
  return time <= row.duration ? time : undefined
}

function drive({ mass, specificHeat, start, limit, stages }: Inputs): readonly Stage[] {
  const capacity = mass * specificHeat
  let begins = 0
  let from = start
  return stages.map((row) => {
    const to = after(row, capacity, from, row.duration)
    const within = reaches(row, capacity, from, limit)
    const crosses = within === undefined ? undefined : begins + within
    const stage = { row, begins, from, to, crosses }
    begins += row.duration
    from = to
    return stage
  })
}

/** Where it would settle if the stage went on; undefined without conductance. */
const settles = ({ heat, around, conductance }: Row): number | undefined =>
  conductance > 0 ? around + heat / conductance : undefined

const temperature = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'temperature', units: ['°C', '°F'] }) as const
const minutes = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'time', units: ['min', 'min'] }) as const

export const heatSoak = defineCalculator({
  id: 'heat-soak',
  title: words`Heat over a drive`,
  phase: 'cooling',
  purpose: words`How hot a controller or motor gets over a drive of stages, in which stage it is hottest, and after how long it reaches its limit.`,
  inputs,
  outputs: {
    peak: temperature(words`Hottest`, 'T_peak'),
    peakStage: { type: 'text', label: words`When` },
    inHand: {
      type: 'number',
      label: words`Below the limit by`,
      symbol: 'ΔT',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    toLimit: minutes(words`Reaches its limit after`, 't_max'),
    limitStage: { type: 'text', label: words`Reaches it in` },
    end: temperature(words`At the end of the drive`, 'T_end'),
    capacity: {
      type: 'number',
      label: words`Heat capacity`,
      symbol: 'C',
      of: 'heatCapacity',
      units: ['kJ/K', 'BTU/Δ°F'],
    },
    biot: {
      type: 'number',
      label: words`Biot number`,
      symbol: 'Bi',
      of: 'number',
      units: ['', ''],
    },
    table: {
      type: 'table',
      label: words`Stages`,
      columns: {
        name: { type: 'text', label: words`Stage` },
        end: temperature(words`At its end`, 'T'),
        settles: temperature(words`Would settle at`, 'T_∞'),
        constant: minutes(words`Time constant`, 'τ'),
      },
    },
  },
  formula: [
    String.raw`C\frac{dT}{dt} = q - K(T - T_a), \qquad C = m c, \qquad \tau = \frac{C}{K}, \qquad T_\infty = T_a + \frac{q}{K}`,
    String.raw`T(t) = T_\infty + (T_0 - T_\infty)\,e^{-t/\tau}, \qquad t_\text{max} = \tau\ln\frac{T_0 - T_\infty}{T_\text{max} - T_\infty}`,
    String.raw`\mathit{Bi} = \frac{K L_c}{\lambda A} < 0.1`,
  ],
  validity: [
    words`One temperature for the whole lump; what sits deeper, a chip or a winding, is hotter by its own heat over its own conductance.`,
    words`Heat, surroundings and conductance are constant within a stage. A coolant that warms up along the drive is worked as several stages.`,
    words`At a Biot number of 0.1 or more the body is not one lump: the figures are then an estimate, and the check cannot tell.`,
  ],
  checks: {
    peak: { title: words`Hottest`, basis: 'common practice (10 K below the limit)' },
    lasting: { title: words`If the worst stage lasts`, basis: 'common practice' },
    lump: { title: words`One lump`, basis: 'published: heat transfer textbooks, Bi below 0.1' },
  },
  hazards: ['loss-of-drive', 'hot-coolant'],
  sources: [
    {
      title: 'Incropera and DeWitt, Fundamentals of Heat and Mass Transfer',
      at: 'chapter 5, lumped capacitance',
      trust: 'read',
    },
  ],
  compute(input) {
    const stages = drive(input)
    const capacity = input.mass * input.specificHeat
    const hottest = stages.reduce((most, stage) => Math.max(most, stage.to), input.start)
    const ending = stages.find(({ to }) => to === hottest && to > input.start)
    const crossing = stages.find(({ crosses }) => crosses !== undefined)
    const conductance = Math.max(...input.stages.map((row) => row.conductance))
    return {
      peak: hottest,
      peakStage: ending === undefined ? words`setting off` : words`end of ${ending.row.name}`,
      inHand: input.limit - hottest,
      toLimit: crossing?.crosses,
      limitStage: crossing?.row.name ?? words`no stage`,
      end: stages.at(-1)?.to,
      capacity,
      biot:
        input.area === undefined
          ? undefined
          : (conductance * input.depth) / (input.conductivity * input.area),
      table: stages.map(({ row, to }) => ({
        name: row.name,
        end: to,
        settles: settles(row),
        constant: row.conductance > 0 ? capacity / row.conductance : undefined,
      })),
    }
  },
  findings(input, { peak = Infinity, peakStage = '', toLimit, limitStage = '', biot }, say) {
    const { limit } = input
    const T = (value: number | undefined) => say(value, '°C')
    const peakLevel: Level = peak >= limit ? 'stop' : peak > limit - limitMargin ? 'watch' : 'pass'
    const endless = input.stages.filter(
      (row) => (settles(row) ?? (row.heat > 0 ? Infinity : -Infinity)) >= limit,
    )
    const [worst] = [...endless].sort((a, b) => (settles(b) ?? Infinity) - (settles(a) ?? Infinity))
    const settled = worst && settles(worst)
    return [
      {
        check: 'peak',
        level: peakLevel,
        text:
          peakLevel === 'stop'
            ? words`It reaches ${T(limit)} after ${say(toLimit, 'min')}, in “${limitStage}”, and would get to ${T(peak)}: it cuts back. More conductance, less power there, or a shorter stage.`
            : peakLevel === 'watch'
              ? words`It is hottest at ${T(peak)} (${peakStage}): within ${say(limitMargin, 'K', 2)} of its limit. A hotter day takes that.`
              : words`It is hottest at ${T(peak)} (${peakStage}).`,
        threshold: words`at most ${T(limit - limitMargin)} (watch), below ${T(limit)} (stop)`,
      },
      {
        check: 'lasting',
        level: worst === undefined ? 'pass' : 'watch',
        text:
          worst === undefined
            ? words`However long a stage lasts, it settles below the limit.`
            : settled === undefined
              ? words`Only its short time keeps “${worst.name}” below the limit: it would settle at no temperature at all. Do not count on it in a queue.`
              : words`Only its short time keeps “${worst.name}” below the limit: it would settle at ${T(settled)}. Do not count on it in a queue.`,
        threshold: words`every stage settles below the limit`,
      },
      {
        check: 'lump',
        level: biot !== undefined && biot < biotMost ? 'pass' : 'unknown',
        text:
          biot === undefined
            ? words`Whether it is one lump cannot be told without the cooled surface.`
            : biot < biotMost
              ? words`Bi is ${say(biot, '', 2)}: the metal is near enough one temperature.`
              : words`Bi is ${say(biot, '', 2)}: the surface lags behind the source of heat, which is hotter than worked here. Measure at the source.`,
        threshold: words`Biot number below 0.1`,
      },
    ]
  },
  working(input, { capacity, biot }, say) {
    const T = (value: number | undefined) => say(value, '°C', 4)
    return [
      `C = m c = ${say(input.mass, 'kg')} × ${say(input.specificHeat, 'kJ/(kg·K)')} = ${say(capacity, 'kJ/K')}`,
      ...drive(input).map(({ row, from, to }) => {
        const steady = settles(row)
        return steady === undefined
          ? `${row.name}: T = T_0 + q t / C = ${T(from)} + ${say(row.heat, 'W')} × ${say(row.duration, 'min')} / ${say(capacity, 'kJ/K')} = ${T(to)}`
          : `${row.name}: T_∞ = ${T(row.around)} + ${say(row.heat, 'W')} / ${say(row.conductance, 'W/K')} = ${T(steady)}; τ = ${say((capacity ?? 0) / row.conductance, 'min')}; T = T_∞ + (${T(from)} − T_∞) e^(−${say(row.duration, 'min')}/τ) = ${T(to)}`
      }),
      ...(biot === undefined
        ? []
        : [
            `Bi = K L_c / (λ A) = ${say(Math.max(...input.stages.map((row) => row.conductance)), 'W/K')} × ${say(input.depth, 'mm')} / (${say(input.conductivity, 'W/(m·K)')} × ${say(input.area, 'cm²')}) = ${say(biot, '', 2)}`,
          ]),
    ]
  },
  plot(input) {
    const capacity = input.mass * input.specificHeat
    return {
      title: words`Temperature over the drive`,
      x: { label: words`Time`, of: 'time', units: ['min', 'min'], fromZero: true },
      y: { label: words`Temperature`, of: 'temperature', units: ['°C', '°F'] },
      series: [
        {
          name: words`the part`,
          line: 'solid',
          points: drive(input).flatMap(({ row, begins, from }) =>
            Array.from({ length: plotSteps + 1 }, (_, step) => {
              const time = (row.duration * step) / plotSteps
              return [begins + time, after(row, capacity, from, time)] as const
            }),
          ),
        },
        {
          name: words`coolant or air`,
          line: 'dotted',
          points: drive(input).flatMap(({ row, begins }) => [
            [begins, row.around] as const,
            [begins + row.duration, row.around] as const,
          ]),
        },
      ],
      marks: [
        { x: 0, y: input.limit, label: words`limit`, kind: 'limit-y' },
        ...drive(input).map(({ row, begins, to }) => ({
          x: begins + row.duration,
          y: to,
          label: row.name,
          kind: 'point' as const,
        })),
      ],
      caption: words`Where the line meets the limit, the part cuts back.`,
    }
  },
  examples: [
    {
      name: 'Thermocouple bead in a hot gas',
      from: 'Incropera and DeWitt, example 5.1: time constant 1 s, 25 to 199 °C in gas of 200 °C takes 5.2 s, Bi 0.0024; here scaled to 50 g',
      inputs: {
        mass: '0.05 kg',
        specificHeat: '0.4 kJ/(kg·K)',
        start: '25 °C',
        limit: '199 °C',
        stages: [
          { name: 'gas', duration: '6 s', heat: '0 W', around: '200 °C', conductance: '20 W/K' },
        ],
        conductivity: '20 W/(m·K)',
        area: '500 cm²',
        depth: '0.1177 mm',
      },
      outputs: { toLimit: '5.2 s', biot: '0.0024', limitStage: 'gas' },
      findings: { peak: 'stop', lump: 'pass', lasting: 'watch' },
    },
    {
      // Cylinder 1.7 m × 0.30 m of water: m = 119.69 kg, K = 8 × 1.74358 m², L_c = 68.92 mm, Bi = 0.894.
      name: 'A body cooling from 37 °C',
      from: 'Çengel, Heat Transfer, example 4.2: 25 °C after 12.2 h in a room of 20 °C, Bi 0.89',
      inputs: {
        mass: '119.69 kg',
        specificHeat: '4.178 kJ/(kg·K)',
        start: '37 °C',
        limit: '60 °C',
        stages: [
          {
            name: 'room',
            duration: '12.2 h',
            heat: '0 W',
            around: '20 °C',
            conductance: '13.949 W/K',
          },
        ],
        conductivity: '0.617 W/(m·K)',
        area: '17435.8 cm²',
        depth: '68.92 mm',
      },
      outputs: { end: '25 °C', biot: '0.89', peakStage: 'setting off' },
      findings: { peak: 'pass', lasting: 'pass', lump: 'unknown' },
    },
    {
      // τ 75 s, T_∞ 50 °C: T(300 s) = 50 − 25 e^−4 = 49.5421; 45 °C after 75 ln 5 = 120.708 s.
      name: 'Nine kilojoule a kelvin, 3 kW, 120 W/K',
      from: 'hand: 50 − 25 e^(−300/75), 75 s × ln 5',
      inputs: {
        mass: '9 kg',
        specificHeat: '1 kJ/(kg·K)',
        start: '25 °C',
        limit: '45 °C',
        stages: [
          {
            name: 'hill',
            duration: '5 min',
            heat: '3000 W',
            around: '25 °C',
            conductance: '120 W/K',
          },
        ],
      },
      outputs: { peak: '49.5421 °C', toLimit: '120.708 s', capacity: '9.00 kJ/K' },
      findings: { peak: 'stop', lasting: 'watch', lump: 'unknown' },
    },
    {
      // 4 kJ/K, 250 W, 15 W/K, 30 °C: T(300 s) = 46.6667 − 16.6667 e^−1.125 = 41.2558. Then no heat
      // for 5 min: 30 + 11.2558 e^−1.125 = 33.6542.
      name: 'Crawl, then parked',
      from: 'hand: 46.6667 − 16.6667 e^(−1.125), then 30 + 11.2558 e^(−1.125)',
      inputs: {
        mass: '4 kg',
        specificHeat: '1 kJ/(kg·K)',
        start: '30 °C',
        limit: '50 °C',
        stages: [
          {
            name: 'crawl',
            duration: '5 min',
            heat: '250 W',
            around: '30 °C',
            conductance: '15 W/K',
          },
          {
            name: 'parked',
            duration: '5 min',
            heat: '0 W',
            around: '30 °C',
            conductance: '15 W/K',
          },
        ],
        area: '200 cm²',
      },
      outputs: { peak: '41.2558 °C', peakStage: 'end of crawl', end: '33.6542 °C' },
      findings: { peak: 'watch' },
    },
    {
      // 1000 W × 60 s / 2000 J/K = 30 K.
      name: 'Pump stopped: a straight line',
      from: 'hand: 20 °C + 1000 W × 60 s / 2 kJ/K',
      inputs: {
        mass: '2 kg',
        specificHeat: '1 kJ/(kg·K)',
        start: '20 °C',
        limit: '45 °C',
        stages: [
          {
            name: 'no flow',
            duration: '1 min',
            heat: '1000 W',
            around: '20 °C',
            conductance: '0 W/K',
          },
        ],
      },
      outputs: { peak: '50.0 °C', toLimit: '50 s' },
      findings: { peak: 'stop', lasting: 'watch' },
    },
  ],
})
