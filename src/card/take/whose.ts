/**
 * Whose figures leave the page: the builder's, or a reader's with so many changed. What is taken along
 * must say it, because away from the page nothing else does.
 */
import { words } from '../../words/words.ts'
import { counted } from '../../words/counted.ts'

interface Edition {
  /** As the page prints it, where the ledger at hand is shown in other units than the builder's. */
  readonly edition?: string
}

export type Whose =
  | (Edition & { readonly who: 'builder' })
  | (Edition & { readonly who: 'reader'; readonly changed: number })
  /** A calculator used alone. */
  | { readonly who: 'nobody' }

/** A sentence. */
export function whoseWords(whose: Whose): string {
  if (whose.who === 'nobody') return words`A reader’s figures, of no note: nobody has built it so.`
  return whose.who === 'builder'
    ? words`The builder’s figures.`
    : counted(
        whose.changed,
        words`A reader’s figures, not the builder’s: ${whose.changed} figure changed.`,
        words`A reader’s figures, not the builder’s: ${whose.changed} figures changed.`,
      )
}
