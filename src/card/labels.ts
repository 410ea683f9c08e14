/**
 * Where the names of lines and marks go: each label tries the places offered for it and takes the one
 * that covers least of the drawing and of the labels already placed. A long label has two lines or
 * more. Lengths are in units of the drawing.
 */
export type Point = readonly [x: number, y: number]

export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export interface Spot {
  readonly x: number
  /** Baseline of the line nearest to what is named. */
  readonly y: number
  readonly anchor: 'start' | 'middle' | 'end'
  /** Above what is named: further lines stand higher. */
  readonly above?: boolean
}

export interface Wanted {
  readonly text: string
  /** In order of preference. */
  readonly spots: readonly Spot[]
}

export interface Placed {
  readonly x: number
  /** Baseline of the first line. */
  readonly y: number
  readonly anchor: Spot['anchor']
  readonly lines: readonly string[]
}

/** Size of the letters and distance of the lines. */
export const size = 12
export const leading = 14

/** A cautious width: a bold sans of the system. */
export function textWidth(text: string): number {
  return text.length * size * 0.58
}

const longest = 24

/** Words into lines of at most `longest` characters; a longer word has a line of its own. */
export function wrapped(text: string): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + word.length + 1 > longest) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line]
}

function boxOf(lines: readonly string[], spot: Spot): Box {
  const width = Math.max(...lines.map(textWidth))
  const shift = spot.anchor === 'start' ? 0 : spot.anchor === 'end' ? width : width / 2
  const more = (lines.length - 1) * leading
  const top = spot.y - size * 0.85 - (spot.above === true ? more : 0)
  return { x: spot.x - shift, y: top, width, height: size * 1.1 + more }
}

function overlap(a: Box, b: Box): number {
  const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return width > 0 && height > 0 ? width * height : 0
}

function inside([x, y]: Point, box: Box): boolean {
  return x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height
}

function crossedBy(box: Box, ink: readonly Point[]): number {
  let crossed = 0
  for (const point of ink) if (inside(point, box)) crossed += 1
  return crossed
}

/** Points along straight pieces, close enough that no label slips between two of them. */
export function along(points: readonly Point[], gap: number): Point[] {
  const dense: Point[] = []
  for (const [index, [x, y]] of points.entries()) {
    const [nextX, nextY] = points[index + 1] ?? [x, y]
    const pieces = Math.max(1, Math.ceil(Math.hypot(nextX - x, nextY - y) / gap))
    for (let piece = 0; piece < pieces; piece += 1) {
      dense.push([x + ((nextX - x) * piece) / pieces, y + ((nextY - y) * piece) / pieces])
    }
  }
  return dense
}

/** Pushes a spot back so far that its text ends within the frame, where it fits at all. */
function heldIn(spot: Spot, lines: readonly string[], frame: Box): Spot {
  const box = boxOf(lines, spot)
  const right = box.x + box.width - (frame.x + frame.width)
  const left = frame.x - box.x
  return right > 0
    ? { ...spot, x: spot.x - right }
    : left > 0
      ? { ...spot, x: spot.x + left }
      : spot
}

export function place(
  wanted: readonly Wanted[],
  ink: readonly Point[],
  frame: Box,
): readonly Placed[] {
  const taken: Box[] = []
  const placed: Placed[] = []
  for (const { text, spots } of wanted) {
    const lines = wrapped(text)
    let best: { readonly spot: Spot; readonly box: Box; readonly cost: number } | undefined
    for (const [rank, offered] of [
      ...spots,
      ...spots.map((spot) => heldIn(spot, lines, frame)),
    ].entries()) {
      const box = boxOf(lines, offered)
      const outside = box.width * box.height - overlap(box, frame)
      const covered = taken.reduce((sum, other) => sum + overlap(box, other), 0)
      const least = outside * 10 + covered * 10 + rank
      // Counting the ink takes longest, and most places have lost before.
      if (best !== undefined && least >= best.cost) continue
      const cost = least + crossedBy(box, ink) * 60
      if (best === undefined || cost < best.cost) best = { spot: offered, box, cost }
    }
    if (best === undefined) continue
    const { spot, box } = best
    taken.push(box)
    placed.push({ x: spot.x, y: box.y + size * 0.85, anchor: spot.anchor, lines })
  }
  return placed
}
