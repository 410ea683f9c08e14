/**
 * Where made pictures are kept between builds. Whatever is in it can be deleted at any time; a folder
 * that cannot be written only makes the next build slower. A file is whole or not there: it is written
 * beside its place and moved, so that two builds at once do not meet.
 */
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = resolve(fileURLToPath(new URL('../..', import.meta.url)))

export const cacheFolder = join(root, '.worked-notes', 'photos')

export async function cached(name: string, folder = cacheFolder): Promise<Buffer | undefined> {
  try {
    return await readFile(join(folder, name))
  } catch {
    return undefined
  }
}

let written = 0

export async function keep(
  name: string,
  bytes: Uint8Array | string,
  folder = cacheFolder,
): Promise<void> {
  written += 1
  const beside = join(folder, `${name}.${process.pid}-${written}.part`)
  try {
    await mkdir(folder, { recursive: true })
    await writeFile(beside, bytes)
    await rename(beside, join(folder, name))
  } catch {
    await rm(beside, { force: true }).catch(() => undefined)
  }
}
