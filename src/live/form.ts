/**
 * The form in which a reader puts their own figures: one field for each input of the calculator, with
 * its unit as typed, filled with what the builder gave. Out: HTML, and from a form's texts the entries
 * that differ from the builder's, or what is wrong with them, in the words of the build.
 */
import type {
  Calculator,
  ChoiceField,
  Fields,
  NumberField,
  TextField,
} from '../../calculators/define.ts'
import { escape, idOf } from '../card/html.ts'
import { mayBeLeftOut, readField, slipWords } from '../ledger/input.ts'
import type { Overrides } from '../ledger/override.ts'
import type { Given, PublishedBlock, PublishedNumber } from '../ledger/published.ts'
import { parseQuantity } from '../quantity/index.ts'
import { numberControlHtml, unitsOffered } from './field.ts'

type Single = NumberField | ChoiceField | TextField
export type Row = Readonly<Record<string, string>>
/** The texts of a form: a field's, or those of a list's rows. */
export type Texts = Readonly<Record<string, string | readonly Row[]>>

type Lookup = (id: string) => PublishedNumber | undefined

function textOf(given: Given | undefined, lookup: Lookup): string {
  if (given?.type === 'word') return given.value
  if (given?.type !== 'number') return ''
  const number = lookup(given.id)
  if (number === undefined || number.value === null) return ''
  return (number.typed ?? number.shown).replace(/[\u00a0\u202f]/g, (sign) =>
    sign === '\u00a0' ? ' ' : '',
  )
}

/** What the builder gave, as text. */
export function textsOf(block: PublishedBlock, fields: Fields, lookup: Lookup): Texts {
  return Object.fromEntries(
    Object.entries(fields).map(([key, field]): [string, Texts[string]] => {
      const given = block.given[key]
      if (field.type !== 'list') return [key, textOf(given, lookup)]
      const rows = given?.type === 'rows' ? given.rows : []
      return [key, rows.map((row) => rowTexts(Object.keys(field.fields), row, lookup))]
    }),
  )
}

function rowTexts(
  columns: readonly string[],
  row: Readonly<Record<string, Given>>,
  lookup: Lookup,
): Row {
  return Object.fromEntries(columns.map((column) => [column, textOf(row[column], lookup)]))
}

/** With the builder's unit, where the field's own list has another. */
const offeredFor = (field: NumberField, text: string): string[] => {
  const read = parseQuantity(text, field.of)
  return unitsOffered(field, ...(read.ok && !field.units.includes(read.unit) ? [read.unit] : []))
}

/** Name of a control: `bore`, `hoses.0.length`. */
function controlHtml(field: Single, name: string, text: string, prefix: string): string {
  const id = `${prefix}-${idOf(name)}`
  const attributes = `id="${id}" name="${escape(name)}" aria-describedby="${id}-help ${id}-said"`
  const options = field.type !== 'choice' ? [] : Object.entries(field.options)
  const empty = mayBeLeftOut(field) ? '<option value="">left out</option>' : ''
  const control =
    field.type === 'choice'
      ? `<select ${attributes}>${empty}${options.map(([key, words]) => `<option value="${escape(key)}"${key === text ? ' selected' : ''}>${escape(words)}</option>`).join('')}</select>`
      : field.type === 'number'
        ? numberControlHtml(field, name, text, attributes, offeredFor(field, text))
        : `<input type="text" ${attributes} value="${escape(text)}" autocomplete="off" spellcheck="false">`
  const units =
    field.type === 'number' ? [...new Set(field.units)].filter((unit) => unit !== '') : []
  const help = [
    field.help,
    units.length === 0 ? '' : `In ${units.join(' or ')}.`,
    mayBeLeftOut(field) && field.type !== 'choice' ? 'May be left empty.' : '',
  ]
    .filter((part) => part !== '')
    .join(' ')
  return `<div class="try-field"><label for="${id}">${escape(field.label)}</label>${control}<span class="try-help" id="${id}-help">${escape(help)}</span><span class="try-said" id="${id}-said"></span></div>`
}

