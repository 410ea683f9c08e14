/**
 * `npm run mutants`: changes every constant and sign of the calculators by a little, one at a time, and
 * shows whether the tests notice. `-- --only pump-and-loop,coolant` for some files, `-- --all` to list
 * every survivor (else the first of each file).
 *
 * Prints a line a file and writes `.worked-notes/mutants.json`. Nothing fails here: it is a measurement
 * of the tests. What is changed, and what not, is said in `find.ts`.
 */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import { basename, join } from 'node:path'
import { parseArgs } from 'node:util'
import { Worker } from 'node:worker_threads'
import { changesIn, kinds, type Change, type Kind } from './find.ts'
import { root } from './modules.ts'
import type { Noticed } from './worker.ts'

const longest = 60_000
const aim = 95

const { values } = parseArgs({
  options: { only: { type: 'string' }, all: { type: 'boolean' }, tables: { type: 'boolean' } },
})
const wanted = values.only?.split(',')

interface Result {
  readonly path: string
  readonly noticed: readonly Noticed[]
  readonly spared: number
  readonly error?: string
}

/** Runs a file's changes in a thread of its own; one that does not end is ended, and counts as noticed. */
async function putToTests(path: string): Promise<Result> {
  const text = await readFile(join(root, path), 'utf8')
  const changes = changesIn(path, text)
  const noticed: Noticed[] = []
  for (let from = 0; from < changes.length;) {
    const end = await thread(path, from, (one) => noticed.push(one))
    if (end === 'done') break
    if (end !== 'endless') return { path, noticed, spared: 0, error: end }
    from = noticed.length
    const change = changes[from]
    if (change) noticed.push({ index: from, change, by: `does not end in ${longest / 1000} s` })
    from++
  }
  const counting = noticed.filter(({ change }) => change.spared === undefined)
  return { path, noticed: counting, spared: noticed.length - counting.length }
}

function thread(path: string, from: number, take: (one: Noticed) => void): Promise<string> {
  return new Promise((done) => {
    const worker = new Worker(join(import.meta.dirname, 'worker.ts'), {
      workerData: { path, from },
    })
    const give = (): void => {
      done('endless')
      void worker.terminate()
    }
    let watch = setTimeout(give, longest)
    worker.on('message', (one: Noticed) => {
      clearTimeout(watch)
      watch = setTimeout(give, longest)
      take(one)
    })
    worker.on('error', (error) => {
      clearTimeout(watch)
      done(error instanceof Error ? error.message : String(error))
    })
    worker.on('exit', () => {
      clearTimeout(watch)
      done('done')
    })
  })
}

const folder = join(root, 'calculators')
const notCode = new Set(['define.ts', 'plot.ts', 'hazards.ts', 'hazard-names.ts', 'index.ts'])
const paths = (await readdir(folder, { recursive: true }))
  .filter((name) => name.endsWith('.ts') && !notCode.has(basename(name)))
  .filter((name) => values.tables === true || !name.startsWith('tables/'))
  .map((name) => `calculators/${name}`)
  .filter((path) => wanted === undefined || wanted.includes(basename(path, '.ts')))
  .sort()

const percent = (part: number, whole: number): string =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`
const killed = (list: readonly Noticed[]): number => list.filter(({ by }) => by !== '').length
const survivors = (list: readonly Noticed[]): readonly Change[] =>
  list.flatMap(({ by, change }) => (by === '' ? [change] : []))
const ofKind = (list: readonly Noticed[], kind: Kind): readonly Noticed[] =>
  list.filter(({ change }) => change.kind === kind)

const queue = [...paths]
const results: Result[] = []
async function workOff(): Promise<void> {
  for (let path = queue.shift(); path !== undefined; path = queue.shift()) {
    const start = performance.now()
    const result = await putToTests(path)
    results.push(result)
    const { noticed, error, spared } = result
    const shares = kinds.map((kind) => {
      const list = ofKind(noticed, kind)
      return `${kind} ${killed(list)}/${list.length}`
    })
    console.log(
      error ??
        `${path}: ${percent(killed(noticed), noticed.length)} (${shares.join(', ')}${spared > 0 ? `, ${spared} spared` : ''}), ${((performance.now() - start) / 1000).toFixed(0)} s`,
    )
  }
}
await Promise.all(Array.from({ length: availableParallelism() }, workOff))
results.sort((a, b) => (a.path < b.path ? -1 : 1))

const told = (path: string, { line, column, from, to, context }: Change): string =>
  `  ${path}:${line}:${column} ${from} → ${to}   ${context}`
console.log('\nSurvivors')
for (const { path, noticed } of results) {
  const list = survivors(noticed)
  const shown = values.all === true ? list : list.slice(0, 5)
  for (const change of shown) console.log(told(path, change))
  if (shown.length < list.length) console.log(`  ${path}: and ${list.length - shown.length} more`)
}

const everything = results.flatMap(({ noticed }) => noticed)
const shareOf = (list: readonly Noticed[]) => ({ killed: killed(list), of: list.length })
console.log(
  `\nIn all ${percent(killed(everything), everything.length)} of ${everything.length} changes noticed (aim: ${aim} %): ${kinds.map((kind) => `${kind} ${percent(killed(ofKind(everything, kind)), ofKind(everything, kind).length)}`).join(', ')}`,
)
await mkdir(join(root, '.worked-notes'), { recursive: true })
await writeFile(
  join(root, '.worked-notes', values.only === undefined ? 'mutants.json' : 'mutants-some.json'),
  `${JSON.stringify(
    {
      all: shareOf(everything),
      kinds: Object.fromEntries(kinds.map((kind) => [kind, shareOf(ofKind(everything, kind))])),
      files: results.map(({ path, noticed, spared, error }) => ({
        path,
        ...shareOf(noticed),
        spared,
        ...(error === undefined ? {} : { error }),
        survivors: survivors(noticed).map(({ line, column, kind, from, to, context }) => ({
          line,
          column,
          kind,
          from,
          to,
          context,
        })),
      })),
    },
    null,
    2,
  )}\n`,
)
