/**
 * A page of every kind, looked at as readers have it: light and dark, on paper, narrow and wide, with the
 * keyboard, without style, while it loads.
 */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { elementsOf } from '../build/links.ts'
import { workshop } from '../build/site.ts'
import { axeFindings, layoutOf } from './axe.ts'
import { opened, quietOf, served, type Served } from './serve.ts'

let host: Served
beforeAll(async () => {
  host = await served(workshop, '/van/')
})
afterAll(() => host.close())

const kinds: Readonly<Record<string, string>> = {
  home: '',
  note: 'notes/pump/',
  'note that replaces a number': 'notes/meter/',
  'note without a number': 'notes/plan/',
  block: 'notes/pump/sheet/',
  'wall sheet': 'notes/pump/wall-sheet/',
  numbers: 'numbers/',
  calculators: 'calculators/',
  calculator: 'calculators/motor-circuit/',
  tables: 'tables/',
  table: 'tables/awg/',
  parts: 'parts/',
  open: 'open/',
  sources: 'sources/',
  'not found': '404.html',
}
const pages = Object.entries(kinds)

const phone = { viewport: { width: 360, height: 740 } }
const desk = { viewport: { width: 1280, height: 900 } }

it('the site has no kind of page that is not looked at here', () => {
  const kindOf = (path: string): string =>
    path
      .replace(/^(calculators|tables)\/.+/, '$1/one')
      .replace(/^notes\/[^/]+\/$/, 'note')
      .replace(/^notes\/[^/]+\/wall-sheet\/$/, 'sheet')
      .replace(/^notes\/[^/]+\/[^/]+\/$/, 'block')
  const all = [...host.site.pages.keys()].map((name) => kindOf(name.replace(/index\.html$/, '')))
  expect([...new Set(all)].sort()).toEqual(
    [...new Set(pages.map(([, path]) => kindOf(path)))].sort(),
  )
  for (const [, path] of pages)
    expect([...host.site.pages.keys()]).toContain(path.replace(/(^|\/)$/, '$1index.html'))
})

const looks = [
  { media: 'screen', colorScheme: 'light' },
  { media: 'screen', colorScheme: 'dark' },
  { media: 'print', colorScheme: 'light' },
  { media: 'print', colorScheme: 'dark' },
] as const

/** What axe-core finds in each look: in the dark by colours, where everything stands as in the light. */
async function findingsIn(page: Page): Promise<string[]> {
  const wrong: string[] = []
  let light = ''
  for (const look of looks) {
    await page.emulateMedia(look)
    const [isDark, layout] = [look.colorScheme === 'dark', await layoutOf(page)]
    const said = `${look.colorScheme} ${look.media}`
    if (isDark && layout !== light) wrong.push(`${said}: stands otherwise than in the light`)
    light = layout
    const found = await axeFindings(page, { coloursOnly: isDark })
    wrong.push(...found.map((one) => `${said}: ${one}`))
  }
  return wrong
}

describe.each([
  ['360 pixels', phone],
  ['1280 pixels', desk],
])('at %s', (_, options) => {
  it('axe-core finds nothing, in the light, in the dark and on paper; nothing scrolls sideways', async () => {
    const wrong: string[] = []
    const { page, context, faults, to } = await opened(host, '', options)
    for (const [kind, path] of pages) {
      await page.emulateMedia({ media: 'screen', colorScheme: 'light' })
      await to(path)
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      if (wide > 0) wrong.push(`${kind}: ${wide} pixels too wide`)
      wrong.push(...(await findingsIn(page)).map((one) => `${kind}, ${one}`))
      wrong.push(...faults.splice(0).map((one) => `${kind}: ${one}`))
    }
    await context.close()
    expect(wrong).toEqual([])
  }, 300_000)
})

