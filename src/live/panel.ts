/**
 * The panel of one number: what it is, the builder's value, and a small field for one's own. Opened by
 * pressing the number, closed by Escape or its button; the number keeps its link to its story, which the
 * panel has too. It stands over the page, so that nothing on the page moves when it opens.
 */
import { escape } from '../card/html.ts'
import { isTableResult, storyHref, textOf } from '../card/number.ts'
import { capital, howWords, labelOf } from '../card/words.ts'
import type { Field } from '../../calculators/define.ts'
import type { PublishedNumber } from '../ledger/published.ts'
import { onlyRef } from '../ledger/refs.ts'
import { controlHtml, halves, isHalfTyped, joined, unitsOffered } from './field.ts'
import { parseQuantity } from '../quantity/index.ts'
import { patience } from './quiet.ts'
import type { Reader } from './reader.ts'
import { followWriting } from './steady.ts'
import { figureSaid, figureText, type Target } from './targets.ts'
import { words } from '../words/words.ts'

let panel: HTMLElement | undefined
let opener: HTMLElement | undefined

export function openPanel(link: HTMLElement, reader: Reader): void {
  const id = link.querySelector<HTMLElement>('[data-number]')?.dataset.number
  if (id !== undefined) openFor(id, link, reader)
}

function openFor(id: string, near: HTMLElement, reader: Reader): void {
  const number = reader.engine.ctx.number(id)
  if (number === undefined) {
    const href = near.getAttribute('href')
    if (href !== null) location.assign(href)
    return
  }
  closePanel(false)
  opener = near
  const element = document.createElement('div')
  element.className = 'own-panel on-screen'
  element.setAttribute('role', 'dialog')
  const target = reader.target(id)
  element.setAttribute('aria-labelledby', 'Own-title')
  element.innerHTML = panelHtml(number, target, reader)
  const { height } = near.getBoundingClientRect()
  place(element, near, height)
  document.querySelector('main')?.append(element)
  panel = element
  followWriting(() => {
    // A number that grows to a second line leaves the panel where it is.
    if (near.isConnected) place(element, near, height)
  })
  connect(element, target, reader)
  element.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') closePanel(true)
  })
  element.addEventListener('click', ({ target: pressed }) => {
    if (!(pressed instanceof Element)) return
    if (pressed.closest('[data-close]')) closePanel(true)
    const other = pressed.closest<HTMLElement>('[data-open]')?.dataset.open
    if (other !== undefined) openFor(other, near, reader)
  })
  const first = element.querySelector<HTMLElement>(
    'input, select, textarea, [data-open], a, button',
  )
  first?.focus({ preventScroll: true })
  element.scrollIntoView({ block: 'nearest' })
  if (first instanceof HTMLInputElement) first.select()
}

/** `back`: to the number from which it was opened. */
function closePanel(back: boolean): void {
  const id = opener?.querySelector<HTMLElement>('[data-number]')?.dataset.number
  panel?.remove()
  panel = undefined
  followWriting(undefined)
  if (!back || opener === undefined) return
  // A card that was written anew has another link in its place.
  const again = `main [data-number="${CSS.escape(id ?? '')}"]`
  const place = opener.isConnected
    ? opener
    : document.querySelector(again)?.closest<HTMLElement>('a, [tabindex]')
  place?.focus()
}

/** So far below the top of the number, within the width of the page. */
function place(element: HTMLElement, near: HTMLElement, height: number): void {
  const { left, top } = near.getBoundingClientRect()
  const room = document.documentElement.clientWidth
  const wide = Math.min(360, room - 16)
  element.style.width = `${wide}px`
  element.style.left = `${Math.max(8, Math.min(left, room - wide - 8)) + scrollX}px`
  element.style.top = `${top + height + 6 + scrollY}px`
}

function panelHtml(number: PublishedNumber, target: Target | undefined, reader: Reader): string {
  const { ctx } = reader.engine
  const builder = ctx.builder?.number(number.id) ?? number
  const label = capital(labelOf(number, ctx))
  const within =
    builder.plusMinusShown === undefined ? '' : ` ± ${builder.plusMinusShown.replace(/^±\s*/, '')}`
  const value = `<b>${escape(textOf(builder) + within)}</b>`
  return [
    `<p class="own-title" id="Own-title">${escape(label)}</p>`,
    `<p class="own-builder">${words`The builder’s: ${value}, ${howWords(builder)}`}</p>`,
    target === undefined
      ? worked(number, reader)
      : fieldHtml(target, reader.own(target.id), number, reader),
    '<div class="try-buttons">',
    target === undefined
      ? ''
      : `<button type="button" class="plain" data-back${reader.own(target.id) === undefined ? ' hidden' : ''}>${words`Take mine back`}</button>`,
    `<a class="own-story" href="${escape(storyHref(number.id, ctx))}" data-close>${words`Where it comes from`}</a>`,
    `<button type="button" class="plain" data-close>${words`Close`}</button></div>`,
  ].join('')
}

