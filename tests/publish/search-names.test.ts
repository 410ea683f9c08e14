/** Which names fit a question, and which of them come first. */
import { expect, it } from 'vitest'
import { rankNames, sharesWords, type Name } from '../../src/live/search-names.ts'

const name = (label: string, value = '1 A'): Name => [label, value, '', '']
const names: readonly Name[] = [
  name('Fuse and wire of the pump: The wire carries', '8.8 A'),
  name('Fuse and wire of the pump: Fuse', '7.5 A'),
  name('Kühler, 30 × 40'),
  name('Pump draw', '1.5 A'),
  ['Measured', '4.0 A', '', '', 'pumpDraw'],
]
const found = (asked: string): string[] => rankNames(names, asked).map(([label]) => label)

it.each([
  ['fuse', ['Fuse and wire of the pump: Fuse', 'Fuse and wire of the pump: The wire carries']],
  ['pump fu', ['Fuse and wire of the pump: The wire carries', 'Fuse and wire of the pump: Fuse']],
  ['PUMP DRAW', ['Pump draw']],
  ['kuhler', ['Kühler, 30 × 40']],
  ['kühl', ['Kühler, 30 × 40']],
  ['1.5', ['Pump draw']],
  ['pumpDraw', ['Measured']],
  ['pumpd', ['Measured']],
  ['...', []],
  ['umpire', []],
  ['ump', []],
  ['', []],
  ['  –  ', []],
])('%j finds %j', (asked, due) => {
  expect(found(asked)).toEqual(due)
})

it.each([
  ['pump', true],
  ['pumps', true],
  ['PUMPED up', true],
  ['kühler 4', true],
  ['zzzqqq', false],
  ['pump zzzqqq', false],
  ['...', false],
  ['', false],
])('a page about the pump shares words with %j: %s', (asked, due) => {
  expect(sharesWords('Up there the pump cools the Kühler with 4.0 A', asked)).toBe(due)
})
