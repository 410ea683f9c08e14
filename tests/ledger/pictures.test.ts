/** Pictures that a note names, and what stands on them: what is there passes, anything else is told with its place. */
import { writeFile, mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { inFolder, line, settings } from './ledger-of.ts'
import { smallDrawing, smallPhoto } from '../photos/camera.ts'
import { trivial } from './trivial.ts'

const there = [
  'notes/pump.jpg',
  'notes/photos/Rear-Arch.png',
  'shared/plate.svg',
  'notes/old.HEIC',
  'notes/after.webp',
  'notes/my pump.jpg',
  'notes/Bild #2 100%.jpg',
  'notes/was? 5%20.jpg',
  'notes/Lu\u0308fter.jpg',
  'notes/Twin.jpg',
  'notes/twin.JPG',
  'notes/IMG_2034.jpg',
]

/** The messages of a note with this body, in a folder with the pictures above. */
async function messages(
  body: string,
  more: Readonly<Record<string, string | Uint8Array>> = {},
): Promise<string[]> {
  const photo = await smallPhoto()
  return inFolder({ n: body }, settings, async (content) => {
    const files = there.map((path): [string, string | Uint8Array] => [
      path,
      path.endsWith('.svg') ? smallDrawing : photo,
    ])
    for (const [path, bytes] of [...files, ...Object.entries(more)]) {
      await mkdir(join(content, path, '..'), { recursive: true })
      await writeFile(join(content, path), bytes)
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
    ['with spaces', '![The pump](<./my pump.jpg>) and ![The pump](my%20pump.jpg)'],
    ['with `#` and `%`', '![The pump](<./Bild #2 100%.jpg>) ![It](./Bild%20%232%20100%25.jpg)'],
    ['with an escape in its name', '![The pump](<./was? 5%20.jpg>)'],
    [
      'with an umlaut in two pieces on the disk',
      '![The fan](./Lüfter.jpg) ![It](./L%C3%BCfter.jpg)',
    ],
    ['as what a link leads to', '[the pump, large](./pump.jpg)'],
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
      '7:1 error not-a-picture: `./old.HEIC` is not a picture that browsers show | allowed: avif, gif, jpeg, jpg, png, svg, tif, tiff, webp | hint: a phone saves this kind by itself: share or export it as JPEG, and set its camera to JPEG for the next ones',
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

describe('a picture that names itself badly', () => {
  it.each([
    [
      'has spaces in its address',
      'So: ![The pump](./my pump.jpg)',
      '7:5 error picture-with-spaces: `![The pump](./my pump.jpg)` is read as words: the file’s name has spaces | hint: write `![The pump](./my%20pump.jpg)`',
    ],
    [
      'has spaces and a percent sign in its address',
      'So: ![t](./all% done #2.jpg)',
      '7:5 error picture-with-spaces: `![t](./all% done #2.jpg)` is read as words: the file’s name has spaces | hint: write `![t](./all%25%20done%20%232.jpg)`',
    ],
    [
      'is one of two that differ in capitals',
      '![The twin](./Twin.jpg)',
      '7:1 warning case-twins: `Twin.jpg` and `twin.JPG` differ in capitals only: on many machines they are one file | hint: give one of them another name',
    ],
    [
      'is linked to and not there',
      'See [it](./pomp.jpg).',
      '7:5 error no-picture: there is no picture `./pomp.jpg` in the content folder | hint: did you mean `./pump.jpg`?',
    ],
    [
      'says nothing for who cannot see it',
      '![](./pump.jpg)',
      '7:1 error no-alternative: a picture without words for who cannot see it | hint: say what it shows: `![the pump, its inlet below the tank](./pump.jpg)`',
    ],
    [
      'says nothing, by reference',
      '![][pump]\n\n[pump]: ./pump.jpg',
      '7:1 error no-alternative: a picture without words for who cannot see it | hint: say what it shows: `![the pump, its inlet below the tank](./pump.jpg)`',
    ],
    [
      'says its file’s name',
      '![IMG_2034](./IMG_2034.jpg)',
      '7:1 error no-alternative: `IMG_2034` is a file’s name and does not say what the picture shows | hint: say what it shows: `![the pump, its inlet below the tank](./pump.jpg)`',
    ],
    [
      'is imported',
      'import pump from "./pump.jpg"\n\nSo.',
      '7:18 error picture-in-code: `./pump.jpg` is named in program text: the site would show it as the camera wrote it, with place and owner | hint: write `![what it shows](./pump.jpg)`',
    ],
    [
      'is handed to an element',
      '<video poster="./pump.jpg" />',
      '7:1 error picture-as-tag: <video> with `./pump.jpg`: nobody puts it on the site | hint: write `![what it shows](./pump.jpg)`',
    ],
  ])('because it %s is told', async (_, body, due) => {
    expect(await messages(body)).toEqual([`notes/n.mdx:${due}`])
  })

  it('in a note that is not done is a warning', async () => {
    const draft =
      '---\ntitle: A\ndate: 2026-03-14\nphase: cooling\nstatus: doing\n---\n![](./pump.jpg)\n'
    expect(await messages(draft)).toEqual([
      expect.stringMatching(/^notes\/n.mdx:7:1 warning no-alternative:/),
    ])
  })
})

describe('a picture that cannot be shown', () => {
  it('is told at each place that names it', async () => {
    const torn = (await smallPhoto()).subarray(0, -20)
    expect(
      await messages('![One](./torn.jpg)\n\nThen ![two][t].\n\n[t]: ./torn.jpg', {
        'notes/torn.jpg': torn,
      }),
    ).toEqual(
      ['7:1', '11:1'].map(
        (place) =>
          `notes/n.mdx:${place} error picture-cut-off: \`torn.jpg\` ends in the middle of the picture: only a part of the file is here | hint: copy it again from the phone or the camera`,
      ),
    )
  })

  it('as a drawing with script is told', async () => {
    const drawing = smallDrawing.replace('<path', '<path onclick="alert(1)"')
    expect(await messages('![A plate](../shared/bad.svg)', { 'shared/bad.svg': drawing })).toEqual([
      'notes/n.mdx:7:1 error drawing-with-script: `bad.svg` holds `onclick`: a drawing on the site runs nothing | hint: save it as plain SVG, or as PNG',
    ])
  })
})

const picture = '![The pump](./pump.jpg)'
const photo = (inside: string): string => `<Photo>\n\n${inside}\n\n</Photo>`
const pair = (inside: string): string => `<BeforeAfter>\n\n${inside}\n\n</BeforeAfter>`

describe('a photo with marks', () => {
  it.each([
    [
      'a number in a mark',
      `So <Chosen id="a" value="3 A" because="so" />.\n\n${photo(`${picture}\n\n1. 40 % 25 %: Inlet, {a}\n2. 60%, 70.5%: **Outlet**`)}`,
    ],
    [
      'marks as a plain list, with phone spaces',
      photo(`${picture}\n\n- 0\u00a0% 100\u202f%: a corner\n- 40 %/25 % – inlet`),
    ],
    ['a caption and no mark', photo(`${picture} The pump as fitted.`)],
    ['a picture by reference', `${photo('![The pump][p]\n\n1. 1 % 1 %: x')}\n\n[p]: ./pump.jpg`],
    ['a pair', pair(`${picture}\n![Painted](./after.webp)`)],
    [
      'a pair with captions',
      pair(`${picture} As it came.\n\n![Painted](./after.webp) With *primer*.`),
    ],
  ])('with %s is fine', async (_, body) => {
    expect(await messages(body)).toEqual([])
  })

  const place = 'allowed: per cent from the left, then from the top: `40 % 25 %: the filler neck`'
  it.each([
    [
      'holds no picture',
      photo('1. 40 % 25 %: Inlet'),
      '7:1 error photo-content: <Photo> holds no picture: one is due | hint: `![what it shows](./pump.jpg)`',
    ],
    [
      'holds two pictures',
      photo(`${picture}\n${picture}`),
      '7:1 error photo-content: <Photo> holds 2 pictures: one is due | hint: <BeforeAfter> takes two',
    ],
    [
      'holds something else',
      photo(`${picture}\n\n## A heading`),
      '11:1 error photo-content: <Photo> holds something that is no picture, caption or mark | hint: a caption stands behind its picture; put everything else outside',
    ],
    [
      'has an attribute',
      `<Photo wide="yes">\n\n${picture}\n\n</Photo>`,
      '7:8 error unknown-attribute: <Photo> has no `wide` | hint: its pictures, captions and marks stand between the tags',
    ],
    [
      'stands in a line of words',
      `So <Photo>${picture}</Photo> it is.`,
      '7:4 error photo-content: <Photo> in a line of words | hint: give it lines of its own, with an empty line before and after',
    ],
    [
      'has a mark without its place',
      photo(`${picture}\n\n1. Inlet`),
      `11:4 error mark-without-place: a mark does not begin with its place | ${place}`,
    ],
    [
      'has a mark beside the picture',
      photo(`${picture}\n\n1. 40 % 125 %: Inlet`),
      '11:4 error mark-off-picture: `40 % 125 %:` is not on the picture | allowed: from 0 % to 100 %',
    ],
    [
      'has a decimal comma in a place',
      photo(`${picture}\n\n1. 40,5 % 25 %: Inlet`),
      '11:4 error decimal-comma: `40,5 % 25 %:` has a comma where numbers here have a point | hint: did you mean `40.5 % 25 %:`?',
    ],
    [
      'has a mark that says nothing',
      photo(`${picture}\n\n1. 40 % 25 %:`),
      `11:4 error mark-without-words: the mark at \`40 % 25 %:\` says nothing | ${place}`,
    ],
    [
      'is a pair of one',
      pair(picture),
      '7:1 error photo-content: <BeforeAfter> holds one picture: two are due, first before, then after | hint: `![before: …](./a.jpg)` and `![after: …](./b.jpg)`',
    ],
    [
      'is a pair with a list',
      pair(`${picture}\n${picture}\n\n1. 40 % 25 %: Inlet`),
      '7:1 error photo-content: <BeforeAfter> holds a list | hint: marks go with <Photo>',
    ],
    [
      'has a number in a mark that nothing says the source of',
      photo(`${picture}\n\n1. 40 % 25 %: it drew 3 A here`),
      '11:23 error unsourced-danger: nothing says where `3 A` comes from (torque, current, voltage, pressure)',
    ],
    [
      'has an unknown name in a mark',
      photo(`${picture}\n\n1. 40 % 25 %: {nope}`),
      '11:16 error unknown-name: no number, block or import is called `nope` | hint: give a number this name with `id`, or import it from the note that has it',
    ],
  ])('that %s is told', async (_, body, due) => {
    const said = await messages(body)
    expect(said).toHaveLength(1)
    expect(said[0]?.startsWith(`notes/n.mdx:${due}`), said[0]).toBe(true)
  })
})
