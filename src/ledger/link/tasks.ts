/**
 * Tasks and open questions of all notes, each with the note that closed it. In: what each note's lists
 * say, and what stands at each place. Out: tasks in the order of the notes, and what cannot be.
 *
 * An item may be closed where it stands (`closed in`), or by an item with the same words in a later note
 * (`opened in`); unchecked, that one carries it on, and it is counted there.
 */
import { nearestName } from '../../quantity/nearest.ts'
import { defined } from '../defined.ts'
import type { NoteSource, TaskSource } from '../note-source.ts'
import type { Problem } from '../problems.ts'
import type { Piece, PublishedTask } from '../published.ts'
import { problemAt, type Said } from '../report.ts'
import type { Shown } from './shown.ts'
import { words } from '../../words/words.ts'

export type ShownOn = ReadonlyMap<string, ReadonlyMap<number, Shown>>

interface Held {
  readonly note: NoteSource
  readonly source: TaskSource
  readonly number: number
}

interface Closing {
  readonly state: PublishedTask['state']
  readonly in: string
}

export interface LinkedTasks {
  readonly tasks: readonly PublishedTask[]
  readonly problems: readonly Problem[]
}

export function linkTasks(notes: readonly NoteSource[], shown: ShownOn): LinkedTasks {
  const problems: Problem[] = []
  const held = notes.flatMap((note) =>
    note.tasks.map((source, index): Held => ({ note, source, number: index + 1 })),
  )
  const closings = new Map<TaskSource, Closing>()
  for (const one of held) {
    const said = close(one, held, closings)
    if (said !== undefined)
      problems.push(problemAt(one.note.file, one.source.ends ?? one.source, said))
  }
  return { tasks: held.map((one) => published(one, shown, closings)), problems }
}

/** Enters what an item says of itself or of another; out: what is wrong with that. */
function close(
  { note, source }: Held,
  held: readonly Held[],
  closings: Map<TaskSource, Closing>,
): Said | undefined {
  const { ends, done } = source
  if (ends === undefined) return undefined
  const other = held.find((one) => one.note.slug === ends.slug)?.note
  if (ends.slug === note.slug)
    return { rule: 'task-in-itself', text: words`\`${ends.how} in\` names the note it stands in` }
  if (ends.how === 'closed') {
    if (!done)
      return {
        rule: 'closed-but-open',
        text: words`the item says \`closed in\` and is not ticked`,
        hint: words`write \`- [x]\`, or take the words out`,
      }
    closings.set(source, { state: 'done', in: ends.slug })
    return undefined
  }
  const theirs = held.filter((one) => one.note.slug === ends.slug)
  const found = theirs.find((one) => keyOf(one.source) === keyOf(source))
  if (found === undefined) return unknownTask(source, ends.slug, theirs)
  if (other !== undefined && other.meta.date > note.meta.date)
    return {
      rule: 'opened-later',
      level: 'warning',
      text: words`\`opened in\` names a note of ${other.meta.date}, which is later than this one`,
      hint: words`the later note closes what the earlier one opened: turn the two round`,
    }
  closings.set(found.source, { state: done ? 'done' : 'carried', in: note.slug })
  return undefined
}

function unknownTask(source: TaskSource, slug: string, theirs: readonly Held[]): Said {
  const near = nearestName(
    wordsOf(source),
    theirs.map((one) => wordsOf(one.source)),
  )
  if (theirs.length === 0)
    return {
      rule: 'unknown-task',
      text: words`the note \`${slug}\` has no list of tasks, so nothing was opened in it`,
      hint: words`\`opened in\` names the earlier note in which the item stands as \`- [ ]\`; the note that did it is named by \`closed in\``,
    }
  const open = theirs.map((one) => `\`${wordsOf(one.source)}\``).join(', ')
  return {
    rule: 'unknown-task',
    text: words`the note \`${slug}\` has no task \`${wordsOf(source)}\``,
    allowed: open,
    hint: near === undefined ? words`write it in the same words` : words`did you mean \`${near}\`?`,
  }
}

const wordsOf = ({ pieces }: TaskSource): string =>
  pieces.map((piece) => (typeof piece === 'string' ? piece : '…')).join('')

/** Two items with this alike are one and the same. */
const keyOf = (source: TaskSource): string =>
  wordsOf(source)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}…]+/gu, ' ')
    .trim()

function published(
  { note, source, number }: Held,
  shown: ShownOn,
  closings: ReadonlyMap<TaskSource, Closing>,
): PublishedTask {
  const { slug } = note
  const closing = closings.get(source)
  const from = source.ends?.how === 'opened' ? source.ends.slug : undefined
  return {
    id: `${slug}/Task-${number}`,
    note: slug,
    pieces: source.pieces.flatMap((piece) => pieceOf(piece, shown.get(slug)) ?? []),
    question: /\?\s*$/.test(wordsOf(source)),
    state: source.done ? 'done' : (closing?.state ?? 'open'),
    ...defined({ in: closing?.in, from }),
    line: source.line,
  }
}

export function pieceOf(
  piece: TaskSource['pieces'][number],
  places: ReadonlyMap<number, Shown> | undefined,
): Piece | undefined {
  if (typeof piece === 'string') return piece
  const place = places?.get(piece.offset)
  switch (place?.type) {
    case 'number': {
      const { id, unit, digits } = place
      return { number: id, ...defined({ unit, digits }) }
    }
    case 'nominal':
    case 'quoted':
      return place.text
    default:
      return undefined
  }
}
