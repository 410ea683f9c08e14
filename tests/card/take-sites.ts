/**
 * The sites whose blocks are taken along in the tests: the demo and every site under
 * `tests/build/fixtures`, loaded as a builder's own would be, with a context to render in.
 */
import { readdir } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { contextOf, type CardContext } from '../../src/card/index.ts'
import { loadLedger, type Ledger } from '../../src/ledger/load.ts'
import type { Published } from '../../src/ledger/published.ts'

const root = resolve(import.meta.dirname, '../..')
const fixtures = join(root, 'tests/build/fixtures')

export const folders: readonly string[] = [
  join(root, 'content'),
  ...(await readdir(fixtures)).sort().map((name) => join(fixtures, name)),
]

export interface Site {
  readonly ledger: Ledger
  readonly ctx: CardContext
  /** The same with a reader's ledger, the builder's behind it. */
  readonly yours: (published: Published) => CardContext
}

export async function siteIn(folder: string): Promise<Site> {
  const ledger = await loadLedger(folder)
  const { published, calculators, site } = ledger
  const options = { base: site?.base ?? '/', calculators }
  return {
    ledger,
    ctx: contextOf(published, options),
    yours: (theirs) => contextOf(theirs, { ...options, builder: published }),
  }
}
