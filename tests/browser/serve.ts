/**
 * Serves a built site below its base path, as any static host does, and opens a browser on it.
 * Whatever the page asks of another host is written down, and refused.
 */
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname } from 'node:path'
import { gzipSync } from 'node:zlib'
import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
  type Request,
} from 'playwright-core'
import { inject } from 'vitest'
import { builtSite, type Built } from '../build/site.ts'
import { contentTypes } from './content-types.ts'

/** No host but this machine can be reached. */
export const launched = (): Promise<Browser> =>
  chromium.launch({
    executablePath: inject('browser'),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
    ],
  })

export interface Served {
  readonly site: Built
  /** `http://127.0.0.1:40000/kit/` */
  readonly address: string
  readonly browser: Browser
  readonly close: () => Promise<void>
}

export async function served(content: string, base: string): Promise<Served> {
  const site = await builtSite(content)
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://site.example')
    const within = pathname.startsWith(base) ? decodeURI(pathname.slice(base.length)) : '404.html'
    const name = within === '' || within.endsWith('/') ? `${within}index.html` : within
    const body = site.files.get(name)
    response.writeHead(body === undefined ? 404 : 200, {
      'content-type': contentTypes[extname(name)] ?? 'text/html; charset=utf-8',
    })
    response.end(body ?? site.files.get('404.html'))
  })
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const { port } = server.address() as AddressInfo
  const browser = await launched()
  return {
    site,
    address: `http://127.0.0.1:${port}${base}`,
    browser,
    close: async () => {
      await browser.close()
      await new Promise((closed) => server.close(closed))
      await site.remove()
    },
  }
}

export interface Opened {
  readonly page: Page
  readonly context: BrowserContext
  /** What the page asked of other hosts, and what went wrong in it. */
  readonly faults: string[]
  /** Name of each script fetched so far -> its size as sent, compressed. */
  readonly scripts: ReadonlyMap<string, number>
  /** On to another page of the site, until that is whole. */
  readonly to: (path: string) => Promise<void>
}

export async function opened(
  host: Served,
  path: string,
  options: BrowserContextOptions = {},
): Promise<Opened> {
  const viewport = { width: 1280, height: 900 }
  const context = await host.browser.newContext({ viewport, ...options })
  return openedIn(host, context, path, options.javaScriptEnabled)
}

/** The same in another tab of a reader who was here before. */
export async function openedIn(
  { address }: Served,
  context: BrowserContext,
  path: string,
  hasScript = true,
): Promise<Opened> {
  context.setDefaultTimeout(10_000)
  const page = await context.newPage()
  const faults: string[] = []
  const scripts = new Map<string, number>()
  const weighed: Promise<unknown>[] = []
  page.on('request', (request) => {
    const url = request.url()
    if (!url.startsWith(new URL(address).origin)) faults.push(`asked for ${url}`)
  })
  page.on('pageerror', (error) => faults.push(String(error)))
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text())
  })
  page.on('response', (response) => {
    const { pathname } = new URL(response.url())
    if (!pathname.endsWith('.js')) return
    const name = pathname.slice(pathname.lastIndexOf('/') + 1)
    const weigh = (body: Buffer) => scripts.set(name, gzipSync(body, { level: 9 }).length)
    // The page may be left before it comes.
    weighed.push(response.body().then(weigh, () => undefined))
  })
  const quiet = quietOf(page, hasScript)
  const to = async (next: string): Promise<void> => {
    await page.goto(address + next)
    await quiet()
    await Promise.all(weighed)
  }
  await to(path)
  return { page, context, faults, scripts, to }
}

/** How long nothing may be asked for, once a page has loaded, until it counts as whole. */
const stillness = 100

/**
 * Says when a page is whole: it is loaded and drawn, everything it asked for has come, and whatever it
 * put off is done. In: a page that is not yet sent anywhere, and whether script runs in it: without, no
 * page can say that it is idle, and none has anything to do.
 */
export function quietOf(page: Page, hasScript = true): () => Promise<void> {
  const underway = new Set<Request>()
  let last = 0
  const ended = (request: Request): void => {
    underway.delete(request)
    last = performance.now()
  }
  page.on('request', (request) => underway.add(request))
  page.on('requestfinished', ended)
  page.on('requestfailed', ended)
  return async () => {
    await page.waitForLoadState('load')
    do {
      if (hasScript) await page.evaluate(drawn)
      await new Promise((done) => setTimeout(done, 20))
    } while (underway.size > 0 || performance.now() - last < stillness)
  }
}

/** Runs in the page: its fonts are there, nothing on it moves, and it has been drawn. */
export async function drawn(): Promise<void> {
  await document.fonts.ready
  const moving = document.getAnimations().filter(({ effect }) => {
    return effect?.getTiming().iterations !== Infinity
  })
  await Promise.allSettled(moving.map(({ finished }) => finished))
  await new Promise((idle) => requestIdleCallback(idle, { timeout: 200 }))
}
