/**
 * Reading without a network, in a real browser against a server that is taken away: a page once read
 * opens and says of which day it is; a new edition puts its figures in place of the old; what is switched
 * off takes itself away.
 */
import { readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { builtSite, copyOf, root, type Built } from '../build/site.ts'
import { launched } from '../browser/serve.ts'
import { plainServer } from './plain-server.ts'

const content = join(root, 'tests/build/fixtures/published')

let [site, later, off]: [Built?, Built?, Built?] = []
let browser: Browser
const folders: string[] = []

async function changed(file: string, from: string, to: string): Promise<Built> {
  const copy = await copyOf(content)
  folders.push(copy)
  const path = join(copy, file)
  const text = await readFile(path, 'utf8')
  expect(text).toContain(from)
  await writeFile(path, text.replace(from, to))
  return builtSite(copy)
}

beforeAll(async () => {
  site = await builtSite(content)
  later = await changed('notes/bilge-pump.mdx', 'starting="9 A"', 'starting="8.5 A"')
  off = await changed('site.yaml', 'offline: true', 'offline: false')
  browser = await launched()
})
afterAll(async () => {
  await browser.close()
  for (const one of [site, later, off]) await one?.remove()
  for (const one of folders) await rm(one, { recursive: true })
})

const today = new Date().toLocaleDateString('en-GB', {
  day: 'numeric',
  month: 'long',
  year: 'numeric',
  timeZone: 'UTC',
})

const folderOf = (built: Built | undefined): string => built?.folder ?? ''

async function reader(): Promise<{ page: Page; context: BrowserContext }> {
  const context = await browser.newContext()
  return { context, page: await context.newPage() }
}

const until = { timeout: 20_000, interval: 100 }

const keptBy = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    if (navigator.serviceWorker.controller === null) return []
    const names = await caches.keys()
    const lists = await Promise.all(
      names.map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)),
    )
    return lists.flat()
  })

const copies = (page: Page): Promise<string[]> => page.evaluate(() => caches.keys())

/** Until what was read is kept: nothing shows it to the reader. */
async function kept(page: Page, path: string): Promise<void> {
  await expect
    .poll(async () => (await keptBy(page)).some((url) => url.endsWith(path)), until)
    .toBe(true)
}

it('a page once read opens without a network, with its style, and says of which day it is', async () => {
  const server = await plainServer(folderOf(site), '/a/b/')
  const { page, context } = await reader()
  await page.goto(`${server.address}notes/bilge-pump/`, { waitUntil: 'networkidle' })
  expect(await page.locator('.saved-copy').count()).toBe(0)
  await kept(page, '/a/b/notes/bilge-pump/')
  await page.waitForLoadState('networkidle')
  await server.stop()
  await page.goto(`${server.address}notes/bilge-pump/`)
  expect(await page.locator('.saved-copy').textContent()).toBe(
    `Saved copy of ${today}, of notes last changed 14 March 2026. The network does not answer: figures and verdicts may be others by now. Look again before you rely on one.`,
  )
  expect(await page.locator('[data-card]').count()).toBe(1)
  expect(await page.evaluate(() => getComputedStyle(document.body).margin)).toBe('0px')
  expect(await page.locator('work-units select').count()).toBe(1)
  const answer = await page.goto(`${server.address}notes/clamp-meter/`)
  expect([answer?.status(), await page.locator('h1').textContent()]).toEqual([
    503,
    'No copy of this page',
  ])
  await context.close()
})

it('what was read can be changed without a network, though nothing was pressed before', async () => {
  const server = await plainServer(folderOf(site), '/a/b/')
  const { page, context } = await reader()
  await page.goto(`${server.address}notes/bilge-pump/`, { waitUntil: 'networkidle' })
  const scripts = [...(site?.files.keys() ?? [])].filter((name) => /^_astro\/.*\.js$/.test(name))
  const keptScripts = async () => (await keptBy(page)).filter((url) => url.endsWith('.js')).length
  await expect.poll(keptScripts, until).toBeGreaterThanOrEqual(scripts.length)
  await kept(page, '/bilge-pump/figures.json')
  await server.stop()
  await page.goto(`${server.address}notes/bilge-pump/`)
  expect(await page.locator('.saved-copy').count()).toBe(1)
  const [card] = await page.locator('work-card').all()
  await card?.locator('.try-bar button').first().click()
  await card?.locator('.try-form [name=starting]').fill('8 A')
  await expect
    .poll(async () => (await card?.locator('.yours').first().textContent()) ?? '')
    .toContain('Your figures.')
  await context.close()
})

