/**
 * Writing mode: the ledger is worked anew when a note, the settings, a picture or a formula changes, the
 * messages are told in the terminal, and the pages are made again. In: the holder of the ledger. Out: a
 * part of the development server. Pages wait until the ledger has caught up with the files, and are made
 * from the text that the ledger has read, never from a newer one.
 */
import { readdir, stat } from 'node:fs/promises'
import { join, relative, resolve, sep } from 'node:path'
import type { Plugin, ViteDevServer } from 'vite'
import { printProblem } from '../cli/print.ts'
import { hasErrors, loadLedger, type Ledger, type Registry } from '../ledger/load.ts'
import type { Problem } from '../ledger/problems.ts'
import { isPictureAddress } from '../ledger/read/pictures.ts'
import { parseNote, type ParsedNote } from '../mdx/parse.ts'
import { diskWords } from './disk.ts'
import type { LedgerHolder } from './integration.ts'
import { words } from '../words/words.ts'
import { summary } from '../ledger/severity.ts'

/** Remembers each note's text, so that only what changed is read anew. */
function rememberingReader(): typeof parseNote {
  const known = new Map<string, { readonly bytes: Buffer; readonly note: ParsedNote }>()
  return (source, file) => {
    const bytes = Buffer.from(source)
    const before = known.get(file)
    if (before?.bytes.equals(bytes)) return before.note
    const note = parseNote(source, file)
    known.set(file, { bytes, note })
    return note
  }
}

export function watchNotes(holder: LedgerHolder, root: string, virtualId: string): Plugin {
  const read = rememberingReader()
  const { say } = holder
  const formulas = resolve(root, 'calculators') + sep
  const isNotes = (path: string): boolean =>
    path.startsWith(holder.ledger.content + sep) &&
    (/\.(mdx|ya?ml)$/.test(path) || isPictureAddress(path.slice(holder.ledger.content.length)))
  let registry: Registry | undefined
  let formulaChanged = false
  let due = false
  let running: Promise<void> | undefined
  /** Of the files as the ledger has read them. */
  let stamp = ''

  async function again(server: ViteDevServer): Promise<void> {
    while (due) {
      due = false
      try {
        if (formulaChanged) registry = await formulasNow(server, root)
        formulaChanged = false
        const { drafts } = holder
        const before = holder.ledger
        stamp = await writtenOut(before.content)
        const ledger = await loadLedger(before.content, registry, { drafts, read })
        // Read while it was being written: what it says then is nobody's.
        if ((await stampOf(before.content)) !== stamp) due = true
        if (due) continue
        holder.ledger = ledger
        holder.failures.forget()
        tell(holder.ledger, before.problems, say)
        invalidate(server, holder.ledger, virtualId)
        server.hot.send({ type: 'full-reload' })
      } catch (error) {
        say(words`${saidOf(error)}: the pages stand as they were`)
      }
    }
  }

  return {
    name: 'worked-notes:watch',
    apply: 'serve',
    enforce: 'pre',
    configureServer(server) {
      server.watcher.add(holder.ledger.content)
      tell(holder.ledger, [], say)
      const start = (): Promise<void> => {
        due = true
        running ??= again(server).finally(() => {
          running = undefined
          // Of two writes close together the watcher tells only the first.
          setTimeout(() => void catchUp(), 150).unref()
        })
        return running
      }
      const catchUp = async (): Promise<void> => {
        const now = running === undefined ? await stampOf(holder.ledger.content) : stamp
        // A page and the watcher may have asked at once.
        if (running === undefined && now !== stamp) await start()
        else await running
      }
      const changed = (path: string): void => {
        const formula = path.startsWith(formulas)
        if (!formula && !isNotes(path)) return
        if (formula) formulaChanged = true
        void (formula || isPictureAddress(path) ? start() : catchUp())
      }
      void stampOf(holder.ledger.content).then((first) => {
        stamp = first
      })
      server.watcher.on('change', changed).on('add', changed).on('unlink', changed)
      server.middlewares.use((request, _response, next) => {
        const isPage = /\/(?:[?#]|$)/.test(request.url ?? '')
        ;(isPage ? catchUp() : Promise.resolve(running)).then(() => next(), next)
      })
    },
    /** The server's own way would make a page from a text that the ledger has not read. */
    hotUpdate: {
      order: 'pre',
      handler: ({ file }) => (isNotes(resolve(file)) ? [] : undefined),
    },
    load(id) {
      return holder.ledger.notes.find(({ path }) => path === id)?.raw
    },
  }
}

/** Through the server, so that an edited formula counts. */
async function formulasNow(server: ViteDevServer, root: string): Promise<Registry | undefined> {
  const path = resolve(root, 'calculators/index.ts')
  const loaded: { calculators?: Registry } = await server.ssrLoadModule(path)
  return loaded.calculators
}

/** An editor empties a file before it writes it: for a moment the whole is waited for. */
async function writtenOut(content: string): Promise<string> {
  let stamp = await stampOf(content)
  for (let wait = 0; wait < 5 && / 0$/m.test(stamp); wait++) {
    await new Promise((resolve) => setTimeout(resolve, 30))
    stamp = await stampOf(content)
  }
  return stamp
}

/** When the settings and the notes were written, and how long they are. */
async function stampOf(content: string): Promise<string> {
  const notes = await readdir(join(content, 'notes')).catch(() => [])
  const paths = ['site.yaml', ...notes.sort().map((name) => join('notes', name))]
  const marks = await Promise.all(
    paths.map(async (path) => {
      const { mtimeMs, size } = await stat(join(content, path)).catch(() => nowhere)
      return `${path} ${mtimeMs} ${size}`
    }),
  )
  return marks.join('\n')
}

const nowhere = { mtimeMs: 0, size: 0 }

/** The ledger's module and the notes' own, with all that was made from them; the kit's stay. */
function invalidate(server: ViteDevServer, { notes }: Ledger, virtualId: string): void {
  const ids = [virtualId, ...notes.map(({ path }) => path)]
  for (const { moduleGraph } of Object.values(server.environments))
    for (const id of ids) {
      const module = moduleGraph.getModuleById(id)
      if (module !== undefined) moduleGraph.invalidateModule(module)
    }
}

/** New messages in the terminal, and how it stands. */
function tell(ledger: Ledger, before: readonly Problem[], say: (line: string) => void): void {
  const { content, problems } = ledger
  const folder = relative(process.cwd(), content).replaceAll('\\', '/')
  const line = (problem: Problem): string => printProblem(problem, folder)
  const known = new Set(before.map(line))
  const now = problems.map(line)
  for (const text of now) if (!known.has(text)) say(text)
  if (now.length === known.size && now.every((text) => known.has(text))) return
  const mended = hasErrors(before) && !hasErrors(problems)
  const all = summary(problems)
  say(mended ? words`mended: ${all}` : all)
}

/** Never a stack: what the disk said, or the first line of what a formula's author has to know. */
function saidOf(error: unknown): string {
  const said = error instanceof Error ? error.message.split('\n')[0] : undefined
  return diskWords(error) ?? words`something cannot be read just now (${said ?? words`unknown`})`
}
