/**
 * A short sign of what a note's numbers are, for the title block: a print whose sign differs from the
 * page's is stale. It depends on values and verdicts alone, so the same notes give the same sign
 * everywhere. Not for security: FNV-1a, 32 bits.
 */
import type { Published } from '../ledger/published.ts'
import { lookupOf } from './lookup.ts'

const known = new WeakMap<Published, Map<string, string>>()

/** Asked for by each of a note's pages, and the same for all of them. */
export function editionOf(published: Published, slug: string): string {
  const editions = known.get(published) ?? new Map<string, string>()
  known.set(published, editions)
  const edition = editions.get(slug) ?? signOf(published, slug)
  editions.set(slug, edition)
  return edition
}

function signOf(published: Published, slug: string): string {
  const lookup = lookupOf(published)
  const numbers = lookup.numbersOf(slug).map(({ id, value, shown, now }) => [id, value, shown, now])
  const blocks = lookup
    .blocksOf(slug)
    .map(({ id, verdict, provisional, accepted }) => [id, verdict, provisional, accepted])
  let hash = 0x811c9dc5
  for (const byte of new TextEncoder().encode(JSON.stringify([numbers, blocks]))) {
    hash = Math.imul(hash ^ byte, 0x01000193)
  }
  return (hash >>> 0).toString(16).padStart(8, '0').slice(0, 6)
}
