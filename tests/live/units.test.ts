// @vitest-environment happy-dom
/** The reader's choice of units: kept, told to the page, shown on it, and taken back without a trace. */
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { contextOf, dataHtml, numberHtml, valueHtml } from '../../src/card/index.ts'
import type { PublishedNumber } from '../../src/ledger/published.ts'
import { calculators, published } from '../card/fixture.ts'

const key = 'worked-notes units /'
const root = document.documentElement
const ctx = contextOf(published, { base: '/', calculators })

const numberOf = (id: string, change: Partial<PublishedNumber> = {}): PublishedNumber => {
  const number = published.numbers.find((one) => one.id === id)
  if (number === undefined) throw new Error(id)
  return { ...number, ...change }
}

const flow = 'keeping-cool/pump.flow'

/** A number without its other unit, as on a site of one system. */
function alone(shown: string, value: number, change: Partial<PublishedNumber> = {}): string {
  const number = numberOf(flow, { shown, value, display: '', ...change })
  return `<p>${dataHtml(number)}</p>`
}

const text = (selector: string): string =>
  [...(document.querySelector(selector)?.childNodes ?? [])]
    .filter((node) => !(node instanceof HTMLElement && node.hidden))
    .map((node) => node.textContent)
    .join('')
    .replace(/[\u00a0\u202f]/g, ' ')
    .trim()

const main = (): string => document.querySelector('main')?.innerHTML ?? ''

function select(): HTMLSelectElement {
  const found = document.querySelector<HTMLSelectElement>('work-units select')
  if (found === null) throw new Error('no select')
  return found
}

function choose(value: string): void {
  select().value = value
  select().dispatchEvent(new Event('change', { bubbles: true }))
}

const shows = (selector: string, expected: string) =>
  vi.waitFor(() => {
    expect(text(selector)).toBe(expected)
  })

const heard: unknown[] = []

function open(body: string, systems = 'metric us'): void {
  root.dataset.systems = systems
  document.body.innerHTML = `<work-units></work-units><main>${body}</main>`
}

beforeAll(async () => {
  await import('../../src/live/units.ts')
  document.addEventListener('worked-notes:units', (event) => {
    heard.push(event instanceof CustomEvent ? event.detail : undefined)
  })
})
beforeEach(() => {
  localStorage.clear()
  open('')
  heard.length = 0
})
afterEach(() => {
  vi.restoreAllMocks()
})

describe('the choice', () => {
  it('is a labelled list of four, and nothing is kept or told before one is made', () => {
    const options = [...select().options].map(({ text }) => text)
    expect(options).toEqual(['as written', 'metric', 'US', 'both'])
    expect(select().closest('label')?.textContent).toContain('Units')
    expect([localStorage.length, root.dataset.units, heard]).toEqual([0, undefined, []])
  })

  it('is told to the page, and kept under the site’s base path', () => {
    choose('us')
    expect(root.dataset.units).toBe('us')
    expect(heard).toEqual([{ systems: ['us'] }])
    expect(localStorage.getItem(key)).toBe('us')
    choose('')
    expect(root.dataset.units).toBeUndefined()
    expect(heard.at(-1)).toEqual({ systems: undefined })
  })

  it('of both puts the site’s own first', () => {
    choose('both')
    open('', 'us metric')
    choose('')
    choose('both')
    expect(heard).toEqual([
      { systems: ['metric', 'us'] },
      { systems: undefined },
      { systems: ['us', 'metric'] },
    ])
  })

  it('holds on the next page', async () => {
    choose('us')
    open(alone('10.0\u00a0L/min', 1 / 6000))
    expect(select().value).toBe('us')
    localStorage.setItem(key, 'metric')
    open(alone('10.0\u00a0L/min', 1 / 6000))
    expect(select().value).toBe('metric')
    await shows('main data', '10.0 L/min')
  })

  it('comes from other tabs', async () => {
    open(alone('10.0\u00a0L/min', 1 / 6000))
    localStorage.setItem(key, 'us')
    dispatchEvent(new StorageEvent('storage', { key }))
    await shows('main data', '2.64 gal/min')
    expect(select().value).toBe('us')
    localStorage.clear()
    dispatchEvent(new StorageEvent('storage', { key: null }))
    await shows('main data', '10.0 L/min')
  })

  it('from a later version, or from somebody who wrote into the storage, is none', () => {
    localStorage.setItem(key, 'toString')
    open('')
    expect([select().value, root.dataset.units]).toEqual(['', undefined])
  })

  it('holds for the page where the browser keeps nothing', async () => {
    vi.spyOn(Storage.prototype, 'getItem').mockImplementation(() => {
      throw new Error('refused')
    })
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new Error('refused')
    })
    open(alone('10.0\u00a0L/min', 1 / 6000))
    choose('us')
    await shows('main data', '2.64 gal/min')
    dispatchEvent(new Event('pageshow'))
    expect(root.dataset.units).toBe('us')
    choose('')
    await shows('main data', '10.0 L/min')
  })

  it('leaves a page with its figures to what works it', async () => {
    open(alone('10.0\u00a0L/min', 1 / 6000))
    root.dataset.figures = '3fa9c1'
    const before = main()
    choose('us')
    await new Promise((resolve) => setTimeout(resolve, 20))
    expect(main()).toBe(before)
    expect(heard).toEqual([{ systems: ['us'] }])
    delete root.dataset.figures
  })
})

