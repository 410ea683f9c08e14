/** Every element of a note, read whole: what it gives the ledger, and what it refuses. */
import { describe, expect, it } from 'vitest'
import type { PublishedNumber } from '../../src/ledger/published.ts'
import { blockOf, ledgerOf, numberOf, problemsOf, soundLedger } from './ledger-of.ts'

/** Exponents of the currencies after US$. */
const noOtherMoney = [0, 0, 0, 0, 0, 0, 0, 0, 0]

/** What every number of these tests has in common is left out. */
const usual = {
  note: 'n',
  flavour: 'amount',
  calculator: null,
  block: null,
  rests: [],
  source: null,
  instrument: null,
  plusMinus: null,
  date: '2026-03-14',
  file: 'notes/n.mdx',
}
const ampere = { of: 'current', unit: 'A', vector: [0, 0, 0, 1, 0, 0, 0, ...noOtherMoney] }
const metre = { of: 'length', unit: 'm', vector: [1, 0, 0, 0, 0, 0, 0, ...noOtherMoney] }

async function only(text: string): Promise<PublishedNumber> {
  const { published } = await soundLedger({ n: text })
  const [number, ...others] = published.numbers
  if (number === undefined || others.length > 0) throw new Error('not one number')
  return number
}

describe('an element', () => {
  it('Reading: instrument with its ±, conditions, day', async () => {
    expect(
      await only(
        'It drew <Reading id="draw" value="1.5 A" with="meter" at="14.0 V, warm" on="2026-03-10" />.',
      ),
    ).toEqual({
      ...usual,
      ...ampere,
      id: 'n/draw',
      name: 'draw',
      kind: 'reading',
      firmness: 'reading',
      typed: '1.5 A',
      value: 1.5,
      now: 1.5,
      shown: '1.5\u00a0A',
      display: 'A',
      figures: 2,
      plusMinus: 0.1,
      plusMinusShown: '0.1 A',
      instrument: { key: 'meter', title: 'digital multimeter', plusMinus: '0.1 A' },
      at: '14.0 V, warm',
      date: '2026-03-10',
      line: 7,
      column: 28,
    })
  })

  it('Rated: source with edition and page', async () => {
    expect(
      await only(
        'It allows <Rated id="limit" value="65 °C" source="sheet" at="p. 7" /> at the inlet.',
      ),
    ).toEqual({
      ...usual,
      id: 'n/limit',
      name: 'limit',
      kind: 'rated',
      firmness: 'rated',
      of: 'temperature',
      unit: 'K',
      vector: [0, 0, 0, 0, 1, 0, 0, ...noOtherMoney],
      flavour: 'temperature',
      typed: '65 °C',
      value: 338.15,
      now: 338.15,
      shown: '65\u00a0°C',
      shownOther: '149\u00a0°F',
      display: '°C',
      displayOther: '°F',
      figures: 2,
      source: {
        key: 'sheet',
        title: 'Controller sheet',
        edition: 'rev B',
        read: '2026-01-05',
        at: 'p. 7',
      },
      line: 7,
      column: 29,
    })
  })

  it('Assumed: why, and how it could be settled', async () => {
    expect(
      await only(
        'Say <Assumed id="share" value="12 %" because="most are" settle="a test on the bench" />.',
      ),
    ).toEqual({
      ...usual,
      id: 'n/share',
      name: 'share',
      kind: 'assumed',
      firmness: 'assumed',
      of: 'fraction',
      unit: '1',
      vector: [0, 0, 0, 0, 0, 0, 0, ...noOtherMoney],
      typed: '12 %',
      value: 0.12,
      now: 0.12,
      shown: '12\u00a0%',
      display: '%',
      figures: 2,
      because: 'most are',
      settle: 'a test on the bench',
      line: 7,
      column: 25,
    })
  })

  it('Chosen: why; a fraction of an inch stays as typed', async () => {
    const number = await only(
      'Hose of <Chosen id="bore" value="1/2 in" because="the pump’s spigot" />.',
    )
    expect(number.value).toBeCloseTo(0.0127, 15)
    expect({ ...number, value: 0, now: 0 }).toEqual({
      ...usual,
      ...metre,
      id: 'n/bore',
      name: 'bore',
      kind: 'chosen',
      firmness: 'chosen',
      typed: '1/2 in',
      value: 0,
      now: 0,
      shown: '1/2\u00a0in',
      shownOther: '12.7\u00a0mm',
      display: 'in',
      displayOther: 'mm',
      figures: null,
      because: 'the pump’s spigot',
      line: 7,
      column: 27,
    })
  })

  it('without an id has a name that no note can use', async () => {
    const { published } = await soundLedger({
      n: 'It is <Chosen value="2 m" because="so" /> and <Chosen value="3 m" because="so" />.',
    })
    expect(published.numbers.map(({ id, value }) => [id, value])).toEqual([
      ['n/chosen-1', 2],
      ['n/chosen-2', 3],
    ])
  })

  it('as a block of its own is the same number', async () => {
    expect((await only('<Chosen id="supply" value="2.4 m" because="so" />')).shown).toBe(
      '2.4\u00a0m',
    )
  })

  it('an instrument or a source may be told in words instead of by name', async () => {
    const { published } = await soundLedger({
      n: 'It is <Reading id="a" value="2 m" with="my old folding rule" /> or <Rated id="b" value="3 m" source="a handbook of 1961" at="p. 3" />.',
    })
    expect(published.numbers.map(({ instrument, source }) => [instrument, source])).toEqual([
      [{ key: 'my old folding rule', title: 'my old folding rule' }, null],
      [null, { key: 'a handbook of 1961', title: 'a handbook of 1961', at: 'p. 3' }],
    ])
  })

  it('Show: another unit and other digits, on the page only', async () => {
    const ledger = await soundLedger({
      n: 'Out <Chosen id="a" value="2.4 m" because="so" />, that is <Show value={a} unit="ft" digits={2} /> or <Show value={a * 2} unit="in" digits="3" />.',
    })
    expect([...(ledger.shown.get('n')?.values() ?? [])]).toEqual([
      { type: 'number', id: 'n/a', linked: true, anchor: 'a' },
      { type: 'number', id: 'n/a', linked: true, unit: 'ft', digits: 2 },
      { type: 'number', id: 'n/a * 2', linked: true, unit: 'in', digits: 3 },
    ])
  })

  it('Nominal and Quoted give the ledger nothing', async () => {
    const ledger = await soundLedger({
      n: 'The <Nominal>12 V</Nominal> side; they claim <Quoted source="sheet">98 %</Quoted> there.',
    })
    expect(ledger.published.numbers).toEqual([])
    expect([...(ledger.shown.get('n')?.values() ?? [])]).toEqual([
      { type: 'nominal', text: '12 V' },
      {
        type: 'quoted',
        text: '98 %',
        source: { key: 'sheet', title: 'Controller sheet', edition: 'rev B', read: '2026-01-05' },
      },
    ])
  })

  it('in a heading or a link is not a link itself', async () => {
    const ledger = await soundLedger({
      n: '## Of <Chosen id="a" value="2.4 m" because="so" />\n\nSee [the {a} hose](#of-a) of {a}.',
    })
    expect([...(ledger.shown.get('n')?.values() ?? [])]).toEqual([
      { type: 'number', id: 'n/a', linked: false, anchor: 'a' },
      { type: 'number', id: 'n/a', linked: false },
      { type: 'number', id: 'n/a', linked: true },
    ])
  })

  it.each([
    [
      '<Reading id="a" value="1 A" />',
      'no-instrument: <Reading> does not say the instrument it was read with: `with="clampMeter"`',
    ],
    [
      '<Rated id="a" value="1 A" at="p. 1" />',
      'no-source: <Rated> does not say where it was read: `source="controllerSheet"`, and `at="p. 7"`',
    ],
    [
      '<Assumed id="a" value="1 A" />',
      'no-reason: <Assumed> does not say the reason: `because="…"`',
    ],
    [
      '<Chosen id="a" value="1 A" because=" " />',
      'no-reason: <Chosen> does not say the reason: `because="…"`',
    ],
    [
      '<Chosen id="a" because="so" />',
      'no-value: <Chosen> does not say its value with a unit: `value="1.5 A"`',
    ],
    ['<Show />', 'not-a-name: <Show> takes a name in braces: `value={pump.flow}`'],
    [
      '<Nominal id="a">12 V</Nominal>',
      'nominal-with-name: nothing can rest on a <Nominal>: it takes no attributes',
    ],
    ['<Quoted>5 A</Quoted>', 'no-source: <Quoted> does not say who is quoted: `source="…"`'],
    [
      '<Chosen id="a" value="1 A" because="so">about</Chosen>',
      'unexpected-content: <Chosen> holds a value, or a table of them, and no other text | hint: `<Chosen … />`, with the words outside',
    ],
    [
      '<Reding id="a" value="1 A" />',
      'unknown-element: there is no element <Reding> | hint: did you mean <Reading>?',
    ],
    [
      '<Gauge />',
      'unknown-element: there is no element <Gauge> | hint: import it, or write `\\<Gauge` if you mean the sign',
    ],
  ])('%s is refused', async (text, words) => {
    expect(await problemsOf({ n: `So ${text} it is.` })).toEqual([`notes/n.mdx:7:4 error ${words}`])
  })

  it.each([
    [
      '<Reading id="a" vlaue="1 A" value="1 A" with="meter" />',
      20,
      'unknown-attribute: <Reading> has no `vlaue` | allowed: value, with, id, plusMinus, at, on, replaces, checks | hint: did you mean `value`?',
    ],
    [
      '<Chosen id="a" value="1 A" because="so" plusMinus="1 A" />',
      44,
      'unknown-attribute: <Chosen> has no `plusMinus` | allowed: value, because, id, on, replaces, checks',
    ],
    [
      '<Reading id="a" value="1 A" with="meter" on="3.4.2026" />',
      45,
      'bad-date: `on="3.4.2026"` is not a date | hint: a date is written YYYY-MM-DD, such as 2026-03-14',
    ],
    [
      '<Chosen id={1} value="1 A" because="so" />',
      12,
      'bad-name: an `id` is a plain text: `id="pumpDraw"`',
    ],
    [
      '<Chosen id="a" value={1 + 1} because="so" />',
      19,
      'not-text: a <Chosen> is given, not worked out: its `value` is a text with a unit | hint: `value="2.4 m"`; a sum needs no element: `{a + b}`',
    ],
    ['<Chosen id="a" value="1 A" because={1} />', 31, 'not-text: `because` is a text in quotes'],
    [
      '<Chosen id="a" value="1 A" because="so" replaces="b" />',
      44,
      'not-a-name: `replaces` takes a name in braces: `replaces={pump.flow}`',
    ],
    [
      '<Chosen id="a" value="1 A" because="so" {...props} />',
      44,
      'spread: `{…}` inside <Chosen>: write each attribute out',
    ],
    [
      '<Reading id="a" value="1 A" with="metr" />',
      32,
      'unknown-instrument: `site.yaml` has no instrument called `metr` | hint: did you mean `meter`?',
    ],
    [
      '<Rated id="a" value="1 A" source="shet" at="p. 1" />',
      30,
      'unknown-source: `site.yaml` has no source called `shet` | hint: did you mean `sheet`?',
    ],
    [
      '<Rated id="a" value="1 A" source="ISO" at="p. 1" />',
      30,
      'unknown-source: `site.yaml` has no source called `ISO` | hint: add it under `sources:`, or write its title out',
    ],
    [
      '<Reading id="a" value="1 m" with="tape" plusMinus="1 K" />',
      20,
      'wrong-dimension: the ± `1 K` is not of the same kind as the value `1 m`',
    ],
    [
      '<Reading id="a" value="1 m" with="tape" plusMinus="some" />',
      20,
      'not-a-quantity: the ±: `some` does not begin with a number',
    ],
  ])('%s is refused at the attribute', async (text, column, words) => {
    expect(await problemsOf({ n: `So ${text} it is.` })).toEqual([
      `notes/n.mdx:7:${column} error ${words}`,
    ])
  })

  it('Rated without a page is only warned of', async () => {
    expect(
      await problemsOf({ n: 'So <Rated id="a" value="1 A" source="sheet" /> it is.' }),
    ).toEqual([
      'notes/n.mdx:7:4 warning no-page: <Rated> does not say where in the source it stands | hint: `at="p. 7"`, or the table or clause',
    ])
  })

  it.each([['0'], ['13'], ['1.5'], ['two']])('Show with digits="%s" is refused', async (digits) => {
    expect(
      await problemsOf({
        n: `So <Chosen id="a" value="1 A" because="so" /> is <Show value={a} digits="${digits}" />.`,
      }),
    ).toEqual(['notes/n.mdx:7:66 error bad-digits: `digits` is a whole number from 1 to 12'])
  })

  it('Show in a unit that does not fit is refused', async () => {
    expect(
      await problemsOf({
        n: 'So <Chosen id="a" value="1 A" because="so" /> is <Show value={a} unit="V" /> or <Show value={a} unit="ampers" />.',
      }),
    ).toEqual([
      'notes/n.mdx:7:50 error wrong-dimension: `unit="V"` does not fit `a`, which is a current | allowed: a unit such as A',
      'notes/n.mdx:7:81 error unknown-unit: `unit="ampers"` is not a unit known here | allowed: a unit such as A',
    ])
  })

  it('two of one name are refused, with both places', async () => {
    expect(
      await problemsOf({
        n: 'So <Chosen id="a" value="1 A" because="so" />\nand <Chosen id="a" value="2 A" because="so" /> it is.',
      }),
    ).toEqual([
      'notes/n.mdx:8:13 error doubled-name: the name `a` is already taken in this note | hint: two numbers need two names | also: notes/n.mdx:7:4',
    ])
  })

  it('a name that is also a heading’s address is refused, with both places', async () => {
    expect(
      await problemsOf({
        n: '## Supply\n\nSo <Chosen id="supply" value="1 m" because="so" /> it is.',
      }),
    ).toEqual([
      'notes/n.mdx:9:4 error clash-with-heading: the name `supply` is also the address of a heading in this note | hint: choose another name, or word the heading differently | also: notes/n.mdx:7:1',
    ])
  })
})

