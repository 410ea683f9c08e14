/** Words of a calculator's own page: ranges in both unit systems, differences, trust in a source. */
import type { NumberField, Source } from '../../calculators/define.ts'
import { formatQuantity, toSI } from '../quantity/index.ts'
import { words } from '../words/words.ts'

/** `4 mm to 60 mm (0.1575 in to 2.362 in)`; the bounds are written in the field's first unit. */
export function rangeText(field: NumberField, bounds: readonly number[]): string {
  const [first, second] = field.units
  const write = (unit: string) => {
    const [low = '', high] = bounds.map((bound) =>
      formatQuantity(toSI(bound, first), unit, unit === first ? { exact: true } : { figures: 3 }),
    )
    return high === undefined ? low : words`${low} to ${high}`
  }
  return first === second ? write(first) : `${write(first)} (${write(second)})`
}

/** A relative difference: `0.03 %`, `none`. */
export function differenceWords(difference: number): string {
  if (!Number.isFinite(difference)) return words`another word`
  const percent = difference * 100
  if (Math.abs(percent) < 5e-7) return words`none`
  return formatQuantity(percent / 100, '%', { figures: 2 })
}

/** `Handbook, 3rd edition, table 4. Looked up for this kit.` */
export function sourceText({ title, edition, at, trust }: Source): string {
  const where = [title, edition, at].filter((text) => text !== undefined).join(', ')
  return `${where}. ${trustWords[trust]}`
}

export const trustWords: Readonly<Record<Source['trust'], string>> = {
  read: words`Looked up for this kit.`,
  recalled: words`Recalled, to be confirmed.`,
  model: words`A simplification chosen here.`,
}
