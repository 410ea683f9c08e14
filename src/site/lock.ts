/**
 * One build of a site at a time: the second waits for the first, and then builds what is there by then.
 * In: the file that says so. Out: a function that takes it away.
 *
 * A build that was stopped leaves its file behind. It is known by a process that is gone, or by a file
 * that nobody touches any more; no clock is asked, it may be wrong.
 */
import { readFile, rm, stat, utimes, writeFile } from 'node:fs/promises'
import { setTimeout as wait } from 'node:timers/promises'

const [look, touch] = [200, 2000] as const
/** Looks without a touch after which a file counts as left behind. */
const patience = 100

export async function takeLock(
  file: string,
  busy: (pid: number) => void,
): Promise<() => Promise<void>> {
  let [seen, still, told] = [0, 0, false]
  for (;;) {
    try {
      await writeFile(file, String(process.pid), { flag: 'wx' })
      break
    } catch (error) {
      if (!isThere(error)) throw error
    }
    const { pid, touched } = await holderOf(file)
    still = touched === seen ? still + 1 : 0
    seen = touched
    if (pid !== undefined && (!isAlive(pid) || still > patience)) {
      await rm(file, { force: true })
      continue
    }
    if (pid !== undefined && !told) busy(pid)
    told ||= pid !== undefined
    await wait(look)
  }
  let tick = 0
  const beat = setInterval(() => {
    tick += 1
    void utimes(file, tick, tick).catch(() => undefined)
  }, touch)
  beat.unref()
  return async () => {
    clearInterval(beat)
    await rm(file, { force: true })
  }
}

async function holderOf(file: string): Promise<{ pid: number | undefined; touched: number }> {
  try {
    const pid = Number(await readFile(file, 'utf8'))
    const { mtimeMs } = await stat(file)
    return { pid: Number.isInteger(pid) && pid > 0 ? pid : undefined, touched: mtimeMs }
  } catch {
    return { pid: undefined, touched: 0 }
  }
}

export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}

const isThere = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EEXIST'
