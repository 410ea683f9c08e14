/** The ledger as text: what `numbers.json` holds. */
import { describe, expect, it } from 'vitest'
import { readRecord, recordText } from '../../src/ledger/record.ts'
import { ledgerOf, soundLedger } from './ledger-of.ts'

const notes = {
  b: 'It draws <Reading id="draw" value="3.0 A" with="meter" />, {draw * 2}.\n\n<Calc id="c" use="lamp" amps={draw} wire="18 AWG" />',
  a: 'import { draw } from \'./b.mdx\'\n\n<Calc id="cut" use="cut" pieces={[{ name: "</script>", length: "1 m" }, { length: "2 m" }]} />\n\nOf {draw}.',
}

describe('the record', () => {
  it('reads back to the same ledger', async () => {
    const { published } = await soundLedger(notes)
    expect(readRecord(recordText(published))).toEqual(published)
  })

  it('is the same text each time, and whatever the order the notes are read in', async () => {
    const one = recordText((await soundLedger(notes)).published)
    const two = recordText((await soundLedger({ a: notes.a, b: notes.b })).published)
    expect(two).toBe(one)
  })

  it('has one number and one block a line, sorted by id', async () => {
    const text = recordText((await soundLedger(notes)).published)
    const ids = text.split('\n').flatMap((row) => /^\{"id":"([^"]+)"/.exec(row)?.[1] ?? [])
    expect(ids).toEqual([
      'a/cut.each.0.share',
      'a/cut.each.1.share',
      'a/cut.pieces.0.length',
      'a/cut.pieces.1.length',
      'a/cut.total',
      'b/c.amps',
      'b/c.fuse',
      'b/c.power',
      'b/c.volts',
      'b/c.wire',
      'b/draw',
      'b/draw * 2',
      'a/cut',
      'b/c',
    ])
  })

  it('holds nothing of the machine or the day', async () => {
    const text = recordText((await soundLedger(notes)).published)
    expect(text).not.toMatch(/\/tmp|\/home|\/root|\\\\|[A-Z]:\\\\/)
    expect(text).not.toContain(new Date().toISOString().slice(0, 10))
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/)
  })

  it('writes what cannot be told as null', async () => {
    const text = recordText(
      (await ledgerOf({ n: 'So <Chosen id="a" value="1 flurb" because="so" /> it is.' })).published,
    )
    expect(text).toContain('"value":null')
  })

  it.each([
    '',
    '{',
    '[]',
    'null',
    '{"format":2}',
    '{"format":1,"notes":[],"numbers":[],"blocks":[]}',
    '{"format":1,"site":{},"notes":{},"numbers":[],"blocks":[]}',
  ])('does not take `%s` for one', (text) => {
    expect(readRecord(text)).toBeUndefined()
  })
})
