/**
 * The inputs that move a result as bars: how far the result goes with each, on one scale, the farthest
 * first. The line across each bar is where the result stands now. As wide as a plot; the numbers stand
 * at the ends, so that nothing has to be read off, and black alone tells everything.
 */
import type { End, Matters, Move } from '../ledger/matters.ts'
import { width } from './axes.ts'
import type { CardContext } from './context.ts'
import { escape } from './html.ts'
import { leading, size, textWidth } from './labels.ts'
import { valueText } from './matters-words.ts'
import { round } from './shapes.ts'
import { words } from '../words/words.ts'

const bar = 10
const edge = 2
/** Within a row, below the lines of the label. */
const toBar = 5
const toNumbers = toBar + bar + size + 3
const toNext = toNumbers + 14

export function movesSvg(
  { result, now }: Matters,
  moves: readonly Move[],
  ctx: CardContext,
): string {
  const known = moves
    .flatMap(({ low, high }) => [low.result, high.result])
    .concat(now)
    .filter((value) => value !== undefined)
  const least = Math.min(...known)
  const most = Math.max(...known)
  if (!(most > least)) return ''
  const x = (value: number): number =>
    edge + ((value - least) / (most - least)) * (width - 2 * edge)
  const end = ({ value, result: at }: End, move: Move): string =>
    words`${valueText(at, result.field, ctx)} at ${valueText(value, move.place.field, ctx)}`

  const rows: string[] = []
  let top = size
  for (const move of moves) {
    const label = linesOf(move.place.label)
    const below = top + (label.length - 1) * leading
    const ends = [move.low, move.high].toSorted(
      (a, b) => (a.result ?? Infinity) - (b.result ?? Infinity),
    )
    const places = [...ends.map((one) => one.result), now]
      .filter((value) => value !== undefined)
      .map(x)
    const left = Math.min(...places)
    const wide = Math.max(1, Math.max(...places) - left)
    const texts = ends.map((one) => end(one, move))
    // Two that do not fit beside each other stand below each other.
    const high = texts.reduce((sum, text) => sum + textWidth(text), size) > width ? leading : 0
    rows.push(
      textHtml('label', 0, top, 'start', label),
      `<rect x="${round(left)}" y="${round(below + toBar)}" width="${round(wide)}" height="${bar}"/>`,
      now === undefined
        ? ''
        : `<path d="M${round(x(now))} ${round(below + toBar - 3)}v${bar + 6}"/>`,
      textHtml('end', 0, below + toNumbers, 'start', texts.slice(0, 1)),
      textHtml('end', width, below + toNumbers + high, 'end', texts.slice(1)),
    )
    top = below + toNext + high + size
  }
  const about = words`How far each input moves “${result.label}”; the same stands in words below.`
  return `<svg class="moves" viewBox="0 0 ${width} ${round(top - size)}" role="img" aria-label="${escape(about)}">${rows.join('')}</svg>`
}

function textHtml(
  kind: string,
  x: number,
  y: number,
  anchor: 'start' | 'end',
  lines: readonly string[],
): string {
  return lines
    .map(
      (line, at) =>
        `<text class="${kind}" x="${x}" y="${round(y + at * leading)}" text-anchor="${anchor}">${escape(line)}</text>`,
    )
    .join('')
}

/** A label in as many lines as it needs. */
function linesOf(text: string): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last === undefined || textWidth(`${last} ${word}`) > width) lines.push(word)
    else lines[lines.length - 1] = `${last} ${word}`
  }
  return lines
}
