/**
 * Whether a quantity is of the kind that is due: in a field, or beside the number whose place it takes
 * or that it is compared with. What does not fit is reported here.
 */
import type { NumberField } from '../../../calculators/define.ts'
import {
  dimensions,
  displayUnit,
  formatQuantity,
  inFirstCurrency,
  sameKind,
} from '../../quantity/index.ts'
import type { Quantity, Slip } from '../../quantity/types.ts'
import { unitsIn } from '../in-currency.ts'
import { currencyIn } from '../money.ts'
import type { PublishedNumber } from '../published.ts'
import { onlyRef } from '../refs.ts'
import { isToldOfPart } from '../part-kinds.ts'
import { rangeSlip, unitsAllowed, unusualRemark } from '../range.ts'
import { fieldName, report, reportSlip, type WorkContext } from './context.ts'
import { words } from '../../words/words.ts'

const wordsOf = (quantity: Quantity): string =>
  quantity.of === undefined
    ? words`a value in ${displayUnit(quantity, 'metric')}`
    : dimensions[quantity.of].words

/** Why a worked value may not go into a field, which is reported; undefined where it may. */
export function refusal(
  ctx: WorkContext,
  number: PublishedNumber,
  field: NumberField,
  quantity: Quantity,
): Slip | undefined {
  const due = dimensions[field.of]
  const own = { ...field, units: unitsIn(field.units, currencyIn(quantity.vector)) }
  // Which currency a block is in, its sums say.
  const alike = { ...quantity, vector: inFirstCurrency(quantity.vector) }
  const refused: Slip | undefined = sameKind(due, alike)
    ? rangeSlip(own, quantity.value)
    : {
        ok: false,
        rule: 'wrong-dimension',
        text: words`${due.words} is due, and this is ${wordsOf(quantity)}`,
        allowed: unitsAllowed(field),
      }
  if (refused !== undefined) {
    if (refused.rule !== 'wrong-dimension' || !isToldAtPart(ctx, number, field))
      reportSlip(ctx, number, fieldName(number), refused)
    return refused
  }
  const unusual = isDeclared(ctx, number) ? undefined : unusualRemark(own, quantity.value)
  if (unusual !== undefined) {
    const value = formatQuantity(quantity.value, own.units[0], { figures: 3 })
    const text = words`${fieldName(number)}: \`${value}\` is ${unusual}`
    report(ctx, number, { rule: 'unusual', level: 'warning', text })
  }
  return undefined
}

/** A part's figure that is no such quantity is told where the part stands. */
function isToldAtPart({ numbers }: WorkContext, number: PublishedNumber, field: NumberField) {
  const ref = onlyRef(number.expression)
  const figure = ref === undefined ? undefined : numbers.get(ref)
  return figure?.part !== undefined && isToldOfPart(figure.name, field.of)
}

/** Worked from nothing but numbers that say where they come from: what is rare about them is meant. */
function isDeclared({ numbers }: WorkContext, number: PublishedNumber): boolean {
  const seen = new Set<string>()
  const declared = (id: string): boolean => {
    if (seen.has(id)) return true
    seen.add(id)
    const one = numbers.get(id)
    if (one === undefined) return false
    if (one.expression === undefined) return one.block === null
    return one.rests.length > 0 && one.rests.every(declared)
  }
  return number.rests.length > 0 && number.rests.every(declared)
}

/** A number stands in for, or is held against, one of its own kind only. */
export function compareKinds(ctx: WorkContext, number: PublishedNumber): void {
  compareWith(
    ctx,
    number,
    number.replaces,
    (own, is, other, due) =>
      words`${own} is ${is} and cannot take the place of ${other}, which is ${due}`,
  )
  compareWith(
    ctx,
    number,
    number.checks,
    (own, is, other, due) =>
      words`${own} is ${is} and cannot be compared with ${other}, which is ${due}`,
  )
}

function compareWith(
  ctx: WorkContext,
  number: PublishedNumber,
  other: string | undefined,
  text: (own: string, is: string, other: string, due: string) => string,
): void {
  if (other === undefined) return
  const is = ctx.ownValue(number.id).quantity
  const due = ctx.ownValue(other).quantity
  if (is === null || due === null || sameKind(is, due)) return
  report(ctx, number, {
    rule: 'wrong-dimension',
    text: text(`\`${number.name}\``, wordsOf(is), `\`${other}\``, wordsOf(due)),
  })
}
