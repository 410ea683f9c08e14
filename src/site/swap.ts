/**
 * The new site takes the old one's place. In: the folder of the site, the folder where the new one was
 * made. Out: the site is the new one, or, when anything fails, still the old one.
 *
 * Two renames are not one: a build that is stopped between them leaves the old site under another name,
 * and the next one puts it back.
 */
import { cp, mkdir, readdir, rename, rm } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { isAlive } from './lock.ts'

/** Across file systems the new site is copied beside the old one first. */
export async function replace(out: string, work: string): Promise<void> {
  const [old, fresh] = [`${out}.old-${process.pid}`, `${out}.new-${process.pid}`]
  await mkdir(dirname(out), { recursive: true })
  try {
    await rename(work, fresh)
  } catch {
    try {
      await cp(work, fresh, { recursive: true })
    } catch (error) {
      await rm(fresh, { recursive: true, force: true })
      throw error
    }
  }
  const there = await exists(out)
  if (there) await rename(out, old)
  try {
    await rename(fresh, out)
  } catch (error) {
    if (there) await rename(old, out)
    throw error
  }
  if (there) await rm(old, { recursive: true, force: true })
}

/** Puts back the site of a build that was stopped, and takes away what it left. */
export async function recover(out: string, works: string): Promise<void> {
  for (const { path, pid, kind } of await leftOvers(dirname(out), `${basename(out)}.`)) {
    if (isAlive(pid)) continue
    if (kind === 'old' && !(await exists(out))) await rename(path, out)
    else await rm(path, { recursive: true, force: true })
  }
  for (const { path, pid } of await leftOvers(works, ''))
    if (!isAlive(pid)) await rm(path, { recursive: true, force: true })
}

async function leftOvers(folder: string, before: string) {
  const names = await readdir(folder).catch(() => [])
  return names.flatMap((name) => {
    const [, kind = '', pid = ''] = name.startsWith(before)
      ? (/^(old|new|build)-(\d+)$/.exec(name.slice(before.length)) ?? [])
      : []
    return kind === '' ? [] : [{ path: join(folder, name), kind, pid: Number(pid) }]
  })
}

async function exists(folder: string): Promise<boolean> {
  try {
    await readdir(folder)
    return true
  } catch {
    return false
  }
}
