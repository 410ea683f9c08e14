/**
 * A number that was given as text: read by its field, when it goes into one, else by itself. What it
 * was read as, and what is unusual about it, is said as a warning.
 */
import { parseQuantity } from '../../quantity/index.ts'
import type { ParsedQuantity } from '../../quantity/types.ts'
import { currencyOf } from '../money.ts'
import type { PublishedNumber } from '../published.ts'
import { readNumber } from '../range.ts'
import { resolutionOf } from '../show.ts'
import {
  fieldName,
  report,
  reportSlip,
  unknownNumber,
  type Evaluated,
  type WorkContext,
} from './context.ts'
import { words } from '../../words/words.ts'

/** What a part cost is known to the cent. */
const isExact = ({ part }: PublishedNumber, { figures, vector }: ParsedQuantity): boolean =>
  !Number.isFinite(figures) || (part !== undefined && currencyOf(vector) !== undefined)

export function evaluateTyped(ctx: WorkContext, number: PublishedNumber): Evaluated {
  const field = ctx.fields.get(number.id)
  const typed = number.typed ?? ''
  const read = field === undefined ? parseQuantity(typed) : readNumber(field, typed)
  if (!read.ok) {
    reportSlip(ctx, number, field === undefined ? '' : fieldName(number), read)
    return unknownNumber
  }
  const quantity = 'quantity' in read ? read.quantity : read
  if (quantity.remark !== undefined)
    report(ctx, number, { rule: 'read-as', level: 'warning', text: quantity.remark })
  if ('unusual' in read && !ctx.defaults.has(number.id)) {
    const text = words`${fieldName(number)}: \`${quantity.typed}\` is ${read.unusual}`
    report(ctx, number, { rule: 'unusual', level: 'warning', text })
  }
  const kind = number.kind === 'worked' ? 'assumed' : number.kind
  return {
    quantity,
    firmness: kind,
    figures: isExact(number, quantity) ? null : quantity.figures,
    given: kind === 'chosen' || ctx.defaults.has(number.id),
    unit: quantity.unit,
    ...resolutionOf(quantity),
  }
}
