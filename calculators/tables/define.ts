/**
 * A standard table as plain data: shown to readers as it stands, and read by calculators, so that no
 * figure of a standard is written down twice.
 *
 * In: nothing. Out: rows of cells, one for each column, numbers in the column's unit (not SI, as
 * printed), null where the standard leaves the cell empty.
 */
import type { Source } from '../define.ts'

export interface Column {
  readonly label: string
  /** As the kit writes units; '' for plain numbers and words. */
  readonly unit: string
}

export interface Table {
  readonly id: string
  readonly title: string
  /** Title, edition and place of the standard. */
  readonly source: string
  readonly trust: Source['trust']
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly (number | string | null)[])[]
  /** What holds for all of it, or which cells are less sure. */
  readonly note?: string
}
