/** Calendar dates are text everywhere. In: a text. Out: whether it is a day that there is. */
import { words } from '../words/words.ts'

export function isCalendarDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []
  if (year === undefined) return false
  const days = daysIn(Number(year), Number(month))
  return Number(month) >= 1 && Number(month) <= 12 && Number(day) >= 1 && Number(day) <= days
}

const daysIn = (year: number, month: number): number =>
  new Date(Date.UTC(year, month, 0)).getUTCDate()

const howDatesAreWritten = words`a date is written YYYY-MM-DD, such as 2026-03-14`

/** Of a text that is no date: what is wrong with it. */
export function whyNoDate(text: string): string {
  const [, year, month] = /^(\d{4})-(\d{2})-\d{2}$/.exec(text) ?? []
  if (year === undefined || month === undefined) return howDatesAreWritten
  return Number(month) >= 1 && Number(month) <= 12
    ? words`there is no such day: ${`${year}-${month}`} has ${daysIn(Number(year), Number(month))} days`
    : words`there is no such month: 01 to 12 are written in the middle, as in 2026-03-14`
}
