/**
 * The radiator's cases against worked heat balances, and what must hold for any radiator: hotter
 * with more heat, cooler with more air, scale-free, and a measurement that agrees changes nothing.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { airDensity, airSpecificHeat } from '../../calculators/air.ts'
import { propertiesOf } from '../../calculators/coolant.ts'
import { radiatorAndFan } from '../../calculators/cooling/radiator-and-fan.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

type Input = Parameters<typeof radiatorAndFan.compute>[0]
type Case = Input['cases'][number]

const hill: Case = { name: 'slow hill', heat: 1100, speed: 25 / 3.6, fan: 'off' }
const pickup: Input = {
  coreWidth: 0.3,
  coreHeight: 0.2,
  faceShare: 0.15,
  cases: [
    { name: 'cruise', heat: 600, speed: 80 / 3.6, fan: 'off' },
    hill,
    { name: 'crawl', heat: 350, speed: 10 / 3.6, fan: 'off' },
    { name: 'parked', heat: 150, speed: 0, fan: 'off' },
  ],
  fanVelocity: undefined,
  naturalDraught: 0.15,
  ambient: 308.15,
  altitude: 0,
  density: undefined,
  recirculation: 0,
  flow: 8.75 / 60_000,
  coolant: 'ethylene-glycol',
  concentration: 0.5,
  basis: 'volume',
  inletLimit: 338.15,
  coreTransfer: 1500,
  measuredConductance: undefined,
  measuredSpeed: undefined,
  measuredFaceVelocity: undefined,
}
const work = (change: Partial<Input> = {}) => radiatorAndFan.compute({ ...pickup, ...change })
const say = (value: number | undefined, unit: string) => `${value ?? 'cannot tell'} ${unit}`
const findings = (change: Partial<Input> = {}) => {
  const input = { ...pickup, ...change }
  return radiatorAndFan.findings(input, radiatorAndFan.compute(input), say)
}
const levels = (change: Partial<Input> = {}) =>
  Object.fromEntries(findings(change).map(({ check, level }) => [check, level]))
const fanOn = (cases: readonly Case[]): readonly Case[] =>
  cases.map((one) => ({ ...one, fan: 'on' }))

test.each(rowsOf('radiator_cases.csv'))('heat balance, case $case', (row) => {
  const water = propertiesOf({ kind: 'water', strength: 0, basis: 'volume' }, 323.15)
  const perFlow = (water?.density ?? NaN) * (water?.specificHeat ?? NaN)
  const ambient = numberIn(row, 'T_cold_in') + 273.15
  const velocity =
    numberIn(row, 'C_cold_W_K') / (airDensity(ambient, 0) * airSpecificHeat * 1 * 0.5)
  const result = work({
    coreWidth: 1,
    coreHeight: 0.5,
    cases: [{ name: 'bench', heat: numberIn(row, 'Q_W'), speed: 0, fan: 'on' }],
    fanVelocity: velocity,
    ambient,
    flow: numberIn(row, 'C_hot_W_K') / perFlow,
    coolant: 'water',
    coreTransfer: numberIn(row, 'UA_W_K') / (0.5 * velocity ** 0.45),
  })
  expect(result.worstTransfer).toBeCloseTo(numberIn(row, 'UA_W_K'), 6)
  expect(result.worstEffectiveness).toBeCloseTo(numberIn(row, 'eff'), 5)
  expect(result.worstRadiatorInlet).toBeCloseTo(numberIn(row, 'T_hot_in') + 273.15, 2)
  expect(result.worstInlet).toBeCloseTo(numberIn(row, 'T_hot_out') + 273.15, 2)
})

// 25 km/h × 15 % = 1.042 m/s: C_air = 1.1455 × 1006 × 0.06 × 1.042 = 72.0, UA = 90 × 1.042^0.45 = 91.7,
// NTU 1.273; 50 % glycol 1057.9 × 3396.5 at 8.75 L/min = 524 W/K, ratio 0.137: effectiveness 0.69.
test('slow hill, worked by hand', () => {
  const row = work().table[1]
  expect(row?.faceVelocity).toBeCloseTo(1.0417, 4)
  expect(row?.transfer).toBeCloseTo(91.67, 1)
  expect(row?.conductance).toBeCloseTo(72.0 * 0.69, 0)
  const [into, out] = [row?.radiatorInlet ?? NaN, row?.partInlet ?? NaN]
  expect(into - 308.15).toBeCloseTo(1100 / (row?.conductance ?? NaN), 9)
  expect(into - out).toBeCloseTo(1100 / 524, 2)
  expect(work().worstCase).toBe('slow hill')
})

const builds = fc.record({
  coreWidth: fc.double({ min: 0.1, max: 0.8, noNaN: true }),
  coreHeight: fc.double({ min: 0.1, max: 0.8, noNaN: true }),
  faceShare: fc.double({ min: 0.03, max: 0.25, noNaN: true }),
  ambient: fc.double({ min: 273, max: 323, noNaN: true }),
  flow: fc.double({ min: 2 / 60_000, max: 30 / 60_000, noNaN: true }),
  coreTransfer: fc.double({ min: 500, max: 3000, noNaN: true }),
})

test('hotter with heat, day, height, air drawn back in; cooler with core, duct and fan', () => {
  fc.assert(
    fc.property(builds, (build) => {
      const base = work(build).worstInlet ?? NaN
      const hotter: readonly Partial<Input>[] = [
        { cases: pickup.cases.map((one) => ({ ...one, heat: one.heat * 1.2 })) },
        { ambient: build.ambient + 5 },
        { altitude: 2000 },
        { recirculation: 5 },
      ]
      const cooler: readonly Partial<Input>[] = [
        { coreTransfer: build.coreTransfer * 1.2 },
        { coreWidth: build.coreWidth * 1.2 },
        { faceShare: build.faceShare * 1.1, naturalDraught: 0.2 },
        { fanVelocity: 4, cases: fanOn(pickup.cases) },
      ]
      for (const change of hotter)
        expect(work({ ...build, ...change }).worstInlet).toBeGreaterThan(base)
      for (const change of cooler)
        expect(work({ ...build, ...change }).worstInlet).toBeLessThan(base)
      const more = work({ ...build, flow: build.flow * 1.3 }).table
      work(build).table.forEach((row, at) => {
        expect(more[at]?.radiatorInlet).toBeLessThan(row.radiatorInlet ?? NaN)
      })
    }),
    { numRuns: 60 },
  )
})

test('twice the core, heat and flow: the same temperatures', () => {
  fc.assert(
    fc.property(builds, (build) => {
      const twice = work({
        ...build,
        coreWidth: 2 * build.coreWidth,
        flow: 2 * build.flow,
        cases: pickup.cases.map((one) => ({ ...one, heat: 2 * one.heat })),
      })
      expect(twice.worstInlet).toBeCloseTo(work(build).worstInlet ?? NaN, 8)
    }),
    { numRuns: 60 },
  )
})

test('a measurement that agrees with the model changes nothing, however it was taken', () => {
  const model = work()
  const [cruise, , crawl] = model.table
  for (const how of [
    { measuredSpeed: 80 / 3.6, measuredConductance: cruise?.conductance },
    { measuredFaceVelocity: cruise?.faceVelocity, measuredConductance: cruise?.conductance },
    { measuredSpeed: 10 / 3.6, measuredConductance: crawl?.conductance },
  ]) {
    const measured = work(how)
    measured.table.forEach((row, at) => {
      expect(row.partInlet).toBeCloseTo(model.table[at]?.partInlet ?? NaN, 6)
    })
  }
})

test('a poor measurement at a road speed: the measured case fits, the others take the worse of core and air', () => {
  const at = { measuredConductance: 70.6 }
  const unknown = work({ ...at, measuredSpeed: 80 / 3.6 })
  const core = work({ ...at, measuredFaceVelocity: 0.15 * (80 / 3.6) })
  expect(unknown.table[0]?.conductance).toBeCloseTo(70.6, 6)
  expect(core.table[0]?.conductance).toBeCloseTo(70.6, 6)
  expect(unknown.table[1]?.conductance).toBeLessThan(core.table[1]?.conductance ?? NaN)
  expect(unknown.table[1]?.partInlet).toBeGreaterThan(work().table[1]?.partInlet ?? NaN)
  // With a fan the air is known, so the poor core is what is left.
  const fan: Partial<Input> = { fanVelocity: 2.5, cases: [{ ...hill, fan: 'on' }] }
  expect(work({ ...at, ...fan, measuredSpeed: 80 / 3.6 }).worstConductance).toBeCloseTo(
    work({ ...at, ...fan, measuredFaceVelocity: 0.15 * (80 / 3.6) }).worstConductance ?? NaN,
    9,
  )
})

test('an impossible or homeless measurement cannot tell', () => {
  expect(levels({ measuredConductance: 500, measuredSpeed: 80 / 3.6 })).toMatchObject({
    inlet: 'unknown',
    validity: 'unknown',
  })
  expect(levels({ measuredConductance: 70 })).toMatchObject({
    inlet: 'unknown',
    validity: 'unknown',
  })
  expect(work({ measuredConductance: 70 }).worstInlet).toBeUndefined()
})

test('the face velocity needed leaves 10 K in hand when a fan gives it', () => {
  fc.assert(
    fc.property(builds, (build) => {
      const needed = work(build).faceVelocityNeeded
      fc.pre(needed !== undefined && needed > 0.16)
      const cases = fanOn([{ ...hill, speed: 0 }])
      const alone = work({ ...build, cases }).faceVelocityNeeded
      fc.pre(alone !== undefined && alone > 0.16)
      expect(work({ ...build, cases, fanVelocity: alone }).inHand).toBeCloseTo(10, 6)
    }),
    { numRuns: 40 },
  )
})

test('levels at the thresholds: 10 K in hand, none in hand', () => {
  const inlet = work().worstInlet ?? NaN
  expect(levels({ inletLimit: inlet + 10.01 }).inlet).toBe('pass')
  expect(levels({ inletLimit: inlet + 9.99 }).inlet).toBe('watch')
  expect(levels({ inletLimit: inlet + 0.01 }).inlet).toBe('watch')
  expect(levels({ inletLimit: inlet - 0.01 }).inlet).toBe('stop')
  expect(work({ inletLimit: inlet + 10.01 }).fanNeeded).toBe('no')
  expect(work({ inletLimit: inlet + 5 }).fanNeeded).toMatch(/measure first.*slow hill/)
  expect(work({ inletLimit: inlet - 1 }).fanNeeded).toMatch(/^yes, for slow hill/)
  expect(work({ inletLimit: 309 }).fanNeeded).toMatch(/no face velocity/)
})

test('a fan where the air is good already, and one that is not described', () => {
  expect(levels({ fanVelocity: 2, faceShare: 0.26 }).fan).toBe('watch')
  expect(levels({ fanVelocity: 2, faceShare: 0.25 }).fan).toBe('pass')
  expect(levels({ cases: fanOn([hill]) })).toMatchObject({ fan: 'unknown', inlet: 'unknown' })
})

test('the model is doubted where 40 % less conductance would not do; a measurement is not', () => {
  const { worstInlet = NaN, worstConductance = NaN } = work()
  const doubted = worstInlet + 1100 * (1 / (0.6 * worstConductance) - 1 / worstConductance)
  expect(levels({ inletLimit: doubted + 0.01 }).conductance).toBe('pass')
  expect(levels({ inletLimit: doubted - 0.01 }).conductance).toBe('watch')
  const measured = { measuredConductance: 113, measuredSpeed: 80 / 3.6 }
  expect(levels({ ...measured, inletLimit: doubted - 0.01 }).conductance).toBe('pass')
})

test('a glycol without its share cannot tell', () => {
  expect(levels({ concentration: undefined })).toMatchObject({
    inlet: 'unknown',
    validity: 'unknown',
  })
  expect(levels({ concentration: 0.7 }).validity).toBe('unknown')
})

test('two cases of one name are told apart', () => {
  const cases = [
    { ...hill, heat: 100 },
    { ...hill, heat: 1100 },
  ]
  const input = { ...pickup, cases }
  const lines = radiatorAndFan.working(input, radiatorAndFan.compute(input), say).join('\n')
  expect(lines).toContain('1100 W')
})

test('a given air density stands in for the altitude, also where hot air is drawn back in', () => {
  const density = airDensity(pickup.ambient, 1800)
  for (const recirculation of [0, 8]) {
    const given = work({ density, recirculation })
    const worked = work({ altitude: 1800, recirculation })
    expect(given.worstInlet).toBeCloseTo(worked.worstInlet ?? NaN, 9)
    expect(given.airDensity).toBeCloseTo(worked.airDensity ?? NaN, 9)
  }
})

test('with the air to blame, the others fare as in a duct that lets less of it through', () => {
  // The share of the road speed at which a good core gives the measured 70.6 W/K at 80 km/h.
  let [low, high] = [0.01, 0.15]
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if ((work({ faceShare: middle }).table[0]?.conductance ?? NaN) < 70.6) low = middle
    else high = middle
  }
  const ducted = work({ faceShare: low })
  const measured = work({ measuredConductance: 70.6, measuredSpeed: 80 / 3.6 })
  expect(measured.table[1]?.conductance).toBeCloseTo(ducted.table[1]?.conductance ?? NaN, 6)
})

test('air faster than 8 m/s is taken as 8 m/s', () => {
  const fast = { ...hill, speed: 30 }
  expect(work({ cases: [fast], faceShare: 1 }).table[0]?.faceVelocity).toBe(8)
  expect(work({ cases: [fast], faceShare: 0.25 }).table[0]?.faceVelocity).toBe(7.5)
})

test('little heat or little room: the face velocity needed still leaves 10 K', () => {
  const warm = { ...hill, heat: 10 }
  const limit = { inletLimit: pickup.ambient + 10.5 }
  const { faceVelocityNeeded } = work({ ...limit, cases: [warm] })
  expect(faceVelocityNeeded).toBeGreaterThan(pickup.naturalDraught)
  const fan = { ...limit, fanVelocity: faceVelocityNeeded }
  expect(work({ ...fan, cases: fanOn([{ ...warm, speed: 0 }]) }).inHand).toBeCloseTo(10, 6)
})

test('where the natural draught just does, no more is needed', () => {
  const parked = { ...hill, heat: 100, speed: 0 }
  const { worstInlet = NaN } = work({ cases: [parked] })
  const just = work({ cases: [parked], inletLimit: worstInlet + 10.2 })
  expect(just.fanNeeded).toBe('no')
  expect(just.faceVelocityNeeded).toBe(pickup.naturalDraught)
})
