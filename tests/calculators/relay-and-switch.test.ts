/**
 * Coils on the ignition switch: limits, and which of several findings wins.
 */
import { expect, test } from 'vitest'
import { relayAndSwitch } from '../../calculators/auxiliary/relay-and-switch.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof relayAndSwitch.compute>[0]
type Coil = Input['coils'][number]
const coil = (change: Partial<Coil> = {}): Coil => ({
  name: 'pump relay',
  resistance: 90,
  current: undefined,
  count: 1,
  suppression: 'resistor',
  ...change,
})
const fed = (coils: readonly Coil[], change: Partial<Input> = {}): Input => ({
  coils,
  volts: 14.4,
  original: undefined,
  rating: undefined,
  drop: undefined,
  ...change,
})
const levels = (input: Input) =>
  Object.fromEntries(
    relayAndSwitch
      .findings(input, relayAndSwitch.compute(input), say)
      .map(({ check, level }) => [check, level]),
  )

test.each([
  [1, 'pass'],
  [1.01, 'watch'],
  [3, 'watch'],
  [3.01, 'stop'],
] as const)('%s A added: %s', (current, level) => {
  expect(levels(fed([coil({ current })])).added).toBe(level)
})

test('coils in parallel add as conductances do', () => {
  const { added } = relayAndSwitch.compute(
    fed([coil({ count: 2 }), coil({ resistance: 60 }), coil({ current: 0.1 })]),
  )
  // 14.4 V × (2/90 + 1/60) + 0.1 A.
  expect(added).toBeCloseTo(0.66, 12)
})

test('of rating and drop the worse counts; either alone is enough', () => {
  const one = [coil({ current: 1 })]
  expect(levels(fed(one, { original: 6, rating: 10 })).switch).toBe('pass')
  expect(levels(fed(one, { original: 6, rating: 10, drop: 0.3 })).switch).toBe('watch')
  expect(levels(fed(one, { original: 9.5, rating: 10, drop: 0.1 })).switch).toBe('stop')
  expect(levels(fed(one, { drop: 0.1 })).switch).toBe('pass')
  expect(levels(fed(one, { rating: 10 })).switch).toBe('unknown')
})

test('a reversed diode stops, whatever else is not known', () => {
  const coils = [coil({ suppression: 'unknown' }), coil({ suppression: 'reversed' })]
  expect(levels(fed(coils)).suppression).toBe('stop')
  expect(levels(fed([coil({ suppression: 'unchecked' })])).suppression).toBe('unknown')
  expect(levels(fed([coil({ suppression: 'none' })])).suppression).toBe('watch')
})
