/**
 * What a site has besides its pages, made when they are rendered: addresses that hold below any path,
 * the feed, the list of pages, pictures for links that are passed on, the search, headers for the host,
 * the keeper of read pages. In: the rendered site in a folder, the ledger. Out: the folder, whole, and
 * what its builder should know of it.
 */
import { createHash } from 'node:crypto'
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { dirname, join, sep } from 'node:path'
import { redirectsOf } from '../card/index.ts'
import type { Ledger } from '../ledger/load.ts'
import type { Problem } from '../ledger/problems.ts'
import { relativePage, relativeStyle } from './addresses.ts'
import { feedText } from './feed/atom.ts'
import { headersText, policyOf } from './headers.ts'
import { goneWorkerText, workerFile, workerText } from './offline/worker.ts'
import { namesText } from './search/names.ts'
import { isSearched, startIndex } from './search/pages.ts'
import { sitemapFiles, type SitePage } from './sitemap.ts'
import { drawPictures } from './social/pictures.ts'

export interface FinishOptions {
  readonly folder: string
  readonly ledger: Ledger
  /** For what is drawn once and does not change. */
  readonly cache: string
}

export async function finishSite(options: FinishOptions): Promise<readonly Problem[]> {
  const { folder, ledger, cache } = options
  const { published, calculators, site } = ledger
  const base = site?.base ?? '/'
  const { address } = published.site
  const write = async (file: string, bytes: string | Uint8Array): Promise<void> => {
    const path = join(folder, file)
    await mkdir(dirname(path), { recursive: true })
    await writeFile(path, bytes)
  }
  for (const [file, html] of redirectsOf(published, base)) await write(file, html)
  const page = (slug: string): Promise<string> =>
    readFile(join(folder, 'notes', slug, 'index.html'), 'utf8')
  const feed = await feedText(published, { base, calculators, page })
  if (feed !== undefined) await write('feed.xml', feed)
  const problems = address === undefined ? [] : await drawPictures(ledger, folder, cache)

  const days = new Map(published.notes.map(({ slug, date, changed }) => [slug, changed ?? date]))
  const policies = new Set<string>()
  const listed: SitePage[] = []
  const index = await startIndex()
  // One after the other, while the next pages are written: the index is made in a process of its own.
  let indexed = Promise.resolve()
  for (const file of await filesOf(folder)) {
    if (file.endsWith('.css')) {
      const css = await readFile(join(folder, file), 'utf8')
      const relative = relativeStyle(css, file, base)
      if (relative !== css) await write(file, relative)
    }
    if (!file.endsWith('.html')) continue
    const html = await readFile(join(folder, file), 'utf8')
    const policy = policyOf(html)
    if (policy !== undefined) policies.add(policy)
    const path = file.replace(/(^|\/)index\.html$/, '$1')
    if (isSearched(file, html)) {
      indexed = indexed.then(() => index.add(path, html))
      indexed.catch(() => undefined)
    }
    if (isListed(file, html))
      listed.push({ file, day: days.get(/^notes\/([^/]+)\//.exec(file)?.[1] ?? '') })
    const relative = relativePage(html, file, base)
    if (relative !== html) await write(file, relative)
  }
  if (address !== undefined)
    for (const [file, text] of sitemapFiles(listed, address, base)) await write(file, text)
  await indexed
  const found = await index.files()
  for (const { path, bytes } of found) await write(path, bytes)
  await write('search/names.json', namesText(published, calculators))
  const searchFiles = ['search/names.json', ...found.map(({ path }) => path)]
  await write('search/files.json', `${JSON.stringify(searchFiles, null, 1)}\n`)
  await write('_headers', headersText(policies, base))
  const worker =
    site?.offline === true
      ? workerText(await editionOf(folder), (await filesOf(folder)).filter(isScript))
      : goneWorkerText
  await write(workerFile, worker)
  return problems
}

const isListed = (file: string, html: string): boolean =>
  file !== '404.html' &&
  !/<meta http-equiv="refresh"|<meta name="robots" content="noindex"/i.test(html)

const isScript = (file: string): boolean => /^_astro\/.*\.js$/.test(file)

/** Every file of the site, by its path there, in one order everywhere. */
async function filesOf(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true })
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .map((path) => path.split(sep).join('/'))
    .sort()
}

/** A sign of everything that the site is made of. */
async function editionOf(folder: string): Promise<string> {
  const hash = createHash('sha256')
  for (const file of await filesOf(folder)) {
    const own = createHash('sha256').update(await readFile(join(folder, file)))
    hash.update(`${file} ${own.digest('hex')}\n`)
  }
  return hash.digest('hex').slice(0, 16)
}
