/**
 * A link that carries a reader's figures: `…/notes/cooling/#figures=1&edition=3fa9c1&loop/pump.bore=9.5+mm`.
 * It stands behind the `#`, so that it never reaches a server. In and out: text and figures; a damaged
 * or hostile link gives fewer figures or none, never anything else.
 *
 * Cells of a list: `loop/pump.hoses.0.bore=9.5+mm`; a list without rows: `loop/pump.hoses=`.
 */
import { isColumn, isFigureId, isShort, mostFigures, type Figure } from './own.ts'

const version = '1'
/** More than a hand types, and than many a browser takes. */
const longest = 100_000

export interface LinkedFigures {
  readonly figures: ReadonlyMap<string, Figure>
  /** The edition of the note that it was made on. */
  readonly edition: string
  /** Where on the page it leads, an HTML id. */
  readonly at: string
  /** Written by a later version of the kit: nothing of it is taken. */
  readonly tooNew: boolean
  /** Entries that could not be read. */
  readonly dropped: number
}

export function linkHash(
  figures: ReadonlyMap<string, Figure>,
  { edition = '', at = '' }: { readonly edition?: string; readonly at?: string } = {},
): string {
  const parts = new URLSearchParams({ figures: version })
  if (edition !== '') parts.set('edition', edition)
  if (at !== '') parts.set('at', at)
  for (const [id, figure] of figures) {
    if (typeof figure === 'string') parts.append(id, figure)
    else if (figure.length === 0) parts.append(`${id}.`, '')
    for (const [index, row] of typeof figure === 'string' ? [] : figure.entries())
      for (const [column, text] of Object.entries(row))
        parts.append(`${id}.${index}.${column}`, text)
  }
  // A slash and a no-break space may stand as they are read.
  return `#${parts.toString().replaceAll('%2F', '/').replaceAll('%C2%A0', '+')}`
}

/** Undefined: the address carries no figures. */
export function readLink(hash: string): LinkedFigures | undefined {
  if (!hash.startsWith('#figures=')) return undefined
  // Cut between two entries: half a value would be another value.
  const text = hash.slice(1)
  const end = text.length > longest ? text.lastIndexOf('&', longest) : text.length
  const parts = new URLSearchParams(text.slice(0, end))
  const edition = parts.get('edition') ?? ''
  const at = parts.get('at') ?? ''
  const none = { figures: new Map<string, Figure>(), edition: '', at: '', dropped: 0 }
  if (parts.get('figures') !== version) return { ...none, tooNew: true }
  const figures = new Map<string, Figure>()
  const rows = new Map<string, Map<number, Record<string, string>>>()
  let dropped = text.slice(end + 1) === '' ? 0 : text.slice(end + 1).split('&').length
  for (const [key, typed] of parts) {
    if (key === 'figures' || key === 'edition' || key === 'at') continue
    const cell = /^(.+)\.(\d{1,3})\.([^.]+)$/u.exec(key)
    const [, list = '', index = '', column = ''] = cell ?? []
    const id = cell === null ? key.replace(/\.$/, '') : list
    if (!isFigureId(id) || !isShort(typed) || figures.size + rows.size >= mostFigures) dropped += 1
    else if (cell === null) figures.set(id, key.endsWith('.') ? [] : typed)
    else if (!isColumn(column) || Number(index) >= 200) dropped += 1
    else {
      const list = rows.get(id) ?? new Map<number, Record<string, string>>()
      rows.set(id, list)
      const row = list.get(Number(index)) ?? {}
      list.set(Number(index), { ...row, [column]: typed })
    }
  }
  for (const [id, list] of rows)
    figures.set(
      id,
      [...list].sort(([a], [b]) => a - b).map(([, row]) => row),
    )
  return {
    figures,
    edition: /^[0-9a-f]{1,12}$/.test(edition) ? edition : '',
    at: isShort(at) ? at : '',
    tooNew: false,
    dropped,
  }
}
