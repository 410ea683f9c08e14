/**
 * Does it start on the hill, do the driven tyres hold it, and can the motor climb for long?
 *
 * N, N·m, W, rad/s, m, K in and out; grades as rise over run. Starting is a matter of peak torque in
 * the lowest gear, climbing of continuous power, and both of them of the laden mass with trailer.
 */
import * as elementary from '../elementary.ts'
import { axleRatio, gearRatio } from '../ratio-fields.ts'
import { airDensity, gravity } from '../air.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** Common practice: of the wanted starting grade, the part below which it is not fit for a hill. */
const leastStart = 0.75
/** Common practice: above the continuous power by this only on short hills. */
const shortHill = 1.25
/** IEC 60034-1: ratings hold to 1000 m; above 4000 m a machine is a special one. */
const rated = { to: 1000, most: 4000 } as const
/** Grades steeper than this (45°) are not told apart. */
const steepest = 1

const inputs = {
  mass: {
    type: 'number',
    label: words`Laden mass`,
    symbol: 'm',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [100, 20_000],
    usual: [400, 7500],
    help: words`With people, load and trailer.`,
  },
  rollingRadius: {
    type: 'number',
    label: words`Rolling radius`,
    symbol: 'r',
    of: 'length',
    units: ['m', 'in'],
    hard: [0.1, 0.8],
    usual: [0.2, 0.5],
    help: words`From the gearing page or a roll of ten turns.`,
  },
  gears: {
    type: 'list',
    label: words`Gears`,
    row: words`gear`,
    help: words`Each that will be used; a fixed drive is one gear of ratio 1.`,
    rows: [1, 12],
    fields: {
      name: { type: 'text', label: words`Name`, help: words`Such as first.` },
      ratio: gearRatio,
    },
  },
  axleRatio,
  peakTorque: {
    type: 'number',
    label: words`Motor’s peak torque`,
    symbol: 'T_p',
    of: 'torque',
    units: ['N·m', 'lb·ft'],
    hard: [5, 3000],
    usual: [40, 600],
    help: words`At standstill, with this controller’s current.`,
  },
  peakPower: {
    type: 'number',
    label: words`Motor’s peak power`,
    symbol: 'P_p',
    of: 'power',
    units: ['kW', 'hp'],
    hard: [1, 1000],
    usual: [10, 250],
    help: words`At the shaft, with this pack.`,
  },
  motorMost: {
    type: 'number',
    label: words`Motor’s highest speed`,
    symbol: 'n_max',
    of: 'angularSpeed',
    units: ['rpm', 'rpm'],
    hard: [300, 40_000],
    usual: [2000, 18_000],
    help: words`From its sheet.`,
  },
  continuousPower: {
    type: 'number',
    label: words`Motor’s continuous power`,
    symbol: 'P_c',
    of: 'power',
    units: ['kW', 'hp'],
    hard: [0.2, 500],
    usual: [3, 150],
    help: words`At the shaft, for an hour or more; not the peak.`,
    optional: true,
  },
  startGrade: {
    type: 'number',
    label: words`Grade it has to start on`,
    symbol: 'i_s',
    of: 'fraction',
    units: ['%', '%'],
    hard: [1, 50],
    usual: [10, 35],
    help: words`Rise over run of the steepest ramp.`,
    choice: true,
    assume: { value: 20, because: words`the usual yardstick for a road vehicle` },
  },
  climbGrade: {
    type: 'number',
    label: words`Long grade`,
    symbol: 'i_c',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0.5, 35],
    usual: [3, 15],
    help: words`The longest hill on the route.`,
    choice: true,
    assume: { value: 6, because: words`main roads seldom rise more for long` },
  },
  climbSpeed: {
    type: 'number',
    label: words`Speed up the long grade`,
    symbol: 'v_c',
    of: 'speed',
    units: ['km/h', 'mph'],
    hard: [5, 150],
    usual: [20, 90],
    help: words`That it has to hold.`,
    choice: true,
    assume: { value: 50, because: words`slower is a hindrance to others` },
  },
  dragArea: {
    type: 'number',
    label: words`Drag coefficient times area`,
    symbol: 'CdA',
    of: 'area',
    units: ['m²', 'ft²'],
    hard: [0.05, 12],
    usual: [0.4, 5],
    help: words`From a coast-down, or Cd times frontal area.`,
    assume: { value: 1.5, because: words`an upright vehicle; on a slow hill it matters little` },
  },
  rollingResistance: {
    type: 'number',
    label: words`Rolling resistance coefficient`,
    symbol: 'Crr',
    of: 'number',
    units: ['', ''],
    hard: [0.002, 0.3],
    usual: [0.006, 0.05],
    help: words`Road 0.010 to 0.018; grass or soft track 0.05 and more.`,
    assume: { value: 0.014, because: words`an old tyre on tarmac` },
  },
  drivelineEfficiency: {
    type: 'number',
    label: words`Driveline efficiency`,
    symbol: 'η_d',
    of: 'fraction',
    units: ['%', '%'],
    hard: [50, 100],
    usual: [80, 97],
    help: words`Motor shaft to wheels, in low gear.`,
    assume: { value: 90, because: words`with a gearbox and an axle 88 to 93 % is usual` },
  },
  altitude: {
    type: 'number',
    label: words`Altitude`,
    symbol: 'z',
    of: 'length',
    units: ['m', 'ft'],
    hard: [-430, 6000],
    usual: [0, 3000],
    help: words`Of the hill’s top: thin air drags less and cools less.`,
    assume: { value: 0, because: words`near sea level` },
  },
  airTemperature: {
    type: 'number',
    label: words`Air temperature`,
    symbol: 'T',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-60, 60],
    usual: [-30, 45],
    help: words`For the drag only.`,
    assume: { value: 20, because: words`a mild day` },
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
  drivenAxle: {
    type: 'choice',
    label: words`Driven wheels`,
    help: words`Uphill the front grows light and the rear heavy.`,
    options: { front: words`front`, rear: words`rear`, all: words`all four` },
    choice: true,
    optional: true,
  },
  drivenShare: {
    type: 'number',
    label: words`Mass on the driven axle`,
    symbol: 's_d',
    of: 'fraction',
    units: ['%', '%'],
    hard: [5, 100],
    usual: [30, 70],
    help: words`Laden, on the level, from the axle balance; of the mass above, trailer included.`,
    optional: true,
  },
  heightShare: {
    type: 'number',
    label: words`Height of the centre of gravity over the wheelbase`,
    symbol: 'h/L',
    of: 'fraction',
    units: ['%', '%'],
    hard: [5, 80],
    usual: [15, 40],
    help: words`How strongly a hill shifts load to the rear.`,
    assume: { value: 23, because: words`about 0.6 m over 2.6 m (common practice)` },
  },
  grip: {
    type: 'number',
    label: words`Grip of the surface`,
    symbol: 'μ',
    of: 'number',
    units: ['', ''],
    hard: [0.05, 1.2],
    usual: [0.2, 0.9],
    help: words`Dry tarmac 0.8, wet 0.5, wet grass 0.3, snow 0.2.`,
    assume: { value: 0.5, because: words`wet tarmac` },
  },
} as const

