/**
 * Tasks and open questions: the items of plain `- [ ]` lists. In: a list item. Out: its words, where the
 * numbers in them stand, and the note that a link at its end names after `closed in` or `opened in`.
 *
 * Items that stand in an item are items of their own; their words are not the outer one's.
 */
import type { Link, ListItem, PhrasingContent } from 'mdast'
import { toString } from 'mdast-util-to-string'
import type { RawPiece, TaskSource } from '../note-source.ts'
import { defined } from '../defined.ts'
import { words } from '../../words/words.ts'
import { lineAndColumn, report, startOf, type ReadContext } from './context.ts'

export function readTask(ctx: ReadContext, item: ListItem): void {
  if (typeof item.checked !== 'boolean') return
  const inline = item.children.flatMap((child) =>
    child.type === 'paragraph' ? child.children : [],
  )
  const ends = endOf(ctx, inline)
  if (ends === undefined) checkEnd(ctx, inline)
  const { line, column, offset } = startOf(item)
  ctx.tasks.push({
    done: item.checked,
    pieces: tidied(piecesOf(ends === undefined ? inline : inline.slice(0, ends.index)), ends),
    ...defined({ ends: ends?.said }),
    line,
    column,
    offset,
  })
}

interface End {
  /** Of the link among the item's pieces. */
  readonly index: number
  readonly said: NonNullable<TaskSource['ends']>
}

const before = /[\s,;:(–—-]*\b(closed|opened) in\s*$/i

/** The last link, where nothing but a full stop or a bracket follows it. */
function endOf(ctx: ReadContext, inline: readonly PhrasingContent[]): End | undefined {
  const index = inline.findLastIndex(({ type }) => type === 'link')
  const link = inline[index]
  if (link?.type !== 'link') return undefined
  const rest = inline.slice(index + 1)
  if (rest.some((one) => !/^[\s.)]*$/.test(toString(one)) || one.type !== 'text')) return undefined
  const lead = inline[index - 1]
  const how = lead?.type === 'text' ? before.exec(lead.value)?.[1]?.toLowerCase() : undefined
  const slug = slugOf(ctx, link)
  if (slug === undefined || (how !== 'closed' && how !== 'opened')) return undefined
  return { index, said: { how, slug, ...lineAndColumn(startOf(link)) } }
}

/** `, closed in the first drive` without a link closes nothing; a link to no note is told as a link. */
function checkEnd(ctx: ReadContext, inline: readonly PhrasingContent[]): void {
  const said = inline.findLast(
    (one) => one.type === 'text' && /[,;:(–—-]\s*(?:closed|opened) in\b/i.test(one.value),
  )
  const next = said === undefined ? undefined : inline[inline.indexOf(said) + 1]
  if (said?.type !== 'text' || (next?.type === 'link' && /\.mdx(?:#|$)/.test(next.url))) return
  const [found = '', how = ''] = /\b(closed|opened) in\b.*/i.exec(said.value) ?? []
  report(ctx, startOf(said), {
    rule: 'no-note-named',
    level: 'warning',
    text: words`\`${found.trim()}\` does not link to a note, so nothing is ${how.toLowerCase()} by it`,
    hint: words`write \`${how} in [its title](./other-note.mdx)\``,
  })
}

function slugOf({ options }: ReadContext, { url }: Link): string | undefined {
  const [path = ''] = url.split('#')
  return path.endsWith('.mdx') ? options.slugOf(path) : undefined
}

/** A line of text by itself. */
export const lineOfText = (inline: readonly PhrasingContent[]): readonly RawPiece[] =>
  tidied(piecesOf(inline), undefined)

function piecesOf(inline: readonly PhrasingContent[]): RawPiece[] {
  const pieces: RawPiece[] = []
  const add = (node: PhrasingContent): void => {
    if (node.type === 'text' || node.type === 'inlineCode') pieces.push(node.value)
    else if (node.type === 'break') pieces.push(' ')
    else if (node.type === 'mdxTextExpression') pieces.push({ offset: startOf(node).offset })
    else if (node.type === 'mdxJsxTextElement' && /^[A-Z]/.test(node.name ?? ''))
      pieces.push({ offset: startOf(node).offset })
    else if (node.type === 'image') pieces.push(node.alt ?? '')
    else if ('children' in node) for (const child of node.children) add(child)
  }
  inline.forEach(add)
  return pieces
}

/** Words side by side as one, without the line ends of the file and without what the end began with. */
function tidied(pieces: readonly RawPiece[], ends: End | undefined): RawPiece[] {
  const joined: RawPiece[] = []
  for (const piece of pieces) {
    const last = joined.at(-1)
    if (typeof piece === 'string' && typeof last === 'string') joined.splice(-1, 1, last + piece)
    else joined.push(piece)
  }
  const last = joined.length - 1
  return joined
    .map((piece, index) => {
      if (typeof piece !== 'string') return piece
      const cut = index === last && ends !== undefined ? piece.replace(before, '') : piece
      const flat = cut.replace(/\s+/g, ' ')
      const from = index === 0 ? flat.trimStart() : flat
      return index === last ? from.trimEnd() : from
    })
    .filter((piece) => piece !== '')
}
