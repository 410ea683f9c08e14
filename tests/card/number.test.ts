/** Numbers in a line of text: their words, links, units and escaping. */
import { describe, expect, it } from 'vitest'
import { markHtml, markSymbolsHtml, numberHtml, storyId } from '../../src/card/index.ts'
import type { Firmness, Kind, PublishedNumber } from '../../src/ledger/published.ts'
import { symbolsHtml } from '../../src/card/html.ts'
import { context, numberNamed, published } from './fixture.ts'

const ctx = context()
const text = (html: string) => html.replace(/<[^>]*>/g, '')

describe('numberHtml', () => {
  it('writes value, SI value, id, and a link to the story', () => {
    const html = numberHtml(numberNamed('keeping-cool/pumpDraw'), ctx)
    expect(html).toContain(
      '<data class="number" value="1.5" data-number="keeping-cool/pumpDraw">1.5\u00a0<span class="unit">A</span></data>',
    )
    expect(html).toMatch(/^<a class="number-link" href="#Story-pumpDraw">/)
    expect(html).toContain('aria-label="measured"')
  })

  it('puts the second unit system in brackets, and only where it differs', () => {
    expect(text(numberHtml(numberNamed('keeping-cool/pump.flow'), ctx))).toBe(
      '8.75\u00a0L/min (2.31\u00a0gal/min)',
    )
    expect(text(numberHtml(numberNamed('keeping-cool/pumpDraw'), ctx))).toBe('1.5\u00a0A')
  })

  it('shows one system when the site has one', () => {
    const one = { ...ctx, units: ['metric' as const] }
    expect(text(numberHtml(numberNamed('keeping-cool/pump.flow'), one))).toBe('8.75\u00a0L/min')
  })

  it('takes another unit and other digits, and says so for whoever works it again', () => {
    const html = numberHtml(numberNamed('keeping-cool/pump.flow'), ctx, { unit: 'L/s', digits: 2 })
    expect(html).toContain(
      'data-unit="L/s" data-digits="2">0.15\u00a0<span class="unit">L/s</span>',
    )
    expect(text(html)).toBe('0.15\u00a0L/s')
  })

  it('has no link inside headings and links', () => {
    const html = numberHtml(numberNamed('keeping-cool/pumpDraw'), ctx, { linked: false })
    expect(html).not.toContain('<a ')
    expect(html).toMatch(/^<span class="number-plain">/)
  })

  it('leads to the other note’s page, below the base path', () => {
    const html = numberHtml(numberNamed('hill-climb/hillHeat'), context({ base: '/kit/' }))
    expect(html).toContain('href="/kit/notes/hill-climb/#Story-hillHeat"')
  })

  it('says that it cannot tell', () => {
    const html = numberHtml(numberNamed('keeping-cool/unsure.flow'), ctx)
    expect(html).toContain('value="" data-number="keeping-cool/unsure.flow">cannot tell</data>')
  })

  it('says what it is now, when a later number took its place', () => {
    const before = numberNamed('keeping-cool/pump.flow')
    const moved: PublishedNumber = { ...before, now: 8.1 / 60000 }
    expect(text(numberHtml(moved, ctx, { brackets: false }))).toBe(
      '8.75\u00a0L/min now 8.10\u00a0L/min',
    )
  })

  it('escapes what it is given', () => {
    const odd: PublishedNumber = { ...numberNamed('keeping-cool/pumpDraw'), shown: '<b>"&' }
    expect(numberHtml(odd, ctx)).toContain('>&lt;b&gt;&quot;&amp;</data>')
  })

  it('marks a reader’s figure and keeps the builder’s beside it', () => {
    const numbers = published.numbers.map((one) =>
      one.id === 'keeping-cool/pump.flow'
        ? { ...one, value: 1e-4, now: 1e-4, shown: '6.00\u00a0L/min' }
        : one,
    )
    const yours = { ...context(), builder: context() }
    const changed = numbers.find(({ id }) => id === 'keeping-cool/pump.flow')
    expect(changed && text(numberHtml(changed, yours, { brackets: false }))).toBe(
      '6.00\u00a0L/min your figures; the builder’s 8.75\u00a0L/min',
    )
  })
})

describe('storyId', () => {
  it('is a valid HTML id, different for different numbers', () => {
    const ids = [
      'n/a',
      'n/a.b',
      'n/a + b',
      'n/a - b',
      'n/a * b',
      'n/a / b',
      'n/(a + b) / c',
      'n/a.0.b',
    ]
    const made = ids.map(storyId)
    expect(new Set(made).size).toBe(ids.length)
    for (const id of made) expect(id).toMatch(/^[a-zA-Z][\w-]*$/)
  })
})

describe('markHtml', () => {
  const kinds: readonly Kind[] = ['reading', 'rated', 'assumed', 'chosen', 'worked']
  const firm: readonly Firmness[] = ['reading', 'rated', 'chosen', 'assumed']
  it('has a drawing of its own and words for each kind and firmness', () => {
    const all = kinds.flatMap((kind) =>
      kind === 'worked'
        ? firm.map((firmness) => markHtml({ kind, firmness }))
        : [markHtml({ kind, firmness: kind })],
    )
    const symbols = new Map(
      [...markSymbolsHtml().matchAll(/<symbol id="([^"]+)"[^>]*>(.*?)<\/symbol>/g)].map(
        ([, id, drawing]) => [id, drawing],
      ),
    )
    const drawings = all.map((html) => symbols.get(/<use href="#([^"]+)"\/>/.exec(html)?.[1]))
    expect(drawings).not.toContain(undefined)
    const words = all.map((html) => /aria-label="([^"]+)"/.exec(html)?.[1])
    expect(new Set(drawings).size).toBe(8)
    expect(new Set(words).size).toBe(8)
    expect(words).not.toContain(undefined)
  })
  it('uses no style attribute', () => {
    expect(markHtml({ kind: 'rated', firmness: 'rated' })).not.toContain('style')
  })
})

describe('symbolsHtml', () => {
  it.each([
    ['u_m² + T_in', 'u<sub>m</sub>² + T<sub>in</sub>'],
    ['V̇_1 < Q', 'V̇<sub>1</sub> &lt; Q'],
    ['U_OC²', 'U<sub>OC</sub>²'],
    ['T_∞', 'T<sub>∞</sub>'],
    ['2 v^0.45 x^−2', '2 v<sup>0.45</sup> x<sup>−2</sup>'],
  ])('lowers an index, and leaves a power up: %s', (text, html) => {
    expect(symbolsHtml(text)).toBe(html)
  })
})
