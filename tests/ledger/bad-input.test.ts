/**
 * What a builder gets wrong, each case as a small note beside a second one with a fault of its own:
 * the whole list of messages, with place, text, what is allowed and the likely slip.
 */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { defineCalculator, type Calculator } from '../../calculators/define.ts'
import { calculators } from '../../calculators/index.ts'
import { loadLedger, type Registry } from '../../src/ledger/load.ts'
import { blockOf, inFolder, ledgerOf, line, note, numberOf, settings } from './ledger-of.ts'
import { trivial } from './trivial.ts'

/** A second note whose one fault must be listed whatever is wrong with the first. */
const other = 'So <Chosen id="other" value="3 amsp" because="so" /> it is.'
const others = 'notes/zz.mdx:7:23 error unknown-unit: `amsp` is not a unit known here'

const seen: string[] = []

/** The messages of `body` in a note `n`; those of the other note are checked and left out. */
async function messages(
  body: string | Uint8Array,
  { known = trivial, more = {} }: { known?: Registry; more?: Record<string, string> } = {},
): Promise<string[]> {
  const { problems } = await ledgerOf({ n: body, zz: other, ...more }, known)
  const lines = problems.map(line)
  seen.push(...lines)
  expect(lines).toContain(others)
  return lines.filter((text) => text !== others)
}

const lamp = (inputs: string): string => `<Calc id="c" use="lamp" ${inputs} />`
const cool = (inputs: string): string => `<Calc id="c" use="cool" conductance="10 W/K" ${inputs} />`
const chosen = (value: string): string =>
  `So <Chosen id="a" value="${value}" because="so" /> it is.`

