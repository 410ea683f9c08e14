/**
 * The strip at the foot of the screen: how many of the reader's figures are in force, which, and the
 * buttons that take them back. It is there only while there are some; it also shows what a link brings,
 * before any of it counts.
 */
import { escape } from '../card/html.ts'
import { announce } from './announce.ts'
import { basePath } from './base.ts'
import { edition } from './handed.ts'
import { linkHash, readLink, type LinkedFigures } from './link.ts'
import { ownFigures, type Figures, type Own } from './own.ts'
import { isGone } from './page.ts'
import { afterQuiet } from './quiet.ts'
import { reader, startedReader, type Reader } from './reader.ts'
import { reasonOf } from './reason.ts'
import { figureSaid, figureText, isWrong } from './targets.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

let element: HTMLElement | undefined

/** Whether nothing of the reader's shows here: the page has no figures, or they could not be had. */
let showsBuilders = edition() === undefined

/** Shows the strip in its place, and keeps it right from now on. */
export function startStrip(host: HTMLElement): void {
  if (element !== undefined) return
  element = host
  host.setAttribute('role', 'region')
  host.setAttribute('aria-label', words`Your figures`)
  const strip = document.createElement('div')
  strip.className = 'own-strip'
  strip.hidden = true
  // What is to be announced may be there already.
  host.prepend(strip)
  const own = ownFigures()
  let drawn = ''
  // A folded strip says how many, which a key in a field seldom changes.
  const draw = (): void => {
    const ids = [...own.figures.keys()].join(' ')
    if (ids === drawn && host.querySelector('details')?.open === false) whenQuiet()
    else {
      drawn = ids
      drawStrip(host)
    }
  }
  const whenQuiet = afterQuiet(() => {
    drawStrip(host)
  })
  own.follow(draw)
  draw()
  host.addEventListener('click', ({ target }) => {
    if (target instanceof Element) pressed(target)
  })
  // What could not be had when the page was opened may come with a later press.
  document.addEventListener('worked-notes:reader', () => void followReader(host))
  void followReader(host)
}

async function followReader(host: HTMLElement): Promise<void> {
  if (edition() === undefined || ownFigures().figures.size === 0) return
  const one = await reader().catch(() => undefined)
  showsBuilders = one === undefined
  drawStrip(host, one)
}

function drawStrip(host: HTMLElement, started?: Reader): void {
  const strip = host.querySelector<HTMLElement>('.own-strip')
  if (strip === null) return
  const { figures, kept } = ownFigures()
  const open = strip.querySelector('details')?.open === true
  const held = strip.contains(document.activeElement)
  strip.hidden = figures.size === 0
  document.documentElement.toggleAttribute('data-own', figures.size > 0)
  writePaper(figures)
  if (figures.size === 0) {
    strip.innerHTML = ''
    return
  }
  const many = figures.size
  const inForce = counted(
    many,
    words`${many} figure of yours is in force.`,
    words`${many} figures of yours are in force.`,
  )
  const here = showsBuilders ? ` ${words`This page shows the builder’s.`}` : ''
  const notKept = kept
    ? ''
    : `<p>${words`This browser keeps nothing: they hold until you leave the page.`}</p>`
  strip.innerHTML = [
    `<details${open ? ' open' : ''}><summary>${inForce}${here}</summary>`,
    `<ul>${[...figures].map((entry) => itemHtml(entry, started)).join('')}</ul>${notKept}`,
    `<div class="try-buttons"><button type="button" data-all>${words`Take all back`}</button>`,
    `<button type="button" class="plain" data-link>${words`Link with these figures`}</button>`,
    `<button type="button" class="plain" data-print>${words`Print with these figures`}</button></div>`,
    `<p class="own-link" hidden><label>${words`Whoever opens it is asked first.`} <input type="text" readonly></label></p>`,
    '</details>',
  ].join('')
  // What had the focus is not there any more.
  if (held) strip.querySelector('summary')?.focus()
  if (started === undefined)
    startedReader()
      ?.then((known) => {
        if (known.refused.size > 0) drawStrip(host, known)
      })
      .catch(() => undefined)
}

