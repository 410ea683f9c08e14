/**
 * Writes what a number came to into its entry: value, unit, printed text, ±. What an earlier working
 * left there is overwritten or taken out.
 *
 * A number that only names another takes that one's kind, source and instrument.
 */
import type { NumberField } from '../../../calculators/define.ts'
import { dimensions, displayUnit, unitOf } from '../../quantity/index.ts'
import type { Quantity } from '../../quantity/types.ts'
import { none } from '../../quantity/vector.ts'
import { unitsIn } from '../in-currency.ts'
import { currencyIn, currencyOf, moneyText } from '../money.ts'
import type { PublishedNumber } from '../published.ts'
import { onlyRef } from '../refs.ts'
import { figuresShown, showRoot, shownIn, showWorked, type ShownAs } from '../show.ts'
import type { Evaluated, WorkContext } from './context.ts'
import { plusMinusOf } from './plus-minus.ts'

export function filled(ctx: WorkContext, number: PublishedNumber): PublishedNumber {
  const evaluated = ctx.ownValue(number.id)
  const { quantity, firmness, figures } = evaluated
  const original = originalOf(ctx, number)
  const plusMinus = plusMinusOf(ctx, number)
  const shown = shownAs(ctx, number, (original ?? number).typed, evaluated)
  return {
    ...withoutOther(number),
    ...(original === undefined
      ? {}
      : { kind: original.kind, source: original.source, instrument: original.instrument }),
    firmness,
    value: quantity?.value ?? null,
    unit: quantity === null ? '' : siUnit(quantity),
    ...(quantity?.of === undefined ? {} : { of: quantity.of }),
    vector: quantity?.vector ?? number.vector,
    flavour: quantity?.flavour ?? number.flavour,
    ...shown,
    figures: figuresShown(figures, evaluated.unit, shown.display),
    plusMinus,
    now: quantity?.value ?? null,
  }
}

/** Taking a property out makes an object slow, so only where an earlier working left one. */
function withoutOther(number: PublishedNumber): PublishedNumber {
  if (!('shownOther' in number) && !('displayOther' in number)) return number
  const rest = { ...number }
  Reflect.deleteProperty(rest, 'shownOther')
  Reflect.deleteProperty(rest, 'displayOther')
  return rest
}

/**
 * The number that an alias names in the end, or the later one that stands for it; not one of a block's
 * results. An alias of an alias is one of the same number.
 */
function originalOf(
  { numbers, replacements }: WorkContext,
  number: PublishedNumber,
): PublishedNumber | undefined {
  const seen = new Set<PublishedNumber>([number])
  for (let last = number; ;) {
    const ref = onlyRef(last.expression)
    const next = ref === undefined ? undefined : (replacements.get(ref) ?? numbers.get(ref))
    if (next === undefined || seen.has(next)) return last === number ? undefined : last
    seen.add(next)
    last = next
  }
}

const siUnit = (quantity: Quantity): string =>
  quantity.of === undefined ? displayUnit(quantity, 'metric') : dimensions[quantity.of].si

/** A number that was given, or given by name, keeps its author's unit; a sum where the field knows it. */
function shownAs(
  ctx: WorkContext,
  number: PublishedNumber,
  typed: string | undefined,
  evaluated: Evaluated,
): ShownAs {
  const { quantity, figures, unit } = evaluated
  const given = ctx.fields.get(number.id)
  const units = given && unitsIn(given.units, currencyIn(quantity?.vector ?? none))
  const currency =
    number.part === undefined || quantity === null ? undefined : currencyOf(quantity.vector)
  if (currency !== undefined && quantity !== null)
    return { shown: moneyText(quantity.value, currency), display: currency }
  const isGiven = number.expression === undefined || onlyRef(number.expression) !== undefined
  const keepsUnit = isGiven || units?.includes(unit ?? '') === true
  const { site } = ctx.published
  if (typed !== undefined && keepsUnit) {
    const shown = showRoot(quantity, typed, evaluated, units)
    return site.asked === true ? shownIn(shown, site.units) : shown
  }
  return showWorked(
    quantity,
    unitsFor(quantity, units, unit),
    ctx.published.site.units,
    evaluated,
    number.part !== undefined && figures === null,
  )
}

type ShownUnits = NumberField['units']

/** The field's units; else the author's, where one of the two usual ones would not be it. */
function unitsFor(
  quantity: Quantity | null,
  fieldUnits: ShownUnits | undefined,
  unit: string | undefined,
): ShownUnits {
  if (fieldUnits !== undefined) return fieldUnits
  if (quantity === null) return ['', '']
  const usual = [displayUnit(quantity, 'metric'), displayUnit(quantity, 'us')] as const
  const keeps = unit !== undefined && unit !== '' && unitOf(unit)?.flavour === quantity.flavour
  return keeps && !usual.includes(unit) ? [unit, unit] : usual
}
