/**
 * The wall sheet of a note: what one wants in sight with dirty hands, on paper, to tick and to write on.
 * In: the published ledger. Out: its stretches as HTML, made of the ledger alone, so that `verify` holds
 * every one.
 *
 * It always shows today: where a later number took the place of one in the text, the later one stands
 * here, also when it is of another note.
 */
import { standingWords } from '../../calculators/hazard-names.ts'
import type {
  PublishedBlock,
  PublishedFinding,
  PublishedNote,
  PublishedNumber,
  PublishedStep,
} from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { editionOf } from './edition.ts'
import { verdictHtml } from './findings.ts'
import { sentenceHtml } from './firm.ts'
import { hazardsHtml } from './hazards.ts'
import { escape } from './html.ts'
import { inForce } from './in-force.ts'
import { lookupOf } from './lookup.ts'
import { dataHtml, isTableResult, storyHref, textOf } from './number.ts'
import { valueHtml } from './origin.ts'
import { guessesOf } from './rests.ts'
import { taskBoxHtml, taskEndHtml, tasksOf } from './tasks.ts'
import {
  capital,
  cannotTell,
  dateWords,
  draftWords,
  isSum,
  labelOf,
  levelWords,
  verdictName,
} from './words.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

/** No block has this name: a dash is in no name. */
export const sheetName = 'wall-sheet'

export const sheetPath = ({ slug }: Pick<PublishedNote, 'slug'>, ctx: CardContext): string =>
  ctx.href(`/notes/${slug}/${sheetName}/`)

export interface Sheet {
  /** Title, note, date and edition. */
  readonly head: string
  readonly hazards: string
  /** Steps with their numbers and verdicts. */
  readonly steps: string
  /** '' where the note has none. */
  readonly tasks: string
  /** Lines for names and days. */
  readonly sign: string
}

export function sheetOf(note: PublishedNote, ctx: CardContext): Sheet {
  const blocks = lookupOf(ctx.published).blocksOf(note.slug)
  const hazards = [...new Set(blocks.flatMap((block) => block.hazards))]
  return {
    head: headHtml(note, ctx),
    hazards:
      hazards.length > 0
        ? hazardsHtml(hazards)
        : `<p class="standing">${escape(standingWords)}</p>`,
    steps: stepsHtml(note, ctx),
    tasks: tasksHtml(note, ctx),
    sign: signHtml,
  }
}

const tick =
  '<svg class="tick" viewBox="0 0 12 12" width="14" height="14" fill="none" stroke="currentColor" aria-hidden="true"><path d="M.6.6h10.8v10.8H.6z"/></svg> '

function headHtml(note: PublishedNote, ctx: CardContext): string {
  const day = note.changed ?? note.date
  const link = `<a href="${escape(ctx.href(`/notes/${note.slug}/`))}">${escape(note.title)}</a>`
  const time = `<time datetime="${escape(day)}">${escape(dateWords(day))}</time>`
  const edition = `<b>${editionOf(ctx.published, note.slug)}</b>`
  const draft = note.draft === true ? `<strong class="draft">${escape(draftWords)}</strong> ` : ''
  return [
    `<p class="over">${draft}${words`Wall sheet of ${link}, ${escape(ctx.published.site.vehicle)}`}</p>`,
    `<h1>${words`Wall sheet: ${escape(note.title)}`}</h1>`,
    `<p class="sheet-edition">${words`${time}, edition ${edition}. A print with another edition is stale.`}</p>`,
  ].join('')
}

/** Each number and each block once, where the text first has it. */
function stepsHtml({ slug }: PublishedNote, ctx: CardContext): string {
  const seen = new Set<string>()
  const fresh = (id: string): boolean => {
    if (seen.has(id)) return false
    seen.add(id)
    return true
  }
  const lookup = lookupOf(ctx.published)
  const steps = lookup.stepsOf(slug)
  const inText = new Set(steps.flatMap(({ shows }) => shows))
  const rows = (id: string): string => {
    const block = ctx.block(id)
    if (block === undefined) return numberRow(id, slug, ctx, fresh)
    const order = Object.keys(ctx.calculator(block.calculator)?.outputs ?? {})
    const rank = (one: PublishedNumber): number =>
      order.indexOf(one.id.slice(id.length + 1).split('.')[0] ?? '')
    const results = lookup
      .numbersIn(id)
      .filter((one) => isWanted(one) && !inText.has(one.id))
      .toSorted((a, b) => rank(a) - rank(b))
    return blockRow(block, ctx) + results.map((one) => numberRow(one.id, slug, ctx, fresh)).join('')
  }
  const bodies = steps.map(
    (step) => `<tbody>${stepRow(step, slug, ctx)}${step.shows.map(rows).join('')}</tbody>`,
  )
  // In a ledger without steps the blocks still stand on the sheet.
  const lost = lookup.blocksOf(slug).filter(({ id }) => !inText.has(id))
  const rest = lost.length === 0 ? '' : `<tbody>${lost.map(({ id }) => rows(id)).join('')}</tbody>`
  const heads = [words`What`, words`Figure`, words`Measured`].map(
    (head) => `<th scope="col">${head}</th>`,
  )
  return `<table class="sheet-steps"><thead><tr>${heads.join('')}</tr></thead>${bodies.join('')}${rest}</table>`
}

