/**
 * What each result means, as an equation, in all examples and outside rows: margins are what is allowed
 * less what is used, shares are parts of a whole. Each equation must have a case in which it counts.
 */
import { describe, expect, test } from 'vitest'
import type { ExampleValue } from '../../calculators/define.ts'
import { equations } from '../reference/equations.ts'
import { outsideRows } from '../reference/outside.ts'
import { all } from './all.ts'
import { worked } from './arithmetic.ts'
import { numberAt } from './paths.ts'
import { runExample, type Run } from './run-example.ts'

const within = 1e-9
const ids = [...new Set(equations.map(({ calculator }) => calculator))]

class Missing extends Error {}

describe.each(ids)('%s', (id) => {
  const calculator = all.find((one) => one.id === id)
  let runs: readonly Run[] | undefined
  const everyRun = (): readonly Run[] => {
    if (calculator === undefined) throw new Error(`there is no calculator ${id}`)
    const inputs: Readonly<Partial<Record<string, ExampleValue>>>[] = [
      ...calculator.examples.map((example) => example.inputs),
      ...outsideRows.filter((row) => row.calculator === id).map((row) => row.inputs),
    ]
    return (runs ??= inputs.map((one) =>
      runExample(calculator, { name: '', from: '', inputs: one, outputs: {} }),
    ))
  }

  test.each(equations.filter((one) => one.calculator === id))(
    '$result = $equals',
    ({ result, equals, when }) => {
      let counted = 0
      for (const done of everyRun()) {
        const given = (name: string): unknown => done.input[name] ?? done.output[name] ?? 'none'
        if (when.some(([name, text]) => String(given(name)) !== text)) continue
        const found = numberAt(done, result)
        try {
          const due = worked(equals, (name) => {
            const value = numberAt(done, name)
            if (value === undefined) throw new Missing(name)
            return value
          })
          if (found === undefined) continue
          counted++
          const words = `${due} is due, ${found} found`
          const size = Math.max(Math.abs(due), Math.abs(found))
          expect(Math.abs(found - due), words).toBeLessThanOrEqual(within * size + 1e-15)
        } catch (error) {
          if (!(error instanceof Missing)) throw error
        }
      }
      expect(counted, 'cases in which it counts').toBeGreaterThan(0)
    },
  )
})
