/** How the cells of a pack are joined: two fields that every calculator of the pack asks for. */
import type { NumberField } from './define.ts'
import { words } from '../src/words/words.ts'

export const cellsInSeries = {
  type: 'number',
  label: words`Cells in series`,
  symbol: 'N_s',
  of: 'number',
  units: ['', ''],
  hard: [1, 300],
  usual: [8, 200],
  help: words`As built.`,
  choice: true,
} as const satisfies NumberField

export const cellsInParallel = {
  type: 'number',
  label: words`Cells in parallel`,
  symbol: 'N_p',
  of: 'number',
  units: ['', ''],
  hard: [1, 100],
  usual: [1, 20],
  help: words`As built.`,
  choice: true,
  assume: { value: 1, because: words`one string` },
} as const satisfies NumberField
