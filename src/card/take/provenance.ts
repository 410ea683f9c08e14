/**
 * Where something taken from a page comes from, line by line: vehicle and site, the note with its date
 * and edition, the block's permanent address, and whose figures it holds. The edition is that of the
 * builder's note, also where a reader's figures stand in it.
 */
import type { PublishedBlock } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'
import { editionOf } from '../edition.ts'
import { dateWords } from '../words.ts'
import { blockAddress, calculatorAddress } from './address.ts'
import { whoseWords, type Whose } from './whose.ts'
import { words } from '../../words/words.ts'

export function provenance(
  block: PublishedBlock,
  ctx: CardContext,
  whose: Whose,
): readonly string[] {
  const published = (ctx.builder ?? ctx).published
  const { title, vehicle, notice } = published.site
  const note = ctx.note(block.note)
  const site = [`${title}: ${vehicle}`, ...(notice === undefined ? [] : [notice])]
  if (whose.who === 'nobody') return [...site, calculatorAddress(block, ctx), whoseWords(whose)]
  const date = note === undefined ? '' : `, ${dateWords(note.changed ?? note.date)}`
  const edition = whose.edition ?? editionOf(published, block.note)
  return [
    ...site,
    words`Note: ${`${note?.title ?? block.note}${date}`}, edition ${edition}`,
    blockAddress(block, ctx),
    whoseWords(whose),
  ]
}
