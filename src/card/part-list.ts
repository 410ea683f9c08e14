/**
 * The page of parts: a table for each phase, and what all of it costs. In: the published ledger. Out:
 * HTML. A part's row leads to where it is fitted, its figures to their stories.
 */
import type { PublishedPart } from '../ledger/published.ts'
import { phaseWords, phases } from '../ledger/phases.ts'
import { moneyText } from '../ledger/money.ts'
import type { CardContext } from './context.ts'
import { firm, sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { costOf, costsOf, type Rollup, type Sums } from './money.ts'
import { numberHtml } from './number.ts'
import { partMarkHtml, partRowId, partStatusWords } from './part.ts'
import { dateWords } from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

export const partsOf = (ctx: CardContext): readonly PublishedPart[] => ctx.published.parts ?? []

export function partCountHtml(ctx: CardContext): string {
  const parts = partsOf(ctx)
  if (parts.length === 0) return `<p>${words`No part is listed in these notes yet.`}</p>`
  const fitted = parts.filter(({ status }) => status === 'fitted' || status === 'owned')
  const unweighed = fitted.filter(({ figures }) => !figures.includes('mass'))
  const all = counted(parts.length, words`${parts.length} part`, words`${parts.length} parts`)
  const weight =
    fitted.length === 0
      ? words`${all}, ${fitted.length} of them fitted.`
      : unweighed.length === 0
        ? words`${all}, ${fitted.length} of them fitted, each with its mass.`
        : words`${all}, ${fitted.length} of them fitted. Of these ${unweighed.length} have no mass and are in no sum of masses.`
  return `<p>${weight} ${words`Each row leads to where the part is written up.`}</p>`
}

/** Tables of parts, by phase of the work. */
export function partTablesHtml(ctx: CardContext): string {
  const groups = Map.groupBy(partsOf(ctx), ({ note }) => ctx.note(note)?.phase ?? '')
  return inOrder([...groups.keys()])
    .map((phase) => {
      const rows = (groups.get(phase) ?? []).map((part) => rowHtml(part, ctx)).join('')
      return `<section class="phase" aria-labelledby="Parts-${phase}"><h2 id="Parts-${phase}">${escape(phaseWords(phase))}</h2><table class="ledger parts"><thead><tr>${headsHtml}</tr></thead><tbody>${rows}</tbody></table></section>`
    })
    .join('')
}

const heads = [
  words`Part`,
  words`Size`,
  words`How many`,
  words`Price of one`,
  words`Mass of one`,
  words`Status`,
  words`Note`,
]
const headsHtml = heads.map((head) => `<th scope="col">${head}</th>`).join('')

/** In the order of the work. */
function inOrder(found: readonly string[]): string[] {
  const known = Object.keys(phases)
  return found.toSorted((a, b) => known.indexOf(a) - known.indexOf(b))
}

function rowHtml(part: PublishedPart, ctx: CardContext): string {
  const figure = (name: string): string => {
    const number = part.figures.includes(name) ? ctx.number(`${part.id}.${name}`) : undefined
    return number === undefined ? '' : numberHtml(number, ctx, { brackets: false })
  }
  const note = ctx.href(`/notes/${part.note}/`)
  const cost = part.figures.includes('cost') ? costOf(part, ctx.published) : undefined
  const together =
    cost === undefined ? '' : `, ${words`together ${numberHtml(cost, ctx, { brackets: false })}`}`
  const written = `<a href="${escape(note)}">${escape(ctx.note(part.note)?.title ?? part.note)}</a>`
  const remark =
    part.remark === undefined ? '' : `${sentenceHtml(part.remark.replace(/[.!]?$/, '.'))} `
  const cells = [
    sentenceHtml(part.size ?? ''),
    figure('quantity') || '1',
    `${figure('price')}${together}`,
    figure('mass'),
    `${partMarkHtml(part.status, false)} ${partStatusWords[part.status]}, ${part.used ? `${words`used`}, ` : ''}${dateWords(part.date)}`,
    `${remark}${written}`,
  ]
  return [
    `<tr id="${partRowId(part)}"><th scope="row"><a href="${escape(`${note}#${part.name}`)}">${escape(part.what)}</a></th>`,
    ...cells.map((cell, index) => `<td data-label="${heads[index + 1] ?? ''}">${cell}</td>`),
    '</tr>',
  ].join('')
}

/** What it costs, in each currency; '' where nothing has a price. */
export function costHtml(ctx: CardContext): string {
  const { rollups, owned, unpriced } = costsOf(ctx.published)
  if (rollups.length === 0) return ''
  const names = (parts: readonly PublishedPart[]): string =>
    parts.map((part) => `<a href="#${partRowId(part)}">${escape(part.what)}</a>`).join(', ')
  const notes = [
    rollups.length > 1
      ? words`Each currency is added up by itself: no rate of exchange is kept here.`
      : '',
    owned.length === 0 ? '' : words`Owned before, and counted as nothing: ${names(owned)}.`,
    unpriced.length === 0
      ? ''
      : words`Without a price, so that it all comes to more: ${names(unpriced)}.`,
  ].filter((text) => text !== '')
  const tables = rollups.map((rollup) => rollupHtml(rollup, ctx)).join('')
  return `${tables}${notes.map((text) => `<p>${text}</p>`).join('')}`
}

const costHeads = [words`Paid`, words`Still to pay`, words`Sold`, words`Together`]

function rollupHtml(rollup: Rollup, ctx: CardContext): string {
  const { currency, total, aside, all, guesses } = rollup
  const money = (value: Sums['paid']): string =>
    `<data class="sum" value="${value.value}">${escape(moneyText(value.value, currency))}</data>`
  const cells = ({ paid, toCome, sold, together }: Sums): string =>
    [paid, toCome, sold, together]
      .map((value, index) => `<td data-label="${costHeads[index] ?? ''}">${money(value)}</td>`)
      .join('')
  const row = (name: string, sums: Sums): string =>
    `<tr><th scope="row">${escape(name)}</th>${cells(sums)}</tr>`
  const rows = inOrder(rollup.phases.map(({ phase }) => phase)).flatMap((phase) => {
    const sums = rollup.phases.find((one) => one.phase === phase)
    return sums === undefined ? [] : [row(phaseWords(phase), sums)]
  })
  const share = ctx.published.site.contingency
  const put =
    aside === undefined || share === undefined || total.toCome.value === 0
      ? ''
      : ` ${words`With ${escape(firm(share))} of what is still to be paid put by, ${money(aside)}, it comes to ${`<strong>${money(all)}</strong>`}.`}`
  const guessed =
    guesses === 0
      ? ''
      : ` ${counted(guesses, words`${guesses} price in it is a guess.`, words`${guesses} prices in it are guesses.`)}`
  return `<table class="ledger costs"><caption>${words`In ${escape(currency)}`}</caption><thead><tr><th scope="col">${words`Phase`}</th>${costHeads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead><tbody>${rows.join('')}${row(words`All of it`, total)}</tbody></table><p>${words`What was sold counts against what was spent.`}${put}${guessed}</p>`
}
