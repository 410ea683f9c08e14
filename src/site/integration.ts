/**
 * The kit inside Astro: hands pages the ledger as data, and in `dev` works it anew when a note, the
 * settings or a calculator changes.
 *
 * Astro's module graphs do not share state, so pages get data from a virtual module and never from
 * `src/ledger`.
 */
import { resolve, sep } from 'node:path'
import { relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import type { Plugin, ViteDevServer } from 'vite'
import { printProblem, summary } from '../cli/print.ts'
import { hasErrors, loadLedger, type Ledger, type Registry } from '../ledger/load.ts'
import type { Published } from '../ledger/published.ts'
import { leanCalculators } from './lean.ts'
import { leanPreload } from './preload.ts'

export interface LedgerHolder {
  ledger: Ledger
}

const virtualName = 'virtual:worked-notes'
const resolvedName = `\0${virtualName}`
const root = resolve(fileURLToPath(new URL('../..', import.meta.url)))

export function workedNotes(holder: LedgerHolder): AstroIntegration {
  return {
    name: 'worked-notes',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({
          vite: {
            plugins: [
              ledgerModule(holder),
              notesResolve(holder),
              watchNotes(holder),
              leanCalculators(),
              leanPreload(),
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

/** `virtual:worked-notes`: the published ledger and the notes' pages. */
function ledgerModule(holder: LedgerHolder): Plugin {
  const place = shelf().size
  shelf().set(place, holder.ledger.published)
  return {
    name: 'worked-notes:ledger',
    resolveId: (id) => (id === virtualName ? resolvedName : undefined),
    load(id) {
      if (id !== resolvedName) return undefined
      const { published, notes } = holder.ledger
      shelf().set(place, published)
      const modules = notes.map(
        ({ slug, path }) => `${JSON.stringify(slug)}: () => import(${JSON.stringify(path)})`,
      )
      // Not `import.meta.env.BASE_URL`, which a variable of the shell of that name would change.
      const base = (holder.ledger.site?.base ?? '/').replace(/\/?$/, '/')
      return [
        `export const base = ${JSON.stringify(base)}`,
        // Not as text: for a large site Vite would read tens of megabytes as program.
        `export const published = globalThis[Symbol.for('${shelfKey}')].get(${place})`,
        `export const shownOn = ${JSON.stringify(shownOn(holder.ledger))}`,
        `export const noteModules = { ${modules.join(', ')} }`,
      ].join('\n')
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

/** Notes kept elsewhere find the packages of the kit. */
function notesResolve(holder: LedgerHolder): Plugin {
  return {
    name: 'worked-notes:resolve',
    enforce: 'pre',
    async resolveId(id, importer) {
      if (importer === undefined || /^[./\0]/.test(id) || id.startsWith('virtual:')) return null
      const from = importer.split('?')[0] ?? ''
      const inside = from.startsWith(holder.ledger.content + sep) && !from.startsWith(root + sep)
      return inside ? this.resolve(id, resolve(root, 'package.json'), { skipSelf: true }) : null
    },
  }
}

function watchNotes(holder: LedgerHolder): Plugin {
  return {
    name: 'worked-notes:watch',
    apply: 'serve',
    configureServer(server) {
      const { content } = holder.ledger
      server.watcher.add(content)
      tell(server, holder.ledger)
      let running = Promise.resolve()
      const changed = (path: string): void => {
        const note = path.startsWith(content + sep) && /\.(mdx|ya?ml)$/.test(path)
        const formula = path.startsWith(resolve(root, 'calculators') + sep)
        if (note || formula) running = running.then(() => again(server, holder))
      }
      server.watcher.on('change', changed).on('add', changed).on('unlink', changed)
    },
  }
}

async function again(server: ViteDevServer, holder: LedgerHolder): Promise<void> {
  // Through Vite, so that an edited formula counts.
  const { calculators }: { calculators?: Registry } = await server.ssrLoadModule(
    resolve(root, 'calculators/index.ts'),
  )
  holder.ledger = await loadLedger(holder.ledger.content, calculators)
  for (const environment of Object.values(server.environments))
    environment.moduleGraph.invalidateAll()
  if (!tell(server, holder.ledger)) server.hot.send({ type: 'full-reload' })
}

/** Problems in the terminal, and errors over the page; true when there are errors. */
function tell(server: ViteDevServer, { content, problems }: Ledger): boolean {
  const folder = relative(process.cwd(), content).replaceAll('\\', '/')
  for (const problem of problems) server.config.logger.warn(printProblem(problem, folder))
  if (!hasErrors(problems)) return false
  const text = problems
    .filter(({ level }) => level === 'error')
    .map((problem) => printProblem(problem, folder))
  server.hot.send({
    type: 'error',
    err: { message: `${summary(problems)}\n\n${text.join('\n\n')}`, stack: '' },
  })
  return true
}