describe('a value', () => {
  it.each([
    [
      'of the wrong dimension',
      lamp('amps="5 V"'),
      '7:25 error wrong-dimension: `amps`: `5 V` looks like V (a voltage); a current is due | allowed: a current: A',
    ],
    [
      'without a unit',
      lamp('amps="5"'),
      '7:25 error no-unit: `amps`: `5` has no unit; a current is due | allowed: a current: A',
    ],
    [
      'in an unknown unit',
      lamp('amps="5 flurbs"'),
      '7:25 error unknown-unit: `amps`: `flurbs` is not a unit known here | allowed: a current: A',
    ],
    [
      'in a misspelt unit',
      chosen('5 pis'),
      '7:19 error unknown-unit: `pis` is not a unit known here | hint: did you mean `5 psi`?',
    ],
    [
      'that could be degrees or coulombs',
      chosen('5 C'),
      '7:19 error ambiguous-unit: `5 C` could be in °C or in coulombs | hint: write `5 °C` or `5 coulomb`',
    ],
    [
      'in a bare millimetre for a wire',
      lamp('amps="5 A" wire="10 mm"'),
      '7:36 error bare-mm: `wire`: `10 mm` does not say whether it is a diameter or an area, and trade sizes of wire in mm differ | allowed: a wire size: mm² or AWG | hint: write `10 mm²` if that is the area of the metal',
    ],
    [
      'with a decimal comma',
      chosen('1,5 mm'),
      '7:19 error decimal-comma: `1,5` has a comma where numbers here have a point | hint: did you mean `1.5 mm`?',
    ],
    [
      'of a pressure, gauge or absolute',
      cool('inlet="65 °C" rise="5 K" cap="30 psi"'),
      "7:71 error gauge-or-absolute: `cap`: `30 psi` does not say gauge or absolute; a gauge pressure is due | allowed: a gauge pressure: kPa gauge or psi gauge | hint: write `30 psi gauge` from the air's pressure or `30 psi abs` from vacuum",
    ],
    [
      'of a temperature where a difference is due',
      cool('inlet="65 °C" rise="5 °C"'),
      '7:60 error temperature-for-difference: `rise`: `5 °C` is a temperature; a temperature difference is due | allowed: a temperature difference: K or Δ°F | hint: write `5 K` or `5 °C diff`',
    ],
    [
      'of a difference where a temperature is due',
      cool('inlet="117 Δ°F" rise="5 K"'),
      '7:46 error difference-for-temperature: `inlet`: `117 Δ°F` is a temperature difference; a temperature is due | allowed: a temperature: °C or °F | hint: write `117 °F`',
    ],
    [
      'below nothing',
      '<Calc id="c" use="cut" pieces={[{ length: "-2 m" }]} />',
      '7:43 error out-of-range: `pieces.0.length`: `-2 m` is below what “Length” can be | allowed: 0.01 m to 20 m',
    ],
    [
      'too large for its field, in a likely other unit',
      '<Calc id="c" use="cut" pieces={[{ length: "2400 m" }]} />',
      '7:43 error out-of-range: `pieces.0.length`: `2400 m` is above what “Length” can be | allowed: 0.01 m to 20 m | hint: did you mean 2.4 m?',
    ],
    [
      'too large for a number',
      chosen('1e400 m'),
      '7:19 error not-finite: `1e400` is not a number that can be worked with',
    ],
    [
      'below absolute zero',
      chosen('-300 °C'),
      '7:19 error below-zero: `-300 °C` is below absolute zero',
    ],
    [
      'that is a range',
      chosen('3-5 mm'),
      '7:19 error range: `3-5 mm` is a range, not one number | hint: pick one of the two',
    ],
    [
      'that is about',
      chosen('~5 mm'),
      '7:19 error not-one-number: `~5 mm` does not say one number | hint: write `5 mm`',
    ],
    [
      'with its ± inside',
      chosen('5 ± 1 mm'),
      '7:19 error plus-minus: `5 ± 1 mm` holds a ± | hint: write the ± in a place of its own',
    ],
    [
      'that is empty',
      chosen(''),
      '7:4 error no-value: <Chosen> does not say its value with a unit: `value="1.5 A"`',
    ],
  ])('%s', async (_, body, message) => {
    expect(await messages(body)).toEqual([`notes/n.mdx:${message}`])
  })

  it('of a temperature in a bare C is read as one and said so', async () => {
    expect(await messages(cool('inlet="65 C" rise="5 K"'))).toEqual([
      'notes/n.mdx:7:46 warning read-as: `65 C` is read as 65 °C',
    ])
  })

  it('of 80 % glycol is a stop, and of 130 % none at all', async () => {
    const mix = (wanted: string) =>
      `<Calc id="m" use="coolant-mix" volume="6 L" coolant="ethylene-glycol" wanted="${wanted}" />`
    expect(await messages(mix('80 %'), { known: calculators })).toEqual([
      'notes/n.mdx:7:1 error stop: `m` is a stop: 80.0 % by volume is too strong: it carries less heat and frost protection falls again. Use at most 60 %. | hint: change what it rests on, or publish it with your reason: `accept="…"`',
      'notes/n.mdx:7:71 warning unusual: `wanted`: `80 %` is unusual for “Strength wanted, by volume”: it is mostly 25 % to 60 %',
    ])
    expect(await messages(mix('130 %'), { known: calculators })).toEqual([
      'notes/n.mdx:7:71 error out-of-range: `wanted`: `130 %` is above what “Strength wanted, by volume” can be | allowed: 5 % to 100 %',
    ])
  })

  it('given by a name of another kind, or out of range, is refused where it is used', async () => {
    const body = `So <Chosen id="u" value="5 V" because="so" /> and <Chosen id="big" value="900 A" because="so" /> it is.\n\n${lamp('amps={u}')}\n\n<Calc id="d" use="lamp" amps={big * 2} />`
    expect(await messages(body)).toEqual([
      'notes/n.mdx:9:25 error wrong-dimension: `amps`: a current is due, and this is a voltage | allowed: a value in A',
      'notes/n.mdx:11:25 error out-of-range: `amps`: `1800 A` is above what “Current” can be | allowed: 0 A to 100 A',
    ])
  })
})

