/**
 * The pictures of all notes. In: the content folder and the notes as read. Out: what is known of each
 * picture file, and a problem at each place that names one which cannot be shown.
 */
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import type { NoteSource } from '../ledger/note-source.ts'
import type { Problem } from '../ledger/problems.ts'
import { problemAt } from '../ledger/report.ts'
import { forAll } from './all.ts'
import type { PictureFacts } from './facts.ts'
import { lookAt, type Looked } from './look.ts'
import { words } from '../words/words.ts'

export interface PicturesOfNotes {
  /** Path within the content folder -> what is known of it. */
  readonly pictures: ReadonlyMap<string, PictureFacts>
  readonly problems: readonly Problem[]
}

/** The same by absolute path. */
export const picturePaths = ({
  content,
  pictures,
}: {
  readonly content: string
  readonly pictures: ReadonlyMap<string, PictureFacts>
}): ReadonlyMap<string, PictureFacts> =>
  new Map([...pictures].map(([path, facts]) => [join(content, path), facts]))

/** `cache`: where what was found is kept. */
export async function lookAtPictures(
  content: string,
  notes: readonly Pick<NoteSource, 'file' | 'pictures'>[],
  cache?: string,
): Promise<PicturesOfNotes> {
  const paths = [...new Set(notes.flatMap((note) => note.pictures.map(({ path }) => path)))].sort()
  const found = new Map<string, Looked>()
  await forAll(paths, Math.min(4, availableParallelism()), async (path) => {
    found.set(path, await lookAt(join(content, path), cache))
  })
  const pictures = new Map<string, PictureFacts>()
  for (const path of paths) {
    const looked = found.get(path)
    if (looked !== undefined && 'facts' in looked) pictures.set(path, looked.facts)
  }
  const problems = notes.flatMap(({ file, pictures: uses }) =>
    uses.flatMap((use): Problem[] => {
      const looked = found.get(use.path)
      if (looked === undefined) return []
      if ('fault' in looked) return [problemAt(file, use, looked.fault)]
      if (looked.facts.type !== 'photo' || !looked.facts.moves) return []
      return [
        problemAt(file, use, {
          rule: 'moving-picture',
          level: 'warning',
          text: words`\`${use.path.slice(use.path.lastIndexOf('/') + 1)}\` moves: only its first picture is shown`,
          hint: words`save the picture that matters as JPEG or PNG`,
        }),
      ]
    }),
  )
  return { pictures, problems }
}
