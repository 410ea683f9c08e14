/**
 * Everything that writes a published number as HTML: pure functions of the published ledger, called
 * by the build, by the browser after a reader's change, and by `verify`.
 */
export { blockHtml, type BlockOptions, type Mode } from './block.ts'
export { contextOf, type CardContext, type ContextOptions } from './context.ts'
export { editionOf } from './edition.ts'
export { findingsHtml, frameHtml, verdictHtml } from './findings.ts'
export { hazardElementId, hazardLineHtml, hazardsHtml } from './hazards.ts'
export { escape, idOf } from './html.ts'
export { markHtml } from './mark.ts'
export { dataHtml, numberHtml, storyHref, storyId, textOf, type NumberOptions } from './number.ts'
export { plotHtml } from './plot-table.ts'
export { plotSvg } from './plot.ts'
export { givenIds, guessesOf, movedBy, rootsOf } from './rests.ts'
export { originHtml, placeHref, valueHtml } from './origin.ts'
export { storiesHtml } from './stories.ts'
export {
  capital,
  count,
  dateWords,
  howWords,
  isSum,
  kindWords,
  labelOf,
  levelWords,
  nameWords,
  statusWords,
  verdictName,
  verdictWords,
  type VerdictName,
} from './words.ts'
