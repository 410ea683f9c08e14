/**
 * Drag area and rolling resistance from coast-downs: speeds and times read while rolling in neutral,
 * on a level road, both ways.
 *
 * m/s, s, kg, kg/m³ in; m² and plain numbers out. The speed is fitted, not its slope: slopes of
 * stop-watch readings are mostly noise. Wind and a slope of the road show as the difference between
 * the two ways and fall out of the result; one way alone cannot tell them from drag.
 */
import { airDensity, gravity } from '../air.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import { leastSquares } from '../least-squares.ts'
import { counted } from '../../src/words/counted.ts'
import { words } from '../../src/words/words.ts'

/** Common practice. */
const agree = { pass: 0.1, stop: 0.25 } as const
const goodFit = 0.98
const plausible = { least: 0.006, most: 0.03 } as const
const sure = { pass: 0.1, watch: 0.25 } as const
const simulated = 0.05
/** A fitted wind counts only when its standard deviation is below this, m/s. */
const windKnown = 1
/** Times the readings are corrected with the slope of the fit before. */
const rounds = 6

const inputs = {
  mass: {
    type: 'number',
    label: words`Mass as it rolled`,
    symbol: 'm',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [50, 20_000],
    usual: [400, 5000],
    help: words`Weighed with the people who were in it.`,
  },
  rotating: {
    type: 'number',
    label: words`Turning parts, as a share of the mass`,
    symbol: 'λ',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 30],
    usual: [2, 10],
    help: words`Wheels, tyres, axle; with the motor turning along it is more.`,
    assume: { value: 4, because: words`3 to 5 % with the motor uncoupled (common practice)` },
  },
  airTemperature: {
    type: 'number',
    label: words`Air temperature`,
    symbol: 'T',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-60, 60],
    usual: [-10, 40],
    help: words`During the runs.`,
  },
  altitude: {
    type: 'number',
    label: words`Altitude`,
    symbol: 'z',
    of: 'length',
    units: ['m', 'ft'],
    hard: [-430, 6000],
    usual: [0, 3000],
    help: words`Of the road.`,
    assume: { value: 0, because: words`near sea level` },
  },
  density: {
    type: 'number',
    label: words`Air density, if worked out`,
    symbol: 'ρ_a',
    of: 'density',
    units: ['kg/m³', 'lb/ft³'],
    hard: [0.4, 1.7],
    usual: [0.7, 1.45],
    help: words`From the air density page; wins over altitude and temperature.`,
    optional: true,
  },
  wind: {
    type: 'number',
    label: words`Wind along the road`,
    symbol: 'w',
    of: 'speed',
    units: ['m/s', 'mph'],
    hard: [0, 15],
    usual: [0, 5],
    help: words`Its strength at bonnet height. Left out: worked from the two ways where they tell it.`,
    optional: true,
  },
  readings: {
    type: 'list',
    label: words`Readings`,
    row: words`reading`,
    help: words`Run by run, each in the order of time: at this second it did this speed.`,
    rows: [4, 300],
    fields: {
      name: {
        type: 'text',
        label: words`Run`,
        help: words`The same name for all readings of one run.`,
      },
      way: {
        type: 'choice',
        label: words`Way`,
        help: words`There, or back on the same stretch.`,
        options: { out: words`there`, back: words`back` },
      },
      time: {
        type: 'number',
        label: words`Time`,
        symbol: 't_i',
        of: 'time',
        units: ['s', 's'],
        hard: [0, 3600],
        usual: [0, 300],
        help: words`Since the run’s start.`,
      },
      speed: {
        type: 'number',
        label: words`Speed`,
        symbol: 'v_i',
        of: 'speed',
        units: ['km/h', 'mph'],
        hard: [1, 250],
        usual: [10, 130],
        help: words`From a satellite receiver, not the speedometer.`,
      },
    },
  },
} as const

type Inputs = InputValues<typeof inputs>
type Reading = Inputs['readings'][number]

