/**
 * A published ledger, looked up by id, by note and by calculator. Made once for each ledger and kept as
 * long as the ledger is, because every page of a site asks the same one.
 */
import { latestReplacements } from '../ledger/work/replacements.ts'
import type {
  Published,
  PublishedBlock,
  PublishedNote,
  PublishedNumber,
  PublishedPart,
  PublishedStep,
  PublishedTask,
} from '../ledger/published.ts'

export interface Lookup {
  readonly numbers: ReadonlyMap<string, PublishedNumber>
  readonly blocks: ReadonlyMap<string, PublishedBlock>
  readonly notes: ReadonlyMap<string, PublishedNote>
  /** The numbers that took the place of this one. */
  replacing(id: string): readonly PublishedNumber[]
  /** The latest of them. */
  replacedBy(id: string): PublishedNumber | undefined
  /** In the order of the ledger. */
  numbersOf(slug: string): readonly PublishedNumber[]
  tasksOf(slug: string): readonly PublishedTask[]
  stepsOf(slug: string): readonly PublishedStep[]
  part(id: string): PublishedPart | undefined
  /** In the order of the note. */
  blocksOf(slug: string): readonly PublishedBlock[]
  usesOf(calculator: string): readonly PublishedBlock[]
  /** Inputs and results of a block. */
  numbersIn(block: string): readonly PublishedNumber[]
}

const known = new WeakMap<Published, Lookup>()

export function lookupOf(published: Published): Lookup {
  const before = known.get(published)
  if (before !== undefined) return before
  const made = lookup(published)
  known.set(published, made)
  return made
}

function lookup(published: Published): Lookup {
  const later = Map.groupBy(
    published.numbers.filter(({ replaces }) => replaces !== undefined),
    ({ replaces }) => replaces ?? '',
  )
  const latest = latestReplacements(published.numbers)
  const numbersOf = Map.groupBy(published.numbers, ({ note }) => note)
  const inOrder = published.blocks.toSorted((a, b) => a.line - b.line)
  const blocksOf = Map.groupBy(inOrder, ({ note }) => note)
  const numbersIn = Map.groupBy(published.numbers, ({ block }) => block ?? '')
  const usesOf = Map.groupBy(published.blocks, ({ calculator }) => calculator)
  const tasksOf = Map.groupBy(published.tasks ?? [], ({ note }) => note)
  const stepsOf = Map.groupBy(published.steps ?? [], ({ note }) => note)
  const parts = new Map((published.parts ?? []).map((part) => [part.id, part]))
  return {
    numbers: new Map(published.numbers.map((number) => [number.id, number])),
    blocks: new Map(published.blocks.map((block) => [block.id, block])),
    notes: new Map(published.notes.map((note) => [note.slug, note])),
    replacing: (id) => later.get(id) ?? [],
    replacedBy: (id) => latest.get(id),
    numbersOf: (slug) => numbersOf.get(slug) ?? [],
    tasksOf: (slug) => tasksOf.get(slug) ?? [],
    stepsOf: (slug) => stepsOf.get(slug) ?? [],
    part: (id) => parts.get(id),
    blocksOf: (slug) => blocksOf.get(slug) ?? [],
    usesOf: (calculator) => usesOf.get(calculator) ?? [],
    numbersIn: (block) => numbersIn.get(block) ?? [],
  }
}
