/**
 * Writes the numbers of a page that is finished in the units that its reader chose. Every `<data>` has
 * its exact SI value; what the build wrote in the other system is taken as it is, anything else is
 * converted with as many figures as its text has. `undefined` puts back what the build wrote, node by
 * node. A number that no other unit is used for stays.
 */
import { quantityHtml } from '../card/number.ts'
import type { UnitSystem } from '../ledger/published.ts'
import { counterpart, formatQuantity, parseQuantity } from '../quantity/index.ts'

/** A quantity as text, with its unit: `8.75 L/min`. */
interface Written {
  readonly text: string
  readonly unit: string
}

const written = new Map<Element, readonly ChildNode[]>()

export function showUnits(systems: readonly UnitSystem[] | undefined): void {
  for (const [element, nodes] of written) {
    element.replaceChildren(...nodes)
    if (element instanceof HTMLElement) element.hidden = false
  }
  written.clear()
  if (systems === undefined) return
  for (const data of document.querySelectorAll<HTMLDataElement>('data.number[data-number]'))
    // What is worked here is written in the chosen units at once.
    if (data.closest('work-alone') === null) showNumber(data, systems)
}

function rewrite(element: Element, html: string): void {
  if (!written.has(element)) written.set(element, [...element.childNodes])
  element.innerHTML = html
}

function read(text: string): Written | undefined {
  const space = text.lastIndexOf('\u00a0')
  return space < 0 ? undefined : { text, unit: text.slice(space + 1) }
}

/** The system that a unit is of; undefined where it is of both. */
function systemOf(unit: string): UnitSystem | undefined {
  if (counterpart(unit, 'metric') !== undefined) return 'us'
  return counterpart(unit, 'us') === undefined ? undefined : 'metric'
}

const opposite = { metric: 'us', us: 'metric' } as const

function showNumber(data: HTMLDataElement, [first, second]: readonly UnitSystem[]): void {
  const own = read(data.textContent)
  if (data.value === '' || own === undefined || first === undefined) return
  const place = data.parentElement
  const other = place?.querySelector<HTMLElement>(':scope > .other') ?? undefined
  const inBrackets = read(other?.textContent.replace(/^\s*\(|\)$/g, '') ?? '')
  const ofOther = inBrackets === undefined ? undefined : systemOf(inBrackets.unit)
  const system = systemOf(own.unit) ?? (ofOther === undefined ? undefined : opposite[ofOther])
  if (system === undefined) return
  const swaps = system !== first
  const converted = swaps ? (inBrackets ?? convert(data, own, first)) : own
  if (converted === undefined) return
  if (swaps) rewrite(data, quantityHtml(converted.text))
  const within = place?.querySelector<HTMLElement>(':scope > .within')
  if (swaps && within != null) convertWithin(within, first)
  if (other === undefined) return
  rewrite(other, ` (${quantityHtml((swaps ? own : (inBrackets ?? own)).text)})`)
  other.hidden = second === undefined
}

function convert(data: HTMLDataElement, { text, unit }: Written, system: UnitSystem) {
  const to = counterpart(unit, system)
  // A temperature may be shown in kelvin where its author asks for that; elsewhere K is a difference.
  if (to === undefined || (unit === 'K' && data.dataset.unit === 'K')) return undefined
  return { text: formatQuantity(Number(data.value), to, { figures: figuresOf(text) }), unit: to }
}

/** Two at least, and three of what has no end, such as a fraction. */
function figuresOf(text: string): number {
  const typed = parseQuantity(text.replace(/^≈\s*/u, '').replaceAll('\u202f', ''))
  return typed.ok && Number.isFinite(typed.figures) ? Math.max(2, typed.figures) : 3
}

/** The ± behind it, which is a difference. */
function convertWithin(within: HTMLElement, system: UnitSystem): void {
  const value = Number(within.dataset.within ?? NaN)
  const unit = read(within.textContent)?.unit ?? ''
  const to = unit === '°C' ? 'Δ°F' : unit === '°F' ? 'K' : counterpart(unit, system)
  if (to === undefined || !Number.isFinite(value)) return
  rewrite(within, ` ±\u00a0${formatQuantity(value, to, { figures: 2 })}`)
}
