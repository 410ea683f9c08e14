/**
 * Holds a finished site against its own `numbers.json`. In: the folder of the site, nothing else. Out:
 * every place where a value, a verdict or a printed digit is not what working it again gives.
 *
 * Three steps: the numbers are worked again from their roots and written again, which must give the
 * same file; every card, story table and printed number is rendered again, which must give the same
 * text; and no page may print a number that the file does not have.
 */
import { readdir, readFile } from 'node:fs/promises'
import { join, sep } from 'node:path'
import {
  blockHtml,
  contextOf,
  dataHtml,
  numberHtml,
  storiesHtml,
  type CardContext,
} from '../card/index.ts'
import { loadCalculators } from '../ledger/load.ts'
import type { Published } from '../ledger/published.ts'
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
    if (name.endsWith('.html'))
      pages.set(name.split(sep).join('/'), await readFile(join(dist, name), 'utf8'))
  return verifyTexts(text, pages)
}

/** The same for texts already read. `pages`: path within the site -> HTML. */
export async function verifyTexts(
  numbersJson: string,
  pages: ReadonlyMap<string, string>,
): Promise<readonly Discrepancy[]> {
  const published = readRecord(numbersJson)
  if (published === undefined)
    return [
      { file: 'numbers.json', line: 1, text: 'numbers.json is not what the kit writes (format 1)' },
    ]
  const calculators = await loadCalculators(published.blocks.map(({ calculator }) => calculator))
  const found = [...compareRecord(numbersJson, recordText(work(published, calculators).published))]
  const base = baseOf(pages)
  for (const note of published.notes) {
    const file = `notes/${note.slug}/index.html`
    const html = pages.get(file)
    if (html === undefined)
      found.push({ file, line: 1, text: `the note \`${note.slug}\` has no page` })
  }
  for (const [file, html] of pages) {
    const page = /^notes\/([^/]+)\/index\.html$/.exec(file)?.[1]
    const ctx = contextOf(published, { base, calculators, page })
    found.push(...verifyPage(file, html, published, ctx))
  }
  return found
}

function* compareRecord(read: string, expected: string): Generator<Discrepancy> {
  if (read === expected) return
  const is = read.split('\n')
  const due = expected.split('\n')
  for (let index = 0; index < Math.max(is.length, due.length); index++) {
    if (is[index] === due[index]) continue
    const id = /"id":"((?:[^"\\]|\\.)*)"/.exec(is[index] ?? due[index] ?? '')?.[1]
    yield {
      file: 'numbers.json',
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
  published: Published,
  ctx: CardContext,
): Generator<Discrepancy> {
  const covered: (readonly [from: number, to: number])[] = []
  const lineAt = (index: number): number => html.slice(0, Math.max(0, index)).split('\n').length
  const expect = (fragment: string, from: number, what: string): Discrepancy | undefined => {
    const at = html.indexOf(fragment)
    if (at >= 0) {
      covered.push([at, at + fragment.length])
      return undefined
    }
    return { file, line: lineAt(from), text: `${what} is not what working it again gives` }
  }
  if (ctx.page !== undefined) {
    for (const block of published.blocks.filter(({ note }) => note === ctx.page)) {
      const wrong = expect(
        blockHtml(block, ctx),
        html.indexOf(`data-card="${block.id}"`),
        `the card \`${block.id}\``,
      )
      if (wrong !== undefined) yield wrong
    }
    const own = published.numbers.filter(({ note }) => note === ctx.page)
    const wrong = expect(
      storiesHtml(own, ctx),
      html.indexOf('id="Story-'),
      'the table of the numbers’ stories',
    )
    if (wrong !== undefined) yield wrong
  }
  for (const { index } of html.matchAll(
    /<(?:a class="number-link"|span class="number-plain"|data )/g,
  )) {
    if (covered.some(([from, to]) => index >= from && index < to)) continue
    const fragment = printedNumber(html, index, ctx)
    if (typeof fragment === 'string') {
      covered.push([index, index + fragment.length])
      continue
    }
    yield { file, line: lineAt(index), text: fragment.wrong }
  }
}

/** The fragment at `index` when it is what its number renders to. */
function printedNumber(html: string, index: number, ctx: CardContext): string | { wrong: string } {
  const data = html.indexOf('<data ', index)
  const tag = html.slice(data, html.indexOf('>', data) + 1)
  const attribute = (name: string): string | undefined =>
    new RegExp(` ${name}="([^"]*)"`)
      .exec(tag)?.[1]
      ?.replaceAll('&quot;', '"')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&')
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
