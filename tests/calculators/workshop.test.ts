/**
 * Tables behind the workshop calculators against second sources: ISO 273, proof stresses, and the
 * geometry of packed circles.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bundleRows } from '../../calculators/tables/bundle-diameters.ts'
import { clearanceHoles } from '../../calculators/tables/clearance-holes.ts'
import { boltsSaeJ429 } from '../../calculators/tables/bolts-sae-j429.ts'
import {
  threadDiameter,
  threadNames,
  threadPitch,
  threadProofLoad,
} from '../../calculators/threads.ts'
import { adapterAlignment } from '../../calculators/workshop/adapter-alignment.ts'
import { panelHole } from '../../calculators/workshop/panel-hole.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'
import { say } from './run-example.ts'

test.each(rowsOf('holes_iso273.csv'))('holes for $thread', (row) => {
  const printed = clearanceHoles.rows.find(([thread]) => thread === row.thread)
  expect(printed?.slice(1)).toEqual(
    ['pitch', 'fine', 'medium', 'coarse', 'tap_drill'].map((column) => numberIn(row, column)),
  )
})

// SAE J429: 55, 85 and 120 ksi up to 3/4 in; the standard rounds to 50 or 100 lbf.
test.each(boltsSaeJ429.rows)('proof loads of %s', (_thread, diameter, perInch, area, ...loads) => {
  const worked = (Math.PI / 4) * (Number(diameter) - 0.9743 / Number(perInch)) ** 2
  expect(Math.abs(Number(area) - worked)).toBeLessThan(0.0005)
  for (const [index, stress] of [55_000, 85_000, 120_000].entries())
    expect(Math.abs(Number(loads[index]) - stress * Number(area))).toBeLessThanOrEqual(51)
})

test('every thread has a diameter and a pitch, the thicker the coarser', () => {
  for (const thread of threadNames) {
    const ratio = threadPitch(thread) / threadDiameter(thread)
    expect(ratio, thread).toBeGreaterThan(0.09)
    expect(ratio, thread).toBeLessThan(0.21)
  }
})

// ISO 261 coarse pitches; ISO 3506-1, class 70: 450 MPa on the 36.6 mm² of M8 (recalled).
test('coarse pitches, and the proof load of stainless bolts', () => {
  expect(threadPitch('M8')).toBeCloseTo(0.00125, 9)
  expect(threadPitch('M12')).toBeCloseTo(0.00175, 9)
  expect((threadProofLoad('M8', 'a2-70') ?? NaN) / 16_470).toBeCloseTo(1, 3)
})

describe('bundles of equal wires', () => {
  const area = ([count, ratio]: readonly [number, number]) => count / ratio ** 2

  test('grow with the number of wires, and are never fuller than the plane can be', () => {
    const ratios = bundleRows.map(([, ratio]) => ratio)
    expect(ratios).toEqual([...ratios].sort((a, b) => a - b))
    // Densest packing of the plane: π/√12.
    for (const row of bundleRows.slice(1)) expect(area(row)).toBeLessThan(Math.PI / Math.sqrt(12))
  })

  // n round one middle wire, or a ring of n: each needs 1 + 1/sin(π/n) diameters.
  test.each([
    [7, 6],
    [8, 7],
    [9, 8],
    [11, 9],
  ])('%i wires lie as a ring of %i', (count, around) => {
    const ratio = bundleRows.find(([most]) => most === count)?.[1]
    expect(ratio).toBeCloseTo(1 + 1 / Math.sin(Math.PI / around), 12)
  })
})

test('an offset in any direction is found, and half the total reading of it at most', () => {
  const offset = fc.double({ min: -0.2e-3, max: 0.2e-3, noNaN: true })
  fc.assert(
    fc.property(offset, offset, (x, y) => {
      const nothing = {
        runout: undefined,
        face: undefined,
        sweep: undefined,
        original: undefined,
        present: undefined,
        ends: undefined,
        recess: undefined,
        spigot: undefined,
      }
      // A bore whose middle is (x, y) from the shaft: its wall at the top is further off by y.
      const { up, rightward, total } = adapterAlignment.compute({
        ...nothing,
        top: y,
        bottom: -y,
        right: x,
        left: -x,
        sag: 0,
      })
      expect(up).toBeCloseTo(y, 12)
      expect(rightward).toBeCloseTo(x, 12)
      expect(total).toBeCloseTo(2 * Math.max(Math.abs(x), Math.abs(y)), 12)
    }),
  )
})

const grommet = {
  purpose: 'grommet',
  wires: undefined,
  panel: 0.001,
  bore: undefined,
  groove: 0.01,
  slot: undefined,
  gland: undefined,
  least: undefined,
  most: undefined,
  thread: undefined,
  fit: 'medium',
  metal: 'steel',
  tool: 'twist',
} as const

// Step drills as sold: 4 to 40 mm by 2, 3/16 to 1 3/8 in by 1/16; twist drills by tenths up to 150 mm.
test.each([
  ['step-metric', 1, 4],
  ['step-metric', 8.9, 8],
  ['step-metric', 9.1, 10],
  ['step-metric', 40.9, 40],
  ['step-metric', 41.1, undefined],
  ['step-inch', 2, 4.7625],
  ['step-inch', 8.7, 7.9375],
  ['step-inch', 35.6, 34.925],
  ['step-inch', 35.8, undefined],
  ['twist', 0.1, 0.1],
  ['twist', 8.04, 8],
  ['twist', 8.06, 8.1],
  ['twist', 100, 100],
] as const)('%s nearest to a groove of %s mm: %s mm', (tool, groove, drill) => {
  const output = panelHole.compute({ ...grommet, tool, groove: groove / 1000 })
  if (drill === undefined) expect(output.drill).toBeUndefined()
  else expect((output.drill ?? NaN) * 1000).toBeCloseTo(drill, 9)
})

const found = (
  input: Parameters<typeof panelHole.compute>[0],
  check: string,
  made: Partial<ReturnType<typeof panelHole.compute>> = {},
) =>
  panelHole
    .findings(input, { ...panelHole.compute(input), ...made }, say)
    .find((finding) => finding.check === check)

// What a drill may be over or under the hole, in mm. Glands: EN 50262, table 1, +0.2/−0.4; the rest, and
// where a hole is too loose, common practice. Sizes of drills come in steps, so the check is handed them.
test.each([
  ['grommet', -0.2, 0.5, 1],
  ['gland', -0.4, 0.2, 0.5],
  ['bolt', 0, 0.6, 1.5],
  ['tapped', -0.05, 0.15, 0.3],
] as const)('a drill for a %s: %s to %s mm over the hole, too loose above %s', (...row) => {
  const [purpose, low, high, loose] = row
  const input = { ...grommet, purpose, gland: 'M20', thread: 'M8' } as const
  const level = (over: number) => found(input, 'drill', { over: over / 1000, drill: 0.01 })?.level
  expect([level(low), level(high), level(loose)]).toEqual(['pass', 'pass', 'watch'])
  expect(level(low - 1e-4)).toBe('watch')
  expect(level(low + 1e-4)).toBe('pass')
  expect(level(high + 1e-4)).toBe('watch')
  expect(level(loose + 1e-4)).toBe('stop')
})

test('six and seven equal wires are exact, fourteen a bound; three sizes an estimate', () => {
  const words = (wires: readonly { readonly outside: number; readonly count: number }[]) =>
    found(
      {
        ...grommet,
        bore: 0.03,
        groove: 0.04,
        wires: wires.map((wire) => ({ name: 'w', ...wire })),
      },
      'through',
    )?.text
  for (const count of [2, 6, 7, 19])
    expect(words([{ outside: 0.002, count }])).toMatch(/^The wires are \d/)
  for (const count of [14, 18, 20])
    expect(words([{ outside: 0.002, count }])).toMatch(/^The wires are at most /)
  expect(
    words([
      { outside: 0.002, count: 5 },
      { outside: 0.001, count: 5 },
    ]),
  ).toMatch(/^The wires are about /)
})

test('a thread that is not named cannot tell', () => {
  const input = { ...grommet, purpose: 'tapped', thread: undefined } as const
  expect(found(input, 'panel')?.level).toBe('unknown')
  expect(found(input, 'drill')?.level).toBe('unknown')
})
