/**
 * What the reader of notes says to a builder, with places, and what it lets pass.
 *
 * Each case is a text and the complete list of its problems: `line:column rule | text | hint`.
 */
import { describe, expect, test } from 'vitest'
import type { Nodes } from 'mdast'
import { visitParents } from 'unist-util-visit-parents'
import { parseNote } from '../../src/mdx/parse.ts'

function told(source: string | Uint8Array): readonly string[] {
  return parseNote(source, 'note.mdx').problems.map(
    ({ line, column, rule, text, hint }) => `${line}:${column} ${rule} | ${text} | ${hint ?? ''}`,
  )
}

function nodes(source: string): readonly Nodes[] {
  const found: Nodes[] = []
  const { tree } = parseNote(source, 'note.mdx')
  if (tree) visitParents(tree, (node) => void found.push(node))
  return found
}

const braceText = 'write `\\{` for a brace as text'

describe('text typed in a hurry passes', () => {
  test.each([
    'Draws <5 A, never < 5 V, and flows in <- there, <= here.',
    '<5 A at the start of a line\nand <1 MB on the next',
    '- <5 A in a list\n\n> <5 A in a quote\n\n| a |\n|---|\n| <5 A |',
    '<Show value={flow} /> <5 A',
    'A `{` and a `<b` in code, \\{ and \\} and \\<b escaped.',
    '```\n{ <a\n```',
    'Import duty on the cells.\n\nimport duty was 12 % and export is free.',
    'A {name}, a {supply + back}, a {/* remark */}, all fine.',
    '“Quoted” words, ‘so’ and it’s – fine —',
    '<Reading id="x" value="5 A" with="meter" /> was what it drew.',
    '\uFEFF# Head',
  ])('%j', (source) => {
    expect(told(source)).toEqual([])
  })

  test('a `<` that is no tag stays in the text, in its place', () => {
    const [text] = nodes('Draws <5 A and < 5.').filter(({ type }) => type === 'text')
    expect(text).toMatchObject({
      value: 'Draws <5 A and < 5.',
      position: { start: { offset: 0 }, end: { offset: 19 } },
    })
  })
})

describe('phone text in markup is repaired in place', () => {
  test.each([
    ['<Reading id=“x” value=”5 A” />', '<Reading id="x" value="5 A" />'],
    ['a <Reading id=‘x’ value=‚5 A’ /> b', 'a <Reading id="x" value="5 A" /> b'],
    ['a <Reading id="x” value="5 A” with="m" /> b', 'a <Reading id="x" value="5 A" with="m" /> b'],
    [
      'a <Chosen id=“x” because=“it’s the “good” hose” />',
      'a <Chosen id="x" because="it’s the “good” hose" />',
    ],
    ['a <Chosen id=“x” because=“a 6" hose” />', 'a <Chosen id="x" because=\'a 6" hose\' />'],
    [
      '“So” <Show value={flow} unit=“L/min” /> “there”',
      '“So” <Show value={flow} unit="L/min" /> “there”',
    ],
    [
      '<Calc use=“loop” list={[{ draw: “5 A” }]} />',
      '<Calc use="loop" list={[{ draw: "5 A" }]} />',
    ],
    ['import { flow } from ‘./loop.mdx’', "import { flow } from './loop.mdx'"],
    ['<Reading id="x"\u00a0value="5\u00a0A\u202f" />', '<Reading id="x"\u00a0value="5 A " />'],
    ['`value=“5 A”` and <Show value=“5 A” />', '`value=“5 A”` and <Show value="5 A" />'],
  ])('%j', (typed, repaired) => {
    const note = parseNote(typed, 'note.mdx')
    expect(note.problems).toEqual([])
    expect(note.text).toBe(repaired)
    expect(note.blanked).toBe(typed)
  })

  test.each(['|—|—|', '| – | :—: |', '—|—', '|\u2015|---|'])(
    'a table under %s is a table, of the same length',
    (rule) => {
      const source = `| a | b |\n${rule}\n| c | d |`
      expect(nodes(source).filter(({ type }) => type === 'tableCell')).toHaveLength(4)
      expect(parseNote(source, 'note.mdx').text).toHaveLength(source.length)
      expect(told(source)).toEqual([])
    },
  )

  test('dashes that are no rule of a table stay', () => {
    for (const source of ['a | b\nc — d', '—|—', '```\n|a|b|\n|—|—|\n```'])
      expect(parseNote(source, 'note.mdx').text).toBe(source)
  })

  test('a repair that does not help is taken back', () => {
    const note = parseNote('a <Reading id=“x” value=5 /> b', 'note.mdx')
    expect(note.text).toBe('a <Reading id=“x” value=5 /> b')
    expect(note.problems.map(({ rule }) => rule)).toEqual(['value-without-quotes'])
  })
})

