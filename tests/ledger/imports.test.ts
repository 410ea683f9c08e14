/** Names of other notes: reached by an ordinary import, and what an import may not do. */
import { describe, expect, it } from 'vitest'
import { blockOf, note, numberOf, problemsOf, soundLedger } from './ledger-of.ts'

const climb =
  'The hill gives <Assumed id="hillHeat" value="600 W" because="a slow hill" /> of heat.'
const pump = '<Calc id="pump" use="lamp" volts="12 V" amps="3 A" />'

describe('an import', () => {
  it('reaches a number and a block by name, under another name, and as a whole', async () => {
    const ledger = await soundLedger({
      climb: `${climb}\n\n${pump}`,
      loop: [
        "import { hillHeat, pump } from './climb.mdx'",
        "import { hillHeat as heat } from './climb.mdx'",
        "import * as hill from './climb.mdx'",
        '',
        'It is {hillHeat / 2}, {heat * 2}, {hill.hillHeat * 3}, {pump.power * 1}, {hill.pump.power * 2}; {heat} again.',
      ].join('\n'),
    })
    expect(
      ledger.published.numbers
        .filter((number) => number.note === 'loop')
        .map(({ name, value, rests }) => [name, value, rests]),
    ).toEqual([
      ['heat * 2', 1200, ['climb/hillHeat']],
      ['hill.hillHeat * 3', 1800, ['climb/hillHeat']],
      ['hill.pump.power * 2', 72, ['climb/pump.power']],
      ['hillHeat / 2', 300, ['climb/hillHeat']],
      ['pump.power * 1', 36, ['climb/pump.power']],
    ])
    expect(ledger.published.notes.map(({ slug, restsOn }) => [slug, restsOn])).toEqual([
      ['climb', []],
      ['loop', ['climb']],
    ])
  })

  it('may stand below its use, and go both ways between two notes', async () => {
    const ledger = await soundLedger({
      a: 'It is <Chosen id="one" value="1 m" because="so" /> and {two * 2}.\n\nimport { two } from \'./b.mdx\'',
      b: 'import { one } from \'./a.mdx\'\n\nIt is <Chosen id="two" value="2 m" because="so" /> and {one * 3}.',
    })
    expect([numberOf(ledger, 'a/two * 2').value, numberOf(ledger, 'b/one * 3').value]).toEqual([
      4, 3,
    ])
    expect(ledger.published.notes.map(({ slug, restsOn }) => [slug, restsOn])).toEqual([
      ['a', ['b']],
      ['b', ['a']],
    ])
  })

  it('of the page itself stays MDX’s', async () => {
    expect(
      await problemsOf({
        climb,
        loop: "import Climb, { frontmatter as head, Content as Hill } from './climb.mdx'\n\n<Climb />\n\n<Hill />\n\n{head.title}",
      }),
    ).toEqual([])
  })

  it('of a name that the note does not have is refused where it stands, with the nearest', async () => {
    expect(
      await problemsOf({
        climb: `${climb}\n\n${pump}`,
        loop: "import { hilHeat, nothing } from './climb.mdx'\nimport * as hill from './climb.mdx'\n\n{hilHeat} {hill} {hill.pmp.power} {hill.pump}",
      }),
    ).toEqual([
      'notes/loop.mdx:7:10 error unknown-name: the note `notes/climb.mdx` has no number or block called `hilHeat` | hint: did you mean `hillHeat`?',
      'notes/loop.mdx:7:19 error unknown-name: the note `notes/climb.mdx` has no number or block called `nothing`',
      'notes/loop.mdx:10:12 error not-a-number: `hill` is a whole note; say which number of it | hint: `hill.hillHeat`, `hill.pump`',
      'notes/loop.mdx:10:19 error unknown-name: the note `notes/climb.mdx` has no number or block called `pmp` | hint: did you mean `hill.pump`?',
      'notes/loop.mdx:10:36 error not-a-number: `pump` is a block; say which number of it | allowed: `pump.power`, `pump.fuse`, `pump.volts`, `pump.amps`, `pump.wire`',
    ])
  })

  it('of a note that is not there is refused, with the nearest', async () => {
    expect(
      await problemsOf({
        climb,
        loop: "import { hillHeat } from './clmb.mdx'\nimport Other from './nowhere-at-all.mdx'\n\n[see](./clmb.mdx)\n\n<Other />",
      }),
    ).toEqual([
      'notes/loop.mdx:7:1 error unknown-note: there is no note `./clmb.mdx` | hint: did you mean `./climb.mdx`?',
      'notes/loop.mdx:8:1 error unknown-note: there is no note `./nowhere-at-all.mdx`',
      'notes/loop.mdx:10:1 error unknown-note: a link to `./clmb.mdx`: there is no such note | hint: did you mean `./climb.mdx`?',
    ])
  })

  it('under a name that a number here has is refused', async () => {
    expect(
      await problemsOf({
        climb,
        loop: 'import { hillHeat } from \'./climb.mdx\'\n\nIt is <Chosen id="hillHeat" value="5 kW" because="so" />.',
      }),
    ).toEqual([
      'notes/loop.mdx:7:10 error doubled-name: `hillHeat` is imported and also given to a number here | hint: import it under another name: `{ hillHeat as other }`',
    ])
  })

  it('from a note that cannot be read brings only that note’s own messages', async () => {
    expect(
      await problemsOf({
        climb: note(climb).replace('date: 2026-03-14', 'date: [2026'),
        loop: "import { hillHeat } from './climb.mdx'\n\nIt is {hillHeat * 2}.",
      }),
    ).toEqual([
      'notes/climb.mdx:4:1 error unreadable-frontmatter: `phase: cooling` is indented otherwise than its neighbours | hint: line the entries up',
    ])
  })

  it('of a block’s results makes a block of the other note rest on them', async () => {
    const ledger = await soundLedger({
      a: pump,
      b: 'import { pump } from \'./a.mdx\'\n\n<Calc id="next" use="lamp" volts="6 V" amps={pump.amps * 2} />',
    })
    expect([numberOf(ledger, 'b/next.amps').rests, numberOf(ledger, 'b/next.power').rests]).toEqual(
      [['a/pump.amps'], ['b/next.amps', 'b/next.volts']],
    )
    expect(blockOf(ledger, 'b/next').outputs).toEqual({ power: 36, fuse: 10, remark: 'low' })
  })
})
