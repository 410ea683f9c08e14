/** Photos in a whole site: what is published of them, what is not, and how pages show them. */
import { readFile, rm, writeFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { HtmlValidate, StaticConfigLoader } from 'html-validate'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildSite } from '../../src/site/build.ts'
import { originalsIn, picturesLeft } from '../../src/photos/left.ts'
import { readName } from '../../src/photos/facts.ts'
import { secrets } from '../photos/camera.ts'
import { noteText, photoSite } from '../photos/site.ts'
import { attributeOf, brokenAddresses, elementsOf, hasClass, textIn } from './links.ts'
import { builtSite, root, type Built } from './site.ts'

const page = 'notes/tank/index.html'

describe('a site with photos', () => {
  let content: string
  let site: Built
  beforeAll(async () => {
    content = await photoSite()
    site = await builtSite(content)
  })
  afterAll(async () => {
    await site.remove()
    await rm(content, { recursive: true })
  })
  const html = (): string => site.pages.get(page) ?? ''
  const images = () => elementsOf(html()).filter(({ tagName }) => tagName === 'img')
  const photos = () => [...site.files].filter(([name]) => name.startsWith('photos/'))

  it('publishes nothing but the picture: no place, no owner, no serial number, anywhere', async () => {
    for (const [name, bytes] of site.files)
      expect([name, secrets.filter((secret) => bytes.includes(secret))]).toEqual([name, []])
    expect(await picturesLeft(site.folder, await originalsIn(content))).toEqual([])
    const rasters = photos().filter(([name]) => !name.endsWith('.svg'))
    expect(rasters.length).toBeGreaterThan(20)
    for (const [name, bytes] of rasters) {
      const { exif, xmp, iptc, icc, orientation } = await sharp(bytes).metadata()
      expect([name, exif, xmp, iptc, icc, orientation ?? 1]).toEqual([
        name,
        ...Array.from({ length: 4 }, () => undefined),
        1,
      ])
    }
  })

  it('publishes what pages show, and nothing of a draft or of a photo that no note shows', () => {
    const shown = new Set([...html().matchAll(/photos\/([\w.-]+)/g)].map(([, name]) => name))
    expect(
      photos()
        .map(([name]) => basename(name))
        .sort(),
    ).toEqual([...shown].sort())
    // Six pictures, one of them three times.
    expect(new Set(photos().map(([name]) => readName(basename(name))?.key)).size).toBe(6)
    const raster = /\.(?:jpe?g|png|tiff?|gif|heic|webp|avif)$/
    const elsewhere = [...site.files.keys()].filter(
      (name) => raster.test(name) && !/^(?:photos|social)\//.test(name),
    )
    expect(elsewhere.filter((name) => !name.includes('icon'))).toEqual([])
  })

  it('has no address that leads nowhere, and none of a file’s own name', () => {
    expect(brokenAddresses(site.pages, new Set(site.files.keys()), '/kit/')).toEqual([])
    expect(html().match(/(?:tank|fter|before|after)\.jpg|\.png|loop\.svg/g)).toBeNull()
  })

  it('says of each picture what it shows and how large it is, and waits with those below', () => {
    const read = images().map((one) =>
      ['alt', 'width', 'height', 'loading', 'decoding'].map((name) => attributeOf(one, name)),
    )
    const wait = ['lazy', 'async']
    expect(read).toEqual([
      ['The tank from the left', '570', '760', undefined, undefined],
      ['the pump, cut open', '800', '533', ...wait],
      ['The fan in its shroud', '800', '560', ...wait],
      ['The loop, drawn flat', '400', '240', ...wait],
      ['The tank, its neck and its low mark', '570', '760', ...wait],
      ['The arch, rusted through', '640', '480', ...wait],
      ['The arch, welded', '640', '481', ...wait],
    ])
  })

  it('gives each photo in AVIF and WebP, in rising widths that the files have', async () => {
    const sets = elementsOf(html()).flatMap((one) => attributeOf(one, 'srcset') ?? [])
    expect(sets).toHaveLength(12)
    for (const set of sets) {
      const widths: number[] = []
      for (const [, name = '', said] of set.matchAll(/photos\/(\S+) (\d+)w/g)) {
        const { width } = await sharp(site.files.get(`photos/${name}`)).metadata()
        expect(width).toBe(Number(said))
        widths.push(width)
      }
      expect(widths.length).toBeGreaterThanOrEqual(2)
      expect(widths).toEqual(widths.toSorted((a, b) => a - b))
    }
    const [first = ''] = sets
    expect([...first.matchAll(/(\d+)w/g)].map(([, width]) => Number(width))).toEqual([
      400, 800, 1500,
    ])
  })

  it('never writes a drawing into the page', () => {
    expect(html()).not.toContain('M17 23L371 219')
    const drawing = photos()
      .find(([name]) => name.endsWith('.svg'))?.[1]
      .toString('utf8')
    expect(drawing).toContain('M17 23L371 219')
    expect(drawing).not.toMatch(/metadata|Anna|garage/)
  })

  it('draws marks over the photo and lists them beside it, numbers included', () => {
    const figure = elementsOf(html()).find(
      (one) => one.tagName === 'figure' && textIn(one).includes('Filler neck'),
    )
    if (figure === undefined) throw new Error('no figure with marks')
    const marks = elementsOf(html()).find((one) => hasClass(one, 'photo-marks'))
    if (marks === undefined) throw new Error('no marks')
    expect(
      marks.childNodes.flatMap((one) =>
        'tagName' in one && one.tagName === 'circle'
          ? [[attributeOf(one, 'cx'), attributeOf(one, 'cy')]]
          : [],
      ),
    ).toEqual([
      ['40%', '25%'],
      ['70.5%', '60%'],
    ])
    // Not there without style.
    expect([attributeOf(marks, 'width'), attributeOf(marks, 'aria-hidden')]).toEqual(['0', 'true'])
    const list = elementsOf(html()).find(
      (one) => one.tagName === 'ol' && hasClass(one, 'mark-list'),
    )
    if (list === undefined) throw new Error('no list of marks')
    expect(list.childNodes.filter((one) => 'tagName' in one).map(textIn)).toEqual([
      'upper middle: Filler neck, above the rail',
      'middle right: Pump; it draws 1.5 A',
    ])
    expect(html().match(/data-number="tank\/draw"/g)?.length).toBeGreaterThanOrEqual(3)
  })

  it('sets the two of a pair beside each other, with their captions', () => {
    const pair = elementsOf(html()).find((one) => hasClass(one, 'before-after'))
    if (pair === undefined) throw new Error('no pair')
    expect(pair.childNodes.filter((one) => 'tagName' in one).map(textIn)).toEqual([
      'Before: On the day it came',
      'After: Welded and primed',
    ])
  })

  it('is sound HTML', async () => {
    const validator = new HtmlValidate(
      new StaticConfigLoader({
        extends: ['html-validate:recommended', 'html-validate:a11y'],
        rules: {
          'doctype-style': 'off',
          'void-style': 'off',
          'no-trailing-whitespace': 'off',
          'attr-quotes': 'off',
          'valid-id': ['error', { relaxed: true }],
        },
      }),
    )
    const { results } = await validator.validateString(html(), page)
    expect(results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([])
  })

  it('is not replaced by one that would publish an original, whichever way it got in', async () => {
    const other = await photoSite()
    const { folder: out, remove } = await builtSite(other)
    const say: string[] = []
    const build = () => buildSite({ root, content: other, out, say: (line) => say.push(line) })
    try {
      const before = await readFile(join(out, page))
      await writeFile(
        join(other, 'notes/View.astro'),
        '---\nimport tank from \'./tank.jpg\'\n---\n\n<img src={tank.src} alt="" />\n',
      )
      await writeFile(
        join(other, 'notes/tank.mdx'),
        noteText.replace(
          'The pump drew',
          "import View from './View.astro'\n\n<View />\n\nThe pump drew",
        ),
      )
      expect(await build()).toBe(false)
      expect(say.join('\n')).toMatch(/_astro\/tank\S*\.jpg still holds EXIF/)
      expect(say.join('\n')).toMatch(/is `notes\/tank.jpg` as it came/)
      expect(say.at(-1)).toMatch(/the old site stands as it was$/)
      expect((await readFile(join(out, page))).equals(before)).toBe(true)
    } finally {
      await rm(other, { recursive: true })
      await remove()
    }
  })
})
