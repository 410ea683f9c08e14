/**
 * The whole way from a content folder to a worked ledger. In: the folder. Out: the ledger as data,
 * what each place of each page shows, the trees for the page, and every problem of every note.
 *
 * Files are named as in the content folder (`notes/cooling.mdx`), so that nothing published depends on
 * where the folder lies.
 */
import { readdir, readFile } from 'node:fs/promises'
import { join, posix, sep } from 'node:path'
import type { Root } from 'mdast'
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { parseNote } from '../mdx/parse.ts'
import { findUnsourced } from '../mdx/prose.ts'
import { cellProblems } from './cells.ts'
import { link, type Shown } from './link.ts'
import type { NoteSource } from './note-source.ts'
import { byPlace } from './order.ts'
import type { Problem } from './problems.ts'
import type { Published } from './published.ts'
import { readNote } from './read.ts'
import { showProblems } from './shows.ts'
import { readMeta, readSite, type SiteRead, type SiteSettings } from './site-file.ts'
import { work } from './work.ts'

export type Registry = Readonly<Record<string, () => Promise<Calculator>>>

export interface Ledger {
  /** Absolute path of the content folder. */
  readonly content: string
  readonly site: SiteSettings | undefined
  readonly published: Published
  readonly notes: readonly NoteSource[]
  readonly calculators: ReadonlyMap<string, Calculator>
  /** note slug -> offset in the file -> what is shown there. */
  readonly shown: ReadonlyMap<string, ReadonlyMap<number, Shown>>
  /** Absolute path of a note -> its tree, until the page has taken it. */
  readonly trees: Map<string, { readonly tree: Root; readonly blanked: string }>
  /** Sizes' names found in prose, taken as such. */
  readonly nominals: readonly {
    readonly text: string
    readonly file: string
    readonly line: number
  }[]
  readonly problems: readonly Problem[]
}

export const hasErrors = (problems: readonly Problem[]): boolean =>
  problems.some(({ level }) => level === 'error')

const emptySite: SiteSettings = {
  title: '',
  description: '',
  vehicle: '',
  units: ['metric', 'us'],
  base: '/',
  nominals: [],
  instruments: {},
  sources: {},
}

export async function loadLedger(content: string, known: Registry = registry): Promise<Ledger> {
  const problems: Problem[] = []
  const { site, readable, namesAll } = await loadSite(content, problems)
  const settings = readable ?? emptySite
  const names = await noteFiles(content, problems)
  const files = await filesIn(content)
  const trees: Ledger['trees'] = new Map()
  const notes: NoteSource[] = []
  const nominals: { text: string; file: string; line: number }[] = []
  for (const name of names) {
    const file = `notes/${name}`
    const path = join(content, 'notes', name)
    const slug = name.replace(/\.mdx$/, '')
    if (!/^[a-z0-9][a-z0-9-]*$/.test(slug))
      problems.push({
        rule: 'bad-file-name',
        level: 'error',
        text: `\`${name}\` becomes an address: small letters, digits and dashes only`,
        hint: `\`${slug
          .toLowerCase()
          .replace(/[^a-z0-9]+/g, '-')
          .replace(/^-|-$/g, '')}.mdx\``,
        file,
        line: 1,
        column: 1,
      })
    const bytes = await readFile(path)
    const parsed = parseNote(bytes, file)
    problems.push(...parsed.problems)
    if (parsed.tree === undefined || parsed.frontmatter === undefined) continue
    const raw = bytes.toString('utf8')
    const { meta, problems: metaProblems } = readMeta(parsed.frontmatter, raw, file)
    problems.push(...metaProblems)
    if (meta === undefined) continue
    const note = readNote(parsed.tree, {
      slug,
      file,
      path,
      raw,
      meta,
      slugOf: (specifier) => slugOf(specifier, names),
      knownNotes: names,
      files,
    })
    problems.push(...note.problems)
    const prose = findUnsourced(parsed.tree, {
      nominals: settings.nominals,
      file,
      status: meta.status === 'planned' || meta.status === 'doing' ? 'draft' : 'other',
      text: parsed.text,
    })
    problems.push(...prose.problems)
    nominals.push(...prose.nominals.map(({ text, place }) => ({ text, file, line: place.line })))
    trees.set(path, { tree: parsed.tree, blanked: parsed.blanked })
    notes.push(note)
  }
  notes.sort((a, b) =>
    a.meta.date === b.meta.date ? (a.slug < b.slug ? -1 : 1) : a.meta.date < b.meta.date ? -1 : 1,
  )
  const calculators = await loadCalculators(
    notes.flatMap((note) => note.blocks.map(({ use }) => use)),
    known,
  )
  const linked = link(notes, { ...settings, readable: namesAll }, calculators, Object.keys(known))
  problems.push(...linked.problems)
  const worked = work(linked.published, calculators)
  problems.push(
    ...worked.problems,
    ...showProblems(notes, linked.shown, worked.published),
    ...cellProblems(linked.cells, worked.published),
  )
  return {
    content,
    site,
    published: worked.published,
    notes,
    calculators,
    shown: linked.shown,
    trees,
    nominals,
    problems: inOrder(problems),
  }
}