describe('what cannot be read is explained', () => {
  test.each<[source: string, problems: readonly string[]]>([
    [
      'a { b',
      [
        '1:3 brace-open | `{` opens braces that are never closed | close them, as in `{pumpDraw}`, or ' +
          braceText,
      ],
    ],
    [
      'a } b',
      [
        '1:3 brace-alone | `}` closes no braces | write `\\}` for a brace as text, or open the braces, as in `{pumpDraw}`',
      ],
    ],
    [
      'draws {pump draw} A',
      [
        `1:7 unreadable-braces | \`{pump draw}\` has a space in its name | did you mean \`{pumpDraw}\`? ${braceText}`,
      ],
    ],
    [
      '{}',
      [
        '1:1 empty-braces | `{}` is empty | write a name in them, as in `{pumpDraw}`, or `\\{\\}` for braces as text',
      ],
    ],
    ['a {1,5} b', ['1:4 decimal-comma | `1,5` has a decimal comma | write `1.5`']],
    [
      '<Show value={0,5 * flow} />',
      ['1:14 decimal-comma | `0,5 * flow` has a decimal comma | write `0.5 * flow`'],
    ],
    ['a {1,5 A} b', ['1:3 decimal-comma | `1,5 A` has a decimal comma | write `1.5 A`']],
    [
      '# Loop {#loop}',
      [
        '1:8 unreadable-braces | `{#loop}` does not name a heading | take it out: a heading gets its id from its words',
      ],
    ],
    [
      'a <Show value=5 A /> b',
      [
        '1:15 value-without-quotes | the value of `value` has no quotes: `value=5 A` | write `value="5 A"`',
      ],
    ],
    [
      'a <Show value="5 A /> b',
      [
        '1:15 quote-open | the quote after `value=` is never closed | write the same straight quote `"` at the end of the value',
      ],
    ],
    [
      'a <Show value="5 A" and on',
      [
        '1:3 tag-open | `<Show` begins a tag that has no end | end it with `/>`; for “less than” write `\\<`',
      ],
    ],
    [
      'if x <y then',
      [
        '1:6 tag-open | `<y` begins a tag that has no end | end it with `/>`; for “less than” write `\\<`',
      ],
    ],
    [
      '<Nominal>10 A is enough',
      [
        '1:1 tag-open | `<Nominal>` is never closed, or not in the paragraph, list or table it began in | end it with `/>`, or write `</Nominal>` where it ends',
      ],
    ],
    [
      '10 A</Nominal> is enough',
      [
        '1:5 tag-closes-nothing | `</Nominal>` closes nothing | take it out, or open the tag before it',
      ],
    ],
    [
      '<b>so</i> it',
      [
        '1:6 tag-mismatch | `</i>` stands where `</b>` is due | close `<b>` first, or end it with `/>`',
      ],
    ],
    [
      '*a <b>x* c</b>',
      [
        '1:4 tag-open | `<b>` is never closed, or not in the paragraph, list or table it began in | end it with `/>`, or write `</b>` where it ends',
      ],
    ],
    [
      '<!-- later -->',
      ['1:1 html-comment | `<!--` does not begin a comment here | write `{/* … */}`'],
    ],
    [
      'see <https://a.example/b>',
      [
        '1:5 bare-address | an address in angle brackets is read as a tag: `<https://a.example/b>` | write `[words](https://a.example/b)`',
      ],
    ],
    [
      '<Calc list={[\n {a: 1},\n\n {b: 2 c}\n]} />\n\n- an item',
      [
        '4:8 unreadable-braces | a list in braces cannot be read from `c}` on | write it as `{[{ name: "value" }, { name: "value" }]}`, with a comma between entries',
      ],
    ],
    [
      "import { a } from './a.mdx'\nThe {a} of it.",
      [
        "1:1 import-in-paragraph | `import { a } from './a.mdx'` is not apart from the text below it | leave an empty line before `The {a} of it.`",
      ],
    ],
    [
      "So it was.\nimport { a } from './a.mdx'",
      [
        "2:1 import-in-paragraph | `import { a } from './a.mdx'` is read as prose | put it at the very beginning of a line of its own, with an empty line before and after",
      ],
    ],
    [
      "import { a } from './a.mdx'\nimport { a } from './b.mdx'",
      [
        '2:10 imported-twice | `a` is imported a second time | keep one of the two, or give it another name: `a as aThere`',
      ],
    ],
    [
      "import { a from './a.mdx'",
      [
        "1:12 unreadable-import | `import { a from './a.mdx'` cannot be read | write `import { pumpDraw } from './other-note.mdx'`, with straight quotes",
      ],
    ],
    [
      'The pump drew\n<Reading id="x" value="5 A" />\nat 14 V.',
      [
        '2:1 alone-on-line | `<Reading id="x" value="5 A" />` alone on its line ends the paragraph | put it on the same line as a word of its sentence, or leave an empty line before and after',
      ],
    ],
    [
      'The pump drew\n{pumpDraw}',
      [
        '2:1 alone-on-line | `{pumpDraw}` alone on its line ends the paragraph | put it on the same line as a word of its sentence, or leave an empty line before and after',
      ],
    ],
  ])('%j', (source, problems) => {
    expect(told(source)).toEqual(problems)
  })

  test.each([
    [
      '{fuse.drop V}',
      '`V` in `{fuse.drop V}` is a unit, and a name brings its own',
      'write `{fuse.drop}`, or in a unit of your choice `<Show value={fuse.drop} unit="V" />`',
    ],
    [
      '{a A}',
      '`A` in `{a A}` is a unit, and a name brings its own',
      'write `{a}`, or in a unit of your choice `<Show value={a} unit="A" />`',
    ],
    ['{2 a}', '`{2 a}` has no sign between its number and its name', 'write `{2 * a}`'],
    ['{2draw}', '`{2draw}` has no sign between its number and its name', 'write `{2 * draw}`'],
    ['{3 * a² + 1}', '`a²` is not worked out between names', 'write `a * a` for it'],
    ['{a.b³}', '`a.b³` is not worked out between names', 'write `a.b * a.b * a.b` for it'],
    [
      '{2 A}',
      '`{2 A}` is neither a name nor a sum of names',
      'a name begins with a letter; a value goes into an element, as in `<Reading value="2 A" />`',
    ],
  ])('%s, written as on paper', (source, text, hint) => {
    expect(told(`So ${source}.`)).toEqual([
      `1:4 unreadable-braces | ${text} | ${hint}; ${braceText}`,
    ])
  })

  test('a “less than” before a word and a comma', () => {
    expect(told('Where a<b, fine.')).toEqual([
      '1:10 unreadable-tag | `,` cannot stand here in the tag `<b` | for “less than” write `\\<`',
    ])
  })

  test('a tag left open in a heading of two lines is told like any other', () => {
    expect(told('The <b>loop\n---\n').map((one) => one.split(' |')[0])).toEqual(['1:5 tag-open'])
  })

  test('all problems of a note come at once, in order', () => {
    const source =
      '---\ntitle: a: b\n---\n\na { b\n\n<b>c\n\nd <e f\n\n> g } h\n\n- i {1,5}\n\n<Show value=5 />\n'
    expect(told(source).map((one) => one.split(' | ')[0])).toEqual([
      '2:8 unreadable-frontmatter',
      '5:3 brace-open',
      '7:1 tag-open',
      '9:3 tag-open',
      '11:5 brace-alone',
      '13:6 decimal-comma',
      '15:13 value-without-quotes',
    ])
  })

  test('a block that stands apart, and a block of a table, are no broken paragraph', () => {
    const table =
      '<Reading with="meter">\n\n| what | value |\n| --- | --- |\n| a | 5 A |\n\n</Reading>'
    expect(
      told(`The pump drew\n\n{pumpDraw}\n\nat last.\n\nSo:\n<Calc id="a" use="b" />\n\n${table}`),
    ).toEqual([])
  })

  test('braces nested deeper than code can be are a problem, not a crash', () => {
    expect(told(`a {${'('.repeat(20_000)}} b`).map((one) => one.split(' |')[0])).toEqual([
      '1:3 unreadable-braces',
    ])
  })
})

