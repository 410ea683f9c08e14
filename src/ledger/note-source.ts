/**
 * What reading a note gives: its numbers, blocks and uses of names, nothing resolved yet, every piece
 * with its place. Places of elements are kept as offsets, by which the page finds them again.
 */
import type { Problem } from './problems.ts'
import type { Kind, PartStatus } from './published.ts'
import type { NoteMeta } from './site-file.ts'

export interface At {
  readonly line: number
  readonly column: number
}

/** What stands in braces, its names not resolved yet. */
export type Sum =
  | number
  | (At & { readonly path: readonly string[] })
  | { readonly op: '+' | '-' | '*' | '/'; readonly left: Sum; readonly right: Sum }
  | { readonly op: 'negate'; readonly of: Sum }

export interface RootSource extends At {
  readonly name: string
  readonly kind: Exclude<Kind, 'worked'>
  readonly value: string
  readonly plusMinus?: string
  readonly instrument?: string
  readonly source?: string
  readonly at?: string
  readonly because?: string
  readonly settle?: string
  readonly on?: string
  readonly replaces?: Sum
  readonly checks?: Sum
  readonly valueAt: At
  /** Where the instrument or the source is named. */
  readonly whoAt?: At
}

/** A sum with a name: `<Show id="total" value={a + b} />`. */
export interface NamedSum extends At {
  readonly name: string
  readonly sum: Sum
}

export type RawInput = At &
  (
    | { readonly type: 'text'; readonly text: string }
    | { readonly type: 'sum'; readonly sum: Sum; readonly source: string }
    | {
        readonly type: 'rows'
        readonly rows: readonly Readonly<Record<string, RawInput>>[]
        /** Parts of the notes that are rows as well, before those written out. */
        readonly parts?: PartsWord
      }
    /** A number that is already known by its id: in the rows that parts become. */
    | { readonly type: 'number'; readonly id: string }
    /** Given and not understood, which was told where it was read. */
    | { readonly type: 'unread' }
  )

/** `{parts}`, `{parts.out}`, …: which parts of the notes become rows of a list. */
export interface PartsWord extends At {
  readonly which: 'fitted' | 'out' | 'planned' | 'all'
}

/** A figure of a part, as its author gives it. */
export type PartFigure =
  'quantity' | 'price' | 'mass' | 'x' | 'z' | 'load' | 'power' | 'duty' | 'surge'

export interface PartSource extends At {
  readonly name: string
  readonly what: string
  readonly size?: string
  readonly status: PartStatus
  readonly used: boolean
  readonly on?: string
  readonly remark?: string
  readonly figures: Readonly<Partial<Record<PartFigure, RawInput>>>
  /** Where its figures stand, but the price. */
  readonly source?: string
  readonly at?: string
  /** An instrument or a source that says the price: the receipts, a price list. */
  readonly priced?: string
  readonly sourceAt?: At
}

/** A line of text that may hold numbers: words, and where in the file a number stands. */
export type RawPiece = string | { readonly offset: number }

export interface TaskSource extends At {
  readonly offset: number
  readonly done: boolean
  readonly pieces: readonly RawPiece[]
  /** A link to a note at its end, after `closed in` or `opened in`. */
  readonly ends?: { readonly how: 'closed' | 'opened'; readonly slug: string } & At
}

/** A heading, which is a step of the work. */
export interface StepSource extends At {
  /** Its address on the page. */
  readonly name: string
  readonly depth: number
  readonly pieces: readonly RawPiece[]
  readonly offset: number
}

/** A link in the text, as it is written. */
export interface LinkSource extends At {
  readonly url: string
  readonly text: string
}

/** A Markdown table inside a block: its rows by heading. */
export interface RawTable extends At {
  readonly headings: readonly string[]
  readonly rows: readonly Readonly<Record<string, RawInput>>[]
}

export interface BlockSource extends At {
  readonly name: string
  readonly use: string
  readonly useAt: At
  readonly title?: string
  readonly accept?: string
  readonly given: Readonly<Record<string, RawInput>>
  readonly tables: readonly RawTable[]
  /** A table was meant that is none, which was told where it stands. */
  readonly unreadTable?: true
}

/** Something on the page that the ledger fills in. */
export type Use = At & { readonly offset: number } & (
    | { readonly type: 'sum'; readonly sum: Sum; readonly text: string; readonly linked: boolean }
    | {
        readonly type: 'show'
        /** When the sum has a name of its own. */
        readonly name?: string
        readonly sum: Sum
        readonly text: string
        readonly unit?: string
        readonly digits?: number
        readonly linked: boolean
      }
    | { readonly type: 'root'; readonly name: string; readonly linked: boolean }
    | { readonly type: 'table'; readonly names: readonly string[] }
    | { readonly type: 'block'; readonly name: string }
    | { readonly type: 'part'; readonly name: string; readonly linked: boolean }
    | { readonly type: 'nominal'; readonly text: string }
    | { readonly type: 'quoted'; readonly text: string; readonly source: string }
  )

/** A picture that a note shows or links to. */
export interface PictureUse extends At {
  /** As typed. */
  readonly url: string
  /** Within the content folder, `/` between parts. */
  readonly path: string
}

export interface NoteImport extends At {
  readonly local: string
  /** The name in the other note; `*` for all of them. */
  readonly imported: string
  /** Slug of the other note. */
  readonly from: string
}

/** A name that is neither the ledger's nor bound in its note. */
export interface UnknownName extends At {
  readonly name: string
  /** The likely slip, where one is seen in the note itself; `sure`: whatever other notes have. */
  readonly hint?: string
  readonly sure?: true
}

/** A note that is imported and is not there. */
export interface LostNote extends At {
  readonly path: string
  readonly hint?: string
}

export interface NoteSource {
  readonly slug: string
  /** As messages name it. */
  readonly file: string
  /** Absolute. */
  readonly path: string
  /** The file as it is. */
  readonly raw: string
  readonly meta: NoteMeta
  readonly imports: readonly NoteImport[]
  readonly roots: readonly RootSource[]
  readonly sums: readonly NamedSum[]
  readonly blocks: readonly BlockSource[]
  readonly parts: readonly PartSource[]
  readonly tasks: readonly TaskSource[]
  readonly steps: readonly StepSource[]
  readonly links: readonly LinkSource[]
  readonly uses: readonly Use[]
  readonly pictures: readonly PictureUse[]
  /** Every name that its elements give, also where nothing came of it. */
  readonly given: ReadonlySet<string>
  /** Names that MDX binds in this note. */
  readonly bound: ReadonlySet<string>
  readonly unknown: readonly UnknownName[]
  readonly lostNotes: readonly LostNote[]
  /** Heading id -> its line. */
  readonly headings: ReadonlyMap<string, At>
  readonly problems: readonly Problem[]
}
