/**
 * A finished site for the tests. In: a content folder. Out: the folder of the site, its files and its
 * pages; `remove` takes it away again.
 *
 * The same notes are built once in a run, by whichever file asks first; each asks for a copy of its own,
 * so that it may alter what it likes. What is built is named by all bytes that it is made of.
 */
import { createHash } from 'node:crypto'
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve, sep } from 'node:path'
import { inject } from 'vitest'
import { takeLock } from '../../src/site/lock.ts'

export const root = resolve(import.meta.dirname, '../..')
/** A small site of the tests' own, below a sub-path. */
export const small = join(root, 'tests/build/fixtures/sub-path')
/** A small site with a page of every kind. */
export const workshop = join(root, 'tests/build/fixtures/workshop')
/** What a builder finds in the kit, and replaces. */
export const demo = join(root, 'content')

export interface Built {
  readonly folder: string
  readonly said: readonly string[]
  /** Path within the site -> bytes. */
  readonly files: ReadonlyMap<string, Buffer>
  /** Path within the site -> HTML. */
  readonly pages: ReadonlyMap<string, string>
  readonly numbersJson: string
  readonly remove: () => Promise<void>
}

export const temporaryFolder = (): Promise<string> => mkdtemp(join(tmpdir(), 'site-'))

/** Every file below a folder, by its path with `/`. */
export async function filesIn(folder: string): Promise<Map<string, Buffer>> {
  const files = new Map<string, Buffer>()
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true }))
    if (entry.isFile()) {
      const path = join(entry.parentPath, entry.name)
      files.set(
        path
          .slice(folder.length + 1)
          .split(sep)
          .join('/'),
        await readFile(path),
      )
    }
  return new Map([...files].sort(([a], [b]) => (a < b ? -1 : 1)))
}

export async function builtSite(content: string): Promise<Built> {
  const once = await builtOnce(content)
  const folder = join(await temporaryFolder(), 'dist')
  await cp(join(once, 'dist'), folder, { recursive: true })
  const files = await filesIn(folder)
  const pages = new Map(
    [...files]
      .filter(([name]) => name.endsWith('.html'))
      .map(([name, bytes]) => [name, bytes.toString('utf8')]),
  )
  return {
    folder,
    said: (await readFile(join(once, 'said'), 'utf8')).split('\n'),
    files,
    pages,
    numbersJson: files.get('numbers.json')?.toString('utf8') ?? '',
    remove: () => rm(resolve(folder, '..'), { recursive: true, force: true }),
  }
}

/** The folder of this run's build of these notes. */
async function builtOnce(content: string): Promise<string> {
  const folder = join(inject('builds'), await nameOf(content))
  const free = await takeLock(`${folder}.lock`, () => undefined)
  try {
    if (await isThere(join(folder, 'said'))) return folder
    const said: string[] = []
    // Only now: it brings the whole of the site builder with it.
    const { buildSite } = await import('../../src/site/build.ts')
    const out = join(folder, 'dist')
    await mkdir(folder, { recursive: true })
    const done = await buildSite({ root, content, out, say: (line) => said.push(line) })
    if (!done) throw new Error(said.join('\n'))
    await writeFile(join(folder, 'said'), said.join('\n'))
    return folder
  } finally {
    await free()
  }
}

/** What a site is made of besides its notes. */
const kit = ['src', 'calculators', 'components', 'public', 'package.json', 'package-lock.json']

let ofKit: Promise<string> | undefined

async function nameOf(content: string): Promise<string> {
  const { SITE_URL = '', BASE_PATH = '' } = process.env
  ofKit ??= digestOf(kit.map((name) => join(root, name)))
  const parts = [SITE_URL, BASE_PATH, await ofKit, await digestOf([content])]
  return createHash('sha256').update(parts.join('\n')).digest('hex').slice(0, 20)
}

/** Of every file in these places, by name and bytes. */
async function digestOf(parts: readonly string[]): Promise<string> {
  const hash = createHash('sha256')
  for (const part of parts) {
    const files = part.endsWith('.json')
      ? new Map([[part, await readFile(part)]])
      : await filesIn(part)
    for (const [name, bytes] of files) hash.update(`${name}\n${bytes.length}\n`).update(bytes)
  }
  return hash.digest('hex')
}

const isThere = (file: string): Promise<boolean> =>
  readFile(file).then(
    () => true,
    () => false,
  )

/** A copy of a content folder that a test may change. */
export async function copyOf(content: string): Promise<string> {
  const folder = await temporaryFolder()
  await cp(content, folder, { recursive: true })
  return folder
}
