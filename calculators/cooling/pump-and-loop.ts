/**
 * Flow through a closed coolant loop: where the pump's curve crosses what hoses and parts resist.
 *
 * In: hoses, parts with a pressure drop at a known flow, the pump, the coolant warm and at a cold
 * start. Out: flow, pressure, velocities, who resists most. Where a hose is neither laminar nor
 * turbulent the flow is uncertain by nature: both ends are given and the lower one is judged.
 */
import { coolantFields, coolantFinding, coolantOf } from '../coolant-fields.ts'
import { propertiesOf, propertySource, type Basis, type Glycol } from '../coolant.ts'
import { defineCalculator, type Level } from '../define.ts'
import {
  frictionFactor,
  hoseDrop,
  isUncertain,
  laminarUpTo,
  reynoldsIn,
  turbulentFrom,
  velocityIn,
  type Hose,
  type Liquid,
  type Regime,
} from '../friction.ts'
import { crossing, loopDrop, loopOf, type Loop, type Part } from '../loop.ts'
import type { Mark } from '../plot.ts'
import { atSpeed, parabola, throughPoints, type CurvePoint, type PumpCurve } from '../pump-curve.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

const elbowK = 1.5
const bendK = 0.4
const flowStop = 0.8
const velocityLow = 0.6
const velocityHigh = 2
const suctionWatch = 1.2
const suctionStop = 1.5
const coldShare = 0.5
const speedRange = [0.75, 1.25] as const
const plotSteps = 40

interface HoseRow {
  readonly name: string
  readonly length: number
  readonly bore: number
  readonly bends: number | undefined
  readonly elbows: number | undefined
  readonly fittings: number | undefined
  readonly leg: 'suction' | 'other' | undefined
}

interface LoopInput {
  readonly hoses: readonly HoseRow[] | undefined
  readonly roughness: number
  readonly parts:
    | readonly (Part & { readonly name: string; readonly minimumFlow: number | undefined })[]
    | undefined
  readonly shutOff: number | undefined
  readonly freeFlow: number | undefined
  readonly points: readonly CurvePoint[] | undefined
  readonly ratedVoltage: number | undefined
  readonly workingVoltage: number | undefined
  readonly coolant: Glycol | 'water'
  readonly concentration: number | undefined
  readonly basis: Basis | undefined
}

const problems = {
  'no pump': words`The pump is not given: shut-off pressure and free flow, or two points.`,
  'too few': words`It needs two points.`,
  'flow twice': words`Two points have the same flow.`,
  rises: words`The pump’s pressure rises with flow: leave out the points before its highest.`,
  'one voltage': words`Give both voltages or neither.`,
  'no loop': words`Nothing resists the flow: give hoses and parts.`,
  'no liquid': words`The coolant’s properties are not known.`,
  before: words`The crossing lies before the first point: add points at less flow.`,
  beyond: words`The crossing lies past the last point: add points at more flow.`,
  'not settled': words`No crossing was found.`,
} as const
type Problem = keyof typeof problems

function hoseOf(row: HoseRow, roughness: number): Hose {
  const { length, bore, bends = 0, elbows = 0, fittings = 0 } = row
  return { length, bore, roughness, fittings: fittings + bends * bendK + elbows * elbowK }
}

function coolantIn(input: LoopInput): ReturnType<typeof coolantOf> {
  return coolantOf(input.coolant, input.concentration, input.basis)
}

function liquidAt(input: LoopInput, temperature: number): Liquid | undefined {
  const coolant = coolantIn(input)
  return coolant && propertiesOf(coolant, temperature)
}

function curveOf(input: LoopInput): PumpCurve | Problem {
  const { shutOff, freeFlow, points, ratedVoltage, workingVoltage } = input
  const curve =
    points !== undefined
      ? throughPoints(points)
      : shutOff !== undefined && freeFlow !== undefined
        ? parabola(shutOff, freeFlow)
        : 'no pump'
  if (typeof curve === 'string' || ratedVoltage === workingVoltage) return curve
  if (ratedVoltage === undefined || workingVoltage === undefined) return 'one voltage'
  return atSpeed(curve, workingVoltage / ratedVoltage)
}

function partDrop(part: Part, flow: number): number {
  return part.drop * (flow / part.referenceFlow) ** 2
}

function loopIn(input: LoopInput, liquid: Liquid, as: Regime = 'between'): Loop {
  const hoses = (input.hoses ?? []).map((row) => hoseOf(row, input.roughness))
  return loopOf(hoses, input.parts ?? [], liquid, as)
}

