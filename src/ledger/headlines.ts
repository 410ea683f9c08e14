/**
 * The number that stands for a note where a link to it is passed on: `headline: pump.flow` in the
 * frontmatter. In: the notes as read and the worked ledger. Out: a problem for each that names no number.
 */
import type { NoteSource } from './note-source.ts'
import type { Problem } from './problems.ts'
import type { Published } from './published.ts'
import { didYouMean, problemAt } from './report.ts'
import { words } from '../words/words.ts'

export function headlineProblems(
  notes: readonly NoteSource[],
  published: Published,
): readonly Problem[] {
  const named = notes.filter(({ meta }) => meta.headline !== undefined)
  if (named.length === 0) return []
  const names = Map.groupBy(published.numbers, ({ note }) => note)
  return named.flatMap(({ slug, file, raw, meta: { headline = '' } }) => {
    const known = (names.get(slug) ?? []).map(({ name }) => name)
    if (known.includes(headline.trim())) return []
    const line = raw.split('\n').findIndex((text) => text.startsWith('headline:')) + 1
    return [
      problemAt(
        file,
        { line: Math.max(1, line), column: 1 },
        {
          rule: 'unknown-name',
          text: words`\`headline\`: this note has no number called \`${headline.trim()}\``,
          hint: didYouMean(headline.trim(), known),
        },
      ),
    ]
  })
}