/** A result has no field: what it rests on has. */
function worked(number: PublishedNumber, reader: Reader): string {
  const { ctx } = reader.engine
  const rests = number.rests
    .flatMap((id) => ctx.number(id) ?? [])
    .filter((one) => !isTableResult(one))
  const items = rests.map(
    (one) =>
      `<li><button type="button" class="plain" data-open="${escape(one.id)}">${escape(`${labelOf(one, ctx)} ${textOf(one)}`)}</button></li>`,
  )
  return items.length === 0
    ? ''
    : `<p>${words`It is worked out. Change what it rests on:`}</p><ul class="own-rests">${items.join('')}</ul>`
}

function fieldHtml(
  target: Target,
  own: Target['builder'] | undefined,
  number: PublishedNumber,
  reader: Reader,
): string {
  const { field, builder, key } = target
  const text = own ?? builder
  if (typeof text !== 'string' || field?.type === 'list')
    return `<p>${words`This is one row of a list: “Try your figures” under its card changes the list.`}</p>`
  const attributes = `id="Own-field" name="${escape(key)}" aria-describedby="Own-said"`
  const label = `<label for="Own-field">${words`Yours`}</label>`
  const said = '<p class="try-said" id="Own-said"></p>'
  const root = rootHtml(number, reader)
  const units =
    field?.type === 'number' ? offered(field, text, typeof builder === 'string' ? builder : '') : []
  const control = controlHtml(field, key, text, attributes, { units })
  return `<div class="try-field">${label}${control}${said}</div>${root}`
}

function offered(field: Extract<Field, { type: 'number' }>, text: string, builder: string) {
  const units = [text, builder].flatMap((one) => {
    const read = parseQuantity(one, field.of)
    return read.ok ? [read.unit] : []
  })
  return unitsOffered(field, ...units)
}

/** An input that was given by name can be changed there as well, and moves more. */
function rootHtml({ expression, block }: PublishedNumber, reader: Reader): string {
  const id = onlyRef(expression)
  const root = id === undefined || block === null ? undefined : reader.engine.ctx.number(id)
  if (root === undefined) return ''
  const label = escape(labelOf(root, reader.engine.ctx))
  return `<p class="own-root">${words`Here it changes this block only.`} <button type="button" class="plain" data-open="${escape(root.id)}">${words`Change ${label} everywhere`}</button></p>`
}

function connect(element: HTMLElement, target: Target | undefined, reader: Reader): void {
  if (target === undefined) return
  const input = element.querySelector<HTMLInputElement | HTMLSelectElement>('#Own-field')
  const unit = element.querySelector<HTMLSelectElement>('select[name$=":unit"]')
  const said = element.querySelector<HTMLElement>('#Own-said')
  const back = element.querySelector<HTMLElement>('[data-back]')
  if (input === null || said === null) return
  let timer: ReturnType<typeof setTimeout> | undefined

  const tell = (text: string, wrong: boolean): void => {
    said.textContent = text
    if (wrong) input.setAttribute('aria-invalid', 'true')
    else input.removeAttribute('aria-invalid')
    reader.engine.markOld(wrong ? [target.block?.id ?? target.id] : [])
    if (back !== null) back.hidden = reader.own(target.id) === undefined
  }
  const run = (finished: boolean): void => {
    clearTimeout(timer)
    const text = joined(input.value, unit?.value ?? '')
    if (text === '' && finished) {
      reader.put(target, undefined)
      tell('', false)
      return
    }
    if (!finished && isHalfTyped(input.value)) return
    const found = [...figureSaid(target, text).values()][0]
    if (found?.level !== 'error') {
      reader.put(target, text)
      tell(found?.text ?? '', false)
    } else if (finished) tell(found.text, true)
    else timer = setTimeout(() => run(true), patience)
  }
  input.addEventListener('input', () => {
    run(false)
  })
  input.addEventListener('change', () => {
    run(true)
  })
  unit?.addEventListener('change', () => {
    run(true)
  })
  element.addEventListener('keydown', (event) => {
    if (event.key === 'Enter' && event.target === input) run(true)
  })
  back?.addEventListener('click', () => {
    reader.put(target, undefined)
    const text = figureText(target.builder)
    const units = unit === null ? [] : [...unit.options].map(({ value }) => value)
    const { number, unit: own } = halves(text, units)
    input.value = unit === null ? text : number
    if (unit !== null && own !== '') unit.value = own
    tell('', false)
    input.focus()
  })
}
