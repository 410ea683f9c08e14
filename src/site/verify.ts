/**
 * Holds a finished site against its own `numbers.json`. In: the folder of the site, nothing else. Out:
 * every place where a value, a verdict or a printed digit is not what working it again gives.
 *
 * The numbers are worked again from their roots and written again, which must give the same file.
 * Every stretch of a page that is made of results (`printed.ts`), every number in a line of text and
 * every listed verdict is rendered again, which must give the same text. No page may print a number that
 * the file does not have, nor a card without the warnings that stand before it, nor have figures for a
 * reader's browser beside it that are not the file's.
 */
import { readdir, readFile } from 'node:fs/promises'
import { join, sep } from 'node:path'
import { calculators as registry } from '../../calculators/index.ts'
import { tables as tableRegistry } from '../../calculators/tables/index.ts'
import {
  contextOf,
  dataHtml,
  editionOf,
  lookupOf,
  numberHtml,
  panelHtml,
  sheetName,
  redirectsOf,
  verdictHtml,
  type CardContext,
} from '../card/index.ts'
import { attributeText } from './attribute.ts'
import { deadLinks } from './dead-links.ts'
import { compareTexts, lineIn, type Discrepancy } from './differences.ts'
import { handedOutFaults } from './handed-out.ts'
import { compareMade, isMade, missingMade } from './made.ts'
import { rootedPage } from './addresses.ts'
import { isOfHost } from './own-files.ts'
import { partBelow, partOf } from './part.ts'
import { printedOn, type Kit } from './printed.ts'
import { loadCalculators } from '../ledger/load.ts'
import type { Published, PublishedBlock } from '../ledger/published.ts'
import { readRecord, recordText } from '../ledger/record.ts'
import { work } from '../ledger/work.ts'
import { writingListHtml } from '../writing/list.ts'
import { words } from '../words/words.ts'

export async function verifySite(dist: string): Promise<readonly Discrepancy[]> {
  let text: string
  try {
    text = await readFile(join(dist, 'numbers.json'), 'utf8')
  } catch {
    return [
      {
        file: 'numbers.json',
        line: 1,
        text: words`there is no numbers.json: this is not a finished site`,
      },
    ]
  }
  const base = baseOf(await readFile(join(dist, '404.html'), 'utf8').catch(() => ''))
  const pages = new Map<string, string>()
  const files = new Set<string>()
  for (const name of await readdir(dist, { recursive: true })) {
    const file = name.split(sep).join('/')
    if (isOfHost(file)) continue
    files.add(file)
    if ([/\.html$/, partFile, figuresFile].some((one) => one.test(file)) || isMade(file))
      pages.set(file, rooted(file, await readFile(join(dist, name), 'utf8'), base))
  }
  const read = readRecord(text)
  const renamed = read === undefined ? new Map<string, string>() : redirectsOf(read, base)
  const lost = [...pages.keys()]
    .filter((name) => /^notes\/[^/]+\/index\.html$/.test(name))
    .filter((name) => !renamed.has(name))
    .map((name) => name.replace('index.html', 'numbers.json'))
    .filter((name) => !pages.has(name))
    .map((file) => ({ file, line: 1, text: words`the numbers of this page are not there` }))
  const notHanded = [...pages]
    .filter(([, html]) => handedEdition(html) !== undefined)
    .map(([name]) => name.replace(/[^/]*$/, 'figures.json'))
    .filter((name) => !pages.has(name))
    .map((file) => ({
      file,
      line: 1,
      text: words`the figures for the reader’s browser are not there`,
    }))
  return [
    ...lost,
    ...notHanded,
    ...missingMade(read, pages),
    ...(await verifyRooted(text, pages, base)),
    ...deadIn(pages, files, base),
  ]
}

function deadIn(
  pages: ReadonlyMap<string, string>,
  files: ReadonlySet<string>,
  base: string,
): Discrepancy[] {
  return [...deadLinks(pages, files, base)].map(({ file, index, text, link }) => ({
    file,
    line: lineIn(pages.get(file) ?? '', index),
    text,
    link,
  }))
}

