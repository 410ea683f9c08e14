/** Every kind of page of the demo, for readers of every kind: light and dark, narrow, with aids. */
import { afterAll, beforeAll, expect, it } from 'vitest'
import { demo } from '../build/site.ts'
import { axeFindings, layoutOf, thinned } from './axe.ts'
import { opened, served, type Served } from './serve.ts'

let host: Served
beforeAll(async () => {
  host = await served(demo, '/')
})
afterAll(() => host.close())

const kinds = (): string[] => {
  const all = [...host.site.pages.keys()].map((name) => name.replace(/index\.html$/, ''))
  const length = (path: string): number => host.site.pages.get(`${path}index.html`)?.length ?? 0
  // The longest have something of every kind.
  const notes = all
    .filter((path) => /^notes\/[^/]+\/$/.test(path))
    .sort((a, b) => length(b) - length(a))
    .slice(0, 4)
  // Blocks by themselves are alike; their cards stand on the pages of the notes as well.
  const blocks = all.filter((path) => /^notes\/[^/]+\/[^/]+\/$/.test(path)).slice(0, 2)
  const [longest] = all
    .filter((path) => /^calculators\/./.test(path))
    .sort((a, b) => length(b) - length(a))
  const [table = ''] = all.filter((path) => /^tables\/./.test(path))
  return [
    '',
    '404.html',
    'numbers/',
    'parts/',
    'open/',
    'sources/',
    'calculators/',
    longest ?? '',
    'tables/',
    table,
    ...blocks,
    ...notes,
  ]
}

const phone = { viewport: { width: 390, height: 844 } }
const schemes = ['light', 'dark'] as const

it('no page has what keeps a reader out (axe-core), on a phone, in the light and in the dark', async () => {
  const wrong: string[] = []
  const { page, context, faults, to } = await opened(host, '', phone)
  for (const path of kinds()) {
    await page.emulateMedia({ colorScheme: 'light' })
    await to(path)
    await thinned(page)
    const light = await layoutOf(page)
    wrong.push(...(await axeFindings(page)).map((one) => `${path}, light: ${one}`))
    await page.emulateMedia({ colorScheme: 'dark' })
    if ((await layoutOf(page)) !== light) wrong.push(`${path}: stands otherwise in the dark`)
    const dark = await axeFindings(page, { coloursOnly: true })
    wrong.push(
      ...dark.map((one) => `${path}, dark: ${one}`),
      ...faults.splice(0).map((one) => `${path}: ${one}`),
    )
  }
  expect(wrong).toEqual([])
  await context.close()
  // A dozen pages, some with thousands of figures.
}, 300_000)

it.each(schemes)('an open form has nothing that does, in the %s', async (colorScheme) => {
  const { page, context } = await opened(host, kinds().at(-1) ?? '', { ...phone, colorScheme })
  await page.locator('.try-bar button').first().click()
  await page.locator('.try-form').waitFor()
  await page.locator('.try-form input').first().fill('nonsense')
  await page.locator('.try-form button[type=submit]').click()
  expect(await axeFindings(page, { within: '.try-form' })).toEqual([])
  await context.close()
})

it('no page scrolls sideways at 360 pixels', async () => {
  const wrong: string[] = []
  const { page, context } = await opened(host, '', { viewport: { width: 360, height: 740 } })
  for (const name of host.site.pages.keys()) {
    await page.goto(host.address + name.replace(/index\.html$/, ''))
    const width = await page.evaluate(() => document.documentElement.scrollWidth)
    if (width > 360) {
      const widest = await page.evaluate(() =>
        [...document.querySelectorAll('main *')]
          .filter(
            (one) => one.getBoundingClientRect().right > 361 && !one.closest('[tabindex="0"]'),
          )
          .slice(0, 3)
          .map((one) => `${one.tagName}.${one.id}`)
          .join(', '),
      )
      wrong.push(`${name}: ${width} (${widest})`)
    }
  }
  expect(wrong).toEqual([])
  await context.close()
}, 300_000)

it('no word of a card’s table breaks on the smallest phone', async () => {
  const { page, context } = await opened(host, '', { viewport: { width: 320, height: 640 } })
  const wrong: string[] = []
  let seen = 0
  for (const path of kinds().filter((name) => name.startsWith('notes/'))) {
    await page.goto(host.address + path)
    const { words, broken } = await page.evaluate(() => {
      let words = 0
      const broken: string[] = []
      for (const cell of document.querySelectorAll('.card .rows :is(td, th)')) {
        // The heads of tables whose rows stand by themselves are there for those who listen.
        if (cell.closest('thead')?.clientHeight === 1) continue
        const walker = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT)
        for (let text = walker.nextNode(); text !== null; text = walker.nextNode())
          for (const { index, 0: word } of (text.textContent ?? '').matchAll(/\p{L}{2,12}/gu)) {
            const range = document.createRange()
            range.setStart(text, index)
            range.setEnd(text, index + word.length)
            const tops = [...range.getClientRects()].map(({ top }) => Math.round(top))
            words += 1
            if (new Set(tops).size > 1) broken.push(word)
          }
      }
      return { words, broken }
    })
    seen += words
    wrong.push(...broken.map((word) => `${path}: ${word}`))
  }
  expect(wrong).toEqual([])
  expect(seen).toBeGreaterThan(100)
  await context.close()
})

it('a note prints with its warnings, results and stories, without the controls', async () => {
  const { page, context } = await opened(
    host,
    kinds().find((path) => /^notes\/[^/]+\/$/.test(path)) ?? '',
  )
  await page.emulateMedia({ media: 'print' })
  for (const selector of ['.hazard', '.card', '.stories td'])
    expect([selector, await page.locator(selector).first().isVisible()]).toEqual([selector, true])
  expect(await page.locator('.try-bar:visible, nav[aria-label=Site]:visible').count()).toBe(0)
  await context.close()
})
