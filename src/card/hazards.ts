/**
 * Hazards as signal-word panels in the published manner (ANSI Z535, ISO 3864): signal word with the
 * alert symbol, what it is, what it does, how to avoid it. A NOTICE is about damage only and has no
 * alert symbol. Nothing else on a page uses these colours or the triangle.
 */
import { hazards, standingWords, type Hazard, type HazardId } from '../../calculators/hazards.ts'
import { sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { dateWords, signalWords } from './words.ts'
import { words } from '../words/words.ts'

export function isHazard(id: string): id is HazardId {
  return Object.hasOwn(hazards, id)
}

function hazardOf(id: string): Hazard {
  if (!isHazard(id)) throw new Error(`no hazard \`${id}\``)
  return hazards[id]
}

export function hazardElementId(id: string): string {
  return `Hazard-${id}`
}

const alert =
  '<svg class="alert" viewBox="0 0 24 22" width="24" height="22" aria-hidden="true"><path d="M12 1.5 23 20.5H1z" fill="none" stroke="currentColor" stroke-width="2" stroke-linejoin="round"/><path d="M12 8v6" stroke="currentColor" stroke-width="2.4"/><circle cx="12" cy="17" r="1.4" fill="currentColor"/></svg>'

/** One panel; with `anchor` it can be linked to. Unknown ids throw. */
export function panelHtml(id: string, anchor = true): string {
  const hazard = hazardOf(id)
  const element = hazardElementId(id)
  return [
    `<div class="hazard hazard-${hazard.signal.toLowerCase()}" role="note"${anchor ? ` id="${element}"` : ''}>`,
    `<p class="signal">${hazard.signal === 'NOTICE' ? '' : alert}<span>${signalWords[hazard.signal]}</span></p>`,
    `<div class="hazard-text"><p><b>${escape(hazard.title)}.</b> ${sentenceHtml(hazard.what)} ${sentenceHtml(hazard.consequence)}</p>`,
    `<p>${sentenceHtml(hazard.avoid)}</p>`,
    `<p class="basis">${sentenceHtml(hazard.source)} ${words`Reviewed ${escape(dateWords(hazard.reviewed))}.`}</p>`,
    '</div></div>',
  ].join('')
}

const order = ['DANGER', 'WARNING', 'CAUTION', 'NOTICE']

/** The panels of these hazards, gravest first, with the standing words once. Unknown ids throw. */
export function hazardsHtml(
  ids: readonly string[],
  options: { readonly anchor?: boolean } = {},
): string {
  if (ids.length === 0) return ''
  const panels = ids
    .toSorted((a, b) => order.indexOf(hazardOf(a).signal) - order.indexOf(hazardOf(b).signal))
    .map((id) => panelHtml(id, options.anchor !== false))
  return `<div class="hazards">${panels.join('')}<p class="standing">${escape(standingWords)}</p></div>`
}

/** One line for the work card, each name a link to its panel on the page. */
export function hazardLineHtml(ids: readonly string[]): string {
  const known = ids.filter(isHazard)
  if (known.length === 0) return ''
  const links = known
    .toSorted((a, b) => order.indexOf(hazards[a].signal) - order.indexOf(hazards[b].signal))
    .map((id) => {
      const { signal, title } = hazards[id]
      return `<li><a href="#${hazardElementId(id)}"><b>${signalWords[signal]}</b> ${escape(title)}</a></li>`
    })
  return `<ul class="hazard-line">${links.join('')}</ul>`
}

/** What a card says of its hazards: their names, and the panels that its page does not have. */
export function cardHazardsHtml(ids: readonly string[], panels: readonly string[]): string {
  return `${hazardsHtml(panels)}${hazardLineHtml(ids)}`
}