describe.each([
  ['360 pixels', phone],
  ['1280 pixels', desk],
])('at %s', (_, options) => {
  const wide = (page: Page): Promise<number> =>
    page.evaluate(() => document.documentElement.scrollWidth - innerWidth)

  it.each([
    ['something', 'pump', /\d found for “pump”/],
    ['nothing', '電動', /Nothing found for “電動”/],
  ])('a search that finds %s is without findings too', async (_, words, said) => {
    const { page, context, faults } = await opened(host, '', options)
    await page.locator('work-search input').fill(words)
    await page.locator('work-search button').click()
    await page.locator('.search-found').getByText(said).waitFor()
    expect(await wide(page)).toBeLessThanOrEqual(0)
    expect([...(await findingsIn(page)), ...faults]).toEqual([])
    await context.close()
  })

  it('so is the page of an older name, for whom it does not lead on', async () => {
    const { page, context, faults } = await opened(host, '404.html', options)
    await page.route('**/notes/the-pump/', async (route) => {
      const answer = await route.fetch()
      const body = (await answer.text()).replace(
        /<noscript>.*?<\/noscript>|<script>.*?<\/script>/g,
        '',
      )
      await route.fulfill({ response: answer, body })
    })
    await page.goto(`${host.address}notes/the-pump/`)
    expect(await page.locator('h1').textContent()).toContain('another name')
    expect(await wide(page)).toBeLessThanOrEqual(0)
    expect([...(await findingsIn(page)), ...faults]).toEqual([])
    await context.close()
  })
})

it('paper is black on white, but for the pictures', async () => {
  const wrong: string[] = []
  const { page, context, to } = await opened(host, '', { colorScheme: 'dark' })
  await page.emulateMedia({ media: 'print' })
  for (const [kind, path] of pages) {
    await to(path)
    const coloured = await page.evaluate(() => {
      const grey = (colour: string): boolean => {
        const [red, green, blue, alpha = '1'] = colour.match(/[\d.]+/g) ?? []
        return alpha === '0' || (red === green && green === blue)
      }
      return [...document.querySelectorAll('body, body *')].flatMap((one) => {
        if (one.getClientRects().length === 0) return []
        const style = getComputedStyle(one)
        const all = [style.color, style.backgroundColor, style.borderTopColor]
        return all.every(grey)
          ? []
          : [`${one.tagName}.${one.getAttribute('class') ?? ''} ${all.join(' ')}`]
      })
    })
    wrong.push(...coloured.map((one) => `${kind}: ${one}`))
  }
  await context.close()
  expect(wrong).toEqual([])
})

it('headings begin at one, and none is left out on the way down', () => {
  const wrong = [...host.site.pages].flatMap(([name, html]) => {
    const levels = elementsOf(html)
      .filter(({ tagName }) => /^h[1-6]$/.test(tagName))
      .map(({ tagName }) => Number(tagName.slice(1)))
    const one = levels.filter((level) => level === 1).length === 1
    const down = levels.every((level, index) => level <= (levels[index - 1] ?? 0) + 1)
    return one && down ? [] : [`${name}: ${levels.join(' ')}`]
  })
  expect(wrong).toEqual([])
})

it('the keyboard goes through a page as it is read, each place seen', async () => {
  const wrong: string[] = []
  const { page, context, to } = await opened(host, '')
  for (const [kind, path] of pages) {
    await to(path)
    const reached = await tabbed(page)
    if (reached[0]?.text !== 'Skip to the page')
      wrong.push(`${kind}: begins at ${reached[0]?.text ?? ''}`)
    if (reached.length < 8) wrong.push(`${kind}: ${reached.length} places only`)
    for (const [index, one] of reached.entries()) {
      const before = reached[index - 1]
      if (before !== undefined && one.order <= before.order)
        wrong.push(`${kind}: ${one.text} after ${before.text}`)
      if (!one.marked) wrong.push(`${kind}: ${one.text} does not show that it is chosen`)
    }
  }
  await context.close()
  expect(wrong).toEqual([])
}, 120_000)

interface Reached {
  readonly text: string
  /** Its place in the document. */
  readonly order: number
  readonly marked: boolean
}

/** At most this many places: the start, the masthead, and well into the page. */
const mostPlaces = 40

async function tabbed(page: Page): Promise<readonly Reached[]> {
  const reached: Reached[] = []
  for (let place = 0; place < mostPlaces; place += 1) {
    await page.keyboard.press('Tab')
    const one = await page.evaluate(() => {
      const chosen = document.activeElement
      if (chosen === null || chosen === document.body) return undefined
      return {
        text: chosen.textContent.trim().slice(0, 60) || chosen.tagName,
        order: [...document.querySelectorAll('*')].indexOf(chosen),
        marked: getComputedStyle(chosen).outlineStyle !== 'none',
      }
    })
    if (one === undefined || reached.some(({ order }) => order === one.order)) break
    reached.push(one)
  }
  return reached
}

