/** What a reader's figures changed: the builder's ledger and the reader's, both worked here. */
import type { Published, PublishedBlock } from '../ledger/published.ts'

/** Ids whose value is not what it was, or that were not there. */
export function movedIds(before: Published, after: Published): ReadonlySet<string> {
  const old = new Map(before.numbers.map(({ id, value }) => [id, value]))
  return new Set(
    after.numbers
      .filter(({ id, value }) => !old.has(id) || old.get(id) !== value)
      .map(({ id }) => id),
  )
}

/** What makes a block look different: its inputs, results or verdict. */
export function sameBlock(a: PublishedBlock, b: PublishedBlock): boolean {
  const parts = ({ inputs, outputs, verdict, provisional, findings }: PublishedBlock) =>
    JSON.stringify([inputs, outputs, verdict, provisional, findings])
  return parts(a) === parts(b)
}
