/**
 * What later numbers made of a worked number: its value as of its own day, and which of them moved it.
 * In: the worked ledger and one of its numbers. Out: undefined where none of them did.
 *
 * That a number rests on what was replaced is not enough: a block's results all rest on all that went
 * into it. So the number is worked again with each replacement undone, and compared.
 */
import type { Calculator } from '../../calculators/define.ts'
import type { Published, PublishedNumber } from './published.ts'
import type { WorkContext } from './work/context.ts'
import { latestReplacements } from './work/replacements.ts'
import { startWork } from './work/start.ts'

export interface Moved {
  /** Its value as of its day; null: it could not be told then. */
  readonly was: number | null
  /** The figures it had then; null: exact. */
  readonly figures: number | null
  /** The numbers that moved it since, each by itself. */
  readonly by: readonly PublishedNumber[]
}

type Calculators = ReadonlyMap<string, Calculator>

export function movedSince(
  published: Published,
  calculators: Calculators,
  number: PublishedNumber,
): Moved | undefined {
  const states = statesOf(published)
  if (states.latest.size === 0 || number.rests.length === 0) return undefined
  const since = replacedSince(states, number)
  if (since.length === 0) return undefined
  const then = stateOf(states, published, calculators, `as of ${number.date}`, (replacements) => {
    replacements.clear()
    for (const [id, later] of asOf(states, published, number.date)) replacements.set(id, later)
  })
  const { id, date, value } = number
  const by = since.filter(({ replaces = '' }) => {
    const before = asOf(states, published, date).get(replaces)
    const undone = stateOf(
      states,
      published,
      calculators,
      `without ${replaces} ${before?.id ?? ''}`,
      (replacements) => {
        if (before === undefined) replacements.delete(replaces)
        else replacements.set(replaces, before)
      },
    )
    return valueIn(undone, id) !== value
  })
  return { was: valueIn(then, id), figures: then.ownValue(id).figures, by }
}

const valueIn = (ctx: WorkContext, id: string): number | null =>
  ctx.ownValue(id).quantity?.value ?? null

/** What is asked for by every number of every page is made once for each ledger. */
interface States {
  readonly numbers: ReadonlyMap<string, PublishedNumber>
  readonly latest: ReadonlyMap<string, PublishedNumber>
  readonly days: Map<string, ReadonlyMap<string, PublishedNumber>>
  readonly worked: Map<string, WorkContext>
}

const known = new WeakMap<Published, States>()

function statesOf(published: Published): States {
  const before = known.get(published)
  if (before !== undefined) return before
  const made: States = {
    numbers: new Map(published.numbers.map((number) => [number.id, number])),
    latest: latestReplacements(published.numbers),
    days: new Map(),
    worked: new Map(),
  }
  known.set(published, made)
  return made
}

function asOf({ days }: States, published: Published, day: string) {
  const before = days.get(day)
  if (before !== undefined) return before
  const made = latestReplacements(published.numbers, day)
  days.set(day, made)
  return made
}

/** The ledger with other replacements in force; each number of it is worked when it is asked for. */
function stateOf(
  { worked }: States,
  published: Published,
  calculators: Calculators,
  key: string,
  change: (replacements: WorkContext['replacements']) => void,
): WorkContext {
  const before = worked.get(key)
  if (before !== undefined) return before
  const made = startWork(published, calculators, undefined)
  change(made.replacements)
  worked.set(key, made)
  return made
}

/** Later numbers on the way down from this one, as it is worked now. */
function replacedSince({ numbers, latest }: States, number: PublishedNumber): PublishedNumber[] {
  const seen = new Set<string>()
  const found: PublishedNumber[] = []
  const walk = (id: string): void => {
    if (seen.has(id)) return
    seen.add(id)
    const later = latest.get(id)
    if (later === undefined) {
      numbers.get(id)?.rests.forEach(walk)
      return
    }
    if (later.date > number.date) found.push(later)
    walk(later.id)
  }
  number.rests.forEach(walk)
  return found
}
