/**
 * How hard regeneration may brake: stop lamp, grip of the driven axle, what the cells may take.
 *
 * N·m at the shaft, m/s, V, A in; m/s² and A out. Friction in the driveline helps to brake, so the
 * wheels feel more than torque times ratio; the cells get less. The lightest vehicle slows hardest,
 * the fastest speed gives the most current.
 */
import { gravity } from '../air.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** UN R13-H, 5.2.22.4, m/s²: below the lamp stays off, above it must light. */
const lampLimits = { off: 0.7, on: 1.3 } as const
/** Common practice: share of the grip that regeneration may use. */
const gripInHand = 0.5
/** Common practice: above this charge the pack takes next to nothing. */
const full = 0.95

const inputs = {
  mass: {
    type: 'number',
    label: words`Lightest mass`,
    symbol: 'm',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [100, 20_000],
    usual: [400, 5000],
    help: words`Driver alone: the lightest slows hardest.`,
  },
  speed: {
    type: 'number',
    label: words`Highest speed it regenerates at`,
    symbol: 'v',
    of: 'speed',
    units: ['km/h', 'mph'],
    hard: [5, 250],
    usual: [30, 130],
    help: words`Where the current is largest.`,
  },
  regenTorque: {
    type: 'number',
    label: words`Regeneration torque at the motor`,
    symbol: 'T',
    of: 'torque',
    units: ['N·m', 'lb·ft'],
    hard: [0.5, 3000],
    usual: [5, 200],
    help: words`As set in the controller, with the pedal released; with the brake pedal if it adds some.`,
    choice: true,
  },
  regenPower: {
    type: 'number',
    label: words`Regeneration power limit`,
    symbol: 'P_lim',
    of: 'power',
    units: ['kW', 'hp'],
    hard: [0.1, 500],
    usual: [2, 100],
    help: words`At the shaft, as set in the controller. Left out: torque alone limits.`,
    optional: true,
    choice: true,
  },
  ratio: {
    type: 'number',
    label: words`Ratio of gear and axle together`,
    symbol: 'i',
    of: 'number',
    units: ['', ''],
    hard: [0.5, 60],
    usual: [3, 15],
    help: words`In the lowest gear it is driven in with regeneration on.`,
  },
  rollingRadius: {
    type: 'number',
    label: words`Rolling radius`,
    symbol: 'r',
    of: 'length',
    units: ['m', 'in'],
    hard: [0.1, 0.8],
    usual: [0.2, 0.5],
    help: words`From the gearing page.`,
  },
  roadForce: {
    type: 'number',
    label: words`Road and air at this speed`,
    symbol: 'F_road',
    of: 'force',
    units: ['N', 'lbf'],
    hard: [0, 5000],
    usual: [50, 1500],
    help: words`From the road load page; it slows the vehicle too.`,
    assume: { value: 0, because: words`left out; it adds 0.1 to 0.4 m/s² (common practice)` },
  },
  drivelineEfficiency: {
    type: 'number',
    label: words`Driveline efficiency`,
    symbol: 'η_d',
    of: 'fraction',
    units: ['%', '%'],
    hard: [50, 100],
    usual: [80, 97],
    help: words`Wheels to motor shaft.`,
    assume: { value: 90, because: words`with a gearbox and an axle 88 to 93 % is usual` },
  },
  motorEfficiency: {
    type: 'number',
    label: words`Motor and controller efficiency`,
    symbol: 'η_m',
    of: 'fraction',
    units: ['%', '%'],
    hard: [30, 100],
    usual: [60, 96],
    help: words`Shaft to pack; a high value is the cautious one here.`,
    assume: { value: 95, because: words`the best case, which loads the cells most` },
  },
  packVoltage: {
    type: 'number',
    label: words`Pack voltage while regenerating`,
    symbol: 'U',
    of: 'voltage',
    units: ['V', 'V'],
    hard: [12, 1000],
    usual: [48, 450],
    help: words`The lowest it will have: the current is largest then.`,
  },
  chargeLimit: {
    type: 'number',
    label: words`Charge current the cells take`,
    symbol: 'I_max',
    of: 'current',
    units: ['A', 'A'],
    hard: [0, 2000],
    usual: [20, 500],
    help: words`Of the whole pack, for seconds, at the coldest it is driven: 0 A below freezing for most cells.`,
    optional: true,
  },
  lamp: {
    type: 'choice',
    label: words`Stop lamp in regeneration`,
    help: words`Whether the controller lights it without the pedal.`,
    options: { yes: words`lights`, no: words`stays off`, unknown: words`not known` },
    choice: true,
  },
  drivenAxle: {
    type: 'choice',
    label: words`Driven axle`,
    help: words`Braking takes load off the rear.`,
    options: { front: words`front`, rear: words`rear`, all: words`all four` },
    choice: true,
  },
  drivenShare: {
    type: 'number',
    label: words`Mass on the driven axle`,
    symbol: 's_d',
    of: 'fraction',
    units: ['%', '%'],
    hard: [5, 100],
    usual: [30, 70],
    help: words`As light as above, on the level, from the axle balance. With all four driven it is not used.`,
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
    help: words`How strongly braking shifts load to the front.`,
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
    help: words`Dry tarmac 0.8, wet 0.5, snow 0.2.`,
    assume: { value: 0.3, because: words`a greasy winter road` },
  },
  chargeState: {
    type: 'number',
    label: words`Charge at the top of the hill`,
    symbol: 'SoC',
    of: 'fraction',
    units: ['%', '%'],
    hard: [0, 100],
    usual: [10, 100],
    help: words`Fullest it ever starts a descent with.`,
    optional: true,
  },
  packEnergy: {
    type: 'number',
    label: words`Pack energy`,
    symbol: 'E',
    of: 'energy',
    units: ['kWh', 'kWh'],
    hard: [0.5, 500],
    usual: [5, 100],
    help: words`Nominal; with the descent it tells whether the pack fills on the way.`,
    optional: true,
  },
  descent: {
    type: 'number',
    label: words`Height of the descent`,
    symbol: 'H',
    of: 'length',
    units: ['m', 'ft'],
    hard: [0, 4000],
    usual: [10, 1500],
    help: words`From top to bottom, off a map.`,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

/** Retarding force at the driven wheels at a speed. */
function wheelForce(speed: number, input: Inputs): number {
  const atShaft = (input.regenTorque * input.ratio) / input.rollingRadius
  // At standstill any power will do.
  const limited =
    input.regenPower === undefined ? atShaft : Math.min(atShaft, input.regenPower / speed)
  return limited / input.drivelineEfficiency
}

const slowing = (speed: number, input: Inputs): number =>
  (wheelForce(speed, input) + input.roadForce) / input.mass

/** Load on the driven axle while slowing. */
function drivenLoad(deceleration: number, input: Inputs): number | undefined {
  if (input.drivenAxle === 'all') return input.mass * gravity
  if (input.drivenShare === undefined) return undefined
  const moved = (deceleration / gravity) * input.heightShare
  return (
    input.mass * gravity * (input.drivenShare + (input.drivenAxle === 'front' ? moved : -moved))
  )
}

const slow = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'acceleration',
    units: ['m/s²', 'ft/s²'],
  }) as const satisfies NumberOutput
