/**
 * What pages draw on: the published ledger, every calculator, and the questions that more than one
 * page asks of them. Nothing is worked out here.
 */
import { published } from 'virtual:worked-notes'
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { contextOf, verdictName, type CardContext, type VerdictName } from '../card/index.ts'
import type { PublishedBlock, PublishedNote, PublishedNumber } from '../ledger/published.ts'
import { phases } from '../ledger/site-file.ts'

export const { site } = published

const loaded = await Promise.all(
  Object.entries(registry).map(async ([id, load]): Promise<[string, Calculator]> => [
    id,
    await load(),
  ]),
)
export const calculators: ReadonlyMap<string, Calculator> = new Map(loaded)

export function pageContext(page?: string): CardContext {
  return contextOf(published, { base: import.meta.env.BASE_URL, page, calculators })
}

/** Notes in the order they were written. */
export const notes: readonly PublishedNote[] = published.notes.toSorted(
  (a, b) => a.date.localeCompare(b.date, 'en') || (a.slug < b.slug ? -1 : 1),
)

export function phaseWords(phase: string): string {
  return phases[phase] ?? phase
}

export interface PhaseOfNotes {
  readonly phase: string
  readonly title: string
  readonly notes: readonly PublishedNote[]
}

/** Phases in the order of the work, those with notes only. */
export function notesByPhase(): readonly PhaseOfNotes[] {
  const known = [...Object.keys(phases), ...notes.map(({ phase }) => phase)]
  return [...new Set(known)]
    .map((phase) => ({
      phase,
      title: phaseWords(phase),
      notes: notes.filter((note) => note.phase === phase),
    }))
    .filter((group) => group.notes.length > 0)
}

export function blocksOf(slug: string): readonly PublishedBlock[] {
  return published.blocks.filter(({ note }) => note === slug).toSorted((a, b) => a.line - b.line)
}

export function numbersOf(slug: string): readonly PublishedNumber[] {
  return published.numbers.filter(({ note }) => note === slug)
}

/** Guesses that the author or a calculator made: roots of kind `assumed`. */
export function guessesIn(slug: string): readonly PublishedNumber[] {
  return numbersOf(slug).filter(({ kind, rests }) => kind === 'assumed' && rests.length === 0)
}

const worstFirst: readonly VerdictName[] = [
  'stop',
  'accepted',
  'unknown',
  'watch',
  'provisional',
  'pass',
]

/** How many blocks have which verdict, worst first. */
export function tally(
  blocks: readonly PublishedBlock[],
): readonly (readonly [VerdictName, number])[] {
  return worstFirst
    .map((name) => [name, blocks.filter((block) => verdictName(block) === name).length] as const)
    .filter(([, many]) => many > 0)
}
