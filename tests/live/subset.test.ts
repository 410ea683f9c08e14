/** Only what a page's figures stand on is worked in the browser. */
import { describe, expect, it } from 'vitest'
import { merged, movedIds, subsetFor } from '../../src/live/subset.ts'
import { published } from '../card/fixture.ts'

describe('subsetFor', () => {
  it('keeps the blocks that are asked for and those they rest on, and every root', () => {
    const part = subsetFor(published, ['keeping-cool/pump'])
    expect(part.blocks.map(({ id }) => id)).toEqual(['keeping-cool/pump'])
    const ids = part.numbers.map(({ id }) => id)
    expect(ids).toContain('hill-climb/share')
    expect(ids).toContain('keeping-cool/pump.flow')
    expect(ids).not.toContain('keeping-cool/hot.flow')
  })
  it('follows a comparison to the prediction', () => {
    const part = subsetFor(published, ['keeping-cool/bucket'])
    expect(part.blocks.map(({ id }) => id)).toEqual(['keeping-cool/pump'])
  })
})

describe('merged', () => {
  it('changes nothing when nothing was changed', () => {
    const part = subsetFor(published, ['keeping-cool/pump'])
    const whole = merged(published, part)
    expect(new Set(whole.numbers.map(({ id }) => id))).toEqual(
      new Set(published.numbers.map(({ id }) => id)),
    )
    expect(movedIds(published, whole).size).toBe(0)
  })
})
