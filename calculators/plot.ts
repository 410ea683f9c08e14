/**
 * A plot as plain data. Values are SI; one drawing routine (`src/card/`) turns it into SVG at build
 * time and in the browser, and into a table for those who cannot see it.
 */
import type { Of } from '../src/quantity/types.ts'

export interface Axis {
  readonly label: string
  readonly of: Of
  readonly units: readonly [metric: string, us: string]
  readonly scale?: 'linear' | 'log'
  /** Keep zero in view. */
  readonly fromZero?: true
}

export interface Series {
  readonly name: string
  /** SI pairs; a gap where y is undefined. */
  readonly points: readonly (readonly [x: number, y: number | undefined])[]
  /** Told apart by dash and direct label, not colour alone. */
  readonly line: 'solid' | 'dashed' | 'dotted' | 'none'
}

export interface Mark {
  readonly x: number
  readonly y: number
  readonly label: string
  /** `limit` draws a line across instead of a point: `x` limit at x, `y` limit at y. */
  readonly kind: 'point' | 'limit-x' | 'limit-y'
}

export interface Plot {
  readonly title: string
  readonly x: Axis
  readonly y: Axis
  readonly series: readonly Series[]
  readonly marks: readonly Mark[]
  /** One sentence: what to see in it. */
  readonly caption: string
  /** Same scale on both axes (a side view). */
  readonly sideView?: true
}