export async function loadCalculators(
  ids: readonly string[],
  known: Registry = registry,
): Promise<Map<string, Calculator>> {
  const found = new Map<string, Calculator>()
  for (const id of [...new Set(ids)].sort()) {
    const load = known[id]
    if (load !== undefined) found.set(id, await load())
  }
  return found
}

async function loadSite(content: string, problems: Problem[]): Promise<SiteRead> {
  const file = 'site.yaml'
  try {
    const read = readSite(await readFile(join(content, file), 'utf8'), file)
    problems.push(...read.problems)
    return read
  } catch (error) {
    if (!isMissing(error)) throw error
    problems.push({
      rule: 'no-settings',
      level: 'error',
      text: `the content folder has no \`${file}\``,
      hint: 'write one with at least `title: …` and `vehicle: …`',
      file,
      line: 1,
      column: 1,
    })
    return { site: undefined, readable: undefined, namesAll: false, problems: [] }
  }
}

/** Paths within the folder, `/` between parts; only what an author keeps there. */
async function filesIn(content: string): Promise<string[]> {
  try {
    const names = await readdir(content, { recursive: true })
    return names.map((name) => name.split(sep).join('/')).sort()
  } catch (error) {
    if (isMissing(error)) return []
    throw error
  }
}

async function noteFiles(content: string, problems: Problem[]): Promise<string[]> {
  let names: string[] = []
  try {
    names = await readdir(join(content, 'notes'))
  } catch (error) {
    if (!isMissing(error)) throw error
  }
  for (const name of names.filter((other) => /\.(md|markdown|txt)$/i.test(other)))
    problems.push({
      rule: 'not-a-note',
      level: 'warning',
      text: `\`${name}\` is not read: a note is a file that ends in \`.mdx\``,
      hint: `rename it to \`${name.replace(/\.[^.]+$/, '')}.mdx\``,
      file: `notes/${name}`,
      line: 1,
      column: 1,
    })
  const notes = names.filter((name) => name.endsWith('.mdx')).sort()
  if (notes.length === 0)
    problems.push({
      rule: 'no-notes',
      level: 'error',
      text: 'the content folder has no notes',
      hint: 'put the first one into `notes/`, for example `notes/donor.mdx`',
      file: 'notes',
      line: 1,
      column: 1,
    })
  return notes
}

function slugOf(specifier: string, names: readonly string[]): string | undefined {
  const path = posix.normalize(specifier)
  return names.includes(path) ? path.replace(/\.mdx$/, '') : undefined
}

function isMissing(error: unknown): boolean {
  return (
    error instanceof Error &&
    'code' in error &&
    (error.code === 'ENOENT' || error.code === 'ENOTDIR')
  )
}

function inOrder(problems: readonly Problem[]): Problem[] {
  const seen = new Set<string>()
  return problems
    .filter((problem) => {
      const key = `${problem.file}:${problem.line}:${problem.column}:${problem.rule}:${problem.text}`
      return seen.has(key) ? false : seen.add(key)
    })
    .sort(byPlace)
}
