/**
 * What a builder gets wrong beside the numbers: parts, tasks, links and old names of notes. Each case as
 * a small note beside a second one; the whole list of messages with place, text and likely slip.
 */
import { afterAll, describe, expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { note, problemsOf, settings } from './ledger-of.ts'

const seen: string[] = []

async function messages(body: string, more: Record<string, string> = {}): Promise<string[]> {
  const lines = await problemsOf({ n: body, ...more }, calculators)
  seen.push(...lines)
  return lines.map((line) => line.replace('notes/n.mdx:', ''))
}

afterAll(() => {
  expect(seen.filter((line) => /undefined|NaN|\[object|\bnull\b|\.ts\b|\/tmp/.test(line))).toEqual(
    [],
  )
})

const part = (more: string): string => `<Part id="pump" what="Pump" ${more} />`

describe('a part', () => {
  it.each([
    [
      'without a name',
      '<Part what="Pump" />',
      '7:1 error no-id: <Part> has no `id`: its figures need a name | hint: `id="pump"`',
    ],
    [
      'that does not say what it is',
      '<Part id="pump" />',
      '7:1 error no-what: <Part> does not say what it is: `what="…"`',
    ],
    [
      'with words in it',
      '<Part id="pump" what="Pump">new</Part>',
      '7:1 error unexpected-content: <Part> holds no text | hint: `<Part … />`, with the words outside, or in `note="…"`',
    ],
    [
      'with a slip in an attribute',
      part('prize="$8"'),
      '7:29 error unknown-attribute: <Part> has no `prize` | allowed: id, what, size, quantity, price, mass, x, z, load, power, duty, surge, status, used, on, priced, source, at, note | hint: did you mean `price`?',
    ],
    [
      'that is nowhere a part can be',
      part('status="fited"'),
      '7:29 error unknown-status: `status="fited"` is not where a part can be | allowed: planned, ordered, bought, fitted, owned, spare, out, sold | hint: did you mean `fitted`?',
    ],
    [
      'of a day that there is not',
      part('on="2026-02-30"'),
      '7:29 error bad-date: `on="2026-02-30"` is not a date | hint: there is no such day: 2026-02 has 28 days',
    ],
    [
      'of a month that there is not',
      part('on="2026-13-01"'),
      '7:29 error bad-date: `on="2026-13-01"` is not a date | hint: there is no such month: 01 to 12 are written in the middle, as in 2026-03-14',
    ],
    [
      'that says where no price comes from',
      part('priced="receipt"'),
      '7:29 error no-price: `priced` says where a price comes from, and <Part> has no `price` | hint: write `price="$89"` as well, or take `priced` out',
    ],
    [
      'that says a thing twice',
      part('what="Pumpe"'),
      '7:29 error attribute-twice: <Part> has `what` a second time | hint: keep one of the two',
    ],
    [
      'that is used in some other word',
      part('used="a bit"'),
      '7:29 error bad-used: `used` stands alone, or says `yes` or `no` | hint: `<Part … used />` for a second-hand one',
    ],
    [
      'with a list for a figure',
      part('mass={[{ a: "1 kg" }]}'),
      '7:29 error not-a-number: `mass` is one number | hint: `mass="…"` with a unit, or `mass={aName}`',
    ],
    [
      'with a price that is no money',
      part('price="89"'),
      '7:29 error wrong-dimension: `pump.price` is `89`; a sum of money is due | allowed: `$89`, `€ 89`, `89 CAD`',
    ],
    [
      'with a price in a currency that is not known',
      part('price="89 ISK"'),
      '7:29 error unknown-unit: `ISK` is not a unit known here',
    ],
    [
      'with a mass that is none',
      part('mass="5 V"'),
      '7:29 error wrong-dimension: `pump.mass` is `5 V`; a mass is due | allowed: kg or lb',
    ],
    [
      'with a quantity that its mass does not fit',
      part('quantity="3 m" mass="2 kg"'),
      '7:1 error wrong-dimension: `pump.totalMass` is `6.0 kg·m`, for as many as there are; a mass is due | allowed: kg or lb',
    ],
    [
      'sold for less than nothing',
      part('price="-5 US$"'),
      '7:29 error below-nothing: `pump.price` is `−5 US$`, which is not more than nothing | hint: what was sold has `status="sold"` and the price it fetched',
    ],
    [
      'with an unknown source',
      part('mass="2 kg" source="shet"'),
      '7:41 error unknown-source: `site.yaml` has no source called `shet` | hint: did you mean `sheet`?',
    ],
    [
      'used as a number',
      `${part('mass="2 kg"')}\n\nIt is {pump} heavy.`,
      '9:8 error not-a-number: `pump` is a part; say which figure of it | allowed: `pump.mass`, `pump.totalMass`',
    ],
    [
      'asked for what it does not say',
      `${part('mass="2 kg"')}\n\nIt cost {pump.price}, {pump.cost}, {pump.mas}.`,
      '9:10 error not-given: the part `pump` was not given `price` | allowed: `pump.mass`, `pump.totalMass`',
      '9:24 error not-given: the part `pump` was not given `price` | allowed: `pump.mass`, `pump.totalMass`',
      '9:37 error not-given: the part `pump` was not given `mas` | allowed: `pump.mass`, `pump.totalMass` | hint: did you mean `pump.mass`?',
    ],
    [
      'of the name of another number',
      `${part('')} and <Chosen id="pump" value="2 A" because="so" />`,
      '7:45 error doubled-name: the name `pump` is already taken in this note | hint: two numbers need two names | also: notes/n.mdx:7:1',
    ],
    [
      'called parts',
      '<Part id="parts" what="Box" />',
      '7:7 error bad-name: `parts` already means the parts of all notes | hint: `partsValue` would do',
    ],
  ])('%s', async (_, body, ...expected) => {
    expect(await messages(body)).toEqual(expected)
  })
})

const axles = (lists: string): string =>
  `<Calc id="axles" use="axle-balance" wheelbase="2.9 m" frontBefore="800 kg" rearBefore="700 kg" ${lists} />`

describe('parts in a list', () => {
  it('of which none has what is needed', async () => {
    expect(await messages(`${part('')}\n\n${axles('added={parts}')}`)).toContain(
      '9:103 error no-parts: `added={parts}`: no such part up to 2026-03-14 has what a part put in needs | allowed: parts that are fitted and have `mass` and `x`',
    )
  })

  it('that is of no parts', async () => {
    const body =
      '<Calc id="l" use="loop-volume" coolant="water" concentration="0 %" basis="volume" hotTemperature="60 °C" hoses={parts} />'
    expect((await messages(body)).filter((line) => line.includes('such-parts'))).toEqual([
      '7:113 error no-such-parts: `hoses={parts}`: a <Part> does not say what a hose needs (length, bore) | hint: write the rows out, in a table inside <Calc>',
    ])
  })

  it('of which one does not say where it is', async () => {
    const body = `${part('mass="2 kg"')}\n\n<Part id="box" what="Box" mass="90 kg" x="1 m" />\n\n${axles('added={parts}')}`
    expect((await messages(body)).filter((line) => line.includes('part-left-out'))).toEqual([
      '11:103 warning part-left-out: the part `pump` (Pump) is left out of `added`: it does not say `x` | also: notes/n.mdx:7:1',
    ])
  })

  it('twice', async () => {
    const body = `<Part id="box" what="Box" mass="90 kg" x="1 m" />\n\n${axles('added={[...parts, ...parts.all]}')}`
    expect((await messages(body)).filter((line) => line.includes('bad-list'))).toEqual([
      '9:117 error bad-list: parts stand twice in one list | hint: `parts.all` holds every part, `parts` what is fitted',
    ])
  })

  it('of another word, or outside a list', async () => {
    expect(await messages(`${axles('added={parts.fitted}')}\n\nAll {parts}.`)).toEqual([
      '7:103 error unknown-name: no number, block or import is called `parts` | hint: the parts of the notes are rows of a list of a <Calc>: `added={parts}`, or `parts.out`, `parts.planned`, `parts.all`',
      '9:6 error unknown-name: no number, block or import is called `parts` | hint: the parts of the notes are rows of a list of a <Calc>: `added={parts}`, or `parts.out`, `parts.planned`, `parts.all`',
    ])
  })
})

describe('a task', () => {
  const later = (body: string): Record<string, string> => ({
    later: note(body, { date: '2026-04-01' }),
  })

  it.each([
    [
      'closed and not ticked',
      '- [ ] Bleed it, closed in [there](./later.mdx)',
      '',
      '7:27 error closed-but-open: the item says `closed in` and is not ticked | hint: write `- [x]`, or take the words out',
    ],
    [
      'closed in its own note',
      '- [x] Bleed it, closed in [here](./n.mdx)',
      '',
      '7:27 error task-in-itself: `closed in` names the note it stands in',
    ],
    [
      'opened in a note that has no tasks',
      '- [x] Bleed it, opened in [there](./later.mdx)',
      '',
      '7:27 error unknown-task: the note `later` has no list of tasks, so nothing was opened in it | hint: `opened in` names the earlier note in which the item stands as `- [ ]`; the note that did it is named by `closed in`',
    ],
    [
      'opened in other words',
      '- [x] Bleed itt, opened in [there](./later.mdx)',
      '- [ ] Bleed it',
      '7:28 error unknown-task: the note `later` has no task `Bleed itt` | allowed: `Bleed it` | hint: did you mean `Bleed it`?',
    ],
    [
      'opened in a note that is later',
      '- [x] Bleed it, opened in [there](./later.mdx)',
      '- [ ] Bleed it',
      '7:27 warning opened-later: `opened in` names a note of 2026-04-01, which is later than this one | hint: the later note closes what the earlier one opened: turn the two round',
    ],
  ])('%s', async (_, body, other, expected) => {
    expect(await messages(body, later(other))).toEqual([expected])
  })
})

describe('a link', () => {
  const other = '## What I did\n\nSo <Chosen id="flow" value="2 A" because="so" /> it is.'

  it.each([
    [
      'to no note',
      '[a](./othr.mdx)',
      '7:1 error unknown-note: a link to `./othr.mdx`: there is no such note | hint: did you mean `./other.mdx`?',
    ],
    [
      'to a note that was renamed',
      '[a](./once.mdx)',
      '7:1 error unknown-note: a link to `./once.mdx`: there is no such note | hint: it has another name now: `./other.mdx`',
    ],
    [
      'to no heading of another note',
      '[a](./other.mdx#what-i-dit)',
      '7:1 error unknown-place: a link to `#what-i-dit`: the note `other` has no heading, number or block there | hint: did you mean `#what-i-did`?',
    ],
    [
      'to a heading in other letters',
      '[a](./other.mdx#What-I-did)',
      '7:1 error unknown-place: a link to `#What-I-did`: the note `other` has no heading, number or block there | hint: did you mean `#what-i-did`?',
    ],
    [
      'to no number',
      '[a](./other.mdx#flaw)',
      '7:1 error unknown-place: a link to `#flaw`: the note `other` has no heading, number or block there | hint: did you mean `#flow`?',
    ],
    [
      'to no place of its own note',
      '[a](#there)',
      '7:1 error unknown-place: a link to `#there`: this note has no heading, number or block there | hint: a heading is addressed in small letters with dashes: `#what-i-did`; a number by its name',
    ],
    [
      'to no calculator',
      '[a](/calculators/pump-and-lop/)',
      '7:1 error dead-link: a link to `/calculators/pump-and-lop/`: the site has no such page | hint: did you mean `/calculators/pump-and-loop/`?',
    ],
    [
      'to a page without the stroke at its end',
      '[a](/numbers)',
      '7:1 error dead-link: a link to `/numbers`: addresses of pages end in a slash | hint: write `/numbers/`',
    ],
    [
      'to no page of the site',
      '[a](/prts/)',
      '7:1 error dead-link: a link to `/prts/`: the site has no such page | hint: did you mean `/parts/`?',
    ],
    [
      'below a page that has nothing below it',
      '[a](/parts/pump/)',
      '7:1 error dead-link: a link to `/parts/pump/`: the site has no such page | hint: write `/parts/`',
    ],
    [
      'to no page of a note',
      '[a](/notes/other/wal-sheet/)',
      '7:1 error dead-link: a link to `/notes/other/wal-sheet/`: the site has no such page | hint: did you mean `/notes/other/wall-sheet/`?',
    ],
    [
      'to the page of a note that was renamed',
      '[a](/notes/once/)',
      '7:1 error dead-link: a link to `/notes/once/`: the site has no such page | hint: it has another name now: `./other.mdx`',
    ],
    [
      'to no place on the page of a note',
      '[a](/notes/other/#flaw)',
      '7:1 error unknown-place: a link to `#flaw`: the note `other` has no heading, number or block there | hint: did you mean `#flow`?',
    ],
    [
      'to the list of what can be written, where it is not published',
      '[a](/writing/)',
      '7:1 error dead-link: a link to `/writing/`: the site has no such page | hint: write `writing: true` into `site.yaml`: it is only there with that',
    ],
    [
      'to a note without its ending',
      '[a](./other)',
      '7:1 error dead-link: a link to `./other`: nothing is put on the site there | hint: write `./other.mdx`',
    ],
    [
      'to a file that nobody puts on the site',
      '[a](./sheet.pdf)',
      '7:1 error dead-link: a link to `./sheet.pdf`: nothing is put on the site there | hint: a note is `./its-name.mdx`, a page of the site begins with a slash, such as `/numbers/`',
    ],
    [
      'to what no page can lead to',
      '[a](file:///home/me/sheet.pdf)',
      '7:1 error dead-link: a link to `file:///home/me/sheet.pdf`: a page cannot lead there | allowed: https:, http:, mailto:, tel:',
    ],
    [
      'to nowhere',
      '[a]()',
      '7:1 error dead-link: a link without an address | hint: `[words](./other-note.mdx)`',
    ],
    [
      'written as a tag',
      'So <a href="./other.mdx">a</a> it is.',
      '7:4 error link-as-tag: <a> with `./other.mdx`: nobody makes it an address of the site | hint: write `[words](./other.mdx)`',
    ],
  ])('%s', async (_, body, expected) => {
    const renamed = note(other).replace('status: done', 'status: done\nwas: once')
    expect(await messages(body, { other: renamed })).toEqual([expected])
  })

  it.each([
    '[a](./other.mdx)',
    '[a](./other.mdx#what-i-did)',
    '[a](./other.mdx#flow)',
    '[a](other.mdx)',
    '[a](/)',
    '[a](/numbers/)',
    '[a](/numbers.csv)',
    '[a](/calculators/)',
    '[a](/notes/other/)',
    '[a](/notes/other/#flow)',
    '[a](/notes/other/wall-sheet/)',
    '[a](/calculators/pump-and-loop/)',
    '[a](https://example.org/x)',
    '[a](mailto:me@example.org)',
    '[a](#b)\n\n## b',
    '[a](#Task-1)\n\n- [ ] do it',
    '[a][b]\n\n[b]: ./other.mdx#flow',
    `[a](#l.carry)\n\n<Calc id="l" use="heat-and-rise" power="1 kW" flow="8 L/min" coolant="water" temperature="40 °C" />`,
  ])('%s is none', async (body) => {
    const lines = await messages(body, { other })
    expect(lines.filter((line) => /dead-link|unknown-(?:note|place)/.test(line)).length).toBe(
      body.includes('l.carry') ? 1 : 0,
    )
  })
})

describe('an older name of a note', () => {
  const named = (was: string): string =>
    note('So it is.').replace('status: done', `status: done\n${was}`)

  it('that is another note’s', async () => {
    expect(await messages(named('was: other'), { other: 'So.' })).toEqual([
      '6:1 error was-taken: `was: other`: there is a note of that name, and its address is its own | hint: take it out of this note | also: notes/other.mdx:1:1',
    ])
  })

  it('that two notes claim', async () => {
    expect(await messages(named('was: [once]'), { other: named('was: [once]') })).toEqual([
      'notes/other.mdx:6:1 error was-taken: `was: once` is said by two notes: its address can lead to one only | hint: take it out of this note | also: 6:1',
    ])
  })

  it('that is its own', async () => {
    expect(await messages(named('was: n'))).toEqual([
      '6:1 error was-itself: `was: n` is what the note is called now',
    ])
  })

  it('that is no address', async () => {
    expect(await messages(named('was: [Old note.mdx]'))).toEqual([
      '6:1 error bad-frontmatter: `was`: an older name of the note is due here, as in its address: small letters, digits and dashes',
    ])
  })
})

it.each(['150 %', 'a lot', '5 kg'])('contingency: %s is no share', async (share) => {
  const lines = await problemsOf({ n: 'So.' }, calculators, `${settings}contingency: ${share}\n`)
  expect(lines).toEqual([
    'site.yaml:8:14 error bad-settings: `contingency`: a share is due here, such as `15 %`',
  ])
})

describe('what would be lost without a word', () => {
  it.each([
    [
      'a cell beyond the last heading',
      '| name | current |\n| --- | --- |\n| lamp | 3 V | 10 % | 5 V |\n| horn | 4 V |',
      '9:16 error cell-too-many: `10 %` stands in no column: the head of the table has 2 | hint: give the column a heading, or take the cell out; a `|` inside a cell is written `\\|`',
    ],
    [
      'a task without words',
      '- [x] Done\n- [ ]\n- [ ] More',
      '8:1 error empty-task: a task with nothing behind its box `[ ]` | hint: write what is to be done behind it, or take the line out',
    ],
    [
      'a note named without a link',
      '- [x] Bleed it, closed in Other\n- [ ] See that the tap is closed in winter',
      '7:7 warning no-note-named: `closed in Other` does not link to a note, so nothing is closed by it | hint: write `closed in [its title](./other-note.mdx)`',
    ],
  ])('%s', async (_, body, message) => {
    const lines = await messages(body)
    expect(lines.filter((line) => !line.includes('unsourced'))).toEqual([message])
  })

  it('a change before the day of the note', async () => {
    const head =
      '---\ntitle: N\ndate: 2026-03-14\nchanged: 2026-03-01\nphase: cooling\nstatus: done\n---\n'
    expect(await messages(`${head}Words.`)).toEqual([
      '4:1 error changed-before-date: `changed` is 2026-03-01, before the note’s own `date`, 2026-03-14 | hint: `date` is the day of the work, `changed` the day of the latest change',
    ])
  })
})

describe('a tag that cannot be read', () => {
  const elsewhere = {
    later: note("import { a } from './n.mdx'\n\nSo {a * 2}.", { date: '2026-04-01' }),
  }
  const open = (name: string): string =>
    `quote-open: the quote after \`${name}=\` is never closed | hint: write the same straight quote \`"\` at the end of the value`

  it.each([
    [
      'its first quote open, another number behind it',
      '<Reading id="a" value="4 A with="meter" /> and <Reading id="b" value="5 A" with="a meter" />',
      `7:29 error ${open('value')}`,
    ],
    [
      'its last quote open',
      '<Reading id="a" value="4 A" with="meter /> and <Reading id="b" value="5 A" with="a meter" />',
      `7:40 error ${open('with')}`,
    ],
    [
      'a name without quotes',
      '<Reading id=a value="4 A" with="meter" />',
      '7:19 error value-without-quotes: the value of `id` has no quotes: `id=a` | hint: write `id="a"`',
    ],
    [
      'never closed',
      '<Reading id="a" value="4 A" with="meter">',
      '7:7 error tag-open: `<Reading>` is never closed, or not in the paragraph, list or table it began in | hint: end it with `/>`, or write `</Reading>` where it ends',
    ],
    [
      'without an end',
      '<Reading id="a" value="4 A" with="meter"',
      '7:7 error tag-open: `<Reading` begins a tag that has no end | hint: end it with `/>`; for “less than” write `\\<`',
    ],
    [
      'a quote inside its words',
      '<Part id="a" what="2" pump" load="4 A" />',
      '7:33 error unreadable-tag: `"` cannot stand here in the tag `<Part` | hint: a value ends at its next straight quote: inside it write “curly” ones, and `in` for inches',
    ],
  ])(
    'with %s is told once, and its number and its name are not blamed',
    async (_, tag, message) => {
      expect(await messages(`It is ${tag}\n\nSo {a} it is.`, elsewhere)).toEqual([message])
    },
  )

  it('hides no number behind it', async () => {
    const lines = await messages('It is <Reading id=a value="4 A" with="meter" /> at 5 V.')
    expect(lines.map((line) => line.split(' (')[0])).toEqual([
      '7:19 error value-without-quotes: the value of `id` has no quotes: `id=a` | hint: write `id="a"`',
      '7:52 error unsourced-danger: nothing says where `5 V` comes from',
    ])
  })
})
