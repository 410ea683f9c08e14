/**
 * How fast a loop is solved, and every calculator worked. In: nothing. Out: numbers, and rows to print.
 *
 * `againstPython`: the crossing of a pump with a loop, found here and by CPython with fluids and scipy
 * (Debian: python3-fluids, python3-scipy), in one run, as a ratio; where Python or a package is missing
 * the row says so. Both find the flow to rounding, with Colebrook’s factor to rounding, from lists of
 * hoses and parts and the liquid’s two properties; neither reads units or writes text.
 * `eachCalculator`: results, findings and working of every example, from SI values on.
 */
import { execFile } from 'node:child_process'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { calculators } from '../../calculators/index.ts'
import { pumpAndLoop } from '../../calculators/cooling/pump-and-loop.ts'
import { propertiesOf } from '../../calculators/coolant.ts'
import type { Hose } from '../../calculators/friction.ts'
import { crossing, loopOf } from '../../calculators/loop.ts'
import { parabola } from '../../calculators/pump-curve.ts'
import { run, runExample } from '../calculators/run-example.ts'

export type Row = readonly [what: string, value: string, remark: string]

const perLitreMinute = 1 / 60_000
const roughness = 1.5e-6
const temperature = 313.15
const hoses: readonly Hose[] = [
  { length: 0.4, bore: 0.019, fittings: 0.4, roughness },
  { length: 1.8, bore: 0.016, fittings: 2.3, roughness },
  { length: 2.2, bore: 0.016, fittings: 3.8, roughness },
  { length: 0.6, bore: 0.019, fittings: 1.5, roughness },
]
const parts = [
  { name: 'controller', drop: 12_000, referenceFlow: 10 * perLitreMinute },
  { name: 'charger', drop: 8_000, referenceFlow: 8 * perLitreMinute },
  { name: 'radiator', drop: 4_000, referenceFlow: 12 * perLitreMinute },
]
const shutOff = 60_000
const freeFlow = 30 * perLitreMinute
const aim = 50
/** Debian's packages belong to Debian's own Python, which may not be the first one found. */
const pythons = ['python3', '/usr/bin/python3']
const rounds = 5

interface SolveResult {
  readonly nodeSeconds: number
  /** All results of the calculator: `crossings` of them, properties, shares, velocities. */
  readonly wholeSeconds: number
  readonly crossings: number
  readonly python?: {
    /** Hose by hose, with the factor that fluids takes by itself. */
    readonly seconds: number
    /** The same, hoses of one bore taken together beforehand, as is done here. */
    readonly mergedSeconds: number
    /** Hose by hose, with fluids’ general solution of Colebrook’s equation. */
    readonly equationSeconds: number
    readonly versions: string
    readonly ratio: number
    readonly mergedRatio: number
    readonly equationRatio: number
    /** Relative difference of the two flows. */
    readonly apart: number
  }
  readonly missing?: string
  readonly rows: readonly Row[]
}

const micro = (seconds: number): string => `${(seconds * 1e6).toFixed(2)} µs`

const median = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor(list.length / 2)] ?? NaN

