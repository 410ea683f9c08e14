/**
 * Heights of a coolant loop's points at ride height and on slopes: is the tank above everything,
 * does it feed the pump, is there a crest where air stays?
 *
 * Metres. x is measured rearward from the front axle, y to the left, z up from level ground in the
 * stance in which the heights were taken. The body turns as a whole (cosine and sine, no small-angle
 * short cut). Points stand in the order in which the coolant runs.
 */
import * as elementary from '../elementary.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import type { Series } from '../plot.ts'
import { words } from '../../src/words/words.ts'

/** Common practice. */
const tankAbove = 0.05
const pumpBelow = { pass: 0.15, stop: 0.05 } as const
/** Common practice: a kerb or a road's edge leans a parked vehicle by this. */
const camber = (5 * Math.PI) / 180

const inputs = {
  wheelbase: {
    type: 'number',
    label: words`Wheelbase`,
    symbol: 'L',
    of: 'length',
    units: ['m', 'in'],
    hard: [0.8, 8],
    usual: [1.5, 4.5],
    help: words`Front axle to rear axle.`,
  },
  frontChange: {
    type: 'number',
    label: words`Front, measured stance to ride height`,
    symbol: 'Δz_f',
    of: 'length',
    units: ['mm', 'in'],
    hard: [-600, 600],
    usual: [-300, 300],
    help: words`How much higher the body sits over the front axle on its wheels than when the heights were taken.`,
  },
  rearChange: {
    type: 'number',
    label: words`Rear, measured stance to ride height`,
    symbol: 'Δz_r',
    of: 'length',
    units: ['mm', 'in'],
    hard: [-600, 600],
    usual: [-300, 300],
    help: words`How much higher the body sits over the rear axle on its wheels than when the heights were taken.`,
  },
  slope: {
    type: 'number',
    label: words`Parking slope`,
    symbol: 'i',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 40],
    usual: [0, 20],
    help: words`Steepest place where it is parked; nose-up and nose-down are both worked.`,
    choice: true,
    assume: { value: 10, because: words`a steep drive` },
  },
  points: {
    type: 'list',
    label: words`Points of the loop`,
    row: words`point`,
    help: words`In the order in which the coolant runs: tank, pump, every port and every high place of a hose.`,
    rows: [1, 60],
    fields: {
      name: { type: 'text', label: words`Name`, help: words`Such as hose under seat.` },
      role: {
        type: 'choice',
        label: words`Role`,
        help: words`What sits there.`,
        options: {
          tank: words`tank, low mark`,
          pump: words`pump inlet`,
          port: words`port of a part`,
          crest: words`crest of a hose`,
          other: words`other place`,
        },
      },
      x: {
        type: 'number',
        label: words`Behind the front axle`,
        symbol: 'x',
        of: 'length',
        units: ['m', 'in'],
        hard: [-3, 9],
        usual: [-1.5, 5],
        help: words`Ahead of the axle negative.`,
      },
      z: {
        type: 'number',
        label: words`Height`,
        symbol: 'z',
        of: 'length',
        units: ['mm', 'in'],
        hard: [-1000, 4000],
        usual: [0, 2000],
        help: words`Above level ground, at the highest wet place; for the tank its low mark.`,
      },
      y: {
        type: 'number',
        label: words`To the left`,
        symbol: 'y',
        of: 'length',
        units: ['mm', 'in'],
        hard: [-2000, 2000],
        usual: [-1000, 1000],
        help: words`From the middle, to the right negative. Where tank and point have it, leaning 5° is worked too.`,
        optional: true,
      },
      bleed: {
        type: 'choice',
        label: words`Bleed`,
        help: words`Whether air can be let out there. Left out: no.`,
        options: { yes: words`yes`, no: words`no` },
        optional: true,
        choice: true,
      },
    },
  },
} as const

type Inputs = InputValues<typeof inputs>
type Point = Inputs['points'][number]

interface Attitude {
  readonly name: string
  /** Tail-up is positive, as x runs rearward. */
  readonly tailUp: number
  /** Right side down is positive. */
  readonly lean: number
}

function rideAngle(input: Inputs): number {
  return elementary.asin(
    Math.max(-1, Math.min(1, (input.rearChange - input.frontChange) / input.wheelbase)),
  )
}

const atRideHeight = words`at ride height`
const noseUp = words`parked nose-up`
const noseDown = words`parked nose-down`
const leaningRight = words`leaning to the right`
const leaningLeft = words`leaning to the left`
const noCrest = words`none`