describe('a name', () => {
  it('misspelt, in prose and inside an attribute’s JSX', async () => {
    const body = `import { Box } from 'box-of-paint'\n\nIt draws <Chosen id="pumpDraw" value="1 A" because="so" />, {pumpDrow} twice.\n\n<Box icon={<b>{pumpDrwa}</b>} />`
    expect(await messages(body)).toEqual([
      'notes/n.mdx:9:62 error unknown-name: no number, block or import is called `pumpDrow` | hint: did you mean `pumpDraw`?',
      'notes/n.mdx:11:16 error unknown-name: no number, block or import is called `pumpDrwa` | hint: did you mean `pumpDraw`?',
    ])
  })

  it('that no note defines', async () => {
    expect(
      await messages(
        "import { resistance } from './zz.mdx'\n\nIt is {resistance * 2}, {elsewhere}.",
      ),
    ).toEqual([
      'notes/n.mdx:7:10 error unknown-name: the note `notes/zz.mdx` has no number or block called `resistance`',
      'notes/n.mdx:9:26 error unknown-name: no number, block or import is called `elsewhere` | hint: give a number this name with `id`, or import it from the note that has it',
    ])
  })

  it('in a circle through two notes names both places', async () => {
    const a = 'import { two } from \'./b.mdx\'\n\n<Calc id="one" use="lamp" amps={two.fuse} />'
    const b = 'import { one } from \'./n.mdx\'\n\n<Calc id="two" use="lamp" amps={one.fuse * 1} />'
    expect(await messages(a, { more: { b: note(b) } })).toEqual([
      'notes/b.mdx:9:27 error circle: these numbers rest on each other in a circle: `b/two.amps` → `n/one` → `n/one.amps` → `b/two` → `b/two.amps` | hint: one of them has to be given: measured, read from a sheet, assumed or chosen | also: notes/n.mdx:9:1 | also: notes/n.mdx:9:27 | also: notes/b.mdx:9:1',
    ])
  })

  it('of a block that rests on itself', async () => {
    expect(await messages('<Calc id="one" use="lamp" amps={one.fuse} />')).toEqual([
      'notes/n.mdx:7:27 error circle: these numbers rest on each other in a circle: `n/one.amps` → `n/one` → `n/one.amps` | hint: one of them has to be given: measured, read from a sheet, assumed or chosen | also: notes/n.mdx:7:1',
    ])
  })
})

