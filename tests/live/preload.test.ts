// @vitest-environment happy-dom
/** What every `import()` of a page goes through: the parts are fetched at once, below the base path. */
import { beforeEach, expect, it } from 'vitest'
import { leanPreload } from '../../src/site/preload.ts'

type Preload = (load: () => Promise<unknown>, parts?: readonly string[]) => Promise<unknown>

const isPreload = (value: unknown): value is Preload => typeof value === 'function'

function codeFor(id = '\0vite/preload-helper.js'): string | undefined {
  const { load } = leanPreload()
  if (typeof load !== 'function') throw new Error('no hook')
  const code: unknown = Reflect.apply(load, undefined, [id])
  return typeof code === 'string' ? code : undefined
}

/** `at`: where the part lies that the few lines are in. */
async function preloadFor(at: string): Promise<Preload> {
  const code = (codeFor() ?? '').replace('import.meta.url', JSON.stringify(at))
  const module: unknown = await import(`data:text/javascript,${encodeURIComponent(code)}`)
  const preload: unknown = Reflect.get(Object(module), '__vitePreload')
  if (!isPreload(preload)) throw new Error('no function')
  return preload
}

beforeEach(() => {
  document.head.innerHTML = ''
})

const links = (): (string | null)[] =>
  [...document.head.querySelectorAll('link[rel=modulepreload]')].map((link) =>
    link.getAttribute('href'),
  )

it.each(['/', '/kit/'])('fetches parts below %s and gives what is loaded', async (base) => {
  const preload = await preloadFor(`https://site.example${base}_astro/start.js`)
  expect(await preload(() => Promise.resolve('there'), ['_astro/a.js', '_astro/b.js'])).toBe(
    'there',
  )
  expect(links()).toEqual([
    `https://site.example${base}_astro/a.js`,
    `https://site.example${base}_astro/b.js`,
  ])
})

it('fetches nothing where there are no parts, and passes a failure on', async () => {
  const preload = await preloadFor('https://site.example/_astro/start.js')
  await expect(preload(() => Promise.reject(new Error('gone')))).rejects.toThrow('gone')
  expect(links()).toEqual([])
})

it('leaves every other module alone', () => {
  expect(codeFor('/src/live/units.ts')).toBeUndefined()
})
