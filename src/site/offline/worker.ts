/**
 * The script that keeps pages once read in the reader's browser. In: a sign of the whole output, and the
 * site's scripts. Out: the text of `offline-worker.js`.
 *
 * Pages come from the network first, asked for anew; only without one (or when it takes too long) is the
 * kept copy shown, and it says at its head when it was read and of which day the notes are. With the first
 * page all scripts are kept: what a change needs is fetched at the first press, which may be in a garage
 * without a network. A new edition fetches anew what was read and drops the old copies. With
 * `offline: false` the script takes away what an earlier site left behind.
 */
import { language } from '#words'
import { words } from '../../words/words.ts'

/** Stand in texts for what only the browser knows. */
const [dayHere, readHere, homeHere] = ['{day}', '{read}', '{home}'] as const

const saved = words`Saved copy. The network does not answer: figures and verdicts may be others by now. Look again before you rely on one.`
const savedOf = words`Saved copy of ${readHere}, of notes last changed ${dayHere}. The network does not answer: figures and verdicts may be others by now. Look again before you rely on one.`

function notKeptHtml(): string {
  const title = words`No copy of this page`
  const why = words`The network does not answer, and this page was not read before.`
  return `<!doctype html><html lang="${language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title><main><h1>${title}</h1><p>${why} <a href="${homeHere}">${words`The notes`}</a></p></main></html>`
}

export const workerFile = 'offline-worker.js'

/** Longest wait for the network where there is a copy, in milliseconds. */
const patience = 6000

/** Which of a language's ways to write a date the pages have. */
const dateLanguages: Readonly<Record<string, string>> = { en: 'en-GB' }

export function workerText(edition: string, scripts: readonly string[]): string {
  return `const prefix = 'worked-notes ' + registration.scope + ' '
const name = prefix + ${JSON.stringify(edition)}
const scripts = ${JSON.stringify(scripts)}
const bare = (url) => url.replace(/[?#].*/, '')
const ours = (url) => url.startsWith(registration.scope)
const lasting = (url) => url.startsWith(registration.scope + '_astro/')

async function keep(url) {
  const response = await fetch(url, { cache: 'no-cache' })
  if (!response.ok || response.redirected) return
  const cache = await caches.open(name)
  await cache.put(bare(url), response.clone())
  if (!(response.headers.get('content-type') ?? '').includes('text/html')) return
  const html = await response.text()
  const needed = [...html.matchAll(/ (?:src|href)="([^"#?]*_astro\\/[^"]*)"/g)]
  for (const [, address] of needed) {
    const asset = new URL(address, url).href
    if (ours(asset) && !(await cache.match(bare(asset)))) await keep(asset)
  }
}

// Their names change with what is in them: an older copy is as good.
async function keepScripts() {
  const cache = await caches.open(name)
  for (const path of scripts) {
    const url = new URL(path, registration.scope).href
    if (await cache.match(url)) continue
    const old = await caches.match(url)
    await (old ? cache.put(url, old) : keep(url)).catch(() => {})
  }
}

async function keepAnew() {
  const urls = new Set()
  for (const old of await caches.keys())
    if (old.startsWith(prefix) && old !== name)
      for (const { url } of await (await caches.open(old)).keys()) urls.add(url)
  await Promise.all([...urls].filter((url) => !lasting(url)).map(keep))
  if (urls.size > 0) await keepScripts()
}

addEventListener('install', (event) => {
  event.waitUntil(keepAnew().then(() => skipWaiting()))
})

addEventListener('activate', (event) => {
  const drop = async () => {
    for (const old of await caches.keys())
      if (old.startsWith(prefix) && old !== name) await caches.delete(old)
    await clients.claim()
  }
  event.waitUntil(drop())
})

addEventListener('message', (event) => {
  const wanted = Array.isArray(event.data?.keep) ? event.data.keep : []
  const keepAll = async () => {
    const cache = await caches.open(name)
    for (const url of wanted.map(String))
      if (ours(url) && !(await cache.match(bare(url)))) await keep(url).catch(() => {})
    await keepScripts()
  }
  event.waitUntil(keepAll())
})

addEventListener('fetch', (event) => {
  const { request } = event
  if (request.method === 'GET' && ours(request.url)) event.respondWith(answer(event, request))
})

async function answer(event, request) {
  const cache = await caches.open(name)
  const key = bare(request.url)
  const kept = await cache.match(key)
  if (kept && lasting(key)) return kept
  const copy = () => (request.mode === 'navigate' ? marked(kept) : kept)
  const network = fetch(request, lasting(key) ? {} : { cache: 'no-cache' }).then((response) => {
    if (response.ok && response.type === 'basic' && !response.redirected)
      event.waitUntil(cache.put(key, response.clone()))
    return response
  })
  if (!kept)
    return network.catch((error) => {
      if (request.mode === 'navigate') return notKept()
      throw error
    })
  const late = new Promise((done) => setTimeout(() => done(undefined), ${patience}))
  return (await Promise.race([network.catch(() => undefined), late])) ?? copy()
}

async function marked(kept) {
  const html = await kept.text()
  const day = /<html[^>]* data-day="([^"]+)"/.exec(html)?.[1]
  const read = new Date(kept.headers.get('date') ?? NaN)
  const said = day === undefined || Number.isNaN(read.getTime())
    ? ${JSON.stringify(saved)}
    : ${JSON.stringify(savedOf)}
        .replace(${JSON.stringify(readHere)}, () => read.toLocaleDateString(${JSON.stringify(dateLanguages[language] ?? language)}, { day: 'numeric', month: 'long', year: 'numeric' }))
        .replace(${JSON.stringify(dayHere)}, () => day)
  const note = '<p class="saved-copy" role="status">' + said + '</p>'
  const at = /<body\\b[^>]*>/.exec(html)
  const place = at === null ? 0 : at.index + at[0].length
  const headers = new Headers(kept.headers)
  headers.delete('content-length')
  headers.delete('content-encoding')
  return new Response(html.slice(0, place) + note + html.slice(place), { headers })
}

function notKept() {
  const html = ${JSON.stringify(notKeptHtml())}.replace(${JSON.stringify(homeHere)}, () => registration.scope)
  return new Response(html, { status: 503, headers: { 'content-type': 'text/html; charset=utf-8' } })
}
`
}

/** Takes itself away, with every copy. */
export const goneWorkerText = `addEventListener('install', () => {
  skipWaiting()
})
addEventListener('activate', (event) => {
  const leave = async () => {
    const prefix = 'worked-notes ' + registration.scope + ' '
    for (const old of await caches.keys()) if (old.startsWith(prefix)) await caches.delete(old)
    await registration.unregister()
  }
  event.waitUntil(leave())
})
`
