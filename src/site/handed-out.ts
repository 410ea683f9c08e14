/**
 * Holds what a page hands to its reader's browser (`figures.json` beside it) against the record: the
 * numbers and blocks of that page's part from the roots up, to the letter. In: that file's text and the
 * page's part of the ledger. Out: what differs, number by number.
 */
import { editionOf, pageFiguresOf, pageFiguresText } from '../card/index.ts'
import { readPageFigures, type PageFigures } from '../card/page-figures.ts'
import type { Calculator } from '../../calculators/define.ts'
import type { Published } from '../ledger/published.ts'
import { words } from '../words/words.ts'

export function handedOutFaults(
  text: string,
  part: Published,
  { published, slug, block }: { published: Published; slug: string; block: string | undefined },
  calculators: ReadonlyMap<string, Calculator>,
): readonly string[] {
  const due = pageFiguresOf(part, slug, editionOf(published, slug), calculators, block)
  if (text === pageFiguresText(due)) return []
  const read = readPageFigures(text)
  if (read === undefined) return [words`this is not what the kit hands to a reader’s browser`]
  const faults = [...differences(read, due)].map(
    (what) => words`in the figures for the reader’s browser ${what} is not what the record has`,
  )
  return faults.length > 0
    ? faults
    : [words`the figures for the reader’s browser are written otherwise`]
}

function* differences(read: PageFigures, due: PageFigures): Generator<string> {
  for (const kind of ['numbers', 'blocks'] as const) {
    const [is, wanted] = [byName(read.roots[kind]), byName(due.roots[kind])]
    for (const id of new Set([...is.keys(), ...wanted.keys()]))
      if (is.get(id) !== wanted.get(id)) yield `\`${id}\``
  }
  if (JSON.stringify(read.roots.site) !== JSON.stringify(due.roots.site)) yield words`the site`
  if (JSON.stringify(read.roots.notes) !== JSON.stringify(due.roots.notes)) yield words`a note`
  if (JSON.stringify(read.sources) !== JSON.stringify(due.sources)) yield words`a source`
  if (read.edition !== due.edition) yield words`the edition`
}

/** What is no number or block has no name either. */
function byName(list: readonly unknown[]): ReadonlyMap<string, string> {
  const nameOf = (one: unknown): string =>
    typeof one === 'object' && one !== null && 'note' in one && 'name' in one
      ? `${String(one.note)}/${String(one.name)}`
      : ''
  return new Map(list.map((one) => [nameOf(one), JSON.stringify(one)]))
}
