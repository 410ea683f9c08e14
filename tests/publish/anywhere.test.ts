/**
 * One output, wherever it is put: at the root of a host, below a path, and copied elsewhere; read in a
 * real browser from a plain file server, with and without the headers that the host may send. Nothing is
 * asked of another host, nothing breaks the content policy, the search finds, pages are kept.
 */
import { cp, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addressesOf, attributeOf, brokenAddresses, elementsOf } from '../build/links.ts'
import { builtSite, filesIn, root, small, temporaryFolder, type Built } from '../build/site.ts'
import { launched, quietOf } from '../browser/serve.ts'
import { plainServer, type PlainServer } from './plain-server.ts'

const content = join(root, 'tests/build/fixtures/published')

let site: Built
let copied: string
let browser: Browser
beforeAll(async () => {
  site = await builtSite(content)
  copied = join(await temporaryFolder(), 'copied')
  await cp(site.folder, copied, { recursive: true })
  browser = await launched()
})
afterAll(async () => {
  await browser.close()
  await site.remove()
  await rm(join(copied, '..'), { recursive: true })
})

interface Visit {
  readonly page: Page
  /** Until the page is whole. */
  readonly quiet: () => Promise<void>
  readonly context: BrowserContext
  readonly faults: string[]
  readonly asked: string[]
}

async function visit(origin: string): Promise<Visit> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } })
  const page = await context.newPage()
  const [faults, asked]: [string[], string[]] = [[], []]
  context.on('request', (request) => {
    asked.push(request.url())
    if (!request.url().startsWith(origin)) faults.push(`asked for ${request.url()}`)
  })
  page.on('pageerror', (error) => faults.push(String(error)))
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text())
  })
  page.on('response', (response) => {
    if (response.status() >= 400 && !response.url().includes('nowhere'))
      faults.push(`${response.status()} ${response.url()}`)
  })
  await page.exposeFunction('toldPolicy', (fault: string) => faults.push(fault))
  await page.addInitScript(`
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      window.toldPolicy('policy: ' + violatedDirective + ' ' + blockedURI),
    )`)
  return { page, quiet: quietOf(page), context, faults, asked }
}

const places = [
  ['the root of a host', '/', false, () => site.folder],
  ['a path below it', '/a/b/', false, () => site.folder],
  ['a path below it, with the headers', '/a/b/', true, () => site.folder],
  ['a copied folder under another name', '/x y/old%20copies/', false, () => copied],
] as const

/** One of every kind. */
const kinds = (): string[] => {
  const seen = new Set<string>()
  return [...site.pages.keys()]
    .filter((name) => name !== '404.html')
    .filter((name) => {
      const kind = name
        .replace(/^(notes|calculators|tables)\/[^/]+/, '$1/*')
        .replace(/\*\/[^/]+\/i/, '*/*/i')
      return seen.has(kind) ? false : seen.add(kind)
    })
    .map((name) => name.replace(/index\.html$/, ''))
}

