/**
 * Shows a reader's figures on the page: every card and number that moved is rendered again by the same
 * functions as in the build, marked as the reader's, beside the builder's. What the build wrote is kept
 * as it is and put back as it was.
 */
import type { Calculator } from '../../calculators/define.ts'
import { cardHtml, type CardParts } from '../card/card.ts'
import { contextOf, type CardContext } from '../card/context.ts'
import type { drawingHtml } from '../card/drawing.ts'
import type { cardHazardsHtml } from '../card/hazards.ts'
import { numberHtml } from '../card/number.ts'
import type { Published, PublishedBlock } from '../ledger/published.ts'

/** The builder's figures, and how to work them. */
export interface PageOfFigures {
  /** The part of the ledger that the page stands on. */
  readonly published: Published
  readonly calculators: ReadonlyMap<string, Calculator>
  readonly base: string
  readonly page: string
}

/** What the build wrote, and what stands in its place now. */
interface Place {
  readonly original: Element
  current: Element
}

const places = new Map<Element, Place>()

/** `current`: false when newer figures were entered while something was fetched; nothing is shown then. */
export async function show(
  ready: PageOfFigures,
  yours: Published,
  changed: ReadonlySet<string>,
  moved: ReadonlySet<string>,
  current: () => boolean,
): Promise<boolean> {
  const { base, page, calculators } = ready
  const ctx = contextOf(yours, { base, page, calculators, builder: ready.published })
  const cards = [...document.querySelectorAll<HTMLElement>('work-card')]
  const blocks = cards.flatMap((card) => ctx.block(card.dataset.block ?? '') ?? [])
  const stories = document.querySelector('[data-stories]')
  const [makers, storiesHtml] = await Promise.all([
    makersFor(
      blocks.filter(({ id }) => changed.has(id)),
      ctx,
    ),
    stories && import('../card/stories.ts').then((module) => module.storiesHtml),
  ])
  if (!current()) return false
  // From here on at once, so that no reader sees half of it.
  for (const card of cards) {
    const block = ctx.block(card.dataset.block ?? '')
    const section = places.get(card)?.current ?? card.querySelector(':scope > .card')
    if (block === undefined || section === null) continue
    if (!changed.has(block.id)) restore(card)
    else put(card, section, cardHtml(block, ctx, 'yours', partsOf(block, section, ctx, makers)))
  }
  showNumbers(ctx, moved)
  if (stories?.firstElementChild && storiesHtml) {
    const own = yours.numbers.filter(({ note }) => note === page)
    put(stories, places.get(stories)?.current ?? stories.firstElementChild, storiesHtml(own, ctx))
  }
  return true
}

/** Fetched only where a card needs them. */
interface Makers {
  readonly drawingHtml: typeof drawingHtml | undefined
  readonly cardHazardsHtml: typeof cardHazardsHtml | undefined
}

async function makersFor(blocks: readonly PublishedBlock[], ctx: CardContext): Promise<Makers> {
  const draws = blocks.some(({ calculator }) => ctx.calculator(calculator)?.plot !== undefined)
  const warns = blocks.some((block) => !hasItsLine(block, ctx))
  const [drawing, hazards] = await Promise.all([
    draws ? import('../card/drawing.ts') : undefined,
    warns ? import('../card/hazards.ts') : undefined,
  ])
  return { drawingHtml: drawing?.drawingHtml, cardHazardsHtml: hazards?.cardHazardsHtml }
}

/** Whether the builder's card already names just these hazards; the page then has their panels. */
function hasItsLine(block: PublishedBlock, ctx: CardContext): boolean {
  const before = ctx.builder?.block(block.id)?.hazards ?? []
  return before.join(' ') === block.hazards.join(' ')
}

function partsOf(
  block: PublishedBlock,
  section: Element,
  ctx: CardContext,
  { drawingHtml, cardHazardsHtml }: Makers,
): CardParts {
  const calculator = ctx.calculator(block.calculator)
  const line = originalOf(section).querySelector(':scope > .hazard-line')?.outerHTML ?? ''
  const panels = block.hazards.filter((hazard) => missingPanel(hazard))
  return {
    hazards: hasItsLine(block, ctx) ? line : (cardHazardsHtml?.(block.hazards, panels) ?? ''),
    drawing: calculator === undefined ? '' : (drawingHtml?.(block, calculator, ctx) ?? ''),
  }
}

/** The card that the build wrote, also where another stands in its place. */
function originalOf(section: Element): Element {
  for (const { original, current } of places.values()) if (current === section) return original
  return section
}

/** A panel that the build did not write on this page. */
function missingPanel(hazard: string): boolean {
  const id = CSS.escape(`Hazard-${hazard}`)
  return document.querySelector(`main .hazard#${id}:not(.card *)`) === null
}

/** Numbers of the text: each is its wrapper, which stays the key when it has been replaced. */
function showNumbers(ctx: CardContext, moved: ReadonlySet<string>): void {
  const wrappers = new Set<Element>()
  for (const place of places.keys())
    if (place.matches('.number-link, .number-plain')) wrappers.add(place)
  for (const data of document.querySelectorAll('[data-number]')) {
    if (data.closest('work-card, [data-stories]') !== null) continue
    const wrapper = data.closest('.number-link, .number-plain')
    if (wrapper !== null && ![...places.values()].some(({ current }) => current === wrapper))
      wrappers.add(wrapper)
  }
  for (const wrapper of wrappers) {
    const data = wrapper.querySelector<HTMLElement>('[data-number]')
    const number = ctx.number(data?.dataset.number ?? '')
    if (data === null || number === undefined) continue
    if (!moved.has(number.id)) restore(wrapper)
    else {
      const { unit, digits } = data.dataset
      const html = numberHtml(number, ctx, {
        unit,
        digits: digits === undefined ? undefined : Number(digits),
        linked: wrapper.matches('a'),
        brackets: wrapper.querySelector('.other') !== null,
        anchor: wrapper.id !== '',
      })
      put(wrapper, places.get(wrapper)?.current ?? wrapper, html)
    }
  }
}

function put(key: Element, current: Element, html: string): void {
  const template = document.createElement('template')
  template.innerHTML = html
  const made = template.content.firstElementChild
  if (made === null) return
  current.replaceWith(made)
  const place = places.get(key)
  if (place === undefined) places.set(key, { original: current, current: made })
  else place.current = made
}

function restore(key: Element): void {
  const place = places.get(key)
  if (place === undefined) return
  place.current.replaceWith(place.original)
  places.delete(key)
}

export function restoreAll(): void {
  for (const key of [...places.keys()]) restore(key)
}
