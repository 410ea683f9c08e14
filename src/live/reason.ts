/** Why something cannot be worked on a page, in a reader's words. Every page loads this file, so it is short. */
import { words } from '../words/words.ts'

/** A part of the script that did not come is not asked for again by a browser until the page is. */
export function reasonOf(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error)
  return /import/i.test(text) && /module/i.test(text)
    ? words`a part of the page could not be fetched; load it again when the network is back`
    : text
}
