/** What the page was handed, read once. */
import { readPageFigures, type PageFigures } from '../card/page-figures.ts'
import { edition, handedText } from './handed.ts'
import { words } from '../words/words.ts'

let read: PageFigures | undefined

/** Rejected, with the reason in a reader's words, where there is nothing to work with. */
export async function pageFigures(): Promise<PageFigures> {
  if (read !== undefined) return read
  if (edition() === undefined) throw new Error(words`this page has no figures to work with`)
  const text = await handedText().catch((error: unknown) => {
    throw new Error(words`its figures could not be fetched`, { cause: error })
  })
  const figures = readPageFigures(text)
  if (figures === undefined) throw new Error(words`its figures could not be read`)
  if (figures.edition !== edition())
    throw new Error(words`the notes have changed since it was opened; load it again`)
  read = figures
  return figures
}

/**
 * Whether a figure of this id that the page does not know is gone from its note. Of other notes a page
 * has only what its own numbers rest on, and so has a block's own page. False until they were fetched.
 */
export function isGone(id: string): boolean {
  return read !== undefined && read.block === undefined && id.startsWith(`${read.page}/`)
}
