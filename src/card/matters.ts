/**
 * "What moves it most" and "What would pass" as HTML. In: what the ledger found out about a block. Out:
 * a bar for each input, the same in words, and of the choices those that would make the worst check
 * pass. It speaks of this card's checks only and never of more.
 */
import type { Matters, Move, Remedies } from '../ledger/matters.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { escape } from './html.ts'
import { isStill, namesText, rangeWords, stepWords, valueText } from './matters-words.ts'
import { movesSvg } from './moves-chart.ts'
import { remediesHtml } from './remedies.ts'
import { words } from '../words/words.ts'

/** As many bars as one takes in; the rest is in words. */
const mostBars = 8

export function mattersHtml(
  block: PublishedBlock,
  matters: Matters | undefined,
  remedies: Remedies,
  ctx: CardContext,
): string {
  const moves = matters === undefined ? '' : movesHtml(matters, ctx)
  return `<div class="matters">${moves}${remediesHtml(block, remedies, ctx)}</div>`
}

function movesHtml(matters: Matters, ctx: CardContext): string {
  const { result, now, moves, missing } = matters
  const head = `<p class="card-part">${words`What moves it most`}</p>`
  if (missing.length > 0)
    return `${head}<p>${words`Nothing can be moved before this is known: ${escape(namesText(missing))}.`}</p>`
  const moving = moves.filter(({ span }) => span !== undefined && !isStill(span, now ?? span))
  const unknown = moves.filter(({ span }) => span === undefined)
  const still = moves.filter((move) => !moving.includes(move) && !unknown.includes(move))
  const name = `<b>${escape(result.label)}</b>`
  const stands =
    now === undefined
      ? words`${name} cannot be told as things stand.`
      : words`${name} is ${escape(valueText(now, result.field, ctx))} now, the line across each bar.`
  const items = moving.map((move) => `<li>${moveHtml(move, matters, ctx)}</li>`)
  const said = [
    moving.length === 0
      ? `<p>${stands} ${moves.length === 0 ? words`It has no number to move.` : words`No input, moved alone, is seen to move it.`}</p>`
      : `<p>${stands} ${words`Each input is moved alone, the rest stays as it is.`}</p>`,
    movesSvg(matters, moving.slice(0, mostBars), ctx),
    items.length === 0 ? '' : `<ol class="moves-words">${items.join('')}</ol>`,
    still.length === 0
      ? ''
      : `<p>${words`Does not move it over its range: ${labelsHtml(still)}.`}</p>`,
    unknown.length === 0
      ? ''
      : `<p>${words`Cannot tell how far it moves with: ${labelsHtml(unknown)}. At both ends of the range there is no result.`}</p>`,
    moving.some(({ step }) => step.how === 'step')
      ? `<p class="basis">${words`A temperature, a gauge pressure, a position and a count move by a fixed step, since a tenth of them means little; so does what has no tenth left before its end.`}</p>`
      : '',
    matters.untried === 0
      ? ''
      : `<p class="basis">${words`There are too many inputs for one press: ${matters.untried} are left out.`}</p>`,
  ]
  return head + said.join('')
}

function moveHtml(move: Move, { result, now }: Matters, ctx: CardContext): string {
  const { place } = move
  return [
    `<b>${escape(place.label)}</b>, ${words`now ${escape(valueText(move.now, place.field, ctx))}`}.`,
    escape(rangeWords(move, result.field, ctx)),
    escape(stepWords(move, now, result.field, ctx)),
  ]
    .filter((part) => part !== '')
    .join(' ')
}

const labelsHtml = (moves: readonly Move[]): string =>
  escape(namesText(moves.map(({ place }) => place.label)))
