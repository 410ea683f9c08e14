/**
 * Measures the reader's side in Chromium with the processor slowed four times: from a key in a field to
 * the page laid out again, cascade and redraw included. On the demo's largest page, and on the last of
 * five generated notes whose 60 blocks rest on each other in one chain.
 *
 * Two times are told: script and layout alone, and until the frame after is on its way. The second
 * waits for the screen's own beat, which is up to 17 ms by itself.
 */
import { rm } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { gzipSync } from 'node:zlib'
import { chromium, type Page } from 'playwright-core'
import { calculators } from '../../calculators/index.ts'
import { buildSite } from '../../src/site/build.ts'
import { findBrowser } from '../browser/find-browser.ts'
import { plainServer } from '../publish/plain-server.ts'
import { engineSizes } from './engine-size.ts'
import { writeNotes } from './notes.ts'
import type { Row } from './solve.ts'

const root = resolve(import.meta.dirname, '../..')
const folder = join(root, '.worked-notes', 'bench-reader')
const calculatorNames = new Set(Object.keys(calculators))
const slowed = 4
const notes = 5
const blocksInNote = 12
/**
 * Note `index` of the chain: heat and temperature go from block to block, so that all rest on the
 * first; every other one has a drawing.
 */
function chainNote(index: number): string {
  const steps = blocksInNote / 2
  const parts = Array.from({ length: steps }, (_, at) => {
    const before = at === 0 ? 'heat0' : `warm${at}.heat`
    const loss = index === 1 && at === 0 ? 'heat0' : `${before} * 0.98`
    const cool = at > 0 ? `core${at}.worstInlet` : index === 1 ? 'cool0' : 'last.worstInlet'
    return [
      `Step ${at + 1}: the bucket gave <Reading id="flow${at + 1}" value="${8 + at}.2 L/min" with="meter" />.`,
      `<Calc id="warm${at + 1}" use="heat-and-rise" loss={${loss}} flow={flow${at + 1}} coolant="ethylene-glycol" concentration="50 %" temperature={${cool}} />`,
      `That is {warm${at + 1}.heat} and {warm${at + 1}.rise}.`,
      `<Calc id="core${at + 1}" use="radiator-and-fan" cases={[{ name: "hill", heat: warm${at + 1}.heat, speed: "30 km/h", fan: "on" }, { name: "road", heat: "900 W", speed: "80 km/h", fan: "off" }]} coreWidth="400 mm" coreHeight="300 mm" ambient="35 °C" flow={flow${at + 1}} coolant="ethylene-glycol" concentration="50 %" inletLimit="80 °C" faceShare="30 %" fanVelocity="3 m/s" />`,
      `Then {core${at + 1}.worstInlet}, {core${at + 1}.inHand} in hand.`,
    ].join('\n\n')
  })
  const from =
    index === 1
      ? 'It loses <Reading id="heat0" value="1500 W" with="meter" /> at <Reading id="cool0" value="40 °C" with="meter" />.'
      : `import { warm${steps} as before, core${steps} as last } from './link-${index - 1}.mdx'\n\nIt loses <Show id="heat0" value={before.heat * 1.2} />.`
  return `---\ntitle: Link ${index}\ndate: 2026-01-0${index}\nphase: cooling\nstatus: done\n---\n\n${from}\n\n${parts.join('\n\n')}\n`
}

interface Times {
  readonly what: string
  readonly changes: number
  readonly blocks: number
  /** Milliseconds: script and layout. */
  readonly work: readonly number[]
  /** Milliseconds: until the frame after. */
  readonly frame: readonly number[]
}

const part = (list: readonly number[], share: number): number =>
  list.toSorted((a, b) => a - b)[Math.floor((list.length - 1) * share)] ?? NaN

/** Types into every field of the panel or form that is open, and measures each change in the page. */
const measure = (page: Page, selector: string) =>
  page.evaluate(async (fields) => {
    const times: { work: number; frame: number }[] = []
    const inputs = [...document.querySelectorAll<HTMLInputElement>(fields)].filter(
      ({ value }) => value !== '' && Number.isFinite(Number(value)),
    )
    const set = (input: HTMLInputElement, value: number): void => {
      input.value = String(Number(value.toPrecision(5)))
      input.dispatchEvent(new Event('input', { bubbles: true }))
    }
    const some = inputs.slice(0, 12)
    const changes = Math.ceil(72 / some.length)
    for (const input of some) {
      const builder = Number(input.value)
      input.focus()
      for (let change = 1; change <= changes; change += 1) {
        const share = 1 + (change % 2 === 0 ? -0.001 : 0.002) * (1 + (change % 17))
        const start = performance.now()
        set(input, builder * share)
        document.body.getBoundingClientRect()
        const work = performance.now() - start
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done)))
        times.push({ work, frame: performance.now() - start })
        // A quick typist's pause.
        await new Promise((done) => setTimeout(done, 120))
      }
    }
    return times
  }, selector)

