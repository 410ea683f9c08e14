/**
 * `npm run words`: writes every text of the kit into `src/words/en.ts`, from where it is used. With the
 * file of a translation it says instead what that lacks; exit code 1 when anything does.
 */
import { readFile, writeFile } from 'node:fs/promises'
import { join, relative, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { isRecord } from '../ledger/json.ts'
import { translationFaults, translationSummary } from '../words/compare.ts'
import { counted } from '../words/counted.ts'
import { texts as english } from '../words/en.ts'
import { words } from '../words/words.ts'
import { UsageError } from './options.ts'
import { run } from './run.ts'

await run(async (root, [file, ...more]) => {
  if (more.length > 0) throw new UsageError(words`name one file, as in ${'src/words/de.ts'}`)
  return file === undefined ? collect(root) : compare(resolve(file))
})

async function collect(root: string): Promise<number> {
  const { collectWords, englishCatalogue } = await import('../words/collect.ts')
  const path = join(root, 'src/words/en.ts')
  const found = await collectWords(root)
  const made = await englishCatalogue(found, path)
  const shown = relative(process.cwd(), path).replaceAll('\\', '/')
  if (made !== (await readFile(path, 'utf8'))) await writeFile(path, made)
  const { length } = found
  console.log(
    counted(length, words`${length} text in ${shown}`, words`${length} texts in ${shown}`),
  )
  return 0
}

async function compare(path: string): Promise<number> {
  const texts = await textsOf(path)
  const faults = translationFaults(texts, english)
  for (const line of faults) console.log(line)
  console.log(translationSummary(texts, english))
  return faults.length === 0 ? 0 : 1
}

async function textsOf(path: string): Promise<Readonly<Record<string, string>>> {
  let loaded: unknown
  try {
    loaded = await import(pathToFileURL(path).href)
  } catch (error) {
    const [said = ''] = error instanceof Error ? error.message.split('\n') : []
    throw new UsageError(words`${path} cannot be read: ${said}`)
  }
  const { language, texts } = isRecord(loaded) ? loaded : {}
  if (!isRecord(texts) || typeof language !== 'string')
    throw new UsageError(
      words`${path} has no ${'`language`'} or no ${'`texts`'}: a translation is a copy of src/words/en.ts`,
    )
  return Object.fromEntries(
    Object.entries(texts).map(([key, text]) => [key, typeof text === 'string' ? text : '']),
  )
}
