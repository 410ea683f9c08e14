/**
 * Every verdict changes where its basis says, and nowhere else: each row of the tables of thresholds is
 * moved along one input until the level flips, and the quantity found there is held against the limit.
 * Where the quantity is itself an input, the limit is also typed as it is: it is still allowed.
 */
import { describe, expect, test } from 'vitest'
import type { Calculator, InputValue } from '../../calculators/define.ts'
import { parseQuantity } from '../../src/quantity/index.ts'
import { thresholdRows, type ThresholdRow } from '../reference/thresholds.ts'
import { all } from './all.ts'
import { worked } from './arithmetic.ts'
import { run, runExample, type Run } from './run-example.ts'

const within = 2e-6
const ids = [...new Set(thresholdRows.map(({ calculator }) => calculator))]
const mildness = ['pass', 'watch', 'unknown', 'stop']

type Input = Readonly<Record<string, InputValue>>

/** The input with one number put in place; `cells.0.rest` is in the first row of a list. */
function withValue(
  input: Input,
  [name = '', row, column]: readonly string[],
  value: number,
): Input {
  const before = input[name]
  if (row === undefined || column === undefined) return { ...input, [name]: value }
  if (typeof before !== 'object') throw new Error(`${name} is not a list`)
  const rows = before.map((cells, at) =>
    at === Number(row) ? { ...cells, [column]: value } : cells,
  )
  return { ...input, [name]: rows }
}

function valueIn({ input, output }: Run, path: string): number {
  const [name = '', row, column = ''] = path.split('.')
  const found = name in input ? input[name] : output[name]
  const value = typeof found === 'object' ? found[Number(row)]?.[column] : found
  if (typeof value !== 'number') throw new Error(`${path} has no value`)
  return value
}

function readText(text: string): number {
  const read = parseQuantity(text)
  if (!read.ok) throw new Error(`\`${text}\`: ${read.text}`)
  return read.value
}

function onTheWay(calculator: Calculator, row: ThresholdRow) {
  const example = calculator.examples.find(({ name }) => name === row.case)
  if (example === undefined) throw new Error(`${row.calculator} has no example ${row.case}`)
  const { input } = runExample(calculator, example)
  const path = row.vary.split('.')
  const at = (value: number): Run => run(calculator, withValue(input, path, value))
  const levelOf = ({ findings }: Run): string | undefined =>
    findings.find(({ check }) => check === row.check)?.level
  return { at, levelOf }
}

describe.each(ids)('%s', (id) => {
  const calculator = all.find((one) => one.id === id)
  const rows = thresholdRows.filter((row) => row.calculator === id)

  test.each(rows)('$check changes at $quantity = $limit ($case)', (row) => {
    if (calculator === undefined) throw new Error(`there is no calculator ${id}`)
    const { at, levelOf } = onTheWay(calculator, row)
    const limit = readText(row.limit)
    let [low, high] = [readText(row.from), readText(row.to)]
    expect([levelOf(at(low)), levelOf(at(high))]).toEqual(row.levels)
    for (let step = 0; step < 60; step++) {
      const middle = (low + high) / 2
      if (levelOf(at(middle)) === row.levels[0]) low = middle
      else high = middle
    }
    const flip = at(low)
    const found = worked(row.quantity, (name) => valueIn(flip, name))
    expect(Math.abs(found - limit), `${row.limit} is due, ${found} found`).toBeLessThanOrEqual(
      within * Math.abs(limit) + 1e-9,
    )
    if (row.quantity === row.vary) {
      const [mild = ''] = row.levels.toSorted((a, b) => mildness.indexOf(a) - mildness.indexOf(b))
      expect(levelOf(at(limit)), 'at the limit itself').toBe(row.at ?? mild)
    }
  })
})

test('no row stands twice', () => {
  const names = thresholdRows.map((row) => JSON.stringify(row))
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([])
})
