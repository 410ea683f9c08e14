/**
 * How fast a loop is solved, and every calculator worked. In: nothing. Out: numbers, and rows to print.
 *
 * `againstPython`: the crossing of a pump with a loop, found here and by CPython with fluids and scipy
 * (Debian: python3-fluids, python3-scipy), in one run, as a ratio; where Python or a package is missing
 * the row says so. `eachCalculator`: compute and findings of every example, from SI values on.
 */
import { execFile } from 'node:child_process'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { calculators } from '../../calculators/index.ts'
import { pumpAndLoop } from '../../calculators/cooling/pump-and-loop.ts'
import { propertiesOf } from '../../calculators/coolant.ts'
import { hoseDrop, type Hose } from '../../calculators/friction.ts'
import { parabola } from '../../calculators/pump-curve.ts'
import { findRoot } from '../../calculators/solve.ts'
import { run, runExample } from '../calculators/run-example.ts'

type Row = readonly [what: string, value: string, remark: string]

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

export interface SolveResult {
  readonly nodeSeconds: number
  /** The whole calculator: five crossings, shares, velocities. */
  readonly wholeSeconds: number
  readonly python?: {
    /** With the explicit formula that fluids takes by itself. */
    readonly seconds: number
    /** With Colebrook’s equation solved, which is what is done here. */
    readonly equationSeconds: number
    readonly versions: string
    readonly ratio: number
    readonly equationRatio: number
    /** Relative difference of the two flows. */
    readonly apart: number
  }
  readonly missing?: string
  readonly rows: readonly Row[]
}

const median = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor(list.length / 2)] ?? NaN

/** Seconds a call takes: the median of rounds of at least a twentieth of a second each. */
function secondsPer(work: () => unknown): number {
  let count = 1
  for (;;) {
    const start = performance.now()
    for (let at = 0; at < count; at++) work()
    if (performance.now() - start > 50) break
    count *= 2
  }
  return median(
    Array.from({ length: rounds }, () => {
      const start = performance.now()
      for (let at = 0; at < count; at++) work()
      return (performance.now() - start) / 1000 / count
    }),
  )
}

interface Found {
  readonly flow: number
  readonly seconds: number
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
  'equationSeconds' in value &&
  typeof value.equationSeconds === 'number' &&
  'versions' in value

export async function againstPython(): Promise<SolveResult> {
  const liquid = propertiesOf(
    { kind: 'ethylene-glycol', strength: 0.5, basis: 'volume' },
    temperature,
  )
  if (liquid === undefined) throw new Error('the coolant has no properties')
  const curve = parabola(shutOff, freeFlow)
  const spare = (flow: number): number => {
    let sum = curve.at(flow)
    for (const hose of hoses) sum -= hoseDrop(hose, flow, liquid) ?? NaN
    for (const { drop, referenceFlow } of parts) sum -= drop * (flow / referenceFlow) ** 2
    return sum
  }
  const solve = () => findRoot(spare, freeFlow * 1e-6, freeFlow)
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
  const { flow: byCalculator } = pumpAndLoop.compute(input)
  if (flow === undefined || byCalculator === undefined) throw new Error('the loop has no crossing')
  if (Math.abs(flow / byCalculator - 1) > 1e-9) throw new Error('this is not the calculator’s loop')
  const nodeSeconds = secondsPer(solve)
  const wholeSeconds = secondsPer(() => pumpAndLoop.compute(input))
  const micro = (seconds: number): string => `${(seconds * 1e6).toFixed(1)} µs`
  const own: readonly Row[] = [
    ['pump and loop, one crossing', micro(nodeSeconds), '4 hoses, 3 parts'],
    ['pump and loop, the whole calculator', micro(wholeSeconds), 'five crossings and all results'],
  ]
  const loop = { ...liquid, hoses, parts, roughness, shutOff, freeFlow }
  const told = JSON.stringify({ ...loop, solves: 500, rounds })
  const found = await inPython(told)
  if (typeof found === 'string')
    return {
      nodeSeconds,
      wholeSeconds,
      missing: found,
      rows: [...own, ['the same crossing in CPython', 'not run', found]],
    }
  const ratio = found.seconds / nodeSeconds
  const equationRatio = found.equationSeconds / nodeSeconds
  const apart = Math.abs(found.flow / flow - 1)
  return {
    nodeSeconds,
    wholeSeconds,
    python: {
      seconds: found.seconds,
      equationSeconds: found.equationSeconds,
      versions: found.versions,
      ratio,
      equationRatio,
      apart,
    },
    rows: [
      ...own,
      ['the same crossing in CPython', micro(found.seconds), found.versions],
      [
        'crossing, times as fast as CPython',
        ratio.toFixed(0),
        `aim: at least ${aim}; flows agree within ${apart.toExponential(0)}; fluids’ explicit formula`,
      ],
      [
        'the same, Colebrook’s equation solved in both',
        equationRatio.toFixed(0),
        `${micro(found.equationSeconds)} in CPython`,
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

export interface CalculatorTime {
  readonly id: string
  /** One evaluation, compute and findings, of the slowest example. */
  readonly seconds: number
}

/** The slowest first. */
export async function eachCalculator(): Promise<readonly CalculatorTime[]> {
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

if (import.meta.main) {
  const { rows } = await againstPython()
  for (const row of rows) console.log(row.filter((cell) => cell !== '').join('   '))
  for (const { id, seconds } of await eachCalculator())
    console.log(`${id.padEnd(24)} ${(seconds * 1e6).toFixed(1).padStart(10)} µs`)
}
