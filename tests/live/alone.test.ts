// @vitest-environment happy-dom
/** A calculator by itself: empty or from a block, worked as a note's block would be, and nothing kept. */
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { contextOf, hazardsHtml } from '../../src/card/index.ts'
import { workPublished } from '../../src/ledger/override.ts'
import { work } from '../../src/ledger/work.ts'
import { aloneFiguresHtml, readAloneFigures } from '../../src/live/alone-data.ts'
import { calculator, calculators, published } from '../card/fixture.ts'

vi.mock('../../calculators/index.ts', () => ({
  calculators: { 'loop-flow': () => Promise.resolve(calculator) },
}))

const built = work(published, calculators).published
const ctx = contextOf(built, { base: '/', calculators })
const page = `<main>${hazardsHtml(calculator.hazards)}<work-alone data-calculator="${calculator.id}"></work-alone>${aloneFiguresHtml(calculator, ctx)}</main>`

function find(selector: string): HTMLElement {
  const found = document.querySelector<HTMLElement>(selector)
  if (found === null) throw new Error(selector)
  return found
}

function inputNamed(name: string): HTMLInputElement {
  const control = find(`form [name="${name}"]`)
  if (!(control instanceof HTMLInputElement)) throw new Error(name)
  return control
}

/** This DOM overlooks the `selected` of an option; browsers do not. */
function settleSelects(): void {
  for (const option of document.querySelectorAll<HTMLOptionElement>('form option[selected]')) {
    const select = option.closest('select')
    if (select) select.value = option.value
  }
}

function type(name: string, text: string, event: 'input' | 'change' = 'change'): void {
  inputNamed(name).value = text
  find('form').dispatchEvent(new Event(event))
}

function start(title: string): void {
  const select = find('[data-start]')
  if (!(select instanceof HTMLSelectElement)) throw new Error('no select')
  select.value = [...select.options].find(({ text }) => text === title)?.value ?? ''
  select.dispatchEvent(new Event('change'))
  // Worked once more with what a browser would have had at once.
  settleSelects()
  find('form').dispatchEvent(new Event('change'))
}

const said = (): string => find('form .try-status').textContent
const card = (): HTMLElement | null => document.querySelector('.alone-result .card')
const plain = (text: string | undefined): string => (text ?? '').replace(/[\s\u00a0]+/g, ' ')

beforeEach(async () => {
  vi.resetModules()
  localStorage.clear()
  delete document.documentElement.dataset.units
  document.documentElement.dataset.base = '/'
  document.body.innerHTML = page
  await import('../../src/live/start.ts')
  find('work-alone .try-bar button').click()
  await vi.waitFor(() => {
    find('form input')
  })
})

describe('empty', () => {
  it('has nothing in its fields, no card, and says nothing', () => {
    for (const input of document.querySelectorAll<HTMLInputElement>('form input'))
      expect(input.value).toBe('')
    expect([said(), card(), find('.alone-result').hidden]).toEqual(['', null, true])
  })
  it('does not alarm about what is not typed yet', () => {
    type('heat', '1100', 'input')
    expect(said()).toMatch(/fields? still to fill in/)
    expect(document.querySelector('[aria-invalid]')).toBeNull()
  })
  it('says what is missing when it is asked to work', () => {
    find('form').dispatchEvent(new Event('submit', { cancelable: true }))
    expect(inputNamed('bore').getAttribute('aria-invalid')).toBe('true')
    expect(card()).toBeNull()
  })
})

describe('from a block of a note', () => {
  it('lists the blocks by note, and is filled with what the block was given', () => {
    expect(document.querySelectorAll('[data-start] optgroup').length).toBeGreaterThan(0)
    start(built.blocks.find(({ name }) => name === 'pump')?.title ?? '')
    expect(inputNamed('bore').value).toBe('19')
  })
  it('works out the same as the block does', () => {
    const pump = built.blocks.find(({ name }) => name === 'pump')
    start(pump?.title ?? '')
    const flow = built.numbers.find(({ id }) => id === 'keeping-cool/pump.flow')
    expect(plain(card()?.querySelector('.card-out')?.textContent)).toContain(plain(flow?.shown))
  })
  it('says whose figures they are, with the hazards and without links to notes', () => {
    start(built.blocks[0]?.title ?? '')
    expect(card()?.querySelector('.yours')?.textContent).toBe('Your figures, of no note.')
    expect(card()?.querySelectorAll('.hazard-line li').length).toBe(calculator.hazards.length)
    const links = [...(card()?.querySelectorAll('a') ?? [])].map((a) => a.getAttribute('href'))
    expect(links.filter((href) => href?.startsWith('/notes/'))).toEqual([])
  })
})

