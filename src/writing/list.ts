/**
 * The list of what can be written, made of the kit itself: its elements and what each must say, its
 * calculators, its units. In: the site's base path. Out: the whole list as HTML, the same wherever it is
 * made, so that `verify` makes it again and holds the page against it.
 *
 * The examples are a note of a small ledger of their own (`example/`), read, worked and shown like any
 * other; none of its numbers is among those of the site.
 */
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Root, RootContent } from 'mdast'
import { toString } from 'mdast-util-to-string'
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { contextOf, escape, firm, lookupOf, storiesHtml } from '../card/index.ts'
import { usageText } from '../card/usage.ts'
import { loadCalculators, loadLedger, type Ledger } from '../ledger/load.ts'
import { elementAttributes, kitElements } from '../ledger/read/kit.ts'
import { fillNote } from '../mdx/fill.ts'
import { parseNote } from '../mdx/parse.ts'
import type { PictureFacts } from '../photos/facts.ts'
import { picturePaths } from '../photos/of-notes.ts'
import { pageLookup } from '../site/page.ts'
import { htmlOfNode } from './html.ts'
import { unitsHtml, waysHtml } from './units.ts'
import { words } from '../words/words.ts'
import { wordsHtml } from './messages.ts'
import { elementPurposes, otherPurposes } from './purposes.ts'

export const exampleFolder = join(import.meta.dirname, 'example')
const slug = 'examples'
const note = join(exampleFolder, 'notes', `${slug}.mdx`)

let pictures: ReadonlyMap<string, PictureFacts> = new Map()

/** Pictures of the examples, once the list was made. */
export const examplePictures = (): ReadonlyMap<string, PictureFacts> => pictures

export async function writingListHtml(base: string): Promise<string> {
  const ledger = await loadLedger(exampleFolder)
  const { site } = ledger
  if (site === undefined || ledger.problems.length > 0)
    throw new Error(`the kit’s own examples are at fault: ${ledger.problems[0]?.text ?? ''}`)
  pictures = picturePaths(ledger)
  const based = { ...ledger, site: { ...site, base } }
  const sections = sectionsOf(await readFile(note, 'utf8'), based)
  const all = [...(await loadCalculators(Object.keys(registry))).values()]
  const ctx = contextOf(ledger.published, { base, page: slug, calculators: ledger.calculators })
  const numbers = lookupOf(ledger.published).numbersOf(slug)
  const others = sections.filter(({ title }) => !kitElements.includes(title))
  return [
    `<h1>${words`What can be written`}</h1>`,
    `<p class="lead">${words`Plain Markdown, and what stands here. Each example is worked out by the same rules as a note; its numbers are invented, and none of them is among those of the notes.`}</p>`,
    `<ul>${headings.map(([id, text]) => `<li><a href="#${id}">${text}</a></li>`).join('')}</ul>`,
    headingHtml('Elements'),
    ...kitElements.map((name) => elementHtml(name, sections)),
    headingHtml('In-the-text'),
    ...others.map((one) => `<section>${exampleHtml(one)}</section>`),
    `<h3>${words`Where the numbers of the examples come from`}</h3>`,
    `<p>${words`Such a table ends each note.`}</p>`,
    atHome(storiesHtml(numbers, ctx), base),
    headingHtml('All-calculators'),
    `<p>${words`Each with all that it needs, to copy and to change. Its page has the inputs, ranges, limits and sources.`}</p>`,
    ...all.map((one) => calculatorHtml(one, base)),
    headingHtml('Ways'),
    waysHtml(),
    headingHtml('Units'),
    `<p>${words`Units can be multiplied, divided and raised: ${codes(['W/(m²·K)', 'kWh/100 km'])}. An ${codes(['s'])} at the end and ${codes(['^2'])} for ${codes(['²'])} are understood.`}</p>`,
    unitsHtml(all),
  ].join('\n')
}

const headings = [
  ['Elements', words`Elements`],
  ['In-the-text', words`In the text`],
  ['All-calculators', words`Calculators`],
  ['Ways', words`How numbers are typed`],
  ['Units', words`Units`],
] as const

const headingHtml = (id: (typeof headings)[number][0]): string =>
  `<h2 id="${id}">${headings.find(([one]) => one === id)?.[1] ?? ''}</h2>`

