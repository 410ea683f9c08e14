/**
 * Links names to numbers across notes. In: every note as read, and the calculators they use. Out: the
 * ledger as data with nothing worked yet (`work.ts` fills it in), and what each place on a page shows.
 *
 * A name's scope is its note; other notes reach it by import. Results of blocks have no entry yet.
 */
import type { Calculator } from '../../calculators/define.ts'
import type { CellUse } from './cells.ts'
import { defined } from './defined.ts'
import { linkBlock } from './link/blocks.ts'
import { startLink, type LinkContext, type LinkSettings } from './link/context.ts'
import { linkRoot, linkSum } from './link/numbers.ts'
import { linkPart } from './link/part.ts'
import { checkImports, checkNames } from './link/unknown.ts'
import type { Shown } from './link/shown.ts'
import { linkSteps } from './link/steps.ts'
import { linkTasks } from './link/tasks.ts'
import { linkUse } from './link/uses.ts'
import { outsideLinks } from './links.ts'
import type { NoteSource } from './note-source.ts'
import type { Problem } from './problems.ts'
import type { Published, PublishedNote, PublishedSite } from './published.ts'
import type { SiteSettings } from './site-file.ts'

export type { Shown } from './link/shown.ts'

export interface Linked {
  readonly published: Published
  /** note slug -> offset -> what is shown there. */
  readonly shown: ReadonlyMap<string, ReadonlyMap<number, Shown>>
  readonly cells: readonly CellUse[]
  readonly problems: readonly Problem[]
}

export function link(
  notes: readonly NoteSource[],
  site: LinkSettings,
  calculators: ReadonlyMap<string, Calculator>,
  knownCalculators: readonly string[],
): Linked {
  const ctx = startLink(notes, site, calculators, knownCalculators)
  for (const note of notes) {
    checkImports(ctx, note)
    checkNames(ctx, note)
  }
  const shown = new Map(notes.map((note) => [note.slug, linkNote(ctx, note)]))
  const { tasks, problems } = linkTasks(notes, shown)
  const links = outsideLinks(notes)
  return {
    published: {
      format: 1,
      site: publishedSite(site),
      notes: notes.map((note) => publishedNote(ctx, note)),
      numbers: [...ctx.numbers.values()],
      blocks: ctx.blocks,
      ...filled({
        parts: ctx.parts,
        tasks,
        steps: linkSteps(notes, shown),
        quotes: ctx.quotes,
        links,
      }),
    },
    shown,
    cells: ctx.cells,
    problems: [...ctx.problems, ...problems],
  }
}

/** Lists that have anything in them. */
function filled<T extends Readonly<Record<string, readonly unknown[]>>>(lists: T): Partial<T> {
  const made: Partial<T> = {}
  for (const name in lists) if (lists[name]?.length !== 0) made[name] = lists[name]
  return made
}

/** Enters a note's numbers and blocks; gives what is shown where on its page. */
function linkNote(ctx: LinkContext, note: NoteSource): Map<number, Shown> {
  for (const root of note.roots) linkRoot(ctx, note, root)
  for (const named of note.sums) linkSum(ctx, note, named)
  for (const part of note.parts) linkPart(ctx, note, part)
  for (const block of note.blocks) linkBlock(ctx, note, block)
  const places = new Map<number, Shown>()
  for (const use of note.uses) {
    const made = linkUse(ctx, note, use)
    if (made !== undefined) places.set(use.offset, made)
  }
  return places
}

function publishedSite(site: SiteSettings): PublishedSite {
  const { title, description, vehicle, notice, author, units, address, questions, contingency } =
    site
  return {
    title,
    description,
    vehicle,
    units,
    ...defined({ notice, author, address, questions, contingency }),
  }
}

function publishedNote({ dependencies }: LinkContext, note: NoteSource): PublishedNote {
  const { title, date, phase, status, changed, summary, headline, draft } = note.meta
  return {
    slug: note.slug,
    title,
    date,
    phase,
    status,
    ...defined({ changed, summary }),
    ...(headline === undefined ? {} : { headline: `${note.slug}/${headline.trim()}` }),
    ...(draft === true ? { draft } : {}),
    ...defined({ was: note.meta.was }),
    file: note.file,
    restsOn: [...(dependencies.get(note.slug) ?? [])].sort(),
  }
}
