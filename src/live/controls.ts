/**
 * The controls of a form as they stand on the page: what is typed in them, what is said of them, rows of
 * lists added and taken away. For the form of a card and that of a calculator alone.
 */
import type { Calculator } from '../../calculators/define.ts'
import { isHalfTyped, joined } from './field.ts'
import { listHtml } from './form.ts'
import type { judge } from './judge.ts'
import type { Row, Texts } from './texts.ts'

/** The control with the focus, when what stands in it is not yet a number. */
export function halfTypedIn(form: HTMLFormElement): string | undefined {
  const control = document.activeElement
  const isOne = control instanceof HTMLInputElement && form.contains(control)
  return isOne && control.inputMode !== '' && isHalfTyped(control.value) ? control.name : undefined
}

/** What stands in the fields, each with its unit. */
export function readForm(form: HTMLFormElement, calculator: Calculator): Texts {
  const data = new FormData(form)
  const plain = (name: string): string => {
    const value = data.get(name)
    return typeof value === 'string' ? value.trim() : ''
  }
  const text = (name: string): string => joined(plain(name), plain(`${name}:unit`))
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

/** Writes under each control what there is to say of it, and takes away what was said before. */
export function showSaid(form: HTMLFormElement, said: ReturnType<typeof judge>): void {
  for (const place of form.querySelectorAll('.try-said')) {
    const control = document.getElementById(place.id.slice(0, -'-said'.length))
    const one = said.get(control?.getAttribute('name') ?? '')
    if (one?.level === 'error') control?.setAttribute('aria-invalid', 'true')
    else control?.removeAttribute('aria-invalid')
    if (place.textContent !== (one?.text ?? '')) place.textContent = one?.text ?? ''
  }
}

/** Says something of the whole form, also to those who do not see it. */
export function tell(form: HTMLFormElement, text: string): void {
  const status = form.querySelector('.try-status')
  if (status !== null && status.textContent !== text) status.textContent = text
}

/** A press on one of the buttons of a list; undefined where it was none. */
export function pressRow(
  event: Event,
  form: HTMLFormElement,
  calculator: Calculator,
  prefix: string,
): 'added' | 'removed' | undefined {
  const target =
    event.target instanceof Element
      ? event.target.closest<HTMLElement>('[data-add], [data-remove]')
      : null
  const key = target?.dataset.add ?? target?.dataset.remove
  if (target === null || key === undefined) return undefined
  const removes = target.dataset.add === undefined
  const texts = readForm(form, calculator)[key]
  const rows = typeof texts === 'object' ? [...texts] : []
  if (removes) rows.splice(Number(target.dataset.row), 1)
  else rows.push({})
  const list = form.querySelector(`[data-list="${CSS.escape(key)}"]`)
  if (list === null) return undefined
  list.innerHTML = listHtml(key, calculator.inputs, rows, prefix)
  const next = removes
    ? list.querySelector<HTMLElement>('[data-add]')
    : [...list.querySelectorAll('.try-row')].at(-1)?.querySelector<HTMLElement>('input, select')
  next?.focus()
  return removes ? 'removed' : 'added'
}
