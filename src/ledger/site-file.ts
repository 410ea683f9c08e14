/**
 * `site.yaml`: the vehicle, the units, and the instruments and sources that numbers name.
 * In: its text. Out: the settings, or every problem with its line.
 */
import { isCalendarDate, whyNoDate } from './dates.ts'
import { LineCounter, parseDocument, type Document } from 'yaml'
import { z } from 'zod'
import { parseQuantity } from '../quantity/index.ts'
import type { Problem } from './problems.ts'
import { phases } from './phases.ts'
import { questionsFault } from './questions.ts'
import { readableOf } from './readable.ts'
import { didYouMean } from './report.ts'
import { words } from '../words/words.ts'

export { phases, phaseWords } from './phases.ts'

const noDay = { error: ({ input }: { readonly input?: unknown }) => whyNoDate(String(input)) }
const calendarDate = z.string().refine(isCalendarDate, noDay)
const unitWords = words`units are \`metric\`, \`us\`, or a list of both, the first shown first`
const system = z.enum(['metric', 'us'], { error: unitWords })

const isShare = (text: string): boolean => {
  const read = parseQuantity(text, 'fraction')
  return read.ok && read.value >= 0 && read.value <= 1
}

const siteSchema = z.strictObject({
  title: z.string().min(1),
  description: z.string().default(''),
  vehicle: z.string().min(1),
  notice: z.string().optional(),
  author: z.string().optional(),
  units: z
    .union([system.transform((one) => [one]), z.array(system).min(1).max(2)], { error: unitWords })
    .default(['metric', 'us']),
  address: z.url(words`the address of the site, such as https://example.org`).optional(),
  questions: z
    .string()
    .superRefine((text, ctx) => {
      const message = questionsFault(text)
      if (message !== undefined) ctx.addIssue({ code: 'custom', message })
    })
    .optional(),
  base: z
    .string()
    .regex(/^\//, words`the base path begins with \`/\``)
    .default('/'),
  /** Pages once read open without a network. */
  offline: z.boolean(words`\`true\` or \`false\` is due here`).default(false),
  /** The list of what can be written, as a page of the site. */
  writing: z.boolean(words`\`true\` or \`false\` is due here`).default(false),
  /** Share of what is still to be paid that is put by for what was forgotten. */
  contingency: z
    .string(words`a share is due here, such as \`15 %\``)
    .refine(isShare, words`a share is due here, such as \`15 %\``)
    .optional(),
  nominals: z.array(z.string().min(1)).default([]),
  instruments: z
    .record(
      z.string(),
      z.strictObject({ title: z.string().min(1), plusMinus: z.string().optional() }),
    )
    .default({}),
  sources: z
    .record(
      z.string(),
      z.strictObject({
        title: z.string().min(1),
        edition: z.coerce.string().optional(),
        read: calendarDate.optional(),
        url: z.url().optional(),
      }),
    )
    .default({}),
})
export type SiteSettings = z.output<typeof siteSchema>

/** YAML makes a date of what looks like one. */
const asDay = (value: unknown): unknown =>
  value instanceof Date && !Number.isNaN(value.getTime()) ? value.toISOString().slice(0, 10) : value

const wasWords = words`an older name of the note is due here, as in its address: small letters, digits and dashes`

const noteSchema = z.object({
  title: z.string(words`a note needs a \`title\``).min(1, words`the title is empty`),
  date: z.preprocess(
    asDay,
    z.string(words`a note needs a \`date\`, such as 2026-03-14`).refine(isCalendarDate, noDay),
  ),
  changed: z.preprocess(asDay, calendarDate.optional()),
  phase: z.enum(Object.keys(phases), {
    error: words`a phase is one of ${Object.keys(phases).join(', ')}`,
  }),
  status: z.enum(['planned', 'doing', 'done', 'redone', 'abandoned'], {
    error: words`a status is one of ${'planned, doing, done, redone, abandoned'}`,
  }),
  summary: z.string().optional(),
  was: z.preprocess(
    (value) => (typeof value === 'string' ? [value] : value),
    z.array(z.string(wasWords).regex(/^[a-z0-9][a-z0-9-]*$/, wasWords), wasWords).optional(),
  ),
  draft: z.boolean(words`\`true\` or \`false\` is due here`).optional(),
  headline: z.string().optional(),
})
export type NoteMeta = z.output<typeof noteSchema>

const noteKeys = Object.keys(noteSchema.shape)

const typeWords: Readonly<Record<string, string>> = {
  string: words`a text is due here`,
  array: words`a list is due here, each entry on its line after a dash`,
  object: words`entries are due here, \`name: value\``,
  record: words`entries are due here, \`name: value\``,
}

/** What zod would say in the words of a programmer. */
function settingWords(issue: {
  readonly code: string
  readonly expected?: unknown
  readonly input?: unknown
}): string {
  if (issue.input === undefined) return words`it is missing`
  if (issue.code === 'too_small') return words`it is empty`
  if (issue.code === 'invalid_format')
    return words`it is no web address, such as https://example.org`
  return typeWords[String(issue.expected)] ?? words`it cannot be read`
}

/** The line of a key in a note's frontmatter, 1 when it is not there. */
function frontmatterLine(text: string, key: string): number {
  const index = text.split('\n').findIndex((line) => line.startsWith(`${key}:`))
  return index < 0 ? 1 : index + 1
}

/** Checks a note's frontmatter; `text` is the whole file, for the lines. */
export function readMeta(
  frontmatter: Record<string, unknown>,
  text: string,
  file: string,
): { meta: NoteMeta | undefined; problems: Problem[] } {
  const problems: Problem[] = []
  const report = (key: string, rule: string, message: string, hint?: string): number =>
    problems.push({
      rule,
      level: 'error',
      text: message,
      ...(hint === undefined ? {} : { hint }),
      file,
      line: frontmatterLine(text, key),
      column: 1,
    })
  if (Object.keys(frontmatter).length === 0) {
    report(
      '',
      'no-head',
      text.trim() === '' ? words`this file is empty` : words`the note has no head`,
      words`a note begins with its head between two lines \`---\`: title, date, phase, status; \`npm run new -- "Title"\` writes one`,
    )
    return { meta: undefined, problems }
  }
  for (const [key, value] of Object.entries(frontmatter)) {
    if (!noteKeys.includes(key)) {
      report(
        key,
        'unknown-frontmatter',
        words`the head of a note has no entry \`${key}\`; it knows ${noteKeys.join(', ')}`,
        didYouMean(key, noteKeys),
      )
    }
    if (typeof value === 'string' && /\{[^}]*\}/.test(value))
      report(
        key,
        'braces-in-frontmatter',
        words`braces in \`${key}\`: nothing is worked out in the head of a note`,
        words`write the words only`,
      )
  }
  const result = noteSchema.safeParse(frontmatter, { error: settingWords })
  if (result.success) {
    const meta = problems.length > 0 ? undefined : result.data
    const { date, changed } = result.data
    if (changed !== undefined && changed < date)
      report(
        'changed',
        'changed-before-date',
        words`\`changed\` is ${changed}, before the note’s own \`date\`, ${date}`,
        words`\`date\` is the day of the work, \`changed\` the day of the latest change`,
      )
    return { meta, problems }
  }
  for (const issue of result.error.issues) {
    const key = String(issue.path[0] ?? '')
    const read = frontmatter[key]
    const isShort = typeof read === 'string' || typeof read === 'number'
    const said = isShort ? words`${issue.message}; \`${read}\` was read` : issue.message
    report(key, 'bad-frontmatter', `\`${key}\`: ${said}`)
  }
  return { meta: undefined, problems }
}

