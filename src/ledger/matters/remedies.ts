/**
 * What would make the worst check of a block pass. In: the block, its calculator, the numbers by id, and
 * a check where not the worst one is meant. Out: of the builder's own choices, each changed alone, those that
 * do it, nearest value first solved, and the other checks that it would make worse.
 *
 * What was measured, what a sheet says and what another card gives is never offered, even in a field that
 * is usually a choice: the truth is not changed to make a check pass.
 */
import type { Calculator, Finding, Say } from '../../../calculators/define.ts'
import { verdictOf } from '../judge.ts'
import type { PublishedBlock, PublishedNumber } from '../published.ts'
import { say as plainly } from '../say.ts'
import { bandOf, type Band } from './band.ts'
import { notChosen, type NumberLookup } from './origin.ts'
import {
  clip,
  inputsOf,
  isNumber,
  missingIn,
  placesOf,
  withValue,
  type ChoicePlace,
  type NumberPlace,
  type Place,
} from './places.ts'
import { sizeIn, type Size } from './sizes.ts'
import { stepOf, type Step } from './step.ts'
import { findingsAt, isWorse } from './trial.ts'

export interface NumberRemedy {
  readonly type: 'number'
  readonly place: NumberPlace
  readonly band: Band
  /** The first made size that passes too, where the field has sizes. */
  readonly size: Size | undefined
  /** A small change further on: what is left in hand there. */
  readonly beyond:
    { readonly value: number; readonly step: Step; readonly finding: Finding } | undefined
  /** Checks that are then worse than they are now. */
  readonly worse: readonly string[]
}
export interface ChoiceRemedy {
  readonly type: 'choice'
  readonly place: ChoicePlace
  readonly options: readonly { readonly key: string; readonly worse: readonly string[] }[]
}
export type Remedy = NumberRemedy | ChoiceRemedy

/** A choice that stands on a number which is none. */
export interface Held {
  readonly place: Place
  readonly by: PublishedNumber
}

export interface Remedies {
  /** The finding that should pass; undefined where every check passes, or nothing can be worked. */
  readonly finding: Finding | undefined
  /** Labels of inputs that are needed and not known. */
  readonly missing: readonly string[]
  readonly remedies: readonly Remedy[]
  /** Choices that cannot do it alone. */
  readonly cannot: readonly Place[]
  readonly held: readonly Held[]
  /** Choices not tried, because there are too many for one press. */
  readonly untried: readonly Place[]
}

/** Workings of the calculator at one press, before the last place is begun. */
const enough = 1600
const mostPoints = 60
const fewestPoints = 6

export interface RemedyOptions {
  /** The check that should pass, where it is not the worst. */
  readonly check?: string
  /** Writes the values in what the checks say; metric and US as each calculator has it unless given. */
  readonly say?: Say
}

export function whatWouldPass(
  block: PublishedBlock,
  lookup: NumberLookup,
  calculator: Calculator,
  { check, say = plainly }: RemedyOptions = {},
): Remedies {
  const nothing = { remedies: [], cannot: [], held: [], untried: [] }
  const missing = missingIn(block, calculator)
  if (missing.length > 0) return { ...nothing, finding: undefined, missing }
  const inputs = inputsOf(block, calculator)
  const before = findingsAt(calculator, inputs, say)
  const worst = verdictOf(before)
  const finding = before.find((one) =>
    check === undefined ? one.level === worst : one.check === check,
  )
  if (finding === undefined || finding.level === 'pass')
    return { ...nothing, finding: undefined, missing }

  const chosen = placesOf(block, calculator).filter(({ field }) => field.choice === true)
  const held = chosen.flatMap((place): Held[] => {
    const by = notChosen(place.given, lookup)
    return by === undefined ? [] : [{ place, by }]
  })
  const free = chosen.filter((place) => !held.some((one) => one.place === place))
  const points = Math.min(
    mostPoints,
    Math.max(fewestPoints, Math.floor((mostPoints * 6) / Math.max(free.length, 1))),
  )

  let spent = 0
  const trials = (place: Place): Trials => {
    const known = new Map<number | string, Trial>()
    return (value) => {
      const again = known.get(value)
      if (again !== undefined) return again
      spent += 1
      const after = findingsAt(calculator, withValue(inputs, place, value), say)
      const trial = trialOf(after, before, finding)
      known.set(value, trial)
      return trial
    }
  }
  const remedies: Remedy[] = []
  const cannot: Place[] = []
  const untried: Place[] = []
  for (const place of free) {
    if (spent >= enough) {
      untried.push(place)
      continue
    }
    const at = trials(place)
    const remedy = isNumber(place) ? numberRemedy(place, at, points) : choiceRemedy(place, at)
    if (remedy === undefined) cannot.push(place)
    else remedies.push(remedy)
  }
  return { finding, missing, remedies, cannot, held, untried }
}

/** What one other value does to the check that should pass, and to the rest. */
interface Trial {
  readonly finding: Finding | undefined
  readonly passes: boolean
  readonly worse: readonly string[]
}
type Trials = (value: number | string) => Trial

function trialOf(after: readonly Finding[], before: readonly Finding[], aim: Finding): Trial {
  const finding = after.find(({ check }) => check === aim.check)
  return {
    finding,
    passes: finding?.level === 'pass',
    worse: before.flatMap(({ check, level }) => {
      const now = after.find((one) => one.check === check)
      return isWorse(now?.level ?? 'unknown', level) ? [check] : []
    }),
  }
}

/** The nearest value that spoils no other check; where there is none, the nearest that passes. */
function numberRemedy(place: NumberPlace, at: Trials, points: number): NumberRemedy | undefined {
  const clean = (value: number): boolean => at(value).passes && at(value).worse.length === 0
  const passes = (value: number): boolean => at(value).passes
  const spotless = bandOf(place, clean, points)
  const band = spotless ?? bandOf(place, passes, points)
  if (band === undefined) return undefined
  return {
    type: 'number',
    place,
    band,
    size: sizeIn(place, band, spotless === undefined ? passes : clean),
    beyond: beyondOf(place, band, at),
    worse: at(band.nearest).worse,
  }
}

function beyondOf(place: NumberPlace, { nearest, way }: Band, at: Trials): NumberRemedy['beyond'] {
  if (way === 0) return undefined
  const step = stepOf(place, nearest)
  const value = nearest + way * step.size
  // At the end of the range there is nothing beyond.
  if (clip(value, place.field) !== value) return undefined
  const { finding } = at(value)
  return finding === undefined ? undefined : { value, step, finding }
}

function choiceRemedy(place: ChoicePlace, at: Trials): ChoiceRemedy | undefined {
  const options = Object.keys(place.field.options)
    .filter((key) => key !== place.now && at(key).passes)
    .map((key) => ({ key, worse: at(key).worse }))
    .toSorted((a, b) => a.worse.length - b.worse.length)
  return options.length === 0 ? undefined : { type: 'choice', place, options }
}
