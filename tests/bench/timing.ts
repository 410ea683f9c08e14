/** What the benches of whole commands share: the seconds of one, and the middle of several. */
import { spawn } from 'node:child_process'
import { resolve } from 'node:path'

const root = resolve(import.meta.dirname, '../..')

export const median = (list: readonly number[]): number => {
  const sorted = list.toSorted((a, b) => a - b)
  const middle = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1
    ? (sorted[middle] ?? NaN)
    : ((sorted[middle - 1] ?? NaN) + (sorted[middle] ?? NaN)) / 2
}

/** Seconds that a program of its own takes, from its start to its end. */
export function secondsOf(words: readonly string[]): Promise<number> {
  const start = performance.now()
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, words, {
      cwd: root,
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    })
    child.on('close', (code) =>
      code === 0
        ? done((performance.now() - start) / 1000)
        : failed(new Error(`${words.join(' ')} ended with ${code}`)),
    )
  })
}
