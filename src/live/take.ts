/**
 * Taking a block along: as MDX for one's own note, or as plain text with its working, sources and
 * hazards; and the numbers of the note as a file. What is copied stands in a field as well, since a
 * browser may refuse the clipboard.
 */
import {
  byteOrderMark,
  csvText,
  jsonText,
  mdxText,
  plainText,
  type Whose,
} from '../card/take/index.ts'
import { ownFigures } from './own.ts'
import { reader, type Reader } from './reader.ts'
import { words } from '../words/words.ts'

/** What there is to take, made when it is asked for. */
export interface Taken {
  readonly text: () => string
  readonly mdx: () => string
  /** Whole files, by kind; left out where there are none. */
  readonly files?: { readonly of: string; readonly save: (kind: 'csv' | 'json') => void }
}

/** Opens or closes it below a card. */
export async function toggleTake(card: HTMLElement): Promise<boolean> {
  return toggleTakeOf(card, async () => {
    const one = await reader()
    const id = card.dataset.block ?? ''
    return {
      text: () => textOf(id, one),
      mdx: () => mdxOf(id, one),
      files: {
        of: one.engine.page.block === undefined ? words`Numbers of this note` : words`Its numbers`,
        save: (kind) => {
          download(kind, one)
        },
      },
    }
  })
}

/** The same for a card whose figures come from elsewhere. */
export async function toggleTakeOf(
  card: HTMLElement,
  taken: () => Taken | Promise<Taken>,
): Promise<boolean> {
  const open = card.querySelector<HTMLElement>(':scope > .take-part')
  if (open !== null) {
    open.remove()
    return false
  }
  const { text, mdx, files } = await taken()
  const place = document.createElement('section')
  place.className = 'take-part on-screen'
  place.setAttribute('aria-label', words`Take it along`)
  place.innerHTML = [
    '<div class="try-buttons">',
    `<button type="button" data-take="text">${words`Copy as text`}</button>`,
    `<button type="button" data-take="mdx">${words`Copy for a note of your own`}</button>`,
    files === undefined
      ? ''
      : `<button type="button" class="plain" data-take="csv">${files.of}, CSV</button><button type="button" class="plain" data-take="json">${files.of}, JSON</button>`,
    `</div><p role="status"></p><label hidden>${words`What was copied`} <textarea readonly rows="12"></textarea></label>`,
  ].join('')
  card.querySelector(':scope > .try-bar')?.before(place)
  place.addEventListener('click', ({ target }) => {
    const what =
      target instanceof Element
        ? target.closest<HTMLElement>('[data-take]')?.dataset.take
        : undefined
    if (what === 'text' || what === 'mdx') void copy(place, what === 'text' ? text() : mdx())
    else if (what === 'csv' || what === 'json') files?.save(what)
  })
  return true
}

function whoseNow({ engine }: Reader): Whose {
  const { edition } = engine.page
  const changed = ownFigures().figures.size
  return changed === 0 ? { who: 'builder', edition } : { who: 'reader', changed, edition }
}

function blockOf(id: string, { engine }: Reader) {
  const block = engine.ctx.block(id)
  if (block === undefined) throw new Error('this block is not of this page')
  return block
}

function textOf(id: string, one: Reader): string {
  const block = blockOf(id, one)
  const sources = one.engine.page.sources[block.calculator] ?? []
  return plainText(block, one.engine.ctx, whoseNow(one), sources)
}

const mdxOf = (id: string, one: Reader): string =>
  mdxText(blockOf(id, one), one.engine.ctx, whoseNow(one))

async function copy(place: HTMLElement, text: string): Promise<void> {
  const said = place.querySelector('[role=status]')
  const label = place.querySelector('label')
  const field = place.querySelector('textarea')
  if (said === null || label === null || field === null) return
  label.hidden = false
  field.value = text
  try {
    await navigator.clipboard.writeText(text)
    said.textContent = words`Copied.`
  } catch {
    said.textContent = words`This browser does not copy by itself: the text is selected below.`
    field.focus()
    field.select()
  }
}

function download(kind: 'csv' | 'json', one: Reader): void {
  const { ctx, page, calculators } = one.engine
  // A block's own page has just what the block rests on.
  const here = ({ note }: { readonly note: string }): boolean =>
    page.block !== undefined || note === page.page
  const published = {
    ...ctx.published,
    numbers: ctx.published.numbers.filter(here),
    blocks: ctx.published.blocks.filter(here),
  }
  const text =
    kind === 'csv'
      ? byteOrderMark + csvText(published, ctx.builder?.published, calculators)
      : jsonText(published, whoseNow(one))
  save(
    text,
    kind === 'csv' ? 'text/csv' : 'application/json',
    `${(page.block ?? page.page).replace('/', '-')}.${kind}`,
  )
}

/** Hands the reader a file. */
export function save(text: string, type: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => {
    URL.revokeObjectURL(address)
  }, 10_000)
}
