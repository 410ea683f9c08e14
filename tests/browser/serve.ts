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
} from 'playwright-core'
import { inject } from 'vitest'
import { builtSite, type Built } from '../build/site.ts'
import { contentTypes } from './content-types.ts'

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
  const browser = await chromium.launch({
    executablePath: inject('browser'),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  })
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
}

export async function opened(
  host: Served,
  path: string,
  options: BrowserContextOptions = {},
): Promise<Opened> {
  const viewport = { width: 1280, height: 900 }
  return openedIn(host, await host.browser.newContext({ viewport, ...options }), path)
}

/** The same in another tab of a reader who was here before. */
export async function openedIn(
  { address }: Served,
  context: BrowserContext,
  path: string,
): Promise<Opened> {
  context.setDefaultTimeout(10_000)
  const page = await context.newPage()
  const faults: string[] = []
  const scripts = new Map<string, number>()
  await page.route('**/*', (route) => {
    const url = route.request().url()
    if (url.startsWith(new URL(address).origin)) return route.continue()
    faults.push(`asked for ${url}`)
    return route.abort()
  })
  page.on('pageerror', (error) => faults.push(String(error)))
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text())
  })
  page.on('response', (response) => {
    const { pathname } = new URL(response.url())
    if (!pathname.endsWith('.js')) return
    void response
      .body()
      .then((body) =>
        scripts.set(
          pathname.slice(pathname.lastIndexOf('/') + 1),
          gzipSync(body, { level: 9 }).length,
        ),
      )
      // The page was left before it came.
      .catch(() => undefined)
  })
  await page.goto(address + path, { waitUntil: 'networkidle' })
  return { page, context, faults, scripts }
}
