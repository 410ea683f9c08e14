/**
 * Where a site may be made. In: the kit's own folder, the notes', and where the site shall go. Out: where
 * it really goes, links followed; a `UsageError` where a build would replace, or publish, what is not its
 * own.
 */
import { readlink, realpath, stat } from 'node:fs/promises'
import { basename, dirname, join, resolve, sep } from 'node:path'
import { UsageError } from '../cli/options.ts'
import { words } from '../words/words.ts'

/** The kit's own, which a build reads or works in. */
const ofKit = [
  ...['.ci', '.git', '.worked-notes/cache', 'calculators', 'components', 'content'],
  ...['node_modules', 'public', 'src', 'tests'],
]

export interface Places {
  readonly root: string
  readonly content: string
  readonly out: string
}

export async function placeOfSite({ root, content, out }: Places): Promise<string> {
  await refuseFile(out)
  const [kit, notes, site] = await Promise.all([
    realFolder(root),
    realFolder(content),
    realFolder(out),
  ])
  const elsewhere = words`name another folder, such as \`--out ../my-site\``
  if (site === notes) throw refused(words`\`${out}\` is the folder of the notes`, elsewhere)
  if (isInside(notes, site))
    throw refused(
      words`\`${out}\` has the folder of the notes in it, and a build replaces the whole folder`,
      elsewhere,
    )
  if (isInside(site, notes))
    throw refused(
      words`\`${out}\` lies in the folder of the notes, where the next build would read it as theirs`,
      elsewhere,
    )
  const own = await Promise.all(ofKit.map((name) => realFolder(join(kit, name))))
  if (own.some((one) => one === site || isInside(site, one) || isInside(one, site)))
    throw refused(words`\`${out}\` belongs to the kit itself`, elsewhere)
  return site
}

const refused = (why: string, instead: string): UsageError => new UsageError(`${why}: ${instead}`)

const isInside = (path: string, folder: string): boolean =>
  path.startsWith(folder.endsWith(sep) ? folder : folder + sep)

/** Neither the folder nor one above it may be a file. */
async function refuseFile(out: string): Promise<void> {
  for (let path = out; ; path = dirname(path)) {
    const there = await stat(path).catch(() => undefined)
    if (there?.isDirectory() === true || dirname(path) === path) return
    if (there !== undefined)
      throw new UsageError(
        words`\`${path}\` is a file: the site is a folder, name one with \`--out\``,
      )
  }
}

/** Without links, also where nothing is there yet. */
async function realFolder(path: string): Promise<string> {
  try {
    return await realpath(path)
  } catch (error) {
    if (dirname(path) === path || isCircle(error)) return path
    const above = await realFolder(dirname(path))
    const target = await readlink(path).catch(() => undefined)
    return target === undefined ? join(above, basename(path)) : realFolder(resolve(above, target))
  }
}

const isCircle = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ELOOP'
