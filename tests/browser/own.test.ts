/** A reader's figures on the notes of the demo: what rests on them moves, on every note, and can be taken back. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadLedger, type Ledger } from '../../src/ledger/load.ts'
import { openLedger } from '../../src/ledger/open.ts'
import { workPublished, type Overrides } from '../../src/ledger/override.ts'
import { verdictName, verdictWords } from '../../src/card/words.ts'
import { demo } from '../build/site.ts'
import { opened, openedIn, served, type Served } from './serve.ts'
import {
  card,
  change,
  field,
  keep,
  keptFigures,
  number,
  openForm,
  openPanel,
  panel,
  printed,
  seen,
  settled,
  strip,
} from './steps.ts'

let host: Served
let ledger: Ledger
beforeAll(async () => {
  ;[host, ledger] = await Promise.all([served(demo, '/'), loadLedger(demo)])
})
afterAll(() => host.close())

/** What the page prints that is not what the whole ledger comes to with these figures. */
async function notAsWorked(page: Page, overrides: Overrides): Promise<string[]> {
  const { numbers } = workPublished(ledger.published, overrides, ledger.calculators)
  const values = new Map(numbers.map(({ id, value }) => [id, value]))
  await settled(page)
  const found = Object.entries(await printed(page))
  expect(found.length).toBeGreaterThan(50)
  return found
    .filter(([id, text]) => {
      const due = values.get(id)
      if (text === '' || typeof due !== 'number') return text !== '' || typeof due === 'number'
      // The elementary functions of two engines may differ in their last digit.
      return Math.abs(Number(text) - due) > 1e-12 * Math.abs(due)
    })
    .map(([id, text]) => `${id}: ${text}, due ${values.get(id) ?? 'nothing'}`)
}

function verdictWith(overrides: Overrides, id: string): string {
  const { blocks } = workPublished(ledger.published, overrides, ledger.calculators)
  const block = blocks.find((one) => one.id === id)
  return block === undefined ? '' : verdictWords[verdictName(block)]
}

describe('figures that cannot be fetched', () => {
  it('leave the page the builder’s, which the strip says until they can', async () => {
    const { page, context, faults } = await opened(host, 'notes/pack/')
    await keep(page, { 'pack/cells': '28' })
    await page.evaluate(() => {
      localStorage.setItem('worked-notes units /', 'us')
    })
    const before = await printed(page)
    await page.route('**/figures.json*', (route) => route.abort())
    await page.reload()
    const summary = strip(page).locator('summary')
    await expect
      .poll(() => seen(summary))
      .toBe('1 figure of yours is in force. This page shows the builder’s.')
    expect(await printed(page)).toEqual(before)
    expect(await page.locator('.yours').count()).toBe(0)
    // The units stay as they were too, and the choice says so.
    expect(await page.locator('work-units select').inputValue()).toBe('')
    await card(page, 'pack/layout').locator('.try-bar button').first().click()
    await expect
      .poll(() => seen(card(page, 'pack/layout').locator('.try-bar [role=status]')))
      .toContain('its figures could not be fetched')
    await page.unroute('**/figures.json*')
    await openForm(page, 'pack/layout')
    await expect.poll(() => seen(summary)).toBe('1 figure of yours is in force.')
    expect(await notAsWorked(page, { 'pack/cells': '28' })).toEqual([])
    expect(faults.filter((one) => !one.includes('ERR_FAILED'))).toEqual([])
    await context.close()
  })
})

