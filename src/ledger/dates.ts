/** Calendar dates are text everywhere. In: a text. Out: whether it is a day that there is. */
import { words } from '../words/words.ts'

export function isCalendarDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []
  if (year === undefined) return false
  const days = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate()
  return Number(month) >= 1 && Number(month) <= 12 && Number(day) >= 1 && Number(day) <= days
}

export const howDatesAreWritten = words`a date is written YYYY-MM-DD, such as 2026-03-14`