/** What a print says of them, at its head: paper has no strip. */
function writePaper(figures: Figures): void {
  const main = document.querySelector('main')
  const before = main?.querySelector(':scope > .own-paper')
  if (figures.size === 0) {
    before?.remove()
    return
  }
  const place = before ?? document.createElement('div')
  place.className = 'own-paper'
  const whole = showsBuilders
    ? words`This sheet shows the builder’s figures all the same.`
    : words`What rests on them is not the builder’s either, and nobody has built it so.`
  const items = [...figures.values()].map(
    ({ label, text, builder }) =>
      `<li>${escape(label)}: ${escape(figureText(text))} (${words`the builder’s ${escape(builder)}`})</li>`,
  )
  const many = figures.size
  const printed = counted(
    many,
    words`Printed with ${many} figure of a reader.`,
    words`Printed with ${many} figures of a reader.`,
  )
  place.innerHTML = `<p><b>${printed}</b> ${whole}</p><ul>${items.join('')}</ul>`
  if (before === null || before === undefined) main?.prepend(place)
}

function itemHtml([id, { text, label, builder }]: [string, Own], started?: Reader): string {
  const slug = id.slice(0, id.indexOf('/'))
  const name = id.slice(slug.length + 1).split('.')[0] ?? ''
  const refused =
    started?.refused.has(id) === true ? ` ${words`It does not fit any more and is not used.`}` : ''
  const href = `${basePath()}notes/${encodeURIComponent(slug)}/#${encodeURIComponent(name)}`
  return [
    `<li><a href="${escape(href)}">${escape(label)}</a>: <b>${escape(figureText(text))}</b>`,
    ` <span class="soft">(${words`the builder’s ${escape(builder)}`})</span>${refused}`,
    ` <button type="button" class="plain" data-one="${escape(id)}" aria-label="${words`Take back ${escape(label)}`}">${words`Take back`}</button></li>`,
  ].join('')
}

function pressed(target: Element): void {
  const own = ownFigures()
  const one = target.closest<HTMLElement>('[data-one]')?.dataset.one
  if (one !== undefined) {
    own.change([[one, undefined]])
    announce(words`Taken back: the builder’s figure stands again.`)
    element?.querySelector<HTMLElement>('summary')?.focus()
  } else if (target.closest('[data-all]')) {
    own.clear()
    announce(words`All taken back: these are the builder’s figures.`)
    document.querySelector<HTMLElement>('#main')?.focus()
  } else if (target.closest('[data-print]')) print()
  else if (target.closest('[data-link]')) showLink()
}

function showLink(): void {
  const place = element?.querySelector<HTMLElement>('.own-link')
  const field = place?.querySelector('input')
  if (!place || !field) return
  const figures = new Map([...ownFigures().figures].map(([id, { text }]) => [id, text]))
  field.value = `${location.href.replace(/#.*$/, '')}${linkHash(figures, { edition: edition() ?? '' })}`
  place.hidden = false
  field.focus()
  field.select()
}

/** What a link brings, with the choice to use it. */
export async function offerLink(host: HTMLElement): Promise<void> {
  const link = readLink(location.hash)
  if (link === undefined) return
  let known: Reader | undefined
  try {
    known = edition() === undefined ? undefined : await reader()
  } catch (error) {
    // The address keeps what it brings: once the page can work, loading it again asks.
    const why = escape(reasonOf(error))
    openOffer(
      host,
      `<p>${words`This link brings figures, but they cannot be worked here: ${why}. The page shows the builder’s.`}</p>${closeHtml()}`,
    )
    return
  }
  // From now on the address is the page's own: what it brings is asked once.
  history.replaceState(null, '', location.pathname + location.search)
  const { fits, lost } = sorted(link, known)
  openOffer(host, offerHtml(link, fits, lost, known), (isUsed) => {
    if (isUsed) ownFigures().change(fits)
    announce(isUsed ? words`The figures of the link are in force.` : '')
    if (link.at !== '') document.getElementById(link.at)?.scrollIntoView()
  })
}

