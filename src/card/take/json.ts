/**
 * The ledger as a file a reader takes along: what `numbers.json` holds, and at its end whose figures
 * these are, the caution texts of its hazards and the standing words. It reads as `numbers.json` does.
 */
import { hazards, standingWords } from '../../../calculators/hazards.ts'
import type { Published } from '../../ledger/published.ts'
import { recordText } from '../../ledger/record.ts'
import { inOrder } from './hazard-line.ts'
import { whoseWords, type Whose } from './whose.ts'

export function jsonText(published: Published, whose: Whose): string {
  const ids = inOrder(published.blocks.flatMap((block) => block.hazards))
  return recordText(published, {
    whose: { ...whose, words: whoseWords(whose) },
    hazards: ids.map((id) => ({ id, ...hazards[id] })),
    standing: standingWords,
  })
}
