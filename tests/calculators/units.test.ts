/**
 * With US units first, what every calculator says of its examples has no metric unit left in it.
 *
 * Whatever a text names in metric units was typed into it, or has no counterpart; the list says why.
 */
import { describe, expect, test } from 'vitest'
import type { Calculator } from '../../calculators/define.ts'
import { exampleInputs } from '../../src/ledger/example.ts'
import { sayFor } from '../../src/ledger/say.ts'
import { counterparts } from '../../src/quantity/index.ts'
import { all } from './all.ts'

/** Calculator, what stays in metric units with US units first, and why. */
const stays: readonly (readonly [id: string, text: RegExp, why: string])[] = [
  ['battery-restraint', /\b(?:10|15|20|25) g\b/, 'times the acceleration of gravity, not grams'],
  ['brake-energy', /½ m v²/, 'm is the mass'],
  ['coast-down', /2 m \(1 \+ λ\)/, 'm is the mass'],
  ['motor-circuit', /2 L × R′/, 'L is the length'],
  [
    'cable-drop',
    /The rating holds for: .*/,
    'the conditions that the table was printed for, a result of `compute`',
  ],
  [
    'prediction-check',
    /kPa for each \(L\/min\)²/,
    'a plain number, as it is given: the label of the input names these units',
  ],
]

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
const metric = [...counterparts.us.keys(), 'mL', 'mm²', 'kg·m'].sort((a, b) => b.length - a.length)
/** A number, a space or none, and a metric unit that is not part of a longer one. */
const inMetric = new RegExp(
  `[0-9½¼¾][  ]?(?:${metric.map(escape).join('|')})(?![\\p{L}\\p{N}²³·°/^′'_])`,
  'u',
)

function said(calculator: Calculator): readonly string[] {
  const say = sayFor(['us', 'metric'])
  return calculator.examples.flatMap((example) => {
    const input = exampleInputs(calculator, example)
    const output = calculator.compute(input)
    const findings = calculator.findings(input, output, say)
    return [
      ...findings.flatMap(({ text, threshold }) => [text, threshold]),
      ...calculator.working(input, output, say),
    ]
  })
}

describe.each(all)('$id', (calculator) => {
  test('says nothing in metric units where US units are first', () => {
    const listed = stays.filter(([id]) => id === calculator.id)
    const left = said(calculator).filter((text) => inMetric.test(text))
    const rest = (text: string) =>
      listed.reduce((left, [, stay]) => left.replaceAll(new RegExp(stay, 'g'), ''), text)
    expect(left.filter((text) => inMetric.test(rest(text)))).toEqual([])
    for (const [, stay, why] of listed)
      expect(
        left.some((text) => stay.test(text)),
        `${why}: nothing like it is said`,
      ).toBe(true)
  })
})

test('a metric unit is found wherever it stands in a text', () => {
  for (const text of [
    'at most 5 K',
    'at 50 mm (watch)',
    '−20 kPa gauge',
    '1.2 kg/m³, so',
    '3 N·m.',
  ])
    expect(inMetric.test(text), text).toBe(true)
  for (const text of [
    'at most 9 Δ°F',
    '5 min',
    '3 mΩ',
    '2 kW',
    '5 Ah',
    '12 mi',
    '3 lb·ft',
    '5 Nm³x',
  ])
    expect(inMetric.test(text), text).toBe(false)
})
