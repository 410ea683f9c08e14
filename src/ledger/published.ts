/**
 * The ledger as data: what `dist/numbers.json` holds, what pages are handed, what the browser and
 * `verify` work again. Everything that is shown can be computed from this alone.
 *
 * Values are coherent SI. Ids: `note/name`, `note/block.field`, `note/block.list.0.field`, and for a
 * sum in prose `note/supply + back` (its text, spaces normalised). Lists are sorted by id; no clock.
 */
import type { Level } from '../../calculators/define.ts'
import type { Flavour, Of, Vector } from '../quantity/types.ts'

export type Kind = 'reading' | 'rated' | 'assumed' | 'chosen' | 'worked'
/** How firm a number is: the kind of its weakest root (assumed < chosen < rated < reading). */
export type Firmness = Exclude<Kind, 'worked'>

export type Expression =
  | number
  | { readonly ref: string }
  | { readonly op: '+' | '-' | '*' | '/'; readonly left: Expression; readonly right: Expression }
  | { readonly op: 'negate'; readonly of: Expression }

export interface PublishedSource {
  readonly key: string
  readonly title: string
  readonly edition?: string
  readonly read?: string
  readonly url?: string
  /** The page or clause, where the number stands. */
  readonly at?: string
}

export interface PublishedInstrument {
  readonly key: string
  readonly title: string
  readonly plusMinus?: string
}

export interface PublishedNumber {
  readonly id: string
  /** Slug of the note it stands in. */
  readonly note: string
  /** `pumpDraw`, `pump.flow`, `supply + back`. */
  readonly name: string
  readonly kind: Kind
  readonly firmness: Firmness
  /** null: cannot tell. */
  readonly value: number | null
  /** SI unit of `value`: `m³/s`. */
  readonly unit: string
  readonly of?: Of
  readonly vector: Vector
  readonly flavour: Flavour
  /** As the page prints it: `8.75 L/min`. */
  readonly shown: string
  /** The other system, when it differs: `2.31 gal/min`. */
  readonly shownOther?: string
  /** The unit of `shown`. */
  readonly display: string
  readonly displayOther?: string
  /** Significant figures it deserves; null: exact. */
  readonly figures: number | null
  readonly exact?: true
  /** What the author typed, for roots. */
  readonly typed?: string
  readonly plusMinus: number | null
  /** As the page prints it: `± 0.1 A`. */
  readonly plusMinusShown?: string
  /** Ids of the numbers it is worked from, directly. */
  readonly rests: readonly string[]
  /** Calculator id, for results. */
  readonly calculator: string | null
  /** Block id, for inputs and results of a block. */
  readonly block: string | null
  /** What the part is, for its figures: `Coolant pump` for `pump.mass`. */
  readonly part?: string
  readonly expression?: Expression
  readonly source: PublishedSource | null
  readonly instrument: PublishedInstrument | null
  /** Conditions of a reading: `14.0 V, warm`. */
  readonly at?: string
  readonly because?: string
  /** How a guess could be settled. */
  readonly settle?: string
  /** YYYY-MM-DD: when it was read, else the note's date. */
  readonly date: string
  readonly file: string
  readonly line: number
  readonly column: number
  /** Id of the number whose place it takes, from `date` on. */
  readonly replaces?: string
  /** Id of the prediction it is compared with. */
  readonly checks?: string
  /** Today's value where a later number took its place; else equal to `value`. */
  readonly now: number | null
}

/** What a block was given, field by field; enough to work it again. */
export type Given =
  | {
      readonly type: 'number'
      readonly id: string
      readonly how: 'literal' | 'assumed-default' | 'reference'
    }
  | { readonly type: 'word'; readonly value: string; readonly how: 'literal' | 'assumed-default' }
  | { readonly type: 'rows'; readonly rows: readonly Readonly<Record<string, Given>>[] }

export interface PublishedFinding {
  readonly check: string
  readonly level: Level
  readonly text: string
  readonly threshold: string
  readonly basis: string
}

export type PlainValue =
  number | string | null | readonly Readonly<Record<string, number | string | null>>[]

export interface PublishedBlock {
  /** `note/name` */
  readonly id: string
  readonly note: string
  readonly name: string
  readonly title: string
  readonly calculator: string
  readonly given: Readonly<Record<string, Given>>
  /** Fields left to usual values that this working had no need of. */
  readonly unused?: readonly string[]
  /** SI values, keys and texts as `compute` saw them; a field left out is absent. */
  readonly inputs: Readonly<Record<string, PlainValue>>
  /** Of its sums of money, where they are in another than US$: `EUR`. */
  readonly currency?: string
  readonly outputs: Readonly<Record<string, PlainValue>>
  readonly verdict: Level
  /** A pass that rests on something assumed. */
  readonly provisional: boolean
  /** The builder's reason for publishing a stop. */
  readonly accepted: string | null
  readonly findings: readonly PublishedFinding[]
  readonly working: readonly string[]
  readonly hazards: readonly string[]
  readonly file: string
  readonly line: number
}

