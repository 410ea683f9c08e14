/**
 * The advance of each sign of a TrueType font, and which signs it has: enough to break lines before they
 * are drawn. In: the bytes of the font. Out: widths in units of the font's size.
 *
 * The tables are those of ISO/IEC 14496-22 (OpenType): `head`, `hhea`, `hmtx`, `cmap` of format 4 or 12.
 */
export interface FontWidths {
  has(sign: string): boolean
  /** 0 for a sign that the font does not have. */
  widthOf(text: string): number
}

export function readFont(bytes: Uint8Array): FontWidths {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables = new Map<string, number>()
  for (let index = 0; index < view.getUint16(4); index++) {
    const at = 12 + index * 16
    const name = String.fromCharCode(...bytes.subarray(at, at + 4))
    tables.set(name, view.getUint32(at + 8))
  }
  const table = (name: string): number => {
    const at = tables.get(name)
    if (at === undefined) throw new Error(`the font has no table ${name}`)
    return at
  }
  const size = view.getUint16(table('head') + 18)
  const metrics = view.getUint16(table('hhea') + 34)
  const glyphOf = readMap(view, table('cmap'))
  const advance = (glyph: number): number =>
    view.getUint16(table('hmtx') + 4 * Math.min(glyph, metrics - 1)) / size
  const glyph = (sign: string): number => glyphOf.get(sign.codePointAt(0) ?? 0) ?? 0
  return {
    has: (sign) => glyph(sign) > 0,
    widthOf: (text) =>
      Array.from(text).reduce((sum, sign) => {
        const found = glyph(sign)
        return found === 0 ? sum : sum + advance(found)
      }, 0),
  }
}

/** Sign -> glyph, of the widest map that the font has. */
function readMap(view: DataView, cmap: number): Map<number, number> {
  const maps = Array.from({ length: view.getUint16(cmap + 2) }, (_, index) => {
    const at = cmap + view.getUint32(cmap + 4 + index * 8 + 4)
    return { at, format: view.getUint16(at) }
  })
  const best = maps.find(({ format }) => format === 12) ?? maps.find(({ format }) => format === 4)
  if (best === undefined) throw new Error('the font has no map of signs that can be read')
  return best.format === 12 ? readGroups(view, best.at) : readSegments(view, best.at)
}

function readGroups(view: DataView, at: number): Map<number, number> {
  const found = new Map<number, number>()
  for (let index = 0; index < view.getUint32(at + 12); index++) {
    const group = at + 16 + index * 12
    const [first, last, glyph] = [0, 4, 8].map((offset) => view.getUint32(group + offset))
    for (let sign = first ?? 0; sign <= (last ?? -1); sign++)
      found.set(sign, (glyph ?? 0) + sign - (first ?? 0))
  }
  return found
}

function readSegments(view: DataView, at: number): Map<number, number> {
  const found = new Map<number, number>()
  const twice = view.getUint16(at + 6)
  for (let offset = 0; offset < twice; offset += 2) {
    const last = view.getUint16(at + 14 + offset)
    const first = view.getUint16(at + 16 + twice + offset)
    const delta = view.getInt16(at + 16 + 2 * twice + offset)
    const place = at + 16 + 3 * twice + offset
    const range = view.getUint16(place)
    for (let sign = first; sign <= last && sign !== 0xffff; sign++) {
      const plain = range === 0 ? sign : view.getUint16(place + range + 2 * (sign - first))
      if (plain !== 0) found.set(sign, (plain + delta) & 0xffff)
    }
  }
  return found
}
