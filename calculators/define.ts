/**
 * What a calculator is: plain data about its fields, one pure function, and what it says of the result.
 *
 * `compute` takes and gives floats in coherent SI units (a temperature in kelvin, a gauge pressure in
 * pascal above the air's, a fraction as 0 to 1). The ranges of a field are written in the first of its
 * two display units, because that is how people know them. The text functions get `say`, which writes
 * an SI value in a unit; they never format by themselves.
 */
import type { Of } from '../src/quantity/types.ts'
import type { HazardId } from './hazards.ts'
import type { Plot } from './plot.ts'

export type Phase = 'cooling' | 'auxiliary' | 'traction' | 'vehicle' | 'workshop' | 'project'

/** One sentence of help, plain words. Ranges are in `units[0]`. */
export interface NumberField {
  readonly type: 'number'
  readonly label: string
  readonly symbol: string
  readonly of: Of
  readonly units: readonly [metric: string, us: string]
  /** Outside: refused. Inclusive. */
  readonly hard: readonly [number, number]
  /** Outside: reported as unusual. Inclusive. */
  readonly usual: readonly [number, number]
  readonly help: string
  /** The builder decides it (wire, bore, ratio): a literal is *chosen*, not *assumed*. */
  readonly choice?: true
  /** May be left out; `compute` then sees undefined. */
  readonly optional?: true
  /** May be left out; this value (in `units[0]`) is then used and listed as assumed. */
  readonly assume?: { readonly value: number; readonly because: string }
  /** May be left out; the site's settings may say it, where another input does not say it already. */
  readonly setting?: { readonly name: 'contingency'; readonly unless: string }
}

export interface ChoiceField {
  readonly type: 'choice'
  readonly label: string
  readonly help: string
  /** key as the author types it -> words as the page shows them. */
  readonly options: Readonly<Record<string, string>>
  readonly choice?: true
  readonly optional?: true
  readonly assume?: { readonly value: string; readonly because: string }
}

/** A name given to a part, a load or a point. */
export interface TextField {
  readonly type: 'text'
  readonly label: string
  readonly help: string
  readonly optional?: true
}

export interface ListField {
  readonly type: 'list'
  readonly label: string
  /** One row's name in the singular: `hose`. */
  readonly row: string
  readonly help: string
  readonly rows: readonly [min: number, max: number]
  readonly fields: Readonly<Record<string, NumberField | ChoiceField | TextField>>
  readonly optional?: true
}

export type Field = NumberField | ChoiceField | TextField | ListField
export type Fields = Readonly<Record<string, Field>>

export interface NumberOutput {
  readonly type: 'number'
  readonly label: string
  readonly symbol: string
  readonly of: Of
  readonly units: readonly [metric: string, us: string]
  /** A standard size (fuse, gauge) or a count: shown as it is, never rounded. */
  readonly exact?: true
  /** A sum keeps the places of its greater parts, whatever the figures of its least: figures it has at least. */
  readonly least?: number
}

export interface TextOutput {
  readonly type: 'text'
  readonly label: string
}

export interface TableOutput {
  readonly type: 'table'
  readonly label: string
  readonly columns: Readonly<Record<string, NumberOutput | TextOutput>>
}

export type Output = NumberOutput | TextOutput | TableOutput
export type Outputs = Readonly<Record<string, Output>>

type IsOptional<F> = F extends { readonly optional: true } ? true : false
type Plain<F> = F extends { readonly type: 'number' }
  ? number
  : F extends { readonly type: 'choice'; readonly options: infer O }
    ? Extract<keyof O, string>
    : F extends { readonly type: 'text' }
      ? string
      : F extends { readonly type: 'list'; readonly fields: infer R extends Fields }
        ? readonly InputValues<R>[]
        : never

/** What `compute` receives: SI numbers, keys of choices, texts, rows. */
export type InputValues<I extends Fields> = {
  readonly [K in keyof I]: IsOptional<I[K]> extends true ? Plain<I[K]> | undefined : Plain<I[K]>
}

type PlainOutput<F> = F extends { readonly type: 'number' }
  ? number | undefined
  : F extends { readonly type: 'text' }
    ? string | undefined
    : F extends { readonly type: 'table'; readonly columns: infer C extends Outputs }
      ? readonly { readonly [K in keyof C]: PlainOutput<C[K]> }[]
      : never

/** What `compute` gives: `undefined` where it cannot tell (never NaN, never a number out of validity). */
export type OutputValues<O extends Outputs> = { readonly [K in keyof O]: PlainOutput<O[K]> }

/**
 * Writes an SI value in a unit, or in that unit's counterpart where the site's first system has another:
 * `say(0.000146, 'L/min')` -> `8.76 L/min` or `2.31 gal/min`. Three figures unless told; one or two are
 * for round limits, `say(hotWatch, 'K', 1)` -> `5 K` or `9 Δ°F`. `undefined` -> `cannot tell`.
 */
