/**
 * Shows a reader's figures on the page: every card and number that moved is rendered again by the same
 * functions as in the build, marked as the reader's, beside the builder's. What the build wrote is kept
 * as it is and put back as it was.
 */
import type { Calculator } from '../../calculators/define.ts'
import { blockHtml } from '../card/block.ts'
import { contextOf, type CardContext } from '../card/context.ts'
import { hazardElementId } from '../card/hazards.ts'
import { numberHtml } from '../card/number.ts'
import { storiesHtml } from '../card/stories.ts'
import type { Published } from '../ledger/published.ts'

/** Everything that a page needs to work its figures. */
export interface Bench {
  readonly published: Published
  /** The part worked here, and the same worked without any change. */
  readonly part: Published
  readonly unchanged: Published
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

export function show(
  ready: Bench,
  yours: Published,
  changed: ReadonlySet<string>,
  moved: ReadonlySet<string>,
): void {
  const { base, page, calculators } = ready
  const ctx = contextOf(yours, { base, page, calculators, builder: ready.published })
  for (const card of document.querySelectorAll<HTMLElement>('work-card')) {
    const block = ctx.block(card.dataset.block ?? '')
    const section = places.get(card)?.current ?? card.querySelector(':scope > .card')
    if (block === undefined || section === null) continue
    if (!changed.has(block.id)) restore(card)
    else {
      const panels = block.hazards.filter((hazard) => missingPanel(hazard))
      put(card, section, blockHtml(block, ctx, 'yours', { panels }))
    }
  }
  showNumbers(ctx, moved)
  const stories = document.querySelector('[data-stories]')
  if (stories?.firstElementChild) {
    const own = yours.numbers.filter(({ note }) => note === page)
    put(stories, places.get(stories)?.current ?? stories.firstElementChild, storiesHtml(own, ctx))
  }
}

/** A panel that the build did not write on this page. */
function missingPanel(hazard: string): boolean {
  return (
    document.querySelector(`main .hazard#${CSS.escape(hazardElementId(hazard))}:not(.card *)`) ===
    null
  )
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
