/**
 * What a calculator's page hands to its form: the site's words, the calculator's sources, and the texts
 * that the site's blocks gave it, to start from. A block of data that is never run; `verify` expects it
 * to the letter. A figure that a block has by name is here as the page prints it.
 */
import type { Calculator, Source } from '../../calculators/define.ts'
import { dataBlockHtml } from '../card/html.ts'
import { lookupOf } from '../card/lookup.ts'
import type { CardContext } from '../card/context.ts'
import { parsedJson } from '../ledger/json.ts'
import type { PublishedSite } from '../ledger/published.ts'
import { textsOf, type Texts } from './texts.ts'

export interface AloneFigures {
  readonly site: PublishedSite
  readonly sources: readonly Source[]
  readonly blocks: readonly AloneBlock[]
}

export interface AloneBlock {
  readonly title: string
  /** Title of its note. */
  readonly note: string
  readonly texts: Texts
}

export const aloneFiguresId = 'Calculator-figures'

export function aloneFiguresHtml(calculator: Calculator, ctx: CardContext): string {
  const { title, description, vehicle, notice, address, units } = ctx.published.site
  const blocks = lookupOf(ctx.published)
    .usesOf(calculator.id)
    .map((block): AloneBlock => ({
      title: block.title,
      note: ctx.note(block.note)?.title ?? block.note,
      texts: textsOf(block, calculator.inputs, (id) => ctx.number(id)),
    }))
  const site = {
    title,
    description,
    vehicle,
    ...(notice === undefined ? {} : { notice }),
    ...(address === undefined ? {} : { address }),
    units,
  }
  const figures: AloneFigures = { site, sources: calculator.sources, blocks }
  return dataBlockHtml(aloneFiguresId, figures)
}

/** Reads that block's text; undefined when it is something else. */
export function readAloneFigures(text: string): AloneFigures | undefined {
  const data = parsedJson(text)
  return isAloneFigures(data) ? data : undefined
}

const isAloneFigures = (data: unknown): data is AloneFigures =>
  typeof data === 'object' &&
  data !== null &&
  'site' in data &&
  typeof data.site === 'object' &&
  'sources' in data &&
  Array.isArray(data.sources) &&
  'blocks' in data &&
  Array.isArray(data.blocks)
