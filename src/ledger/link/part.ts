/**
 * A part's entry, and an entry for each of its figures. In: a part as read. Out (into the ledger): the
 * part, its figures as numbers of their own, and what is worked from them for as many as there are.
 *
 * A price is what the receipt says, unless it is only planned (a guess) or something else says it
 * (`priced`). Any other figure is of its `source`, or a guess.
 */
import { defined } from '../defined.ts'
import { receiptKey } from '../money.ts'
import type { NoteSource, PartFigure, PartSource } from '../note-source.ts'
import type { Expression, PublishedNumber } from '../published.ts'
import type { LinkContext } from './context.ts'
import { addNumber, summed } from './numbers.ts'
import { figureOfAll, isOfAll, ofOne } from './part-figures.ts'
import { resolveSum } from './resolve.ts'
import { instrumentOf, sourceOf } from './sources.ts'
import { words } from '../../words/words.ts'

export function linkPart(ctx: LinkContext, note: NoteSource, part: PartSource): void {
  const made: string[] = []
  for (const [figure, raw] of Object.entries(part.figures)) {
    if (!isFigure(figure)) continue
    const name = `${part.name}.${figure}`
    if (raw.type === 'sum') {
      const expression = resolveSum(ctx, note, raw.sum)
      if (expression === undefined) continue
      addNumber(ctx, note, name, raw, { part: part.what, ...summed(expression) })
    } else if (raw.type === 'text')
      addNumber(ctx, note, name, raw, {
        part: part.what,
        typed: raw.text,
        date: part.on ?? note.meta.date,
        ...originOf(ctx, note, part, figure),
      })
    else continue
    made.push(figure)
  }
  for (const all of Object.keys(ofOne)) {
    if (!isOfAll(all) || figureOfAll(part, all) !== all) continue
    if (!made.includes(ofOne[all]) || !made.includes('quantity')) continue
    const id = (figure: string): Expression => ({ ref: `${note.slug}/${part.name}.${figure}` })
    addNumber(ctx, note, `${part.name}.${all}`, part, {
      part: part.what,
      ...summed({ op: '*', left: id('quantity'), right: id(ofOne[all]) }),
    })
    made.push(all)
  }
  const { name, what, size, status, used, remark, line } = part
  ctx.parts.push({
    id: `${note.slug}/${name}`,
    note: note.slug,
    name,
    what,
    ...defined({ size }),
    status,
    used,
    date: part.on ?? note.meta.date,
    ...defined({ remark }),
    figures: made,
    file: note.file,
    line,
  })
}

const isFigure = (name: string): name is PartFigure => !isOfAll(name)

type Origin = Pick<PublishedNumber, 'kind' | 'firmness'> & Partial<PublishedNumber>

const guess = (because: string): Origin => ({ kind: 'assumed', firmness: 'assumed', because })

function originOf(
  ctx: LinkContext,
  note: NoteSource,
  part: PartSource,
  figure: PartFigure,
): Origin {
  if (figure === 'quantity')
    return { kind: 'chosen', firmness: 'chosen', because: words`as many as are fitted` }
  if (figure === 'price') return priceOrigin(ctx, note, part)
  if (part.source === undefined) return guess(words`typed at the part, without a source`)
  const source = sourceOf(ctx, note, part.source, part.sourceAt ?? part, part.at)
  return { kind: 'rated', firmness: 'rated', source }
}

function priceOrigin(ctx: LinkContext, note: NoteSource, part: PartSource): Origin {
  const { priced, status } = part
  if (priced !== undefined && Object.hasOwn(ctx.site.instruments, priced)) {
    const instrument = instrumentOf(ctx, note, priced, part)
    const within = defined({ plusMinusShown: instrument.plusMinus })
    return { kind: 'reading', firmness: 'reading', instrument, ...within }
  }
  if (priced !== undefined)
    return { kind: 'rated', firmness: 'rated', source: sourceOf(ctx, note, priced, part) }
  if (status === 'planned') return guess(words`planned, and not asked for yet`)
  const title = status === 'ordered' ? words`the order` : words`the receipt`
  return { kind: 'reading', firmness: 'reading', instrument: { key: receiptKey, title } }
}