describe('the head of a note', () => {
  test('a date stays text and positions below stay', () => {
    const note = parseNote('---\ntitle: Loop\ndate: 2026-03-14\n---\n\n# Head\n', 'note.mdx')
    expect(note.frontmatter).toEqual({ title: 'Loop', date: '2026-03-14' })
    expect(note.tree?.children.map(({ type, position }) => [type, position?.start.line])).toEqual([
      ['heading', 6],
    ])
  })

  test('a note without a head has no entries', () => {
    expect(parseNote('# Head', 'note.mdx').frontmatter).toEqual({})
  })

  test.each<[source: string, problem: string]>([
    [
      '---\ntitle: a: b\n---\n',
      '2:8 unreadable-frontmatter | `title: a: b` has a second colon | write `title: "a: b"`',
    ],
    [
      '---\ntitle: "a\n---\n',
      '2:8 unreadable-frontmatter | a quote, bracket or colon is missing at `title: "a` | close what is open',
    ],
    [
      '---\ntitle: a\ntitle: b\n---\n',
      '3:1 unreadable-frontmatter | `title: b` gives an entry a second time | keep one of the two',
    ],
    [
      '---\ntitle: @a\n---\n',
      '2:8 unreadable-frontmatter | `title: @a` begins its value with a sign of the format | write `title: "@a"`',
    ],
    [
      '---\njust words\n---\n',
      '2:1 unreadable-frontmatter | the head of the note cannot be read | write one `name: value` a line, with quotes round a value that has a colon',
    ],
    [
      '---\ntitle: a\n\nText',
      '1:1 unreadable-frontmatter | the head of the note begins with `---` and never ends | write a line `---` after its last entry',
    ],
    [
      '+++\ntitle = "a"\n+++\n',
      '1:1 unreadable-frontmatter | the head of the note stands between `+++` lines | write `---` lines instead',
    ],
    [
      '—\ntitle: a\ndate: 2026-03-14\n—\n\nText',
      '1:1 unreadable-frontmatter | `—` was read where the three hyphens of the head are due | write `---` alone on a line before its first entry, and again after its last',
    ],
    [
      '---\ntitle: a\n—\n\nText',
      '3:1 unreadable-frontmatter | `—` was read where the three hyphens of the head are due | write `---` alone on a line before its first entry, and again after its last',
    ],
    [
      '---\ntitle:\u00a0T\ndate: 2026-03-14\n---\n',
      '2:7 unreadable-frontmatter | a no-break space stands in `title: T`, where a plain one is due | delete it and type the space anew',
    ],
  ])('%j', (source, problem) => {
    expect(told(source)).toEqual([problem])
    expect(parseNote(source, 'note.mdx').frontmatter).toBeUndefined()
  })
})

describe('bytes', () => {
  test('UTF-8 with a byte order mark is read', () => {
    const note = parseNote(new TextEncoder().encode('\uFEFF65 °C {flow'), 'note.mdx')
    expect(note.text).toBe('65 °C {flow')
    expect(note.problems.map(({ line, column }) => [line, column])).toEqual([[1, 7]])
  })

  test('a byte of an older encoding is told with its place, and the rest is read', () => {
    const bytes = Uint8Array.from([
      ...new TextEncoder().encode('Äö\nat 65 '),
      0xb0,
      ...new TextEncoder().encode('C {'),
    ])
    expect(told(bytes)).toEqual([
      '2:7 not-utf8 | a byte here is not UTF-8 text (perhaps `°` saved in an older encoding) | open the file in an editor and save it with the encoding UTF-8',
      '2:10 brace-open | `{` opens braces that are never closed | close them, as in `{pumpDraw}`, or ' +
        braceText,
    ])
  })

  test('UTF-16 is named', () => {
    expect(told(Uint8Array.of(0xff, 0xfe, 0x41, 0))).toEqual([
      '1:1 not-utf8 | the file is saved as UTF-16 | open the file in an editor and save it with the encoding UTF-8',
    ])
  })
})