describe('a cell of a table', () => {
  const cut = `<Calc id="k" use="cut">\n\n| name | length |\n| --- | --- |\n| a | 1 m |\n| b | 3 m |\n\n</Calc>`

  it('that is not there is told in prose, in a sum, in an input and beside a reading', async () => {
    const body = `${cut}\n\nIt is {k.each[1].share}, {k.each[2].share}, {k.each[9].share * 2} and {k.pieces[2].length}.\n\n<Calc id="n" use="cut" pieces={[{ length: k.pieces[5].length }]} />\n\nAnd <Reading id="r" value="25 %" with="tape" checks={k.each[3].share} /> it was.`
    const none = (at: string, table: string, field: string) =>
      `notes/n.mdx:${at} error no-such-row: \`k.${table}\` has 2 rows, 0 to 1 | hint: rows are counted from 0: \`k.${table}[1].${field}\` is in the last`
    expect(await messages(body)).toEqual([
      none('16:27', 'each', 'share'),
      none('16:46', 'each', 'share'),
      none('16:72', 'pieces', 'length'),
      none('18:43', 'pieces', 'length'),
      none('20:54', 'each', 'share'),
    ])
  })

  it('in a column that it does not have, or that has words', async () => {
    expect(await messages(`${cut}\n\nIt is {k.each[0].shape} of {k.each[0].name}.`)).toEqual([
      'notes/n.mdx:16:8 error not-a-number: `k.each` has no numbers in a column `shape` | allowed: `k.each[0].share` | hint: did you mean `k.each[0].share`?',
      'notes/n.mdx:16:29 error not-a-number: `k.each` has words in a column `name` | allowed: `k.each[0].share`',
    ])
  })

  it('of a block that cannot tell', async () => {
    const body = `It draws <Assumed id="far" value="0 lb" because="a wrong one" /> of it.\n\n<Calc id="k" use="cut" pieces={[{ length: far }]} />\n\nIt is {k.each[0].share}.`
    expect(await messages(body)).toEqual([
      expect.stringMatching(/^notes\/n\.mdx:9:43 error wrong-dimension: /),
      'notes/n.mdx:11:8 error no-such-row: `k.each` has no rows: `k` cannot tell',
    ])
  })

  it('whose table fits several lists says how to name one', async () => {
    const body = `It weighs <Reading id="engine" value="164 kg" with="tape" /> now.\n\n<Calc id="b" use="axle-balance" wheelbase="2.3 m" frontBefore="520 kg" rearBefore="430 kg">\n\n| name | mass | x |\n| --- | --- | --- |\n| engine | {engine} | 0.22 m |\n\n</Calc>`
    expect(await messages(body, { known: calculators })).toEqual([
      'notes/n.mdx:11:1 error which-list: the table’s columns (name, mass, x) fit `removed`, `added` and `load` | hint: say which list it is: `removed={[{ name: "engine", mass: engine, x: "0.22 m" }]}`, one pair of braces for each row',
    ])
  })
})

describe('an unusual value', () => {
  const unusual =
    'warning unusual: `volts`: `120 V` is unusual for “Voltage”: it is mostly 5 V to 30 V'

  it('typed into a block is remarked on', async () => {
    expect(await messages(lamp('amps="0.2 A" volts="120 V" accept="x"'))).toContainEqual(
      `notes/n.mdx:7:38 ${unusual}`,
    )
  })

  it.each([
    ['measured', '<Reading id="u" value="120 V" with="meter" />'],
    ['from a sheet', '<Rated id="u" value="120 V" source="sheet" at="p. 1" />'],
    ['assumed', '<Assumed id="u" value="120 V" because="the old dynamo" />'],
    ['chosen', '<Chosen id="u" value="120 V" because="the old dynamo" />'],
    [
      'a sum of such',
      '<Chosen id="half" value="60 V" because="so" />, <Show id="u" value={half * 2} />',
    ],
  ])('that is %s says where it comes from, and is taken', async (_, element) => {
    const body = `It has ${element} at rest.\n\n${lamp('amps="0.2 A" volts={u}')}`
    expect((await messages(body)).filter((text) => text.includes('unusual'))).toEqual([])
  })

  it('that is a result of a block is remarked on', async () => {
    const body = `${lamp('amps="0.2 A" volts="30 V"')}\n\n<Calc id="d" use="lamp" amps="0.2 A" volts={c.power / c.amps * 4} accept="x" />`
    expect(await messages(body)).toContainEqual(
      expect.stringContaining('warning unusual: `volts`: `120 V`'),
    )
  })
})

describe('a later number', () => {
  it('that replaces what another of that day replaces', async () => {
    const body = `It was <Assumed id="draw" value="4 A" because="so" />, then <Reading id="b" value="5 A" with="meter" replaces={draw} /> and <Reading id="a" value="6 A" with="meter" replaces={draw} />, <Reading id="c" value="7 A" with="meter" on="2026-03-15" replaces={draw} />.`
    expect(await messages(body)).toEqual([
      'notes/n.mdx:7:141 error replaced-twice: `a` takes the place of `n/draw` on 2026-03-14, and so does `b` | hint: keep `replaces` at the one that counts from that day on, or say with `on` which was measured later | also: notes/n.mdx:7:77',
    ])
  })

  it('that is older than what it replaces', async () => {
    const body = `It was <Assumed id="guess" value="1 A" because="so" />, then <Reading id="seen" value="1.2 A" with="meter" on="2026-03-13" replaces={guess} /> and <Reading id="again" value="1.3 A" with="meter" on="2026-03-14" replaces={seen} />.`
    expect(await messages(body)).toEqual([
      'notes/n.mdx:7:81 warning replaces-newer: `seen` is of 2026-03-13 and takes the place of `n/guess`, which is of 2026-03-14 | hint: the later number replaces the older one: turn them round, or mend the date of the note or of the reading (`on`)',
    ])
  })
})

