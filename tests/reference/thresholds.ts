/**
 * The tables in `thresholds/`: where each verdict changes, one file a calculator.
 *
 * In: nothing. Out: rows. A row says that `check` goes from one level to another when `quantity` passes
 * `limit`: the number that the calculator's basis names (a standard, a sheet, common practice), written
 * here a second time so that it cannot be changed by a slip. `case` is one of the calculator's examples,
 * in which `vary` is moved from `from` to `to`, other inputs being put in by `with`. A quantity is arithmetic on the names of inputs and
 * results, SI values: `running / contactRating`; `joints.0.drop` is the first row's.
 *
 * Which document says so, and how that was confirmed, is one row a check in `bases.csv`.
 */
import { readdirSync, readFileSync } from 'node:fs'
import type { ExampleValue } from '../../calculators/define.ts'
import { cells, inputsOf } from './outside.ts'

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
  /** What is given otherwise than in the case. */
  readonly inputs: Readonly<Record<string, ExampleValue>>
}

const folder = new URL('./thresholds/', import.meta.url)

function rowsIn(file: string): readonly ThresholdRow[] {
  const [header = '', ...lines] = readFileSync(new URL(file, folder), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
  const names = cells(header)
  return lines.map((line) => {
    const texts = cells(line)
    const cell = (name: string): string => texts[names.indexOf(name)] ?? ''
    const needed = (name: string): string => {
      if (cell(name) === '') throw new Error(`${file}: ${name} is empty: ${line}`)
      return cell(name)
    }
    const [before = '', after = ''] = needed('levels').split(' > ')
    return {
      calculator: file.replace('.csv', ''),
      check: needed('check'),
      levels: [before, after],
      quantity: needed('quantity'),
      limit: needed('limit'),
      case: needed('case'),
      vary: needed('vary'),
      from: needed('from'),
      to: needed('to'),
      at: cell('at') === '' ? undefined : cell('at'),
      inputs: cell('with') === '' ? {} : inputsOf(cell('with')),
    }
  })
}

export const thresholdRows: readonly ThresholdRow[] = readdirSync(folder)
  .filter((file) => file.endsWith('.csv'))
  .sort()
  .flatMap(rowsIn)
