/** What moves a block's result most, and what would pass: worked when asked for, and again when figures change. */
import { escape } from '../card/html.ts'
import type { CardContext } from '../card/context.ts'
import { mattersHtml } from '../card/matters.ts'
import type { Calculator } from '../../calculators/define.ts'
import type { PublishedBlock } from '../ledger/published.ts'
import { resultsOf, whatMatters, whatWouldPass } from '../ledger/matters.ts'
import { calculatorIn } from '../ledger/in-currency.ts'
import { sayFor } from '../ledger/say.ts'
import { afterQuiet } from './quiet.ts'
import { reader, type Reader } from './reader.ts'
import { words } from '../words/words.ts'

/** A block as it stands now, and word of its changes. */
export interface Subject {
  readonly now: () => readonly [PublishedBlock, Calculator, CardContext]
  readonly follow: (changed: () => void) => void
}

/** Opens or closes it below a card. */
export async function toggleMatters(card: HTMLElement): Promise<boolean> {
  return toggleMattersOf(card, async () => {
    const one = await reader()
    const id = card.dataset.block ?? ''
    return {
      now: () => partsOf(id, one),
      follow: (changed) => one.follow(changed),
    }
  })
}

/** The same for a card whose figures come from elsewhere. */
export async function toggleMattersOf(
  card: HTMLElement,
  subject: () => Subject | Promise<Subject>,
): Promise<boolean> {
  const open = card.querySelector<HTMLElement>(':scope > .matters-part')
  if (open !== null) {
    open.remove()
    return false
  }
  const { now, follow } = await subject()
  const place = document.createElement('section')
  place.className = 'matters-part on-screen'
  place.setAttribute('aria-label', words`What matters most`)
  card.querySelector(':scope > .try-bar')?.before(place)
  const [block, calculator] = now()
  const results = resultsOf(block, calculator)
  const first = results[0]?.path ?? ''
  const options = results.map(
    ({ path, label }) => `<option value="${escape(path)}">${escape(label)}</option>`,
  )
  place.innerHTML = `<div class="try-field"><label>${words`Result to look at`} <select>${options.join('')}</select></label></div><div class="matters-body"></div>`
  const select = place.querySelector('select')
  const body = place.querySelector('.matters-body')
  const draw = (): void => {
    if (body === null || !place.isConnected) return
    const [block, calculator, ctx] = now()
    const matters = whatMatters(block, ctx, calculator, select?.value ?? first)
    const remedies = whatWouldPass(block, ctx, calculator, {
      say: sayFor(ctx.units, block.currency),
    })
    body.innerHTML =
      matters === undefined
        ? `<p>${words`Cannot tell: something it needs is not known.`}</p>`
        : mattersHtml(block, matters, remedies, ctx)
  }
  draw()
  select?.addEventListener('change', draw)
  follow(afterQuiet(draw))
  return true
}

function partsOf(id: string, one: Reader): ReturnType<Subject['now']> {
  const block = one.engine.ctx.block(id)
  const calculator = block && one.engine.calculators.get(block.calculator)
  if (block === undefined || calculator === undefined)
    throw new Error('this card has no calculator here')
  return [block, calculatorIn(calculator, block.currency), one.engine.ctx]
}
