/** What stands in braces: sums of the ledger's names, and every other use of a name in a note. */
import { describe, expect, it } from 'vitest'
import { numberOf, problemsOf, soundLedger } from './ledger-of.ts'

const head = [
  'The loop takes <Chosen id="supply" value="2.4 m" because="round the box" /> out',
  'and <Chosen id="back" value="2.8 m" because="over the rail" /> back.',
  '',
  '',
].join('\n')
const allowed = '| allowed: `+ - * /` over names and plain numbers'

/** The worked sum: its value in SI, and as shown. */
async function sum(text: string): Promise<[number | null, string, readonly string[]]> {
  const ledger = await soundLedger({ loop: `${head}It is {${text}} in all.` })
  const { value, shown, rests } = numberOf(ledger, `loop/${text.replace(/\s+/g, ' ')}`)
  return [value, shown, rests]
}

describe('a sum of names', () => {
  it.each([
    ['supply + back', 5.2, '5.2\u00a0m'],
    ['supply  +   back', 5.2, '5.2\u00a0m'],
    ['supply + back * 2', 8, '8.0\u00a0m'],
    ['(supply + back) * 2', 10.4, '10\u00a0m'],
    ['back - supply', 0.4, '0.40\u00a0m'],
    ['-supply + back', 0.4, '0.40\u00a0m'],
    ['+supply + back', 5.2, '5.2\u00a0m'],
    ['supply / 2', 1.2, '1.2\u00a0m'],
    ['supply / back', 0.857142857, '0.86'],
    ['supply * back', 6.72, '6.7\u00a0m²'],
  ])('%s', async (text, value, shown) => {
    const [worked, ...rest] = await sum(text)
    expect(worked).toBeCloseTo(value, 9)
    expect(rest).toEqual([
      shown,
      ['loop/back', 'loop/supply'].filter((id) => text.includes(id.slice(5))),
    ])
  })

  it('of one name only is that number itself, not another one', async () => {
    const ledger = await soundLedger({ loop: `${head}So {supply} it is.` })
    expect(ledger.published.numbers.map(({ id }) => id)).toEqual(['loop/back', 'loop/supply'])
  })

  it('said twice is one number', async () => {
    const ledger = await soundLedger({
      loop: `${head}So {supply + back}, again {supply  +  back}.`,
    })
    expect(ledger.published.numbers.map(({ id }) => id)).toEqual([
      'loop/back',
      'loop/supply',
      'loop/supply + back',
    ])
  })

  it('may stand above the element that gives the name', async () => {
    const ledger = await soundLedger({ loop: `All in all {supply * 2}.\n\n${head}` })
    expect(numberOf(ledger, 'loop/supply * 2').value).toBeCloseTo(4.8, 12)
  })

  it('finds a name that was typed in another form of the same letters', async () => {
    const ledger = await soundLedger({
      loop: 'x <Chosen id="cafe\u0301" value="2 m" because="so" />, {caf\u00e9 * 2}',
    })
    expect(numberOf(ledger, 'loop/caf\u00e9 * 2').value).toBe(4)
  })

  it.each([
    [
      '{supply ** 2}',
      '`**` is not worked out between names',
      'multiply the name with itself: `{a * a}`',
    ],
    ['{supply % 2}', '`%` is not worked out between names', undefined],
    ['{supply | back}', '`|` means nothing between numbers', undefined],
    ['{supply, back}', 'a comma between names', undefined],
    ['{true ? 1 : 2}', 'something that is not a sum of names and numbers', undefined],
    [
      '{1 ** 2}',
      '`**` is not worked out between names',
      'multiply the name with itself: `{a * a}`',
    ],
    ['{supply > 1 ? supply : back}', 'something that is not a sum of names and numbers', undefined],
    ['{`${supply}`}', 'something that is not a sum of names and numbers', undefined],
    ['{!supply}', '`!` is not arithmetic on numbers', undefined],
    ['{supply[back]}', 'a name is followed by something that is not a field of it', undefined],
    [
      '{supply + "1 m"}',
      'a text in a sum: `"1 m"`',
      'give the quantity a name with <Chosen> or <Assumed> and use the name',
    ],
  ])('%s is refused', async (text, words, hint) => {
    const [problem, ...others] = await problemsOf({ loop: `${head}So ${text} it is.` })
    const column = text.includes('"') ? 14 : 5
    expect(others).toEqual([])
    expect(problem).toBe(
      `notes/loop.mdx:10:${column} error not-a-sum: ${words} ${allowed}${hint === undefined ? '' : ` | hint: ${hint}`}`,
    )
  })

  it('lists every fault of one sum', async () => {
    expect(
      await problemsOf({ loop: `${head}So {supply ** 2 + f(back) + !supply} it is.` }),
    ).toEqual([
      'notes/loop.mdx:10:19 error unknown-name: no number, block or import is called `f` | hint: give a number this name with `id`, or import it from the note that has it',
    ])
    expect(await problemsOf({ loop: `${head}So {supply ** 2 + !supply} it is.` })).toEqual([
      `notes/loop.mdx:10:5 error not-a-sum: \`**\` is not worked out between names ${allowed} | hint: multiply the name with itself: \`{a * a}\``,
      `notes/loop.mdx:10:19 error not-a-sum: \`!\` is not arithmetic on numbers ${allowed}`,
    ])
  })

  it('of what is not a number says so', async () => {
    expect(await problemsOf({ loop: `${head}So {supply.x} and {supply[0]} it is.` })).toEqual([
      'notes/loop.mdx:10:5 error not-a-block: `supply` is a number; it has no `x`',
      'notes/loop.mdx:10:20 error not-a-block: `supply` is a number; it has no `0`',
    ])
  })

  it('never mixes the ledger’s names with MDX’s own', async () => {
    expect(await problemsOf({ loop: `${head}So {supply + frontmatter.length} it is.` })).toEqual([
      'notes/loop.mdx:10:5 error mixed-names: `supply` is a number of the ledger and `frontmatter` is not: one expression never mixes the two',
    ])
  })

  it.each([
    [
      'across dimensions',
      'supply + amps',
      '`supply + amps`: a current cannot be added to a length',
      'wrong-dimension',
    ],
    [
      'by nothing',
      'supply / (back - back)',
      '`supply / (back - back)`: a length is divided by zero',
      'division-by-zero',
    ],
    [
      'of two temperatures',
      'hot + cold',
      '`hot + cold`: a temperature cannot be added to a temperature',
      'points-added',
    ],
    [
      'of a temperature times two',
      'hot * 2',
      '`hot * 2`: a temperature is a point on a scale and cannot be multiplied',
      'point-multiplied',
    ],
  ])('%s is refused with its place', async (_, text, words, rule) => {
    const more = [
      'Also <Chosen id="amps" value="3 A" because="so" />,',
      '<Chosen id="hot" value="60 °C" because="so" /> and',
      '<Chosen id="cold" value="20 °C" because="so" />.',
    ].join(' ')
    const [problem, ...others] = await problemsOf({ loop: `${head}${more}\n\nSo {${text}} it is.` })
    expect(others).toEqual([])
    expect(problem?.split(' | hint')[0]).toBe(`notes/loop.mdx:12:4 error ${rule}: ${words}`)
  })
})

