/**
 * Motor speed against road speed in each gear, and where a change down would burst the rotor.
 *
 * Rolling radius in m, speeds in m/s, motor speed in rad/s. The tyre may be given by its size or by
 * its measured rolling radius; the measured one wins. Slip of tyre and clutch is left out: the real
 * motor turns a few per cent faster under full pull.
 */
import { axleRatio, gearRatio } from '../ratio-fields.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import { readTyre } from '../tyres.ts'
import { words } from '../../src/words/words.ts'

/** Common practice: share of the motor's highest speed. */
const speedInHand = 0.9
/** Common practice: how far size and measured radius may part. */
const agree = 0.03

const inputs = {
  tyre: {
    type: 'text',
    label: words`Tyre size`,
    help: words`As on the sidewall: 155/80 R 13, 185 R 14, 31x10.50 R 15. Inch cross-ply sizes need the radius.`,
    optional: true,
  },
  rollingRadius: {
    type: 'number',
    label: words`Rolling radius`,
    symbol: 'r_m',
    of: 'length',
    units: ['m', 'in'],
    hard: [0.1, 0.8],
    usual: [0.2, 0.5],
    help: words`Roll ten turns and divide the distance by 62.8; or 256.1 m over the revolutions per mile. Wins over the size.`,
    optional: true,
  },
  rollingShare: {
    type: 'number',
    label: words`Rolling share of the free circumference`,
    symbol: 'k',
    of: 'fraction',
    units: ['%', '%'],
    hard: [85, 100],
    usual: [94, 100],
    help: words`How much shorter the loaded tyre rolls than the free one.`,
    assume: { value: 97, because: words`96 to 97 % is usual for radials (recalled)` },
  },
  gears: {
    type: 'list',
    label: words`Gears`,
    row: words`gear`,
    help: words`Each that will be used; a fixed drive is one gear of ratio 1.`,
    rows: [1, 12],
    fields: {
      name: { type: 'text', label: words`Name`, help: words`Such as second.` },
      ratio: gearRatio,
    },
  },
  axleRatio,
  motorMost: {
    type: 'number',
    label: words`Motor’s highest speed`,
    symbol: 'n_max',
    of: 'angularSpeed',
    units: ['rpm', 'rpm'],
    hard: [300, 40_000],
    usual: [2000, 18_000],
    help: words`From its sheet; also what its bearings, coupling and the gearbox input stand.`,
  },
  speed: {
    type: 'number',
    label: words`Highest road speed wanted`,
    symbol: 'v',
    of: 'speed',
    units: ['km/h', 'mph'],
    hard: [3, 400],
    usual: [30, 180],
    help: words`Downhill too.`,
    choice: true,
  },
} as const

type Inputs = InputValues<typeof inputs>
type Gear = Inputs['gears'][number]

function radiusOf(input: Inputs): number | undefined {
  if (input.rollingRadius !== undefined) return input.rollingRadius
  const tyre = input.tyre === undefined ? undefined : readTyre(input.tyre)
  return tyre && (input.rollingShare * tyre.diameter) / 2
}

/** From the gear with the highest ratio to the one with the lowest. */
const ordered = (input: Inputs): readonly Gear[] =>
  input.gears.toSorted((a, b) => b.ratio - a.ratio)

const rate = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'angularSpeed',
    units: ['rpm', 'rpm'],
  }) as const satisfies NumberOutput
const pace = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'speed',
    units: ['km/h', 'mph'],
  }) as const satisfies NumberOutput
const length = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'length',
    units: ['m', 'in'],
  }) as const satisfies NumberOutput
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

