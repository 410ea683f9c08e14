/**
 * What every page loads: the buttons under the cards, the numbers that open at a press, and the strip.
 * Everything that works is fetched when it is first asked for, or at once where the reader has figures
 * in force, has chosen other units, or came by a link with figures. Without it the page is whole.
 */
import './search-box.ts'
import { figuresKey } from './base.ts'
import { edition, handedText } from './handed.ts'
import { reasonOf } from './reason.ts'
import { showAsWritten } from './units.ts'
import { words } from '../words/words.ts'

const hasFigures = edition() !== undefined

function hasOwn(): boolean {
  try {
    return localStorage.getItem(figuresKey()) !== null
  } catch {
    return false
  }
}

type Buttons = readonly (readonly [text: string, open: (host: HTMLElement) => Promise<boolean>])[]

const ofCards: Buttons = [
  [words`Try your figures`, async (card) => (await import('./try.ts')).toggle(card)],
  [words`What matters most`, async (card) => (await import('./matters.ts')).toggleMatters(card)],
  [words`Take it along`, async (card) => (await import('./take.ts')).toggleTake(card)],
]

const ofCalculators: Buttons = [
  [
    words`Use it with your own figures`,
    async (host) => (await import('./alone.ts')).toggleAlone(host, addBar),
  ],
]

/** Fetches the page's figures; whoever reads them tells what went wrong. */
function askForFigures(): void {
  if (hasFigures) handedText().catch(() => undefined)
}

function addBar(host: HTMLElement, buttons: Buttons): void {
  if (host.querySelector(':scope > .try-bar')) return
  const bar = document.createElement('div')
  bar.className = 'try-bar on-screen'
  const said = document.createElement('span')
  said.setAttribute('role', 'status')
  for (const [text, open] of buttons) {
    const button = document.createElement('button')
    button.type = 'button'
    button.textContent = text
    button.setAttribute('aria-expanded', 'false')
    if (text !== buttons[0]?.[0]) button.className = 'plain'
    button.addEventListener('click', () => {
      said.textContent = ''
      button.setAttribute('aria-busy', 'true')
      askForFigures()
      open(host)
        .then((isOpen) => {
          button.setAttribute('aria-expanded', String(isOpen))
        })
        .catch((error: unknown) => {
          said.textContent = words`This cannot be worked here: ${reasonOf(error)}. The page stands as it is.`
        })
        .finally(() => {
          button.removeAttribute('aria-busy')
        })
    })
    bar.append(button)
  }
  bar.append(said)
  host.append(bar)
}

/** `<work-card data-block="note/name">`: a finished card. */
export class WorkCard extends HTMLElement {
  connectedCallback() {
    addBar(this, ofCards)
  }
}

/** `<work-alone data-calculator="…">`: a calculator by itself; empty until a script fills it. */
export class WorkAlone extends HTMLElement {
  connectedCallback() {
    addBar(this, ofCalculators)
  }
}

/** `<work-strip>`: the reader's figures in force, at the foot of every page. */
export class WorkStrip extends HTMLElement {
  connectedCallback() {
    if (hasOwn()) void this.start()
    if (location.hash.startsWith('#figures=')) void this.offer()
    addEventListener('hashchange', () => {
      if (location.hash.startsWith('#figures=')) void this.offer()
    })
    const started = () => {
      if (hasOwn()) void this.start()
    }
    addEventListener('storage', started)
    document.addEventListener('worked-notes:own', () => void this.start(), { once: true })
  }
  async start(): Promise<void> {
    const { startStrip } = await import('./strip.ts')
    startStrip(this)
  }
  async offer(): Promise<void> {
    await this.start()
    const { offerLink } = await import('./strip.ts')
    await offerLink(this)
  }
}

function pressNumber(event: MouseEvent): void {
  const plain = event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey
  const link =
    event.target instanceof Element ? event.target.closest<HTMLElement>('a.number-link') : null
  if (!plain || event.altKey || link === null || link.closest('[data-stories]')) return
  event.preventDefault()
  askForFigures()
  Promise.all([import('./panel.ts'), import('./reader.ts')])
    .then(async ([{ openPanel }, { reader }]) => {
      openPanel(link, await reader())
    })
    .catch(() => {
      // The link to its story still leads there.
      location.assign(link.getAttribute('href') ?? '')
    })
}

if (hasFigures) {
  document.querySelector('main')?.addEventListener('click', pressNumber)
  const units = () => {
    askForFigures()
    import('./reader.ts').then(({ reader }) => reader()).catch(showAsWritten)
  }
  if (document.documentElement.dataset.units !== undefined) units()
  else document.addEventListener('worked-notes:units', units, { once: true })
}
if (!customElements.get('work-card')) customElements.define('work-card', WorkCard)
if (!customElements.get('work-alone')) customElements.define('work-alone', WorkAlone)
if (!customElements.get('work-strip')) customElements.define('work-strip', WorkStrip)
if (document.documentElement.dataset.offline !== undefined)
  void import('./offline.ts').then(({ startOffline }) => startOffline())
