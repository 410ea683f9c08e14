// @vitest-environment happy-dom
/** A page with a card: a reader's figures move it, and taking them back leaves what the build wrote. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import {
  blockHtml,
  contextOf,
  editionOf,
  numberHtml,
  pageFiguresOf,
  pageFiguresText,
  storiesHtml,
} from '../../src/card/index.ts'
import { work } from '../../src/ledger/work.ts'
import { partOf } from '../../src/site/part.ts'
import { calculator, calculators, published } from '../card/fixture.ts'

vi.mock('../../calculators/index.ts', () => ({
  calculators: { 'loop-flow': () => Promise.resolve(calculator) },
}))

const accepted = published.blocks.map((block) =>
  block.name === 'taken' ? { ...block, accepted: 'only in winter' } : { ...block, accepted: null },
)
const built = work({ ...published, blocks: accepted }, calculators).published
const ctx = contextOf(built, { base: '/', page: 'keeping-cool', calculators })

function card(name: string): string {
  const block = ctx.block(`keeping-cool/${name}`)
  if (block === undefined) throw new Error(name)
  return `<work-card id="${name}" data-block="${block.id}">${blockHtml(block, ctx)}</work-card>`
}

const handed = (edition: string): string =>
  pageFiguresText(
    pageFiguresOf(partOf(built, 'keeping-cool', []), 'keeping-cool', edition, calculators),
  )

const edition = editionOf(built, 'keeping-cool')

/** A server that has the page's figures and nothing else. */
const answers = (answer: () => Response | Promise<Response>) => (address: string) => {
  expect(address).toBe(`figures.json?${edition}`)
  return Promise.resolve(answer())
}

function page(): string {
  const flow = ctx.number('keeping-cool/pump.flow')
  const draw = ctx.number('keeping-cool/pumpDraw')
  if (flow === undefined || draw === undefined) throw new Error('no number')
  const own = built.numbers.filter(({ note }) => note === 'keeping-cool')
  return `<main><p id="text">${numberHtml(flow, ctx)} ${numberHtml(draw, ctx)} ${numberHtml(flow, ctx, { unit: 'L/s', digits: 2 })}</p>${card('pump')}${card('taken')}<div data-stories="keeping-cool">${storiesHtml(own, ctx)}</div></main><work-strip></work-strip>`
}

/** What the build wrote, without what the script adds. */
function written(): string {
  const copy = document.body.cloneNode(true)
  if (!(copy instanceof HTMLElement)) throw new Error('no body')
  for (const added of copy.querySelectorAll(
    '.try-bar, .try-form, .card-old, .own-paper, work-strip',
  ))
    added.remove()
  return copy.innerHTML
}

async function open(name: string): Promise<HTMLFormElement> {
  const { toggle } = await import('../../src/live/try.ts')
  const element = document.querySelector<HTMLElement>(`#${name}`)
  if (element === null) throw new Error(name)
  await toggle(element)
  const form = element.querySelector<HTMLFormElement>('.try-form')
  if (form === null) throw new Error('no form')
  // This DOM overlooks the `selected` of an option; browsers do not.
  for (const option of form.querySelectorAll<HTMLOptionElement>('option[selected]')) {
    const select = option.closest('select')
    if (select) select.value = option.value
  }
  return form
}

function enter(form: HTMLFormElement, name: string, text: string): void {
  const control = form.querySelector<HTMLInputElement>(`[name="${name}"]`)
  if (control === null) throw new Error(name)
  control.value = text
  form.dispatchEvent(new Event('submit', { cancelable: true }))
}

const status = (form: HTMLFormElement) => form.querySelector('.try-status')?.textContent

/** This DOM has no screen: all of the page is on it. */
class EverythingInSight {
  readonly #tell: (entries: readonly { target: Element; isIntersecting: boolean }[]) => void
  constructor(tell: (entries: readonly { target: Element; isIntersecting: boolean }[]) => void) {
    this.#tell = tell
  }
  observe(target: Element): void {
    this.#tell([{ target, isIntersecting: true }])
  }
  unobserve(): void {
    // Nothing leaves.
  }
}

let before = ''
/** Compared here, since a difference of two whole pages helps nobody. */
const untouched = () => written() === before
beforeEach(async () => {
  vi.resetModules()
  document.documentElement.dataset.base = '/'
  document.documentElement.dataset.figures = edition
  vi.stubGlobal(
    'fetch',
    answers(() => new Response(handed(edition))),
  )
  document.body.innerHTML = page()
  before = written()
  localStorage.clear()
  vi.stubGlobal('IntersectionObserver', EverythingInSight)
  await import('../../src/live/start.ts')
})
afterEach(() => {
  vi.unstubAllGlobals()
})

