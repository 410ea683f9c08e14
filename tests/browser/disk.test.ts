/**
 * A copy of a site on a disk, opened as a file: whole to read; nothing on it promises what cannot be had,
 * since browsers run no modules from a disk; and it says so.
 */
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { builtSite, workshop, type Built } from '../build/site.ts'
import { drawn, launched } from './serve.ts'
import { seen } from './steps.ts'

let site: Built
let browser: Browser
beforeAll(async () => {
  site = await builtSite(workshop)
  browser = await launched()
})
afterAll(async () => {
  await browser.close()
  await site.remove()
})

const fileOf = (name: string): string => pathToFileURL(`${site.folder}/${name}`).href

async function read(name: string) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } })
  const page = await context.newPage()
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(String(error)))
  page.on('console', (message) => {
    // What a browser says of every module on a disk.
    const ofBrowser =
      /^Access to script at 'file:[^']*\/_astro\/[^']*\.js' from origin 'null' has been blocked|net::ERR_FAILED$/
    if (message.type() === 'error' && !ofBrowser.test(message.text())) faults.push(message.text())
  })
  await page.goto(fileOf(name))
  await page.evaluate(drawn)
  return { page, context, faults }
}

it.each([
  'index.html',
  'notes/pump/index.html',
  'notes/pump/sheet/index.html',
  'notes/pump/wall-sheet/index.html',
  'calculators/motor-circuit/index.html',
  'parts/index.html',
  'open/index.html',
])('%s is whole, says that it can only be read, and has no control', async (name) => {
  const { page, context, faults } = await read(name)
  expect(await page.evaluate(() => getComputedStyle(document.body).margin)).toBe('0px')
  const due = (site.pages.get(name) ?? '').match(/<data class="number"/g)?.length ?? 0
  expect(await page.locator('data.number').count()).toBe(due)
  expect(await seen(page.locator('.from-disk'))).toContain('figures can be changed')
  expect(await page.locator('.from-disk').isVisible()).toBe(true)
  expect(await page.locator(':is(button, input, select, form):visible').count()).toBe(0)
  expect(faults).toEqual([])
  await context.close()
})

it('a number that is pressed leads to where it came from', async () => {
  const { page, context, faults } = await read('notes/pump/index.html')
  const number = page.locator('article.prose > p a.number-link').first()
  const to = (await number.getAttribute('href')) ?? ''
  expect(to).toMatch(/^#Story-/)
  await number.click()
  expect(new URL(page.url()).hash).toBe(to)
  expect(await page.locator(`[id="${to.slice(1)}"]`).isVisible()).toBe(true)
  expect(await page.locator('.own-panel').count()).toBe(0)
  expect(faults).toEqual([])
  await context.close()
})

it('the controls of the table of all numbers, which stand in its page, answer', async () => {
  const { page, context, faults } = await read('numbers/index.html')
  const rows = page.locator('#All-numbers tbody tr:visible')
  const all = await rows.count()
  await page.locator('form.filters select').selectOption('reading')
  expect(await rows.count()).toBeLessThan(all)
  expect(await page.locator('form.filters [role=status]').innerText()).toBe(
    `${await rows.count()} of ${all} shown`,
  )
  expect(faults).toEqual([])
  await context.close()
})

it('a page that is served says nothing of it', () => {
  const pages = [...site.pages].filter(([, html]) => html.includes('id="main"'))
  expect(pages.length).toBeGreaterThan(20)
  for (const [name, html] of pages)
    expect([name, /<p class="from-disk on-screen"[^>]* hidden/.test(html)]).toEqual([name, true])
})
