/** The warnings of a comparison are those of what was measured. */
import { expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { exampleInputs } from '../../src/ledger/example.ts'

it.each([
  ['pack', false],
  ['radiator', true],
  ['loop', true],
  ['nothing', true],
])('warns of hot coolant when working back %s: %s', async (back, warns) => {
  const calculator = await calculators['prediction-check']?.()
  if (calculator === undefined) throw new Error('there is no such calculator')
  const inputs = exampleInputs(calculator, {
    name: 'a comparison',
    from: 'hand',
    inputs: { predicted: '1', measured: '1', back },
    outputs: {},
  })
  const more = calculator.moreHazards?.(inputs, calculator.compute(inputs)) ?? []
  const shown: readonly string[] = [...calculator.hazards, ...more]
  expect(shown.includes('hot-coolant')).toBe(warns)
  expect(shown).toContain('moving-vehicle')
})
