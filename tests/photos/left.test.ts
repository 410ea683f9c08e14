/** The gate after the build: what still holds a record, or is an original, is told whatever its name. */
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import sharp from 'sharp'
import { expect, it } from 'vitest'
import { originalsIn, picturesLeft } from '../../src/photos/left.ts'
import { phonePhoto, records, scene, smallPhoto } from './camera.ts'
import { inTemporary } from './folder.ts'

const left = (files: Readonly<Record<string, Uint8Array | string>>): Promise<string[]> =>
  inTemporary(async (folder) => {
    for (const [name, bytes] of Object.entries(files)) {
      await mkdir(join(folder, name, '..'), { recursive: true })
      await writeFile(join(folder, name), bytes)
    }
    return (await picturesLeft(folder)).map(({ file, text }) => `${file} ${text}`)
  })

it('lets through a picture that is only a picture', async () => {
  const plain = scene(64, 48)
  expect(
    await left({
      'photos/a.webp': await plain.clone().webp().toBuffer(),
      'photos/a.avif': await plain.clone().avif({ effort: 0 }).toBuffer(),
      'photos/a.jpg': await plain.clone().jpeg().toBuffer(),
      'social/a.png': await plain.clone().png().toBuffer(),
      'a/index.html': '<p>words</p>',
    }),
  ).toEqual([])
})

it.each([
  ['webp', 'EXIF (place, time, camera), XMP (owner, program)'],
  ['avif', 'EXIF (place, time, camera), XMP (owner, program)'],
  ['png', 'EXIF (place, time, camera), XMP (owner, program)'],
] as const)('tells a %s with records, also without its ending', async (format, what) => {
  const bytes = await records(scene(64, 48)).toFormat(format).toBuffer()
  const told = await left({ [`photos/a.${format}`]: bytes, 'notes/a/data': bytes })
  expect(told).toHaveLength(2)
  expect(
    told.every((one) => one.includes(`still holds ${what}`)),
    told.join('\n'),
  ).toBe(true)
})

it('tells a TIFF, whose records are not all seen', async () => {
  expect(await left({ 'a.png': await records(scene(64, 48)).tiff().toBuffer() })).toEqual([
    'a.png is a TIFF, which may hold any record',
  ])
})

it('tells every record of a phone’s photo', async () => {
  expect(await left({ '_astro/pump.jpg': await phonePhoto() })).toEqual([
    '_astro/pump.jpg still holds EXIF (place, time, camera), XMP (owner, program), IPTC (owner, place), a colour profile (camera or screen), a note that it is to be turned',
  ])
})

it('tells a photo written into a page, and a drawing that would not be let in', async () => {
  const inside = (await phonePhoto(40, 30)).toString('base64')
  expect(
    await left({
      'index.html': `<img src="data:image/jpeg;base64,${inside}">`,
      'a.svg': '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><script>1</script></svg>',
    }),
  ).toEqual([
    'a.svg `a.svg` holds <script>: a drawing on the site runs nothing',
    expect.stringMatching(/^index.html still holds EXIF/),
  ])
})

it('tells an original, also one without records', async () => {
  await inTemporary(async (folder) => {
    const [content, site] = [join(folder, 'content'), join(folder, 'site')]
    await mkdir(join(content, 'notes'), { recursive: true })
    await mkdir(site)
    await writeFile(join(content, 'notes/pump.jpg'), await smallPhoto())
    await writeFile(join(site, 'x-1234'), await smallPhoto())
    await writeFile(
      join(site, 'other.webp'),
      await sharp(await smallPhoto())
        .webp()
        .toBuffer(),
    )
    expect(await picturesLeft(site, await originalsIn(content))).toEqual([
      {
        file: 'x-1234',
        text: 'is `notes/pump.jpg` as it came; a note shows it with `![what it shows](./…)`',
      },
    ])
  })
})
