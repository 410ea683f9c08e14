/**
 * Builds a site for the tests, as the command does. In: a content folder. Out: the folder of the
 * site, its files and its pages; `remove` takes it away again.
 */
import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve, sep } from 'node:path'
import { buildSite } from '../../src/site/build.ts'

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
  const folder = join(await temporaryFolder(), 'dist')
  const said: string[] = []
  const done = await buildSite({ root, content, out: folder, say: (line) => said.push(line) })
  if (!done) throw new Error(said.join('\n'))
  const files = await filesIn(folder)
  const pages = new Map(
    [...files]
      .filter(([name]) => name.endsWith('.html'))
      .map(([name, bytes]) => [name, bytes.toString('utf8')]),
  )
  return {
    folder,
    said,
    files,
    pages,
    numbersJson: files.get('numbers.json')?.toString('utf8') ?? '',
    remove: () => rm(resolve(folder, '..'), { recursive: true, force: true }),
  }
}

/** A copy of a content folder that a test may change. */
export async function copyOf(content: string): Promise<string> {
  const folder = await temporaryFolder()
  await cp(content, folder, { recursive: true })
  return folder
}
