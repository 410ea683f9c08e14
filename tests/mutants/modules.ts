/**
 * The kit's files as functions, so that one of them can be exchanged and all that rests on it made anew
 * within a millisecond. In: paths below the root. Out: what they export, with or without an exchange.
 *
 * Files are turned into CommonJS once and kept; packages and Node's own modules are imported as they are
 * and handed over by `packages`. A module that waits at its top (`await`) must be given as a stand-in.
 */
import { readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import ts from 'typescript'

export const root = resolve(import.meta.dirname, '../..')

export type Exports = Record<string, unknown>
type Body = (exports: Exports, require: (name: string) => unknown, meta: object) => void

const compilerOptions = {
  module: ts.ModuleKind.CommonJS,
  target: ts.ScriptTarget.ES2024,
  esModuleInterop: true,
  verbatimModuleSyntax: false,
}

export interface Exchange {
  readonly path: string
  readonly text: string
}

export interface Modules {
  /** Files that import `path`, directly or through others. */
  restOn(path: string): ReadonlySet<string>
  /** Whether a file imports `path` itself. */
  imports(file: string, path: string): boolean
  /** Loads a file; what the exchange or a stand-in reaches is made anew, once for each loader. */
  loader(exchange: Exchange, packages: Packages, standIns: StandIns): (path: string) => Exports
}

export type Packages = ReadonlyMap<string, unknown>
/** Instead of a file: what it exports, made with the loader at hand. */
export type StandIns = ReadonlyMap<string, (load: (path: string) => Exports) => Exports>

export function makeModules(files: readonly string[]): Modules {
  const bodies = new Map<string, Body>()
  const base = new Map<string, Exports>()
  const importsOf = new Map(files.map((path) => [path, imported(path)] as const))

  const compile = (path: string, text: string): Body => {
    const { outputText } = ts.transpileModule(text.replaceAll('import.meta', '__meta'), {
      compilerOptions,
      fileName: path,
    })
    // A changed module is made in this process: that is what this script is for.
    // eslint-disable-next-line @typescript-eslint/no-implied-eval
    const made: unknown = new Function('exports', 'require', '__meta', outputText)
    if (!isBody(made)) throw new Error(`${path} could not be turned into a function`)
    return made
  }
  const bodyOf = (path: string): Body => {
    const known = bodies.get(path) ?? compile(path, readFileSync(join(root, path), 'utf8'))
    bodies.set(path, known)
    return known
  }

  const restOn = (path: string): Set<string> => {
    const found = new Set([path])
    // A set that grows while it is walked is walked to its new end.
    for (const one of found) for (const [file, its] of importsOf) if (its.has(one)) found.add(file)
    return found
  }

  const loader: Modules['loader'] = (exchange, packages, standIns) => {
    const own = new Map<string, Exports>()
    const anew = new Set([exchange.path, ...standIns.keys()].flatMap((path) => [...restOn(path)]))
    const load = (path: string): Exports => {
      const store = anew.has(path) ? own : base
      const known = store.get(path)
      if (known) return known
      const standIn = standIns.get(path)
      const exports: Exports = standIn ? standIn(load) : {}
      store.set(path, exports)
      if (standIn) return exports
      const body = path === exchange.path ? compile(path, exchange.text) : bodyOf(path)
      const require = (name: string): unknown =>
        name.startsWith('.')
          ? load(join(dirname(path), name))
          : (packages.get(name) ?? missing(name, path))
      const whole = join(root, path)
      body(exports, require, { url: pathToFileURL(whole).href, dirname: dirname(whole) })
      return exports
    }
    return load
  }

  return { restOn, imports: (file, path) => importsOf.get(file)?.has(path) === true, loader }
}

const isBody = (value: unknown): value is Body => typeof value === 'function'

function missing(name: string, path: string): never {
  throw new Error(`${path} imports ${name}, which is not handed over`)
}

/** What a file imports of the kit for its values; types leave no trace. */
function imported(path: string): ReadonlySet<string> {
  const text = readFileSync(join(root, path), 'utf8')
  const { outputText } = ts.transpileModule(text, { compilerOptions, fileName: path })
  return new Set(
    [...outputText.matchAll(/require\("(\.[^"]+)"\)/g)].map(([, name = '']) =>
      relative(root, resolve(root, dirname(path), name)),
    ),
  )
}