describe('a reader’s figures', () => {
  it('move the card, the text and the stories, marked, beside the builder’s', async () => {
    const form = await open('pump')
    enter(form, 'bore', '9.5 mm')
    expect(status(form)).toBe(
      'Verdict with your figures: pass, provisional. With the builder’s: pass, provisional.',
    )
    const text = document.querySelector('#text')
    expect(text?.textContent).toMatch(/4\.4.L\/min.*your figures; the builder’s 8\.8.L\/min/)
    expect(text?.textContent).toContain('1.5\u00a0A')
    expect(text?.querySelector('[data-unit="L/s"]')?.textContent).toBe('0.073\u00a0L/s')
    expect(document.querySelector('#pump .card')?.className).toContain('card-yours')
    expect(document.querySelector('#taken .card')?.className).toContain('card-built')
    await vi.waitFor(() => {
      expect(document.querySelector('[data-stories]')?.textContent).toContain('your figures')
    })
  })

  it('change the verdict, and say so', async () => {
    const form = await open('pump')
    enter(form, 'heat', '9 kW')
    expect(status(form)).toBe(
      'Verdict with your figures: stop. With the builder’s: pass, provisional.',
    )
    expect(document.querySelector('#pump .card-verdict')?.textContent).toBe('stop')
  })

  it('are not covered by the reason for which the builder accepted a stop', async () => {
    const form = await open('taken')
    enter(form, 'heat', '9 kW')
    expect(document.querySelector('#taken .card-verdict')?.textContent).toBe('stop')
  })

  it('are taken back without a trace', async () => {
    const form = await open('pump')
    enter(form, 'bore', '9.5 mm')
    expect(untouched()).toBe(false)
    form.dispatchEvent(new Event('reset', { cancelable: true }))
    expect(untouched()).toBe(true)
    expect(form.querySelector<HTMLInputElement>('[name=bore]')?.value).toBe('19')
    expect(form.querySelector<HTMLSelectElement>('[name="bore:unit"]')?.value).toBe('mm')
  })

  it('are taken back also by typing the builder’s again', async () => {
    const form = await open('pump')
    enter(form, 'bore', '9.5 mm')
    enter(form, 'bore', '19 mm')
    expect(untouched()).toBe(true)
  })

  it('of two cards count together', async () => {
    const first = await open('pump')
    enter(first, 'bore', '9.5 mm')
    const second = await open('taken')
    enter(second, 'bore', '16 mm')
    expect(document.querySelector('#pump .card')?.className).toContain('card-yours')
    expect(document.querySelector('#taken .card')?.className).toContain('card-yours')
  })

  it('with a fault leave the page as it was and say what is wrong', async () => {
    const form = await open('pump')
    enter(form, 'bore', '9.5 kg')
    expect(untouched()).toBe(true)
    const control = form.querySelector('[name=bore]')
    expect(control?.getAttribute('aria-invalid')).toBe('true')
    expect(control?.closest('.try-field')?.querySelector('.try-said')?.textContent).toMatch(
      /length/,
    )
    expect(status(form)).toMatch(/^One entry to put right/)
  })

  it('add and remove rows of a list', async () => {
    const form = await open('pump')
    form.querySelector<HTMLElement>('[data-add=hoses]')?.click()
    expect(form.querySelectorAll('.try-row')).toHaveLength(2)
    enter(form, 'hoses.1.name', 'back')
    enter(form, 'hoses.1.length', '3 m')
    expect(document.querySelector('#pump .card-out')?.textContent).toContain('back')
    form.querySelector<HTMLElement>('[data-remove=hoses][data-row="1"]')?.click()
    expect(untouched()).toBe(true)
  })
})

