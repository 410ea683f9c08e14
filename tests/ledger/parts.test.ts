/**
 * Parts in the ledger: their figures as numbers with kinds and stories, what comes of a quantity, and
 * parts as rows of calculators' lists. The rows are held against the same rows typed by hand.
 */
import { describe, expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { blockHtml } from '../../src/card/index.ts'
import { contextOf } from '../../src/card/context.ts'
import { blockOf, ledgerOf, line, note, numberOf, settings, soundLedger } from './ledger-of.ts'

const site = settings.replace(
  'sources:',
  '  receipts: { title: The shoebox, plusMinus: $5 }\nsources:',
)

const of = (notes: Record<string, string>) => soundLedger(notes, calculators, site)

describe('a figure of a part', () => {
  it('is a number of the ledger, of the kind that its author says', async () => {
    const ledger = await of({
      n: `<Part id="pump" what="Coolant pump" size="16 L/min" price="$89" on="2026-01-24" mass="1.9 lb" source="sheet" at="p. 2" />

<Part id="fan" what="Fan" status="planned" price="$45" mass="2 lb" />

<Part id="box" what="Box" price="$380" priced="receipts" mass={weighed} />

<Part id="relay" what="Relay" price="$7" priced="sheet" />

It weighs <Reading id="weighed" value="31 lb" with="tape" />, {pump.mass} + {pump.cost}.`,
    })
    const kinds = [
      'pump.price',
      'pump.mass',
      'fan.price',
      'fan.mass',
      'box.price',
      'box.mass',
      'relay.price',
    ]
    expect(
      kinds.map((name) => {
        const { kind, instrument, source, because, plusMinus } = numberOf(ledger, `n/${name}`)
        return [name, kind, instrument?.title ?? source?.title ?? because, plusMinus]
      }),
    ).toEqual([
      ['pump.price', 'reading', 'the receipt', null],
      ['pump.mass', 'rated', 'Controller sheet', null],
      ['fan.price', 'assumed', 'planned, and not asked for yet', null],
      ['fan.mass', 'assumed', 'typed at the part, without a source', null],
      ['box.price', 'reading', 'The shoebox', 5],
      ['box.mass', 'reading', 'steel tape', null],
      ['relay.price', 'rated', 'Controller sheet', null],
    ])
    expect(numberOf(ledger, 'n/pump.price').date).toBe('2026-01-24')
    expect(numberOf(ledger, 'n/pump.mass').source?.at).toBe('p. 2')
    expect(numberOf(ledger, 'n/box.mass').rests).toEqual(['n/weighed'])
  })

  it('of one and of all together', async () => {
    const ledger = await of({
      n: `<Part id="cells" what="Cells" quantity="36" price="$78.25" mass="11.9 lb" load="0.5 A" power="2 W" />

<Part id="hose" what="Hose" quantity="17 ft" price="£2/ft" mass="0.2 kg/m" />

{cells.cost} {cells.totalMass} {cells.totalLoad} {cells.totalPower} {hose.cost} {hose.totalMass}`,
    })
    const value = (name: string) => numberOf(ledger, `n/${name}`).value
    // By hand: 36 × 78.25 = 2817; 36 × 11.9 lb × 0.45359237 kg/lb = 194.319…; 17 × 2 = 34;
    // 17 ft = 5.1816 m, × 0.2 kg/m = 1.03632 kg.
    expect(value('cells.cost')).toBeCloseTo(2817, 9)
    expect(value('cells.totalMass')).toBeCloseTo(194.31897, 4)
    expect(value('cells.totalLoad')).toBeCloseTo(18, 9)
    expect(value('cells.totalPower')).toBeCloseTo(72, 9)
    expect(value('hose.cost')).toBeCloseTo(34, 9)
    expect(value('hose.totalMass')).toBeCloseTo(1.03632, 9)
    expect(numberOf(ledger, 'n/cells.cost').shown).toBe('2817\u00a0US$')
    expect(numberOf(ledger, 'n/cells.price').shown).toBe('78.25\u00a0US$')
    expect(numberOf(ledger, 'n/hose.cost').shown).toBe('34\u00a0GBP')
    expect(numberOf(ledger, 'n/cells.totalMass').rests).toEqual([
      'n/cells.mass',
      'n/cells.quantity',
    ])
  })

  it('is the same number by both names where there is one of it', async () => {
    const ledger = await of({ n: '<Part id="pump" what="Pump" mass="2 kg" />\n\n{pump.totalMass}' })
    expect(ledger.published.numbers.map(({ id }) => id)).toEqual(['n/pump.mass'])
  })

  it('can be replaced by a later reading, and used in another note', async () => {
    const ledger = await of({
      a: note('<Part id="pump" what="Pump" mass="2 kg" />', { date: '2026-01-01' }),
      b: note(
        `import { pump } from './a.mdx'\n\nIt is <Reading id="now" value="2.4 kg" with="tape" replaces={pump.mass} />, {pump.mass * 2}.`,
        { date: '2026-02-01' },
      ),
    })
    expect(numberOf(ledger, 'b/pump.mass * 2').value).toBeCloseTo(4.8, 12)
    expect(numberOf(ledger, 'a/pump.mass').now).toBeCloseTo(2.4, 12)
  })
})

const weighed = 'wheelbase="2.9 m" frontBefore="800 kg" rearBefore="700 kg"'

describe('parts as rows of a list', () => {
  it('weigh on the axles what the same rows do that are typed', async () => {
    const ledger = await of({
      n: `<Part id="engine" what="engine" status="sold" mass="260 kg" x="0.1 m" />

<Part id="tank" what="tank" status="out" mass="60 kg" x="2.4 m" />

<Part id="motor" what="motor" mass="72 kg" x="0.4 m" z="0.5 m" />

<Part id="cells" what="cells" quantity="20" mass="5.4 kg" x="1.9 m" />

<Part id="fan" what="fan" status="planned" mass="3 kg" x="-0.3 m" />

<Part id="bolts" what="bolts" />

<Calc id="a" use="axle-balance" ${weighed} removed={parts.out} added={[...parts, { name: "driver", mass: "80 kg", x: "1.2 m" }]} />

<Calc id="b" use="axle-balance" ${weighed} removed={[{ name: "engine", mass: "260 kg", x: "0.1 m" }, { name: "tank", mass: "60 kg", x: "2.4 m" }]} added={[{ name: "motor", mass: "72 kg", x: "0.4 m", z: "0.5 m" }, { name: "cells", mass: "108 kg", x: "1.9 m" }, { name: "driver", mass: "80 kg", x: "1.2 m" }]} />`,
    })
    expect(blockOf(ledger, 'n/a').inputs).toEqual(blockOf(ledger, 'n/b').inputs)
    expect(blockOf(ledger, 'n/a').outputs).toEqual(blockOf(ledger, 'n/b').outputs)
    // Each row says which part it is of.
    expect(numberOf(ledger, 'n/a.added.0.mass').rests).toEqual(['n/motor.mass'])
    expect(numberOf(ledger, 'n/a.added.1.mass').rests).toEqual(['n/cells.totalMass'])
    expect(numberOf(ledger, 'n/a.removed.1.x').rests).toEqual(['n/tank.x'])
  })

  it('that were on the vehicle before are in what it weighed; they draw on the 12 V side all the same', async () => {
    const parts = `<Part id="motor" what="motor" mass="72 kg" x="0.4 m" />

<Part id="heater" what="heater" status="owned" mass="6 kg" x="1 m" load="8 A" />

<Part id="seat" what="seat" status="owned" mass="14 kg" />`
    const ledger = await ledgerOf(
      {
        n: `${parts}

<Calc id="a" use="axle-balance" ${weighed} added={parts} />

<Calc id="b" use="twelve-volt-budget" converter="40 A" battery="lead-acid" capacity="60 Ah" loads={parts} />`,
      },
      calculators,
    )
    const rows = (id: string, list: string) => {
      const { [list]: made } = blockOf(ledger, id).inputs
      return Array.isArray(made) ? made.map((row: { name?: unknown }) => row.name) : []
    }
    expect(rows('n/a', 'added')).toEqual(['motor'])
    expect(rows('n/b', 'loads')).toEqual(['heater'])
    expect(ledger.problems.map(line)).toEqual([
      'notes/n.mdx:13:99 warning part-left-out: the part `heater` (heater) is left out of `added`: it is `owned`, so it was on the vehicle when that was weighed | hint: take its `x` out if that is so; if it came on since then, `status="fitted" price="$0"` | also: notes/n.mdx:9:1',
    ])
  })

  it('draw on the 12 V side, with the rows of a table behind them', async () => {
    const night = 'converter="40 A" battery="lead-acid" capacity="60 Ah"'
    const ledger = await of({
      n: `<Part id="lamps" what="lamps" quantity="2" load="4.5 A" />

<Part id="fan" what="fan" power="90 W" duty="30 %" surge="2.5" />

<Calc id="a" use="twelve-volt-budget" ${night} loads={parts}>

| name | current |
| ---- | ------- |
| pump | 1.5 A   |

</Calc>

<Calc id="b" use="twelve-volt-budget" ${night}>

| name  | current | power | duty | surge |
| ----- | ------- | ----- | ---- | ----- |
| lamps | 9 A     |       |      |       |
| fan   |         | 90 W  | 30 % | 2.5   |
| pump  | 1.5 A   |       |      |       |

</Calc>`,
    })
    expect(blockOf(ledger, 'n/a').outputs).toEqual(blockOf(ledger, 'n/b').outputs)
    expect(numberOf(ledger, 'n/a.loads.0.current').rests).toEqual(['n/lamps.totalLoad'])
  })

  it('are the items of a cost, by the phase of their notes', async () => {
    const ledger = await of({
      n: `<Part id="cells" what="cells" quantity="36" price="$78" />

<Part id="hoist" what="hoist" status="owned" price="$200" />

<Part id="engine" what="engine" status="sold" price="$350" />

<Part id="charger" what="charger" status="planned" price="$1150" />

<Part id="cable" what="cable" status="ordered" price="$980" />

<Calc id="cost" use="cost-rollup" items={parts.all} setAside="$600" />`,
    })
    // By hand: 36 × 78 = 2808 paid; 980 ordered; 1150 planned; − 350 sold; 4588 together.
    expect(blockOf(ledger, 'n/cost').outputs).toMatchObject({
      paid: 2808,
      ordered: 980,
      planned: 1150,
      sold: 350,
      total: 4588,
      dearest: 'cooling',
    })
  })

  it('cost what they cost in whichever one currency they are in', async () => {
    const items = (
      sign: string,
    ) => `<Part id="cells" what="cells" quantity="36" price="${sign} 78" />

<Part id="charger" what="charger" status="planned" price="${sign} 1150" />

<Calc id="cost" use="cost-rollup" items={parts.all} setAside="${sign} 150" energy="20.0 kWh" range="100 km" />

{cost.total + cells.cost}`
    const [euros, dollars] = [await of({ n: items('€') }), await of({ n: items('$') })]
    const block = blockOf(euros, 'n/cost')
    expect(block.outputs).toEqual(blockOf(dollars, 'n/cost').outputs)
    expect(block.currency).toBe('EUR')
    expect(numberOf(euros, 'n/cost.total').shown).toBe('3960\u00a0EUR')
    expect(numberOf(euros, 'n/cost.perRange').shown).toBe('39.6\u00a0EUR/km')
    expect(numberOf(euros, 'n/cost.perRange').shownOther).toBe('63.7\u00a0EUR/mi')
    expect(numberOf(euros, 'n/cost.total + cells.cost').shown).toBe('6770\u00a0EUR')
    const said = [...block.findings.map(({ text }) => text), ...block.working].join('\n')
    expect(said).toContain('150\u00a0EUR is set aside for 1150\u00a0EUR still to pay')
    expect(said).not.toContain('US$')
    const { published, calculators: used } = euros
    const ctx = contextOf(published, { base: '/', calculators: used })
    const drawn = blockHtml(block, ctx)
    expect(drawn).toContain('EUR')
    expect(drawn).not.toContain('US$')
  })

  it('are not added up in two currencies, which is said once', async () => {
    const { problems, ...ledger } = await ledgerOf(
      {
        n: `<Part id="cells" what="cells" quantity="36" price="$78" />

<Part id="charger" what="charger" price="€ 1150" />

<Part id="cable" what="cable" price="€ 30" />

<Calc id="cost" use="cost-rollup" items={parts.all} />`,
      },
      calculators,
    )
    expect(problems.map(line)).toEqual([
      'notes/n.mdx:13:42 error mixed-currencies: `cost` can add up one currency, and has sums in US$ and EUR: `cells.cost` is in US$, `charger.price` is in EUR | hint: no rate of exchange is kept here: give all in one, at the day’s rate',
    ])
    expect(blockOf(ledger, 'n/cost').findings.map(({ level, text }) => [level, text])).toEqual([
      ['unknown', 'Cannot tell: Money: sums in US$ and EUR, and no rate of exchange is kept here.'],
      ['unknown', 'Cannot tell: Money: sums in US$ and EUR, and no rate of exchange is kept here.'],
    ])
  })

  it('have put by for them what the site’s settings say, where the block says nothing', async () => {
    const item = '<Part id="cable" what="cable" status="planned" price="€ 300" />'
    const cost = (more = '') =>
      `${item}\n\n<Calc id="cost" use="cost-rollup" items={parts.all} ${more} />`
    const share = async (body: string, settled: string) =>
      blockOf(await ledgerOf({ n: body }, calculators, settled), 'n/cost').outputs.asideShare
    const settled = `contingency: 10 %\n${settings}`
    expect(await share(cost(), settled)).toBeCloseTo(0.1, 12)
    expect(await share(cost('setAside="€ 90"'), settled)).toBeCloseTo(0.3, 12)
    expect(await share(cost(), settings)).toBe(0)
    const summed = await ledgerOf({ n: cost('setAside="€ 90"') }, calculators, settled)
    expect(blockOf(summed, 'n/cost').given.share).toBeUndefined()
  })

  it('are those of the note’s day, of other notes by import of nothing', async () => {
    const calc = `<Calc id="a" use="axle-balance" ${weighed} added={parts} />`
    const ledger = await of({
      a: note('<Part id="motor" what="motor" mass="72 kg" x="0.4 m" />', { date: '2026-01-01' }),
      b: note(calc, { date: '2026-02-01' }),
      c: note(
        '<Part id="late" what="fan" mass="3 kg" x="0 m" />\n\n<Part id="early" what="pump" mass="1 kg" x="0 m" on="2026-01-15" />',
        { date: '2026-03-01' },
      ),
      d: note(calc, { date: '2026-04-01' }),
    })
    const names = (id: string) => {
      const { added } = blockOf(ledger, id).inputs
      return Array.isArray(added) ? added.map((row: { name?: unknown }) => row.name) : []
    }
    expect(names('b/a')).toEqual(['motor', 'pump'])
    expect(names('d/a')).toEqual(['motor', 'fan', 'pump'])
    const restsOn = ledger.published.notes.map(({ slug, restsOn: on }) => [slug, on])
    expect(restsOn).toEqual([
      ['a', []],
      ['b', ['a', 'c']],
      ['c', []],
      ['d', ['a', 'c']],
    ])
  })
})
