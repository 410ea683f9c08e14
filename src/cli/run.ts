/** Runs a command: its exit code, and one plain line instead of a stack when its words are wrong. */
import { resolve } from 'node:path'
import { UsageError } from './options.ts'

export async function run(
  command: (root: string, args: readonly string[]) => Promise<number>,
): Promise<void> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1'
  try {
    process.exitCode = await command(resolve(import.meta.dirname, '../..'), process.argv.slice(2))
  } catch (error) {
    if (!(error instanceof UsageError)) throw error
    console.error(error.message)
    process.exitCode = 2
  }
}
