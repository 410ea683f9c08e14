/**
 * Every worked case of every calculator against the answer printed outside this kit.
 *
 * The tolerance is half a unit of the last printed digit, in the printed unit; a wider one is stated
 * in the case together with why. Standard sizes and counts must be met exactly. Tables are not compared
 * here.
 */
import { describe, expect, test } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { fromSI } from '../../src/quantity/index.ts'
import { all } from './all.ts'
import { printed, runExample } from './run-example.ts'

test('every calculator of the index is among those tested', () => {
  const tested = all.map(({ id }) => id)
  expect(tested).toEqual(expect.arrayContaining(Object.keys(calculators)))
})

describe.each(all)('$id', (calculator) => {
  test.each(calculator.examples)('$name ($from)', (example) => {
    const { output, findings } = runExample(calculator, example)

    for (const [name, text = ''] of Object.entries(example.outputs)) {
      const field = calculator.outputs[name]
      const actual = output[name]
      if (field?.type === 'text') {
        expect(actual, name).toBe(text)
      } else if (text === 'cannot tell') {
        expect(actual, name).toBeUndefined()
      } else {
        if (field?.type !== 'number')
          throw new Error(`${name} is not a number that can be compared`)
        if (typeof actual !== 'number')
          throw new Error(`${name}: ${text} expected, cannot tell given`)
        const { number, unit, half } = printed(text, field.of)
        const digits = field.exact ? 1e-9 * Math.abs(number) : half
        const tolerance = example.tolerance ? example.tolerance * Math.abs(number) : digits
        const worked = fromSI(actual, unit)
        const words = `${name}: ${text} printed, ${worked} ${unit} worked, ± ${tolerance} allowed`
        // Half a digit is a bound in decimals; floats miss it by parts in 1e12.
        expect(Math.abs(worked - number), words).toBeLessThanOrEqual(tolerance * (1 + 1e-9) + 1e-12)
      }
    }

    for (const [check, level] of Object.entries(example.findings ?? {}))
      expect(findings.find((finding) => finding.check === check)?.level, check).toBe(level)
  })
})
