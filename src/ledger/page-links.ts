/**
 * Links to pages of the site, `/parts/`. In: the path, and which pages there are. Out: what is wrong with
 * it. Files (`/numbers.csv`) and places on pages of the kit are told when the finished site is looked
 * through.
 */
import { decodedPart } from './decoded.ts'
import { didYouMean, type Said } from './report.ts'
import { words } from '../words/words.ts'

/** What the site has a page for, each. */
export interface Families {
  readonly calculators: readonly string[]
  readonly tables: readonly string[]
  /** The list of what can be written is a page of the site. */
  readonly writing: boolean
}

interface Notes {
  /** Slug -> the pages below the note's own. */
  readonly pages: ReadonlyMap<string, readonly string[]>
  /** What a note was called -> what it is called. */
  readonly renamed: ReadonlyMap<string, string>
}

const single = ['numbers', 'parts', 'open', 'sources', 'writing']

export function sitePageFault(path: string, site: Families, notes: Notes): Said | undefined {
  const [head = '', name = '', below = '', ...more] =
    decodedPart(path).split('?')[0]?.slice(1).split('/') ?? []
  const isFile = /\.[^/]+$/.test(path)
  const families: Readonly<Record<string, readonly string[]>> = {
    calculators: site.calculators,
    tables: site.tables,
    notes: [...notes.pages.keys()],
  }
  const { [head]: family } = families
  if (isFile || (head === '' && path === '/')) return undefined
  if (family === undefined && !single.includes(head))
    return noPage(path, didYouMean(head, [...single, ...Object.keys(families)], '/', '/'))
  if (head === 'writing' && !site.writing)
    return noPage(
      path,
      words`write \`writing: true\` into \`site.yaml\`: it is only there with that`,
    )
  if (family === undefined && name !== '') return noPage(path, words`write \`/${head}/\``)
  if (head === 'notes' && name === '') return noPage(path, words`all notes are on \`/\``)
  if (family !== undefined && name !== '' && !family.includes(name)) {
    const now = head === 'notes' ? notes.renamed.get(name) : undefined
    return noPage(
      path,
      now === undefined
        ? didYouMean(name, family, `/${head}/`, '/')
        : words`it has another name now: \`./${now}.mdx\``,
    )
  }
  const pages = (head === 'notes' ? notes.pages.get(name) : undefined) ?? []
  if (below !== '' && (!pages.includes(below) || more.some((part) => part !== '')))
    return noPage(path, didYouMean(below, pages, `/${head}/${name}/`, '/'))
  if (/\/(?:\?.*)?$/.test(path)) return undefined
  return {
    rule: 'dead-link',
    text: words`a link to \`${path}\`: addresses of pages end in a slash`,
    hint: words`write \`${path}/\``,
  }
}

const noPage = (path: string, hint: string | undefined): Said => ({
  rule: 'dead-link',
  text: words`a link to \`${path}\`: the site has no such page`,
  hint,
})