describe('the text of a note', () => {
  it('with a name that was refused, and used as it was told', async () => {
    const body = `<Reading with="tape">\n\n| name | value |\n| --- | --- |\n| front bare | 338 kg |\n\n</Reading>\n\nIt is {frontBare}.`
    expect(await messages(body)).toEqual([
      'notes/n.mdx:11:1 error bad-name: `front bare` would be read as a sum in `{front bare}`; a name is letters and digits without spaces or dashes | hint: `frontBare` would do',
      'notes/n.mdx:15:8 error unknown-name: no number, block or import is called `frontBare` | hint: write this name also where it says `front bare`, which is refused',
    ])
  })

  it('with a value in a sum', async () => {
    const body = `It made <Chosen id="turns" value="10" because="so" /> turns, {turns / 20 s} each.`
    expect(await messages(body)).toContainEqual(
      'notes/n.mdx:7:62 error unreadable-braces: `{turns / 20 s}` is neither a name nor a sum of names | hint: give `20 s` a name first, as in `<Chosen id="given" value="20 s" because="…" />`, and put the name into the sum; write `\\{` for a brace as text',
    )
  })

  it('with a decimal comma in braces', async () => {
    expect(await messages(`It is {1,5} of it.\n\n${lamp('amps={1,5}')}`)).toEqual([
      'notes/n.mdx:7:8 error decimal-comma: `1,5` has a decimal comma | hint: write `1.5`',
      'notes/n.mdx:9:31 error decimal-comma: `1,5` has a decimal comma | hint: write `1.5`',
    ])
  })

  it('`<5 A` survives; a lone brace has its place and what to write', async () => {
    const body = 'It is off (<5 A of it) and a { stands alone.\n\nThen {missing} too.'
    expect(await messages(body)).toEqual([
      'notes/n.mdx:7:13 error unsourced-danger: nothing says where `5 A` comes from (torque, current, voltage, pressure) | allowed: a number of its own kind (`<Reading>`, `<Rated>`, `<Assumed>`, `<Chosen>`, `<Calc>`), `<Nominal>` round the name of a size, `<Quoted>` round a figure that is only mentioned | hint: write in place of each:\n<Reading id="…" value="5 A" with="…" />',
      'notes/n.mdx:7:30 error brace-open: `{` opens braces that are never closed | hint: close them, as in `{pumpDraw}`, or write `\\{` for a brace as text',
      'notes/n.mdx:9:7 error unknown-name: no number, block or import is called `missing` | hint: give a number this name with `id`, or import it from the note that has it',
    ])
    expect(
      await messages('It stays below <Nominal>5 A</Nominal>, that is <5 of them, and a <- b.'),
    ).toEqual([])
  })

  it('with unreadable frontmatter', async () => {
    expect(await messages('---\ntitle: The loop: full\ndate: 2026-03-14\n---\nText.\n')).toEqual([
      'notes/n.mdx:2:8 error unreadable-frontmatter: `title: The loop: full` has a second colon | hint: write `title: "The loop: full"`',
    ])
  })

  it('with frontmatter that says other things than are known', async () => {
    expect(
      await messages(
        '---\ntitle: The {loop}\ndate: 14.3.2026\nphase: coling\nstats: done\n---\nText.\n',
      ),
    ).toEqual([
      'notes/n.mdx:1:1 error bad-frontmatter: `status`: a status is one of planned, doing, done, redone, abandoned',
      'notes/n.mdx:2:1 error braces-in-frontmatter: braces in `title`: nothing is worked out in the head of a note | hint: write the words only',
      'notes/n.mdx:3:1 error bad-frontmatter: `date`: a date is written YYYY-MM-DD, such as 2026-03-14; `14.3.2026` was read',
      'notes/n.mdx:4:1 error bad-frontmatter: `phase`: a phase is one of plan, survey, target, strip, adapter, pack, high-voltage, cooling, twelve-volt, charging, chassis, cabin, commissioning, certification, road; `coling` was read',
      'notes/n.mdx:5:1 error unknown-frontmatter: the head of a note has no entry `stats`; it knows title, date, changed, phase, status, summary, was, draft, headline | hint: did you mean `status`?',
    ])
  })

  it('that is not UTF-8', async () => {
    const bytes = Buffer.concat([
      Buffer.from(note('Hot, at 60 ').trimEnd()),
      Buffer.from([0x20, 0xb0]),
      Buffer.from('C\n'),
    ])
    expect(await messages(bytes)).toEqual([
      'notes/n.mdx:7:12 error not-utf8: a byte here is not UTF-8 text (perhaps `°` saved in an older encoding) | allowed: text saved as UTF-8 | hint: open the file in an editor and save it with the encoding UTF-8',
    ])
  })

  it('that is UTF-16', async () => {
    expect(await messages(Buffer.from(`\ufeff${note('Text.')}`, 'utf16le'))).toEqual([
      'notes/n.mdx:1:1 error not-utf8: the file is saved as UTF-16 | allowed: text saved as UTF-8 | hint: open the file in an editor and save it with the encoding UTF-8',
    ])
  })
})

