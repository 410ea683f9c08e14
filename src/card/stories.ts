/**
 * The story of every number of a note, as a plain table at its end: the place the numbers link to, on
 * paper too. A row says how the number came, where from, what it rests on and where it stands. Numbers
 * of the text come first, in order of place. Those of a block follow, gathered: inputs with one and the
 * same story share a row. What a block was given by name has its story under that name. Its results are
 * worked in its card: they share a row, but for those that later numbers moved.
 */
import type { PublishedBlock, PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { escape } from './html.ts'
import { markHtml } from './mark.ts'
import { givenByName, isTableResult, nameOf, storyId } from './number.ts'
import { laterHtml, originHtml, placeHref, storyLink, valueHtml } from './origin.ts'
import { howWords, isSum, labelOf } from './words.ts'
import { words } from '../words/words.ts'

function howHtml(number: PublishedNumber): string {
  return `${markHtml(number, { spoken: false })}${howWords(number)}`
}

/** All rows are of one file, which the caption names. */
function placeText({ line }: PublishedNumber | PublishedBlock): string {
  return words`line\u00a0${line}`
}

function rowHtml(number: PublishedNumber, ctx: CardContext): string {
  const place = placeHref(number, ctx)
  const label = escape(labelOf(number, ctx))
  const rests = number.rests.map((id) => storyLink(id, ctx)).join(', ')
  return [
    `<tr id="${storyId(number.id)}"><th scope="row">${place === undefined ? label : `<a href="${escape(place)}">${label}</a>`}`,
    `${isSum(number) ? '' : `<code>${escape(number.name)}</code>`}</th>`,
    `<td data-label="${words`Value`}">${valueHtml(number, ctx)}</td>`,
    `<td data-label="${words`How`}">${howHtml(number)}</td>`,
    `<td data-label="${words`Where from`}">${originHtml(number, ctx)}</td>`,
    `<td data-label="${words`Rests on`}">${rests}</td>`,
    `<td data-label="${words`Place`}">${placeText(number)}</td></tr>`,
  ].join('')
}

/** One number of a block among others with the same story. */
function itemHtml(number: PublishedNumber, ctx: CardContext): string {
  // A result rests on all that went into its card; an input names what it was taken from.
  const result = number.calculator !== null
  const from = (result ? [] : number.rests).map((id) => `, ${storyLink(id, ctx)}`).join('')
  const id = result ? '' : ` id="${storyId(number.id)}"`
  return `<li${id}>${escape(labelOf(number, ctx))} ${valueHtml(number, ctx)}${from}</li>`
}

function gatheredHtml(numbers: readonly PublishedNumber[], ctx: CardContext): string {
  const groups = Map.groupBy(numbers, (number) => `${howHtml(number)}|${originHtml(number, ctx)}`)
  const rows = [...groups.values()].flatMap((members) => {
    const [first] = members
    if (first === undefined) return []
    const told = first.calculator !== null && laterHtml(first, ctx) === ''
    const what = told
      ? words`What comes out`
      : `<ul class="story-list">${members.map((number) => itemHtml(number, ctx)).join('')}</ul>`
    return `<tr><td colspan="2">${what}</td><td data-label="${words`How`}">${howHtml(first)}</td><td data-label="${words`Where from`}" colspan="3">${originHtml(first, ctx)}</td></tr>`
  })
  return rows.join('')
}

function byPlace(a: PublishedNumber, b: PublishedNumber): number {
  return a.line - b.line || a.column - b.column || (a.id < b.id ? -1 : 1)
}

/** Inputs before results, each in the calculator's order; rows of a list in theirs. */
function byField(block: string, ctx: CardContext) {
  const calculator = ctx.calculator(ctx.block(block)?.calculator ?? '')
  const order = [
    ...Object.keys(calculator?.inputs ?? {}),
    ...Object.keys(calculator?.outputs ?? {}),
  ]
  const rank = ({ id }: PublishedNumber) =>
    order.indexOf(id.slice(block.length + 1).split('.')[0] ?? '')
  return (a: PublishedNumber, b: PublishedNumber) =>
    rank(a) - rank(b) || a.id.localeCompare(b.id, 'en', { numeric: true })
}

function blockBody(id: string, numbers: readonly PublishedNumber[], ctx: CardContext): string {
  const block = ctx.block(id)
  const title =
    block === undefined
      ? escape(nameOf(id))
      : `<a href="#${block.name}">${escape(block.title)}</a>, ${placeText(block)}`
  const rows = numbers
    .filter((number) => !isTableResult(number) && givenByName(number) === undefined)
    .toSorted(byField(id, ctx))
  return `<tbody><tr class="group" id="${storyId(id)}"><th colspan="6" scope="rowgroup">${title}</th></tr>${gatheredHtml(rows, ctx)}</tbody>`
}

export function storiesHtml(numbers: readonly PublishedNumber[], ctx: CardContext): string {
  const [first] = numbers
  if (first === undefined) return ''
  const file = `<code>${escape(first.file)}</code>`
  const groups = Map.groupBy(numbers.toSorted(byPlace), ({ block }) => block ?? '')
  const own = (groups.get('') ?? []).map((number) => rowHtml(number, ctx)).join('')
  const blocks = [...groups].flatMap(([id, members]) =>
    id === '' ? [] : [blockBody(id, members, ctx)],
  )
  const heads = [
    words`Number`,
    words`Value`,
    words`How`,
    words`Where from`,
    words`Rests on`,
    words`Place`,
  ]
  return [
    `<table class="stories"><caption>${words`Where every number of this note comes from. What a block was given by name stands under that name, and what comes out of it is worked in its card. Places are lines of ${file}.`}</caption>`,
    `<thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead>`,
    own === ''
      ? ''
      : `<tbody><tr class="group"><th colspan="6" scope="rowgroup">${words`In the text`}</th></tr>${own}</tbody>`,
    ...blocks,
    '</table>',
  ].join('')
}