/** `thicker`: how far the drop of the parts is raised for viscosity. */
function flowIn(
  input: LoopInput,
  curve: PumpCurve | Problem,
  liquid: Liquid | undefined,
  as: Regime = 'between',
  thicker = 1,
): number | Problem {
  if (typeof curve === 'string') return curve
  if (liquid === undefined) return 'no liquid'
  const loop = loopIn(input, liquid, as)
  return crossing(curve, { ...loop, parts: loop.parts * thicker })
}

function known(flow: number | Problem): number | undefined {
  return typeof flow === 'number' ? flow : undefined
}

const flowOf = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'flow', units: ['L/min', 'gal/min'] }) as const
const pressureOf = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'pressure', units: ['kPa', 'psi'] }) as const
const speedOf = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'speed', units: ['m/s', 'ft/s'] }) as const
const plain = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'number', units: ['', ''] }) as const

export const pumpAndLoop = defineCalculator({
  id: 'pump-and-loop',
  title: words`Pump and loop`,
  phase: 'cooling',
  purpose: words`What really flows: the crossing of the pump’s curve with the resistance of hoses and parts, warm and at a cold start.`,
  inputs: {
    hoses: {
      type: 'list',
      label: words`Hoses`,
      row: words`hose`,
      help: words`With what is in them.`,
      rows: [1, 60],
      optional: true,
      fields: {
        name: { type: 'text', label: words`Hose`, help: words`From where to where.` },
        length: {
          type: 'number',
          label: words`Length`,
          symbol: 'L',
          of: 'length',
          units: ['m', 'ft'],
          hard: [0.02, 30],
          usual: [0.1, 10],
          help: words`Along the hose.`,
          choice: true,
        },
        bore: {
          type: 'number',
          label: words`Bore`,
          symbol: 'd',
          of: 'length',
          units: ['mm', 'in'],
          hard: [6, 38],
          usual: [10, 25],
          help: words`Inside diameter.`,
          choice: true,
        },
        bends: {
          ...plain(words`90° bends`, 'n'),
          hard: [0, 40],
          usual: [0, 10],
          help: words`Swept bends, K 0.4 each.`,
          choice: true,
          optional: true,
        },
        elbows: {
          ...plain(words`Elbows`, 'm'),
          hard: [0, 40],
          usual: [0, 6],
          help: words`Sharp barb elbows, K 1.5 each.`,
          choice: true,
          optional: true,
        },
        fittings: {
          ...plain(words`Other fittings, ΣK`, 'K'),
          hard: [0, 60],
          usual: [0, 20],
          help: words`Tee through 0.6, into its branch 1.8.`,
          choice: true,
          optional: true,
        },
        leg: {
          type: 'choice',
          label: words`Leg`,
          help: words`Which hose feeds the pump.`,
          options: { suction: words`feeds the pump`, other: words`rest of the loop` },
          optional: true,
        },
      },
    },
    roughness: {
      type: 'number',
      label: words`Roughness inside`,
      symbol: 'ε',
      of: 'length',
      units: ['mm', 'in'],
      hard: [0, 0.3],
      usual: [0, 0.05],
      help: words`Of the hose wall.`,
      assume: { value: 0.0015, because: words`a smooth tube` },
    },
    parts: {
      type: 'list',
      label: words`Parts`,
      row: words`part`,
      help: words`Cold plates, radiator, heater, from their sheets.`,
      rows: [1, 60],
      optional: true,
      fields: {
        name: { type: 'text', label: words`Part`, help: words`What it is.` },
        drop: {
          ...pressureOf(words`Pressure drop`, 'Δp'),
          hard: [0, 200],
          usual: [0.5, 60],
          help: words`At the flow beside it.`,
        },
        referenceFlow: {
          ...flowOf(words`at flow`, 'V̇_i'),
          hard: [0.5, 60],
          usual: [4, 20],
          help: words`Where its sheet states it.`,
        },
        minimumFlow: {
          ...flowOf(words`Least flow`, 'V̇_min'),
          hard: [0.1, 60],
          usual: [2, 20],
          help: words`That its sheet asks for.`,
          optional: true,
        },
      },
    },
    shutOff: {
      ...pressureOf(words`Pump: shut-off pressure`, 'p_0'),
      hard: [5, 150],
      usual: [10, 100],
      help: words`At no flow; a head of water as mH2O.`,
      optional: true,
    },
    freeFlow: {
      ...flowOf(words`Pump: free flow`, 'V̇_0'),
      hard: [2, 60],
      usual: [8, 40],
      help: words`Against no pressure.`,
      optional: true,
    },
    points: {
      type: 'list',
      label: words`Pump curve`,
      row: words`point`,
      help: words`From its sheet; instead of the two figures.`,
      rows: [2, 60],
      optional: true,
      fields: {
        flow: {
          ...flowOf(words`Flow`, 'V̇_j'),
          hard: [0, 100],
          usual: [0, 40],
          help: words`Of one point.`,
        },
        pressure: {
          ...pressureOf(words`Pressure`, 'p_j'),
          hard: [0, 200],
          usual: [0, 100],
          help: words`At that flow.`,
        },
      },
    },
    ratedVoltage: {
      type: 'number',
      label: words`Voltage of the curve`,
      symbol: 'U_0',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [5, 60],
      usual: [12, 28],
      help: words`On its sheet.`,
      optional: true,
    },
    workingVoltage: {
      type: 'number',
      label: words`Voltage at the pump`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [5, 60],
      usual: [12, 28.8],
      help: words`Leave out both to use the curve as it is.`,
      optional: true,
    },
    ...coolantFields,
    temperature: {
      type: 'number',
      label: words`Coolant, warm`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-30, 100],
      usual: [20, 70],
      help: words`Working temperature.`,
    },
    coldTemperature: {
      type: 'number',
      label: words`Coolant, cold start`,
      symbol: 'T_k',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-50, 40],
      usual: [-30, 20],
      help: words`The coldest morning.`,
      assume: { value: 0, because: words`a frosty morning` },
    },
    requiredFlow: {
      ...flowOf(words`Flow wanted`, 'V̇_r'),
      hard: [0.5, 60],
      usual: [4, 20],
      help: words`For a controller 6 to 12 L/min.`,
      optional: true,
    },
  },
  outputs: {
    flow: flowOf(words`Flow`, 'V̇'),
    flowLow: flowOf(words`Flow, low end`, 'V̇_low'),
    flowHigh: flowOf(words`Flow, high end`, 'V̇₊'),
    pressure: pressureOf(words`Loop pressure`, 'p'),
    velocity: speedOf(words`Velocity, fastest hose`, 'v'),
    slowestVelocity: speedOf(words`Velocity, slowest hose`, 'v_low'),
    suctionVelocity: speedOf(words`Velocity, suction leg`, 'v_s'),
    reynolds: plain(words`Reynolds number, fastest hose`, 'Re'),
    coldFlow: flowOf(words`Flow at a cold start`, 'V̇_k'),
    coldFlowLow: flowOf(words`Flow at a cold start, low end`, 'V̇_kl'),
    largestRestriction: { type: 'text', label: words`Largest restriction` },
    shares: {
      type: 'table',
      label: words`Who resists`,
      columns: {
        name: { type: 'text', label: words`Part` },
        drop: pressureOf(words`Drop`, 'Δp'),
        share: {
          type: 'number',
          label: words`Share`,
          symbol: 's',
          of: 'fraction',
          units: ['%', '%'],
        },
      },
    },
  },
  formula: [
    String.raw`p(\dot V) = \sum\left(\frac{f L}{d} + \sum K\right)\frac{\rho v^2}{2} + \sum \Delta p_i\left(\frac{\dot V}{\dot V_i}\right)^2`,
    String.raw`\mathit{Re} \le 2040:\ f = \frac{64}{\mathit{Re}} \qquad \mathit{Re} \ge 4000:\ \frac{1}{\sqrt f} = -2\log_{10}\left(\frac{\varepsilon}{3.7\,d} + \frac{2.51}{\mathit{Re}\sqrt f}\right)`,
    String.raw`p_\text{pump} = p_0\left(1 - \left(\frac{\dot V}{\dot V_0}\right)^2\right)\quad\text{or a monotone cubic through the points}`,
    String.raw`\dot V \propto U,\qquad p \propto U^2`,
  ],
  validity: [
    words`One closed loop without branches, full of liquid: heights cancel, and air is not reckoned with. Pump and part figures are taken as if measured with this coolant; both go with density, so the flow hardly depends on it.`,
    words`Between Reynolds 2040 and 4000 flow is neither laminar nor turbulent; friction is interpolated and both ends of the flow are given.`,
    words`Parts are scaled with the square of flow, from the warm coolant. Cold, their drop lies between that and that times the ratio of viscosities: both are worked and the lower flow is judged. What thick coolant takes from a small pump is not in it.`,
    words`That pump speed follows voltage is a model; a pump with its own speed control does not obey it: leave the voltages out.`,
  ],
  checks: {
    flow: {
      title: words`Flow`,
      basis: 'the part’s own sheet; common practice (80 %)',
    },
    velocityLow: {
      title: words`Slowest hose`,
      basis: 'published: plumbing-trade note, 2 ft/s carries bubbles down',
    },
    velocityHigh: {
      title: words`Fastest hose`,
      basis: 'published: plumbing-trade note, 5 to 7 ft/s upper',
    },
    suction: { title: words`Suction leg`, basis: 'published: hydraulics and piping tables' },
    coldStart: { title: words`Cold start`, basis: 'common practice' },
    regime: { title: words`Laminar or turbulent`, basis: 'model' },
    curve: { title: words`Pump curve`, basis: 'the pump’s own sheet; model (speed with voltage)' },
    coolant: { title: words`Coolant properties`, basis: 'published: ASHRAE 2001, IIR 2010, IAPWS' },
  },
  hazards: ['coolant-poison', 'leak-onto-high-voltage', 'dry-pump'],
  sources: [
    {
      title: 'Flow of Fluids through Valves, Fittings and Pipe, Crane TP-410',
      at: 'Darcy and Colebrook',
      trust: 'read',
    },
    { title: 'Turbulence onset in pipe flow, Science 333', edition: '2011', trust: 'recalled' },
    {
      title: 'ASHRAE Handbook Fundamentals 2001 and IIR 2010 coolant properties',
      at: 'coefficients in the CoolProp repository, commit ea27c639',
      trust: 'read',
    },
    { title: 'Loss coefficients K of bends and barb elbows', trust: 'model' },
  ],

  compute(input) {
    const { hoses = [], parts = [], roughness, temperature } = input
    const curve = curveOf(input)
    const liquid = liquidAt(input, temperature)
    const cold = liquidAt(input, input.coldTemperature)
    const flow = known(flowIn(input, curve, liquid))
    // Cold, at the least: hoses turbulent where in doubt, parts resisting with viscosity.
    const thicker = liquid && cold && Math.max(1, cold.viscosity / liquid.viscosity)
    const uncertain =
      flow !== undefined &&
      liquid !== undefined &&
      hoses.some(({ bore }) => isUncertain(reynoldsIn(bore, flow, liquid)))
    const end = (as: Regime): number | undefined =>
      uncertain ? known(flowIn(input, curve, liquid, as)) : flow
    const fastest = narrowest(hoses)
    const slowest = hoses.length === 0 ? undefined : Math.max(...hoses.map(({ bore }) => bore))
    const velocity = (bore: number | undefined): number | undefined =>
      flow === undefined || bore === undefined ? undefined : velocityIn(bore, flow)
    const drops =
      flow === undefined || liquid === undefined
        ? []
        : [
            ...hoses.map((row) => ({
              name: row.name,
              drop: hoseDrop(hoseOf(row, roughness), flow, liquid),
            })),
            ...parts.map((part) => ({ name: part.name, drop: partDrop(part, flow) })),
          ]
    const pressure = flow && liquid && loopDrop(loopIn(input, liquid), flow)
    return {
      flow,
      flowLow: end('turbulent'),
      flowHigh: end('laminar'),
      pressure,
      velocity: velocity(fastest),
      slowestVelocity: velocity(slowest),
      suctionVelocity: velocity(narrowest(hoses.filter(({ leg }) => leg === 'suction'))),
      reynolds: flow && liquid && fastest && reynoldsIn(fastest, flow, liquid),
      coldFlow: known(flowIn(input, curve, cold)),
      coldFlowLow: thicker && known(flowIn(input, curve, cold, 'turbulent', thicker)),
      largestRestriction: [...drops].sort((a, b) => (b.drop ?? 0) - (a.drop ?? 0))[0]?.name,
      shares: drops.map(({ name, drop }) => ({
        name,
        drop,
        share: drop === undefined || !pressure ? undefined : drop / pressure,
      })),
    }
  },

  findings(input, output, say) {
    const {
      flow,
      flowLow,
      flowHigh,
      coldFlow,
      coldFlowLow,
      velocity,
      slowestVelocity,
      suctionVelocity,
    } = output
    const { requiredFlow, temperature, coldTemperature, ratedVoltage, workingVoltage } = input
    const coolant = coolantIn(input)
    const judged = flowLow
    const starved = (input.parts ?? [])
      .filter(({ minimumFlow }) => minimumFlow !== undefined && (judged ?? NaN) < minimumFlow)
      .map(({ name }) => name)
    const asked = requiredFlow !== undefined
    const minima = (input.parts ?? []).flatMap(({ minimumFlow }) => minimumFlow ?? [])
    const share = asked && judged !== undefined ? judged / requiredFlow : 1
    const flowLevel: Level =
      judged === undefined || (!asked && minima.length === 0)
        ? 'unknown'
        : starved.length > 0 || share < flowStop
          ? 'stop'
          : share < 1
            ? 'watch'
            : 'pass'
    const ratio =
      ratedVoltage === undefined || workingVoltage === undefined ? 1 : workingVoltage / ratedVoltage
    const farOff = ratio < speedRange[0] || ratio > speedRange[1]
    const cold = coolantFinding(coolant, coldTemperature, say)
    const liquid = liquidAt(input, temperature)
    const problem = flow ?? flowIn(input, curveOf(input), liquid)
    const hoses = input.hoses ?? []
    const between =
      flow === undefined || liquid === undefined
        ? []
        : hoses.filter(({ bore }) => isUncertain(reynoldsIn(bore, flow, liquid)))
    const noHose = words`It needs hoses and a flow.`
    const L = (value: number | undefined) => say(value, 'L/min')
    const speed = (value: number | undefined) => say(value, 'm/s')
    const coldLevel: Level =
      cold.level === 'stop'
        ? 'stop'
        : coldFlow === undefined || coldFlowLow === undefined || flow === undefined
          ? 'unknown'
          : coldFlowLow < coldShare * flow
            ? 'watch'
            : 'pass'
    const regime: Level =
      flow === undefined || hoses.length === 0 ? 'unknown' : between.length > 0 ? 'watch' : 'pass'
    return [
      {
        check: 'flow',
        level: flowLevel,
        text:
          judged === undefined
            ? words`It cannot be told.`
            : flowLevel === 'unknown'
              ? words`Give the flow wanted, or the least flow on each part’s sheet.`
              : flowLevel === 'pass'
                ? words`${L(judged)} is what is asked for, or more.`
                : starved.length > 0
                  ? words`${L(judged)} is less than the sheet of ${starved.join(', ')} asks for: a larger bore, fewer elbows or a stronger pump.`
                  : words`${L(judged)} is ${say(share, '%')} of the flow wanted: a larger bore, fewer elbows or a stronger pump.`,
        threshold:
          [
            minima.length > 0 && words`at least ${L(Math.max(...minima))} (sheet, stop)`,
            asked && words`${L(requiredFlow)} wanted (watch), 80 % of it (stop)`,
          ]
            .filter(Boolean)
            .join('; ') || words`the flow wanted or the sheet’s least flow`,
      },
      {
        check: 'velocityLow',
        level: atLeast(slowestVelocity, velocityLow),
        text:
          slowestVelocity === undefined
            ? noHose
            : slowestVelocity < velocityLow
              ? words`${speed(slowestVelocity)} in the slowest hose may not carry bubbles down: bleed its high points.`
              : words`${speed(slowestVelocity)} in the slowest hose carries bubbles.`,
        threshold: words`at least ${say(velocityLow, 'm/s', 1)}`,
      },
      {
        check: 'velocityHigh',
        level: atMost(velocity, velocityHigh, Infinity),
        text:
          velocity === undefined
            ? noHose
            : velocity > velocityHigh
              ? words`${speed(velocity)} in the fastest hose wastes pressure: a larger bore.`
              : words`${speed(velocity)} in the fastest hose is moderate.`,
        threshold: words`at most ${say(velocityHigh, 'm/s', 1)}`,
      },
      {
        check: 'suction',
        level: atMost(suctionVelocity, suctionWatch, suctionStop),
        text:
          suctionVelocity === undefined
            ? words`Mark the hose that feeds the pump.`
            : suctionVelocity > suctionWatch
              ? words`${speed(suctionVelocity)} into the pump draws air: a larger or shorter hose.`
              : words`${speed(suctionVelocity)} into the pump is slow enough.`,
        threshold: words`at most ${say(suctionWatch, 'm/s', 2)}; stop above ${say(suctionStop, 'm/s', 2)}`,
      },
      {
        check: 'coldStart',
        ...heeding(
          {
            level: coldLevel,
            text:
              coldLevel === 'stop'
                ? cold.text
                : coldLevel === 'unknown'
                  ? words`It cannot be told.`
                  : coldLevel === 'watch'
                    ? words`At ${say(coldTemperature, '°C')} it is ${L(coldFlowLow)} if parts resist with viscosity, ${L(coldFlow)} if not, and ${L(flow)} warm: keep the power low until it is warm.`
                    : words`At ${say(coldTemperature, '°C')} it is ${L(coldFlowLow)} if parts resist with viscosity, ${L(coldFlow)} if not, and ${L(flow)} warm.`,
          },
          wrongWay(
            say,
            '°C',
            [words`temperature of a cold start`, coldTemperature],
            [words`warm one`, input.temperature],
          ),
        ),
        threshold: words`low end at least 50 % of the warm flow`,
      },
      {
        check: 'regime',
        level: regime,
        text:
          regime === 'unknown'
            ? noHose
            : regime === 'watch'
              ? words`${between.map(({ name }) => name).join(', ')}: neither; ${L(flowLow)} to ${L(flowHigh)} may flow. Measure it.`
              : words`Every hose is one or the other.`,
        threshold: words`Reynolds number not between ${laminarUpTo} and ${turbulentFrom}`,
      },
      {
        check: 'curve',
        level: typeof problem === 'string' ? 'unknown' : farOff ? 'watch' : 'pass',
        text:
          typeof problem === 'string'
            ? problems[problem]
            : farOff
              ? words`The curve is carried to ${say(ratio, '%')} of its voltage, too far for a guess: measure.`
              : words`The pump’s curve, at ${say(ratio, '%')} of its voltage, crosses the loop’s.`,
        threshold: words`a crossing on the curve; 75 to 125 % of its voltage`,
      },
      { check: 'coolant', ...coolantFinding(coolant, temperature, say) },
    ]
  },

  working(input, { flow, pressure, coldFlow, coldFlowLow, flowLow, flowHigh }, say) {
    const { temperature, coldTemperature, shutOff, freeFlow, points, workingVoltage } = input
    const coolant = coolantIn(input)
    const liquid = liquidAt(input, temperature)
    const pump = points
      ? words`Pump: cubic through its points`
      : words`Pump: p = ${say(shutOff, 'kPa')} × (1 − (V̇ / ${say(freeFlow, 'L/min')})²)`
    const voltage =
      input.ratedVoltage !== undefined && workingVoltage !== undefined
        ? [
            words`With voltage: flow × ${say(workingVoltage / input.ratedVoltage, '')}, pressure × ${say((workingVoltage / input.ratedVoltage) ** 2, '')}`,
          ]
        : []
    if (coolant === undefined || liquid === undefined || flow === undefined) {
      return [pump, ...voltage, words`V̇ = cannot tell`]
    }
    return [
      pump,
      ...voltage,
      words`At ${say(temperature, '°C')}: ρ = ${say(liquid.density, 'kg/m³', 4)}, μ = ${say(liquid.viscosity, 'mPa·s')} (${propertySource(coolant)})`,
      `V̇ = ${say(flow, 'L/min')}`,
      ...(input.hoses ?? []).map((row) => {
        const hose = hoseOf(row, input.roughness)
        const reynolds = reynoldsIn(row.bore, flow, liquid)
        const factor = frictionFactor(reynolds, hose.roughness / hose.bore)
        return `${row.name}: v = ${say(velocityIn(row.bore, flow), 'm/s')}, Re = ${say(reynolds, '')}, f = ${say(factor, '')}, Δp = (${say(factor, '')} × ${say(row.length, 'm')} / ${say(row.bore, 'mm')} + ${say(hose.fittings, '')}) ρv²/2 = ${say(hoseDrop(hose, flow, liquid), 'kPa')}`
      }),
      ...(input.parts ?? []).map(
        (part) =>
          `${part.name}: Δp = ${say(part.drop, 'kPa')} × (${say(flow, 'L/min')} / ${say(part.referenceFlow, 'L/min')})² = ${say(partDrop(part, flow), 'kPa')}`,
      ),
      words`Sum: p = ${say(pressure, 'kPa')}`,
      ...(flowLow === flowHigh
        ? []
        : [
            words`All turbulent: ${say(flowLow, 'L/min')}; laminar as far as can be: ${say(flowHigh, 'L/min')}`,
          ]),
      words`At ${say(coldTemperature, '°C')}: V̇ = ${say(coldFlow, 'L/min')}, with viscosity in the parts ${say(coldFlowLow, 'L/min')}`,
    ]
  },

  plot(input, { flow, pressure, coldFlow }) {
    const curve = curveOf(input)
    const pump = typeof curve === 'string' ? undefined : curve
    const top = pump?.at(pump.lowest) ?? 0
    const flows = Array.from(
      { length: plotSteps + 1 },
      (_, step) => ((pump?.highest ?? 0) * step) / plotSteps,
    )
    const loopAt = (temperature: number): readonly (readonly [number, number | undefined])[] => {
      const liquid = liquidAt(input, temperature)
      const loop = liquid && loopIn(input, liquid)
      return flows.map((x) => {
        const y = loop && loopDrop(loop, x)
        return [x, y === undefined || y > 1.2 * top ? undefined : y] as const
      })
    }
    return {
      title: words`Pump and loop`,
      x: { ...flowOf(words`Flow`, 'V̇'), fromZero: true },
      y: { ...pressureOf(words`Pressure`, 'p'), fromZero: true },
      series: pump
        ? [
            {
              name: words`pump`,
              line: 'solid',
              points: flows.map((x) => [x, x < pump.lowest ? undefined : pump.at(x)] as const),
            },
            { name: words`loop, warm`, line: 'dashed', points: loopAt(input.temperature) },
            { name: words`loop, cold`, line: 'dotted', points: loopAt(input.coldTemperature) },
          ]
        : [],
      marks: [
        ...point(flow, pressure, words`warm`),
        ...point(
          coldFlow,
          pump && coldFlow !== undefined ? pump.at(coldFlow) : undefined,
          words`cold`,
        ),
        ...(input.requiredFlow === undefined
          ? []
          : [{ x: input.requiredFlow, y: 0, label: words`wanted`, kind: 'limit-x' as const }]),
      ],
      caption: words`The flow is where the pump’s curve meets the loop’s.`,
    }
  },

  examples: [
    {
      name: 'Square law against square law',
      from: 'closed form: V̇² = 60 kPa / (60 kPa/30² + 22.2222 kPa/20²)',
      inputs: {
        parts: [{ name: 'plate', drop: '22.2222 kPa', referenceFlow: '20 L/min' }],
        shutOff: '60 kPa',
        freeFlow: '30 L/min',
        coolant: 'water',
        temperature: '20 °C',
        coldTemperature: '5 °C',
      },
      outputs: { flow: '22.1565 L/min', pressure: '27.2727 kPa' },
      findings: { flow: 'unknown', velocityLow: 'unknown', velocityHigh: 'unknown' },
    },
    {
      name: 'The same at 80 % speed',
      from: 'closed form: 0.8 of the flow, 0.64 of the pressure',
      inputs: {
        parts: [
          {
            name: 'plate',
            drop: '22.2222 kPa',
            referenceFlow: '20 L/min',
            minimumFlow: '18 L/min',
          },
        ],
        shutOff: '60 kPa',
        freeFlow: '30 L/min',
        ratedVoltage: '15 V',
        workingVoltage: '12 V',
        coolant: 'water',
        temperature: '20 °C',
        coldTemperature: '-5 °C',
      },
      outputs: { flow: '17.7252 L/min', pressure: '17.4545 kPa' },
      findings: { flow: 'stop', coldStart: 'stop', curve: 'pass' },
    },
    {
      name: 'Points of a pump curve',
      from: 'Schaschke, Fluid Mechanics: Worked Examples for Engineers, 9.10: graph 6.6 and 33.8, less the static 10 (L/s read as L/min, m as kPa)',
      inputs: {
        parts: [{ name: 'pipework', drop: '54.2 kPa', referenceFlow: '10 L/min' }],
        points: [
          { flow: '0 L/min', pressure: '30 kPa' },
          { flow: '2 L/min', pressure: '29.5 kPa' },
          { flow: '4 L/min', pressure: '28 kPa' },
          { flow: '6 L/min', pressure: '25 kPa' },
          { flow: '8 L/min', pressure: '20 kPa' },
          { flow: '10 L/min', pressure: '10 kPa' },
        ],
        coolant: 'water',
        temperature: '20 °C',
        coldTemperature: '5 °C',
        requiredFlow: '7 L/min',
      },
      outputs: { flow: '6.6 L/min', pressure: '23.8 kPa' },
      tolerance: 0.005,
      why: 'the book reads its answer off a graph',
      findings: { flow: 'watch', regime: 'unknown' },
    },
    {
      name: 'Turbulent hose',
      from: 'fluids 1.0.22 with Colebrook: 52 % by mass, 20 °C, 10 mm, 12 L/min loses 11 853.2 Pa a metre; pump of level pressure',
      inputs: {
        hoses: [{ name: 'hose', length: '1 m', bore: '10 mm', leg: 'suction' }],
        points: [
          { flow: '0 L/min', pressure: '11.8532 kPa' },
          { flow: '60 L/min', pressure: '11.8532 kPa' },
        ],
        coolant: 'ethylene-glycol',
        concentration: '52 %',
        basis: 'mass',
        temperature: '20 °C',
      },
      outputs: { flow: '12.000 L/min', velocity: '2.5465 m/s', reynolds: '6967' },
      findings: { velocityLow: 'pass', velocityHigh: 'watch', suction: 'stop', regime: 'pass' },
    },
    {
      name: 'Laminar hose',
      from: 'fluids 1.0.22, 64/Re: 52 % by mass, 20 °C, 16 mm, 4 L/min loses 161.7 Pa a metre; pump of level pressure',
      inputs: {
        hoses: [{ name: 'hose', length: '10 m', bore: '16 mm' }],
        points: [
          { flow: '0 L/min', pressure: '1.617 kPa' },
          { flow: '60 L/min', pressure: '1.617 kPa' },
        ],
        coolant: 'ethylene-glycol',
        concentration: '52 %',
        basis: 'mass',
        temperature: '20 °C',
      },
      outputs: { flow: '4.00 L/min', velocity: '0.332 m/s', reynolds: '1451.5' },
      findings: { velocityLow: 'watch', velocityHigh: 'pass', suction: 'unknown' },
    },
    {
      name: 'Nothing raised',
      from: 'threshold case',
      inputs: {
        hoses: [
          { name: 'tank to pump', length: '0.4 m', bore: '16 mm', leg: 'suction' },
          { name: 'rest', length: '4 m', bore: '16 mm', bends: '4', elbows: '4', leg: 'other' },
        ],
        parts: [
          { name: 'plate', drop: '10 kPa', referenceFlow: '8 L/min', minimumFlow: '6 L/min' },
        ],
        shutOff: '40 kPa',
        freeFlow: '18 L/min',
        coolant: 'ethylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        temperature: '50 °C',
        requiredFlow: '8 L/min',
      },
      outputs: {},
      findings: {
        flow: 'pass',
        velocityLow: 'pass',
        velocityHigh: 'pass',
        suction: 'pass',
        coldStart: 'pass',
        regime: 'pass',
        curve: 'pass',
        coolant: 'pass',
      },
    },
    {
      name: 'Cold, long and past the curve',
      from: 'threshold case',
      inputs: {
        hoses: [{ name: 'run', length: '12 m', bore: '12 mm', elbows: '6' }],
        shutOff: '30 kPa',
        freeFlow: '15 L/min',
        ratedVoltage: '24 V',
        workingVoltage: '12 V',
        coolant: 'propylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        temperature: '50 °C',
        coldTemperature: '-20 °C',
      },
      outputs: {},
      findings: { coldStart: 'watch', regime: 'watch', curve: 'watch' },
    },
    {
      name: 'No crossing, frozen',
      from: 'threshold case',
      inputs: {
        hoses: [{ name: 'hose', length: '1 m', bore: '25 mm' }],
        points: [
          { flow: '2 L/min', pressure: '40 kPa' },
          { flow: '8 L/min', pressure: '35 kPa' },
        ],
        coolant: 'water',
        temperature: '-5 °C',
      },
      outputs: {},
      findings: { flow: 'unknown', regime: 'unknown', curve: 'unknown', coolant: 'stop' },
    },
  ],
})

function narrowest(hoses: readonly { readonly bore: number }[]): number | undefined {
  return hoses.length === 0 ? undefined : Math.min(...hoses.map(({ bore }) => bore))
}

function atLeast(value: number | undefined, limit: number): Level {
  return value === undefined ? 'unknown' : value < limit ? 'watch' : 'pass'
}

function atMost(value: number | undefined, watch: number, stop: number): Level {
  if (value === undefined) return 'unknown'
  return value > stop ? 'stop' : value > watch ? 'watch' : 'pass'
}

function point(x: number | undefined, y: number | undefined, label: string): readonly Mark[] {
  return x === undefined || y === undefined ? [] : [{ x, y, label, kind: 'point' }]
}
