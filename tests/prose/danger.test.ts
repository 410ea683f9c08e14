/**
 * A torque, current, voltage or pressure is found however it is typed and wherever it stands.
 *
 * Every spelling of a number, gap and unit is put into every setting: all combinations, not a sample.
 */
import { describe, expect, test } from 'vitest'
import { findUnsourced } from '../../src/mdx/prose.ts'
import { parseNote } from '../../src/mdx/parse.ts'

const numbers = [
  '5',
  '7.5',
  '.5',
  '0,8',
  '1,200',
  '10-12',
  '10–12',
  '10 to 12',
  '~5',
  '±5',
  '<5',
  '1/2',
  '1½',
  '-5',
  '2 x 5',
]
const gaps = ['', ' ', '\u00a0', '&nbsp;', '\u202f']
const units = [
  ...[
    'A',
    'mA',
    'kA',
    'amp',
    'amps',
    'Amps',
    'AMPS',
    'ampere',
    'Adc',
    'V',
    'v',
    'kV',
    'mV',
    'volts',
    'Volt',
    'VDC',
    'Vac',
  ],
  ...[
    'Nm',
    'N·m',
    'N m',
    'N-m',
    'nm',
    'NM',
    'newton metres',
    'lb-ft',
    'lb·ft',
    'lb ft',
    'lbft',
    'ft-lb',
    'ft lb',
    'ft-lbs',
  ],
  ...[
    'ft.lbs',
    'ft/lbs',
    'ftlbs',
    'foot pounds',
    'foot-pounds',
    'pound-feet',
    'pounds feet',
    'in-lb',
    'in lbs',
    'inch pounds',
  ],
  ...[
    'lbf·ft',
    'lb-in',
    'psi',
    'PSI',
    'psig',
    'bar',
    'Bar',
    'mbar',
    'kPa',
    'kpa',
    'MPa',
    'inHg',
    'in Hg',
    'inches of mercury',
    'pounds per square inch',
  ],
]
const settings: readonly ((typed: string) => string)[] = [
  (typed) => `It drew ${typed}.`,
  (typed) => `${typed} at first, then less.`,
  (typed) => `Not much (${typed}) for that wire.`,
  (typed) => `About ${typed} when warm`,
  (typed) => `**${typed}** is what it says.`,
  (typed) => `- [ ] set it to ${typed}, then look`,
  (typed) => `# The ${typed} side`,
  (typed) => `| what | how |\n| --- | --- |\n| loop | ${typed} |`,
  (typed) => `![gauge](a.jpg) ${typed} on the gauge.`,
  (typed) => `<figcaption>${typed} on the gauge.</figcaption>`,
]

function dangers(text: string): number {
  const note = parseNote(text, 'note.mdx')
  if (!note.tree) throw new Error(`not read: ${text}`)
  const options = { nominals: [], file: 'note.mdx', status: 'other' } as const
  const { problems } = findUnsourced(note.tree, { ...options, text: note.text })
  return problems.filter(({ rule }) => rule === 'unsourced-danger').length
}

describe.each(units)('%s', (unit) => {
  test('is found with every number, gap and setting', () => {
    const missed: string[] = []
    for (const [index, number] of numbers.entries()) {
      for (const gap of gaps) {
        // Every number and gap; the settings take turns, and every setting has every unit.
        const setting = settings[(index + gaps.indexOf(gap)) % settings.length]
        const text = setting?.(`${number}${gap}${unit}`) ?? ''
        if (dangers(text) !== 1) missed.push(text)
      }
    }
    expect(missed).toEqual([])
  })
})

test.each([
  ['five amps', '5 A'],
  ['half a bar', '0.5 bar'],
  ['two and a half bar', '2.5 bar'],
  ['a hundred volts', '100 V'],
  ['two hundred and forty volts', '240 V'],
  ['thirty foot pounds', '30 lb·ft'],
  ['forty-five newton metres', '45 N·m'],
  ['twelve point six volts', '12.6 V'],
  ['three quarters of a bar', '0.75 bar'],
  ['a quarter of a volt', '0.25 V'],
])('%s is written %s in the element', (typed, value) => {
  const note = parseNote(`It had ${typed} left.`, 'note.mdx')
  const options = { nominals: [], file: 'note.mdx', status: 'draft' } as const
  const found = note.tree && findUnsourced(note.tree, { ...options, text: note.text })
  expect(found?.problems.map(({ hint }) => hint)).toEqual([
    `write in place of each:\n<Reading id="…" value="${value}" with="…" />`,
  ])
})

test.each([
  'On the DC-12 V side.',
  'It was mid-12V or so.',
  'Approx.12V on it.',
  '+12V in, -12 V out.',
  '12V–14V.',
  '= 5A?',
])('something dangerous in: %s', (text) => {
  expect(dangers(text)).toBe(1)
})

test.each([
  'Two V belts and a 5 V-belt pulley.',
  'Gloves of the CAT III 600 V / 1000 V meter kit, and one marked 1000 V CAT III.',
  'Two bar stools, one bar of soap and a 4 bar linkage.',
  'See section 4.2 A, table 3 A and figure 2 V.',
  'Put 85 lbs in the tray.',
  'Step 5a, fig. 5a and 2 a side.',
  'Order code 12V-300-A.',
])('nothing dangerous in: %s', (text) => {
  expect(dangers(text)).toBe(0)
})
