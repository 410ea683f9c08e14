/**
 * The numbers of a plot as tables, one a series, for those who cannot see the drawing; and the whole
 * figure: drawing, caption, tables. Long series are thinned to what it takes to follow a curve.
 */
import { formatQuantity } from '../quantity/index.ts'
import type { Axis, Plot } from '../../calculators/plot.ts'
import { converter, unitOfAxis } from './axes.ts'
import { sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { keyOf } from './shapes.ts'
import { plotSvg, type PlotOptions } from './plot.ts'
import { words } from '../words/words.ts'

/** At most this many rows: enough to follow a curve. */
const mostRows = 24

/** The plot's numbers as tables, one a series, and its marks. */
function plotTableHtml(plot: Plot, options: PlotOptions): string {
  const writer = (axis: Axis) => {
    const unit = unitOfAxis(axis, options.units)
    const drawn = converter(axis, unit)
    return (value: number | undefined) =>
      value === undefined || drawn(value) === undefined
        ? words`gap`
        : escape(formatQuantity(value, unit, { figures: 3 }))
  }
  const xText = writer(plot.x)
  const yText = writer(plot.y)
  const tables = plot.series.map((one) => {
    const every = Math.ceil(one.points.length / mostRows)
    const rows = one.points
      .filter((_, index) => index % every === 0 || index === one.points.length - 1)
      .map(([x, y]) => `<tr><td>${xText(x)}</td><td>${yText(y)}</td></tr>`)
    return `<table><caption>${escape(one.name)}</caption><thead><tr><th scope="col">${escape(plot.x.label)}</th><th scope="col">${escape(plot.y.label)}</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
  })
  const marks = plot.marks.map((mark) => {
    const parts = [
      ...(mark.kind === 'limit-y' ? [] : [xText(mark.x)]),
      ...(mark.kind === 'limit-x' ? [] : [yText(mark.y)]),
    ]
    return `<li>${sentenceHtml(mark.label)}: ${parts.join(', ')}</li>`
  })
  return [
    `<details class="plot-data"><summary>${words`The numbers of this drawing`}</summary><div class="plot-tables">`,
    ...tables,
    marks.length === 0 ? '' : `<ul>${marks.join('')}</ul>`,
    '</div></details>',
  ].join('')
}

function keyHtml(plot: Plot): string {
  const names = keyOf(plot).map((name) => `<li>${escape(name)}</li>`)
  return names.length === 0 ? '' : `<ol class="plot-key">${names.join('')}</ol>`
}

/** Drawing, caption and table; '' when there is nothing to draw. */
export function plotHtml(plot: Plot, options: PlotOptions): string {
  const svg = plotSvg(plot, options)
  if (svg === '') return ''
  const faint = options.builder === undefined ? '' : ` ${words`Faint: the builder’s.`}`
  return `<figure class="drawing" data-plot="${options.id}">${svg}${keyHtml(plot)}<figcaption><b>${escape(plot.title)}.</b> ${sentenceHtml(plot.caption)}${faint}</figcaption></figure>${plotTableHtml(plot, options)}`
}
