/**
 * Numbers and blocks that rest on each other in a circle: walked into once, and reported once, with
 * every place of the circle.
 */
import type { WorkContext } from './context.ts'
import { words } from '../../words/words.ts'

/** Walks into `id`; a way that comes back to itself gives `otherwise`. */
export function enter<T>(ctx: WorkContext, id: string, otherwise: T, walk: () => T): T {
  const from = ctx.way.indexOf(id)
  if (from >= 0) {
    reportCircle(ctx, ctx.way.slice(from))
    return otherwise
  }
  ctx.way.push(id)
  const value = walk()
  ctx.way.pop()
  return value
}

function reportCircle(ctx: WorkContext, ids: readonly string[]): void {
  const key = [...ids].sort().join(' ')
  if (ctx.circles.has(key)) return
  ctx.circles.add(key)
  const places = ids.flatMap((id) => {
    const one = ctx.numbers.get(id) ?? ctx.blocks.get(id)
    return one === undefined
      ? []
      : [{ id, file: one.file, line: one.line, column: 'column' in one ? one.column : 1 }]
  })
  const [first, ...rest] = places
  if (first === undefined) return
  ctx.problems.push({
    rule: 'circle',
    level: 'error',
    text: words`these numbers rest on each other in a circle: ${[...places, first].map(({ id }) => `\`${id}\``).join(' → ')}`,
    hint: words`one of them has to be given: measured, read from a sheet, assumed or chosen`,
    file: first.file,
    line: first.line,
    column: first.column,
    also: rest.map(({ file, line, column }) => ({ file, line, column })),
  })
}
