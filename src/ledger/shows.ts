/**
 * The units that `<Show>` asks for. In: the notes, what each place shows, the worked numbers. Out: a
 * problem for each unit that is none or is not of its number's kind, which only working them tells.
 */
import { dimensions, sameKind, unitNames, unitOf } from '../quantity/index.ts'
import type { Shown } from './link.ts'
import type { NoteSource } from './note-source.ts'
import type { Problem } from './problems.ts'
import type { Published, PublishedNumber } from './published.ts'
import { didYouMean, problemAt, type Said } from './report.ts'
import { words } from '../words/words.ts'
import { oneOf } from '../words/lists.ts'

export function showProblems(
  notes: readonly NoteSource[],
  shown: ReadonlyMap<string, ReadonlyMap<number, Shown>>,
  published: Published,
): Problem[] {
  const numbers = new Map(published.numbers.map((number) => [number.id, number]))
  const problems: Problem[] = []
  for (const { slug, file, uses } of notes)
    for (const use of uses) {
      const place = shown.get(slug)?.get(use.offset)
      if (use.type !== 'show' || use.unit === undefined || place?.type !== 'number') continue
      const number = numbers.get(place.id)
      const slip =
        number === undefined || number.value === null ? undefined : unitSlip(use.unit, number)
      if (slip !== undefined) problems.push(problemAt(file, use, slip))
    }
  return problems
}

function unitSlip(unit: string, number: PublishedNumber): Said | undefined {
  const asked = unitOf(unit)
  const is = number.of === undefined ? undefined : dimensions[number.of]
  const units = is === undefined ? [number.display] : [...new Set(is.units)]
  const allowed = words`a unit such as ${oneOf(units)}`
  if (asked === undefined)
    return {
      rule: 'unknown-unit',
      text: words`\`unit="${unit}"\` is not a unit known here`,
      allowed,
      hint: didYouMean(unit, unitNames),
    }
  if (sameKind(asked, number)) return undefined
  return {
    rule: 'wrong-dimension',
    text: words`\`unit="${unit}"\` does not fit \`${number.name}\`, which is ${is?.words ?? words`a value in ${number.display}`}`,
    allowed,
  }
}
