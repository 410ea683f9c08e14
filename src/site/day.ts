/** The last day that the ledger knows of: what a copy of the site is as old as. There is no clock in it. */
import type { Published } from '../ledger/published.ts'

export function lastDay({ notes, numbers }: Published): string {
  let last = ''
  for (const { date, changed = '' } of notes) {
    if (date > last) last = date
    if (changed > last) last = changed
  }
  for (const { date } of numbers) if (date > last) last = date
  return last
}
