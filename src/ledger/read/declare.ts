/**
 * The name that an element gives to its number or block. In: its `id`. Out: the name; one that nobody
 * can use in braces (`reading-2`) where there is no `id`, or one that was refused and reported.
 */
import { readName } from '../names.ts'
import type { At } from '../note-source.ts'
import type { Attribute } from './attributes.ts'
import { lineAndColumn, report, type ReadContext } from './context.ts'
import { words } from '../../words/words.ts'

/** `at`: the element, which a second of the same name is shown. */
export function declare(
  ctx: ReadContext,
  id: Attribute | undefined,
  element: string,
  at: At,
): string {
  const name = id === undefined ? undefined : readId(ctx, id)
  if (name === undefined) return unnamed(ctx, element)
  ctx.declared.set(name, lineAndColumn(at))
  return name
}

function unnamed(ctx: ReadContext, element: string): string {
  const count = (ctx.unnamed.get(element) ?? 0) + 1
  ctx.unnamed.set(element, count)
  return `${element.toLowerCase()}-${count}`
}

function readId(ctx: ReadContext, id: Attribute): string | undefined {
  if (id.value.type !== 'text') {
    report(ctx, id, { rule: 'bad-name', text: words`an \`id\` is a plain text: \`id="pumpDraw"\`` })
    return undefined
  }
  const read = readName(id.value.text)
  if ('why' in read) {
    const hint = read.hint === undefined ? undefined : words`\`${read.hint}\` would do`
    report(ctx, id, { rule: 'bad-name', text: read.why, hint })
    return undefined
  }
  const before = ctx.declared.get(read.name)
  if (before === undefined) return read.name
  report(ctx, id, {
    rule: 'doubled-name',
    text: words`the name \`${read.name}\` is already taken in this note`,
    hint: words`two numbers need two names`,
    also: [{ file: ctx.options.file, ...before }],
  })
  return undefined
}
