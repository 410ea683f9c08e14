/**
 * What the search finds by name: every number that a builder named, every result, block and part. In:
 * the ledger. Out: the text of `search/names.json`, which a reader's browser fetches at the first search.
 * Inputs of blocks and rows of tables are left to the search in pages.
 */
import type { Calculator } from '../../../calculators/define.ts'
import {
  capital,
  contextOf,
  isSum,
  labelOf,
  storyHref,
  textOf,
  verdictName,
  verdictWords,
} from '../../card/index.ts'
import type { Published } from '../../ledger/published.ts'
import { words } from '../../words/words.ts'

/** What it is called, what it is, where it stands (from the site's root), in which note, and its name there. */
export type NameEntry = readonly [
  label: string,
  value: string,
  path: string,
  note: string,
  name: string,
]

function nameEntries(
  published: Published,
  calculators: ReadonlyMap<string, Calculator>,
): readonly NameEntry[] {
  const ctx = contextOf(published, { base: '/', calculators })
  const noteTitle = (slug: string): string => ctx.note(slug)?.title ?? slug
  const numbers = published.numbers.flatMap((number): NameEntry[] => {
    const inBlock = number.block === null ? undefined : ctx.block(number.block)
    const result = number.calculator !== null && /^[^.]+\.[^.]+$/.test(number.name)
    if (isSum(number) || (number.block !== null && !result)) return []
    const label = labelOf(number, ctx)
    const named = inBlock === undefined ? capital(label) : `${inBlock.title}: ${label}`
    // A later number may have taken its place: what is old is not shown as if it held.
    const later = ctx.replacedBy(number.id)
    const value =
      later === undefined ? textOf(number) : words`${textOf(number)}, now ${textOf(later)}`
    return [[named, value, storyHref(number.id, ctx).slice(1), noteTitle(number.note), number.name]]
  })
  const blocks = published.blocks.map((block): NameEntry => [
    block.title,
    verdictWords[verdictName(block)],
    `notes/${block.note}/#${block.name}`,
    noteTitle(block.note),
    block.name,
  ])
  const parts = (published.parts ?? []).map(({ what, size, note, name }): NameEntry => [
    size === undefined ? what : `${what}, ${size}`,
    words`part`,
    `notes/${note}/#${name}`,
    noteTitle(note),
    name,
  ])
  return [...parts, ...blocks, ...numbers]
}

export function namesText(
  published: Published,
  calculators: ReadonlyMap<string, Calculator>,
): string {
  const lines = nameEntries(published, calculators).map((entry) => JSON.stringify(entry))
  return `{"format": 1,\n"names": [\n${lines.join(',\n')}\n]}\n`
}
