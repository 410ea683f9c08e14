/**
 * The words of "What moves it most" and "What would pass": values in the reader's first unit system, and
 * differences as differences. A temperature that moves by 5 °C has moved by 5 K, a gauge pressure by so
 * many kPa, a share by percentage points; none of them by what the same text would mean as a value.
 */
import type { NumberField, NumberOutput } from '../../calculators/define.ts'
import { share, type Edge, type End, type Move, type NumberPlace } from '../ledger/matters.ts'
import { formatQuantity, fromSI, toSI } from '../quantity/index.ts'
import type { CardContext } from './context.ts'
import { cannotTell } from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

type Units = Pick<CardContext, 'units'>
type InUnits = Pick<NumberField | NumberOutput, 'units' | 'of'> & { readonly exact?: true }

const index = ({ units }: Units): 0 | 1 => (units[0] === 'us' ? 1 : 0)

export function valueText(value: number | undefined, field: InUnits, ctx: Units): string {
  if (value === undefined) return cannotTell
  const counted = field.of === 'number' && Number.isInteger(value)
  const options = field.exact === true || counted ? { exact: true } : { figures: 3 }
  return formatQuantity(value, field.units[index(ctx)], options)
}

/** The unit in which a difference of such values is written. */
function differenceUnit(unit: string): string {
  if (unit === '°C') return 'K'
  if (unit === '°F') return 'Δ°F'
  if (unit === 'AWG') return 'kcmil'
  return unit.replace(/ (?:gauge|abs)$/, '')
}

/** Without its sign; a round step as `5 K`, not `5.00 K`. */
export function differenceText(
  difference: number,
  field: InUnits,
  ctx: Units,
  options: { readonly round?: boolean } = {},
): string {
  const unit = differenceUnit(field.units[index(ctx)])
  const size = Math.abs(difference)
  const here = Number(fromSI(size, unit).toPrecision(3))
  const text =
    options.round === true || (field.of === 'number' && Number.isInteger(size))
      ? formatQuantity(toSI(here, unit), unit, { exact: true })
      : formatQuantity(size, unit, { figures: 3 })
  if (unit !== '%') return text
  const points = text.replace(/\s*%$/u, '')
  return counted(
    here,
    words`${points}\u00a0percentage point`,
    words`${points}\u00a0percentage points`,
  )
}

export const edgeText = (edge: Edge, { units }: InUnits, ctx: Units): string => {
  const { value, figures } = edge.rounded[index(ctx)]
  return formatQuantity(value, units[index(ctx)], { figures })
}

/** What is lost in a float is no movement. */
const nothing = 1e-9
export const isStill = (difference: number, now: number): boolean =>
  Math.abs(difference) <= nothing * Math.max(Math.abs(now), Number.MIN_VALUE)

/** `Over its ± 0.1 A, 1.40 A to 1.60 A, it goes from … to …`. */
export function rangeWords(move: Move, field: NumberOutput, ctx: Units): string {
  const { place, now, low, high, plusMinus, clipped } = move
  const text = ({ value }: End): string => valueText(value, place.field, ctx)
  const from = text(low)
  const to = text(high)
  const outside = now < low.value || now > high.value ? ` (${words`it is outside that now`})` : ''
  const cut = clipped ? ` (${words`cut off where the field ends`})` : outside
  const range = words`${from} to ${to}` + cut
  const untold = low.result === undefined && high.result === undefined
  const first = valueText(low.result, field, ctx)
  const last = valueText(high.result, field, ctx)
  if (plusMinus === undefined)
    return untold
      ? words`Over its usual range, ${range}, it cannot be told at either end.`
      : words`Over its usual range, ${range}, it goes from ${first} to ${last}.`
  const within = differenceText(plusMinus, place.field, ctx, { round: true })
  return untold
    ? words`Over its ± ${within}, ${range}, it cannot be told at either end.`
    : words`Over its ± ${within}, ${range}, it goes from ${first} to ${last}.`
}

/** `10 %`, `5 K`, `1`. */
export function stepText(
  { step, place: { field } }: Pick<Move, 'step' | 'place'>,
  ctx: Units,
): string {
  return step.how === 'share'
    ? formatQuantity(share, '%', { exact: true })
    : differenceText(step.size, field, ctx, { round: true })
}

/** `10 % more raises it by 2.10 K, 10 % less lowers it by 2.31 K.` */
export function stepWords(
  move: Move,
  now: number | undefined,
  field: NumberOutput,
  ctx: Units,
): string {
  if (now === undefined) return ''
  const { more, less } = move
  const step = stepText(move, ctx)
  const [up, down] = [effectOf(more, now), effectOf(less, now)]
  if (up === 0 && down === 0) return words`${step} more or less does not move it.`
  const size = (difference: number): string => differenceText(difference, field, ctx)
  const asMuch = up !== undefined && down !== undefined && up * down < 0 && size(up) === size(down)
  const said = [
    more === undefined ? '' : moreWords(step, up, size),
    less === undefined ? '' : lessWords(step, down, asMuch ? () => words`as much` : size),
  ].filter((part) => part !== '')
  return said.length === 0 ? '' : `${said.join(', ')}.`
}

function effectOf(end: End | undefined, now: number): number | undefined {
  if (end?.result === undefined) return undefined
  const difference = end.result - now
  return isStill(difference, now) ? 0 : difference
}

type Size = (difference: number) => string

function moreWords(step: string, difference: number | undefined, size: Size): string {
  if (difference === undefined) return words`${step} more leaves no result`
  if (difference === 0) return words`${step} more does not move it`
  return difference > 0
    ? words`${step} more raises it by ${size(difference)}`
    : words`${step} more lowers it by ${size(difference)}`
}

function lessWords(step: string, difference: number | undefined, size: Size): string {
  if (difference === undefined) return words`${step} less leaves no result`
  if (difference === 0) return words`${step} less does not move it`
  return difference > 0
    ? words`${step} less raises it by ${size(difference)}`
    : words`${step} less lowers it by ${size(difference)}`
}

/** `76 % more than now`, `12 K less than now`. */
export function distanceWords({ field }: NumberPlace, now: number, to: number, ctx: Units): string {
  const isRatio = now > 0 && field.hard[0] >= 0 && !/°|gauge|%/.test(field.units[0])
  const size =
    isRatio && field.of !== 'number'
      ? formatQuantity(Math.abs(to / now - 1), '%', { figures: 2 })
      : differenceText(to - now, field, ctx)
  return to > now ? words`${size} more than now` : words`${size} less than now`
}

const mostNamed = 12

/** Labels beside each other, the first dozen of them. */
export function namesText(names: readonly string[]): string {
  const more = names.length - mostNamed
  const named = names.slice(0, mostNamed).join('; ')
  return more > 1 ? words`${named}; and ${more} more` : names.join('; ')
}
