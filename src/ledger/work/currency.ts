/**
 * Which currency a block adds up: the one that all its sums of money are in. What the calculator takes
 * for granted has none of its own. In: the block. Out: its currency where it is not the calculator's, or
 * what cannot be told since there are two, which is reported once.
 */
import { currencies } from '../../quantity/table.ts'
import { allOf } from '../../words/lists.ts'
import { words } from '../../words/words.ts'
import { givenNumbers } from '../given.ts'
import { currencyIn } from '../money.ts'
import type { PublishedBlock, PublishedNumber } from '../published.ts'
import { onlyRef } from '../refs.ts'
import type { Missing } from './compute.ts'
import { report, type WorkContext } from './context.ts'

interface BlockCurrency {
  readonly currency: string | undefined
  readonly mixed: readonly Missing[]
}

export function currencyOfBlock(ctx: WorkContext, block: PublishedBlock): BlockCurrency {
  const found = new Map<string, PublishedNumber>()
  for (const { id, how } of givenNumbers(block.given)) {
    const vector = how === 'assumed-default' ? undefined : ctx.ownValue(id).quantity?.vector
    const currency = vector && currencyIn(vector)
    const number = ctx.numbers.get(id)
    if (currency !== undefined && number !== undefined && !found.has(currency))
      found.set(currency, number)
  }
  const [first, ...more] = found.keys()
  if (more.length === 0) return { currency: first === currencies[0] ? undefined : first, mixed: [] }
  const sums = allOf([...found.keys()])
  const last = [...found.values()].at(-1)
  const named = [...found].map(
    ([currency, number]) => words`\`${nameIn(ctx, number)}\` is in ${currency}`,
  )
  if (last !== undefined)
    report(ctx, last, {
      rule: 'mixed-currencies',
      text: words`\`${block.name}\` can add up one currency, and has sums in ${sums}: ${named.join(', ')}`,
      hint: words`no rate of exchange is kept here: give all in one, at the day’s rate`,
    })
  const why = words`sums in ${sums}, and no rate of exchange is kept here`
  return { currency: undefined, mixed: [{ label: words`Money`, why }] }
}

/** The number that was named there, or the field itself. */
function nameIn({ numbers }: WorkContext, number: PublishedNumber): string {
  const ref = onlyRef(number.expression)
  const { name } = (ref === undefined ? undefined : numbers.get(ref)) ?? number
  return number.expression === undefined ? name.slice(name.indexOf('.') + 1) : name
}
