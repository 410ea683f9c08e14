/**
 * One build, whole or not at all. In: the content folder and where the site goes. Out: whether it is
 * there now; when not, the old site stands as it was.
 */
import { cp, mkdir, readdir, rename, rm } from 'node:fs/promises'
import { dirname, join, relative } from 'node:path'
import { build } from 'astro'
import { printProblem, summary } from '../cli/print.ts'
import { UsageError } from '../cli/options.ts'
import { hasErrors, loadLedger } from '../ledger/load.ts'
import { siteConfig } from './config.ts'
import { verifySite } from './verify.ts'

export interface BuildOptions {
  readonly root: string
  readonly content: string
  readonly out: string
  readonly say: (line: string) => void
}

export async function buildSite({ root, content, out, say }: BuildOptions): Promise<boolean> {
  await refuseForeignFolder(out)
  const ledger = await loadLedger(content)
  const folder = relative(process.cwd(), content).replaceAll('\\', '/')
  for (const problem of ledger.problems) say(printProblem(problem, folder))
  if (hasErrors(ledger.problems)) {
    say(`${summary(ledger.problems)}: nothing was built, and the old site stands as it was`)
    return false
  }
  const work = join(root, '.worked-notes', `build-${process.pid}`)
  await rm(work, { recursive: true, force: true })
  try {
    const config = await siteConfig({ content, ledger, outDir: work })
    await build({ ...config, root, configFile: false, logLevel: 'warn', mode: 'production' })
    const wrong = await verifySite(work)
    for (const { file, line, text } of wrong) say(`${file}:${line} ${text}`)
    if (wrong.length > 0) {
      say(
        `${wrong.length} places of the new site are not what its numbers give: the old site stands as it was`,
      )
      return false
    }
    await replace(out, work)
  } finally {
    await rm(work, { recursive: true, force: true })
  }
  const { notes, numbers, blocks } = ledger.published
  say(
    `built and verified: ${notes.length} notes, ${numbers.length} numbers, ${blocks.length} blocks in ${relative(process.cwd(), out) || '.'}`,
  )
  return true
}

/** Moves the new site into the old one's place; across file systems it is copied beside it first. */
async function replace(out: string, work: string): Promise<void> {
  const old = `${out}.old-${process.pid}`
  const fresh = `${out}.new-${process.pid}`
  await mkdir(dirname(out), { recursive: true })
  try {
    await rename(work, fresh)
  } catch {
    await cp(work, fresh, { recursive: true })
  }
  const there = await exists(out)
  if (there) await rename(out, old)
  await rename(fresh, out)
  if (there) await rm(old, { recursive: true, force: true })
}

async function exists(folder: string): Promise<boolean> {
  try {
    await readdir(folder)
    return true
  } catch {
    return false
  }
}

/** A folder that holds something else than a site of this kit is never replaced. */
async function refuseForeignFolder(out: string): Promise<void> {
  let names: string[]
  try {
    names = await readdir(out)
  } catch {
    return
  }
  if (names.length > 0 && !names.includes('numbers.json'))
    throw new UsageError(
      `${out} holds other files and no site of this kit: name an empty or a new folder`,
    )
}
