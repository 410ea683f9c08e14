/**
 * One slip gives one message: what follows from it is not told as well. Whole lists of messages, so that
 * nothing hides behind the first.
 */
import { describe, expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { ledgerOf, note, numberOf, problemsOf } from './ledger-of.ts'

async function messages(body: string, more: Record<string, string> = {}): Promise<string[]> {
  const lines = await problemsOf({ n: body, ...more }, calculators)
  return lines.map((line) => line.replaceAll('notes/n.mdx:', ''))
}

const draw = '<Reading id="draw" value="5 A" with="meter" /> it was.'

describe('one slip', () => {
  it.each([
    [
      'an import of a note that is not there',
      `import { a, b as c } from './gone.mdx'\n\n{a} {a + c} {c}`,
      '7:1 error unknown-note: there is no note `./gone.mdx`',
    ],
    [
      'an import of a note that was renamed',
      `import { draw } from './once.mdx'\n\n{draw} {draw}`,
      '7:1 error unknown-note: there is no note `./once.mdx` | hint: it has another name now: `./other.mdx`',
    ],
    [
      'an import that was forgotten',
      '{draw} {draw * 2}',
      "7:2 error unknown-name: no number, block or import is called `draw` | hint: the note `notes/other.mdx` has one: `import { draw } from './other.mdx'` | also: 7:9",
    ],
    [
      'an import with a capital',
      `Import { draw } from './other.mdx'\n\n{draw}`,
      "7:1 error import-in-paragraph: `Import { draw } from './other.mdx'` is read as prose | hint: write `import { pumpDraw } from './other-note.mdx'`: a small `i`, the path in quotes",
    ],
    [
      'an import under a line of text',
      `So:\nimport { draw } from './other.mdx'\n\n{draw}`,
      "8:1 error import-in-paragraph: `import { draw } from './other.mdx'` is read as prose | hint: put it at the very beginning of a line of its own, with an empty line before and after",
    ],
    [
      'a name with a dash',
      '<Reading id="pump-flow" value="4 A" with="meter" /> {pump-flow} {pump-flow}',
      '7:10 error bad-name: `pump-flow` would be read as a sum in `{pump-flow}`; a name is letters and digits without spaces or dashes | hint: `pumpFlow` would do',
    ],
    [
      'half of an attribute’s name',
      '<Reading id="x" val="4 A" with="meter" />',
      '7:17 error unknown-attribute: <Reading> has no `val` | allowed: value, with, id, plusMinus, at, on, replaces, checks | hint: did you mean `value`?',
    ],
    [
      'an input with a letter left out',
      '<Calc id="f" use="motor-circuit" runing="1.5 A" starting="2.6 A" wire="1.0 mm²" />',
      '7:34 error unknown-field: the calculator `motor-circuit` has no input `runing` | allowed: running, starting, startingTime, wire, insulation, wireRating, derate, loading, style, volts, length, wireTemperature, switching, contactRating, coil | hint: did you mean `running`?',
    ],
    [
      'a heading of a list that it does not have',
      '<Calc id="l" use="twelve-volt-budget" converter="40 A" battery="lead-acid" capacity="60 Ah">\n\n| name | curent |\n| --- | --- |\n| lamp | 3 A |\n\n</Calc>',
      '9:1 error bad-table: the table’s columns (name, curent) fit no list of `twelve-volt-budget` | allowed: loads: name, current, power, duty, critical, surge | hint: did you mean `current`?',
    ],
    [
      'a list without its line of dashes',
      '<Calc id="l" use="twelve-volt-budget" converter="40 A" battery="lead-acid" capacity="60 Ah">\n\n| name | current |\n| lamp | 3 A |\n\n</Calc>',
      '9:1 error no-table-line: this table has no line of dashes under its headings, and is read as words | hint: write `| --- | --- |` below the headings',
    ],
    [
      'a table of readings without its line of dashes',
      '<Reading with="meter">\n\n| name | value |\n| lamp | 3 A |\n\n</Reading>',
      '9:1 error no-table-line: this table has no line of dashes under its headings, and is read as words | hint: write `| --- | --- |` below the headings',
    ],
    [
      'a calculator’s name with a word left out',
      '<Calc id="l" use="pump-loop" />',
      '7:14 error unknown-calculator: there is no calculator `pump-loop` | hint: did you mean `pump-and-loop`?',
    ],
    [
      'a surge in ampere, in a list that takes it',
      '<Part id="pump" what="Pump" load="4 A" surge="14 A" />\n\n<Calc id="l" use="twelve-volt-budget" converter="40 A" battery="lead-acid" capacity="60 Ah" loads={parts} />',
      '7:40 error wrong-dimension: `pump.surge` is `14 A`; a plain number is due | allowed: a number | hint: as many times what it draws otherwise: `surge="2.5"`',
    ],
    [
      'a closing of an item in a note without any',
      '- [x] Bleed it, opened in [that](./other.mdx)',
      '7:27 error unknown-task: the note `other` has no list of tasks, so nothing was opened in it | hint: `opened in` names the earlier note in which the item stands as `- [ ]`; the note that did it is named by `closed in`',
    ],
    [
      'an instrument as a source',
      '<Part id="pump" what="Pump" mass="2 kg" source="tape" />',
      '7:41 error unknown-source: `site.yaml` has no source called `tape` | hint: `tape` is an instrument: what was measured is a `<Reading id="weighed" … with="tape" />`, and a part names it, `mass={weighed}`',
    ],
    [
      'a source as an instrument',
      '<Reading value="2 A" with="sheet" />',
      '7:22 error unknown-instrument: `site.yaml` has no instrument called `sheet` | hint: `sheet` is a source: what it says is a `<Rated … source="sheet" />`',
    ],
    [
      'a reading in place of another kind, on which the older note rests',
      `import { draw } from './other.mdx'\n\n<Reading value="12 V" with="tape" on="2026-04-01" replaces={draw} />`,
      '9:10 error wrong-dimension: `reading-1` is a voltage and cannot take the place of `other/draw`, which is a current',
    ],
  ])('%s', async (_, body, expected) => {
    const other = note(
      `${draw}\n\n<Calc id="f" use="motor-circuit" running={draw} starting="9 A" wire="2.5 mm²" />`,
    ).replace('status: done', 'status: done\nwas: once')
    const told = await messages(body, { other })
    expect(told.filter((line) => !line.includes(' warning '))).toEqual([expected])
  })

  it('a note without a head, or without anything', async () => {
    const beginning =
      'hint: a note begins with its head between two lines `---`: title, date, phase, status; `npm run new -- "Title"` writes one'
    const bytes = (text: string) => new TextEncoder().encode(text)
    const told = async (text: string) =>
      (await ledgerOf({ n: bytes(text), other: draw })).problems.map(
        ({ line, text: said, hint }) => `${line}: ${said} | hint: ${hint ?? ''}`,
      )
    expect(await told('Just words.\n')).toEqual([`1: the note has no head | ${beginning}`])
    expect(await told('\n')).toEqual([`1: this file is empty | ${beginning}`])
  })

  it('leaves the older number where what says it replaces it is of another kind', async () => {
    const ledger = await ledgerOf({
      n: `${draw}\n\n{draw * 2}\n\n<Reading id="later" value="12 V" with="meter" on="2026-04-01" replaces={draw} />`,
    })
    expect(numberOf(ledger, 'n/draw * 2').value).toBe(10)
  })
})
