/** What a reader does on a note: reads it without script, tries other figures, takes them back. */
import { gzipSync } from 'node:zlib'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { small } from '../build/site.ts'
import { opened, served, type Served } from './serve.ts'
import { settled } from './steps.ts'

let host: Served
beforeAll(async () => {
  host = await served(small, '/kit/')
})
afterAll(() => host.close())

const loop = 'notes/loop/'
const card = (name: string): string => `work-card[data-block="loop/${name}"]`

/** Text as a reader sees it, its spaces plain. */
const seen = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).first().innerText()).replace(/[\s\u00a0\u202f]+/g, ' ').trim()

const inProse = (name: string): string => `article.prose > p [data-number="loop/${name}"]`

/** The page as the build wrote it: everything but what script adds. */
const written = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const copy = document.querySelector('main')?.cloneNode(true)
    if (!(copy instanceof Element)) return ''
    for (const added of copy.querySelectorAll('.try-bar, .try-form, .card-old, .own-paper'))
      added.remove()
    return copy.innerHTML
  })

async function openForm(page: Page, name: string): Promise<void> {
  await page
    .locator(`${card(name)} .try-bar button`)
    .first()
    .click()
  await page.locator(`${card(name)} form.try-form`).waitFor()
}

const fill = async (page: Page, name: string, field: string, text: string): Promise<void> => {
  const form = page.locator(`${card(name)} form.try-form`)
  await form.locator(`[name="${field}"]`).fill(text)
  await form.locator('button[type=submit]').click()
}

