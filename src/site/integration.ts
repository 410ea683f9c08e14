/**
 * The kit inside Astro: hands pages the ledger as data, and in `dev` works it anew when a note, the
 * settings or a calculator changes.
 *
 * Astro's module graphs do not share state, so pages get data from a virtual module and never from
 * `src/ledger`.
 */
import { dirname, resolve, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import type { Plugin } from 'vite'
import type { Ledger } from '../ledger/load.ts'
import type { Published } from '../ledger/published.ts'
import { redirectsOf } from '../card/index.ts'
import { picturePaths } from '../photos/of-notes.ts'
import { servePictures } from '../photos/serve.ts'
import { lastDay } from './day.ts'
import type { Failures } from './failures.ts'
import { leanCalculators } from './lean.ts'
import { leanPreload } from './preload.ts'
import { serveRenamed } from './renamed.ts'
import { watchNotes } from './watch.ts'
import { catalogueModule, plainWords } from './words.ts'
import { examplePictures, writingListHtml } from '../writing/list.ts'
import { words } from '../words/words.ts'

export interface LedgerHolder {
  ledger: Ledger
  /** Whether drafts are among the notes. */
  readonly drafts: boolean
  /** Where messages go while writing. */
  readonly say: (line: string) => void
  /** Of what stands in braces. */
  readonly failures: Failures
}

const virtualName = 'virtual:worked-notes'
const resolvedName = `\0${virtualName}`
const root = resolve(fileURLToPath(new URL('../..', import.meta.url)))

export function workedNotes(holder: LedgerHolder): AstroIntegration {
  return {
    name: 'worked-notes',
    hooks: {
      'astro:config:setup': ({ command, injectRoute, updateConfig }) => {
        if (command === 'dev' || holder.ledger.site?.writing === true)
          injectRoute({
            pattern: '/writing/',
            entrypoint: resolve(root, 'src/layouts/Writing.astro'),
          })
        updateConfig({
          vite: {
            plugins: [
              ledgerModule(holder),
              writingModule(holder),
              notesResolve(holder),
              watchNotes(holder, root, resolvedName),
              keepDrafts(holder),
              servePictures(() => new Map([...picturePaths(holder.ledger), ...examplePictures()])),
              serveRenamed(
                () => redirectsOf(holder.ledger.published, siteBase(holder)),
                siteBase(holder),
              ),
              leanCalculators(),
              leanPreload(),
              catalogueModule(),
              plainWords(),
            ],
            build: { rolldownOptions: { checks: { moduleLevelDirective: false } } },
            server: { fs: { allow: [root, holder.ledger.content] } },
          },
        })
      },
    },
  }
}

/** Pages run in this process, in a module graph of their own: here they find what was handed over. */
const shelfKey = 'worked-notes:published'

const isShelf = (value: unknown): value is Map<number, Published> => value instanceof Map

function shelf(): Map<number, Published> {
  const there: unknown = Reflect.get(globalThis, Symbol.for(shelfKey))
  if (isShelf(there)) return there
  const made = new Map<number, Published>()
  Reflect.set(globalThis, Symbol.for(shelfKey), made)
  return made
}

const siteBase = ({ ledger }: LedgerHolder): string => ledger.site?.base ?? '/'

/** `virtual:worked-notes`: the published ledger and the notes' pages. */
function ledgerModule(holder: LedgerHolder): Plugin {
  const place = shelf().size
  let writing = false
  // Served below the same path until it is started anew, also when the settings cannot be read.
  const start = siteBase(holder)
  shelf().set(place, holder.ledger.published)
  return {
    name: 'worked-notes:ledger',
    configResolved({ command }) {
      writing = command === 'serve'
    },
    resolveId: (id) => (id === virtualName ? resolvedName : undefined),
    load(id) {
      if (id !== resolvedName) return undefined
      const { published, notes } = holder.ledger
      shelf().set(place, published)
      const modules = notes.map(
        ({ slug, path }) => `${JSON.stringify(slug)}: () => import(${JSON.stringify(path)})`,
      )
      // Not `import.meta.env.BASE_URL`, which a variable of the shell of that name would change.
      const base = (writing ? start : siteBase(holder)).replace(/\/?$/, '/')
      return [
        `export const base = ${JSON.stringify(base)}`,
        `export const writing = ${writing}`,
        `export const listed = ${writing || holder.ledger.site?.writing === true}`,
        `export const problems = ${JSON.stringify(writing ? holder.ledger.problems : [])}`,
        `export const offline = ${!writing && holder.ledger.site?.offline === true}`,
        `export const day = ${JSON.stringify(lastDay(published))}`,
        // Not as text: for a large site Vite would read tens of megabytes as program.
        `export const published = globalThis[Symbol.for('${shelfKey}')].get(${place})`,
        `export const shownOn = ${JSON.stringify(shownOn(holder.ledger))}`,
        `export const noteModules = { ${modules.join(', ')} }`,
      ].join('\n')
    },
  }
}

/** `virtual:worked-notes/writing`: made only where its page is. */
function writingModule(holder: LedgerHolder): Plugin {
  const name = `${virtualName}/writing`
  return {
    name: 'worked-notes:writing',
    resolveId: (id) => (id === name ? `\0${name}` : undefined),
    async load(id) {
      if (id !== `\0${name}`) return undefined
      return `export const html = ${JSON.stringify(await writingListHtml(siteBase(holder)))}`
    },
  }
}

function shownOn({ shown }: Ledger): Record<string, string[]> {
  const ids = [...shown].map(([slug, places]): [string, string[]] => [
    slug,
    [...places.values()].flatMap((one) => (one.type === 'number' ? [one.id] : [])),
  ])
  return Object.fromEntries(ids.map(([slug, list]) => [slug, [...new Set(list)]]))
}

/**
 * Notes kept elsewhere find the packages of the kit. A note goes by the path that the ledger has of it,
 * also where that is a link: the bundler would take the file that the link leads to for another one.
 */
function notesResolve(holder: LedgerHolder): Plugin {
  return {
    name: 'worked-notes:resolve',
    enforce: 'pre',
    async resolveId(id, importer) {
      const asked =
        id.startsWith('.') && importer !== undefined ? resolve(dirname(importer), id) : id
      if (holder.ledger.notes.some(({ path }) => path === asked)) return asked
      if (importer === undefined || /^[./\0]/.test(id) || id.startsWith('virtual:')) return null
      const from = importer.split('?')[0] ?? ''
      const inside = from.startsWith(holder.ledger.content + sep) && !from.startsWith(root + sep)
      return inside ? this.resolve(id, resolve(root, 'package.json'), { skipSelf: true }) : null
    },
  }
}

/** What the ledger left out gets into no page by another way either. */
function keepDrafts(holder: LedgerHolder): Plugin {
  return {
    name: 'worked-notes:keep-drafts',
    enforce: 'pre',
    load(id) {
      const path = id.split('?')[0]
      const draft = holder.ledger.drafts.find((one) => one.path === path)
      if (holder.drafts || draft === undefined) return undefined
      return this.error(words`something published takes from ${draft.file}, which is a draft`)
    },
  }
}