describe('a table of numbers', () => {
  const table = [
    '<Reading with="meter" at="on charge">',
    '',
    '| name | what | value | ± |',
    '| --- | --- | --- | --- |',
    '| draw | the pump | 1.5 A | 0.2 A |',
    '| fan | the fan | 7.5 A | |',
    '',
    '</Reading>',
  ].join('\n')

  it('gives each row its own name and all of them the same instrument', async () => {
    const ledger = await soundLedger({ n: `${table}\n\nTogether {draw + fan}.` })
    expect(
      ledger.published.numbers.map(
        ({ id, shown, plusMinusShown, instrument, at, line, column }) => [
          id,
          shown,
          plusMinusShown,
          instrument?.key,
          at,
          line,
          column,
        ],
      ),
    ).toEqual([
      ['n/draw', '1.5\u00a0A', '0.2 A', 'meter', 'on charge', 11, 19],
      ['n/draw + fan', '9.0\u00a0A', undefined, undefined, undefined, 16, 10],
      ['n/fan', '7.5\u00a0A', '0.1 A', 'meter', 'on charge', 12, 17],
    ])
    expect([...(ledger.shown.get('n')?.values() ?? [])][0]).toEqual({
      type: 'table',
      ids: ['n/draw', 'n/fan'],
    })
  })

  it('with other columns, or a row without a value, is refused', async () => {
    expect(
      await problemsOf({
        n: '<Rated source="sheet">\n\n| nam | value |\n| --- | --- |\n| a | 1 A |\n\n</Rated>\n\n<Rated source="sheet">\n\n| name | value |\n| --- | --- |\n| b | |\n| 2c | 1 A |\n| d | 1 flurb |\n\n</Rated>',
      }),
    ).toEqual([
      'notes/n.mdx:9:1 error bad-table: the table in <Rated> has the columns `nam`, `value` | allowed: `name` and `value`, and where wanted `±`, `at`, `what`',
      'notes/n.mdx:19:1 error bad-table: a row of the table lacks its name or its value',
      'notes/n.mdx:20:1 error bad-name: `2c` begins with a digit; in `{2c}` it would be read as a number',
      'notes/n.mdx:21:5 error unknown-unit: `flurb` is not a unit known here',
    ])
  })
})

