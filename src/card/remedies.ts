/**
 * "What would pass" as HTML: the worst finding, and each choice that would make it pass when changed
 * alone, with what is left in hand a little further on. What cannot do it, and what is not offered
 * because it is no choice, is said too. A rounded value is one that was tried and passed.
 */
import type { Calculator } from '../../calculators/define.ts'
import type { ChoiceRemedy, Held, NumberRemedy, Remedies, Remedy } from '../ledger/matters.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import { formatQuantity } from '../quantity/index.ts'
import type { CardContext } from './context.ts'
import { frameHtml } from './findings.ts'
import { sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { distanceWords, edgeText, namesText, stepText, valueText } from './matters-words.ts'
import { kindWords, labelOf, levelWords } from './words.ts'

const head = '<p class="card-part">What would pass</p>'
const foot =
  '<p class="basis">Found by working this card again with one choice changed. It speaks of this card’s checks only; local codes and licensed practice come first.</p>'

export function remediesHtml(block: PublishedBlock, remedies: Remedies, ctx: CardContext): string {
  const calculator = ctx.calculator(block.calculator)
  const { finding, missing, held, cannot, untried } = remedies
  if (missing.length > 0)
    return `${head}<p>Nothing can be judged before this is known: ${escape(missing.join('; '))}.</p>`
  if (finding === undefined) return `${head}<p>It passes as it is: there is nothing to change.</p>`
  const title = checkTitle(finding.check, calculator)
  const items = remedies.remedies.map((one) => `<li>${remedyHtml(one, calculator, ctx)}</li>`)
  return [
    head,
    `<p>${frameHtml(finding.level)} <b>${escape(title)}.</b> ${sentenceHtml(finding.text)} Limit: ${sentenceHtml(finding.threshold)}.</p>`,
    items.length > 0
      ? `<p>Any one of these choices, changed alone, would make it pass:</p><ul class="remedies">${items.join('')}</ul>`
      : `<p>${noneWords(remedies)}</p>`,
    items.length === 0 || cannot.length === 0
      ? ''
      : `<p>These cannot do it alone: ${escape(namesText(cannot.map(({ label }) => label)))}.</p>`,
    held.length === 0
      ? ''
      : `<p>Not offered, since no choice: ${escape(held.map((one) => heldWords(one, ctx)).join('; '))}.</p>`,
    untried.length === 0
      ? ''
      : `<p>Not tried, there are too many for one press: ${escape(namesText(untried.map(({ label }) => label)))}.</p>`,
    items.length > 0 ? foot : '',
  ].join('')
}

const checkTitle = (check: string, calculator: Calculator | undefined): string =>
  calculator?.checks[check]?.title ?? check

function noneWords({ cannot, held }: Remedies): string {
  if (cannot.length === 0)
    return held.length === 0
      ? 'Nothing on this card is the builder’s choice: what it rests on has to change.'
      : 'Nothing that is left to choose on this card can change it.'
  return `No choice on this card, changed alone, was found to make it pass; tried: ${escape(namesText(cannot.map(({ label }) => label)))}.`
}

function heldWords({ place, by }: Held, ctx: CardContext): string {
  const why = by.calculator === null ? kindWords[by.kind] : 'worked out on another card'
  return by.block === null || by.calculator !== null
    ? `${place.label} (${labelOf(by, ctx)}, ${why})`
    : `${place.label} (${why})`
}

function remedyHtml(remedy: Remedy, calculator: Calculator | undefined, ctx: CardContext): string {
  return remedy.type === 'number'
    ? numberHtml(remedy, calculator, ctx)
    : choiceHtml(remedy, calculator)
}

function numberHtml(
  { place, band, size, beyond, worse }: NumberRemedy,
  calculator: Calculator | undefined,
  ctx: CardContext,
): string {
  const { field, now } = place
  const distance =
    now === undefined ? '' : `, ${escape(distanceWords(place, now, band.nearest, ctx))}`
  const further = beyond === undefined ? '' : `${stepText({ ...beyond, place }, ctx)} further on`
  return [
    `<b>${escape(place.label)}</b>, ${now === undefined ? 'not given now' : `now ${escape(valueText(now, field, ctx))}`}:`,
    `<b>${escape(bandWords(place, band, ctx))}</b>${distance}.`,
    size === undefined
      ? ''
      : `The first made size is ${escape(formatQuantity(size.value, size.unit, { exact: true }))}.`,
    band.unusual ? 'That is outside its usual range.' : '',
    beyond === undefined
      ? ''
      : `At ${escape(valueText(beyond.value, field, ctx))}, ${escape(further)}: ${levelWords[beyond.finding.level]}. ${sentenceHtml(beyond.finding.text)}`,
    worseWords(worse, calculator),
  ]
    .filter((part) => part !== '')
    .join(' ')
}

function bandWords(
  { field }: NumberRemedy['place'],
  { from, to }: NumberRemedy['band'],
  ctx: CardContext,
): string {
  const wire = field.of === 'wireArea'
  if (from !== undefined && to !== undefined) {
    const [low, high] = [edgeText(from, field, ctx), edgeText(to, field, ctx)]
    return low === high ? low : `${low} to ${high}`
  }
  if (from !== undefined) return `${edgeText(from, field, ctx)} or ${wire ? 'thicker' : 'more'}`
  if (to !== undefined) return `${edgeText(to, field, ctx)} or ${wire ? 'thinner' : 'less'}`
  return 'any value that the field allows'
}

function choiceHtml({ place, options }: ChoiceRemedy, calculator: Calculator | undefined): string {
  const words = (key: string): string => place.field.options[key] ?? key
  const now = place.now === undefined ? 'not given now' : `now ${words(place.now)}`
  const listed = options.map(({ key, worse }) =>
    [`<b>${escape(words(key))}</b>.`, worseWords(worse, calculator)].join(' ').trim(),
  )
  return `<b>${escape(place.label)}</b>, ${escape(now)}: ${listed.join(' Or ')}`
}

function worseWords(worse: readonly string[], calculator: Calculator | undefined): string {
  if (worse.length === 0) return ''
  const titles = worse.map((check) => `“${checkTitle(check, calculator)}”`).join(' and ')
  return escape(`It makes ${titles} worse than now.`)
}
