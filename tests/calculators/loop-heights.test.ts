/**
 * Heights after pitch and lean against a rotation library's table, and what must hold for any loop.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { heightAt, loopHeights } from '../../calculators/cooling/loop-heights.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'

type Input = Parameters<typeof loopHeights.compute>[0]
type Point = Input['points'][number]

const point = (
  name: string,
  role: Point['role'],
  x: number,
  z: number,
  more: Partial<Point> = {},
): Point => ({
  name,
  role,
  x,
  z,
  y: undefined,
  bleed: undefined,
  ...more,
})
const tank = point('tank', 'tank', 0.3, 1.05)
const pump = point('pump', 'pump', 0.2, 0.6)
const seat = point('hose under seat', 'crest', 1.35, 0.965)
const plate = point('plate', 'port', 0.8, 0.8)
const pickup: Input = {
  wheelbase: 2.92,
  frontChange: 0,
  rearChange: 0.06,
  slope: 0.1,
  points: [tank, pump, plate, seat],
}
const work = (change: Partial<Input> = {}) => loopHeights.compute({ ...pickup, ...change })
const say = (value: number | undefined, unit: string) => `${value ?? 'cannot tell'} ${unit}`
const findings = (change: Partial<Input> = {}) => {
  const input = { ...pickup, ...change }
  return loopHeights.findings(input, loopHeights.compute(input), say)
}
const levels = (change: Partial<Input> = {}) =>
  Object.fromEntries(findings(change).map(({ check, level }) => [check, level]))

// The table's x runs forward and its pitch is nose-up; here x runs rearward and tail-up is positive.
test.each(rowsOf('attitude.csv'))('($x, $y, $z) at pitch $pitch_deg, roll $roll_deg', (row) => {
  const radians = (column: string) => (numberIn(row, column) * Math.PI) / 180
  const at = { x: -numberIn(row, 'x'), y: numberIn(row, 'y'), z: numberIn(row, 'z') }
  expect(heightAt(at, -radians('pitch_deg'), radians('roll_deg'))).toBeCloseTo(
    numberIn(row, 'z_new'),
    5,
  )
})

test('tail-up raises what is behind, nose-up lowers it; the front end of the slope is named', () => {
  const [, , , crest] = work().table
  expect(crest?.noseDown).toBeGreaterThan(crest?.ride ?? NaN)
  expect(crest?.noseUp).toBeLessThan(crest?.ride ?? NaN)
  expect(work().worstAttitude).toBe('parked nose-down')
  const ahead = [tank, pump, point('radiator top', 'port', -0.6, 0.99)]
  expect(work({ points: ahead }).worstAttitude).toBe('parked nose-up')
})

const anywhere = fc.record({
  x: fc.double({ min: -1, max: 4, noNaN: true }),
  z: fc.double({ min: 0.1, max: 1.5, noNaN: true }),
})

test('raising both axles alike changes heights, not margins', () => {
  fc.assert(
    fc.property(anywhere, fc.double({ min: -0.2, max: 0.2, noNaN: true }), (spot, lift) => {
      const points = [tank, pump, { ...seat, ...spot }]
      const base = work({ points })
      const lifted = work({ points, frontChange: lift, rearChange: 0.06 + lift })
      expect(lifted.worstMargin).toBeCloseTo(base.worstMargin ?? NaN, 9)
      expect(lifted.table[2]?.ride).toBeCloseTo((base.table[2]?.ride ?? NaN) + lift, 9)
    }),
  )
})

test('a loop in inches and a loop in metres turn alike', () => {
  fc.assert(
    fc.property(anywhere, fc.double({ min: 0.1, max: 3, noNaN: true }), (spot, scale) => {
      const points = [tank, pump, { ...seat, ...spot }]
      const scaled = points.map((one) => ({ ...one, x: one.x * scale, z: one.z * scale }))
      const result = work({
        points: scaled,
        wheelbase: pickup.wheelbase * scale,
        rearChange: pickup.rearChange * scale,
      })
      expect(result.worstMargin).toBeCloseTo((work({ points }).worstMargin ?? NaN) * scale, 9)
    }),
  )
})

test('the worst margin is the least of the three stances worked one by one', () => {
  fc.assert(
    fc.property(anywhere, (spot) => {
      const points = [tank, pump, { ...seat, ...spot }]
      const { table, worstMargin } = work({ points })
      const [top, ...others] = table
      const each = others.flatMap((row) =>
        (['ride', 'noseUp', 'noseDown'] as const).map(
          (at) => (top?.[at] ?? NaN) - (row[at] ?? NaN),
        ),
      )
      expect(worstMargin).toBeCloseTo(Math.min(...each), 12)
    }),
  )
})

test('a higher tank only helps', () => {
  const higher = { ...tank, z: tank.z + 0.1 }
  expect(work({ points: [higher, pump, seat] }).worstMargin).toBeGreaterThan(
    work({ points: [tank, pump, seat] }).worstMargin ?? NaN,
  )
})

const flat: Partial<Input> = { rearChange: 0, slope: 0 }
test.each([
  [0.0501, 'pass'],
  [0.0499, 'watch'],
  [0.0001, 'watch'],
  [-0.0001, 'stop'],
] as const)('on the level, crest %s m below the low mark: %s', (gap, level) => {
  const points = [tank, pump, { ...seat, z: tank.z - gap }]
  expect(levels({ ...flat, points })).toMatchObject({ ride: level, slopes: level })
})

test.each([
  [0.151, 'pass'],
  [0.149, 'watch'],
  [0.051, 'watch'],
  [0.049, 'stop'],
] as const)('pump inlet %s m below the low mark: %s', (gap, level) => {
  const points = [tank, point('pump', 'pump', 0.3, tank.z - gap), { ...seat, z: 0.5 }]
  expect(levels({ ...flat, points }).pump).toBe(level)
})

test('of two pumps the higher counts', () => {
  const second = point('booster', 'pump', 0.3, tank.z - 0.02)
  expect(levels({ ...flat, points: [tank, pump, second] }).pump).toBe('stop')
})

test('a bleed turns a stop on a slope into a watch, at ride height it stays a stop', () => {
  const bled = { ...seat, bleed: 'yes' } as const
  expect(levels().slopes).toBe('stop')
  expect(levels({ points: [tank, pump, plate, bled] })).toMatchObject({
    slopes: 'watch',
    crests: 'pass',
  })
  const low = { ...tank, z: 0.98 }
  expect(levels({ points: [low, pump, plate, bled] }).ride).toBe('stop')
})

test('a bleed does not hide another point that is too high', () => {
  const bled = { ...seat, bleed: 'yes', z: 1.0 } as const
  const other = point('elbow', 'port', 1.35, 0.965)
  const slopes = findings({ points: [tank, pump, other, bled] }).find(
    ({ check }) => check === 'slopes',
  )
  expect(slopes?.level).toBe('stop')
  expect(slopes?.text).toContain('elbow')
})

test('a hump that nobody called a crest is found, also at the end of the list', () => {
  const hump = point('over the rail', 'port', 1, 0.9)
  expect(work({ points: [tank, pump, hump, plate] }).openCrests).toBe('over the rail')
  const last = {
    ...flat,
    points: [pump, tank, { ...plate, z: 0.5 }, point('last', 'other', 1, 0.9)],
  }
  expect(work(last).openCrests).toBe('last')
  expect(levels({ points: [tank, pump, { ...hump, bleed: 'yes' }, plate] }).crests).toBe('pass')
})

test('leaning is worked where both have a sideways place, to either side', () => {
  const left = { ...seat, y: 0.6, x: 0.3 }
  const right = { ...left, y: -0.6 }
  const middle = { ...tank, y: 0 }
  const to = (crest: Point) => work({ points: [middle, pump, crest], slope: 0 }).worstAttitude
  expect(to(left)).toBe('leaning to the right')
  expect(to(right)).toBe('leaning to the left')
  expect(work({ points: [tank, pump, left], slope: 0 }).worstAttitude).toBe('at ride height')
  expect(findings().find(({ check }) => check === 'slopes')?.text).toMatch(/Leaning is not worked/)
})

test('missing or doubled roles cannot tell', () => {
  expect(levels({ points: [pump, seat] })).toMatchObject({
    ride: 'unknown',
    slopes: 'unknown',
    pump: 'unknown',
  })
  expect(levels({ points: [tank, { ...tank, name: 'second' }, pump] }).ride).toBe('unknown')
  expect(levels({ points: [tank, seat] })).toMatchObject({ pump: 'unknown', crests: 'watch' })
  expect(levels({ points: [tank] })).toMatchObject({
    ride: 'unknown',
    slopes: 'unknown',
    crests: 'unknown',
  })
})
test('a point without a place across lies on the middle line', () => {
  for (const lean of [-0.1, 0.1])
    expect(heightAt({ x: 0, z: 1 }, 0, lean)).toBeCloseTo(Math.cos(lean), 15)
})
