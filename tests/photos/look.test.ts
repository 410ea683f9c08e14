/** Files that are not what their name says, or not whole: each is told, none is decoded that would burst. */
import { mkdir, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import sharp, { type Sharp } from 'sharp'
import { describe, expect, it } from 'vitest'
import { lookAt } from '../../src/photos/look.ts'
import { bomb, phonePhoto, scene, smallDrawing, smallPhoto } from './camera.ts'
import { inTemporary } from './folder.ts'

/** What is said of a file of this name and content, as a builder reads it. */
function said(name: string, bytes: Uint8Array | string): Promise<string> {
  return inTemporary(async (folder) => {
    await writeFile(join(folder, name), bytes)
    const looked = await lookAt(join(folder, name), join(folder, 'cache'))
    if ('facts' in looked) return 'fine'
    const { rule, text, allowed, hint } = looked.fault
    return [`${rule}: ${text}`, allowed, hint].filter((one) => one !== undefined).join(' | ')
  })
}

const boxed = (brand: string): Buffer =>
  Buffer.concat([
    Buffer.from([0, 0, 0, 24]),
    Buffer.from(`ftyp${brand}\0\0\0\0mif1miaf`),
    Buffer.alloc(64),
  ])

describe('a file that is something else inside', () => {
  it.each<[string, string, string | Buffer, string]>([
    [
      'a renamed text file',
      'pump.jpg',
      'torque list\n25 Nm\n',
      'not-a-picture: `pump.jpg` holds text and no picture | a renamed file stays what it was: find the picture itself',
    ],
    [
      'an empty file',
      'pump.jpg',
      '',
      'not-a-picture: `pump.jpg` is empty | copy it again from the phone or the camera',
    ],
    [
      'a phone’s HEIC named as JPEG',
      'pump.jpg',
      boxed('heic'),
      'not-a-picture: `pump.jpg` is a phone’s HEIC inside, which browsers do not show | a phone saves this kind by itself: share or export it as JPEG, and set its camera to JPEG for the next ones',
    ],
    [
      'a film',
      'pump.jpg',
      Buffer.concat([Buffer.from([0, 0, 0, 16]), Buffer.from('ftypqt  '), Buffer.alloc(64)]),
      'not-a-picture: `pump.jpg` is a film inside | save one picture of it as JPEG',
    ],
    [
      'a PDF',
      'sheet.png',
      '%PDF-1.7\n',
      'not-a-picture: `sheet.png` is a PDF inside | save the page as PNG',
    ],
    [
      'an archive',
      'all.jpg',
      'PK\x03\x04\x14\0',
      'not-a-picture: `all.jpg` is an archive inside | unpack it and name the picture in it',
    ],
    [
      'a drawing named as a photo',
      'loop.png',
      smallDrawing,
      'not-a-picture: `loop.png` is a drawing (SVG) inside | let its name end in `.svg`',
    ],
    [
      'bytes of no kind',
      'pump.jpg',
      Buffer.from([1, 2, 0, 3, 4, 0, 255]),
      'not-a-picture: `pump.jpg` holds no picture that can be read | save it as JPEG or PNG',
    ],
    [
      'a text named as a drawing',
      'loop.svg',
      'a loop',
      'drawing-broken: `loop.svg` is not a whole drawing: words outside the drawing in line 1 | open it in the program it was drawn with and save it once more',
    ],
  ])('%s is told', async (_, name, bytes, due) => {
    expect(await said(name, bytes)).toBe(due)
  })

  it('a photo named as a drawing is told', async () => {
    expect(await said('loop.svg', await smallPhoto())).toBe(
      'not-a-picture: `loop.svg` is a photo (JPEG) inside | let its name end in `.jpg`',
    )
  })

  it('a photo of another kind than its name says is fine', async () => {
    expect(await said('pump.png', await smallPhoto())).toBe('fine')
  })
})

const kinds: readonly (readonly [string, (picture: Sharp) => Sharp, string])[] = [
  ['JPEG', (picture) => picture.jpeg(), 'picture-cut-off'],
  ['progressive JPEG', (picture) => picture.jpeg({ progressive: true }), 'picture-cut-off'],
  ['PNG', (picture) => picture.png(), 'picture-cut-off'],
  ['GIF', (picture) => picture.gif(), 'picture-cut-off'],
  ['WebP', (picture) => picture.webp(), 'picture-cut-off'],
  ['AVIF', (picture) => picture.avif({ effort: 0 }), 'picture-cut-off'],
  ['TIFF', (picture) => picture.tiff(), 'picture-broken'],
]

describe.each(kinds)('%s', (_, write, due) => {
  const noise = sharp({
    create: {
      width: 320,
      height: 240,
      channels: 3,
      background: '#888',
      noise: { type: 'gaussian', mean: 128, sigma: 60 },
    },
  })
  it('is fine when it is whole', async () => {
    expect(await said('pump.jpg', await write(noise.clone()).toBuffer())).toBe('fine')
  })
  it.each([0.999, 0.9, 0.5, 0.1])('cut off after %f of its bytes is told', async (part) => {
    const whole = await write(noise.clone()).toBuffer()
    expect(await said('pump.jpg', whole.subarray(0, Math.floor(whole.length * part)))).toMatch(
      new RegExp(`^${due}: \`pump.jpg\` .*copy it again from the phone or the camera`),
    )
  })
})

describe('a picture that is too large', () => {
  it.each([
    [50_000, 50_000, '50,000 × 50,000 pixels (2,500 megapixels)'],
    [16_000, 16_000, '16,000 × 16,000 pixels (256 megapixels)'],
  ])('in a file of a few bytes, %i by %i, is told and not decoded', async (width, height, size) => {
    const bytes = await bomb(width, height)
    expect(bytes.length).toBeLessThan(1000)
    expect(await said('pump.png', bytes)).toBe(
      `picture-too-large: \`pump.png\` is ${size} | up to 160 megapixels and 80 megabytes, a drawing up to 2 | save a smaller copy and name that one`,
    )
  })

  it('of 100 megapixels is fine', async () => {
    const large = await sharp({
      create: { width: 11_600, height: 8700, channels: 3, background: '#456' },
    })
      .jpeg()
      .toBuffer()
    expect(await said('pump.jpg', large)).toBe('fine')
  })

  it('as a file is told', async () => {
    expect(await said('pump.jpg', Buffer.alloc(81_000_000))).toMatch(
      /^picture-too-large: `pump.jpg` has 81 megabytes \|/,
    )
  })
})

describe('what is known of a picture', () => {
  it('is its size as seen upright', async () => {
    await inTemporary(async (folder) => {
      await writeFile(join(folder, 'pump.jpg'), await phonePhoto(600, 800))
      const looked = await lookAt(join(folder, 'pump.jpg'), join(folder, 'cache'))
      if (!('facts' in looked)) throw new Error(looked.fault.text)
      const { key, ...rest } = looked.facts
      expect(key).toMatch(/^[0-9a-f]{20}$/)
      expect(rest).toEqual({ type: 'photo', width: 600, height: 800, drawn: false, moves: false })
    })
  })

  it('says when a picture moves', async () => {
    const frames = await Promise.all(
      ['#f00', '#0f0'].map((background) =>
        sharp({ create: { width: 8, height: 8, channels: 3, background } })
          .png()
          .toBuffer(),
      ),
    )
    await inTemporary(async (folder) => {
      await writeFile(
        join(folder, 'a.gif'),
        await sharp(frames, { join: { animated: true } })
          .gif()
          .toBuffer(),
      )
      const looked = await lookAt(join(folder, 'a.gif'), join(folder, 'cache'))
      expect('facts' in looked && looked.facts).toMatchObject({ moves: true, width: 8, height: 8 })
    })
  })

  it('is kept by the bytes, so that another picture under the same name and date is seen', async () => {
    await inTemporary(async (folder) => {
      const [path, cache] = [join(folder, 'a.jpg'), join(folder, 'cache')]
      await writeFile(path, await scene(64, 48).jpeg().toBuffer())
      const first = await lookAt(path, cache)
      expect(await readdir(cache)).toHaveLength(1)
      expect(await lookAt(path, cache)).toEqual(first)
      await writeFile(path, await scene(48, 64).jpeg().toBuffer())
      expect(await lookAt(path, cache)).toMatchObject({ facts: { width: 48, height: 64 } })
    })
  })

  it('is found without a cache, and past a broken one', async () => {
    await inTemporary(async (folder) => {
      const path = join(folder, 'a.jpg')
      await writeFile(path, await smallPhoto())
      // A file stands where the folder would be.
      expect(await lookAt(path, path)).toMatchObject({ facts: { width: 64 } })
      const looked = await lookAt(path, join(folder, 'cache'))
      const [name = ''] = await readdir(join(folder, 'cache'))
      await writeFile(join(folder, 'cache', name), '{"key":')
      expect(await lookAt(path, join(folder, 'cache'))).toEqual(looked)
    })
  })

  it('a folder with a picture’s name is told', async () => {
    await inTemporary(async (folder) => {
      await mkdir(join(folder, 'a.jpg'))
      expect(await lookAt(join(folder, 'a.jpg'))).toEqual({
        fault: { rule: 'picture-unreadable', text: '`a.jpg` is a folder' },
      })
    })
  })
})
