/**
 * What reading a note gives: its numbers, blocks and uses of names, nothing resolved yet, every piece
 * with its place. Places of elements are kept as offsets, by which the page finds them again.
 */
import type { Problem } from './problems.ts'
import type { Kind } from './published.ts'
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
    | { readonly type: 'rows'; readonly rows: readonly Readonly<Record<string, RawInput>>[] }
    /** Given and not understood, which was told where it was read. */
    | { readonly type: 'unread' }
  )

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
    | { readonly type: 'nominal'; readonly text: string }
    | { readonly type: 'quoted'; readonly text: string; readonly source: string }
  )

export interface NoteImport extends At {
  readonly local: string
  /** The name in the other note; `*` for all of them. */
  readonly imported: string
  /** Slug of the other note. */
  readonly from: string
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
  readonly uses: readonly Use[]
  /** Names that MDX binds in this note. */
  readonly bound: ReadonlySet<string>
  /** Heading id -> its line. */
  readonly headings: ReadonlyMap<string, At>
  readonly problems: readonly Problem[]
}
