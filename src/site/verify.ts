/**
 * Holds a finished site against its own `numbers.json`. In: the folder of the site, nothing else. Out:
 * every place where a value, a verdict or a printed digit is not what working it again gives.
 *
 * The numbers are worked again from their roots and written again, which must give the same file.
 * Every stretch of a page that is made of results (`printed.ts`), every number in a line of text and
 * every listed verdict is rendered again, which must give the same text. No page may print a number that the file does not have, nor a card without the warnings
 * that stand before it.
 */
import { readdir, readFile } from 'node:fs/promises'
import { join, sep } from 'node:path'
import { calculators as registry } from '../../calculators/index.ts'
import { tables as tableRegistry } from '../../calculators/tables/index.ts'
import {
  contextOf,
  dataHtml,
  lookupOf,
  numberHtml,
  panelHtml,
  verdictHtml,
  type CardContext,
} from '../card/index.ts'
import { partOf } from './part.ts'
import { printedOn, type Kit } from './printed.ts'
import { loadCalculators } from '../ledger/load.ts'
import { readRecord, recordText } from '../ledger/record.ts'
import { work } from '../ledger/work.ts'

export interface Discrepancy {
  /** Within the site: `notes/cooling/index.html`. */
  readonly file: string
  readonly line: number
  readonly text: string
}

export async function verifySite(dist: string): Promise<readonly Discrepancy[]> {
  let text: string
  try {
    text = await readFile(join(dist, 'numbers.json'), 'utf8')
  } catch {
    return [
      {
        file: 'numbers.json',
        line: 1,
        text: 'there is no numbers.json: this is not a finished site',
      },
    ]
  }
  const pages = new Map<string, string>()
  for (const name of await readdir(dist, { recursive: true }))
    if (name.endsWith('.html') || partFile.test(name.split(sep).join('/')))
      pages.set(name.split(sep).join('/'), await readFile(join(dist, name), 'utf8'))
  const lost = [...pages.keys()]
    .filter((name) => /^notes\/[^/]+\/index\.html$/.test(name))
    .map((name) => name.replace('index.html', 'numbers.json'))
    .filter((name) => !pages.has(name))
    .map((file) => ({ file, line: 1, text: 'the numbers of this page are not there' }))
  return [...lost, ...(await verifyTexts(text, pages))]
}

/** The numbers that one note's page stands on. */
const partFile = /^notes\/([^/]+)\/numbers\.json$/

/** The same for texts already read. `pages`: path within the site -> its text. */
export async function verifyTexts(
  numbersJson: string,
  pages: ReadonlyMap<string, string>,
): Promise<readonly Discrepancy[]> {
  const published = readRecord(numbersJson)
  if (published === undefined)
    return [
      { file: 'numbers.json', line: 1, text: 'numbers.json is not what the kit writes (format 1)' },
    ]
  const calculators = await loadCalculators(Object.keys(registry))
  const found = [
    ...compareRecord(
      'numbers.json',
      numbersJson,
      recordText(work(published, calculators).published),
    ),
  ]
  const base = baseOf(pages)
  const tables = await Promise.all(Object.values(tableRegistry).map((load) => load()))
  const kit = { calculators, tables: new Map(tables.map((table) => [table.id, table])) }
  for (const note of published.notes) {
    const file = `notes/${note.slug}/index.html`
    const html = pages.get(file)
    if (html === undefined)
      found.push({ file, line: 1, text: `the note \`${note.slug}\` has no page` })
  }
  for (const [file, html] of pages) {
    const part = partFile.exec(file)?.[1]
    if (part !== undefined) {
      const shown = shownIn(pages.get(`notes/${part}/index.html`) ?? '')
      found.push(...compareRecord(file, html, recordText(partOf(published, part, shown))))
      continue
    }
    const page = /^notes\/([^/]+)\/index\.html$/.exec(file)?.[1]
    const ctx = contextOf(published, { base, calculators, page })
    found.push(...verifyPage(file, html, ctx, kit))
  }
  return found
}

/** Ids of the numbers that a page prints. */
function shownIn(html: string): string[] {
  const ids = [...html.matchAll(/<data [^>]*data-number="([^"]*)"/g)].map(([, id = '']) =>
    plain(id),
  )
  return [...new Set(ids)]
}