describe('a number of the text', () => {
  const cells = { 'pack/cells': '28' }

  it('changed on one note moves what rests on it there, on a second note and on a third', async () => {
    const { page, context, faults } = await opened(host, 'notes/pack/')
    await change(page, 'pack/cells', '28')
    expect(await seen(number(page, 'pack/cells'))).toContain('28 your figures; the builder’s 36')
    expect(await notAsWorked(page, cells)).toEqual([])
    for (const [path, id] of [
      ['notes/high-voltage-side/', 'high-voltage-side/fullVolts / cellsAndBars'],
      ['notes/charging-and-frost/', 'charging-and-frost/coldDrive.end'],
    ] as const) {
      await page.goto(host.address + path)
      await strip(page).locator('summary').waitFor()
      const moved = page.locator('.yours').first()
      await moved.waitFor({ state: 'attached' })
      expect(await seen(strip(page).locator('summary'))).toBe('1 figure of yours is in force.')
      expect([id, await notAsWorked(page, cells)]).toEqual([id, []])
    }
    expect(faults).toEqual([])
    await context.close()
  })

  it('says the verdicts that it turns, to those who do not see them too', async () => {
    const { page, context } = await opened(host, 'notes/pack/')
    const before = verdictWith({}, 'pack/layout')
    const after = verdictWith(cells, 'pack/layout')
    expect(after).not.toBe(before)
    await change(page, 'pack/cells', '28')
    const said = page.locator('work-strip .own-announce')
    await expect.poll(() => seen(said)).toContain(`: ${after}, before ${before}.`)
    expect(await said.getAttribute('role')).toBe('status')
    await expect.poll(() => seen(card(page, 'pack/layout').locator('.card-verdict'))).toBe(after)
    expect(await seen(card(page, 'pack/layout').locator('.yours').first())).toContain(before)
    await context.close()
  })

  it('is in the list of the strip, and is taken back there alone or with all', async () => {
    const { page, context, faults } = await opened(host, 'notes/pack/')
    const before = await printed(page)
    await change(page, 'pack/cells', '28')
    await change(page, 'pack/cellHigh', '3.5 V')
    await strip(page).locator('summary').click()
    expect(await seen(strip(page).locator('summary'))).toBe('2 figures of yours are in force.')
    expect(await strip(page).locator('li').allTextContents()).toEqual([
      expect.stringMatching(/28 \(the builder’s 36\) Take back$/),
      expect.stringMatching(/3\.5 V \(the builder’s 3\.65\u00a0V\) Take back$/),
    ])
    await strip(page).locator('li button').first().click()
    expect(await notAsWorked(page, { 'pack/cellHigh': '3.5 V' })).toEqual([])
    // A press that takes its own button away leaves the focus in the strip.
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SUMMARY')
    await strip(page).locator('[data-all]').click()
    await settled(page)
    expect(await printed(page)).toEqual(before)
    expect(await strip(page).isVisible()).toBe(false)
    expect(await keptFigures(page)).toBeNull()
    expect(await page.locator('main .yours').count()).toBe(0)
    expect(faults).toEqual([])
    await context.close()
  })

  it('comes back on the next visit, and a change in one tab shows in another', async () => {
    const first = await opened(host, 'notes/pack/')
    await change(first.page, 'pack/cells', '28')
    await first.page.close()
    const second = await openedIn(host, first.context, 'notes/pack/')
    await settled(second.page)
    await expect.poll(() => seen(number(second.page, 'pack/cells'))).toContain('28 your figures')
    const third = await openedIn(host, first.context, 'notes/high-voltage-side/')
    await third.page.locator('.yours').first().waitFor({ state: 'attached' })
    await change(second.page, 'pack/cells', '30')
    // A tab behind another is let wait by the browser: it is looked at now.
    await third.page.bringToFront()
    await settled(third.page)
    expect(await notAsWorked(third.page, { 'pack/cells': '30' })).toEqual([])
    await strip(third.page).locator('summary').click()
    await strip(third.page).locator('[data-all]').click()
    await settled(second.page)
    await expect.poll(() => seen(number(second.page, 'pack/cells'))).toBe('36')
    expect([...second.faults, ...third.faults]).toEqual([])
    await first.context.close()
  })

  it('shows in a tab that had none in force yet', async () => {
    const first = await opened(host, 'notes/pack/')
    const second = await openedIn(host, first.context, 'notes/high-voltage-side/')
    await change(first.page, 'pack/cells', '28')
    await expect.poll(() => seen(strip(second.page).locator('summary'))).toContain('1 figure')
    expect(await notAsWorked(second.page, cells)).toEqual([])
    await first.context.close()
  })
})

