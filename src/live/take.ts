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

/** Opens or closes it below a card. */
export async function toggleTake(card: HTMLElement): Promise<boolean> {
  const open = card.querySelector<HTMLElement>(':scope > .take-part')
  if (open !== null) {
    open.remove()
    return false
  }
  const one = await reader()
  const id = card.dataset.block ?? ''
  const place = document.createElement('section')
  place.className = 'take-part on-screen'
  place.setAttribute('aria-label', 'Take it along')
  place.innerHTML = [
    '<div class="try-buttons">',
    '<button type="button" data-take="text">Copy as text</button>',
    '<button type="button" data-take="mdx">Copy for a note of your own</button>',
    '<button type="button" class="plain" data-take="csv">Numbers of this note, CSV</button>',
    '<button type="button" class="plain" data-take="json">Numbers of this note, JSON</button></div>',
    '<p role="status"></p><label hidden>What was copied <textarea readonly rows="12"></textarea></label>',
  ].join('')
  card.querySelector(':scope > .try-bar')?.before(place)
  place.addEventListener('click', ({ target }) => {
    const what =
      target instanceof Element
        ? target.closest<HTMLElement>('[data-take]')?.dataset.take
        : undefined
    if (what === 'text' || what === 'mdx')
      void copy(place, what === 'text' ? textOf(id, one) : mdxOf(id, one))
    else if (what === 'csv' || what === 'json') download(what, one)
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
    said.textContent = 'Copied.'
  } catch {
    said.textContent = 'This browser does not copy by itself: the text is selected below.'
    field.focus()
    field.select()
  }
}

function download(kind: 'csv' | 'json', one: Reader): void {
  const { ctx, page, calculators } = one.engine
  const published = {
    ...ctx.published,
    numbers: ctx.published.numbers.filter(({ note }) => note === page.page),
    blocks: ctx.published.blocks.filter(({ note }) => note === page.page),
  }
  const text =
    kind === 'csv'
      ? byteOrderMark + csvText(published, ctx.builder?.published, calculators)
      : jsonText(published, whoseNow(one))
  save(text, kind === 'csv' ? 'text/csv' : 'application/json', `${page.page}.${kind}`)
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
