/**
 * Measures a whole site: builds, the ledger, what a reader's browser fetches. In: how many notes, how
 * many pairs of builds. Out: numbers, and rows to print.
 *
 * 1. Building a site of generated notes, against the same notes typed by hand on Astro and MDX alone:
 *    whole commands, in alternating pairs; the median of the pairs' ratios counts.
 * 2. The ledger alone: reading and linking, and working the numbers.
 * 3. Script before anything is asked for, and of each calculator.
 * 4. What a note of the demo weighs when it is read: HTML, styles and script, without its pictures; and
 *    how many files a browser needs before it draws.
 */
import { readdir, readFile, rm } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { gzipSync } from 'node:zlib'
import { calculators } from '../../calculators/index.ts'
import { loadLedger } from '../../src/ledger/load.ts'
import { work } from '../../src/ledger/work.ts'
import { verifySite } from '../../src/site/verify.ts'
import { blocksInNote, makeNotes, writeNotes } from './notes.ts'
import { writePlainSite } from './plain.ts'
import type { Row } from './solve.ts'
import { median, secondsOf } from './timing.ts'

const root = resolve(import.meta.dirname, '../..')
const folder = join(root, '.worked-notes', 'bench')

async function timed<T>(run: () => T | Promise<T>): Promise<[seconds: number, value: T]> {
  const start = performance.now()
  const value = await run()
  return [(performance.now() - start) / 1000, value]
}

const weightOf = (bytes: Buffer): number => gzipSync(bytes, { level: 9 }).length