async function timesOn(
  page: Page,
  what: string,
  open: (page: Page) => Promise<string>,
): Promise<Times> {
  const selector = await open(page)
  const client = await page.context().newCDPSession(page)
  await client.send('Emulation.setCPUThrottlingRate', { rate: slowed })
  // The first changes warm the program up, as a reader's do.
  await measure(page, selector)
  const times = await measure(page, selector)
  const blocks = await page.evaluate(async () => {
    const text = await (await fetch('figures.json')).text()
    return (text.match(/"calculator":"/g) ?? []).length
  })
  await client.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  return {
    what,
    changes: times.length,
    blocks,
    work: times.map(({ work }) => work),
    frame: times.map(({ frame }) => frame),
  }
}

async function openForm(page: Page): Promise<string> {
  await page.locator('work-card .try-bar button').first().click()
  await page.locator('.try-form').first().waitFor()
  return '.try-form input[inputmode]'
}

/** The root of the whole chain, from the panel of a number that rests on it. */
async function openRoot(page: Page): Promise<string> {
  await page.locator('article.prose a.number-link').first().click()
  for (let step = 0; step < 200; step += 1) {
    await page.locator('.own-panel').waitFor()
    if (
      (await page.locator('#Own-field').count()) > 0 &&
      (await page.locator('.own-root').count()) === 0
    )
      break
    await page.locator('.own-panel [data-open]').first().click()
  }
  return '#Own-field'
}

async function built(content: string, out: string): Promise<void> {
  const whole = await buildSite({ root, content, out, say: () => undefined })
  if (!whole) throw new Error(`${content} does not build`)
}

export async function readerTimes(): Promise<{ rows: readonly Row[]; result: unknown }> {
  const executablePath = await findBrowser(root)
  const chain = join(folder, 'content')
  await writeNotes(
    chain,
    new Map(Array.from({ length: notes }, (_, at) => [`link-${at + 1}`, chainNote(at + 1)])),
  )
  await built(chain, join(folder, 'chain'))
  await built(join(root, 'content'), join(folder, 'demo'))
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] })
  const all: Times[] = []
  let engine = 0
  const visit = async (
    dist: string,
    path: string,
    what: string,
    open: (page: Page) => Promise<string>,
  ): Promise<void> => {
    const host = await plainServer(join(folder, dist), '/')
    const context = await browser.newContext({ viewport: { width: 390, height: 844 } })
    const page = await context.newPage()
    const scripts: Promise<number>[] = []
    page.on('response', (response) => {
      if (!response.url().endsWith('.js')) return
      const name = response.url().split('/').at(-1)?.split('.')[0] ?? ''
      if (!calculatorNames.has(name))
        scripts.push(response.body().then((body) => gzipSync(body, { level: 9 }).length))
    })
    await page.goto(`${host.address}${path}`)
    all.push(await timesOn(page, what, open))
    engine = Math.max(
      engine,
      (await Promise.all(scripts)).reduce((sum, size) => sum + size, 0),
    )
    await context.close()
    await host.stop()
  }
  await visit('demo', 'notes/first-drive/', 'demo’s largest page, a form', openForm)
  await visit('demo', 'notes/cooling-loop/', 'demo’s cooling loop, a form', openForm)
  await visit(
    'chain',
    `notes/link-${notes}/`,
    'chain of 60 blocks, its last note, a form',
    openForm,
  )
  await visit('chain', `notes/link-${notes}/`, 'chain of 60 blocks, the root of all', openRoot)
  await browser.close()
  await rm(folder, { recursive: true, force: true })
  const sizes = await engineSizes()
  const ms = (value: number): string => `${value.toFixed(1)} ms`
  const rows = all.flatMap(({ what, changes, blocks, work, frame }): Row[] => [
    [
      `${what}: median, worst`,
      `${ms(part(work, 0.5))}, ${ms(part(work, 1))}`,
      `${changes} changes, ${blocks} blocks; aim: 16 ms, 50 ms`,
    ],
    ['  until the frame after', `${ms(part(frame, 0.5))}, ${ms(part(frame, 1))}`, ''],
  ])
  return {
    rows: [
      ...rows,
      ['engine that works the numbers', `${sizes.works} B`, 'aim: at most 25600 B, gzip'],
      ['  with what writes them into the page', `${sizes.draws} B`, ''],
      ['all script once a form was used, without calculators', `${engine} B`, ''],
    ],
    result: { slowed, pages: all, engineBytes: sizes, scriptBytes: engine },
  }
}
