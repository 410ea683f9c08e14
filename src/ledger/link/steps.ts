/**
 * Steps of the work: each note's headings, with the numbers and blocks that stand below each. In: the
 * notes as read, and what is shown where. Out: steps in the order of the notes.
 *
 * What stands before the first heading is a step without a name; a part's own figures are not counted.
 */
import type { NoteSource } from '../note-source.ts'
import type { PublishedStep } from '../published.ts'
import type { Shown } from './shown.ts'
import { pieceOf, type ShownOn } from './tasks.ts'

const start = { name: '', depth: 2, pieces: [], offset: -1 }

export const linkSteps = (notes: readonly NoteSource[], shown: ShownOn): readonly PublishedStep[] =>
  notes.flatMap((note) => stepsOf(note, shown.get(note.slug) ?? new Map<number, Shown>()))

function stepsOf(
  { slug, steps }: NoteSource,
  shown: ReadonlyMap<number, Shown>,
): readonly PublishedStep[] {
  const places = [...shown].toSorted(([a], [b]) => a - b)
  const all = [start, ...steps].map(({ name, depth, pieces, offset }, index): PublishedStep => {
    const end = steps[index]?.offset ?? Infinity
    const below = places.filter(([at]) => at >= offset && at < end)
    return {
      note: slug,
      name,
      depth,
      pieces: pieces.flatMap((piece) => pieceOf(piece, shown) ?? []),
      shows: [...new Set(below.flatMap(([, one]) => idsOf(one)))],
    }
  })
  return all.filter(({ name, shows }) => name !== '' || shows.length > 0)
}

function idsOf(shown: Shown): readonly string[] {
  if (shown.type === 'number' || shown.type === 'block') return [shown.id]
  return shown.type === 'table' ? shown.ids : []
}
