/**
 * Measures a site of notes with photos: cold, when no copy of a photo was ever made, and warm, when the
 * next build finds them. In: how many notes, how many photos, how many pairs. Out: numbers, and rows to print.
 *
 * The site to compare with is plain Astro with the same notes typed by hand and the same photos as
 * ordinary Markdown pictures, made by Astro's own service in the same widths and formats, and at the same
 * quality and effort: at the effort that AVIF has there by itself, plain Astro would take many times as long.
 * Photos are as wide as messengers send them. A camera's own have six times the pixels, and on two
 * processors a pair of builds would take an hour.
 */
import { link, mkdir, readdir, rm, stat, writeFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import sharp from 'sharp'
import { forAll } from '../../src/photos/all.ts'
import { cacheFolder } from '../../src/photos/cache.ts'
import { widthsOf } from '../../src/photos/facts.ts'
import { keyOf } from '../../src/photos/look.ts'
import { makeNotes, writeNotes } from './notes.ts'
import { writePlainSite } from './plain.ts'
import { median, secondsOf } from './timing.ts'
import type { Row } from './solve.ts'

const root = resolve(import.meta.dirname, '../..')
const folder = join(root, '.worked-notes', 'bench-photos')
const [width, height] = [1600, 1200]

/** Numbers in 0…255, the same for the same seed. */
function noise(many: number, seed: number): Buffer {
  const bytes = Buffer.alloc(many)
  let state = (seed * 2654435761 + 1) >>> 0
  for (let index = 0; index < many; index++) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    bytes[index] = state >>> 24
  }
  return bytes
}

/** Soft surfaces, edges at two sizes and the grain of a sensor: about as many bytes as a photograph. */
async function photoLike(index: number): Promise<Buffer> {
  const layer = (wide: number, high: number, seed: number, alpha: number) =>
    sharp(noise(wide * high * 3, seed), { raw: { width: wide, height: high, channels: 3 } })
      .resize(width, height, { fit: 'fill', kernel: 'cubic' })
      .ensureAlpha(alpha)
      .raw()
      .toBuffer()
  const raw = { width, height, channels: 4 } as const
  const over = [
    await layer(80, 60, index * 3 + 1, 0.3),
    await layer(400, 300, index * 3 + 2, 0.15),
    await layer(width, height, index * 3 + 3, 0.06),
  ]
  return sharp(await layer(8, 6, index * 3, 1), { raw })
    .composite(over.map((input) => ({ input, raw })))
    .removeAlpha()
    .jpeg({ quality: 82 })
    .toBuffer()
}

async function bytesIn(place: string): Promise<number> {
  const entries = await readdir(place, { recursive: true, withFileTypes: true })
  const files = entries.filter((one) => one.isFile())
  const sizes = await Promise.all(
    files.map(async ({ parentPath, name }) => (await stat(join(parentPath, name))).size),
  )
  return sizes.reduce((sum, size) => sum + size, 0)
}

/** Of the bench's own photos only: the copies of other sites stay. */
async function forget(keys: ReadonlySet<string>): Promise<void> {
  for (const name of await readdir(cacheFolder).catch(() => []))
    if (keys.has(name.slice(0, 20))) await rm(join(cacheFolder, name), { force: true })
}

interface Made {
  readonly cold: number
  readonly warm: number
}

