/**
 * A size in each of the units that workshops read it in, `0.13 mm (0.00512 in)`, the second in
 * brackets. Where a site writes them all in one unit, they are the same text and stand once.
 */
export function eitherWay(...said: readonly string[]): string {
  const [first = '', ...others] = new Set(said)
  return others.length === 0 ? first : `${first} (${others.join(', ')})`
}