describe.each(places)('from %s', (_, below, headers, folder) => {
  let server: PlainServer
  beforeAll(async () => {
    server = await plainServer(folder(), encodeURI(decodeURI(below)), { headers })
  })
  afterAll(() => server.stop())

  it('every kind of page stands, with its style and script, and nothing is amiss', async () => {
    const { page, quiet, context, faults } = await visit(new URL(server.address).origin)
    for (const path of kinds()) {
      await page.goto(server.address + path)
      await quiet()
      const state = await page.evaluate(() => ({
        styled: getComputedStyle(document.body).margin,
        units: document.querySelectorAll('work-units select').length,
        search: document.querySelectorAll('work-search input').length,
      }))
      expect([path, state]).toEqual([path, { styled: '0px', units: 1, search: 1 }])
    }
    expect(faults).toEqual([])
    await context.close()
  })

  it('links lead on, a card opens its form, a number its story, and the search finds', async () => {
    const { page, quiet, context, faults, asked } = await visit(new URL(server.address).origin)
    await page.goto(server.address)
    await quiet()
    expect(asked.filter((url) => /search\/|search-names/.test(url))).toEqual([])
    await page.locator('.note-list a').first().click()
    await page.waitForURL('**/notes/bilge-pump/')
    await page.locator('.try-bar button').first().click()
    await page.locator('.try-form').waitFor()
    await page.locator('.masthead a.site').click()
    await page.waitForURL(server.address)
    await page.locator('work-search input').fill('voltage drop')
    await page.locator('work-search button').click()
    await page.locator('.search-found a').first().waitFor()
    const found = await page.locator('.search-found li').allTextContents()
    expect(found.join('\n')).toMatch(/Fuse and wire of a small motor: Voltage drop 0\.65\s?V/)
    await page.locator('work-search input').fill('impeller')
    await page.locator('work-search button').click()
    const part = page.locator('.search-found a', { hasText: 'Rubber impeller, six vanes' })
    expect(await part.first().getAttribute('href')).toMatch(/notes\/bilge-pump\/#impeller$/)
    await page.locator('work-search input').fill('leaflet')
    await page.locator('work-search button').click()
    await page.locator('.search-found a', { hasText: 'The bilge pump' }).click()
    await page.waitForURL('**/notes/bilge-pump/')
    expect(new URL(page.url()).pathname.startsWith(new URL(server.address).pathname)).toBe(true)
    expect(faults).toEqual([])
    await context.close()
  })
})

it.each([true, false])(
  'an older name of a note leads on, with what stood behind it where script runs (%s)',
  async (javaScriptEnabled) => {
    const renamed = await builtSite(small)
    const server = await plainServer(renamed.folder, '/a/b/', { headers: true })
    const context = await browser.newContext({ javaScriptEnabled })
    const page = await context.newPage()
    const faults: string[] = []
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text())
    })
    await page.goto(`${server.address}notes/old-loop/?x=1#Stories`)
    await page.waitForURL(/notes\/loop\//)
    const { pathname, search, hash } = new URL(page.url())
    expect(pathname).toBe('/a/b/notes/loop/')
    // What a browser keeps without script is its own affair.
    if (javaScriptEnabled) expect([search, hash]).toEqual(['?x=1', '#Stories'])
    expect(faults).toEqual([])
    await context.close()
    await server.stop()
    await renamed.remove()
  },
)

it('what is not found is said below the path that was set, at any depth', async () => {
  const server = await plainServer(site.folder, '/a/b/')
  const { page, quiet, context, faults } = await visit(new URL(server.address).origin)
  const answer = await page.goto(`${server.address}nowhere/at/all/`)
  await quiet()
  expect(answer?.status()).toBe(404)
  expect(await page.locator('h1').textContent()).toBe('There is no such page')
  expect(await page.evaluate(() => getComputedStyle(document.body).margin)).toBe('0px')
  await page.locator('main a').first().click()
  await page.waitForURL(server.address)
  expect(faults.filter((one) => !one.includes('404'))).toEqual([])
  await context.close()
  await server.stop()
})

it('without script there is no form for searching, and no other address in any page', async () => {
  expect([...site.pages.values()].filter((html) => html.includes('<form role="search"'))).toEqual(
    [],
  )
  const rooted = [...site.pages]
    .filter(([name]) => name !== '404.html')
    .flatMap(([name, html]) =>
      elementsOf(html)
        .filter(({ tagName }) => tagName !== 'meta')
        .flatMap(addressesOf)
        .filter(({ to }) => to.startsWith('/'))
        .map(({ to }) => `${name}: ${to}`),
    )
  expect(rooted).toEqual([])
  expect(brokenAddresses(site.pages, new Set(site.files.keys()), '/a/b/')).toEqual([])
  for (const [name, bytes] of await filesIn(site.folder))
    if (/\.(?:js|css)$/.test(name)) expect([name, bytes.includes('/a/b/')]).toEqual([name, false])
})

it('every page carries a policy by hash, without `unsafe-inline`, and the headers say the rest', () => {
  for (const [name, html] of site.pages) {
    const policy = elementsOf(html)
      .filter((one) => attributeOf(one, 'http-equiv') === 'content-security-policy')
      .map((one) => attributeOf(one, 'content') ?? '')
    expect([name, policy.length]).toEqual([name, 1])
    for (const due of [
      "default-src 'none'",
      "object-src 'none'",
      "base-uri 'none'",
      "form-action 'none'",
      "frame-src 'none'",
      "script-src 'self'",
      "style-src 'self'",
    ])
      expect(policy[0]).toContain(due)
    expect(policy[0]).not.toMatch(/unsafe|https?:|data:|\*/)
  }
  const headers = site.files.get('_headers')?.toString('utf8') ?? ''
  expect(headers).toMatch(/^\/a\/b\/\*\n {2}Content-Security-Policy: default-src 'none'; /)
  expect(headers).toContain("frame-ancestors 'none'")
  expect(headers).not.toContain('unsafe-inline')
})