type Inputs = InputValues<typeof inputs>
type Gear = Inputs['gears'][number]

const densityOf = (input: Inputs): number =>
  input.density ?? airDensity(input.airTemperature, input.altitude)
const weightOf = (input: Inputs): number => input.mass * gravity

/** What the road takes at a grade and a steady speed. */
function resistance(grade: number, speed: number, input: Inputs): number {
  const angle = elementary.atan(grade)
  const rolling = weightOf(input) * input.rollingResistance * elementary.cos(angle)
  const drag = (densityOf(input) / 2) * input.dragArea * speed ** 2
  return weightOf(input) * elementary.sin(angle) + rolling + drag
}

/** The grade that a force balances: sin θ + C cos θ = √(1 + C²) sin(θ + atan C). Steeper than 45° counts as 45°. */
function gradeFor(force: number, input: Inputs): number {
  const roll = input.rollingResistance
  const part = force / (weightOf(input) * Math.hypot(1, roll))
  if (part >= 1) return steepest
  return Math.min(
    elementary.tan(elementary.asin(Math.max(part, -1)) - elementary.atan(roll)),
    steepest,
  )
}

const ratioOf = (gear: Gear, input: Inputs): number => gear.ratio * input.axleRatio
const shortestFirst = (input: Inputs): readonly Gear[] =>
  input.gears.toSorted((a, b) => b.ratio - a.ratio)

