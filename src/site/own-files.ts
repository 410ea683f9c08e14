/**
 * What a build made in the folder of a site, and what lies there besides. Every site has the list of its
 * files in it, so that the next build replaces these and loses nothing else. In: a folder. Out: the names
 * at its top that are carried over into the next site; a `UsageError` that names whatever else is not the
 * kit's.
 */
import { readdir, readFile, writeFile } from 'node:fs/promises'
import { join, sep } from 'node:path'
import { UsageError } from '../cli/options.ts'
import { parsedJson } from '../ledger/json.ts'
import { words } from '../words/words.ts'

export const listFile = 'site-files.json'

/** Of a host or of git, and never looked into: `.git`, `.htaccess`, `.well-known`, `CNAME`. */
export const isOfHost = (file: string): boolean => file.startsWith('.') || file === 'CNAME'

/** Written by file managers into every folder that is looked at. */
const isLitter = (file: string): boolean =>
  /(?:^|\/)(?:\.DS_Store|Thumbs\.db|desktop\.ini)$/.test(file)

/** A site that was made before there was a list. */
const beforeLists =
  /^(?:_astro\/|_headers$|404\.html$|calculators\/|favicon\.svg$|feed\.xml$|index\.html$|notes\/|numbers\/|numbers\.(?:csv|json)$|offline-worker\.js$|open\/|parts\/|photos\/|robots\.txt$|search\/|sitemap(?:-\d+)?\.xml$|sources\/|tables\/|writing\/)/

/** Last of all that is made. */
export async function writeList(folder: string): Promise<void> {
  const files = [...(await filesIn(folder)), listFile].sort()
  await writeFile(join(folder, listFile), `${JSON.stringify(files, null, 1)}\n`)
}

/** `next`: the folder of the site that shall come here, when it is made. */
export async function carriedOver(folder: string, next?: string): Promise<readonly string[]> {
  const made = await madeIn(folder)
  const others = (await filesIn(folder)).filter((file) => !made(file) && !isLitter(file))
  const kept = new Set(others.filter(mayStay).map((file) => file.split('/')[0] ?? file))
  const foreign = others.filter((file) => !mayStay(file))
  if (foreign.length > 0) throw new UsageError(foreignWords(folder, foreign, made('numbers.json')))
  const taken = next === undefined ? [] : (await readdir(next)).filter((name) => kept.has(name))
  if (taken.length > 0)
    throw new UsageError(
      words`the new site has ${namesOf(taken)} of its own, and what is so called in \`${folder}\` no build made: move it elsewhere`,
    )
  return [...kept].sort()
}

const mayStay = (file: string): boolean => isOfHost(file) || file === 'robots.txt'

/** Which files of a folder the kit made: none where it holds no site. */
async function madeIn(folder: string): Promise<(file: string) => boolean> {
  const there = await textIn(folder, 'numbers.json')
  if (there === undefined) return () => false
  const list = parsedJson((await textIn(folder, listFile)) ?? '')
  if (!Array.isArray(list)) return (file) => beforeLists.test(file)
  const files = new Set<unknown>(list)
  // A host may want each file in a packed form beside it.
  return (file) => files.has(file.replace(/\.(?:br|gz|zst)$/, '')) || files.has(file)
}

const textIn = (folder: string, name: string): Promise<string | undefined> =>
  readFile(join(folder, name), 'utf8').catch(() => undefined)

/** Everything that is no folder, by its path with `/`. */
async function filesIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(
    (error: unknown) => {
      if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return []
      throw error
    },
  )
  return entries
    .filter((entry) => !entry.isDirectory())
    .map(({ parentPath, name }) => join(parentPath, name).slice(folder.length + 1))
    .map((path) => path.split(sep).join('/'))
    .sort()
}

function foreignWords(folder: string, foreign: readonly string[], isSite: boolean): string {
  if (!isSite)
    return words`${folder} holds other files and no site of this kit: name an empty or a new folder`
  return words`\`${folder}\` holds what no build of this kit made, and a build would replace it: ${namesOf(foreign)}. Move it elsewhere (names at the top that begin with a dot, \`CNAME\` and \`robots.txt\` may stay)`
}

function namesOf(files: readonly string[]): string {
  const [first, more] = [files.slice(0, 5), files.length - 5]
  const named = first.map((file) => `\`${file}\``).join(', ')
  return more > 0 ? words`${named} and ${more} more` : named
}
