/**
 * A ledger kept open comes to the same as one worked afresh, whatever figures are put in, in whatever
 * order. Held against `work` on the whole demo: the two share the steps, not the choice of what to work.
 */
import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Calculator } from '../../calculators/define.ts'
import { loadLedger, type Ledger } from '../../src/ledger/load.ts'
import { openLedger, type OpenLedger } from '../../src/ledger/open.ts'
import { isDeclared, workPublished, type Overrides } from '../../src/ledger/override.ts'
import type { Published, PublishedBlock, PublishedNumber } from '../../src/ledger/published.ts'
import { ledgerOf, rootsOf } from '../../src/ledger/roots.ts'
import { work } from '../../src/ledger/work.ts'
import { formatQuantity } from '../../src/quantity/index.ts'

let ledger: Ledger
let calculators: ReadonlyMap<string, Calculator>
let open: OpenLedger
let changeable: readonly PublishedNumber[]
beforeAll(async () => {
  ledger = await loadLedger('content')
  calculators = ledger.calculators
  open = openLedger(ledger.published, calculators)
  changeable = ledger.published.numbers.filter(
    (number) =>
      number.value !== null &&
      (isDeclared(number) || (number.block !== null && number.calculator === null)) &&
      // A cell of a list is changed with its list.
      !/\.\d+\./.test(number.name),
  )
})

const plainBlock = (block: PublishedBlock) => ({ ...block, accepted: null })
const byId = (a: { readonly id: string }, b: { readonly id: string }) => (a.id < b.id ? -1 : 1)
const plain = ({ numbers, blocks }: Published) => ({
  numbers: numbers.toSorted(byId),
  blocks: blocks.map(plainBlock).toSorted(byId),
})

const textFor = ({ value, display }: PublishedNumber, share: number): string =>
  formatQuantity((value ?? 0) * share, display, { figures: 6 }).replaceAll('\u2212', '-')

describe('an open ledger', () => {
  it('begins as the builder’s', () => {
    expect(plain(open.builder)).toEqual(plain(ledger.published))
  })

  it('comes to what a whole working comes to, after any changes', () => {
    const change = fc.record({
      at: fc.nat(),
      share: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
    })
    fc.assert(
      fc.property(
        fc.array(fc.oneof(change, fc.constant(undefined)), { minLength: 1, maxLength: 6 }),
        (changes) => {
          let overrides: Overrides = {}
          for (const one of changes) {
            const number = one && changeable[one.at % changeable.length]
            // Now and then all is taken back.
            if (one === undefined) overrides = {}
            else if (number !== undefined)
              overrides = { ...overrides, [number.id]: textFor(number, one.share) }
            open.set(overrides)
          }
          const whole = workPublished(ledger.published, overrides, calculators)
          expect(plain(open.published)).toEqual(plain(whole))
        },
      ),
      { numRuns: 60 },
    )
  })

  it('takes rows of a list and empty fields as a whole working does', () => {
    const lists = ledger.published.blocks.flatMap((block) =>
      Object.entries(block.given).flatMap(([key, given]) =>
        given.type === 'rows' ? [{ id: `${block.id}.${key}`, given }] : [],
      ),
    )
    expect(lists.length).toBeGreaterThan(3)
    const numbers = new Map(ledger.published.numbers.map((number) => [number.id, number]))
    for (const { id, given } of lists.filter((_, index) => index % 3 === 0)) {
      const rows = given.rows.map((row) =>
        Object.fromEntries(
          Object.entries(row).map(([name, cell]) => [
            name,
            cell.type === 'word'
              ? cell.value
              : cell.type === 'number'
                ? (numbers.get(cell.id)?.shown ?? '')
                : '',
          ]),
        ),
      )
      for (const texts of [rows.slice(0, -1), [...rows, ...rows.slice(0, 1)]]) {
        open.set({ [id]: texts })
        const whole = workPublished(ledger.published, { [id]: texts }, calculators)
        expect(plain(open.published)).toEqual(plain(whole))
      }
    }
    open.set({})
    expect(plain(open.published)).toEqual(plain(ledger.published))
  })

  it('says what moved, and only that', () => {
    open.set({})
    const used = new Set(ledger.published.numbers.flatMap(({ rests }) => rests))
    const number = changeable.find(
      ({ id, replaces }) => used.has(id) && replaces === undefined && !id.includes('.'),
    )
    expect(number).toBeDefined()
    if (number === undefined) return
    const moved = open.set({ [number.id]: textFor(number, 1.2) })
    const was = new Map(ledger.published.numbers.map((one) => [one.id, one]))
    const differ = moved.published.numbers.filter(
      (one) => was.get(one.id)?.value !== one.value || was.get(one.id)?.firmness !== one.firmness,
    )
    expect(differ.length).toBeGreaterThan(1)
    for (const one of differ) expect(moved.numbers).toContain(one.id)
    expect(moved.numbers.size).toBeLessThan(ledger.published.numbers.length)
    expect(open.set({ [number.id]: textFor(number, 1.2) }).numbers.size).toBe(0)
    open.set({})
  })

  it('accepts no stop for figures that are not the builder’s', () => {
    const accepted = ledger.published.blocks.find((block) => block.accepted !== null)
    const id = accepted && changeable.find(({ block }) => block === accepted.id)
    expect(id).toBeDefined()
    if (id === undefined || accepted === undefined) return
    const { published } = open.set({ [id.id]: textFor(id, 1.001) })
    expect(published.blocks.find((block) => block.id === accepted.id)?.accepted).toBeNull()
    const back = open.set({}).published.blocks.find((block) => block.id === accepted.id)
    expect(back?.accepted).toBe(accepted.accepted)
  })
})

describe('the roots of a ledger', () => {
  it('work to all of it, and are a fraction of its size', () => {
    const roots = rootsOf(ledger.published)
    const text = JSON.stringify(roots)
    // What is undefined does not come through JSON, and the column is left out.
    const read = structuredClone(roots)
    const again = work(ledgerOf(read), calculators).published
    const plainly = ({ numbers, blocks }: Published) => ({
      numbers: numbers.map((number) => ({ ...number, column: 1 })),
      blocks,
    })
    expect(plainly(again)).toEqual(plainly(ledger.published))
    expect(text.length).toBeLessThan(JSON.stringify(ledger.published).length / 4)
  })
})

describe('units that a reader asked for', () => {
  it.each(['metric', 'us'] as const)('%s: whatever has a counterpart is shown in it', (system) => {
    const site = { ...ledger.published.site, units: [system], asked: true as const }
    const { numbers } = work({ ...ledger.published, site }, calculators).published
    const foreign =
      system === 'metric'
        ? /[\d\s](in|ft|mi|lb|psi|gal|gal\/min|mph|°F|Δ°F|lbf·ft)$/u
        : /[\d\s](mm|cm|m|km|kg|kPa|bar|L|L\/min|km\/h|°C|K|N·m)$/u
    const shown = numbers.filter(
      ({ value, shownOther }) => value !== null && shownOther !== undefined,
    )
    expect(shown.length).toBeGreaterThan(300)
    expect(
      shown.filter(({ shown: text }) => foreign.test(text)).map(({ shown: text }) => text),
    ).toEqual([])
    // The value is what it was, whatever it is shown in.
    const before = new Map(ledger.published.numbers.map(({ id, value }) => [id, value]))
    for (const { id, value } of numbers) expect(value).toBe(before.get(id))
  })
})
