/**
 * A reader's figures on a page: works what rests on them and shows it, within the frame of the key that
 * was pressed. In: the figures in force and the units chosen. What the build wrote is put back where
 * nothing differs.
 */
import type { Calculator } from '../../calculators/define.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { contextOf, type CardContext } from '../card/context.ts'
import { verdictHtml } from '../card/findings.ts'
import { numberHtml } from '../card/number.ts'
import { tallyHtml } from '../card/tally.ts'
import type { PageFigures } from '../card/page-figures.ts'
import { verdictName, verdictWords } from '../card/words.ts'
import { openLedger, type OpenLedger, type Reworked } from '../ledger/open.ts'
import type { Overrides } from '../ledger/override.ts'
import type { Published, PublishedBlock, UnitSystem } from '../ledger/published.ts'
import { ledgerOf } from '../ledger/roots.ts'
import { cardsOf } from './cards.ts'
import { makersFor } from './makers.ts'
import { basePath } from './base.ts'
import { afterQuiet } from './quiet.ts'
import { fillFrom, numberPlaces, restore, surroundingOf, type Place } from './places.ts'
import { sightOf } from './sight.ts'
import { steady } from './steady.ts'

/** A block whose verdict is not what it was before the last change. */
export interface Flip {
  readonly block: PublishedBlock
  readonly before: string
  readonly after: string
}

export interface Engine {
  readonly page: PageFigures
  readonly calculators: ReadonlyMap<string, Calculator>
  /** With the figures in force; its `builder` without. */
  readonly ctx: CardContext
  /** The builder's ledger in the builder's units. */
  readonly builder: Published
  /** Works with just these figures; shows what moved. */
  set(overrides: Overrides): readonly Flip[]
  /** Other units everywhere; undefined: as the builder wrote it. */
  setUnits(systems: readonly UnitSystem[] | undefined): void
  /** Marks what rests on these as older than the entry that is wrong. */
  markOld(ids: readonly string[]): void
  /** Writes at once what was put off for want of time. */
  settle(): void
}

const isEmpty = (overrides: Overrides): boolean => Object.keys(overrides).length === 0