it('the search works without a network once it was used', async () => {
  const server = await plainServer(folderOf(site), '/a/b/')
  const { page, context } = await reader()
  const ask = async (words: string): Promise<string> => {
    await page.locator('work-search input').fill(words)
    await page.locator('work-search button').click()
    await page.getByText(new RegExp(`\\d found for “${words}”`)).waitFor()
    return (await page.locator('.search-found').textContent()) ?? ''
  }
  await page.goto(server.address, { waitUntil: 'networkidle' })
  await kept(page, '/a/b/')
  await page.reload({ waitUntil: 'networkidle' })
  await ask('fuse')
  const fragments = [...(site?.files.keys() ?? [])].filter((name) => name.startsWith('search/'))
  await expect
    .poll(async () => (await keptBy(page)).filter((url) => url.includes('/search/')).length, until)
    .toBeGreaterThanOrEqual(fragments.length)
  await server.stop()
  await page.reload()
  expect(await ask('leaflet')).toContain('The bilge pump')
  expect(await ask('drop of supply')).toMatch(/4\.8\s%/)
  await context.close()
})

it('a new edition fetches anew what was read, and the old copies are gone', async () => {
  const server = await plainServer(folderOf(site), '/')
  const { page, context } = await reader()
  await page.goto(`${server.address}notes/bilge-pump/`, { waitUntil: 'networkidle' })
  await kept(page, '/notes/bilge-pump/')
  const [old = ''] = await copies(page)
  server.serve(folderOf(later))
  // Another page: the first is not read again before the network goes.
  await page.goto(server.address, { waitUntil: 'networkidle' })
  await expect.poll(async () => (await copies(page)).includes(old), until).toBe(false)
  expect(await copies(page)).toHaveLength(1)
  await server.stop()
  await page.goto(`${server.address}notes/bilge-pump/`)
  expect(await page.locator('.saved-copy').count()).toBe(1)
  const start = page.locator('[data-number="bilge-pump/pumpFuse.starting"]').first()
  expect(await start.textContent()).toMatch(/8\.5\sA/)
  await context.close()
})

it('with a network the page is asked for anew each time, even where a copy is kept', async () => {
  const server = await plainServer(folderOf(site), '/')
  const { page, context } = await reader()
  await page.goto(`${server.address}notes/bilge-pump/`, { waitUntil: 'networkidle' })
  await kept(page, '/notes/bilge-pump/')
  server.serve(folderOf(later))
  await page.reload({ waitUntil: 'networkidle' })
  const start = page.locator('[data-number="bilge-pump/pumpFuse.starting"]').first()
  expect(await start.textContent()).toMatch(/8\.5\sA/)
  expect(await page.locator('.saved-copy').count()).toBe(0)
  await context.close()
  await server.stop()
})

it('switched off, nothing is kept, and what an earlier site kept is taken away', async () => {
  const server = await plainServer(folderOf(site), '/')
  const { page, context } = await reader()
  await page.goto(`${server.address}notes/bilge-pump/`, { waitUntil: 'networkidle' })
  await kept(page, '/notes/bilge-pump/')
  server.serve(folderOf(off))
  await page.goto(server.address, { waitUntil: 'networkidle' })
  await expect
    .poll(
      () => page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length),
      until,
    )
    .toBe(0)
  await page.reload({ waitUntil: 'networkidle' })
  expect(await copies(page)).toEqual([])
  await context.close()
  await server.stop()
})

it('the keeper holds no clock, and another output gives it another name', () => {
  const [one, other] = [site, later].map((built) =>
    built?.files.get('offline-worker.js')?.toString('utf8'),
  )
  expect(one).toMatch(/^const prefix = .*\nconst name = prefix \+ "[0-9a-f]{16}"\n/)
  expect(one).not.toMatch(/Date\.now|performance/)
  expect(other).not.toBe(one)
})