/** Processor seconds of this process: what else the machine does counts for neither side. */
function spent(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

/** Seconds a call takes: the median of rounds of at least a twentieth of a second each. */
function secondsPer(work: () => unknown): number {
  const secondsFor = (count: number): number => {
    const start = spent()
    for (let at = 0; at < count; at++) work()
    return spent() - start
  }
  let count = 1
  while (secondsFor(count) < 0.05) count *= 2
  return median(Array.from({ length: rounds }, () => secondsFor(count) / count))
}

interface Found {
  readonly flow: number
  readonly seconds: number
  readonly mergedSeconds: number
  readonly equationSeconds: number
  readonly versions: string
}

const isFound = (value: unknown): value is Found =>
  typeof value === 'object' &&
  value !== null &&
  'flow' in value &&
  typeof value.flow === 'number' &&
  'seconds' in value &&
  typeof value.seconds === 'number' &&
  'mergedSeconds' in value &&
  typeof value.mergedSeconds === 'number' &&
  'equationSeconds' in value &&
  typeof value.equationSeconds === 'number' &&
  'versions' in value &&
  typeof value.versions === 'string'

async function againstPython(): Promise<SolveResult> {
  const liquid = propertiesOf(
    { kind: 'ethylene-glycol', strength: 0.5, basis: 'volume' },
    temperature,
  )
  if (liquid === undefined) throw new Error('the coolant has no properties')
  const curve = parabola(shutOff, freeFlow)
  const solve = () => crossing(curve, loopOf(hoses, parts, liquid))
  const input = {
    hoses: hoses.map(({ length, bore, fittings }, at) => ({
      name: `hose ${at + 1}`,
      length,
      bore,
      bends: undefined,
      elbows: undefined,
      fittings,
      leg: undefined,
    })),
    roughness,
    parts: parts.map((part) => ({ ...part, minimumFlow: undefined })),
    shutOff,
    freeFlow,
    points: undefined,
    ratedVoltage: undefined,
    workingVoltage: undefined,
    coolant: 'ethylene-glycol',
    concentration: 0.5,
    basis: 'volume',
    temperature,
    coldTemperature: 263.15,
    requiredFlow: undefined,
  } as const
  const flow = solve()
  const results = pumpAndLoop.compute(input)
  if (typeof flow === 'string') throw new Error(`the loop has no crossing: ${flow}`)
  if (results.flow !== flow) throw new Error('this is not the calculator’s loop')
  const crossings = results.flowLow === results.flowHigh ? 3 : 5
  const nodeSeconds = secondsPer(solve)
  const wholeSeconds = secondsPer(() => pumpAndLoop.compute(input))
  const measured = { nodeSeconds, wholeSeconds, crossings }
  const own: readonly Row[] = [
    ['pump and loop, one crossing', micro(nodeSeconds), '4 hoses of two bores, 3 parts'],
    ['pump and loop, all results', micro(wholeSeconds), `${crossings} crossings`],
  ]
  const told = { ...liquid, hoses, parts, roughness, shutOff, freeFlow, solves: 500, rounds }
  const found = await inPython(JSON.stringify(told))
  if (typeof found === 'string')
    return {
      ...measured,
      missing: found,
      rows: [...own, ['the same crossing in CPython', 'not run', found]],
    }
  const apart = Math.abs(found.flow / flow - 1)
  if (apart > 1e-12) throw new Error('CPython finds another flow')
  const python = {
    ...found,
    ratio: found.seconds / nodeSeconds,
    mergedRatio: found.mergedSeconds / nodeSeconds,
    equationRatio: found.equationSeconds / nodeSeconds,
    apart,
  }
  return {
    ...measured,
    python,
    rows: [
      ...own,
      ['the same crossing in CPython', micro(found.seconds), found.versions],
      [
        'crossing, times as fast as CPython',
        python.ratio.toFixed(0),
        `aim: at least ${aim}; hose by hose there; flows agree within ${apart.toExponential(0)}`,
      ],
      [
        '… hoses of one bore taken together there too',
        python.mergedRatio.toFixed(0),
        `${micro(found.mergedSeconds)} in CPython`,
      ],
      [
        '… with fluids’ general solution of Colebrook',
        python.equationRatio.toFixed(0),
        `${micro(found.equationSeconds)} in CPython, hose by hose`,
      ],
    ],
  }
}

/** What Python found, or why it did not run. */
async function inPython(told: string): Promise<Found | string> {
  const reasons: string[] = []
  for (const python of pythons) {
    try {
      const { stdout } = await promisify(execFile)(python, [
        join(import.meta.dirname, 'loop.py'),
        told,
      ])
      const found: unknown = JSON.parse(stdout)
      if (isFound(found)) return found
      reasons.push('it gave no answer')
    } catch (error) {
      const words = error instanceof Error ? error.message : String(error)
      reasons.push(/No module named '\w+'|ENOENT/.exec(words)?.[0] ?? words)
    }
  }
  return reasons.at(-1) ?? 'no Python'
}

interface CalculatorTime {
  readonly id: string
  /** One evaluation, with findings and working, of the slowest example. */
  readonly seconds: number
}

/** The slowest first. */
async function eachCalculator(): Promise<readonly CalculatorTime[]> {
  const times = await Promise.all(
    Object.entries(calculators).map(async ([id, load]) => {
      const calculator = await load()
      const inputs = calculator.examples.map((example) => runExample(calculator, example).input)
      return { id, works: inputs.map((input) => () => run(calculator, input)) }
    }),
  )
  return times
    .map(({ id, works }) => ({ id, seconds: Math.max(...works.map(secondsPer)) }))
    .toSorted((a, b) => b.seconds - a.seconds)
}

/** Both, with the rows in the order in which they are printed. */
export async function solveTimes() {
  const { rows, ...against } = await againstPython()
  const times = await eachCalculator()
  const each = times.map(({ id, seconds }): Row => [`one evaluation of ${id}`, micro(seconds), ''])
  const perCalculator = Object.fromEntries(times.map(({ id, seconds }) => [id, seconds]))
  return { result: { ...against, perCalculator }, rows: [...rows, ...each] }
}
