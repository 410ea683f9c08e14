/**
 * What the comparison of a browser's numbers with the build's runs in the browser: the page's own
 * figures, opened and changed as the page does it. In: the text of a page's `figures.json` and, change
 * by change, all figures in force. Out: what each change leaves otherwise than the builder has it.
 */
import { calculators as registry } from '../../calculators/index.ts'
import { readPageFigures } from '../../src/card/page-figures.ts'
import { openLedger } from '../../src/ledger/open.ts'
import type { Overrides } from '../../src/ledger/override.ts'
import { ledgerOf } from '../../src/ledger/roots.ts'
import { standing, type Standing } from './standing.ts'

export async function workedInPage(
  figures: string,
  changes: readonly Overrides[],
): Promise<{ readonly builder: Standing; readonly changed: readonly Standing[] }> {
  const page = readPageFigures(figures)
  if (page === undefined) throw new Error('no figures on this page')
  const used = new Set(page.roots.blocks.map(({ calculator }) => calculator))
  const calculators = new Map(
    await Promise.all(
      Object.entries(registry)
        .filter(([id]) => used.has(id))
        .map(async ([id, load]) => [id, await load()] as const),
    ),
  )
  const ledger = openLedger(ledgerOf(page.roots), calculators)
  const builder = standing(ledger.builder)
  return {
    builder,
    changed: changes.map((overrides) => standing(ledger.set(overrides).published, builder)),
  }
}

Object.assign(globalThis, { workedInPage })
