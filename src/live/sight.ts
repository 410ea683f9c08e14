/**
 * What of the page is on the screen or near it. What is not is drawn later: when it comes there, when no
 * key was pressed for a moment, or at once when somebody prints. So a long page answers as fast as a
 * short one.
 *
 * A drawing of a thing that has another one waiting takes its place; the older is never done.
 */
import { afterQuiet } from './quiet.ts'
import { steady } from './steady.ts'

export interface Sight<Thing> {
  /** Draws now where `thing` is in sight, else when it comes there or somebody rests. */
  draw(thing: Thing, how: () => void): void
  /** Draws it when it is next looked for: something is still to be fetched. */
  putOff(thing: Thing, how: () => void): void
  /** The drawing that waits for it. */
  waitingFor(thing: Thing): (() => void) | undefined
  /** Another element stands for the thing now. */
  exchanged(thing: Thing, now: Element): void
  /** Draws at once what waits. */
  settle(): void
}

/** Pixels beyond the edges of the screen that count as in sight. */
const near = 100

export function sightOf<Thing>(elements: ReadonlyMap<Thing, Element>): Sight<Thing> {
  const waiting = new Map<Thing, () => void>()
  const things = new Map<Element, Set<Thing>>()
  const seen = new Set<Element>()
  const places = new Map(elements)
  const observer =
    'IntersectionObserver' in globalThis
      ? new IntersectionObserver(looked, { rootMargin: `${near}px` })
      : undefined
  for (const [thing, element] of elements) watch(thing, element)

  function watch(thing: Thing, element: Element): void {
    const these = things.get(element)
    if (these !== undefined) these.add(thing)
    else {
      things.set(element, new Set([thing]))
      observer?.observe(element)
    }
  }
  function looked(entries: readonly IntersectionObserverEntry[]): void {
    for (const { target, isIntersecting } of entries) {
      if (isIntersecting) seen.add(target)
      else seen.delete(target)
    }
    const come = entries.flatMap(({ target, isIntersecting }) =>
      isIntersecting ? [...(things.get(target) ?? [])] : [],
    )
    drawThese(come.filter((thing) => waiting.has(thing)))
  }
  function drawThese(these: readonly Thing[]): void {
    if (these.length === 0) return
    const draws = these.flatMap((thing) => waiting.get(thing) ?? [])
    for (const thing of these) waiting.delete(thing)
    steady(() => {
      for (const draw of draws) draw()
    })
  }
  const settle = (): void => {
    drawThese([...waiting.keys()])
  }
  const whenQuiet = afterQuiet(settle)

  return {
    draw(thing, how) {
      const element = places.get(thing)
      waiting.delete(thing)
      if (observer === undefined || (element !== undefined && seen.has(element))) how()
      else {
        waiting.set(thing, how)
        whenQuiet()
      }
    },
    putOff(thing, how) {
      waiting.set(thing, how)
    },
    waitingFor: (thing) => waiting.get(thing),
    exchanged(thing, now) {
      const before = places.get(thing)
      if (before !== undefined) {
        things.delete(before)
        observer?.unobserve(before)
        seen.delete(before)
      }
      places.set(thing, now)
      watch(thing, now)
    },
    settle,
  }
}