/** The numbers that one note's page stands on. */
const partFile = /^notes\/([^/]+)\/numbers\.json$/

/** What a page, of a note or of one of its blocks, hands to its reader's browser. */
const figuresFile = /^notes\/([^/]+)\/(?:([^/]+)\/)?figures\.json$/

/** The edition that a page says its figures are of; undefined where it has none. */
const handedEdition = (html: string): string | undefined =>
  /<html[^>]* data-figures="([^"]*)"/.exec(html)?.[1]

/** A page with the addresses that it was rendered with. */
const rooted = (file: string, text: string, base: string): string =>
  file.endsWith('.html') ? rootedPage(text, file, base) : text

/** The same for texts already read. `pages`: path within the site -> its text. */
export function verifyTexts(
  numbersJson: string,
  pages: ReadonlyMap<string, string>,
): Promise<readonly Discrepancy[]> {
  const base = baseOf(pages.get('404.html') ?? '')
  const read = [...pages].map(([file, text]) => [file, rooted(file, text, base)] as const)
  return verifyRooted(numbersJson, new Map(read), base)
}

async function verifyRooted(
  numbersJson: string,
  pages: ReadonlyMap<string, string>,
  base: string,
): Promise<readonly Discrepancy[]> {
  const published = readRecord(numbersJson)
  if (published === undefined)
    return [
      {
        file: 'numbers.json',
        line: 1,
        text: words`numbers.json is not what the kit writes (format 1)`,
      },
    ]
  const calculators = await loadCalculators(Object.keys(registry))
  const found = [
    ...compareTexts(
      'numbers.json',
      numbersJson,
      recordText(work(published, calculators).published),
    ),
  ]
  const tables = await Promise.all(Object.values(tableRegistry).map((load) => load()))
  const kit = {
    calculators,
    tables: new Map(tables.map((table) => [table.id, table])),
    writing: pages.has('writing/index.html') ? await writingListHtml(base) : undefined,
  }
  for (const note of published.notes) {
    const file = `notes/${note.slug}/index.html`
    const html = pages.get(file)
    if (html === undefined)
      found.push({ file, line: 1, text: words`the note \`${note.slug}\` has no page` })
  }
  for (const { id, note, name } of published.blocks) {
    const file = `notes/${note}/${name}/index.html`
    if (!pages.has(file))
      found.push({ file, line: 1, text: words`the block \`${id}\` has no page of its own` })
  }
  for (const { slug } of published.notes) {
    const file = `notes/${slug}/${sheetName}/index.html`
    if (!pages.has(file))
      found.push({ file, line: 1, text: words`the note \`${slug}\` has no wall sheet` })
  }
  const renamed = redirectsOf(published, base)
  for (const [file, due] of renamed) {
    const html = pages.get(file)
    if (html !== due)
      found.push({
        file,
        line: 1,
        text: words`the page of an older name does not lead to the new one`,
      })
  }
  const parts = new Map<string, Published>()
  const partOfNote = (slug: string): Published => {
    const shown = (): string[] => shownIn(pages.get(`notes/${slug}/index.html`) ?? '')
    const part = parts.get(slug) ?? partOf(published, slug, shown())
    parts.set(slug, part)
    return part
  }
  const handedOut = (
    file: string,
    text: string,
    { note, name }: { note: string; name: string | undefined },
  ): readonly Discrepancy[] => {
    const block = name === undefined ? undefined : `${note}/${name}`
    const part =
      block === undefined
        ? lookupOf(published).note(note) && partOfNote(note)
        : lookupOf(published).block(block) && partBelow(published, note, [block])
    const faults =
      part === undefined
        ? [words`there is no page here to have figures`]
        : handedOutFaults(text, part, { published, slug: note, block }, calculators)
    return faults.map((fault) => ({ file, line: 1, text: fault }))
  }
  found.push(...(await compareMade(published, pages, base, calculators)))
  for (const [file, html] of pages) {
    if (isMade(file) || renamed.has(file)) continue
    const slug = partFile.exec(file)?.[1]
    if (slug !== undefined) {
      found.push(...compareTexts(file, html, recordText(partOfNote(slug))))
      continue
    }
    const handed = figuresFile.exec(file)
    if (handed !== null) {
      const [, note = '', name] = handed
      found.push(...handedOut(file, html, { note, name }))
      continue
    }
    const [, note = '', name] = /^notes\/([^/]+)(?:\/([^/]+))?\/index\.html$/.exec(file) ?? []
    const alone = name === undefined || name === sheetName ? undefined : `${note}/${name}`
    const page = note === '' || name !== undefined ? undefined : note
    const ctx = contextOf(published, { base, calculators, page, alone })
    found.push(...verifyPage(file, html, ctx, kit))
    if ((page ?? alone) !== undefined && handedEdition(html) !== editionOf(published, note))
      found.push({
        file,
        line: 1,
        text: words`the page says another edition than its figures have`,
      })
  }
  return found
}

