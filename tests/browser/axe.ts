/**
 * What axe-core finds on a page as it stands. Out: a line for each place, with the rule, where it is and
 * why. The script is put into the page once; a page that is sent elsewhere is a new one.
 *
 * Light and dark differ by their colours alone, which `layoutOf` shows: what is found in the one need be
 * looked for in the other only as far as colours decide it.
 */
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'
import { drawn } from './serve.ts'

const script = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

interface Found {
  readonly id: string
  readonly places: readonly string[]
}

/** Rules that look at colours. */
const ofColours = ['color-contrast', 'link-in-text-block']

export interface Asked {
  /** A selector; the whole page when left out. */
  readonly within?: string
  readonly coloursOnly?: boolean
}

export async function axeFindings(page: Page, asked: Asked = {}): Promise<string[]> {
  await page.evaluate(drawn)
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(script)
  const options = {
    resultTypes: ['violations'],
    ...(asked.coloursOnly === true ? { runOnly: ofColours, preload: false } : {}),
  }
  const found = await page.evaluate<Found[]>(`
    axe.run(${asked.within === undefined ? 'document' : `document.querySelector(${JSON.stringify(asked.within)})`}, ${JSON.stringify(options)})
      .then(({ violations }) => violations.map(({ id, nodes }) => ({
        id,
        places: nodes.slice(0, 3).map(({ target, failureSummary, html }) =>
          target.join(' ') + ' ' + failureSummary.replace(/\\s+/g, ' ') + ' in ' + html.slice(0, 200)),
      })))`)
  return found.flatMap(({ id, places }) => places.map((place) => `${id}: ${place}`))
}

/** Where everything of a page stands, and whether it shows: the same text for the same layout. */
export const layoutOf = (page: Page): Promise<string> =>
  page.evaluate(() =>
    [...document.querySelectorAll('*')]
      .map((one) => {
        const { x, y, width, height } = one.getBoundingClientRect()
        return `${one.tagName} ${x} ${y} ${width} ${height} ${one.checkVisibility({ visibilityProperty: true, opacityProperty: true })}`
      })
      .join('\n'),
  )

/**
 * Takes rows out of long tables that are made like others of the same table: of each make three stay. Two
 * rows are of one make when they differ by their words, addresses and names alone.
 */
export const thinned = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const telling = new Set(['class', 'role', 'type', 'lang', 'scope', 'tabindex', 'style'])
    const makeOf = (one: Element): string => {
      const names = [...one.attributes].map(({ name, value }) =>
        telling.has(name) || value === '' ? `${name}=${value}` : name,
      )
      const inner = [...one.childNodes].map((node) =>
        node instanceof Element ? makeOf(node) : node.textContent?.trim() === '' ? '' : 'words',
      )
      return `<${one.tagName} ${names.join(' ')}>${inner.join('')}</>`
    }
    let gone = 0
    for (const body of document.querySelectorAll('tbody')) {
      if (body.rows.length < 60) continue
      const seen = new Map<string, number>()
      for (const row of [...body.rows]) {
        const make = makeOf(row)
        const before = seen.get(make) ?? 0
        seen.set(make, before + 1)
        if (before < 3) continue
        row.remove()
        gone += 1
      }
    }
    return gone
  })
