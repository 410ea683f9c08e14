/**
 * A picture of a note as HTML. In: what is known of it, its words, where it stands. Out: the picture in
 * all its widths with its size set, so that nothing shifts when it comes; the first of a page is asked
 * for at once, the others when they are near.
 *
 * Marks are drawn over it in the picture's own per cents and in letters of the page's size. Without
 * style they are not there at all (a drawing of no size), and the list beside says where each stands.
 */
import {
  drawingName,
  formats,
  heightAt,
  photoName,
  picturesFolder,
  widthsOf,
  type PhotoFacts,
  type PictureFacts,
} from '../photos/facts.ts'
import { attribute, escape } from './html.ts'
import { words } from '../words/words.ts'

export interface PictureOptions {
  /** The site's base path, ending in `/`. */
  readonly base: string
  readonly words: string
  readonly title?: string | undefined
  /** The first of its page. */
  readonly first: boolean
  /** One of two side by side. */
  readonly half?: boolean
}

/** In a page's own dots: the column of text is no wider, and a tall picture is seen whole on a desk. */
const column = 680
const tall = 760

export function pictureHtml(facts: PictureFacts, options: PictureOptions): string {
  const { base, title, first } = options
  const url = (name: string): string => `${base}${picturesFolder}/${name}`
  const shown = Math.max(
    1,
    Math.min(facts.width, 800, Math.round((tall * facts.width) / facts.height)),
  )
  const rest = [
    ` width="${shown}" height="${heightAt(facts, shown)}" alt="${escape(options.words)}"`,
    attribute('title', title),
    first ? '' : ' loading="lazy" decoding="async"',
  ].join('')
  if (facts.type === 'drawing') return `<img src="${escape(url(drawingName(facts.key)))}"${rest}>`
  const wide = Math.min(options.half === true ? column / 2 : column, shown)
  const sizes = `(min-width: 720px) ${wide}px, 100vw`
  const sources = formats.map((format) => ({ format, set: srcset(facts, url, format) }))
  const [better, usual] = sources
  const middle = widthsOf(facts).findLast((width) => width <= 1400) ?? widthsOf(facts).at(0) ?? 1
  return [
    '<picture>',
    better &&
      `<source type="image/${better.format}" srcset="${escape(better.set)}" sizes="${sizes}">`,
    usual &&
      `<img src="${escape(url(photoName(facts.key, middle, usual.format)))}" srcset="${escape(usual.set)}" sizes="${sizes}"${rest}>`,
    '</picture>',
  ].join('')
}

/** While writing: a picture whose file is at fault, which is told beside the page. Never published. */
export const noPictureHtml = (said: string): string =>
  `<em>[${words`no picture yet: ${escape(said)}`}]</em>`

function srcset(
  facts: PhotoFacts,
  url: (name: string) => string,
  format: (typeof formats)[number],
): string {
  return widthsOf(facts)
    .map((width) => `${url(photoName(facts.key, width, format))} ${width}w`)
    .join(', ')
}

export interface Mark {
  /** Per cent from the left and from the top. */
  readonly x: number
  readonly y: number
}

/** The numbers over a picture. */
export function marksHtml(marks: readonly Mark[]): string {
  const drawn = marks.map(
    ({ x, y }, index) =>
      `<circle cx="${x}%" cy="${y}%" r="11"/><text x="${x}%" y="${y}%" dy=".36em" text-anchor="middle">${index + 1}</text>`,
  )
  return `<svg class="photo-marks" width="0" height="0" aria-hidden="true">${drawn.join('')}</svg>`
}

/** Where a mark stands, for who does not see it there. */
export function markPlaceWords({ x, y }: Mark): string {
  const third = (part: number): 0 | 1 | 2 => (part < 100 / 3 ? 0 : part > 200 / 3 ? 2 : 1)
  return places[third(y)][third(x)]
}

const places = [
  [words`upper left`, words`upper middle`, words`upper right`],
  [words`middle left`, words`middle`, words`middle right`],
  [words`lower left`, words`lower middle`, words`lower right`],
] as const

/** Over the two of a pair. */
export const pairWords = { before: words`Before`, after: words`After` } as const
