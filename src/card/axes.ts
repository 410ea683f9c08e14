/**
 * The axes of a plot: SI values to places in the drawing. In: the plot and the site's unit systems.
 * Out: scales in the units that are printed, and where a value goes; undefined when nothing can be
 * placed. Values that are not finite, or not positive on a log axis, have no place.
 */
import type { Axis, Plot } from '../../calculators/plot.ts'
import type { UnitSystem } from '../ledger/published.ts'
import { formatNumber, formatQuantity, fromSI } from '../quantity/index.ts'
import { textWidth } from './labels.ts'
import { fixedScale, linearScale, logScale, type Domain, type Scale } from './ticks.ts'

export const width = 360
export const top = 30
export const right = 12
const usualHeight = 200
/** Side views: no flatter and no taller than this. */
const flattest = 130
const tallest = 320

/** Beyond these no axis can be drawn. */
const largest = 1e15
const smallest = 1e-15

export function unitOfAxis(axis: Axis, units: readonly UnitSystem[]): string {
  return axis.units[units[0] === 'us' ? 1 : 0]
}

/** Values of one axis in its unit, where they have a place on it. */
export function converter(axis: Axis, unit: string) {
  return (value: number | undefined): number | undefined => {
    if (value === undefined || !Number.isFinite(value)) return undefined
    const shown = fromSI(value, unit)
    if (!(Math.abs(shown) < largest)) return undefined
    return axis.scale !== 'log' || shown > smallest ? shown : undefined
  }
}

function domainOf(values: readonly (number | undefined)[], axis: Axis): Domain | undefined {
  const known = values.filter((value) => value !== undefined)
  if (known.length === 0) return undefined
  const zero = axis.fromZero === true && axis.scale !== 'log' ? [0] : []
  return [Math.min(...known, ...zero), Math.max(...known, ...zero)]
}

export function tickText(value: number, { decimals }: Scale): string {
  return decimals === undefined ? formatNumber(value, 1) : formatQuantity(value, '', { decimals })
}

export interface Axes {
  readonly left: number
  readonly height: number
  /** Baseline of the drawing. */
  readonly base: number
  readonly xScale: Scale
  readonly yScale: Scale
  readonly xUnit: string
  readonly yUnit: string
  /** SI value -> place in the drawing. */
  readonly x: (value: number | undefined) => number | undefined
  readonly y: (value: number | undefined) => number | undefined
  /** Value in the printed unit -> place. */
  readonly px: (shown: number) => number
  readonly py: (shown: number) => number
}

/** Printed units for one SI unit: linear units only make sense in a side view. */
const perSI = (unit: string): number => Math.abs(fromSI(1, unit) - fromSI(0, unit))

export function axesOf(plot: Plot, units: readonly UnitSystem[]): Axes | undefined {
  const xUnit = unitOfAxis(plot.x, units)
  const yUnit = unitOfAxis(plot.y, units)
  const toX = converter(plot.x, xUnit)
  const toY = converter(plot.y, yUnit)
  const points = plot.series
    .flatMap((one) => one.points)
    .map(([x, y]) => ({ x: toX(x), y: toY(y) }))
    .filter(({ x, y }) => x !== undefined && y !== undefined)
  const marks = plot.marks.map(({ kind, x, y }) => ({
    x: kind === 'limit-y' ? undefined : toX(x),
    y: kind === 'limit-x' ? undefined : toY(y),
  }))
  const all = [...points, ...marks]
  const xDomain = domainOf(
    all.map(({ x }) => x),
    plot.x,
  )
  const yDomain = domainOf(
    all.map(({ y }) => y),
    plot.y,
  )
  if (xDomain === undefined || yDomain === undefined) return undefined
  const usual = plot.y.scale === 'log' ? logScale(yDomain, 6) : linearScale(yDomain, 5)
  const texts = usual.ticks.map((tick) => tickText(tick, usual))
  const left = Math.ceil(12 + Math.max(...texts.map(textWidth)))
  const across = plot.x.scale === 'log' ? logScale(xDomain, 6) : linearScale(xDomain, 5)
  const inner = width - left - right
  const { height, xScale, yScale } =
    plot.sideView === true
      ? sideScales(across, yDomain, inner, perSI(xUnit) / perSI(yUnit))
      : { height: usualHeight, xScale: across, yScale: usual }
  const base = top + height
  const px = (shown: number) => left + xScale.at(shown) * inner
  const py = (shown: number) => top + (1 - yScale.at(shown)) * height
  const through =
    (to: typeof toX, at: (shown: number) => number) => (value: number | undefined) => {
      const shown = to(value)
      return shown === undefined ? undefined : at(shown)
    }
  const places = { px, py, x: through(toX, px), y: through(toY, py) }
  return { left, height, base, xScale, yScale, xUnit, yUnit, ...places }
}

/**
 * The same length is as long across as it is up; `ratio` is how many of x's units go with one of y's.
 * The height follows; where it would be too small, more of y is shown, where too great, more of x.
 */
function sideScales(x: Scale, yDomain: Domain, inner: number, ratio: number) {
  const perX = inner / (x.domain[1] - x.domain[0])
  const perY = perX * ratio
  const span = (yDomain[1] - yDomain[0]) * 1.2
  const middle = (yDomain[0] + yDomain[1]) / 2
  const wanted = span * perY
  if (wanted <= tallest) {
    const height = Math.max(wanted, flattest)
    const half = height / perY / 2
    return { height, xScale: x, yScale: fixedScale([middle - half, middle + half], 4) }
  }
  const half = span / 2
  const xHalf = (inner / tallest) * half * ratio
  const xMiddle = (x.domain[0] + x.domain[1]) / 2
  return {
    height: tallest,
    xScale: fixedScale([xMiddle - xHalf, xMiddle + xHalf], 4),
    yScale: fixedScale([middle - half, middle + half], 4),
  }
}
