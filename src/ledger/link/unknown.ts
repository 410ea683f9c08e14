/**
 * What a note names and does not have: notes that are not there, names that the other note has not, and
 * names that nothing in the note gives. Known only when all notes are read: another may have the name,
 * or another name now.
 */
import type { NoteSource, UnknownName } from '../note-source.ts'
import { ownName, report, type LinkContext } from './context.ts'
import { reportUnknown } from './resolve.ts'
import { words } from '../../words/words.ts'

export function checkImports(ctx: LinkContext, note: NoteSource): void {
  for (const lost of note.lostNotes) reportLost(ctx, note, lost)
  for (const item of note.imports) {
    const other = ctx.notes.get(item.from)
    if (other === undefined || item.imported === '*') continue
    if (ownName(ctx, other, item.imported) === undefined)
      reportUnknown(ctx, note, item, other, item.imported)
  }
}

function reportLost(
  ctx: LinkContext,
  note: NoteSource,
  { path, hint, ...at }: NoteSource['lostNotes'][number],
): void {
  const slug = path.replace(/^\.\//, '').replace(/\.mdx$/, '')
  const now = [...ctx.notes.values()].find(({ meta }) => meta.was?.includes(slug))
  report(ctx, note, at, {
    rule: 'unknown-note',
    text: words`there is no note \`${path}\``,
    hint: now === undefined ? hint : words`it has another name now: \`./${now.slug}.mdx\``,
  })
}

/** An import that is missing is one slip, however often its name is used. */
export function checkNames(ctx: LinkContext, note: NoteSource): void {
  for (const uses of Map.groupBy(note.unknown, ({ name }) => name).values()) {
    const [first, ...more] = uses
    if (first === undefined) continue
    const owner = first.sure === true ? undefined : ownerOf(ctx, note, first.name)
    if (owner === undefined) for (const use of uses) reportUse(ctx, note, use)
    else
      report(ctx, note, first, {
        ...unknown(first),
        hint: words`the note \`${owner.file}\` has one: \`import { ${first.name} } from './${owner.slug}.mdx'\``,
        also: more.length === 0 ? undefined : more.map((use) => placeOf(note, use)),
      })
  }
}

const ownerOf = (ctx: LinkContext, note: NoteSource, name: string): NoteSource | undefined =>
  [...ctx.notes.values()].find((one) => one !== note && ownName(ctx, one, name) !== undefined)

const placeOf = ({ file }: NoteSource, { line, column }: UnknownName) => ({ file, line, column })

const unknown = ({ name }: UnknownName) => ({
  rule: 'unknown-name',
  text: words`no number, block or import is called \`${name}\``,
})

function reportUse(ctx: LinkContext, note: NoteSource, use: UnknownName): void {
  report(ctx, note, use, {
    ...unknown(use),
    hint:
      use.hint ??
      words`give a number this name with \`id\`, or import it from the note that has it`,
  })
}
