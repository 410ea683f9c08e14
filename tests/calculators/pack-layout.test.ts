/** Pack layout at its limits as typed: 97 % and the whole of what a part may see, and the worst of two parts. */
import { expect, test } from 'vitest'
import { packLayout } from '../../calculators/traction/pack-layout.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof packLayout.compute>[0]

const pack: Input = {
  series: 97,
  parallel: 1,
  cellMinimum: 2.5,
  cellNominal: 3.6,
  cellMaximum: 4,
  capacity: 30 * 3600,
  cellMass: 1,
  usable: 1,
  wanted: undefined,
  parts: [{ name: 'controller', least: undefined, most: 400 }],
}
const found = (change: Partial<Input>, check: string) => {
  const input = { ...pack, ...change }
  return packLayout
    .findings(input, packLayout.compute(input), say)
    .find((finding) => finding.check === check)
}
const seen = (most: number) => [{ name: 'controller', least: undefined, most }]

test.each([
  [97, 400, 'pass'],
  [97, 399, 'watch'],
  [100, 400, 'watch'],
  [100, 399, 'stop'],
  // 96 × 4.2 V is 403.2 V, and no float.
  [96, 403.2, 'watch'],
])('%d cells on a part for %d V is a %s', (series, most, level) => {
  const cellMaximum = most === 403.2 ? 4.2 : 4
  expect(found({ series, cellMaximum, parts: seen(most) }, 'highest')?.level).toBe(level)
})

test('of two parts that cut out early the worse is named', () => {
  const parts = [
    { name: 'heater', least: 250, most: 500 },
    { name: 'charger', least: 300, most: 500 },
    { name: 'converter', least: 260, most: 500 },
  ]
  const { level, text } = found({ parts }, 'lowest') ?? {}
  expect(level).toBe('watch')
  expect(text).toContain('“charger” cuts out')
})