export type Status = 'planned' | 'doing' | 'done' | 'redone' | 'abandoned'

export interface PublishedNote {
  readonly slug: string
  readonly title: string
  readonly date: string
  /** Last change, when the frontmatter gives it. */
  readonly changed?: string
  readonly phase: string
  readonly status: Status
  readonly summary?: string
  /** Id of the number that stands for the note where a link to it is passed on. */
  readonly headline?: string
  /** Only while writing: a finished site has no draft. */
  readonly draft?: true
  /** Slugs it had before it was renamed: each leads here. */
  readonly was?: readonly string[]
  readonly file: string
  /** Slugs of notes whose numbers it uses. */
  readonly restsOn: readonly string[]
}

/**
 * Where a part is: planned, ordered or bought and not yet fitted; fitted, or owned before and fitted;
 * paid for and a spare; out of the vehicle, or out and sold.
 */
export type PartStatus =
  'planned' | 'ordered' | 'bought' | 'fitted' | 'owned' | 'spare' | 'out' | 'sold'

export interface PublishedPart {
  /** `note/pump`; its figures are the numbers `note/pump.mass` and so on. */
  readonly id: string
  readonly note: string
  readonly name: string
  readonly what: string
  /** The name of a size, on which nothing rests. */
  readonly size?: string
  readonly status: PartStatus
  readonly used: boolean
  readonly date: string
  readonly remark?: string
  /** Names of its figures: `price`, `mass`, `cost`. */
  readonly figures: readonly string[]
  readonly file: string
  readonly line: number
}

/** A stretch of a line of text: words, or a number of the ledger. */
export type Piece =
  string | { readonly number: string; readonly unit?: string; readonly digits?: number }

export interface PublishedTask {
  /** `note/Task-3`: the third of its note, and where it stands on its page. */
  readonly id: string
  readonly note: string
  readonly pieces: readonly Piece[]
  /** A question ends in `?`. */
  readonly question: boolean
  /** `carried`: it stands in another note now, and is counted there. */
  readonly state: 'open' | 'done' | 'carried'
  /** Slug of the note that closed it, or that it was carried to. */
  readonly in?: string
  /** Slug of the note in which it was opened, where that is another. */
  readonly from?: string
  readonly line: number
}

/** A step of the work: a heading of a note, and what stands below it, up to the next. */
export interface PublishedStep {
  readonly note: string
  /** Its address on the note's page; '' for what stands before the first heading. */
  readonly name: string
  readonly depth: number
  readonly pieces: readonly Piece[]
  /** Ids of numbers and blocks, in the order of the text, each once. */
  readonly shows: readonly string[]
}

/** A figure that a note mentions and does not rest on. */
export interface PublishedQuote {
  readonly note: string
  readonly text: string
  readonly source: PublishedSource
  readonly line: number
}

/** A link that leads off the site. */
export interface PublishedLink {
  readonly note: string
  readonly text: string
  readonly url: string
  readonly line: number
}

export type UnitSystem = 'metric' | 'us'

export interface PublishedSite {
  readonly title: string
  readonly description: string
  readonly vehicle: string
  /** `This scenario is invented.` or the like; shown on every page. */
  readonly notice?: string
  readonly author?: string
  /** Where the site will be: `https://example.org`; makes permanent addresses whole. */
  readonly address?: string
  /** Where readers' questions go: a mail address, or an https address with `{title}` and `{text}`. */
  readonly questions?: string
  /** Share of what is still to be paid that is put by: `15 %`. */
  readonly contingency?: string
  /** First is what prose shows; a second is shown behind it. */
  readonly units: readonly UnitSystem[]
  /** A reader asked for these units: what the builder typed in others is shown in them too. */
  readonly asked?: true
}

export interface Published {
  readonly format: 1
  readonly site: PublishedSite
  readonly notes: readonly PublishedNote[]
  readonly numbers: readonly PublishedNumber[]
  readonly blocks: readonly PublishedBlock[]
  /** In the order of the notes, like the tasks, the quotes and the links. Left out where none are. */
  readonly parts?: readonly PublishedPart[]
  readonly tasks?: readonly PublishedTask[]
  readonly steps?: readonly PublishedStep[]
  readonly quotes?: readonly PublishedQuote[]
  readonly links?: readonly PublishedLink[]
}
