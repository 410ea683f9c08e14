/**
 * Force on the road at a steady speed, power at motor shaft and battery, consumption and range.
 *
 * kg, m², m/s, K, W, J in and out; grade as rise over run (0.05), wind positive from ahead.
 * Steady speed only: no acceleration, no stops, no energy won back downhill. The motor's continuous
 * rating is held against the *shaft*, the range against the *battery*.
 */
import * as elementary from '../elementary.ts'
import { airDensity, gravity } from '../air.ts'
import { defineCalculator } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Common practice: leave a fifth of the continuous rating, and a fifth of the range. */
const ratingInHand = 0.8
const rangeInHand = 0.8
/** Common practice: watt-hours a mile, per pound of laden mass, of converted vehicles. */
const plausible = { least: 0.07, most: 0.2, rule: words`Wh/mi per lb` } as const
/** Common practice: the rule is for mixed driving; below this speed a lower figure is normal. */
const plausibleFrom = 60 / 3.6

const joulesPerMetreOfRule = (3600 / 1609.344) * (1 / 0.45359237)

interface Road {
  readonly mass: number
  readonly dragCoefficient: number
  readonly frontalArea: number
  readonly rollingResistance: number
  readonly grade: number | undefined
  readonly headwind: number | undefined
  readonly airTemperature: number
  readonly altitude: number
  readonly density: number | undefined
  readonly drivelineEfficiency: number
  readonly motorEfficiency: number
  readonly auxiliary: number
  readonly batteryEnergy: number
  readonly usableShare: number
  readonly routeFactor: number
  readonly winterFactor: number
}

function at(speed: number, road: Road) {
  const angle = elementary.atan(road.grade ?? 0)
  const air = speed + (road.headwind ?? 0)
  const density = road.density ?? airDensity(road.airTemperature, road.altitude)
  const weight = road.mass * gravity
  const dragForce = (density / 2) * road.dragCoefficient * road.frontalArea * air * Math.abs(air)
  const rollingForce = weight * road.rollingResistance * elementary.cos(angle)
  const gradeForce = weight * elementary.sin(angle)
  const force = dragForce + rollingForce + gradeForce
  const shaft = (Math.max(force, 0) * speed) / road.drivelineEfficiency
  const power = shaft / road.motorEfficiency + road.auxiliary
  const driven = force > 0
  const consumption = driven ? power / speed : undefined
  const usable = road.batteryEnergy * road.usableShare
  const range = consumption === undefined ? undefined : usable / (consumption * road.routeFactor)
  const winterRange = range === undefined ? undefined : range / road.winterFactor
  return {
    density,
    dragForce,
    rollingForce,
    gradeForce,
    force,
    shaft,
    power,
    consumption,
    range,
    winterRange,
  }
}

