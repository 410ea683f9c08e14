/** What the page was handed (`src/card/page-figures.ts`), read once. */
import { pageFiguresId, readPageFigures, type PageFigures } from '../card/page-figures.ts'

let read: PageFigures | undefined

export function pageFigures(): PageFigures | undefined {
  if (read !== undefined) return read
  const text = document.querySelector(`script#${pageFiguresId}`)?.textContent ?? ''
  read = readPageFigures(text)
  return read
}

/**
 * Whether a figure of this id that the page does not know is gone from its note. Of other notes a page
 * has only what its own numbers rest on, and so has a block's own page.
 */
export function isGone(id: string): boolean {
  const page = pageFigures()
  return page !== undefined && page.block === undefined && id.startsWith(`${page.page}/`)
}
