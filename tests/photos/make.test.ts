/** What is made of a photo: upright, in the web's colours, small, with nothing but the picture in it. */
import { mkdir, readdir, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import sharp from 'sharp'
import { expect, it } from 'vitest'
import { readName, widthsOf, type PhotoFacts } from '../../src/photos/facts.ts'
import { lookAt } from '../../src/photos/look.ts'
import { filesOf } from '../../src/photos/make.ts'
import { corners, phonePhoto, scene, secrets } from './camera.ts'
import { inTemporary } from './folder.ts'

async function madeOf(
  bytes: Buffer,
  folder: string,
  name = 'a.jpg',
): Promise<{ facts: PhotoFacts; files: ReadonlyMap<string, Buffer>; path: string }> {
  const path = join(folder, name)
  await writeFile(path, bytes)
  const looked = await lookAt(path, join(folder, 'cache'))
  if (!('facts' in looked) || looked.facts.type !== 'photo') throw new Error('no photo')
  return {
    facts: looked.facts,
    files: await filesOf(path, looked.facts, join(folder, 'cache')),
    path,
  }
}

/** The colour of the middle of each quarter. */
async function quarters(bytes: Buffer): Promise<Record<string, number[]>> {
  const { data, info } = await sharp(bytes)
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true })
  const at = (x: number, y: number): number[] => {
    const start =
      (Math.floor(info.height * y) * info.width + Math.floor(info.width * x)) * info.channels
    return [...data.subarray(start, start + 3)]
  }
  return {
    'upper left': at(0.25, 0.25),
    'upper right': at(0.75, 0.25),
    'lower left': at(0.25, 0.75),
    'lower right': at(0.75, 0.75),
  }
}

it('is upright, in each width and both formats, with the colours that were seen', async () => {
  await inTemporary(async (folder) => {
    const { files } = await madeOf(await phonePhoto(1800, 2400), folder)
    const sizes: string[] = []
    for (const [name, bytes] of files) {
      const { width, height, format } = await sharp(bytes).metadata()
      expect(readName(name)?.made).toEqual({ width, format: format === 'heif' ? 'avif' : format })
      expect(height / width).toBeCloseTo(4 / 3, 2)
      sizes.push(`${format} ${width}`)
      for (const [corner, colour] of Object.entries(await quarters(bytes)))
        for (const [index, due] of Object.entries(corners)
          .find(([one]) => one === corner)?.[1]
          .entries() ?? [])
          // A wide colour read as a narrow one would be off by 20 and more.
          expect(Math.abs((colour[index] ?? 0) - due), `${name} ${corner}`).toBeLessThan(9)
    }
    expect(sizes.sort()).toEqual(
      ['avif', 'webp']
        .flatMap((format) =>
          [1360, 1800, 400, 800].map((width) => `${format === 'avif' ? 'heif' : format} ${width}`),
        )
        .sort(),
    )
  })
})

it('holds no place, no owner, no serial number, no profile', async () => {
  await inTemporary(async (folder) => {
    const photo = await phonePhoto()
    // The test’s own photo does hold them.
    expect(secrets.filter((secret) => !photo.includes(secret))).toEqual([])
    const { exif, xmp, iptc, icc, orientation } = await sharp(photo).metadata()
    expect([exif, xmp, iptc, icc].filter((one) => one === undefined)).toEqual([])
    expect(orientation).toBe(6)
    const { files } = await madeOf(photo, folder)
    expect(files.size).toBeGreaterThan(3)
    for (const [name, bytes] of files) {
      expect(secrets.filter((secret) => bytes.includes(secret))).toEqual([])
      const head = await sharp(bytes).metadata()
      expect([name, head.exif, head.xmp, head.iptc, head.icc, head.comments]).toEqual([
        name,
        ...Array.from({ length: 5 }, () => undefined),
      ])
    }
  })
})

it.each([
  [4032, 3024, [400, 800, 1360, 2000]],
  [3024, 4032, [400, 800, 1360, 2000]],
  [1200, 900, [400, 800, 1200]],
  [1000, 700, [400, 800, 1000]],
  [420, 300, [420]],
  [3, 3, [3]],
  [200, 90_000, [17]],
  [1, 12_000, [1]],
])('of a photo of %i × %i is made in these widths: %j', (width, height, due) => {
  expect(widthsOf({ width, height })).toEqual(due)
})

it('is the same bytes when it is made again, whatever the number of threads', async () => {
  const photo = await phonePhoto(1000, 1400)
  const threads = sharp.concurrency()
  const made = []
  try {
    for (const count of [1, 4]) {
      sharp.concurrency(count)
      made.push(await inTemporary(async (folder) => [...(await madeOf(photo, folder)).files]))
    }
  } finally {
    sharp.concurrency(threads)
  }
  expect(made[0]?.length).toBe(6)
  expect(made[1]).toEqual(made[0])
})

it('comes from the cache the second time, and is made anew where a file of it is gone', async () => {
  await inTemporary(async (folder) => {
    const { facts, files, path } = await madeOf(await phonePhoto(), folder)
    const cache = join(folder, 'cache')
    const [first = ''] = files.keys()
    await writeFile(join(cache, first), 'from the cache')
    expect((await filesOf(path, facts, cache)).get(first)?.toString()).toBe('from the cache')
    await rm(join(cache, first))
    expect(await filesOf(path, facts, cache)).toEqual(files)
    expect((await readdir(cache)).filter((name) => name.endsWith('.part'))).toEqual([])
  })
})

it('is told when the file changed since it was looked at', async () => {
  await inTemporary(async (folder) => {
    const { facts, path } = await madeOf(await scene(500, 400).jpeg().toBuffer(), folder)
    await writeFile(path, await scene(400, 500).jpeg().toBuffer())
    await mkdir(join(folder, 'other'))
    await expect(filesOf(path, facts, join(folder, 'other'))).rejects.toThrow(/changed while/)
  })
})

it('keeps what can be seen through, and the edges of a drawn picture', async () => {
  await inTemporary(async (folder) => {
    const half = await sharp({
      create: {
        width: 300,
        height: 200,
        channels: 4,
        background: { r: 200, g: 0, b: 0, alpha: 0.5 },
      },
    })
      .png()
      .toBuffer()
    const { facts, files } = await madeOf(half, folder, 'a.png')
    expect(facts.drawn).toBe(true)
    for (const bytes of files.values()) {
      const { data } = await sharp(bytes).ensureAlpha().raw().toBuffer({ resolveWithObject: true })
      expect(Math.abs((data[3] ?? 0) - 128)).toBeLessThan(4)
    }
  })
})
