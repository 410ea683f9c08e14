/**
 * Two inputs of which one can never be above the other: the lowest and the highest voltage of a pack, a
 * steady and a peak current. In: both, as their fields are called. Out: what is said when they are the
 * wrong way round, or undefined; `heeding` puts that into a check. Nothing is swapped silently: only
 * the builder knows which of the two is wrong. A stop that holds with them as they are stays a stop.
 */
import type { Finding, Say } from './define.ts'
import { words } from '../src/words/words.ts'

type Input = readonly [name: string, value: number | undefined]
type Said = Pick<Finding, 'level' | 'text'>

export function wrongWay(
  say: Say,
  unit: string,
  [lower, low]: Input,
  [upper, high]: Input,
): string | undefined {
  return low === undefined || high === undefined || low <= high
    ? undefined
    : words`The ${lower}, ${say(low, unit)}, is above the ${upper}, ${say(high, unit)}: check which is which.`
}

export function heeding(said: Said, ...wrong: readonly (string | undefined)[]): Said {
  const [first] = wrong.filter((text) => text !== undefined)
  if (first === undefined) return said
  return said.level === 'stop'
    ? { level: 'stop', text: `${said.text} ${first}` }
    : { level: 'unknown', text: first }
}
