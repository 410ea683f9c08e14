/**
 * Which names fit what was asked. In: the names of the site, the words typed. Out: those in which every
 * word begins a word, the closest first.
 */
export type Name = readonly [
  label: string,
  value: string,
  path: string,
  note: string,
  name?: string,
]

const wordsOf = (text: string): string[] =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .split(/[^\p{L}\p{N}.]+/u)
    .filter((word) => /[^.]/.test(word))

export function rankNames(names: readonly Name[], asked: string): readonly Name[] {
  const wanted = wordsOf(asked)
  if (wanted.length === 0) return []
  return names
    .map((name, index) => ({ name, index, score: scoreOf(name, wanted) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score || a.index - b.index)
    .map(({ name }) => name)
}

/**
 * Whether a page has what was asked for: the search in pages offers the nearest where a word is nowhere.
 * Endings do not count, since it finds `pump` for `pumps` as well.
 */
export function sharesWords(text: string, asked: string): boolean {
  const wanted = wordsOf(asked)
  const beginnings = new Set(wordsOf(text).flatMap((word) => [word, ...beginningsOf(word)]))
  return wanted.length > 0 && wanted.every((word) => beginnings.has(word.slice(0, least)))
}

const least = 3
const beginningsOf = (word: string): string[] =>
  Array.from({ length: least }, (_, index) => word.slice(0, index + 1))

/** 0: one of the words is not there. */
function scoreOf([label, value, , , name = '']: Name, wanted: readonly string[]): number {
  const all = [...wordsOf(label), ...wordsOf(value), ...wordsOf(name)]
  let score = 1
  for (const word of wanted) {
    if (all.includes(word)) score += 2
    else if (all.some((one) => one.startsWith(word))) score += 1
    else return 0
  }
  // What stands behind the block’s title is what it is called itself.
  const own = wordsOf(label.slice(label.lastIndexOf(': ') + 1))
  return score + (own.length === wanted.length && own.every((one) => wanted.includes(one)) ? 2 : 0)
}
