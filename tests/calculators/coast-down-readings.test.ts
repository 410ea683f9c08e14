/**
 * Readings no coast-down can be read from: what is said of each, and that nothing is worked.
 *
 * The rule is the calculator's stated one: three readings a run, times rising, speeds falling, a run
 * one way.
 */
import { expect, test } from 'vitest'
import { coastDown } from '../../calculators/vehicle/coast-down.ts'
import type { ExampleValue } from '../../calculators/define.ts'
import { runExample } from './run-example.ts'

type Reading = readonly [name: string, way: string, time: string, speed: string]

function said(readings: readonly Reading[]) {
  const rows: ExampleValue = readings.map(([name, way, time, speed]) => ({
    name,
    way,
    time: `${time} s`,
    speed: `${speed} km/h`,
  }))
  const { output, findings } = runExample(coastDown, {
    name: '',
    from: '',
    inputs: { mass: '1100 kg', airTemperature: '20 °C', readings: rows },
    outputs: {},
  })
  const found = findings.find(({ check }) => check === 'readings')
  return { area: output.dragArea, level: found?.level, text: found?.text }
}

const there = [
  ['there', 'out', '0', '80'],
  ['there', 'out', '10.02', '70'],
  ['there', 'out', '21.77', '60'],
  ['there', 'out', '35.56', '50'],
] as const satisfies readonly Reading[]

test.each<readonly [words: string, more: readonly Reading[]]>([
  [
    'Run “back” has fewer than three readings.',
    [
      ['back', 'back', '0', '80'],
      ['back', 'back', '10', '70'],
    ],
  ],
  [
    'Run “back” goes both there and back: give each way its own name.',
    [
      ['back', 'back', '0', '80'],
      ['back', 'back', '10', '70'],
      ['back', 'out', '22', '60'],
    ],
  ],
  [
    'Run “back”: the times do not go up.',
    [
      ['back', 'back', '0', '80'],
      ['back', 'back', '10', '70'],
      ['back', 'back', '10', '60'],
    ],
  ],
  [
    'Run “back”: the speed does not go down; a gust, a slope or a slip of the pen.',
    [
      ['back', 'back', '0', '80'],
      ['back', 'back', '10', '70'],
      ['back', 'back', '22', '70'],
    ],
  ],
])('%s', (words, more) => {
  const { area, level, text } = said([...there, ...more])
  expect(text).toBe(words)
  expect(level).toBe('unknown')
  expect(area).toBeUndefined()
})

test('what is wrong with one run is nothing against the readings of a sound one', () => {
  expect(said(there).level).toBe('pass')
})
