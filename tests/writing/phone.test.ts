/**
 * Text as it is typed on a phone, with cold hands: curly and foreign quotes, dashes, fractions, spaces
 * and signs that nobody sees, capitals that came by themselves, tags and braces half done. Each is
 * accepted, with the value that is meant, or explained; never in the words of a parser, never a stack.
 */
import { beforeAll, describe, expect, test } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import type { Ledger } from '../../src/ledger/load.ts'
import type { Problem } from '../../src/ledger/problems.ts'
import { ledgerOf, note } from '../ledger/ledger-of.ts'

/** What is typed, and `= value` where it is accepted, else the rules of what is told; '' for prose. */
const typed: readonly (readonly [text: string, due: string])[] = [
  ['<Reading id=“draw” value=“1.5 A” with=“meter” />', '= 1.5 A'],
  ['It drew <Reading id=‘draw’ value=‘1.5 A’ with=‘meter’ />.', '= 1.5 A'],
  ['<Reading id=„draw“ value=„1.5 A“ with=„meter“ />', '= 1.5 A'],
  ['<Reading id=«draw» value=«1.5 A» with=«meter» />', '= 1.5 A'],
  ['<Reading id="draw” value=“1.5 A" with="meter” />', '= 1.5 A'],
  ['<Chosen id="gap" value="3 mm" because=“it’s what was there” />', '= 3 mm'],
  ['<Chosen id="hose" value="19 mm" because="the “good” one" />', '= 19 mm'],
  ['<Chosen id="hose" value="19 mm" because="the "good" one" />', 'unreadable-tag'],
  ['<Reading id=draw value=1.5A with=meter />', 'value-without-quotes'],
  ['<Reading id=draw value="1.5 A" with=meter />', 'value-without-quotes'],
  ['<Reading id="draw" value=1.5 A with="meter" />', 'value-without-quotes'],
  ['<reading id="draw" value="1.5 A" with="meter" />', 'unknown-element'],
  ['<Reading Id="draw" Value="1.5 A" With="meter" />', 'unknown-attribute'],
  ['<Reading id="draw", value="1.5 A", with="meter" />', 'unreadable-tag'],
  ['<Reading id:"draw" value:"1.5 A" with:"meter" />', 'unreadable-tag'],
  ['<Reading id="draw" value="1.5 A" with="meter">', 'tag-open'],
  ['<Reading id="draw" value="1.5 A" with="meter" \\>', 'unreadable-tag'],
  ['<Reading id="draw" value="1.5 A" with="meter" / >', '= 1.5 A'],
  ['< Reading id="draw" value="1.5 A" with="meter" />', 'space-in-tag'],
  ['<Reading  id="draw"\u00a0value="1.5\u00a0A" with="meter" />', '= 1.5 A'],
  ['<Reading id="draw"\u2003value="1.5 A" with="meter" />', '= 1.5 A'],
  ['<Reading id="draw"\u200b value="1.5 A" with="meter" />', '= 1.5 A'],
  ['<Reading id="draw" value="1.5 A\u200b" with="meter" />', '= 1.5 A'],
  ['<Reading id="draw" value="\u200e1.5 A" with="meter" />', '= 1.5 A'],
  ['<Reading id="dra\u00adw" value="1.5 A" with="meter" />', '= 1.5 A'],
  ['<Reading id="draw" value="1,5 A" with="meter" />', 'decimal-comma'],
  ['<Reading id="draw" value="1\u202f500 W" with="tape" />', 'two-quantities'],
  [`<Reading id="draw" value="1'500 W" with="tape" />`, '= 1500 W'],
  ['<Reading id="draw" value="1’500 W" with="tape" />', '= 1500 W'],
  ['<Reading id="draw" value="1,500 W" with="tape" />', 'read-as'],
  ['<Reading id="draw" value="1.500,5 W" with="tape" />', 'decimal-comma'],
  ['<Reading id="draw" value="−5 °C" with="tape" />', '= −5 °C'],
  ['<Reading id="draw" value="–5 °C" with="tape" />', '= −5 °C'],
  ['<Reading id="draw" value="—5 °C" with="tape" />', '= −5 °C'],
  ['<Reading id="draw" value="‑5 °C" with="tape" />', '= −5 °C'],
  ['<Reading id="draw" value="5–6 A" with="meter" />', 'range'],
  ['<Reading id="draw" value="5-6 A" with="meter" />', 'range'],
  ['<Reading id="draw" value="5 to 6 A" with="meter" />', 'range'],
  ['<Reading id="draw" value="5 … 6 A" with="meter" />', 'range'],
  ['<Reading id="draw" value="~5 A" with="meter" />', 'not-one-number'],
  ['<Reading id="draw" value="≈ 5 A" with="meter" />', 'not-one-number'],
  ['<Reading id="draw" value="ca. 5 A" with="meter" />', 'not-one-number'],
  ['<Reading id="draw" value="<5 A" with="meter" />', 'not-one-number'],
  ['<Reading id="draw" value=">5 A" with="meter" />', 'not-one-number'],
  ['<Reading id="draw" value="5 A ± 0.1 A" with="meter" />', 'plus-minus'],
  ['<Reading id="draw" value="5 A" plusMinus="±0.1 A" with="meter" />', '= 5 A'],
  ['<Reading id="draw" value="5 A" plusMinus="+/- 0.1 A" with="meter" />', '= 5 A'],
  ['<Chosen id="bore" value="½ in" because="it fits" />', '= ½ in'],
  ['<Chosen id="bore" value="1½ in" because="it fits" />', '= 1½ in'],
  ['<Chosen id="bore" value="1 ½"" because="it fits" />', 'unreadable-tag'],
  ['<Chosen id="bore" value="1½”" because="it fits" />', '= 1½”'],
  ['<Chosen id="bore" value="1⁄2 in" because="it fits" />', '= 0.5 in'],
  ['<Chosen id="bore" value="3/8 in" because="it fits" />', '= 3/8 in'],
  ['<Chosen id="bore" value="1-1/2 in" because="it fits" />', '= 1-1/2 in'],
  ['<Chosen id="bore" value="1–1⁄2 in" because="it fits" />', 'range'],
  ['<Chosen id="bore" value="5′ 3″" because="it fits" />', 'two-quantities'],
  [`<Chosen id='bore' value='5 ft 3 in' because='it fits' />`, 'two-quantities'],
  ['<Chosen id="bore" value="１９ ｍｍ" because="it fits" />', '= 19 mm'],
  ['<Chosen id="bore" value="19 MM" because="it fits" />', 'unknown-unit'],
  ['<Chosen id="bore" value="19 mm." because="it fits" />', '= 19 mm'],
  ['<Chosen id="wire" value="1.5 sq mm" because="it fits" />', '= 1.5 mm²'],
  ['<Chosen id="wire" value="1.5 mm^2" because="it fits" />', '= 1.5 mm²'],
  ['<Chosen id="hot" value="65ºC" because="it fits" />', '= 65 °C'],
  ['<Chosen id="hot" value="65 ° C" because="it fits" />', '= 65 °C'],
  ['<Chosen id="hot" value="65 deg C" because="it fits" />', '= 65 °C'],
  ['<Chosen id="hot" value="65 ˚C" because="it fits" />', '= 65 °C'],
  ['<Chosen id="hot" value="65°" because="it fits" />', '= 65 °'],
  ['<Chosen id="res" value="5 Ohm" because="it fits" />', '= 5 Ω'],
  ['<Chosen id="res" value="5 kΩ" because="it fits" />', '= 5 kΩ'],
  ['<Chosen id="res" value="5 K Ohm" because="it fits" />', '= 5 kΩ'],
  ['<Chosen id="res" value="4k7" because="it fits" />', 'unknown-unit'],
  ['<Chosen id="res" value="5 Ω" because="it fits" />', '= 5 Ω'],
  ['<Chosen id="q" value="9 Ltr / min" because="it fits" />', '= 9 L/min'],
  ['<Chosen id="q" value="9 L per min" because="it fits" />', '= 9 L/min'],
  ['<Chosen id="q" value="9 L·min⁻¹" because="it fits" />', '= 9 L/min'],
  ['<Chosen id="q" value="25 Nm" because="it fits" />', '= 25 N·m'],
  ['<Chosen id="q" value="25 N-m" because="it fits" />', '= 25 N·m'],
  ['<Chosen id="q" value="18 ft-lbs" because="it fits" />', '= 18 ft·lb'],
  ['<Chosen id="q" value="18 foot pounds" because="it fits" />', '= 18 ft·lb'],
  ['<Chosen id="q" value="2.2 uF" because="it fits" />', '= 2.2 µF'],
  ['<Chosen id="q" value="€ 40" because="it fits" />', '= 40 EUR'],
  ['<Chosen id="q" value="40,-" because="it fits" />', '= 40'],
  ['<Chosen id="q" value="$40" because="it fits" />', '= 40 US$'],
  ['<Chosen id="q" value="£12.50" because="it fits" />', '= 12.50 GBP'],
  ['<Chosen id="q" value="five amps" because="it fits" />', 'not-a-quantity'],
  ['<Chosen id="q" value="5x10 mm" because="it fits" />', 'unknown-unit'],
  ['<Chosen id="q" value="2×16 mm²" because="it fits" />', 'two-quantities'],
  ['<Chosen id="q" value="5×10^-3 m" because="it fits" />', '= 0.005 m'],
  ['<Chosen id="q" value=".5 mm" because="it fits" />', '= 0.5 mm'],
  ['<Chosen id="q" value="5. mm" because="it fits" />', '= 5 mm'],
  ['<Chosen id="q" value="⅜ in" because="it fits" />', '= ⅜ in'],
  ['<Chosen id="q" value="M8" because="it fits" />', 'not-a-quantity'],
  ['<Chosen id="q" value="12v" because="it fits" />', 'unknown-unit'],
  ['<Chosen id="q" value="12 volts" because="it fits" />', '= 12 V'],
  ['<Chosen id="q" value="" because="it fits" />', 'no-value'],
  ['It never drew more than <5 A.', ''],
  ['It is <½ full and >¾ warm, <- see.', ''],
  ['Set to <b>tight.', 'tag-open'],
  ['Pump <-> tank -> radiator => done, x < y > z, a<b and c>d.', 'tag-open'],
  ['It drew {5 A} today.', 'unreadable-braces'],
  ['It drew {draw today.', 'brace-open'],
  ['It drew draw} today.', 'brace-alone'],
  ['It drew {draw,today}.', 'unknown-name'],
  ['It drew {“draw”}.', 'name-in-quotes'],
  ['A {smile:)} here.', 'unreadable-braces'],
  ['Look ¯\\_(ツ)_/¯ and :-{ and ;-}', 'unreadable-braces'],
  ['<draw@example.org>', 'bare-address'],
  ['<https://example.org/a?b=c&d>', 'bare-address'],
  ['<!-- later -->', 'html-comment'],
  ['<!— later —>', 'html-comment'],
  ['<br>', 'tag-open'],
  ['<br/>line', ''],
  ['Import {draw} from “./two.mdx”', 'import-in-paragraph'],
  ['import draw from ./two.mdx', 'import-in-paragraph'],
  [`import { draw } from './two'`, 'unknown-file'],
  ['import {draw from "./two.mdx"', 'unreadable-import'],
  ['{draw + 1,5}', 'not-a-sum decimal-comma'],
  ['{draw × 2}', ''],
  ['{draw – 2}', 'wrong-dimension'],
  ['{draw ÷ 2}', ''],
  ['{draw²}', 'unreadable-braces'],
  ['{2draw}', 'unreadable-braces'],
  ['{draw/ 20 s}', 'unreadable-braces'],
  ['{½ * draw}', 'unreadable-braces'],
  ['{draw}{', 'brace-open'],
  ['{{draw}}', 'not-a-sum'],
  ['{draw.}', 'unreadable-braces'],
  ['{.draw}', 'unreadable-braces'],
  ['{draw..flow}', 'unreadable-braces'],
  ['{draw[0]', 'brace-open'],
  ['{draw[½]}', 'unreadable-braces'],
  ['{/* forgot', 'brace-open'],
  ['{`draw`}', 'name-in-quotes'],
  ['{draw’s}', 'unreadable-braces'],
  [`{'draw}`, 'unreadable-braces'],
  ['{if}', 'unreadable-braces'],
  ['{class}', 'unreadable-braces'],
  ['{a => b}', 'unknown-name'],
  ['{<b>x}', 'unreadable-braces tag-open'],
  ['<Calc id="a" use="cable-drop" current={5 A} />', 'unreadable-braces'],
  ['<Calc id="a" use="cable-drop" current={} />', 'unreadable-braces empty-braces'],
  ['<Nominal>12 V<Nominal>', 'tag-open'],
  ['<Nominal>12 V</nominal>', 'tag-mismatch'],
  ['**<Nominal>12 V**</Nominal>', 'tag-open'],
  ['- <Nominal>12 V\n- more</Nominal>', 'tag-open'],
  ['| a | b |\n|--|--|\n| <5 A | ½ |', ''],
  ['[the sheet](https://example.org/a b)', ''],
  ['- [ ] buy hose\n- [X] done\n-[ ] glued\n- [] empty', 'no-task'],
  ['– first\n– second', ''],
  ['• first\n• second', ''],
  ['&nbsp;&nbsp;It works &amp; runs &lt;5 A&gt;', ''],
  ['\ttabbed line with {draw', 'brace-open'],
]