const atTheWheels = (torque: number, gear: Gear, input: Inputs): number =>
  (torque * ratioOf(gear, input) * input.drivelineEfficiency) / input.rollingRadius

/** Peak force at the wheels at a road speed; undefined where the motor would overspeed. */
function pull(gear: Gear, speed: number, input: Inputs): number | undefined {
  const rate = (speed * ratioOf(gear, input)) / input.rollingRadius
  if (rate > input.motorMost * (1 + 1e-9)) return undefined
  const torque = rate > 0 ? Math.min(input.peakTorque, input.peakPower / rate) : input.peakTorque
  return atTheWheels(torque, gear, input)
}

/** The grade at which the driven wheels slip, starting. */
function gripGrade(input: Inputs): number | undefined {
  const { drivenAxle, drivenShare, grip, heightShare, rollingResistance } = input
  if (drivenAxle === undefined) return undefined
  if (drivenAxle === 'all') return Math.min(grip, steepest)
  if (drivenShare === undefined) return undefined
  // At the limit W sin θ + C (W cos θ − N) = μ N with N = W (s cos θ ± sin θ h/L).
  const shift = drivenAxle === 'rear' ? heightShare : -heightShare
  const push = grip + rollingResistance
  const room = 1 - push * shift
  return room <= 0 ? steepest : Math.min((push * drivenShare - rollingResistance) / room, steepest)
}

const force = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'force',
    units: ['N', 'lbf'],
  }) as const satisfies NumberOutput
const share = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'fraction',
    units: ['%', '%'],
  }) as const satisfies NumberOutput
const pace = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'speed',
    units: ['km/h', 'mph'],
  }) as const satisfies NumberOutput
const power = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'power',
    units: ['kW', 'hp'],
  }) as const satisfies NumberOutput