function placeIn(
  document: Document,
  counter: LineCounter,
  path: readonly PropertyKey[],
): { line: number; column: number } {
  for (let length = path.length; length > 0; length--) {
    const node = document.getIn(path.slice(0, length), true)
    if (typeof node === 'object' && node !== null && 'range' in node && Array.isArray(node.range)) {
      const { line, col } = counter.linePos(Number(node.range[0]))
      return { line, column: col }
    }
  }
  return { line: 1, column: 1 }
}

export interface SiteRead {
  /** Undefined where anything is wrong with it. */
  readonly site: SiteSettings | undefined
  /** What can be read of it all the same, so that notes are not blamed for a slip here. */
  readonly readable: SiteSettings | undefined
  /** Whether every instrument and source that notes may name is in `readable`. */
  readonly namesAll: boolean
  readonly problems: readonly Problem[]
}

/** Stands for what every site has to say, where only the rest can be read. */
const unnamed = { title: '…', vehicle: '…' }

/** Reads the settings of a site. */
export function readSite(text: string, file: string): SiteRead {
  const counter = new LineCounter()
  const document = parseDocument(text, { lineCounter: counter, prettyErrors: false })
  if (document.errors.length > 0) {
    return {
      site: undefined,
      readable: undefined,
      namesAll: false,
      problems: document.errors.map((error) => {
        const { line, col } = counter.linePos(error.pos[0])
        return {
          rule: 'unreadable-settings',
          level: 'error',
          text: words`this line cannot be read as settings (\`name: value\`)`,
          hint: words`put a text with a colon or a quote in quotation marks, and indent with spaces only`,
          file,
          line,
          column: col,
        }
      }),
    }
  }
  const settings: unknown = document.toJS() ?? {}
  const result = siteSchema.safeParse(settings, { error: settingWords })
  if (result.success)
    return { site: result.data, readable: result.data, namesAll: true, problems: [] }
  const readable = readableOf(siteSchema, settings, unnamed)
  const named: readonly unknown[] = ['instruments', 'sources']
  return {
    site: undefined,
    readable,
    namesAll:
      readable !== undefined && !result.error.issues.some(({ path }) => named.includes(path[0])),
    problems: result.error.issues.map((issue) => ({
      rule: 'bad-settings',
      level: 'error',
      text:
        issue.code === 'unrecognized_keys'
          ? words`the settings know no ${issue.keys.map((key) => `\`${key}\``).join(', ')} here`
          : `\`${issue.path.map(String).join('.')}\`: ${issue.message}`,
      ...(issue.code !== 'unrecognized_keys'
        ? {}
        : issue.path.length === 0
          ? { allowed: Object.keys(siteSchema.shape).join(', ') }
          : {
              hint: words`a text with a comma, a colon or a brace in it stands in quotation marks`,
            }),
      file,
      ...placeIn(document, counter, issue.path),
    })),
  }
}
