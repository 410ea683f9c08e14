/**
 * Draws a plot as SVG text, at build time and in the browser alike. Drawn for the width of a phone and
 * let grow a little, so that its words stay legible; lines are told apart by dash and by a name beside
 * them, never by colour alone. No style attributes.
 */
import type { Axis, Plot } from '../../calculators/plot.ts'
import type { UnitSystem } from '../ledger/published.ts'
import { axesOf, right, tickText, top, width, type Axes } from './axes.ts'
import { escape } from './html.ts'
import { leading, place, size, textWidth, type Placed } from './labels.ts'
import { ghostOf, round, shapesOf } from './shapes.ts'

export interface PlotOptions {
  readonly units: readonly UnitSystem[]
  /** Unique on the page: start of the ids of title and description. */
  readonly id: string
  /** The builder's plot, where this one shows a reader's figures: drawn faint behind it. */
  readonly builder?: Plot | undefined
}

const bottom = 38

function textHtml({ x, y, anchor, lines }: Placed, kind: string): string {
  const [first = '', ...more] = lines.map(escape)
  const further = more.map((line) => `<tspan x="${round(x)}" dy="${leading}">${line}</tspan>`)
  return `<text class="${kind}" x="${round(x)}" y="${round(y)}" text-anchor="${anchor}">${first}${further.join('')}</text>`
}

/** `Flow, L/min` */
function titleOf(axis: Axis, unit: string): string {
  return unit === '' ? axis.label : `${axis.label}, ${unit}`
}

function gridHtml({ left, base, xScale, yScale, px, py }: Axes): string {
  const lines = [
    ...yScale.ticks.map((tick) => `M${left} ${round(py(tick))}H${width - right}`),
    ...xScale.ticks.map((tick) => `M${round(px(tick))} ${top}V${round(base)}`),
  ]
  return `<path class="grid" d="${lines.join('')}"/><path class="axis" d="M${left} ${top}V${round(base)}H${width - right}"/>`
}

function xTicksHtml({ base, xScale, px }: Axes): string[] {
  const all = xScale.ticks.map((tick) => ({ text: tickText(tick, xScale), at: px(tick) }))
  // Every other one, and so on, until none touches the next.
  const last = all.at(-1)?.text ?? ''
  const pushed = Math.max(0, textWidth(last) / 2 - right)
  const widest = Math.max(...all.map(({ text }) => textWidth(text))) + 8 + pushed
  const gap = Math.abs((all[1]?.at ?? width) - (all[0]?.at ?? 0))
  const every = Math.max(1, Math.ceil(widest / Math.max(gap, 1)))
  return all
    .filter((_, index) => index % every === 0)
    .map(({ text, at }) => {
      const cut = at + textWidth(text) / 2 > width
      const place = cut
        ? ({ x: width - 2, anchor: 'end' } as const)
        : ({ x: at, anchor: 'middle' } as const)
      return textHtml({ ...place, y: base + size + 4, lines: [text] }, 'tick')
    })
}

function yTicksHtml({ left, yScale, py }: Axes): string[] {
  return yScale.ticks.map((tick) =>
    textHtml(
      { x: left - 5, y: py(tick) + 4, anchor: 'end', lines: [tickText(tick, yScale)] },
      'tick',
    ),
  )
}

/** Both have to find room between the axes. */
const together = (plot: Plot, { series, marks }: Plot): Plot => ({
  ...plot,
  series: [...plot.series, ...series],
  marks: [...plot.marks, ...marks],
})

/** The drawing alone; '' when nothing in it can be placed. */
export function plotSvg(plot: Plot, { units, id, builder }: PlotOptions): string {
  const axes = axesOf(builder === undefined ? plot : together(plot, builder), units)
  if (axes === undefined) return ''
  const { left, base, height, xUnit, yUnit } = axes
  const { svg, ink, wanted } = shapesOf(plot, axes)
  const frame = { x: left, y: top - size - 2, width: width - left, height: height + size }
  const xTitle = {
    x: width - right,
    y: base + 2 * size + 9,
    anchor: 'end',
    lines: [titleOf(plot.x, xUnit)],
  } as const
  const yTitle = { x: 2, y: size, anchor: 'start', lines: [titleOf(plot.y, yUnit)] } as const
  return [
    `<svg class="plot" viewBox="0 0 ${width} ${round(base + bottom)}" role="img" aria-labelledby="${id}-t ${id}-d">`,
    `<title id="${id}-t">${escape(plot.title)}</title>`,
    `<desc id="${id}-d">${escape(plot.caption)}</desc>`,
    gridHtml(axes),
    ...yTicksHtml(axes),
    ...xTicksHtml(axes),
    ...(builder === undefined ? [] : ['<g class="ghost">', ...ghostOf(builder, axes), '</g>']),
    textHtml(yTitle, 'axis-title'),
    textHtml(xTitle, 'axis-title'),
    ...svg,
    ...place(wanted, ink, frame).map((label) => textHtml(label, 'label')),
    '</svg>',
  ].join('')
}
