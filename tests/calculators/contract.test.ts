/**
 * What every calculator must be, whatever it works out: complete words, ranges and units that agree,
 * checks that can pass and can fail, and examples that show both.
 */
import temml from 'temml'
import { describe, expect, test } from 'vitest'
import type {
  Calculator,
  Field,
  Fields,
  NumberField,
  NumberOutput,
} from '../../calculators/define.ts'
import { hazards } from '../../calculators/hazards.ts'
import { calculators } from '../../calculators/index.ts'
import { dimensions, parseQuantity, toSI } from '../../src/quantity/index.ts'
import { all, found } from './all.ts'
import { inHardRange, runExample, type Run } from './run-example.ts'

describe('the index', () => {
  test('is sorted by id', () => {
    const ids = Object.keys(calculators)
    expect(ids).toEqual([...ids].sort())
  })

  test('lists every calculator file, and nothing else', () => {
    expect(Object.keys(calculators).sort()).toEqual(found.map(({ id }) => id).sort())
  })

  test.each(found)('$id loads, under its own name', async ({ id, phase, calculator, error }) => {
    expect(error).toBeUndefined()
    expect(calculator).toMatchObject({ id, phase })
    expect(await calculators[id]?.()).toBe(calculator)
  })
})

describe.each(all)('$id', (calculator) => {
  const fields = everyField(calculator.inputs)
  const numbers = fields.flatMap(([name, field]) =>
    field.type === 'number' ? [{ name, field }] : [],
  )
  const results = Object.entries(calculator.outputs)
  const columns = results.map(([, output]) => (output.type === 'table' ? output.columns : {}))
  const outputs = [...results, ...columns.flatMap((table) => Object.entries(table))].flatMap(
    ([name, output]) => (output.type === 'number' ? [{ name, field: output }] : []),
  )

  test('has purpose, formula, validity, sources and words for every field', () => {
    const { title, purpose, formula, validity, sources } = calculator
    expect([title, purpose].every((text) => text.trim().length > 3)).toBe(true)
    expect(validity.length * sources.length * formula.length).toBeGreaterThan(0)
    expect(fields.filter(([, { help, label }]) => !help.trim() || !label.trim())).toEqual([])
  })

  test('has formulas that can be set', () => {
    for (const formula of calculator.formula)
      expect(temml.renderToString(formula, { throwOnError: true })).toContain('<math')
  })

  test('names hazards that have a text', () => {
    expect(calculator.hazards.filter((id) => !Object.hasOwn(hazards, id))).toEqual([])
  })

  test('has units that fit what each field is', () => {
    const wrong = [...numbers, ...outputs].flatMap(({ name, field }) =>
      field.units.filter((unit) => !isUnitOf(field, unit)).map((unit) => `${name}: ${unit}`),
    )
    expect(wrong).toEqual([])
  })

  test('has usual ranges inside the hard ones, and defaults inside', () => {
    const wrong = numbers.filter(({ field: { hard, usual, units, ...rest } }) => {
      const outside = usual[0] < hard[0] || usual[1] > hard[1]
      const empty = hard[0] >= hard[1] || usual[0] > usual[1]
      const assumed = rest.assume && toSI(rest.assume.value, units[0])
      const strange =
        assumed !== undefined && !inHardRange({ hard, usual, units, ...rest }, assumed)
      return outside || empty || strange || rest.assume?.because === ''
    })
    expect(wrong.map(({ name }) => name)).toEqual([])
  })

  test('has choices with options, and a default among them', () => {
    const wrong = fields.filter(
      ([, field]) =>
        field.type === 'choice' &&
        (Object.keys(field.options).length < 2 ||
          (field.assume && !Object.hasOwn(field.options, field.assume.value))),
    )
    expect(wrong.map(([name]) => name)).toEqual([])
  })

  test('uses each symbol once', () => {
    const own = outputs.filter(({ name }) => name in calculator.outputs)
    const symbols = [...numbers, ...own].map(({ field }) => field.symbol)
    expect(symbols.filter((symbol, i) => symbols.indexOf(symbol) !== i)).toEqual([])
    for (const table of columns) {
      const inTable = Object.values(table).flatMap((c) => (c.type === 'number' ? [c.symbol] : []))
      expect(new Set(inTable).size).toBe(inTable.length)
    }
  })

  test('has two examples or more with answers from outside', () => {
    const outside = calculator.examples.filter(({ outputs }) => Object.keys(outputs).length > 0)
    expect(outside.length).toBeGreaterThanOrEqual(2)
    for (const { from, tolerance, why, name } of calculator.examples) {
      expect(from.trim(), name).not.toBe('')
      if (tolerance !== undefined) expect(why ?? '', name).not.toBe('')
    }
    const names = calculator.examples.map(({ name }) => name)
    expect(new Set(names).size).toBe(names.length)
  })

  test('never calls anything safe', () => {
    const { examples, ...printed } = calculator
    const runs = examples.map((example) => runExample(calculator, example))
    const said = runs.flatMap((run) => [...run.findings.flatMap(texts), ...run.working])
    expect([JSON.stringify(printed), ...said].filter((text) => /\bsafe\b/i.test(text))).toEqual([])
  })

  test('has for every check an example that passes and one that does not', () => {
    const levels = new Map<string, Set<string>>()
    for (const example of calculator.examples)
      for (const { check, level } of runExample(calculator, example).findings)
        levels.set(check, (levels.get(check) ?? new Set()).add(level))
    const never = Object.keys(calculator.checks).flatMap((check) => {
      const seen = levels.get(check) ?? new Set()
      return [
        ...(seen.has('pass') ? [] : [`${check} never passes`]),
        ...([...seen].some((level) => level !== 'pass') ? [] : [`${check} is never raised`]),
      ]
    })
    expect(never).toEqual([])
  })

  test.each(calculator.examples)('reports whole on: $name', (example) => {
    const run = runExample(calculator, example)
    expect(run.findings.map(({ check }) => check)).toEqual(Object.keys(calculator.checks))
    expect(Object.keys(run.output).sort()).toEqual(Object.keys(calculator.outputs).sort())
    expect(run.working.length).toBeGreaterThan(0)
    expect(faults(run, calculator)).toEqual([])
  })
})

function everyField(fields: Fields): (readonly [string, Field])[] {
  return Object.entries(fields).flatMap(([name, field]) => [
    [name, field] as const,
    ...(field.type === 'list' ? everyField(field.fields) : []),
  ])
}

function isUnitOf({ of }: NumberField | NumberOutput, unit: string): boolean {
  const read = parseQuantity(`1 ${unit}`, of)
  return read.ok && read.unit === unit && read.flavour === dimensions[of].flavour
}

const texts = ({ text, threshold }: Run['findings'][number]): string[] => [text, threshold]

/** Texts that are empty or that show what a program shows when it does not know. */
function faults(run: Run, calculator: Calculator): string[] {
  const plot = calculator.plot?.(run.input, run.output)
  const said = [...run.findings.flatMap(texts), ...run.working, plot?.caption ?? 'no plot']
  return said.filter((text) => !text.trim() || /NaN|undefined|Infinity|\[object/.test(text))
}