/** Ride height comes first. */
function attitudes(input: Inputs): readonly Attitude[] {
  const ride = rideAngle(input)
  const slope = elementary.atan(input.slope)
  return [
    { name: atRideHeight, tailUp: ride, lean: 0 },
    { name: noseUp, tailUp: ride - slope, lean: 0 },
    { name: noseDown, tailUp: ride + slope, lean: 0 },
    { name: leaningRight, tailUp: ride, lean: camber },
    { name: leaningLeft, tailUp: ride, lean: -camber },
  ]
}

/** Height of a point when the body pitches about the front axle, then leans. */
export function heightAt(
  point: { readonly x: number; readonly y?: number | undefined; readonly z: number },
  tailUp: number,
  lean: number,
): number {
  const across = (point.y ?? 0) * elementary.sin(lean) + point.z * elementary.cos(lean)
  return point.x * elementary.sin(tailUp) + across * elementary.cos(tailUp)
}

interface Margin {
  readonly point: Point
  readonly attitude: string
  /** Tank's low mark above the point. */
  readonly margin: number
}

function marginsBelow(tank: Point, input: Inputs): readonly Margin[] {
  return attitudes(input).flatMap(({ name, tailUp, lean }) =>
    input.points
      .filter((point) => point !== tank)
      .filter((point) => lean === 0 || (tank.y !== undefined && point.y !== undefined))
      .map((point) => ({
        point,
        attitude: name,
        margin: heightAt(tank, tailUp, lean) - heightAt(point, tailUp, lean),
      })),
  )
}

function least(margins: readonly Margin[]): Margin | undefined {
  return margins.reduce<Margin | undefined>(
    (low, one) => (low === undefined || one.margin < low.margin ? one : low),
    undefined,
  )
}

function onlyTank(input: Inputs): Point | undefined {
  const tanks = input.points.filter(({ role }) => role === 'tank')
  return tanks.length === 1 ? tanks[0] : undefined
}

/** Points higher at ride height than both neighbours along the loop, and all that are called crests. */
function crests(input: Inputs): readonly Point[] {
  const ride = rideAngle(input)
  const { points } = input
  return points.filter((point, index) => {
    if (point.role === 'tank') return false
    if (point.role === 'crest') return true
    const before = points.at(index - 1) ?? point
    const after = points[(index + 1) % points.length] ?? point
    const height = heightAt(point, ride, 0)
    return height > heightAt(before, ride, 0) && height >= heightAt(after, ride, 0)
  })
}

function worked(input: Inputs) {
  const tank = onlyTank(input)
  const margins = tank === undefined ? [] : marginsBelow(tank, input)
  const level = margins.filter(({ attitude }) => attitude === atRideHeight)
  const sloping = margins.filter(({ attitude }) => attitude !== atRideHeight)
  const pump = margins.filter(({ point }) => point.role === 'pump')
  return {
    tank,
    overall: least(margins),
    level: least(level),
    open: least(sloping.filter(({ point }) => point.bleed !== 'yes')),
    bled: least(sloping.filter(({ point }) => point.bleed === 'yes')),
    pump: least(pump),
    levelPump: least(level.filter(({ point }) => point.role === 'pump')),
  }
}

const height = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'length',
    units: ['mm', 'in'],
  }) as const satisfies NumberOutput

const point = (label: string, symbol: string) => ({ ...height(label, symbol), least: 3 }) as const