export const roadLoad = defineCalculator({
  id: 'road-load',
  title: words`Road load, consumption and range`,
  phase: 'vehicle',
  purpose: words`What force the road and the air take at a steady speed, what that asks of motor and battery, and how far the pack goes.`,
  inputs: {
    mass: {
      type: 'number',
      label: words`Laden mass`,
      symbol: 'm',
      of: 'mass',
      units: ['kg', 'lb'],
      hard: [100, 10_000],
      usual: [200, 7500],
      help: words`As it rolls, with people and load; a weighbridge ticket beats a brochure.`,
    },
    dragCoefficient: {
      type: 'number',
      label: words`Drag coefficient`,
      symbol: 'Cd',
      of: 'number',
      units: ['', ''],
      hard: [0.1, 1.5],
      usual: [0.25, 1],
      help: words`Saloon 0.22 to 0.4, light van 0.35 to 0.5, old pickup 0.5 to 0.6.`,
    },
    frontalArea: {
      type: 'number',
      label: words`Frontal area`,
      symbol: 'A',
      of: 'area',
      units: ['m²', 'ft²'],
      hard: [0.3, 12],
      usual: [1, 8],
      help: words`About 0.80 to 0.85 of width times height.`,
    },
    rollingResistance: {
      type: 'number',
      label: words`Rolling resistance coefficient`,
      symbol: 'Crr',
      of: 'number',
      units: ['', ''],
      hard: [0.002, 0.1],
      usual: [0.006, 0.03],
      help: words`Passenger tyre about 0.010, light-truck or bias-ply 0.013 to 0.018, at the right pressure.`,
    },
    speed: {
      type: 'number',
      label: words`Steady speed`,
      symbol: 'v',
      of: 'speed',
      units: ['km/h', 'mph'],
      hard: [3, 250],
      usual: [5, 130],
      help: words`The speed to be held, against which the motor’s rating is checked.`,
    },
    speeds: {
      type: 'list',
      label: words`Speeds for the table`,
      row: words`speed`,
      help: words`Left out: a half, three quarters, one and one and a quarter times the steady speed.`,
      rows: [1, 20],
      optional: true,
      fields: {
        name: { type: 'text', label: words`Name`, help: words`What it is: town, lane, main road.` },
        speed: {
          type: 'number',
          label: words`Speed`,
          symbol: 'v_i',
          of: 'speed',
          units: ['km/h', 'mph'],
          hard: [3, 250],
          usual: [5, 130],
          help: words`A steady speed.`,
        },
      },
    },
    grade: {
      type: 'number',
      label: words`Grade`,
      symbol: 'i',
      of: 'fraction',
      units: ['%', '%'],
      hard: [-35, 35],
      usual: [-15, 30],
      help: words`Rise over run, uphill positive. Left out: level.`,
      optional: true,
    },
    headwind: {
      type: 'number',
      label: words`Headwind`,
      symbol: 'w',
      of: 'speed',
      units: ['m/s', 'mph'],
      hard: [-30, 30],
      usual: [-15, 15],
      help: words`From ahead positive, from behind negative. Left out: still air.`,
      optional: true,
    },
    airTemperature: {
      type: 'number',
      label: words`Air temperature`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-60, 60],
      usual: [-30, 45],
      help: words`Cold air is denser and drags more.`,
      assume: { value: 20, because: words`a mild day; air 10 K colder drags 3.5 % more` },
    },
    altitude: {
      type: 'number',
      label: words`Altitude`,
      symbol: 'z',
      of: 'length',
      units: ['m', 'ft'],
      hard: [-430, 6000],
      usual: [0, 3000],
      help: words`Height above the sea; thin air drags less.`,
      assume: { value: 0, because: words`sea level, where the air drags most` },
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
    drivelineEfficiency: {
      type: 'number',
      label: words`Driveline efficiency`,
      symbol: 'η_d',
      of: 'fraction',
      units: ['%', '%'],
      hard: [50, 100],
      usual: [80, 97],
      help: words`Motor shaft to wheels: gearbox, axle, joints.`,
      assume: { value: 90, because: words`with a gearbox and an axle 88 to 93 % is usual` },
    },
    motorEfficiency: {
      type: 'number',
      label: words`Motor and controller efficiency`,
      symbol: 'η_m',
      of: 'fraction',
      units: ['%', '%'],
      hard: [30, 100],
      usual: [60, 95],
      help: words`Battery to motor shaft, both together, at this speed; lower at a crawl.`,
      assume: { value: 85, because: words`at cruise 82 to 90 % is usual` },
    },
    auxiliary: {
      type: 'number',
      label: words`Auxiliary power`,
      symbol: 'P_aux',
      of: 'power',
      units: ['W', 'W'],
      hard: [0, 20_000],
      usual: [0, 5000],
      help: words`From the traction battery for lamps, pumps, heater.`,
      assume: {
        value: 300,
        because: words`lamps, wipers and pumps by day, without a cabin heater`,
      },
    },
    batteryEnergy: {
      type: 'number',
      label: words`Battery energy`,
      symbol: 'E',
      of: 'energy',
      units: ['kWh', 'kWh'],
      hard: [0.5, 500],
      usual: [1, 200],
      help: words`Nominal energy of the whole pack.`,
    },
    usableShare: {
      type: 'number',
      label: words`Usable share`,
      symbol: 'u',
      of: 'fraction',
      units: ['%', '%'],
      hard: [10, 100],
      usual: [50, 95],
      help: words`Share of the nominal energy that is used between full and the lower stop.`,
      assume: { value: 80, because: words`80 to 85 % is the usual window` },
    },
    routeFactor: {
      type: 'number',
      label: words`Route factor`,
      symbol: 'f',
      of: 'number',
      units: ['', ''],
      hard: [1, 3],
      usual: [1, 1.6],
      help: words`How much more the real route takes than this steady speed: stops, hills, wind.`,
      assume: { value: 1.2, because: words`stops and hills usually cost 10 to 30 %` },
    },
    winterFactor: {
      type: 'number',
      label: words`Winter factor`,
      symbol: 'f_w',
      of: 'number',
      units: ['', ''],
      hard: [1, 3],
      usual: [1.1, 1.6],
      help: words`How much more the same trip takes in winter.`,
      assume: {
        value: 1.28,
        because: words`one commute took 211 Wh/mi at 21 °C and 270 Wh/mi at −3 °C`,
      },
    },
    continuousPower: {
      type: 'number',
      label: words`Motor’s continuous power`,
      symbol: 'P_cont',
      of: 'power',
      units: ['kW', 'hp'],
      hard: [0.2, 500],
      usual: [3, 150],
      help: words`At the shaft, for an hour or more, from its sheet; not the peak.`,
      optional: true,
    },
    tripDistance: {
      type: 'number',
      label: words`Distance needed`,
      symbol: 's',
      of: 'length',
      units: ['km', 'mi'],
      hard: [0.5, 2000],
      usual: [5, 300],
      help: words`The longest trip without charging that has to work.`,
      optional: true,
    },
  },
  outputs: {
    force: {
      type: 'number',
      label: words`Force at the wheels`,
      symbol: 'F',
      of: 'force',
      units: ['N', 'lbf'],
    },
    dragForce: {
      type: 'number',
      label: words`Drag of the air`,
      symbol: 'F_air',
      of: 'force',
      units: ['N', 'lbf'],
    },
    rollingForce: {
      type: 'number',
      label: words`Rolling resistance`,
      symbol: 'F_roll',
      of: 'force',
      units: ['N', 'lbf'],
    },
    gradeForce: {
      type: 'number',
      label: words`Force of the grade`,
      symbol: 'F_grade',
      of: 'force',
      units: ['N', 'lbf'],
    },
    airDensity: {
      type: 'number',
      label: words`Air density`,
      symbol: 'ρ',
      of: 'density',
      units: ['kg/m³', 'lb/ft³'],
    },
    shaftPower: {
      type: 'number',
      label: words`Power at the motor shaft`,
      symbol: 'P_m',
      of: 'power',
      units: ['kW', 'hp'],
    },
    batteryPower: {
      type: 'number',
      label: words`Power from the battery`,
      symbol: 'P_b',
      of: 'power',
      units: ['kW', 'kW'],
    },
    consumption: {
      type: 'number',
      label: words`Consumption at this speed`,
      symbol: 'e',
      of: 'consumption',
      units: ['Wh/km', 'Wh/mi'],
    },
    range: { type: 'number', label: words`Range`, symbol: 'R', of: 'length', units: ['km', 'mi'] },
    winterRange: {
      type: 'number',
      label: words`Range in winter`,
      symbol: 'R_w',
      of: 'length',
      units: ['km', 'mi'],
    },
    table: {
      type: 'table',
      label: words`At other speeds`,
      columns: {
        name: { type: 'text', label: words`Case` },
        speed: {
          type: 'number',
          label: words`Speed`,
          symbol: 'v_i',
          of: 'speed',
          units: ['km/h', 'mph'],
        },
        force: {
          type: 'number',
          label: words`Force`,
          symbol: 'F_i',
          of: 'force',
          units: ['N', 'lbf'],
        },
        shaftPower: {
          type: 'number',
          label: words`Shaft`,
          symbol: 'P_mi',
          of: 'power',
          units: ['kW', 'hp'],
        },
        batteryPower: {
          type: 'number',
          label: words`Battery`,
          symbol: 'P_bi',
          of: 'power',
          units: ['kW', 'kW'],
        },
        consumption: {
          type: 'number',
          label: words`Consumption`,
          symbol: 'e_i',
          of: 'consumption',
          units: ['Wh/km', 'Wh/mi'],
        },
        range: {
          type: 'number',
          label: words`Range`,
          symbol: 'R_i',
          of: 'length',
          units: ['km', 'mi'],
        },
        winterRange: {
          type: 'number',
          label: words`In winter`,
          symbol: 'R_wi',
          of: 'length',
          units: ['km', 'mi'],
        },
      },
    },
  },
  formula: [
    String.raw`F = \tfrac{1}{2}\rho\,C_d A\,(v + w)^2 + m g\,C_{rr}\cos\theta + m g\sin\theta, \quad \tan\theta = i`,
    String.raw`P_m = \frac{F v}{\eta_d}, \qquad P_b = \frac{P_m}{\eta_m} + P_{aux}`,
    String.raw`e = \frac{P_b}{v}, \qquad R = \frac{E\,u}{e\,f}, \qquad R_w = \frac{R}{f_w}`,
  ],
  validity: [
    words`Steady speed on a straight road, wind along it; stops, hills and gusts come in through the route factor only.`,
    words`Where the hill pushes the vehicle, no energy is counted as won back and no range is given.`,
    words`Air pressure is the standard atmosphere’s at the altitude, the air is dry; a density that is given wins.`,
    words`Efficiencies fall at low speed and high torque: take them for the speed in question.`,
  ],
  checks: {
    rating: { title: words`Motor’s continuous power`, basis: 'common practice' },
    range: { title: words`Range against need`, basis: 'common practice' },
    plausible: { title: words`Consumption plausible`, basis: 'common practice' },
    driven: { title: words`Vehicle is driven, not pushed`, basis: 'model' },
  },
  hazards: ['range-promise', 'not-approval'],
  sources: [
    {
      title: '40 CFR 1066.210, road-load force of a dynamometer',
      at: 'equation and its variables',
      trust: 'read',
    },
    { title: 'US Standard Atmosphere', edition: '1976', trust: 'recalled' },
  ],
  compute(input) {
    const result = at(input.speed, input)
    const rows =
      input.speeds ??
      [0.5, 0.75, 1, 1.25].map((share) => ({
        name: share === 1 ? words`this speed` : words`${share} × this speed`,
        speed: share * input.speed,
      }))
    return {
      force: result.force,
      dragForce: result.dragForce,
      rollingForce: result.rollingForce,
      gradeForce: result.gradeForce,
      airDensity: result.density,
      shaftPower: result.shaft,
      batteryPower: result.power,
      consumption: result.consumption,
      range: result.range,
      winterRange: result.winterRange,
      table: rows.map(({ name, speed }) => {
        const row = at(speed, input)
        return {
          name,
          speed,
          force: row.force,
          shaftPower: row.shaft,
          batteryPower: row.power,
          consumption: row.consumption,
          range: row.range,
          winterRange: row.winterRange,
        }
      }),
    }
  },
  findings(input, output, say) {
    const shaft = output.shaftPower ?? 0
    const rating = input.continuousPower
    const share = rating === undefined ? undefined : shaft / rating
    const load = words`The shaft gives ${say(shaft, 'kW')}`

    const need = input.tripDistance
    const range = output.range
    const winter = output.winterRange
    const enough = (length: number | undefined) =>
      need !== undefined && length !== undefined && need <= rangeInHand * length

    const still = at(input.speed, { ...input, grade: 0, headwind: 0 }).power / input.speed
    const perPound = (still * input.routeFactor) / (input.mass * joulesPerMetreOfRule)
    const high = perPound > plausible.most
    const low = perPound < plausible.least && input.speed >= plausibleFrom
    const ruled = words`On the level this is ${say(still * input.routeFactor, 'Wh/mi')} with the route factor, ${say(perPound, '', 2)} ${plausible.rule} of laden mass`

    const force = output.force ?? 0
    return [
      {
        check: 'rating',
        level:
          share === undefined
            ? 'unknown'
            : share <= ratingInHand
              ? 'pass'
              : share <= 1
                ? 'watch'
                : 'stop',
        text:
          rating === undefined || share === undefined
            ? words`${load}; the motor’s continuous power is not given. Take it from the sheet, not the peak figure.`
            : share <= ratingInHand
              ? words`${load}, ${say(share, '%')} of its continuous ${say(rating, 'kW')}.`
              : share <= 1
                ? words`${load}, ${say(share, '%')} of its continuous ${say(rating, 'kW')}: nothing is left for headwind or a hill. Hold a lower speed or gear for it.`
                : words`${load}, ${say(share, '%')} of its continuous ${say(rating, 'kW')}: it will overheat or cut back at this speed. Slow down, or choose a larger motor.`,
        threshold: words`at most 80 % of the continuous power (watch), 100 % (stop)`,
      },
      {
        check: 'range',
        level:
          need === undefined || range === undefined || winter === undefined
            ? 'unknown'
            : enough(winter)
              ? 'pass'
              : need > range
                ? 'stop'
                : 'watch',
        text:
          range === undefined
            ? words`There is no range to judge, because the hill pushes the vehicle. Work it out on the level.`
            : need === undefined
              ? words`The range is ${say(range, 'km')}, in winter ${say(winter, 'km')}; the distance needed is not given.`
              : enough(winter)
                ? words`${say(need, 'km')} are needed of ${say(range, 'km')}, in winter of ${say(winter, 'km')}.`
                : need > range
                  ? words`${say(need, 'km')} are needed and the range is ${say(range, 'km')}. Charge on the way, slow down, or fit more cells.`
                  : enough(range)
                    ? words`${say(need, 'km')} are needed of ${say(range, 'km')}, but in winter of ${say(winter, 'km')} only: plan a charge for the cold months.`
                    : words`${say(need, 'km')} are needed of ${say(range, 'km')}: less than a fifth is in hand. Measure the route before relying on it.`,
        threshold: words`at most 80 % of the range, also in winter (watch), 100 % of the range (stop)`,
      },
      {
        check: 'plausible',
        level: high || low ? 'watch' : 'pass',
        text:
          high || low
            ? high
              ? words`${ruled}: more than converted vehicles take. Check mass, area, drag and tyres.`
              : words`${ruled}: less than converted vehicles take. Check mass, area, drag and tyres.`
            : `${ruled}.`,
        threshold: words`${plausible.least} to 0.20 ${plausible.rule} (watch); the lower end from ${say(plausibleFrom, 'km/h')}`,
      },
      {
        check: 'driven',
        level: force > 0 ? 'pass' : 'unknown',
        text:
          force > 0
            ? words`The motor has to push with ${say(force, 'N')} at the wheels.`
            : words`Hill or tailwind push with ${say(-force, 'N')} more than the road takes: consumption and range cannot be told, and energy won back is not counted. Enter a level road.`,
        threshold: words`force at the wheels above ${say(0, 'N', 1)}`,
      },
    ]
  },
  working(input, output, say) {
    const angle = elementary.atan(input.grade ?? 0)
    const air = input.speed + (input.headwind ?? 0)
    const weight = input.mass * gravity
    return [
      `F_air = ½ ρ Cd A (v + w)² = ½ × ${say(output.airDensity, 'kg/m³', 4)} × ${say(input.dragCoefficient, '')} × ${say(input.frontalArea, 'm²')} × (${say(air, 'm/s')})² = ${say(output.dragForce, 'N')}`,
      `F_roll = m g Crr cos θ = ${say(weight, 'N', 4)} × ${say(input.rollingResistance, '')} × ${say(elementary.cos(angle), '', 4)} = ${say(output.rollingForce, 'N')}`,
      `F_grade = m g sin θ = ${say(weight, 'N', 4)} × ${say(elementary.sin(angle), '')} = ${say(output.gradeForce, 'N')}`,
      `F = ${say(output.force, 'N')}`,
      `P_m = F v / η_d = ${say(Math.max(output.force ?? 0, 0), 'N')} × ${say(input.speed, 'm/s')} / ${say(input.drivelineEfficiency, '')} = ${say(output.shaftPower, 'kW')}`,
      `P_b = P_m / η_m + P_aux = ${say(output.shaftPower, 'kW')} / ${say(input.motorEfficiency, '')} + ${say(input.auxiliary, 'W')} = ${say(output.batteryPower, 'kW')}`,
      `e = P_b / v = ${say(output.batteryPower, 'kW')} / ${say(input.speed, 'km/h')} = ${say(output.consumption, 'Wh/km')}`,
      `R = E u / (e f) = ${say(input.batteryEnergy, 'kWh')} × ${say(input.usableShare, '')} / (${say(output.consumption, 'Wh/km')} × ${say(input.routeFactor, '')}) = ${say(output.range, 'km')}`,
      `R_w = R / f_w = ${say(output.range, 'km')} / ${say(input.winterFactor, '')} = ${say(output.winterRange, 'km')}`,
    ]
  },
  plot(input, output) {
    const points = Array.from({ length: 41 }, (_, step) => {
      const speed = input.speed * (0.25 + step / 32)
      return [speed, at(speed, input)] as const
    })
    return {
      title: words`Range against speed`,
      x: { label: words`Steady speed`, of: 'speed', units: ['km/h', 'mph'] },
      y: { label: words`Range`, of: 'length', units: ['km', 'mi'], fromZero: true },
      series: [
        { name: words`range`, line: 'solid', points: points.map(([x, row]) => [x, row.range]) },
        {
          name: words`in winter`,
          line: 'dashed',
          points: points.map(([x, row]) => [x, row.winterRange]),
        },
      ],
      marks: [
        ...(output.range === undefined
          ? []
          : [
              { x: input.speed, y: output.range, label: words`this speed`, kind: 'point' as const },
            ]),
        ...(input.tripDistance === undefined
          ? []
          : [
              {
                x: 0,
                y: input.tripDistance,
                label: words`distance needed`,
                kind: 'limit-y' as const,
              },
            ]),
      ],
      caption: words`Range falls with speed, because the drag of the air grows with its square.`,
    }
  },
  examples: [
    {
      // Crr = 8.69 N / (200 kg × 9.80665 m/s²); CdA = 2 × 0.0252 × 3.6² / 1.204106 kg/m³ in m².
      name: 'Dynamometer table, 200 kg: A = 8.69 N, C = 0.0252 N/(km/h)²',
      from: '40 CFR 86.529-98, figure F98-9, row 200 kg, force at 65 km/h',
      inputs: {
        mass: '200 kg',
        dragCoefficient: '0.542464',
        frontalArea: '1 m²',
        rollingResistance: '0.00443067',
        speed: '65 km/h',
        batteryEnergy: '5 kWh',
        continuousPower: '4 kW',
        tripDistance: '20 km',
      },
      outputs: { force: '115.1 N' },
      tolerance: 0.005,
      why: 'The table rounds its coefficients to three figures.',
      findings: { rating: 'pass', range: 'pass', driven: 'pass' },
    },
    {
      // Crr = 17.43 / (300 × 9.80665); CdA = 2 × 0.0279 × 3.6² / 1.204106.
      name: 'Dynamometer table, 300 kg: A = 17.43 N, C = 0.0279 N/(km/h)²',
      from: '40 CFR 86.529-98, figure F98-9, row 300 kg, force at 65 km/h',
      inputs: {
        mass: '300 kg',
        dragCoefficient: '0.600585',
        frontalArea: '1 m²',
        rollingResistance: '0.00592454',
        speed: '65 km/h',
        batteryEnergy: '5 kWh',
      },
      outputs: { force: '135.4 N' },
      tolerance: 0.005,
      why: 'The table rounds its coefficients to three figures.',
      findings: { rating: 'unknown', range: 'unknown' },
    },
    {
      name: 'Car in a wind tunnel',
      from: 'Cengel and Cimbala, Fluid Mechanics, example 11-1: 300 N at 95 km/h gives Cd 0.35',
      inputs: {
        mass: '1000 kg',
        dragCoefficient: '0.35',
        frontalArea: '2.07 m²',
        rollingResistance: '0.01',
        speed: '95 km/h',
        batteryEnergy: '30 kWh',
      },
      outputs: { dragForce: '300 N' },
      tolerance: 0.013,
      why: 'The book rounds the coefficient 0.3457 up to 0.35.',
    },
    {
      // Weight 1100 × 9.80665 = 10 787.3 N; θ = atan 0.05: cos 0.998752, sin 0.0499376;
      // 10 787.3 × 0.012 × 0.998752 = 129.29; × 0.0499376 = 538.69; ½ × 1.20411 × 0.72 × 13.8889² = 83.62.
      name: 'Saloon on a 5 % grade at 50 km/h',
      from: 'hand: m g (Crr cos θ + sin θ) + ½ ρ CdA v²',
      inputs: {
        mass: '1100 kg',
        dragCoefficient: '0.36',
        frontalArea: '2 m²',
        rollingResistance: '0.012',
        speed: '50 km/h',
        grade: '5 %',
        batteryEnergy: '20 kWh',
      },
      outputs: {
        gradeForce: '538.69 N',
        rollingForce: '129.29 N',
        dragForce: '83.62 N',
        force: '751.60 N',
      },
      findings: { plausible: 'pass' },
    },
    {
      name: 'Rating, range and consumption at fault',
      from: 'threshold case',
      inputs: {
        mass: '1600 kg',
        dragCoefficient: '1.2',
        frontalArea: '6 m²',
        rollingResistance: '0.02',
        speed: '90 km/h',
        batteryEnergy: '20 kWh',
        continuousPower: '20 kW',
        tripDistance: '60 km',
      },
      outputs: {},
      findings: { rating: 'stop', range: 'stop', plausible: 'watch', driven: 'pass' },
    },
    {
      name: 'Down a steep hill',
      from: 'threshold case',
      inputs: {
        mass: '1600 kg',
        dragCoefficient: '0.5',
        frontalArea: '2.5 m²',
        rollingResistance: '0.012',
        speed: '40 km/h',
        grade: '-10 %',
        batteryEnergy: '20 kWh',
        continuousPower: '20 kW',
        tripDistance: '60 km',
      },
      outputs: {},
      findings: { rating: 'pass', range: 'unknown', driven: 'unknown' },
    },
  ],
})
