/** Verdicts, and when a stop may be published. */
import { describe, expect, it } from 'vitest'
import { verdictOf, weakest } from '../../src/ledger/judge.ts'
import { blockOf, ledgerOf, line } from './ledger-of.ts'

describe('the verdict', () => {
  it.each([
    [[], 'unknown'],
    [['pass'], 'pass'],
    [['pass', 'watch'], 'watch'],
    [['watch', 'unknown', 'pass'], 'unknown'],
    [['unknown', 'stop', 'watch'], 'stop'],
  ] as const)('of %j is %s', (levels, verdict) => {
    expect(verdictOf(levels.map((level) => ({ level })))).toBe(verdict)
  })
})

describe('the weakest kind', () => {
  it.each([
    [[], 'reading'],
    [['reading', 'rated'], 'rated'],
    [['rated', 'chosen'], 'chosen'],
    [['chosen', 'assumed', 'reading'], 'assumed'],
  ] as const)('of %j is %s', (kinds, kind) => {
    expect(weakest(kinds)).toBe(kind)
  })
})

describe('a stop', () => {
  const lamp = (inputs: string) => ledgerOf({ n: `<Calc id="c" use="lamp" ${inputs} />` })
  const seen = async (inputs: string) => {
    const ledger = await lamp(inputs)
    const { verdict, accepted } = blockOf(ledger, 'n/c')
    return { verdict, accepted, problems: ledger.problems.map(line) }
  }

  it('fails without a reason, with what is wrong and what to do', async () => {
    expect(await seen('amps="10 A" volts="12 V"')).toEqual({
      verdict: 'stop',
      accepted: null,
      problems: [
        'notes/n.mdx:7:1 error stop: `c` is a stop: It takes 120 W. | hint: change what it rests on, or publish it with your reason: `accept="…"`',
      ],
    })
  })

  it('is published with the builder’s reason, and stays a stop', async () => {
    expect(await seen('amps="10 A" volts="12 V" accept="only for an hour"')).toEqual({
      verdict: 'stop',
      accepted: 'only for an hour',
      problems: [],
    })
  })

  it('that nobody may accept fails all the same', async () => {
    const { verdict, problems } = await seen('amps="0.1 A" volts="120 V" accept="I know"')
    expect([verdict, problems]).toEqual([
      'stop',
      [
        'notes/n.mdx:7:1 error stop-nobody-may-accept: `c` is a stop that no reason covers: It stands at 120 V.',
        'notes/n.mdx:7:38 warning unusual: `volts`: `120 V` is unusual for “Voltage”: it is mostly 5 V to 30 V',
      ],
    ])
  })

  it('that is no longer there leaves the reason behind, which is warned of', async () => {
    expect(await seen('amps="1 A" volts="12 V" accept="only for an hour"')).toEqual({
      verdict: 'pass',
      accepted: 'only for an hour',
      problems: [
        'notes/n.mdx:7:1 warning nothing-to-accept: `c` accepts a stop, and there is none | hint: take the `accept` out, so that a later stop is seen',
      ],
    })
  })

  it('with an empty reason is not accepted', async () => {
    const { accepted, problems } = await seen('amps="10 A" volts="12 V" accept=" "')
    expect([accepted, problems.map((text) => text.split(':').slice(3, 4))]).toEqual([
      null,
      [[' `c` is a stop'], [' `accept` needs the reason']],
    ])
  })
})

describe('a finding and the hazards', () => {
  it('stand in the order of the checks, with their basis; more hazards come with the numbers', async () => {
    const at = async (volts: string) => {
      const { findings, hazards } = blockOf(
        await ledgerOf({ n: `<Calc id="c" use="lamp" amps="0.5 A" volts="${volts}" />` }),
        'n/c',
      )
      return { findings, hazards }
    }
    expect(await at('12 V')).toEqual({
      findings: [
        {
          check: 'power',
          level: 'pass',
          text: 'It takes 6.00\u00a0W.',
          threshold: 'above 50 W (watch), above 60 W (stop)',
          basis: 'common practice',
        },
        {
          check: 'volts',
          level: 'pass',
          text: 'It stands at 12.0\u00a0V.',
          threshold: 'above 100 V (stop)',
          basis: 'common practice',
        },
      ],
      hazards: ['wiring-fire'],
    })
    expect((await at('61 V')).hazards).toEqual(['wiring-fire', 'high-voltage'])
  })
})
