/** The table of all numbers of the site, note by note. */
import type { PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { escape } from './html.ts'
import { markHtml } from './mark.ts'
import { storyHref, typedName } from './number.ts'
import { placeHref, valueHtml } from './origin.ts'
import { howWords, isSum, labelOf } from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

function sourceText({ source, instrument, because }: PublishedNumber): string {
  return [source?.title ?? instrument?.title ?? because, source?.edition, source?.at]
    .filter((text) => text !== undefined)
    .join(', ')
}

function rowHtml(number: PublishedNumber, ctx: CardContext): string {
  const name = isSum(number) ? '' : ` <code>${escape(typedName(number.name))}</code>`
  const place = placeHref(number, ctx) ?? ctx.href(`/notes/${number.note}/`)
  return [
    `<tr data-how="${number.kind}"><th scope="row"><a href="${escape(storyHref(number.id, ctx))}">${escape(labelOf(number, ctx))}</a>${name}</th>`,
    `<td data-label="${words`Value`}" data-sort="${number.value ?? ''}">${valueHtml(number, ctx)}</td>`,
    `<td data-label="${words`How it came`}">${markHtml(number, { spoken: false })}${howWords(number)}</td>`,
    `<td data-label="${words`Source`}">${escape(sourceText(number))}</td>`,
    `<td data-label="${words`Note`}"><a href="${escape(place)}">${escape(ctx.note(number.note)?.title ?? number.note)}</a></td></tr>`,
  ].join('')
}

export function numberCountHtml(ctx: CardContext): string {
  const many = ctx.published.numbers.length
  const text = counted(
    many,
    words`${many} number stands in these notes. Each leads to its story.`,
    words`${many} numbers stand in these notes. Each leads to its story.`,
  )
  return `<p>${text}</p>`
}

export function numberTableHtml(ctx: CardContext): string {
  const dates = new Map(ctx.published.notes.map(({ slug, date }) => [slug, `${date} ${slug}`]))
  const order = ({ note }: PublishedNumber): string => dates.get(note) ?? ''
  const rows = ctx.published.numbers
    .toSorted(
      (a, b) =>
        (order(a) < order(b) ? -1 : order(a) > order(b) ? 1 : 0) ||
        a.line - b.line ||
        a.column - b.column ||
        (a.id < b.id ? -1 : 1),
    )
    .map((number) => rowHtml(number, ctx))
  const heads = [words`Number`, words`Value`, words`How it came`, words`Source`, words`Note`]
  return [
    '<table class="ledger" id="All-numbers"><thead><tr>',
    ...heads.map((head) => `<th scope="col">${head}</th>`),
    `</tr></thead><tbody>${rows.join('')}</tbody></table>`,
  ].join('')
}
