/**
 * Puts into a finished site the pictures that its pages refer to, and no others: what no page shows is
 * nowhere. In: the site's folder, and every picture of the notes with its path. Out: files in the
 * site's `photos/`; an error when a page asks for one that no note has.
 */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { availableParallelism } from 'node:os'
import { forAll } from './all.ts'
import { picturesFolder, readName, type PictureFacts } from './facts.ts'
import { filesOf } from './make.ts'

const readable = /\.(?:html|xml|json|css|js|webmanifest|txt)$/
const asked = new RegExp(
  `${picturesFolder}/([0-9a-f]{20}(?:-\\d{1,4}\\.(?:avif|webp)|\\.svg))`,
  'g',
)

/** `pictures`: absolute path -> what is known of it. */
export async function publishPictures(
  dist: string,
  pictures: ReadonlyMap<string, PictureFacts>,
  folder?: string,
): Promise<void> {
  const wanted = await namesIn(dist)
  if (wanted.size === 0) return
  const paths = new Map([...pictures].map(([path, facts]) => [facts.key, { path, facts }]))
  const keys = [...new Set([...wanted].flatMap((name) => readName(name)?.key ?? []))].sort()
  await mkdir(join(dist, picturesFolder), { recursive: true })
  await forAll(keys, Math.min(4, availableParallelism()), async (key) => {
    const picture = paths.get(key)
    if (picture === undefined) return
    for (const [name, bytes] of await filesOf(picture.path, picture.facts, folder))
      if (wanted.delete(name)) await writeFile(join(dist, picturesFolder, name), bytes)
  })
  const [missing] = wanted
  if (missing !== undefined)
    throw new Error(`a page shows the picture ${picturesFolder}/${missing}, which no note has`)
}

async function namesIn(dist: string): Promise<Set<string>> {
  const names = new Set<string>()
  for (const file of await readdir(dist, { recursive: true })) {
    if (!readable.test(file)) continue
    const text = await readFile(join(dist, file), 'utf8')
    for (const [, name = ''] of text.matchAll(asked)) names.add(name)
  }
  return names
}