interface Coasted {
  readonly name: string
  /** 1 there, −1 back. */
  readonly sign: number
  readonly readings: readonly Reading[]
}

/** Runs in the order in which they first appear. */
function runsOf(input: Inputs): readonly Coasted[] {
  const names = [...new Set(input.readings.map(({ name }) => name))]
  return names.map((name) => {
    const readings = input.readings.filter((reading) => reading.name === name)
    return { name, sign: readings.some(({ way }) => way === 'back') ? -1 : 1, readings }
  })
}

/** What is wrong with the readings, or undefined. */
function trouble(runs: readonly Coasted[]): string | undefined {
  for (const { name, readings } of runs) {
    if (new Set(readings.map(({ way }) => way)).size > 1)
      return words`Run “${name}” goes both there and back: give each way its own name.`
    if (readings.length < 3) return words`Run “${name}” has fewer than three readings.`
    for (const [index, reading] of readings.slice(1).entries()) {
      const before = readings[index]
      if (before === undefined) continue
      if (!(reading.time > before.time)) return words`Run “${name}”: the times do not go up.`
      if (!(reading.speed < before.speed))
        return words`Run “${name}”: the speed does not go down; a gust, a slope or a slip of the pen.`
    }
  }
  return undefined
}

/** Slowing in m/s²: a + c v² + sign (b + d v). */
interface Slowing {
  readonly a: number
  readonly c: number
  readonly b: number
  readonly d: number
}
const slowingAt = (speed: number, sign: number, { a, c, b, d }: Slowing): number =>
  a + c * speed ** 2 + sign * (b + d * speed)

/**
 * ∫v² dt and ∫v dt up to each reading: trapezium with the end slopes of the fit before, which leaves
 * only the fifth power of the step.
 */
function travelled({ readings, sign }: Coasted, known: Slowing | undefined) {
  let square = 0
  let way = 0
  return readings.map((reading, index) => {
    const before = readings[index - 1]
    if (before !== undefined) {
      const step = reading.time - before.time
      const [v0, v1] = [before.speed, reading.speed]
      const [s0, s1] = known
        ? [-slowingAt(v0, sign, known), -slowingAt(v1, sign, known)]
        : [(v1 - v0) / step, (v1 - v0) / step]
      square += (step / 2) * (v0 ** 2 + v1 ** 2) - (step ** 2 / 12) * (2 * v1 * s1 - 2 * v0 * s0)
      way += (step / 2) * (v0 + v1) - (step ** 2 / 12) * (s1 - s0)
    }
    return { time: reading.time, square, way, speed: reading.speed }
  })
}

/** Each column less its mean: where a run's clock and way start is of no account. */
const centred = (rows: readonly (readonly number[])[]): readonly (readonly number[])[] => {
  const [first = []] = rows
  const means = first.map((_, j) => rows.reduce((sum, row) => sum + (row[j] ?? 0), 0) / rows.length)
  return rows.map((row) => row.map((cell, j) => cell - (means[j] ?? 0)))
}

interface Fitted {
  readonly slowing: Slowing
  readonly deviations: Slowing
  readonly explained: number
}

function fit(runs: readonly Coasted[], bothWays: boolean): Fitted | undefined {
  let known: Slowing | undefined
  let result: Fitted | undefined
  for (let round = 0; round < rounds; round++) {
    const table = runs.flatMap((run) =>
      centred(
        travelled(run, known).map(({ time, square, way, speed }) => [
          -time,
          -square,
          ...(bothWays ? [-run.sign * time, -run.sign * way] : []),
          speed,
        ]),
      ),
    )
    const found = leastSquares(
      table.map((row) => row.slice(0, -1)),
      table.map((row) => row.at(-1) ?? 0),
      runs.length,
    )
    if (found === undefined) return undefined
    const [a = 0, c = 0, b = 0, d = 0] = found.coefficients
    const [sa = 0, sc = 0, sb = 0, sd = 0] = found.deviations
    // Equal both ways but for rounding is equal.
    const settled = (value: number, against: number) =>
      Math.abs(value) < 1e-9 * Math.abs(against) ? 0 : value
    known = { a, c, b: settled(b, a), d: settled(d, a) }
    result = {
      slowing: known,
      deviations: { a: sa, c: sc, b: sb, d: sd },
      explained: 1 - found.residual / found.total,
    }
  }
  return result
}

