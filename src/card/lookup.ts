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
  number(id: string): PublishedNumber | undefined
  block(id: string): PublishedBlock | undefined
  note(slug: string): PublishedNote | undefined
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

/** Made when it is first asked for: after a reader's change most of it never is. */
function later<Made>(make: () => Made): () => Made {
  let made: { readonly it: Made } | undefined
  return () => (made ??= { it: make() }).it
}

function lookup(published: Published): Lookup {
  const { numbers, blocks, notes } = published
  const byId = <Entry extends { readonly id: string }>(list: readonly Entry[]) =>
    new Map(list.map((entry) => [entry.id, entry]))
  const numbersById = later(() => byId(numbers))
  const blocksById = later(() => byId(blocks))
  const notesBySlug = later(() => new Map(notes.map((note) => [note.slug, note])))
  const replacing = later(() =>
    Map.groupBy(
      numbers.filter((number) => number.replaces !== undefined),
      ({ replaces }) => replaces ?? '',
    ),
  )
  const latest = later(() => latestReplacements(numbers))
  const numbersOf = later(() => Map.groupBy(numbers, ({ note }) => note))
  const blocksOf = later(() =>
    Map.groupBy(
      blocks.toSorted((a, b) => a.line - b.line),
      ({ note }) => note,
    ),
  )
  const numbersIn = later(() => Map.groupBy(numbers, ({ block }) => block ?? ''))
  const usesOf = later(() => Map.groupBy(blocks, ({ calculator }) => calculator))
  const tasksOf = later(() => Map.groupBy(published.tasks ?? [], ({ note }) => note))
  const stepsOf = later(() => Map.groupBy(published.steps ?? [], ({ note }) => note))
  const parts = later(() => byId(published.parts ?? []))
  return {
    number: (id) => numbersById().get(id),
    block: (id) => blocksById().get(id),
    note: (slug) => notesBySlug().get(slug),
    replacing: (id) => replacing().get(id) ?? [],
    replacedBy: (id) => latest().get(id),
    numbersOf: (slug) => numbersOf().get(slug) ?? [],
    tasksOf: (slug) => tasksOf().get(slug) ?? [],
    stepsOf: (slug) => stepsOf().get(slug) ?? [],
    part: (id) => parts().get(id),
    blocksOf: (slug) => blocksOf().get(slug) ?? [],
    usesOf: (calculator) => usesOf().get(calculator) ?? [],
    numbersIn: (block) => numbersIn().get(block) ?? [],
  }
}
