/**
 * The name that was probably meant, for "did you mean …?".
 *
 * In: what was read and the names that are known. Out: the nearest known name, or undefined when none
 * is near enough to be worth saying. A difference of case alone counts least; a swapped pair of
 * neighbouring letters counts as one slip; of equally near names the first in the list is taken.
 */
export function nearestName(read: string, known: readonly string[]): string | undefined {
  let best: string | undefined
  let least = read.length < 3 ? 1 : read.length < 6 ? 1.5 : read.length < 10 ? 2.5 : 3.5
  for (const name of known) {
    const steps = distance(read.toLowerCase(), name.toLowerCase())
    const far = steps + (read === name ? 0 : 0.5)
    if (far <= least && (best === undefined || far < least) && steps < name.length) {
      best = name
      least = far
    }
  }
  return best
}

/** Insertions, deletions, replacements and swaps of neighbours that turn `a` into `b`. */
function distance(a: string, b: string): number {
  let before: number[] = []
  let above = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1]
      let steps = Math.min(
        (above[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (above[j - 1] ?? 0) + (same ? 0 : 1),
      )
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        steps = Math.min(steps, (before[j - 2] ?? steps) + 1)
      row.push(steps)
    }
    before = above
    above = row
  }
  return above[b.length] ?? 0
}
