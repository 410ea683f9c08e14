/** Work cards, hazards and the table of stories, as a reader sees them. */
import { HtmlValidate } from 'html-validate/node'
import { describe, expect, it } from 'vitest'
import { blockHtml, hazardsHtml, storiesHtml, storyHref } from '../../src/card/index.ts'
import { expressionText } from '../../src/card/origin.ts'
import { blockNamed, context, numberNamed, published } from './fixture.ts'

const ctx = context()
const text = (html: string) =>
  html
    .replace(/<svg.*?<\/svg>/gs, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/ +/g, ' ')

describe('verdict', () => {
  const words = (name: string) =>
    /class="card-verdict">(.*?)<\/p>/.exec(blockHtml(blockNamed(name), ctx))?.[1]
  it.each([
    ['passes', '<strong class="verdict verdict-pass">pass</strong>'],
    ['pump', '<strong class="verdict verdict-provisional">pass, provisional</strong>'],
    ['warm', '<strong class="verdict verdict-watch">watch</strong>'],
    ['hot', '<strong class="verdict verdict-stop">stop</strong>'],
    ['taken', '<strong class="verdict verdict-accepted">STOP, accepted by the builder</strong>'],
    ['unsure', '<strong class="verdict verdict-unknown">cannot tell</strong>'],
  ])('%s', (name, html) => {
    expect(words(name)).toBe(html)
  })
  it('gives the builder’s reason for an accepted stop, escaped', () => {
    expect(blockHtml(blockNamed('taken'), ctx)).toContain(
      '<b>Accepted because:</b> only driven in winter &lt;until&gt; the fan comes',
    )
  })
  it('never reads as “safe”', () => {
    for (const block of published.blocks) expect(blockHtml(block, ctx)).not.toMatch(/\bsafe\b/i)
  })
})

describe('card', () => {
  const html = blockHtml(blockNamed('pump'), ctx)
  it('shows each result in both unit systems', () => {
    expect(text(html)).toContain('8.75\u00a0 L/min')
    expect(html).toContain('<dd class="other">2.31\u00a0<span class="unit">gal/min</span></dd>')
    expect(html).toContain('<dd class="other">149\u00a0<span class="unit">°F</span></dd>')
  })
  it('shows one unit system on a site with one', () => {
    const one = { ...ctx, units: ['metric' as const] }
    const card = blockHtml(blockNamed('pump'), one)
    expect(card).not.toMatch(/gal\/min|psi|°F|class="other"/)
    expect(blockHtml(blockNamed('pump'), ctx)).toContain('gal/min')
    const own = published.numbers.filter(({ note }) => note === 'keeping-cool')
    expect(storiesHtml(own, one)).not.toMatch(/gal\/min|psi|°F|class="other"/)
    expect(storiesHtml(own, ctx)).toContain('gal/min')
  })
  it('leads an input that was given by name to where it comes from', () => {
    expect(html).toContain('href="/notes/hill-climb/#Story-hillHeat"')
    expect(html).toContain('from <a href="/notes/hill-climb/">Up the slow hill</a>')
    expect(html).toContain('href="#Story-inletLimit"')
  })
  it('shows a choice in its words, and an assumed one as a guess', () => {
    expect(html).toMatch(/aria-label="a guess">[^/]*\/><\/svg>half water, half glycol/)
  })
  it('shows lists and tables with their headings, and what cannot be told', () => {
    expect(html).toContain('<caption>Where the pressure goes</caption>')
    expect(html).toContain('<td data-label="Name">supply &lt;front&gt;</td>')
    expect(html).toContain('<td data-label="Pressure drop">not worked out</td>')
  })
  it('names its hazards, gravest first', () => {
    const line = /<ul class="hazard-line">(.*?)<\/ul>/.exec(html)?.[1] ?? ''
    expect(text(line).trim()).toBe('DANGER High voltage WARNING Poison NOTICE Dry running')
  })
  it('calls a row of a list by the name that it was given', () => {
    expect(text(html)).toContain('supply &lt;front&gt;, length')
  })
  it('names the guesses that a provisional pass rests on', () => {
    expect(text(html)).toContain('Rests on 2 guesses')
    expect(text(html)).toContain('To settle it: measure coolant in and out on a steady climb')
  })
  it('gives each finding its verdict, sentence, limit and basis', () => {
    const checks = /<ul class="findings">(.*?)<\/ul>/.exec(html)?.[1] ?? ''
    expect(text(checks)).toContain('Coolant rise. The coolant warms by 2.0\u00a0K')
    expect(text(checks)).toContain(
      'Limit: at most 5\u00a0K (watch), 10\u00a0K (stop). Common practice.',
    )
  })
  it('says whose figures they are', () => {
    const yours = { ...ctx, builder: context() }
    const changed = { ...blockNamed('pump'), verdict: 'stop' as const }
    const html = blockHtml(changed, yours, 'yours')
    expect(text(html)).toContain('Your figures. The builder’s verdict: pass, provisional')
  })
  it('carries the panels that the page does not have', () => {
    expect(blockHtml(blockNamed('pump'), ctx, 'yours', { panels: ['coolant-poison'] })).toContain(
      'class="hazard hazard-warning"',
    )
  })
})

describe('hazardsHtml', () => {
  it('gives signal word, what, consequence, how to avoid it, source, review date, standing words', () => {
    const words = text(hazardsHtml(['coolant-poison']))
    expect(words).toContain('WARNING')
    expect(words).toContain('Ethylene glycol tastes sweet. Spoonfuls kill pets and children.')
    expect(words).toContain('Wipe up every drip')
    expect(words).toMatch(/Reviewed \d+ \w+ \d{4}/)
    expect(words).toContain('This is arithmetic.')
  })
  it('keeps the alert symbol from a NOTICE', () => {
    expect(hazardsHtml(['dry-pump'])).not.toContain('class="alert"')
    expect(hazardsHtml(['coolant-poison'])).toContain('class="alert"')
  })
  it('refuses a hazard that does not exist', () => {
    expect(() => hazardsHtml(['no-such'])).toThrow('no hazard `no-such`')
  })
})

