/**
 * What the rendering functions may ask while they work: the published ledger, looked up by id, the
 * calculators in use, and addresses below the site's base path. The build, the browser and `verify`
 * make it from the same data, so that the same text comes out. `page` is the note whose page is
 * being written; without it, links to a number's story lead to its note's page.
 */
import type { Calculator } from '../../calculators/define.ts'
import { movedSince, type Moved } from '../ledger/as-was.ts'
import type {
  Published,
  PublishedBlock,
  PublishedNote,
  PublishedNumber,
  UnitSystem,
} from '../ledger/published.ts'
import { lookupOf } from './lookup.ts'

export interface CardContext {
  readonly published: Published
  readonly units: readonly UnitSystem[]
  readonly page: string | undefined
  /** Id of the block whose own page is being written; `page` is undefined there. */
  readonly alone: string | undefined
  number(id: string): PublishedNumber | undefined
  block(id: string): PublishedBlock | undefined
  note(slug: string): PublishedNote | undefined
  calculator(id: string): Calculator | undefined
  /** The number that took this one's place at a later date. */
  replacedBy(id: string): PublishedNumber | undefined
  /** What later numbers made of a worked one. */
  movedSince(number: PublishedNumber): Moved | undefined
  /** `/notes/x/` -> the same below the site's base path. */
  href(path: string): string
  /** The ledger as published, when this one holds a reader's figures. */
  readonly builder: CardContext | undefined
}

export interface ContextOptions {
  /** `/` or `/kit/` or `/kit`. */
  readonly base: string
  readonly page?: string | undefined
  readonly alone?: string | undefined
  readonly calculators: ReadonlyMap<string, Calculator>
  /** What the builder published, when `published` holds a reader's figures. */
  readonly builder?: Published | undefined
}

export function contextOf(published: Published, options: ContextOptions): CardContext {
  const lookup = lookupOf(published)
  const root = options.base.replace(/\/+$/, '')
  return {
    published,
    units: published.site.units,
    page: options.page,
    alone: options.alone,
    number: (id) => lookup.number(id),
    block: (id) => lookup.block(id),
    note: (slug) => lookup.note(slug),
    calculator: (id) => options.calculators.get(id),
    replacedBy: (id) => lookup.replacedBy(id),
    movedSince: (number) => movedSince(published, options.calculators, number),
    href: (path) => root + path,
    builder:
      options.builder === undefined
        ? undefined
        : contextOf(options.builder, { ...options, builder: undefined }),
  }
}
