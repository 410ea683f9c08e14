/**
 * Whether a finished site gives away what a camera wrote beside a picture. In: the site's folder, and
 * the builder's own picture files. Out: each file that holds a position, a name, a serial number or
 * any other record, and each that is an original.
 *
 * Files are known by their bytes, not by their names, and pictures written into text (`data:…`) are
 * looked at as well. A drawing must pass what the drawings of notes pass.
 */
import { createHash } from 'node:crypto'
import { readdir, readFile, stat } from 'node:fs/promises'
import { join, sep } from 'node:path'
import sharp from 'sharp'
import { forAll } from './all.ts'
import { readDrawing } from './drawing.ts'
import { isRaster, sniff } from './sniff.ts'
import { words } from '../words/words.ts'

export interface Left {
  /** Within the site. */
  readonly file: string
  readonly text: string
}

/**
 * `originals`: absolute paths of the builder's picture files, by the name a message calls them;
 * `isOthers`: what in the folder is not of the site.
 */
export async function picturesLeft(
  dist: string,
  originals: ReadonlyMap<string, string> = new Map(),
  isOthers: (file: string) => boolean = () => false,
): Promise<readonly Left[]> {
  const entries = await readdir(dist, { recursive: true, withFileTypes: true })
  const files = entries
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .filter((path) => !isOthers(within(dist, path)))
    .sort()
  const sizes = await sizesOf(originals)
  const found = await forAll(files, 4, async (path): Promise<Left[]> => {
    const file = within(dist, path)
    const bytes = await readFile(path)
    const texts = await inFile(file, bytes)
    for (const [name, original] of sizes.get(bytes.length) ?? [])
      if (digest(await readFile(original)) === digest(bytes))
        texts.push(words`is \`${name}\` as it came; a note shows it with \`![what it shows](./…)\``)
    return texts.map((text) => ({ file, text }))
  })
  return found.flat()
}

const within = (folder: string, path: string): string =>
  path
    .slice(folder.length + 1)
    .split(sep)
    .join('/')

/** Every photo in the content folder, named or not, by its path there. */
export async function originalsIn(content: string): Promise<ReadonlyMap<string, string>> {
  const names = await readdir(content, { recursive: true })
  const photos = names.filter((name) => /\.(?:avif|gif|hei[cf]|jpe?g|png|tiff?|webp)$/i.test(name))
  return new Map(photos.sort().map((name) => [name.split(sep).join('/'), join(content, name)]))
}

async function inFile(file: string, bytes: Buffer): Promise<string[]> {
  const kind = sniff(bytes)
  // Its records cannot all be read, and no browser needs one.
  if (kind === 'tiff') return [words`is a TIFF, which may hold any record`]
  if (isRaster(kind)) return inRaster(bytes)
  if (file.endsWith('.svg')) {
    const drawing = readDrawing(bytes.toString('utf8'), file)
    return 'rule' in drawing ? [drawing.text] : []
  }
  if (kind !== 'text' && kind !== 'drawing') return []
  const written = bytes.toString('utf8').matchAll(/data:image\/[a-z+.-]+;base64,([\w+/=]+)/gi)
  const found: string[] = []
  for (const [, base64 = ''] of written) {
    const inside = Buffer.from(base64, 'base64')
    if (isRaster(sniff(inside))) found.push(...(await inRaster(inside)))
  }
  return found
}

async function inRaster(bytes: Buffer): Promise<string[]> {
  try {
    const read = await sharp(bytes, { limitInputPixels: false }).metadata()
    const records = [
      read.exif && words`EXIF (place, time, camera)`,
      read.xmp && words`XMP (owner, program)`,
      read.iptc && words`IPTC (owner, place)`,
      read.tifftagPhotoshop && words`a record of a picture program`,
      read.icc && words`a colour profile (camera or screen)`,
      read.comments && words`a comment`,
      read.orientation !== undefined &&
        read.orientation > 1 &&
        words`a note that it is to be turned`,
    ].filter((one) => typeof one === 'string')
    return records.length === 0 ? [] : [words`still holds ${records.join(', ')}`]
  } catch {
    return [words`is a picture that cannot be read`]
  }
}

async function sizesOf(
  originals: ReadonlyMap<string, string>,
): Promise<ReadonlyMap<number, readonly (readonly [name: string, path: string])[]>> {
  const sizes = new Map<number, (readonly [string, string])[]>()
  for (const [name, path] of originals) {
    const size = await stat(path).then(
      (one) => (one.isFile() ? one.size : 0),
      () => 0,
    )
    if (size > 0) sizes.set(size, [...(sizes.get(size) ?? []), [name, path]])
  }
  return sizes
}

const digest = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')
