/**
 * Parts as a table for a spreadsheet, in the form of the table of numbers: a row for each part in the order
 * of the notes, its figures in SI and money in its own currency, as many digits as they have. In: the
 * published ledger. Out: text. What is a guess is named in its row; at the end come the standing words.
 */
import { standingWords } from '../../../calculators/hazard-names.ts'
import type { Published, PublishedNumber, PublishedPart } from '../../ledger/published.ts'
import { currencyOf } from '../../ledger/money.ts'
import { phaseWords } from '../../ledger/phases.ts'
import { lookupOf } from '../lookup.ts'
import { costOf } from '../money.ts'
import { partStatusWords } from '../part.ts'
import { tableText } from './csv.ts'
import { words } from '../../words/words.ts'

/** Head of a column -> the figure that stands in it. */
const figures = {
  price: 'price',
  'mass (kg)': 'mass',
  'mass together (kg)': 'totalMass',
  'x (m)': 'x',
  'z (m)': 'z',
  'load (A)': 'load',
  'load together (A)': 'totalLoad',
  'power (W)': 'power',
  'power together (W)': 'totalPower',
  duty: 'duty',
  surge: 'surge',
} as const

const head = [
  'id',
  'note',
  'phase',
  'what',
  'size',
  'status',
  'used',
  'date',
  'quantity',
  'unit of quantity',
  'cost',
  'currency',
  ...Object.keys(figures),
  'guesses',
  'remark',
]

type Cells = Readonly<Record<string, string | number | null | undefined>>

export function partsCsvText(published: Published): string {
  const rows = (published.parts ?? []).map((part) => cellsOf(part, published))
  return tableText(head, [...rows, { id: standingWords }])
}

function cellsOf(part: PublishedPart, published: Published): Cells {
  const lookup = lookupOf(published)
  const figure = (name: string): PublishedNumber | undefined =>
    part.figures.includes(name) ? lookup.number(`${part.id}.${name}`) : undefined
  const quantity = figure('quantity')
  const priced = part.figures.includes('price') ? costOf(part, published) : undefined
  const phase = lookup.note(part.note)?.phase
  return {
    id: part.id,
    note: part.note,
    phase: phase === undefined ? null : phaseWords(phase),
    what: part.what,
    size: part.size,
    status: partStatusWords[part.status],
    used: part.used ? words`used` : words`new`,
    date: part.date,
    quantity: quantity === undefined ? 1 : quantity.value,
    'unit of quantity': quantity?.unit,
    cost: priced?.value,
    currency: priced && currencyOf(priced.vector),
    ...Object.fromEntries(
      Object.entries(figures).map(([name, one]) => [name, figure(one)?.value] as const),
    ),
    guesses: part.figures.filter((one) => figure(one)?.firmness === 'assumed').join('; '),
    remark: part.remark,
  }
}
