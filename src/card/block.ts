/**
 * The work card: one use of a calculator, as it stands in a note. The same text comes from the build,
 * from the browser and from `verify`. In `yours` mode it holds a reader's figures and says so, with
 * the builder's verdict beside the new one. A card never stands without its hazards: their names are
 * part of it, and their panels too where the page has none (`panels`).
 */
import { count, cannotTell, labelOf, verdictName } from './words.ts'
import type { InputValue, OutputValue, Calculator } from '../../calculators/define.ts'
import type { PlainValue, PublishedBlock } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { figuresHtml } from './figures.ts'
import { findingsHtml, verdictHtml } from './findings.ts'
import { hazardLineHtml, hazardsHtml } from './hazards.ts'
import { escape, idOf, symbolsHtml } from './html.ts'
import { numberHtml } from './number.ts'
import { plotHtml } from './plot-table.ts'
import { guessesOf } from './rests.ts'

export type Mode = 'built' | 'yours'

export interface BlockOptions {
  /** Hazards whose panels the card carries itself, because the page does not. */
  readonly panels?: readonly string[]
}

/** JSON knows no undefined: `null` in the ledger is what `compute` calls undefined. */
function thawed(value: PlainValue): InputValue & OutputValue {
  if (value === null) return undefined
  if (typeof value !== 'object') return value
  return value.map((row) =>
    Object.fromEntries(Object.entries(row).map(([key, one]) => [key, one ?? undefined])),
  )
}

function values(record: Readonly<Record<string, PlainValue>>) {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, thawed(value)]))
}

function drawingHtml(block: PublishedBlock, calculator: Calculator, ctx: CardContext): string {
  const plot = calculator.plot?.(values(block.inputs), values(block.outputs))
  return plot === undefined
    ? ''
    : plotHtml(plot, { units: ctx.units, id: `Plot-${idOf(block.name)}` })
}

/** Why a pass is provisional: the guesses it rests on, and how to settle them. */
function guessesHtml(block: PublishedBlock, ctx: CardContext): string {
  const guesses = guessesOf(block, ctx)
  if (guesses.length === 0) return ''
  const items = guesses.map((guess) => {
    const settle = guess.settle === undefined ? '' : `. To settle it: ${escape(guess.settle)}`
    const name = escape(labelOf(guess, ctx))
    return `<li>${name} ${numberHtml(guess, ctx, { brackets: false })}${settle}</li>`
  })
  return `<div class="guesses"><p class="card-part">Rests on ${count(guesses.length, 'guess', 'guesses')}</p><ul>${items.join('')}</ul></div>`
}

function headHtml(block: PublishedBlock, ctx: CardContext, mode: Mode): string {
  const before = mode === 'yours' ? ctx.builder?.block(block.id) : undefined
  const yours =
    mode === 'yours'
      ? `<p class="yours">Your figures.${before === undefined ? '' : ` The builder’s verdict: ${verdictHtml(before)}`}</p>`
      : ''
  const reason =
    block.accepted !== null && verdictName(block) === 'accepted'
      ? `<p class="accepted"><b>Accepted because:</b> ${escape(block.accepted)}</p>`
      : ''
  const unknown =
    block.verdict === 'unknown'
      ? `<p class="accepted">Where it says “${cannotTell}”, treat it as not passed.</p>`
      : ''
  return [
    '<div class="card-head">',
    `<p class="card-title" id="${titleId(block)}">${escape(block.title)}</p>`,
    `<p class="card-verdict">${verdictHtml(block)}</p>`,
    yours,
    reason,
    unknown,
    '</div>',
  ].join('')
}

function titleId(block: PublishedBlock): string {
  return `Title-${idOf(block.name)}`
}

function part(name: string, title: string, html: string): string {
  return html === ''
    ? ''
    : `<div class="card-${name}"><p class="card-part">${title}</p>${html}</div>`
}

export function blockHtml(
  block: PublishedBlock,
  ctx: CardContext,
  mode: Mode = 'built',
  options: BlockOptions = {},
): string {
  const calculator = ctx.calculator(block.calculator)
  if (calculator === undefined) throw new Error(`no calculator \`${block.calculator}\``)
  const { wentIn, comesOut, wide } = figuresHtml(block, ctx)
  const working = block.working.map((line) => `<li>${symbolsHtml(line)}</li>`).join('')
  const drawing = drawingHtml(block, calculator, ctx)
  const page = escape(ctx.href(`/calculators/${calculator.id}/`))
  const panels = options.panels ?? []
  return [
    `<section class="card card-${mode}" data-card="${escape(block.id)}" aria-labelledby="${titleId(block)}">`,
    headHtml(block, ctx, mode),
    hazardsHtml(panels),
    hazardLineHtml(block.hazards),
    `<div class="card-sides">${part('in', 'What went in', wentIn)}${part('out', 'What comes out', comesOut)}</div>`,
    wide === '' ? '' : `<div class="card-wide">${wide}</div>`,
    part('working', 'Working', working === '' ? '' : `<ol class="working">${working}</ol>`),
    part('checks', 'Checks', findingsHtml(block.findings, calculator)),
    verdictName(block) === 'pass' ? '' : guessesHtml(block, ctx),
    drawing,
    `<p class="card-foot"><a href="${page}">${escape(calculator.title)}: formula, limits and outside checks</a></p>`,
    '</section>',
  ].join('')
}
