/**
 * One number as it is typed: a short field with a list of units beside it, so that a phone can show its
 * figures. A unit typed into the field counts before the list. In: a calculator's field and a text.
 * Out: HTML, and the whole text again from what stands in the two.
 */
import type { NumberField } from '../../calculators/define.ts'
import { escape } from '../card/html.ts'
import { dimensions } from '../quantity/index.ts'
import type { Single } from './texts.ts'
import { words } from '../words/words.ts'

/** `2.4`, `-5`, `1/2`, `1,200`, `½`: nothing that could be a unit. */
const bare = /^[\d\s.,/+\-−–¼½¾⅓⅔⅛⅜⅝⅞]*(?:\d[eE][+-]?\d*)?$/u

const plain = (text: string): string => text.replace(/\u00a0/g, ' ').replace(/\u202f/g, '')

export interface Halves {
  readonly number: string
  readonly unit: string
}

/** `2.4 m` in two; a text that has another form stays whole. */
export function halves(text: string, units: readonly string[]): Halves {
  const whole = plain(text).trim()
  const unit = units
    .filter((one) => one !== '' && whole.endsWith(one))
    .toSorted((a, b) => b.length - a.length)
    .find((one) => bare.test(whole.slice(0, -one.length)))
  return unit === undefined
    ? { number: whole, unit: '' }
    : { number: whole.slice(0, -unit.length).trim().replace('\u2212', '-'), unit }
}

/** The two as one text. */
export function joined(number: string, unit: string): string {
  const text = number.trim()
  return text === '' || unit === '' || !bare.test(text) ? text : `${text} ${unit}`
}

/** What is not yet a number and may become one: `1/`, `-`, `2.`, `3e`. Nobody is told off for it. */
export function isHalfTyped(text: string): boolean {
  const whole = plain(text).trim()
  return /^[-+−]?$|[-+−/.,eE]$/u.test(whole)
}

/** The units offered: those of the builder's text first, then the field's, then others of its kind. */
export function unitsOffered(field: NumberField, ...first: readonly string[]): string[] {
  const isMoney = field.of.startsWith('money')
  const more = [...field.units, ...(isMoney ? [] : dimensions[field.of].units)]
  return [...new Set([...first, ...more])].filter((unit) => unit !== '')
}

/** A number of the text has no range of a calculator: cold weather and what stands below zero has. */
const goesBelowZero = ({ hard: [least], of }: NumberField, number: string): boolean =>
  Number.isFinite(least) ? least < 0 : of === 'temperature' || /^[-−]/u.test(number)

/** Inches are typed as fractions and temperatures below zero: no keypad of figures has those signs. */
const keyboardOf = (field: NumberField, unit: string, number: string): 'decimal' | 'text' =>
  goesBelowZero(field, number) || unit === 'in' || unit === 'AWG' ? 'text' : 'decimal'

/** The control of one field; `units` are those of a number, `empty` the words for one that may be left out. */
export function controlHtml(
  field: Single | undefined,
  name: string,
  text: string,
  attributes: string,
  options: { readonly units: readonly string[]; readonly empty?: string },
): string {
  if (field?.type === 'choice') {
    const { empty } = options
    const choices = Object.entries(field.options).map(
      ([key, said]) =>
        `<option value="${escape(key)}"${key === text ? ' selected' : ''}>${escape(said)}</option>`,
    )
    const none = empty === undefined ? '' : `<option value="">${empty}</option>`
    return `<select ${attributes}>${none}${choices.join('')}</select>`
  }
  return field?.type === 'number'
    ? numberControlHtml(field, name, text, attributes, options.units)
    : `<input type="text" ${attributes} value="${escape(text)}" autocomplete="off" spellcheck="false">`
}

function numberControlHtml(
  field: NumberField,
  name: string,
  text: string,
  attributes: string,
  units: readonly string[],
): string {
  const { number, unit } = halves(text, units)
  const chosen = unit === '' ? (units[0] ?? '') : unit
  const options = units.map(
    (one) =>
      `<option value="${escape(one)}"${one === chosen ? ' selected' : ''}>${escape(one)}</option>`,
  )
  const list =
    units.length === 0
      ? ''
      : `<select name="${escape(name)}:unit" aria-label="${words`Unit of ${escape(field.label)}`}">${options.join('')}</select>`
  return `<span class="try-pair"><input type="text" inputmode="${keyboardOf(field, chosen, number)}" enterkeyhint="done" ${attributes} value="${escape(number)}" autocomplete="off" autocapitalize="off" spellcheck="false">${list}</span>`
}