/** Seconds from one speed down to another, by Simpson's rule; undefined when it does not slow all the way. */
function coastTime(from: number, to: number, sign: number, slowing: Slowing): number | undefined {
  const steps = 64
  const width = (from - to) / steps
  let sum = 0
  for (let step = 0; step <= steps; step++) {
    const rate = slowingAt(to + step * width, sign, slowing)
    if (!(rate > 0)) return undefined
    sum += (step === 0 || step === steps ? 1 : step % 2 === 0 ? 2 : 4) / rate
  }
  return (sum * width) / 3
}

/** The wind from ahead on the way there, where the readings tell it. */
const fittedWind = ({ slowing: { c, d }, deviations }: Fitted): number | undefined =>
  deviations.d / (2 * c) <= windKnown ? d / (2 * c) : undefined

/** By how much the two ways differ at the middle speed, over their mean. */
function apartAtTheMiddle({ readings }: Inputs, { a, c, b, d }: Slowing): number {
  const speeds = readings.map(({ speed }) => speed)
  const middle = (Math.max(...speeds) + Math.min(...speeds)) / 2
  return (2 * Math.abs(b + d * middle)) / (a + c * middle ** 2)
}

const densityOf = (input: Inputs): number =>
  input.density ?? airDensity(input.airTemperature, input.altitude)

function worked(input: Inputs) {
  const runs = runsOf(input)
  const signs = new Set(runs.map(({ sign }) => sign))
  const bothWays = signs.size === 2
  const problem = trouble(runs)
  const fitted = problem === undefined ? fit(runs, bothWays) : undefined
  const isSound = fitted !== undefined && fitted.slowing.a > 0 && fitted.slowing.c > 0
  return { runs, bothWays, problem, fitted, sound: isSound ? fitted : undefined }
}

const plain = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'number', units: ['', ''] }) as const satisfies NumberOutput
const part = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'fraction',
    units: ['%', '%'],
  }) as const satisfies NumberOutput
const area = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'area',
    units: ['m²', 'ft²'],
  }) as const satisfies NumberOutput
const seconds = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'time', units: ['s', 's'] }) as const satisfies NumberOutput
const pace = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'speed',
    units: ['km/h', 'mph'],
  }) as const satisfies NumberOutput

