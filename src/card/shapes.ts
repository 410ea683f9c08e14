/**
 * The lines and marks of a plot as SVG, with the places where their names could stand and the ink
 * that those names must keep off.
 */
import type { Mark, Plot, Series } from '../../calculators/plot.ts'
import { right, top, width, type Axes } from './axes.ts'
import { along, size, type Point, type Spot, type Wanted } from './labels.ts'

export interface Drawn {
  readonly svg: readonly string[]
  readonly ink: readonly Point[]
  readonly wanted: readonly Wanted[]
}

export const round = (value: number): number => Number(value.toFixed(1))

const dashes: Readonly<Record<Series['line'], string>> = {
  solid: '',
  dashed: ' stroke-dasharray="8 4"',
  dotted: ' stroke-dasharray="1.5 4" stroke-linecap="round"',
  none: '',
}

/** Runs of points without a gap, as path data. */
function pathOf(points: readonly (Point | undefined)[]): string {
  let pen = 'M'
  let path = ''
  for (const point of points) {
    if (point !== undefined) path += `${pen}${round(point[0])} ${round(point[1])}`
    pen = point === undefined ? 'M' : 'L'
  }
  return path
}

/** Beside a point: above and below, right and left, ever further off. */
function spotsRound([x, y]: Point): Spot[] {
  return [8, 22].flatMap((off): Spot[] => [
    { x: x + 6, y: y - off, anchor: 'start', above: true },
    { x: x - 6, y: y - off, anchor: 'end', above: true },
    { x, y: y - off - 2, anchor: 'middle', above: true },
    { x: x + 6, y: y + off + size, anchor: 'start' },
    { x: x - 6, y: y + off + size, anchor: 'end' },
    { x, y: y + off + size, anchor: 'middle' },
  ])
}

/** Along a line: at its end first, then back. */
function spotsAlong(points: readonly Point[]): Spot[] {
  return [1, 0.85, 0.7, 0.55, 0.4, 0.25, 0.1].flatMap((share): Spot[] => {
    const point = points[Math.round((points.length - 1) * share)]
    if (point === undefined) return []
    const [x, y] = point
    return [
      { x: x - 4, y: y - 6, anchor: 'end', above: true },
      { x: x + 4, y: y - 6, anchor: 'start', above: true },
      { x: x - 4, y: y + size + 4, anchor: 'end' },
      { x: x + 4, y: y + size + 4, anchor: 'start' },
      { x, y: y - 10, anchor: 'middle', above: true },
      { x, y: y + size + 8, anchor: 'middle' },
    ]
  })
}

const nothing: Drawn = { svg: [], ink: [], wanted: [] }

function limit(from: Point, to: Point, text: string, spots: readonly Spot[]): Drawn {
  const svg = `<path class="limit" d="${pathOf([from, to])}"/>`
  return { svg: [svg], ink: along([from, to], 4), wanted: [{ text, spots }] }
}

/** More points than this are numbered, and named in a key below the drawing. */
const mostNamed = 4

/** The names of the numbered points, in order; none where the names stand in the drawing. */
export function keyOf(plot: Plot): readonly string[] {
  const points = plot.marks.filter(({ kind }) => kind === 'point')
  return points.length > mostNamed ? points.map(({ label }) => label) : []
}

/** Marks as they are labelled in the drawing. */
function labelled(plot: Plot): readonly Mark[] {
  if (keyOf(plot).length === 0) return plot.marks
  let number = 0
  return plot.marks.map((mark) => {
    if (mark.kind !== 'point') return mark
    number += 1
    return { ...mark, label: String(number) }
  })
}

function markShape(mark: Mark, axes: Axes): Drawn {
  const { left, base, height } = axes
  const x = axes.x(mark.x)
  const y = axes.y(mark.y)
  const end = width - right
  if (mark.kind === 'limit-y') {
    if (y === undefined) return nothing
    const spots = [-5, size + 3].flatMap((shift): Spot[] => {
      const above = shift < 0
      return [
        { x: left + 6, y: y + shift, anchor: 'start', above },
        { x: end - 4, y: y + shift, anchor: 'end', above },
        { x: (left + end) / 2, y: y + shift, anchor: 'middle', above },
      ]
    })
    return limit([left, y], [end, y], mark.label, spots)
  }
  if (x === undefined) return nothing
  if (mark.kind === 'limit-x') {
    const spots = [0.08, 0.25, 0.45, 0.65, 0.9].flatMap((share): Spot[] => [
      { x: x + 5, y: top + height * share, anchor: 'start' },
      { x: x - 5, y: top + height * share, anchor: 'end' },
    ])
    return limit([x, top], [x, base], mark.label, spots)
  }
  if (y === undefined) return nothing
  const ink = along([[x - 5, y], [x + 5, y]], 2) // prettier-ignore
  const svg = `<circle class="point" cx="${round(x)}" cy="${round(y)}" r="4.5"/>`
  return { svg: [svg], ink, wanted: [{ text: mark.label, spots: spotsRound([x, y]) }] }
}

function seriesShape(series: Series, axes: Axes): Drawn {
  const drawn = series.points.map(([valueX, valueY]): Point | undefined => {
    const x = axes.x(valueX)
    const y = axes.y(valueY)
    return x === undefined || y === undefined ? undefined : [x, y]
  })
  const solid = drawn.filter((point) => point !== undefined)
  const [first] = solid
  if (first === undefined) return nothing
  const dots = series.line === 'none' || solid.length === 1
  const svg = dots
    ? solid.map(
        ([x, y]) =>
          `<path class="dot" d="M${round(x - 3)} ${round(y)}h6M${round(x)} ${round(y - 3)}v6"/>`,
      )
    : [`<path class="line"${dashes[series.line]} d="${pathOf(drawn)}"/>`]
  const spots = solid.length === 1 ? spotsRound(first) : spotsAlong(along(solid, 12))
  const wanted = series.name === '' ? [] : [{ text: series.name, spots }]
  return { svg, ink: dots ? solid : along(solid, 5), wanted }
}

/** Marks first: their names have fewer places to choose from. */
export function shapesOf(plot: Plot, axes: Axes): Drawn {
  const all = [
    ...labelled(plot).map((mark) => markShape(mark, axes)),
    ...plot.series.map((series) => seriesShape(series, axes)),
  ]
  return {
    svg: all.flatMap(({ svg }) => svg),
    ink: all.flatMap(({ ink }) => ink),
    wanted: all.flatMap(({ wanted }) => wanted),
  }
}

/** The lines and points of another's plot, to stand faint behind one's own: without names. */
export function ghostOf({ series, marks }: Plot, axes: Axes): readonly string[] {
  const points = marks.filter(({ kind }) => kind === 'point')
  const shapes = [
    ...series.map((one) => seriesShape({ ...one, name: '' }, axes)),
    ...points.map((mark) => markShape(mark, axes)),
  ]
  return shapes.flatMap(({ svg }) => svg)
}