describe('a temperature', () => {
  const hot =
    'x <Chosen id="hot" value="65 °C" because="so" /> <Chosen id="cold" value="20 °C" because="so" /> <Chosen id="rise" value="6 K" because="so" />'
  it.each([
    ['hot - cold', 45, '45\u00a0K', '81\u00a0Δ°F'],
    ['hot + rise', 344.15, '71\u00a0°C', '160\u00a0°F'],
    ['hot - rise', 332.15, '59\u00a0°C', '138\u00a0°F'],
    ['rise + hot', 344.15, '71\u00a0°C', '160\u00a0°F'],
    ['rise * 2', 12, '12\u00a0K', '22\u00a0Δ°F'],
  ])('%s', async (text, value, shown, shownOther) => {
    const number = numberOf(await soundLedger({ n: `${hot}\n\nIt is {${text}}.` }), `n/${text}`)
    expect(number.value).toBeCloseTo(value, 9)
    expect([number.shown, number.shownOther]).toEqual([shown, shownOther])
  })
})

describe('a name elsewhere in a note', () => {
  const modules = "import { Box } from 'box-of-paint'\n\n"

  it('is found in an attribute, and in JSX inside of one', async () => {
    expect(
      await problemsOf({
        loop: `${modules}${head}<Box a={suply} b={<b>{<i title={suply}>{bakc}</i>}</b>} {...nothing} />`,
      }),
    ).toEqual([
      'notes/loop.mdx:12:9 error unknown-name: no number, block or import is called `suply` | hint: did you mean `supply`?',
      'notes/loop.mdx:12:33 error unknown-name: no number, block or import is called `suply` | hint: did you mean `supply`?',
      'notes/loop.mdx:12:41 error unknown-name: no number, block or import is called `bakc` | hint: did you mean `back`?',
      'notes/loop.mdx:12:61 error unknown-name: no number, block or import is called `nothing` | hint: give a number this name with `id`, or import it from the note that has it',
    ])
  })

  it('that is the ledger’s cannot stand in an attribute of another element', async () => {
    expect(await problemsOf({ loop: `${modules}${head}<Box a={<b>{supply}</b>} />` })).toEqual([
      'notes/loop.mdx:12:6 error number-in-attribute: <Box> is not one of the kit’s elements: a number of the ledger cannot stand in its attributes | hint: put the number between the tags',
    ])
  })

  it('that is the ledger’s cannot stand in an export', async () => {
    expect(
      await problemsOf({
        loop: `export const twice = supply * 2\n\nexport const none = nothing\n\n${head}`,
      }),
    ).toEqual([
      'notes/loop.mdx:7:22 error number-in-export: `supply` is a number of the ledger: an export cannot use it',
      'notes/loop.mdx:9:21 error unknown-name: no number, block or import is called `nothing` | hint: give a number this name with `id`, or import it from the note that has it',
    ])
  })

  it.each([
    ['a parameter', '{((supply) => supply + 1)(2)}'],
    ['a parameter taken apart', '{(({ supply, a: [back = 1], ...c }) => supply + back + c.d)({})}'],
    ['a key and a field', '{((n) => n)({ supply: 1 }.supply)}'],
    ['the name of a function', '{(function supply(n) { return n ? supply(0) : 0 })(1)}'],
    ['a variable of a function', '{(() => { const supply = 1; return supply })()}'],
    ['a caught error', '{(() => { try { return 1 } catch (supply) { return supply } })()}'],
    ['nothing', '{undefined} {/* supply */} {"so on"} {null}'],
    ['MDX', '{frontmatter.title} {props.x}'],
  ])('%s is not the ledger’s', async (_, text) => {
    expect(await problemsOf({ loop: `${head}So ${text} it is.` })).toEqual([])
  })

  it.each([
    ['{new Date()}', 9, 'Date'],
    ['{Math.sqrt(supply)}', 5, 'Math'],
    ['{globalThis.process}', 5, 'globalThis'],
    ['{(() => Intl)()}', 12, 'Intl'],
    ['{import.meta.url}', 5, 'import.meta'],
    ['{import("./x.mjs")}', 5, 'import()'],
  ])('%s asks the machine and is refused', async (text, column, name) => {
    expect(await problemsOf({ loop: `${head}So ${text} it is.` })).toEqual([
      `notes/loop.mdx:10:${column} error unknown-name: no number, block or import is called \`${name}\` | hint: a note has no clock and no functions: sums are written with names, \`{supply + back}\`; what is worked out otherwise belongs in a block, \`<Calc use="…" />\`, what is shown otherwise in \`<Show value={…} />\``,
    ])
  })

  it('that differs from one of the language in its capital is that number', async () => {
    const text = 'x <Chosen id="map" value="2 m" because="so" />, {Map}'
    expect(await problemsOf({ loop: text })).toEqual([
      'notes/loop.mdx:7:50 error unknown-name: no number, block or import is called `Map` | hint: did you mean `map`?',
    ])
  })

  it('shadowed in one place is the ledger’s in the next', async () => {
    expect(await problemsOf({ loop: `${head}So {((supply) => supply)(supply)} it is.` })).toEqual([
      `notes/loop.mdx:10:5 error not-a-sum: a call: functions are not run in a note ${allowed} | hint: use a calculator: <Calc use="…" />`,
    ])
  })

  it('that an export’s parameter has is not bound in the note', async () => {
    expect(
      await problemsOf({
        loop: `export const twice = (n) => n * 2\n\n${head}So {twice(2)} and {n} it is.`,
      }),
    ).toEqual([
      'notes/loop.mdx:12:20 error unknown-name: no number, block or import is called `n` | hint: give a number this name with `id`, or import it from the note that has it',
    ])
  })

  it('works in headings, lists, tables and the text of links', async () => {
    const text = [
      '## A loop of {supply + back}',
      '- {supply}',
      '- {supply * 2}',
      '',
      '| out | back |',
      '| --- | --- |',
      '| {supply * 3} | {back} |',
      '',
      '[over {supply * 4}](https://example.org/)',
    ].join('\n')
    const ledger = await soundLedger({ loop: head + text })
    expect(ledger.published.numbers.map(({ name, shown }) => [name, shown])).toEqual([
      ['back', '2.8\u00a0m'],
      ['supply', '2.4\u00a0m'],
      ['supply * 2', '4.8\u00a0m'],
      ['supply * 3', '7.2\u00a0m'],
      ['supply * 4', '9.6\u00a0m'],
      ['supply + back', '5.2\u00a0m'],
    ])
  })

  it('is not worked out in addresses, titles and alternative text', async () => {
    const text =
      '[a](https://example.org/{supply}) ![{supply} long](x.png) [b](https://example.org "{supply}")'
    const place = 'nothing is worked out there'
    expect(await problemsOf({ loop: `${head}${text}` })).toEqual([
      `notes/loop.mdx:10:1 error braces-in-link: braces in the address of a link or picture: ${place}`,
      'notes/loop.mdx:10:35 error no-picture: there is no picture `x.png` in the content folder | hint: put it beside the note: `![what it shows](./pump.jpg)`',
      `notes/loop.mdx:10:35 error braces-in-link: braces in the alternative text of a link or picture: ${place}`,
      `notes/loop.mdx:10:59 error braces-in-link: braces in the title of a link or picture: ${place}`,
    ])
  })
})
