/**
 * Loads of steel bolts, read from the standard's table.
 *
 * In: a thread (`M10`) and a property class (`8.8`) as words. Out: m², N. The proof load is what a bolt
 * bears without staying longer; it breaks later, but it is loose by then.
 */
import { boltsIso8981 } from './tables/bolts-iso-898-1.ts'

export type BoltClass = '4.6' | '5.8' | '8.8' | '10.9' | '12.9'

const rows = boltsIso8981.rows
const numberAt = (row: (typeof rows)[number] | undefined, column: number): number | undefined => {
  const cell = row?.[column]
  return typeof cell === 'number' ? cell : undefined
}
const proofColumns = { '4.6': 3, '5.8': 4, '8.8': 5, '10.9': 6, '12.9': 7 } as const

/** Threads of the table, thinnest first. */
export const boltThreads: readonly string[] = rows.map(([thread]) => String(thread))

/** N; undefined for a thread that is not in the table. */
export function proofLoad(thread: string, property: BoltClass): number | undefined {
  return numberAt(
    rows.find(([name]) => name === thread),
    proofColumns[property],
  )
}

/** Nominal stress area, m². */
export function stressArea(thread: string): number | undefined {
  const area = numberAt(
    rows.find(([name]) => name === thread),
    2,
  )
  return area === undefined ? undefined : area * 1e-6
}

/** Nominal diameter of a metric thread, m. */
export const nominalDiameter = (thread: string): number => Number(thread.slice(1)) / 1000
