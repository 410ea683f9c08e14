/**
 * Who says so: every check whose basis names a document stands in `tests/reference/bases.csv` with that
 * document and how its number was confirmed there: `read` in a public text, `known` from the public rule,
 * or `recalled`, which the basis must then say itself. Where each verdict changes is in `thresholds/`.
 */
import { describe, expect, test } from 'vitest'
import { readFileSync } from 'node:fs'
import { cells } from '../reference/outside.ts'
import { all } from './all.ts'

const columns = ['calculator', 'check', 'document', 'how', 'seen']
const ways = ['read', 'known', 'recalled']

const [header = '', ...lines] = readFileSync(
  new URL('../reference/bases.csv', import.meta.url),
  'utf8',
)
  .trimEnd()
  .split('\n')
const rows = lines.map((line) => {
  const [calculator = '', check = '', document = '', how = '', seen = ''] = cells(line)
  return { calculator, check, document, how, seen }
})

const cited = all.flatMap(({ id, checks }) =>
  Object.entries(checks)
    .filter(([, { basis }]) => /published:|recalled:/.test(basis))
    .map(([check, { basis }]) => ({ calculator: id, check, basis })),
)

test('the table has its columns and names each check once', () => {
  expect(cells(header)).toEqual(columns)
  const names = rows.map(({ calculator, check }) => `${calculator}.${check}`)
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([])
  expect(names).toEqual(
    expect.arrayContaining(cited.map(({ calculator, check }) => `${calculator}.${check}`)),
  )
  expect(names.length).toBe(cited.length)
})

describe.each(cited)('$calculator, $check', ({ calculator, check, basis }) => {
  const row = rows.find((one) => one.calculator === calculator && one.check === check)

  test('names the document that was confirmed, and says where it is only recalled', () => {
    expect(basis).toContain(row?.document ?? 'a row in tests/reference/bases.csv')
    expect(ways).toContain(row?.how)
    expect(row?.seen).not.toBe('')
    if (row?.how === 'recalled') expect(basis).toContain('recalled:')
    else expect(basis).toContain('published:')
    if (row?.seen.includes('recalled') === true) expect(basis).toContain('recalled')
  })
})
