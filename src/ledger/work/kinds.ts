/**
 * Whether a quantity is of the kind that is due: in a field, or beside the number whose place it takes
 * or that it is compared with. What does not fit is reported here.
 */
import type { NumberField } from '../../../calculators/define.ts'
import { dimensions, displayUnit, formatQuantity, sameKind } from '../../quantity/index.ts'
import type { Quantity } from '../../quantity/types.ts'
import type { PublishedNumber } from '../published.ts'
import { rangeSlip, unusualRemark } from '../range.ts'
import { fieldName, report, reportSlip, type WorkContext } from './context.ts'

const wordsOf = (quantity: Quantity): string =>
  quantity.of === undefined
    ? `a value in ${displayUnit(quantity, 'metric')}`
    : dimensions[quantity.of].words

/** Whether a worked value may go into a field; if not, it is reported. */
export function fits(
  ctx: WorkContext,
  number: PublishedNumber,
  field: NumberField,
  quantity: Quantity,
): boolean {
  const due = dimensions[field.of]
  if (!sameKind(due, quantity)) {
    report(ctx, number, {
      rule: 'wrong-dimension',
      text: `${fieldName(number)}: ${due.words} is due, and this is ${wordsOf(quantity)}`,
      allowed: `a value in ${[...new Set(field.units)].join(' or ')}`,
    })
    return false
  }
  const refused = rangeSlip(field, quantity.value)
  if (refused !== undefined) {
    reportSlip(ctx, number, fieldName(number), refused)
    return false
  }
  const unusual = isDeclared(ctx, number) ? undefined : unusualRemark(field, quantity.value)
  if (unusual !== undefined) {
    const value = formatQuantity(quantity.value, field.units[0], { figures: 3 })
    const text = `${fieldName(number)}: \`${value}\` is ${unusual}`
    report(ctx, number, { rule: 'unusual', level: 'warning', text })
  }
  return true
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
  compareWith(ctx, number, number.replaces, 'take the place of')
  compareWith(ctx, number, number.checks, 'be compared with')
}

function compareWith(
  ctx: WorkContext,
  number: PublishedNumber,
  other: string | undefined,
  words: string,
): void {
  if (other === undefined) return
  const is = ctx.ownValue(number.id).quantity
  const due = ctx.ownValue(other).quantity
  if (is === null || due === null || sameKind(is, due)) return
  report(ctx, number, {
    rule: 'wrong-dimension',
    text: `\`${number.name}\` is ${wordsOf(is)} and cannot ${words} \`${other}\`, which is ${wordsOf(due)}`,
  })
}
