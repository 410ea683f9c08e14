/**
 * How far each number input, moved alone, moves one result. In: the block, its calculator, the numbers
 * by id, the path of the result. Out: the inputs ranked by how far the result goes, farthest first.
 *
 * An input goes over its ± where it has one, else over its usual range: a well measured input can rank
 * low because it is well known, not because it is unimportant. The small change beside it says the rest.
 */
import type { Calculator, NumberOutput } from '../../../calculators/define.ts'
import type { PublishedBlock } from '../published.ts'
import { plusMinusOf, type NumberLookup } from './origin.ts'
import {
  clip,
  hardRange,
  inputsOf,
  isNumber,
  missingIn,
  placesOf,
  usualRange,
  withValue,
  type NumberPlace,
  type Range,
} from './places.ts'
import { stepOf, type Step } from './step.ts'
import { resultIn, resultsAt } from './trial.ts'
import { words } from '../../words/words.ts'

/** An input's value and what the result is there; undefined: cannot tell there. SI. */
export interface End {
  readonly value: number
  readonly result: number | undefined
}

export interface Move {
  readonly place: NumberPlace
  readonly now: number
  /** SI; undefined where it goes over its usual range. */
  readonly plusMinus: number | undefined
  /** The ± reached beyond what the field allows. */
  readonly clipped: boolean
  readonly low: End
  readonly high: End
  /** Farthest apart of the results at low, now and high; undefined where fewer than two are known. */
  readonly span: number | undefined
  readonly step: Step
  /** A small change up and down; undefined where it would leave the hard range. */
  readonly more: End | undefined
  readonly less: End | undefined
}

export interface Result {
  /** `flow`, `losses.0.drop`. */
  readonly path: string
  readonly label: string
  readonly field: NumberOutput
}

export interface Matters {
  readonly result: Result
  readonly now: number | undefined
  readonly moves: readonly Move[]
  /** Labels of inputs that are needed and not known; nothing was moved then. */
  readonly missing: readonly string[]
  /** Inputs left alone, because there are too many to try at one press. */
  readonly untried: number
}

const mostTried = 480

/** The numbers among a block's results, those of its tables too, as they stand now. */
export function resultsOf(block: PublishedBlock, calculator: Calculator): readonly Result[] {
  return Object.entries(calculator.outputs).flatMap(([key, field]): Result[] => {
    if (field.type === 'number') return [{ path: key, label: field.label, field }]
    const rows = block.outputs[key]
    if (field.type !== 'table' || typeof rows !== 'object' || rows === null) return []
    const name = Object.keys(field.columns).find((column) => field.columns[column]?.type === 'text')
    return rows.flatMap((row, index) =>
      Object.entries(field.columns).flatMap(([column, cell]) => {
        if (cell.type !== 'number') return []
        const called = name === undefined ? null : (row[name] ?? null)
        const title = typeof called === 'string' && called !== '' ? called : words`row ${index + 1}`
        const label = `${field.label}, ${title}: ${cell.label}`
        return [{ path: `${key}.${index}.${column}`, label, field: cell }]
      }),
    )
  })
}

/** Undefined where the block has no such number among its results. */
export function whatMatters(
  block: PublishedBlock,
  lookup: NumberLookup,
  calculator: Calculator,
  output: string,
): Matters | undefined {
  const result = resultsOf(block, calculator).find(({ path }) => path === output)
  if (result === undefined) return undefined
  const missing = missingIn(block, calculator)
  if (missing.length > 0) return { result, now: undefined, moves: [], missing, untried: 0 }
  const inputs = inputsOf(block, calculator)
  const now = resultIn(resultsAt(calculator, inputs), output)
  const given = placesOf(block, calculator).filter(isNumber)
  const places = given.filter((place) => place.now !== undefined)
  const moves = places.slice(0, mostTried).flatMap((place) => {
    if (place.now === undefined) return []
    const at = (value: number): End => ({
      value,
      result: resultIn(resultsAt(calculator, withValue(inputs, place, value)), output),
    })
    return [moveOf(place, place.now, now, lookup, at)]
  })
  return {
    result,
    now,
    moves: moves.toSorted((a, b) => (b.span ?? -1) - (a.span ?? -1)),
    missing,
    untried: Math.max(0, places.length - mostTried),
  }
}

function moveOf(
  place: NumberPlace,
  now: number,
  result: number | undefined,
  lookup: NumberLookup,
  at: (value: number) => End,
): Move {
  const { field } = place
  const plusMinus = plusMinusOf(place.given, now, lookup)
  const ends: Range =
    plusMinus === undefined ? usualRange(field) : [now - plusMinus, now + plusMinus]
  const [low, high] = [clip(ends[0], field), clip(ends[1], field)]
  const found = [at(low), at(high)] as const
  const known = [found[0].result, result, found[1].result].filter((one) => one !== undefined)
  const step = stepOf(place, now)
  const [least, most] = hardRange(field)
  return {
    place,
    now,
    plusMinus,
    clipped: low !== ends[0] || high !== ends[1],
    low: found[0],
    high: found[1],
    span: known.length < 2 ? undefined : Math.max(...known) - Math.min(...known),
    step,
    more: now + step.size > most ? undefined : at(now + step.size),
    less: now - step.size < least ? undefined : at(now - step.size),
  }
}
