/**
 * Photos as a camera or a phone writes them, made here: a scene with known colours in its corners,
 * stored on its side, with place, owner and serial number in every record that files have for them.
 */
import { crc32 } from 'node:zlib'
import sharp, { type Sharp } from 'sharp'

/** What no published byte may hold. */
export const secrets = ['Anna Example', 'SN-4711-0815', 'Obscura Nine', 'garage of the owner']

/** Red upper left, green upper right, blue lower left, white lower right. */
export const corners = {
  'upper left': [200, 40, 40],
  'upper right': [40, 180, 60],
  'lower left': [40, 60, 200],
  'lower right': [235, 235, 235],
} as const

export function scene(width: number, height: number): Sharp {
  const rgb = (corner: keyof typeof corners): string => `rgb(${corners[corner].join(',')})`
  return sharp(
    Buffer.from(
      `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">
<rect width="50%" height="50%" fill="${rgb('upper left')}"/>
<rect x="50%" width="50%" height="50%" fill="${rgb('upper right')}"/>
<rect y="50%" width="50%" height="50%" fill="${rgb('lower left')}"/>
<rect x="50%" y="50%" width="50%" height="50%" fill="${rgb('lower right')}"/>
</svg>`,
    ),
  ).flatten()
}

const xmp = `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:creator><rdf:Seq><rdf:li>Anna Example</rdf:li></rdf:Seq></dc:creator></rdf:Description>
</rdf:RDF></x:xmpmeta><?xpacket end="w"?>`

/** With everything a camera writes beside the picture; `orientation` is how it was held. */
export function records(picture: Sharp, orientation = 1): Sharp {
  return picture
    .withMetadata({ orientation })
    .withExif({
      IFD0: { Artist: 'Anna Example', Copyright: 'Anna Example', Model: 'Obscura Nine' },
      IFD2: { BodySerialNumber: 'SN-4711-0815', UserComment: 'garage of the owner' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '51/1 30/1 3230/100',
        GPSLongitudeRef: 'W',
        GPSLongitude: '0/1 7/1 3866/100',
      },
    })
    .withXmp(xmp)
}

/** Held upright, stored on its side (orientation 6), in the wider colours of a phone. */
export async function phonePhoto(width = 900, height = 1200): Promise<Buffer> {
  const side = await scene(width, height).png().toBuffer()
  const turned = await sharp(side).rotate(270).png().toBuffer()
  const photo = await records(
    sharp(turned).jpeg({ quality: 92 }).withIccProfile('p3'),
    6,
  ).toBuffer()
  return withIptc(photo)
}

/** Adds the record of a picture agency, which the library does not write: segment 13 of a JPEG. */
function withIptc(jpeg: Buffer): Buffer {
  const text = Buffer.from('Anna Example, garage of the owner')
  const entry = Buffer.concat([Buffer.from([0x1c, 2, 80, 0, text.length]), text])
  const size = Buffer.alloc(4)
  size.writeUInt32BE(entry.length)
  const body = Buffer.concat([
    Buffer.from('Photoshop 3.0\0'),
    Buffer.from('8BIM'),
    Buffer.from([4, 4, 0, 0]),
    size,
    entry,
    Buffer.alloc(entry.length % 2),
  ])
  const length = Buffer.alloc(2)
  length.writeUInt16BE(body.length + 2)
  return Buffer.concat([
    jpeg.subarray(0, 2),
    Buffer.from([0xff, 0xed]),
    length,
    body,
    jpeg.subarray(2),
  ])
}

/** A picture of so many pixels, in a few kilobytes: what goes off when it is decoded. */
export async function bomb(width: number, height: number): Promise<Buffer> {
  const small = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#777' } })
    .png({ palette: true })
    .toBuffer()
  // The header says the size: it is changed, and with it the header's sum.
  const made = Buffer.from(small)
  made.writeUInt32BE(width, 16)
  made.writeUInt32BE(height, 20)
  made.writeUInt32BE(crc32(made.subarray(12, 29)), 29)
  return made
}

export const smallPhoto = (): Promise<Buffer> => scene(64, 48).jpeg().toBuffer()

export const smallDrawing =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 30"><path d="M0 0L40 30"/></svg>'