export async function startEngine(page: PageFigures): Promise<Engine> {
  const asks = page.roots.site.questions !== undefined
  // What draws is fetched together with the calculators where the page has a drawing, else after them.
  const isDrawn = document.querySelector('.drawing') !== null
  const [calculators, ahead] = await Promise.all([
    calculatorsOf(page),
    isDrawn ? makersFor(true, asks) : undefined,
  ])
  const draws = (): boolean => [...calculators.values()].some((one) => one.plot !== undefined)
  const makers = ahead ?? (await makersFor(draws(), asks))
  const written = ledgerOf(page.roots)
  let ledger: OpenLedger = openLedger(written, calculators)
  const { builder } = ledger
  const base = basePath()
  const numbers = numberPlaces(document)
  const sight = sightOf(new Map(numbers.all.map((place) => [place, surroundingOf(place)])))
  const cards = cardsOf(document, makers)
  const verdicts = [...document.querySelectorAll<HTMLElement>('[data-verdict]')]
  const tallies = [...document.querySelectorAll<HTMLElement>('[data-tally]')]
  const stories = document.querySelector<HTMLElement>('[data-stories]')
  const storiesWritten = [...(stories?.childNodes ?? [])]
  const everything = {
    numbers: numbers.ids,
    blocks: new Set(builder.blocks.map(({ id }) => id)),
  }
  let overrides: Overrides = {}
  let otherUnits = false
  let ctx = contextFor(ledger)

  function contextFor({ published, builder: before }: OpenLedger): CardContext {
    // On a block's own page the stories are elsewhere.
    const place = page.block === undefined ? { page: page.page } : { alone: page.block }
    return contextOf(published, { base, ...place, calculators, builder: before })
  }

  /** As the build wrote it. */
  const isBuilders = (id: string): boolean =>
    !otherUnits && ctx.block(id) === ctx.builder?.block(id)

  function showNumbers(ids: ReadonlySet<string>): void {
    for (const id of ids)
      for (const place of numbers.of(id))
        sight.draw(place, () => {
          showNumber(place)
        })
  }

  function showNumber(place: Place): void {
    const { id, unit, digits, brackets, element } = place
    const number = ctx.number(id)
    const before = ctx.builder?.number(id)
    const same =
      number === undefined || (number.value === before?.value && number.now === before.now)
    if (number === undefined || (same && !otherUnits)) restore(place)
    else {
      const options = {
        unit,
        digits,
        brackets: brackets || otherUnits,
        linked: element.matches('a'),
      }
      fillFrom(element, numberHtml(number, ctx, options))
    }
  }

  function showVerdicts(): void {
    for (const element of verdicts) {
      const block = ctx.block(element.dataset.verdict ?? '')
      if (block === undefined) continue
      const html = verdictHtml(block)
      if (element.innerHTML !== html) element.innerHTML = html
    }
  }

  /** They count all that the note has, which is more than a key moves. */
  function writeTallies(): void {
    for (const element of tallies) {
      const html = tallyHtml(element.dataset.tally ?? '', ctx)
      if (element.innerHTML !== html) element.innerHTML = html
    }
  }

  /** The table at the end is long and seldom looked at while typing. */
  async function writeStories(): Promise<void> {
    if (stories === null) return
    const { storiesHtml } = await import('../card/stories.ts')
    if (isEmpty(overrides) && !otherUnits) stories.replaceChildren(...storiesWritten)
    else {
      const own = ctx.published.numbers.filter(({ note }) => note === page.page)
      stories.innerHTML = storiesHtml(own, ctx)
    }
  }

  function writeRest(): void {
    writeTallies()
    void writeStories()
  }
  const showRest = afterQuiet(writeRest)

  function show({ numbers: moved, blocks }: Pick<Reworked, 'numbers' | 'blocks'>): void {
    ctx = contextFor(ledger)
    steady(() => {
      cards.draw(blocks, ctx, isBuilders)
      showNumbers(moved)
      showVerdicts()
    })
    showRest()
  }

  return {
    page,
    calculators,
    builder,
    get ctx() {
      return ctx
    },
    set(next) {
      const before = ctx
      overrides = next
      const moved = ledger.set(next)
      show(moved)
      return flips(moved.blocks, before, ctx)
    },
    setUnits(systems) {
      const { site } = written
      otherUnits = systems !== undefined
      // Of both, the builder's own stands first, as it was typed.
      const asked = systems?.length === 1 ? ({ asked: true } as const) : {}
      const units = systems ?? site.units
      ledger = openLedger({ ...written, site: { ...site, units, ...asked } }, calculators)
      ledger.set(overrides)
      show(everything)
    },
    markOld(ids) {
      const old = ids.length === 0 ? new Set<string>() : ledger.restingOn(ids)
      steady(() => {
        cards.markOld(old)
      })
    },
    settle() {
      cards.settle()
      sight.settle()
      writeRest()
    },
  }
}

async function calculatorsOf({ roots }: PageFigures): Promise<ReadonlyMap<string, Calculator>> {
  const used = [...new Set(roots.blocks.map(({ calculator }) => calculator))]
  const loaded = await Promise.all(
    used.map(async (id): Promise<[string, Calculator][]> => {
      const calculator = await registry[id]?.()
      return calculator === undefined ? [] : [[id, calculator]]
    }),
  )
  return new Map(loaded.flat())
}

function flips(ids: ReadonlySet<string>, before: CardContext, after: CardContext): Flip[] {
  return [...ids].flatMap((id) => {
    const [was, is] = [before.block(id), after.block(id)]
    if (was === undefined || is === undefined) return []
    const [first, then] = [verdictWords[verdictName(was)], verdictWords[verdictName(is)]] as const
    return first === then ? [] : [{ block: is, before: first, after: then }]
  })
}