export function listHtml(
  key: string,
  fields: Fields,
  rows: readonly Row[],
  prefix: string,
): string {
  const field = fields[key]
  if (field?.type !== 'list') return ''
  const [least, most] = field.rows
  const columns = Object.entries(field.fields)
  const body = rows.map((row, index) => {
    const cells = columns.map(([column, cell]) =>
      controlHtml(cell, `${key}.${index}.${column}`, row[column] ?? '', prefix),
    )
    const remove =
      rows.length <= least
        ? ''
        : `<button type="button" class="plain" data-remove="${escape(key)}" data-row="${index}">Remove ${escape(field.row)} ${index + 1}</button>`
    return `<div class="try-row" role="group" aria-label="${escape(field.row)} ${index + 1}"><div class="try-fields">${cells.join('')}</div><div class="try-buttons">${remove}</div></div>`
  })
  const add =
    rows.length >= most
      ? ''
      : `<button type="button" class="plain" data-add="${escape(key)}">Add a ${escape(field.row)}</button>`
  return `<legend>${escape(field.label)}</legend>${body.join('')}<div class="try-buttons">${add}</div>`
}

export function formHtml(calculator: Calculator, texts: Texts, prefix: string): string {
  const single: string[] = []
  const lists: string[] = []
  for (const [key, field] of Object.entries(calculator.inputs)) {
    const text = texts[key] ?? ''
    if (field.type !== 'list')
      single.push(controlHtml(field, key, typeof text === 'string' ? text : '', prefix))
    else {
      const rows = typeof text === 'string' ? [] : text
      lists.push(
        `<fieldset class="try-list" data-list="${escape(key)}">${listHtml(key, calculator.inputs, rows, prefix)}</fieldset>`,
      )
    }
  }
  return [
    `<div class="try-fields">${single.join('')}</div>${lists.join('')}`,
    '<div class="try-buttons"><button type="submit">Work it out</button>',
    '<button type="reset" class="plain">Back to the builder’s figures</button></div>',
    '<p class="try-status" role="status"></p>',
  ].join('')
}

/** Said of one control: `error` stops the working, `remark` does not. */
export interface Said {
  readonly level: 'error' | 'remark'
  readonly text: string
}

function saidOf(field: Single, text: string): Said | undefined {
  if (text.trim() === '') {
    return mayBeLeftOut(field) ? undefined : { level: 'error', text: 'Something is needed here.' }
  }
  const read = readField(field, text)
  if (!read.ok) return { level: 'error', text: slipWords(read).replaceAll('`', '') }
  const remarks = [read.quantity?.remark, read.unusual].filter((one) => one !== undefined)
  return remarks.length === 0
    ? undefined
    : { level: 'remark', text: remarks.join('; ').replaceAll('`', '') }
}

/** What there is to say of each control, by its name; a control without fault is absent. */
export function judge(fields: Fields, texts: Texts): ReadonlyMap<string, Said> {
  const said = new Map<string, Said>()
  const note = (field: Single, name: string, text: string) => {
    const one = saidOf(field, text)
    if (one !== undefined) said.set(name, one)
  }
  for (const [key, field] of Object.entries(fields)) {
    const text = texts[key]
    if (field.type !== 'list') note(field, key, typeof text === 'string' ? text : '')
    else if (typeof text === 'object') {
      for (const [index, row] of text.entries()) {
        for (const [column, cell] of Object.entries(field.fields)) {
          note(cell, `${key}.${index}.${column}`, row[column] ?? '')
        }
      }
    }
  }
  return said
}

/** The entries that are not the builder's, by id of the input. */
export function overridesOf(block: PublishedBlock, builder: Texts, texts: Texts): Overrides {
  return Object.fromEntries(
    Object.entries(texts)
      .filter(([key, text]) => JSON.stringify(text) !== JSON.stringify(builder[key]))
      .map(([key, text]) => [`${block.id}.${key}`, text]),
  )
}