/** Ids of the numbers that a page prints. */
function shownIn(html: string): string[] {
  const ids = [...html.matchAll(/<data [^>]*data-number="([^"]*)"/g)].map(([, id = '']) =>
    attributeText(id),
  )
  return [...new Set(ids)]
}

/** The base path the site was built for, read off the page that says it from the root. */
function baseOf(lost: string): string {
  return /<html[^>]* data-base="([^"]*)"/.exec(lost)?.[1] ?? '/'
}

function* verifyPage(
  file: string,
  html: string,
  ctx: CardContext,
  kit: Kit,
): Generator<Discrepancy> {
  const covered: (readonly [from: number, to: number])[] = []
  const lineAt = (index: number): number => lineIn(html, index)
  for (const { what, html: due, near } of printedOn(file, ctx, kit)) {
    const at = html.indexOf(due)
    if (at >= 0) covered.push([at, at + due.length])
    else {
      const line = lineAt(html.indexOf(near))
      yield { file, line, text: words`${what} is not what working it again gives` }
    }
  }
  for (const block of blocksOn(ctx)) {
    const card = html.indexOf(`data-card="${block.id}"`)
    for (const hazard of block.hazards) {
      const panel = html.indexOf(panelHtml(hazard))
      if (panel < 0 || panel > card)
        yield {
          file,
          line: lineAt(card),
          text: words`the warning \`${hazard}\` does not stand before the card \`${block.id}\``,
        }
    }
  }
  for (const [index, id] of listedVerdicts(html, ctx))
    yield { file, line: lineAt(index), text: words`the verdict of \`${id}\` is another` }
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

/** Whose cards stand on the page. */
function blocksOn(ctx: CardContext): readonly PublishedBlock[] {
  if (ctx.page !== undefined) return lookupOf(ctx.published).blocksOf(ctx.page)
  return ctx.alone === undefined ? [] : [ctx.block(ctx.alone) ?? []].flat()
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

/** The fragment at `index` when it is what its number renders to. */
function printedNumber(html: string, index: number, ctx: CardContext): string | { wrong: string } {
  const data = html.indexOf('<data ', index)
  const tag = html.slice(data, html.indexOf('>', data) + 1)
  const attribute = (name: string): string | undefined => {
    const value = new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1]
    return value === undefined ? undefined : attributeText(value)
  }
  const id = attribute('data-number')
  const number = id === undefined ? undefined : ctx.number(id)
  if (number === undefined)
    return { wrong: words`prints a number \`${id ?? ''}\` that numbers.json does not have` }
  const digits = attribute('data-digits')
  const options = {
    unit: attribute('data-unit'),
    digits: digits === undefined ? undefined : Number(digits),
  }
  if (data === index) {
    const due = dataHtml(number, options)
    return html.startsWith(due, index)
      ? due
      : { wrong: words`\`${number.id}\` prints something else than ${number.shown}` }
  }
  const opening = html.slice(index, html.indexOf('>', index) + 1)
  const linked = opening.startsWith('<a ')
  const anchor = opening.includes(' id="')
  for (const brackets of [true, false]) {
    const due = numberHtml(number, ctx, { ...options, linked, anchor, brackets })
    if (html.startsWith(due, index)) return due
  }
  return { wrong: words`\`${number.id}\` prints something else than ${number.shown}` }
}