const power = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'power',
    units: ['kW', 'hp'],
  }) as const satisfies NumberOutput
const torque = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'torque',
    units: ['N·m', 'lb·ft'],
  }) as const satisfies NumberOutput
const current = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'current',
    units: ['A', 'A'],
  }) as const satisfies NumberOutput
const share = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'fraction',
    units: ['%', '%'],
  }) as const satisfies NumberOutput
const energy = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'energy',
    units: ['kWh', 'kWh'],
  }) as const satisfies NumberOutput

export const regenLimit = defineCalculator({
  id: 'regen-limit',
  title: words`Regeneration limit and stop lamp`,
  phase: 'vehicle',
  purpose: words`How hard regeneration slows the vehicle, whether the stop lamp has to light, whether the driven axle holds, and whether the cells may take the current.`,
  inputs,
  outputs: {
    deceleration: slow(words`Strongest slowing`, 'a'),
    decelerationAtSpeed: slow(words`Slowing at the highest speed`, 'a_v'),
    lampRule: { type: 'text', label: words`The stop lamp` },
    wheelForce: {
      type: 'number',
      label: words`Strongest force at the driven wheels`,
      symbol: 'F',
      of: 'force',
      units: ['N', 'lbf'],
    },
    gripUse: share(words`Grip of the driven axle used`, 'F/(μ N)'),
    shaftPower: power(words`Shaft power at the highest speed`, 'P_s'),
    batteryPower: power(words`Into the pack`, 'P_b'),
    batteryCurrent: current(words`Current into the pack`, 'I'),
    currentUse: share(words`Of what the cells take`, 'I/I_max'),
    torqueForLamp: torque(words`Torque that keeps the lamp off`, 'T_0.7'),
    torqueForGrip: torque(words`Torque at half the grip`, 'T_μ'),
    powerForCells: power(words`Shaft power the cells take`, 'P_max'),
    energyBack: energy(words`Won back on the descent, at most`, 'E_b'),
    room: energy(words`Room in the pack`, 'E_r'),
  },
  formula: [
    String.raw`F = \frac{1}{\eta_d}\min\left(\frac{T\,i}{r}, \frac{P_\text{lim}}{v}\right), \qquad a = \frac{F + F_\text{road}}{m}`,
    String.raw`N = m g\left(s_d \pm \frac{a\,h}{g\,L}\right), \qquad I = \frac{F\,v\,\eta_d\,\eta_m}{U}`,
    String.raw`E_b = m g H\,\eta_d\,\eta_m, \qquad E_r = E\,(1 - \text{SoC})`,
  ],
  validity: [
    words`Straight, level road; in a bend less grip is left for braking.`,
    words`Regeneration alone: with the foot on the pedal the friction brakes come on top.`,
    words`The lamp rule binds makers of passenger cars; elsewhere ask. It counts the slowing of the vehicle when the pedal is released.`,
    words`The energy of a descent leaves out what road and air take, so it is the most that can come back; taken at the lightest mass, a laden vehicle gives more.`,
  ],
  checks: {
    lamp: { title: words`Stop lamp`, basis: 'published: UN R13-H (revision 4), 5.2.22.4' },
    cells: { title: words`Current into the cells`, basis: 'the cell sheet' },
    grip: { title: words`Driven axle holds`, basis: 'common practice' },
    full: { title: words`Full pack at the top of a hill`, basis: 'common practice' },
  },
  hazards: ['moving-vehicle', 'cell-fire', 'brakes'],
  sources: [
    {
      title: 'UN Regulation No 13-H, braking of passenger cars',
      at: '5.2.22.4, signal of electric regenerative braking, as quoted',
      trust: 'read',
    },
    { title: 'Load shift in braking', at: 'statics', trust: 'model' },
  ],
  compute(input) {
    const force = wheelForce(0, input)
    const deceleration = slowing(0, input)
    const shaftPower = wheelForce(input.speed, input) * input.speed * input.drivelineEfficiency
    const batteryPower = shaftPower * input.motorEfficiency
    const batteryCurrent = batteryPower / input.packVoltage
    const load = drivenLoad(deceleration, input)
    const perTorque = input.ratio / (input.rollingRadius * input.drivelineEfficiency)
    const lampForce = lampLimits.off * input.mass - input.roadForce
    const limit = input.chargeLimit
    const halfGrip = halfGripForce(input)
    return {
      deceleration,
      decelerationAtSpeed: slowing(input.speed, input),
      lampRule:
        deceleration <= lampLimits.off
          ? words`has to stay off`
          : deceleration <= lampLimits.on
            ? words`may light`
            : words`has to light`,
      wheelForce: force,
      gripUse: load !== undefined && load > 0 ? force / (input.grip * load) : undefined,
      shaftPower,
      batteryPower,
      batteryCurrent,
      currentUse: limit !== undefined && limit > 0 ? batteryCurrent / limit : undefined,
      torqueForLamp: Math.max(lampForce / perTorque, 0),
      torqueForGrip: halfGrip === undefined ? undefined : halfGrip / perTorque,
      powerForCells:
        limit === undefined ? undefined : (limit * input.packVoltage) / input.motorEfficiency,
      energyBack:
        input.descent === undefined
          ? undefined
          : input.mass *
            gravity *
            input.descent *
            input.drivelineEfficiency *
            input.motorEfficiency,
      room:
        input.packEnergy === undefined || input.chargeState === undefined
          ? undefined
          : input.packEnergy * (1 - input.chargeState),
    }
  },
  findings(input, output, say) {
    const a = output.deceleration ?? 0
    const slows = words`Released, it slows at ${say(a, 'm/s²')}`
    const mustLight = a > lampLimits.on
    const mustNot = a <= lampLimits.off
    const lamp =
      input.lamp === 'unknown'
        ? 'unknown'
        : input.lamp === 'no'
          ? mustLight
            ? 'stop'
            : mustNot
              ? 'pass'
              : 'watch'
          : mustNot
            ? 'watch'
            : 'pass'
    const limit = input.chargeLimit
    const amps = output.batteryCurrent ?? 0
    const charge = limit === undefined ? 'unknown' : amps <= limit ? 'pass' : 'stop'
    const lifted =
      input.drivenAxle !== 'all' && input.drivenShare !== undefined && output.gripUse === undefined
    const use = output.gripUse
    const grip = lifted
      ? 'stop'
      : use === undefined
        ? 'unknown'
        : use <= gripInHand
          ? 'pass'
          : use <= 1
            ? 'watch'
            : 'stop'
    const { energyBack, room } = output
    const fills = energyBack !== undefined && room !== undefined && energyBack > room
    const state = input.chargeState
    const topped = state === undefined ? 'unknown' : state >= full || fills ? 'watch' : 'pass'
    return [
      {
        check: 'lamp',
        level: lamp,
        text:
          lamp === 'unknown'
            ? words`${slows}; the lamp ${output.lampRule ?? ''}. Find out what the controller does with it.`
            : lamp === 'stop'
              ? words`${slows} and the stop lamp stays off: those behind are not warned. Light it, or set at most ${say(output.torqueForLamp, 'N·m')}.`
              : lamp === 'watch'
                ? mustNot
                  ? words`${slows}, and the lamp lights although it has to stay off below ${say(lampLimits.off, 'm/s²', 1)}. Raise its threshold.`
                  : words`${slows} without a stop lamp, which may light there. Light it: others see the car slow late.`
                : words`${slows}; the lamp ${output.lampRule ?? ''} and does so.`,
        threshold: words`lamp off up to ${say(lampLimits.off, 'm/s²', 1)}, may light to ${say(lampLimits.on, 'm/s²', 2)} (watch), has to light above (stop)`,
      },
      {
        check: 'cells',
        level: charge,
        text:
          limit === undefined
            ? words`${say(amps, 'A')} go into the pack; the cells’ charge limit is not given. Take it from the sheet at the coldest cell temperature.`
            : amps <= limit
              ? words`${say(amps, 'A')} go into the pack, which takes ${say(limit, 'A')}.`
              : words`${say(amps, 'A')} go into a pack that takes ${say(limit, 'A')}. Limit the shaft power to ${say(output.powerForCells, 'kW')}, and to nothing when the cells are frozen.`,
        threshold: words`at most what the cell sheet allows at that temperature (stop)`,
      },
      {
        check: 'grip',
        level: grip,
        text: lifted
          ? words`So hard a slowing lifts the driven axle off the road. Set less torque.`
          : use === undefined
            ? words`The mass on the driven axle is not given: whether it holds cannot be told.`
            : grip === 'pass'
              ? words`At a grip of ${say(input.grip, '', 2)} the driven axle uses ${say(use, '%')} of it.`
              : `${
                  grip !== 'stop'
                    ? words`At a grip of ${say(input.grip, '', 2)} the driven axle uses ${say(use, '%')} of it: little is left for a bend.`
                    : input.drivenAxle === 'front'
                      ? words`At a grip of ${say(input.grip, '', 2)} the driven axle would need ${say(use, '%')} of it: it locks, and the car does not steer.`
                      : words`At a grip of ${say(input.grip, '', 2)} the driven axle would need ${say(use, '%')} of it: it locks, and the tail comes round.`
                } ${words`Set at most ${say(output.torqueForGrip, 'N·m')}, or a switch for slippery roads.`}`,
        threshold: words`at most 50 % of the grip (watch), 100 % (stop)`,
      },
      {
        check: 'full',
        level: topped,
        text:
          state === undefined
            ? words`The charge at the top of the hill is not given. A full pack takes no regeneration.`
            : topped === 'pass'
              ? words`At ${say(state, '%', 2)} the pack has room.`
              : words`${fills ? words`The descent can bring back ${say(energyBack, 'kWh')} and the pack has room for ${say(room, 'kWh')}` : words`At ${say(state, '%', 2)} the pack takes next to nothing`}: regeneration fades away on the hill. The friction brakes have to do it all; charge less before it.`,
        threshold: words`below 95 % charge, and room for the descent (watch)`,
      },
    ]
  },
  working(input, output, say) {
    return [
      `F = T i / (r η_d) = ${say(input.regenTorque, 'N·m')} × ${say(input.ratio, '', 4)} / (${say(input.rollingRadius, 'm')} × ${say(input.drivelineEfficiency, '%')}) = ${say(output.wheelForce, 'N', 4)}`,
      `a = (F + F_road) / m = (${say(output.wheelForce, 'N', 4)} + ${say(input.roadForce, 'N')}) / ${say(input.mass, 'kg', 4)} = ${say(output.deceleration, 'm/s²')}`,
      words`P_s = F v η_d = ${say(output.shaftPower, 'kW')} at ${say(input.speed, 'km/h')}`,
      `I = P_s η_m / U = ${say(output.shaftPower, 'kW')} × ${say(input.motorEfficiency, '%')} / ${say(input.packVoltage, 'V')} = ${say(output.batteryCurrent, 'A')}`,
      `F / (μ N) = ${say(output.gripUse, '%')}`,
      ...(output.energyBack === undefined
        ? []
        : [
            words`E_b = m g H η_d η_m = ${say(output.energyBack, 'kWh')}, room ${say(output.room, 'kWh')}`,
          ]),
    ]
  },
  plot(input) {
    return {
      title: words`Slowing with the pedal released`,
      x: { label: words`Road speed`, of: 'speed', units: ['km/h', 'mph'], fromZero: true },
      y: { label: words`Slowing`, of: 'acceleration', units: ['m/s²', 'ft/s²'], fromZero: true },
      series: [
        {
          name: words`regeneration`,
          line: 'solid',
          points: Array.from({ length: 41 }, (_, step) => {
            const speed = (step * input.speed) / 40
            return [speed, slowing(speed, input)] as const
          }),
        },
      ],
      marks: [
        { x: 0, y: lampLimits.off, label: words`lamp off below`, kind: 'limit-y' },
        { x: 0, y: lampLimits.on, label: words`lamp on above`, kind: 'limit-y' },
      ],
      caption: words`Where the line is above the upper limit the stop lamp has to be on.`,
    }
  },
  examples: [
    {
      // F = 60 × 9 / (0.3 × 0.9) = 2000 N; 2000 / 1250 = 1.6 m/s². At 20 m/s: 60 × 9 / 0.3 × 20 = 36 kW shaft,
      // × 0.95 / 300 V = 114 A. Front load 1250 × 9.80665 × (0.6 + 1.6 / 9.80665 × 0.23) = 7815.0 N; 2000 / (0.3 × 7815.0) = 85.3 %.
      name: '60 N·m through 9 : 1 at 72 km/h',
      from: 'hand: T i / (r η), F / m, P / U',
      inputs: {
        mass: '1250 kg',
        speed: '72 km/h',
        regenTorque: '60 N·m',
        ratio: '9',
        rollingRadius: '0.3 m',
        packVoltage: '300 V',
        chargeLimit: '150 A',
        lamp: 'no',
        drivenAxle: 'front',
        drivenShare: '60 %',
        chargeState: '90 %',
        packEnergy: '30 kWh',
        descent: '300 m',
      },
      outputs: {
        wheelForce: '2000 N',
        deceleration: '1.600 m/s²',
        batteryCurrent: '114.0 A',
        gripUse: '85.3 %',
        lampRule: words`has to light`,
      },
      findings: { lamp: 'stop', cells: 'pass', grip: 'watch', full: 'pass' },
    },
    {
      // Limited to 9 kW at 25 m/s: 9000 / 25 / 0.9 = 400 N; at the wheels 9 kW / 0.9; 9 kW × 0.95 / 120 V = 71.25 A.
      // 0.7 × 1500 = 1050 N: T = 1050 × 0.3 × 0.9 / 9 = 31.5 N·m. 1500 × 9.80665 × 1000 × 0.855 = 12.577 MJ = 3.494 kWh.
      name: 'Power limit at 90 km/h, and a descent of 1000 m with a full pack',
      from: 'hand: P / v, P / U, m g H',
      inputs: {
        mass: '1500 kg',
        speed: '90 km/h',
        regenTorque: '30 N·m',
        regenPower: '9 kW',
        ratio: '9',
        rollingRadius: '0.3 m',
        packVoltage: '120 V',
        chargeLimit: '60 A',
        lamp: 'no',
        drivenAxle: 'rear',
        drivenShare: '45 %',
        grip: '0.9',
        chargeState: '100 %',
        packEnergy: '30 kWh',
        descent: '1000 m',
      },
      outputs: {
        batteryCurrent: '71.25 A',
        torqueForLamp: '31.5 N·m',
        energyBack: '3.494 kWh',
        lampRule: words`has to stay off`,
      },
      findings: { lamp: 'pass', cells: 'stop', grip: 'pass', full: 'watch' },
    },
    {
      name: 'Rear axle on snow, nothing known of lamp, cells and charge',
      from: 'threshold case',
      inputs: {
        mass: '900 kg',
        speed: '60 km/h',
        regenTorque: '40 N·m',
        ratio: '12',
        rollingRadius: '0.28 m',
        packVoltage: '100 V',
        lamp: 'unknown',
        drivenAxle: 'rear',
        drivenShare: '48 %',
        grip: '0.2',
      },
      outputs: {},
      findings: { lamp: 'unknown', cells: 'unknown', grip: 'stop', full: 'unknown' },
    },
    {
      name: 'Lamp lit by a breath of regeneration, all wheels driven',
      from: 'threshold case',
      inputs: {
        mass: '1500 kg',
        speed: '60 km/h',
        regenTorque: '10 N·m',
        ratio: '9',
        rollingRadius: '0.3 m',
        packVoltage: '300 V',
        chargeLimit: '0 A',
        lamp: 'yes',
        drivenAxle: 'all',
        chargeState: '50 %',
      },
      outputs: {},
      findings: { lamp: 'watch', cells: 'stop', grip: 'pass', full: 'pass' },
    },
  ],
})

/** Force at which the driven axle uses half its grip; its own load moves with the slowing it makes. */
function halfGripForce(input: Inputs): number | undefined {
  const weight = input.mass * gravity
  const part = gripInHand * input.grip
  if (input.drivenAxle === 'all') return part * weight
  if (input.drivenShare === undefined) return undefined
  // F = p (W s ± (F + F_road) h/L)
  const lever = input.drivenAxle === 'front' ? -part * input.heightShare : part * input.heightShare
  const force = (part * weight * input.drivenShare - lever * input.roadForce) / (1 + lever)
  return Math.max(force, 0)
}
