/**
 * How a note's blocks came out and what in it is still a guess, as counts. A guess is open when the
 * builder made it (an `<Assumed>`, or a literal in a block that is not theirs to choose) and no later
 * number took its place. What was left to a calculator's usual value is counted apart.
 */
import { usedGiven } from '../ledger/given.ts'
import type { Given, PublishedBlock, PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { lookupOf } from './lookup.ts'
import { verdictName, verdictWords, type VerdictName } from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

/** Ids of the numbers that calculators filled in. */
function defaultIds(givens: readonly PublishedBlock['given'][]): ReadonlySet<string> {
  const idsOf = (given: Given): string[] => {
    if (given.type === 'number') return given.how === 'assumed-default' ? [given.id] : []
    return given.type === 'rows'
      ? given.rows.flatMap((row) => Object.values(row).flatMap(idsOf))
      : []
  }
  return new Set(givens.flatMap((given) => Object.values(given).flatMap(idsOf)))
}

export interface Guesses {
  /** The builder's own that nothing has settled. */
  readonly open: readonly PublishedNumber[]
  /** How many inputs were left to a calculator, and went into what it worked out. */
  readonly usual: number
}

export function guessesIn(slug: string, ctx: CardContext): Guesses {
  const lookup = lookupOf(ctx.published)
  const blocks = lookup.blocksOf(slug)
  const usual = defaultIds(blocks.map(({ given }) => given))
  const open = lookup
    .numbersOf(slug)
    .filter(
      ({ id, kind, rests, calculator }) =>
        kind === 'assumed' &&
        rests.length === 0 &&
        calculator === null &&
        !usual.has(id) &&
        ctx.replacedBy(id) === undefined,
    )
  return { open, usual: defaultIds(blocks.map(usedGiven)).size }
}

/** `3 open guesses`; '' when there are none. */
export function openWords({ open }: Guesses): string {
  const many = open.length
  return many === 0 ? '' : counted(many, words`${many} open guess`, words`${many} open guesses`)
}

/** `31 inputs left at usual values`; '' when there are none. */
export function usualWords({ usual }: Guesses): string {
  if (usual === 0) return ''
  return counted(
    usual,
    words`${usual} input left at its usual value`,
    words`${usual} inputs left at usual values`,
  )
}

const worstFirst: readonly VerdictName[] = [
  'stop',
  'accepted',
  'unknown',
  'watch',
  'provisional',
  'pass',
]

/** Without `guesses` where they stand beside it. */
export function tallyHtml(
  slug: string,
  ctx: CardContext,
  options: { readonly guesses?: boolean } = {},
): string {
  const verdicts = lookupOf(ctx.published).blocksOf(slug).map(verdictName)
  const frames = worstFirst.flatMap((name) => {
    const many = verdicts.filter((one) => one === name).length
    return many === 0
      ? []
      : [`<span class="verdict verdict-${name}">${many} ${verdictWords[name]}</span>`]
  })
  const guesses = options.guesses === false ? { open: [], usual: 0 } : guessesIn(slug, ctx)
  const counts = [openWords(guesses), usualWords(guesses)]
    .filter((text) => text !== '')
    .map((text) => `<span>${text}</span>`)
  return `<div class="tally">${[...frames, ...counts].join(' ')}</div>`
}
