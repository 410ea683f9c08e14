/**
 * Everything that writes a published number as HTML: pure functions of the published ledger, called
 * by the build, by the browser after a reader's change, and by `verify`.
 */
export { blockHtml, type BlockOptions } from './block.ts'
export { blockPage, type BlockPage } from './block-page.ts'
export { type Mode } from './card.ts'
export { contextOf, type CardContext, type ContextOptions } from './context.ts'
export { editionOf } from './edition.ts'
export { findingsHtml, frameHtml, verdictHtml } from './findings.ts'
export { hazardElementId, hazardLineHtml, hazardsHtml, panelHtml } from './hazards.ts'
export { firm } from './firm.ts'
export { escape, idOf, symbolsHtml } from './html.ts'
export { lookupOf, type Lookup } from './lookup.ts'
export { markHtml, markSymbolsHtml } from './mark.ts'
export { dataHtml, numberHtml, storyHref, storyId, textOf, type NumberOptions } from './number.ts'
export { calculatorItemHtml, outsideHtml, usesHtml } from './outside.ts'
export { countsHtml, guessListHtml, noteItemHtml } from './note-list.ts'
export { numberCountHtml, numberTableHtml } from './number-list.ts'
export { marksHtml, pictureHtml } from './picture.ts'
export { partHtml, partRowId } from './part.ts'
export { costHtml, partCountHtml, partTablesHtml } from './part-list.ts'
export { plotHtml } from './plot-table.ts'
export { plotSvg } from './plot.ts'
export { pageFiguresOf, pageFiguresText, type PageFigures } from './page-figures.ts'
export { guessesOf, rootsOf } from './rests.ts'
export { originHtml, placeHref, valueHtml } from './origin.ts'
export { redirectsOf } from './redirect.ts'
export { outsideLinksHtml, sourceTableHtml } from './source-list.ts'
export { sheetName, sheetOf, sheetPath, type Sheet } from './sheet.ts'
export { standardTableHtml, tableSourceText } from './standard-table.ts'
export { storiesHtml } from './stories.ts'
export { guessesIn, tallyHtml } from './tally.ts'
export {
  doneListHtml,
  openCountHtml,
  openSummaryHtml,
  openTablesHtml,
  taskBoxHtml,
  taskEndHtml,
  taskHtml,
  tasksOf,
} from './tasks.ts'
export { stripText, titleBlockHtml } from './title-block.ts'
export {
  capital,
  dateWords,
  draftWords,
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
