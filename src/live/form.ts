/**
 * The form in which a reader puts their own figures: one field for each input of the calculator, with
 * its unit as typed, filled with what is in force. Out: HTML.
 */
import type { Calculator, Fields, ListField, NumberField } from '../../calculators/define.ts'
import { escape, idOf } from '../card/html.ts'
import { mayBeLeftOut } from '../ledger/input.ts'
import { parseQuantity } from '../quantity/index.ts'
import { controlHtml, unitsOffered } from './field.ts'
import type { Row, Single, Texts } from './texts.ts'
import { words } from '../words/words.ts'
import { oneOf } from '../words/lists.ts'

/** With the builder's unit, where the field's own list has another. */
const offeredFor = (field: NumberField, text: string): string[] => {
  const read = parseQuantity(text, field.of)
  return unitsOffered(field, ...(read.ok && !field.units.includes(read.unit) ? [read.unit] : []))
}

/** Name of a control: `bore`, `hoses.0.length`. */
function fieldHtml(field: Single, name: string, text: string, prefix: string): string {
  const id = `${prefix}-${idOf(name)}`
  const attributes = `id="${id}" name="${escape(name)}" aria-describedby="${id}-help ${id}-said"`
  const control = controlHtml(field, name, text, attributes, {
    units: field.type === 'number' ? offeredFor(field, text) : [],
    ...(mayBeLeftOut(field) ? { empty: words`left out` } : {}),
  })
  const units =
    field.type === 'number' ? [...new Set(field.units)].filter((unit) => unit !== '') : []
  const help = [
    field.help,
    units.length === 0 ? '' : words`In ${oneOf(units)}.`,
    mayBeLeftOut(field) && field.type !== 'choice' ? words`May be left empty.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ')
  return `<div class="try-field"><label for="${id}">${escape(field.label)}</label>${control}<span class="try-help" id="${id}-help">${escape(help)}</span><span class="try-said" id="${id}-said"></span></div>`
}

/** A list that may be left out may also be emptied. */
export const leastRows = ({ optional, rows }: ListField): number =>
  optional === true ? 0 : rows[0]

export function listHtml(
  key: string,
  fields: Fields,
  rows: readonly Row[],
  prefix: string,
): string {
  const field = fields[key]
  if (field?.type !== 'list') return ''
  const least = leastRows(field)
  const [, most] = field.rows
  const columns = Object.entries(field.fields)
  const body = rows.map((row, index) => {
    const cells = columns.map(([column, cell]) =>
      fieldHtml(cell, `${key}.${index}.${column}`, row[column] ?? '', prefix),
    )
    const remove =
      rows.length <= least
        ? ''
        : `<button type="button" class="plain" data-remove="${escape(key)}" data-row="${index}">${words`Remove ${escape(field.row)} ${index + 1}`}</button>`
    return `<div class="try-row" role="group" aria-label="${escape(field.row)} ${index + 1}"><div class="try-fields">${cells.join('')}</div><div class="try-buttons">${remove}</div></div>`
  })
  const add =
    rows.length >= most
      ? ''
      : `<button type="button" class="plain" data-add="${escape(key)}">${words`Add a ${escape(field.row)}`}</button>`
  return `<legend>${escape(field.label)}</legend>${body.join('')}<div class="try-buttons">${add}</div>`
}

/** The fields that the builder filled in, or the reader has; the others lie folded below. */
export function formHtml(
  calculator: Calculator,
  texts: Texts,
  prefix: string,
  filled: ReadonlySet<string> = new Set(Object.keys(texts)),
  reset = words`Back to the builder’s figures`,
): string {
  const first: string[] = []
  const more: string[] = []
  const lists: string[] = []
  for (const [key, field] of Object.entries(calculator.inputs)) {
    const text = texts[key] ?? ''
    if (field.type !== 'list')
      (filled.has(key) ? first : more).push(
        fieldHtml(field, key, typeof text === 'string' ? text : '', prefix),
      )
    else {
      const rows = typeof text === 'string' ? [] : text
      lists.push(
        `<fieldset class="try-list" data-list="${escape(key)}">${listHtml(key, calculator.inputs, rows, prefix)}</fieldset>`,
      )
    }
  }
  const folded =
    more.length === 0
      ? ''
      : `<details class="try-more"><summary>${words`${more.length} more, as they usually are`}</summary><div class="try-fields">${more.join('')}</div></details>`
  return [
    `<div class="try-fields">${first.join('')}</div>${lists.join('')}${folded}`,
    `<div class="try-buttons"><button type="submit">${words`Work it out`}</button>`,
    `<button type="reset" class="plain">${reset}</button></div>`,
    '<p class="try-status" role="status"></p>',
  ].join('')
}