/** Words of the parsers underneath, of the language they read, and of a program that broke. */
const parsers =
  /acorn|micromark|mdast|hast\b|estree|\bJSX\b|\bMDX\b|unexpected (?:character|token|end|closing)|expected a|could not parse|token|lazy line|U\+[0-9A-F]{4}|SyntaxError|TypeError|ReferenceError|undefined|NaN|\bat .*:\d+:\d+|node_modules|\.ts\b/i

const given = '\n\n<Reading id="draw" value="1.5 A" with="meter" />'

/** Where the text uses a name and gives none, another line gives it. */
const body = (text: string): string =>
  /\bdraw\b/.test(text) && !/id\s*=?:?.{0,2}draw|import/i.test(text) ? text + given : text

const slugOf = (index: number): string => `n${String(index).padStart(3, '0')}`

describe('text as phones type it', () => {
  let ledger: Ledger
  beforeAll(async () => {
    const notes = typed.map(([text], index): [string, string] => [
      slugOf(index),
      note(body(text), { status: 'doing' }),
    ])
    const two = note(given, { status: 'doing' })
    ledger = await ledgerOf({ ...Object.fromEntries(notes), two }, calculators)
  })
  const problemsOf = (index: number): readonly Problem[] =>
    ledger.problems.filter(({ file }) => file === `notes/${slugOf(index)}.mdx`)

  test('is a corpus of some size', () => {
    expect(new Set(typed.map(([text]) => text)).size).toBeGreaterThanOrEqual(60)
  })

  test.each(typed.map(([text, due], index) => [text, due, index] as const))(
    '%j',
    (text, due, index) => {
      const problems = problemsOf(index)
      const rules = problems.map(({ rule }) => rule).filter((rule) => !rule.startsWith('unsourced'))
      const shown = ledger.published.numbers
        .filter(
          ({ file, line, kind, block }) =>
            file === `notes/${slugOf(index)}.mdx` &&
            line === 7 &&
            kind !== 'worked' &&
            block === null,
        )
        .map((number) => number.shown.replace(/[\u00A0\u202F]/g, ' '))
      if (due.startsWith('= ')) {
        expect(rules).toEqual([])
        expect(shown).toEqual([due.slice(2)])
      } else expect([...new Set(rules)].join(' ')).toBe(due)
      for (const { line, column, text: said, hint = '', allowed = '' } of problems) {
        // What was typed is quoted; the words around it are the kit's.
        const words = `${said} ${hint} ${allowed}`.replace(/`[^`]*`/g, '').replace(/<[^>]*>/g, '')
        expect(words).not.toMatch(parsers)
        expect(words).not.toMatch(/[\u200B-\u200F\u00AD]/)
        expect(line).toBeGreaterThanOrEqual(7)
        expect(line).toBeLessThanOrEqual(7 + body(text).split('\n').length)
        expect(column).toBeGreaterThanOrEqual(1)
      }
    },
  )
})
