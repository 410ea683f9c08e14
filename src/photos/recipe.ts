/**
 * How a photo is decoded and written, in one place: limits, qualities, and the recipe's own mark, which
 * changes every made file's name when anything of it changes.
 *
 * Measured on a phone's photo at 800 px: AVIF at the quickest effort is four tenths smaller than WebP
 * and no slower to write; the next efforts take up to twenty times as long and save nothing.
 */
import sharp, { type Sharp } from 'sharp'
import type { Format, PhotoFacts } from './facts.ts'

/** Decoded, that is half a gigabyte: more than any camera a builder has, less than any bomb. */
export const mostMegapixels = 160
export const mostMegabytes = 80
/** A drawing larger than this is a photo in disguise. */
export const mostDrawingMegabytes = 2

const revision = 2
const { sharp: library, vips, aom = '', webp = '' } = sharp.versions
export const recipe = `worked-notes photo ${revision}; ${library} ${vips} ${aom} ${webp}`

/** Nothing stays in memory between pictures. */
sharp.cache(false)

export function decoder(bytes: Uint8Array): Sharp {
  return sharp(bytes, {
    // Warnings of a decoder are common in phones' files that every browser shows.
    failOn: 'error',
    limitInputPixels: mostMegapixels * 1e6,
    pages: 1,
    sequentialRead: true,
  }).timeout({ seconds: 120 })
}

export function encoded(
  picture: Sharp,
  format: Format,
  { drawn }: Pick<PhotoFacts, 'drawn'>,
): Sharp {
  return format === 'avif'
    ? picture.avif({
        quality: drawn ? 70 : 55,
        effort: 0,
        chromaSubsampling: drawn ? '4:4:4' : '4:2:0',
      })
    : picture.webp({ quality: drawn ? 90 : 78, effort: 3, smartSubsample: drawn })
}
