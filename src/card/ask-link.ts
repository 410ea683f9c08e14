/** The link by which to ask the builder about a block, where the settings name a way. */
import type { PublishedBlock } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { escape } from './html.ts'
import { askHref } from './take/ask.ts'
import { changedFigures } from './take/changed.ts'
import { words } from '../words/words.ts'

/** With a reader's figures in it, where some are in force; '' where nobody is to be asked. */
export function askHtml(block: PublishedBlock, ctx: CardContext): string {
  const { questions } = ctx.published.site
  if (questions === undefined) return ''
  const href = escape(askHref(block, ctx, questions, changedFigures(block, ctx)))
  return ` <a class="ask" href="${href}">${words`Ask about this block`}</a>`
}
