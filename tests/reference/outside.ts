/**
 * The tables in `outside/`: answers worked or printed elsewhere, one file a calculator.
 *
 * In: nothing. Out: rows. `inputs` are `key=text` pairs parted by ` | `, a list of rows as JSON. `origin`
 * says how far a row counts: a document, a general-purpose library, arithmetic done for the purpose, or
 * memory. `tolerance` is empty (half the last printed digit), relative (`0.01`), or absolute in the
 * printed unit (`±0.5`); with `misprint` before it the printed answer is known to be wrong and must be
 * missed by more than that.
 */
import { readdirSync, readFileSync } from 'node:fs'
import type { ExampleValue } from '../../calculators/define.ts'

export const origins = ['published', 'library', 'arithmetic', 'recalled'] as const
export type Origin = (typeof origins)[number]

export interface OutsideRow {
  readonly calculator: string
  readonly case: string
  readonly regime: string
  readonly source: string
  readonly origin: Origin
  readonly inputs: Readonly<Record<string, ExampleValue>>
  readonly output: string
  readonly expected: string
  readonly tolerance: Tolerance
}

export interface Tolerance {
  readonly kind: 'printed' | 'relative' | 'absolute'
  readonly size: number
  /** The printed answer must be missed. */
  readonly misprint: boolean
}

const folder = new URL('./outside/', import.meta.url)
const columns = 'case,regime,source,origin,inputs,output,expected,tolerance'

/** Cells of comma-separated text; a cell in double quotes may hold commas and doubled quotes. */
export function cells(line: string): readonly string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
  )
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

function list(text: string): ExampleValue {
  const value: unknown = JSON.parse(text)
  if (!Array.isArray(value)) throw new Error(`not a list: ${text}`)
  return value.map((row: unknown) => {
    if (!isRecord(row)) throw new Error(`not a row: ${JSON.stringify(row)}`)
    return Object.fromEntries(
      Object.entries(row).map(([key, cell]) => {
        if (typeof cell !== 'string') throw new Error(`${key}: a text is due`)
        return [key, cell]
      }),
    )
  })
}

/** `key=text | key=text`. */
export function inputsOf(text: string): OutsideRow['inputs'] {
  return Object.fromEntries(
    text.split(' | ').map((pair) => {
      const at = pair.indexOf('=')
      if (at < 1) throw new Error(`no key: ${pair}`)
      const value = pair.slice(at + 1)
      return [pair.slice(0, at), value.startsWith('[') ? list(value) : value]
    }),
  )
}

function toleranceOf(text: string): Tolerance {
  const misprint = text.startsWith('misprint')
  const written = text.replace('misprint', '').trim()
  const size = Number(written.replace('±', ''))
  if (written === '') return { kind: 'printed', size: 0, misprint }
  if (!(size > 0)) throw new Error(`tolerance cannot be read: ${text}`)
  return { kind: written.startsWith('±') ? 'absolute' : 'relative', size, misprint }
}

function rowsIn(file: string): readonly OutsideRow[] {
  const [header, ...lines] = readFileSync(new URL(file, folder), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
  if (header !== columns) throw new Error(`${file}: the columns are ${columns}`)
  return lines.map((line) => {
    const [name = '', regime = '', source = '', stated, inputs = '', output = '', expected = ''] =
      cells(line)
    const origin = origins.find((known) => known === stated)
    if (origin === undefined) throw new Error(`${file}, ${name}: origin ${stated ?? 'missing'}`)
    return {
      calculator: file.replace('.csv', ''),
      case: name,
      regime,
      source,
      origin,
      inputs: inputsOf(inputs),
      output,
      expected,
      tolerance: toleranceOf(cells(line)[7] ?? ''),
    }
  })
}

export const outsideRows: readonly OutsideRow[] = readdirSync(folder)
  .filter((file) => file.endsWith('.csv'))
  .sort()
  .flatMap(rowsIn)
