/**
 * What every step of reading a note may look at: what the note is, the names in it, and what has been
 * read so far. Made once a note; nothing of its tree is kept here, since the page changes that later.
 */
import type { Node } from 'unist'
import { noteOwnNames } from '../names.ts'
import type {
  At,
  BlockSource,
  LinkSource,
  LostNote,
  NamedSum,
  NoteImport,
  PartSource,
  PictureUse,
  RootSource,
  StepSource,
  TaskSource,
  UnknownName,
  Use,
} from '../note-source.ts'
import type { Problem } from '../problems.ts'
import { problemAt, type Said } from '../report.ts'
import type { NoteMeta } from '../site-file.ts'

export interface ReadOptions {
  readonly slug: string
  readonly file: string
  readonly path: string
  readonly raw: string
  readonly meta: NoteMeta
  /** Slugs of all notes, by path relative to the notes' folder. */
  readonly slugOf: (specifier: string) => string | undefined
  readonly knownNotes: readonly string[]
  /** What is wrong with the note's text. */
  readonly textProblems?: readonly Problem[]
  /** Every file of the content folder, by its path there. */
  readonly files: readonly string[]
  /** Names in tags that could not be read. */
  readonly lost?: readonly string[]
}

export interface ReadContext {
  readonly options: ReadOptions
  /** Names that elements of the note give, wherever they stand: a name may be used above. */
  readonly given: ReadonlySet<string>
  /** Names that MDX binds in this note. */
  readonly bound: Set<string>
  readonly imports: NoteImport[]
  readonly roots: RootSource[]
  readonly sums: NamedSum[]
  readonly blocks: BlockSource[]
  readonly parts: PartSource[]
  readonly tasks: TaskSource[]
  readonly steps: StepSource[]
  readonly links: LinkSource[]
  readonly uses: Use[]
  readonly pictures: PictureUse[]
  /** Names that a slip told elsewhere leaves without a number: their uses are no faults of their own. */
  readonly lost: Set<string>
  /** Names of neither kind; another note may have them. */
  readonly unknown: UnknownName[]
  readonly lostNotes: LostNote[]
  /** Names given so far, each with its element. */
  readonly declared: Map<string, At>
  /** Element -> how many of it have no name of their own. */
  readonly unnamed: Map<string, number>
  /** Heading id -> its line. */
  readonly headings: Map<string, At>
  readonly problems: Problem[]
}

export function startRead(options: ReadOptions, given: ReadonlySet<string>): ReadContext {
  return {
    options,
    given,
    bound: new Set(noteOwnNames),
    imports: [],
    roots: [],
    sums: [],
    blocks: [],
    parts: [],
    tasks: [],
    steps: [],
    links: [],
    uses: [],
    pictures: [],
    lost: new Set(),
    unknown: [],
    lostNotes: [],
    declared: new Map(),
    unnamed: new Map(),
    headings: new Map(),
    problems: [],
  }
}

export function report({ options, problems }: ReadContext, at: At, said: Said): void {
  problems.push(problemAt(options.file, at, said))
}

export interface Start extends At {
  /** By which the page finds the element again. */
  readonly offset: number
}

export function startOf({ position }: Node): Start {
  const { line = 1, column = 1, offset = 0 } = position?.start ?? {}
  return { line, column, offset }
}

export const lineAndColumn = ({ line, column }: At): At => ({ line, column })
