/**
 * Whether each figure of a part is what it is called: a mass a mass, a price a sum of money in one
 * currency. In: the worked ledger. Out: a problem for each that is not, which only working it tells.
 *
 * With a quantity that has a unit a price is one per that unit; together they must come to money.
 */
import { dimensions, sameVector } from '../quantity/index.ts'
import type { Of } from '../quantity/types.ts'
import { currencyOf } from './money.ts'
import type { Problem } from './problems.ts'
import type { Published, PublishedNumber, PublishedPart } from './published.ts'
import { problemAt, type Said } from './report.ts'
import { words } from '../words/words.ts'
import { oneOf } from '../words/lists.ts'

/** What each figure of a part is; a price is looked at by itself. */
const kinds: Readonly<Record<string, Of>> = {
  mass: 'mass',
  totalMass: 'mass',
  x: 'length',
  z: 'length',
  load: 'current',
  totalLoad: 'current',
  power: 'power',
  totalPower: 'power',
  duty: 'fraction',
  surge: 'number',
}

/** Whether a figure is told here where it is no such quantity. */
export const isToldOfPart = (name: string, of: Of): boolean => {
  const figure = name.slice(name.lastIndexOf('.') + 1)
  return figure === 'price' || figure === 'cost' ? of === 'money' : kinds[figure] === of
}

export function partProblems({ parts = [], numbers }: Published): Problem[] {
  const byId = new Map(numbers.map((number) => [number.id, number]))
  return parts.flatMap((part) => {
    // For as many as there are it is told once, where that is worked.
    const told = (figure: string): boolean => {
      const all =
        figure === 'price' ? 'cost' : `total${figure[0]?.toUpperCase() ?? ''}${figure.slice(1)}`
      return part.figures.includes(all)
    }
    return part.figures.flatMap((figure) => {
      const number = byId.get(`${part.id}.${figure}`)
      if (number === undefined || number.value === null || told(figure)) return []
      const said = faultOf(part, figure, number)
      return said === undefined ? [] : [problemAt(part.file, number, said)]
    })
  })
}

function faultOf(part: PublishedPart, figure: string, number: PublishedNumber): Said | undefined {
  const { vector, flavour, value } = number
  if (figure === 'price' || figure === 'cost') {
    if (currencyOf(vector) === undefined)
      return wrong(part, figure, number, words`a sum of money`, '`$89`, `€ 89`, `89 CAD`')
    return (value ?? 0) >= 0 ? undefined : negative(part, figure, number)
  }
  if (figure === 'quantity') return (value ?? 0) > 0 ? undefined : negative(part, figure, number)
  const of = kinds[figure]
  if (of === undefined) return undefined
  const due = dimensions[of]
  if (!sameVector(due.vector, vector) || due.flavour !== flavour)
    return {
      ...wrong(part, figure, number, due.words, oneOf([...new Set(due.units)]) || words`a number`),
      hint:
        figure === 'surge'
          ? words`as many times what it draws otherwise: \`surge="2.5"\``
          : undefined,
    }
  const below = figure !== 'x' && figure !== 'z' && (value ?? 0) < 0
  return below ? negative(part, figure, number) : undefined
}

function wrong(
  { name, figures }: PublishedPart,
  figure: string,
  { shown }: PublishedNumber,
  due: string,
  allowed: string,
): Said {
  const times = figures.includes('quantity') && /^(?:cost|total)/.test(figure)
  return {
    rule: 'wrong-dimension',
    text: times
      ? words`\`${name}.${figure}\` is \`${shown}\`, for as many as there are; ${due} is due`
      : words`\`${name}.${figure}\` is \`${shown}\`; ${due} is due`,
    allowed,
  }
}

const negative = ({ name }: PublishedPart, figure: string, { shown }: PublishedNumber): Said => ({
  rule: 'below-nothing',
  text: words`\`${name}.${figure}\` is \`${shown}\`, which is not more than nothing`,
  hint: words`what was sold has \`status="sold"\` and the price it fetched`,
})
