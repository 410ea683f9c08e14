/**
 * Where the value in a place comes from. In: what the place was given, and the numbers by id. Out: the ±
 * that it carries, and the number that is not the builder's to choose: a reading, a sheet's figure, or
 * the result of another card.
 */
import type { Given, PublishedNumber } from '../published.ts'
import { onlyRef, refsOf } from '../refs.ts'

export interface NumberLookup {
  number(id: string): PublishedNumber | undefined
  /** The later number that stands for this one, where that is known. */
  replacedBy?(id: string): PublishedNumber | undefined
}

const standing = (id: string, lookup: NumberLookup): PublishedNumber | undefined =>
  lookup.replacedBy?.(id) ?? lookup.number(id)

/** The ± of the input itself, or of the one number it names, as long as that is the value used. */
export function plusMinusOf(
  given: Given | undefined,
  now: number,
  lookup: NumberLookup,
): number | undefined {
  if (given?.type !== 'number') return undefined
  const seen = new Set<string>()
  let number = lookup.number(given.id)
  while (number !== undefined && !seen.has(number.id)) {
    seen.add(number.id)
    if (number.plusMinus !== null && number.plusMinus > 0)
      return number.value === now ? number.plusMinus : undefined
    const ref = onlyRef(number.expression)
    if (ref === undefined) return undefined
    number = standing(ref, lookup)
  }
  return undefined
}

/** The first number among the roots that a builder cannot simply choose otherwise. */
export function notChosen(
  given: Given | undefined,
  lookup: NumberLookup,
): PublishedNumber | undefined {
  if (given?.type !== 'number') return undefined
  const seen = new Set<string>()
  const look = (number: PublishedNumber | undefined): PublishedNumber | undefined => {
    if (number === undefined || seen.has(number.id)) return undefined
    seen.add(number.id)
    if (number.kind === 'reading' || number.kind === 'rated') return number
    if (number.calculator !== null) return number
    const refs = number.expression === undefined ? [] : refsOf(number.expression)
    for (const ref of refs) {
      const found = look(standing(ref, lookup))
      if (found !== undefined) return found
    }
    return undefined
  }
  return look(lookup.number(given.id))
}