describe('the folder', () => {
  it('without notes, without settings, or not there at all', async () => {
    const none =
      'notes:1:1 error no-notes: the content folder has no notes | hint: put the first one into `notes/`, for example `notes/donor.mdx`'
    const noSettings =
      'site.yaml:1:1 error no-settings: the content folder has no `site.yaml` | hint: write one with at least `title: …` and `vehicle: …`'
    const of = async (content: string) => (await loadLedger(content, trivial)).problems.map(line)
    expect(await inFolder({}, settings, of)).toEqual([none])
    expect(await inFolder({}, undefined, of)).toEqual([none, noSettings])
    expect(await inFolder({ n: 'Text.' }, undefined, of)).toEqual([noSettings])
    const gone = await mkdtemp(join(tmpdir(), 'notes-'))
    await rm(gone, { recursive: true })
    expect(await of(gone)).toEqual([none, noSettings])
  })

  it('with a note under a name that is no address', async () => {
    expect(await messages('Text.', { more: { 'Hot Loop': note('Text.') } })).toEqual([
      'notes/Hot Loop.mdx:1:1 error bad-file-name: `Hot Loop.mdx` becomes an address: small letters, digits and dashes only | hint: `hot-loop.mdx`',
    ])
  })

  it.each([
    [
      'title: [',
      [
        'site.yaml:1:9 error unreadable-settings: this line cannot be read as settings (`name: value`) | hint: put a text with a colon or a quote in quotation marks, and indent with spaces only',
      ],
    ],
    [
      'titel: x\nvehicle: v\nunits: imperial\nsources:\n  a: { title: b, read: 3.4.2026 }\n',
      [
        'site.yaml:1:1 error bad-settings: `title`: it is missing',
        'site.yaml:1:1 error bad-settings: the settings know no `titel` here | allowed: title, description, vehicle, notice, author, units, address, questions, base, offline, writing, contingency, nominals, instruments, sources',
        'site.yaml:3:8 error bad-settings: `units`: units are `metric`, `us`, or a list of both, the first shown first',
        'site.yaml:5:24 error bad-settings: `sources.a.read`: a date is written YYYY-MM-DD, such as 2026-03-14',
      ],
    ],
  ])('with settings that cannot be read: %j', async (site, list) => {
    const { problems } = await ledgerOf({ zz: other }, trivial, site)
    seen.push(...problems.map(line))
    expect(problems.map(line)).toEqual([others, ...list].sort())
  })
})

