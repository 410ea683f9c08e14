/**
 * Lists of joints and of cells: the order of their rows, and one current or another, change nothing.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { cellSpread } from '../../calculators/traction/cell-spread.ts'
import { jointCheck } from '../../calculators/traction/joint-check.ts'
import { say } from './run-example.ts'

const joint = fc.record({
  name: fc.uuid(),
  drop: fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
  current: fc.double({ min: 10, max: 500, noNaN: true }),
  temperature: fc.double({ min: 280, max: 360, noNaN: true }),
})
const shuffled = <T>(rows: fc.Arbitrary<readonly T[]>) =>
  rows.chain((list) =>
    fc.tuple(fc.constant(list), fc.shuffledSubarray([...list], { minLength: list.length })),
  )

test('joints: the order of the list does not matter', () => {
  fc.assert(
    fc.property(shuffled(fc.array(joint, { minLength: 3, maxLength: 12 })), ([one, other]) => {
      const [a, b] = [one, other].map((joints) =>
        jointCheck.compute({ joints, air: 290, peak: 300 }),
      )
      for (const key of ['highest', 'middle', 'ratio', 'heat', 'hotter', 'total'] as const)
        expect((a?.[key] ?? NaN) - (b?.[key] ?? NaN)).toBeCloseTo(0, 9)
    }),
  )
})

test('joints: measured at any current, a plain resistance is the same', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 1e-5, max: 1e-3, noNaN: true }), { minLength: 3, maxLength: 9 }),
      fc.double({ min: 10, max: 500, noNaN: true }),
      (ohms, current) => {
        const joints = ohms.map((ohm, i) => ({
          name: String(i),
          drop: ohm * current,
          current,
          temperature: undefined,
        }))
        const { highest = NaN, middle = NaN } = jointCheck.compute({
          joints,
          air: undefined,
          peak: 300,
        })
        expect(highest).toBeCloseTo(Math.max(...ohms), 12)
        const below = ohms.filter((ohm) => ohm < middle - 1e-12).length
        const above = ohms.filter((ohm) => ohm > middle + 1e-12).length
        expect(Math.max(below, above)).toBeLessThanOrEqual(ohms.length / 2)
      },
    ),
  )
})

test('a joint measured at the peak or above it is not scaled down', () => {
  const { rise } = jointCheck.compute({
    joints: [{ name: 'a', drop: 0.01, current: 400, temperature: 320 }],
    air: 300,
    peak: 200,
  })
  expect(rise).toBe(20)
})

const cell = fc.record({
  name: fc.uuid(),
  rest: fc.double({ min: 3, max: 3.6, noNaN: true }),
  charge: fc.double({ min: 3, max: 3.6, noNaN: true }),
  discharge: fc.double({ min: 3, max: 3.6, noNaN: true }),
  capacity: fc.double({ min: 1e5, max: 1e6, noNaN: true }),
})
const pack = { rated: 1e6, lowest: 2.5, highest: 3.65, chemistry: 'lfp' } as const

test('cells: the order of the list does not matter, nor an equal shift of all', () => {
  fc.assert(
    fc.property(
      shuffled(fc.array(cell, { minLength: 2, maxLength: 20 })),
      fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      ([one, other], shift) => {
        const a = cellSpread.compute({ ...pack, cells: one })
        const b = cellSpread.compute({
          ...pack,
          cells: other.map((each) => ({ ...each, rest: each.rest + shift })),
        })
        expect(b.restSpread).toBeCloseTo(a.restSpread ?? NaN, 9)
        expect(b.chargeSpread).toBe(a.chargeSpread)
        expect(b.health).toBe(a.health)
        expect(a.list.reduce((sum, { off }) => sum + (off ?? NaN), 0)).toBeCloseTo(0, 9)
      },
    ),
  )
})

test('one cell that was not read leaves the spread unknown', () => {
  const full = { name: 'a', rest: 3.4, charge: 3.5, discharge: 3.2, capacity: 9e5 }
  const { chargeSpread, dischargeSpread, health } = cellSpread.compute({
    ...pack,
    cells: [full, { ...full, name: 'b', charge: undefined, capacity: undefined }],
  })
  expect(chargeSpread).toBeUndefined()
  expect(dischargeSpread).toBe(0)
  expect(health).toBeUndefined()
})

// As typed, 3.31 less 3.30 is not ten millivolts to the last bit.
test.each([
  ['rest', [3.31, 3.3], 'pass'],
  ['rest', [3.312, 3.3], 'watch'],
  ['rest', [3.33, 3.3], 'watch'],
  ['rest', [3.332, 3.3], 'stop'],
  ['limits', [3.65, 2.5], 'pass'],
  ['limits', [3.66, 2.5], 'stop'],
] as const)('cells: %s of %s V is a %s', (check, rests, level) => {
  const input = {
    cells: rests.map((rest, at) => ({
      name: String(at),
      rest,
      charge: undefined,
      discharge: undefined,
      capacity: undefined,
    })),
    rated: undefined,
    lowest: 2.5,
    highest: 3.65,
    chemistry: 'other',
  } as const
  const found = cellSpread.findings(input, cellSpread.compute(input), say)
  expect(found.find((finding) => finding.check === check)?.level).toBe(level)
})

test.each([
  ['load', { charge: [3.45, 3.4], discharge: [3.2, 3.2] }, 'pass'],
  ['load', { charge: [3.5, 3.4], discharge: [3.2, 3.2] }, 'watch'],
  ['load', { charge: [3.502, 3.4], discharge: [3.2, 3.2] }, 'stop'],
  ['capacity', { capacity: [160, 200] }, 'pass'],
  ['capacity', { capacity: [140, 200] }, 'watch'],
  ['capacity', { capacity: [138, 200] }, 'stop'],
] as const)('cells: %s with %s is a %s', (check, given, level) => {
  const read: Readonly<Partial<Record<string, readonly number[]>>> = given
  const input = {
    cells: [0, 1].map((at) => ({
      name: String(at),
      rest: 3.4,
      charge: read.charge?.[at],
      discharge: read.discharge?.[at],
      capacity: read.capacity?.[at],
    })),
    rated: 200,
    lowest: 2.5,
    highest: 3.65,
    chemistry: 'other',
  } as const
  const found = cellSpread.findings(input, cellSpread.compute(input), say)
  expect(found.find((finding) => finding.check === check)?.level).toBe(level)
})
test('iron phosphate: half of the cells in the flat middle still tell, more do not', () => {
  const level = (...rests: readonly number[]) => {
    const cells = rests.map((rest, at) => ({
      name: String(at),
      rest,
      charge: undefined,
      discharge: undefined,
      capacity: undefined,
    }))
    const input = { ...pack, cells }
    return cellSpread
      .findings(input, cellSpread.compute(input), say)
      .find(({ check }) => check === 'flat')?.level
  }
  expect(level(3.3, 3.3, 3.4, 3.4)).toBe('pass')
  expect(level(3.3, 3.3, 3.3, 3.4)).toBe('watch')
})

test('the weakest and the fullest are told by a reading that every cell has', () => {
  const full = { name: 'a', rest: 3.4, charge: 3.5, discharge: 3.2, capacity: undefined }
  const low = { ...full, name: 'b', rest: 3.35, charge: 3.45, discharge: 3.1 }
  expect(cellSpread.compute({ ...pack, cells: [full, low] })).toMatchObject({
    weakest: 'b',
    fullest: 'a',
  })
  // Read alone, on discharge the good one is lower and on charge the low one higher than the other at rest.
  const some = [
    { ...full, charge: undefined },
    { ...low, discharge: undefined },
  ]
  expect(cellSpread.compute({ ...pack, cells: some })).toMatchObject({
    weakest: 'b',
    fullest: 'a',
  })
})
