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
  /** SI values, keys and texts as `compute` saw them; a field left out is absent. */
  readonly inputs: Readonly<Record<string, PlainValue>>
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
  readonly file: string
  /** Slugs of notes whose numbers it uses. */
  readonly restsOn: readonly string[]
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
  /** First is what prose shows; a second is shown behind it. */
  readonly units: readonly UnitSystem[]
}

export interface Published {
  readonly format: 1
  readonly site: PublishedSite
  readonly notes: readonly PublishedNote[]
  readonly numbers: readonly PublishedNumber[]
  readonly blocks: readonly PublishedBlock[]
}
