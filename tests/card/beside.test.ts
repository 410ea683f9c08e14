/**
 * Pages beside the numbers: the list of parts with what all of it costs, what is open, the sources, and
 * the pages of older names. The sums are worked by hand beside each case.
 */
import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import {
  contextOf,
  costHtml,
  doneListHtml,
  openCountHtml,
  openSummaryHtml,
  openTablesHtml,
  outsideLinksHtml,
  partCountHtml,
  partHtml,
  partTablesHtml,
  redirectsOf,
  sourceTableHtml,
  type CardContext,
} from '../../src/card/index.ts'
import { costsOf } from '../../src/card/money.ts'
import { partsCsvText } from '../../src/card/take/parts-csv.ts'
import { standingWords } from '../../calculators/hazard-names.ts'
import { elementsOf, textIn } from '../build/links.ts'
import { rowsOf } from './rfc4180.ts'
import { note, settings, soundLedger } from '../ledger/ledger-of.ts'

async function context(notes: Record<string, string>, more = ''): Promise<CardContext> {
  const ledger = await soundLedger(notes, calculators, settings + more)
  return contextOf(ledger.published, { base: '/kit/', calculators: ledger.calculators })
}

/** Rows of all tables, cell by cell, as a reader has them. */
const rowsIn = (html: string): string[][] =>
  elementsOf(html)
    .filter(({ tagName }) => tagName === 'tr')
    .map((row) =>
      row.childNodes.flatMap((cell) =>
        'tagName' in cell ? [textIn(cell).replace(/\u00a0/g, ' ')] : [],
      ),
    )

const parts = `<Part id="cells" what="Cells" quantity="36" price="$78" />

<Part id="cable" what="Cable" quantity="4 m" price="$2.75/m" />

<Part id="engine" what="Engine" status="sold" price="$350" used />

<Part id="charger" what="Charger" status="planned" price="$1000" size="3.3 kW" />

<Part id="brake" what="Brake set" status="ordered" price="$500" />

<Part id="spare" what="Spare cell" status="spare" price="$80.50" />

<Part id="hoist" what="Hoist" status="owned" price="$200" />

<Part id="radiator" what="Radiator" status="out" price="$9" />

<Part id="motor" what="Motor" price="€ 1200" />

<Part id="bolts" what="Bolts" note="from the drawer" />`

it('parts are a table for a spreadsheet: figures in SI, money in its currency, guesses named', async () => {
  const { published } = await context({ n: parts })
  const [head = [], ...rows] = rowsOf(partsCsvText(published))
  const last = rows.at(-1) ?? []
  expect([last[0], last.slice(1).join('')]).toEqual([standingWords, ''])
  const read = rows
    .slice(0, -1)
    .map((row) => Object.fromEntries(head.map((name, index) => [name, row[index] ?? ''])))
  expect(read.map(({ id }) => id)).toEqual(published.parts?.map(({ id }) => id))
  // What is printed of a figure elsewhere is the same number.
  for (const { id, figures, status } of published.parts ?? []) {
    const row = read.find((one) => one.id === id)
    const value = (name: string) =>
      published.numbers.find((one) => one.id === `${id}.${name}`)?.value
    expect([id, row?.['mass (kg)']]).toEqual([id, String(value('mass') ?? '')])
    const cost = figures.includes('cost') ? value('cost') : value('price')
    expect([id, row?.cost]).toEqual([id, String(cost ?? '')])
    expect([id, row?.currency === '']).toEqual([id, cost === undefined])
    expect([id, status === 'owned', row?.status?.includes('owned')]).toEqual([
      id,
      status === 'owned',
      status === 'owned',
    ])
  }
  expect(read.filter(({ guesses }) => guesses !== '').length).toBe(1)
})

