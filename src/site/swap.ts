/**
 * The new site takes the old one's place. In: the folder of the site, the folder where the new one was
 * made. Out: the site is the new one, or, when anything fails, still the old one.
 *
 * Two renames are not one: a build that is stopped between them leaves the old site under another name,
 * and the next one puts it back. What in the folder no build made goes over last, from the old site into
 * the new one, and the old one is not taken away before.
 */
import { cp, mkdir, readdir, rename, rm } from 'node:fs/promises'
import { basename, dirname, join } from 'node:path'
import { isAlive } from './lock.ts'
import { carriedOver } from './own-files.ts'

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
  if (!there) return rename(fresh, out)
  try {
    const names = await carriedOver(out, fresh)
    await rename(out, old)
    await takeOver(fresh, out, old, names)
  } catch (error) {
    await rm(fresh, { recursive: true, force: true })
    throw error
  }
  await takeAway(old)
}

/** The new site and what is kept of the old folder, or the old folder as it was. */
async function takeOver(
  fresh: string,
  out: string,
  old: string,
  names: readonly string[],
): Promise<void> {
  try {
    await rename(fresh, out)
  } catch (error) {
    await rename(old, out)
    throw error
  }
  const moved: string[] = []
  try {
    for (const name of names) {
      await rename(join(old, name), join(out, name))
      moved.push(name)
    }
  } catch (error) {
    for (const name of moved) await rename(join(out, name), join(old, name))
    await rename(out, fresh)
    await rename(old, out)
    throw error
  }
}

/** Under a name that says that nothing in it is needed: it may be stopped half-way. */
async function takeAway(old: string): Promise<void> {
  const gone = old.replace(/\.old-(\d+)$/, '.gone-$1')
  await rename(old, gone)
  await rm(gone, { recursive: true, force: true })
}

/** Puts back the site of a build that was stopped, and takes away what it left. */
export async function recover(out: string, works: string): Promise<void> {
  for (const { path, pid, kind } of await leftOvers(dirname(out), `${basename(out)}.`)) {
    if (isAlive(pid)) continue
    if (kind !== 'old') await rm(path, { recursive: true, force: true })
    else if (!(await exists(out))) await rename(path, out)
    else {
      for (const name of await carriedOver(path, out))
        await rename(join(path, name), join(out, name))
      await takeAway(path)
    }
  }
  for (const { path, pid } of await leftOvers(works, ''))
    if (!isAlive(pid)) await rm(path, { recursive: true, force: true })
}

async function leftOvers(folder: string, before: string) {
  const names = await readdir(folder).catch(() => [])
  return names.flatMap((name) => {
    const [, kind = '', pid = ''] = name.startsWith(before)
      ? (/^(old|new|gone|build)-(\d+)$/.exec(name.slice(before.length)) ?? [])
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
