/**
 * Astro's settings for a site of notes. In: where the notes lie, and the worked ledger when a command
 * has it already. Out: the configuration, the same for `dev`, `build` and the type check.
 */
import { relative } from 'node:path'
import mdx from '@astrojs/mdx'
import { unified } from '@astrojs/markdown-remark'
import type { AstroUserConfig } from 'astro'
import { printProblem } from '../cli/print.ts'
import { loadLedger, type Ledger } from '../ledger/load.ts'
import { remarkFill, remarkLedgerTree } from '../mdx/fill.ts'
import { keepFailures, type Failures } from './failures.ts'
import { workedNotes } from './integration.ts'
import { pageLookup } from './page.ts'

/** Nothing from elsewhere, and nothing that a note's text could smuggle in. */
const csp = [
  "default-src 'none'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "frame-src 'none'",
  "form-action 'none'",
  "base-uri 'none'",
] as const

export interface SiteConfigOptions {
  /** Absolute path of the content folder. */
  readonly content: string
  readonly ledger?: Ledger
  /** Absolute path; `dist` when left out. */
  readonly outDir?: string
  /** Drafts among the notes, marked as such: while writing only. */
  readonly drafts?: boolean
  /** Messages in the pages, and nothing is refused for a fault in a note. */
  readonly writing?: boolean
  /** A build that tells itself what ended it. */
  readonly building?: boolean
  /** Runs what stands in braces, and keeps what fails. */
  readonly failures?: Failures
  /** Where messages go while writing. */
  readonly say?: (line: string) => void
}

export async function siteConfig(options: SiteConfigOptions): Promise<AstroUserConfig> {
  const drafts = options.drafts === true
  const ledger = options.ledger ?? (await loadLedger(options.content, undefined, { drafts }))
  const say = options.say ?? (() => undefined)
  const folder = relative(process.cwd(), ledger.content).replaceAll('\\', '/')
  const failures = options.failures ?? keepFailures((problem) => say(printProblem(problem, folder)))
  const holder = { ledger, drafts, say, failures }
  const lookup = pageLookup(() => holder.ledger, options.writing === true, failures.key)
  const { site } = holder.ledger
  return {
    ...(site?.address === undefined ? {} : { site: site.address }),
    base: site?.base ?? '/',
    trailingSlash: 'always',
    build: { format: 'directory' },
    ...(options.outDir === undefined ? {} : { outDir: options.outDir }),
    devToolbar: { enabled: false },
    logger: {
      entrypoint: new URL('./logger.ts', import.meta.url),
      config: { building: options.building === true },
    },
    security: { csp: { algorithm: 'SHA-256', directives: [...csp] } },
    markdown: {
      syntaxHighlight: false,
      processor: unified({
        smartypants: false,
        remarkPlugins: [
          [remarkLedgerTree, lookup],
          [remarkFill, lookup],
        ],
      }),
    },
    integrations: [mdx(), workedNotes(holder)],
  }
}
