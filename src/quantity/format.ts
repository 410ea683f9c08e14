/**
 * Numbers and quantities as text, the same in every browser, locale and time zone.
 *
 * `toPrecision` and `toFixed` only, never Intl. A narrow no-break space (U+202F) groups thousands
 * from 10 000 on, a no-break space (U+00A0) stands before the unit, the minus is U+2212. What cannot be
 * printed (NaN, Infinity) throws: it should have been `undefined` long before.
 */
import { fromSI, knownUnit } from './convert.ts'
import { superscript } from './unit-parts.ts'

export interface FormatOptions {
  /** Significant figures; 3 unless told. */
  readonly figures?: number
  /** Places after the point; wins over `figures`. */
  readonly decimals?: number
  /** The shortest text that is right to twelve figures: standard sizes, typed values. */
  readonly exact?: boolean
}

export function formatNumber(value: number, figures: number): string {
  const wanted = Math.min(Math.max(Math.round(figures), 1), 15)
  const rounded = Number(checked(value).toPrecision(wanted))
  const size = exponent(rounded)
  if (rounded !== 0 && (size < -4 || size > 8)) return power(rounded.toExponential(wanted - 1))
  return plain(rounded, rounded === 0 ? 0 : Math.max(wanted - 1 - size, 0))
}

export function formatQuantity(value: number, unit: string, options: FormatOptions = {}): string {
  const { number, unit: shown } = quantityParts(value, unit, options)
  return shown === '' ? number : `${number}\u00A0${shown}`
}

export function quantityParts(
  value: number,
  unit: string,
  options: FormatOptions = {},
): { number: string; unit: string } {
  const { name, flavour } = knownUnit(unit)
  if (name === 'AWG') return wireParts(checked(value), options)
  const number = fromSI(checked(value), name)
  const { figures = 3, decimals, exact } = options
  if (decimals !== undefined) return { number: plain(number, decimals), unit: name }
  if (exact) return { number: formatExact(number), unit: name }
  if (flavour !== 'temperature') return { number: formatNumber(number, figures), unit: name }
  const places = figures - 1 - exponent(Number(number.toPrecision(figures)))
  return { number: plain(number, Math.min(Math.max(places, 0), 1)), unit: name }
}

/** A size of the gauge; one that is none is given by the nearest, or above 4/0 in kcmil. */
function wireParts(area: number, options: FormatOptions): { number: string; unit: string } {
  const gauge = fromSI(area, 'AWG')
  const size = Math.round(gauge)
  if (!Number.isFinite(gauge) || gauge < -3.01 || size > 40)
    return quantityParts(area, 'kcmil', options)
  const number = size > 0 ? String(size) : `${1 - size}/0`
  return { number: Math.abs(gauge - size) < 0.01 ? number : `≈ ${number}`, unit: 'AWG' }
}

function formatExact(value: number): string {
  const rounded = Number(value.toPrecision(12))
  const size = exponent(rounded)
  if (rounded !== 0 && (size < -6 || size > 11)) return power(rounded.toExponential())
  return plain(
    rounded,
    Math.max((rounded.toExponential().split('e')[0] ?? '').replace(/\D/g, '').length - 1 - size, 0),
  )
}

const exponent = (value: number): number => Number(value.toExponential().split('e')[1])

function plain(value: number, decimals: number): string {
  const text = value.toFixed(Math.min(decimals, 20))
  const [whole = '', rest] = text.replace('-', '').split('.')
  const grouped = whole.length > 4 ? whole.replace(/(?=(?:\d{3})+$)(?!^)/g, '\u202F') : whole
  const sign = text.startsWith('-') && /[1-9]/.test(text) ? '−' : ''
  return sign + grouped + (rest === undefined ? '' : `.${rest}`)
}

function power(text: string): string {
  const [digits = '', size = ''] = text.split('e')
  const raised = superscript(Number(size)).replace('-', '⁻')
  return `${digits.replace('-', '−')} × 10${raised}`
}

function checked(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError('only a finite number can be printed')
  return value
}
