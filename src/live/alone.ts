/**
 * A calculator by itself, on its own page: a form, empty or filled from one of the site's blocks, and
 * its card. In: `<work-alone data-calculator="…">` and the page's block of data. It is worked by the
 * ledger like a block of a note, is of no note, and nothing of it is kept.
 */
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { cardHtml } from '../card/card.ts'
import { contextOf, type CardContext } from '../card/context.ts'
import { escape } from '../card/html.ts'
import { verdictName, verdictWords } from '../card/words.ts'
import { mayBeLeftOut } from '../ledger/input.ts'
import { workPublished } from '../ledger/override.ts'
import type { Published, PublishedBlock, UnitSystem } from '../ledger/published.ts'
import { ledgerOf } from '../ledger/roots.ts'
import { aloneFiguresId, readAloneFigures, type AloneFigures } from './alone-data.ts'
import { basePath } from './base.ts'
import { halfTypedIn, pressRow, readForm, showSaid, tell } from './controls.ts'
import { formHtml, leastRows } from './form.ts'
import { judge, type Said } from './judge.ts'
import { makersFor, type Makers } from './makers.ts'
import { elementOf, morph } from './places.ts'
import { patience } from './quiet.ts'
import { chosenSystems } from './systems.ts'
import type { Texts } from './texts.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

type Open = (host: HTMLElement) => Promise<boolean>
/** Puts a row of buttons below what is in `host`. */
export type AddBar = (host: HTMLElement, buttons: readonly (readonly [string, Open])[]) => void

const prefix = 'Alone'

/** Opens or closes it. */
export async function toggleAlone(host: HTMLElement, addBar: AddBar): Promise<boolean> {
  const open = host.querySelector<HTMLElement>(':scope > .alone-part')
  if (open !== null) {
    open.hidden = !open.hidden
    return !open.hidden
  }
  const calculator = await registry[host.dataset.calculator ?? '']?.()
  const figures = readAloneFigures(document.querySelector(`#${aloneFiguresId}`)?.textContent ?? '')
  if (calculator === undefined || figures === undefined)
    throw new Error('this page has no calculator to work with')
  const makers = await makersFor(calculator.plot !== undefined, false)
  await makers.ready()
  const part = openPart(calculator, figures, makers, addBar)
  host.append(part)
  part.querySelector<HTMLElement>('select, input')?.focus()
  return true
}

/** As many rows as have to be, and nothing in them. */
function emptyTexts({ inputs }: Calculator): Texts {
  return Object.fromEntries(
    Object.entries(inputs).map(([key, field]) => [
      key,
      field.type === 'list' ? Array.from({ length: leastRows(field) }, () => ({})) : '',
    ]),
  )
}

/** Fields that are needed or have something in them; the others lie folded. */
function openFields({ inputs }: Calculator, texts: Texts): ReadonlySet<string> {
  const keys = Object.entries(inputs).flatMap(([key, field]) =>
    !mayBeLeftOut(field) || (texts[key] ?? '') !== '' ? [key] : [],
  )
  return new Set(keys)
}

function startHtml({ blocks }: AloneFigures): string {
  if (blocks.length === 0) return ''
  const notes = Map.groupBy([...blocks.entries()], ([, { note }]) => note)
  const groups = [...notes].map(
    ([note, members]) =>
      `<optgroup label="${escape(note)}">${members.map(([index, { title }]) => `<option value="${index}">${escape(title)}</option>`).join('')}</optgroup>`,
  )
  return `<div class="try-field"><label>${words`Start`} <select data-start><option value="">${words`empty`}</option>${groups.join('')}</select></label><span class="try-help">${words`Or from what one of the notes gives it.`}</span></div>`
}

