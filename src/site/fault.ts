/**
 * What nobody foresaw, at the end of a build. In: an error of whatever made the pages. Out: a sentence for
 * the builder, with the note where the error names one; the whole of it in a file, for whoever mends it.
 */
import { mkdir, realpath, writeFile } from 'node:fs/promises'
import { join, relative, resolve, sep } from 'node:path'
import { inspect } from 'node:util'
import { words } from '../words/words.ts'

export interface FaultPlaces {
  readonly root: string
  readonly content: string
}

export async function keptFault(error: unknown, places: FaultPlaces): Promise<string> {
  const folder = join(places.root, '.worked-notes')
  const file = join(folder, 'fault.txt')
  await mkdir(folder, { recursive: true })
  await writeFile(file, `${inspect(error)}\n`)
  const message = error instanceof Error ? error.message : String(error)
  const note = await noteIn(message, places)
  return words`${note === undefined ? firstLine(message) : words`no page can be made of \`${note}\``} (more of it in ${relative(process.cwd(), file)})`
}

/** Bundlers tell how many faults there are, and then which. */
const firstLine = (message: string): string =>
  message
    .split('\n')
    .map((line) => line.trim().replace(/[.:]$/, ''))
    .find((line) => line !== '' && !/^Build failed with \d+ errors?$/.test(line)) ?? words`unknown`

/** `notes/pump.mdx:17`, as the terminal would open it; the first that an error names. */
async function noteIn(
  message: string,
  { root, content }: FaultPlaces,
): Promise<string | undefined> {
  const folders = [content, await realpath(content).catch(() => content)]
  for (const [, path = '', line] of message.matchAll(/([^\s[\]"'`(]+\.mdx)(?::(\d+))?/g)) {
    const whole = resolve(root, path)
    if (!folders.some((folder) => whole.startsWith(folder + sep))) continue
    const shown = relative(process.cwd(), whole).split(sep).join('/')
    return line === undefined ? shown : `${shown}:${line}`
  }
  return undefined
}
