/**
 * The reader of one page: joins the figures kept in the browser with the engine that works them. What
 * does not fit this page's numbers stays kept and is not worked; the strip says so. Started at the
 * first change, or at once where figures are in force already.
 */
import { labelOf } from '../card/words.ts'
import { textOf } from '../card/number.ts'
import type { Overrides } from '../ledger/override.ts'
import { announce } from './announce.ts'
import { startEngine, type Engine, type Flip } from './engine.ts'
import { ownFigures, type Figure, type Own } from './own.ts'
import { isGone, pageFigures } from './page.ts'
import { chosenSystems } from './systems.ts'
import { figureSaid, figureText, isWrong, targetOf, type Target } from './targets.ts'
import { words } from '../words/words.ts'

export interface Reader {
  readonly engine: Engine
  target(id: string): Target | undefined
  /** What the reader has in force for it; undefined: the builder's. */
  own(id: string): Figure | undefined
  /** Puts a figure in force; the builder's own text takes it back. Wrong ones must not come here. */
  put(target: Target, figure: Figure | undefined): void
  /** Ids that are in force on this page, and those kept whose number this page knows and refuses. */
  readonly refused: ReadonlySet<string>
  /** Called after each working, with the verdicts that it turned. */
  follow(listener: (flips: readonly Flip[]) => void): void
}

let started: Promise<Reader> | undefined

/** The one of this page; rejected where the page has no figures to work. */
export function reader(): Promise<Reader> {
  started ??= start()
  started.catch(() => (started = undefined))
  return started
}

/** The same, where it has been started. */
export const startedReader = (): Promise<Reader> | undefined => started

async function start(): Promise<Reader> {
  const page = await pageFigures()
  const engine = await startEngine(page)
  const own = ownFigures()
  const builder = engine.ctx
  const listeners: ((flips: readonly Flip[]) => void)[] = []
  const refused = new Set<string>()
  const targets = new Map<string, Target | undefined>()
  const target = (id: string): Target | undefined => {
    if (!targets.has(id)) targets.set(id, targetOf(id, builder))
    return targets.get(id)
  }

  function overrides(): Overrides {
    refused.clear()
    const fitting: [string, Figure][] = []
    for (const [id, { text }] of own.figures) {
      const one = target(id)
      if (one === undefined) {
        if (isGone(id)) refused.add(id)
        continue
      }
      if (isWrong(figureSaid(one, text))) refused.add(id)
      else fitting.push([id, text])
    }
    return Object.fromEntries(fitting)
  }
  const work = (): void => {
    const flips = engine.set(overrides())
    if (flips.length > 0) announce(flips.map(flipWords).join(' '))
    for (const listener of listeners) listener(flips)
  }
  const ownOf = (one: Target, text: Figure): Own => {
    const value = one.number === undefined ? undefined : textOf(one.number)
    const label =
      one.block === undefined ? one.label : `${one.block.title}: ${labelIn(one, builder)}`
    return { text, label, builder: value ?? figureText(one.builder) }
  }
  own.follow(work)
  own.follow(() => document.dispatchEvent(new Event('worked-notes:own')))
  if (own.figures.size > 0) work()
  const chosen = () => chosenSystems(page.roots.site.units)
  if (chosen() !== undefined) engine.setUnits(chosen())
  document.addEventListener('worked-notes:units', () => {
    engine.setUnits(chosen())
  })
  addEventListener('beforeprint', () => engine.settle())
  document.dispatchEvent(new Event('worked-notes:reader'))
  return {
    engine,
    target,
    refused,
    own: (id) => own.figures.get(id)?.text,
    put(one, figure) {
      const same = figure === undefined || JSON.stringify(figure) === JSON.stringify(one.builder)
      if (same && !own.figures.has(one.id)) return
      own.change([[one.id, same ? undefined : ownOf(one, figure)]])
    },
    follow(listener) {
      listeners.push(listener)
    },
  }
}

const flipWords = ({ block, before, after }: Flip): string =>
  words`${block.title}: ${after}, before ${before}.`

const labelIn = (one: Target, ctx: Engine['ctx']): string =>
  one.number === undefined ? one.label : labelOf(one.number, ctx)