describe('stories', () => {
  const own = published.numbers.filter(({ note }) => note === 'keeping-cool')
  const html = storiesHtml(own, ctx)
  it('has a row for every number, with the id its links lead to', () => {
    const links = published.blocks.map((block) => blockHtml(block, ctx)).join('') + html
    const ids = [...links.matchAll(/href="#(Story-[^"]+)"/g)].map(([, id = '']) => id)
    expect(new Set(ids).size).toBeGreaterThan(5)
    for (const id of ids) expect(html).toContain(` id="${id}"`)
  })
  it('of a result are its card, which the table says in one row', () => {
    expect(storyHref('keeping-cool/pump.flow', ctx)).toBe('#pump')
    expect(storyHref('keeping-cool/pump.flow', context({ page: 'hill-climb' }))).toBe(
      '/notes/keeping-cool/#pump',
    )
    const body = /<tbody><tr class="group" id="Story-pump">.*?<\/tbody>/.exec(html)?.[0] ?? ''
    expect(body).not.toContain('data-number="keeping-cool/pump.flow"')
    expect(text(body).match(/What comes out/g)).toHaveLength(1)
    expect(text(body)).toMatch(/Worked out by\s+Flow in the loop\s+from what went in\./)
    // Inside the card the way to the card would lead nowhere.
    expect(blockHtml(blockNamed('pump'), ctx)).toContain('href="#Story-pump"')
  })
  it('of what was given by name stand under that name alone', () => {
    const input = published.numbers.find(({ expression, block }) =>
      block === 'keeping-cool/pump' ? typeof expression === 'object' && 'ref' in expression : false,
    )
    expect(storyHref(input?.id ?? '', ctx)).toMatch(/\/notes\/hill-climb\/#|^#Story-/)
    expect(html).not.toContain(` data-number="${input?.id ?? ''}"`)
    expect(html).not.toContain('Given by name.')
  })
  it('tells where each kind comes from', () => {
    const words = text(html)
    expect(words).toContain(
      'Measured 14 March 2026. Instrument: clamp meter (±\u00a00.1\u00a0A). 14.0\u00a0V, warm.',
    )
    expect(words).toContain('Controller data sheet, rev. C, p. 7.')
    expect(words).toContain('Because round the battery box.')
    expect(words).toContain('2.4\u00a0m + 2.8\u00a0m = 5.2\u00a0m.')
    expect(words).toContain('7.4\u00a0% below')
  })
  it('writes a sum with brackets only where they are needed', () => {
    const ref = { ref: 'keeping-cool/supply' } as const
    const sum = { op: '+', left: ref, right: 1 } as const
    expect(expressionText({ op: '*', left: sum, right: 2 }, ctx)).toBe('(2.4\u00a0m + 1) × 2')
    expect(expressionText({ op: '-', left: sum, right: sum }, ctx)).toBe(
      '2.4\u00a0m + 1 − (2.4\u00a0m + 1)',
    )
    expect(expressionText({ op: '/', left: ref, right: { op: '/', left: 3, right: 4 } }, ctx)).toBe(
      '2.4\u00a0m ÷ (3 ÷ 4)',
    )
    expect(expressionText({ op: 'negate', of: sum }, ctx)).toBe('−(2.4\u00a0m + 1)')
    expect(expressionText({ op: 'negate', of: -2 }, ctx)).toBe('−(−2)')
    expect(expressionText({ op: '-', left: ref, right: -2 }, ctx)).toBe('2.4\u00a0m − (−2)')
    expect(expressionText({ op: '+', left: -2, right: ref }, ctx)).toBe('−2 + 2.4\u00a0m')
  })
  it('names what a later number changed', () => {
    const later = {
      ...numberNamed('keeping-cool/pumpDraw'),
      id: 'keeping-cool/later',
      name: 'later',
      replaces: 'keeping-cool/supply',
      because: 'the hose was cut again',
      date: '2026-05-01',
    }
    const moved = context()
    const with2 = {
      ...moved,
      replacedBy: (id: string) => (id === 'keeping-cool/supply' ? later : undefined),
    }
    const supply = { ...numberNamed('keeping-cool/supply'), now: 2.6 }
    expect(text(storiesHtml([supply], with2))).toContain(
      'Now 2.6\u00a0m , changed 1 May 2026 in Keeping the controller cool because the hose was cut again',
    )
  })
})

describe('markup', () => {
  it('is valid, and without style attributes', async () => {
    const cards = published.blocks.map((block) => blockHtml(block, ctx)).join('\n')
    const own = published.numbers.filter(({ note }) => note === 'keeping-cool')
    const page = `<!DOCTYPE html><html lang="en"><head><title>Cards</title></head><body><main><h1>Cards</h1>${hazardsHtml(['coolant-poison', 'high-voltage', 'dry-pump'])}${cards}${storiesHtml(own, ctx)}</main></body></html>`
    expect(page).not.toContain('style=')
    const validate = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: { 'long-title': 'off', 'no-trailing-whitespace': 'off' },
    })
    const report = await validate.validateString(page)
    const said = report.results.flatMap(({ messages }) =>
      messages.map((m) => `${m.ruleId}: ${m.message}`),
    )
    expect([...new Set(said)]).toEqual([])
  })
})