export const loopHeights = defineCalculator({
  id: 'loop-heights',
  title: words`Heights of the coolant loop`,
  phase: 'cooling',
  purpose: words`Whether the tank stays above the whole loop at ride height and on slopes, feeds the pump, and where air can collect.`,
  inputs,
  outputs: {
    table: {
      type: 'table',
      label: words`Heights`,
      columns: {
        name: { type: 'text', label: words`Point` },
        measured: point(words`As measured`, 'z'),
        ride: point(words`At ride height`, 'z_r'),
        noseUp: point(words`Nose-up`, 'z_u'),
        noseDown: point(words`Nose-down`, 'z_d'),
        below: height(words`Tank above it, worst`, 'm'),
      },
    },
    worstMargin: height(words`Tank above the loop, worst`, 'm_min'),
    worstPoint: { type: 'text', label: words`Where` },
    worstAttitude: { type: 'text', label: words`When` },
    measuredMargin: height(words`Tank above the loop, as measured`, 'm_0'),
    rideMargin: height(words`Tank above the loop, at ride height`, 'm_r'),
    pumpHead: height(words`Tank above the pump inlet, at ride height`, 'h'),
    worstPumpHead: height(words`Tank above the pump inlet, worst`, 'h_min'),
    pitch: {
      type: 'number',
      label: words`Tail-up pitch at ride height`,
      symbol: 'θ',
      of: 'angle',
      units: ['°', '°'],
    },
    openCrests: { type: 'text', label: words`Crests without a bleed` },
  },
  formula: [
    String.raw`\sin\theta_0 = \frac{\Delta z_r - \Delta z_f}{L}, \qquad \theta = \theta_0 \pm \arctan i`,
    String.raw`z' = x\sin\theta + (y\sin\varphi + z\cos\varphi)\cos\theta, \qquad \varphi = 0,\; \pm 5^\circ`,
  ],
  validity: [
    words`x runs rearward, y to the left, z up; the body pitches (θ, tail up), then leans (φ, right side down), about the front axle; only differences of height matter.`,
    words`The body turns as a whole: springs do not settle further on the slope.`,
    words`Coolant at rest, tank at its low mark; a running pump and a closed cap change pressures, not where air collects.`,
    words`Slopes along and leaning across are worked one at a time.`,
  ],
  checks: {
    ride: { title: words`Tank above the loop at ride height`, basis: 'common practice' },
    slopes: { title: words`Tank above the loop on slopes`, basis: 'common practice' },
    pump: { title: words`Pump below the tank`, basis: 'common practice' },
    crests: { title: words`Crests that hold air`, basis: 'common practice' },
  },
  hazards: ['crush', 'hot-coolant', 'dry-pump'],
  sources: [{ title: 'Rotation of a rigid body: pitch, then roll', trust: 'model' }],
  compute(input) {
    const { tank, overall, level, pump, levelPump } = worked(input)
    const ride = rideAngle(input)
    const slope = elementary.atan(input.slope)
    const margins = tank === undefined ? [] : marginsBelow(tank, input)
    const others = input.points.filter((point) => point !== tank)
    const open = crests(input).filter(({ bleed }) => bleed !== 'yes')
    return {
      table: input.points.map((point) => ({
        name: point.name,
        measured: point.z,
        ride: input.frontChange + heightAt(point, ride, 0),
        noseUp: input.frontChange + heightAt(point, ride - slope, 0),
        noseDown: input.frontChange + heightAt(point, ride + slope, 0),
        below: least(margins.filter((margin) => margin.point === point))?.margin,
      })),
      worstMargin: overall?.margin,
      worstPoint: overall?.point.name,
      worstAttitude: overall?.attitude,
      measuredMargin:
        tank === undefined || others.length === 0
          ? undefined
          : tank.z - Math.max(...others.map(({ z }) => z)),
      rideMargin: level?.margin,
      pumpHead: levelPump?.margin,
      worstPumpHead: pump?.margin,
      pitch: ride,
      openCrests: open.length === 0 ? noCrest : open.map(({ name }) => name).join(', '),
    }
  },
  findings(input, output, say) {
    const { tank, level, open, bled, pump } = worked(input)
    const noTank =
      input.points.filter(({ role }) => role === 'tank').length > 1
        ? words`More than one point is the tank’s low mark: keep the one that feeds the pump.`
        : words`No point is the tank’s low mark: enter it.`
    const describe = ({ point, attitude, margin }: Margin) =>
      attitude === atRideHeight
        ? margin < 0
          ? words`At ride height the tank’s low mark is ${say(-margin, 'mm')} below “${point.name}”`
          : words`At ride height the tank’s low mark is ${say(margin, 'mm')} above “${point.name}”`
        : margin < 0
          ? words`When ${attitude} the tank’s low mark is ${say(-margin, 'mm')} below “${point.name}”`
          : words`When ${attitude} the tank’s low mark is ${say(margin, 'mm')} above “${point.name}”`
    const grade = (margin: number) =>
      margin >= tankAbove ? 'pass' : margin >= 0 ? 'watch' : 'stop'

    const openLevel = open === undefined ? 'pass' : grade(open.margin)
    const bledLevel = bled === undefined || bled.margin >= tankAbove ? 'pass' : 'watch'
    // What is wrong without a bleed is named first, then the least.
    const lower = open && bled ? (bled.margin < open.margin ? bled : open) : (open ?? bled)
    const named = openLevel === 'pass' ? lower : open
    const slopeLevel =
      named === undefined ? 'unknown' : openLevel === 'pass' ? bledLevel : openLevel
    const leaned = input.points.filter(({ y }) => y !== undefined).length
    const leaning =
      tank?.y !== undefined && leaned > 1
        ? leaned === input.points.length
          ? words`Leaning 5° either way is included.`
          : words`Leaning is worked only for the points that have a sideways place.`
        : words`Leaning is not worked: no sideways places are given.`

    const head = pump?.margin
    const pumpLevel =
      head === undefined
        ? 'unknown'
        : head >= pumpBelow.pass
          ? 'pass'
          : head >= pumpBelow.stop
            ? 'watch'
            : 'stop'
    const crested = output.openCrests !== noCrest
    return [
      {
        check: 'ride',
        level: level === undefined ? 'unknown' : grade(level.margin),
        text:
          level === undefined
            ? tank === undefined
              ? noTank
              : words`Only the tank is given: enter pump, ports and crests.`
            : level.margin >= tankAbove
              ? words`${describe(level)}, the highest other point.`
              : words`${describe(level)}: air will stay there. Raise the tank or lower the hose.`,
        threshold: words`at least ${say(tankAbove, 'mm', 1)} above (watch), ${say(0, 'mm', 1)} (stop)`,
      },
      {
        check: 'slopes',
        level: slopeLevel,
        text:
          named === undefined
            ? tank === undefined
              ? noTank
              : words`Only the tank is given: enter pump, ports and crests.`
            : slopeLevel === 'pass'
              ? `${words`${describe(named)}, the least of all slopes.`} ${leaning}`
              : named === bled
                ? `${words`${describe(named)}; it has a bleed: open it again after parking so.`} ${leaning}`
                : `${words`${describe(named)}: air can move there. Move the tank towards it, raise the tank, or fit a bleed there.`} ${leaning}`,
        threshold: words`on ${say(input.slope, '%')} either way at least ${say(tankAbove, 'mm', 1)} above (watch), ${say(0, 'mm', 1)} (stop; watch at a bleed)`,
      },
      {
        check: 'pump',
        level: pumpLevel,
        text:
          pump === undefined || head === undefined
            ? tank === undefined
              ? noTank
              : words`No point is the pump inlet: enter it.`
            : pumpLevel === 'pass'
              ? words`${describe(pump)}, at its least.`
              : words`${describe(pump)}, at its least: the pump may draw air and run dry. Mount it lower or raise the tank.`,
        threshold: words`pump at least ${say(pumpBelow.pass, 'mm', 2)} below the low mark (watch), ${say(pumpBelow.stop, 'mm', 1)} (stop)`,
      },
      {
        check: 'crests',
        level: crested ? 'watch' : input.points.length < 3 ? 'unknown' : 'pass',
        text: crested
          ? words`Air collects at ${output.openCrests ?? ''}: fit a bleed there, or route it without a hump.`
          : input.points.length < 3
            ? words`Too few points to find a crest: enter the loop’s high places in order.`
            : words`No place is higher than its neighbours without a bleed.`,
        threshold: words`no crest without a bleed (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const { tank, overall } = worked(input)
    const first = words`sin θ_0 = (Δz_r − Δz_f) / L = (${say(input.rearChange, 'mm')} − ${say(input.frontChange, 'mm')}) / ${say(input.wheelbase, 'm')}; θ_0 = ${say(output.pitch, '°')} tail up`
    if (tank === undefined || overall === undefined) return [first]
    const attitude = attitudes(input).find(({ name }) => name === overall.attitude)
    const { tailUp, lean } = attitude ?? { tailUp: 0, lean: 0 }
    const line = (point: Point) =>
      `${point.name}: z′ = x sin θ + (y sin φ + z cos φ) cos θ = ${say(point.x, 'm')} × ${say(elementary.sin(tailUp), '', 4)} + (${say(point.y ?? 0, 'mm')} × ${say(elementary.sin(lean), '')} + ${say(point.z, 'mm')} × ${say(elementary.cos(lean), '', 4)}) × ${say(elementary.cos(tailUp), '', 4)} = ${say(heightAt(point, tailUp, lean), 'mm', 4)}`
    return [
      first,
      words`Worst ${overall.attitude}: θ = ${say(tailUp, '°')}, φ = ${say(lean, '°')}`,
      line(tank),
      line(overall.point),
      words`m_min = z′ of the tank − z′ of the other = ${say(overall.margin, 'mm')}`,
    ]
  },
  plot(input) {
    const ride = rideAngle(input)
    const tank = onlyTank(input)
    const turned = ({ x, z }: Point): readonly [number, number] => [
      x * elementary.cos(ride) - z * elementary.sin(ride),
      input.frontChange + x * elementary.sin(ride) + z * elementary.cos(ride),
    ]
    const loop = (place: (point: Point) => readonly [number, number]): Series['points'] =>
      [...input.points, ...input.points.slice(0, 1)].map(place)
    return {
      title: words`The loop from the side`,
      x: { label: words`Behind the front axle`, of: 'length', units: ['m', 'in'] },
      y: { label: words`Height`, of: 'length', units: ['mm', 'in'] },
      series: [
        { name: words`as measured`, line: 'dotted', points: loop(({ x, z }) => [x, z]) },
        { name: words`at ride height`, line: 'solid', points: loop(turned) },
      ],
      marks: [
        ...input.points.map((point) => {
          const [x, y] = turned(point)
          return { x, y, label: point.name, kind: 'point' as const }
        }),
        ...(tank === undefined
          ? []
          : [
              { x: 0, y: turned(tank)[1], label: words`tank’s low mark`, kind: 'limit-y' as const },
            ]),
      ],
      caption: words`At ride height nothing may reach the line of the tank’s low mark. Front is to the left.`,
      sideView: true,
    }
  },
  examples: [
    {
      // sin θ = 0.06 / 2.92 = 0.0205479, cos θ = 0.999789.
      // Tank 0.30 × 0.0205479 + 0.980 × 0.999789 = 0.985957; crest 1.35 × 0.0205479 + 0.965 × 0.999789 = 0.992536.
      name: 'Tank 15 mm above the crest on level stands, tail 60 mm higher on the road',
      from: 'hand: rotation by asin(60 mm / 2.92 m)',
      inputs: {
        wheelbase: '2.92 m',
        frontChange: '0 mm',
        rearChange: '60 mm',
        slope: '0 %',
        points: [
          { name: 'tank', role: 'tank', x: '0.30 m', z: '980 mm' },
          { name: 'pump', role: 'pump', x: '0.30 m', z: '500 mm' },
          { name: 'hose under seat', role: 'crest', x: '1.35 m', z: '965 mm' },
        ],
      },
      outputs: {
        rideMargin: '-6.6 mm',
        measuredMargin: '15 mm',
        pitch: '1.177 °',
        pumpHead: '479.9 mm',
      },
      findings: { ride: 'stop', slopes: 'stop', pump: 'pass', crests: 'watch' },
    },
    {
      // Level again; θ = 1.17739° + atan 0.10 = 6.88798°: sin 0.119929, cos 0.992783.
      // (1.050 − 0.965) × 0.992783 − 1.05 × 0.119929 = 0.084387 − 0.125925 = −0.041539.
      name: 'The same tank 70 mm higher, parked nose-down on 10 %',
      from: 'hand: rotation by asin(60 mm / 2.92 m) + atan 0.10',
      inputs: {
        wheelbase: '2.92 m',
        frontChange: '0 mm',
        rearChange: '60 mm',
        slope: '10 %',
        points: [
          { name: 'tank', role: 'tank', x: '0.30 m', z: '1050 mm' },
          { name: 'pump', role: 'pump', x: '0.30 m', z: '950 mm' },
          { name: 'hose under seat', role: 'crest', x: '1.35 m', z: '965 mm', bleed: 'no' },
        ],
      },
      outputs: { rideMargin: '63.4 mm', worstMargin: '-41.5 mm' },
      findings: { ride: 'pass', slopes: 'stop', pump: 'watch' },
    },
    {
      // Leaning right lifts the left side: 0.2 × 0.996195 − 1.0 × 0.0871557 = 0.112083;
      // pump below the tank on the same side: 0.4 × 0.996195 = 0.398478.
      name: 'Tank on the right, crest on the left, leaning 5°',
      from: 'hand: (1.00 − 0.80) cos 5° − 1.0 sin 5°',
      inputs: {
        wheelbase: '2.5 m',
        frontChange: '0 mm',
        rearChange: '0 mm',
        slope: '0 %',
        points: [
          { name: 'tank', role: 'tank', x: '0 m', y: '-500 mm', z: '1000 mm' },
          { name: 'pump', role: 'pump', x: '0 m', y: '-500 mm', z: '600 mm' },
          { name: 'elbow', role: 'port', x: '0 m', y: '500 mm', z: '800 mm', bleed: 'yes' },
        ],
      },
      outputs: { worstMargin: '112 mm', worstPumpHead: '398.5 mm' },
      findings: { ride: 'pass', slopes: 'pass', pump: 'pass', crests: 'pass' },
    },
    {
      name: 'No tank entered',
      from: 'threshold case',
      inputs: {
        wheelbase: '2.5 m',
        frontChange: '0 mm',
        rearChange: '0 mm',
        points: [{ name: 'pump', role: 'pump', x: '0 m', z: '600 mm' }],
      },
      outputs: {},
      findings: { ride: 'unknown', slopes: 'unknown', pump: 'unknown', crests: 'unknown' },
    },
  ],
})
