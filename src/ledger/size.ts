/** How much there is, in words. In: the ledger. Out: `10 notes, 2555 numbers, 57 blocks`. */
import { counted } from '../words/counted.ts'
import { words } from '../words/words.ts'
import type { Published } from './published.ts'

export function sizeWords({ notes, numbers, blocks }: Published): string {
  return [
    counted(notes.length, words`${notes.length} note`, words`${notes.length} notes`),
    counted(numbers.length, words`${numbers.length} number`, words`${numbers.length} numbers`),
    counted(blocks.length, words`${blocks.length} block`, words`${blocks.length} blocks`),
  ].join(', ')
}