interface Section {
  /** Its heading in the example. */
  readonly title: string
  /** As an author types it. */
  readonly source: string
  readonly html: string
}

/** A heading, and the example. */
function sectionsOf(raw: string, ledger: Ledger): readonly Section[] {
  const parsed = parseNote(raw, note)
  if (parsed.tree === undefined) throw new Error('the kit’s own examples cannot be read')
  const groups = groupsOf(parsed.tree).map(([heading, ...example]) => ({
    title: heading === undefined ? '' : toString(heading),
    example,
    source: raw.slice(
      example[0]?.position?.start.offset ?? 0,
      example.at(-1)?.position?.end.offset ?? 0,
    ),
  }))
  const page = pageLookup(() => ledger)(note)
  if (page === undefined) throw new Error('the kit’s own examples are not in their ledger')
  return groups.map(({ title, example, source }) => {
    const tree: Root = { type: 'root', children: example }
    fillNote(tree, parsed.blanked, page)
    return {
      title,
      source,
      html: atHome(tree.children.map(htmlOfNode).join('\n'), ledger.site?.base ?? '/'),
    }
  })
}

function groupsOf({ children }: Root): RootContent[][] {
  const groups: RootContent[][] = []
  for (const child of children)
    if (child.type === 'heading') groups.push([child])
    else groups.at(-1)?.push(child)
  return groups
}

/** Examples have no note, no list of parts and no page of a block: what would lead there is no link. */
function atHome(html: string, base: string): string {
  const isThere = (href: string): boolean =>
    href.startsWith('#') || /^(?:calculators|tables|photos)\//.test(href.slice(base.length))
  return html
    .replace(/ <a class="alone"[^>]*>.*?<\/a>/g, '')
    .replaceAll('<work-card ', '<div ')
    .replaceAll('</work-card>', '</div>')
    .replace(
      /<a\b([^>]*?) href="([^"]*)"([^>]*)>(.*?)<\/a>/gs,
      (link, before: string, href: string, after: string, inner: string) =>
        isThere(href) ? link : `<span${before}${after}>${inner}</span>`,
    )
}

const codes = (names: readonly string[]): string =>
  names.map((name) => `<code>${escape(name)}</code>`).join(', ')

function attributesHtml(name: string): string {
  const known: Readonly<
    Record<string, { readonly needs: readonly string[]; readonly may: readonly string[] }>
  > = elementAttributes
  const { needs = [], may = [] } = known[name] ?? {}
  const said = [
    ...(needs.length > 0 ? [words`It must say ${codes(needs)}.`] : []),
    ...(may.length > 0 ? [words`It may say ${codes(may)}.`] : []),
  ]
  return `<p>${said.join(' ') || words`It takes no words of its own: what it holds stands between its tags.`}</p>`
}

function elementHtml(name: string, sections: readonly Section[]): string {
  const section = sections.find(({ title }) => title === name)
  return [
    `<section id="Element-${name}"><h3><code>&lt;${escape(name)}&gt;</code></h3>`,
    purposeHtml(elementPurposes.get(name)),
    attributesHtml(name),
    section === undefined ? '' : exampleOnly(section, `&lt;${escape(name)}&gt;`),
    '</section>',
  ].join('')
}

function exampleHtml(section: Section): string {
  const [title, purpose] = otherPurposes.get(section.title) ?? [section.title]
  return `<h3>${escape(title)}</h3>${purposeHtml(purpose)}${exampleOnly(section, escape(title))}`
}

const purposeHtml = (text: string | undefined): string =>
  text === undefined ? '' : `<p>${wordsHtml(text)}</p>`

const exampleOnly = ({ source, html }: Section, label: string): string =>
  `${copyHtml(source, words`${label}, as it is typed`)}<div class="example">${html}</div>`

const copyHtml = (text: string, label: string): string =>
  `<pre tabindex="0" role="group" aria-label="${label}"><code>${escape(text)}</code></pre>`

function calculatorHtml(calculator: Calculator, base: string): string {
  const { id, title, purpose } = calculator
  const href = escape(`${base.replace(/\/?$/, '/')}calculators/${id}/`)
  return `<section><h3 id="Use-${escape(id)}"><a href="${href}">${escape(title)}</a></h3><p>${escape(firm(purpose))}</p>${copyHtml(usageText(calculator), escape(words`${title}, to copy`))}</section>`
}