export const gearing = defineCalculator({
  id: 'gearing',
  title: words`Gearing and motor speed`,
  phase: 'vehicle',
  purpose: words`How fast the motor turns at each road speed and gear, what the gears allow, and which change down is forbidden.`,
  inputs,
  outputs: {
    radius: length(words`Rolling radius`, 'r'),
    circumference: length(words`Rolling circumference`, 'U'),
    wheelRate: rate(words`Wheels turn at`, 'n_w'),
    motorRate: rate(words`Motor turns at, in the longest gear`, 'n_m'),
    share: part(words`Of its highest speed`, 'n_m/n_max'),
    topSpeed: pace(words`Road speed at the motor’s highest`, 'v_max'),
    topSpeedInHand: pace(words`Road speed at 90 % of it`, 'v_90'),
    ratioAllowed: plain(
      words`Highest ratio of gear and axle together for the wanted speed`,
      'i_90',
    ),
    longest: { type: 'text', label: words`Longest gear` },
    table: {
      type: 'table',
      label: words`Gear by gear`,
      columns: {
        name: { type: 'text', label: words`Gear` },
        ratio: plain(words`Ratio in all`, 'i'),
        rate: rate(words`Motor at the wanted speed`, 'n'),
        share: part(words`Of its highest`, 'n/n_max'),
        most: pace(words`Never faster than`, 'v_i'),
        perThousand: pace(words`Per 1000 rpm`, 'v_1000'),
      },
    },
  },
  formula: [
    String.raw`r = k\,\frac{d}{2}, \qquad d = d_\text{rim} + 2\,w\,a`,
    String.raw`n_m = \frac{v}{2\pi r}\,i_g\,i_a, \qquad v_\text{max} = \frac{2\pi r\,n_\text{max}}{i_g\,i_a}`,
  ],
  validity: [
    words`No slip in tyre, clutch or converter.`,
    words`A tyre size tells the free tyre; wear, pressure and speed move the rolling radius by 2 to 3 %. A size without a ratio is taken as 82 % high.`,
    words`Only speed is worked; whether the motor has the torque is in hill start and road load.`,
  ],
  checks: {
    tyre: { title: words`Tyre known`, basis: 'common practice' },
    speed: {
      title: words`Motor speed at the wanted road speed`,
      basis: 'the motor’s own sheet; 90 %: common practice',
    },
    down: { title: words`Change down`, basis: 'the motor’s own sheet' },
  },
  hazards: ['overspeed', 'moving-vehicle'],
  sources: [
    { title: 'Geometry of the tyre size designation (ISO 4000-1, ETRTO)', trust: 'recalled' },
    { title: 'Rolling without slip', trust: 'model' },
  ],
  compute(input) {
    const radius = radiusOf(input)
    const gears = ordered(input)
    const last = gears.at(-1)
    const total = (gear: Gear) => gear.ratio * input.axleRatio
    const rateIn = (gear: Gear) => radius && (input.speed / radius) * total(gear)
    const mostIn = (gear: Gear) => radius && (input.motorMost * radius) / total(gear)
    const motorRate = last && rateIn(last)
    const topSpeed = last && mostIn(last)
    return {
      radius,
      circumference: radius && 2 * Math.PI * radius,
      wheelRate: radius && input.speed / radius,
      motorRate,
      share: motorRate && motorRate / input.motorMost,
      topSpeed,
      topSpeedInHand: topSpeed && speedInHand * topSpeed,
      ratioAllowed: radius && (speedInHand * input.motorMost * radius) / input.speed,
      longest: last?.name,
      table: gears.map((gear) => {
        const rate = rateIn(gear)
        return {
          name: gear.name,
          ratio: total(gear),
          rate,
          share: rate && rate / input.motorMost,
          most: mostIn(gear),
          perThousand: radius && ((1000 * Math.PI) / 30) * (radius / total(gear)),
        }
      }),
    }
  },
  findings(input, output, say) {
    const tyre = input.tyre === undefined ? undefined : readTyre(input.tyre)
    const unread = input.tyre !== undefined && tyre === undefined
    const fromSize = tyre && (input.rollingShare * tyre.diameter) / 2
    const off =
      fromSize === undefined || input.rollingRadius === undefined
        ? 0
        : Math.abs(input.rollingRadius / fromSize - 1)
    const { radius, share } = output
    const down = output.table.slice(0, -1).filter((row) => (row.share ?? NaN) > 1)
    const level =
      share === undefined
        ? 'unknown'
        : share <= speedInHand
          ? 'pass'
          : share <= 1
            ? 'watch'
            : 'stop'
    const turns = words`At ${say(input.speed, 'km/h')} in ${output.longest ?? ''} the motor turns ${say(output.motorRate, 'rpm')}, ${say(share, '%')} of its highest`
    return [
      {
        check: 'tyre',
        level:
          radius === undefined
            ? 'unknown'
            : unread || off > agree || (tyre?.guessed === true && input.rollingRadius === undefined)
              ? 'watch'
              : 'pass',
        text:
          radius === undefined
            ? input.tyre === undefined
              ? words`Neither tyre size nor rolling radius is given: enter one.`
              : words`“${input.tyre}” does not read as a metric size, so its diameter is not known. Measure the rolling radius.`
            : off > agree
              ? words`The measured radius ${say(radius, 'm')} and the size’s ${say(fromSize, 'm')} are ${say(off, '%', 2)} apart: the measured one counts. Check the measuring and the size.`
              : unread
                ? words`“${input.tyre}” does not read as a metric size; the measured radius counts.`
                : tyre?.guessed === true && input.rollingRadius === undefined
                  ? words`The size names no height, so 82 % of the width is taken: ${say(radius, 'm')}. Measure the rolling radius.`
                  : words`The tyre rolls on a radius of ${say(radius, 'm')}.`,
        threshold: words`size and measured radius within 3 % (watch)`,
      },
      {
        check: 'speed',
        level,
        text:
          level === 'unknown'
            ? words`The motor’s speed cannot be told without the tyre.`
            : level === 'pass'
              ? `${turns}.`
              : level === 'watch'
                ? words`${turns}: a hill or a tailwind takes it over. Limit it in the controller, or gear it ${say(output.ratioAllowed, '')} in all.`
                : words`${turns}: it bursts. Gear it no higher than ${say(output.ratioAllowed, '')} in all, or stay below ${say(output.topSpeedInHand, 'km/h')}.`,
        threshold: words`at most 90 % of the highest motor speed (watch), 100 % (stop)`,
      },
      {
        check: 'down',
        level: radius === undefined ? 'unknown' : down.length > 0 ? 'watch' : 'pass',
        text:
          radius === undefined
            ? words`Changes down cannot be judged without the tyre.`
            : down.length > 0
              ? words`At the wanted speed a wrong change down overspeeds the motor; the wheels force it, no limiter helps. Never faster than ${down.map((row) => words`${say(row.most, 'km/h')} in ${row.name ?? ''}`).join(', ')}: mark it at the lever or lock the gear out.`
              : words`No change down at the wanted speed takes the motor over its highest.`,
        threshold: words`every gear at most 100 % at the wanted speed (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const tyre = input.tyre === undefined ? undefined : readTyre(input.tyre)
    const row = output.table.at(-1)
    if (output.radius === undefined) return [words`Cannot tell: the tyre is not known.`]
    return [
      input.rollingRadius === undefined
        ? `r = k d / 2 = ${say(input.rollingShare, '%')} × ${say(tyre?.diameter, 'mm', 4)} / 2 = ${say(output.radius, 'm', 4)}`
        : words`r = ${say(output.radius, 'm', 4)} (measured)`,
      `n_w = v / (2 π r) = ${say(input.speed, 'km/h')} / (2 π × ${say(output.radius, 'm', 4)}) = ${say(output.wheelRate, 'rpm', 4)}`,
      `n_m = n_w i_g i_a = ${say(output.wheelRate, 'rpm', 4)} × ${say(row?.ratio, '', 4)} = ${say(output.motorRate, 'rpm', 4)}`,
      words`v_max = 2 π r n_max / (i_g i_a) = ${say(output.topSpeed, 'km/h')} at ${say(input.motorMost, 'rpm', 4)}`,
    ]
  },
  plot(input, output) {
    const top = 1.15 * Math.max(input.speed, output.topSpeed ?? 0)
    return {
      title: words`Motor speed against road speed`,
      x: { label: words`Road speed`, of: 'speed', units: ['km/h', 'mph'], fromZero: true },
      y: { label: words`Motor speed`, of: 'angularSpeed', units: ['rpm', 'rpm'], fromZero: true },
      series: output.table.map((row, index) => {
        const most = Math.min(top, 1.15 * (row.most ?? 0))
        return {
          name: row.name ?? '',
          line: (['solid', 'dashed', 'dotted'] as const)[index % 3] ?? 'solid',
          points:
            output.radius === undefined
              ? []
              : [0, most].map((v) => [v, (v / (output.radius ?? 1)) * (row.ratio ?? 0)] as const),
        }
      }),
      marks: [
        { x: 0, y: input.motorMost, label: words`motor’s highest`, kind: 'limit-y' },
        { x: input.speed, y: 0, label: words`wanted`, kind: 'limit-x' },
      ],
      caption: words`A gear whose line has crossed the motor’s limit before the wanted speed must not be engaged there.`,
    }
  },
  examples: [
    {
      // 330.2 + 2 × 155 × 0.8 = 578.2 mm, × π = 1816.47 mm; 100 km/h / 1.81647 m = 917.53 rpm.
      name: '155/80 R 13 at 100 km/h, free circumference',
      from: 'hand: rim + 2 × width × ratio, speed over circumference',
      inputs: {
        tyre: '155/80 R 13',
        rollingShare: '100 %',
        gears: [{ name: 'direct', ratio: '1' }],
        axleRatio: '1',
        motorMost: '4000 rpm',
        speed: '100 km/h',
      },
      outputs: { circumference: '1.81647 m', wheelRate: '917.53 rpm', longest: 'direct' },
      findings: { tyre: 'pass', speed: 'pass', down: 'pass' },
    },
    {
      // Wheel 101.6 cm with 72/23 at 71 km/h: 71 / 3.6 / 0.508 × 3.130435 = 121.534 rad/s = 1160.6 rpm.
      name: 'Regeared from 72/23 to 75/20 and from 101.6 to 106.7 cm wheels',
      from: 'Chakrabarti, A Text Book on Power System Engineering, example 4.6.5: 62.2 km/h at the motor speed of 71 km/h before',
      inputs: {
        rollingRadius: '0.5335 m',
        gears: [{ name: 'fixed', ratio: '1' }],
        axleRatio: '3.75',
        motorMost: '1160.6 rpm',
        speed: '60 km/h',
      },
      outputs: { topSpeed: '62.2 km/h' },
      findings: { tyre: 'pass', speed: 'watch', down: 'pass' },
    },
    {
      // 80 / 3.6 / 0.345 × 3.73 = 240.26 rad/s = 2294 rpm; × 1.68 = 3854; × 2.94 = 6745 rpm, over 6500.
      name: 'Pickup, three gears, 80 km/h',
      from: 'hand: v / r × ratio',
      inputs: {
        tyre: '225/75 R 16',
        rollingRadius: '0.345 m',
        gears: [
          { name: 'first', ratio: '2.94' },
          { name: 'second', ratio: '1.68' },
          { name: 'top', ratio: '1' },
        ],
        axleRatio: '3.73',
        motorMost: '6500 rpm',
        speed: '80 km/h',
      },
      outputs: { motorRate: '2294 rpm' },
      findings: { tyre: 'watch', speed: 'pass', down: 'watch' },
    },
    {
      name: 'Overspeed on an old full-profile size',
      from: 'threshold case',
      inputs: {
        tyre: '155 SR 13',
        gears: [{ name: 'fixed', ratio: '9' }],
        axleRatio: '1',
        motorMost: '8000 rpm',
        speed: '120 km/h',
      },
      outputs: {},
      findings: { tyre: 'watch', speed: 'stop', down: 'pass' },
    },
    {
      name: 'A cross-ply size alone',
      from: 'threshold case',
      inputs: {
        tyre: '6.00-16',
        gears: [{ name: 'fixed', ratio: '1' }],
        axleRatio: '4.1',
        motorMost: '6000 rpm',
        speed: '80 km/h',
      },
      outputs: { motorRate: 'cannot tell' },
      findings: { tyre: 'unknown', speed: 'unknown', down: 'unknown' },
    },
  ],
})