describe('settings that are wrong in one line', () => {
  it.each([
    [
      'units: [metric, imperial]',
      'site.yaml:3:8 error bad-settings: `units`: units are `metric`, `us`, or a list of both, the first shown first',
    ],
    ['titel: x', 'site.yaml:1:1 error bad-settings: the settings know no `titel` here | allowed: '],
    [
      'sources:\n  sheet: { titel: x }',
      'site.yaml:4:10 error bad-settings: `sources.sheet.title`: it is missing',
    ],
  ])('keep what can be read of the others: %j', async (wrong, message) => {
    const site = `title: T\nvehicle: v\n${wrong}\nnominals: [48 V]\ninstruments: { meter: { title: a meter } }\n`
    const body = `The 48 V side drew <Reading id="a" value="1 A" with="meter" /> or <Rated id="b" value="2 A" source="sheet" at="p. 1" />.`
    const { problems } = await ledgerOf(
      { n: wrong.startsWith('sources') ? body : body.replace('sheet', 'the sheet'), zz: other },
      trivial,
      site,
    )
    const lines = problems.map(line)
    seen.push(...lines)
    expect(lines.filter((text) => text.startsWith('notes/n'))).toEqual([])
    expect(lines).toContain(others)
    expect(lines.filter((text) => text.startsWith(message))).toHaveLength(1)
  })
})

describe('ten thousand parts', () => {
  const rows = Array.from({ length: 10_000 }, (_, index) => index)

  it.each([
    [
      'in an attribute',
      `<Calc id="c" use="cut" pieces={[${rows.map((row) => `{ name: "p${row}", length: "1 m" }`).join(', ')}]} />`,
      '7:1 error overlong-braces: 10001 pairs of braces in one place, more than the 400 that are read | hint: write a list of parts as a table inside the element, and a long one in several elements',
    ],
    [
      'in an attribute, a line each',
      `<Calc id="c" use="cut" pieces={[\n${rows.map((row) => `  { name: "p${row}", length: "1 m" }`).join(',\n')}\n]} />`,
      '7:1 error overlong-braces: 10001 pairs of braces in one place, more than the 400 that are read | hint: write a list of parts as a table inside the element, and a long one in several elements',
    ],
    [
      'in a table',
      `<Calc id="c" use="cut">\n\n| name | length |\n| --- | --- |\n${rows.map((row) => `| p${row} | 1 m |`).join('\n')}\n\n</Calc>`,
      '9:1 error list-length: `pieces` has 10000 rows | allowed: 1 to 20 rows, one for each piece',
    ],
  ])('%s', async (_, body, message) => {
    expect(await messages(body)).toEqual([`notes/n.mdx:${message}`])
  })
})

