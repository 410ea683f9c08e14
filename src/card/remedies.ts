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
import { words } from '../words/words.ts'
import { allOf } from '../words/lists.ts'

const head = `<p class="card-part">${words`What would pass`}</p>`
const foot = `<p class="basis">${words`Found by working this card again with one choice changed. It speaks of this card’s checks only; local codes and licensed practice come first.`}</p>`

export function remediesHtml(block: PublishedBlock, remedies: Remedies, ctx: CardContext): string {
  const calculator = ctx.calculator(block.calculator)
  const { finding, missing, held, cannot, untried } = remedies
  if (missing.length > 0)
    return `${head}<p>${words`Nothing can be judged before this is known: ${escape(missing.join('; '))}.`}</p>`
  if (finding === undefined)
    return `${head}<p>${words`It passes as it is: there is nothing to change.`}</p>`
  const title = checkTitle(finding.check, calculator)
  const items = remedies.remedies.map((one) => `<li>${remedyHtml(one, calculator, ctx)}</li>`)
  return [
    head,
    `<p>${frameHtml(finding.level)} <b>${escape(title)}.</b> ${sentenceHtml(finding.text)} ${words`Limit: ${sentenceHtml(finding.threshold)}.`}</p>`,
    items.length > 0
      ? `<p>${words`Any one of these choices, changed alone, would make it pass:`}</p><ul class="remedies">${items.join('')}</ul>`
      : `<p>${noneWords(remedies)}</p>`,
    items.length === 0 || cannot.length === 0
      ? ''
      : `<p>${words`These cannot do it alone: ${escape(namesText(cannot.map(({ label }) => label)))}.`}</p>`,
    held.length === 0
      ? ''
      : `<p>${words`Not offered, since no choice: ${escape(held.map((one) => heldWords(one, ctx)).join('; '))}.`}</p>`,
    untried.length === 0
      ? ''
      : `<p>${words`Not tried, there are too many for one press: ${escape(namesText(untried.map(({ label }) => label)))}.`}</p>`,
    items.length > 0 ? foot : '',
  ].join('')
}

const checkTitle = (check: string, calculator: Calculator | undefined): string =>
  calculator?.checks[check]?.title ?? check

function noneWords({ cannot, held }: Remedies): string {
  if (cannot.length === 0)
    return held.length === 0
      ? words`Nothing on this card is the builder’s choice: what it rests on has to change.`
      : words`Nothing that is left to choose on this card can change it.`
  return words`No choice on this card, changed alone, was found to make it pass; tried: ${escape(namesText(cannot.map(({ label }) => label)))}.`
}

function heldWords({ place, by }: Held, ctx: CardContext): string {
  const why = by.calculator === null ? kindWords[by.kind] : words`worked out on another card`
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
  const further = beyond === undefined ? '' : stepText({ ...beyond, place }, ctx)
  return [
    `<b>${escape(place.label)}</b>, ${now === undefined ? words`not given now` : words`now ${escape(valueText(now, field, ctx))}`}:`,
    `<b>${escape(bandWords(place, band, ctx))}</b>${distance}.`,
    size === undefined
      ? ''
      : words`The first made size is ${escape(formatQuantity(size.value, size.unit, { exact: true }))}.`,
    band.unusual ? words`That is outside its usual range.` : '',
    beyond === undefined
      ? ''
      : words`At ${escape(valueText(beyond.value, field, ctx))}, ${escape(further)} further on: ${levelWords[beyond.finding.level]}. ${sentenceHtml(beyond.finding.text)}`,
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
    return low === high ? low : words`${low} to ${high}`
  }
  if (from !== undefined) {
    const edge = edgeText(from, field, ctx)
    return wire ? words`${edge} or thicker` : words`${edge} or more`
  }
  if (to !== undefined) {
    const edge = edgeText(to, field, ctx)
    return wire ? words`${edge} or thinner` : words`${edge} or less`
  }
  return words`any value that the field allows`
}

function choiceHtml({ place, options }: ChoiceRemedy, calculator: Calculator | undefined): string {
  const named = (key: string): string => place.field.options[key] ?? key
  const now = place.now === undefined ? words`not given now` : words`now ${named(place.now)}`
  const listed = options.map(({ key, worse }, index) => {
    const name = `<b>${escape(named(key))}</b>`
    return [index === 0 ? `${name}.` : words`Or ${name}.`, worseWords(worse, calculator)]
      .join(' ')
      .trim()
  })
  return `<b>${escape(place.label)}</b>, ${escape(now)}: ${listed.join(' ')}`
}

function worseWords(worse: readonly string[], calculator: Calculator | undefined): string {
  if (worse.length === 0) return ''
  const titles = allOf(worse.map((check) => `“${checkTitle(check, calculator)}”`))
  return escape(words`It makes ${titles} worse than now.`)
}
