/**
 * Linear least squares by normal equations: which coefficients of given columns fit a column best, and
 * how sure they are.
 *
 * In: rows of regressors and the values to fit, and how many degrees the data lost already (means
 * taken off). Out: coefficients, their standard deviations, residual and total sums of squares; or
 * undefined when the columns do not tell the coefficients apart or no degree of freedom is left.
 */
export interface Fit {
  readonly coefficients: readonly number[]
  readonly deviations: readonly number[]
  readonly residual: number
  readonly total: number
}

export function leastSquares(
  rows: readonly (readonly number[])[],
  values: readonly number[],
  taken = 0,
): Fit | undefined {
  const [first = []] = rows
  const size = first.length
  const degrees = rows.length - size - taken
  if (size === 0 || degrees < 1) return undefined
  // Columns of length one: seconds and squared metres differ by thousands.
  const scales = Array.from({ length: size }, (_, j) =>
    Math.hypot(...rows.map((row) => row[j] ?? 0)),
  )
  if (scales.some((scale) => !(scale > 0))) return undefined
  const at = (row: readonly number[], j: number) => (row[j] ?? 0) / (scales[j] ?? 1)
  const normal = scales.map((_, j) =>
    scales.map((_, k) => rows.reduce((sum, row) => sum + at(row, j) * at(row, k), 0)),
  )
  const inverse = invert(normal)
  if (inverse === undefined) return undefined
  const right = scales.map((_, j) =>
    rows.reduce((sum, row, i) => sum + at(row, j) * (values[i] ?? 0), 0),
  )
  const scaled = inverse.map((row) => row.reduce((sum, cell, k) => sum + cell * (right[k] ?? 0), 0))
  const residual = rows.reduce((sum, row, i) => {
    const fitted = scaled.reduce((part, x, j) => part + x * at(row, j), 0)
    return sum + ((values[i] ?? 0) - fitted) ** 2
  }, 0)
  const variance = residual / degrees
  return {
    coefficients: scaled.map((x, j) => x / (scales[j] ?? 1)),
    deviations: inverse.map(
      (row, j) => Math.sqrt(Math.max(variance * (row[j] ?? 0), 0)) / (scales[j] ?? 1),
    ),
    residual,
    total: values.reduce((sum, value) => sum + value ** 2, 0),
  }
}

/** Gauss and Jordan with pivots; undefined when a pivot is lost in rounding. */
function invert(
  matrix: readonly (readonly number[])[],
): readonly (readonly number[])[] | undefined {
  const size = matrix.length
  let work = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? 1 : 0))])
  for (let column = 0; column < size; column++) {
    const cell = (row: readonly number[] | undefined) => row?.[column] ?? 0
    let best = column
    for (let row = column; row < size; row++)
      if (Math.abs(cell(work[row])) > Math.abs(cell(work[best]))) best = row
    const pivotRow = work[best] ?? []
    const pivot = cell(pivotRow)
    if (!(Math.abs(pivot) > 1e-10)) return undefined
    const scaled = pivotRow.map((value) => value / pivot)
    const swapped = work.map((row, i) => (i === best ? (work[column] ?? row) : row))
    work = swapped.map((row, i) =>
      i === column ? scaled : row.map((value, j) => value - cell(row) * (scaled[j] ?? 0)),
    )
  }
  return work.map((row) => row.slice(size))
}