describe('a calculator', () => {
  const made = (compute: Calculator['compute'], more: Partial<Calculator> = {}): Registry => ({
    faulty: () =>
      Promise.resolve({
        ...defineCalculator({
          id: 'faulty',
          title: 'A fault of the kit',
          phase: 'project',
          purpose: 'Fails.',
          inputs: {
            amps: {
              type: 'number',
              label: 'Current',
              symbol: 'I',
              of: 'current',
              units: ['A', 'A'],
              hard: [0, 9],
              usual: [0, 9],
              help: 'Any.',
            },
          },
          outputs: {
            flow: {
              type: 'number',
              label: 'Flow',
              symbol: 'V',
              of: 'flow',
              units: ['L/min', 'gal/min'],
            },
            legs: {
              type: 'table',
              label: 'Legs',
              columns: {
                drop: {
                  type: 'number',
                  label: 'Drop',
                  symbol: 'Δp',
                  of: 'pressure',
                  units: ['kPa', 'psi'],
                },
              },
            },
          },
          formula: [],
          validity: [],
          checks: { settled: { title: 'Settled', basis: 'model' } },
          hazards: ['dry-pump'],
          sources: [],
          compute: () => ({ flow: undefined, legs: [] }),
          findings: (_, { flow }) => [
            flow === undefined
              ? {
                  check: 'settled',
                  level: 'unknown',
                  text: 'The flow does not settle.',
                  threshold: 'it settles',
                }
              : { check: 'settled', level: 'pass', text: 'It settles.', threshold: 'it settles' },
          ],
          working: (_, { flow }, say) => [`V = ${say(flow, 'L/min')}`],
          examples: [],
        }),
        compute,
        ...more,
      }),
  })
  const body = '<Calc id="c" use="faulty" amps="1 A" />\n\nIt is {c.flow * 2}.'
  const run = async (known: Registry) => {
    const ledger = await ledgerOf({ n: body, zz: other }, known)
    const lines = ledger.problems.map(line)
    seen.push(...lines)
    const { verdict, findings, working } = blockOf(ledger, 'n/c')
    return {
      lines: lines.filter((text) => text !== others),
      shown: ['n/c.flow', 'n/c.flow * 2'].map((id) => numberOf(ledger, id).shown),
      verdict,
      texts: [...findings.map(({ text }) => text), ...working],
    }
  }

  it('that does not converge says it cannot tell, and nothing rests on a number', async () => {
    expect(await run(made(() => ({ flow: undefined, legs: [] })))).toEqual({
      lines: [],
      shown: ['cannot tell', 'cannot tell'],
      verdict: 'unknown',
      texts: ['The flow does not settle.', 'V = cannot tell'],
    })
  })

  it.each([NaN, Infinity, -Infinity])(
    'that gives %s is a fault of the kit, never a number',
    async (value) => {
      expect(
        await run(made(() => ({ flow: value, legs: [{ drop: 1 }, { drop: value }] }))),
      ).toEqual({
        lines: [
          'notes/n.mdx:7:1 error calculator-fault: the calculator `faulty` gives no number for `flow`, `legs` from these inputs; that is a fault of the kit, not of the note',
        ],
        shown: ['cannot tell', 'cannot tell'],
        verdict: 'unknown',
        texts: ['The flow does not settle.', 'V = cannot tell'],
      })
    },
  )

  it.each([
    [
      'compute',
      made(() => {
        throw new TypeError("Cannot read properties of undefined (reading 'flow')")
      }),
    ],
    [
      'findings',
      made(() => ({ flow: 1, legs: [] }), {
        findings: () => {
          throw new Error('at /home/x/y.ts:3')
        },
      }),
    ],
    ['working', made(() => ({ flow: 1, legs: [] }), { working: (_, __, say) => [say(NaN, 'A')] })],
  ])(
    'that throws in `%s` is a fault of the kit, without the fault’s own words',
    async (_, known) => {
      expect(await run(known)).toEqual({
        lines: [
          'notes/n.mdx:7:1 error calculator-fault: the calculator `faulty` failed on these inputs; that is a fault of the kit, not of the note',
        ],
        shown: ['cannot tell', 'cannot tell'],
        verdict: 'unknown',
        texts: ['Cannot tell.'],
      })
    },
  )
})

it('no message holds a stack, a value of the language or a path of the machine', () => {
  expect(seen.length).toBeGreaterThan(40)
  expect(
    seen.filter((text) =>
      /undefined|NaN|Infinity|\[object|\bnull\b|\n\s+at |node_modules|\.ts\b|file:|\/tmp|\/home|\/root/.test(
        text,
      ),
    ),
  ).toEqual([])
  expect(
    seen.filter((text) => !/^[\w/. -]+:\d+:\d+ (error|warning) [a-z0-9-]+: \S/.test(text)),
  ).toEqual([])
})
