/**
 * The work card: one use of a calculator, as it stands in a note. The same text comes from the build,
 * from the browser and from `verify`. In `yours` mode it holds a reader's figures and says so, with
 * the builder's verdict beside the new one. A card never stands without its hazards.
 */
import { cannotTell, labelOf, verdictName } from './words.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { figuresHtml } from './figures.ts'
import { findingsHtml, verdictHtml } from './findings.ts'
import { firm, sentenceHtml } from './firm.ts'
import { escape, idOf, symbolsHtml } from './html.ts'
import { numberHtml } from './number.ts'
import { guessesOf } from './rests.ts'
import { blockPath } from './take/address.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

export type Mode = 'built' | 'yours'

/** Why a pass is provisional: the guesses it rests on, and how to settle them. */
function guessesHtml(block: PublishedBlock, ctx: CardContext): string {
  const guesses = guessesOf(block, ctx)
  if (guesses.length === 0) return ''
  const items = guesses.map((guess) => {
    const settle =
      guess.settle === undefined ? '' : `. ${words`To settle it: ${sentenceHtml(guess.settle)}`}`
    const name = escape(labelOf(guess, ctx))
    return `<li>${name} ${numberHtml(guess, ctx, { brackets: false })}${settle}</li>`
  })
  const many = guesses.length
  const title = counted(many, words`Rests on ${many} guess`, words`Rests on ${many} guesses`)
  return `<div class="guesses"><p class="card-part">${title}</p><ul>${items.join('')}</ul></div>`
}

function headHtml(block: PublishedBlock, ctx: CardContext, mode: Mode): string {
  const before = mode === 'yours' ? ctx.builder?.block(block.id) : undefined
  const yours =
    mode === 'yours'
      ? `<p class="yours">${before === undefined ? words`Your figures, of no note.` : words`Your figures. The builder’s verdict: ${verdictHtml(before)}`}</p>`
      : ''
  const reason =
    block.accepted !== null && verdictName(block) === 'accepted'
      ? `<p class="accepted"><b>${words`Accepted because:`}</b> ${sentenceHtml(block.accepted)}</p>`
      : ''
  const unknown =
    block.verdict === 'unknown'
      ? `<p class="accepted">${words`Where it says “${cannotTell}”, treat it as not passed.`}</p>`
      : ''
  return [
    '<div class="card-head">',
    `<p class="card-title" id="${titleId(block)}">${escape(block.title)}</p>`,
    `<p class="card-verdict">${verdictHtml(block)}</p>`,
    yours,
    reason,
    unknown,
    '</div>',
  ].join('')
}

function titleId(block: PublishedBlock): string {
  return `Title-${idOf(block.name)}`
}

function part(name: string, title: string, html: string): string {
  return html === ''
    ? ''
    : `<div class="card-${name}"><p class="card-part">${title}</p>${html}</div>`
}

/** The way to the page that it has to itself; none there, and none where it is of no note. */
function aloneHtml(block: PublishedBlock, ctx: CardContext): string {
  if (ctx.alone === block.id || ctx.note(block.note) === undefined) return ''
  return ` <a class="alone" href="${escape(blockPath(block, ctx))}">${words`This block by itself`}</a>`
}

/** What of a card comes finished, since a browser fetches its makers only where they are needed. */
export interface CardParts {
  /** The panels that the page does not have, and the line that names each. */
  readonly hazards: string
  readonly drawing: string
  /** The link by which to ask the builder; '' where the settings name no way. */
  readonly ask: string
}

export function cardHtml(
  block: PublishedBlock,
  ctx: CardContext,
  mode: Mode,
  parts: CardParts,
): string {
  const [open, close] = cardEnds(block, mode)
  return open + cardPieces(block, ctx, mode, parts).join('') + close
}

/** What stands around the pieces of a card. */
export const cardEnds = (block: PublishedBlock, mode: Mode): readonly [string, string] => [
  // Not a section: a named one is a landmark, and two cards of one calculator have one name.
  `<article class="card card-${mode}" data-card="${escape(block.id)}" aria-labelledby="${titleId(block)}">`,
  '</article>',
]

/** A card from top to bottom, always as many pieces; each is no element, one, or some. */
export function cardPieces(
  block: PublishedBlock,
  ctx: CardContext,
  mode: Mode,
  parts: CardParts,
): readonly string[] {
  const calculator = ctx.calculator(block.calculator)
  if (calculator === undefined) throw new Error(`no calculator \`${block.calculator}\``)
  const { wentIn, comesOut, wide } = figuresHtml(block, ctx)
  const working = block.working.map((line) => `<li>${symbolsHtml(firm(line))}</li>`).join('')
  const page = escape(ctx.href(`/calculators/${calculator.id}/`))
  return [
    headHtml(block, ctx, mode),
    parts.hazards,
    `<div class="card-sides">${part('in', words`What went in`, wentIn)}${part('out', words`What comes out`, comesOut)}</div>`,
    wide === '' ? '' : `<div class="card-wide">${wide}</div>`,
    part('working', words`Working`, working === '' ? '' : `<ol class="working">${working}</ol>`),
    part('checks', words`Checks`, findingsHtml(block.findings, calculator)),
    verdictName(block) === 'pass' ? '' : guessesHtml(block, ctx),
    parts.drawing,
    `<p class="card-foot"><a href="${page}">${words`${escape(calculator.title)}: formula, limits and outside checks`}</a>${aloneHtml(block, ctx)}${parts.ask}</p>`,
  ]
}
