/**
 * `npm run new -- "Title"`: a skeleton beside the last note. The day is given (`--date 2026-11-25`), or
 * read here off the machine's calendar; the site itself knows no clock. Nothing is ever written over.
 */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join, relative, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { isCalendarDate, whyNoDate } from '../ledger/dates.ts'
import { readMeta } from '../ledger/site-file.ts'
import { decode } from '../mdx/decode.ts'
import { readFrontmatter } from '../mdx/frontmatter.ts'
import { placesIn } from '../mdx/place.ts'
import { skeleton, type NoteThere } from '../writing/skeleton.ts'
import { UsageError } from './options.ts'
import { run } from './run.ts'
import { words } from '../words/words.ts'

const usage = 'npm run new -- "Title" [--date YYYY-MM-DD] [--content DIR]'

await run(async (root, args) => {
  const { title, date, content } = readWords(args)
  const folder = resolve(root, content)
  const shown = (path: string): string => relative(process.cwd(), path).replaceAll('\\', '/')
  const made = skeleton(title, date ?? today(new Date()), await notesIn(folder))
  if (!made.ok) throw new UsageError(made.why)
  const path = join(folder, 'notes', made.name)
  try {
    await mkdir(join(folder, 'notes'), { recursive: true })
    await writeFile(path, made.text, { flag: 'wx' })
  } catch (error) {
    if (!isCode(error, 'EEXIST')) throw error
    throw new UsageError(words`${shown(path)} is there already, and stays as it is`)
  }
  console.log(
    words`${shown(path)}: phase ${made.phase}, a draft until you take out \`draft: true\``,
  )
  return 0
})

function readWords(args: readonly string[]): { title: string; date?: string; content: string } {
  let read
  try {
    read = parseArgs({
      args: [...args],
      options: { date: { type: 'string' }, content: { type: 'string', default: 'content' } },
      allowPositionals: true,
    })
  } catch {
    throw new UsageError(words`cannot make sense of \`${args.join(' ')}\`; allowed: ${usage}`)
  }
  const { date, content } = read.values
  if (date !== undefined && !isCalendarDate(date))
    throw new UsageError(`--date \`${date}\`: ${whyNoDate(date)}`)
  // Without quotes the shell hands the words over one by one.
  const title = read.positionals.join(' ')
  return { title, content, ...(date === undefined ? {} : { date }) }
}

/** The day on the wall, where the machine stands. */
function today(now: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0')
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
  if (now.getFullYear() < 2020)
    throw new UsageError(
      words`the clock of this machine says ${day}: give the day, --date YYYY-MM-DD`,
    )
  return day
}

async function notesIn(folder: string): Promise<NoteThere[]> {
  let names: string[]
  try {
    names = await readdir(folder)
  } catch {
    throw new UsageError(
      words`there is no folder ${folder}: name the one with your site.yaml, --content DIR`,
    )
  }
  if (!names.includes('notes')) return []
  const notes = (await readdir(join(folder, 'notes'))).filter((name) => /\.mdx$/i.test(name))
  return Promise.all(
    notes.sort().map(async (name) => {
      const { text } = decode(await readFile(join(folder, 'notes', name)), name)
      const { entries } = readFrontmatter(text ?? '', placesIn(text ?? '', name))
      const { meta } = readMeta(entries ?? {}, text ?? '', name)
      return { slug: name.replace(/\.mdx$/i, ''), meta }
    }),
  )
}

const isCode = (error: unknown, code: string): boolean =>
  error instanceof Error && 'code' in error && error.code === code
