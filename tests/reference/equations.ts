/**
 * The tables in `equations/`: what a result means, one file a calculator.
 *
 * In: nothing. Out: rows. `result` equals `equals` in every example and outside row of the calculator in
 * which all named values are there and `when` holds (`phases=three`; empty: always). Values are SI. The
 * equations are definitions (what is left is what is allowed less what is used) and the formulas of the
 * calculator's sources, written here a second time.
 */
import { readdirSync } from 'node:fs'
import { rowsOf } from './csv.ts'

export interface Equation {
  readonly calculator: string
  readonly result: string
  readonly equals: string
  readonly when: readonly (readonly [name: string, text: string])[]
}

const folder = new URL('./equations/', import.meta.url)

export const equations: readonly Equation[] = readdirSync(folder)
  .filter((file) => file.endsWith('.csv'))
  .sort()
  .flatMap((file) =>
    rowsOf(`equations/${file}`).map(({ result = '', equals = '', when = '' }) => ({
      calculator: file.replace('.csv', ''),
      result,
      equals,
      when: when
        .split(' | ')
        .filter((part) => part !== '')
        .map((part) => {
          const [name = '', text = ''] = part.split('=')
          return [name, text] as const
        }),
    })),
  )
