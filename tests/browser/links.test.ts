/** Figures that come by a link, or from what the browser keeps: whole, old, damaged, hostile. */
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { demo } from '../build/site.ts'
import { opened, openedIn, served, type Opened, type Served } from './serve.ts'
import { change, keep, keptFigures, number, panel, printed, seen, settled, strip } from './steps.ts'

let host: Served
let builders: Record<string, string>
beforeAll(async () => {
  host = await served(demo, '/')
  const { page, context } = await opened(host, 'notes/pack/')
  builders = await printed(page)
  await context.close()
})
afterAll(() => host.close())

const offer = (page: Page) => page.locator('.own-offer')

async function byLink(hash: string, path = 'notes/pack/'): Promise<Opened> {
  const one = await opened(host, `${path}#${hash}`)
  await offer(one.page).waitFor()
  return one
}

describe('a link with figures', () => {
  it('on a page that cannot work says so, changes nothing, and stays in the address', async () => {
    const { page, context } = await opened(host, '404.html')
    await page.route('**/figures.json*', (route) => route.abort())
    await page.goto(`${host.address}notes/pack/#figures=1&pack/cells=28`)
    await offer(page).waitFor()
    expect(await seen(offer(page))).toContain('its figures could not be fetched')
    await offer(page).getByText('Close').click()
    expect(await printed(page)).toEqual(builders)
    expect(await keptFigures(page)).toBeNull()
    expect(new URL(page.url()).hash).toBe('#figures=1&pack/cells=28')
    await page.unroute('**/figures.json*')
    await page.reload()
    await offer(page).waitFor()
    expect(await seen(offer(page))).toContain('This link brings 1 figure')
    await context.close()
  })

  it('carries them to another browser, where they count once they are asked for', async () => {
    const sender = await opened(host, 'notes/pack/')
    await change(sender.page, 'pack/cells', '28')
    await change(sender.page, 'pack/cellHigh', '3.5 V')
    await settled(sender.page)
    const sent = await printed(sender.page)
    await strip(sender.page).locator('summary').click()
    await strip(sender.page).locator('[data-link]').click()
    const address = await strip(sender.page).locator('.own-link input').inputValue()
    expect(address).toMatch(
      /\/notes\/pack\/#figures=1&edition=[0-9a-f]+&pack\/cells=28&pack\/cellHigh=3\.5\+V$/,
    )
    await sender.context.close()

    const { page, context, faults } = await byLink(address.slice(address.indexOf('#') + 1))
    expect(await seen(offer(page))).toContain(
      'This link brings 2 figures of somebody else, not the builder’s and not yours.',
    )
    expect(await offer(page).locator('li').allTextContents()).toEqual([
      expect.stringMatching(/28 \(the builder’s 36\)$/),
      expect.stringMatching(/3\.5 V \(the builder’s 3\.65 V\)$/),
    ])
    // Nothing counts and nothing is kept before it is asked for.
    expect(await printed(page)).toEqual(builders)
    expect(await keptFigures(page)).toBeNull()
    expect(new URL(page.url()).hash).toBe('')
    await offer(page).locator('[data-use]').click()
    expect(await offer(page).count()).toBe(0)
    await settled(page)
    expect(await printed(page)).toEqual(sent)
    expect(await seen(strip(page).locator('summary'))).toContain('2 figures of yours')
    expect(faults).toEqual([])
    await context.close()
  })

  it('can be left, and leaves nothing behind', async () => {
    const { page, context, faults } = await byLink('figures=1&pack/cells=28')
    await offer(page).getByText('Leave them').click()
    await settled(page)
    expect(await offer(page).count()).toBe(0)
    expect(await printed(page)).toEqual(builders)
    expect(await keptFigures(page)).toBeNull()
    expect(faults).toEqual([])
    await context.close()
  })

  it('from an older edition says what no longer fits, and applies the rest', async () => {
    const { page, context, faults } = await byLink(
      'figures=1&edition=abc123&pack/gone=3+V&pack/layout.gone=2&pack/cellHigh=3.5+kg&pack/cells=28',
    )
    const said = await seen(offer(page))
    expect(said).toMatch(
      /The link was made with edition abc123 of this note; this is edition [0-9a-f]+\./,
    )
    expect(said).toContain('3 figures do not fit any more:')
    expect(said).toContain('pack/gone: is not in this edition any more')
    expect(said).toContain('pack/layout.gone: is not in this edition any more')
    expect(said).toMatch(/3\.5 kg looks like kg \(a mass\); a voltage is due; allowed: /)
    await offer(page).locator('[data-use]').click()
    await settled(page)
    await expect.poll(() => seen(number(page, 'pack/cells'))).toContain('28 your figures')
    expect(await seen(strip(page).locator('summary'))).toContain('1 figure of yours')
    expect(faults).toEqual([])
    await context.close()
  })

  it('brings those of other notes too, of which this page knows only a part', async () => {
    const link = 'figures=1&pack/cells=28&brakes-and-rolling/pressure=13.9+psi+abs'
    const { page, context, faults } = await byLink(link)
    expect(await seen(offer(page))).toContain('This link brings 2 figures')
    expect(await seen(offer(page))).not.toContain('fit any more')
    await offer(page).locator('[data-use]').click()
    await page.goto(`${host.address}notes/brakes-and-rolling/`)
    await settled(page)
    await expect
      .poll(() => seen(number(page, 'brakes-and-rolling/pressure')))
      .toMatch(/^13\.90? psi abs .*your figures/)
    expect(faults).toEqual([])
    await context.close()
  })

  it('of a later version of the kit is not taken', async () => {
    const { page, context, faults } = await byLink('figures=2&pack/cells=28')
    expect(await seen(offer(page))).toContain('cannot be read here')
    await offer(page).locator('button').click()
    expect(await printed(page)).toEqual(builders)
    expect(faults).toEqual([])
    await context.close()
  })

  it('is asked about when it is opened on a page that stands already', async () => {
    const { page, context } = await opened(host, 'notes/pack/')
    await page.evaluate(() => {
      location.hash = '#figures=1&pack/cells=28'
    })
    await offer(page).waitFor()
    expect(await printed(page)).toEqual(builders)
    await context.close()
  })
})

