/**
 * Whatever is typed within the hard ranges, a calculator answers: finite numbers or `undefined`,
 * whole sentences, never an exception.
 */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Field, Fields, InputValue, OutputValue } from '../../calculators/define.ts'
import { calculators } from '../../calculators/index.ts'
import { toSI } from '../../src/quantity/index.ts'
import { all } from './all.ts'
import { run } from './run-example.ts'

test('every calculator of the index is among those tested', () => {
  const tested = all.map(({ id }) => id)
  expect(tested).toEqual(expect.arrayContaining(Object.keys(calculators)))
})

describe.each(all)('$id', (calculator) => {
  test('answers everything within its hard ranges', () => {
    fc.assert(
      fc.property(inputs(calculator.inputs), (input) => {
        const { output, findings, working } = run(calculator, input)
        const more = calculator.moreHazards?.(input, output) ?? []
        const plot = calculator.plot?.(input, output)
        const said = [
          ...findings.flatMap(({ text, threshold }) => [text, threshold]),
          ...working,
          ...more,
          plot?.caption ?? '',
        ]
        expect(findings.map(({ check }) => check)).toEqual(Object.keys(calculator.checks))
        expect(said.filter((text) => /NaN|undefined|Infinity|\[object/.test(text))).toEqual([])
        expect(Object.entries(output).filter(([, value]) => !isWhole(value))).toEqual([])
        const drawn = plot?.series.flatMap(({ points }) => points.flat()) ?? []
        const marked = plot?.marks.flatMap(({ x, y }) => [x, y]) ?? []
        expect([...drawn, ...marked].filter((value) => !isWhole(value))).toEqual([])
      }),
      { numRuns: 200 },
    )
  })
})

function inputs(fields: Fields): fc.Arbitrary<Record<string, InputValue>> {
  return fc.record(
    Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, value(field)])),
  )
}

function value(field: Field): fc.Arbitrary<InputValue> {
  return field.optional ? fc.option(given(field), { nil: undefined }) : given(field)
}

function given(field: Field): fc.Arbitrary<InputValue> {
  switch (field.type) {
    case 'number': {
      const [min, max] = field.hard
      const ends = fc.constantFrom(min, max, ...field.usual)
      const within = fc.double({ min, max, noNaN: true })
      const usual = fc.double({ min: field.usual[0], max: field.usual[1], noNaN: true })
      // A part in 1e12 of the range is nothing: 1e-300 A would only show that floats end somewhere.
      const nothing = 1e-12 * Math.max(Math.abs(min), Math.abs(max))
      return fc
        .oneof(ends, within, usual)
        .map((number) => (min <= 0 && Math.abs(number) < nothing ? 0 : number))
        .map((number) => toSI(number, field.units[0]))
    }
    case 'choice':
      return fc.constantFrom(...Object.keys(field.options))
    case 'text':
      return fc.constantFrom('front', 'a longer name', 'µ')
    case 'list': {
      const minLength = field.rows[0]
      const maxLength = Math.max(Math.min(field.rows[1], 6), minLength)
      return fc.array(row(field.fields), { minLength, maxLength })
    }
  }
}

const row = (fields: Fields): fc.Arbitrary<Record<string, number | string | undefined>> =>
  inputs(fields).map((values) =>
    Object.fromEntries(
      Object.entries(values).flatMap(([name, value]) =>
        typeof value === 'object' ? [] : [[name, value] as const],
      ),
    ),
  )

/** A finite number, a text, `undefined`, or rows of these. */
const isWhole = (value: OutputValue): boolean =>
  typeof value === 'object'
    ? value.every((cells) => Object.values(cells).every(isWhole))
    : typeof value !== 'number' || Number.isFinite(value)
