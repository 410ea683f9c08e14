/**
 * Works the ledger: from what was given to every value, result, verdict and shown text.
 *
 * In: the ledger as data, worked or not; whatever was worked before is worked again from the roots.
 * Out: the same with everything filled in, and what is wrong with it. The build, the commands, the
 * browser and `verify` all call this, so a value can only come about in one way.
 */
import type { Calculator } from '../../calculators/define.ts'
import { byId, byPlace } from './order.ts'
import type { Problem } from './problems.ts'
import type { Published, PublishedNumber } from './published.ts'
import type { WorkContext } from './work/context.ts'
import { filled } from './work/fill.ts'
import { compareKinds } from './work/kinds.ts'
import { compareDates, doubledReplacements } from './work/replacements.ts'
import { startWork } from './work/start.ts'
import { workBlock } from './work/values.ts'

export interface Worked {
  readonly published: Published
  readonly problems: readonly Problem[]
}

export interface WorkOptions {
  /** Replacements count from their date on, up to this day (YYYY-MM-DD). Left out: all count. */
  readonly asOf?: string
}

export function work(
  published: Published,
  calculators: ReadonlyMap<string, Calculator>,
  options: WorkOptions = {},
): Worked {
  const ctx = startWork(published, calculators, options.asOf)
  const given = [...ctx.numbers.values()]
  const blocks = [...ctx.blocks.values()]
  for (const { id } of given) ctx.ownValue(id)
  for (const block of blocks) workBlock(ctx, block)
  for (const number of given) {
    compareKinds(ctx, number)
    compareDates(ctx, number)
  }
  const numbers = [...given.map((number) => filled(ctx, number)), ...ctx.done.results.values()]
  return {
    published: {
      ...published,
      numbers: numbers.map((number) => ({ ...number, now: nowOf(ctx, number) })).sort(byId),
      blocks: blocks.map((block) => ctx.done.blocks.get(block.id) ?? block).sort(byId),
    },
    problems: [...ctx.problems, ...doubledReplacements(given)].sort(byPlace),
  }
}

/** Today's value: that of the later number, where one took its place. */
export const nowOf = (ctx: WorkContext, { id, value }: PublishedNumber): number | null =>
  ctx.replacements.has(id) ? (ctx.valueOf(id).quantity?.value ?? null) : value
