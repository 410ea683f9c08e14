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
  return unit === '%'
    ? text.replace('%', here === 1 ? 'percentage point' : 'percentage points')
    : text
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
  const range =
    plusMinus === undefined
      ? 'its usual range'
      : `its ± ${differenceText(plusMinus, place.field, ctx, { round: true })}`
  const outside = now < low.value || now > high.value ? ' (it is outside that now)' : ''
  const cut = clipped ? ' (cut off where the field ends)' : outside
  const goes =
    low.result === undefined && high.result === undefined
      ? 'it cannot be told at either end'
      : `it goes from ${valueText(low.result, field, ctx)} to ${valueText(high.result, field, ctx)}`
  return `Over ${range}, ${from} to ${to}${cut}, ${goes}.`
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
  if (up === 0 && down === 0) return `${step} more or less does not move it.`
  const size = (difference: number): string => differenceText(difference, field, ctx)
  const asMuch = up !== undefined && down !== undefined && up * down < 0 && size(up) === size(down)
  const said = [
    more === undefined ? '' : `${step} more ${effectWords(up, size)}`,
    less === undefined ? '' : `${step} less ${effectWords(down, asMuch ? () => 'as much' : size)}`,
  ].filter((part) => part !== '')
  return said.length === 0 ? '' : `${said.join(', ')}.`
}

function effectOf(end: End | undefined, now: number): number | undefined {
  if (end?.result === undefined) return undefined
  const difference = end.result - now
  return isStill(difference, now) ? 0 : difference
}

function effectWords(difference: number | undefined, size: (of: number) => string): string {
  if (difference === undefined) return 'leaves no result'
  if (difference === 0) return 'does not move it'
  return `${difference > 0 ? 'raises' : 'lowers'} it by ${size(difference)}`
}

/** `76 % more than now`, `12 K less than now`. */
export function distanceWords({ field }: NumberPlace, now: number, to: number, ctx: Units): string {
  const way = to > now ? 'more' : 'less'
  const isRatio = now > 0 && field.hard[0] >= 0 && !/°|gauge|%/.test(field.units[0])
  const size =
    isRatio && field.of !== 'number'
      ? formatQuantity(Math.abs(to / now - 1), '%', { figures: 2 })
      : differenceText(to - now, field, ctx)
  return `${size} ${way} than now`
}

const mostNamed = 12

/** Labels beside each other, the first dozen of them. */
export function namesText(names: readonly string[]): string {
  const more = names.length - mostNamed
  const named = names.slice(0, mostNamed).join('; ')
  return more > 1 ? `${named}; and ${more} more` : names.join('; ')
}