/** Results that are set by a tool or bought by their size: the sheet has them, whatever the text says. */
function isWanted(number: PublishedNumber): boolean {
  if (number.calculator === null || number.value === null) return false
  if (number.of === 'torque') return true
  return number.exact === true && number.display !== '' && !isTableResult(number)
}

function stepRow(step: PublishedStep, slug: string, ctx: CardContext): string {
  if (step.name === '') return ''
  const href = escape(`${ctx.href(`/notes/${slug}/`)}#${step.name}`)
  const depth = step.depth > 2 ? ' class="step step-within"' : ' class="step"'
  return `<tr${depth}><th scope="rowgroup" colspan="3">${tick}<a href="${href}">${stepText(step, ctx)}</a></th></tr>`
}

/** As plain text: a number in it has its row below, and a link in a link cannot be. */
function stepText({ pieces }: PublishedStep, ctx: CardContext): string {
  const texts = pieces.map((piece) => {
    if (typeof piece === 'string') return piece
    const number = inForce(piece.number, ctx)
    return number === undefined ? cannotTell : textOf(number)
  })
  return escape(texts.join(''))
}

function numberRow(
  id: string,
  slug: string,
  ctx: CardContext,
  fresh: (id: string) => boolean,
): string {
  const told = ctx.number(id)
  const number = inForce(id, ctx)
  // A sum that nobody gave a name would be called by its signs, which on a wall says another thing.
  if (told === undefined || number === undefined || isSum(told) || !fresh(number.id)) return ''
  if (number.display === '' || number.of === 'money') return ''
  const block = told.block === null ? undefined : ctx.block(told.block)
  const note = told.note === slug ? undefined : ctx.note(told.note)
  const from = [
    block === undefined ? '' : escape(block.title),
    note === undefined ? '' : words`in ${escape(note.title)}`,
    number === told ? '' : words`was ${escape(textOf(told))}`,
  ].filter((text) => text !== '')
  const of = from.length === 0 ? '' : ` <span class="from">${from.join(', ')}</span>`
  const label = capital(labelOf(told, ctx))
  // The same torque in another unit is not tightened again.
  const tightened =
    number.of === 'torque' && (told.block === null || fresh(`torque of ${told.block}`))
  const name = `<a href="${escape(storyHref(told.id, ctx))}">${escape(label)}</a>`
  return [
    `<tr><th scope="row">${name}${of}</th>`,
    `<td>${valueHtml(number, ctx)}</td>`,
    `<td>${tightened ? tick + words`marked` : ''}</td></tr>`,
  ].join('')
}

const gravest = ['stop', 'unknown', 'watch', 'pass'] as const

function blockRow(block: PublishedBlock, ctx: CardContext): string {
  const href = escape(`${ctx.href(`/notes/${block.note}/`)}#${block.name}`)
  const guesses = guessesOf(block, ctx).length
  const said = [
    verdictName(block) === 'accepted'
      ? `<b>${words`Accepted because:`}</b> ${sentenceHtml(block.accepted ?? '')}`
      : '',
    block.verdict === 'unknown' ? words`“Cannot tell” counts as not passed.` : '',
    worstHtml(block, ctx),
    verdictName(block) === 'provisional'
      ? counted(guesses, words`Rests on ${guesses} guess.`, words`Rests on ${guesses} guesses.`)
      : '',
  ].filter((text) => text !== '')
  return `<tr class="checked"><td colspan="3">${verdictHtml(block)} <a href="${href}">${escape(block.title)}</a>. ${said.join(' ')}</td></tr>`
}

/** What decided the verdict; where nothing spoke against it, how many checks there were. */
function worstHtml({ findings, calculator }: PublishedBlock, ctx: CardContext): string {
  const level = gravest.find((one) => findings.some((finding) => finding.level === one))
  const worst = findings.filter((finding) => finding.level === level)
  const [first] = worst
  if (first === undefined) return ''
  const many = worst.length
  if (level === 'pass')
    return counted(many, words`${many} check passed.`, words`${many} checks passed.`)
  const title = ({ check }: PublishedFinding): string =>
    escape(ctx.calculator(calculator)?.checks[check]?.title ?? check)
  const others = worst.slice(1).map(title)
  const more =
    level === undefined || others.length === 0
      ? ''
      : ` ${words`Also ${levelWords[level]}: ${others.join(', ')}.`}`
  return `<b>${title(first)}.</b> ${sentenceHtml(first.text)} ${words`Limit: ${sentenceHtml(first.threshold)}.`}${more}`
}

function tasksHtml({ slug }: PublishedNote, ctx: CardContext): string {
  const items = tasksOf(slug, ctx).map((task) => {
    const pieces = task.pieces.map((piece) => {
      if (typeof piece === 'string') return sentenceHtml(piece)
      const number = inForce(piece.number, ctx)
      return number === undefined ? cannotTell : dataHtml(number)
    })
    return `<li>${taskBoxHtml(task, false)}${pieces.join('')}${taskEndHtml(task, ctx)}</li>`
  })
  return items.length === 0 ? '' : `<ul class="task-list">${items.join('')}</ul>`
}

const lines = [words`Done by`, words`On`, words`Checked by`, words`On`]
const signHtml = `<ul class="sheet-sign">${lines.map((line) => `<li>${line}</li>`).join('')}</ul>`
