/**
 * Numbers written in words: `five`, `two and a half`, `a hundred`, `half a`, `three or four`.
 *
 * In: a text and an offset at the beginning of a word. Out: where the number ends and what it is in
 * digits. Only whole English number words count; `a` alone is no number.
 */
export interface Spelled {
  readonly end: number
  /** In digits; two for `three or four`. */
  readonly numbers: readonly string[]
}

const small: Readonly<Record<string, number>> = {
  zero: 0,
  ...Object.fromEntries(
    'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
      .split(' ')
      .map((word, index) => [word, index + 1]),
  ),
  ...Object.fromEntries(
    'twenty thirty forty fifty sixty seventy eighty ninety'
      .split(' ')
      .map((word, index) => [word, 20 + 10 * index]),
  ),
}
const parts: Readonly<Record<string, number>> = {
  half: 0.5,
  quarter: 0.25,
  third: 1 / 3,
  tenth: 0.1,
}
const scales: Readonly<Record<string, number>> = { dozen: 12, hundred: 100, thousand: 1000 }

const anyWord = [...Object.keys(small), ...Object.keys(parts), ...Object.keys(scales), 'point']
  .toSorted((a, b) => b.length - a.length)
  .join('|')
const simple = String.raw`(?:an?[ \u00A0-])?(?:${anyWord})s?\b(?:(?:[ \u00A0-]|[ \u00A0-]and[ \u00A0-]an?[ \u00A0-]|(?<=hundred|thousand)[ \u00A0]and[ \u00A0])(?:${anyWord})s?\b){0,8}`
const pattern = new RegExp(
  String.raw`(?<![\p{L}\p{N}])(${simple})(?:[ \u00A0](?:to|or|and)[ \u00A0](${simple}))?(?:[ \u00A0](?:of[ \u00A0])?an?)?(?![\p{L}\p{N}])`,
  'iuy',
)

export function spelledAt(text: string, at: number): Spelled | undefined {
  pattern.lastIndex = at
  const found = pattern.exec(text)
  if (!found) return undefined
  const numbers = [found[1], found[2]].flatMap((words) => (words ? [worth(words)] : []))
  return { end: at + found[0].length, numbers }
}

/** How far to step when the number at `at` has no unit: one word. */
export function spelledStart(text: string, at: number): number {
  return /^\p{L}+/u.exec(text.slice(at))?.[0].length ?? 1
}

function worth(words: string): string {
  let total = 0
  let current = 0
  let decimals: string | undefined
  for (const word of words.toLowerCase().split(/[^a-z]+/)) {
    const name = word in small || word in parts || word in scales ? word : word.replace(/s$/, '')
    if (name === 'point') decimals = ''
    else if (decimals !== undefined) decimals += String(small[name] ?? '')
    else if (name in small) current += small[name] ?? 0
    else if (name in parts) {
      if (/\band[ -]an?[ -](?:half|quarter|third|tenth)s?$/i.test(words))
        total += current + (parts[name] ?? 0)
      else total += (current || 1) * (parts[name] ?? 0)
      current = 0
    } else if (name in scales) {
      const scaled = (current || 1) * (scales[name] ?? 1)
      if (scaled >= 1000) {
        total += scaled
        current = 0
      } else current = scaled
    }
  }
  const whole = String(Math.round((total + current) * 1000) / 1000)
  return decimals ? `${whole}.${decimals}` : whole
}