function* compareRecord(file: string, read: string, expected: string): Generator<Discrepancy> {
  if (read === expected) return
  const is = read.split('\n')
  const due = expected.split('\n')
  for (let index = 0; index < Math.max(is.length, due.length); index++) {
    if (is[index] === due[index]) continue
    const id = /"id":"((?:[^"\\]|\\.)*)"/.exec(is[index] ?? due[index] ?? '')?.[1]
    yield {
      file,
      line: index + 1,
      text: `${id === undefined ? 'this line' : `\`${id}\``} is not what working it again gives${difference(is[index] ?? '', due[index] ?? '')}`,
    }
  }
}

/** The first stretch where two lines part. */
function difference(is: string, due: string): string {
  let start = 0
  while (start < is.length && is[start] === due[start]) start++
  const from = Math.max(0, start - 24)
  return `: it reads …${is.slice(from, start + 24)}…, working gives …${due.slice(from, start + 24)}…`
}

/** The base path the site was built for, read off its pages. */
function baseOf(pages: ReadonlyMap<string, string>): string {
  const home = pages.get('index.html') ?? ''
  return /<html[^>]* data-base="([^"]*)"/.exec(home)?.[1] ?? '/'
}

function* verifyPage(
  file: string,
  html: string,
  ctx: CardContext,
  kit: Kit,
): Generator<Discrepancy> {
  const covered: (readonly [from: number, to: number])[] = []
  const lineAt = (index: number): number => html.slice(0, Math.max(0, index)).split('\n').length
  for (const { what, html: due, near } of printedOn(file, ctx, kit)) {
    const at = html.indexOf(due)
    if (at >= 0) covered.push([at, at + due.length])
    else {
      const line = lineAt(html.indexOf(near))
      yield { file, line, text: `${what} is not what working it again gives` }
    }
  }
  for (const block of ctx.page === undefined ? [] : lookupOf(ctx.published).blocksOf(ctx.page)) {
    const card = html.indexOf(`data-card="${block.id}"`)
    for (const hazard of block.hazards) {
      const panel = html.indexOf(panelHtml(hazard))
      if (panel < 0 || panel > card)
        yield {
          file,
          line: lineAt(card),
          text: `the warning \`${hazard}\` does not stand before the card \`${block.id}\``,
        }
    }
  }
  for (const [index, id] of listedVerdicts(html, ctx))
    yield { file, line: lineAt(index), text: `the verdict of \`${id}\` is another` }
  let reached = 0
  for (const { index } of html.matchAll(
    /<(?:a class="number-link"|span class="number-plain"|data )/g,
  )) {
    if (index < reached || covered.some(([from, to]) => index >= from && index < to)) continue
    const fragment = printedNumber(html, index, ctx)
    if (typeof fragment === 'string') {
      reached = index + fragment.length
      continue
    }
    // The number inside a wrong link is not told again.
    reached = html.indexOf('</data>', index)
    yield { file, line: lineAt(index), text: fragment.wrong }
  }
}

/** Verdicts in lists, each before the link to its block. */
function* listedVerdicts(
  html: string,
  ctx: CardContext,
): Generator<readonly [index: number, id: string]> {
  const listed =
    /<strong class="verdict [^>]*>[^<]*<\/strong>\s*<a href="(?:[^"#]*\/notes\/([^"/#]+)\/)?#([^"]+)"/g
  for (const { 0: found, 1: slug = ctx.page ?? '', 2: name = '', index } of html.matchAll(listed)) {
    const block = ctx.block(`${slug}/${name}`)
    if (block !== undefined && !found.startsWith(verdictHtml(block))) yield [index, block.id]
  }
}

/** An attribute's value as text. */
function plain(value: string): string {
  return value
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
}

/** The fragment at `index` when it is what its number renders to. */
function printedNumber(html: string, index: number, ctx: CardContext): string | { wrong: string } {
  const data = html.indexOf('<data ', index)
  const tag = html.slice(data, html.indexOf('>', data) + 1)
  const attribute = (name: string): string | undefined => {
    const value = new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1]
    return value === undefined ? undefined : plain(value)
  }
  const id = attribute('data-number')
  const number = id === undefined ? undefined : ctx.number(id)
  if (number === undefined)
    return { wrong: `prints a number \`${id ?? ''}\` that numbers.json does not have` }
  const digits = attribute('data-digits')
  const options = {
    unit: attribute('data-unit'),
    digits: digits === undefined ? undefined : Number(digits),
  }
  if (data === index) {
    const due = dataHtml(number, options)
    return html.startsWith(due, index)
      ? due
      : { wrong: `\`${number.id}\` prints something else than ${number.shown}` }
  }
  const opening = html.slice(index, html.indexOf('>', index) + 1)
  const linked = opening.startsWith('<a ')
  const anchor = opening.includes(' id="')
  for (const brackets of [true, false]) {
    const due = numberHtml(number, ctx, { ...options, linked, anchor, brackets })
    if (html.startsWith(due, index)) return due
  }
  return { wrong: `\`${number.id}\` prints something else than ${number.shown}` }
}
