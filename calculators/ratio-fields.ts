/** The ratios between motor and wheels, as gearing and hill start ask for them. */
import type { NumberField } from './define.ts'

export const gearRatio = {
  type: 'number',
  label: 'Ratio',
  symbol: 'i_g',
  of: 'number',
  units: ['', ''],
  hard: [0.2, 20],
  usual: [0.5, 12],
  help: 'Motor turns for one turn of its output.',
  choice: true,
} as const satisfies NumberField

export const axleRatio = {
  type: 'number',
  label: 'Axle ratio',
  symbol: 'i_a',
  of: 'number',
  units: ['', ''],
  hard: [0.5, 20],
  usual: [2, 10],
  help: 'Turns of the shaft for one turn of the wheels.',
  choice: true,
} as const satisfies NumberField
