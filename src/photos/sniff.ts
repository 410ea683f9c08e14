/**
 * What a file is by its first bytes, whatever its name says. In: the bytes. Out: the kind in one word.
 * Only the kinds in `rasters` are handed to the decoder; everything else is refused before it.
 */
export const rasters = ['jpeg', 'png', 'gif', 'webp', 'avif', 'tiff'] as const
export type Raster = (typeof rasters)[number]
export type Sniffed =
  Raster | 'empty' | 'heic' | 'film' | 'pdf' | 'archive' | 'drawing' | 'text' | 'unknown'

export const isRaster = (kind: Sniffed): kind is Raster => rasters.some((one) => one === kind)

export function sniff(bytes: Uint8Array): Sniffed {
  if (bytes.length === 0) return 'empty'
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 4096))
  const starts = (text: string, at = 0): boolean =>
    head.subarray(at, at + text.length).toString('latin1') === text
  if (starts('\xff\xd8\xff')) return 'jpeg'
  if (starts('\x89PNG\r\n\x1a\n')) return 'png'
  if (starts('GIF8')) return 'gif'
  if (starts('RIFF') && starts('WEBP', 8)) return 'webp'
  if (['II*\0', 'MM\0*', 'II+\0', 'MM\0+'].some((sign) => starts(sign))) return 'tiff'
  if (starts('ftyp', 4)) return byBrands(head)
  if (starts('%PDF')) return 'pdf'
  if (['PK\x03\x04', '\x1f\x8b', '7z\xbc\xaf', 'Rar!'].some((sign) => starts(sign)))
    return 'archive'
  return textOrNot(head)
}

/** Boxed files of one family: stills of two kinds, and films. */
function byBrands(head: Buffer): Sniffed {
  const size = Math.min(head.readUInt32BE(0), head.length, 256)
  const brands = [head.subarray(8, 12), ...pieces(head.subarray(16, size))].map((one) =>
    one.toString('latin1'),
  )
  if (brands.some((brand) => /^avi[fs]$/.test(brand))) return 'avif'
  if (brands.some((brand) => /^(?:he[iv].|mif1|msf1)$/.test(brand))) return 'heic'
  return 'film'
}

const pieces = (bytes: Buffer): Buffer[] =>
  Array.from({ length: Math.floor(bytes.length / 4) }, (_, index) =>
    bytes.subarray(index * 4, index * 4 + 4),
  )

function textOrNot(head: Buffer): Sniffed {
  if (head.includes(0)) return 'unknown'
  // A letter may be cut at the end of what is looked at.
  const text = head.toString('utf8').replace(/\uFFFD{1,3}$/, '')
  if (
    /^\uFEFF?\s*(?:<\?xml[^>]*>\s*)?(?:<!--[\s\S]*?-->\s*|<!DOCTYPE[^>]*>\s*)*<svg[\s>]/i.test(text)
  )
    return 'drawing'
  return text.includes('\uFFFD') ? 'unknown' : 'text'
}