export type Say = (value: number | undefined, unit: string, figures?: number) => string

export type Level = 'pass' | 'watch' | 'stop' | 'unknown'

export interface Check {
  /** A few words: `Coolant rise`. */
  readonly title: string
  /** Who says so: `published: UN R100, 5.1.3`, `common practice`, `the part's own sheet`, `model`. */
  readonly basis: string
  /** A stop that no builder may accept (see design of `accept`). */
  readonly never?: true
}

export interface Finding<C extends string = string> {
  /** Which of the calculator's checks this is; each check is reported once, always. */
  readonly check: C
  readonly level: Level
  /** One or two whole sentences for a builder: what is so, and what to do if it is not a pass. */
  readonly text: string
  /** The limit in words with its number: `at most 5 K (watch), 10 K (stop)`. */
  readonly threshold: string
}

export interface Source {
  readonly title: string
  /** Edition, year, revision. */
  readonly edition?: string
  /** Clause, page, table. */
  readonly at?: string
  /** `read`: somebody looked it up for this kit; `recalled`: from memory, to be confirmed; `model`: chosen here. */
  readonly trust: 'read' | 'recalled' | 'model'
}

/** A case worked outside this kit. Values are text with units, as an author would type them. */
export interface Example<
  I extends string = string,
  O extends string = string,
  C extends string = string,
> {
  readonly name: string
  /** Where the answer is printed, with place; `hand` only with the arithmetic in a comment beside it. */
  readonly from: string
  /** A list is an array of rows. */
  readonly inputs: Readonly<Partial<Record<I, ExampleValue>>>
  /** Outside answers, with the digits they were printed with. */
  readonly outputs: Readonly<Partial<Record<O, string>>>
  /** Relative tolerance. Left out: half a unit of the last digit printed. */
  readonly tolerance?: number
  /** Why it is wider than the printed digits, when it is. */
  readonly why?: string
  readonly findings?: Readonly<Partial<Record<C, Level>>>
}
export type ExampleValue = string | readonly Readonly<Record<string, string>>[]

export interface Definition<I extends Fields, O extends Outputs, C extends string> {
  readonly id: string
  readonly title: string
  readonly phase: Phase
  /** What it is for, in one or two sentences. */
  readonly purpose: string
  readonly inputs: I
  readonly outputs: O
  /** TeX, shown as MathML on the calculator's page. */
  readonly formula: readonly string[]
  /** Where it holds, and what is outside: whole sentences. */
  readonly validity: readonly string[]
  readonly checks: Readonly<Record<C, Check>>
  readonly hazards: readonly HazardId[]
  readonly sources: readonly Source[]
  compute(input: InputValues<I>): OutputValues<O>
  /** Every check once, in the order of `checks`. */
  findings(input: InputValues<I>, output: OutputValues<O>, say: Say): readonly Finding<C>[]
  /** The formula with numbers substituted, one step a line: `Q = P (1 − η) = 30 kW × 0.10 = 3.00 kW`. */
  working(input: InputValues<I>, output: OutputValues<O>, say: Say): readonly string[]
  /** Hazards that depend on the numbers (high voltage above 60 V). */
  moreHazards?(input: InputValues<I>, output: OutputValues<O>): readonly HazardId[]
  plot?(input: InputValues<I>, output: OutputValues<O>): Plot
  readonly examples: readonly Example<Extract<keyof I, string>, Extract<keyof O, string>, C>[]
}

/* Every calculator seen from outside, its exact names forgotten. */
export type InputValue =
  number | string | undefined | readonly Readonly<Record<string, number | string | undefined>>[]
export type OutputValue =
  number | string | undefined | readonly Readonly<Record<string, number | string | undefined>>[]
export interface Calculator extends Omit<
  Definition<Fields, Outputs, string>,
  'compute' | 'findings' | 'working' | 'moreHazards' | 'plot'
> {
  compute(input: Readonly<Record<string, InputValue>>): Readonly<Record<string, OutputValue>>
  findings(
    input: Readonly<Record<string, InputValue>>,
    output: Readonly<Record<string, OutputValue>>,
    say: Say,
  ): readonly Finding[]
  working(
    input: Readonly<Record<string, InputValue>>,
    output: Readonly<Record<string, OutputValue>>,
    say: Say,
  ): readonly string[]
  moreHazards?(
    input: Readonly<Record<string, InputValue>>,
    output: Readonly<Record<string, OutputValue>>,
  ): readonly HazardId[]
  plot?(
    input: Readonly<Record<string, InputValue>>,
    output: Readonly<Record<string, OutputValue>>,
  ): Plot
}

/** Checks the definition's types against each other and returns it, its exact names kept. */
export function defineCalculator<
  const I extends Fields,
  const O extends Outputs,
  const C extends string,
>(definition: Definition<I, O, C>): Definition<I, O, C> {
  return definition
}
