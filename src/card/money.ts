/**
 * What the parts cost, added up in each currency by itself. In: the published ledger. Out: sums by
 * phase and all together, and what is not in them. What was owned before counts nothing, what was sold
 * counts against; what is put by for the unforeseen is a share of what is still to be paid, because what
 * is paid cannot surprise any more.
 */
import type { Published, PublishedNumber, PublishedPart } from '../ledger/published.ts'
import { currencyOf } from '../ledger/money.ts'
import { combine, parseQuantity } from '../quantity/index.ts'
import type { Quantity } from '../quantity/types.ts'
import { lookupOf } from './lookup.ts'

export interface Sums {
  readonly paid: Quantity
  readonly toCome: Quantity
  readonly sold: Quantity
  /** Paid and to come, less what was sold. */
  readonly together: Quantity
}

export interface Rollup {
  /** Unit: `US$`. */
  readonly currency: string
  readonly phases: readonly (Sums & { readonly phase: string })[]
  readonly total: Sums
  /** Put by, where the site says a share. */
  readonly aside: Quantity | undefined
  /** With what is put by. */
  readonly all: Quantity
  /** How many of the prices in it are guesses. */
  readonly guesses: number
}

export interface Costs {
  /** In the order in which the currencies first come up. */
  readonly rollups: readonly Rollup[]
  readonly owned: readonly PublishedPart[]
  /** Parts that would count and have no price. */
  readonly unpriced: readonly PublishedPart[]
}

interface Counted {
  readonly part: PublishedPart
  readonly phase: string
  readonly cost: PublishedNumber
  readonly currency: string
}

const uncounted = ['owned', 'out']

/** The number that a part's cost is; its price where there is one of it. */
export function costOf(part: PublishedPart, published: Published): PublishedNumber | undefined {
  const figure = part.figures.includes('cost') ? 'cost' : 'price'
  return lookupOf(published).number(`${part.id}.${figure}`)
}

export function costsOf(published: Published): Costs {
  const { parts = [], site } = published
  const lookup = lookupOf(published)
  const counting = parts.filter(({ status }) => !uncounted.includes(status))
  const counted = counting.flatMap((part): Counted[] => {
    const cost = costOf(part, published)
    const currency = cost === undefined ? undefined : currencyOf(cost.vector)
    if (cost === undefined || cost.value === null || currency === undefined) return []
    return [{ part, phase: lookup.note(part.note)?.phase ?? '', cost, currency }]
  })
  const byCurrency = Map.groupBy(counted, ({ currency }) => currency)
  return {
    rollups: [...byCurrency].map(([currency, items]) =>
      rollupOf(currency, items, site.contingency),
    ),
    owned: parts.filter(({ status }) => status === 'owned'),
    unpriced: counting.filter((part) => !counted.some((one) => one.part === part)),
  }
}

function rollupOf(
  currency: string,
  items: readonly Counted[],
  contingency: string | undefined,
): Rollup {
  const total = sumsOf(items)
  const share = contingency === undefined ? undefined : parseQuantity(contingency, 'fraction')
  const aside = share?.ok === true ? worked('*', total.toCome, share) : undefined
  return {
    currency,
    phases: [...Map.groupBy(items, ({ phase }) => phase)].map(([phase, own]) => ({
      phase,
      ...sumsOf(own),
    })),
    total,
    aside,
    all: aside === undefined ? total.together : worked('+', total.together, aside),
    guesses: items.filter(({ cost }) => cost.firmness === 'assumed').length,
  }
}

function sumsOf(items: readonly Counted[]): Sums {
  const nothing: Quantity = {
    value: 0,
    vector: items[0]?.cost.vector ?? [...zero],
    flavour: 'amount',
  }
  const sum = (...statuses: readonly string[]): Quantity =>
    items
      .filter(({ part }) => statuses.includes(part.status))
      .reduce((all, { cost }) => worked('+', all, quantityOf(cost)), nothing)
  const paid = sum('bought', 'fitted', 'spare')
  const toCome = sum('planned', 'ordered')
  const sold = sum('sold')
  return { paid, toCome, sold, together: worked('-', worked('+', paid, toCome), sold) }
}

const zero = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0] as const

const quantityOf = ({ value, vector, flavour }: PublishedNumber): Quantity => ({
  value: value ?? 0,
  vector,
  flavour,
})

/** Sums of one currency always come out; where one did not, the kit is wrong and says so. */
function worked(op: '+' | '-' | '*', a: Quantity, b: Quantity): Quantity {
  const made = combine(op, a, b)
  if ('rule' in made) throw new Error(`sums of money do not add up: ${made.text}`)
  return made
}
