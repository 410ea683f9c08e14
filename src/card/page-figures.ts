/**
 * What a page hands to its reader's browser: its share of the ledger from the roots up, and the sources
 * of the calculators in it. It lies beside the page as a file, which is fetched with the first change or
 * the first choice of units. The page says of which edition it is. `verify` holds it against the record.
 */
import type { Calculator, Source } from '../../calculators/define.ts'
import type { Published } from '../ledger/published.ts'
import { parsedJson } from '../ledger/json.ts'
import { rootsOf, type Roots } from '../ledger/roots.ts'

export interface PageFigures {
  /** Slug of the note; '' where the page is none. */
  readonly page: string
  /** Id of the block whose own page it is. */
  readonly block?: string
  readonly edition: string
  readonly roots: Roots
  readonly sources: Readonly<Record<string, readonly Source[]>>
}

export function pageFiguresOf(
  part: Published,
  page: string,
  edition: string,
  calculators: ReadonlyMap<string, Calculator>,
  block?: string,
): PageFigures {
  const used = [...new Set(part.blocks.map(({ calculator }) => calculator))].sort()
  return {
    page,
    ...(block === undefined ? {} : { block }),
    edition,
    roots: rootsOf(part),
    sources: Object.fromEntries(used.map((id) => [id, calculators.get(id)?.sources ?? []])),
  }
}

export const pageFiguresText = (figures: PageFigures): string => `${JSON.stringify(figures)}\n`

/** Reads that file's text; undefined when it is something else. */
export function readPageFigures(text: string): PageFigures | undefined {
  const data = parsedJson(text)
  return isPageFigures(data) ? data : undefined
}

const isPageFigures = (data: unknown): data is PageFigures =>
  typeof data === 'object' &&
  data !== null &&
  'page' in data &&
  'sources' in data &&
  'roots' in data &&
  isRoots(data.roots)

const isRoots = (roots: unknown): boolean =>
  typeof roots === 'object' &&
  roots !== null &&
  'format' in roots &&
  roots.format === 1 &&
  'numbers' in roots &&
  Array.isArray(roots.numbers) &&
  'blocks' in roots &&
  Array.isArray(roots.blocks)
