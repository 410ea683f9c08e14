/**
 * Quantities with units: reading, converting, writing, combining. The only door to this folder.
 *
 * Everything is pure, the same in Node and browsers, and small enough to be sent to a reader.
 */
export { combine, negate } from './combine.ts'
export { fromSI, toSI, unitOf, type UnitKind } from './convert.ts'
export { counterpart, counterparts } from './counterparts.ts'
export { dimensions, type Dimension } from './dimensions.ts'
export { displayUnit } from './display.ts'
export { formatNumber, formatQuantity, quantityParts, type FormatOptions } from './format.ts'
export { nearestName } from './nearest.ts'
export { parseQuantity } from './parse.ts'
export { unitNames } from './unit.ts'
export { currencyAt, inFirstCurrency, sameKind, sameVector } from './vector.ts'
export type * from './types.ts'
