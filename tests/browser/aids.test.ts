/**
 * A note with a reader's figures in force, for readers of every kind: with aids, in the dark, on a phone,
 * on paper, in other units, without motion, without script, from a copy on a disk.
 */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { loadLedger, type Ledger } from '../../src/ledger/load.ts'
import { formatQuantity } from '../../src/quantity/index.ts'
import { demo } from '../build/site.ts'
import { axeFindings, thinned } from './axe.ts'
import { opened, openedIn, served, type Served } from './serve.ts'
import {
  card,
  change,
  field,
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

const phone = { width: 390, height: 844 }
const loop = 'cooling-loop/loop'

/** Figures of one's own in force, the strip, a form and a panel open, with an entry that is wrong. */
async function everythingOpen(page: Page): Promise<void> {
  await change(page, 'cooling-loop/bore', '3/8 in')
  await strip(page).locator('summary').click()
  await openForm(page, loop)
  const input = card(page, loop).locator('form.try-form input').first()
  await input.fill('3 kg')
  await input.press('Enter')
  for (const button of await card(page, loop).locator('.try-bar button').all()) {
    if ((await button.getAttribute('aria-expanded')) !== 'true') await button.click()
    await page.waitForTimeout(300)
  }
  await openPanel(page, 'cooling-loop/hotDay')
  await field(page).fill('3 kg')
  await field(page).press('Enter')
  await settled(page)
}

describe.each(['light', 'dark'] as const)('in the %s', (colorScheme) => {
  it('nothing that script adds keeps a reader out (axe-core)', async () => {
    const { page, context, faults } = await opened(host, 'notes/cooling-loop/', {
      colorScheme,
      viewport: phone,
    })
    await everythingOpen(page)
    await thinned(page)
    expect(await axeFindings(page)).toEqual([])
    expect(faults).toEqual([])
    await context.close()
  }, 120_000)
})

describe('on a phone', () => {
  it('nothing scrolls sideways with panel, form and strip open, at 360 pixels', async () => {
    const { page, context } = await opened(host, 'notes/cooling-loop/', {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    })
    await everythingOpen(page)
    const wide = () =>
      page.evaluate(() => [document.documentElement.scrollWidth, visualViewport?.scale])
    expect(await wide()).toEqual([360, 1])
    const box = await panel(page).boundingBox()
    expect(box?.x).toBeGreaterThanOrEqual(0)
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(360)
    // An offer that came by a link too.
    await page.evaluate(() => {
      location.hash = `#figures=1&${'cooling-loop/gone'.repeat(8)}=1&cooling-loop/hotDay=100+°F`
    })
    await page.locator('.own-offer').waitFor()
    expect(await wide()).toEqual([360, 1])
    await context.close()
  })

  it('what is pressed is as large as a thumb', async () => {
    const { page, context } = await opened(host, 'notes/cooling-loop/', {
      viewport: { width: 360, height: 740 },
      hasTouch: true,
      isMobile: true,
    })
    await everythingOpen(page)
    const small = await page
      .locator(
        ':is(.own-panel, .own-strip, .try-form, .try-bar) :is(button, input, select, summary, a.own-story):visible',
      )
      .evaluateAll((all) =>
        all
          .map((one) => [one.outerHTML.slice(0, 80), one.getBoundingClientRect().height] as const)
          .filter(([, height]) => height < 44),
      )
    expect(small).toEqual([])
    await context.close()
  })

  it('the keyboard is of figures where a figure is due', async () => {
    const { page, context } = await opened(host, 'notes/cooling-loop/', { viewport: phone })
    await openPanel(page, 'cooling-loop/leastFlow')
    expect(await field(page).getAttribute('inputmode')).toBe('decimal')
    // Below zero and in fractions there are signs that such a keyboard has not.
    await page.keyboard.press('Escape')
    await openPanel(page, 'cooling-loop/bore')
    expect(await field(page).getAttribute('inputmode')).toBe('text')
    await page.keyboard.press('Escape')
    await openPanel(page, 'cooling-loop/coldNight')
    expect(await field(page).getAttribute('inputmode')).toBe('text')
    await context.close()
  })
})

it('on paper the figures are named at the head, with room to write beside the results', async () => {
  const { page, context } = await opened(host, 'notes/cooling-loop/')
  await everythingOpen(page)
  await page.emulateMedia({ media: 'print' })
  const paper = page.locator('.own-paper')
  expect(await paper.isVisible()).toBe(true)
  expect(await seen(paper)).toMatch(
    /^Printed with 1 figure of a reader\. .*: 3\/8 in \(the builder’s 5\/8 in\)$/,
  )
  const hidden =
    '.own-strip, .own-panel, .try-form, .try-bar, .own-announce, work-units, .take-part, .matters-part'
  expect(
    await page
      .locator(`:is(${hidden}):visible`)
      .evaluateAll((all) => all.map((one) => one.getAttribute('class'))),
  ).toEqual([])
  for (const selector of ['.hazard', '.card.card-yours', '.stories td'])
    expect([selector, await page.locator(selector).first().isVisible()]).toEqual([selector, true])
  const measured = await card(page, loop)
    .locator('.card-out .figures > div')
    .first()
    .evaluate((one) => getComputedStyle(one, '::after').content)
  expect(measured).toContain('measured')
  await context.close()
})

it('without script a note has every number and no control', async () => {
  const { page, context, faults } = await opened(host, 'notes/cooling-loop/', {
    javaScriptEnabled: false,
  })
  const controls = 'button, input, select, form, work-strip *, work-units *'
  expect(await page.locator(controls).count()).toBe(0)
  expect(await page.locator('article.prose data.number').count()).toBeGreaterThan(200)
  expect(await seen(number(page, 'cooling-loop/bore'))).toBe('5/8 in (15.9 mm)')
  expect(faults).toEqual([])
  await context.close()
})

it('without motion nothing moves by itself', async () => {
  const { page, context } = await opened(host, 'notes/cooling-loop/', { reducedMotion: 'reduce' })
  await everythingOpen(page)
  expect(await page.evaluate(() => document.getAnimations().length)).toBe(0)
  const moving = await page.evaluate(
    () =>
      [...document.querySelectorAll('*')].filter((one) => {
        const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one)
        return (
          Number.parseFloat(transitionDuration) > 0.01 ||
          animationName !== 'none' ||
          scrollBehavior === 'smooth'
        )
      }).length,
  )
  expect(moving).toBe(0)
  await context.close()
})

