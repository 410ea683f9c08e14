/**
 * A calculator tried with other inputs. In: the calculator and inputs in SI. Out: its results and
 * findings. A calculator that throws or gives no finite number "cannot tell" there; nothing is reported,
 * since nothing of a trial is published as the block's own.
 */
import type { Calculator, Finding, Level, OutputValue, Say } from '../../../calculators/define.ts'
import type { Inputs } from './places.ts'

export type Results = Readonly<Record<string, OutputValue>>
type Cell = number | string | undefined

const known = (cell: Cell): Cell =>
  typeof cell === 'number' && !Number.isFinite(cell) ? undefined : cell

export function resultsAt(calculator: Calculator, inputs: Inputs): Results {
  try {
    return Object.fromEntries(
      Object.entries(calculator.compute(inputs)).map(([name, value]) => [
        name,
        typeof value === 'object'
          ? value.map((row) =>
              Object.fromEntries(Object.entries(row).map(([key, cell]) => [key, known(cell)])),
            )
          : known(value),
      ]),
    )
  } catch {
    return {}
  }
}

/** `flow`, or `losses.0.drop` for a cell of a table. */
export function resultIn(results: Results, path: string): number | undefined {
  const [key = '', index, column = ''] = path.split('.')
  const value = results[key]
  const cell =
    index === undefined
      ? value
      : typeof value === 'object'
        ? value[Number(index)]?.[column]
        : undefined
  return typeof cell === 'number' ? cell : undefined
}

export function findingsAt(calculator: Calculator, inputs: Inputs, say: Say): readonly Finding[] {
  try {
    return calculator.findings(inputs, resultsAt(calculator, inputs), say)
  } catch {
    return []
  }
}

const order: readonly Level[] = ['pass', 'watch', 'unknown', 'stop']

export const isWorse = (level: Level, before: Level): boolean =>
  order.indexOf(level) > order.indexOf(before)