/** Script that a page fetches by itself: what its markup names, and what that imports at once. */
async function firstScript(dist: string, page: string): Promise<number> {
  const html = await readFile(join(dist, page), 'utf8')
  const queue = [
    ...html.matchAll(
      /<script[^>]* src="([^"]+)"|<link[^>]*rel="modulepreload"[^>]*href="([^"]+)"/g,
    ),
  ].map(([, src, href]) => new URL(src ?? href ?? '', `http://site.example/${page}`).pathname)
  const seen = new Map<string, number>()
  const inline = [...html.matchAll(/<script type="module">([^]*?)<\/script>/g)].reduce(
    (sum, [, text = '']) => sum + weightOf(Buffer.from(text)),
    0,
  )
  for (let name = queue.pop(); name !== undefined; name = queue.pop()) {
    if (seen.has(name)) continue
    const bytes = await readFile(join(dist, name))
    seen.set(name, weightOf(bytes))
    for (const [, from = ''] of bytes
      .toString('utf8')
      .matchAll(/(?:^|[;}\s])import(?:[^"'(]*from)?\s*["']\.\/([^"']+)["']/g))
      queue.push(`/_astro/${from}`)
  }
  return inline + [...seen.values()].reduce((sum, size) => sum + size, 0)
}

interface PageWeight {
  readonly page: string
  readonly html: number
  readonly styles: number
  readonly script: number
  /** Files without which nothing is drawn, the page itself among them. */
  readonly beforePaint: number
}

const all = ({ html, styles, script }: PageWeight): number => html + styles + script

async function pageWeight(dist: string, page: string): Promise<PageWeight> {
  const bytes = await readFile(join(dist, page))
  const html = bytes.toString('utf8')
  const at = (address: string): string => new URL(address, `http://site.example/${page}`).pathname
  const sheets = [...html.matchAll(/<link[^>]*rel="stylesheet"[^>]*href="([^"]+)"/g)]
  const blocking = [...html.matchAll(/<script\b[^>]* src="[^"]+"[^>]*>/g)].filter(
    ([tag]) => !/type="module"|\s(?:async|defer)\b/.test(tag),
  )
  const styles = await Promise.all(
    sheets.map(async ([, address = '']) => weightOf(await readFile(join(dist, at(address))))),
  )
  return {
    page,
    html: weightOf(bytes),
    styles: styles.reduce((sum, size) => sum + size, 0),
    script: await firstScript(dist, page),
    beforePaint: 1 + sheets.length + blocking.length,
  }
}

/** The demo's notes, the heaviest first. */
async function demoWeights(): Promise<readonly PageWeight[]> {
  const dist = join(folder, 'demo')
  const content = join(root, 'content')
  await secondsOf([join(root, 'src/cli/build.ts'), '--content', content, '--out', dist])
  const slugs = await readdir(join(dist, 'notes'))
  const weights = await Promise.all(
    slugs.map((slug) => pageWeight(dist, `notes/${slug}/index.html`)),
  )
  return weights.sort((a, b) => all(b) - all(a))
}

export async function siteTimes(many: number, pairs: number) {
  console.log(`making ${many} notes of ${blocksInNote} blocks …`)
  await rm(folder, { recursive: true, force: true })
  const notes = await makeNotes(many)
  const content = join(folder, 'content')
  const plain = join(folder, 'plain')
  const dist = join(folder, 'dist')
  await writeNotes(content, notes.kit)
  await writePlainSite(plain, notes.typed)

  const builds: { kit: number; typed: number }[] = []
  for (let pair = 0; pair < pairs; pair++) {
    const kit = (): Promise<number> =>
      secondsOf([join(root, 'src/cli/build.ts'), '--content', content, '--out', dist])
    const typed = (): Promise<number> => secondsOf([join(root, 'tests/bench/plain.ts'), plain])
    // The first of a pair finds the disk colder: they take turns.
    const [first, second] =
      pair % 2 === 0 ? [await kit(), await typed()] : [await typed(), await kit()]
    const [kitSeconds, typedSeconds] = pair % 2 === 0 ? [first, second] : [second, first]
    builds.push({ kit: kitSeconds, typed: typedSeconds })
    console.log(
      `pair ${pair + 1}: ${kitSeconds.toFixed(1)} s with the kit, ${typedSeconds.toFixed(1)} s typed, ratio ${(kitSeconds / typedSeconds).toFixed(2)}`,
    )
  }

  const [reading, ledger] = await timed(() => loadLedger(content))
  const [working] = await timed(() => work(ledger.published, ledger.calculators))
  const [verifying] = await timed(() => verifySite(dist))

  const files = await readdir(join(dist, '_astro'))
  const scripts = await Promise.all(
    files
      .filter((name) => name.endsWith('.js'))
      .map(async (name) => ({
        name: name.split('.')[0] ?? '',
        bytes: weightOf(await readFile(join(dist, '_astro', name))),
      })),
  )
  const perCalculator = scripts
    .filter(({ name }) => name in calculators)
    .sort((a, b) => b.bytes - a.bytes)
  const opening = scripts
    .filter(({ name }) => name === 'try')
    .reduce((sum, { bytes }) => sum + bytes, 0)
  const first = await firstScript(dist, 'notes/evening-1/index.html')
  const weights = await demoWeights()
  const [heaviest] = weights

  await rm(folder, { recursive: true, force: true })
  const result = {
    notes: many,
    blocks: notes.blocks,
    numbers: notes.numbers,
    build: {
      pairs: builds,
      kitMedian: median(builds.map(({ kit }) => kit)),
      typedMedian: median(builds.map(({ typed }) => typed)),
      ratioMedian: median(builds.map(({ kit, typed }) => kit / typed)),
    },
    ledger: { wholeSeconds: reading, workSeconds: working, verifySeconds: verifying },
    pages: weights,
    script: {
      firstBytes: first,
      openingBytes: opening,
      perCalculator: Object.fromEntries(perCalculator.map(({ name, bytes }) => [name, bytes])),
    },
  }
  const rows: readonly Row[] = [
    ['build, with the kit (median)', `${result.build.kitMedian.toFixed(2)} s`, ''],
    ['build, typed by hand (median)', `${result.build.typedMedian.toFixed(2)} s`, ''],
    [
      'ratio of the two (median of pairs)',
      result.build.ratioMedian.toFixed(3),
      'aim: at most 1.15',
    ],
    [
      'ledger: read, link and work',
      `${reading.toFixed(2)} s`,
      `${notes.numbers} numbers, ${notes.blocks} blocks`,
    ],
    ['ledger: work alone', `${working.toFixed(2)} s`, ''],
    ['verify', `${verifying.toFixed(2)} s`, ''],
    [
      'a note of the demo, median',
      `${median(weights.map(all))} B`,
      'HTML, styles and script without pictures; aim: at most 61440 B, gzip',
    ],
    [
      '  the heaviest',
      `${heaviest === undefined ? 0 : all(heaviest)} B`,
      heaviest === undefined
        ? ''
        : `${heaviest.page.split('/')[1] ?? ''}: ${heaviest.html} B HTML, ${heaviest.styles} B styles, ${heaviest.script} B script`,
    ],
    [
      'files before a page is drawn',
      String(Math.max(...weights.map(({ beforePaint }) => beforePaint))),
      'aim: at most 2, the page and its styles',
    ],
    ['script before anything is asked for', `${first} B`, 'aim: at most 12288 B, gzip'],
    ['script at the first press', `${opening} B`, 'gzip'],
    [
      'largest calculator',
      `${perCalculator[0]?.bytes ?? 0} B`,
      `${perCalculator[0]?.name ?? ''}; aim: at most 6144 B, gzip`,
    ],
    ['median calculator', `${median(perCalculator.map(({ bytes }) => bytes))} B`, 'gzip'],
  ]
  return { result, rows }
}