const script =
  '<script>document.title="taken"</script><img src=x onerror="document.title=\'taken\'">'
const many = Array.from({ length: 10_000 }, (_, index) => `pack/n${index}=${index}+V`).join('&')

describe('a hostile or damaged link', () => {
  it.each([
    ['script in a value', `figures=1&pack/cells=${encodeURIComponent(script)}`],
    ['script in a name', `figures=1&${encodeURIComponent(`pack/${script}`)}=28`],
    ['script in a choice', `figures=1&target-and-road-load/steep.${encodeURIComponent(script)}=1`],
    [
      'script where it leads and in its edition',
      `figures=1&at=${encodeURIComponent(script)}&edition=${encodeURIComponent(script)}&pack/gone=1`,
    ],
    ['script in a row', `figures=1&pack/layout.parts.0.name=${encodeURIComponent(script)}`],
    ['script in a column', `figures=1&pack/layout.parts.0.${encodeURIComponent(script)}=1`],
    ['a huge number', `figures=1&pack/cells=${'9'.repeat(180)}`],
    [
      'a number that is none',
      'figures=1&pack/cellHigh=1e999+V&pack/cells=NaN&pack/cellLow=Infinity+V',
    ],
    ['a very long value', `figures=1&pack/cells=${'9'.repeat(50_000)}`],
    [
      'names of every object',
      'figures=1&__proto__/constructor=1&pack/__proto__=1&pack/constructor=1&pack/layout.__proto__=1&pack/layout.constructor=1&pack/layout.toString=1&constructor/prototype.toString=1',
    ],
    [
      'names of every object as units and choices',
      'figures=1&pack/cellHigh=3.5+constructor&pack/cellLow=3+__proto__&pack/sag.current=toString&cooling-loop/loop.coolant=constructor&pack/layout.usable=1+hasOwnProperty',
    ],
    [
      'names of every object as rows',
      'figures=1&pack/layout.__proto__.0.__proto__=1&pack/layout.parts.0.constructor=1&pack/layout.parts.0.__proto__=1&pack/layout.toString.0.name=1',
    ],
    ['ten thousand entries', `figures=1&${many}`],
    ['wrong encodings', 'figures=1&pack/cells=%E0%A4%A&%=%&pack/%ff=%00&&&=&pack/cells'],
    ['nothing', 'figures=1'],
    ['a wrong version', 'figures=%3Cimg%20src=x%20onerror=alert(1)%3E&pack/cells=28'],
  ])('%s: the page stands, and nothing gets in', async (_what, hash) => {
    const { page, context, faults } = await byLink(hash)
    const title = await page.title()
    // Also when the reader takes whatever it offers.
    const use = offer(page).locator('[data-use]')
    if ((await use.count()) > 0) await use.click()
    await settled(page)
    expect(await page.title()).toBe(title)
    expect(await page.locator('img[src=x]').count()).toBe(0)
    expect(await page.evaluate(() => ({}).constructor === Object && !('name' in {}))).toBe(true)
    expect(await printed(page)).toEqual(builders)
    // The page still answers.
    await change(page, 'pack/cellHigh', '3.5 V')
    await settled(page)
    await expect.poll(() => seen(number(page, 'pack/cellHigh'))).toContain('3.5 V your figures')
    expect(faults).toEqual([])
    await context.close()
  })

  it('cut off by its length never brings half a value', async () => {
    const filler = Array.from({ length: 400 }, (_, index) => `pack/x${index}=${'9'.repeat(190)}`)
    let hash = `figures=1&${filler.join('&')}`
    const left = 100_000 - hash.length
    expect(left).toBeGreaterThan(0)
    hash += `&pack/y=${'9'.repeat(150)}`.repeat(Math.floor((left - 40) / 158))
    const pad = 100_000 - 1 - hash.length - '&pack/cells=2'.length
    hash += `&z=${'z'.repeat(Math.max(0, pad - 3))}&pack/cells=28`
    const { page, context } = await byLink(hash)
    expect(await seen(offer(page))).not.toMatch(/: 2 \(the builder’s 36\)/)
    await context.close()
  })
})

