/**
 * What is made of the numbers beside the pages: the feed, the names of the search, the tables for
 * spreadsheets. In: the ledger and the files of a finished site. Out: where a file is missing, or is not what
 * writing it again gives.
 */
import type { Calculator } from '../../calculators/define.ts'
import { lookupOf } from '../card/index.ts'
import { byteOrderMark, csvText } from '../card/take/csv.ts'
import { partsCsvText } from '../card/take/parts-csv.ts'
import type { Published } from '../ledger/published.ts'
import { words } from '../words/words.ts'
import { compareTexts, type Discrepancy } from './differences.ts'
import { feedText } from './feed/atom.ts'
import { namesText } from './search/names.ts'

const feedFile = 'feed.xml'
const namesFile = 'search/names.json'
const partsFile = 'parts/parts.csv'

/** The numbers of the site, or of one note, as a table. */
const csvFile = /^(?:notes\/([^/]+)\/)?numbers\.csv$/

export const isMade = (file: string): boolean =>
  csvFile.test(file) || [feedFile, namesFile, partsFile].includes(file)

/** Those that a site must have and that are not among `files`. */
export function missingMade(
  published: Published | undefined,
  files: { has(file: string): boolean },
): readonly Discrepancy[] {
  const due = [
    'numbers.csv',
    ...(published?.notes ?? []).map(({ slug }) => `notes/${slug}/numbers.csv`),
    namesFile,
    partsFile,
    ...(published?.site.address === undefined ? [] : [feedFile]),
  ]
  return due
    .filter((file) => !files.has(file))
    .map((file) => ({ file, line: 1, text: words`this file of the site is not there` }))
}

/** The feed, the names of the search and the tables of numbers and parts, written again. */
export async function compareMade(
  published: Published,
  pages: ReadonlyMap<string, string>,
  base: string,
  calculators: ReadonlyMap<string, Calculator>,
): Promise<readonly Discrepancy[]> {
  const found: Discrepancy[] = []
  const page = (slug: string): string => pages.get(`notes/${slug}/index.html`) ?? ''
  const names = pages.get(namesFile)
  if (names !== undefined)
    found.push(...compareTexts(namesFile, names, namesText(published, calculators)))
  const parts = pages.get(partsFile)
  if (parts !== undefined)
    found.push(...compareTexts(partsFile, parts, byteOrderMark + partsCsvText(published)))
  for (const [file, text] of pages) {
    const csv = csvFile.exec(file)
    if (csv !== null)
      found.push(...compareTexts(file, text, numbersCsv(published, csv[1], calculators)))
  }
  const feed = pages.get(feedFile)
  if (feed !== undefined) {
    const due = await feedText(published, { base, calculators, page })
    found.push(...compareTexts(feedFile, feed, due ?? ''))
  }
  return found
}

function numbersCsv(
  published: Published,
  slug: string | undefined,
  calculators: ReadonlyMap<string, Calculator>,
): string {
  const lookup = lookupOf(published)
  const part =
    slug === undefined
      ? published
      : { ...published, numbers: lookup.numbersOf(slug), blocks: lookup.blocksOf(slug) }
  return byteOrderMark + csvText(part, undefined, calculators)
}
