/**
 * The figures of a part: which there are, and by which id. `mass`, `load`, `power` and `price` are of
 * one; `totalMass`, `totalLoad`, `totalPower` and `cost` of as many as there are, worked out. Where how
 * many is not said there is one, and both are the same number.
 */
import type { At, NoteSource, PartSource } from '../note-source.ts'
import { didYouMean } from '../report.ts'
import { report, type LinkContext } from './context.ts'
import { words } from '../../words/words.ts'

/** Of all together -> of one. */
export const ofOne = {
  cost: 'price',
  totalMass: 'mass',
  totalLoad: 'load',
  totalPower: 'power',
} as const

export type OfAll = keyof typeof ofOne

export const isOfAll = (name: string): name is OfAll => Object.hasOwn(ofOne, name)

/** Name of the number that stands for a figure of all together. */
export function figureOfAll({ figures }: PartSource, all: OfAll): string | undefined {
  const one = ofOne[all]
  if (figures[one] === undefined) return undefined
  return figures.quantity === undefined ? one : all
}

/** What can be asked of a part, as `cost`, `mass`. */
const askable = (part: PartSource): string[] => [
  ...Object.keys(part.figures),
  ...Object.keys(ofOne).filter((all) => isOfAll(all) && figureOfAll(part, all) !== undefined),
]

export function resolveFigure(
  ctx: LinkContext,
  note: NoteSource,
  owner: NoteSource,
  part: PartSource,
  fields: readonly string[],
  at: At,
): string | undefined {
  const { name } = part
  const known = askable(part)
  const allowed =
    known.map((one) => `\`${name}.${one}\``).join(', ') || words`it was given no figures`
  const [figure, ...more] = fields
  if (figure === undefined || more.length > 0) {
    const text = words`\`${name}\` is a part; say which figure of it`
    report(ctx, note, at, { rule: 'not-a-number', text, allowed })
    return undefined
  }
  const own = isOfAll(figure) ? figureOfAll(part, figure) : figure
  if (own !== undefined && known.includes(own)) return `${owner.slug}/${name}.${own}`
  report(ctx, note, at, {
    rule: 'not-given',
    text: words`the part \`${name}\` was not given \`${isOfAll(figure) ? ofOne[figure] : figure}\``,
    allowed,
    hint: didYouMean(figure, known, `${name}.`),
  })
  return undefined
}