describe('what it costs', () => {
  it('is added up in each currency by itself; owned counts nothing, sold counts against', async () => {
    const { published } = await context({ n: parts }, 'contingency: 15 %\n')
    const { rollups, owned, unpriced } = costsOf(published)
    // US$: paid 36 × 78 + 4 × 2.75 + 80.50 = 2899.50; to come 1000 + 500 = 1500; sold 350;
    // together 2899.50 + 1500 − 350 = 4049.50; put by 0.15 × 1500 = 225; in all 4274.50.
    expect(
      rollups.map(({ currency, total, aside, all, guesses }) => ({
        currency,
        paid: total.paid.value,
        toCome: total.toCome.value,
        sold: total.sold.value,
        together: total.together.value,
        aside: aside?.value,
        all: all.value,
        guesses,
      })),
    ).toEqual([
      {
        currency: 'US$',
        paid: 2899.5,
        toCome: 1500,
        sold: 350,
        together: 4049.5,
        aside: 225,
        all: 4274.5,
        guesses: 1,
      },
      {
        currency: 'EUR',
        paid: 1200,
        toCome: 0,
        sold: 0,
        together: 1200,
        aside: 0,
        all: 1200,
        guesses: 0,
      },
    ])
    expect(owned.map(({ what }) => what)).toEqual(['Hoist'])
    expect(unpriced.map(({ what }) => what)).toEqual(['Bolts'])
  })

  it('is printed by phase, with what is put by', async () => {
    const html = costHtml(
      await context(
        { n: parts, zz: note(parts, { date: '2026-04-01' }).replace('cooling', 'cabin') },
        'contingency: 15 %\n',
      ),
    )
    expect(rowsIn(html)).toContainEqual([
      'All of it',
      '5799 US$',
      '3000 US$',
      '700 US$',
      '8099 US$',
    ])
    expect(textIn(elementsOf(html)[0] ?? never())).toContain(
      'With 15 % of what is still to be paid put by, 450 US$, it comes to 8549 US$. 2 prices in it are guesses.',
    )
  })

  it('is not there where nothing has a price', async () => {
    expect(costHtml(await context({ n: '<Part id="a" what="A" />' }))).toBe('')
  })
})

function never(): never {
  throw new Error('there is no element')
}

describe('the list of parts', () => {
  it('has a row for each, by phase of the work', async () => {
    const ctx = await context({ n: parts })
    const rows = rowsIn(partTablesHtml(ctx))
    expect(rows.map((cells) => cells[0])).toEqual([
      'Part',
      'Cells',
      'Cable',
      'Engine',
      'Charger',
      'Brake set',
      'Spare cell',
      'Hoist',
      'Radiator',
      'Motor',
      'Bolts',
    ])
    expect(rows[1]).toEqual([
      'Cells',
      '',
      '36',
      '78 US$, together 2808 US$',
      '',
      'fitted, 14 March 2026',
      'A note',
    ])
    expect(rows[3]?.[5]).toBe('taken out and sold, used, 14 March 2026')
    expect(rows[10]?.[6]).toBe('from the drawer. A note')
    expect(partCountHtml(ctx)).toBe(
      '<p>10 parts, 5 of them fitted. Of these 5 have no mass and are in no sum of masses. Each row leads to where the part is written up.</p>',
    )
  })

  it('is led to from where a part is fitted, and leads back', async () => {
    const ctx = await context({ n: parts })
    const [charger] = (ctx.published.parts ?? []).filter(({ name }) => name === 'charger')
    if (charger === undefined) throw new Error('no charger')
    const html = partHtml(charger, ctx, true)
    expect(html).toContain('<a class="part" id="charger" href="/kit/parts/#Part-n-over-charger">')
    expect(html).toContain('aria-label="part, planned"')
    expect(html).toContain('Charger, 3.3\u00a0kW</a>')
    expect(partTablesHtml(ctx)).toContain('<tr id="Part-n-over-charger">')
    expect(partTablesHtml(ctx)).toContain('href="/kit/notes/n/#charger"')
    expect(partHtml(charger, ctx, false)).not.toContain('<a')
  })
})

