/**
 * Makes the files of a picture. In: its bytes and what is known of it. Out: each file by its name.
 *
 * A photo is turned upright, brought into the colours of the web, made small in each width and written
 * without anything that the camera put beside the picture. A drawing is written anew. The picture is
 * decoded once: the smaller ones are made from the largest.
 */
import { basename } from 'node:path'
import { readFile } from 'node:fs/promises'
import sharp from 'sharp'
import { cached, keep } from './cache.ts'
import { readDrawing } from './drawing.ts'
import {
  drawingName,
  formats,
  heightAt,
  photoName,
  widthsOf,
  type PhotoFacts,
  type PictureFacts,
} from './facts.ts'
import { keyOf } from './look.ts'
import { decoder, encoded } from './recipe.ts'
import { words } from '../words/words.ts'

/** The names of all files of a picture. */
export function namesOf(facts: PictureFacts): string[] {
  if (facts.type === 'drawing') return [drawingName(facts.key)]
  return widthsOf(facts).flatMap((width) =>
    formats.map((format) => photoName(facts.key, width, format)),
  )
}

/** All files of a picture by name, from the cache where they are there. `folder`: the cache. */
export async function filesOf(
  path: string,
  facts: PictureFacts,
  folder?: string,
): Promise<ReadonlyMap<string, Buffer>> {
  const found = new Map<string, Buffer>()
  for (const name of namesOf(facts)) {
    const bytes = await cached(name, folder)
    if (bytes === undefined) return makeAll(path, facts, folder)
    found.set(name, bytes)
  }
  return found
}

async function makeAll(
  path: string,
  facts: PictureFacts,
  folder: string | undefined,
): Promise<ReadonlyMap<string, Buffer>> {
  const bytes = await readFile(path)
  if (keyOf(bytes) !== facts.key)
    throw new Error(words`${path} changed while the site was built: build it once more`)
  const made =
    facts.type === 'photo' ? await makePhoto(bytes, facts) : makeDrawing(bytes, path, facts.key)
  for (const [name, file] of made) await keep(name, file, folder)
  return made
}

function makeDrawing(bytes: Buffer, path: string, key: string): Map<string, Buffer> {
  const drawing = readDrawing(bytes.toString('utf8'), basename(path))
  if ('rule' in drawing) throw new Error(drawing.text)
  return new Map([[drawingName(key), Buffer.from(drawing.svg)]])
}

async function makePhoto(bytes: Buffer, facts: PhotoFacts): Promise<Map<string, Buffer>> {
  // More threads make other bytes of an AVIF; several photos at a time use the machine as well.
  sharp.concurrency(1)
  const widths = widthsOf(facts)
  const widest = widths.at(-1) ?? 1
  const { data, info } = await decoder(bytes)
    .autoOrient()
    .resize(widest, heightAt(facts, widest), { fit: 'fill' })
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true })
  const { width, height, channels } = info
  const made = new Map<string, Buffer>()
  for (const wide of widths) {
    const small = sharp(data, { raw: { width, height, channels } }).resize(
      wide,
      heightAt(facts, wide),
      { fit: 'fill' },
    )
    for (const format of formats)
      made.set(
        photoName(facts.key, wide, format),
        await encoded(small.clone(), format, facts).toBuffer(),
      )
  }
  return made
}