describe('without script', () => {
  it('the builder’s results, checks and stories are there to read, and nothing that needs script', async () => {
    const { page, context, faults } = await opened(host, loop, { javaScriptEnabled: false })
    expect(await seen(page, `${card('rise')} .card-verdict`)).toBe('pass, provisional')
    expect(await seen(page, inProse('supply + back'))).toBe('5.2 m')
    expect(await seen(page, `${card('pump')} .card-out dl > div`)).toMatch(/^Flow .* L\/min/)
    expect(await page.locator('table.stories tr[id="Story-supply"]').textContent()).toMatch(
      /2\.4\u00a0m[^]*chosen[^]*round the battery box/,
    )
    expect(await page.locator('.hazard').first().isVisible()).toBe(true)
    expect(await page.locator('.try-bar, .try-form, form').count()).toBe(0)
    await page.locator(inProse('supply')).click()
    expect(new URL(page.url()).hash).toBe('#Story-supply')
    expect(faults).toEqual([])
    await context.close()
  })

  it('the table of all numbers is whole, and has no controls that do nothing', async () => {
    const { page, context } = await opened(host, 'numbers/', { javaScriptEnabled: false })
    expect(await page.locator('#All-numbers tbody tr').count()).toBe(
      (host.site.numbersJson.match(/^\{"id":"[^"]+","note":"[^"]+","name":"[^"]+","kind"/gm) ?? [])
        .length,
    )
    expect(await page.locator('form.filters').isVisible()).toBe(false)
    expect(await page.locator('#All-numbers button').count()).toBe(0)
    await context.close()
  })
})

describe('a reader’s figure', () => {
  it('gives a new verdict, moves what rests on it on the page, and says whose figures they are', async () => {
    const { page, context, faults } = await opened(host, loop)
    const before = {
      rise: await seen(page, inProse('rise.rise')),
      twice: await seen(page, inProse('rise.rise * 2')),
    }
    await openForm(page, 'rise')
    await fill(page, 'rise', 'loss', '20 kW')
    await page.locator(`${card('rise')} .card-yours`).waitFor()
    expect(await seen(page, `${card('rise')} .card-verdict`)).toBe('stop')
    expect(await seen(page, `${card('rise')} .yours`)).toBe(
      'Your figures. The builder’s verdict: pass, provisional',
    )
    expect(await seen(page, `${card('rise')} .try-status`)).toBe(
      'Verdict with your figures: stop. With the builder’s: pass, provisional.',
    )
    await settled(page)
    // Heat in proportion: 900 W was replaced by 20 kW.
    const [was, is] = [before.rise, await seen(page, inProse('rise.rise'))].map((text) =>
      Number.parseFloat(text),
    )
    expect((is ?? 0) / (was ?? 0)).toBeGreaterThan(20)
    expect((is ?? 0) / (was ?? 0)).toBeLessThan(25)
    const twice = page.locator('article.prose > p .number-link', {
      has: page.locator('[data-number="loop/rise.rise * 2"]'),
    })
    expect((await twice.innerText()).replace(/[\s\u00a0]+/g, ' ')).toContain(
      `your figures; the builder’s ${before.twice}`,
    )
    // The table follows when no key was pressed for a moment.
    await expect
      .poll(() => page.locator('table.stories').textContent())
      .toContain('your figures; the builder’s')
    expect(faults).toEqual([])
    await context.close()
  })

  it('in one card moves the card that rests on it', async () => {
    const { page, context } = await opened(host, loop)
    const flow = `${card('rise')} [data-number="loop/rise.flow"]`
    const before = await seen(page, flow)
    await openForm(page, 'pump')
    await fill(page, 'pump', 'hoses.0.bore', '6 mm')
    await page.locator(`${card('rise')} .card-yours`).waitFor()
    expect(Number.parseFloat(await seen(page, flow))).toBeLessThan(Number.parseFloat(before) * 0.8)
    expect(await seen(page, `${card('rise')} .yours`)).toMatch(
      /^Your figures\. The builder’s verdict/,
    )
    await context.close()
  })

  it('that cannot be read is told at its field, and the card stays as it was', async () => {
    const { page, context } = await opened(host, loop)
    const before = await written(page)
    await openForm(page, 'rise')
    const said = async (text: string) => {
      await fill(page, 'rise', 'loss', text)
      const field = page.locator(`${card('rise')} [name="loss"]`)
      const [, saidId = ''] = ((await field.getAttribute('aria-describedby')) ?? '').split(' ')
      return [
        await field.getAttribute('aria-invalid'),
        await seen(page, `[id="${saidId}"]`),
        await field.evaluate((one) => one === document.activeElement),
      ]
    }
    expect(await said('20 V')).toEqual([
      'true',
      '20 V looks like V (a voltage); a power is due; allowed: a power: kW or hp',
      true,
    ])
    expect(await said('1,1 kW')).toEqual([
      'true',
      '1,1 has a comma where numbers here have a point; allowed: a power: kW or hp; did you mean 1.1 kW?',
      true,
    ])
    expect(await said('900 kW')).toEqual([
      'true',
      '900 kW is above what “Heat it loses” can be; allowed: 20 W to 75 000 W; did you mean 900 BTU/h?',
      true,
    ])
    expect(await seen(page, `${card('rise')} .try-status`)).toBe(
      'One entry to put right. The card still shows the figures before.',
    )
    expect(await written(page)).toBe(before)
    await context.close()
  })

  it('taken back leaves the very page that the builder wrote', async () => {
    const { page, context } = await opened(host, loop)
    const before = await written(page)
    await openForm(page, 'pump')
    await openForm(page, 'rise')
    await fill(page, 'rise', 'loss', '20 kW')
    await fill(page, 'pump', 'temperature', '20 °C')
    await page.locator(`${card('pump')} .card-yours`).waitFor()
    expect(await written(page)).not.toBe(before)
    await page.locator(`${card('rise')} button[type=reset]`).click()
    expect(await written(page)).not.toBe(before)
    await page.locator(`${card('pump')} button[type=reset]`).click()
    await page.locator(`${card('pump')} .card-built`).waitFor()
    await expect.poll(async () => (await written(page)) === before).toBe(true)
    expect(await page.locator(`${card('rise')} [name="loss"]`).inputValue()).toBe('900')
    expect(await page.locator(`${card('rise')} [name="loss:unit"]`).inputValue()).toBe('W')
    await context.close()
  })

  it('never carries the builder’s acceptance of a stop over to itself', async () => {
    const { page, context } = await opened(host, 'notes/pump-circuit/')
    const fan = 'work-card[data-block="pump-circuit/fanFuse"]'
    expect(await seen(page, `${fan} .card-verdict`)).toBe('STOP, accepted by the builder')
    await page.locator(`${fan} .try-bar button`).first().click()
    await page.locator(`${fan} [name="length"]`).fill('9 m')
    await page.locator(`${fan} button[type=submit]`).click()
    await page.locator(`${fan} .card-yours`).waitFor()
    expect(await seen(page, `${fan} .card-verdict`)).toBe('stop')
    expect(await page.locator(`${fan} .hazard-line`).innerText()).toMatch(/WARNING/)
    await context.close()
  })
})

describe('with the keyboard alone', () => {
  it('the page can be skipped to, a card opened, a figure changed and taken back', async () => {
    const { page, context } = await opened(host, loop)
    const focused = () => page.evaluate(() => document.activeElement?.textContent.trim() ?? '')
    await page.keyboard.press('Tab')
    expect(await focused()).toBe('Skip to the page')
    await page.keyboard.press('Enter')
    expect(new URL(page.url()).hash).toBe('#main')
    let steps = 0
    do {
      await page.keyboard.press('Tab')
      steps += 1
    } while (
      steps < 300 &&
      !(await page.evaluate(
        (selector) => document.activeElement?.matches(selector),
        `${card('rise')} .try-bar button`,
      ))
    )
    expect(await focused()).toBe('Try your figures')
    const outline = await page.evaluate(() => {
      const { outlineStyle, outlineWidth } = getComputedStyle(
        document.activeElement ?? document.body,
      )
      return [outlineStyle, Number.parseFloat(outlineWidth) >= 1]
    })
    expect(outline).toEqual([expect.not.stringMatching('none'), true])
    await page.keyboard.press('Enter')
    await page.locator(`${card('rise')} form.try-form`).waitFor()
    const name = () => page.evaluate(() => document.activeElement?.getAttribute('name'))
    await page.waitForFunction(() => document.activeElement?.matches('.try-form [name]'))
    for (steps = 0; steps < 60 && (await name()) !== 'loss'; steps += 1)
      await page.keyboard.press('Tab')
    expect(await name()).toBe('loss')
    await page.keyboard.press('ControlOrMeta+A')
    await page.keyboard.type('20 kW')
    await page.keyboard.press('Enter')
    await page.locator(`${card('rise')} .card-yours`).waitFor()
    expect(await seen(page, `${card('rise')} .card-verdict`)).toBe('stop')
    for (steps = 0; steps < 60 && (await focused()) !== 'Back to the builder’s figures'; steps += 1)
      await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await page.locator(`${card('rise')} .card-built`).waitFor()
    expect(await focused()).toBe('Back to the builder’s figures')
    await context.close()
  })
})

describe('the weight of the script', () => {
  it('is at most 12 kB before a reader asks for anything, and 6 kB for each calculator', async () => {
    const { page, context, scripts } = await opened(host, loop)
    const first = [...scripts.values()].reduce((sum, size) => sum + size, 0)
    expect(scripts.size).toBeGreaterThan(0)
    expect(first).toBeLessThanOrEqual(12 * 1024)
    await openForm(page, 'pump')
    const loaded = () =>
      [...scripts].filter(([name]) => Object.keys(calculators).includes(name.split('.')[0] ?? ''))
    // Those of the other cards follow while the reader types.
    await expect
      .poll(() =>
        loaded()
          .map(([name]) => name.split('.')[0])
          .sort(),
      )
      .toEqual(['heat-and-rise', 'pump-and-loop'])
    expect(loaded().filter(([, size]) => size > 6 * 1024)).toEqual([])
    await context.close()
  })

  it('of every calculator is at most 6 kB', () => {
    const sizes = [...host.site.files].flatMap(([name, bytes]) => {
      const id = /^_astro\/([a-z0-9-]+)\.[^/]+\.js$/.exec(name)?.[1] ?? ''
      return id in calculators ? [[id, gzipSync(bytes, { level: 9 }).length] as const] : []
    })
    expect(sizes.map(([id]) => id).sort()).toEqual(Object.keys(calculators).sort())
    expect(sizes.filter(([, size]) => size > 6 * 1024)).toEqual([])
  })
})

describe('the table of all numbers', () => {
  it('can be filtered and sorted', async () => {
    const { page, context } = await opened(host, 'numbers/')
    const shown = () => page.locator('#All-numbers tbody tr:visible').count()
    const all = await shown()
    await page.locator('form.filters select').selectOption('reading')
    expect(await page.locator('form.filters [role=status]').innerText()).toBe(
      `${await shown()} of ${all} shown`,
    )
    expect(await shown()).toBeLessThan(all)
    await page.locator('form.filters select').selectOption('')
    await page.locator('#All-numbers thead button', { hasText: 'Value' }).click()
    const values = await page
      .locator('#All-numbers td[data-sort]')
      .evaluateAll((cells) => cells.map((cell) => Number(cell.getAttribute('data-sort'))))
    expect(values).toEqual([...values].sort((a, b) => a - b))
    await context.close()
  })
})
