/**
 * The notes in Firefox, where one is installed: pages stand without complaint, and a reader's change moves
 * what rests on it to the numbers that Chromium and the build's engine have.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { loadLedger, type Ledger } from '../../src/ledger/load.ts'
import { workPublished, type Overrides } from '../../src/ledger/override.ts'
import { demo } from '../build/site.ts'
import { firefox, installedFirefox, type Firefox } from './firefox.ts'
import { opened, served, type Served } from './serve.ts'
import { rested, settled } from './steps.ts'

const path = installedFirefox()
const why = path === undefined ? ' (left out: no Firefox in PATH, nor in FIREFOX_PATH)' : ''

/** Every number of the page: its id, its exact value and what is printed of it. */
const printed = `[...document.querySelectorAll('main data.number[data-number]')]
  .filter((one) => one.closest('[data-stories], .own-panel, .yours') === null)
  .map((one) => [one.dataset.number, one.value, one.textContent])`
const rows = z.array(z.tuple([z.string(), z.string(), z.string()]))
type Rows = z.infer<typeof rows>

const digits = ([id, , shown]: Rows[number]): string => `${id}: ${shown}`

const atRest = `(${String(rested)})().then(() => true)`

/** Presses a number of the text; its field is there, and chosen, when this is done. */
const pressed = (id: string): string => `(async () => {
  document.querySelector('article.prose a.number-link:has([data-number="${id}"])').click()
  while (document.querySelector('#Own-field') === null) await new Promise((next) => setTimeout(next, 20))
  document.querySelector('#Own-field').focus()
  document.querySelector('#Own-field').select()
  return true
})()`

const changes: readonly (readonly [note: string, id: string, text: string])[] = [
  ['pack', 'pack/cells', '28'],
  ['cooling-loop', 'cooling-loop/bore', '3/8 in'],
]

describe.skipIf(path === undefined)(`in Firefox${why}`, () => {
  let host: Served
  let ledger: Ledger
  let fox: Firefox
  beforeAll(async () => {
    ;[host, ledger, fox] = await Promise.all([
      served(demo, '/'),
      loadLedger(demo),
      firefox(path ?? ''),
    ])
  })
  afterAll(async () => {
    await fox.close()
    await host.close()
  })

  it.each(['', 'notes/pack/', 'notes/pack/layout/', 'calculators/pump-and-loop/', 'numbers/'])(
    'the page /%s stands, with style, script and controls, and nothing is amiss',
    async (page) => {
      await fox.goto(host.address + page)
      await fox.ask(atRest)
      const html = host.site.pages.get(`${page}index.html`) ?? ''
      expect(
        await fox.ask(`[
          getComputedStyle(document.body).margin,
          document.querySelectorAll('data.number').length,
          document.querySelectorAll('work-search input').length,
          [...document.querySelectorAll('work-card, work-alone')].every((one) => one.querySelector('.try-bar button') !== null),
        ]`),
      ).toEqual(['0px', html.match(/<data class="number"/g)?.length ?? 0, 1, true])
      expect(await fox.faults()).toEqual([])
    },
  )

  it.each(changes)(
    'on %s a change of %s to %s comes to the same numbers',
    async (note, id, text) => {
      const before = rows.parse(await inFirefox(note))
      const after = rows.parse(await inFirefox(note, id, text))
      expect(await fox.faults()).toEqual([])
      const moved = after.filter(([, value], index) => value !== before[index]?.[1])
      expect(moved.length).toBeGreaterThan(10)
      expect(notAsWorked(after, { [id]: text })).toEqual([])
      const chromium = await inChromium(note, id, text)
      expect(notAsWorked(chromium, { [id]: text })).toEqual([])
      expect(after.map(digits)).toEqual(chromium.map(digits))
    },
  )

  async function inFirefox(note: string, id?: string, text = ''): Promise<unknown> {
    await fox.goto(`${host.address}404.html`)
    await fox.ask('localStorage.clear() ?? true')
    await fox.goto(`${host.address}notes/${note}/`)
    if (id !== undefined) {
      await fox.ask(pressed(id))
      await fox.type(text)
    }
    await fox.ask(atRest)
    return fox.ask(printed)
  }

  async function inChromium(note: string, id: string, text: string): Promise<Rows> {
    const { page, context } = await opened(host, `notes/${note}/`)
    await page.evaluate(pressed(id))
    await page.keyboard.type(text)
    await settled(page)
    const found = rows.parse(await page.evaluate(printed))
    await context.close()
    return found
  }

  /** Values that are not the engine's: the elementary functions may differ in their last digit. */
  function notAsWorked(found: Rows, overrides: Overrides): Rows {
    const { numbers } = workPublished(ledger.published, overrides, ledger.calculators)
    const values = new Map(numbers.map(({ id, value }) => [id, value]))
    return found.filter(([id, value]) => {
      const due = values.get(id)
      if (typeof due !== 'number' || value === '') return typeof due === 'number' || value !== ''
      return Math.abs(Number(value) - due) > 1e-12 * Math.abs(due)
    })
  }
})
