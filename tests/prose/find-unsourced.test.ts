/**
 * Where unsourced numbers are looked for, and how they are told: levels, places, elements to paste.
 */
import { expect, test } from 'vitest'
import { findUnsourced, type Unsourced } from '../../src/mdx/prose.ts'
import { parseNote } from '../../src/mdx/parse.ts'

function find(
  source: string,
  status: 'draft' | 'other' = 'other',
  nominals: readonly string[] = [],
): Unsourced {
  const note = parseNote(source, 'note.mdx')
  if (!note.tree) throw new Error('not read')
  return findUnsourced(note.tree, { nominals, file: 'note.mdx', status, text: note.text })
}

const places = ({ problems }: Unsourced) =>
  problems.flatMap(({ line, column, also = [] }) =>
    [{ line, column }, ...also].map((place) => `${place.line}:${place.column}`),
  )

const kinds =
  'a number of its own kind (`<Reading>`, `<Rated>`, `<Assumed>`, `<Chosen>`, `<Calc>`), `<Nominal>` round the name of a size, `<Quoted>` round a figure that is only mentioned'

test('one message for the dangerous ones and one for the rest, ready to paste', () => {
  const source = 'It drew 5 A and\nheld 30 psi over 20 mm\nand 10-12 V.'
  expect(find(source, 'draft').problems).toEqual([
    {
      rule: 'unsourced-danger',
      level: 'error',
      file: 'note.mdx',
      line: 1,
      column: 9,
      text: 'nothing says where `5 A`, `30 psi`, `10-12 V` come from (torque, current, voltage, pressure)',
      allowed: kinds,
      hint: [
        'write in place of each:',
        '<Reading id="…" value="5 A" with="…" />',
        '<Reading id="…" value="30 psi" with="…" />',
        '<Reading id="…" value="10 V" with="…" />',
        '<Reading id="…" value="12 V" with="…" />',
      ].join('\n'),
      also: [
        { file: 'note.mdx', line: 2, column: 6 },
        { file: 'note.mdx', line: 3, column: 5 },
      ],
    },
    {
      rule: 'unsourced-number',
      level: 'warning',
      file: 'note.mdx',
      line: 2,
      column: 18,
      text: 'nothing says where `20 mm` comes from',
      allowed: kinds,
      hint: 'write in place of each:\n<Reading id="…" value="20 mm" with="…" />',
    },
  ])
})

test('outside a draft, both are errors', () => {
  expect(find('5 A through 20 mm').problems.map(({ level }) => level)).toEqual(['error', 'error'])
})

test('kit elements, code, quotes and links are not looked at', () => {
  const source = [
    'A <Reading id="a" value="5 A" />, <Nominal>10 A</Nominal>, <Quoted source="s">5 bar</Quoted>, {loop.flow}.',
    '`5 A` and [5 A](a.md) and ![5 A](a.jpg "5 V").',
    '> It was 5 A.',
    '```\n5 A\n```',
    '<Reading with="meter">\n\n| what | value |\n| --- | --- |\n| pump | 5 A |\n\n</Reading>',
    'export const note = "5 A"',
    '{/* 5 A */}',
  ].join('\n\n')
  expect(find(source)).toEqual({ problems: [], nominals: [] })
})

test('headings, lists, tables, notes, emphasis and other elements are', () => {
  const source = [
    '# At 1 A',
    '- 2 A\n  - **3 A**',
    '| what | value |\n| --- | --- |\n| pump | 4 A |',
    'Said[^1].\n\n[^1]: It was 5 A.',
    '<div>6 A</div>',
    '<Aside>\n\nAlso 7 A.\n\n</Aside>',
    'A <b>8</b> A one, and ~~9 A~~.',
  ].join('\n\n')
  expect(find(source).problems.map(({ text }) => text)).toEqual([
    'nothing says where `1 A`, `2 A`, `3 A`, `4 A`, `5 A`, `6 A`, `7 A`, `8 A`, `9 A` come from (torque, current, voltage, pressure)',
  ])
})

test('a number does not reach over what is not looked at', () => {
  expect(find('Of the 5 `x` A is best, 5 {n} V too.').problems).toEqual([])
})

