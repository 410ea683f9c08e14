/**
 * Metric and inch threads as one list: diameter, pitch, proof load of each strength class.
 *
 * In: names as the tables write them (`M8`, `3/8-16`, `8.8`, `grade-5`). Out: m, N. A metric class on
 * an inch thread, or the other way round, has no load here: such bolts are not sold.
 */
import { boltThreads, nominalDiameter, proofLoad, stressArea } from './bolts.ts'
import { boltsIso8981 } from './tables/bolts-iso-898-1.ts'
import { boltsSaeJ429 } from './tables/bolts-sae-j429.ts'
import { words } from '../src/words/words.ts'

export const boltClasses = {
  '4.6': '4.6',
  '5.8': '5.8',
  '8.8': '8.8',
  '10.9': '10.9',
  '12.9': '12.9',
  'grade-2': words`SAE grade 2, no lines on the head`,
  'grade-5': words`SAE grade 5, three lines`,
  'grade-8': words`SAE grade 8, six lines`,
  'a2-70': words`stainless A2-70 or A4-70`,
} as const

export type BoltStrength = keyof typeof boltClasses

const inch = 0.0254
const poundForce = 4.4482216152605
/** Pa; ISO 3506-1, 0.2 % proof stress of property class 70, recalled. */
const stainless = 450e6
const inchColumns = { 'grade-2': 4, 'grade-5': 5, 'grade-8': 6 } as const

const inchRow = (thread: string) => boltsSaeJ429.rows.find(([name]) => name === thread)
const metricRow = (thread: string) => boltsIso8981.rows.find(([name]) => name === thread)
const cellOf = (row: readonly (number | string | null)[] | undefined, column: number) => {
  const cell = row?.[column]
  return typeof cell === 'number' ? cell : undefined
}

export const threadNames: readonly string[] = [
  ...boltThreads,
  ...boltsSaeJ429.rows.map(([name]) => String(name)),
]

/** m */
export function threadDiameter(thread: string): number {
  const inches = cellOf(inchRow(thread), 1)
  return inches === undefined ? nominalDiameter(thread) : inches * inch
}

/** m */
export function threadPitch(thread: string): number {
  const perInch = cellOf(inchRow(thread), 2)
  return perInch === undefined ? (cellOf(metricRow(thread), 1) ?? NaN) / 1000 : inch / perInch
}

/** N; undefined for a class that is not made in that thread. */
export function threadProofLoad(thread: string, strength: BoltStrength): number | undefined {
  switch (strength) {
    case 'grade-2':
    case 'grade-5':
    case 'grade-8': {
      const load = cellOf(inchRow(thread), inchColumns[strength])
      return load === undefined ? undefined : load * poundForce
    }
    case 'a2-70': {
      const area = stressArea(thread)
      return area === undefined ? undefined : area * stainless
    }
    default:
      return proofLoad(thread, strength)
  }
}
