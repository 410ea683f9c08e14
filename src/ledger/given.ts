/**
 * What a block was given, walked: its numbers, with those in the rows of its lists, in the order of
 * the fields. Words are left out.
 */
import type { Given, PublishedBlock } from './published.ts'

type GivenNumber = Extract<Given, { readonly type: 'number' }>

export function givenNumbers(given: Readonly<Record<string, Given>>): GivenNumber[] {
  return Object.values(given).flatMap((one) => {
    if (one.type === 'number') return [one]
    return one.type === 'rows' ? one.rows.flatMap(givenNumbers) : []
  })
}

export const givenIds = (given: Readonly<Record<string, Given>>): string[] =>
  givenNumbers(given).map(({ id }) => id)

/** Without the fields left to usual values that its working had no need of. */
export function usedGiven({ given, unused = [] }: PublishedBlock): PublishedBlock['given'] {
  if (unused.length === 0) return given
  return Object.fromEntries(Object.entries(given).filter(([name]) => !unused.includes(name)))
}
