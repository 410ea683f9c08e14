/**
 * What every step of the linking may look at: the notes and their names, the settings, the calculators,
 * and the ledger as it grows. Made once for all notes.
 */
import type { Calculator } from '../../../calculators/define.ts'
import type { CellUse } from '../cells.ts'
import type { At, BlockSource, NoteSource, PartSource } from '../note-source.ts'
import type { Problem } from '../problems.ts'
import type {
  PublishedBlock,
  PublishedNumber,
  PublishedPart,
  PublishedQuote,
} from '../published.ts'
import { problemAt, type Said } from '../report.ts'
import type { SiteSettings } from '../site-file.ts'

/** What a name of a note means there. */
export type Named =
  | { readonly type: 'number'; readonly name: string }
  | { readonly type: 'block'; readonly block: BlockSource }
  | { readonly type: 'part'; readonly part: PartSource }

/** The settings; not readable where some of their instruments or sources could not be read. */
export type LinkSettings = SiteSettings & { readonly readable: boolean }

export interface LinkContext {
  readonly site: LinkSettings
  /** Those in use, loaded. */
  readonly calculators: ReadonlyMap<string, Calculator>
  /** Ids of all there are. */
  readonly knownCalculators: readonly string[]
  readonly notes: ReadonlyMap<string, NoteSource>
  /** Slug of a note -> its own names. */
  readonly names: ReadonlyMap<string, ReadonlyMap<string, Named>>
  /** Slug of a note -> slugs of the notes whose numbers it uses. */
  readonly dependencies: ReadonlyMap<string, Set<string>>
  readonly numbers: Map<string, PublishedNumber>
  readonly blocks: PublishedBlock[]
  readonly parts: PublishedPart[]
  readonly quotes: PublishedQuote[]
  /** Where cells of tables are named; whether they are there is known when all is worked. */
  readonly cells: CellUse[]
  readonly problems: Problem[]
}

export function startLink(
  notes: readonly NoteSource[],
  site: LinkSettings,
  calculators: ReadonlyMap<string, Calculator>,
  knownCalculators: readonly string[],
): LinkContext {
  return {
    site,
    calculators,
    knownCalculators,
    notes: new Map(notes.map((note) => [note.slug, note])),
    names: new Map(notes.map((note) => [note.slug, namesOf(note)])),
    dependencies: new Map(notes.map((note) => [note.slug, new Set()])),
    numbers: new Map(),
    blocks: [],
    parts: [],
    quotes: [],
    cells: [],
    problems: [],
  }
}

function namesOf({ roots, sums, blocks, parts }: NoteSource): Map<string, Named> {
  const numbers = [...roots, ...sums]
  return new Map<string, Named>([
    ...numbers.map(({ name }) => [name, { type: 'number', name }] as const),
    ...blocks.map((block) => [block.name, { type: 'block', block }] as const),
    ...parts.map((part) => [part.name, { type: 'part', part }] as const),
  ])
}

export const ownName = (ctx: LinkContext, note: NoteSource, name: string): Named | undefined =>
  ctx.names.get(note.slug)?.get(name)

export const ownNames = (ctx: LinkContext, note: NoteSource): string[] => [
  ...(ctx.names.get(note.slug)?.keys() ?? []),
]

export function report({ problems }: LinkContext, note: NoteSource, at: At, said: Said): void {
  problems.push(problemAt(note.file, at, said))
}
