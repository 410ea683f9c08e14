/**
 * Drain and days: limits, and what must hold for any list.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { keyOffDrain } from '../../calculators/auxiliary/key-off-drain.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof keyOffDrain.compute>[0]
const parked: Input = {
  items: [{ name: 'alarm', current: 0.012, duty: 1 }],
  converter: 'isolated',
  backFeed: undefined,
  battery: 'lead-acid',
  capacity: 60 * 3600,
  health: 0.8,
  parkedAt: 0.9,
  floor: 0.5,
  volts: 12.7,
  selfDischarge: undefined,
}
const work = (change: Partial<Input>) => keyOffDrain.compute({ ...parked, ...change })
const levels = (change: Partial<Input>) => {
  const input = { ...parked, ...change }
  const found = keyOffDrain.findings(input, keyOffDrain.compute(input), say)
  return Object.fromEntries(found.map(({ check, level }) => [check, level]))
}
const drawing = (current: number) => [{ name: 'alarm', current, duty: 1 }]

test.each([
  [0.025, 'pass'],
  [0.0251, 'watch'],
  [0.05, 'watch'],
  [0.0501, 'stop'],
] as const)('%s A: %s', (current, level) => {
  expect(levels({ items: drawing(current) }).drain).toBe(level)
})

test('the drain that is allowed gives just three weeks', () => {
  fc.assert(
    fc.property(fc.double({ min: 5, max: 200, noNaN: true }), (hours) => {
      const capacity = hours * 3600
      const { allowed = NaN } = work({ capacity })
      expect(work({ capacity, items: drawing(allowed) }).days).toBeCloseTo(21 * 86_400, 3)
    }),
  )
})

test('twice battery and own loss at twice the drain lasts as long', () => {
  expect(work({ capacity: 120 * 3600, items: drawing(0.024) }).days).toBeCloseTo(
    work({}).days ?? NaN,
    3,
  )
})

test('the converter is never forgotten', () => {
  expect(levels({ converter: 'unknown' })).toMatchObject({
    drain: 'unknown',
    back: 'unknown',
    days: 'unknown',
  })
  expect(levels({ converter: 'connected', backFeed: 100 }).back).toBe('stop')
  expect(work({ converter: 'connected', backFeed: 127 }).back).toBeCloseTo(0.1, 12)
})

test('parked below its floor it may not stand at all', () => {
  expect(levels({ parkedAt: 0.4 }).days).toBe('stop')
})
