/**
 * "Take it along": a block or the numbers as text for elsewhere. Pure functions of the ledger; none
 * gives figures without saying whose they are, nor without their warnings and the standing words.
 * A reader's browser fetches this file only when it is asked for one of them.
 */
export { blockAddress, blockPath } from './address.ts'
export { askHref } from './ask.ts'
export { changedFigures, type ChangedFigure } from './changed.ts'
export { byteOrderMark, csvText } from './csv.ts'
export { jsonText } from './json.ts'
export { mdxText } from './mdx.ts'
export { plainText } from './plain.ts'
export { whoseWords, type Whose } from './whose.ts'
