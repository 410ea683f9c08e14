/**
 * What matters most to a block. In: the block as published, its calculator, and the numbers by id. Out:
 * how far each input, moved alone, moves one result; and what of the builder's own choices, changed
 * alone, would make the worst check pass. Nothing is moved together: two inputs that hang on each other
 * (a sheet that gives both) are still moved one at a time.
 */
export {
  resultsOf,
  whatMatters,
  type End,
  type Matters,
  type Move,
  type Result,
} from './matters/moves.ts'
export { type NumberLookup } from './matters/origin.ts'
export { type ChoicePlace, type NumberPlace, type Place } from './matters/places.ts'
export {
  whatWouldPass,
  type ChoiceRemedy,
  type Held,
  type NumberRemedy,
  type Remedies,
  type Remedy,
  type RemedyOptions,
} from './matters/remedies.ts'
export { type Band, type Edge, type Rounded } from './matters/band.ts'
export { share } from './matters/step.ts'
