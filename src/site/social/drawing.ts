/**
 * The picture of a note for where links are passed on, as SVG: title, headline number, how it is known.
 * In: the words, and the widths of the font. Out: SVG text of 1200 by 630.
 *
 * Lines are broken here, by the font's own widths; a sign that the font does not have is left out, so
 * that nobody sees a row of boxes.
 */
import { escape } from '../../card/html.ts'
import type { FontWidths } from './font.ts'
import type { Headline } from './headline.ts'
import { words } from '../../words/words.ts'

export const [width, height] = [1200, 630] as const
const left = 72
const room = width - 2 * left

export interface Words {
  readonly site: string
  readonly title: string
  readonly vehicle: string
  readonly date: string
  /** Of an invented scenario and the like. */
  readonly notice: string | undefined
  readonly headline: Headline | undefined
}

export interface Fonts {
  readonly plain: FontWidths
  readonly bold: FontWidths
}

export function drawing(said: Words, fonts: Fonts): string {
  const title = lines(said.title, fonts.bold, 56, said.headline === undefined ? 5 : 3)
  const parts = [
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    `<rect width="${width}" height="14" fill="#000000"/>`,
    one(said.site, 68, 26, fonts.plain, '#4a4a4a'),
    ...title.map((text, index) => line(text, 148 + index * 66, 56, 'bold', '#000000')),
    ...(said.headline === undefined ? [] : headlineParts(said.headline, fonts)),
    `<path d="M${left} 552H${width - left}" stroke="#999999" stroke-width="2"/>`,
    one(
      [said.vehicle, said.date, said.notice].filter((text) => text !== undefined).join('. '),
      584,
      22,
      fonts.plain,
      '#4a4a4a',
    ),
    one(
      words`This is arithmetic: local codes and licensed practice decide.`,
      612,
      20,
      fonts.plain,
      '#4a4a4a',
    ),
  ]
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="DejaVu Sans">${parts.join('')}</svg>`
}

/** Signs of a text that the pictures cannot show, each once; those that show nothing anywhere do not count. */
export const lostSigns = (text: string, font: FontWidths): readonly string[] =>
  [...new Set(text)].filter(
    (sign) => !font.has(sign) && !/[\s\p{Default_Ignorable_Code_Point}]/u.test(sign),
  )

function headlineParts({ label, value, how }: Headline, fonts: Fonts): string[] {
  const size = fitting(value, fonts.bold, 104)
  return [
    one(label, 376, 30, fonts.plain, '#000000'),
    line(known(value, fonts.bold), 480, size, 'bold', '#000000'),
    one(how, 528, 26, fonts.plain, '#000000'),
  ]
}

/** As large as fits, down to a half. */
const fitting = (text: string, font: FontWidths, size: number): number =>
  Math.max(size / 2, Math.min(size, Math.floor(room / Math.max(0.01, font.widthOf(text)))))

const known = (text: string, font: FontWidths): string =>
  Array.from(text.replace(/[\s\u00a0\u202f]+/g, ' '))
    .filter((sign) => font.has(sign))
    .join('')
    .replace(/ +/g, ' ')
    .trim()

function line(text: string, y: number, size: number, weight: string, fill: string): string {
  return `<text x="${left}" y="${y}" font-size="${size}" font-weight="${weight}" fill="${fill}">${escape(text)}</text>`
}

function one(text: string, y: number, size: number, font: FontWidths, fill: string): string {
  return line(lines(text, font, size, 1)[0] ?? '', y, size, 'normal', fill)
}

/** Broken between words, and in a word that is longer than a line; `…` where it does not fit. */
export function lines(text: string, font: FontWidths, size: number, most: number): string[] {
  const fits = (part: string): boolean => font.widthOf(part) * size <= room
  const made: string[] = []
  let now = ''
  for (const word of known(text, font).split(' ')) {
    const longer = now === '' ? word : `${now} ${word}`
    if (fits(longer)) {
      now = longer
      continue
    }
    if (now !== '') made.push(now)
    now = ''
    for (const sign of word) {
      if (!fits(now + sign)) {
        made.push(now)
        now = ''
      }
      now += sign
    }
  }
  made.push(now)
  if (made.length <= most) return made
  let last = `${made[most - 1] ?? ''}…`
  while (!fits(last) && last.length > 1) last = `${last.slice(0, -2)}…`
  return [...made.slice(0, most - 1), last]
}