export const hillStart = defineCalculator({
  id: 'hill-start',
  title: words`Hill start and long climb`,
  phase: 'vehicle',
  purpose: words`On what grade the motor can start the laden vehicle in its lowest gear, whether the tyres hold, and whether it climbs a long hill on continuous power.`,
  inputs,
  outputs: {
    startForce: force(words`Force to start`, 'F_s'),
    startTorque: {
      type: 'number',
      label: words`Torque to start, lowest gear`,
      symbol: 'T_s',
      of: 'torque',
      units: ['N·m', 'lb·ft'],
    },
    torqueUse: share(words`Of the peak torque`, 'T_s/T_p'),
    peakForce: force(words`Peak force at the wheels, lowest gear`, 'F_p'),
    startLimit: share(words`Steepest start by torque`, 'i_T'),
    gripLimit: share(words`Steepest start by grip`, 'i_μ'),
    ratioNeeded: {
      type: 'number',
      label: words`Ratio of gear and axle together needed`,
      symbol: 'i_n',
      of: 'number',
      units: ['', ''],
    },
    climbForce: force(words`Force on the long grade`, 'F_c'),
    climbPower: power(words`Shaft power on the long grade`, 'P_s'),
    climbUse: share(words`Of the continuous power`, 'P_s/P_c'),
    climbSpeedHeld: pace(words`Speed held up it on continuous power`, 'v_h'),
    climbLimit: share(words`Grade held for long at that speed`, 'i_h'),
    airDensity: {
      type: 'number',
      label: words`Air density`,
      symbol: 'ρ',
      of: 'density',
      units: ['kg/m³', 'lb/ft³'],
    },
    table: {
      type: 'table',
      label: words`Gear by gear`,
      columns: {
        name: { type: 'text', label: words`Gear` },
        force: force(words`Peak force`, 'F_i'),
        limit: share(words`Steepest start`, 'i_i'),
        full: pace(words`Full pull up to`, 'v_f'),
        most: pace(words`Never faster than`, 'v_i'),
      },
    },
  },
  formula: [
    String.raw`F = m g (\sin\theta + C_{rr}\cos\theta) + \tfrac{1}{2}\rho\,C_d A\,v^2, \qquad \tan\theta = i`,
    String.raw`T_s = \frac{F_s\,r}{i_g\,i_a\,\eta_d}, \qquad i_T = \tan\left(\arcsin\frac{F_p}{m g\sqrt{1 + C_{rr}^2}} - \arctan C_{rr}\right)`,
    String.raw`i_\mu = \frac{(\mu + C_{rr})\,s_d - C_{rr}}{1 \mp (\mu + C_{rr})\,h/L}, \qquad P_s = \frac{F_c\,v_c}{\eta_d}`,
  ],
  validity: [
    words`Just balanced: nothing is left to accelerate at the limit, and a kerb or pothole takes more.`,
    words`Peak torque is held up to the speed where it gives the peak power, then the power is held: read the motor’s own curve.`,
    words`Grades above 45° are shown as 100 %. Slip of a worn clutch, and heating at stall, are not in.`,
    words`Thin air changes the drag here; what it does to cooling the motor maker says.`,
  ],
  checks: {
    start: { title: words`Start in the lowest gear`, basis: 'common practice' },
    grip: { title: words`Driven wheels hold`, basis: 'common practice' },
    climb: { title: words`Long climb on continuous power`, basis: 'common practice' },
    altitude: {
      title: words`Motor’s rating at this altitude`,
      basis: 'published: IEC 60034-1 (2004 and later), 6.2, ratings to 1000 m',
    },
  },
  hazards: ['brakes', 'loss-of-drive', 'moving-vehicle'],
  sources: [
    { title: '40 CFR 1066.210, road-load force with grade', trust: 'read' },
    {
      title: 'IEC 60034-1, rotating machines, as a motor maker quotes it',
      at: '6.2, altitude to 1000 m',
      trust: 'read',
    },
    { title: 'US Standard Atmosphere', edition: '1976', trust: 'recalled' },
  ],
  compute(input) {
    const gears = shortestFirst(input)
    const lowest = gears[0]
    const startForce = resistance(input.startGrade, 0, input)
    const peakForce = lowest && atTheWheels(input.peakTorque, lowest, input)
    const startTorque =
      lowest &&
      (startForce * input.rollingRadius) / (ratioOf(lowest, input) * input.drivelineEfficiency)
    const climbForce = resistance(input.climbGrade, input.climbSpeed, input)
    const climbPower = (climbForce * input.climbSpeed) / input.drivelineEfficiency
    const cont = input.continuousPower
    const atWheels = cont === undefined ? undefined : cont * input.drivelineEfficiency
    const drag = (densityOf(input) / 2) * input.dragArea * input.climbSpeed ** 2
    return {
      startForce,
      startTorque,
      torqueUse: startTorque && startTorque / input.peakTorque,
      peakForce,
      startLimit: peakForce === undefined ? undefined : gradeFor(peakForce, input),
      gripLimit: gripGrade(input),
      ratioNeeded:
        (startForce * input.rollingRadius) / (input.peakTorque * input.drivelineEfficiency),
      climbForce,
      climbPower,
      climbUse: cont === undefined ? undefined : climbPower / cont,
      climbSpeedHeld: atWheels === undefined ? undefined : speedHeld(atWheels, input),
      climbLimit:
        atWheels === undefined ? undefined : gradeFor(atWheels / input.climbSpeed - drag, input),
      airDensity: densityOf(input),
      table: gears.map((gear) => {
        const force = atTheWheels(input.peakTorque, gear, input)
        const perRate = input.rollingRadius / ratioOf(gear, input)
        return {
          name: gear.name,
          force,
          limit: gradeFor(force, input),
          full: perRate * Math.min(input.peakPower / input.peakTorque, input.motorMost),
          most: perRate * input.motorMost,
        }
      }),
    }
  },
  findings(input, output, say) {
    const limit = output.startLimit ?? 0
    const wanted = input.startGrade
    const start = limit >= wanted ? 'pass' : limit >= leastStart * wanted ? 'watch' : 'stop'
    const needs = words`${say(wanted, '%', 2)} need ${say(output.startTorque, 'N·m')} of ${say(input.peakTorque, 'N·m')} in ${output.table[0]?.name ?? ''}; it starts on up to ${say(limit, '%')}`

    const grip = output.gripLimit
    const use = output.climbUse
    const climb =
      use === undefined ? 'unknown' : use <= 1 ? 'pass' : use <= shortHill ? 'watch' : 'stop'
    const takes = words`${say(input.climbGrade, '%', 2)} at ${say(input.climbSpeed, 'km/h')} take ${say(output.climbPower, 'kW')} at the shaft`
    const instead = words`It holds ${say(output.climbSpeedHeld, 'km/h')} there, or ${say(output.climbLimit, '%')} at this speed`
    const high = input.altitude
    return [
      {
        check: 'start',
        level: start,
        text:
          start === 'pass'
            ? `${needs}.`
            : start === 'watch'
              ? words`${needs}. On the steepest ramps it will not move off: a ratio of ${say(output.ratioNeeded, '')} in all, more controller current or less mass is needed.`
              : words`${needs}. It will not leave a ramp or a trailer: a ratio of ${say(output.ratioNeeded, '')} in all, more controller current or less mass is needed.`,
        threshold: words`at least ${say(wanted, '%', 2)} (watch), three quarters of it, ${say(leastStart * wanted, '%', 2)} (stop)`,
      },
      {
        check: 'grip',
        level: grip === undefined ? 'unknown' : grip >= wanted ? 'pass' : 'watch',
        text:
          grip === undefined
            ? words`Driven wheels and the mass on them are not given: whether they hold cannot be told.`
            : grip >= wanted
              ? words`At a grip of ${say(input.grip, '', 2)} the driven wheels hold up to ${say(grip, '%')}.`
              : words`At a grip of ${say(input.grip, '', 2)} the driven wheels slip above ${say(Math.max(grip, 0), '%')}, whatever the motor gives. Move load onto them, or keep off such hills in the wet.`,
        threshold: words`at least ${say(wanted, '%', 2)} (watch)`,
      },
      {
        check: 'climb',
        ...heeding(
          {
            level: climb,
            text:
              use === undefined
                ? words`${takes}; the motor’s continuous power is not given. Take it from the sheet, not the peak figure.`
                : climb === 'pass'
                  ? words`${takes}, ${say(use, '%')} of the continuous power.`
                  : words`${takes}, ${say(use, '%')} of the continuous power: ${climb === 'watch' ? words`short hills only.` : words`it cuts back or overheats.`} ${instead}.`,
          },
          wrongWay(
            say,
            'kW',
            [words`continuous power`, input.continuousPower],
            [words`peak power`, input.peakPower],
          ),
        ),
        threshold: words`at most 100 % of the continuous power (watch), 125 % (stop)`,
      },
      {
        check: 'altitude',
        level: high <= rated.to ? 'pass' : high <= rated.most ? 'watch' : 'unknown',
        text:
          high <= rated.to
            ? words`Ratings hold at this altitude.`
            : high <= rated.most
              ? words`At ${say(high, 'm')} the thinner air cools motor and controller less than their ratings suppose. Ask the makers for the derating; about 1 % for each ${say(100, 'm')} above ${say(rated.to, 'm', 4)} is common for air cooling.`
              : words`At ${say(high, 'm')} the ratings say nothing. Ask the makers.`,
        threshold: words`up to ${say(rated.to, 'm', 4)} (watch), ${say(rated.most, 'm', 4)} (cannot tell)`,
      },
    ]
  },
  working(input, output, say) {
    const lowest = shortestFirst(input)[0]
    const angle = elementary.atan(input.startGrade)
    return [
      `F_s = m g (sin θ + Crr cos θ) = ${say(weightOf(input), 'N', 4)} × (${say(elementary.sin(angle), '', 4)} + ${say(input.rollingResistance, '')} × ${say(elementary.cos(angle), '', 4)}) = ${say(output.startForce, 'N', 4)}`,
      `T_s = F_s r / (i η_d) = ${say(output.startForce, 'N', 4)} × ${say(input.rollingRadius, 'm')} / (${say(lowest && ratioOf(lowest, input), '', 4)} × ${say(input.drivelineEfficiency, '%')}) = ${say(output.startTorque, 'N·m', 4)}`,
      `F_p = T_p i η_d / r = ${say(output.peakForce, 'N', 4)}, i_T = ${say(output.startLimit, '%')}`,
      `i_μ = ${say(output.gripLimit, '%')}`,
      words`F_c = ${say(output.climbForce, 'N', 4)} at ${say(input.climbGrade, '%', 2)} and ${say(input.climbSpeed, 'km/h')} in air of ${say(output.airDensity, 'kg/m³', 4)}`,
      `P_s = F_c v_c / η_d = ${say(output.climbPower, 'kW')}`,
    ]
  },
  plot(input, output) {
    const top = Math.max(input.climbSpeed, ...output.table.map(({ most }) => most ?? 0))
    const steps = 60
    const along = (of: (speed: number) => number | undefined) =>
      Array.from({ length: steps + 1 }, (_, step) => {
        const speed = (step * top) / steps
        return [speed, of(speed)] as const
      })
    const most = 1.1 * Math.max(output.peakForce ?? 0, output.startForce ?? 0)
    const road = (grade: number) =>
      along((speed) => {
        const needed = resistance(grade, speed, input)
        return needed <= most ? needed : undefined
      })
    return {
      title: words`Pull against speed`,
      x: { label: words`Road speed`, of: 'speed', units: ['km/h', 'mph'], fromZero: true },
      y: { label: words`Force at the wheels`, of: 'force', units: ['N', 'lbf'], fromZero: true },
      series: [
        ...shortestFirst(input).map((gear) => ({
          name: gear.name,
          line: 'solid' as const,
          points: along((speed) => pull(gear, speed, input)),
        })),
        { name: words`level`, line: 'dotted', points: road(0) },
        { name: words`long grade`, line: 'dashed', points: road(input.climbGrade) },
        { name: words`start grade`, line: 'dashed', points: road(input.startGrade) },
      ],
      marks: [],
      caption: words`Peak pull in each gear against what the road takes; where a gear lies below a hill’s line it slows down there.`,
    }
  },
  examples: [
    {
      // 2200 × 9.80665 = 21 574.6 N; sin 0.196116, cos 0.980581: 21 574.6 × (0.196116 + 0.014 × 0.980581) = 4527.3 N;
      // × 0.345 / (2.94 × 3.73 × 0.91) = 156.52 N·m; F_p = 145 × 10.9662 × 0.91 / 0.345 = 4194.1 N:
      // asin(4194.1 / 21 576.7) = 11.2092°, − 0.8021° = 10.4071°: 18.37 %.
      name: 'Pickup of 2200 kg, 145 N·m through 2.94 × 3.73',
      from: 'hand: m g (sin θ + Crr cos θ) r / (i η)',
      inputs: {
        mass: '2200 kg',
        rollingRadius: '0.345 m',
        gears: [
          { name: 'first', ratio: '2.94' },
          { name: 'second', ratio: '1.68' },
          { name: 'top', ratio: '1' },
        ],
        axleRatio: '3.73',
        peakTorque: '145 N·m',
        peakPower: '45 kW',
        motorMost: '6500 rpm',
        continuousPower: '20 kW',
        rollingResistance: '0.014',
        drivelineEfficiency: '91 %',
        dragArea: '1.5125 m²',
        drivenAxle: 'rear',
        drivenShare: '56.5 %',
      },
      outputs: { startTorque: '156.5 N·m', startLimit: '18.37 %', startForce: '4527 N' },
      findings: { start: 'watch', grip: 'pass', climb: 'stop', altitude: 'pass' },
    },
    {
      // Rolling 129.29 + grade 538.69 + drag 83.62 = 751.60 N at 50 km/h; / 0.9 × 13.8889 = 11.599 kW.
      name: 'Saloon on a 5 % grade at 50 km/h',
      from: 'hand: m g (Crr cos θ + sin θ) + ½ ρ CdA v²',
      inputs: {
        mass: '1100 kg',
        rollingRadius: '0.28 m',
        gears: [{ name: 'fixed', ratio: '1' }],
        axleRatio: '9',
        peakTorque: '150 N·m',
        peakPower: '60 kW',
        motorMost: '10000 rpm',
        continuousPower: '25 kW',
        climbGrade: '5 %',
        dragArea: '0.72 m²',
        rollingResistance: '0.012',
        drivenAxle: 'front',
        drivenShare: '60 %',
        grip: '0.3',
      },
      outputs: { climbForce: '751.60 N', climbPower: '11.599 kW' },
      findings: { start: 'pass', grip: 'watch', climb: 'pass' },
    },
    {
      // 150 × 3.5 × 4.11 × 0.92 / 0.29 = 1985.13 N·m / 0.29 m.
      name: '150 N·m through 3.5 × 4.11 at 92 %',
      from: 'hand: T i η / r',
      inputs: {
        mass: '1200 kg',
        rollingRadius: '0.29 m',
        gears: [{ name: 'first', ratio: '3.5' }],
        axleRatio: '4.11',
        peakTorque: '150 N·m',
        peakPower: '60 kW',
        motorMost: '8000 rpm',
        drivelineEfficiency: '92 %',
        altitude: '1800 m',
      },
      outputs: { peakForce: '6845.3 N' },
      findings: { start: 'pass', grip: 'unknown', climb: 'unknown', altitude: 'watch' },
    },
    {
      name: 'One long ratio in a heavy van on a high pass',
      from: 'threshold case',
      inputs: {
        mass: '3500 kg',
        rollingRadius: '0.35 m',
        gears: [{ name: 'direct', ratio: '1' }],
        axleRatio: '4.6',
        peakTorque: '250 N·m',
        peakPower: '70 kW',
        motorMost: '6000 rpm',
        continuousPower: '25 kW',
        altitude: '4500 m',
      },
      outputs: {},
      findings: { start: 'stop', climb: 'stop', altitude: 'unknown' },
    },
  ],
})

/** Speed at which the long grade takes just this power at the wheels. */
function speedHeld(power: number, input: Inputs): number {
  const level = resistance(input.climbGrade, 0, input)
  const drag = (densityOf(input) / 2) * input.dragArea
  // drag v³ + level v = power grows with v alone: halve.
  let low = 0
  let high = power / level
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (drag * middle ** 3 + level * middle > power) high = middle
    else low = middle
  }
  return (low + high) / 2
}
