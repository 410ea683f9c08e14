/**
 * A calculator run the way a note runs it: texts with units in, SI numbers through `compute`.
 *
 * In: a calculator and an example, read as its page reads it. Out: what `compute` sees and gives,
 * findings, working. An example that cannot be read throws: then it is wrong, not the calculator.
 */
import type {
  Calculator,
  Example,
  Finding,
  InputValue,
  NumberField,
  OutputValue,
} from '../../calculators/define.ts'
import { exampleInputs } from '../../src/ledger/example.ts'
import { rangeSlip } from '../../src/ledger/range.ts'
import { say } from '../../src/ledger/say.ts'

export { printed } from '../../src/ledger/example.ts'
export { say }

export interface Run {
  readonly input: Readonly<Record<string, InputValue>>
  readonly output: Readonly<Record<string, OutputValue>>
  readonly findings: readonly Finding[]
  readonly working: readonly string[]
}

export function runExample(calculator: Calculator, example: Example): Run {
  return run(calculator, exampleInputs(calculator, example))
}

export function run(calculator: Calculator, input: Run['input']): Run {
  const output = calculator.compute(input)
  const findings = calculator.findings(input, output, say)
  return { input, output, findings, working: calculator.working(input, output, say) }
}

export const inHardRange = (field: NumberField, value: number): boolean =>
  rangeSlip(field, value) === undefined
