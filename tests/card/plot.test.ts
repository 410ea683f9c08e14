/** Plots: no NaN whatever they are given, legible ticks, both unit systems, and a table. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plot } from '../../calculators/plot.ts'
import { plotHtml, plotSvg } from '../../src/card/index.ts'
import { fixedScale, linearScale, logScale } from '../../src/card/ticks.ts'
import { calculator } from './fixture.ts'

const options = { units: ['metric', 'us'], id: 'p' } as const
const plot = calculator.plot?.({ heat: 1100 }, {})
if (plot === undefined) throw new Error('the fixture has no plot')

describe('plotSvg', () => {
  it('names its lines and its marks', () => {
    const svg = plotSvg(plot, options)
    for (const name of ['pump at 13.5 V', 'loop, warm', 'works here', 'most the cap allows']) {
      expect(svg).toContain(`>${name}</text>`)
    }
    expect(svg).toContain('<title id="p-t">Pump and loop</title>')
    expect(svg).toContain('stroke-dasharray')
    expect(svg).not.toMatch(/NaN|Infinity|undefined|style=/)
  })
  it('is drawn in the first unit system', () => {
    expect(plotSvg(plot, options)).toContain('>Flow, L/min</text>')
    expect(plotSvg(plot, { units: ['us'], id: 'p' })).toContain('>Flow, gal/min</text>')
  })
  it('breaks a line at a gap', () => {
    const gap: Plot = {
      ...plot,
      marks: [],
      series: [
        {
          name: 'a',
          line: 'solid',
          points: [
            [0, 1],
            [1, 2],
            [2, undefined],
            [3, 4],
            [4, 5],
          ],
        },
      ],
    }
    const path = /class="line" d="([^"]+)"/.exec(plotSvg(gap, options))?.[1] ?? ''
    expect(path.match(/M/g)).toHaveLength(2)
  })
  it('draws nothing when there is nothing to draw', () => {
    expect(plotHtml({ ...plot, series: [], marks: [] }, options)).toBe('')
  })
  it('keeps one scale in a side view', () => {
    const side: Plot = {
      title: 'Side view',
      x: { label: 'Along', of: 'length', units: ['m', 'ft'] },
      y: { label: 'Up', of: 'length', units: ['m', 'ft'] },
      series: [
        {
          name: 'hose',
          line: 'solid',
          points: [
            [0, 0.6],
            [3, 0.9],
          ],
        },
      ],
      marks: [],
      caption: 'From the side.',
      sideView: true,
    }
    const [, x1, y1, x2, y2] =
      /class="line" d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/.exec(plotSvg(side, options)) ?? []
    const slope = (Number(y1) - Number(y2)) / (Number(x2) - Number(x1))
    expect(slope).toBeCloseTo(0.1, 2)
  })
  it('keeps one scale in a side view also when the axes have different units', () => {
    const side: Plot = {
      title: 'Side view',
      x: { label: 'Along', of: 'length', units: ['m', 'ft'] },
      y: { label: 'Up', of: 'length', units: ['mm', 'in'] },
      series: [
        {
          name: 'hose',
          line: 'solid',
          points: [
            [0, 0.6],
            [3, 0.9],
          ],
        },
      ],
      marks: [],
      caption: 'From the side.',
      sideView: true,
    }
    const [, x1, y1, x2, y2] =
      /class="line" d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/.exec(plotSvg(side, options)) ?? []
    const slope = (Number(y1) - Number(y2)) / (Number(x2) - Number(x1))
    expect(slope).toBeCloseTo(0.1, 2)
  })
  it('breaks long names into lines and keeps them in the drawing', () => {
    const long = 'the crest of the hose behind the cab, above the tank'
    const svg = plotSvg(
      { ...plot, marks: [{ x: 0, y: 30000, kind: 'point', label: long }] },
      options,
    )
    const label =
      /<text class="label" x="([\d.]+)" y="[\d.]+" text-anchor="(\w+)">the crest.*?<\/text>/.exec(
        svg,
      )
    expect(label?.[0].match(/<tspan/g)?.length).toBeGreaterThan(0)
    expect(
      label?.[0]
        .replace(/<[^>]*>/g, ' ')
        .replace(/\s+/g, ' ')
        .trim(),
    ).toBe(long)
    expect(Number(label?.[1])).toBeLessThanOrEqual(360)
  })
  it('numbers its points when they are many, with their names in a key', () => {
    const marks = ['tank', 'pump', 'plate', 'radiator', 'crest'].map((label, index) => ({
      x: index / 60000,
      y: 1000 * index,
      kind: 'point' as const,
      label,
    }))
    const html = plotHtml({ ...plot, series: [], marks }, options)
    expect(html).toContain('<ol class="plot-key"><li>tank</li><li>pump</li>')
    expect(html).toMatch(/<text class="label"[^>]*>5<\/text>/)
    expect(html).not.toMatch(/<text class="label"[^>]*>tank<\/text>/)
  })
  it('gives its numbers as a table', () => {
    const html = plotHtml(plot, options)
    expect(html).toContain('<caption>loop, warm</caption>')
    expect(html).toContain('works here: 8.75\u00a0L/min, 28.5\u00a0kPa')
  })
  it('never writes NaN', () => {
    const value = fc.oneof(fc.double(), fc.constant(undefined), fc.constant(0))
    const point = fc.tuple(fc.double(), value)
    const scale = fc.constantFrom('linear' as const, 'log' as const)
    const property = fc.property(
      fc.array(point, { maxLength: 12 }),
      fc.array(
        fc.tuple(
          fc.double(),
          fc.double(),
          fc.constantFrom('point' as const, 'limit-x' as const, 'limit-y' as const),
        ),
        { maxLength: 3 },
      ),
      scale,
      scale,
      fc.boolean(),
      (points, marks, x, y, sideView) => {
        const html = plotHtml(
          {
            ...plot,
            x: { ...plot.x, scale: x },
            y: { ...plot.y, scale: y },
            series: [{ name: 'a', line: 'solid', points }],
            marks: marks.map(([mx, my, kind]) => ({ x: mx, y: my, kind, label: 'm' })),
            ...(sideView ? { sideView: true as const } : {}),
          },
          options,
        )
        expect(html).not.toMatch(/NaN|Infinity|undefined/)
      },
    )
    fc.assert(property, { numRuns: 300 })
  })
})

describe('scales', () => {
  it('ends on round numbers', () => {
    expect(linearScale([0, 8.7], 5).ticks).toEqual([0, 2, 4, 6, 8, 10])
    expect(linearScale([-0.31, 0.2], 5).ticks).toEqual([-0.4, -0.2, 0, 0.2])
    expect(linearScale([5, 5], 4).ticks.length).toBeGreaterThan(1)
    expect(logScale([0.02, 30], 6).ticks).toEqual([0.01, 0.1, 1, 10, 100])
    expect(logScale([3, 30], 6).ticks).toEqual([1, 2, 5, 10, 20, 50, 100])
  })
  it('keeps ticks within a fixed domain', () => {
    expect(fixedScale([0.1, 0.9], 4).ticks).toEqual([0.2, 0.4, 0.6, 0.8])
  })
})