export const coastDown = defineCalculator({
  id: 'coast-down',
  title: words`Coast-down`,
  phase: 'vehicle',
  purpose: words`Drag area and rolling resistance of the finished vehicle, from speeds and times while it rolls out in neutral.`,
  inputs,
  outputs: {
    dragArea: area(words`Drag coefficient times area`, 'CdA'),
    dragAreaSpread: area(words`CdA ± (k = 2)`, 'U_CdA'),
    rollingResistance: plain(words`Rolling resistance coefficient`, 'Crr'),
    rollingSpread: plain(words`Crr ± (k = 2)`, 'U_Crr'),
    explained: plain(words`r² of the fit`, 'r²'),
    apart: part(words`There and back differ by`, 'Δ'),
    windFound: {
      type: 'number',
      label: words`Headwind on the way there, from the fit`,
      symbol: 'w_f',
      of: 'speed',
      units: ['m/s', 'mph'],
    },
    slopeFound: part(words`Rise of the road on the way there, from the fit`, 'i_f'),
    worstTime: part(words`Worked run times are off by, at most`, 'Δt'),
    airDensity: {
      type: 'number',
      label: words`Air density`,
      symbol: 'ρ',
      of: 'density',
      units: ['kg/m³', 'lb/ft³'],
    },
    forceAt80: {
      type: 'number',
      label: words`Force at 80 km/h in that air`,
      symbol: 'F_80',
      of: 'force',
      units: ['N', 'lbf'],
    },
    table: {
      type: 'table',
      label: words`Run by run`,
      columns: {
        name: { type: 'text', label: words`Run` },
        from: pace(words`From`, 'v_0'),
        to: pace(words`To`, 'v_1'),
        measured: seconds(words`Measured`, 't_m'),
        simulated: seconds(words`Worked back`, 't_s'),
      },
    },
  },
  formula: [
    String.raw`-\frac{dv}{dt} = a + c\,v^2 \pm (b + d\,v), \qquad v = v_0 - a t - c\!\int\! v^2 dt \mp \left(b t + d\!\int\! v\,dt\right)`,
    String.raw`C_d A = \frac{2 m (1 + \lambda)\,c}{\rho}, \qquad C_{rr} = (1 + \lambda)\,\frac{a - c\,w^2}{g}, \qquad w = \frac{d}{2c}`,
  ],
  validity: [
    words`In neutral or with the clutch out, steering straight, brakes free, tyres warm, on a dry level road; the motor’s and gearbox’s drag otherwise counts as rolling.`,
    words`Rolling resistance is taken as the same at every speed, the wind as steady and along the road.`,
    words`The ± comes from the scatter about the fit; errors of mass, air density and of the speed sensor come on top.`,
    words`A wide span of speeds, such as 90 to 20 km/h, tells drag and rolling apart; a narrow one does not.`,
  ],
  checks: {
    readings: { title: words`Readings`, basis: 'model' },
    ways: { title: words`There and back agree`, basis: 'common practice' },
    fit: { title: words`Readings follow the fit`, basis: 'common practice' },
    sure: { title: words`Sharpness of the result`, basis: 'common practice, k = 2' },
    rolling: { title: words`Rolling resistance plausible`, basis: 'common practice' },
    times: { title: words`Runs worked back`, basis: 'common practice' },
  },
  hazards: ['moving-vehicle', 'loss-of-drive'],
  sources: [
    { title: '40 CFR 1066.210 and 86.529-98, road-load force and coast-down times', trust: 'read' },
    {
      title: 'SAE J1263, road load measurement by coast-down',
      at: 'both directions, wind',
      trust: 'recalled',
    },
    {
      title: 'JCGM 100, guide to the expression of uncertainty',
      at: 'least squares, k = 2',
      trust: 'recalled',
    },
  ],
  compute(input) {
    const { runs, bothWays, fitted, sound } = worked(input)
    const density = densityOf(input)
    const inertia = 1 + input.rotating
    const windFound = sound && bothWays ? fittedWind(sound) : undefined
    const wind = input.wind ?? windFound ?? 0
    const dragArea = sound && (2 * input.mass * inertia * sound.slowing.c) / density
    const rollingResistance =
      sound && (inertia * (sound.slowing.a - sound.slowing.c * wind ** 2)) / gravity
    const table = runs.map(({ name, sign, readings }) => {
      const first = readings[0]
      const last = readings.at(-1)
      return {
        name,
        from: first?.speed,
        to: last?.speed,
        measured: first && last && last.time - first.time,
        simulated:
          sound && first && last && coastTime(first.speed, last.speed, sign, sound.slowing),
      }
    })
    const errors = table.map(({ measured, simulated }) =>
      measured === undefined || simulated === undefined
        ? undefined
        : Math.abs(simulated / measured - 1),
    )
    return {
      dragArea,
      dragAreaSpread: sound && (4 * input.mass * inertia * sound.deviations.c) / density,
      rollingResistance,
      rollingSpread: sound && (2 * inertia * sound.deviations.a) / gravity,
      explained: fitted?.explained,
      apart: sound && bothWays ? apartAtTheMiddle(input, sound.slowing) : undefined,
      windFound,
      slopeFound: sound && bothWays ? (inertia * sound.slowing.b) / gravity : undefined,
      worstTime: errors.every((error) => error !== undefined) ? Math.max(...errors) : undefined,
      airDensity: density,
      forceAt80:
        dragArea === undefined || rollingResistance === undefined
          ? undefined
          : input.mass * gravity * rollingResistance + (density / 2) * dragArea * (80 / 3.6) ** 2,
      table,
    }
  },
  findings(input, output, say) {
    const { problem, fitted, sound, bothWays, runs } = worked(input)
    const none = words`It cannot be told until the readings give a fit.`
    const rolling = output.rollingResistance
    const inRange = rolling !== undefined && rolling >= plausible.least && rolling <= plausible.most
    const apart = output.apart
    const ways =
      apart === undefined
        ? 'unknown'
        : apart <= agree.pass
          ? 'pass'
          : apart <= agree.stop
            ? 'watch'
            : 'stop'
    const r2 = output.explained
    const spread =
      sound === undefined || rolling === undefined || !(rolling > 0)
        ? undefined
        : Math.max(
            (output.dragAreaSpread ?? 0) / (output.dragArea ?? 1),
            (output.rollingSpread ?? 0) / rolling,
          )
    const sharp =
      spread === undefined
        ? 'unknown'
        : spread <= sure.pass
          ? 'pass'
          : spread <= sure.watch
            ? 'watch'
            : 'stop'
    const off = output.worstTime
    return [
      {
        check: 'readings',
        level: sound === undefined ? 'unknown' : 'pass',
        text:
          problem ??
          (fitted === undefined
            ? words`The readings are too few or too much alike to tell drag from rolling. Roll from a higher to a lower speed, with more readings.`
            : sound === undefined
              ? words`The fit gives a negative drag or rolling resistance: wind, slope or readings are at fault. Repeat on a calm day.`
              : counted(
                  runs.length,
                  words`${input.readings.length} readings of ${runs.length} run are used.`,
                  words`${input.readings.length} readings of ${runs.length} runs are used.`,
                )),
        threshold: words`three readings a run, times rising, speeds falling, drag and rolling above zero`,
      },
      {
        check: 'ways',
        level: ways,
        text:
          apart === undefined
            ? sound !== undefined && !bothWays
              ? words`All runs go one way: wind and slope cannot be told from drag. Run back on the same stretch.`
              : none
            : words`At the middle speed the slowing there and back differs by ${say(apart, '%', 2)}.${ways === 'pass' ? '' : ` ${words`Wind or slope is strong: find a calmer day or a flatter road.`}`}`,
        threshold: words`within 10 % (watch), 25 % (stop)`,
      },
      {
        check: 'fit',
        level: r2 === undefined ? 'unknown' : r2 >= goodFit ? 'pass' : 'watch',
        text:
          r2 === undefined
            ? none
            : words`r² is ${say(r2, '', 4)}.${r2 >= goodFit ? '' : ` ${words`The readings scatter: gusts, bends, a brake that drags, or a slip of the pen.`}`}`,
        threshold: words`r² at least 0.98 (watch)`,
      },
      {
        check: 'sure',
        level: sharp,
        text:
          spread === undefined
            ? none
            : words`CdA is ${say(output.dragArea, 'm²')} ± ${say(output.dragAreaSpread, 'm²', 2)}, Crr ${say(rolling, '')} ± ${say(output.rollingSpread, '', 2)}.${sharp === 'pass' ? '' : ` ${words`More runs over a wider span of speeds make them sharper.`}`}`,
        threshold: words`each within 10 % (watch), 25 % (stop)`,
      },
      {
        check: 'rolling',
        level: rolling === undefined ? 'unknown' : inRange ? 'pass' : 'stop',
        text:
          rolling === undefined
            ? none
            : inRange
              ? words`Crr ${say(rolling, '')} is that of a road tyre.`
              : rolling < plausible.least
                ? words`Crr ${say(rolling, '')} is less than any road tyre has: a slope, a tailwind or a wrong mass. Do not use it.`
                : words`Crr ${say(rolling, '')} is more than a tyre takes: check tyre pressure, dragging brakes and bearings, and that it rolled in neutral.`,
        threshold: words`0.006 to 0.03 (stop)`,
      },
      {
        check: 'times',
        level: off === undefined ? 'unknown' : off <= simulated ? 'pass' : 'watch',
        text:
          off === undefined
            ? none
            : words`Worked back with the result, each run’s time comes out within ${say(off, '%', 2)}.${off <= simulated ? '' : ` ${words`One run does not belong to the others: look at it, or leave it out and say so.`}`}`,
        threshold: words`each run within 5 % (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const { sound } = worked(input)
    if (sound === undefined) return [words`Cannot tell: see the checks.`]
    const { a, c, b, d } = sound.slowing
    return [
      `−dv/dt = a + c v² ± (b + d v): a = ${say(a, 'm/s²', 4)}, c = ${say(c, '1/m', 4)}, b = ${say(b, 'm/s²', 2)}, d = ${say(d, '', 2)} 1/s`,
      `CdA = 2 m (1 + λ) c / ρ = 2 × ${say(input.mass, 'kg', 4)} × ${say(1 + input.rotating, '')} × ${say(c, '1/m', 4)} / ${say(output.airDensity, 'kg/m³', 4)} = ${say(output.dragArea, 'm²')}`,
      `Crr = (1 + λ) (a − c w²) / g = ${say(output.rollingResistance, '')}`,
      words`F at ${say(80 / 3.6, 'km/h', 2)} = m g Crr + ½ ρ CdA v² = ${say(output.forceAt80, 'N')}`,
    ]
  },
  plot(input, output) {
    const { runs, sound } = worked(input)
    const speeds = input.readings.map(({ speed }) => speed)
    const most = Math.max(...speeds)
    const least = Math.min(...speeds)
    return {
      title: words`Speed while rolling out`,
      x: { label: words`Time`, of: 'time', units: ['s', 's'] },
      y: { label: words`Speed`, of: 'speed', units: ['km/h', 'mph'], fromZero: true },
      series: [
        ...runs.map(({ name, sign, readings }) => ({
          name,
          line: sign > 0 ? ('dotted' as const) : ('dashed' as const),
          points: readings.map(({ time, speed }) => [time, speed] as const),
        })),
        ...(sound === undefined || output.dragArea === undefined
          ? []
          : [
              {
                name: words`fit, calm and level`,
                line: 'solid' as const,
                points: Array.from({ length: 25 }, (_, step) => {
                  const speed = most - (step * (most - least)) / 24
                  const calm = { ...sound.slowing, b: 0, d: 0 }
                  return [coastTime(most, speed, 1, calm) ?? 0, speed] as const
                }),
              },
            ]),
      ],
      marks: [],
      caption: words`Steep at first, where the air brakes, then nearly straight, where the tyres do.`,
    }
  },
  examples: [
    {
      // A = 8.69 N, C = 0.0252 N/(km/h)², 200 kg: t = m / √(A C') (atan(v0 √(C'/A)) − atan(v √(C'/A))), C' = 0.0252 × 3.6².
      // From 70 to 60 km/h that is 4.848 s; the table prints 4.85 s. Crr = 8.69 / (200 g); CdA = 2 C' / 1.204106.
      name: 'Dynamometer table, 200 kg, rolled out by its own coefficients',
      from: '40 CFR 86.529-98, figure F98-9, row 200 kg: A, C and 4.85 s from 70 to 60 km/h',
      inputs: {
        mass: '200 kg',
        rotating: '0 %',
        airTemperature: '20 °C',
        readings: [
          { name: 'there', way: 'out', time: '0.000 s', speed: '80 km/h' },
          { name: 'there', way: 'out', time: '1.737 s', speed: '75 km/h' },
          { name: 'there', way: 'out', time: '3.707 s', speed: '70 km/h' },
          { name: 'there', way: 'out', time: '5.959 s', speed: '65 km/h' },
          { name: 'there', way: 'out', time: '8.555 s', speed: '60 km/h' },
          { name: 'there', way: 'out', time: '11.579 s', speed: '55 km/h' },
          { name: 'there', way: 'out', time: '15.139 s', speed: '50 km/h' },
          { name: 'there', way: 'out', time: '19.386 s', speed: '45 km/h' },
          { name: 'there', way: 'out', time: '24.522 s', speed: '40 km/h' },
          { name: 'there', way: 'out', time: '30.833 s', speed: '35 km/h' },
          { name: 'there', way: 'out', time: '38.724 s', speed: '30 km/h' },
          { name: 'there', way: 'out', time: '48.768 s', speed: '25 km/h' },
          { name: 'there', way: 'out', time: '61.763 s', speed: '20 km/h' },
          { name: 'and back', way: 'back', time: '0.000 s', speed: '80 km/h' },
          { name: 'and back', way: 'back', time: '1.737 s', speed: '75 km/h' },
          { name: 'and back', way: 'back', time: '3.707 s', speed: '70 km/h' },
          { name: 'and back', way: 'back', time: '5.959 s', speed: '65 km/h' },
          { name: 'and back', way: 'back', time: '8.555 s', speed: '60 km/h' },
          { name: 'and back', way: 'back', time: '11.579 s', speed: '55 km/h' },
          { name: 'and back', way: 'back', time: '15.139 s', speed: '50 km/h' },
          { name: 'and back', way: 'back', time: '19.386 s', speed: '45 km/h' },
          { name: 'and back', way: 'back', time: '24.522 s', speed: '40 km/h' },
          { name: 'and back', way: 'back', time: '30.833 s', speed: '35 km/h' },
          { name: 'and back', way: 'back', time: '38.724 s', speed: '30 km/h' },
          { name: 'and back', way: 'back', time: '48.768 s', speed: '25 km/h' },
          { name: 'and back', way: 'back', time: '61.763 s', speed: '20 km/h' },
        ],
      },
      outputs: { dragArea: '0.5425 m²', rollingResistance: '0.00443' },
      findings: {
        readings: 'pass',
        ways: 'pass',
        fit: 'pass',
        sure: 'pass',
        rolling: 'stop',
        times: 'pass',
      },
    },
    {
      // A = 1100 g × 0.012 = 129.45 N, C = ½ × 1.204106 × 0.72, mass × 1.04; the same closed form.
      name: 'Saloon of 1100 kg, CdA 0.72 m², Crr 0.012',
      from: 'hand: closed form of m dv/dt = −(A + C v²)',
      inputs: {
        mass: '1100 kg',
        airTemperature: '20 °C',
        wind: '0 m/s',
        readings: [
          { name: '1', way: 'out', time: '0.00 s', speed: '80 km/h' },
          { name: '1', way: 'out', time: '10.02 s', speed: '70 km/h' },
          { name: '1', way: 'out', time: '21.77 s', speed: '60 km/h' },
          { name: '1', way: 'out', time: '35.56 s', speed: '50 km/h' },
          { name: '1', way: 'out', time: '51.68 s', speed: '40 km/h' },
          { name: '1', way: 'out', time: '70.33 s', speed: '30 km/h' },
          { name: '1', way: 'out', time: '91.45 s', speed: '20 km/h' },
          { name: '2', way: 'back', time: '0.00 s', speed: '80 km/h' },
          { name: '2', way: 'back', time: '10.02 s', speed: '70 km/h' },
          { name: '2', way: 'back', time: '21.77 s', speed: '60 km/h' },
          { name: '2', way: 'back', time: '35.56 s', speed: '50 km/h' },
          { name: '2', way: 'back', time: '51.68 s', speed: '40 km/h' },
          { name: '2', way: 'back', time: '70.33 s', speed: '30 km/h' },
          { name: '2', way: 'back', time: '91.45 s', speed: '20 km/h' },
        ],
      },
      outputs: { dragArea: '0.720 m²', rollingResistance: '0.0120' },
      findings: { rolling: 'pass', sure: 'pass' },
    },
    {
      // Worked by steps of 0.08 s with 4 m/s of wind from ahead and a rise of 0.2 % on the way there.
      name: 'Wind of 4 m/s and a slope of 0.2 %',
      from: 'step-by-step integration: CdA 0.80 m², Crr 0.0130',
      inputs: {
        mass: '1200 kg',
        airTemperature: '20 °C',
        readings: [
          { name: 'there', way: 'out', time: '0 s', speed: '90 km/h' },
          { name: 'there', way: 'out', time: '8 s', speed: '77.67 km/h' },
          { name: 'there', way: 'out', time: '16 s', speed: '67.14 km/h' },
          { name: 'there', way: 'out', time: '24 s', speed: '58 km/h' },
          { name: 'there', way: 'out', time: '32 s', speed: '49.92 km/h' },
          { name: 'there', way: 'out', time: '40 s', speed: '42.69 km/h' },
          { name: 'there', way: 'out', time: '48 s', speed: '36.13 km/h' },
          { name: 'there', way: 'out', time: '56 s', speed: '30.12 km/h' },
          { name: 'there', way: 'out', time: '64 s', speed: '24.56 km/h' },
          { name: 'and back', way: 'back', time: '0 s', speed: '90 km/h' },
          { name: 'and back', way: 'back', time: '8 s', speed: '82.59 km/h' },
          { name: 'and back', way: 'back', time: '16 s', speed: '75.99 km/h' },
          { name: 'and back', way: 'back', time: '24 s', speed: '70.06 km/h' },
          { name: 'and back', way: 'back', time: '32 s', speed: '64.67 km/h' },
          { name: 'and back', way: 'back', time: '40 s', speed: '59.72 km/h' },
          { name: 'and back', way: 'back', time: '48 s', speed: '55.15 km/h' },
          { name: 'and back', way: 'back', time: '56 s', speed: '50.88 km/h' },
          { name: 'and back', way: 'back', time: '64 s', speed: '46.87 km/h' },
          { name: 'and back', way: 'back', time: '72 s', speed: '43.09 km/h' },
          { name: 'and back', way: 'back', time: '80 s', speed: '39.48 km/h' },
        ],
      },
      outputs: {
        dragArea: '0.80 m²',
        rollingResistance: '0.0130',
        windFound: '4.0 m/s',
        slopeFound: '0.20 %',
      },
      findings: { readings: 'pass', ways: 'stop', rolling: 'pass', times: 'pass' },
    },
    {
      name: 'One way only',
      from: 'threshold case',
      inputs: {
        mass: '1100 kg',
        airTemperature: '20 °C',
        readings: [
          { name: '1', way: 'out', time: '0.00 s', speed: '80 km/h' },
          { name: '1', way: 'out', time: '10.02 s', speed: '70 km/h' },
          { name: '1', way: 'out', time: '21.77 s', speed: '60 km/h' },
          { name: '1', way: 'out', time: '35.56 s', speed: '50 km/h' },
          { name: '1', way: 'out', time: '51.68 s', speed: '40 km/h' },
          { name: '1', way: 'out', time: '70.33 s', speed: '30 km/h' },
          { name: '1', way: 'out', time: '91.45 s', speed: '20 km/h' },
        ],
      },
      outputs: { apart: 'cannot tell' },
      findings: { readings: 'pass', ways: 'unknown' },
    },
    {
      name: 'A slip of the pen',
      from: 'threshold case',
      inputs: {
        mass: '1100 kg',
        airTemperature: '20 °C',
        readings: [
          { name: '1', way: 'out', time: '0 s', speed: '80 km/h' },
          { name: '1', way: 'out', time: '12 s', speed: '70 km/h' },
          { name: '1', way: 'out', time: '10 s', speed: '60 km/h' },
          { name: '1', way: 'out', time: '36 s', speed: '50 km/h' },
        ],
      },
      outputs: { dragArea: 'cannot tell' },
      findings: {
        readings: 'unknown',
        ways: 'unknown',
        fit: 'unknown',
        sure: 'unknown',
        rolling: 'unknown',
        times: 'unknown',
      },
    },
  ],
})
