/**
 * Heat of repeated stops in the brake iron, vacuum left for the servo after the pump stops, and the
 * braking the inspection asks for at the new mass.
 *
 * kg, m/s, J, K, m³, Pa, N in and out. Vacuum is how far the pressure lies below the air's. Each full
 * stroke lets one servo volume of outside air in, which tank and servo then share.
 */
import * as elementary from '../elementary.ts'
import { gravity, standardPressure } from '../air.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { counted } from '../../src/words/counted.ts'
import { words } from '../../src/words/words.ts'

/** Common practice: iron above this, K: linings fade, then glaze and boil the fluid. */
const hot = { pass: 573.15, stop: 673.15 } as const
/** Common practice: vacuum left after three full strokes, Pa. */
const vacuumLeft = 40_000
const strokes = 3
/** Servo makers' 16 to 18 inHg, Pa. */
const supply = { stop: 54_000, pass: 61_000 } as const
/** Workshop manual: 1 inHg in 15 s, Pa; twice that is a leak to be found first. */
const leakMost = 3300
/** The same manual starts from 20 inHg, Pa. */
const leakFrom = 66_700
/** Common practice: share of the air's own pressure a vacuum pump reaches. */
const reachable = 0.9
/** UK MOT inspection manual; 50 % for older vehicles is recalled. */
const service = { later: 0.58, earlier: 0.5 } as const
const parkingLeast = 0.16

const vacuum = (label: string, symbol: string, help: string, usual: readonly [number, number]) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'pressure',
    units: ['kPa', 'inHg'],
    hard: [0, 100],
    usual,
    help,
    optional: true,
  }) as const
const brakeForce = (label: string, symbol: string, help: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'force',
    units: ['N', 'lbf'],
    hard: [0, 200_000],
    usual: [500, 20_000],
    help,
    optional: true,
  }) as const
const iron = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [0.5, 200],
    usual: [4, 40],
    help: words`Discs or drums of both wheels, the rubbed part only; weigh one worn to its limit.`,
  }) as const

