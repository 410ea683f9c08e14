/**
 * The benchmarks: `npm run bench`. With `-- --only solve`, `reader`, `site` or `photos` one part alone;
 * with `-- --notes N`, `-- --photos N` and `-- --pairs N` a shorter look at the site.
 *
 * solve: a loop's flow against CPython, and each calculator's time. reader: from a key to the page laid
 * out again. site: builds, ledger, script. photos: builds of notes with photos, which take so long that they
 * are left out where no part is named.
 *
 * Prints tables and writes what it measured to `.worked-notes/bench.json`. Nothing fails here: these
 * are measurements. What is solved comes first, in a process that has done nothing else yet.
 */
import { mkdir, writeFile } from 'node:fs/promises'
import { cpus } from 'node:os'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { blocksInNote } from './notes.ts'
import { photoTimes } from './photos.ts'
import { readerTimes } from './reader.ts'
import { siteTimes } from './site.ts'
import { solveTimes, type Row } from './solve.ts'

const folder = resolve(import.meta.dirname, '../../.worked-notes')
const { values } = parseArgs({
  options: {
    only: { type: 'string' },
    notes: { type: 'string', default: '300' },
    photos: { type: 'string', default: '600' },
    pairs: { type: 'string' },
  },
})
const { only } = values
const parts = ['solve', 'reader', 'site', 'photos']
if (only !== undefined && !parts.includes(only))
  throw new Error(`--only ${only}: ${parts.join(', ')}`)
const wanted = (part: string): boolean => only === undefined || only === part
const many = Number(values.notes)
const processors = cpus()

function print(title: string, rows: readonly Row[]): void {
  const widths = [0, 1].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)))
  console.log(`\n${title}, Node ${process.version}, ${processors.length} processors\n`)
  for (const [what, value, remark] of rows)
    console.log(
      `${what.padEnd(widths[0] ?? 0)}  ${value.padStart(widths[1] ?? 0)}  ${remark}`.trimEnd(),
    )
}

const solve = wanted('solve') ? await solveTimes() : undefined
if (solve !== undefined) print('Solving', solve.rows)
const reader = wanted('reader') ? await readerTimes() : undefined
if (reader !== undefined) print('A reader’s change, processor slowed four times', reader.rows)
const site = wanted('site') ? await siteTimes(many, Number(values.pairs ?? 5)) : undefined
if (site !== undefined) print(`${many} notes of ${blocksInNote} blocks`, site.rows)
const photos =
  only === 'photos'
    ? await photoTimes(many, Number(values.photos), Number(values.pairs ?? 1))
    : undefined
if (photos !== undefined) print(`${many} notes with ${values.photos} photos`, photos.rows)

const machine = {
  node: process.version,
  processors: processors.length,
  model: processors[0]?.model ?? '',
}
const result = {
  machine,
  ...site?.result,
  ...(solve && { solve: solve.result }),
  ...(reader && { reader: reader.result }),
  ...(photos && { photos: photos.result }),
}
await mkdir(folder, { recursive: true })
await writeFile(join(folder, 'bench.json'), `${JSON.stringify(result, null, 2)}\n`)
