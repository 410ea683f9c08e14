/**
 * Where numbers and verdicts stand on the page. The elements themselves stay, so that what has the focus
 * keeps it; what is inside them is exchanged, and what the build wrote is kept to be put back.
 */
export interface Place {
  readonly element: HTMLElement
  /** What the build wrote inside it. */
  readonly original: readonly ChildNode[]
  readonly id: string
  /** How the build was asked to write it. */
  readonly unit: string | undefined
  readonly digits: number | undefined
  readonly brackets: boolean
}

const nobody: readonly Place[] = []

export interface Places {
  readonly all: readonly Place[]
  of(id: string): readonly Place[]
  readonly ids: ReadonlySet<string>
}

/** Numbers outside of cards and of the table of stories, which are written anew as a whole. */
export function numberPlaces(root: ParentNode): Places {
  const found = new Map<string, Place[]>()
  for (const data of root.querySelectorAll<HTMLElement>('[data-number]')) {
    const element = data.closest<HTMLElement>('.number-link, .number-plain')
    if (element === null || data.closest('work-card, [data-stories]') !== null) continue
    const { number: id = '', unit, digits } = data.dataset
    const place = {
      element,
      original: [...element.childNodes],
      id,
      unit,
      digits: digits === undefined ? undefined : Number(digits),
      brackets: element.querySelector('.other') !== null,
    }
    found.set(id, [...(found.get(id) ?? []), place])
  }
  const all = [...found.values()].flat()
  return { all, of: (id) => found.get(id) ?? nobody, ids: new Set(found.keys()) }
}

/** The paragraph, row or such in which a number stands: fewer to watch than numbers. */
export const surroundingOf = ({ element }: Place): Element =>
  element.closest('p, li, tr, dt, dd, figcaption, caption, h1, h2, h3, h4') ?? element

export function restore({ element, original }: Place): void {
  if (element.firstChild !== original[0]) element.replaceChildren(...original)
}

/** Puts the inside of the one element that `html` is into `element`. */
export function fillFrom(element: Element, html: string): void {
  const made = elementOf(html)
  if (made !== null) element.replaceChildren(...made.childNodes)
}

export const elementOf = (html: string): Element | null => elementsOf(html)[0] ?? null

export function elementsOf(html: string): Element[] {
  if (html === '') return []
  const template = document.createElement('template')
  template.innerHTML = html
  return [...template.content.children]
}

/**
 * Makes `old` look like `made` with the fewest changes: texts and attributes where only they differ, whole
 * nodes where the structure does. The browser then lays out again what changed and no more.
 */
export function morph(old: Element, made: Element): void {
  for (const { name, value } of made.attributes)
    if (old.getAttribute(name) !== value) old.setAttribute(name, value)
  for (const { name } of [...old.attributes])
    if (!made.hasAttribute(name)) old.removeAttribute(name)
  const [before, after] = [[...old.childNodes], [...made.childNodes]]
  for (const [index, child] of after.entries()) {
    const was = before[index]
    if (was === undefined) old.append(child)
    else if (was.nodeType !== child.nodeType || was.nodeName !== child.nodeName)
      was.replaceWith(child)
    else if (was.isEqualNode(child)) continue
    else if (was instanceof Element && child instanceof Element) morph(was, child)
    else was.nodeValue = child.nodeValue
  }
  for (const extra of before.slice(after.length)) extra.remove()
}
