/**
 * Values of a run by name: `flow`, or `cells.0.rest` for a cell of the first row. In: a run's inputs
 * and results. Out: the number there, or the inputs with one number put in place.
 */
import type { InputValue } from '../../calculators/define.ts'
import type { Run } from './run-example.ts'

export type Input = Readonly<Record<string, InputValue>>

/** Undefined where nothing is given or nothing can be told. */
export function numberAt({ input, output }: Run, path: string): number | undefined {
  const [name = '', row, column = ''] = path.split('.')
  if (!(name in input) && !(name in output)) throw new Error(`there is no ${name}`)
  const found = name in input ? input[name] : output[name]
  const value = typeof found === 'object' ? found[Number(row)]?.[column] : found
  return typeof value === 'number' ? value : undefined
}

export function withNumber(input: Input, path: string, value: number): Input {
  const [name = '', row, column] = path.split('.')
  const before = input[name]
  if (row === undefined || column === undefined) return { ...input, [name]: value }
  if (typeof before !== 'object') throw new Error(`${name} is not a list`)
  const rows = before.map((cells, at) =>
    at === Number(row) ? { ...cells, [column]: value } : cells,
  )
  return { ...input, [name]: rows }
}
