/** What a reader does, and sees, on a note: for the tests in a real browser. */
import type { Locator, Page } from 'playwright-core'

const base = '/'

/** Text as a reader sees it, its spaces plain. */
export async function seen(place: Locator): Promise<string> {
  return ((await place.first().textContent()) ?? '').replace(/[\s\u00a0\u202f]+/g, ' ').trim()
}

/** A number of the text, where it stands first. */
export const number = (page: Page, id: string): Locator =>
  page
    .locator('article.prose a.number-link', { has: page.locator(`[data-number="${id}"]`) })
    .first()

export const card = (page: Page, block: string): Locator =>
  page.locator(`work-card[data-block="${block}"]`)

export const panel = (page: Page): Locator => page.locator('.own-panel')
export const field = (page: Page): Locator => page.locator('#Own-field')
export const strip = (page: Page): Locator => page.locator('.own-strip')

export async function openPanel(page: Page, id: string): Promise<void> {
  await number(page, id).click()
  await field(page).waitFor()
}

/** Changes a number of the text by its panel. */
export async function change(page: Page, id: string, text: string): Promise<void> {
  await openPanel(page, id)
  await field(page).fill(text)
  await page.keyboard.press('Escape')
}

export async function openForm(page: Page, block: string): Promise<void> {
  await card(page, block).locator('.try-bar button').first().click()
  await card(page, block).locator('form.try-form').waitFor()
}

/** What the browser keeps: the reader's figures. */
export const keptFigures = (page: Page): Promise<string | null> =>
  page.evaluate((key) => localStorage.getItem(key), `worked-notes figures ${base}`)

/** As if it had been kept by an earlier visit. */
export async function keep(page: Page, figures: Readonly<Record<string, string>>): Promise<void> {
  const entries = Object.entries(figures).map(([id, text]) => ({
    id,
    text,
    label: id,
    builder: 'what the builder had',
  }))
  await page.evaluate(
    ([key, text]) => {
      localStorage.setItem(key, text)
    },
    [`worked-notes figures ${base}`, JSON.stringify({ version: 1, figures: entries })] as const,
  )
}

/** Every number that the page prints: id -> its exact value as text, by the first place. */
export const printed = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll<HTMLDataElement>('main data.number[data-number]')]
        .filter((one) => one.closest('[data-stories], .own-panel') === null)
        .map((one) => [one.dataset.number ?? '', one.value]),
    ),
  )

/** Waits until what was put off is written, and whatever had to be fetched for it is there. */
export const settled = (page: Page): Promise<void> => page.evaluate(rested)

/** Runs in the page. */
export const rested = (): Promise<void> =>
  new Promise((done) => {
    const fetched = (): number => performance.getEntriesByType('resource').length
    const look = (before: number): void => {
      setTimeout(
        () =>
          requestIdleCallback(() => (fetched() === before ? done() : look(fetched())), {
            timeout: 500,
          }),
        500,
      )
    }
    look(fetched())
  })
