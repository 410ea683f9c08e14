/**
 * A reader's figures on a page: opens a card's form, works the ledger again with what is entered, and
 * shows every card and number of the page that moved, marked as the reader's, beside the builder's.
 * Fetched at the first press of the button. What the build wrote is kept as it is and put back as it
 * was; whatever goes wrong, the page goes back to it.
 */
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { verdictName, verdictWords } from '../card/words.ts'
import { workPublished, type Overrides } from '../ledger/override.ts'
import type { Published, PublishedBlock } from '../ledger/published.ts'
import { readRecord } from '../ledger/record.ts'
import { formHtml, judge, listHtml, overridesOf, textsOf, type Row, type Texts } from './form.ts'
import { restoreAll, show, type Bench } from './show.ts'
import { merged, movedIds, sameBlock, subsetFor } from './subset.ts'

const entered = new Map<string, Overrides>()
let bench: Promise<Bench> | undefined

function shownIds(): string[] {
  return [...document.querySelectorAll<HTMLElement>('[data-number]')].flatMap(
    (element) => element.dataset.number ?? [],
  )
}

async function prepare(): Promise<Bench> {
  const base = document.documentElement.dataset.base ?? '/'
  const response = await fetch(`${base}numbers.json`)
  if (!response.ok) throw new Error('the numbers of this site could not be fetched')
  const published = readRecord(await response.text())
  if (published === undefined) throw new Error('the numbers of this site could not be read')
  const cards = [...document.querySelectorAll<HTMLElement>('work-card')]
  const ids = cards.flatMap((card) => card.dataset.block ?? [])
  const part = subsetFor(published, [...ids, ...shownIds()])
  const used = [...new Set(part.blocks.map(({ calculator }) => calculator))]
  const loaded = await Promise.all(
    used.map(async (id): Promise<[string, Calculator][]> => {
      const calculator = await registry[id]?.()
      return calculator === undefined ? [] : [[id, calculator]]
    }),
  )
  const calculators = new Map(loaded.flat())
  const unchanged = workPublished(part, {}, calculators)
  const page = ids[0]?.slice(0, ids[0].indexOf('/')) ?? ''
  return { published, part, unchanged, calculators, base, page }
}

/** Opens or closes the form of a card. */
export async function toggle(card: HTMLElement): Promise<void> {
  const button = card.querySelector('.try-bar button')
  const open = card.querySelector<HTMLFormElement>('.try-form')
  if (open !== null) {
    open.hidden = !open.hidden
    button?.setAttribute('aria-expanded', String(!open.hidden))
    return
  }
  bench ??= prepare()
  bench.catch(() => (bench = undefined))
  const ready = await bench
  const block = ready.published.blocks.find(({ id }) => id === card.dataset.block)
  const calculator = block && ready.calculators.get(block.calculator)
  if (block === undefined || calculator === undefined)
    throw new Error('this card has no calculator here')
  const form = openForm(card, block, calculator, ready)
  button?.setAttribute('aria-expanded', 'true')
  form.querySelector<HTMLElement>('input, select')?.focus()
}

