/**
 * `nearestName`: the name that was meant, or none.
 */
import { expect, test } from 'vitest'
import { nearestName } from '../../src/quantity/index.ts'

test.each([
  ['pumpDrew', ['pumpDraw', 'pumpFlow'], 'pumpDraw'],
  ['pumpdraw', ['pumpDrew', 'pumpDraw'], 'pumpDraw'],
  ['radaitor', ['radiator', 'radio'], 'radiator'],
  ['kw', ['kg', 'kW'], 'kW'],
  ['KW', ['MW', 'kW'], 'kW'],
  ['flow', ['pressure', 'height'], undefined],
  ['x', ['y', 'z'], undefined],
  ['ab', ['cd'], undefined],
  ['', ['a'], undefined],
  ['anything', [], undefined],
  ['fuse', ['fuze', 'fuss'], 'fuze'],
])('%s among %j: %s', (read, known, meant) => {
  expect(nearestName(read, known)).toBe(meant)
})