/** Another visit of the same reader, with something done to the page before its scripts run. */
async function visit(context: BrowserContext, path: string): Promise<Opened> {
  return openedIn(host, context, path)
}

describe('what the browser keeps', () => {
  it.each([
    [
      'refused',
      () => {
        Object.defineProperty(globalThis, 'localStorage', {
          get: () => {
            throw new DOMException('no', 'SecurityError')
          },
        })
      },
    ],
    [
      'full',
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException('full', 'QuotaExceededError')
        }
      },
    ],
  ])('may be %s: figures hold for the page, and the strip says so', async (_what, spoil) => {
    const context = await host.browser.newContext()
    await context.addInitScript(spoil)
    const { page, faults } = await visit(context, 'notes/pack/')
    await change(page, 'pack/cells', '28')
    await settled(page)
    await expect.poll(() => seen(number(page, 'pack/cells'))).toContain('28 your figures')
    await strip(page).locator('summary').click()
    expect(await seen(strip(page))).toContain('This browser keeps nothing')
    await strip(page).locator('[data-all]').click()
    await settled(page)
    await expect.poll(() => seen(number(page, 'pack/cells'))).toBe('36')
    await page.locator('work-units select').selectOption('metric')
    await page.reload()
    expect(await printed(page)).toEqual(builders)
    expect(faults).toEqual([])
    await context.close()
  })

  it.each([
    ['no JSON', '{'],
    [
      'another version',
      '{"version":99,"figures":[{"id":"pack/cells","text":"28","label":"a","builder":"b"}]}',
    ],
    ['another form', '{"version":1,"figures":{"pack/cells":"28"}}'],
    [
      'entries of every kind',
      '{"version":1,"figures":[null,1,"x",[],{"id":1},{"id":"pack/cells"},{"id":"pack/cells","text":{},"label":"a","builder":"b"},{"id":"__proto__","text":"1","label":"a","builder":"b"},{"id":"pack/layout.parts","text":[{"__proto__":"1"},null],"label":"a","builder":"b"}]}',
    ],
    ['null', 'null'],
  ])('may be damaged (%s): the page is the builder’s', async (_what, text) => {
    const { page, context, faults } = await opened(host, '404.html')
    await page.evaluate((kept) => localStorage.setItem('worked-notes figures /', kept), text)
    const again = await visit(context, 'notes/pack/')
    await settled(again.page)
    expect(await printed(again.page)).toEqual(builders)
    await change(again.page, 'pack/cells', '28')
    await settled(again.page)
    await expect.poll(() => seen(number(again.page, 'pack/cells'))).toContain('28 your figures')
    expect([...faults, ...again.faults]).toEqual([])
    await context.close()
  })

  it('may hold what fits no more: it is not used, and the strip says so', async () => {
    const { page, context } = await opened(host, '404.html')
    await keep(page, {
      'pack/cells': '28 kg',
      'pack/layout.constructor': '1',
      'pack/cellHigh': '3.5 V',
    })
    const again = await visit(context, 'notes/pack/')
    await settled(again.page)
    await expect
      .poll(() => seen(number(again.page, 'pack/cellHigh')))
      .toContain('3.5 V your figures')
    expect(await seen(number(again.page, 'pack/cells'))).toBe('36')
    await strip(again.page).locator('summary').click()
    await expect
      .poll(() => seen(strip(again.page).locator('li').first()))
      .toContain('It does not fit any more and is not used.')
    await expect.poll(() => seen(strip(again.page).locator('li').nth(1))).toContain('does not fit')
    expect(again.faults).toEqual([])
    await context.close()
  })

  it('is nothing before the first change', async () => {
    const { page, context } = await opened(host, 'notes/pack/')
    await number(page, 'pack/cells').click()
    await panel(page).waitFor()
    await page.keyboard.press('Escape')
    expect(await page.evaluate(() => localStorage.length)).toBe(0)
    expect(await context.cookies()).toEqual([])
    await context.close()
  })
})
