// @vitest-environment happy-dom
/** What every `import()` of a page goes through: the parts are fetched at once, below the base path. */
import { beforeEach, expect, it } from 'vitest'
import { leanPreload } from '../../src/site/preload.ts'

type Preload = (load: () => Promise<unknown>, parts?: readonly string[]) => Promise<unknown>

const isPreload = (value: unknown): value is Preload => typeof value === 'function'

function codeFor(base: string, id = '\0vite/preload-helper.js'): string | undefined {
  const { configResolved, load } = leanPreload()
  if (typeof configResolved !== 'function' || typeof load !== 'function') throw new Error('no hook')
  Reflect.apply(configResolved, undefined, [{ base }])
  const code: unknown = Reflect.apply(load, undefined, [id])
  return typeof code === 'string' ? code : undefined
}

async function preloadFor(base: string): Promise<Preload> {
  const code = codeFor(base) ?? ''
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
  const preload = await preloadFor(base)
  expect(await preload(() => Promise.resolve('there'), ['_astro/a.js', '_astro/b.js'])).toBe(
    'there',
  )
  expect(links()).toEqual([`${base}_astro/a.js`, `${base}_astro/b.js`])
})

it('fetches nothing where there are no parts, and passes a failure on', async () => {
  const preload = await preloadFor('/')
  await expect(preload(() => Promise.reject(new Error('gone')))).rejects.toThrow('gone')
  expect(links()).toEqual([])
})

it('leaves every other module alone', () => {
  expect(codeFor('/', '/src/live/units.ts')).toBeUndefined()
})
