/**
 * The value of a number by its id, worked when it is first asked for and then kept. A number is typed,
 * a sum, or the result of a block, which is then worked whole.
 */
import { sameKind } from '../../quantity/index.ts'
import type { PublishedBlock } from '../published.ts'
import { evaluateBlock } from './block.ts'
import { enter } from './circles.ts'
import { unknownNumber, type Evaluated, type WorkContext } from './context.ts'
import { evaluateSum } from './sum.ts'
import { evaluateTyped } from './typed.ts'

export function valueOf(ctx: WorkContext, id: string): Evaluated {
  const later = ctx.replacements.get(id)
  if (later === undefined) return ownValue(ctx, id)
  const value = valueOf(ctx, later.id)
  return isOfOtherKind(ctx, id, value) ? ownValue(ctx, id) : value
}

/** A current takes no voltage's place: that is told at the later number, and the older one stays. */
function isOfOtherKind(ctx: WorkContext, id: string, { quantity }: Evaluated): boolean {
  if (quantity === null || ctx.numbers.get(id)?.typed === undefined) return false
  const own = ownValue(ctx, id).quantity
  return own !== null && !sameKind(own, quantity)
}

export function ownValue(ctx: WorkContext, id: string): Evaluated {
  const known = ctx.done.numbers.get(id)
  if (known !== undefined) return known
  const number = ctx.numbers.get(id)
  if (number === undefined) return resultValue(ctx, id)
  const { expression } = number
  const evaluated = enter(ctx, id, unknownNumber, () =>
    expression === undefined ? evaluateTyped(ctx, number) : evaluateSum(ctx, number, expression),
  )
  ctx.done.numbers.set(id, evaluated)
  return evaluated
}

function resultValue(ctx: WorkContext, id: string): Evaluated {
  const block = ctx.blocks.get(blockIdOf(id))
  if (block === undefined) return unknownNumber
  workBlock(ctx, block)
  return ctx.done.numbers.get(id) ?? unknownNumber
}

/** `note/block.field…` -> `note/block`. */
function blockIdOf(id: string): string {
  const dot = id.indexOf('.', id.indexOf('/'))
  return dot < 0 ? id : id.slice(0, dot)
}

export function workBlock(ctx: WorkContext, block: PublishedBlock): void {
  if (!ctx.done.blocks.has(block.id))
    enter(ctx, block.id, undefined, () => evaluateBlock(ctx, block))
}
