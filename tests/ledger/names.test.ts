/** What may be a name: the text of an `id`, and why it is refused. */
import { describe, expect, it } from 'vitest'
import { readName } from '../../src/ledger/names.ts'

describe('a name', () => {
  it.each([
    ['pumpDraw', 'pumpDraw'],
    ['  pumpDraw ', 'pumpDraw'],
    ['$_1', '$_1'],
    ['größe', 'größe'],
    ['Δt', 'Δt'],
    // NFKC: a ligature and full-width letters are the letters they show; a combining accent joins.
    ['ﬁll', 'fill'],
    ['ｐｕｍｐ', 'pump'],
    ['cafe\u0301', 'caf\u00e9'],
    ['µ', 'μ'],
  ])('%s is %s', (typed, name) => {
    expect(readName(typed)).toEqual({ name })
  })

  it.each([
    ['', { why: 'an id must not be empty' }],
    [
      '12v-battery',
      {
        why: '`12v-battery` begins with a digit; in `{12v-battery}` it would be read as a number',
        hint: 'battery12v',
      },
    ],
    ['12', { why: '`12` begins with a digit; in `{12}` it would be read as a number' }],
    [
      'pump-draw',
      {
        why: '`pump-draw` would be read as a sum in `{pump-draw}`; a name is letters and digits without spaces or dashes',
        hint: 'pumpDraw',
      },
    ],
    [
      'pump.flow',
      {
        why: '`pump.flow` would be read as a sum in `{pump.flow}`; a name is letters and digits without spaces or dashes',
        hint: 'pumpFlow',
      },
    ],
    [
      'class',
      { why: '`class` is a reserved word of the language behind the braces', hint: 'classValue' },
    ],
    [
      'default',
      {
        why: '`default` is a reserved word of the language behind the braces',
        hint: 'defaultValue',
      },
    ],
    [
      'NaN',
      { why: '`NaN` is a reserved word of the language behind the braces', hint: 'NaNValue' },
    ],
  ])('`%s` is refused, with the reason', (typed, refused) => {
    expect(readName(typed)).toEqual(refused)
  })

  it.each([
    'frontmatter',
    'props',
    'components',
    'Content',
    'url',
    'file',
    'headings',
    'getHeadings',
  ])('`%s` is what every note already has', (name) => {
    expect(readName(name)).toEqual({
      why: `\`${name}\` already means something in every note`,
      hint: `${name}Value`,
    })
  })
})
