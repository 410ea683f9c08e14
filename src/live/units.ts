/**
 * `<work-units>`: in which units the reader sees the pages. Empty until a script fills it; the choice is
 * kept once it was made, and holds in every tab. A browser that keeps nothing has it for this page.
 *
 * A choice is told to the page as `data-units` on its root and the event `worked-notes:units`. A page
 * with figures of its own is drawn again by what works it; any other is converted here. Every page loads
 * this file, so it is short.
 */
import { basePath } from './base.ts'
import { edition } from './handed.ts'
import { systemsOf } from './systems.ts'
import { words } from '../words/words.ts'

const root = document.documentElement
const key = `worked-notes units ${basePath()}`

/** The builder's systems: `us metric`. */
const site = (): string => root.dataset.systems ?? ''
const first = (): string | undefined => site().split(' ')[0]

let choice = ''
let converted = false

function show(wanted: string): void {
  const systems = systemsOf(wanted, first())
  choice = systems ? wanted : ''
  if (systems) root.dataset.units = choice
  else delete root.dataset.units
  const select = document.querySelector<HTMLSelectElement>('work-units select')
  if (select) select.value = choice
  document.dispatchEvent(new CustomEvent('worked-notes:units', { detail: { systems } }))
  if (edition() !== undefined) return
  if (!converted && (!systems || systems.join(' ') === site())) return
  converted = true
  import('./units-of-page.ts')
    .then(({ showUnits }) => {
      // Another may have been chosen meanwhile.
      showUnits(systemsOf(choice, first()))
    })
    .catch(() => {
      converted = false
      showAsWritten()
    })
}

/** Where the choice cannot be followed here; it is kept for other pages. */
export function showAsWritten(): void {
  if (!choice) return
  show('')
  const said = document.querySelector('work-units [role=status]')
  if (said) said.textContent = words`Other units cannot be fetched now.`
}

function showKept(): void {
  try {
    const kept = localStorage.getItem(key) ?? ''
    if (kept !== choice) show(kept)
  } catch {
    // The browser refuses: what was chosen here holds here.
  }
}

export class WorkUnits extends HTMLElement {
  connectedCallback() {
    this.innerHTML = `<label>${words`Units`} <select><option value="">${words`as written`}<option value="metric">${words`metric`}<option value="us">${words`US`}<option value="both">${words`both`}</select></label><span role="status"></span>`
    this.onchange = ({ target }) => {
      if (target instanceof HTMLSelectElement) show(target.value)
      try {
        localStorage.setItem(key, choice)
      } catch {
        // It holds for this page.
      }
    }
    for (const select of this.querySelectorAll('select')) select.value = choice
    showKept()
  }
}

addEventListener('storage', showKept)
// A page that the browser kept whole, as it was before a choice on another.
addEventListener('pageshow', showKept)

if (!customElements.get('work-units')) customElements.define('work-units', WorkUnits)
