/**
 * The figures of a work card: what went in and what comes out, each in the site's unit systems, and
 * lists as tables. A row's number is the ledger's where the ledger has it; its mark and link are those of
 * the number it was taken from.
 */
import type {
  ChoiceField,
  ListField,
  NumberField,
  NumberOutput,
  TableOutput,
  TextField,
  TextOutput,
} from '../../calculators/define.ts'
import { formatQuantity } from '../quantity/index.ts'
import { usedGiven } from '../ledger/given.ts'
import { onlyRef } from '../ledger/refs.ts'
import { untold } from '../ledger/untold.ts'
import type { Given, PlainValue, PublishedBlock, PublishedNumber } from '../ledger/published.ts'
import type { CardContext } from './context.ts'
import { attribute, escape, symbolsHtml } from './html.ts'
import { markHtml } from './mark.ts'
import {
  dataHtml,
  hasStory,
  nowText,
  quantityHtml,
  rowHref,
  storyHref,
  textIn,
  textOf,
} from './number.ts'
import { cannotTell } from './words.ts'
import { words } from '../words/words.ts'

/** What stands in one place of a card. */
export interface Cell {
  /** First unit system. */
  readonly html: string
  /** Second unit system; '' where there is none. */
  readonly other: string
  /** Where it comes from, when from another note. */
  readonly from: string
}

const nothing: Cell = { html: '', other: '', from: '' }

function plain(text: string): Cell {
  return { ...nothing, html: escape(text) }
}

/** The unit of the system that `display` is not of; undefined where both are the same. */
function otherUnit(number: PublishedNumber, units: readonly [string, string]): string | undefined {
  if (units[0] === units[1]) return undefined
  if (number.displayOther !== undefined) return number.displayOther
  return units[0] === number.display ? units[1] : units[0]
}

/** The single number this one repeats: an input that was given by name. */
function originOf(number: PublishedNumber, given: Given | undefined, ctx: CardContext) {
  if (given?.type !== 'number' || given.how !== 'reference') return number
  const origin = ctx.number(onlyRef(number.expression) ?? given.id)
  return origin?.value === number.value ? origin : number
}

function numberCell(
  number: PublishedNumber,
  given: Given | undefined,
  units: readonly [string, string],
  ctx: CardContext,
): Cell {
  const origin = originOf(number, given, ctx)
  const second = ctx.units.length < 2 ? undefined : otherUnit(number, units)
  const other =
    number.value === null || second === undefined || second === number.display
      ? ''
      : quantityHtml(
          second === number.displayOther && number.shownOther !== undefined
            ? number.shownOther
            : textIn(number, second),
        )
  const now = nowText(number)
  const before = ctx.builder?.number(number.id)
  const moved = before !== undefined && before.value !== number.value
  const note = origin.note === number.note ? undefined : ctx.note(origin.note)
  return {
    html: [
      linkedHtml(origin, `${markHtml(origin)}${dataHtml(number)}`, ctx, number.block),
      now === undefined ? '' : ` <span class="now">${words`now ${escape(now)}`}</span>`,
      moved ? ` <span class="yours">${words`the builder’s ${escape(textOf(before))}`}</span>` : '',
    ].join(''),
    other,
    from:
      note === undefined
        ? ''
        : `<a href="${escape(ctx.href(`/notes/${note.slug}/`))}">${escape(note.title)}</a>`,
  }
}

function linkedHtml(
  { id, block, calculator }: PublishedNumber,
  html: string,
  ctx: CardContext,
  card: string | null,
): string {
  if (!hasStory(id, ctx)) return `<span class="number-plain">${html}</span>`
  // A result's story is the card it stands in: from there it leads to what the table says of the card.
  const own = calculator !== null && block !== null && block === card
  const href = own ? rowHref(block, ctx) : storyHref(id, ctx)
  return `<a class="number-link" href="${escape(href)}">${html}</a>`
}

type InField = NumberField | ChoiceField | TextField
type OutField = NumberOutput | TextOutput

/** An input: number, choice or text. */
function inputCell(field: InField, given: Given | undefined, id: string, ctx: CardContext): Cell {
  if (given?.type === 'word') {
    const chosen =
      field.type === 'choice' ? (field.options[given.value] ?? given.value) : given.value
    if (given.how !== 'assumed-default') return plain(chosen)
    return {
      ...nothing,
      html: `${markHtml({ kind: 'assumed', firmness: 'assumed' })}${escape(chosen)}`,
    }
  }
  if (given?.type !== 'number') return nothing
  const number = ctx.number(id) ?? ctx.number(given.id)
  if (number === undefined || field.type !== 'number') return plain(cannotTell)
  return numberCell(number, given, field.units, ctx)
}

/** A result: number or text. */
function outputCell(
  field: OutField,
  value: number | string | null | undefined,
  id: string,
  absent: string,
  ctx: CardContext,
): Cell {
  if (field.type === 'text') {
    return plain(value === null || value === undefined ? absent : String(value))
  }
  const number = ctx.number(id)
  if (number !== undefined) return numberCell(number, undefined, field.units, ctx)
  if (typeof value !== 'number') return plain(absent)
  const [first, second] = ctx.units[0] === 'us' ? [field.units[1], field.units[0]] : field.units
  const options = field.exact === true ? { exact: true } : { figures: 3 }
  return {
    html: quantityHtml(formatQuantity(value, first, options)),
    other:
      first === second || ctx.units.length < 2
        ? ''
        : quantityHtml(formatQuantity(value, second, options)),
    from: '',
  }
}