function openPart(
  calculator: Calculator,
  figures: AloneFigures,
  makers: Makers,
  addBar: AddBar,
): HTMLElement {
  const part = document.createElement('section')
  part.className = 'alone-part'
  part.setAttribute('aria-label', words`${calculator.title} with figures of your own`)
  part.innerHTML = [
    `<p class="on-screen">${words`Your figures, of no note. Nothing of it is kept, and nothing leaves the browser.`}</p>`,
    `<div class="alone-start on-screen">${startHtml(figures)}</div>`,
    `<form class="try-form on-screen" novalidate aria-label="${words`Your figures for ${escape(calculator.title)}`}"></form>`,
    `<div class="alone-result" hidden><p class="card-old" hidden>${words`An entry is missing or wrong. These are the figures from before it.`}</p></div>`,
  ].join('')
  const form = part.querySelector('form')
  const start = part.querySelector<HTMLSelectElement>('[data-start]')
  const result = part.querySelector<HTMLElement>('.alone-result')
  const old = part.querySelector<HTMLElement>('.card-old')
  if (form === null || result === null || old === null) return part

  const listeners: (() => void)[] = []
  let timer: ReturnType<typeof setTimeout> | undefined
  /** What the card shows. */
  let worked: { readonly texts: Texts; readonly ctx: CardContext } | undefined

  const fill = (texts: Texts): void => {
    form.innerHTML = formHtml(
      calculator,
      texts,
      prefix,
      openFields(calculator, texts),
      words`Empty it`,
    )
    preferUnits(form, calculator, systems(figures)[0])
  }
  const draw = (texts: Texts): void => {
    const ctx = workedAlone(calculator, figures, texts)
    const block = blockIn(ctx)
    const parts = makers.partsOf(block, result, ctx)
    const made = parts && elementOf(cardHtml(block, ctx, 'yours', parts))
    if (made === undefined || made === null) return
    worked = { texts, ctx }
    const card = result.querySelector(':scope > .card')
    if (card === null) old.after(made)
    else morph(card, made)
    result.hidden = false
    old.hidden = true
    tell(form, words`Verdict with your figures: ${verdictWords[verdictName(block)]}.`)
    for (const listener of listeners) listener()
  }
  const run = (finished: boolean, pressed = false): void => {
    clearTimeout(timer)
    const texts = readForm(form, calculator)
    const said = judge(calculator.inputs, texts)
    const { missing, wrong } = faultsOf(said, texts)
    const shown = pressed ? said : new Map([...said].filter(([name]) => !missing.has(name)))
    if (missing.size + wrong.size === 0) {
      showSaid(form, said)
      draw(texts)
    } else if (finished || wrong.size === 0) {
      if (finished) showSaid(form, shown)
      old.hidden = !finished
      tell(
        form,
        wrong.size > 0
          ? counted(
              wrong.size,
              words`${wrong.size} entry to put right.`,
              words`${wrong.size} entries to put right.`,
            )
          : counted(
              missing.size,
              words`${missing.size} field still to fill in.`,
              words`${missing.size} fields still to fill in.`,
            ),
      )
    } else if (halfTypedIn(form) === undefined) {
      timer = setTimeout(() => {
        run(true)
      }, patience)
    }
  }
  const begin = (texts: Texts): void => {
    clearTimeout(timer)
    fill(texts)
    worked = undefined
    result.hidden = true
    for (const opened of result.querySelectorAll('.card, .matters-part, .take-part'))
      opened.remove()
    for (const button of result.querySelectorAll('.try-bar button'))
      button.setAttribute('aria-expanded', 'false')
  }

  const now = (): readonly [PublishedBlock, Calculator, CardContext] => {
    if (worked === undefined) throw new Error('there is no result yet')
    return [blockIn(worked.ctx), calculator, worked.ctx]
  }
  addBar(result, [
    [
      words`What matters most`,
      async (host) => {
        const { toggleMattersOf } = await import('./matters.ts')
        return toggleMattersOf(host, () => ({
          now,
          follow: (listener) => listeners.push(listener),
        }))
      },
    ],
    [
      words`Take it along`,
      async (host) => {
        const [{ toggleTakeOf }, { plainText, mdxText }] = await Promise.all([
          import('./take.ts'),
          import('../card/take/index.ts'),
        ])
        const whose = { who: 'nobody' } as const
        return toggleTakeOf(host, () => ({
          text: () => plainText(now()[0], now()[2], whose, figures.sources),
          mdx: () => mdxText(now()[0], now()[2], whose),
        }))
      },
    ],
  ])
  fill(emptyTexts(calculator))
  form.addEventListener('input', () => {
    run(false)
  })
  form.addEventListener('change', () => {
    run(true)
  })
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    run(true, true)
    const wrong = form.querySelector<HTMLElement>('[aria-invalid=true]')
    const folded = wrong?.closest('details')
    if (folded) folded.open = true
    wrong?.focus()
  })
  form.addEventListener('reset', (event) => {
    event.preventDefault()
    if (start !== null) start.value = ''
    begin(emptyTexts(calculator))
    form.querySelector<HTMLElement>('button[type=reset]')?.focus()
  })
  form.addEventListener('click', (event) => {
    const what = pressRow(event, form, calculator, prefix)
    if (what !== undefined) preferUnits(form, calculator, systems(figures)[0])
    if (what === 'removed') run(true)
  })
  start?.addEventListener('change', () => {
    const block = start.value === '' ? undefined : figures.blocks[Number(start.value)]
    begin(
      block === undefined ? emptyTexts(calculator) : { ...emptyTexts(calculator), ...block.texts },
    )
    if (block !== undefined) run(true)
  })
  document.addEventListener('worked-notes:units', () => {
    preferUnits(form, calculator, systems(figures)[0])
    if (worked === undefined) return
    const wasOld = old.hidden
    draw(worked.texts)
    old.hidden = wasOld
  })
  return part
}