describe('with figures typed', () => {
  beforeEach(() => {
    start(built.blocks.find(({ name }) => name === 'pump')?.title ?? '')
  })
  it('is worked by the ledger like a block of a note', () => {
    type('bore', '1/2 in')
    const own = { 'keeping-cool/pump.bore': '1/2 in' }
    const due = workPublished(built, own, calculators).numbers.find(
      ({ id }) => id === 'keeping-cool/pump.flow',
    )
    expect(plain(card()?.querySelector('.card-out')?.textContent)).toContain(plain(due?.shown))
    expect(said()).toMatch(/^Verdict with your figures: /)
  })
  it('neither moves nor alarms at what is half typed', () => {
    const before = card()?.innerHTML
    inputNamed('heat').focus()
    for (const text of ['', '-', '1/', '3e']) {
      type('heat', text, 'input')
      expect(card()?.innerHTML).toBe(before)
      expect(document.querySelector('[aria-invalid]')).toBeNull()
      expect(find('.card-old').hidden).toBe(true)
    }
  })
  it('tells a wrong entry, and marks the card as older', () => {
    type('heat', '9 kg')
    expect(inputNamed('heat').getAttribute('aria-invalid')).toBe('true')
    expect(said()).toBe('1 entry to put right.')
    expect(find('.card-old').hidden).toBe(false)
    type('heat', '1 kW')
    expect(find('.card-old').hidden).toBe(true)
  })
  it('keeps nothing', () => {
    type('bore', '9.5 mm')
    expect(localStorage.length).toBe(0)
  })
  it('is emptied again', () => {
    find('form').dispatchEvent(new Event('reset', { cancelable: true }))
    expect([inputNamed('bore').value, card()]).toEqual(['', null])
  })
  it('follows the units that the reader chooses', () => {
    document.documentElement.dataset.units = 'us'
    document.dispatchEvent(new CustomEvent('worked-notes:units', { detail: { systems: ['us'] } }))
    const out = card()?.querySelector('.card-out')?.textContent
    expect(out).toContain('gal/min')
    expect(out).not.toContain('L/min')
  })
  it('says what matters most, and again when a figure changes', async () => {
    find('.alone-result > .try-bar button').click()
    await vi.waitFor(() => {
      expect(find('.matters-body').textContent).toContain('What moves it most')
    })
    const before = find('.matters-body').innerHTML
    type('bore', '9.5 mm')
    await vi.waitFor(() => {
      expect(find('.matters-body').innerHTML).not.toBe(before)
    })
  })
  it('can be taken along, with its warnings, as nobody’s', async () => {
    const buttons = document.querySelectorAll<HTMLElement>('.alone-result > .try-bar button')
    buttons[1]?.click()
    await vi.waitFor(() => {
      find('[data-take=text]')
    })
    for (const what of ['text', 'mdx']) {
      find(`[data-take=${what}]`).click()
      const text = document.querySelector<HTMLTextAreaElement>('.take-part textarea')?.value ?? ''
      expect(text).toContain('A reader’s figures, of no note')
      expect(plain(text)).toContain('Local codes and licensed practice decide')
      expect(text).toContain('/calculators/loop-flow/')
      expect(text).not.toContain('/notes/')
    }
    expect(document.querySelector('[data-take=csv]')).toBeNull()
  })
})

describe('the block of data', () => {
  it('ends no script, and anything else is not read', () => {
    expect(aloneFiguresHtml(calculator, ctx).match(/</g)?.length).toBe(2)
    for (const text of ['', '{', 'null', '[]', '{"site":1,"sources":[],"blocks":[]}'])
      expect(readAloneFigures(text)).toBeUndefined()
  })
  it('says so where it is damaged', async () => {
    document.body.innerHTML = page
    find('#Calculator-figures').textContent = '{'
    find('work-alone .try-bar button').click()
    await vi.waitFor(() => {
      expect(find('work-alone .try-bar [role=status]').textContent).toContain('cannot be worked')
    })
  })
})
