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
import { tables } from '../../calculators/tables/index.ts'
import { lostNames } from '../mdx/broken.ts'
import { parseNote } from '../mdx/parse.ts'
import { findUnsourced } from '../mdx/prose.ts'
import type { PictureFacts } from '../photos/facts.ts'
import { lookAtPictures } from '../photos/of-notes.ts'
import { cellProblems } from './cells.ts'
import { isDraft, takenFromDrafts, type Draft } from './drafts.ts'
import { headlineProblems } from './headlines.ts'
import { link, type Shown } from './link.ts'
import { linkProblems } from './links.ts'
import type { NoteSource } from './note-source.ts'
import { byPlace } from './order.ts'
import { partProblems } from './part-kinds.ts'
import type { Problem } from './problems.ts'
import type { Published } from './published.ts'
import { readNote } from './read.ts'
import { showProblems } from './shows.ts'
import { readMeta, readSite, type SiteRead, type SiteSettings } from './site-file.ts'
import { withWhereabouts } from './whereabouts.ts'
import { work } from './work.ts'
import { words } from '../words/words.ts'

export type Registry = Readonly<Record<string, () => Promise<Calculator>>>

export interface Ledger {
  /** Absolute path of the content folder. */
  readonly content: string
  readonly site: SiteSettings | undefined
  readonly published: Published
  readonly notes: readonly NoteSource[]
  /** Notes that are not to be published; in `notes` only where they were asked for. */
  readonly drafts: readonly Draft[]
  readonly calculators: ReadonlyMap<string, Calculator>
  /** note slug -> offset in the file -> what is shown there. */
  readonly shown: ReadonlyMap<string, ReadonlyMap<number, Shown>>
  /** Path within the content folder -> what is known of the picture there. */
  readonly pictures: ReadonlyMap<string, PictureFacts>
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
  offline: false,
  writing: false,
  nominals: [],
  instruments: {},
  sources: {},
}

export interface LoadOptions {
  /** Drafts as notes among the others, for their author; else nothing of them is in the ledger. */
  readonly drafts?: boolean
  /** Reads a note's text; while writing, one that remembers what has not changed. Trees are its own then. */
  readonly read?: typeof parseNote
}