test('the head of a column gives its bare numbers a unit', () => {
  const source =
    '| t | current (A) | mm |\n| --- | --- | --- |\n| 1 | 5.2 | 30 |\n| 2 | - | about |'
  const found = find(source)
  expect(found.problems.map(({ text }) => text)).toEqual([
    'nothing says where `5.2 A` comes from (torque, current, voltage, pressure)',
    'nothing says where `30 mm` comes from',
  ])
  expect(places(found)).toEqual(['3:7', '3:13'])
})

test('places are right behind entities, escapes, list indents and frontmatter', () => {
  const source =
    '---\ntitle: x\n---\n\n- &lt;b&gt; \\* drew 5 A\n  then 6&nbsp;A and\n\n  > no\n\n  7 A'
  expect(places(find(source))).toEqual(['5:21', '6:8', '10:3'])
})

test('nominals of the site match by number and unit, or by their words', () => {
  const found = find('A 12V pump, 12 volts, 12.0 V, 12-14 V and half-inch hose.', 'other', [
    '12 V',
    'half-inch',
  ])
  expect(found.problems.map(({ text }) => text)).toEqual([
    'nothing says where `12.0 V`, `12-14 V` come from (torque, current, voltage, pressure)',
  ])
  expect(found.nominals).toEqual([
    { text: '12V', place: { file: 'note.mdx', line: 1, column: 3 } },
    { text: '12 volts', place: { file: 'note.mdx', line: 1, column: 13 } },
    { text: 'half-inch', place: { file: 'note.mdx', line: 1, column: 43 } },
  ])
})

test('captions and task lists name sizes, but never a torque or pressure', () => {
  const source = '![gap](a.jpg) 12 mm drill for scale, 5 mm gap\n\n- [ ] 19 mm hose to 25 Nm'
  const found = find(source)
  expect(found.nominals.map(({ text }) => text)).toEqual(['12 mm', '5 mm', '19 mm'])
  expect(found.problems.map(({ text }) => text)).toEqual([
    'nothing says where `25 Nm` comes from (torque, current, voltage, pressure)',
  ])
})

test('a tree without positions is read as well', () => {
  const tree = {
    type: 'root',
    children: [{ type: 'paragraph', children: [{ type: 'text', value: '5 A' }] }],
  } as const
  const found = findUnsourced(structuredClone(tree) as never, {
    nominals: [],
    file: 'n',
    status: 'draft',
    text: '',
  })
  expect(places(found)).toEqual(['1:1'])
})

test('the sign of a value is in what is offered for pasting', () => {
  const source = 'It was −5 °C in the shed, -7 °C outside - 20 mm of snow, and -.5 to 2 mm of ice.'
  expect(find(source).problems.map(({ hint }) => hint)).toEqual([
    [
      'write in place of each:',
      ...['-5 °C', '-7 °C', '20 mm', '-0.5 mm', '2 mm'].map(
        (value) => `<Reading id="…" value="${value}" with="…" />`,
      ),
    ].join('\n'),
  ])
})

test('a plain number in braces is read as if it had been typed', () => {
  expect(find('It drew {4} A, {2 + 3} V and {-1.5} bar in {7} steps.').problems[0]?.text).toBe(
    'nothing says where `4 A`, `5 V`, `-1.5 bar` come from (torque, current, voltage, pressure)',
  )
  expect(places(find('export const draw = 2 * 2\n\nIt drew {draw} A, {draws} A.'))).toEqual(['3:9'])
  expect(places(find('It drew {4} A\nand {2 + 3} V, {amps} A.'))).toEqual(['1:10', '2:5'])
})

test('elements to paste hold numbers as they may be typed', () => {
  const [, found] = find(
    'It took 8 × 12,5 Ah, then 31,5 kg, 1,250 kg, 0,125 m and ,5 m at 1 A.',
  ).problems
  expect(found?.hint?.match(/"[^"]*(?="\s*with)/g)).toEqual(
    ['12.5 Ah', '31.5 kg', '1250 kg', '0.125 m', '0.5 m'].map((value) => `"${value}`),
  )
})

test('a thread before a torque is left alone', () => {
  expect(
    find('1/4-20 to 90 lb·in, #10-32 to 30 lb·in, M8 x 1.25 to 20 N·m.').problems[0]?.text,
  ).toBe(
    'nothing says where `90 lb·in`, `30 lb·in`, `20 N·m` come from (torque, current, voltage, pressure)',
  )
})
