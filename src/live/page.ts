/** What the page was handed (`src/card/page-figures.ts`), read once. */
import { pageFiguresId, readPageFigures, type PageFigures } from '../card/page-figures.ts'

let read: PageFigures | undefined

export function pageFigures(): PageFigures | undefined {
  if (read !== undefined) return read
  const text = document.querySelector(`script#${pageFiguresId}`)?.textContent ?? ''
  read = readPageFigures(text)
  return read
}

/** `/` or the path below which the site lies, with a slash at its end. */
export const basePath = (): string => document.documentElement.dataset.base ?? '/'
