/** A reader's own figures: what they move, and that taking them back gives the builder's again. */
import { describe, expect, it } from 'vitest'
import { override, workPublished } from '../../src/ledger/override.ts'
import { blockOf, numberOf, soundLedger } from './ledger-of.ts'

const notes = {
  a: 'It draws <Reading id="draw" value="3.0 A" with="meter" />.\n\n<Calc id="one" use="lamp" volts="12 V" amps={draw} wire="1 mm²" place="front" />\n\nTwice is {one.power * 2}.',
  b: 'import { one } from \'./a.mdx\'\n\n<Calc id="two" use="lamp" volts="6 V" amps={one.fuse} />\n\n<Calc id="cut" use="cut" pieces={[{ name: "out", length: "1 m" }, { length: "2 m" }]} />\n\nThat is {two.power}.',
}

describe('a reader’s figure', () => {
  it('moves everything that rests on it, in other notes too', async () => {
    const { published, calculators } = await soundLedger(notes)
    const yours = { published: workPublished(published, { 'a/one.amps': '12 A' }, calculators) }
    expect(
      [
        'a/draw',
        'a/one.amps',
        'a/one.power',
        'a/one.power * 2',
        'a/one.fuse',
        'b/two.amps',
        'b/two.power',
      ].map((id) => [id, numberOf({ published }, id).value, numberOf(yours, id).value]),
    ).toEqual([
      ['a/draw', 3, 3],
      ['a/one.amps', 3, 12],
      ['a/one.power', 36, 144],
      ['a/one.power * 2', 72, 288],
      ['a/one.fuse', 5, 20],
      ['b/two.amps', 5, 20],
      ['b/two.power', 30, 120],
    ])
    expect(
      ['a/one', 'b/two', 'b/cut'].map((id) => [
        blockOf({ published }, id).verdict,
        blockOf(yours, id).verdict,
      ]),
    ).toEqual([
      ['pass', 'stop'],
      ['pass', 'stop'],
      ['pass', 'pass'],
    ])
  })

  it('says why a block cannot tell, where a sum with it no longer fits', async () => {
    const { published, calculators } = await soundLedger({
      a: 'It draws <Reading id="draw" value="3.0 A" with="meter" />, then <Reading id="later" value="1.0 A" with="meter" />.\n\n<Calc id="one" use="lamp" volts="12 V" amps={draw * 1.2} />\n\n<Calc id="two" use="lamp" volts="12 V" amps={draw * (later / (draw - later))} />',
    })
    const said = (figures: Record<string, string>, id: string) =>
      blockOf({ published: workPublished(published, figures, calculators) }, id).findings.map(
        ({ level, text }) => [level, text],
      )
    expect(said({ 'a/draw': '90 A' }, 'a/one')[0]).toEqual([
      'unknown',
      'Cannot tell: Current: 108.0\u00a0A is above what “Current” can be; allowed: 0\u00a0A to 100\u00a0A.',
    ])
    expect(said({ 'a/later': '3.0 A' }, 'a/two')[0]).toEqual([
      'unknown',
      'Cannot tell: Current: a current is divided by zero.',
    ])
  })

  it('leaves the builder’s ledger as it was, and taken back gives the same', async () => {
    const { published, calculators } = await soundLedger(notes)
    const before = structuredClone(published)
    workPublished(
      published,
      { 'a/one.amps': '12 A', 'b/cut.pieces': [{ length: '3 m' }] },
      calculators,
    )
    expect(published).toEqual(before)
    expect(workPublished(published, {}, calculators)).toEqual(published)
  })

  it('counts as assumed, or as chosen where the choice is the builder’s', async () => {
    const { published, calculators } = await soundLedger(notes)
    const yours = {
      published: workPublished(
        published,
        { 'a/one.amps': '4 A', 'a/one.wire': '2 mm²' },
        calculators,
      ),
    }
    expect(
      ['a/one.amps', 'a/one.wire'].map((id) => {
        const { kind, firmness, because, source, instrument, rests, shown, expression } = numberOf(
          yours,
          id,
        )
        return { kind, firmness, because, source, instrument, rests, shown, expression }
      }),
    ).toEqual([
      {
        kind: 'assumed',
        firmness: 'assumed',
        because: 'your figure',
        source: null,
        instrument: null,
        rests: [],
        shown: '4\u00a0A',
        expression: undefined,
      },
      {
        kind: 'chosen',
        firmness: 'chosen',
        because: 'your figure',
        source: null,
        instrument: null,
        rests: [],
        shown: '2\u00a0mm²',
        expression: undefined,
      },
    ])
    expect(blockOf(yours, 'a/one').provisional).toBe(true)
  })

  it('may be a word, a list, or nothing where the field may be left out', async () => {
    const { published, calculators } = await soundLedger(notes)
    const yours = {
      published: workPublished(
        published,
        {
          'a/one.place': 'at the rear',
          'a/one.casing': 'plastic',
          'a/one.wire': '',
          'a/one.volts': ' ',
          'b/cut.pieces': [{ name: 'all', length: '3 m' }, { length: '1 ft' }, { length: '1 m' }],
        },
        calculators,
      ),
    }
    expect(blockOf(yours, 'a/one').inputs).toEqual({
      volts: 12,
      amps: 3,
      place: 'rear',
      casing: 'plastic',
    })
    expect(blockOf(yours, 'a/one').given).toMatchObject({
      volts: { type: 'number', id: 'a/one.volts', how: 'assumed-default' },
      place: { type: 'word', value: 'rear', how: 'literal' },
    })
    expect(numberOf(yours, 'b/cut.total').value).toBeCloseTo(4.3048, 12)
    expect(
      yours.published.numbers.filter(({ block }) => block === 'b/cut').map(({ id }) => id),
    ).toEqual([
      'b/cut.each.0.share',
      'b/cut.each.1.share',
      'b/cut.each.2.share',
      'b/cut.pieces.0.length',
      'b/cut.pieces.1.length',
      'b/cut.pieces.2.length',
      'b/cut.total',
    ])
  })

  it('that cannot be read gives “cannot tell”, never a number', async () => {
    const { published, calculators } = await soundLedger(notes)
    for (const typed of ['three', '3', '3 V', '1,5 A', '1e400 A', '500 A', '']) {
      const yours = { published: workPublished(published, { 'a/one.amps': typed }, calculators) }
      expect([
        typed,
        numberOf(yours, 'a/one.power').value,
        numberOf(yours, 'b/two.power').value,
        blockOf(yours, 'a/one').verdict,
      ]).toEqual([typed, null, null, 'unknown'])
    }
  })

  it('for a field or a block that is not there changes nothing', async () => {
    const { published, calculators } = await soundLedger(notes)
    expect(override(published, { 'a/one.nothing': '1 A', 'c/d.e': '1 A' }, calculators)).toEqual(
      published,
    )
  })
})
