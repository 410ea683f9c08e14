/**
 * Every calculator against its table of answers from outside.
 *
 * Rows from memory are worked and counted but not held against the calculator; rows marked as
 * misprints must be missed. The counts and the worst deviation of each calculator are printed.
 */
import { afterAll, describe, expect, test } from 'vitest'
import { fromSI } from '../../src/quantity/index.ts'
import { outsideRows, origins, type OutsideRow } from '../reference/outside.ts'
import { all } from './all.ts'
import { printed, runExample } from './run-example.ts'

const leastRows = 400
const leastEach = 3
/** From documents and general-purpose libraries. */
const leastOutside = 250

const ids = [...new Set(outsideRows.map(({ calculator }) => calculator))]
const rowsOf = (id: string) => outsideRows.filter(({ calculator }) => calculator === id)
const worst = new Map<string, { readonly used: number; readonly row: OutsideRow }>()

const missed: OutsideRow[] = []

interface Compared {
  /** In the printed unit. */
  readonly worked: number
  readonly off: number
  readonly allowed: number
}

function compare(row: OutsideRow): Compared | string {
  const calculator = all.find(({ id }) => id === row.calculator)
  const field = calculator?.outputs[row.output]
  if (calculator === undefined || field === undefined)
    throw new Error(`${row.calculator} has no output ${row.output}`)
  const { output } = runExample(calculator, {
    name: row.case,
    from: row.source,
    inputs: row.inputs,
    outputs: {},
  })
  const actual = output[row.output]
  if (field.type === 'table' || typeof actual === 'object')
    throw new Error(`${row.output} is a table, which cannot be compared`)
  if (field.type === 'text' || typeof actual !== 'number') return String(actual ?? 'cannot tell')
  const { number, unit, half } = printed(row.expected, field.of)
  const worked = fromSI(actual, unit)
  const { kind, size } = row.tolerance
  const allowed = kind === 'printed' ? half : kind === 'relative' ? size * Math.abs(number) : size
  return { worked, off: Math.abs(worked - number), allowed }
}

describe.each(ids)('%s', (id) => {
  test.each(rowsOf(id))('$case ($origin: $source)', (row) => {
    const result = compare(row)
    if (row.origin === 'recalled') {
      if (typeof result !== 'object' || result.off > result.allowed) missed.push(row)
      return
    }
    if (typeof result !== 'object') {
      expect(result).toBe(row.expected)
      return
    }
    const { worked, off, allowed } = result
    const words = `${row.expected} printed, ${worked} worked, ± ${allowed} allowed`
    if (row.tolerance.misprint) {
      expect(off, words).toBeGreaterThan(allowed)
      return
    }
    const used = off / allowed
    if (used > (worst.get(id)?.used ?? -1)) worst.set(id, { used, row })
    // Half a digit is a bound in decimals; floats miss it by parts in 1e12.
    expect(off, words).toBeLessThanOrEqual(allowed * (1 + 1e-9) + 1e-12)
  })
})

describe('the tables', () => {
  test(`hold ${leastRows} rows or more, ${leastOutside} of them from documents and libraries`, () => {
    const outside = outsideRows.filter(
      ({ origin }) => origin === 'published' || origin === 'library',
    )
    expect(outsideRows.length).toBeGreaterThanOrEqual(leastRows)
    expect(outside.length).toBeGreaterThanOrEqual(leastOutside)
  })

  test.each(all)(`hold ${leastEach} rows or more that count for $id`, ({ id }) => {
    const counting = rowsOf(id).filter(({ origin }) => origin !== 'recalled')
    expect(counting.length).toBeGreaterThanOrEqual(leastEach)
  })

  test.each(ids)('name each row and each regime of %s once', (id) => {
    const names = rowsOf(id).map(({ case: name }) => name)
    const regimes = rowsOf(id).map(({ regime }) => regime)
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([])
    expect(regimes.filter((regime, at) => regimes.indexOf(regime) !== at)).toEqual([])
    expect(rowsOf(id).filter(({ source }) => source.trim() === '')).toEqual([])
  })

  test('name only calculators there are', () => {
    expect(all.map(({ id }) => id)).toEqual(expect.arrayContaining(ids))
  })
})

afterAll(() => {
  const counts = origins.map(
    (origin) => `${outsideRows.filter((row) => row.origin === origin).length} ${origin}`,
  )
  const lines = ids.map((id) => {
    const most = worst.get(id)
    const told = most
      ? `worst ${(most.used * 100).toFixed(0)} % of what is allowed, ${most.row.case}`
      : ''
    return `  ${id}: ${rowsOf(id).length} rows; ${told}`
  })
  lines.push(...missed.map((row) => `  recalled and missed: ${row.calculator}, ${row.case}`))
  process.stdout.write(`${outsideRows.length} rows: ${counts.join(', ')}\n${lines.join('\n')}\n`)
})
