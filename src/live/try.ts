/**
 * A reader's figures on a page: opens a card's form, reads what is entered and says what is wrong with
 * it. Fetched at the first press of the button; what works and shows the figures (`bench.ts`) follows
 * while the reader types.
 */
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import type { Overrides } from '../ledger/override.ts'
import type { Published, PublishedBlock } from '../ledger/published.ts'
import { readRecord } from '../ledger/record.ts'
import type { Bench } from './bench.ts'
import { formHtml, judge, listHtml, overridesOf, textsOf, type Row, type Texts } from './form.ts'

/** From the last key to the working. */
const pause = 120

const entered = new Map<string, Overrides>()
let figures: Promise<Published> | undefined
let bench: Promise<Bench> | undefined

const base = (): string => document.documentElement.dataset.base ?? '/'

/** The numbers that a page stands on; asked for again after a failure. */
function figuresOf(page: string): Promise<Published> {
  figures ??= fetchFigures(`${base()}notes/${page}/numbers.json`)
  figures.catch(() => (figures = undefined))
  return figures
}

async function fetchFigures(address: string): Promise<Published> {
  const response = await fetch(address)
  if (!response.ok) throw new Error('the numbers of this page could not be fetched')
  const published = readRecord(await response.text())
  if (published === undefined) throw new Error('the numbers of this page could not be read')
  return published
}

function benchFor(published: Published, page: string): Promise<Bench> {
  bench ??= import('./bench.ts').then(({ benchOf }) => benchOf(published, base(), page))
  bench.catch(() => (bench = undefined))
  return bench
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
  const id = card.dataset.block ?? ''
  const page = id.slice(0, id.indexOf('/'))
  const published = await figuresOf(page)
  const block = published.blocks.find((one) => one.id === id)
  const calculator = block && (await registry[block.calculator]?.())
  if (block === undefined || calculator === undefined)
    throw new Error('this card has no calculator here')
  const form = openForm(card, block, calculator, published, page)
  button?.setAttribute('aria-expanded', 'true')
  form.querySelector<HTMLElement>('input, select')?.focus()
  void benchFor(published, page)
}

function openForm(
  card: HTMLElement,
  block: PublishedBlock,
  calculator: Calculator,
  published: Published,
  page: string,
): HTMLFormElement {
  const numbers = new Map(published.numbers.map((number) => [number.id, number]))
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

  /** Works with everything that was entered on this page. */
  const update = async (after = ''): Promise<void> => {
    form.setAttribute('aria-busy', 'true')
    try {
      const all = Object.fromEntries(
        [...entered.values()].flatMap((overrides) => Object.entries(overrides)),
      )
      const sentence = await (await benchFor(published, page)).update(all, block.id)
      if (sentence !== undefined) tell(form, sentence + after)
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error)
      tell(form, `This could not be worked (${why}). The page shows the builder’s figures.`)
    } finally {
      form.removeAttribute('aria-busy')
    }
  }
  const run = (): void => {
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
    void update()
  }
  let timer: ReturnType<typeof setTimeout> | undefined
  form.addEventListener('input', () => {
    clearTimeout(timer)
    timer = setTimeout(run, pause)
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
    void update(' These are the builder’s figures.')
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
