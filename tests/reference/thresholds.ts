/**
 * The tables in `thresholds/`: where each verdict changes, one file a calculator.
 *
 * In: nothing. Out: rows. A row says that `check` goes from one level to another when `quantity` passes
 * `limit`: the number that the calculator's basis names (a standard, a sheet, common practice), written
 * here a second time so that it cannot be changed by a slip. `case` is one of the calculator's examples,
 * in which `vary` is moved from `from` to `to`. A quantity is arithmetic on the names of inputs and
 * results, SI values: `running / contactRating`; `joints.0.drop` is the first row's.
 */
import { readdirSync } from 'node:fs'
import { rowsOf } from './csv.ts'

export interface ThresholdRow {
  readonly calculator: string
  readonly check: string
  readonly levels: readonly [from: string, to: string]
  readonly quantity: string
  readonly limit: string
  readonly case: string
  readonly vary: string
  readonly from: string
  readonly to: string
  /** Level at the limit itself where that is not the milder of the two: `under 50 V`. */
  readonly at: string | undefined
}

const folder = new URL('./thresholds/', import.meta.url)

export const thresholdRows: readonly ThresholdRow[] = readdirSync(folder)
  .filter((file) => file.endsWith('.csv'))
  .sort()
  .flatMap((file) =>
    rowsOf(`thresholds/${file}`).map((row) => {
      const cell = (name: string): string => {
        const text = row[name]
        if (text === undefined || text === '') throw new Error(`${file}: ${name} is empty`)
        return text
      }
      const [before = '', after = ''] = cell('levels').split(' > ')
      return {
        calculator: file.replace('.csv', ''),
        check: cell('check'),
        levels: [before, after] as const,
        quantity: cell('quantity'),
        limit: cell('limit'),
        case: cell('case'),
        vary: cell('vary'),
        from: cell('from'),
        to: cell('to'),
        at: row.at === '' ? undefined : row.at,
      }
    }),
  )
