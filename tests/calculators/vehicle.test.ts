/**
 * What must hold for any vehicle in axle balance, gearing, hill start, regeneration, brakes and air:
 * moments, rolling without slip, balance of forces, energy, and tables of the outside world.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gravity, moistDensity, standardTemperature } from '../../calculators/air.ts'
import { standardAtmosphere } from '../../calculators/tables/standard-atmosphere.ts'
import { tyreSizes } from '../../calculators/tables/tyre-sizes.ts'
import { readTyre } from '../../calculators/tyres.ts'
import { axleBalance } from '../../calculators/vehicle/axle-balance.ts'
import { brakeEnergy } from '../../calculators/vehicle/brake-energy.ts'
import { gearing } from '../../calculators/vehicle/gearing.ts'
import { hillStart } from '../../calculators/vehicle/hill-start.ts'
import { regenLimit } from '../../calculators/vehicle/regen-limit.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('air', () => {
  // Gas laws with the saturation pressure of IAPWS-IF97.
  test.each([
    [20, 0.5, 1.198852],
    [35, 0.8, 1.126249],
  ])('moist air at %s °C and %s', (celsius, humidity, density) => {
    expect(moistDensity(celsius + 273.15, 101_325, humidity) / density).toBeCloseTo(1, 5)
  })

  test.each(rowsOf('atmosphere_1976.csv'))('standard temperature at $Z_m m', (row) => {
    expect(standardTemperature(numberIn(row, 'Z_m'))).toBeCloseTo(numberIn(row, 'T_K'), 2)
  })

  test('the printed atmosphere agrees with the outside table', () => {
    const outside = new Map(rowsOf('atmosphere_1976.csv').map((row) => [numberIn(row, 'Z_m'), row]))
    const shared = standardAtmosphere.rows.filter(([height]) => outside.has(Number(height)))
    expect(shared.length).toBeGreaterThan(6)
    for (const [height, celsius, pressure, density] of shared) {
      const row = outside.get(Number(height)) ?? {}
      expect(Number(celsius) + 273.15).toBeCloseTo(numberIn(row, 'T_K'), 1)
      expect(Number(pressure)).toBeCloseTo(numberIn(row, 'P_Pa') / 1000, 1)
      expect(Number(density)).toBeCloseTo(numberIn(row, 'rho_kg_m3'), 3)
    }
  })
})

describe('tyres', () => {
  test.each(rowsOf('tyres.csv'))('$size', (row) => {
    const size = row.size ?? ''
    const diameter = (readTyre(size)?.diameter ?? NaN) * 1000
    expect(diameter).toBeCloseTo(numberIn(row, 'OD_mm'), 6)
    expect(Math.PI * diameter).toBeCloseTo(numberIn(row, 'circumference_mm'), 1)
    const { wheelRate = NaN } = gearing.compute({
      tyre: size,
      rollingRadius: undefined,
      rollingShare: 1,
      gears: [{ name: 'direct', ratio: 1 }],
      axleRatio: 1,
      motorMost: 500,
      speed: 100 / 3.6,
    })
    expect((wheelRate * 30) / Math.PI).toBeCloseTo(numberIn(row, 'wheel_rpm_at_100_km_h'), 1)
  })

  test.each([
    ['155/80R13', 578.2],
    ['155 / 80 R 13 79T', 578.2],
    ['P205/55R16 91V', 631.9],
    ['LT235/75R15', 733.5],
    ['185R14', 659],
    ['155 SR 13', 584.4],
    ['31x10.50R15LT', 787.4],
    ['31×10.50 R 15', 787.4],
  ])('reads %s', (text, diameter) => {
    expect((readTyre(text)?.diameter ?? NaN) * 1000).toBeCloseTo(diameter, 6)
  })

  test.each([
    '6.00-16',
    '5.20-10',
    '',
    'tyre',
    '155',
    '999/80 R 13',
    '155/80 R 99',
    '1155/80 R 13',
  ])('does not guess “%s”', (text) => expect(readTyre(text)).toBeUndefined())

  test.each([
    ['100/80 R 10', true],
    ['095/80 R 10', false],
    ['400/50 R 20', true],
    ['405/50 R 20', false],
    ['401/50 R 20', false],
    ['255/25 R 20', true],
    ['255/24 R 20', false],
    ['155/105 R 13', true],
    ['155/106 R 13', false],
    ['155/80 R 08', true],
    ['155/80 R 07', false],
    ['315/40 R 24', true],
    ['315/40 R 25', false],
    ['16 x 6.5 - 08', true],
    ['16 x 6.5 - 07', false],
    ['31 x 10.5 R 15', true],
  ])('%s is a size: %s', (size, plausible) => {
    expect(readTyre(size) !== undefined).toBe(plausible)
  })

  test('the table has a diameter for every size', () => {
    for (const row of tyreSizes.rows) expect(Number(row[1])).toBeGreaterThan(400)
  })
})

test('axles: mass on an axle stays there, mass between them splits by its place', () => {
  fc.assert(
    fc.property(
      number(1.5, 4),
      number(200, 1500),
      number(200, 1500),
      number(10, 400),
      number(0, 1),
      (wheelbase, front, rear, mass, share) => {
        const after = axleBalance.compute({
          wheelbase,
          frontBefore: front,
          rearBefore: rear,
          heightBefore: 0.6,
          removed: undefined,
          added: [{ name: 'box', mass, x: share * wheelbase, z: 0.6 }],
          load: undefined,
          frontRating: undefined,
          rearRating: undefined,
          grossRating: undefined,
          frontTyre: undefined,
          rearTyre: undefined,
          rearWheels: 'single',
        })
        expect(after.rearEmpty).toBeCloseTo(rear + share * mass, 6)
        expect(after.frontEmpty).toBeCloseTo(front + (1 - share) * mass, 6)
        expect(after.heightEmpty).toBeCloseTo(0.6, 9)
        expect((after.positionEmpty ?? NaN) * (after.kerb ?? NaN)).toBeCloseTo(
          (after.rearEmpty ?? NaN) * wheelbase,
          5,
        )
      },
    ),
  )
})

type Hill = Parameters<typeof hillStart.compute>[0]
const hill: Hill = {
  mass: 1500,
  rollingRadius: 0.3,
  gears: [
    { name: 'first', ratio: 3 },
    { name: 'second', ratio: 1.6 },
  ],
  axleRatio: 4,
  peakTorque: 150,
  peakPower: 50_000,
  motorMost: 900,
  continuousPower: 25_000,
  startGrade: 0.2,
  climbGrade: 0.06,
  climbSpeed: 50 / 3.6,
  dragArea: 1,
  rollingResistance: 0.014,
  drivelineEfficiency: 0.9,
  altitude: 0,
  airTemperature: 293.15,
  density: undefined,
  drivenAxle: 'rear',
  drivenShare: 0.5,
  heightShare: 0.23,
  grip: 0.5,
}

test('hill: started on the grade it names, the torque is just used up; the ratio it names just starts', () => {
  fc.assert(
    fc.property(
      number(400, 3500),
      number(0.005, 0.05),
      number(40, 300),
      (mass, rollingResistance, peakTorque) => {
        const build = { ...hill, mass, rollingResistance, peakTorque }
        const { startLimit = NaN, ratioNeeded = NaN } = hillStart.compute(build)
        fc.pre(startLimit > 0 && startLimit < 1)
        expect(hillStart.compute({ ...build, startGrade: startLimit }).torqueUse).toBeCloseTo(1, 6)
        const regeared = { ...build, axleRatio: ratioNeeded, gears: [{ name: 'fixed', ratio: 1 }] }
        expect(hillStart.compute(regeared).startLimit).toBeCloseTo(0.2, 6)
      },
    ),
  )
})

test('hill: the speed held takes just the continuous power, and so does the grade held', () => {
  const { climbSpeedHeld = NaN, climbLimit = NaN } = hillStart.compute(hill)
  expect(hillStart.compute({ ...hill, climbSpeed: climbSpeedHeld }).climbUse).toBeCloseTo(1, 6)
  expect(hillStart.compute({ ...hill, climbGrade: climbLimit }).climbUse).toBeCloseTo(1, 6)
})

test('hill: at the grip limit the driven tyres push just what their load allows', () => {
  for (const drivenAxle of ['front', 'rear'] as const) {
    const { gripLimit = NaN } = hillStart.compute({ ...hill, drivenAxle })
    const angle = Math.atan(gripLimit)
    const weight = hill.mass * gravity
    const moved = Math.sin(angle) * hill.heightShare * (drivenAxle === 'rear' ? 1 : -1)
    const load = weight * (0.5 * Math.cos(angle) + moved)
    const push =
      weight * Math.sin(angle) + hill.rollingResistance * (weight * Math.cos(angle) - load)
    expect(push).toBeCloseTo(hill.grip * load, 6)
  }
  expect(hillStart.compute({ ...hill, drivenAxle: 'front' }).gripLimit).toBeLessThan(
    hillStart.compute({ ...hill, drivenAxle: 'rear' }).gripLimit ?? NaN,
  )
})

test('hill: thin air drags less, and a given density wins', () => {
  const high = hillStart.compute({ ...hill, altitude: 2500 })
  expect(high.climbPower).toBeLessThan(hillStart.compute(hill).climbPower ?? NaN)
  expect(hillStart.compute({ ...hill, density: high.airDensity }).climbPower).toBeCloseTo(
    high.climbPower ?? NaN,
    9,
  )
})

type Regen = Parameters<typeof regenLimit.compute>[0]
const regen: Regen = {
  mass: 1200,
  speed: 25,
  regenTorque: 60,
  regenPower: undefined,
  ratio: 9,
  rollingRadius: 0.3,
  roadForce: 200,
  drivelineEfficiency: 0.9,
  motorEfficiency: 0.95,
  packVoltage: 300,
  chargeLimit: 100,
  lamp: 'yes',
  drivenAxle: 'rear',
  drivenShare: 0.5,
  heightShare: 0.23,
  grip: 0.4,
  chargeState: 0.8,
  packEnergy: 30 * 3.6e6,
  descent: 200,
}

test('regeneration: the torques and the power it names just meet their limits', () => {
  for (const drivenAxle of ['front', 'rear', 'all'] as const) {
    const build = { ...regen, drivenAxle }
    const {
      torqueForLamp = NaN,
      torqueForGrip = NaN,
      powerForCells = NaN,
    } = regenLimit.compute(build)
    expect(regenLimit.compute({ ...build, regenTorque: torqueForLamp }).deceleration).toBeCloseTo(
      0.7,
      9,
    )
    expect(regenLimit.compute({ ...build, regenTorque: torqueForGrip }).gripUse).toBeCloseTo(0.5, 9)
    expect(
      regenLimit.compute({ ...build, regenTorque: 500, regenPower: powerForCells }).batteryCurrent,
    ).toBeCloseTo(100, 6)
  }
})

test('regeneration never puts more into the pack than it takes from the wheels', () => {
  fc.assert(
    fc.property(
      number(5, 300),
      number(5, 40),
      fc.option(number(1000, 50_000), { nil: undefined }),
      (regenTorque, speed, regenPower) => {
        const result = regenLimit.compute({ ...regen, regenTorque, speed, regenPower })
        const taken = ((result.decelerationAtSpeed ?? NaN) * regen.mass - regen.roadForce) * speed
        expect(result.batteryPower).toBeLessThanOrEqual(taken)
        expect(result.batteryPower).toBeCloseTo(taken * 0.9 * 0.95, 3)
      },
    ),
  )
})

type Brakes = Parameters<typeof brakeEnergy.compute>[0]
const brakes: Brakes = {
  mass: 1500,
  speed: 25,
  stops: 3,
  frontIron: 12,
  rearIron: 8,
  frontPart: 0.7,
  specificHeat: 460,
  startTemperature: 323.15,
  servo: 'vacuum',
  tank: 0.004,
  servoVolume: 0.0015,
  cutIn: 60_000,
  cutOut: 70_000,
  leak: 1000,
  altitude: 0,
  frontForce: 6000,
  rearForce: 3000,
  parkForce: 3000,
  firstUsed: 'earlier',
}

test('brakes: the heat in the iron is the energy of the stops', () => {
  const { energy = NaN, frontRise = NaN, rearRise = NaN } = brakeEnergy.compute(brakes)
  expect(460 * (12 * frontRise + 8 * rearRise)).toBeCloseTo(3 * energy, 6)
})

test('brakes: the tank it names leaves just 40 kPa after three strokes', () => {
  const { tankNeeded = NaN } = brakeEnergy.compute(brakes)
  const fitted = brakeEnergy.compute({ ...brakes, tank: tankNeeded })
  expect(fitted.vacuumLeft).toBeCloseTo(40_000, 6)
  expect(fitted.fullStrokes).toBe(3)
})

// Boyle's law stroke by stroke: tank air at p, servo air at p_a, mixed.
test('brakes: vacuum after strokes by mixing volumes', () => {
  let pressure = 101_325 - 60_000
  for (let stroke = 0; stroke < 3; stroke++)
    pressure = (0.004 * pressure + 0.0015 * 101_325) / 0.0055
  expect(brakeEnergy.compute(brakes).vacuumLeft).toBeCloseTo(101_325 - pressure, 6)
})

test('brakes: on a high pass the pump cannot reach what it is set to', () => {
  expect(brakeEnergy.compute({ ...brakes, altitude: 4500 }).vacuumStart).toBeLessThan(60_000)
})

test('gears may be typed in any order', () => {
  const back = { ...hill, gears: hill.gears.toReversed() }
  expect(hillStart.compute(back)).toEqual(hillStart.compute(hill))
  const geared = {
    tyre: undefined,
    rollingRadius: 0.3,
    rollingShare: 0.96,
    gears: hill.gears,
    axleRatio: 4,
    motorMost: 900,
    speed: 25,
  }
  const one = gearing.compute(geared)
  expect(gearing.compute({ ...geared, gears: geared.gears.toReversed() })).toEqual(one)
  expect(one.table.map(({ name }) => name)).toEqual(['first', 'second'])
  expect(one.longest).toBe('second')
})

test('hill: a motor at its very highest speed still pulls', () => {
  // 900 rad/s over a ratio of 12 on wheels of 0.3 m.
  const speed = (900 / 12) * 0.3
  const { table } = hillStart.compute(hill)
  expect(table[0]?.most).toBeCloseTo(speed, 9)
  expect(table[0]?.full).toBeCloseTo((50_000 / 150 / 12) * 0.3, 9)
})
