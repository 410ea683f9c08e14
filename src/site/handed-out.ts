/**
 * Holds what a page hands to its reader's browser (`#Page-figures`) against the record: the numbers and
 * blocks of that page's part from the roots up, to the letter. In: the page and its part of the ledger.
 * Out: what differs, number by number, with its offset in the page.
 */
import {
  editionOf,
  pageFiguresHtml,
  pageFiguresId,
  pageFiguresOf,
  type CardContext,
} from '../card/index.ts'
import { readPageFigures, type PageFigures } from '../card/page-figures.ts'
import type { Calculator } from '../../calculators/define.ts'
import type { Published } from '../ledger/published.ts'
import { words } from '../words/words.ts'

export interface Fault {
  readonly index: number
  readonly text: string
}

export function handedOutFaults(
  html: string,
  part: Published,
  slug: string,
  { published, alone }: CardContext,
  calculators: ReadonlyMap<string, Calculator>,
): readonly Fault[] {
  const due = pageFiguresOf(part, slug, editionOf(published, slug), calculators, alone)
  if (html.includes(pageFiguresHtml(due))) return []
  const opening = html.indexOf(`id="${pageFiguresId}">`)
  const index = Math.max(0, opening)
  const text = html.slice(html.indexOf('>', opening) + 1, html.indexOf('</script>', opening))
  const read = opening < 0 ? undefined : readPageFigures(text)
  if (read === undefined)
    return [{ index, text: words`the figures for the reader’s browser are not there` }]
  const faults = [...differences(read, due)].map((what) => ({
    index,
    text: words`in the figures for the reader’s browser ${what} is not what the record has`,
  }))
  return faults.length > 0
    ? faults
    : [{ index, text: words`the figures for the reader’s browser are written otherwise` }]
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
