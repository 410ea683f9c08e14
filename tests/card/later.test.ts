/** What a story says of later numbers: only what really moved, and only what moved it. */
import { describe, expect, it } from 'vitest'
import { contextOf, originHtml } from '../../src/card/index.ts'
import type { Folder } from '../ledger/ledger-of.ts'
import { note, numberOf, soundLedger } from '../ledger/ledger-of.ts'

const old = note(
  'Say <Assumed id="guess" value="2 A" because="a first guess" /> and <Assumed id="rest" value="10 V" because="a tired battery" />.\n\n<Calc id="c" use="lamp" volts={rest} amps={guess} />\n\nThat is {guess * 2}, and {c.volts * 2}.',
  { title: 'Old', date: '2026-01-10' },
)
const later = note(
  'import { guess } from \'./old.mdx\'\n\nIt drew <Reading id="really" value="4.0 A" with="meter" replaces={guess} />.\n\n{guess * 3}',
  { title: 'Later', date: '2026-03-14' },
)
const reading = (replaced: string, value: string, date = '2026-04-01'): string =>
  note(
    `import { ${replaced} } from './old.mdx'\n\nIt had <Reading id="third" value="${value}" with="a meter" replaces={${replaced}} />.`,
    { title: 'Third', date },
  )

async function stories(notes: Folder, ids: readonly string[]): Promise<string[]> {
  const ledger = await soundLedger(notes)
  const { published, calculators } = ledger
  const ctx = contextOf(published, { base: '/', page: 'old', calculators })
  return ids.map((id) => {
    const words = originHtml(numberOf(ledger, id), ctx).replace(/<[^>]*>/g, '')
    return /(?:Now|Was|Replaced) .*$/.exec(words.replaceAll('\u00a0', ' '))?.[0] ?? ''
  })
}

describe('a later number', () => {
  const changed = 'changed 14 March 2026 in Later: really 4.0 A.'

  it('changes what it replaces and what is moved by that, and nothing beside it', async () => {
    const ids = 'guess, c.amps, c.power, guess * 2, c.fuse, rest, c.volts, c.volts * 2'.split(', ')
    expect(
      await stories(
        { old, later },
        ids.map((id) => `old/${id}`),
      ),
    ).toEqual([
      `Now 4 A, ${changed}`,
      `Was 2 A when this was written, ${changed}`,
      `Was 20 W when this was written, ${changed}`,
      `Was 4.0 A when this was written, ${changed}`,
      // 5 A is the next size above both; the voltage has nothing to do with it.
      '',
      '',
      '',
      '',
    ])
  })

  it('changes nothing in a note that was written with it', async () => {
    expect(await stories({ old, later }, ['later/guess * 3'])).toEqual([''])
  })

  it('that comes to the same has only taken the place', async () => {
    const same = reading('rest', '10 V')
    expect(await stories({ old, same }, ['old/rest', 'old/c.power'])).toEqual([
      'Replaced 1 April 2026 in Third: third 10 V.',
      '',
    ])
  })

  it('is named beside another only where each moved the number by itself', async () => {
    const third = reading('rest', '12 V')
    const ids = ['old/c.power', 'old/c.volts * 2', 'old/guess * 2']
    expect(await stories({ old, later, third }, ids)).toEqual([
      'Was 20 W when this was written, changed 14 March 2026 in Later: really 4.0 A; changed 1 April 2026 in Third: third 12 V.',
      'Was 20 V when this was written, changed 1 April 2026 in Third: third 12 V.',
      `Was 4.0 A when this was written, ${changed}`,
    ])
  })

  it('that is replaced in its turn is named with the one after it', async () => {
    const third = note(
      'import { really } from \'./later.mdx\'\n\n<Reading id="third" value="6.0 A" with="meter" replaces={really} />',
      { title: 'Third', date: '2026-04-01' },
    )
    expect(await stories({ old, later, third }, ['old/guess * 2'])).toEqual([
      'Was 4.0 A when this was written, changed 14 March 2026 in Later: really 4.0 A; changed 1 April 2026 in Third: third 6.0 A.',
    ])
  })
})

it('a sum is written with the figures that it was worked with', async () => {
  const ledger = await soundLedger({ old, later })
  const { published, calculators } = ledger
  const ctx = contextOf(published, { base: '/', page: 'old', calculators })
  expect(originHtml(numberOf(ledger, 'old/guess * 2'), ctx).replaceAll('\u00a0', ' ')).toContain(
    '4.0 A × 2 = 8.0 A.',
  )
})

it('a comparison does not contradict the figures beside it', async () => {
  const body = (value: string) =>
    `It draws <Assumed id="guess" value="1.5 A" because="so" /> and <Rated id="at" value="11.4 V" source="sheet" at="p. 1" />.\n\n<Calc id="c" use="lamp" volts={at} amps={guess} />\n\n<Reading id="seen" value="${value}" with="a wattmeter" checks={c.power} />`
  const words = async (value: string): Promise<string> => {
    const ledger = await soundLedger({ n: body(value) })
    const { published, calculators } = ledger
    const ctx = contextOf(published, { base: '/', page: 'n', calculators })
    const html = originHtml(numberOf(ledger, 'n/seen'), ctx).replace(/<[^>]*>/g, '')
    return /Compared.*$/.exec(html.replaceAll('\u00a0', ' '))?.[0] ?? ''
  }
  // 1.5 A × 11.4 V = 17.10 W, which two figures print as 17 W.
  expect(await words('17.4 W')).toBe(
    'Compared with the prediction: 1.8 % above Power 17 W (17.10 W before rounding).',
  )
  expect(await words('34.2 W')).toBe(
    'Compared with the prediction: 100 % above Power 17 W (17.10 W before rounding).',
  )
  expect(await words('170 W')).toBe(
    'Compared with the prediction: 894 % above Power 17 W (17.10 W before rounding).',
  )
})
