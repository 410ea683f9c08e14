/**
 * The form of a card: every input of its block as a field, rows of lists added and taken away. What is
 * entered counts from key to key; a wrong entry is told after a moment, and the figures from before it
 * stand, marked as older.
 */
import type { Calculator } from '../../calculators/define.ts'
import { contextOf } from '../card/context.ts'
import { verdictName, verdictWords } from '../card/words.ts'
import { calculatorIn } from '../ledger/in-currency.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import { halfTypedIn, pressRow, readForm, showSaid, tell } from './controls.ts'
import { formHtml } from './form.ts'
import { judge } from './judge.ts'
import { ownFigures, type Figure } from './own.ts'
import { patience } from './quiet.ts'
import { reader, type Reader } from './reader.ts'
import { textsOf, type Texts } from './texts.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

/** Opens or closes the form of a card. */
export async function toggle(card: HTMLElement): Promise<boolean> {
  const open = card.querySelector<HTMLFormElement>('.try-form')
  if (open !== null) {
    open.hidden = !open.hidden
    return !open.hidden
  }
  const one = await reader()
  const block = one.engine.ctx.builder?.block(card.dataset.block ?? '')
  const calculator = block && one.engine.calculators.get(block.calculator)
  if (block === undefined || calculator === undefined)
    throw new Error('this card has no calculator here')
  const form = openForm(card, block, calculatorIn(calculator, block.currency), one)
  form.querySelector<HTMLElement>('input, select')?.focus()
  return true
}

function openForm(
  card: HTMLElement,
  block: PublishedBlock,
  calculator: Calculator,
  one: Reader,
): HTMLFormElement {
  const written = contextOf(one.engine.builder, {
    base: '/',
    calculators: one.engine.calculators,
  })
  const builder = textsOf(block, calculator.inputs, (id) => written.number(id))
  const prefix = `Try-${block.name}`
  const form = document.createElement('form')
  form.className = 'try-form on-screen'
  form.noValidate = true
  form.setAttribute('aria-label', words`Your figures for ${block.title}`)
  const textInForce = (key: string): Figure | undefined =>
    one.own(`${block.id}.${key}`) ?? builder[key]
  const inForce = (): Texts =>
    Object.fromEntries(
      Object.entries(builder).map(([key, text]) => [key, textInForce(key) ?? text]),
    )
  const fill = (): void => {
    form.innerHTML = formHtml(calculator, inForce(), prefix, filledIn(block, one))
  }
  fill()
  // Above the card: what the figures change grows downwards, and the field stays where it is.
  card.querySelector(':scope > .card')?.before(form)

  let entered = JSON.stringify(inForce())
  let timer: ReturnType<typeof setTimeout> | undefined

  const put = (key: string, figure: Figure | undefined): void => {
    const target = one.target(`${block.id}.${key}`)
    if (target !== undefined) one.put(target, figure)
  }
  const sayVerdict = (): void => {
    const verdictIn = (ctx: typeof one.engine.ctx | undefined): string => {
      const now = ctx?.block(block.id)
      return now === undefined ? '' : verdictWords[verdictName(now)]
    }
    const { ctx } = one.engine
    tell(
      form,
      ctx.block(block.id) === ctx.builder?.block(block.id)
        ? words`Verdict: ${verdictIn(ctx)}. These are the builder’s figures.`
        : words`Verdict with your figures: ${verdictIn(ctx)}. With the builder’s: ${verdictIn(ctx.builder)}.`,
    )
  }
  const run = (finished: boolean): void => {
    clearTimeout(timer)
    const texts = readForm(form, calculator)
    const said = judge(calculator.inputs, texts)
    const half = halfTypedIn(form)
    const wrong = [...said].filter(([, { level }]) => level === 'error').map(([name]) => name)
    const many = wrong.length
    const keysWrong = new Set(wrong.map((name) => name.split('.')[0]))
    for (const [key, text] of Object.entries(texts)) {
      const waits = keysWrong.has(key) || (!finished && half?.split('.')[0] === key)
      if (!waits && JSON.stringify(text) !== JSON.stringify(textInForce(key))) put(key, text)
    }
    entered = JSON.stringify(texts)
    if (wrong.length === 0) {
      showSaid(form, said)
      one.engine.markOld([])
      sayVerdict()
    } else if (finished) {
      showSaid(form, said)
      one.engine.markOld([block.id])
      tell(
        form,
        many === 1
          ? words`One entry to put right. The card still shows the figures before.`
          : counted(
              many,
              words`${many} entry to put right. The card still shows the figures before.`,
              words`${many} entries to put right. The card still shows the figures before.`,
            ),
      )
    } else if (half === undefined) {
      timer = setTimeout(() => {
        run(true)
      }, patience)
    }
  }
  form.addEventListener('input', () => {
    run(false)
  })
  form.addEventListener('change', () => {
    run(true)
  })
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    run(true)
    form.querySelector<HTMLElement>('[aria-invalid=true]')?.focus()
  })
  form.addEventListener('reset', (event) => {
    event.preventDefault()
    clearTimeout(timer)
    for (const key of Object.keys(builder)) put(key, undefined)
    fill()
    entered = JSON.stringify(inForce())
    one.engine.markOld([])
    sayVerdict()
    form.querySelector<HTMLElement>('button[type=reset]')?.focus()
  })
  form.addEventListener('click', (event) => {
    // A row taken away counts, a new one has nothing yet.
    if (pressRow(event, form, calculator, prefix) === 'removed') run(true)
  })
  // Changed elsewhere: in a number of the text, in the strip, in another tab.
  one.follow(() => {
    if (form.contains(document.activeElement) || JSON.stringify(inForce()) === entered) return
    fill()
    entered = JSON.stringify(inForce())
  })
  return form
}

/** What somebody gave, and not the calculator. */
function filledIn({ id, given }: PublishedBlock, one: Reader): ReadonlySet<string> {
  const byBuilder = Object.entries(given).flatMap(([key, what]) =>
    what.type === 'rows' || what.how !== 'assumed-default' ? [key] : [],
  )
  const mine = [...ownFigures().figures.keys()].flatMap((figure) =>
    figure.startsWith(`${id}.`) && one.own(figure) !== undefined
      ? [figure.slice(id.length + 1)]
      : [],
  )
  return new Set([...byBuilder, ...mine])
}
