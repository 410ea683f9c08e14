/**
 * A part where it is fitted: what it is and its size, with a mark that says where it is by now, leading
 * to its row in the list of parts. Phrasing content. In: a part of the ledger. Out: HTML.
 *
 * The mark is a square, which no number has: full where the part is fitted, half where it is paid for or
 * ordered, empty where it is only planned, crossed where it is out of the vehicle.
 */
import type { PartStatus, PublishedPart } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { sentenceHtml } from './firm.ts'
import { attribute, escape, idOf } from './html.ts'
import { words } from '../words/words.ts'

export const partStatusWords: Readonly<Record<PartStatus, string>> = {
  planned: words`planned`,
  ordered: words`ordered`,
  bought: words`bought, not fitted yet`,
  fitted: words`fitted`,
  owned: words`fitted, already owned`,
  spare: words`paid for, a spare`,
  out: words`taken out`,
  sold: words`taken out and sold`,
}

const square = '<path d="M1.5 1.5h9v9h-9z"/>'
const full = '<path d="M1.5 1.5h9v9h-9z" fill="currentColor"/>'
const half = `${square}<path d="M1.5 10.5v-9l9 9z" fill="currentColor"/>`
const crossed = `${square}<path d="m1.5 1.5 9 9m0-9-9 9"/>`

const drawings: Readonly<Record<PartStatus, string>> = {
  planned: square,
  ordered: half,
  bought: half,
  fitted: full,
  owned: full,
  spare: half,
  out: crossed,
  sold: crossed,
}

export function partMarkHtml(status: PartStatus, spoken = true): string {
  const name = spoken
    ? `role="img" aria-label="${words`part, ${partStatusWords[status]}`}"`
    : 'aria-hidden="true"'
  return `<svg class="mark mark-part" viewBox="0 0 12 12" width="12" height="12" fill="none" stroke="currentColor" stroke-width="1.4" ${name}>${drawings[status]}</svg>`
}

/** HTML id of the part's row in the list of parts. */
export const partRowId = ({ id }: PublishedPart): string => `Part-${idOf(id)}`

function partText({ what, size, used }: PublishedPart): string {
  return [what, size, used ? words`used` : undefined]
    .filter((text) => text !== undefined)
    .join(', ')
}

export function partHtml(part: PublishedPart, ctx: CardContext, linked: boolean): string {
  const inner = `${partMarkHtml(part.status)}${sentenceHtml(partText(part))}`
  const id = attribute('id', part.name)
  if (!linked) return `<span class="part"${id}>${inner}</span>`
  return `<a class="part"${id} href="${escape(`${ctx.href('/parts/')}#${partRowId(part)}`)}">${inner}</a>`
}
