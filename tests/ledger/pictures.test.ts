/** Pictures that a note names: what is there passes, anything else is told with its place. */
import { writeFile, mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { inFolder, line, settings } from './ledger-of.ts'
import { trivial } from './trivial.ts'

const there = ['notes/pump.jpg', 'notes/photos/Rear-Arch.png', 'shared/plate.svg', 'notes/old.HEIC']

/** The messages of a note with this body, in a folder with the pictures above. */
function messages(body: string): Promise<string[]> {
  return inFolder({ n: body }, settings, async (content) => {
    for (const path of there) {
      await mkdir(join(content, path, '..'), { recursive: true })
      await writeFile(join(content, path), '')
    }
    return (await loadLedger(content, trivial)).problems.map(line)
  })
}

describe('a picture', () => {
  it.each([
    ['beside the note', '![The pump](./pump.jpg)'],
    ['without the dot', '![The pump](pump.jpg)'],
    ['in a folder', '![The arch](./photos/Rear-Arch.png "Rear")'],
    ['elsewhere in the content folder', '![The plate](../shared/plate.svg)'],
    ['by reference', '![The pump][p]\n\n[p]: ./pump.jpg'],
    ['as a link only', '[a page](https://example.org/a.jpg)'],
  ])('%s is fine', async (_, body) => {
    expect(await messages(body)).toEqual([])
  })

  it.each([
    [
      'that is misspelt',
      'So: ![The pump](./pmup.jpg)',
      '7:5 error no-picture: there is no picture `./pmup.jpg` in the content folder | hint: did you mean `./pump.jpg`?',
    ],
    [
      'in another folder, in other letters',
      '![The arch](./rear-arch.PNG)',
      '7:1 error no-picture: there is no picture `./rear-arch.PNG` in the content folder | hint: did you mean `./photos/Rear-Arch.png`?',
    ],
    [
      'that is nowhere',
      '![The tank](./tank-from-the-left.webp)',
      '7:1 error no-picture: there is no picture `./tank-from-the-left.webp` in the content folder | hint: put it beside the note: `![what it shows](./pump.jpg)`',
    ],
    [
      'outside the content folder',
      '![The tank](../../tank.webp)',
      '7:1 error no-picture: there is no picture `../../tank.webp` in the content folder | hint: put it beside the note: `![what it shows](./pump.jpg)`',
    ],
    [
      'named by reference',
      'A ![pump][p].\n\n[p]: ./pomp.jpg',
      '9:1 error no-picture: there is no picture `./pomp.jpg` in the content folder | hint: did you mean `./pump.jpg`?',
    ],
    [
      'without a file',
      '![The pump]()',
      '7:1 error no-picture: a picture without a file | hint: `![what it shows](./pump.jpg)`',
    ],
    [
      'on another site',
      '![The pump](https://example.org/pump.jpg)',
      '7:1 error picture-elsewhere: the picture `https://example.org/pump.jpg` lies on another site: a page asks no other site for anything | hint: save a copy you may publish beside the note: `![what it shows](./pump.jpg)`',
    ],
    [
      'on another site, without its scheme',
      '![The pump](//example.org/pump.jpg)',
      '7:1 error picture-elsewhere: the picture `//example.org/pump.jpg` lies on another site: a page asks no other site for anything | hint: save a copy you may publish beside the note: `![what it shows](./pump.jpg)`',
    ],
    [
      'written into its address',
      '![dot](data:image/gif;base64,R0lGODlhAQABAAAAACw=)',
      '7:1 error picture-elsewhere: a picture written into its address (`data:…`) | hint: save it as a file beside the note: `![what it shows](./pump.jpg)`',
    ],
    [
      'from the root',
      '![The pump](/pump.jpg)',
      '7:1 error picture-elsewhere: the picture `/pump.jpg` is not written from its note | hint: put it beside the note: `![what it shows](./pump.jpg)`',
    ],
    [
      'of a kind browsers do not show',
      '![The old one](./old.HEIC)',
      '7:1 error not-a-picture: `./old.HEIC` is not a picture that browsers show | allowed: avif, gif, jpeg, jpg, png, svg, tiff, webp | hint: a phone saves this kind by itself: export it as JPEG',
    ],
    [
      'as a tag',
      'So <img src="./pump.jpg" alt="The pump" />.',
      '7:4 error picture-as-tag: <img> with `./pump.jpg`: nobody puts it on the site | hint: write `![what it shows](./pump.jpg)`',
    ],
  ])('%s is told', async (_, body, due) => {
    expect(await messages(body)).toEqual([`notes/n.mdx:${due}`])
  })
})
