/** Which names fit a question, and which of them come first. */
import { expect, it } from 'vitest'
import { rankNames, type Name } from '../../src/live/search-names.ts'

const name = (label: string, value = '1 A'): Name => [label, value, '', '']
const names = [
  name('Fuse and wire of the pump: The wire carries', '8.8 A'),
  name('Fuse and wire of the pump: Fuse', '7.5 A'),
  name('Kühler, 30 × 40'),
  name('Pump draw', '1.5 A'),
]
const found = (asked: string): string[] => rankNames(names, asked).map(([label]) => label)

it.each([
  ['fuse', ['Fuse and wire of the pump: Fuse', 'Fuse and wire of the pump: The wire carries']],
  ['pump fu', ['Fuse and wire of the pump: The wire carries', 'Fuse and wire of the pump: Fuse']],
  ['PUMP DRAW', ['Pump draw']],
  ['kuhler', ['Kühler, 30 × 40']],
  ['kühl', ['Kühler, 30 × 40']],
  ['1.5', ['Pump draw']],
  ['umpire', []],
  ['ump', []],
  ['', []],
  ['  –  ', []],
])('%j finds %j', (asked, due) => {
  expect(found(asked)).toEqual(due)
})
