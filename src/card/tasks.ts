/**
 * Tasks and open questions: the box before an item of a list, what closed it, and the list of all of
 * them. In: the published ledger. Out: HTML; `tasksOf` gives a note's as data.
 */
import { phaseWords, phases } from '../ledger/phases.ts'
import type { Piece, PublishedTask } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { sentenceHtml } from './firm.ts'
import { escape } from './html.ts'
import { lookupOf } from './lookup.ts'
import { nameOf, numberHtml } from './number.ts'
import { dateWords } from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'
import { allOf } from '../words/lists.ts'

/** A note's tasks, in its order. */
export const tasksOf = (slug: string, ctx: CardContext): readonly PublishedTask[] =>
  lookupOf(ctx.published).tasksOf(slug)

const stateWords: Readonly<Record<PublishedTask['state'], string>> = {
  open: words`to do`,
  done: words`done`,
  carried: words`carried on in another note`,
}

const ticked = '<path d="m3 6 2.4 2.6L9.4 3"/>'
const arrow = '<path d="M3 6h6m0 0-2.4-2.4M9 6 6.6 8.4"/>'
const inside: Readonly<Record<PublishedTask['state'], string>> = {
  open: '',
  done: ticked,
  carried: arrow,
}

/** `anchor`: this is where the task stands, and what a link to it leads to. */
export function taskBoxHtml({ id, state, question }: PublishedTask, anchor: boolean): string {
  const name = question && state === 'open' ? words`open question` : stateWords[state]
  const place = anchor ? ` id="${nameOf(id)}"` : ''
  return `<svg class="mark mark-task"${place} viewBox="0 0 12 12" width="12" height="12" fill="none" stroke="currentColor" stroke-width="1.4" role="img" aria-label="${name}"><path d="M.8.8h10.4v10.4H.8z"/>${inside[state]}</svg> `
}

function noteLink(slug: string, ctx: CardContext): string {
  const title = ctx.note(slug)?.title ?? slug
  return `<a href="${escape(ctx.href(`/notes/${slug}/`))}">${escape(title)}</a>`
}

/** ` (closed 20 June 2026 in The first drive)`; '' where no other note closed it. */
export function taskEndHtml(task: PublishedTask, ctx: CardContext): string {
  if (task.in === undefined) return ''
  const note = noteLink(task.in, ctx)
  const date = dateWords(ctx.note(task.in)?.date ?? '')
  const end =
    task.state === 'carried'
      ? words`carried on ${date} in ${note}`
      : words`closed ${date} in ${note}`
  return `<span class="closed"> (${end})</span>`
}

function pieceHtml(piece: Piece, ctx: CardContext): string {
  if (typeof piece === 'string') return sentenceHtml(piece)
  const number = ctx.number(piece.number)
  if (number === undefined) return escape(nameOf(piece.number))
  const { unit, digits } = piece
  return numberHtml(number, ctx, { unit, digits, brackets: false })
}

export const taskHtml = ({ pieces }: PublishedTask, ctx: CardContext): string =>
  pieces.map((piece) => pieceHtml(piece, ctx)).join('')

const placeHref = ({ id, note }: PublishedTask, ctx: CardContext): string =>
  `${ctx.href(`/notes/${note}/`)}#${nameOf(id)}`

function openOf(ctx: CardContext): readonly PublishedTask[] {
  return (ctx.published.tasks ?? []).filter(({ state }) => state === 'open')
}

/** `3 tasks and 2 questions are open.` */
export function openCountHtml(ctx: CardContext): string {
  return `<p>${openCountWords(openOf(ctx))}</p>`
}

function openCountWords(open: readonly PublishedTask[]): string {
  const questions = open.filter(({ question }) => question).length
  const tasks = open.length - questions
  if (open.length === 0) return words`Nothing is open in these notes.`
  if (questions === 0)
    return counted(tasks, words`${tasks} task is open.`, words`${tasks} tasks are open.`)
  if (tasks === 0)
    return counted(
      questions,
      words`${questions} question is open.`,
      words`${questions} questions are open.`,
    )
  const both = [
    counted(tasks, words`${tasks} task`, words`${tasks} tasks`),
    counted(questions, words`${questions} question`, words`${questions} questions`),
  ]
  return words`${allOf(both)} are open.`
}

const first = 5

/** For the front page; '' where nothing is open. */
export function openSummaryHtml(ctx: CardContext): string {
  const open = openOf(ctx)
  if (open.length === 0) return ''
  const items = open
    .slice(0, first)
    .map(
      (task) =>
        `<li>${taskBoxHtml(task, false)}${taskHtml(task, ctx)} (${placeLink(task, ctx)})</li>`,
    )
  const all = `<p><a href="${escape(ctx.href('/open/'))}">${open.length > first ? words`All ${open.length} of them, by phase` : words`By phase, with what is done`}</a></p>`
  return `${openCountHtml(ctx)}<ul class="task-list">${items.join('')}</ul>${all}`
}

function placeLink(task: PublishedTask, ctx: CardContext): string {
  const title = ctx.note(task.note)?.title ?? task.note
  return `<a href="${escape(placeHref(task, ctx))}">${escape(title)}</a>`
}

/** All that is open, by phase: on paper with room for a day and a name. */
export function openTablesHtml(ctx: CardContext): string {
  const groups = Map.groupBy(openOf(ctx), ({ note }) => ctx.note(note)?.phase ?? '')
  const known = Object.keys(phases)
  return [...groups]
    .toSorted(([a], [b]) => known.indexOf(a) - known.indexOf(b))
    .map(([phase, tasks]) => {
      const rows = tasks.map((task) => rowHtml(task, ctx)).join('')
      return `<section class="phase" aria-labelledby="Open-${phase}"><h2 id="Open-${phase}">${escape(phaseWords(phase))}</h2><table class="ledger tasks"><thead><tr><th scope="col">${words`To do`}</th><th scope="col">${words`Written in`}</th><th scope="col" class="on-paper">${words`Done on`}</th><th scope="col" class="on-paper">${words`By`}</th></tr></thead><tbody>${rows}</tbody></table></section>`
    })
    .join('')
}

function rowHtml(task: PublishedTask, ctx: CardContext): string {
  const from = task.from === undefined ? '' : `, ${words`opened in ${noteLink(task.from, ctx)}`}`
  return `<tr><td data-label="${words`To do`}">${taskBoxHtml(task, false)}${taskHtml(task, ctx)}</td><td data-label="${words`Written in`}">${placeLink(task, ctx)}${from}</td><td class="on-paper"></td><td class="on-paper"></td></tr>`
}

/** What is done, the latest first; '' where nothing is. */
export function doneListHtml(ctx: CardContext): string {
  const done = (ctx.published.tasks ?? []).filter(
    // What an item of a later note closed stands there once.
    (task) => task.state === 'done' && (task.from === undefined || task.in !== undefined),
  )
  const dayOf = ({ in: closed, note }: PublishedTask): string =>
    ctx.note(closed ?? note)?.date ?? ''
  const items = done
    .toSorted((a, b) => (dayOf(a) < dayOf(b) ? 1 : dayOf(a) > dayOf(b) ? -1 : 0))
    .map(
      (task) =>
        `<li>${taskBoxHtml(task, false)}${taskHtml(task, ctx)}, ${words`in ${placeLink(task, ctx)}`}${taskEndHtml(task, ctx)}</li>`,
    )
  return items.length === 0 ? '' : `<ul class="task-list">${items.join('')}</ul>`
}
