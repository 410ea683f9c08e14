/**
 * Every calculator there is, found by its file, so that one that is missing from the index is tested
 * too. A file that does not load is kept with its error, which the contract test reports.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import type { Calculator } from '../../calculators/define.ts'

export interface Found {
  /** Name of the file without `.ts`: the id it must have. */
  readonly id: string
  readonly phase: string
  readonly calculator?: Calculator
  readonly error?: unknown
}

const root = join(import.meta.dirname, '../../calculators')

const isCalculator = (value: unknown): value is Calculator =>
  typeof value === 'object' && value !== null && 'compute' in value && 'id' in value

async function load(phase: string, file: string): Promise<Found> {
  const id = basename(file, '.ts')
  try {
    const module: unknown = await import(join(root, phase, file))
    const values: unknown[] = Object.values(module ?? {})
    const calculator = values.find(isCalculator)
    return { id, phase, ...(calculator && { calculator }) }
  } catch (error) {
    return { id, phase, error }
  }
}

export const found: readonly Found[] = await Promise.all(
  readdirSync(root, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name: phase }) =>
      readdirSync(join(root, phase))
        .filter((file) => file.endsWith('.ts'))
        .filter((file) =>
          readFileSync(join(root, phase, file), 'utf8').includes('defineCalculator('),
        )
        .map((file) => load(phase, file)),
    ),
)

/** Those that load, for `describe.each`. */
export const all = found
  .flatMap(({ calculator }) => (calculator ? [calculator] : []))
  .sort((a, b) => (a.id < b.id ? -1 : 1))
