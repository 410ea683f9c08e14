/**
 * Writes a count or a stamped rating as it is: `36`, `7.5 A`, not `36.0` or `7.50 A`.
 *
 * In: a value in its SI unit, which must be the unit shown. Out: text; what is neither a count nor a
 * rating (more than four figures) is rounded to three like any other number.
 */
import type { Say } from './define.ts'

export function exactly(say: Say, value: number | undefined, unit = ''): string {
  const figures = String(value).replace('.', '').length
  return say(value, unit, figures > 4 ? 3 : figures)
}
