/**
 * A number that is worked from others by `+ - * /`: its quantity, the figures it deserves, and the
 * firmness of the weakest number in it. One that goes into a field must fit it.
 */
import { combine, dimensions, negate } from '../../quantity/index.ts'
import type { Quantity, Slip } from '../../quantity/types.ts'
import { slipWords } from '../input.ts'
import { weakest } from '../judge.ts'
import type { Expression, PublishedNumber } from '../published.ts'
import { figuresOf, type Precision } from '../show.ts'
import { reportSlip, unknownNumber, type Evaluated, type WorkContext } from './context.ts'
import { refusal } from './kinds.ts'

interface Term {
  readonly quantity: Quantity
  readonly precision: Precision
}

export function evaluateSum(
  ctx: WorkContext,
  number: PublishedNumber,
  expression: Expression,
): Evaluated {
  const parts: Evaluated[] = []
  const made = readTerm(ctx, number, expression, parts)
  const field = ctx.fields.get(number.id)
  const firmness = weakest(parts.map((one) => one.firmness))
  if (made === undefined) return { ...unknownNumber, firmness }
  if (isSlip(made)) return { ...unknownNumber, firmness, why: slipWords(made) }
  const refused = field && refusal(ctx, number, field, made.quantity)
  if (refused !== undefined) return { ...unknownNumber, firmness, why: slipWords(refused) }
  return { ...made.precision, quantity: made.quantity, firmness }
}

const isSlip = (made: Term | Slip): made is Slip => 'rule' in made

/**
 * One part of the sum; the numbers it names are added to `parts`. Undefined: one of them is not known.
 * A slip: there can be no such quantity, which is reported.
 */
function readTerm(
  ctx: WorkContext,
  number: PublishedNumber,
  part: Expression,
  parts: Evaluated[],
): Term | Slip | undefined {
  if (typeof part === 'number') return plainTerm(part)
  if ('ref' in part) {
    const value = ctx.valueOf(part.ref)
    parts.push(value)
    return value.quantity === null ? undefined : { quantity: value.quantity, precision: value }
  }
  if (part.op === 'negate') {
    const inner = readTerm(ctx, number, part.of, parts)
    if (inner === undefined || isSlip(inner)) return inner
    const turned = possible(ctx, number, negate(inner.quantity))
    return 'rule' in turned ? turned : { quantity: turned, precision: inner.precision }
  }
  const left = readTerm(ctx, number, part.left, parts)
  const right = readTerm(ctx, number, part.right, parts)
  if (left === undefined || isSlip(left)) return left
  if (right === undefined || isSlip(right)) return right
  const made = possible(ctx, number, combine(part.op, left.quantity, right.quantity))
  return 'rule' in made
    ? made
    : { quantity: made, precision: figuresOf(part.op, made, left, right) }
}

function plainTerm(value: number): Term {
  const { vector } = dimensions.number
  return {
    quantity: { value, vector, flavour: 'amount', of: 'number' },
    precision: { figures: null, given: true },
  }
}

/** What was made, reported where it can be none. */
function possible(
  ctx: WorkContext,
  number: PublishedNumber,
  made: Quantity | Slip,
): Quantity | Slip {
  if ('rule' in made) reportSlip(ctx, number, `\`${number.name}\``, made)
  return made
}
