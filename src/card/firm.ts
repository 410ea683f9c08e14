/**
 * A number and its unit never part at the end of a line: the space between them is made a no-break
 * space. For sentences that calculators, sheets and builders wrote; what the kit formats has it already.
 */
import { unitNames } from '../quantity/unit.ts'
import { escape } from './html.ts'

const names = new Set([...unitNames, '%', 'Δ°C'])

/** `L/min`, `W/(m²·K)`, `kWh/100`: made of units, powers and divisions. */
function isUnitWord(word: string): boolean {
  const parts = word.split(/[/·()]+/u).filter((part) => part !== '')
  return (
    parts.length > 0 &&
    parts.every((part) => names.has(part.replace(/[²³⁻¹]+$/u, '')) || part === '100')
  )
}

export function firm(text: string): string {
  return text.replace(
    /([\d½¼¾⅛⅜⅝⅞]) ([%°ΔΩ\p{L}][^\s,;:]*?)(?=[,.;:)”]*(?:\s|$))/gu,
    (all, digit: string, word: string) => (isUnitWord(word) ? `${digit}\u00a0${word}` : all),
  )
}

/** A sentence as HTML. */
export function sentenceHtml(text: string): string {
  return escape(firm(text))
}
