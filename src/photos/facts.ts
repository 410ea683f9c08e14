/**
 * What a page needs to know of a picture, and the names of the files that are made of it. The names
 * come from the picture's own bytes and the recipe: the same picture has the same addresses on every
 * machine, and a changed one never meets an old copy.
 */
import type { Problem } from '../ledger/problems.ts'
import { words } from '../words/words.ts'

export interface PhotoFacts {
  readonly type: 'photo'
  readonly key: string
  /** As seen upright, in pixels. */
  readonly width: number
  readonly height: number
  /** A drawn picture (PNG, GIF) keeps its sharp edges. */
  readonly drawn: boolean
  /** More than one picture in the file: only the first is shown. */
  readonly moves: boolean
}

export interface DrawingFacts {
  readonly type: 'drawing'
  readonly key: string
  readonly width: number
  readonly height: number
}

export type PictureFacts = PhotoFacts | DrawingFacts
export type PictureFault = Pick<Problem, 'rule' | 'text' | 'allowed' | 'hint'>

/** What to do with a phone's own kind of photo. */
export const heicHint = words`a phone saves this kind by itself: share or export it as JPEG, and set its camera to JPEG for the next ones`

export const formats = ['avif', 'webp'] as const
export type Format = (typeof formats)[number]

/** Folder of the site that holds the pictures. */
export const picturesFolder = 'photos'

/** A phone, a phone of three dots a pixel or a column of text, that column on a fine screen, a close look. */
const usualWidths = [400, 800, 1360, 2000]
/** Taller than this no picture is made: formats end near 16,000. */
const tallest = 8000

/** The widths a photo is made in, rising; never wider than it is. */
export function widthsOf({ width, height }: Pick<PhotoFacts, 'width' | 'height'>): number[] {
  const widest = Math.max(1, Math.min(width, 2000, Math.floor((tallest * width) / height)))
  return [...usualWidths.filter((one) => one < widest * 0.85), widest]
}

export const heightAt = (
  { width, height }: Pick<PictureFacts, 'width' | 'height'>,
  wide: number,
): number => Math.max(1, Math.round((height * wide) / width))

export const photoName = (key: string, width: number, format: Format): string =>
  `${key}-${width}.${format}`

export const drawingName = (key: string): string => `${key}.svg`

export interface MadeName {
  readonly key: string
  /** Undefined for a drawing. */
  readonly made: { readonly width: number; readonly format: Format } | undefined
}

/** A file's name taken apart; undefined when it is none of ours. */
export function readName(name: string): MadeName | undefined {
  const found = /^([0-9a-f]{20})(?:-(\d{1,4})\.(avif|webp)|\.svg)$/.exec(name)
  if (found === null) return undefined
  const [, key = '', width, extension] = found
  if (width === undefined) return { key, made: undefined }
  return { key, made: { width: Number(width), format: extension === 'avif' ? 'avif' : 'webp' } }
}

/** The largest copy, for a link to a picture. */
export function largestName(facts: PictureFacts): string {
  if (facts.type === 'drawing') return drawingName(facts.key)
  return photoName(facts.key, widthsOf(facts).at(-1) ?? 1, 'webp')
}
