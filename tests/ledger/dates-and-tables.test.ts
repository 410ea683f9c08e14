/** Days that there are not, and attributes that a table of numbers cannot have. */
import { expect, it } from 'vitest'
import { isCalendarDate } from '../../src/ledger/dates.ts'
import { problemsOf } from './ledger-of.ts'

it.each([
  ['2024-02-29', true],
  ['2026-02-29', false],
  ['2026-99-99', false],
  ['2026-00-10', false],
  ['2026-04-31', false],
  ['2026-12-31', true],
  ['26-12-31', false],
])('%s', (text, there) => {
  expect(isCalendarDate(text)).toBe(there)
})

it('a day that there is not, as the day of a reading', async () => {
  const body = 'So <Reading id="a" value="1 A" with="a borrowed meter" on="2026-02-30" /> it is.'
  expect(await problemsOf({ n: body })).toEqual([
    'notes/n.mdx:7:56 error bad-date: `on="2026-02-30"` is not a date | hint: there is no such day: 2026-02 has 28 days',
  ])
})

it('attributes of one number on a table of them', async () => {
  const table = '\n\n| name | value |\n| --- | --- |\n| b | 3 A |\n\n</Reading>'
  const body = `<Reading id="a" with="a borrowed meter" plusMinus="1 A">${table}`
  const hint =
    'hint: give it in the table (columns `name`, `value`, `±`), or write that number as an element of its own'
  expect(await problemsOf({ n: body })).toEqual([
    `notes/n.mdx:7:10 error not-with-a-table: \`id\` is of one number, and this <Reading> holds a table of them | ${hint}`,
    `notes/n.mdx:7:41 error not-with-a-table: \`plusMinus\` is of one number, and this <Reading> holds a table of them | ${hint}`,
  ])
})