function figureHtml(label: string, symbol: string | undefined, cell: Cell): string {
  const sign = symbol === undefined || symbol === '' ? '' : `\u00a0<i>${symbolsHtml(symbol)}</i>`
  const from = cell.from === '' ? '' : ` <span class="from">${words`from ${cell.from}`}</span>`
  const other = cell.other === '' ? '' : `<dd class="other">${cell.other}</dd>`
  return `<div><dt>${escape(label)}${sign}${from}</dt><dd>${cell.html}</dd>${other}</div>`
}

/** More columns than this do not fit in half a card, nor side by side on a phone. */
const mostInHalf = 3
/** More than this do not fit in a card: each row then stands by itself at any width. */
const mostInCard = 6

interface Table {
  readonly html: string
  readonly wide: boolean
}

function tableHtml(
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly Cell[])[],
): Table {
  const wide = heads.length > mostInHalf
  const kind = heads.length > mostInCard ? 'rows many' : wide ? 'rows' : 'rows few'
  const head = heads.map((text) => `<th scope="col">${escape(text)}</th>`)
  const body = rows.map((cells) => {
    const columns = cells.map((cell, index) => {
      const other = cell.other === '' ? '' : ` <span class="other">${cell.other}</span>`
      const from = cell.from === '' ? '' : ` <span class="from">${words`from ${cell.from}`}</span>`
      return `<td${attribute('data-label', heads[index])}>${cell.html}${other}${from}</td>`
    })
    return `<tr>${columns.join('')}</tr>`
  })
  const html = `<table class="${kind}"><caption>${escape(caption)}</caption><thead><tr>${head.join('')}</tr></thead><tbody>${body.join('')}</tbody></table>`
  return { html, wide }
}

function listHtml(field: ListField, given: Given | undefined, id: string, ctx: CardContext): Table {
  if (given?.type !== 'rows') return { html: '', wide: false }
  const columns = Object.entries(field.fields).filter(([key]) =>
    given.rows.some((row) => row[key] !== undefined),
  )
  const rows = given.rows.map((row, index) =>
    columns.map(([key, column]) => inputCell(column, row[key], `${id}.${index}.${key}`, ctx)),
  )
  return tableHtml(
    field.label,
    columns.map(([, column]) => column.label),
    rows,
  )
}

function outTableHtml(
  field: TableOutput,
  value: PlainValue | undefined,
  id: string,
  absent: string,
  ctx: CardContext,
): Table {
  const columns = Object.entries(field.columns)
  if (typeof value !== 'object' || value === null || value.length === 0) {
    return { html: `<p class="rows-none">${escape(field.label)}: ${absent}</p>`, wide: false }
  }
  const rows = value.map((row, index) =>
    columns.map(([key, column]) =>
      outputCell(column, row[key], `${id}.${index}.${key}`, absent, ctx),
    ),
  )
  return tableHtml(
    field.label,
    columns.map(([, column]) => column.label),
    rows,
  )
}

export interface FiguresHtml {
  readonly wentIn: string
  readonly comesOut: string
  /** Tables too wide for either half. */
  readonly wide: string
}

/** Both halves of a card. A field left out by the builder, and not needed, has no row. */
export function figuresHtml(block: PublishedBlock, ctx: CardContext): FiguresHtml {
  const calculator = ctx.calculator(block.calculator)
  if (calculator === undefined) throw new Error(`no calculator \`${block.calculator}\``)
  const ins: string[] = []
  const inTables: Table[] = []
  const used = usedGiven(block)
  for (const [key, field] of Object.entries(calculator.inputs)) {
    const id = `${block.id}.${key}`
    const given = used[key]
    if (given === undefined) continue
    if (field.type === 'list') inTables.push(listHtml(field, given, id, ctx))
    else {
      const symbol = field.type === 'number' ? field.symbol : undefined
      ins.push(figureHtml(field.label, symbol, inputCell(field, given, id, ctx)))
    }
  }
  const absent = untold(block.findings)
  const outs: string[] = []
  const outTables: Table[] = []
  for (const [key, field] of Object.entries(calculator.outputs)) {
    const id = `${block.id}.${key}`
    const value = block.outputs[key]
    if (field.type === 'table') outTables.push(outTableHtml(field, value, id, absent, ctx))
    else {
      const symbol = field.type === 'number' ? field.symbol : undefined
      const one = typeof value === 'object' ? null : value
      outs.push(figureHtml(field.label, symbol, outputCell(field, one, id, absent, ctx)))
    }
  }
  const list = (items: readonly string[]) =>
    items.length === 0 ? '' : `<dl class="figures">${items.join('')}</dl>`
  const narrow = (tables: readonly Table[]) =>
    tables.flatMap(({ html, wide }) => (wide ? [] : [html])).join('')
  return {
    wentIn: list(ins) + narrow(inTables),
    comesOut: list(outs) + narrow(outTables),
    wide: [...inTables, ...outTables].flatMap(({ html, wide }) => (wide ? [html] : [])).join(''),
  }
}
