/**
 * Small notes for the tests. In: bodies of notes by slug, and settings where they matter. Out: the
 * ledger, read from a folder as a builder's own would be.
 *
 * The head of a note takes six lines: a body's first line is line 7 of its file.
 */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { loadLedger, type Ledger, type Registry } from '../../src/ledger/load.ts'
import type { Problem } from '../../src/ledger/problems.ts'
import type { PublishedBlock, PublishedNumber } from '../../src/ledger/published.ts'
import { trivial } from './trivial.ts'

export const settings = `title: Notes of a test
vehicle: an invented van
instruments:
  meter: { title: digital multimeter, plusMinus: 0.1 A }
  tape: { title: steel tape }
sources:
  sheet: { title: Controller sheet, edition: rev B, read: 2026-01-05 }
`

export interface Head {
  readonly title?: string
  readonly date?: string
  readonly status?: string
}

export function note(
  body: string,
  { title = 'A note', date = '2026-03-14', status = 'done' }: Head = {},
): string {
  return `---\ntitle: ${title}\ndate: ${date}\nphase: cooling\nstatus: ${status}\n---\n${body}\n`
}

/** slug -> the whole file, or only its body. */
export type Folder = Readonly<Record<string, string | Uint8Array>>

/** Runs `use` in a content folder with these notes. */
export async function inFolder<T>(
  notes: Folder,
  site: string | undefined,
  use: (content: string) => Promise<T>,
): Promise<T> {
  const content = await mkdtemp(join(tmpdir(), 'notes-'))
  try {
    await mkdir(join(content, 'notes'))
    if (site !== undefined) await writeFile(join(content, 'site.yaml'), site)
    for (const [slug, text] of Object.entries(notes)) {
      const whole = typeof text === 'string' && !text.startsWith('---') ? note(text) : text
      await writeFile(join(content, 'notes', `${slug}.mdx`), whole)
    }
    return await use(content)
  } finally {
    await rm(content, { recursive: true, force: true })
  }
}

export function ledgerOf(
  notes: Folder,
  known: Registry = trivial,
  site: string = settings,
): Promise<Ledger> {
  return inFolder(notes, site, (content) => loadLedger(content, known))
}

/** The ledger of notes that must be without fault. */
export async function soundLedger(
  notes: Folder,
  known: Registry = trivial,
  site: string = settings,
): Promise<Ledger> {
  const ledger = await ledgerOf(notes, known, site)
  if (ledger.problems.length > 0) throw new Error(ledger.problems.map(line).join('\n'))
  return ledger
}

/** A problem as one comparable line, its no-break spaces plain. */
export function line({
  file,
  line: row,
  column,
  level,
  rule,
  text,
  allowed,
  hint,
  also,
}: Problem): string {
  return [
    `${file}:${row}:${column} ${level} ${rule}: ${text}`,
    allowed === undefined ? '' : ` | allowed: ${allowed}`,
    hint === undefined ? '' : ` | hint: ${hint}`,
    ...(also ?? []).map((other) => ` | also: ${other.file}:${other.line}:${other.column}`),
  ]
    .join('')
    .replaceAll('\u00a0', ' ')
}

export async function problemsOf(
  notes: Folder,
  known: Registry = trivial,
  site: string = settings,
): Promise<string[]> {
  return (await ledgerOf(notes, known, site)).problems.map(line)
}

export function numberOf({ published }: Pick<Ledger, 'published'>, id: string): PublishedNumber {
  const found = published.numbers.find((number) => number.id === id)
  if (found === undefined)
    throw new Error(
      `no number ${id}; there are ${published.numbers.map((number) => number.id).join(', ')}`,
    )
  return found
}

export function blockOf({ published }: Pick<Ledger, 'published'>, id: string): PublishedBlock {
  const found = published.blocks.find((block) => block.id === id)
  if (found === undefined) throw new Error(`no block ${id}`)
  return found
}
