/** The ratios between motor and wheels, as gearing and hill start ask for them. */
import type { NumberField } from './define.ts'
import { words } from '../src/words/words.ts'

export const gearRatio = {
  type: 'number',
  label: words`Ratio`,
  symbol: 'i_g',
  of: 'number',
  units: ['', ''],
  hard: [0.2, 20],
  usual: [0.5, 12],
  help: words`Motor turns for one turn of its output.`,
  choice: true,
} as const satisfies NumberField

export const axleRatio = {
  type: 'number',
  label: words`Axle ratio`,
  symbol: 'i_a',
  of: 'number',
  units: ['', ''],
  hard: [0.5, 20],
  usual: [2, 10],
  help: words`Turns of the shaft for one turn of the wheels.`,
  choice: true,
} as const satisfies NumberField