function openForm(
  card: HTMLElement,
  block: PublishedBlock,
  calculator: Calculator,
  ready: Bench,
): HTMLFormElement {
  const numbers = new Map(ready.published.numbers.map((number) => [number.id, number]))
  const builder = textsOf(block, calculator.inputs, (id) => numbers.get(id))
  const prefix = `Try-${block.name}`
  const form = document.createElement('form')
  form.className = 'try-form'
  form.noValidate = true
  form.setAttribute('aria-label', `Your figures for ${block.title}`)
  const fill = () => {
    form.innerHTML = formHtml(calculator, builder, prefix)
  }
  fill()
  card.append(form)

  const run = () => {
    const texts = readForm(form, calculator)
    const said = judge(calculator.inputs, texts)
    showSaid(form, said)
    const wrong = [...said.values()].filter(({ level }) => level === 'error').length
    if (wrong > 0) {
      tell(
        form,
        `${wrong === 1 ? 'One entry' : `${wrong} entries`} to put right. The card still shows the figures before.`,
      )
      return
    }
    entered.set(block.id, overridesOf(block, builder, texts))
    tell(form, update(ready, block.id))
  }
  let timer: ReturnType<typeof setTimeout> | undefined
  form.addEventListener('input', () => {
    clearTimeout(timer)
    timer = setTimeout(run, 500)
  })
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    clearTimeout(timer)
    run()
    form.querySelector<HTMLElement>('[aria-invalid=true]')?.focus()
  })
  form.addEventListener('reset', (event) => {
    event.preventDefault()
    clearTimeout(timer)
    entered.delete(block.id)
    fill()
    tell(form, `${update(ready, block.id)} These are the builder’s figures.`)
    form.querySelector<HTMLElement>('button[type=reset]')?.focus()
  })
  form.addEventListener('click', (event) => {
    const target =
      event.target instanceof Element
        ? event.target.closest<HTMLElement>('[data-add], [data-remove]')
        : null
    const key = target?.dataset.add ?? target?.dataset.remove
    if (target === null || key === undefined) return
    const texts = readForm(form, calculator)[key]
    const rows = typeof texts === 'object' ? [...texts] : []
    if (target.dataset.add === undefined) rows.splice(Number(target.dataset.row), 1)
    else rows.push({})
    const list = form.querySelector(`[data-list="${CSS.escape(key)}"]`)
    if (list === null) return
    list.innerHTML = listHtml(key, calculator.inputs, rows, prefix)
    const groups = [...list.querySelectorAll('.try-row')]
    const next =
      target.dataset.add === undefined
        ? list.querySelector<HTMLElement>('[data-add]')
        : groups.at(-1)?.querySelector<HTMLElement>('input, select')
    next?.focus()
    if (target.dataset.add === undefined) run()
  })
  return form
}

function readForm(form: HTMLFormElement, calculator: Calculator): Texts {
  const data = new FormData(form)
  const text = (name: string) => {
    const value = data.get(name)
    return typeof value === 'string' ? value.trim() : ''
  }
  return Object.fromEntries(
    Object.entries(calculator.inputs).map(([key, field]): [string, Texts[string]] => {
      if (field.type !== 'list') return [key, text(key)]
      const many = form.querySelectorAll(`[data-list="${CSS.escape(key)}"] .try-row`).length
      const rows = Array.from({ length: many }, (_, index): Row =>
        Object.fromEntries(
          Object.keys(field.fields).map((column) => [column, text(`${key}.${index}.${column}`)]),
        ),
      )
      return [key, rows]
    }),
  )
}

function showSaid(form: HTMLFormElement, said: ReturnType<typeof judge>): void {
  for (const control of form.querySelectorAll('input, select')) {
    const one = said.get(control.getAttribute('name') ?? '')
    if (one?.level === 'error') control.setAttribute('aria-invalid', 'true')
    else control.removeAttribute('aria-invalid')
    const place = form.querySelector(`#${CSS.escape(`${control.id}-said`)}`)
    if (place !== null && place.textContent !== (one?.text ?? ''))
      place.textContent = one?.text ?? ''
  }
}

function tell(form: HTMLFormElement, text: string): void {
  const status = form.querySelector('.try-status')
  if (status !== null && status.textContent !== text) status.textContent = text
}

/** Works with everything that was entered on this page and shows it; says how the block came out. */
function update(ready: Bench, id: string): string {
  try {
    const overrides: Overrides = Object.fromEntries(
      [...entered.values()].flatMap((one) => Object.entries(one)),
    )
    if (Object.keys(overrides).length === 0) {
      restoreAll()
      return verdictSentence(ready, ready.published, id)
    }
    const worked = workPublished(ready.part, overrides, ready.calculators)
    const changed = new Set<string>()
    const blocks = worked.blocks.map((block) => {
      const before = ready.unchanged.blocks.find((one) => one.id === block.id)
      if (before !== undefined && sameBlock(before, block)) return before
      changed.add(block.id)
      // The builder accepted a stop for the builder's figures, not for these.
      return { ...block, accepted: null }
    })
    const yours = merged(ready.published, { ...worked, blocks })
    const moved = movedIds(ready.unchanged, worked)
    show(ready, yours, changed, moved)
    return verdictSentence(ready, yours, id)
  } catch (error) {
    restoreAll()
    return `This could not be worked (${error instanceof Error ? error.message : String(error)}). The page shows the builder’s figures.`
  }
}

function verdictSentence(ready: Bench, yours: Published, id: string): string {
  const words = (published: Published) => {
    const block = published.blocks.find((one) => one.id === id)
    return block === undefined ? '' : verdictWords[verdictName(block)]
  }
  return yours === ready.published
    ? `Verdict: ${words(yours)}.`
    : `Verdict with your figures: ${words(yours)}. With the builder’s: ${words(ready.published)}.`
}
