/** Photos as a reader’s browser shows them: small, late, upright, their marks in place, on paper too. */
import { rm } from 'node:fs/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { photoSite } from '../photos/site.ts'
import { axeFindings } from './axe.ts'
import { opened, served, type Served } from './serve.ts'

let content: string
let host: Served
beforeAll(async () => {
  content = await photoSite()
  host = await served(content, '/kit/')
})
afterAll(async () => {
  await host.close()
  await rm(content, { recursive: true })
})

const path = 'notes/tank/'
const phone = { viewport: { width: 360, height: 640 }, deviceScaleFactor: 2 }
const desk = { viewport: { width: 1280, height: 800 } }

/** Scrolls to the end as a reader would, until every picture is there. */
const toTheEnd = `(async () => {
  for (const image of document.images) {
    image.scrollIntoView()
    await image.decode()
  }
})()`

describe.each([
  ['on a phone', phone],
  ['at a desk', desk],
])('%s', (_, options) => {
  it('asks for the first picture at once and for the last when it is near', async () => {
    const { page, context, faults } = await opened(host, path, options)
    const there = (index: number) => page.evaluate<boolean>(`document.images[${index}].complete`)
    await page.waitForFunction('document.images[0].complete')
    expect(await there(6)).toBe(false)
    await page.evaluate(toTheEnd)
    const shown = await page.evaluate<[string, number][]>(
      `[...document.images].map(({ currentSrc, naturalWidth }) => [currentSrc, naturalWidth])`,
    )
    for (const [source, width] of shown) {
      expect(source).toMatch(/\/kit\/photos\/[0-9a-f]{20}(?:-\d+\.avif|\.svg)$/)
      expect(width).toBeGreaterThan(0)
    }
    // Not larger than the screen has dots for.
    expect(shown[0]?.[0]).toMatch(/-800\.avif$/)
    expect(faults).toEqual([])
    await context.close()
  })

  it('nothing shifts when pictures come', async () => {
    const { page, context } = await opened(host, path, options)
    const places = `[...document.querySelectorAll('article :is(h1, p, li, figcaption, img)')].map((one) => {
      const { top, height } = one.getBoundingClientRect()
      return [Math.round(top + scrollY), Math.round(height)]
    })`
    const before = await page.evaluate(places)
    await page.evaluate(toTheEnd)
    expect(await page.evaluate(places)).toEqual(before)
    await context.close()
  })

  it('each mark stands at its place of the photo', async () => {
    const { page, context } = await opened(host, path, options)
    const marks = await page.evaluate<[number, number][]>(`(() => {
      const frame = document.querySelector('.photo-frame')
      const photo = frame.querySelector('img').getBoundingClientRect()
      return [...frame.querySelectorAll('circle')].map((mark) => {
        const { left, top, width, height } = mark.getBoundingClientRect()
        return [
          ((left + width / 2 - photo.left) / photo.width) * 100,
          ((top + height / 2 - photo.top) / photo.height) * 100,
        ]
      })
    })()`)
    expect(marks).toHaveLength(2)
    for (const [index, place] of [
      [40, 25],
      [70.5, 60],
    ].entries())
      for (const [axis, due] of place.entries())
        expect(Math.abs((marks[index]?.[axis] ?? -100) - due)).toBeLessThan(0.6)
    await context.close()
  })
})

it.each(['light', 'dark'] as const)(
  'nothing keeps a reader out in the %s (axe-core)',
  async (colorScheme) => {
    for (const options of [phone, desk]) {
      const { page, context, faults } = await opened(host, path, { ...options, colorScheme })
      await page.evaluate(toTheEnd)
      expect([...(await axeFindings(page)), ...faults]).toEqual([])
      await context.close()
    }
  },
)

it('without style the marks are a list that says where each stands', async () => {
  const { page, context } = await opened(host, path, desk)
  const seen = await page.evaluate<{ marks: number; list: string; places: number[] }>(`(() => {
    for (const sheet of document.querySelectorAll('link[rel=stylesheet], style')) sheet.remove()
    const { width, height } = document.querySelector('.photo-marks').getBoundingClientRect()
    return {
      marks: width * height,
      list: document.querySelector('.mark-list').innerText,
      places: [...document.querySelectorAll('.mark-place')].map((one) => one.getBoundingClientRect().width),
    }
  })()`)
  expect(seen.marks).toBe(0)
  expect(seen.list).toMatch(/upper middle: Filler neck/)
  expect(seen.places.every((width) => width > 20)).toBe(true)
  await context.close()
})

it('on paper the marks and their list are there, in black', async () => {
  const { page, context } = await opened(host, path, desk)
  await page.evaluate(toTheEnd)
  await page.emulateMedia({ media: 'print' })
  const seen = await page.evaluate<{ ink: string[]; list: number; fits: boolean }>(`(() => {
    const frame = document.querySelector('.photo-frame')
    const photo = frame.querySelector('img').getBoundingClientRect()
    const marks = frame.querySelector('svg').getBoundingClientRect()
    const style = (one) => getComputedStyle(frame.querySelector(one))
    return {
      ink: [style('circle').fill, style('circle').stroke, style('text').fill],
      list: document.querySelector('.mark-list').getBoundingClientRect().height,
      fits: Math.abs(photo.width - marks.width) < 1 && Math.abs(photo.height - marks.height) < 1,
    }
  })()`)
  expect(seen.ink).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)', 'rgb(0, 0, 0)'])
  expect(seen.list).toBeGreaterThan(20)
  expect(seen.fits).toBe(true)
  await context.close()
})
