/**
 * Draws the picture of every note into the site: `notes/<slug>/social.png`. In: the ledger and the site's
 * folder. Out: the files, and a problem for each title that a picture cannot show whole.
 *
 * The font comes with the kit and is the only one that the drawing may find, so that the bytes do not
 * depend on the machine. A picture that was drawn before is taken from the cache, by what it says.
 */
import { createHash } from 'node:crypto'
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import sharp from 'sharp'
import { dateWords } from '../../card/index.ts'
import { escape } from '../../card/html.ts'
import type { Ledger } from '../../ledger/load.ts'
import type { NoteSource } from '../../ledger/note-source.ts'
import type { Problem } from '../../ledger/problems.ts'
import { problemAt } from '../../ledger/report.ts'
import { pruneCopies } from '../../photos/prune.ts'
import { drawing, lostSigns, type Fonts } from './drawing.ts'
import { readFont, type FontWidths } from './font.ts'
import { headlineOf } from './headline.ts'
import { socialPath } from './path.ts'
import { allOf } from '../../words/lists.ts'
import { words } from '../../words/words.ts'

const fontFolder = dirname(
  createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
)

/** Names the one folder of fonts to the drawing library; before its first text. */
async function pinFonts(cache: string): Promise<void> {
  const file = join(cache, 'fonts.conf')
  await mkdir(cache, { recursive: true })
  await writeFile(
    file,
    `<?xml version="1.0"?><fontconfig><dir>${escape(fontFolder)}</dir><cachedir>${escape(join(cache, 'fonts'))}</cachedir></fontconfig>\n`,
  )
  process.env.FONTCONFIG_FILE = file
}

async function fonts(): Promise<Fonts> {
  const read = async (name: string) => readFont(await readFile(join(fontFolder, name)))
  return { plain: await read('DejaVuSans.ttf'), bold: await read('DejaVuSans-Bold.ttf') }
}

export async function drawPictures(
  { published, calculators, notes: sources }: Pick<Ledger, 'published' | 'calculators' | 'notes'>,
  folder: string,
  cache: string,
): Promise<readonly Problem[]> {
  await pinFonts(cache)
  const widths = await fonts()
  const { site, notes } = published
  const kept = join(cache, 'social')
  const named = new Set<string>()
  const draw = async (index: number): Promise<void> => {
    const note = notes[index]
    if (note === undefined) return
    const headline = headlineOf(published, note.slug, calculators)
    const svg = drawing(
      {
        site: site.title,
        title: note.title,
        vehicle: site.vehicle,
        date: dateWords(headline?.date ?? note.changed ?? note.date),
        notice: site.notice,
        headline,
      },
      widths,
    )
    const file = join(folder, socialPath(note.slug))
    await mkdir(dirname(file), { recursive: true })
    const key = createHash('sha256').update(`${sharp.versions.sharp} ${svg}`).digest('hex')
    named.add(key)
    await writeFile(file, await pictureOf(svg, key, kept))
    await draw(index + atOnce)
  }
  const atOnce = 4
  await Promise.all(Array.from({ length: atOnce }, (_, index) => draw(index)))
  await pruneCopies(named, kept)
  return sources.flatMap((source) => lostInTitle(source, widths.bold))
}

function lostInTitle({ file, raw, meta }: NoteSource, font: FontWidths): readonly Problem[] {
  const lost = lostSigns(meta.title, font)
  if (lost.length === 0) return []
  const line = raw.split(/\r\n?|\n/).findIndex((one) => one.startsWith('title:')) + 1
  const signs = allOf(lost.map((sign) => `\`${sign}\``))
  return [
    problemAt(
      file,
      { line: Math.max(1, line), column: 1 },
      {
        rule: 'title-not-in-font',
        level: 'warning',
        text: words`the picture for links leaves ${signs} of the title out: its font does not have them`,
        hint: words`the page shows the whole title; the font has Latin, Greek and Cyrillic letters and most signs`,
      },
    ),
  ]
}

async function pictureOf(svg: string, key: string, cache: string): Promise<Buffer> {
  const file = join(cache, `${key}.png`)
  try {
    const kept = await readFile(file)
    // A build that was stopped may have left half a file.
    if (kept.subarray(-8).toString('latin1').startsWith('IEND')) return kept
  } catch {
    // Not drawn yet.
  }
  // In greys: a quarter of the time and half the bytes of colours.
  const made = await sharp(Buffer.from(svg))
    .flatten({ background: '#fff' })
    .toColourspace('b-w')
    .png({ compressionLevel: 6 })
    .toBuffer()
  await mkdir(cache, { recursive: true })
  const fresh = `${file}.${process.pid}`
  await writeFile(fresh, made)
  await rename(fresh, file)
  return made
}
