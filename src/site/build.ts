/**
 * One build, whole or not at all. In: the content folder and where the site goes. Out: whether it is
 * there now; when not, the old site stands as it was.
 */
import { mkdir, rm } from 'node:fs/promises'
import { dirname, join, relative } from 'node:path'
import { build } from 'astro'
import { printProblem } from '../cli/print.ts'
import { UsageError } from '../cli/options.ts'
import { hasErrors, loadLedger } from '../ledger/load.ts'
import { originalsIn, picturesLeft } from '../photos/left.ts'
import { picturePaths } from '../photos/of-notes.ts'
import { pruneCopies } from '../photos/prune.ts'
import { publishPictures } from '../photos/publish.ts'
import { examplePictures } from '../writing/list.ts'
import { siteConfig } from './config.ts'
import { diskWords } from './disk.ts'
import { keepFailures } from './failures.ts'
import { keptFault } from './fault.ts'
import { finishSite } from './finish.ts'
import { takeLock } from './lock.ts'
import { carriedOver, writeList } from './own-files.ts'
import { placeOfSite } from './places.ts'
import { recover, replace } from './swap.ts'
import { verifySite } from './verify.ts'
import { wrongLines, wrongWords } from './wrong.ts'
import { counted } from '../words/counted.ts'
import { words } from '../words/words.ts'
import { sizeWords } from '../ledger/size.ts'
import { summary } from '../ledger/severity.ts'

export interface BuildOptions {
  readonly root: string
  readonly content: string
  readonly out: string
  readonly say: (line: string) => void
}

export async function buildSite(options: BuildOptions): Promise<boolean> {
  const { root, say } = options
  const out = await placeOfSite(options)
  try {
    await mkdir(dirname(out), { recursive: true })
    const free = await takeLock(`${out}.building`, (pid) =>
      say(words`another build of this site is running (process ${pid}): waiting for it`),
    )
    try {
      await recover(out, join(root, '.worked-notes'))
      await carriedOver(out)
      return await buildWhole({ ...options, out })
    } finally {
      await free()
    }
  } catch (error) {
    if (error instanceof UsageError) throw error
    const said = diskWords(error) ?? (await keptFault(error, options))
    say(words`${said}: nothing was built, and the old site stands as it was`)
    return false
  }
}

async function buildWhole({ root, content, out, say }: BuildOptions): Promise<boolean> {
  const ledger = await loadLedger(content)
  const folder = relative(process.cwd(), content).replaceAll('\\', '/')
  for (const problem of ledger.problems) say(printProblem(problem, folder))
  if (hasErrors(ledger.problems)) {
    say(words`${summary(ledger.problems)}: nothing was built, and the old site stands as it was`)
    return false
  }
  const work = join(root, '.worked-notes', `build-${process.pid}`)
  await rm(work, { recursive: true, force: true })
  try {
    const failures = keepFailures()
    const config = await siteConfig({ content, ledger, outDir: work, building: true, failures })
    await build({ ...config, root, configFile: false, logLevel: 'warn', mode: 'production' })
    const failed = failures.problems()
    for (const problem of failed) say(printProblem(problem, folder))
    if (failed.length > 0) {
      say(words`${summary(failed)}: nothing was built, and the old site stands as it was`)
      return false
    }
    const pictures = new Map([...picturePaths(ledger), ...examplePictures()])
    await publishPictures(work, pictures)
    const cache = join(root, '.worked-notes', 'cache')
    const incomplete = await finishSite({ folder: work, ledger, cache })
    for (const problem of incomplete) say(printProblem(problem, folder))
    await writeList(work)
    const wrong = await verifySite(work)
    for (const line of wrongLines(wrong, ledger, folder)) say(line)
    if (wrong.length > 0) {
      say(words`${wrongWords(wrong)}: the old site stands as it was`)
      return false
    }
    const left = await picturesLeft(work, await originalsIn(content))
    for (const { file, text } of left) say(`${file} ${text}`)
    if (left.length > 0) {
      say(
        counted(
          left.length,
          words`${left.length} picture of the new site would give away what is not the picture: the old site stands as it was`,
          words`${left.length} pictures of the new site would give away what is not the picture: the old site stands as it was`,
        ),
      )
      return false
    }
    await replace(out, work)
    await pruneCopies(new Set([...pictures.values()].map(({ key }) => key)))
  } finally {
    await rm(work, { recursive: true, force: true })
  }
  const { site } = ledger.published
  say(
    words`built and verified: ${sizeWords(ledger.published)} in ${relative(process.cwd(), out) || '.'}`,
  )
  if (site.address === undefined)
    say(
      words`no feed, no list of pages and no pictures for links: they need the address of the site (\`address\` in site.yaml, or SITE_URL)`,
    )
  const { length } = ledger.drafts
  if (length > 0)
    say(counted(length, words`left out: ${length} draft`, words`left out: ${length} drafts`))
  return true
}