describe('what is open', () => {
  const tasks = `- [ ] Torque the bolts to {torque}
- [ ] Does it leak?
- [x] Paint

<Chosen id="torque" value="9 N·m" because="so" />`

  it('is listed by phase with its place, what is done below', async () => {
    const ctx = await context({ n: tasks })
    expect(openCountHtml(ctx)).toBe('<p>1 task and 1 question are open.</p>')
    expect(rowsIn(openTablesHtml(ctx)).map(([first]) => first)).toEqual([
      'To do',
      'Torque the bolts to 9 N·m',
      'Does it leak?',
    ])
    expect(openTablesHtml(ctx)).toContain('href="/kit/notes/n/#Task-1"')
    expect(openTablesHtml(ctx)).toContain('data-number="n/torque"')
    expect(doneListHtml(ctx)).toContain('Paint')
    expect(openSummaryHtml(ctx)).toContain('href="/kit/open/"')
  })

  it('on the front page the first few, and how many there are', async () => {
    const ctx = await context({
      n: Array.from({ length: 8 }, (_, index) => `- [ ] Thing ${index}`).join('\n'),
    })
    const html = openSummaryHtml(ctx)
    expect(html.match(/<li>/g)).toHaveLength(5)
    expect(html).toContain('<p>8 tasks are open.</p>')
    expect(html).toContain('All 8 of them, by phase')
  })

  it('is nothing where nothing is', async () => {
    const ctx = await context({ n: 'So.' })
    expect([openSummaryHtml(ctx), openTablesHtml(ctx), doneListHtml(ctx)]).toEqual(['', '', ''])
    expect(openCountHtml(ctx)).toBe('<p>Nothing is open in these notes.</p>')
  })
})

it('sources say when they were read and what was taken from them', async () => {
  const ctx = await context({
    n: `<Rated id="limit" value="65 °C" source="sheet" at="p. 7" /> and <Quoted source="sheet">50 mA</Quoted>, [elsewhere](https://example.org/x?a=1&b=2).`,
  })
  expect(rowsIn(sourceTableHtml(ctx))).toEqual([
    ['Source', 'Read', 'What it says'],
    [
      'Controller sheet, rev B',
      '5 January 2026',
      'limit 65 °C (p. 7)“50 mA”, mentioned in A note, nothing rests on it',
    ],
  ])
  expect(outsideLinksHtml(ctx)).toBe(
    '<ul class="link-list"><li><a href="https://example.org/x?a=1&amp;b=2">elsewhere</a> (example.org), linked from <a href="/kit/notes/n/">A note</a> on 14 March 2026</li></ul>',
  )
})

describe('a renamed note', () => {
  it('is led to from its older names, and its blocks from theirs', async () => {
    const body =
      '<Calc id="hill" use="heat-and-rise" power="20 kW" flow="8 L/min" coolant="water" temperature="40 °C" />'
    const whole = note(body).replace('status: done', 'status: done\nwas: [old, older]')
    const { published } = await context({ n: whole }, 'address: https://example.org\n')
    const pages = redirectsOf(published, '/kit')
    expect([...pages.keys()].filter((name) => !name.includes('wall'))).toEqual([
      'notes/old/index.html',
      'notes/old/hill/index.html',
      'notes/older/index.html',
      'notes/older/hill/index.html',
    ])
    const html = pages.get('notes/old/index.html') ?? ''
    expect(html).toContain('<meta http-equiv="refresh" content="0; url=/kit/notes/n/">')
    expect(html).toContain('<link rel="canonical" href="https://example.org/kit/notes/n/">')
    expect(html).toContain('<a href="/kit/notes/n/">A note</a>')
    // Where script runs it goes on by itself, with what stood behind the old address; the policy lists it.
    expect(html).toContain('<noscript><meta http-equiv="refresh"')
    const script = /<script>(.*)<\/script>/.exec(html)?.[1] ?? ''
    const hash = createHash('sha256').update(script).digest('base64')
    expect(html).toContain(`default-src 'none'; script-src 'sha256-${hash}'`)
    expect(pages.get('notes/older/hill/index.html')).toContain('url=/kit/notes/n/hill/')
  })
})
