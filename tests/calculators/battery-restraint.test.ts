/**
 * Bolt forces against equilibrium: whatever the pattern, pulls and presses, shears and twists must
 * carry exactly the load put on the box. The floor's press is seen by turning the load round.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { gravity } from '../../calculators/air.ts'
import { batteryRestraint } from '../../calculators/vehicle/battery-restraint.ts'

type Input = Parameters<typeof batteryRestraint.compute>[0]

const four = [
  { name: 'front left', x: -0.15, y: 0.25 },
  { name: 'rear left', x: 0.15, y: 0.25 },
  { name: 'front right', x: -0.15, y: -0.25 },
  { name: 'rear right', x: 0.15, y: -0.25 },
]
const box: Input = {
  mass: 80,
  centreHeight: 0.2,
  mounting: 'stands',
  bolts: four,
  thread: 'M8',
  property: '8.8',
  boltProof: undefined,
  forward: 20,
  side: 15,
  rear: 10,
  vertical: 10,
  sheet: 0.002,
  strength: 270e6,
  spread: 0.04,
  edge: 0.03,
}
const work = (change: Partial<Input>) => batteryRestraint.compute({ ...box, ...change })
const row = (change: Partial<Input>, name: string) => {
  const found = work(change).table.find((one) => one.name === name)
  if (found === undefined) throw new Error(`no direction ${name}`)
  return found
}

test('the worst bolt takes more than the average as soon as the box stands tall', () => {
  const flat = work({ centreHeight: 0 })
  const tall = work({ centreHeight: 0.4 })
  expect(flat.worstTension).toBe(0)
  expect(tall.worstTension).toBeGreaterThan(0)
  expect(tall.worstEquivalent).toBeGreaterThan(flat.worstEquivalent ?? NaN)
  expect(tall.averageShare).toBeCloseTo(flat.averageShare ?? NaN, 9)
})

// Two rows: pivoting about the far row gives each of two bolts F h / (2 × 0.3 m).
test('two rows agree with tipping about the far row', () => {
  const load = 80 * 20 * gravity
  expect(row({}, 'forward').tension).toBeCloseTo((load * 0.2) / (2 * 0.3), 6)
  expect(row({}, 'forward').bolt).toMatch(/rear/)
  expect(row({}, 'rearward').bolt).toMatch(/front/)
  expect(row({}, 'to the left').bolt).toMatch(/right/)
})

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** Whole millimetres: bolts are not drilled 1e-82 m apart. */
const millimetres = (most: number) =>
  fc.integer({ min: -most, max: most }).map((whole) => whole / 1000)
const places = fc
  .array(fc.record({ x: millimetres(1000), y: millimetres(800) }), { minLength: 3, maxLength: 8 })
  .map((list) => list.map((place, index) => ({ name: String(index), ...place })))

test('scale of mass, g and size; turning the pattern round swaps forward and rearward', () => {
  fc.assert(
    fc.property(places, number(1, 400), number(0, 0.6), (bolts, mass, centreHeight) => {
      const base = { bolts, mass, centreHeight, forward: 10, rear: 10, side: 10 }
      const once = work(base)
      fc.pre(once.worstEquivalent !== undefined)
      const near = (a: number | undefined, b: number | undefined) =>
        expect((a ?? NaN) / (b ?? NaN)).toBeCloseTo(1, 6)
      near(work({ ...base, mass: 2 * mass }).worstEquivalent, 2 * once.worstEquivalent)
      const large = bolts.map(({ name, x, y }) => ({ name, x: 3 * x, y: 3 * y }))
      near(
        work({ ...base, bolts: large, centreHeight: 3 * centreHeight }).worstEquivalent,
        once.worstEquivalent,
      )
      const turned = bolts.map(({ name, x, y }) => ({ name, x: -x, y: -y }))
      near(row({ ...base, bolts: turned }, 'forward').equivalent, row(base, 'rearward').equivalent)
      near(
        row({ ...base, bolts: turned }, 'to the left').equivalent,
        row(base, 'to the right').equivalent,
      )
      // Never less than the equal share.
      for (const one of once.table)
        expect(one.equivalent).toBeGreaterThan((one.total ?? NaN) / bolts.length / 1.001)
    }),
  )
})

test('moving the bolts off the centre of gravity twists them', () => {
  const aside = four.map((bolt) => ({ ...bolt, x: bolt.x + 0.3 }))
  expect(row({ bolts: aside }, 'to the left').shear).toBeGreaterThan(
    row({}, 'to the left').shear ?? NaN,
  )
  expect(row({ bolts: aside }, 'forward').shear).toBeCloseTo(row({}, 'forward').shear ?? NaN, 9)
})

test('the size named holds one and a half times, the next smaller does not', () => {
  const { sizeNeeded = '', sizeMargin = NaN } = work({ mass: 200 })
  expect(sizeMargin).toBeGreaterThanOrEqual(1.5)
  expect(sizeNeeded).toBe('M10')
  expect(work({ mass: 200, thread: 'M10' }).boltMargin).toBeCloseTo(sizeMargin, 9)
  expect(work({ mass: 200, thread: 'M8' }).boltMargin).toBeLessThan(1.5)
})

test.each([
  ['two bolts', four.slice(0, 2)],
  ['one line', four.map((bolt, index) => ({ ...bolt, x: index, y: 2 * index }))],
])('%s: cannot tell', (_, bolts) => {
  const result = work({ bolts })
  expect(result.worstEquivalent).toBeUndefined()
  const say = (value: number | undefined, unit: string) => `${value ?? 'cannot tell'} ${unit}`
  const levels = batteryRestraint.findings({ ...box, bolts }, result, say)
  expect(levels.filter(({ level }) => level === 'pass').map(({ check }) => check)).toEqual([
    'loads',
  ])
})