const inputs = {
  mass: {
    type: 'number',
    label: words`Laden mass after the conversion`,
    symbol: 'm',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [100, 20_000],
    usual: [400, 5000],
    help: words`As the inspection weighs it, or heavier.`,
  },
  speed: {
    type: 'number',
    label: words`Speed of the stops`,
    symbol: 'v',
    of: 'speed',
    units: ['km/h', 'mph'],
    hard: [5, 250],
    usual: [40, 130],
    help: words`The highest it is driven at.`,
    choice: true,
  },
  stops: {
    type: 'number',
    label: words`Stops one after the other`,
    symbol: 'n',
    of: 'number',
    units: ['', ''],
    hard: [1, 20],
    usual: [1, 10],
    help: words`Without time to cool; regeneration does not count, it may be off.`,
    assume: { value: 3, because: words`a fast road with a jam` },
  },
  frontIron: iron(words`Iron of the front brakes`, 'm_f'),
  rearIron: iron(words`Iron of the rear brakes`, 'm_r'),
  frontPart: {
    type: 'number',
    label: words`Braking done by the front`,
    symbol: 'β',
    of: 'fraction',
    units: ['%', '%'],
    hard: [5, 95],
    usual: [50, 85],
    help: words`From the roller test at full pedal.`,
    assume: {
      value: 70,
      because: words`a car with its engine in front; the conversion may lower it`,
    },
  },
  specificHeat: {
    type: 'number',
    label: words`Specific heat of the iron`,
    symbol: 'c',
    of: 'specificHeat',
    units: ['kJ/(kg·K)', 'BTU/(lb·Δ°F)'],
    hard: [0.3, 1],
    usual: [0.42, 0.9],
    help: words`Grey iron 0.46; an aluminium drum’s liner counts as iron.`,
    assume: { value: 0.46, because: words`grey cast iron` },
  },
  startTemperature: {
    type: 'number',
    label: words`Brakes warm from before`,
    symbol: 'T_0',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-40, 400],
    usual: [20, 150],
    help: words`Before the first stop.`,
    assume: { value: 50, because: words`ordinary driving on a hot day` },
  },
  servo: {
    type: 'choice',
    label: words`Brake servo`,
    help: words`An electric servo and plain hydraulics need no vacuum.`,
    options: { vacuum: words`vacuum servo`, none: words`none, or not by vacuum` },
    choice: true,
  },
  tank: {
    type: 'number',
    label: words`Vacuum tank`,
    symbol: 'V_t',
    of: 'volume',
    units: ['L', 'qt'],
    hard: [0, 30],
    usual: [0.5, 8],
    help: words`With hoses and the servo’s front chamber.`,
    optional: true,
    choice: true,
  },
  servoVolume: {
    type: 'number',
    label: words`Servo volume of a full stroke`,
    symbol: 'V_s',
    of: 'volume',
    units: ['L', 'qt'],
    hard: [0.05, 15],
    usual: [0.8, 5],
    help: words`Area of the diaphragm times its stroke; both diaphragms of a tandem.`,
    optional: true,
  },
  cutIn: vacuum(
    words`Pump starts at`,
    'p_in',
    words`Vacuum at the switch: the worst moment to lose the pump.`,
    [45, 70],
  ),
  cutOut: vacuum(words`Pump stops at`, 'p_out', words`Vacuum at which the switch opens.`, [55, 85]),
  leak: vacuum(
    words`Vacuum lost in 15 s, pump off`,
    'Δp',
    words`From 66.7 kPa (20 inHg), brakes released.`,
    [0, 10],
  ),
  altitude: {
    type: 'number',
    label: words`Highest road`,
    symbol: 'z',
    of: 'length',
    units: ['m', 'ft'],
    hard: [-430, 6000],
    usual: [0, 3000],
    help: words`Thin air gives a pump less to work with.`,
    assume: { value: 0, because: words`near sea level` },
  },
  frontForce: brakeForce(
    words`Roller reading, front axle`,
    'F_f',
    words`Both front wheels together, service brake.`,
  ),
  rearForce: brakeForce(
    words`Roller reading, rear axle`,
    'F_r',
    words`Both rear wheels together, service brake.`,
  ),
  parkForce: brakeForce(words`Roller reading, parking brake`, 'F_p', words`Both wheels together.`),
  firstUsed: {
    type: 'choice',
    label: words`First used`,
    help: words`The British inspection asks more of younger cars; ask what applies to yours.`,
    options: { earlier: words`before September 2010`, later: words`from September 2010` },
    assume: { value: 'earlier', because: words`an old donor` },
  },
} as const

type Inputs = InputValues<typeof inputs>

/** Vacuum after a number of full strokes without the pump. */
function after(count: number, input: Inputs): number | undefined {
  const { tank, servoVolume, cutIn } = input
  if (tank === undefined || servoVolume === undefined || cutIn === undefined) return undefined
  return startingVacuum(cutIn, input) * (tank / (tank + servoVolume)) ** count
}

/** No pump makes more vacuum than there is air. */
const startingVacuum = (wanted: number, input: Inputs): number =>
  Math.min(wanted, reachable * standardPressure(input.altitude))

const rise = (part: number, mass: number, input: Inputs): number =>
  (part * input.stops * input.mass * input.speed ** 2) / (2 * mass * input.specificHeat)

const temperature = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'temperature',
    units: ['°C', '°F'],
  }) as const satisfies NumberOutput
const difference = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'temperatureDifference',
    units: ['K', 'Δ°F'],
  }) as const satisfies NumberOutput
const fraction = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'fraction',
    units: ['%', '%'],
  }) as const satisfies NumberOutput
const depth = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'pressure',
    units: ['kPa', 'inHg'],
  }) as const satisfies NumberOutput

