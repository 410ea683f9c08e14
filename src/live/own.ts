/**
 * The reader's own figures: which are in force, kept in this browser only, from page to page and from
 * week to week. Nothing is written before the first change. Where the browser refuses to keep anything,
 * they hold for this page, and `kept` says so.
 */
import type { Overrides } from '../ledger/override.ts'
import { isRecord, parsedJson } from '../ledger/json.ts'
import { figuresKey } from './base.ts'

export type Figure = Overrides[string]

/** A figure with what the strip says of it on pages that do not know the number. */
export interface Own {
  readonly text: Figure
  /** What the number is called, and the builder's value, as printed. */
  readonly label: string
  readonly builder: string
}

export type Figures = ReadonlyMap<string, Own>

/** More is not typed by hand. */
export const mostFigures = 500
const mostRows = 200
const longestText = 200
const version = 1

const idShape = /^[\p{L}\p{N}_-]+\/[\p{L}_$][\p{L}\p{N}_$]*(\.[\p{L}_$][\p{L}\p{N}_$]*)?$/u
const columnShape = /^[\p{L}_$][\p{L}\p{N}_$]*$/u

/** `note/name` or `note/block.field`. */
export const isFigureId = (id: string): boolean => id.length <= longestText && idShape.test(id)
export const isColumn = (name: string): boolean =>
  name.length <= longestText && columnShape.test(name)
export const isShort = (text: unknown): text is string =>
  typeof text === 'string' && text.length <= longestText

export function isFigure(value: unknown): value is Figure {
  if (isShort(value)) return true
  return (
    Array.isArray(value) &&
    value.length <= mostRows &&
    value.every(
      (row: unknown) =>
        typeof row === 'object' &&
        row !== null &&
        !Array.isArray(row) &&
        Object.entries(row).every(([name, text]) => isColumn(name) && isShort(text)),
    )
  )
}

/** What was kept; anything that this version did not write is left out. */
function readKept(text: string | null): Map<string, Own> {
  const found = new Map<string, Own>()
  const data = parsedJson(text ?? '')
  if (!isRecord(data) || data.version !== version || !Array.isArray(data.figures)) return found
  for (const entry of data.figures.slice(0, mostFigures)) {
    if (!isRecord(entry)) continue
    const { id, text: figure, label, builder } = entry
    if (isShort(id) && isFigureId(id) && isFigure(figure) && isShort(label) && isShort(builder))
      found.set(id, { text: figure, label, builder })
  }
  return found
}

function keptText(figures: Figures): string {
  return JSON.stringify({ version, figures: [...figures].map(([id, own]) => ({ id, ...own })) })
}

export interface OwnStore {
  readonly figures: Figures
  /** Whether the browser kept the last change. */
  readonly kept: boolean
  /** Puts figures in force, or takes them back where undefined. */
  change(changes: Iterable<readonly [id: string, own: Own | undefined]>): void
  clear(): void
  /** Called after each change, here or in another tab. */
  follow(listener: () => void): void
}

function openOwn(key: string): OwnStore {
  const listeners: (() => void)[] = []
  let figures = readKept(read())
  let kept = true
  let toKeep = false

  function read(): string | null {
    try {
      return localStorage.getItem(key)
    } catch {
      return null
    }
  }
  function write(): void {
    if (!toKeep) return
    toKeep = false
    const before = kept
    try {
      if (figures.size === 0) localStorage.removeItem(key)
      else localStorage.setItem(key, keptText(figures))
      kept = true
    } catch {
      kept = false
    }
    if (kept !== before) tell()
  }
  /** After the page has answered the key: the browser takes its time over keeping. */
  function keep(): void {
    if (toKeep) return
    toKeep = true
    setTimeout(write)
  }
  const tell = (): void => {
    for (const listener of listeners) listener()
  }
  addEventListener('storage', (event) => {
    // Of two changes at a time the later one stands: what is still to be kept here.
    if (toKeep || (event.key !== key && event.key !== null)) return
    figures = readKept(read())
    tell()
  })
  addEventListener('pagehide', write)
  return {
    get figures() {
      return figures
    },
    get kept() {
      return kept
    },
    change(changes) {
      const next = new Map(figures)
      for (const [id, own] of changes) {
        if (own === undefined) next.delete(id)
        else if (next.has(id) || next.size < mostFigures) next.set(id, own)
      }
      figures = next
      keep()
      tell()
    },
    clear() {
      figures = new Map()
      keep()
      tell()
    },
    follow(listener) {
      listeners.push(listener)
    },
  }
}

let store: OwnStore | undefined
/** The one of this page. */
export const ownFigures = (): OwnStore => (store ??= openOwn(figuresKey()))
