/**
 * The permanent address of a block: its own small page. With the site's `address` in the settings it
 * is whole; without, it is the path below the site's base, which only leads there on the site itself.
 */
import type { PublishedBlock } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'

export function blockPath(block: Pick<PublishedBlock, 'note' | 'name'>, ctx: CardContext): string {
  return ctx.href(`/notes/${block.note}/${encodeURIComponent(block.name)}/`)
}

export const blockAddress = (
  block: Pick<PublishedBlock, 'note' | 'name'>,
  ctx: CardContext,
): string => whole(blockPath(block, ctx), ctx)

/** That of a calculator which is used alone. */
export const calculatorAddress = (
  { calculator }: Pick<PublishedBlock, 'calculator'>,
  ctx: CardContext,
): string => whole(ctx.href(`/calculators/${calculator}/`), ctx)

function whole(path: string, ctx: CardContext): string {
  const { address } = ctx.published.site
  return address === undefined ? path : new URL(path, address).href
}