const systems = ({ site }: AloneFigures): readonly UnitSystem[] =>
  chosenSystems(site.units) ?? site.units

/** By its control's name: what is empty and must not be, and what is wrong. */
function faultsOf(said: ReadonlyMap<string, Said>, texts: Texts) {
  const errors = [...said].filter(([, { level }]) => level === 'error').map(([name]) => name)
  const missing = new Set(errors.filter((name) => textAt(texts, name).trim() === ''))
  return { missing, wrong: new Set(errors.filter((name) => !missing.has(name))) }
}

function textAt(texts: Texts, name: string): string {
  const [key = '', row = '', column = ''] = name.split('.')
  const text = texts[key] ?? ''
  return typeof text === 'string' ? text : (text[Number(row)]?.[column] ?? '')
}

/** Empty fields offer the unit of the reader's system first. */
function preferUnits(
  form: HTMLFormElement,
  { inputs }: Calculator,
  system: UnitSystem | undefined,
): void {
  for (const select of form.querySelectorAll<HTMLSelectElement>('select[name$=":unit"]')) {
    const name = select.name.replace(/:unit$/, '')
    const [key = '', , column = ''] = name.split('.')
    const field = inputs[key]?.type === 'list' ? inputs[key].fields[column] : inputs[key]
    const typed = form.querySelector<HTMLInputElement>(`input[name="${CSS.escape(name)}"]`)
    if (field?.type === 'number' && typed?.value.trim() === '')
      select.value = field.units[system === 'us' ? 1 : 0]
  }
}

/** `pump-and-loop` -> `pumpAndLoop`: what its block would be called in a note. */
const nameOf = (id: string): string =>
  id.replace(/-+(.)/g, (_, letter: string) => letter.toUpperCase())

/** A ledger of one block that is of no note, worked with these texts. */
function workedAlone(calculator: Calculator, figures: AloneFigures, texts: Texts): CardContext {
  const name = nameOf(calculator.id)
  const empty: Published = ledgerOf({
    format: 1,
    site: { ...figures.site, units: systems(figures) },
    notes: [],
    numbers: [],
    blocks: [
      { note: '', name, title: calculator.title, calculator: calculator.id, given: {}, line: 1 },
    ],
  })
  // A list without rows is one that was left out.
  const overrides = Object.fromEntries(
    Object.entries(texts).flatMap(([key, text]) =>
      text.length === 0 && calculator.inputs[key]?.type === 'list'
        ? []
        : [[`/${name}.${key}`, text]],
    ),
  )
  const calculators = new Map([[calculator.id, calculator]])
  const published = workPublished(empty, overrides, calculators)
  return contextOf(published, { base: basePath(), calculators, alone: `/${name}` })
}

function blockIn({ published }: CardContext): PublishedBlock {
  const [block] = published.blocks
  if (block === undefined) throw new Error('there is no block')
  return block
}
