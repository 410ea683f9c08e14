/**
 * Works a page again with what a reader entered on it, and shows what moved. Fetched while the reader
 * is still typing. What the build wrote is put back whenever nothing is entered, or something fails.
 */
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { verdictName, verdictWords } from '../card/words.ts'
import { workPublished, type Overrides } from '../ledger/override.ts'
import type { Published } from '../ledger/published.ts'
import { movedIds, sameBlock } from './moved.ts'
import { restoreAll, show, type PageOfFigures } from './show.ts'

export interface Bench {
  /**
   * With these figures on the page, how the block came out, in a sentence; undefined when newer
   * figures overtook them.
   */
  update(overrides: Overrides, id: string): Promise<string | undefined>
}

export async function benchOf(published: Published, base: string, page: string): Promise<Bench> {
  const used = [...new Set(published.blocks.map(({ calculator }) => calculator))]
  const loaded = await Promise.all(
    used.map(async (id): Promise<[string, Calculator][]> => {
      const calculator = await registry[id]?.()
      return calculator === undefined ? [] : [[id, calculator]]
    }),
  )
  const calculators = new Map(loaded.flat())
  const unchanged = workPublished(published, {}, calculators)
  const ready: PageOfFigures = { published, calculators, base, page }
  let latest = 0

  const work = async (overrides: Overrides, id: string): Promise<string | undefined> => {
    const turn = (latest += 1)
    if (Object.keys(overrides).length === 0) {
      restoreAll()
      return `Verdict: ${verdictIn(published, id)}.`
    }
    const worked = workPublished(published, overrides, calculators)
    const before = new Map(unchanged.blocks.map((block) => [block.id, block]))
    const changed = new Set<string>()
    const blocks = worked.blocks.map((block) => {
      const was = before.get(block.id)
      // As published, with the reason for which a stop was accepted.
      if (was !== undefined && sameBlock(was, block)) return was
      changed.add(block.id)
      // The builder accepted a stop for the builder's figures, not for these.
      return { ...block, accepted: null }
    })
    const yours = { ...worked, blocks }
    const moved = movedIds(unchanged, worked)
    const shown = await show(ready, yours, changed, moved, () => turn === latest)
    return shown
      ? `Verdict with your figures: ${verdictIn(yours, id)}. With the builder’s: ${verdictIn(published, id)}.`
      : undefined
  }

  return {
    async update(overrides, id) {
      try {
        return await work(overrides, id)
      } catch (error) {
        restoreAll()
        throw error
      }
    },
  }
}

function verdictIn({ blocks }: Published, id: string): string {
  const block = blocks.find((one) => one.id === id)
  return block === undefined ? '' : verdictWords[verdictName(block)]
}
