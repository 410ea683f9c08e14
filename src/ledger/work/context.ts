/**
 * What every step of the working may look at: the ledger by id, what has come about so far, and the
 * problems found. Made once for each time that a ledger is worked, and thrown away after, unless the
 * ledger is kept open.
 *
 * `ownValue` and `valueOf` stand here because sums and blocks ask for values, which ask for sums and
 * blocks. They differ where a later number took a number's place: `valueOf` gives the later one's.
 */
import type { Calculator, NumberField } from '../../../calculators/define.ts'
import type { Quantity, Slip } from '../../quantity/types.ts'
import type { Problem } from '../problems.ts'
import type { Firmness, Published, PublishedBlock, PublishedNumber } from '../published.ts'
import { problemAt, type Said } from '../report.ts'
import type { Precision } from '../show.ts'

/** A number as evaluated: `null` where it cannot be told. */
export interface Evaluated extends Precision {
  readonly quantity: Quantity | null
  readonly firmness: Firmness
  /** Why it cannot be told, where that lies in the number itself. */
  readonly why?: string
}

export const unknownNumber: Evaluated = {
  quantity: null,
  firmness: 'assumed',
  figures: null,
  given: false,
}

export interface WorkContext {
  readonly published: Published
  readonly calculators: ReadonlyMap<string, Calculator>
  /** What was given or is summed; the results of blocks come about in `done`. */
  readonly numbers: Map<string, PublishedNumber>
  readonly blocks: Map<string, PublishedBlock>
  /** Id of a block's input -> the field it goes into. */
  readonly fields: Map<string, NumberField>
  /** Ids of inputs that were left out: the calculator's own value stands there. */
  readonly defaults: Set<string>
  /** Id of a number -> the later number that stands for it. */
  readonly replacements: Map<string, PublishedNumber>
  /** Slug of a note -> its date. */
  readonly dates: ReadonlyMap<string, string>
  readonly done: {
    readonly numbers: Map<string, Evaluated>
    readonly blocks: Map<string, PublishedBlock>
    readonly results: Map<string, PublishedNumber>
    /** Id of a block -> ids of its results. */
    readonly resultsOf: Map<string, string[]>
  }
  /** Ids being worked at this moment, outermost first. */
  readonly way: string[]
  /** Circles that have been reported. */
  readonly circles: Set<string>
  readonly problems: Problem[]
  /** The value that `id` itself has. */
  ownValue(id: string): Evaluated
  /** The value that stands for `id` now. */
  valueOf(id: string): Evaluated
}

export function report({ problems }: WorkContext, number: PublishedNumber, said: Said): void {
  problems.push(problemAt(number.file, number, said))
}

/** Reports what a quantity would not do, with what it was asked for in front. */
export function reportSlip(
  ctx: WorkContext,
  number: PublishedNumber,
  what: string,
  slip: Slip,
): void {
  report(ctx, number, { ...slip, text: what === '' ? slip.text : `${what}: ${slip.text}` })
}

/** `pump.flow` is the field `flow` to whoever filled it in. */
export const fieldName = (number: PublishedNumber): string =>
  `\`${number.name.slice(number.name.indexOf('.') + 1)}\``
