/**
 * The page that a block has to itself: title, where it stands, hazards, the card, where what went in
 * comes from, the calculator's sources. In: a block and a context made for its page (`alone`), so that
 * numbers lead to their stories at the end of their notes. The page writes these stretches and nothing
 * that is worked besides; `verify` holds each of them.
 */
import { standingWords } from '../../calculators/hazard-names.ts'
import { givenIds, usedGiven } from '../ledger/given.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import { blockHtml } from './block.ts'
import { sourceText } from './calculator.ts'
import type { CardContext } from './context.ts'
import { editionOf } from './edition.ts'
import { sentenceHtml } from './firm.ts'
import { hazardsHtml } from './hazards.ts'
import { escape } from './html.ts'
import { numberHtml } from './number.ts'
import { originHtml } from './origin.ts'
import { rootsOf } from './rests.ts'
import { capital, dateWords, draftWords, howWords, labelOf } from './words.ts'
import { words } from '../words/words.ts'

export interface BlockPage {
  /** Title, note, date and edition. */
  readonly head: string
  readonly hazards: string
  readonly card: string
  /** '' where nothing went in that has one. */
  readonly origins: string
  readonly sources: string
  /** The way back to its place in the note. */
  readonly back: string
}

export function blockPage(block: PublishedBlock, ctx: CardContext): BlockPage {
  const note = ctx.note(block.note)
  const place = escape(ctx.href(`/notes/${block.note}/#${block.name}`))
  const link = `<a href="${place}">${escape(note?.title ?? block.note)}</a>`
  const day = note?.changed ?? note?.date ?? ''
  const date = `<time datetime="${escape(day)}">${escape(dateWords(day))}</time>`
  const edition = editionOf(ctx.published, block.note)
  return {
    head: `<p class="over">${note?.draft === true ? `<strong class="draft">${draftWords}</strong> ` : ''}${words`One block of ${link}, ${date}, edition ${edition}`}</p><h1>${escape(block.title)}</h1>`,
    // With panels the standing words come along.
    hazards:
      block.hazards.length > 0
        ? hazardsHtml(block.hazards)
        : `<p class="standing">${escape(standingWords)}</p>`,
    card: blockHtml(block, ctx),
    origins: originsHtml(block, ctx),
    sources: sourcesHtml(block, ctx),
    back: `<p class="back">${words`Back to its place in ${link}`}</p>`,
  }
}

/** The numbers at the bottom of it, each with its source. */
function originsHtml(block: PublishedBlock, ctx: CardContext): string {
  const roots = rootsOf(givenIds(usedGiven(block)), ctx)
  if (roots.length === 0) return ''
  const rows = roots.map((root) => {
    const from = root.note === block.note ? '' : (ctx.note(root.note)?.title ?? root.note)
    const inNote = from === '' ? '' : ` <span class="from">${words`in ${escape(from)}`}</span>`
    const other = root.block === null || root.block === block.id ? undefined : ctx.block(root.block)
    const inBlock =
      other === undefined ? '' : ` <span class="from">${words`of ${escape(other.title)}`}</span>`
    return [
      `<tr><th scope="row">${escape(capital(labelOf(root, ctx)))}${inBlock}${inNote}</th>`,
      `<td data-label="${words`Value`}">${numberHtml(root, ctx)}</td>`,
      `<td data-label="${words`How`}">${howWords(root)}</td>`,
      `<td data-label="${words`Where from`}">${originHtml(root, ctx)}</td></tr>`,
    ].join('')
  })
  const heads = [words`Number`, words`Value`, words`How`, words`Where from`]
  return `<table class="ledger origins"><caption>${words`The numbers that it rests on, down to the last.`}</caption><thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>`
}

function sourcesHtml(block: PublishedBlock, ctx: CardContext): string {
  const sources = ctx.calculator(block.calculator)?.sources ?? []
  return `<ul class="sources">${sources.map((source) => `<li>${sentenceHtml(sourceText(source))}</li>`).join('')}</ul>`
}
