/**
 * Finds what was asked for: numbers, blocks and parts by name, then pages by their words. In: the words
 * typed. Out: a list at the head of the page. Everything comes from files of the site itself; what cannot
 * be fetched is said.
 */
import { basePath } from './base.ts'
import { rankNames, sharesWords, type Name } from './search-names.ts'
import { words } from '../words/words.ts'

interface Fragment {
  readonly url: string
  readonly content?: string
  readonly plain_excerpt?: string
  readonly meta: { readonly title?: string }
}
interface PageSearch {
  options(settings: { baseUrl: string; excerptLength: number }): Promise<void>
  search(asked: string): Promise<{ results: { data(): Promise<Fragment> }[] }>
}

const [mostNames, mostPages] = [12, 10] as const
let pages: Promise<PageSearch> | undefined
let names: Promise<readonly Name[]> | undefined

const isSearch = (value: unknown): value is PageSearch =>
  typeof value === 'object' && value !== null && 'search' in value && 'options' in value

async function startPages(): Promise<PageSearch> {
  const address = new URL(`${basePath()}search/pagefind.js`, location.href).href
  const loaded: unknown = await import(/* @vite-ignore */ address)
  if (!isSearch(loaded)) throw new Error('the search is another one')
  await loaded.options({ baseUrl: basePath(), excerptLength: 24 })
  return loaded
}

async function startNames(): Promise<readonly Name[]> {
  const response = await fetch(`${basePath()}search/names.json`)
  if (!response.ok) throw new Error(String(response.status))
  const read: unknown = await response.json()
  if (!isNames(read)) throw new Error('the names are others')
  void keepForLater()
  return read.names
}

const isNames = (read: unknown): read is { readonly names: readonly Name[] } =>
  typeof read === 'object' && read !== null && 'names' in read && Array.isArray(read.names)

/** Where pages are kept for reading without a network, the search is kept as well. */
async function keepForLater(): Promise<void> {
  if (document.documentElement.dataset.offline === undefined) return
  const controller = navigator.serviceWorker.controller
  if (controller === null) return
  try {
    const list: unknown = await (await fetch(`${basePath()}search/files.json`)).json()
    if (Array.isArray(list))
      controller.postMessage({
        keep: list.map((file) => new URL(basePath() + String(file), location.href).href),
      })
  } catch {
    // Searching works all the same while there is a network.
  }
}

function region(): HTMLElement {
  const there = document.querySelector<HTMLElement>('.search-found')
  if (there !== null) return there
  const made = document.createElement('section')
  made.className = 'search-found on-screen'
  made.setAttribute('aria-label', words`Found`)
  made.tabIndex = -1
  document.querySelector('main')?.prepend(made)
  return made
}

function item(label: string, href: string, more: string): HTMLLIElement {
  const made = document.createElement('li')
  const link = document.createElement('a')
  link.href = href
  link.textContent = label
  made.append(link, document.createTextNode(more === '' ? '' : ` ${more}`))
  return made
}

function list(title: string, items: readonly HTMLLIElement[]): readonly HTMLElement[] {
  if (items.length === 0) return []
  const head = document.createElement('h2')
  head.textContent = title
  const made = document.createElement('ul')
  made.append(...items)
  return [head, made]
}

let latest = 0

export async function showFound(asked: string): Promise<void> {
  const turn = ++latest
  const place = region()
  const status = document.createElement('p')
  status.setAttribute('role', 'status')
  if (asked === '') {
    place.remove()
    return
  }
  status.textContent = words`Searching for “${asked}” …`
  place.replaceChildren(status)
  const failed: string[] = []
  // Not kept when it fails: there may be a network at the next question.
  const byName = await (names ??= startNames()).catch(() => {
    names = undefined
    failed.push(words`numbers and parts`)
    return []
  })
  const inPages = await findPages(asked).catch(() => {
    pages = undefined
    failed.push(words`pages`)
    return []
  })
  if (turn !== latest) return
  const ranked = rankNames(byName, asked)
  const named = ranked
    .slice(0, mostNames)
    .map(([label, value, path, note]) => item(label, basePath() + path, `${value} (${note})`))
  const found = inPages.map(({ url, meta, plain_excerpt: excerpt = '' }) =>
    item(meta.title ?? url, url, excerpt),
  )
  const many = named.length + found.length
  const without =
    failed.length === 0 ? '' : ` ${words`Could not be searched now: ${failed.join(', ')}.`}`
  const more = ranked.length - mostNames
  const said =
    many === 0
      ? words`Nothing found for “${asked}”.`
      : more > 0
        ? words`${many} found for “${asked}”; ${more} more by name.`
        : words`${many} found for “${asked}”.`
  status.textContent = said + without
  place.replaceChildren(
    status,
    ...list(words`Numbers, blocks and parts`, named),
    ...list(words`Pages`, found),
  )
  place.focus()
}

async function findPages(asked: string): Promise<readonly Fragment[]> {
  const { results } = await (await (pages ??= startPages())).search(asked)
  const found = await Promise.all(results.slice(0, mostPages).map((result) => result.data()))
  return found.filter(({ content = '', meta: { title = '' } }) =>
    sharesWords(`${title} ${content}`, asked),
  )
}
