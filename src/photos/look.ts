/**
 * Looks at the pictures that notes name. In: a picture's path. Out: what a page needs to know of it, or
 * what is wrong with the file, in a builder's words.
 *
 * The size is read before anything is decoded, so that a bomb never goes off; then the whole picture is
 * decoded once, small, so that a file copied in part is seen. What was found is kept by the file's
 * bytes, never by its date: a copied file may keep an old one.
 */
import { createHash } from 'node:crypto'
import { open, readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import sharp, { type Metadata } from 'sharp'
import { cached, keep } from './cache.ts'
import { readDrawing } from './drawing.ts'
import { heicHint, type PictureFacts, type PictureFault } from './facts.ts'
import { decoder, mostDrawingMegabytes, mostMegabytes, mostMegapixels, recipe } from './recipe.ts'
import { isRaster, sniff, type Raster, type Sniffed } from './sniff.ts'
import { parsedJson } from '../ledger/json.ts'
import { words } from '../words/words.ts'

export type Looked = { readonly facts: PictureFacts } | { readonly fault: PictureFault }

export interface Opened {
  readonly bytes: Buffer
  readonly key: string
}

export const keyOf = (bytes: Uint8Array): string =>
  createHash('sha256').update(recipe).update(bytes).digest('hex').slice(0, 20)

/** `folder`: the cache. */
export async function lookAt(path: string, folder?: string): Promise<Looked> {
  const name = basename(path)
  const read = await readWhole(path, name)
  if ('rule' in read) return { fault: read }
  const key = keyOf(read)
  // The name is in the messages, so only what is well is kept.
  const known = factsIn(await cached(`${key}.json`, folder), key)
  if (known !== undefined && (known.type === 'drawing') === isDrawingName(name))
    return { facts: known }
  const looked = await lookInside(read, name, key)
  if ('facts' in looked) await keep(`${key}.json`, `${JSON.stringify(looked.facts)}\n`, folder)
  return looked
}

const isDrawingName = (name: string): boolean => /\.svg$/i.test(name)

async function readWhole(path: string, name: string): Promise<Buffer | PictureFault> {
  try {
    const file = await open(path)
    try {
      const { size } = await file.stat()
      if (size > mostMegabytes * 1e6)
        return tooLarge(words`\`${name}\` has ${Math.round(size / 1e6)} megabytes`)
    } finally {
      await file.close()
    }
    return await readFile(path)
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : ''
    return {
      rule: 'picture-unreadable',
      text:
        code === 'EISDIR'
          ? words`\`${name}\` is a folder`
          : words`\`${name}\` cannot be opened on this machine`,
      ...(code === 'EACCES' && { hint: words`allow the file to be read` }),
    }
  }
}

async function lookInside(bytes: Buffer, name: string, key: string): Promise<Looked> {
  const kind = sniff(bytes)
  if (isDrawingName(name)) {
    if (kind !== 'drawing' && kind !== 'text') return { fault: otherInside(kind, name) }
    if (bytes.length > mostDrawingMegabytes * 1e6)
      return {
        fault: tooLarge(words`\`${name}\` has ${(bytes.length / 1e6).toFixed(1)} megabytes`),
      }
    const drawing = readDrawing(bytes.toString('utf8'), name)
    if ('rule' in drawing) return { fault: drawing }
    const { width, height } = drawing
    return { facts: { type: 'drawing', key, width, height } }
  }
  return isRaster(kind) ? lookAtRaster(bytes, kind, name, key) : { fault: otherInside(kind, name) }
}

async function lookAtRaster(
  bytes: Buffer,
  kind: Raster,
  name: string,
  key: string,
): Promise<Looked> {
  // A decoder fills a missing end with grey; a picture without its end is told before.
  if (kind !== 'gif' && isCut(bytes, kind)) return { fault: cutOrBroken(bytes, kind, name) }
  let head: Metadata
  try {
    head = await sharp(bytes, { limitInputPixels: false, failOn: 'none' }).metadata()
  } catch {
    return { fault: cutOrBroken(bytes, kind, name) }
  }
  const { width, height } = head.autoOrient
  if (width * height > mostMegapixels * 1e6) {
    const [wide, high, all] = [width, height, Math.round((width * height) / 1e6)].map((number) =>
      number.toLocaleString('en'),
    )
    return {
      fault: tooLarge(
        words`\`${name}\` is ${wide ?? ''} × ${high ?? ''} pixels (${all ?? ''} megapixels)`,
      ),
    }
  }
  try {
    await decoder(bytes).resize(16, 16, { fit: 'fill', kernel: 'nearest' }).raw().toBuffer()
  } catch {
    return { fault: cutOrBroken(bytes, kind, name) }
  }
  const drawn = kind === 'png' || kind === 'gif'
  return {
    facts: {
      type: 'photo',
      key,
      width,
      height,
      drawn,
      moves: (head.pages ?? 1) > 1 && kind !== 'tiff',
    },
  }
}

/** Whether the file lacks its end, by what its kind says of that. */
function isCut(bytes: Buffer, kind: Raster): boolean {
  switch (kind) {
    case 'jpeg':
      return !bytes.includes(Buffer.from([0xff, 0xd9]), Math.floor(bytes.length / 2))
    case 'png':
      return !bytes.includes('IEND')
    case 'gif':
      return bytes.at(-1) !== 0x3b
    case 'webp':
      return bytes.length < 12 || bytes.readUInt32LE(4) + 8 > bytes.length
    case 'avif':
      return boxesEnd(bytes) > bytes.length
    case 'tiff':
      // It says where its pixels lie; a decoder fails when these are past the end.
      return false
  }
}

/** Where the last of the boxes that such a file is made of should end. */
function boxesEnd(bytes: Buffer): number {
  let at = 0
  while (at + 8 <= bytes.length) {
    const size = bytes.readUInt32BE(at)
    if (size === 0) return bytes.length
    if (size === 1 && at + 16 > bytes.length) return at + 16
    at += size === 1 ? Number(bytes.readBigUInt64BE(at + 8)) : size
    if (size > 1 && size < 8) return at
  }
  return at
}

function cutOrBroken(bytes: Buffer, kind: Raster, name: string): PictureFault {
  if (isCut(bytes, kind))
    return {
      rule: 'picture-cut-off',
      text: words`\`${name}\` ends in the middle of the picture: only a part of the file is here`,
      hint: words`copy it again from the phone or the camera`,
    }
  return {
    rule: 'picture-broken',
    text: words`\`${name}\` begins like a picture (${kind.toUpperCase()}) and cannot be read to its end`,
    hint: words`copy it again from the phone or the camera, or open it in a picture program and save it as JPEG`,
  }
}

function tooLarge(text: string): PictureFault {
  return {
    rule: 'picture-too-large',
    text,
    allowed: words`up to ${mostMegapixels} megapixels and ${mostMegabytes} megabytes, a drawing up to ${mostDrawingMegabytes}`,
    hint: words`save a smaller copy and name that one`,
  }
}

/** What a file is inside that is no picture of the kind its name says. */
function insideOf(kind: Sniffed, name: string): readonly [text: string, hint?: string] {
  if (isRaster(kind))
    return [
      words`\`${name}\` is a photo (${kind.toUpperCase()}) inside`,
      words`let its name end in \`.${kind === 'jpeg' ? 'jpg' : kind}\``,
    ]
  const insides: Readonly<
    Record<Exclude<Sniffed, Raster>, readonly [text: string, hint?: string]>
  > = {
    empty: [words`\`${name}\` is empty`, words`copy it again from the phone or the camera`],
    heic: [words`\`${name}\` is a phone’s HEIC inside, which browsers do not show`, heicHint],
    film: [words`\`${name}\` is a film inside`, words`save one picture of it as JPEG`],
    pdf: [words`\`${name}\` is a PDF inside`, words`save the page as PNG`],
    archive: [words`\`${name}\` is an archive inside`, words`unpack it and name the picture in it`],
    drawing: [words`\`${name}\` is a drawing (SVG) inside`, words`let its name end in \`.svg\``],
    text: [
      words`\`${name}\` holds text and no picture`,
      words`a renamed file stays what it was: find the picture itself`,
    ],
    unknown: [words`\`${name}\` holds no picture that can be read`, words`save it as JPEG or PNG`],
  }
  return insides[kind]
}

function otherInside(kind: Sniffed, name: string): PictureFault {
  const [text, hint] = insideOf(kind, name)
  return { rule: 'not-a-picture', text, ...(hint !== undefined && { hint }) }
}

function factsIn(bytes: Buffer | undefined, key: string): PictureFacts | undefined {
  const read = parsedJson(bytes?.toString('utf8') ?? '')
  return isFacts(read) && read.key === key ? read : undefined
}

function isFacts(read: unknown): read is PictureFacts {
  if (typeof read !== 'object' || read === null) return false
  const { type, key, width, height, drawn, moves }: Record<string, unknown> = { ...read }
  return (
    typeof key === 'string' &&
    Number.isInteger(width) &&
    Number.isInteger(height) &&
    (type === 'drawing' ||
      (type === 'photo' && typeof drawn === 'boolean' && typeof moves === 'boolean'))
  )
}