export async function loadLedger(
  content: string,
  known: Registry = registry,
  options: LoadOptions = {},
): Promise<Ledger> {
  const problems: Problem[] = []
  const { site, readable, namesAll } = await loadSite(content, problems)
  const settings = readable ?? emptySite
  const names = await noteFiles(content, problems)
  const files = await filesIn(content)
  const trees: Ledger['trees'] = new Map()
  const notes: NoteSource[] = []
  const drafts = new Map<string, Draft>()
  const published = new Map<string, Root>()
  const nominals: { text: string; file: string; line: number }[] = []
  for (const name of names) {
    const file = `notes/${name}`
    const path = join(content, 'notes', name)
    const slug = name.replace(/\.mdx$/, '')
    const own: Problem[] = []
    if (!/^[a-z0-9][a-z0-9-]*$/.test(slug))
      own.push({
        rule: 'bad-file-name',
        level: 'error',
        text: words`\`${name}\` becomes an address: small letters, digits and dashes only`,
        hint: `\`${slug
          .toLowerCase()
          .replace(/[^a-z0-9]+/g, '-')
          .replace(/^-|-$/g, '')}.mdx\``,
        file,
        line: 1,
        column: 1,
      })
    const bytes = await readFile(path).catch(() => undefined)
    if (bytes === undefined) {
      problems.push(...own, unreadable(name))
      continue
    }
    const parsed = (options.read ?? parseNote)(bytes, file)
    own.push(...parsed.problems)
    const draft = isDraft(parsed.frontmatter)
    if (draft) drafts.set(name, { slug, file, path, note: undefined })
    const kept = !draft || options.drafts === true
    if (kept) problems.push(...own)
    if (parsed.tree === undefined || parsed.frontmatter === undefined) continue
    const raw = bytes.toString('utf8')
    const { meta, problems: metaProblems } = readMeta(parsed.frontmatter, raw, file)
    if (kept) problems.push(...metaProblems)
    if (meta === undefined) continue
    const note = readNote(parsed.tree, {
      slug,
      file,
      path,
      raw,
      meta,
      slugOf: (specifier) => slugOf(specifier, names),
      knownNotes: names,
      textProblems: parsed.problems,
      files,
      lost: lostNames(parsed.text, parsed.broken),
    })
    if (draft) drafts.set(name, { slug, file, path, note })
    else published.set(file, parsed.tree)
    if (!kept) continue
    problems.push(...note.problems)
    const prose = findUnsourced(parsed.tree, {
      nominals: settings.nominals,
      file,
      status: meta.status === 'planned' || meta.status === 'doing' ? 'draft' : 'other',
      text: parsed.text,
      broken: parsed.broken,
    })
    problems.push(...prose.problems)
    nominals.push(...prose.nominals.map(({ text, place }) => ({ text, file, line: place.line })))
    if (options.read === undefined) trees.set(path, { tree: parsed.tree, blanked: parsed.blanked })
    notes.push(note)
  }
  const draftAt = (target: string): Draft | undefined =>
    drafts.get(posix.relative('notes', posix.join('notes', target.split('?')[0] ?? '')))
  if (drafts.size > 0)
    for (const [file, tree] of published) problems.push(...takenFromDrafts(tree, file, draftAt))
  if (notes.length === 0 && drafts.size > 0)
    problems.push({
      rule: 'only-drafts',
      level: 'warning',
      text: words`every note is a draft: there is nothing to publish yet`,
      hint: words`take out \`draft: true\` where a note is ready`,
      file: 'notes',
      line: 1,
      column: 1,
    })
  notes.sort((a, b) =>
    a.meta.date === b.meta.date ? (a.slug < b.slug ? -1 : 1) : a.meta.date < b.meta.date ? -1 : 1,
  )
  const calculators = await loadCalculators(
    notes.flatMap((note) => note.blocks.map(({ use }) => use)),
    known,
  )
  const pictures = await lookAtPictures(content, notes)
  problems.push(...pictures.problems)
  const linked = link(notes, { ...settings, readable: namesAll }, calculators, Object.keys(known))
  problems.push(...linked.problems)
  const worked = work(linked.published, calculators)
  problems.push(
    ...worked.problems,
    ...partProblems(worked.published),
    ...linkProblems(notes, worked.published, {
      names,
      slugOf: (specifier) => slugOf(specifier, names),
      calculators: Object.keys(known),
      tables: Object.keys(tables),
      writing: settings.writing,
    }),
    ...showProblems(notes, linked.shown, worked.published),
    ...cellProblems(linked.cells, worked.published),
    ...headlineProblems(notes, worked.published),
  )
  return {
    content,
    site,
    published: worked.published,
    notes,
    drafts: [...drafts.values()],
    calculators,
    shown: linked.shown,
    pictures: pictures.pictures,
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
    const text = await readFile(join(content, file), 'utf8')
    const read = withWhereabouts(readSite(text, file), process.env, file)
    problems.push(...read.problems)
    return read
  } catch (error) {
    if (!isMissing(error)) throw error
    problems.push({
      rule: 'no-settings',
      level: 'error',
      text: words`the content folder has no \`${file}\``,
      hint: words`write one with at least \`title: …\` and \`vehicle: …\``,
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
      text: words`\`${name}\` is not read: a note is a file that ends in \`.mdx\``,
      hint: words`rename it to \`${name.replace(/\.[^.]+$/, '')}.mdx\``,
      file: `notes/${name}`,
      line: 1,
      column: 1,
    })
  // A dot in front hides a file: what an editor leaves while one is open.
  const notes = names.filter((name) => name.endsWith('.mdx') && !name.startsWith('.')).sort()
  if (notes.length === 0)
    problems.push({
      rule: 'no-notes',
      level: 'error',
      text: words`the content folder has no notes`,
      hint: words`put the first one into \`notes/\`, for example \`notes/donor.mdx\``,
      file: 'notes',
      line: 1,
      column: 1,
    })
  return notes
}

const unreadable = (name: string): Problem => ({
  rule: 'note-unreadable',
  level: 'error',
  text: words`\`${name}\` cannot be read: it is a folder, a link that leads nowhere, or not yours to read`,
  hint: words`put the note itself there`,
  file: `notes/${name}`,
  line: 1,
  column: 1,
})

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