export async function photoTimes(manyNotes: number, manyPhotos: number, pairs: number) {
  console.log(`making ${manyNotes} notes and ${manyPhotos} photos …`)
  await rm(folder, { recursive: true, force: true })
  const [content, plain, dist] = [
    join(folder, 'content'),
    join(folder, 'plain'),
    join(folder, 'dist'),
  ]
  const notes = await makeNotes(manyNotes)
  const slugs = [...notes.kit.keys()]
  const photos = Array.from({ length: manyPhotos }, (_, index) => ({
    index,
    name: `photo-${index + 1}.jpg`,
    slug: slugs[index % slugs.length] ?? '',
  }))
  const shownIn = Map.groupBy(photos, ({ slug }) => slug)
  const withPhotos = (texts: ReadonlyMap<string, string>): ReadonlyMap<string, string> =>
    new Map(
      [...texts].map(([slug, text]) => {
        const lines = (shownIn.get(slug) ?? []).map(
          ({ index, name }) => `![The bench on that evening, picture ${index + 1}](./${name})`,
        )
        return [slug, `${text}\n\n## Pictures\n\n${lines.join('\n\n')}\n`]
      }),
    )
  await writeNotes(content, withPhotos(notes.kit))
  await writePlainSite(plain, withPhotos(notes.typed), widthsOf({ width, height }))
  await mkdir(join(plain, 'src/notes'), { recursive: true })
  const keys = new Set<string>()
  await forAll(photos, 2, async ({ index, name }) => {
    const bytes = await photoLike(index)
    keys.add(keyOf(bytes))
    await writeFile(join(content, 'notes', name), bytes)
    await link(join(content, 'notes', name), join(plain, 'src/notes', name))
  })

  const kit = async (): Promise<Made> => {
    await forget(keys)
    const words = [join(root, 'src/cli/build.ts'), '--content', content, '--out', dist]
    return { cold: await secondsOf(words), warm: await secondsOf(words) }
  }
  const typed = async (): Promise<Made> => {
    await rm(join(plain, 'node_modules'), { recursive: true, force: true })
    await rm(join(plain, 'dist'), { recursive: true, force: true })
    const words = [join(root, 'tests/bench/plain.ts'), plain]
    return { cold: await secondsOf(words), warm: await secondsOf(words) }
  }
  const builds: { readonly kit: Made; readonly typed: Made }[] = []
  for (let pair = 0; pair < pairs; pair++) {
    // They take turns in being first.
    const early = pair % 2 === 0 ? await kit() : undefined
    const other = await typed()
    const made = { kit: early ?? (await kit()), typed: other }
    builds.push(made)
    const told = (one: Made): string =>
      `${one.cold.toFixed(1)} s cold, ${one.warm.toFixed(1)} s warm`
    console.log(`pair ${pair + 1}: ${told(made.kit)} with the kit; ${told(made.typed)} plain`)
  }

  const sizes = {
    originals: (await photosIn(join(content, 'notes'))).bytes,
    kit: await bytesIn(dist),
    kitPhotos: await photosIn(join(dist, 'photos')),
    plain: await bytesIn(join(plain, 'dist')),
    plainPhotos: await photosIn(join(plain, 'dist', '_astro')),
  }
  await forget(keys)
  await rm(folder, { recursive: true, force: true })

  const ratio = (kind: keyof Made): number =>
    median(builds.map((one) => one.kit[kind] / one.typed[kind]))
  const seconds = (who: 'kit' | 'typed', kind: keyof Made): string =>
    `${median(builds.map((one) => one[who][kind])).toFixed(1)} s`
  const result = {
    notes: manyNotes,
    photos: manyPhotos,
    width,
    height,
    builds,
    coldRatio: ratio('cold'),
    warmRatio: ratio('warm'),
    sizes,
  }
  const rows: readonly Row[] = [
    ['cold, with the kit', seconds('kit', 'cold'), `photos of ${width} × ${height}; no copy there`],
    ['cold, plain', seconds('typed', 'cold'), 'same widths, formats, quality and effort'],
    ['ratio, cold', result.coldRatio.toFixed(3), ''],
    ['warm, with the kit', seconds('kit', 'warm'), 'every copy kept'],
    ['warm, plain', seconds('typed', 'warm'), ''],
    ['ratio, warm', result.warmRatio.toFixed(3), ''],
    ['photos as they came', `${sizes.originals} B`, `${manyPhotos} files`],
    [
      'photos of the site, with the kit',
      `${sizes.kitPhotos.bytes} B`,
      `${sizes.kitPhotos.files} files`,
    ],
    [
      'photos of the site, plain',
      `${sizes.plainPhotos.bytes} B`,
      `${sizes.plainPhotos.files} files`,
    ],
    ['whole site, with the kit', `${sizes.kit} B`, ''],
    ['whole site, plain', `${sizes.plain} B`, ''],
  ]
  return { result, rows }
}

async function photosIn(place: string): Promise<{ files: number; bytes: number }> {
  const names = (await readdir(place)).filter((name) => /\.(?:avif|webp|jpg)$/.test(name))
  const sizes = await Promise.all(names.map(async (name) => (await stat(join(place, name))).size))
  return { files: names.length, bytes: sizes.reduce((sum, size) => sum + size, 0) }
}
