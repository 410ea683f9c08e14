/**
 * One build, whole or not at all. In: the content folder and where the site goes. Out: whether it is
 * there now; when not, the old site stands as it was.
 */
import { mkdir, readdir, rm } from 'node:fs/promises'
import { dirname, join, relative } from 'node:path'
import { build } from 'astro'
import { count } from '../card/index.ts'
import { printProblem, summary } from '../cli/print.ts'
import { UsageError } from '../cli/options.ts'
import { hasErrors, loadLedger } from '../ledger/load.ts'
import { originalsIn, picturesLeft } from '../photos/left.ts'
import { picturePaths } from '../photos/of-notes.ts'
import { publishPictures } from '../photos/publish.ts'
import { examplePictures } from '../writing/list.ts'
import { siteConfig } from './config.ts'
import { diskWords } from './disk.ts'
import { finishSite } from './finish.ts'
import { takeLock } from './lock.ts'
import { recover, replace } from './swap.ts'
import { verifySite } from './verify.ts'

export interface BuildOptions {
  readonly root: string
  readonly content: string
  readonly out: string
  readonly say: (line: string) => void
}

export async function buildSite(options: BuildOptions): Promise<boolean> {
  const { root, out, say } = options
  await refuseForeignFolder(out)
  try {
    await mkdir(dirname(out), { recursive: true })
    const free = await takeLock(`${out}.building`, (pid) =>
      say(`another build of this site is running (process ${pid}): waiting for it`),
    )
    try {
      await recover(out, join(root, '.worked-notes'))
      return await buildWhole(options)
    } finally {
      await free()
    }
  } catch (error) {
    const words = diskWords(error)
    if (words === undefined) throw error
    say(`${words}: nothing was built, and the old site stands as it was`)
    return false
  }
}

async function buildWhole({ root, content, out, say }: BuildOptions): Promise<boolean> {
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
    await publishPictures(work, new Map([...picturePaths(ledger), ...examplePictures()]))
    await finishSite({ folder: work, ledger, cache: join(root, '.worked-notes', 'cache') })
    const wrong = await verifySite(work)
    for (const { file, line, text } of wrong) say(`${file}:${line} ${text}`)
    if (wrong.length > 0) {
      say(
        `${wrong.length} places of the new site are not what its numbers give: the old site stands as it was`,
      )
      return false
    }
    const left = await picturesLeft(work, await originalsIn(content))
    for (const { file, text } of left) say(`${file} ${text}`)
    if (left.length > 0) {
      say(
        `${left.length} ${left.length === 1 ? 'picture' : 'pictures'} of the new site would give away what is not the picture: the old site stands as it was`,
      )
      return false
    }
    await replace(out, work)
  } finally {
    await rm(work, { recursive: true, force: true })
  }
  const { site, notes, numbers, blocks } = ledger.published
  say(
    `built and verified: ${notes.length} notes, ${numbers.length} numbers, ${blocks.length} blocks in ${relative(process.cwd(), out) || '.'}`,
  )
  if (site.address === undefined)
    say(
      'no feed, no list of pages and no pictures for links: they need the address of the site (`address` in site.yaml, or SITE_URL)',
    )
  if (ledger.drafts.length > 0) say(`left out: ${count(ledger.drafts.length, 'draft')}`)
  return true
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