/** Any of its buttons closes it. */
function openOffer(
  host: HTMLElement,
  html: string,
  closed: (isUsed: boolean) => void = () => undefined,
): void {
  const box = document.createElement('div')
  box.className = 'own-offer'
  box.setAttribute('role', 'region')
  box.setAttribute('aria-label', words`Figures that came with the link`)
  box.innerHTML = html
  host.prepend(box)
  box.querySelector<HTMLElement>('button')?.focus()
  box.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element) || target.closest('button') === null) return
    box.remove()
    closed(target.closest('[data-use]') !== null)
  })
}

const closeHtml = (): string =>
  `<div class="try-buttons"><button type="button">${words`Close`}</button></div>`

interface Lost {
  readonly name: string
  readonly why: string
}

function sorted(link: LinkedFigures, known: Reader | undefined) {
  const fits: [string, Own][] = []
  const lost: Lost[] = []
  for (const [id, text] of link.figures) {
    const target = known?.target(id)
    if (target === undefined) {
      if (isGone(id)) lost.push({ name: id, why: words`is not in this edition any more` })
      else fits.push([id, { text, label: id, builder: words`see its note` }])
      continue
    }
    const said = figureSaid(target, text)
    const why = [...said.values()].find(({ level }) => level === 'error')?.text
    if (isWrong(said)) lost.push({ name: target.label, why: why ?? '' })
    else fits.push([id, { text, label: target.label, builder: figureText(target.builder) }])
  }
  return { fits, lost }
}

function offerHtml(
  link: LinkedFigures,
  fits: readonly (readonly [string, Own])[],
  lost: readonly Lost[],
  known: Reader | undefined,
): string {
  const items = fits.map(
    ([, { label, text, builder }]) =>
      `<li>${escape(label)}: <b>${escape(figureText(text))}</b> <span class="soft">(${words`the builder’s ${escape(builder)}`})</span></li>`,
  )
  const now = known?.engine.page.edition ?? ''
  const older =
    link.edition !== '' && now !== '' && link.edition !== now
      ? `<p>${words`The link was made with edition ${escape(link.edition)} of this note; this is edition ${escape(now)}.`}</p>`
      : ''
  const gone =
    lost.length === 0
      ? ''
      : `<p>${counted(lost.length, words`${lost.length} figure does not fit any more:`, words`${lost.length} figures do not fit any more:`)}</p><ul>${lost.map(({ name, why }) => `<li>${escape(name)}: ${escape(why)}</li>`).join('')}</ul>`
  const unread =
    link.dropped === 0
      ? ''
      : `<p>${counted(link.dropped, words`${link.dropped} entry could not be read.`, words`${link.dropped} entries could not be read.`)}</p>`
  const close = closeHtml()
  if (link.tooNew)
    return `<p>${words`This link was made by another version of the kit, and cannot be read here. The page shows the builder’s figures.`}</p>${close}`
  const use =
    fits.length === 0
      ? close
      : `<div class="try-buttons"><button type="button" data-use>${words`Use these figures`}</button><button type="button" class="plain">${words`Leave them`}</button></div>`
  const many = fits.length
  const brings = counted(
    many,
    words`This link brings ${many} figure of somebody else, not the builder’s and not yours.`,
    words`This link brings ${many} figures of somebody else, not the builder’s and not yours.`,
  )
  return [
    `<p><b>${brings}</b> ${words`The page shows the builder’s until you use them.`}</p>`,
    `<ul>${items.join('')}</ul>${older}${gone}${unread}${use}`,
  ].join('')
}