describe('a number', () => {
  const both = () => `<p>${numberHtml(numberOf(flow), ctx)}</p>`

  it('takes what the build wrote in the other system, and puts its own in brackets', async () => {
    open(both())
    expect(text('main a')).toBe('8.75 L/min (2.31 gal/min)')
    choose('us')
    await shows('main a', '2.31 gal/min')
    choose('metric')
    await shows('main a', '8.75 L/min')
    choose('both')
    await shows('main a', '8.75 L/min (2.31 gal/min)')
  })

  it('of a site with US first turns round', async () => {
    const { shown, shownOther } = numberOf(flow)
    const turned = numberOf(flow, { shown: shownOther ?? '', shownOther: shown })
    open(`<p>${numberHtml(turned, ctx)}</p>`, 'us metric')
    choose('metric')
    await shows('main a', '8.75 L/min')
    // The site's own choice as well, once something was changed.
    choose('both')
    await shows('main a', '2.31 gal/min (8.75 L/min)')
  })

  it('stands again as the build wrote it, to the last node', async () => {
    open(`${both()}<p>${valueHtml(numberOf('keeping-cool/pumpDraw'), ctx)}</p>`)
    const before = main()
    const nodes = [...document.querySelectorAll('main *')]
    for (const system of ['us', 'both', 'metric', 'us']) choose(system)
    await shows('main a', '2.31 gal/min')
    choose('')
    await vi.waitFor(() => {
      expect(main()).toBe(before)
    })
    expect([...document.querySelectorAll('main *')]).toEqual(nodes)
  })

  // Converted by NIST SP 811, appendix B.8 and B.9; the wire by ASTM B258.
  it.each([
    ['150\u00a0kPa gauge', 150e3, 'us', '21.8 psi gauge'],
    ['65\u00a0°C', 338.15, 'us', '149 °F'],
    ['5.0\u00a0K', 5, 'us', '9.0 Δ°F'],
    ['12\u202f300\u00a0N', 12300, 'us', '2765.2 lbf'],
    ['−40.0\u00a0°C', 233.15, 'us', '−40.0 °F'],
    ['1 1/2\u00a0in', 0.0381, 'metric', '38.1 mm'],
    ['2/0\u00a0AWG', 67.43e-6, 'metric', '67.4 mm²'],
    ['30\u00a0hp', 22371, 'metric', '22 kW'],
    ['35\u00a0mph', 15.6464, 'metric', '56 km/h'],
  ])('%s is converted from its exact value, its figures kept', async (shown, value, to, due) => {
    open(alone(shown, value), to === 'us' ? 'metric' : 'us')
    choose(to)
    await shows('main data', due)
  })

  it.each([
    ['12.0\u00a0kW', 12000],
    ['12\u00a0V', 12],
    ['0.61', 0.61],
    ['45\u00a0%', 0.45],
    ['35.0\u00a0mm²', 35e-6],
  ])('%s stays, since no other unit is used for it', async (shown, value) => {
    open(`${alone(shown, value)}<div>${alone('10.0\u00a0L/min', 1 / 6000)}</div>`)
    const before = document.querySelector('main > p')?.innerHTML
    choose('us')
    await shows('main div data', '2.64 gal/min')
    expect(document.querySelector('main > p')?.innerHTML).toBe(before)
  })

  it('that cannot be told stays', async () => {
    const unknown = numberOf(flow, { value: null, shown: 'cannot tell' })
    open(`<p>${dataHtml(unknown)}</p><div>${alone('10.0\u00a0L/min', 1 / 6000)}</div>`)
    choose('us')
    await shows('main div data', '2.64 gal/min')
    expect(text('main > p')).toBe('cannot tell')
  })

  it('takes its ± along, as a difference', async () => {
    const inlet = numberOf(flow, {
      value: 338.15,
      shown: '65\u00a0°C',
      shownOther: '149\u00a0°F',
      plusMinus: 0.5,
      plusMinusShown: '0.5 °C',
    })
    open(`<p>${valueHtml(inlet, ctx)}</p>`)
    expect(text('main p')).toBe('65 °C ± 0.5 °C (149 °F)')
    choose('us')
    await shows('main p', '149 °F ± 0.90 Δ°F')
    choose('')
    await shows('main p', '65 °C ± 0.5 °C (149 °F)')
  })
})
