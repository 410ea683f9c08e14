/**
 * What a translation lacks. In: its texts and the English ones. Out: lines in a builder's words; none
 * where it is whole. A text that is missing shows in English, so nothing of this stops a site.
 */
import { counted } from './counted.ts'
import { words } from './words.ts'

type Texts = Readonly<Record<string, string>>

export function translationFaults(texts: Texts, english: Texts): readonly string[] {
  const missing = Object.keys(english).filter((key) => !Object.hasOwn(texts, key))
  const unused = Object.keys(texts).filter((key) => !Object.hasOwn(english, key))
  const faults = Object.entries(texts)
    .filter(([key]) => Object.hasOwn(english, key))
    .flatMap(([key, text]) =>
      [...textFaults(key, text)].map((fault) => `  ${quoted(key)}: ${fault}`),
    )
  return [
    ...listed(words`missing, and shown in English:`, missing),
    ...listed(words`no longer used:`, unused),
    ...(faults.length === 0 ? [] : [words`to be mended:`, ...faults]),
  ]
}

export function translationSummary(texts: Texts, english: Texts): string {
  const there = Object.keys(english).filter((key) => Object.hasOwn(texts, key)).length
  const all = Object.keys(english).length
  return counted(
    all,
    words`${there} of ${all} text is there`,
    words`${there} of ${all} texts are there`,
  )
}

const quoted = (key: string): string => JSON.stringify(key)

const listed = (head: string, keys: readonly string[]): readonly string[] =>
  keys.length === 0 ? [] : [head, ...keys.map((key) => `  ${quoted(key)}`)]

/** A text goes into pages as it stands: a sign that is markup there may only stand where English has it. */
const markup = ['<', '>', '&', '"'] as const

function* textFaults(key: string, text: string): Generator<string> {
  if (text.trim() === '') yield words`nothing stands there`
  const [due, there] = [placesIn(key), placesIn(text)]
  for (const place of due) if (!there.has(place)) yield words`${`\`${place}\``} is left out`
  for (const place of there)
    if (!due.has(place)) yield words`${`\`${place}\``} stands for no value of this text`
  for (const sign of markup)
    if (text.includes(sign) && !key.includes(sign))
      yield words`${`\`${sign}\``} cannot stand in this text`
}

const placesIn = (text: string): ReadonlySet<string> => new Set(text.match(/\{\d+\}/g) ?? [])
