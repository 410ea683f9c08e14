/**
 * The changes of one file, each put to the tests. In (workerData): the file, from which change on. Out
 * (messages): one for each change, with the words of the test that noticed it, or none.
 *
 * Tests that import the file come first; then examples, outside rows, contract and properties of every
 * calculator that rests on it, and last those calculators' own tests.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parentPort, workerData } from 'node:worker_threads'
import fc from 'fast-check'
import temml from 'temml'
import { changed, changesIn, type Change } from './find.ts'
import { makeModules, root, type Exports } from './modules.ts'
import { firstFailure, newSuite } from './suite.ts'

export interface Noticed {
  readonly index: number
  readonly change: Change
  /** Empty: it survives. */
  readonly by: string
}

// The same inputs at every run, so that a survivor stays one.
fc.configureGlobal({ seed: 1 })

const every = '*'
const listOf = 'tests/calculators/all.ts'
const tests = readdirSync(join(root, 'tests/calculators'))
  // Bad input is about reading, which no change here touches.
  .filter((name) => name.endsWith('.test.ts') && name !== 'bad-input.test.ts')
  .map((name) => `tests/calculators/${name}`)
const files = ['calculators', 'src/quantity', 'src/ledger', 'tests/calculators', 'tests/reference']
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((name) =>
      join(folder, name),
    ),
  )
  .filter((name) => name.endsWith('.ts'))

const own = (name: string, module: object): readonly [string, object] => [
  name,
  { __esModule: true, ...module },
]
const packages = new Map<string, object>([
  own('#words', await import('#words')),
  own('fast-check', await import('fast-check')),
  own('temml', { default: temml }),
  own('node:fs', await import('node:fs')),
  own('node:fs/promises', await import('node:fs/promises')),
  own('node:os', await import('node:os')),
  own('node:path', await import('node:path')),
])
const modules = makeModules(files)

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null

function calculatorIn(exports: Exports): unknown {
  return Object.values(exports).find(
    (value) => isRecord(value) && 'compute' in value && 'id' in value,
  )
}

const idOf = (path: string): string => path.replace(/^.*\//, '').replace('.ts', '')

function planFor(path: string) {
  const resting = modules.restOn(path)
  const calculators = files.filter(
    (file) => /^calculators\/(?!tables\/)\w+\//.test(file) && resting.has(file),
  )
  const general = tests.filter((test) => modules.imports(test, listOf))
  const direct = tests.filter((test) => !general.includes(test) && modules.imports(test, path))
  const others = tests.filter(
    (test) => !general.includes(test) && !direct.includes(test) && resting.has(test),
  )
  return { calculators, general, direct, others }
}

async function noticedBy(
  path: string,
  text: string,
  { calculators, general, direct, others }: ReturnType<typeof planFor>,
): Promise<string | undefined> {
  const suite = newSuite()
  const all = (load: (path: string) => Exports): Exports => ({
    all: calculators.map((file) => calculatorIn(load(file))),
    found: [],
  })
  const load = modules.loader(
    { path, text },
    new Map([...packages, ['vitest', suite.api]]),
    new Map([[listOf, all]]),
  )
  const ids = new Set(calculators.map(idOf))
  const ofThese = ([name = every]: readonly string[]): boolean => ids.has(name)
  try {
    for (const test of [...direct, ...general, ...others]) {
      load(test)
      const cases = suite.taken()
      const failure = await firstFailure(cases, general.includes(test) ? ofThese : undefined)
      if (failure !== undefined) return `${idOf(test)}: ${failure}`
    }
  } catch (error) {
    return `does not load: ${error instanceof Error ? error.message : String(error)}`
  }
  return undefined
}

const { path, from } = workerData as { readonly path: string; readonly from: number }
const text = readFileSync(join(root, path), 'utf8')
const plan = planFor(path)
if (from === 0) {
  const wrong = await noticedBy(path, text, plan)
  if (wrong !== undefined) throw new Error(`${path} fails unchanged: ${wrong}`)
}
for (const [index, change] of changesIn(path, text).entries()) {
  if (index < from) continue
  if (change.spared !== undefined) {
    parentPort?.postMessage({ index, change, by: '' } satisfies Noticed)
    continue
  }
  const by = (await noticedBy(path, changed(text, change), plan)) ?? ''
  const noticed: Noticed = { index, change, by: by.slice(0, 300) }
  parentPort?.postMessage(noticed)
}