describe('an entry', () => {
  it('may be half typed: nothing goes blank, nobody is told off', async () => {
    const { page, context, faults } = await opened(host, 'notes/cooling-loop/')
    await openPanel(page, 'cooling-loop/bore')
    const before = await printed(page)
    for (const text of ['1/', '-', '', '3.', '2e', '1,']) {
      await field(page).fill(text)
      await page.waitForTimeout(900)
      expect([text, await field(page).getAttribute('aria-invalid')]).toEqual([text, null])
      expect([text, await page.locator('.card-old').count()]).toEqual([text, 0])
    }
    expect(await printed(page)).toEqual(before)
    expect(faults).toEqual([])
    await context.close()
  })

  it('that is wrong is told what is allowed, and leaves the last good results, marked as old', async () => {
    const { page, context, faults } = await opened(host, 'notes/cooling-loop/')
    await openPanel(page, 'cooling-loop/bore')
    await field(page).fill('3/4 in')
    await settled(page)
    const good = await printed(page)
    await field(page).fill('3/4 kg')
    const said = page.locator('#Own-said')
    await expect
      .poll(() => seen(said))
      .toBe('3/4 kg looks like kg (a mass); a length is due; allowed: a length: m or ft')
    expect(await field(page).getAttribute('aria-invalid')).toBe('true')
    expect(await printed(page)).toEqual(good)
    // Each card that rests on it, and no other.
    const resting = openLedger(ledger.published, ledger.calculators).restingOn([
      'cooling-loop/bore',
    ])
    const old = page.locator('work-card:has(.card-old)')
    const here = ledger.published.blocks.filter(({ note }) => note === 'cooling-loop')
    const due = here.flatMap(({ id }) => (resting.has(id) ? [id] : []))
    expect(due.length).toBeGreaterThan(3)
    expect(due.length).toBeLessThan(here.length)
    expect(
      (await old.evaluateAll((all) => all.map((one) => one.getAttribute('data-block')))).toSorted(),
    ).toEqual(due.toSorted())
    await field(page).fill('1/2 in')
    expect(await page.locator('.card-old').count()).toBe(0)
    expect(await notAsWorked(page, { 'cooling-loop/bore': '1/2 in' })).toEqual([])
    expect(faults).toEqual([])
    await context.close()
  })

  it('takes any unit typed into it, and the unit of its list', async () => {
    const { page, context } = await opened(host, 'notes/cooling-loop/')
    await openPanel(page, 'cooling-loop/wanted')
    for (const text of ['2.2 gpm', '2.5 gal/min', '0.12 L/s']) {
      await field(page).fill(text)
      expect(await notAsWorked(page, { 'cooling-loop/wanted': text })).toEqual([])
    }
    await field(page).fill('2')
    await page.locator('[name="wanted:unit"]').selectOption('gal/min')
    expect(await notAsWorked(page, { 'cooling-loop/wanted': '2 gal/min' })).toEqual([])
    await context.close()
  })

  it('of a form counts as it is typed', async () => {
    const { page, context, faults } = await opened(host, 'notes/cooling-loop/')
    await openForm(page, 'cooling-loop/hill')
    const input = card(page, 'cooling-loop/hill').locator('[name=power]')
    await input.fill('')
    await input.pressSequentially('40 kW')
    await settled(page)
    expect(await notAsWorked(page, { 'cooling-loop/hill.power': '40 kW' })).toEqual([])
    expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('power')
    expect(faults).toEqual([])
    await context.close()
  })
})

/** Where the field stands on the screen, and whether it still has the caret at its end. */
const fieldNow = (page: Page) =>
  page.evaluate(() => {
    const active = document.activeElement
    if (!(active instanceof HTMLInputElement)) return { name: active?.tagName ?? '', y: 0 }
    const { value, selectionStart } = active
    return {
      name: active.name,
      y: Math.round(active.getBoundingClientRect().y),
      caretAtEnd: selectionStart === value.length,
    }
  })

/** To the pixel. */
const within = (y: number): unknown => expect.closeTo(y, -0.31)