export const brakeEnergy = defineCalculator({
  id: 'brake-energy',
  title: words`Brake heat, vacuum reserve and braking`,
  phase: 'vehicle',
  purpose: words`How hot the brakes get at the new mass, whether the servo has vacuum for three stops without its pump, and whether the roller readings satisfy the inspection.`,
  inputs,
  outputs: {
    energy: {
      type: 'number',
      label: words`Energy of one stop`,
      symbol: 'E',
      of: 'energy',
      units: ['kJ', 'BTU'],
    },
    frontRise: difference(words`Front warms by`, 'ΔT_f'),
    rearRise: difference(words`Rear warms by`, 'ΔT_r'),
    frontTemperature: temperature(words`Front brakes after it`, 'T_f'),
    rearTemperature: temperature(words`Rear brakes after it`, 'T_r'),
    vacuumStart: depth(words`Vacuum when the pump is lost`, 'p_0'),
    vacuumLeft: depth(words`Vacuum after three full strokes`, 'p_3'),
    fullStrokes: {
      type: 'number',
      label: words`Full strokes down to 40 kPa`,
      symbol: 'n_40',
      of: 'number',
      units: ['', ''],
      exact: true,
    },
    tankNeeded: {
      type: 'number',
      label: words`Tank needed for three`,
      symbol: 'V_n',
      of: 'volume',
      units: ['L', 'qt'],
    },
    airPressure: {
      type: 'number',
      label: words`Air pressure at the highest road`,
      symbol: 'p_a',
      of: 'absolutePressure',
      units: ['kPa abs', 'psi abs'],
    },
    efficiency: fraction(words`Braking efficiency at the new mass`, 'η_b'),
    frontMeasured: fraction(words`Front’s part on the roller`, 'β_m'),
    forceMissing: {
      type: 'number',
      label: words`Roller reading missing`,
      symbol: 'F_m',
      of: 'force',
      units: ['N', 'lbf'],
    },
    parking: fraction(words`Parking brake at the new mass`, 'η_p'),
    table: {
      type: 'table',
      label: words`Stroke by stroke without the pump`,
      columns: {
        stroke: {
          type: 'number',
          label: words`Full strokes`,
          symbol: 'n_i',
          of: 'number',
          units: ['', ''],
          exact: true,
        },
        left: depth(words`Vacuum left`, 'p_i'),
      },
    },
  },
  formula: [
    String.raw`E = \tfrac{1}{2} m v^2, \qquad \Delta T_f = \frac{n\,\beta\,E}{m_f\,c}, \qquad \Delta T_r = \frac{n\,(1-\beta)\,E}{m_r\,c}`,
    String.raw`p_n = p_0\left(\frac{V_t}{V_t + V_s}\right)^n, \qquad \eta_b = \frac{F_f + F_r}{m g}`,
  ],
  validity: [
    words`All energy goes into the iron and none into air, tyres or motor: the worst case of stops in quick succession. A long descent is not covered.`,
    words`Full strokes, slow enough that the air keeps its temperature; half strokes take half.`,
    words`The roller shows what locks on its drums; a decelerometer on the road may show more.`,
    words`Percentages are those of the British inspection as a yardstick; the local one decides.`,
  ],
  checks: {
    heat: { title: words`Brake temperature`, basis: 'common practice' },
    reserve: { title: words`Vacuum after three strokes`, basis: 'common practice' },
    supply: {
      title: words`Vacuum when the pump starts`,
      basis: 'published: brake-trade notes, 16 to 18 inHg',
    },
    height: { title: words`Pump reaches its cut-out`, basis: 'common practice' },
    leak: {
      title: words`Vacuum leak`,
      basis:
        'published: workshop manuals, 3.3 kPa (1 inHg) in 15 s; common practice for twice that',
    },
    service: {
      title: words`Service brake`,
      basis:
        'published: UK MOT inspection (change of June 2013), 58 % for cars first used from September 2010; 50 % for older vehicles recalled',
    },
    parking: { title: words`Parking brake`, basis: 'published: UK MOT inspection, 16 %' },
  },
  hazards: ['brakes', 'not-approval'],
  sources: [
    {
      title: 'MOT inspection manual, cars, section 1',
      edition: 'changes of 2013',
      at: 'brake performance',
      trust: 'read',
    },
    { title: 'OpenStax, College Physics', at: 'example 14.2, brakes of a truck', trust: 'read' },
    { title: 'Boyle’s law for tank and servo', trust: 'model' },
    { title: 'Workshop manuals: servo supply and leak test', trust: 'read' },
  ],
  compute(input) {
    const frontRise = rise(input.frontPart, input.frontIron, input)
    const rearRise = rise(1 - input.frontPart, input.rearIron, input)
    const usesVacuum = input.servo === 'vacuum'
    const start =
      usesVacuum && input.cutIn !== undefined ? startingVacuum(input.cutIn, input) : undefined
    const keep =
      input.tank !== undefined && input.servoVolume !== undefined
        ? input.tank / (input.tank + input.servoVolume)
        : undefined
    const part =
      start === undefined || !(start > vacuumLeft)
        ? undefined
        : (vacuumLeft / start) ** (1 / strokes)
    const fullStrokes =
      start === undefined || keep === undefined
        ? undefined
        : start < vacuumLeft
          ? 0
          : keep > 0
            ? Math.min(
                Math.floor(elementary.log(vacuumLeft / start) / elementary.log(keep) + 1e-9),
                99,
              )
            : 0
    const { frontForce, rearForce, parkForce } = input
    const weight = input.mass * gravity
    const total =
      frontForce === undefined || rearForce === undefined ? undefined : frontForce + rearForce
    return {
      energy: (input.mass * input.speed ** 2) / 2,
      frontRise,
      rearRise,
      frontTemperature: input.startTemperature + frontRise,
      rearTemperature: input.startTemperature + rearRise,
      vacuumStart: start,
      vacuumLeft: usesVacuum ? after(strokes, input) : undefined,
      fullStrokes,
      tankNeeded:
        part === undefined || input.servoVolume === undefined
          ? undefined
          : (input.servoVolume * part) / (1 - part),
      airPressure: standardPressure(input.altitude),
      efficiency: total === undefined ? undefined : total / weight,
      frontMeasured: frontForce === undefined || !total ? undefined : frontForce / total,
      forceMissing:
        total === undefined ? undefined : Math.max(service[input.firstUsed] * weight - total, 0),
      parking: parkForce === undefined ? undefined : parkForce / weight,
      table: usesVacuum
        ? [0, 1, 2, 3, 4, 5, 6].map((stroke) => ({ stroke, left: after(stroke, input) }))
        : [],
    }
  },
  findings(input, output, say) {
    const front = output.frontTemperature ?? 0
    const rear = output.rearTemperature ?? 0
    const hottest = Math.max(front, rear)
    const [stops, speed, warmth] = [input.stops, say(input.speed, 'km/h'), say(hottest, '°C')]
    const heats =
      front >= rear
        ? counted(
            stops,
            words`${stops} stop from ${speed} takes the front brakes to ${warmth}`,
            words`${stops} stops from ${speed} take the front brakes to ${warmth}`,
          )
        : counted(
            stops,
            words`${stops} stop from ${speed} takes the rear brakes to ${warmth}`,
            words`${stops} stops from ${speed} take the rear brakes to ${warmth}`,
          )
    const heat = hottest <= hot.pass ? 'pass' : hottest <= hot.stop ? 'watch' : 'stop'

    const none = input.servo !== 'vacuum'
    const noServo = words`There is no vacuum servo.`
    const left = output.vacuumLeft
    // A vacuum gauge has inches of mercury on it where pressures are in psi.
    const suction = (value: number | undefined, figures?: number) =>
      [...new Set([say(value, 'kPa', figures), say(value, 'inHg', figures)])].join(', ')
    const start = input.cutIn
    const air = output.airPressure ?? 0
    const most = input.cutOut
    const leak = input.leak
    const eff = output.efficiency
    const least = service[input.firstUsed]
    const switched = none
      ? undefined
      : wrongWay(say, 'kPa', [words`pump’s start`, input.cutIn], [words`pump’s stop`, input.cutOut])
    const brakes =
      eff === undefined ? 'unknown' : eff < least ? 'stop' : eff < service.later ? 'watch' : 'pass'
    const park = output.parking
    return [
      {
        check: 'heat',
        level: heat,
        text: `${heats}.${heat === 'pass' ? '' : ` ${words`Linings fade there. Fit larger or vented discs, drive slower, or carry less; do not count on regeneration.`}`}`,
        threshold: words`at most ${say(hot.pass, '°C')} (watch), ${say(hot.stop, '°C')} (stop)`,
      },
      {
        check: 'reserve',
        level: none
          ? 'pass'
          : left === undefined
            ? 'unknown'
            : left >= vacuumLeft
              ? 'pass'
              : 'stop',
        text: none
          ? noServo
          : left === undefined
            ? words`Tank, servo volume or the pump’s starting point is not given: the reserve cannot be told.`
            : left >= vacuumLeft
              ? words`After three full strokes without the pump ${suction(left)} are left.`
              : words`After three full strokes without the pump only ${suction(left)} are left and the pedal goes hard. ${output.tankNeeded === undefined ? words`Let the pump start at more vacuum.` : words`Fit a tank of ${say(output.tankNeeded, 'L')} or more, with a check valve.`}`,
        threshold: words`at least ${suction(vacuumLeft, 2)} after three full strokes (stop)`,
      },
      {
        check: 'supply',
        ...heeding(
          {
            level: none
              ? 'pass'
              : start === undefined
                ? 'unknown'
                : start >= supply.pass
                  ? 'pass'
                  : start >= supply.stop
                    ? 'watch'
                    : 'stop',
            text: none
              ? noServo
              : start === undefined
                ? words`The vacuum at which the pump starts is not given.`
                : start >= supply.pass
                  ? words`The pump starts at ${suction(start)}.`
                  : start >= supply.stop
                    ? words`The pump starts at ${suction(start)}, the low end of what servos are made for. Set it to ${suction(supply.pass, 2)} if the pump allows.`
                    : words`The pump starts at ${suction(start)}: the servo runs below what it is made for. Set the switch higher.`,
          },
          switched,
        ),
        threshold: words`at least ${suction(supply.pass, 2)} (watch), ${suction(supply.stop, 2)} (stop)`,
      },
      {
        check: 'height',
        level: none
          ? 'pass'
          : most === undefined
            ? 'unknown'
            : most >= air
              ? 'stop'
              : most > reachable * air
                ? 'watch'
                : 'pass',
        text: none
          ? noServo
          : most === undefined
            ? words`The vacuum at which the pump stops is not given.`
            : most > reachable * air
              ? most >= air
                ? words`The pump stops at ${suction(most)}, but the air has only ${say(air, 'kPa abs')} at ${say(input.altitude, 'm')}: it never stops and burns out. Set it lower or fit a time limit with a warning.`
                : words`The pump stops at ${suction(most)}, but the air has only ${say(air, 'kPa abs')} at ${say(input.altitude, 'm')}: it may not stop. Set it lower or fit a time limit with a warning.`
              : words`The pump stops at ${suction(most)}, ${say(most / air, '%')} of the air’s pressure at the highest road.`,
        threshold: words`cut-out at most 90 % of the air’s pressure there (watch), 100 % (stop)`,
      },
      {
        check: 'leak',
        level: none
          ? 'pass'
          : leak === undefined
            ? 'unknown'
            : leak <= leakMost
              ? 'pass'
              : leak <= 2 * leakMost
                ? 'watch'
                : 'stop',
        text: none
          ? noServo
          : leak === undefined
            ? words`The leak test is not done yet: pump to ${suction(leakFrom)}, stop it, and read the gauge after 15 s.`
            : leak <= leakMost
              ? words`The system loses ${suction(leak)} in 15 s.`
              : words`The system loses ${suction(leak)} in 15 s: find the leak at check valve, hoses and servo before driving.`,
        threshold: words`at most ${suction(leakMost, 2)} in 15 s (watch), twice that (stop)`,
      },
      {
        check: 'service',
        level: brakes,
        text:
          eff === undefined
            ? words`Roller readings of both axles are not given: have the brakes tested at the new mass.`
            : brakes === 'pass'
              ? words`The service brake reaches ${say(eff, '%')} of the new weight.`
              : brakes === 'watch'
                ? words`The service brake reaches ${say(eff, '%')} of the new weight: enough for an old vehicle only, and less than a younger one has to show.`
                : words`The service brake reaches ${say(eff, '%')} of the new weight and ${say(least, '%', 2)} are asked: ${say(output.forceMissing, 'N')} are missing. Uprate the brakes before the road.`,
        threshold: words`at least 58 % (watch), ${say(least, '%', 2)} (stop)`,
      },
      {
        check: 'parking',
        level: park === undefined ? 'unknown' : park >= parkingLeast ? 'pass' : 'stop',
        text:
          park === undefined
            ? words`The parking brake’s reading is not given. A motor does not hold a parked vehicle.`
            : park >= parkingLeast
              ? words`The parking brake reaches ${say(park, '%')} of the new weight.`
              : words`The parking brake reaches only ${say(park, '%')} of the new weight. Adjust or uprate it: a motor does not hold a parked vehicle.`,
        threshold: words`at least 16 % (stop)`,
      },
    ]
  },
  working(input, output, say) {
    return [
      `E = ½ m v² = ½ × ${say(input.mass, 'kg', 4)} × (${say(input.speed, 'm/s')})² = ${say(output.energy, 'kJ')}`,
      `ΔT_f = n β E / (m_f c) = ${input.stops} × ${say(input.frontPart, '%')} × ${say(output.energy, 'kJ')} / (${say(input.frontIron, 'kg')} × ${say(input.specificHeat, 'kJ/(kg·K)')}) = ${say(output.frontRise, 'K')}`,
      `ΔT_r = n (1 − β) E / (m_r c) = ${say(output.rearRise, 'K')}`,
      ...(output.vacuumLeft !== undefined
        ? [
            `p_3 = p_0 (V_t / (V_t + V_s))³ = ${say(output.vacuumStart, 'kPa')} × (${say(input.tank, 'L')} / (${say(input.tank, 'L')} + ${say(input.servoVolume, 'L')}))³ = ${say(output.vacuumLeft, 'kPa')}`,
          ]
        : []),
      `η_b = (F_f + F_r) / (m g) = ${say(output.efficiency, '%')}`,
    ]
  },
  plot(input, output) {
    if (output.table.some(({ left }) => left !== undefined))
      return {
        title: words`Vacuum without the pump`,
        x: { label: words`Full strokes`, of: 'number', units: ['', ''] },
        y: { label: words`Vacuum left`, of: 'pressure', units: ['kPa', 'inHg'], fromZero: true },
        series: [
          {
            name: words`vacuum left`,
            line: 'solid',
            points: output.table.map(({ stroke, left }) => [stroke ?? 0, left] as const),
          },
        ],
        marks: [{ x: 0, y: vacuumLeft, label: words`servo still helps`, kind: 'limit-y' }],
        caption: words`Each full stroke takes the same share of what is left; a larger tank makes the share smaller.`,
      }
    const heated = (perRun: number | undefined) =>
      [0, 1, 2, 3, 4, 5, 6].map(
        (stop) => [stop, input.startTemperature + (stop * (perRun ?? 0)) / input.stops] as const,
      )
    return {
      title: words`Brake temperature, stop after stop`,
      x: { label: words`Stops`, of: 'number', units: ['', ''] },
      y: { label: words`Iron`, of: 'temperature', units: ['°C', '°F'] },
      series: [
        { name: words`front`, line: 'solid', points: heated(output.frontRise) },
        { name: words`rear`, line: 'dashed', points: heated(output.rearRise) },
      ],
      marks: [{ x: 0, y: hot.pass, label: words`linings fade`, kind: 'limit-y' }],
      caption: words`Without time to cool every stop adds the same rise.`,
    }
  },
  examples: [
    {
      // The book’s 75 m of height are ½ v² = 9.8 × 75: v = 38.3406 m/s. All heat in 100 kg of 800 J/(kg·K).
      // Split 50/50 over 50 kg each it is the same rise.
      name: 'Truck of 10 t, 7.35 MJ into 100 kg of brakes',
      from: 'OpenStax, College Physics, example 14.2: 92 K',
      inputs: {
        mass: '10000 kg',
        speed: '38.3406 m/s',
        stops: '1',
        frontIron: '50 kg',
        rearIron: '50 kg',
        frontPart: '50 %',
        specificHeat: '0.8 kJ/(kg·K)',
        startTemperature: '10 °C',
        servo: 'none',
      },
      outputs: { frontRise: '92 K', energy: '7350 kJ' },
      findings: { heat: 'pass', reserve: 'pass', service: 'unknown', parking: 'unknown' },
    },
    {
      // ½ × 2143 × 22.2222² = 529.1 kJ; × 3 × 0.7 / (14 × 460) = 172.5 K.
      // Vacuum 65 × (3 / 5)³ = 14.0 kPa; tank: (40/65)^(1/3) = 0.85059; 2 × 0.85059 / 0.14941 = 11.4 L.
      // (7000 + 4000) / (2143 × 9.80665 = 21 015.7) = 52.3 %; 3000 / 21 015.7 = 14.3 %.
      name: 'Pickup of 2143 kg, small vacuum tank',
      from: 'hand: ½ m v², Boyle’s law, force over weight',
      inputs: {
        mass: '2143 kg',
        speed: '80 km/h',
        frontIron: '14 kg',
        rearIron: '10 kg',
        servo: 'vacuum',
        tank: '3 L',
        servoVolume: '2 L',
        cutIn: '65 kPa',
        cutOut: '75 kPa',
        leak: '2 kPa',
        frontForce: '7000 N',
        rearForce: '4000 N',
        parkForce: '3000 N',
      },
      outputs: {
        energy: '529.1 kJ',
        frontRise: '172.5 K',
        vacuumLeft: '14.0 kPa',
        tankNeeded: '11.4 L',
        efficiency: '52.3 %',
        parking: '14.3 %',
        fullStrokes: '0',
      },
      findings: {
        heat: 'pass',
        reserve: 'stop',
        supply: 'pass',
        height: 'pass',
        leak: 'pass',
        service: 'watch',
        parking: 'stop',
      },
    },
    {
      name: 'Large tank, on a pass at 2500 m, hot brakes, younger car',
      from: 'threshold case',
      inputs: {
        mass: '1800 kg',
        speed: '120 km/h',
        frontIron: '10 kg',
        rearIron: '7 kg',
        servo: 'vacuum',
        tank: '12 L',
        servoVolume: '1.5 L',
        cutIn: '58 kPa',
        cutOut: '76 kPa',
        leak: '8 kPa',
        altitude: '2500 m',
        frontForce: '6000 N',
        rearForce: '3500 N',
        parkForce: '4000 N',
        firstUsed: 'later',
      },
      outputs: { forceMissing: '738 N' },
      findings: {
        heat: 'stop',
        reserve: 'pass',
        supply: 'watch',
        height: 'stop',
        leak: 'stop',
        service: 'stop',
        parking: 'pass',
      },
    },
    {
      name: 'Strong brakes, servo not measured',
      from: 'threshold case',
      inputs: {
        mass: '900 kg',
        speed: '80 km/h',
        frontIron: '10 kg',
        rearIron: '8 kg',
        servo: 'vacuum',
        frontForce: '4000 N',
        rearForce: '2000 N',
      },
      outputs: { vacuumLeft: 'cannot tell' },
      findings: {
        heat: 'pass',
        reserve: 'unknown',
        supply: 'unknown',
        height: 'unknown',
        leak: 'unknown',
        service: 'pass',
      },
    },
  ],
})