describe('in other units', () => {
  const ofUs = /\d[\s\u00a0](?:gal\/min|psi|ft|lb|°F|Δ°F|BTU\/h|qt)(?!\w)/u
  const ofMetric = /\d[\s\u00a0](?:L\/min|kPa|mm|m|kg|°C|K|L)(?![\w/²·])/u
  const units = (page: Page) => page.locator('work-units select')
  /** Units of the other system in what a reader reads, by place. */
  const strays = (page: Page, unit: RegExp): Promise<string[]> =>
    page.evaluate(
      ([source, flags]) => {
        const wanted = new RegExp(source, flags)
        const places = 'article.prose data.number, .card-verdict, .finding, .working, svg text'
        return [...document.querySelectorAll(places)]
          .filter((one) => one.closest('[data-stories], .title-block') === null)
          .flatMap((one) => {
            // Who says so is quoted as it is said.
            const text = one.textContent
              .replace(/\s+/g, ' ')
              .replace(/(Limit: .*?)\. [A-Z].*/, '$1')
            const found = wanted.exec(text)
            return found === null ? [] : [`${found[0]}: ${text.slice(0, 200)}`]
          })
      },
      [unit.source, unit.flags] as const,
    )

  it('a note is written anew: text, results, findings, working and drawings', async () => {
    const { page, context, faults } = await opened(host, 'notes/cooling-loop/')
    const before = await printed(page)
    await units(page).selectOption('metric')
    // They are the builder’s figures all the same.
    expect(await page.locator('.card-yours').count()).toBe(0)
    await settled(page)
    expect(await seen(number(page, 'cooling-loop/hotDay'))).toBe('35 °C')
    await expect.poll(() => strays(page, ofUs)).toEqual([])
    await units(page).selectOption('us')
    await settled(page)
    expect(await seen(number(page, 'cooling-loop/hotDay'))).toBe('95 °F')
    await expect.poll(() => strays(page, ofMetric)).toEqual([])
    await units(page).selectOption('both')
    await settled(page)
    expect(await seen(number(page, 'cooling-loop/hotDay'))).toBe('95 °F (35 °C)')
    // What is printed has changed; what it stands for has not.
    expect(await printed(page)).toEqual(before)
    await units(page).selectOption('')
    await settled(page)
    expect(await printed(page)).toEqual(before)
    expect(faults).toEqual([])
    await context.close()
  })

  it('a difference of temperatures converts as a difference', async () => {
    const { page, context } = await opened(host, 'notes/cooling-loop/')
    const rise = ledger.published.numbers.find(({ id }) => id === 'cooling-loop/hill.rise')
    const shown = (unit: string) =>
      formatQuantity(rise?.value ?? NaN, unit, { figures: rise?.figures ?? 2 })
    await units(page).selectOption('us')
    await settled(page)
    expect(await seen(number(page, 'cooling-loop/hill.rise'))).toBe(
      shown('Δ°F').replace('\u00a0', ' '),
    )
    await units(page).selectOption('metric')
    await settled(page)
    expect(await seen(number(page, 'cooling-loop/hill.rise'))).toBe(
      shown('K').replace('\u00a0', ' '),
    )
    await context.close()
  })

  it('the choice holds on the next page and the next visit, beside figures of one’s own', async () => {
    const first = await opened(host, 'notes/cooling-loop/')
    await units(first.page).selectOption('metric')
    await change(first.page, 'cooling-loop/hotDay', '104 °F')
    await settled(first.page)
    expect(await seen(number(first.page, 'cooling-loop/hotDay'))).toMatch(
      /^40(\.0)? °C your figures; the builder’s 35 °C$/,
    )
    await first.page.close()
    for (const path of ['notes/cooling-loop/', 'notes/donor-and-masses/', 'numbers/']) {
      const { page, faults } = await openedIn(host, first.context, path)
      await settled(page)
      expect(await units(page).inputValue()).toBe('metric')
      expect(await page.locator('data.number:has-text("°F"):visible').count()).toBe(0)
      expect(faults).toEqual([])
      await page.close()
    }
    await first.context.close()
  })
})