describe('while typing', () => {
  it('the card follows without a press', async () => {
    const form = await open('pump')
    const control = form.querySelector<HTMLInputElement>('[name=heat]')
    if (control === null) throw new Error('heat')
    control.value = '9 kW'
    form.dispatchEvent(new Event('input'))
    await vi.waitFor(() => {
      expect(document.querySelector('#pump .card-verdict')?.textContent).toBe('stop')
    })
  })
  it('what is not yet a number neither moves anything nor alarms', async () => {
    const form = await open('pump')
    const control = form.querySelector<HTMLInputElement>('[name=heat]')
    if (control === null) throw new Error('heat')
    control.focus()
    for (const text of ['', '-', '1/', '2.', '3e']) {
      control.value = text
      form.dispatchEvent(new Event('input'))
      expect(untouched()).toBe(true)
      expect(control.getAttribute('aria-invalid')).toBeNull()
    }
  })
  it('a wrong entry is told after a moment, and what stands is marked as older', async () => {
    const form = await open('pump')
    const control = form.querySelector<HTMLInputElement>('[name=heat]')
    if (control === null) throw new Error('heat')
    control.value = '9 kW'
    form.dispatchEvent(new Event('input'))
    control.value = '9 kg'
    form.dispatchEvent(new Event('input'))
    expect(control.getAttribute('aria-invalid')).toBeNull()
    await vi.waitFor(() => {
      expect(control.getAttribute('aria-invalid')).toBe('true')
    })
    expect(document.querySelector('#pump .card-old')?.textContent).toMatch(/from before/)
    expect(document.querySelector('#pump .card-verdict')?.textContent).toBe('stop')
    control.value = '1 kW'
    form.dispatchEvent(new Event('input'))
    expect(document.querySelector('#pump .card-old')).toBeNull()
  })
})

describe('figures of one’s own', () => {
  it('are kept in this browser, and only after a change', async () => {
    await open('pump')
    expect(localStorage.length).toBe(0)
    const form = document.querySelector<HTMLFormElement>('#pump .try-form')
    if (form === null) throw new Error('no form')
    enter(form, 'bore', '9.5 mm')
    await vi.waitFor(() => {
      expect(localStorage.length).toBe(1)
    })
    form.dispatchEvent(new Event('reset', { cancelable: true }))
    await vi.waitFor(() => {
      expect(localStorage.length).toBe(0)
    })
  })
  it('are kept at once when the page is left', async () => {
    enter(await open('pump'), 'bore', '9.5 mm')
    dispatchEvent(new Event('pagehide'))
    expect(localStorage.length).toBe(1)
  })
  it('hold for the page where the browser keeps nothing, and the strip says so', async () => {
    vi.stubGlobal('localStorage', {
      getItem: () => null,
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError')
      },
    })
    enter(await open('pump'), 'bore', '9.5 mm')
    expect(document.querySelector('#pump .card')?.className).toContain('card-yours')
    await vi.waitFor(() => {
      expect(document.querySelector('.own-strip')?.textContent).toContain('keeps nothing')
    }, 5000)
  })
  it('come back on the next visit, and one or all can be taken back from the strip', async () => {
    enter(await open('pump'), 'bore', '9.5 mm')
    enter(await open('taken'), 'bore', '16 mm')
    dispatchEvent(new Event('pagehide'))
    vi.resetModules()
    document.body.innerHTML = page()
    await import('../../src/live/start.ts')
    const strip = () => document.querySelector('.own-strip')
    await vi.waitFor(() => {
      expect(document.querySelector('#pump .card')?.className).toContain('card-yours')
      expect(strip()?.textContent).toContain('2 figures of yours are in force')
    })
    strip()?.querySelector<HTMLElement>('[data-one]')?.click()
    expect(strip()?.textContent).toContain('1 figure of yours is in force')
    strip()?.querySelector<HTMLElement>('[data-all]')?.click()
    expect(document.querySelector<HTMLElement>('.own-strip')?.hidden).toBe(true)
    expect(untouched()).toBe(true)
  })
})

describe('when something fails', () => {
  const said = () => document.querySelector('#pump .try-bar [role=status]')?.textContent
  const press = () => document.querySelector<HTMLElement>('#pump .try-bar button')?.click()

  it.each([
    ['the file is not there', () => new Response('', { status: 404 }), 'could not be fetched'],
    ['no network', () => Promise.reject(new Error('offline')), 'could not be fetched'],
    ['the file is cut off', () => new Response('{"page":'), 'could not be read'],
    ['the notes were built again', () => new Response(handed('ffffff')), 'load it again'],
  ])('says so under the card: %s', async (_, answer, reason) => {
    vi.stubGlobal('fetch', answers(answer))
    press()
    await vi.waitFor(() => {
      expect(said()).toContain(reason)
    })
    expect(said()).toContain('The page stands as it is.')
    expect(untouched()).toBe(true)
  })

  it('works at the next press, when the network is back', async () => {
    vi.stubGlobal(
      'fetch',
      answers(() => Promise.reject(new Error('offline'))),
    )
    press()
    await vi.waitFor(() => {
      expect(said()).toContain('could not be fetched')
    })
    vi.stubGlobal(
      'fetch',
      answers(() => new Response(handed(edition))),
    )
    press()
    await vi.waitFor(() => {
      expect(document.querySelector('#pump .try-form')).not.toBeNull()
    })
    expect(said()).toBe('')
  })
})