describe('a block', () => {
  it('has each input as typed, chosen or assumed as the calculator says', async () => {
    const ledger = await soundLedger({
      n: 'It draws <Reading id="draw" value="3 A" with="meter" />.\n\n<Calc id="lamp" use="lamp" title="The rear lamp" amps={draw} wire="1.0 mm²" place="at the rear" maker="B-7" />',
    })
    const { given, inputs, outputs, title, line } = blockOf(ledger, 'n/lamp')
    expect({ given, inputs, outputs, title, line }).toEqual({
      title: 'The rear lamp',
      line: 9,
      given: {
        volts: { type: 'number', id: 'n/lamp.volts', how: 'assumed-default' },
        amps: { type: 'number', id: 'n/lamp.amps', how: 'reference' },
        wire: { type: 'number', id: 'n/lamp.wire', how: 'literal' },
        place: { type: 'word', value: 'rear', how: 'literal' },
        casing: { type: 'word', value: 'metal', how: 'assumed-default' },
        maker: { type: 'word', value: 'B-7', how: 'literal' },
      },
      inputs: { volts: 12, amps: 3, wire: 1e-6, place: 'rear', casing: 'metal', maker: 'B-7' },
      outputs: { power: 36, fuse: 5, remark: 'low' },
    })
    expect(
      ['volts', 'amps', 'wire'].map((name) => {
        const { kind, firmness, because, typed } = numberOf(ledger, `n/lamp.${name}`)
        return [name, kind, firmness, because, typed]
      }),
    ).toEqual([
      ['volts', 'assumed', 'assumed', 'a 12 V system at rest', '12 V'],
      ['amps', 'reading', 'reading', undefined, undefined],
      ['wire', 'chosen', 'chosen', 'chosen in this block', '1.0 mm²'],
    ])
  })

  it('a list of parts is the same as an attribute and as a table', async () => {
    const list =
      'pieces={[{ name: "out", length: "2.4 m" }, { length: back }, { name: \'up\', length: `1 ft` }]}'
    const table = [
      '| name | Length |',
      '| --- | --- |',
      '| out | 2.4 m |',
      '| | {back} |',
      '| up | 1 ft |',
    ].join('\n')
    const back = 'So <Chosen id="back" value="2.8 m" because="over the rail" /> it is.\n\n'
    const one = await soundLedger({ n: `${back}<Calc id="cut" use="cut" ${list} />` })
    const two = await soundLedger({ n: `${back}<Calc id="cut" use="cut">\n\n${table}\n\n</Calc>` })
    const [a, b] = [blockOf(one, 'n/cut'), blockOf(two, 'n/cut')]
    expect(b).toEqual(a)
    expect(a.given).toEqual({
      pieces: {
        type: 'rows',
        rows: [
          {
            name: { type: 'word', value: 'out', how: 'literal' },
            length: { type: 'number', id: 'n/cut.pieces.0.length', how: 'literal' },
          },
          { length: { type: 'number', id: 'n/cut.pieces.1.length', how: 'reference' } },
          {
            name: { type: 'word', value: 'up', how: 'literal' },
            length: { type: 'number', id: 'n/cut.pieces.2.length', how: 'literal' },
          },
        ],
      },
    })
    expect(numberOf(two, 'n/cut.total').value).toBeCloseTo(2.4 + 2.8 + 0.3048, 12)
    expect(numberOf(two, 'n/cut.each.1.share').value).toBeCloseTo(2.8 / (2.4 + 2.8 + 0.3048), 12)
  })

  it('rows and columns of it have names too', async () => {
    const ledger = await soundLedger({
      n: '<Calc id="cut" use="cut" pieces={[{ length: "1 m" }, { length: "3 m" }]} />\n\nThat is {cut.each[1].share} of it, {cut.pieces[0].length * 2} and {cut.total}.',
    })
    expect(numberOf(ledger, 'n/cut.pieces[0].length * 2').value).toBe(2)
    expect(numberOf(ledger, 'n/cut.each.1.share').shown).toBe('75.0\u00a0%')
  })

  it('lists everything that is wrong with it', async () => {
    const blocks = [
      '<Calc use="lamp" amps="1 A" />',
      '<Calc id="c" amps="1 A" />',
      '<Calc id="d" use="lmap" amps="1 A" />',
      '<Calc id="e" use="lamp" apms="1 A" />',
      '<Calc id="f" use="lamp" amps="1 A" place="fornt" accept="" />',
      '<Calc id="g" use="lamp" amps="1 A" place={f.power} casing="5">\n\ntext\n\n</Calc>',
      '<Calc id="h" use="cut" pieces="2 m" />',
      '<Calc id="i" use="cut" />',
      '<Calc id="j" use="lamp" amps={[{ a: 1 }]} />',
      '<Calc id="k" use="cut" pieces={[{ lenght: "1 m" }, 3]} />',
      '<Calc id="l" use="cut">\n\n| nam | x |\n| --- | --- |\n| a | b |\n\n</Calc>',
      '{c.power} {e} {e.pwer} {e.remark} {k.each} {f.wire}',
    ].join('\n\n')
    expect(await problemsOf({ n: blocks })).toEqual([
      'notes/n.mdx:7:1 error no-id: <Calc> has no `id`: its results need a name | hint: `id="pumpFuse"`',
      'notes/n.mdx:9:1 error no-calculator: <Calc> does not say which calculator: `use="…"`',
      'notes/n.mdx:11:14 error unknown-calculator: there is no calculator `lmap` | hint: did you mean `lamp`?',
      'notes/n.mdx:13:25 error unknown-field: the calculator `lamp` has no input `apms` | allowed: volts, amps, wire, place, casing, maker | hint: did you mean `amps`?',
      'notes/n.mdx:15:36 error unknown-choice: `place`: “Place” cannot be `fornt` | allowed: front, rear | hint: did you mean `front`?',
      'notes/n.mdx:15:50 error no-reason: `accept` needs the reason',
      'notes/n.mdx:17:1 error unexpected-content: <Calc> holds a table of parts and no other text | hint: leave a blank line before and after the table, and put the words outside',
      'notes/n.mdx:17:36 error not-a-word: `place` takes a word, not a number | allowed: front, rear',
      'notes/n.mdx:17:52 error unknown-choice: `casing`: “Casing” cannot be `5` | allowed: plastic, metal',
      'notes/n.mdx:23:24 error not-a-list: `pieces` is a list: one row for each piece | hint: a table inside <Calc> with the columns name, length',
      'notes/n.mdx:25:1 error missing-input: `i` has no list of pieces: each length of hose | hint: a table inside <Calc> with the columns name, length',
      'notes/n.mdx:27:25 error not-a-list: `amps` is one number, not a list',
      'notes/n.mdx:29:1 error missing-input: `k` does not say `pieces.0.length`: along the piece | hint: `length="0.1 m"` or `length={aName}`',
      'notes/n.mdx:29:43 error unknown-field: a piece has no `lenght` | allowed: name, length | hint: did you mean `length`?',
      'notes/n.mdx:29:52 error bad-list: a list of parts is written `[{ name: "…", length: "2 m" }, …]`',
      'notes/n.mdx:33:1 error bad-table: the table’s columns (nam, x) fit no list of `cut` | allowed: pieces: name, length | hint: did you mean `name`?',
      'notes/n.mdx:39:12 error not-a-number: `e` is a block; say which number of it | allowed: `e.power`, `e.fuse`, `e.volts`, `e.amps`, `e.wire`',
      'notes/n.mdx:39:16 error unknown-field: the calculator `lamp` has no `pwer` | allowed: `e.power`, `e.fuse`, `e.volts`, `e.amps`, `e.wire` | hint: did you mean `e.power`?',
      'notes/n.mdx:39:25 error not-a-number: `e.remark` is a word, not a number | allowed: `e.power`, `e.fuse`, `e.volts`, `e.amps`, `e.wire`',
      'notes/n.mdx:39:36 error not-a-number: `k.each` is a table; say which row and column of it | hint: such as `k.each[0].share`',
      'notes/n.mdx:39:45 error not-given: `f` was not given `wire`',
    ])
  })

  it('a list given twice, or too long for its calculator, is refused', async () => {
    const table = '| length |\n| --- |\n| 1 m |'
    const rows = Array.from({ length: 21 }, () => '{ length: "1 m" }').join(', ')
    const ledger = await ledgerOf({
      n: `<Calc id="a" use="cut" pieces={[{ length: "1 m" }]}>\n\n${table}\n\n</Calc>\n\n<Calc id="b" use="cut" pieces={[${rows}]} />\n\n<Calc id="c" use="cut" pieces={[]} />`,
    })
    expect(
      ledger.problems.map(({ line, column, rule, text, allowed }) => [
        line,
        column,
        rule,
        text,
        allowed,
      ]),
    ).toEqual([
      [9, 1, 'doubled-list', '`pieces` is given twice, as an attribute and as a table', undefined],
      [15, 24, 'list-length', '`pieces` has 21 rows', '1 to 20 rows, one for each piece'],
      [17, 24, 'list-length', '`pieces` has 0 rows', '1 to 20 rows, one for each piece'],
    ])
  })
})
