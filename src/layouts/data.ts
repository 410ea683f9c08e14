/**
 * What pages draw on: the published ledger, every calculator, and the questions that more than one
 * page asks of them. Nothing is worked out here.
 */
import { base, published } from 'virtual:worked-notes'
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import type { Table } from '../../calculators/tables/define.ts'
import { tables as tableRegistry } from '../../calculators/tables/index.ts'
import { tablesRead } from '../../calculators/tables/readers.ts'
import { contextOf, lookupOf, type CardContext } from '../card/index.ts'
import type { PublishedBlock, PublishedNote, PublishedNumber } from '../ledger/published.ts'
import { phases, phaseWords } from '../ledger/site-file.ts'

export { phaseWords }
export const { site, parts = [], tasks = [] } = published

const loaded = await Promise.all(
  Object.entries(registry).map(async ([id, load]): Promise<[string, Calculator]> => [
    id,
    await load(),
  ]),
)
export const calculators: ReadonlyMap<string, Calculator> = new Map(loaded)

export const tables: readonly Table[] = await Promise.all(
  Object.values(tableRegistry).map((load) => load()),
)

export function pageContext(page?: string): CardContext {
  return contextOf(published, { base, page, calculators })
}

/** For the page that a block has to itself. */
export function aloneContext(block: string): CardContext {
  return contextOf(published, { base, alone: block, calculators })
}

/** Notes in the order they were written. */
export const notes: readonly PublishedNote[] = published.notes.toSorted(
  (a, b) => a.date.localeCompare(b.date, 'en') || (a.slug < b.slug ? -1 : 1),
)

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
  return lookupOf(published).blocksOf(slug)
}

export function numbersOf(slug: string): readonly PublishedNumber[] {
  return lookupOf(published).numbersOf(slug)
}

/** The calculators that work with a standard table. */
export function readersOf(table: string): readonly Calculator[] {
  return [...calculators.values()].filter(({ id }) => tablesRead[id]?.includes(table))
}

/** The standard tables that a calculator works with. */
export function tablesOf(calculator: string): readonly Table[] {
  return tables.filter(({ id }) => tablesRead[calculator]?.includes(id))
}
