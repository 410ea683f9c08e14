/**
 * Every verdict changes where its basis says, and nowhere else: each row of the tables of thresholds is
 * moved along one input until the level flips, and the quantity found there is held against the limit.
 * Where the quantity is itself an input, the limit is also typed as it is: it is still allowed. A check
 * named `hazard high-voltage` is the warning of that name.
 */
import { describe, expect, test } from 'vitest'
import type { Calculator } from '../../calculators/define.ts'
import { parseQuantity } from '../../src/quantity/index.ts'
import { thresholdRows, type ThresholdRow } from '../reference/thresholds.ts'
import { all } from './all.ts'
import { worked } from './arithmetic.ts'
import { numberAt, withNumber } from './paths.ts'
import { run, runExample, type Run } from './run-example.ts'

const within = 2e-6
const ids = [...new Set(thresholdRows.map(({ calculator }) => calculator))]
const mildness = ['none', 'pass', 'watch', 'unknown', 'stop', 'shown']

function valueIn(done: Run, path: string): number {
  const value = numberAt(done, path)
  if (value === undefined) throw new Error(`${path} has no value`)
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
  const { input } = runExample(calculator, {
    ...example,
    inputs: { ...example.inputs, ...row.inputs },
  })
  const at = (value: number): Run => run(calculator, withNumber(input, row.vary, value))
  const levelOf = (done: Run): string | undefined => {
    const hazard = /^hazard (.+)$/.exec(row.check)?.[1]
    if (hazard === undefined) return done.findings.find(({ check }) => check === row.check)?.level
    const warned = calculator.moreHazards?.(done.input, done.output) ?? []
    return warned.some((id) => id === hazard) ? 'shown' : 'none'
  }
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
    const itself = limitOf(row.vary, row.quantity, limit, flip)
    if (itself !== undefined) {
      const [mild = ''] = row.levels.toSorted((a, b) => mildness.indexOf(a) - mildness.indexOf(b))
      expect(levelOf(at(itself)), 'at the limit itself').toBe(row.at ?? mild)
    }
  })
})

/** The very value of `vary` at the limit, where it is typed: the limit, or the input it is held against. */
function limitOf(vary: string, quantity: string, limit: number, flip: Run): number | undefined {
  if (quantity === vary) return limit
  const [one = '', other = '', ...more] = quantity.split(' / ')
  if (limit !== 1 || more.length > 0 || ![one, other].includes(vary)) return undefined
  const against = one === vary ? other : one
  return against in flip.input || /^[a-z].*\./i.test(against) ? numberAt(flip, against) : undefined
}

test('no row stands twice', () => {
  const names = thresholdRows.map((row) => JSON.stringify(row))
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([])
})