it('without style a page is still in order: the way past, the site’s pages, the title, the text', async () => {
  const wrong: string[] = []
  const context = await host.browser.newContext({ ...desk, javaScriptEnabled: false })
  const page = await context.newPage()
  await page.route('**/*.css', (route) => route.abort())
  for (const [kind, path] of pages) {
    await page.goto(host.address + path)
    const seen = await page.evaluate(() => {
      const top = (selector: string): number =>
        document.querySelector(selector)?.getBoundingClientRect().top ?? NaN
      return {
        tops: ['.skip', 'nav', 'h1', '.colophon'].map(top),
        // Drawings keep their size by attributes.
        large: [...document.querySelectorAll('svg.mark, svg.tick, svg.alert')].filter(
          (one) => one.getBoundingClientRect().width > 30,
        ).length,
      }
    })
    const rising = seen.tops.every((top, index) => index === 0 || top > (seen.tops[index - 1] ?? 0))
    if (!rising) wrong.push(`${kind}: ${seen.tops.join()}`)
    if (seen.large > 0) wrong.push(`${kind}: ${seen.large} marks as large as the page`)
  }
  await context.close()
  expect(wrong).toEqual([])
})

it.each([
  ['a phone', phone],
  ['a desk', desk],
])(
  'nothing moves while a page loads and is read through, on %s',
  async (_, options) => {
    const wrong: string[] = []
    for (const [kind, path] of pages) {
      const context = await host.browser.newContext(options)
      const page = await context.newPage()
      await page.addInitScript(() => {
        const shifts: number[] = []
        Object.assign(globalThis, { shifts })
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries())
            if ('value' in entry && typeof entry.value === 'number') shifts.push(entry.value)
        }).observe({ type: 'layout-shift', buffered: true })
      })
      const quiet = quietOf(page)
      await page.goto(host.address + path)
      await quiet()
      for (let step = 0; step < 8; step += 1) {
        await page.mouse.wheel(0, 500)
        await page.waitForTimeout(40)
      }
      const sum = await page.evaluate<number>('shifts.reduce((sum, one) => sum + one, 0)')
      if (!(sum < 0.01)) wrong.push(`${kind}: ${sum}`)
      await context.close()
    }
    expect(wrong).toEqual([])
  },
  120_000,
)

it('a page is drawn after its HTML and one style sheet: nothing else holds it up', () => {
  const wrong = [...host.site.pages].flatMap(([name, html]) => {
    if (html.includes('http-equiv="refresh"')) return []
    const [head = ''] = html.split('</head>')
    const sheets = html.match(/<link[^>]*rel="stylesheet"[^>]*>/g) ?? []
    const blocking = (html.match(/<script\b[^>]*>/g) ?? []).filter(
      (tag) => !/type="(?:module|application\/json)"/.test(tag),
    )
    const css = [...host.site.files].filter(([file]) => file.endsWith('.css'))
    const imports = css.filter(
      ([, bytes]) => bytes.includes('@import') || bytes.includes('@font-face'),
    )
    return sheets.length === 1 &&
      head.includes('rel="stylesheet"') &&
      blocking.length === 0 &&
      imports.length === 0
      ? []
      : [
          `${name}: ${sheets.length} style sheets, ${blocking.length} scripts, ${imports.length} imports`,
        ]
  })
  expect(wrong).toEqual([])
})

describe.each(['A4', 'Letter'])('printed on %s', (format) => {
  it('a wall sheet of a small note is one or two sheets of paper', async () => {
    const { page, context } = await opened(host, 'notes/pump/wall-sheet/')
    const pdf = await page.pdf({ format })
    expect([1, 2]).toContain(sheetsOf(pdf))
    await context.close()
  })

  it('hazards stay with the head of their card, and a card that fits is not broken', async () => {
    const { page, context } = await opened(host, 'notes/pump/')
    await page.emulateMedia({ media: 'print' })
    const rules = await page.evaluate(() => {
      const style = (selector: string): CSSStyleDeclaration =>
        getComputedStyle(document.querySelector(selector) ?? document.body)
      return [
        style('.hazards').breakAfter,
        style('.hazard').breakInside,
        style('.card').breakInside,
        style('.card-head').breakAfter,
        style('h2').breakAfter,
      ]
    })
    expect(rules).toEqual(['avoid', 'avoid', 'avoid', 'avoid', 'avoid'])
    await context.close()
  })
})

/** Sheets of a printed document. */
const sheetsOf = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length