describe('while somebody types', () => {
  it.each([
    ['below a card that rests on it', 'cooling-loop/hottest', '99.5 °C'],
    ['below two such cards', 'cooling-loop/filled', '2.25 gal'],
    ['above most of the page', 'cooling-loop/hotDay', '104.5 °F'],
  ])('the field of a number stays where it is, %s', async (_where, id, text) => {
    const { page, context } = await opened(host, 'notes/cooling-loop/')
    await openPanel(page, id)
    const { name, y } = await fieldNow(page)
    await page.keyboard.press('ControlOrMeta+A')
    for (const key of text) {
      await page.keyboard.type(key)
      expect(await fieldNow(page)).toEqual({ name, y: within(y), caretAtEnd: true })
    }
    await settled(page)
    expect(await fieldNow(page)).toEqual({ name, y: within(y), caretAtEnd: true })
    expect(await field(page).inputValue()).toBe(text)
    expect(await notAsWorked(page, { [id]: text })).toEqual([])
    await context.close()
  })

  it('the field of a form stays where it is, also below cards that move', async () => {
    const { page, context } = await opened(host, 'notes/cooling-loop/')
    await openForm(page, 'cooling-loop/hill')
    await card(page, 'cooling-loop/hill').locator('[name=power]').focus()
    const { name, y } = await fieldNow(page)
    await page.keyboard.press('ControlOrMeta+A')
    for (const key of '98.75 kW') {
      await page.keyboard.type(key)
      expect(await fieldNow(page)).toEqual({ name, y: within(y), caretAtEnd: true })
    }
    await settled(page)
    expect(await fieldNow(page)).toEqual({ name, y: within(y), caretAtEnd: true })
    await context.close()
  })
})

describe('with the keyboard alone', () => {
  it('a number opens, is changed, and has the focus again when its panel closes', async () => {
    const { page, context, faults } = await opened(host, 'notes/pack/')
    await number(page, 'pack/cells').focus()
    await page.keyboard.press('Enter')
    await field(page).waitFor()
    expect(await fieldNow(page)).toMatchObject({ name: 'cells' })
    await page.keyboard.type('28')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Escape')
    expect(await panel(page).count()).toBe(0)
    const focused = () =>
      page.evaluate(
        () => document.activeElement?.querySelector<HTMLElement>('[data-number]')?.dataset.number,
      )
    expect(await focused()).toBe('pack/cells')
    expect(await seen(number(page, 'pack/cells'))).toContain('28 your figures')
    expect(faults).toEqual([])
    await context.close()
  })

  it('the focus goes back to the very place from which a number was opened', async () => {
    const { page, context } = await opened(host, 'notes/adapter-and-bolts/')
    const selector = 'article.prose a.number-link:has([data-number="adapter-and-bolts/bagLength"])'
    const places = await page.locator(selector).count()
    expect(places).toBeGreaterThan(1)
    await page.locator(selector).last().focus()
    await page.keyboard.press('Enter')
    await field(page).waitFor()
    await page.keyboard.type('11 in')
    await page.keyboard.press('Escape')
    const index = await page.evaluate(
      (all) =>
        [...document.querySelectorAll(all)].findIndex((one) => one === document.activeElement),
      selector,
    )
    expect(index).toBe(places - 1)
    await context.close()
  })

  it('the strip opens, and a figure is taken back', async () => {
    const { page, context } = await opened(host, 'notes/pack/')
    await change(page, 'pack/cells', '28')
    await strip(page).locator('summary').focus()
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Tab')
    expect(await seen(page.locator(':focus'))).toBe('Take back')
    await page.keyboard.press('Enter')
    await settled(page)
    await expect.poll(() => seen(number(page, 'pack/cells'))).toBe('36')
    await context.close()
  })
})

it('a drawing is drawn again with the builder’s curve faint beside', async () => {
  const { page, context } = await opened(host, 'notes/cooling-loop/')
  const ghosts = card(page, 'cooling-loop/loop').locator('svg .ghost')
  expect(await ghosts.count()).toBe(0)
  await change(page, 'cooling-loop/bore', '3/8 in')
  await settled(page)
  expect(await ghosts.count()).toBeGreaterThan(0)
  const paths = async (kind: string): Promise<(string | null)[]> =>
    card(page, 'cooling-loop/loop')
      .locator(`svg ${kind}`)
      .evaluateAll((all) => all.map((path) => path.getAttribute('d')))
  const drawn = new Set(await paths('path:not(.ghost):not(.ghost path)'))
  // What the bore does not move lies on its ghost; what it moves does not.
  expect((await paths(':is(path.ghost, .ghost path)')).some((d) => !drawn.has(d))).toBe(true)
  await context.close()
})
