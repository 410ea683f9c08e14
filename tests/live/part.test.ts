/** Only what a page's figures stand on is fetched and worked in the browser. */
import { describe, expect, it } from 'vitest'
import { work } from '../../src/ledger/work.ts'
import { partOf } from '../../src/site/part.ts'
import { calculators, published } from '../card/fixture.ts'

describe('partOf', () => {
  const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id)

  it('keeps the numbers and blocks of the note and what they rest on, of other notes only that', () => {
    const part = partOf(published, 'keeping-cool', [])
    const own = published.numbers.filter(({ note }) => note === 'keeping-cool')
    expect(ids(part.numbers)).toEqual(expect.arrayContaining(ids(own)))
    expect(ids(part.numbers)).toContain('hill-climb/share')
    expect(ids(part.blocks)).toEqual(ids(published.blocks).sort())
  })
  it('leaves out what the page does not stand on', () => {
    const part = partOf(published, 'hill-climb', [])
    expect(part.blocks).toEqual([])
    expect(ids(part.numbers).filter((id) => id.startsWith('keeping-cool/'))).toEqual([])
    expect(part.notes.map(({ slug }) => slug)).toEqual(['hill-climb'])
  })
  it('brings the block of a number that the page shows', () => {
    const part = partOf(published, 'hill-climb', ['keeping-cool/pump.flow'])
    expect(ids(part.blocks)).toEqual(['keeping-cool/pump'])
    expect(ids(part.numbers)).toContain('keeping-cool/pump.rise')
    expect(ids(part.numbers)).not.toContain('keeping-cool/hot.flow')
  })
  it('follows a comparison to the prediction', () => {
    const part = partOf(published, 'hill-climb', ['keeping-cool/bucket'])
    expect(ids(part.blocks)).toEqual(['keeping-cool/pump'])
  })
  it('works alone as it does within the whole', () => {
    const part = partOf(published, 'hill-climb', ['keeping-cool/pump.flow'])
    const whole = work(published, calculators).published
    const alone = work(part, calculators).published
    const kept = new Set(ids(alone.numbers))
    expect(kept.size).toBeGreaterThan(4)
    const within = { ...whole, numbers: whole.numbers.filter(({ id }) => kept.has(id)) }
    expect(alone.numbers).toEqual(within.numbers)
  })
})
