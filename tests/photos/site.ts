/**
 * A builder's folder with photos as a phone writes them: shown, marked, in a pair, linked to, under
 * names of every sort; one that no note shows and one of a draft. Out: the folder; the caller removes it.
 */
import { mkdir, mkdtemp, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { phonePhoto, records, scene } from './camera.ts'

const settings = `title: Notes of a test
vehicle: an invented van
base: /kit/
instruments:
  meter: { title: digital multimeter, plusMinus: 0.1 A }
`

const head = (title: string, more = ''): string =>
  `---\ntitle: ${title}\ndate: 2026-03-14\nphase: cooling\nstatus: done\n${more}---\n\n`

export const noteText = `${head('The tank')}The pump drew <Reading id="draw" value="1.5 A" with="meter" />.

![The tank from the left](./tank.jpg)

In a line ![the pump, cut open](<./Bild #2 100%.png>) of words, [the tank, large](./tank.jpg).

![The fan in its shroud](./Lüfter.jpg "The day it came")

![The loop, drawn flat](./loop.svg)

<Photo>

![The tank, its neck and its low mark](./tank.jpg) The tank as fitted, {draw} at the pump.

1. 40 % 25 %: Filler neck, **above** the rail
2. 70.5% 60%: Pump; it draws {draw}

</Photo>

<BeforeAfter>

![The arch, rusted through](./before.jpg) On the day it came
![The arch, welded][arch]

</BeforeAfter>

[arch]: ./after.jpg 'Welded and primed'
`

const drawing = `<!-- Anna Example --><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 240">
<metadata>garage of the owner</metadata><path d="M17 23L371 219" stroke="#000"/></svg>`

export async function photoSite(): Promise<string> {
  const content = await mkdtemp(join(tmpdir(), 'photo-notes-'))
  await mkdir(join(content, 'notes'))
  const files: Record<string, string | Buffer> = {
    'site.yaml': settings,
    'notes/tank.mdx': noteText,
    'notes/later.mdx': `${head('Later', 'draft: true\n')}![The cabin](./cabin.jpg)\n`,
    'notes/tank.jpg': await phonePhoto(1500, 2000),
    'notes/Bild #2 100%.png': await records(scene(900, 600).png()).toBuffer(),
    'notes/Lüfter.jpg': await phonePhoto(1000, 700),
    'notes/before.jpg': await phonePhoto(640, 480),
    'notes/after.jpg': await sharp(await phonePhoto(640, 481))
      .keepMetadata()
      .tiff()
      .toBuffer(),
    'notes/loop.svg': drawing,
    'notes/cabin.jpg': await phonePhoto(620, 470),
    'notes/not shown.jpg': await phonePhoto(610, 460),
  }
  for (const [name, bytes] of Object.entries(files)) await writeFile(join(content, name), bytes)
  return content
}
